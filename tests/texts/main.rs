//! Text to lengths, and back.

#[path = "../support/mod.rs"]
#[macro_use]
mod support;

mod calculating;
mod every_sixty_fourth;
mod field_notes;
mod friendly_sizes;
mod inside;
mod lines;
mod random_calculations;
mod reading;
mod refusing;
mod refusing_calculations;
mod refusing_several;
mod replayed;
mod round_trips;
mod several;
mod several_long;
mod spoken;
