//! What a listener could make of the words: a reader that is lax on purpose, takes every reading it can
//! find, and hears no hyphens. The words of every length must have one reading, the length itself.

use std::collections::BTreeSet;
use std::string::ToString;
use std::vec::Vec;

use num_rational::Ratio;

use super::inches;
use crate::length::{Length, Unit};
use crate::print::{Denominator, LengthPrinter, Style};

type Readings = BTreeSet<Ratio<i128>>;

#[rustfmt::skip] // read in rows
const BELOW_TWENTY: [&str; 20] = [
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
    "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen",
];
const TENS: [&str; 10] = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
const UNITS: [(&str, &str, i128); 3] = [("inch", "inches", 1), ("foot", "feet", 12), ("yard", "yards", 36)];

fn place(list: &[&str], word: &str) -> Option<i128> {
    list.iter().position(|known| *known == word && !word.is_empty()).and_then(|place| place.try_into().ok())
}

fn without_and<'a>(words: &'a [&'a str]) -> &'a [&'a str] {
    if let ["and", rest @ ..] = words { rest } else { words }
}

/// A whole number, with or without `and` behind its hundreds and thousands.
fn number(words: &[&str]) -> Option<i128> {
    for (scale, worth) in [("million", 1_000_000), ("thousand", 1000), ("hundred", 100)] {
        let Some(at) = words.iter().position(|word| *word == scale) else { continue };
        let count = if words[..at] == ["a"] { 1 } else { number(&words[..at])? };
        let rest = if at + 1 == words.len() { 0 } else { number(without_and(&words[at + 1..]))? };
        return (count < 1000 && rest < worth).then_some(count * worth + rest);
    }
    match words {
        [word] => place(&BELOW_TWENTY, word).or_else(|| Some(place(&TENS, word)? * 10)),
        [tens, ones] => Some(place(&TENS, tens)? * 10 + place(&BELOW_TWENTY[..10], ones).filter(|ones| *ones > 0)?),
        _ => None,
    }
}

/// What a fraction is named after: a number whose last word is an ordinal, one or many.
fn denominator(words: &[&str]) -> Option<i128> {
    let (last, before) = words.split_last()?;
    match (*last, before) {
        ("half" | "halves", []) => return Some(2),
        ("quarter" | "quarters" | "fourth" | "fourths", []) => return Some(4),
        _ => {}
    }
    let ordinal = last.strip_suffix('s').unwrap_or(last);
    let cardinal = match ordinal {
        "first" => "one".to_string(),
        "second" => "two".to_string(),
        "third" => "three".to_string(),
        "fifth" => "five".to_string(),
        "eighth" => "eight".to_string(),
        "ninth" => "nine".to_string(),
        "twelfth" => "twelve".to_string(),
        _ => match ordinal.strip_suffix("ieth") {
            Some(tens) => std::format!("{tens}y"),
            None => ordinal.strip_suffix("th")?.to_string(),
        },
    };
    let words: Vec<&str> = before.iter().copied().chain([cardinal.as_str()]).collect();
    number(&words).filter(|den| *den > 2)
}

/// A fraction of any size.
fn fractions(words: &[&str]) -> Readings {
    let cuts = 1..words.len();
    let read = cuts.filter_map(|at| {
        let num = if matches!(words[..at], ["a" | "an"]) { 1 } else { number(&words[..at])? };
        let den = if words[at] == "over" { number(&words[at + 1..]) } else { denominator(&words[at..]) };
        den.filter(|den| *den > 0).map(|den| Ratio::new(num, den))
    });
    read.collect()
}

/// A whole number, a fraction, or both with or without an `and`, or a decimal.
fn quantities(words: &[&str]) -> Readings {
    let mut all = fractions(words);
    all.extend(number(words).map(Ratio::from));
    all.extend(matches!(words, ["a" | "an"]).then(|| Ratio::from(1)));
    for at in 1..words.len() {
        let Some(whole) = number(&words[..at]) else { continue };
        let proper = fractions(without_and(&words[at..])).into_iter().filter(|part| *part < Ratio::from(1));
        all.extend(proper.map(|part| part + whole));
        if words[at] == "point" {
            let digits = words[at + 1..].iter().map(|digit| place(&BELOW_TWENTY[..10], digit));
            let scaled = digits.rev().try_fold(Ratio::from(0), |sum: Ratio<i128>, digit| Some((sum + digit?) / 10));
            all.extend(scaled.map(|decimals| decimals + whole));
        }
    }
    all
}

/// Numbers with their units from `largest` inches down, and perhaps a fraction of a unit behind the last.
fn terms(words: &[&str], largest: i128) -> Readings {
    let mut all = Readings::new();
    for (at, word) in words.iter().enumerate() {
        let Some((.., worth)) = UNITS.iter().find(|(one, many, _)| word == one || word == many) else { continue };
        let number = words[..at].strip_suffix(&["of", "an"]).unwrap_or(&words[..at]);
        let rest = without_and(&words[at + 1..]);
        let mut behind = if *worth < largest { terms(rest, *worth) } else { Readings::new() };
        behind.extend(rest.is_empty().then(|| Ratio::from(0)));
        // Half of what: of this unit, or of the next below?
        let part = rest.strip_suffix(&["of", "an", "inch"]).filter(|_| *worth == 1).unwrap_or(rest);
        behind.extend(fractions(part).into_iter().flat_map(|part| [part * *worth, part * (*worth / 12).max(1)]));
        for quantity in if *worth < largest { quantities(number) } else { Readings::new() } {
            all.extend(behind.iter().map(|behind| quantity * *worth + behind));
        }
    }
    all
}

fn heard(text: &str) -> Readings {
    let words: Vec<&str> = text.split([' ', '-']).collect();
    match &words[..] {
        ["minus", rest @ ..] => terms(rest, i128::MAX).into_iter().map(|reading| -reading).collect(),
        ["plus", rest @ ..] => terms(rest, i128::MAX),
        words => terms(words, i128::MAX),
    }
}

#[track_caller]
fn has_one_reading(printer: LengthPrinter, length: Length) {
    let words = printer.say(length).unwrap().to_string();
    assert_eq!(heard(&words), Readings::from([length.in_unit(Unit::Inch)]), "{words}");
}

#[test]
fn the_ear_hears_what_could_be_heard() {
    // Texts that are known to have two readings, or one.
    let cases = [
        ("twenty five eighths inches", 2),
        ("twenty-one thirty-seconds of an inch", 2),
        ("two hundred and five eighths inches", 2),
        ("two feet and a half", 2),
        ("six feet and a half inch", 1),
        ("two inches and a half", 1),
        ("seventeen and five eighths inches", 1),
        ("seventeen five eighths inches", 1),
        ("three quarters of an inch", 1),
        ("two thirds of an inch", 1),
        ("an eighth inch", 1),
        ("six foot two and a half inches", 1),
        ("eleven inches two feet", 0),
        ("one two inches", 0),
    ];
    for (words, count) in cases {
        assert_eq!(heard(words).len(), count, "{words}: {:?}", heard(words));
    }
}

#[test]
fn every_64th_has_one_reading() {
    let near = (0..130 * 64).chain(195 * 64..205 * 64).chain(995 * 64..1005 * 64);
    for count in near.chain((0..2000 * 64).step_by(56)) {
        for style in [Style::Inches, Style::FeetInches, Style::Yards] {
            has_one_reading(LengthPrinter::new().style(style), inches(count, 64));
        }
    }
    has_one_reading(LengthPrinter::new(), inches(-141, 8));
}

#[test]
fn every_fraction_has_one_reading() {
    for den in (1..=66).chain([96, 100, 127, 128, 1000]) {
        for num in 0..i64::try_from(den).unwrap() {
            for whole in [0, 1, 20, 100, 1029] {
                let length = inches(whole, 1) + inches(num, den);
                has_one_reading(LengthPrinter::new(), length);
                let fixed = LengthPrinter::new().denominator(Denominator::Fixed(den.try_into().unwrap()));
                has_one_reading(fixed.style(Style::FeetInches), length);
            }
        }
    }
}

#[test]
fn every_thousandth_has_one_reading() {
    for count in 0..3000 {
        has_one_reading(LengthPrinter::new().style(Style::DecimalInches), inches(count, 1000));
        has_one_reading(LengthPrinter::new().style(Style::DecimalFeet), Length::fraction(count, 100, Unit::Foot));
    }
}
