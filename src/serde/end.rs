//! The ends of a spacing: a word, or a margin with its length. The margin is an object of one field for
//! people; else every end is the place of its word and an optional length.

use core::convert::Infallible;
use core::fmt::{self, Formatter};

use serde::de::value::{MapAccessDeserializer, StrDeserializer};
use serde::de::{Error, IntoDeserializer, MapAccess, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::error::Refusal;
use super::object::{in_turn, no_more, object};
use super::word::words;
use crate::length::Length;
use crate::spacing::End;

/// What kind of end it is, without the length of its margin.
#[derive(Clone, Copy)]
enum Kind {
    Gap,
    HalfGap,
    Flush,
    Margin,
}

words!(Kind, "an end of a run", 0 Gap "gap", 1 HalfGap "half gap", 2 Flush "flush", 3 Margin "margin");

struct Margin(Length);

object!(Margin, "a margin", |margin: &Self| (margin.0,), |margin| Ok::<_, Infallible>(Margin(margin)), margin: Length);

const fn apart(end: End) -> (Kind, Option<Length>) {
    match end {
        End::Gap => (Kind::Gap, None),
        End::HalfGap => (Kind::HalfGap, None),
        End::Flush => (Kind::Flush, None),
        End::Margin(length) => (Kind::Margin, Some(length)),
    }
}

fn together(kind: Kind, margin: Option<Length>) -> Result<End, Refusal> {
    match (kind, margin) {
        (Kind::Gap, None) => Ok(End::Gap),
        (Kind::HalfGap, None) => Ok(End::HalfGap),
        (Kind::Flush, None) => Ok(End::Flush),
        (Kind::Margin, Some(length)) => Ok(End::Margin(length)),
        _ => Err(Refusal::Margin),
    }
}

impl Serialize for End {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match apart(*self) {
            parts if !serializer.is_human_readable() => parts.serialize(serializer),
            (_, Some(length)) => Margin(length).serialize(serializer),
            (kind, None) => kind.serialize(serializer),
        }
    }
}

impl<'de> Deserialize<'de> for End {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        if deserializer.is_human_readable() {
            deserializer.deserialize_any(Readable)
        } else {
            deserializer.deserialize_tuple(2, Compact)
        }
    }
}

struct Readable;

impl<'de> Visitor<'de> for Readable {
    type Value = End;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str("an end of a run, such as \"half gap\" or {\"margin\":\"2 in\"}")
    }

    fn visit_str<E: Error>(self, word: &str) -> Result<End, E> {
        let word: StrDeserializer<'_, E> = word.into_deserializer();
        together(Kind::deserialize(word)?, None).map_err(E::custom)
    }

    fn visit_map<A: MapAccess<'de>>(self, map: A) -> Result<End, A::Error> {
        Margin::deserialize(MapAccessDeserializer::new(map)).map(|margin| End::Margin(margin.0))
    }
}

struct Compact;

impl<'de> Visitor<'de> for Compact {
    type Value = End;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str("an end of a run: the place of its kind, and the length of its margin")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut pair: A) -> Result<End, A::Error> {
        let mut count = 0;
        let kind = in_turn(&mut pair, &mut count, &self)?;
        let margin = in_turn(&mut pair, &mut count, &self)?;
        no_more(&mut pair, count, &self)?;
        together(kind, margin).map_err(A::Error::custom)
    }
}
