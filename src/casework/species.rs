//! How much woods move across the grain, from tables with their sources. What follows for a board is left to `movement.rs`.

use super::error::CaseworkError;
use super::movement::Movement;
use super::names::{known, named};
use crate::lumber::{Seen, Source};

/// A wood, how much it moves with each percent of moisture, and where the figures come from.
///
/// ```
/// use scantling::{Movement, species};
///
/// let beech = species("American beech")?;
/// assert_eq!(beech.name(), "Beech, American");
/// assert_eq!((beech.radial(), beech.tangential()), (Some(Movement::new(190)), Movement::new(431)));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Species {
    name: &'static str,
    radial: Option<u16>,
    tangential: u16,
    source: Source<'static>,
}

impl Species {
    const fn new(name: &'static str, radial: Option<u16>, tangential: u16, source: Source<'static>) -> Self {
        Self { name, radial, tangential, source }
    }

    /// What the table calls it: the wood first, then the kind.
    ///
    /// ```
    /// assert_eq!(scantling::species("red alder")?.name(), "Alder, red");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        self.name
    }

    /// How a quarter-sawn board moves across its width, if the table says so.
    ///
    /// ```
    /// assert_eq!(scantling::species("teak")?.radial(), None);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn radial(&self) -> Option<Movement> {
        self.radial.map(|parts| Movement::new(parts.into()))
    }

    /// How a flat-sawn board moves across its width.
    ///
    /// ```
    /// use scantling::{Movement, species};
    ///
    /// assert_eq!(species("mesquite")?.tangential(), Movement::new(129));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn tangential(&self) -> Movement {
        Movement::new(self.tangential as u32)
    }

    /// Where the figures come from.
    ///
    /// ```
    /// assert!(scantling::species("red alder")?.source().document().contains("Table 13-5"));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn source(&self) -> Source<'static> {
        self.source
    }
}

/// A wood by its name, in either order of its words: `Ash, white` or `white ash`.
///
/// # Errors
///
/// When the table has no such wood. A neighbor's figures are never taken for it.
///
/// ```
/// let refused = scantling::species("green ahs").unwrap_err();
/// assert!(refused.to_string().contains("another wood's figure would be a guess"));
/// ```
pub fn species(name: &str) -> Result<Species, CaseworkError> {
    named(name, &SPECIES, Species::name).copied().ok_or_else(|| known(name, all_species().map(|row| row.name)))
}

/// All woods of the table.
///
/// ```
/// assert_eq!(scantling::all_species().count(), 89);
/// ```
#[must_use]
pub fn all_species() -> impl ExactSizeIterator<Item = Species> {
    SPECIES.iter().copied()
}

const PRINTED: Source<'static> = Source::new("Wood Handbook (FPL-GTR-190), Table 13-5", Seen::Read);
const DERIVED: Source<'static> = Source::new("reckoned from the shrinkage in Wood Handbook (FPL-GTR-190), Table 4-3", Seen::Read);
const RECALLED: Source<'static> =
    Source::new("reckoned from the shrinkage in Wood Handbook (FPL-GTR-190), Table 4-3", Seen::FromMemory);
const FLOORING: Source<'static> = Source::new("the coefficients of a wood flooring association's list", Seen::Read);

const SPECIES: [Species; 89] = [
    Species::new("Alder, red", Some(151), 256, PRINTED),
    Species::new("Apple", Some(205), 376, PRINTED),
    Species::new("Ash, black", Some(172), 274, PRINTED),
    Species::new("Ash, Oregon", Some(141), 285, PRINTED),
    Species::new("Ash, pumpkin", Some(126), 219, PRINTED),
    Species::new("Ash, white", Some(169), 274, PRINTED),
    Species::new("Ash, green", Some(169), 274, PRINTED),
    Species::new("Aspen, quaking", Some(119), 234, PRINTED),
    Species::new("Basswood, American", Some(230), 330, PRINTED),
    Species::new("Beech, American", Some(190), 431, PRINTED),
    Species::new("Birch, paper", Some(219), 304, PRINTED),
    Species::new("Birch, river", Some(162), 327, PRINTED),
    Species::new("Birch, yellow", Some(256), 338, PRINTED),
    Species::new("Birch, sweet", Some(256), 338, PRINTED),
    Species::new("Buckeye, yellow", Some(123), 285, PRINTED),
    Species::new("Butternut", Some(116), 223, PRINTED),
    Species::new("Catalpa, northern", Some(85), 169, PRINTED),
    Species::new("Cherry, black", Some(126), 248, PRINTED),
    Species::new("Chestnut, American", Some(116), 234, PRINTED),
    Species::new("Cottonwood, black", Some(123), 304, PRINTED),
    Species::new("Cottonwood, eastern", Some(133), 327, PRINTED),
    Species::new("Elm, American", Some(144), 338, PRINTED),
    Species::new("Elm, rock", Some(165), 285, PRINTED),
    Species::new("Elm, slippery", Some(169), 315, PRINTED),
    Species::new("Elm, winged", Some(183), 419, PRINTED),
    Species::new("Elm, cedar", Some(183), 419, PRINTED),
    Species::new("Hackberry", Some(165), 315, PRINTED),
    Species::new("Hickory, pecan", Some(169), 315, PRINTED),
    Species::new("Honeylocust", Some(144), 230, PRINTED),
    Species::new("Locust, black", Some(158), 252, PRINTED),
    Species::new("Madrone, Pacific", Some(194), 451, PRINTED),
    Species::new("Magnolia, cucumbertree", Some(180), 312, PRINTED),
    Species::new("Magnolia, southern", Some(187), 230, PRINTED),
    Species::new("Magnolia, sweetbay", Some(162), 293, PRINTED),
    Species::new("Maple, bigleaf", Some(126), 248, PRINTED),
    Species::new("Maple, red", Some(137), 289, PRINTED),
    Species::new("Maple, silver", Some(102), 252, PRINTED),
    Species::new("Maple, black", Some(165), 353, PRINTED),
    Species::new("Maple, sugar", Some(165), 353, PRINTED),
    Species::new("Oak, black", Some(123), 230, PRINTED),
    Species::new("Red oak, commercial", Some(158), 369, PRINTED),
    Species::new("Red oak, California", Some(123), 230, PRINTED),
    Species::new("Red oak: water, laurel, willow", Some(151), 350, PRINTED),
    Species::new("White oak, commercial", Some(180), 365, PRINTED),
    Species::new("White oak, live", Some(230), 338, PRINTED),
    Species::new("White oak, Oregon", Some(144), 327, PRINTED),
    Species::new("White oak, overcup", Some(183), 462, PRINTED),
    Species::new("Persimmon, common", Some(278), 403, PRINTED),
    Species::new("Sassafras", Some(137), 216, PRINTED),
    Species::new("Sweetgum", Some(183), 365, PRINTED),
    Species::new("Sycamore, American", Some(172), 296, PRINTED),
    Species::new("Tanoak", Some(169), 423, PRINTED),
    Species::new("Tupelo, black", Some(176), 308, PRINTED),
    Species::new("Tupelo, water", Some(144), 267, PRINTED),
    Species::new("Walnut, black", Some(190), 274, PRINTED),
    Species::new("Yellow-poplar", Some(158), 289, DERIVED),
    Species::new("White oak (Q. alba)", Some(194), 376, DERIVED),
    Species::new("Fir, white", Some(112), 245, DERIVED),
    Species::new("Fir, balsam", Some(99), 241, DERIVED),
    Species::new("Fir, noble", Some(148), 293, DERIVED),
    Species::new("Fir, grand", Some(116), 263, DERIVED),
    Species::new("Cedar, yellow (Alaska)", Some(95), 208, DERIVED),
    Species::new("Cedar, Atlantic white", Some(99), 187, DERIVED),
    Species::new("Redcedar, eastern", Some(106), 162, DERIVED),
    Species::new("Cedar, incense", Some(112), 180, DERIVED),
    Species::new("Cedar, Port-Orford", Some(158), 241, DERIVED),
    Species::new("Douglas-fir, coast", Some(165), 267, DERIVED),
    Species::new("Douglas-fir, interior north", Some(130), 241, DERIVED),
    Species::new("Douglas-fir, interior west", Some(165), 263, DERIVED),
    Species::new("Cedar, northern white", Some(101), 229, RECALLED),
    Species::new("Redcedar, western", Some(111), 234, RECALLED),
    Species::new("Pine, eastern white", Some(71), 212, RECALLED),
    Species::new("Pine, ponderosa", Some(133), 216, RECALLED),
    Species::new("Pine, sugar", Some(99), 194, RECALLED),
    Species::new("Pine, loblolly", Some(165), 259, RECALLED),
    Species::new("Pine, longleaf", Some(176), 263, RECALLED),
    Species::new("Pine, shortleaf", Some(158), 271, RECALLED),
    Species::new("Spruce, Sitka", Some(148), 263, RECALLED),
    Species::new("Redwood, old-growth", Some(120), 205, RECALLED),
    Species::new("Redwood, young-growth", Some(101), 229, RECALLED),
    Species::new("Baldcypress", Some(130), 216, RECALLED),
    Species::new("Hickory, true", None, 411, FLOORING),
    Species::new("Southern yellow pine", None, 265, FLOORING),
    Species::new("Mesquite", None, 129, FLOORING),
    Species::new("Teak", None, 186, FLOORING),
    Species::new("Jarrah", None, 396, FLOORING),
    Species::new("Padauk", None, 180, FLOORING),
    Species::new("Purpleheart", None, 212, FLOORING),
    Species::new("Wenge", None, 201, FLOORING),
];
