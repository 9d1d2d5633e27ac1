//! Sums typed as they are printed, against the printed answers in `data/textbook_sums.csv`; `within` is half the last place printed.
//!
//! Sources, as named in the file: OSX is `OpenStax` Prealgebra 2e, 4 and 7.5 (figures only); ETM Ewen and Nelson, "Elementary Technical
//! Mathematics", 1.7 to 1.12; FAA the Aviation Maintenance Technician Handbook, General, chapter 1; NAV14044 and NAV14069 training courses
//! of the United States Navy, EN5155 and EN5156 of its Army; ICS "The Building Trades Pocketbook"; GRIFFITH "Carpentry"; DANFORTH
//! "Mechanical Processes"; HODGSON "ABC of the Steel Square"; NOYES "Handwork in Wood"; WH13 the Wood Handbook, FPL-GTR-190, chapter 13;
//! NWFA, WOODMAG and MST worked examples of wood movement; the others how-to pages and worked samples, undated or seen without their date.

use csv::Reader;
use num_rational::Ratio;
use scantling::{LengthParser, Unit, evaluate};

#[test]
fn textbook_sums() {
    let fraction = |text: &str| {
        let (num, den) = text.split_once('/').unwrap_or((text, "1"));
        Ratio::<i128>::new(num.parse().unwrap(), den.parse().unwrap())
    };
    let mut rows = Reader::from_reader(include_str!("../data/textbook_sums.csv").as_bytes());
    let mut count = 0;
    for row in rows.records().map(Result::unwrap) {
        let [id, _, expression, unit, printed, within, ..] = row.iter().collect::<Vec<_>>()[..] else { panic!("{row:?}") };
        let answer = match unit {
            "in" => LengthParser::new().evaluate_length(expression).map(|length| length.in_unit(Unit::Inch)),
            "mm" => LengthParser::new().evaluate_length(expression).map(|length| length.in_unit(Unit::Millimeter)),
            _ => evaluate(expression).map(|quantity| quantity.number().unwrap()),
        };
        let off = answer.unwrap_or_else(|error| panic!("{id}: {error}")) - fraction(printed);
        let within = fraction(within);
        assert!(-within <= off && off <= within, "{id}: {expression} is off by {off}");
        count += 1;
    }
    assert_eq!(count, 53);
}
