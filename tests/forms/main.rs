//! What is made of lengths in the formats of other programs.

#![cfg(feature = "serde")]

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod cases;
mod disturbed;
mod plain;
mod refusing;
mod stored;
