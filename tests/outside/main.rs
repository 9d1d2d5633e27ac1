//! The crate against what others published: every figure with its document, edition and place.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod board_feet;
mod conversions;
mod fraction_mm;
mod kerf;
mod lumber_tables;
mod midpoints;
mod mm_to_inch;
mod oracle;
mod published_errors;
mod rounding;
mod shop_rules;
mod spacing_published;
mod strength;
mod sums;
mod units;
