//! Sizes and their dimensions: a list of two or three objects.

use core::convert::Infallible;
use core::fmt::{self, Formatter};

use serde::de::{Error, SeqAccess, Visitor};
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::error::Refusal;
use super::object::object;
use super::word::Word;
use crate::length::Length;
use crate::parse::{Axis, Dimension, Size};

object! {
    Dimension, "a dimension", of_dimension, |length, axis| Ok::<_, Infallible>(Dimension::new(length, axis)),
    length: Length, axis: Option<Axis>
}

const fn of_dimension(dimension: &Dimension) -> (Length, Option<Axis>) {
    (dimension.length(), dimension.axis())
}

impl Serialize for Size {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_seq(self.lengths())
    }
}

impl<'de> Deserialize<'de> for Size {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_seq(List)
    }
}

struct List;

impl<'de> Visitor<'de> for List {
    type Value = Size;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str("a size of two or three dimensions")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Size, A::Error> {
        let (mut dimensions, mut count) = ([Dimension::default(); 3], 0);
        while let Some(next) = list.next_element::<Dimension>()? {
            // Looked for here, so that a list without an end is not read to it.
            *dimensions.get_mut(count).ok_or_else(|| A::Error::invalid_length(count + 1, &self))? = next;
            count += 1;
        }
        let dimensions = &dimensions[..count];
        if let Some(axis) = axis_twice(dimensions) {
            return Err(A::Error::custom(Refusal::AxisTwice { axis: axis.word() }));
        }
        Size::checked_new(dimensions).ok_or_else(|| A::Error::invalid_length(count, &self))
    }
}

fn axis_twice(dimensions: &[Dimension]) -> Option<Axis> {
    let mut axes = dimensions.iter().enumerate().filter_map(|(place, dimension)| Some((place, dimension.axis()?)));
    let named_before = |(place, axis): &(usize, Axis)| dimensions[..*place].iter().any(|earlier| earlier.axis() == Some(*axis));
    axes.find(named_before).map(|(_, axis)| axis)
}
