//! Lengths with a tolerance: the nominal length and its two limits, which unlike the amounts over and under it
//! can be held whenever the toleranced length can.

use super::error::Refusal;
use super::object::object;
use crate::length::Length;
use crate::parse::Toleranced;

object! {
    Toleranced, "a length with its limits", of_toleranced, to_toleranced,
    nominal: Length, least: Length, most: Length
}

const fn of_toleranced(toleranced: &Toleranced) -> (Length, Length, Length) {
    (toleranced.nominal(), toleranced.least(), toleranced.most())
}

fn to_toleranced(nominal: Length, least: Length, most: Length) -> Result<Toleranced, Refusal> {
    Toleranced::checked_within(nominal, least, most).ok_or(Refusal::Limits { nominal, least, most })
}
