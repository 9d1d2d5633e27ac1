//! Lengths, areas, volumes and money: text for people, else a reduced pair of inches or of a currency's unit. Text is read
//! by the crate's own parsers; what it means is left to `parse/` and `print/`.

use core::fmt::{self, Formatter};
use core::marker::PhantomData;

use serde::de::{Error as _, SeqAccess, Visitor};
use serde::ser::{Error as _, SerializeTuple};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::error::Refusal;
use super::object::{in_turn, no_more};
use crate::length::{Area, Length, Unit, Volume};
use crate::lumber::{LumberError, Money};
use crate::parse::{LengthParser, ParseError};
use crate::print::{LengthPrinter, Marks};

trait Quantity: Copy {
    /// What is expected where there is none.
    const WHAT: &'static str;
    const UNIT: &'static str;
    /// What is wrong with a text.
    type Error: fmt::Display;

    /// Over one line, in lowest terms.
    fn parts(self) -> (i128, u128);
    /// `None` when it cannot be held.
    fn of_parts(num: i128, den: u128) -> Option<Self>;
    fn read(text: &str) -> Result<Self, Self::Error>;
}

impl Quantity for Length {
    const WHAT: &'static str = "a length with its unit, such as \"17 5/8 in\"";
    const UNIT: &'static str = "in";
    type Error = ParseError;

    fn parts(self) -> (i128, u128) {
        self.in_unit_parts(Unit::Inch)
    }

    fn of_parts(num: i128, den: u128) -> Option<Self> {
        Self::from_parts(num, den, Unit::Inch).ok()
    }

    fn read(text: &str) -> Result<Self, ParseError> {
        LengthParser::new().parse_with_unit(text)
    }
}

impl Quantity for Area {
    const WHAT: &'static str = "an area with its unit, such as \"1872 sq in\"";
    const UNIT: &'static str = "sq in";
    type Error = ParseError;

    fn parts(self) -> (i128, u128) {
        self.parts()
    }

    fn of_parts(num: i128, den: u128) -> Option<Self> {
        Self::from_parts(Some((num, den)))
    }

    fn read(text: &str) -> Result<Self, ParseError> {
        text.parse()
    }
}

impl Quantity for Volume {
    const WHAT: &'static str = "a volume with its unit, such as \"144 cu in\"";
    const UNIT: &'static str = "cu in";
    type Error = ParseError;

    fn parts(self) -> (i128, u128) {
        self.parts()
    }

    fn of_parts(num: i128, den: u128) -> Option<Self> {
        Self::from_parts(Some((num, den)))
    }

    fn read(text: &str) -> Result<Self, ParseError> {
        text.parse()
    }
}

impl Quantity for Money {
    const WHAT: &'static str = "an amount of money, such as \"8.75\"";
    const UNIT: &'static str = "of a currency's unit";
    type Error = LumberError;

    fn parts(self) -> (i128, u128) {
        self.parts()
    }

    fn of_parts(num: i128, den: u128) -> Option<Self> {
        Self::of_parts(num, den)
    }

    fn read(text: &str) -> Result<Self, LumberError> {
        text.parse()
    }
}

impl Serialize for Length {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let shown = LengthPrinter::new().marks(Marks::Words).show(*self).map_err(S::Error::custom)?;
        write(*self, shown, serializer)
    }
}

impl Serialize for Area {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        write(*self, self, serializer)
    }
}

impl Serialize for Volume {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        write(*self, self, serializer)
    }
}

impl Serialize for Money {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        write(*self, self, serializer)
    }
}

impl<'de> Deserialize<'de> for Length {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        read(deserializer)
    }
}

impl<'de> Deserialize<'de> for Area {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        read(deserializer)
    }
}

impl<'de> Deserialize<'de> for Volume {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        read(deserializer)
    }
}

impl<'de> Deserialize<'de> for Money {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        read(deserializer)
    }
}

fn write<S: Serializer>(quantity: impl Quantity, text: impl fmt::Display, serializer: S) -> Result<S::Ok, S::Error> {
    if serializer.is_human_readable() {
        return serializer.collect_str(&text);
    }
    let (num, den) = quantity.parts();
    let mut pair = serializer.serialize_tuple(2)?;
    pair.serialize_element(&num)?;
    pair.serialize_element(&den)?;
    pair.end()
}

fn read<'de, Q: Quantity, D: Deserializer<'de>>(deserializer: D) -> Result<Q, D::Error> {
    if deserializer.is_human_readable() {
        deserializer.deserialize_str(Text(PhantomData))
    } else {
        deserializer.deserialize_tuple(2, Pair(PhantomData))
    }
}

struct Text<Q>(PhantomData<Q>);

impl<Q: Quantity> Visitor<'_> for Text<Q> {
    type Value = Q;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str(Q::WHAT)
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Q, E> {
        Q::read(text).map_err(E::custom)
    }
}

struct Pair<Q>(PhantomData<Q>);

impl<'de, Q: Quantity> Visitor<'de> for Pair<Q> {
    type Value = Q;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        write!(out, "a numerator and a denominator of {}", Q::UNIT)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut pair: A) -> Result<Q, A::Error> {
        let mut count = 0;
        let num = in_turn(&mut pair, &mut count, &self)?;
        let den = in_turn(&mut pair, &mut count, &self)?;
        no_more(&mut pair, count, &self)?;
        of_pair(num, den).map_err(A::Error::custom)
    }
}

fn of_pair<Q: Quantity>(num: i128, den: u128) -> Result<Q, Refusal> {
    let unit = Q::UNIT;
    if den == 0 {
        return Err(Refusal::ZeroDenominator { num, unit });
    }
    let quantity = Q::of_parts(num, den).ok_or(Refusal::OutOfRange { num, den, unit })?;
    if quantity.parts() == (num, den) { Ok(quantity) } else { Err(Refusal::NotReduced { num, den, unit }) }
}
