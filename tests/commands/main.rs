//! The command line, run as a person would.

#![cfg(feature = "cli")]

mod case;
mod case_around;
mod color;
mod cutting;
mod dividing;
mod drawing;
mod lumber;
mod pole;
mod reading;
mod readme;
#[cfg(unix)]
mod rough;
#[cfg(unix)]
mod rough_files;
mod slips;
