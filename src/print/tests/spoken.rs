//! Lengths in words, one line a case. Unless a line says otherwise the words are common practice and were
//! written by hand. That they have one reading is left to `ear.rs`.

use std::format;
use std::string::ToString;

use super::{inches, millimeters};
use crate::length::{Length, Unit};
use crate::print::{Denominator, Join, LengthPrinter, Marks, Places, PrintError, Sign, Style, Zeros};

const PLAIN: LengthPrinter = LengthPrinter::new();
const FEET: LengthPrinter = PLAIN.style(Style::FeetInches);
const YARDS: LengthPrinter = PLAIN.style(Style::Yards);
const METRIC: LengthPrinter = PLAIN.style(Style::Millimeters);

#[track_caller]
fn says(printer: LengthPrinter, cases: &[(Length, &str)]) {
    for (length, words) in cases {
        assert_eq!(printer.say(*length).unwrap().to_string(), *words);
    }
}

#[test]
fn inches_and_fractions() {
    says(
        PLAIN,
        &[
            (inches(0, 1), "zero inches"),
            (inches(1, 1), "one inch"),
            (inches(-1, 1), "minus one inch"),
            (inches(2, 1), "two inches"),
            (inches(17, 1), "seventeen inches"),
            (inches(1, 2), "one half inch"),
            (inches(-1, 2), "minus one half inch"),
            (inches(1, 4), "one quarter inch"),
            (inches(3, 4), "three quarters of an inch"),
            (inches(1, 16), "one sixteenth inch"),
            (inches(5, 8), "five eighths of an inch"),
            (inches(-5, 8), "minus five eighths of an inch"),
            (inches(17, 32), "seventeen thirty-seconds of an inch"),
            (inches(3, 2), "one and a half inches"),
            (inches(5, 2), "two and a half inches"),
            (inches(33, 16), "two and one sixteenth inches"),
            (inches(141, 8), "seventeen and five eighths inches"),
            (inches(-141, 8), "minus seventeen and five eighths inches"),
            (inches(767, 64), "eleven and sixty-three sixty-fourths inches"),
            (inches(149, 4), "thirty-seven and one quarter inches"),
            (inches(2, 5), "two fifths of an inch"),
            (inches(87, 5), "seventeen and two fifths inches"),
            (inches(1, 3), "one third inch"),
            (inches(20, 21), "twenty twenty-firsts of an inch"),
        ],
    );
}

#[test]
fn a_numerator_of_two_words_stands_behind_a_whole_number() {
    says(
        PLAIN,
        &[
            (inches(21, 32), "zero and twenty-one thirty-seconds inches"),
            (inches(-21, 32), "minus zero and twenty-one thirty-seconds inches"),
            (inches(63, 64), "zero and sixty-three sixty-fourths inches"),
            (inches(565, 32), "seventeen and twenty-one thirty-seconds inches"),
            (inches(83, 128), "zero and eighty-three over one hundred twenty-eight inches"),
        ],
    );
}

#[test]
fn denominators_past_64_are_said_with_over() {
    says(
        PLAIN,
        &[
            (inches(1, 128), "one over one hundred twenty-eight of an inch"),
            (inches(50, 127), "fifty over one hundred twenty-seven of an inch"),
            (inches(55, 127), "zero and fifty-five over one hundred twenty-seven inches"),
            (inches(17 * 128 + 1, 128), "seventeen and one over one hundred twenty-eight inches"),
            (inches(200 * 127 + 9, 127), "two hundred inches and nine over one hundred twenty-seven of an inch"),
            (inches(1, 65), "one over sixty-five of an inch"),
            (inches(1, 1000), "one over one thousand of an inch"),
        ],
    );
}

#[test]
fn whole_hundreds_are_finished_before_their_fraction() {
    says(
        PLAIN,
        &[
            (inches(100, 1), "one hundred inches"),
            (inches(201, 2), "one hundred inches and a half"),
            (inches(1605, 8), "two hundred inches and five eighths"),
            (inches(-1605, 8), "minus two hundred inches and five eighths"),
            (inches(3221, 32), "one hundred inches and twenty-one thirty-seconds"),
            (inches(4001, 4), "one thousand inches and one quarter"),
            (inches(809, 8), "one hundred one and one eighth inches"),
            (inches(881, 8), "one hundred ten and one eighth inches"),
            (inches(8009, 8), "one thousand one and one eighth inches"),
            (inches(9601, 8), "one thousand two hundred inches and one eighth"),
        ],
    );
}

#[test]
fn feet_and_yards() {
    says(
        FEET,
        &[
            (inches(0, 1), "zero inches"),
            (inches(1, 1), "one inch"),
            (inches(12, 1), "one foot"),
            (inches(13, 1), "one foot one inch"),
            (inches(72, 1), "six feet"),
            (inches(149, 2), "six feet two and a half inches"),
            (inches(-149, 2), "minus six feet two and a half inches"),
            (inches(145, 2), "six feet zero and a half inches"),
            (inches(577, 8), "six feet zero and one eighth inches"),
            (inches(581, 8), "six feet zero and five eighths inches"),
            (inches(6, 1), "six inches"),
            (inches(1, 2), "one half inch"),
            (inches(-3, 4), "minus three quarters of an inch"),
            (inches(1405, 2), "fifty-eight feet six and a half inches"),
            (inches(1200, 1), "one hundred feet"),
            (inches(2403, 2), "one hundred feet one and a half inches"),
        ],
    );
    says(
        YARDS,
        &[
            (inches(87, 1), "two yards one foot three inches"),
            (inches(36, 1), "one yard"),
            (inches(75, 1), "two yards three inches"),
            (inches(84, 1), "two yards one foot"),
            (inches(145, 2), "two yards zero and a half inches"),
            (inches(-96, 1), "minus two yards two feet"),
            (inches(1, 2), "one half inch"),
            (inches(0, 1), "zero inches"),
        ],
    );
}

#[test]
fn sixteenths_and_fixed_denominators_stay_what_they_are() {
    says(
        PLAIN.style(Style::FeetInchesSixteenths),
        &[
            (inches(297, 2), "twelve feet four and eight sixteenths inches"),
            (inches(2407, 8), "twenty-five feet zero and fourteen sixteenths inches"),
            (inches(144, 1), "twelve feet"),
        ],
    );
    says(
        PLAIN.denominator(Denominator::Fixed(16)),
        &[
            (inches(139, 8), "seventeen and six sixteenths inches"),
            (inches(1, 2), "eight sixteenths of an inch"),
            (inches(17, 1), "seventeen inches"),
        ],
    );
    says(PLAIN.denominator(Denominator::Fixed(4)), &[(inches(5, 2), "two and two quarters inches")]);
    says(PLAIN.denominator(Denominator::Fixed(64)), &[(inches(1, 2), "zero and thirty-two sixty-fourths inches")]);
}

#[test]
fn decimals_digit_by_digit() {
    says(
        METRIC,
        &[
            (millimeters(0, 1), "zero millimeters"),
            (millimeters(1, 1), "one millimeter"),
            (millimeters(-18, 1), "minus eighteen millimeters"),
            (inches(141, 8), "four hundred forty-seven point six seven five millimeters"),
            (millimeters(1, 2), "zero point five millimeters"),
            (millimeters(1001, 1000), "one point zero zero one millimeters"),
            (inches(96, 1), "two thousand four hundred thirty-eight point four millimeters"),
        ],
    );
    says(
        METRIC.places(Places::Exactly(2)),
        &[(millimeters(1, 1), "one point zero zero millimeters"), (millimeters(0, 1), "zero point zero zero millimeters")],
    );
    says(PLAIN.style(Style::Centimeters), &[(millimeters(365, 1), "thirty-six point five centimeters")]);
    says(PLAIN.style(Style::Meters), &[(millimeters(1000, 1), "one meter"), (millimeters(1200, 1), "one point two meters")]);
    says(PLAIN.style(Style::DecimalInches), &[(inches(141, 8), "seventeen point six two five inches")]);
    says(PLAIN.style(Style::DecimalFeet), &[(inches(12, 1), "one foot"), (inches(63, 1), "five point two five feet")]);
    let error = METRIC.say(inches(1, 3)).unwrap_err();
    assert_eq!(error, PrintError::Uneven { length: inches(1, 3), unit: Unit::Millimeter, places: 24 });
}

#[test]
fn signs_are_words_and_the_other_settings_have_none() {
    says(PLAIN.sign(Sign::TrueMinus), &[(inches(-1, 2), "minus one half inch"), (inches(1, 2), "one half inch")]);
    says(
        PLAIN.sign(Sign::Plus),
        &[
            (inches(1, 64), "plus one sixty-fourth inch"),
            (inches(-1, 64), "minus one sixty-fourth inch"),
            (inches(0, 1), "zero inches"),
        ],
    );
    let written = FEET.join(Join::Glyph).marks(Marks::Primes).zeros(Zeros::Kept);
    says(written, &[(inches(72, 1), "six feet"), (inches(6, 1), "six inches")]);
}

#[test]
fn every_ordinal() {
    // Common practice: quarters, not fourths.
    let names = "half third quarter fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth \
        sixteenth seventeenth eighteenth nineteenth twentieth twenty-first twenty-second twenty-third twenty-fourth \
        twenty-fifth twenty-sixth twenty-seventh twenty-eighth twenty-ninth thirtieth thirty-first thirty-second \
        thirty-third thirty-fourth thirty-fifth thirty-sixth thirty-seventh thirty-eighth thirty-ninth fortieth forty-first \
        forty-second forty-third forty-fourth forty-fifth forty-sixth forty-seventh forty-eighth forty-ninth fiftieth \
        fifty-first fifty-second fifty-third fifty-fourth fifty-fifth fifty-sixth fifty-seventh fifty-eighth fifty-ninth \
        sixtieth sixty-first sixty-second sixty-third sixty-fourth";
    assert_eq!(names.split_whitespace().count(), 63);
    for (den, name) in (2..).zip(names.split_whitespace()) {
        says(PLAIN, &[(inches(1, den), &format!("one {name} inch"))]);
        if den % 2 == 1 {
            says(PLAIN, &[(inches(2, den), &format!("two {name}s of an inch"))]);
        }
    }
}

#[test]
fn the_longest_numbers() {
    let million = 1_000_000;
    says(
        PLAIN,
        &[
            (inches(million, 1), "one million inches"),
            (inches(2 * million * million + 17, 1), "two trillion seventeen inches"),
            (
                inches(i64::MAX, 1),
                "nine quintillion two hundred twenty-three quadrillion three hundred seventy-two trillion thirty-six billion \
             eight hundred fifty-four million seven hundred seventy-five thousand eight hundred seven inches",
            ),
            (
                Length::MAX,
                "three septillion ninety-eight sextillion forty-six quintillion three hundred quadrillion eight hundred twenty \
             trillion five hundred ninety-two billion nine hundred thirty-three million eight hundred seventeen thousand \
             five hundred fifty-four and fifty-four trillion seven hundred seventy-seven billion two hundred twenty-eight \
             million one hundred five thousand seven hundred twenty-seven over fifty-four trillion nine hundred eighteen \
             billion eight hundred sixty-four million inches",
            ),
        ],
    );
}

#[test]
fn words_are_padded_as_a_whole() {
    let said = PLAIN.say(inches(1, 2)).unwrap();
    assert_eq!(format!("[{said:>15}] [{said:15}] [{said:.3}]"), "[  one half inch] [one half inch  ] [one half inch]");
}
