//! The words for every line between two numbers, written out by hand, and read back by counting.

use std::collections::BTreeSet;
use std::format;
use std::string::ToString;

use super::{drawn, every, inches, kinds, millimeters};
use crate::length::{Length, Unit};
use crate::tape::Tape;

/// The words of all lines from one number to the next.
#[track_caller]
fn said(tape: Tape, number: Length, expected: &[&str]) {
    let mut position = number;
    for words in expected {
        assert_eq!(drawn(tape, position).words().to_string(), *words, "{position}");
        position += tape.step();
    }
}

#[test]
fn every_line_of_an_inch_in_sixteenths() {
    let words = [
        "the longest line, at 17",
        "the first line past 17",
        "the second line past 17",
        "the third line past 17",
        "the medium line halfway between 17 and the half",
        "the first line past the quarter, between 17 and 18",
        "the second line past the quarter, between 17 and 18",
        "the third line past the quarter, between 17 and 18",
        "the long line halfway between 17 and 18",
        "the first line past the half, between 17 and 18",
        "the second line past the half, between 17 and 18",
        "the third line past the half, between 17 and 18",
        "the medium line halfway between the half and 18",
        "the first line past the three-quarter, between 17 and 18",
        "the second line past the three-quarter, between 17 and 18",
        "the third line past the three-quarter, between 17 and 18",
        "the longest line, at 18",
    ];
    said(Tape::sixteenths(), inches(17, 1), &words);
}

#[test]
fn every_line_of_an_inch_in_thirty_seconds() {
    let words = [
        "the longest line, at 359",
        "the first line past 359",
        "the second line past 359",
        "the third line past 359",
        "the fourth line past 359",
        "the third line before the quarter, between 359 and 360",
        "the second line before the quarter, between 359 and 360",
        "the first line before the quarter, between 359 and 360",
        "the medium line halfway between 359 and the half",
        "the first line past the quarter, between 359 and 360",
        "the second line past the quarter, between 359 and 360",
        "the third line past the quarter, between 359 and 360",
        "the fourth line past the quarter, between 359 and 360",
        "the third line before the half, between 359 and 360",
        "the second line before the half, between 359 and 360",
        "the first line before the half, between 359 and 360",
        "the long line halfway between 359 and 360",
        "the first line past the half, between 359 and 360",
        "the second line past the half, between 359 and 360",
        "the third line past the half, between 359 and 360",
        "the fourth line past the half, between 359 and 360",
        "the third line before the three-quarter, between 359 and 360",
        "the second line before the three-quarter, between 359 and 360",
        "the first line before the three-quarter, between 359 and 360",
        "the medium line halfway between the half and 360",
        "the first line past the three-quarter, between 359 and 360",
        "the second line past the three-quarter, between 359 and 360",
        "the third line past the three-quarter, between 359 and 360",
        "the fourth line past the three-quarter, between 359 and 360",
        "the third line before 360",
        "the second line before 360",
        "the first line before 360",
        "the longest line, at 360 (30 ft)",
    ];
    said(Tape::thirty_seconds(), inches(359, 1), &words);
}

#[test]
fn every_line_of_ten_millimeters() {
    let words = [
        "the longest line, at 990",
        "the first line past 990",
        "the second line past 990",
        "the third line past 990",
        "the fourth line past 990",
        "the long line halfway between 990 and 1000",
        "the first line past the middle line, between 990 and 1000",
        "the second line past the middle line, between 990 and 1000",
        "the third line past the middle line, between 990 and 1000",
        "the fourth line past the middle line, between 990 and 1000",
        "the longest line, at 1000 (1 m)",
    ];
    said(Tape::millimeters(), millimeters(990, 1), &words);
}

#[test]
fn every_line_of_five_millimeters_in_halves() {
    let words = [
        "the longest line, at 0",
        "the first line past 0",
        "the second line past 0",
        "the third line past 0",
        "the fourth line past 0",
        "the fifth line past 0",
        "the fourth line before the middle line, between 0 and 10",
        "the third line before the middle line, between 0 and 10",
        "the second line before the middle line, between 0 and 10",
        "the first line before the middle line, between 0 and 10",
        "the long line halfway between 0 and 10",
    ];
    said(Tape::half_millimeters(), Length::ZERO, &words);
}

#[test]
fn coarse_rules_need_few_words() {
    let eighths = [
        "the longest line, at 17",
        "the line just past 17",
        "the medium line halfway between 17 and the half",
        "the line just past the quarter, between 17 and 18",
        "the long line halfway between 17 and 18",
        "the line just past the half, between 17 and 18",
        "the medium line halfway between the half and 18",
        "the line just past the three-quarter, between 17 and 18",
        "the longest line, at 18",
    ];
    said(Tape::eighths(), inches(17, 1), &eighths);
    let halves = ["the longest line, at 17", "the long line halfway between 17 and 18", "the longest line, at 18"];
    said(every(inches(1, 2)), inches(17, 1), &halves);
    said(every(inches(1, 1)), inches(11, 1), &["the line at 11", "the line at 12 (1 ft)"]);
    said(every(millimeters(10, 1)), millimeters(990, 1), &["the line at 990", "the line at 1000 (1 m)"]);
}

#[test]
fn odd_steps_are_counted_from_the_numbers() {
    let tenths = [
        "the longest line, at 17",
        "the first line past 17",
        "the second line past 17",
        "the third line past 17",
        "the fourth line past 17",
        "the fifth line past 17",
        "the fourth line before 18",
        "the third line before 18",
        "the second line before 18",
        "the first line before 18",
        "the longest line, at 18",
    ];
    said(every(inches(1, 10)), inches(17, 1), &tenths);
    said(every(inches(5, 2)), inches(10, 1), &["the longest line, at 10", "the line just past 10", "the longest line, at 15"]);
    let words = |step, position| drawn(every(step), position).words().to_string();
    let cases = [
        (inches(1, 1000), inches(17_377, 1000), "the 377th line past 17"),
        (inches(1, 1000), inches(17_011, 1000), "the 11th line past 17"),
        (inches(1, 1000), inches(17_021, 1000), "the 21st line past 17"),
        (inches(1, 1000), inches(17_112, 1000), "the 112th line past 17"),
        (inches(1, 1000), inches(17_978, 1000), "the 22nd line before 18"),
        (inches(1, 1000), inches(17_977, 1000), "the 23rd line before 18"),
        (inches(355, 113), inches(355 * 112, 113), "the first line before 355"),
        (
            Length::fraction(1, u64::MAX, Unit::Inch),
            Length::fraction(1 << 62, u64::MAX, Unit::Inch),
            "the 4611686018427387904th line past 0",
        ),
    ];
    for (step, position, expected) in cases {
        assert_eq!(words(step, position), expected);
    }
}

#[test]
fn below_zero_is_said_last() {
    let words = |tape, position| drawn(tape, position).words().to_string();
    let cases = [
        (Tape::sixteenths(), inches(-1, 16), "the first line past 0, below zero"),
        (Tape::sixteenths(), inches(-1, 4), "the medium line halfway between 0 and the half, below zero"),
        (Tape::sixteenths(), inches(-1, 1), "the longest line, at 1, below zero"),
        (Tape::sixteenths(), inches(-283, 16), "the third line past the half, between 17 and 18, below zero"),
        (Tape::thirty_seconds(), inches(-1, 2), "the long line halfway between 0 and 1, below zero"),
        (Tape::thirty_seconds(), inches(-31, 32), "the first line before 1, below zero"),
        (Tape::eighths(), inches(-360, 1), "the longest line, at 360 (30 ft), below zero"),
        (Tape::millimeters(), millimeters(-367, 1), "the second line past the middle line, between 360 and 370, below zero"),
    ];
    for (tape, position, expected) in cases {
        assert_eq!(words(tape, position), expected, "{position}");
    }
}

/// Follows the words along a tape as a person would, who knows how many lines there are between two numbers
/// and what these count, and so gives the line in steps from zero.
fn followed(words: &str, per_number: i64, number: i64) -> i64 {
    let (words, sign) = words.strip_suffix(", below zero").map_or((words, 1), |above| (above, -1));
    let words = words.split(" (").next().unwrap().strip_prefix("the ").unwrap();
    let (path, between) = words.split_once(", between ").unwrap_or((words, ""));
    let below = || between.split(" and ").next().unwrap();
    let steps = |number_at: &str| number_at.parse::<i64>().unwrap() / number * per_number;
    let landmark = |name: &str| match name {
        "the quarter" => steps(below()) + per_number / 4,
        "the half" | "the middle line" => steps(below()) + per_number / 2,
        "the three-quarter" => steps(below()) + per_number * 3 / 4,
        _ => steps(name),
    };
    let count = |ordinal: &str| {
        let spelled = ["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];
        let few = spelled.iter().position(|word| *word == ordinal).map(|place| i64::try_from(place).unwrap() + 1);
        few.unwrap_or_else(|| ordinal[..ordinal.len() - 2].parse().unwrap())
    };
    let line = if let Some((_, at)) = path.split_once("line at ").or(path.split_once("longest line, at ")) {
        steps(at)
    } else if let Some((_, ends)) = path.split_once("line halfway between ") {
        match ends.split_once(" and ").unwrap() {
            (below, "the half") => steps(below) + per_number / 4,
            ("the half", above) => steps(above) - per_number / 4,
            (below, _) => steps(below) + per_number / 2,
        }
    } else if let Some((_, from)) = path.split_once("line just past ") {
        landmark(from) + 1
    } else if let Some((ordinal, from)) = path.split_once(" line past ") {
        landmark(from) + count(ordinal)
    } else {
        let (ordinal, from) = path.split_once(" line before ").unwrap();
        landmark(from) - count(ordinal)
    };
    sign * line
}

#[test]
fn words_lead_back_to_the_line_and_to_no_other() {
    for (tape, per_number, number) in kinds() {
        let step = tape.step();
        let mut seen = BTreeSet::new();
        for line in -2 * per_number..=2 * per_number {
            let words = drawn(tape, step * line).words().to_string();
            assert_eq!(followed(&words, per_number, number), line, "{words}, every {step}");
            assert!(seen.insert(words.clone()), "{words} twice, every {step}");
        }
    }
}

#[test]
fn words_are_padded() {
    let words = drawn(every(inches(1, 1)), inches(5, 1)).words();
    assert_eq!(format!("[{words:>14}] [{words:-<16}] [{words:.3}]"), "[ the line at 5] [the line at 5---] [the line at 5]");
}
