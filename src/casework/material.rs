//! How stiff wood and panels are, from tables with their sources. What follows for a shelf is left to `shelf.rs`.

use num_rational::Ratio;

use super::error::CaseworkError;
use super::names::{known, named};
use crate::lumber::{Seen, Source};

/// How stiff a material is along the grain: its modulus of elasticity, in pounds on a square inch. Exact.
///
/// ```
/// use num_rational::Ratio;
/// use scantling::Modulus;
///
/// assert_eq!(Modulus::psi(950_000).in_psi(), Ratio::from(950_000));
/// // Sugar pine: 8,200 MPa, which is a little under 1.19 million psi.
/// assert_eq!(Modulus::megapascals(8_200).in_psi().to_integer(), 1_189_309);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Modulus {
    psi: Ratio<i128>,
}

impl Modulus {
    /// So many pounds on a square inch.
    ///
    /// ```
    /// use scantling::Modulus;
    ///
    /// assert!(Modulus::psi(1_820_000).in_psi() > Modulus::psi(950_000).in_psi());
    /// ```
    #[must_use]
    pub const fn psi(psi: u32) -> Self {
        Self { psi: Ratio::new_raw(psi as i128, 1) }
    }

    /// So many megapascals. A pound on a square inch is 0.453 592 37 kg × 9.806 65 m/s² on (0.0254 m)², exactly.
    ///
    /// ```
    /// use scantling::Modulus;
    ///
    /// assert_eq!(Modulus::megapascals(8_900).in_psi().to_integer(), 1_290_835);
    /// ```
    #[must_use]
    pub const fn megapascals(megapascals: u32) -> Self {
        Self { psi: Ratio::new_raw(megapascals as i128 * 1_290_320_000_000_000, 8_896_443_230_521) }
    }

    /// The pounds on a square inch.
    ///
    /// ```
    /// use num_rational::Ratio;
    ///
    /// assert_eq!(scantling::Modulus::psi(1_000_000).in_psi(), Ratio::from(1_000_000));
    /// ```
    #[must_use]
    pub const fn in_psi(self) -> Ratio<i128> {
        self.psi
    }
}

/// A wood or a panel, its stiffness at about 12 percent moisture, and where the figure comes from. A figure is an average: pieces
/// differ by a quarter and more (from memory).
///
/// ```
/// use scantling::{Modulus, material};
///
/// let oak = material("northern red oak")?;
/// assert_eq!((oak.name(), oak.modulus()), ("Oak, northern red", Modulus::psi(1_820_000)));
/// assert!(oak.source().document().contains("Architectural Woodwork Standards"));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Material {
    name: &'static str,
    modulus: Modulus,
    source: Source<'static>,
}

impl Material {
    const fn new(name: &'static str, modulus: Modulus, source: Source<'static>) -> Self {
        Self { name, modulus, source }
    }

    /// What the table calls it: the wood first, then the kind.
    ///
    /// ```
    /// assert_eq!(scantling::material("white ash")?.name(), "Ash, white");
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn name(&self) -> &'static str {
        self.name
    }

    /// How stiff it is.
    ///
    /// ```
    /// use scantling::{Modulus, material};
    ///
    /// assert_eq!(material("Basswood")?.modulus(), Modulus::psi(1_460_000));
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn modulus(&self) -> Modulus {
        self.modulus
    }

    /// Where the figure comes from.
    ///
    /// ```
    /// use scantling::{Seen, material};
    ///
    /// assert_eq!(material("white oak")?.source().seen(), Seen::FromMemory);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub const fn source(&self) -> Source<'static> {
        self.source
    }
}

/// A material by its name, in either order of its words: `Oak, white` or `white oak`.
///
/// # Errors
///
/// When the table has no such material. A neighbor's figure is never taken for it.
///
/// ```
/// use scantling::material;
///
/// let refused = material("red maple plywood").unwrap_err();
/// assert!(refused.to_string().starts_with("no figure for `red maple plywood`: another wood's figure would be a guess; there is "));
/// ```
pub fn material(name: &str) -> Result<Material, CaseworkError> {
    named(name, &MATERIALS, Material::name).copied().ok_or_else(|| known(name, materials().map(|row| row.name)))
}

/// All materials of the table.
///
/// ```
/// assert_eq!(scantling::materials().count(), 40);
/// ```
#[must_use]
pub fn materials() -> impl ExactSizeIterator<Item = Material> {
    MATERIALS.iter().copied()
}

const COPIED: Source<'static> = Source::new("Wood Handbook (FPL-GTR-190), chapter 5, in a secondary copy", Seen::Read);
const PINES: Source<'static> = Source::new("Wood Handbook (FPL-GTR-190), Table 5-3a", Seen::Read);
const WESTERN: Source<'static> = Source::new("Oregon Wood Innovation Center, working and physical properties", Seen::Read);
const SHELVING: Source<'static> = Source::new("Architectural Woodwork Standards, edition 1, 4.4.14, as used there", Seen::Read);
const RECALLED: Source<'static> = Source::new("Wood Handbook (FPL-GTR-190), Table 5-3b", Seen::FromMemory);

const MATERIALS: [Material; 40] = [
    Material::new("Alder, red", Modulus::psi(1_380_000), COPIED),
    Material::new("Ash, white", Modulus::psi(1_740_000), COPIED),
    Material::new("Aspen, quaking", Modulus::psi(1_180_000), COPIED),
    Material::new("Basswood", Modulus::psi(1_460_000), COPIED),
    Material::new("Beech, American", Modulus::psi(1_720_000), COPIED),
    Material::new("Birch, yellow", Modulus::psi(2_010_000), COPIED),
    Material::new("Birch, paper", Modulus::psi(1_590_000), COPIED),
    Material::new("Butternut", Modulus::psi(1_180_000), COPIED),
    Material::new("Cherry, black", Modulus::psi(1_490_000), COPIED),
    Material::new("Hickory, shagbark", Modulus::psi(2_160_000), COPIED),
    Material::new("Maple, bigleaf", Modulus::psi(1_450_000), COPIED),
    Material::new("Maple, black", Modulus::psi(1_620_000), COPIED),
    Material::new("Maple, red", Modulus::psi(1_640_000), COPIED),
    Material::new("Honeylocust", Modulus::psi(1_630_000), COPIED),
    Material::new("Elm, American", Modulus::psi(1_340_000), COPIED),
    Material::new("Ponderosa pine", Modulus::megapascals(8_900), PINES),
    Material::new("Red pine", Modulus::megapascals(11_200), PINES),
    Material::new("Shortleaf pine", Modulus::megapascals(12_100), PINES),
    Material::new("Slash pine", Modulus::megapascals(13_700), PINES),
    Material::new("Sugar pine", Modulus::megapascals(8_200), PINES),
    Material::new("Virginia pine", Modulus::megapascals(10_500), PINES),
    Material::new("Western white pine", Modulus::megapascals(10_100), PINES),
    Material::new("Redwood, old-growth", Modulus::megapascals(9_200), PINES),
    Material::new("Redwood, young-growth", Modulus::megapascals(7_600), PINES),
    Material::new("Douglas-fir", Modulus::psi(1_950_000), WESTERN),
    Material::new("Western larch", Modulus::psi(1_870_000), WESTERN),
    Material::new("Engelmann spruce", Modulus::psi(1_300_000), WESTERN),
    Material::new("Oak, northern red", Modulus::psi(1_820_000), SHELVING),
    Material::new("Douglas-fir veneer-core plywood", Modulus::psi(950_000), SHELVING),
    Material::new("Douglas-fir veneer-core plywood with hardwood faces", Modulus::psi(1_800_000), SHELVING),
    Material::new("Oak, white", Modulus::psi(1_780_000), RECALLED),
    Material::new("Walnut, black", Modulus::psi(1_680_000), RECALLED),
    Material::new("Yellow-poplar", Modulus::psi(1_580_000), RECALLED),
    Material::new("Maple, sugar", Modulus::psi(1_830_000), RECALLED),
    Material::new("Eastern white pine", Modulus::psi(1_240_000), RECALLED),
    Material::new("Loblolly pine", Modulus::psi(1_790_000), RECALLED),
    Material::new("Longleaf pine", Modulus::psi(1_980_000), RECALLED),
    Material::new("Western redcedar", Modulus::psi(1_110_000), RECALLED),
    Material::new("Sitka spruce", Modulus::psi(1_570_000), RECALLED),
    Material::new("Sweetgum", Modulus::psi(1_640_000), RECALLED),
];
