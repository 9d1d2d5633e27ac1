//! What a length is: arithmetic, areas, rounding.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod areas;
mod arithmetic;
mod every_small_pair;
mod million_chains;
mod rounding;
