//! Limits, loads and settings that the crate has built in, against the rules they were taken from, in `data/shop_rules.csv`. They are
//! defaults that a case or a guard begins with; what binds is what is in force at the place.
//!
//! Sources, as named in the file: IRC is the International Residential Code (2018); CPSC the Consumer Product Safety Commission's guidance
//! on clothing storage units, for units made after 1 September 2023; AWS253 Architectural Woodwork Standards, edition 1 (2009), p. 253;
//! KCMA cabinet tests as retold; WIKI32 an encyclopedia's page on the 32 mm system.

use std::collections::BTreeMap;

use crate::support::tables::{figure, rows};
use num_rational::Ratio;
use scantling::{Case, Caution, Length, PinHoles, SagLimit, ShelfLoad, Spacing, Tape, Unit, Widest, pocket_hole};

fn inch(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn pounds(load: ShelfLoad) -> Ratio<i128> {
    load.pounds_per_square_foot()
}

#[test]
fn what_is_built_in_is_what_was_published() {
    let rows = rows("shop_rules.csv");
    let rules: BTreeMap<&str, Length> = rows.iter().map(|row| (row["topic"].as_str(), figure(&row["figure"]))).collect();
    let number = |topic: &str| rules[topic].in_unit(Unit::Inch);
    assert_eq!(Widest::GUARD, Widest::Under(rules["guard"]));
    assert_eq!(
        [ShelfLoad::LIBRARY, ShelfLoad::OTHER, ShelfLoad::KITCHEN].map(pounds),
        ["load library", "load other", "load kitchen"].map(number)
    );
    assert_eq!(Ratio::from(i128::from(SagLimit::STANDARD.parts())), number("sag"));
    let holes = PinHoles::ROWS_OF_32;
    let millimeters = |length: Length| length.in_unit(Unit::Millimeter);
    assert_eq!([holes.pitch, holes.from_edges].map(millimeters), ["pin pitch", "pin set-back"].map(number));
    let thick = Length::fraction(3, 2, Unit::Inch);
    assert_eq!(pocket_hole(thick, thick).unwrap().screw, rules["pocket screw"]);
    // A case is warned about from the height of the rule on, and not a hair below it: deep enough that nothing else warns.
    let warned = |height| Case::new(inch(36), height, inch(24)).plan().unwrap().cautions().contains(&Caution::TipOver);
    let hair = Length::fraction(1, 64, Unit::Inch);
    assert_eq!([rules["tip-over"], rules["tip-over"] - hair].map(warned), [true, false]);
    assert_eq!(rows.len(), 9);
}

/// The ball must not pass, so a gap of its size is too wide. Worked by hand: 13 balusters of 1 1/2 in leave 4 in in 75 1/2 in.
#[test]
fn a_gap_of_the_size_of_the_ball_lets_it_through() {
    let (baluster, run) = (Length::fraction(3, 2, Unit::Inch), Length::fraction(151, 2, Unit::Inch));
    assert_eq!(Spacing::equal_openings(13, baluster).over(run).unwrap().opening(), inch(4));
    for guard in [
        Spacing::fewest_members(baluster, Widest::GUARD),
        Spacing::fewest_members(baluster, Widest::GUARD).as_cut(&Tape::sixteenths()),
    ] {
        assert_eq!(guard.over(run).unwrap().members(), 14);
    }
}
