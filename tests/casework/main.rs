//! A whole case.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod fronts;
mod place;
mod properties;
mod stopped;
mod worked;
