//! A whole case.

mod properties;
mod worked;
