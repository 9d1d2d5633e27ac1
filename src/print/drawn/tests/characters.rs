//! Small drawings, character for character, and where they are written to.

use core::fmt;
use std::string::ToString;
use std::vec::Vec;

use super::{drawn, every, inches, kinds, millimeters};
use crate::length::{Length, Unit};
use crate::print::tests::Narrow;
use crate::tape::Tape;

/// A drawing against rows that are moved in and begin in a line of their own.
#[track_caller]
fn looks(tape: Tape, position: Length, rows: &str) {
    let drawing = drawn(tape, position).to_string();
    let rows = rows.trim_end_matches(' ').strip_prefix('\n').unwrap();
    let indent = rows.lines().filter(|row| !row.is_empty()).map(|row| row.len() - row.trim_start().len()).min().unwrap();
    let expected: Vec<_> = rows.lines().map(|row| row.get(indent..).unwrap_or_default()).collect();
    assert_eq!(drawing.lines().collect::<Vec<_>>(), expected, "\n{drawing}");
    assert!(drawing.ends_with('\n'));
}

/// Each rule in inches, on a piece so short that all of it is seen.
#[test]
fn rules_in_inches() {
    looks(
        Tape::sixteenths().length(inches(1, 1)),
        inches(11, 16),
        r#"
                               11/16"
                              1 2 ▼
            ┌─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┐
            │   ╵   │   ╵   │   ╵   │   ╵   │
            │               ╵               │
            │                               │
            │ 0                           1 │
            └───────────────────────────────┘
        "#,
    );
    looks(
        Tape::thirty_seconds().length(inches(1, 1)),
        inches(21, 32),
        r#"
                                                   21/32"
                                                      ▼ 2 1
            ┌─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┐
            │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │
            │               ╵               │               ╵               │
            │                                                               │
            │ 0                                                           1 │
            └───────────────────────────────────────────────────────────────┘
        "#,
    );
    looks(
        Tape::sixty_fourths().length(inches(1, 1)),
        inches(43, 64),
        r#"
                                                    43/64"
                                                       ▼4321
            ┌┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┰┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┐
            │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │ ╵ │
            │       ╵       │       ╵       │       ╵       │       ╵       │
            │                               ╵                               │
            │                                                               │
            │ 0                                                           1 │
            └───────────────────────────────────────────────────────────────┘
        "#,
    );
    looks(
        Tape::eighths().length(inches(2, 1)),
        inches(11, 8),
        r#"
                                          1-3/8"
                                             ▼
            ╌┬───┬───┬───┬───┬───┬───┬───┬───┰───┬───┬───┬───┬───┐
                 │       ╵       │       ╵       │       ╵       │
                                 │                               │
                                 1                             2 │
            ╌────────────────────────────────────────────────────┘
        "#,
    );
    looks(
        every(inches(1, 4)).length(inches(2, 1)),
        inches(3, 2),
        r#"
                                          1-1/2"
                                             ▼
            ╌┬───────┬───────┬───────┬───────┰───────┬───────┐
             ╵               │               ╹               │
                             ╵                               │
                             1                             2 │
            ╌────────────────────────────────────────────────┘
        "#,
    );
    looks(
        every(inches(1, 1)).length(inches(4, 1)),
        inches(4, 1),
        r#"
                                           4"
                                            ▼
            ┌───────┬───────┬───────┬───────┐
            │       ╵       ╵       ╵       │
            │ 0     1       2       3     4 │
            └───────────────────────────────┘
        "#,
    );
}

#[test]
fn rules_in_millimeters() {
    looks(
        Tape::millimeters().length(millimeters(20, 1)),
        millimeters(13, 1),
        r"
                                         13 mm
                                     1  2  ▼
            ╌┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┰──┬──┬──┬──┬──┬──┬──┐
                   ╵              │              ╵              │
                                  ╵                             │
                                 10                          20 │
            ╌───────────────────────────────────────────────────┘
        ",
    );
    looks(
        Tape::half_millimeters().length(millimeters(12, 1)),
        millimeters(15, 2),
        r"
                                       7.5 mm
                                  1 2 3 4 ▼
            ┌─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┐
            │   ╵   ╵   ╵   ╵   │   ╵   ╵   ╵   ╵   │   ╵   │
            │                                       │       │
            │ 0                                    10       │
            └───────────────────────────────────────────────┘
        ",
    );
    looks(
        Tape::millimeters(),
        millimeters(3000, 1),
        r"
                                              3000 mm
                                                 ▼
            ╌┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┰──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬╌
                   │              ╵              ┃              ╵              │
                   ╵                             ╹                             ╵
                 2990                          3000                          3010
                                                3 m
            ╌─────────────────────────────────────────────────────────────────────────╌
        ",
    );
}

#[test]
fn a_tape_that_goes_on_and_one_that_ends() {
    looks(
        Tape::eighths(),
        Length::new(1, Unit::Foot),
        r#"
                                                12"
                                                 ▼
            ╌┬───┬───┬───┬───┬───┬───┬───┬───┬───┰───┬───┬───┬───┬───┬───┬───┬───┬───┬╌
                 │       ╵       │       ╵       ┃       ╵       │       ╵       │
                 │                               ┃                               │
                11                              12                              13
                                               1 ft
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        Tape::sixteenths(),
        inches(1, 2),
        r#"
                          1/2"
                            ▼
            ┌─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
            │   ╵   │   ╵   ┃   ╵   │   ╵   │   ╵   │   ╵   │   ╵
            │               ╹               │               ╵
            │                               ╵
            │ 0                             1
            └────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        Tape::sixteenths(),
        Length::new(30, Unit::Foot),
        r#"
                                               360"
                                                 ▼
            ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
             ╵   │   ╵   │   ╵   │   ╵   │   ╵   ┃   ╵   │   ╵   │   ╵   │   ╵   │   ╵
                 │               ╵               ┃               ╵               │
                 ╵                               ╹                               ╵
                359                             360                             361
                                               30 ft
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        Tape::sixteenths().length(inches(6149, 32)),
        inches(3059, 16),
        r#"
                                   191-3/16"
                                   1 2 ▼
            ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬┐
             ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵│
                 ╵               │               ╵               │    │
                                 ╵                               ╵    │
                                191                             192   │
                                                               16 ft  │
            ╌─────────────────────────────────────────────────────────┘
        "#,
    );
}

#[test]
fn strong_and_shy_and_held_at_another_line() {
    looks(
        Tape::sixteenths().offset(inches(1, 1)),
        inches(87, 5),
        r#"
                                  18-3/8" strong by 1/40"
                                           1 ▼
            ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
             ╵   │   ╵   │   ╵   │   ╵   │   ╹   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵
                 ╵               │               ╵               │               ╵
                                 ╵                               ╵
                                18                              19
            ╌─────────────────────────────────────────────────────────────────────────╌
             Held at 1": the mark is 17-3/8" from there.
        "#,
    );
    looks(
        Tape::millimeters().offset(millimeters(-10, 1)),
        millimeters(200, 3),
        r"
                                              57 mm shy by 1/3 mm
                                                    1  ▼
            ╌┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┰──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬╌
                   ╵              │              ╵              │              ╵
                                  ╵                             ╵
                                 50                            60
            ╌─────────────────────────────────────────────────────────────────────────╌
             Held at -10 mm: the mark is 67 mm from there.
        ",
    );
}

#[test]
fn below_zero() {
    looks(
        Tape::sixteenths(),
        inches(-3, 16),
        r#"
                                                        -3/16"
                                                           ▼ 2 1
            ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
             ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵   │   ╵
                 ╵               │               ╵               │               ╵
                                 ╵                               ╵
                                -1                               0
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        Tape::eighths(),
        inches(-12, 1),
        r#"
                                               -12"
                                                 ▼
            ╌┬───┬───┬───┬───┬───┬───┬───┬───┬───┰───┬───┬───┬───┬───┬───┬───┬───┬───┬╌
                 │       ╵       │       ╵       ┃       ╵       │       ╵       │
                 │                               ┃                               │
                -13                             -12                             -11
                                               -1 ft
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
}

#[test]
fn odd_steps() {
    looks(
        every(inches(1, 10)),
        inches(173, 10),
        r#"
                                       17-3/10"
                                     1  2  ▼
            ╌┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┰──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬──┬╌
                                  │                             │
                                 17                            18
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        every(inches(3, 16)),
        inches(69, 4),
        r#"
                                                      17-1/4"
                                                         ▼ 3 2 1
            ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
                                 │                               │
                                15                              18
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        every(inches(1, 1000)),
        inches(17377, 1000),
        r#"
                                           17-377/1000"
                                                 ▼
            ╌┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┰┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬┬╌


            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        every(Length::fraction(1, 10, Unit::Foot)),
        Length::new(2, Unit::Foot),
        r#"
                                                24"
                                                 ▼
            ╌┬─────┬─────┬─────┬─────┬─────┬─────┰─────┬─────┬─────┬─────┬─────┬─────┬╌
                   │                             ┃                             │
                  18                            24                            30
                                               2 ft
            ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
    looks(
        every(millimeters(1, 3)),
        millimeters(1, 1),
        r"
                                  1 mm
                                    ▼
            ┌───────┬───────┬───────┰───────┬───────┬───────┬───────┬╌
            │                       ┃                       │
            │ 0                     1                       2
            └────────────────────────────────────────────────────────╌
        ",
    );
}

#[test]
fn far_out() {
    looks(
        Tape::sixteenths(),
        Length::new(i64::MAX, Unit::Inch),
        r#"
                                           9223372036854775807"
                                                     ▼
                ╌┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┰─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬─┬╌
                 ╵   │   ╵   │   ╵   │   ╵   │   ╵   ┃   ╵   │   ╵   │   ╵   │   ╵   │   ╵
                     │               ╵               ┃               ╵               │
                     ╵                               ╹                               ╵
            9223372036854775806             9223372036854775807             9223372036854775808
                ╌─────────────────────────────────────────────────────────────────────────╌
        "#,
    );
}

#[test]
fn a_sink_that_fails_is_heard() {
    let drawing = drawn(Tape::sixteenths().offset(inches(1, 1)), inches(87, 5));
    let length = drawing.to_string().len();
    assert_eq!(drawing.write_to(&mut Narrow(length)), Ok(()));
    for room in 0..length {
        assert_eq!(drawing.write_to(&mut Narrow(room)), Err(fmt::Error), "{room}");
    }
}

#[test]
fn trailing_blanks_are_left_out() {
    for (tape, ..) in kinds() {
        let drawing = drawn(tape, tape.step() * 21).to_string();
        assert!(drawing.lines().all(|row| row.trim_end() == row), "{drawing}");
    }
}
