//! Errors as values: places past the end of what can be counted, characters cut in two, sizes.

use std::format;
use std::string::ToString;

use super::{ParseError, ParseErrorKind};

#[test]
fn an_error_inside_a_character_is_about_the_whole_of_it() {
    for (span, whole) in [(1..3, 0..4), (0..1, 0..2), (3..4, 2..4)] {
        let error = ParseError::at("½½", span, ParseErrorKind::Trailing);
        assert_eq!((error.span(), error.found()), (whole.clone(), &"½½"[whole]));
    }
}

#[test]
fn a_place_past_four_gibibytes_is_said_to_be_too_far() {
    let error = "17 9/8".parse::<crate::Length>().unwrap_err();
    assert_eq!((error.moved(7).kind(), error.moved(7).span()), (ParseErrorKind::ImproperFraction, 7..13));
    let far = u32::MAX as usize - 6;
    assert_eq!(error.moved(far).span(), far..far + 6);
    for far in [far + 1, usize::MAX] {
        assert_eq!(
            error.moved(far).to_string(),
            "too much text: found nothing at bytes 4294967295..4294967295, expected less than 4 GiB"
        );
    }
}

#[test]
fn an_error_debugs_in_one_line() {
    let error = "17 9/8".parse::<crate::Length>().unwrap_err();
    assert_eq!(format!("{error:?}"), "ParseError(ImproperFraction, 0..6, \"17 9/8\")");
}

#[test]
fn an_error_stays_small() {
    assert_eq!(size_of::<ParseError>(), 48);
    assert_eq!(size_of::<Result<crate::Length, ParseError>>(), 64);
    assert_eq!(size_of::<ParseErrorKind>(), 1);
}
