//! Lumber by its names, and parts cut from it.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod cutting;
mod cutting_pictures;
mod cutting_properties;
mod cutting_sheets;
mod lumber_names;
