//! Types that are one of a few words: the word for people, else its place in the list, which never changes.

use core::fmt::{self, Formatter};
use core::marker::PhantomData;

use serde::de::{Error, Unexpected, Visitor};
use serde::{Deserializer, Serializer};

use crate::length::{RoundingMode, Unit};
use crate::parse::{Axis, Side};
use crate::spacing::Edge;
use crate::tape::Lean;

/// One of a few words.
pub(super) trait Word: Copy {
    /// What is expected where there is none.
    const WHAT: &'static str;
    const WORDS: &'static [&'static str];

    fn word(self) -> &'static str;
    fn place(self) -> u8;
    fn of_word(word: &str) -> Option<Self>;
    fn of_place(place: u64) -> Option<Self>;
}

macro_rules! words {
    ($type:ident, $what:literal, $($place:literal $variant:ident $word:literal),+) => {
        impl $crate::serde::word::Word for $type {
            const WHAT: &'static str = $what;
            const WORDS: &'static [&'static str] = &[$($word),+];

            fn word(self) -> &'static str {
                match self { $(Self::$variant => $word),+ }
            }

            fn place(self) -> u8 {
                match self { $(Self::$variant => $place),+ }
            }

            fn of_word(word: &str) -> Option<Self> {
                match word { $($word => Some(Self::$variant),)+ _ => None }
            }

            fn of_place(place: u64) -> Option<Self> {
                match place { $($place => Some(Self::$variant),)+ _ => None }
            }
        }

        impl serde::Serialize for $type {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                $crate::serde::word::write(*self, serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $type {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                $crate::serde::word::read(deserializer)
            }
        }
    };
}
pub(super) use words;

/// Names of kinds, apart from the measures that each has.
macro_rules! kinds {
    ($name:ident, $what:literal, $($place:literal $variant:ident $word:literal),+) => {
        #[derive(Clone, Copy)]
        enum $name {
            $($variant,)+
        }
        $crate::serde::word::words!($name, $what, $($place $variant $word),+);

        impl $name {
            /// The measures do not go with the kind.
            fn refused(self) -> $crate::serde::error::Refusal {
                $crate::serde::error::Refusal::Kind { what: <Self as $crate::serde::word::Word>::WHAT, kind: $crate::serde::word::Word::word(self) }
            }
        }
    };
}
pub(super) use kinds;

words!(Unit, "a unit of length", 0 Inch "in", 1 Foot "ft", 2 Yard "yd", 3 Millimeter "mm", 4 Centimeter "cm", 5 Meter "m");
words! {
    RoundingMode, "a rounding mode",
    0 TiesUp "ties up", 1 TiesEven "ties even", 2 TiesAway "ties away", 3 Down "down", 4 Up "up", 5 TowardZero "toward zero"
}
words!(Lean, "a lean", 0 Strong "strong", 1 Shy "shy", 2 DeadOn "dead on");
words!(Edge, "an edge", 0 Near "near", 1 Center "center", 2 Far "far");
words!(Axis, "an axis", 0 Thickness "thickness", 1 Width "width", 2 Length "length", 3 Height "height", 4 Depth "depth");
words!(Side, "a side of the mark", 0 Over "over", 1 On "on", 2 Under "under");

pub(super) fn write<S: Serializer>(word: impl Word, serializer: S) -> Result<S::Ok, S::Error> {
    if serializer.is_human_readable() { serializer.serialize_str(word.word()) } else { serializer.serialize_u8(word.place()) }
}

pub(super) fn read<'de, W: Word, D: Deserializer<'de>>(deserializer: D) -> Result<W, D::Error> {
    if deserializer.is_human_readable() {
        deserializer.deserialize_str(Text(PhantomData))
    } else {
        deserializer.deserialize_u8(Place(PhantomData))
    }
}

struct Text<W>(PhantomData<W>);

impl<W: Word> Visitor<'_> for Text<W> {
    type Value = W;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str(W::WHAT)
    }

    fn visit_str<E: Error>(self, word: &str) -> Result<W, E> {
        W::of_word(word).ok_or_else(|| E::unknown_variant(word, W::WORDS))
    }
}

struct Place<W>(PhantomData<W>);

impl<W: Word> Visitor<'_> for Place<W> {
    type Value = W;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        write!(out, "the place of {}, below {}", W::WHAT, W::WORDS.len())
    }

    fn visit_u64<E: Error>(self, place: u64) -> Result<W, E> {
        W::of_place(place).ok_or_else(|| E::invalid_value(Unexpected::Unsigned(place), &self))
    }
}
