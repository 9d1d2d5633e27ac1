//! Texts that are lengths, and texts that must be refused.

use scantling::{Comma, LengthParser, Shorthand, Unit};

use super::{golden, inches};

fn parser(option: &str) -> LengthParser {
    let plain = LengthParser::new();
    match option {
        "" => plain,
        "mm" => plain.default_unit(Unit::Millimeter),
        "ft" => plain.default_unit(Unit::Foot),
        "groups" => plain.comma(Comma::Groups),
        "decimal" => plain.comma(Comma::Decimal),
        "sixteenths" => plain.shorthand(Shorthand::FeetInchesSixteenths),
        unknown => panic!("option {unknown:?}"),
    }
}

#[test]
fn every_text() {
    let rows = golden("reading.csv");
    let mut wrong = Vec::new();
    for row in &rows {
        let read = parser(&row[1]).parse(&row[0]);
        let expected = (&row[2] != "refused").then(|| inches(&row[2]));
        if read.as_ref().ok() != expected.as_ref() {
            wrong.push(format!("{row:?} is read as {read:?}"));
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), rows.len(), wrong.join("\n"));
    assert_eq!(rows.len(), 3265);
}
