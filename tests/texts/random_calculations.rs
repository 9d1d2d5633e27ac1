//! Random calculations against big rationals, and every small text with a hyphen against its two readings.
//! Calculations by hand are in `calculating.rs`.

use crate::support::Choices;
use crate::support::calculation::Tree;
use crate::support::chance::{random, source};
use crate::support::printers::one_of;
use num_rational::BigRational;
use quickcheck::Arbitrary;
use scantling::{ParseErrorKind as Kind, Quantity, Unit, evaluate};

#[test]
fn a_calculation_comes_to_what_big_rationals_come_to() {
    fn property(choices: Choices) -> bool {
        let mut choose = choices.take();
        let unit = one_of(&mut choose, &Unit::ALL);
        Tree::grow(&mut choose, 4).comes_out_right(unit);
        true
    }
    random().tests(2000).quickcheck(property as fn(Choices) -> bool);
}

properties! {
    /// Without brackets products go first, and like signs from left to right.
    fn signs_go_in_the_usual_order(first: u8, rest: Vec<(u8, u8)>) -> bool {
        let rest: Vec<_> = rest.into_iter().take(6).map(|(sign, size)| (['+', '-', '*', '/'][usize::from(sign % 4)], size.max(1))).collect();
        let text = rest.iter().fold(format!("{first} 1/2"), |text, (sign, size)| format!("{text} {sign} {size} 1/2"));
        let half = |size: u8| BigRational::new((i32::from(size) * 2 + 1).into(), 2.into());
        let (mut total, mut product) = (crate::support::whole(0), half(first));
        for (sign, size) in rest {
            match sign {
                '*' => product *= half(size),
                '/' => product /= half(size),
                '+' => (total, product) = (total + product, half(size)),
                _ => (total, product) = (total + product, -half(size)),
            }
        }
        evaluate(&text).is_ok_and(|quantity| matches!(quantity, Quantity::Number(number) if crate::support::big(number) == total + product))
    }
}

/// Both the trees with an answer and those without must be there, or the property above would prove nothing.
#[test]
fn random_calculations_are_of_every_kind() {
    let mut source = source();
    let mut kinds = [0; 5];
    for _ in 0..10_000 {
        let worth = Tree::grow(&mut Choices::arbitrary(&mut source).take(), 3).worth(Unit::Inch);
        kinds[worth.map_or(4, |worth| usize::try_from(worth.dimension).unwrap())] += 1;
    }
    assert!(kinds.iter().all(|count| *count >= 50), "{kinds:?}");
}

/// Every text that takes one piece of each column.
fn every<'a>(columns: &[&[&'a str]]) -> Vec<Vec<&'a str>> {
    columns.iter().fold(vec![Vec::new()], |rows, column| {
        rows.iter().flat_map(|row| column.iter().map(move |piece| [row.as_slice(), &[piece]].concat())).collect()
    })
}

/// What a hyphen does is what one of its readings does: a blank in its place joins, a minus sign subtracts. Where both
/// are readings and differ, the text is refused, but for the everyday spellings named here.
#[test]
fn a_hyphen_is_never_guessed() {
    let (mut read, mut refused) = (0, 0);
    for parts in every(&[
        &["", "1 + ", "1\" - ", "100 - ", "2 * ", "-", "- -", "1\" / 2 - ", "("],
        &["72", "6'", "6 ft", "17 5/8", "1 m", "3\"", "2.5", "½", "12' 11", "2 yd", "5 1/2'", "2 yd 1 ft"],
        &["-", " - ", " -", "- ", "–", " – "],
        &["3/4", "½", "2", "2\"", "3 1/2\"", "11-1/2\"", "5'", "20 cm", "3/4\"", "0.5", "3 / 4", "9/8"],
        &["", " + 1\"", " - 1/2", " * 2", "*2\"", "/2", " / 2", ")"],
    ]) {
        let [before, left, hyphen, right, behind] = parts[..] else { unreachable!() };
        let text = parts.concat();
        // A hyphen joins nothing to meters and yards, though a blank does.
        let never = if left.ends_with(" m") || left.ends_with("yd") { "?" } else { "" };
        let joined = evaluate(&format!("{before}{left} {never}{right}{behind}"));
        let apart = evaluate(&format!("{before}{left} − {right}{behind}"));
        let both = joined.is_ok() && apart.is_ok() && joined != apart;
        let spaced = hyphen.starts_with(' ') && hyphen.ends_with(' ');
        let feet = left.ends_with('\'') || left.ends_with("ft");
        let alone = before.replace(['-', ' '], "").is_empty() && behind.is_empty();
        let everyday = feet && !hyphen.contains(' ') || alone && !spaced;
        let counts = behind.trim_start().starts_with('*');
        match evaluate(&text) {
            Ok(found) if both && everyday => assert_eq!(Ok(found), joined, "{text:?}"),
            Ok(found) if both => assert!(Ok(found) == apart && spaced && (!feet || counts), "{text:?}"),
            Ok(found) => assert!(Ok(found) == joined || Ok(found) == apart, "{text:?}"),
            Err(error) if error.kind() == Kind::HyphenReadings => assert!(joined.is_err() || joined != apart, "{text:?}"),
            Err(_) => assert!(joined.is_err() || apart.is_err(), "{text:?}"),
        }
        *if evaluate(&text).is_ok() { &mut read } else { &mut refused } += 1;
    }
    assert!(read > 10_000 && refused > 10_000, "{read} read, {refused} refused");
}

/// The same for a slash: brackets make a fraction of what stands round it, or keep the numerator with what is in front.
#[test]
fn a_slash_is_never_guessed() {
    let (mut read, mut refused) = (0, 0);
    for parts in every(&[
        &["12", "1 m", "6'", "6' 2\"", "½", "2 1/2", "3/8", "(5)", "2.5", "-12"],
        &["/", " / ", " /", "/ ", "÷", " * ", "*"],
        &["1", "3", "4"],
        &["/", " / ", " /", "/ "],
        &["2", "4", "16"],
        &["", "\"", " mm"],
    ]) {
        let [before, sign, num, slash, den, unit] = parts[..] else { unreachable!() };
        let text = parts.concat();
        let fraction = evaluate(&format!("({before}){sign}({num}/{den}{unit})"));
        let steps = evaluate(&format!("(({before}){sign}({num})) ÷ ({den}{unit})"));
        let both = fraction.is_ok() && steps.is_ok() && fraction != steps;
        match evaluate(&text) {
            Ok(found) if both && slash == "/" => assert!(Ok(found) == fraction && !unit.is_empty(), "{text:?}"),
            Ok(found) if both => assert!(Ok(found) == steps && slash == " / ", "{text:?}"),
            Ok(found) => assert!(Ok(found) == fraction || Ok(found) == steps, "{text:?}"),
            Err(error) if error.kind() == Kind::SlashReadings => assert!(fraction.is_err() || fraction != steps, "{text:?}"),
            Err(_) => assert!(fraction.is_err() || steps.is_err(), "{text:?}"),
        }
        *if evaluate(&text).is_ok() { &mut read } else { &mut refused } += 1;
    }
    assert!(read > 500 && refused > 500, "{read} read, {refused} refused");
}
