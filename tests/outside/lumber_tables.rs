//! Every cell of the lumber tables against the published figures in `data/`, which are read by `support/tables.rs`, never
//! by the crate's own parser. What lies between two entries, or past them, is refused with its neighbors.
//!
//! Sources, as named in the files: TN.06 is Tennessee Comp. R. & Regs. 0080-07-07-.06, which equals the American Softwood
//! Lumber Standard, Table 4; ETB-soft and ETB-hard are secondary copies of softwood and hardwood sizes; APA-EU is APA
//! Europe, "Performance Category and Thickness", after PS 1.

use crate::support::tables::{Row, figure, inches, rows};
use scantling::{
    Catalog, HardwoodRow, Length, LumberError, Nominal, Rounding, Seasoning, Seen, Source, Surface, Table, TimberRow, Unit,
};

const FINISHES: [(Seasoning, Surface, &str); 4] = [
    (Seasoning::Dry, Surface::FourSides, "surfaced_dry_in"),
    (Seasoning::Green, Surface::FourSides, "surfaced_green_in"),
    (Seasoning::Dry, Surface::Rough, "rough_dry_in"),
    (Seasoning::Green, Surface::Rough, "rough_green_suggested_in"),
];

fn inch(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

/// A piece with this size along the axis of the row, the other side being one that is listed in every table.
fn piece(row: &Row, other: Length) -> Nominal {
    let name = inches(&row["nominal_in"]).unwrap();
    if row["axis"] == "thickness" { Nominal::softwood(name, other) } else { Nominal::softwood(other, name) }
}

#[track_caller]
fn side(row: &Row, piece: Nominal) -> Length {
    let actual = Catalog::new().actual(&piece).unwrap_or_else(|error| panic!("{row:?}: {error}"));
    if row["axis"] == "thickness" { actual.thickness().unwrap() } else { actual.width().unwrap() }
}

#[test]
fn every_board() {
    let rows = rows("ps20_boards.csv");
    for row in &rows {
        let other = if row["axis"] == "thickness" { inch(6, 1) } else { inch(1, 1) };
        for (seasoning, column, less) in
            [(Seasoning::Dry, "dry_in", "nominal_minus_dry"), (Seasoning::Green, "green_in", "green_minus_dry")]
        {
            let found = side(row, piece(row, other).seasoned(seasoning));
            assert_eq!(Some(found), inches(&row[column]), "{row:?}");
            let dry = side(row, piece(row, other));
            let apart = if seasoning == Seasoning::Dry { inches(&row["nominal_in"]).unwrap() - dry } else { found - dry };
            assert_eq!(Some(apart), inches(&row[less]), "{row:?}");
        }
        assert_eq!(in_millimeters(side(row, piece(row, other)), 1), figure(&format!("{} mm", row["dry_mm_nearest"])), "{row:?}");
    }
    assert_eq!(rows.len(), 20);
}

#[test]
fn every_piece_of_dimension_lumber() {
    let rows = rows("ps20_dimension.csv");
    for row in &rows {
        let other = if row["axis"] == "thickness" { inch(6, 1) } else { inch(2, 1) };
        for (seasoning, surface, column) in FINISHES {
            let found = side(row, piece(row, other).seasoned(seasoning).surfaced(surface));
            assert_eq!(Some(found), inches(&row[column]), "{row:?}, {column}");
        }
        let dry = side(row, piece(row, other));
        assert_eq!(Some(inches(&row["nominal_in"]).unwrap() - dry), inches(&row["nominal_minus_dry"]), "{row:?}");
        assert_eq!(in_millimeters(dry, 1), figure(&format!("{} mm", row["dry_mm_nearest"])), "{row:?}");
    }
    assert_eq!(rows.len(), 19);
}

#[test]
fn every_timber() {
    let rows = rows("ps20_timbers.csv");
    let spans = [5..=6, 7..=15, 16..=40];
    for (row, sizes) in rows.iter().zip(&spans) {
        let [first, last] = [sizes.start(), sizes.end()].map(ToString::to_string);
        let named = &row["nominal_thickness_or_width_in"];
        assert!(named.starts_with(&first) && (named.ends_with(&last) || named.ends_with("over")), "{row:?}");
        for size in sizes.clone() {
            for (seasoning, column) in
                [(Seasoning::Dry, "dry_less_than_nominal_by_in"), (Seasoning::Green, "green_less_than_nominal_by_in")]
            {
                let actual = Catalog::new().actual(&Nominal::softwood(inch(5, 1), inch(size, 1)).seasoned(seasoning)).unwrap();
                let expected = inch(size, 1) - inches(&row[column]).unwrap();
                assert_eq!((actual.thickness(), actual.width()), (Some(inch(9, 2)), Some(expected)), "{size}, {row:?}");
            }
        }
    }
    assert_eq!(rows.len(), spans.len());
}

#[test]
fn every_hardwood_thickness() {
    let rows = rows("hardwood_thickness.csv");
    for row in &rows {
        let rough = inches(&row["rough_in"]).unwrap();
        for (surface, column) in [(Surface::Rough, "rough_in"), (Surface::OneSide, "s1s_in"), (Surface::TwoSides, "s2s_in")] {
            let actual = Catalog::new().actual(&Nominal::hardwood(rough).surfaced(surface));
            assert_eq!(actual.ok().and_then(|actual| actual.thickness()), inches(&row[column]), "{row:?}, {column}");
        }
        let planed = inches(&row["s2s_in"]).unwrap();
        assert_eq!(Some(rough - planed), inches(&row["rough_minus_s2s"]), "{row:?}");
        let decimals = usize::from(row["s2s_printed_mm"].contains('.'));
        assert_eq!(in_millimeters(planed, [1, 10][decimals]), figure(&format!("{} mm", row["s2s_printed_mm"])), "{row:?}");
        // The quarters are the name.
        if !row["quarters"].is_empty() {
            assert_eq!(
                row["quarters"].parse::<Nominal>().ok().or(Some(Nominal::hardwood(rough))),
                Some(Nominal::hardwood(rough))
            );
            assert_eq!(format!("{} hardwood", row["quarters"]).parse(), Ok(Nominal::hardwood(rough)), "{row:?}");
        }
    }
    assert_eq!(rows.len(), 12);
}

#[test]
fn every_performance_category() {
    let rows = rows("ply_ps1.csv");
    for row in &rows {
        let category = inches(&row["performance_category"]).unwrap();
        let limits = Catalog::new().actual(&Nominal::panel(category)).unwrap().panel().unwrap();
        assert_eq!(limits.category(), category);
        for (found, exact, printed, metric) in [
            (limits.minimum(), "exact_min_in", "printed_min_in", "printed_min_mm"),
            (limits.maximum(), "exact_max_in", "printed_max_in", "printed_max_mm"),
        ] {
            assert_eq!(found, figure(&row[exact]), "{row:?}");
            assert_eq!(found.round(inch(1, 1000)).unwrap(), figure(&row[printed]), "{row:?}");
            assert_eq!(in_millimeters(found, 100), figure(&format!("{} mm", row[metric])), "{row:?}");
        }
        assert_eq!(limits.label(), figure(&row["printed_label_in"]), "{row:?}");
        // The limits follow from the category: 1/32 in either way to 13/16 in, 5 % above (same source, worked by hand).
        let over = if category <= inch(13, 16) { inch(1, 32) } else { category / 20 };
        assert_eq!((limits.minimum(), limits.maximum()), (category - over, category + over), "{row:?}");
    }
    assert_eq!(rows.len(), 15);
}

/// To so many parts of a millimeter, halves up as the tables print them.
fn in_millimeters(length: Length, parts: u64) -> Length {
    length.round(Rounding::to(Length::fraction(1, parts, Unit::Millimeter))).unwrap()
}

#[test]
#[rustfmt::skip] // one line a case; worked by hand from the tables
fn what_is_not_in_a_table_names_its_neighbors() {
    let catalog = Catalog::new();
    for (name, message) in [
        ("2x7", "7\" is no width of dimension lumber in the table; the nearest are 6\" and 8\""),
        ("1x13", "13\" is no width of boards in the table; the nearest are 12\" and 14\""),
        ("1x18", "18\" is no width of boards in the table; the nearest is 16\""),
        ("1x1", "1\" is no width of boards in the table; the nearest is 2\""),
        ("7/8 x 6 board", "7/8\" is no thickness of boards in the table; the nearest are 3/4\" and 1\""),
        ("6 1/2 x 8 timber", "6 1/2\" is no side of a timber in the table; the nearest are 6\" and 7\""),
        ("7/4 S1S", "1 3/4\" is no thickness of hardwood with an S1S size in the table; the nearest are 1 1/2\" and 2\""),
        ("10/4", "2 1/2\" is no thickness of hardwood in the table; the nearest are 2\" and 3\""),
        ("18 mm ply", "18 mm is no performance category of panels in the table; the nearest are 5/8\" and 23/32\""),
        ("96 x 49", "96\" x 49\" is no size of sheets in the table; the nearest are 48\" x 96\" and 49\" x 97\""),
        ("4x10 sheet", "48\" x 120\" is no size of sheets in the table; the nearest are 1220 mm x 2440 mm and 48\" x 96\""),
        ("8/4 S4S", "the table has no sizes of hardwood, S4S, dry"),
        ("1x6 rough", "the table has no sizes of softwood board, rough, dry"),
        ("6x8 rough", "the table has no sizes of timber, rough, dry"),
        ("2x4 S2S green", "the table has no sizes of dimension lumber, S2S, green"),
    ] {
        let nominal: Nominal = name.parse().unwrap_or_else(|error| panic!("{name}: {error}"));
        let said = catalog.actual(&nominal).map_or_else(|error| error.to_string(), |actual| actual.thickness().unwrap_or_default().to_string() + " " + &actual.width().unwrap_or_default().to_string());
        assert!(said.contains(message), "{name}: {said}");
    }
}

#[test]
fn a_seller_who_differs_brings_a_table() {
    let source = Source::new("the yard's list", Seen::Stated);
    let rows = [HardwoodRow::new(inch(1, 1)).s2s(inch(3, 4)), HardwoodRow::new(inch(2, 1)).s2s(inch(7, 4))];
    let yard = Catalog::new().with_hardwood(Table::new(&rows, source));
    let planed = |rough| Nominal::hardwood(rough).surfaced(Surface::TwoSides);
    let actual = yard.actual(&planed(inch(1, 1))).unwrap();
    assert_eq!((actual.thickness(), actual.sources().collect::<Vec<_>>()), (Some(inch(3, 4)), vec![source]));
    let refused = LumberError::NotInTable {
        what: "thickness of hardwood with an S2S size",
        given: inch(5, 4),
        nearest: [inch(1, 1), inch(2, 1)].into(),
    };
    assert_eq!(yard.actual(&planed(inch(5, 4))), Err(refused));
    // Timbers too: the neighbors are the ends of the yard's own rows.
    let less = inch(1, 2);
    let rows = [TimberRow::new(inch(16, 1), None, less, less), TimberRow::new(inch(8, 1), Some(inch(12, 1)), less, less)];
    let yard = yard.with_timbers(Table::new(&rows, source));
    for (side, neighbors) in [(6, vec![8]), (14, vec![12, 16])] {
        let refused = yard.actual(&Nominal::softwood(inch(side, 1), inch(24, 1)));
        let neighbors: Vec<_> = neighbors.into_iter().map(|side| inch(side, 1)).collect();
        assert!(matches!(&refused, Err(LumberError::NotInTable { nearest, .. }) if **nearest == *neighbors), "{refused:?}");
    }
    // The other tables stay.
    assert_eq!(yard.board_widths(), Catalog::new().board_widths());
}

#[test]
fn every_table_says_where_it_is_from() {
    let catalog = Catalog::new();
    let sources = [
        catalog.board_thicknesses().source(),
        catalog.board_widths().source(),
        catalog.dimension_thicknesses().source(),
        catalog.dimension_widths().source(),
        catalog.timbers().source(),
        catalog.hardwood().source(),
        catalog.panels().source(),
        catalog.sheets().source(),
    ];
    assert!(sources.iter().all(|source| !source.document().is_empty()));
    let from_memory: Vec<_> = sources.iter().filter(|source| source.seen() == Seen::FromMemory).collect();
    assert_eq!(from_memory, [&catalog.sheets().source()]);
}
