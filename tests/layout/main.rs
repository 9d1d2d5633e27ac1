//! Lengths to marks: spacings, geometry, story poles, pictures.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod blocks_and_chains;
mod drawing;
mod geometry;
mod geometry_properties;
mod geometry_refusals;
mod pole;
mod pole_findings;
mod pole_pictures;
mod spacing;
mod spacing_kinds;
mod spacing_kinds_properties;
mod spacing_properties;
