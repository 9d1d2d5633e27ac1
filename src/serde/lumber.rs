//! Stock by name and what it costs: the words of the trade, a name taken apart, a price.

use core::convert::Infallible;

use super::error::Refusal;
use super::object::object;
use super::word::{Word, words};
use crate::length::Length;
use crate::lumber::{Family, LumberKind, Money, Nominal, Price, PricedBy, Seasoning, Surface, TallyRule};

words! {
    LumberKind, "a kind of lumber",
    0 Board "board", 1 Dimension "dimension", 2 Timber "timber", 3 Decking "decking", 4 Hardwood "hardwood", 5 Panel "panel",
    6 Sheet "sheet"
}
words!(Family, "a kind of stock", 0 Softwood "softwood", 1 Decking "decking", 2 Hardwood "hardwood", 3 Panel "panel");
words!(Seasoning, "a seasoning", 0 Dry "dry", 1 Green "green");
words!(Surface, "a surface", 0 Rough "rough", 1 OneSide "S1S", 2 TwoSides "S2S", 3 FourSides "S4S");
words! {
    PricedBy, "what a price is for",
    0 BoardFoot "board foot", 1 LinearFoot "linear foot", 2 SquareFoot "square foot", 3 Piece "piece"
}
words! {
    TallyRule, "a rule for a tally",
    0 Exact "exact", 1 OneInchMinimum "one inch minimum", 2 NearestFoot "nearest foot", 3 HalvesByTurns "halves by turns"
}

object! {
    Nominal, "a piece of stock by name", of_nominal, to_nominal,
    stock: Family, thickness: Option<Length>, width: Option<Length>, length: Option<Length>,
    seasoning: Option<Seasoning>, surface: Option<Surface>
}

type Parts = (Family, Option<Length>, Option<Length>, Option<Length>, Option<Seasoning>, Option<Surface>);

const fn of_nominal(piece: &Nominal) -> Parts {
    (piece.family(), piece.thickness(), piece.width(), piece.length(), piece.seasoning(), piece.surface())
}

fn to_nominal(
    stock: Family,
    thickness: Option<Length>,
    width: Option<Length>,
    length: Option<Length>,
    seasoning: Option<Seasoning>,
    surface: Option<Surface>,
) -> Result<Nominal, Refusal> {
    let piece = Nominal::checked_of(stock, [thickness, width, length]).ok_or(Refusal::Nominal { stock: stock.word() })?;
    let piece = seasoning.map_or(piece, |seasoning| piece.seasoned(seasoning));
    Ok(surface.map_or(piece, |surface| piece.surfaced(surface)))
}

object! {
    Price, "a price", of_price, |money, by| Ok::<_, Infallible>(Price::new(money, by)),
    money: Money, by: PricedBy
}

const fn of_price(price: &Price) -> (Money, PricedBy) {
    (price.money(), price.by())
}
