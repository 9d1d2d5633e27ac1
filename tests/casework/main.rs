//! A whole case.

mod fronts;
mod place;
mod properties;
mod stopped;
mod worked;
