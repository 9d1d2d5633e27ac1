//! Spacer blocks and dimension chains against figures worked by hand or noted in a shop. That blocks fit and chains add up
//! whatever the numbers is in `spacing_kinds_properties.rs`.

use scantling::{
    Chain, ChainLink, End, First, Growth, Length, Remainder, RoundingMode, Spacing, SpacingError, Tape, TapeError, Unit, Widest,
};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

/// Feet, inches and sixteenths, as truss sheets print them.
fn fis(feet: i64, count: i64, sixteenths: i64) -> Length {
    inches((feet * 12 + count) * 16 + sixteenths, 16)
}

fn flush(spacing: Spacing) -> Spacing {
    spacing.near_end(End::Flush).far_end(End::Flush)
}

/// Worked by hand: spacing, run, tape, remainder, block, how often, what is left, the near edges of the members.
#[test]
#[rustfmt::skip]
fn blocks() {
    use Remainder::{First as AtFirst, Last, Split};
    let (sixteenths, eighths, half) = (Tape::sixteenths(), Tape::eighths(), End::HalfGap);
    let (gaps, line) = (Spacing::equal_openings, whole(0));
    let parts = Spacing::equal_parts(5);
    let list = |counts: &[i64], den| counts.iter().map(|count| inches(*count, den)).collect::<Vec<_>>();
    let rows = [
        (parts.clone(), whole(72), sixteenths, Last, inches(115, 8), 4, inches(29, 2), list(&[115, 230, 345, 460], 8)),
        (parts.clone(), whole(72), sixteenths, AtFirst, inches(115, 8), 4, inches(29, 2), list(&[116, 231, 346, 461], 8)),
        (parts.clone(), whole(72), sixteenths, Split, inches(115, 8), 3, inches(231, 16), list(&[231, 461, 691, 921], 16)),
        // The tape's own mode has no say: a block that is too long does not fit.
        (parts, whole(72), sixteenths.mode(RoundingMode::Up), Last, inches(115, 8), 4, inches(29, 2), list(&[115, 230, 345, 460], 8)),
        (flush(gaps(4, whole(1))), whole(10), eighths, Last, whole(2), 2, whole(2), list(&[0, 3, 6, 9], 1)),
        (gaps(1, whole(1)), inches(25, 4), eighths, Split, inches(21, 8), 0, inches(21, 8), list(&[21], 8)),
        // Half gaps at the ends stay as they are: 5/6 in beside 1 2/3 in.
        (gaps(4, line).near_end(half).far_end(half), inches(20, 3), eighths, Last, inches(13, 8), 2, inches(7, 4), list(&[20, 59, 98, 140], 24)),
        // Bays of members on center, and the most common of two shares.
        (Spacing::on_center(whole(16), inches(3, 2), First::FaceAt(line)), whole(60), sixteenths, Last, inches(29, 2), 2, inches(29, 2), list(&[0, 16, 32, 48], 1)),
        (Spacing::proportional([3, 2, 2], line), inches(71, 10), eighths, Last, whole(2), 1, inches(72, 35), list(&[213, 353], 70)),
    ];
    for (spacing, run, tape, remainder, block, times, left, near) in rows {
        let cut = spacing.spacer_block(run, &tape, remainder).unwrap();
        assert_eq!((cut.block(), cut.times(), cut.left()), (block, times, left), "{spacing:?}");
        assert_eq!(cut.layout().marks().map(|mark| mark.near()).collect::<Vec<_>>(), near, "{spacing:?}");
        assert_eq!(cut.layout().run(), run, "{spacing:?}");
    }
}

#[test]
fn blocks_refused() {
    let refused = |spacing: &Spacing, run| spacing.spacer_block(run, &Tape::sixteenths(), Remainder::Last).unwrap_err();
    let drawers = Spacing::drawers_from_top(5, whole(1), Growth::Step(whole(1)));
    let slats = Spacing::equal_openings(15, inches(3, 2)).widest(Widest::AtMost(inches(29, 8)));
    let rows = [
        (refused(&drawers, whole(36)), "no two openings are meant to be equal, so no spacer block serves them"),
        (
            refused(&flush(Spacing::equal_openings(2, whole(1))), whole(36)),
            "no two openings are meant to be equal, so no spacer block serves them",
        ),
        (
            refused(&Spacing::equal_parts(100), whole(5)),
            "an opening of 1/20\" is under one graduation of 1/16\": no spacer block can be cut for it",
        ),
        (
            refused(&Spacing::equal_openings(5, whole(1)), whole(5)),
            "an opening of 0\" is under one graduation of 1/16\": no spacer block can be cut for it",
        ),
        (
            refused(&Spacing::equal_openings(5, whole(1)), whole(4)),
            "5 members, with any fixed gaps, need 5\"; the run is 4\": 1\" short",
        ),
        // What is left would be too wide, though the exact gap is not.
        (
            refused(&slats, inches(1287, 16)),
            "with 15 members the gap after member 15 comes out at 4 1/2\": it must be at most 3 5/8\"",
        ),
    ];
    for (error, text) in rows {
        assert_eq!(error.to_string(), text);
    }
}

/// A truss sheet prints panels of 6-0-14, 6-0-14 and 6-10-5 against running totals 25-0-14, 31-1-11 and 38-0-0, from a first
/// total of 19-0-0: the panels sum to a sixteenth more than the totals.
#[test]
fn a_truss_sheet_that_does_not_add_up() {
    let panels = [fis(6, 0, 14), fis(6, 0, 14), fis(6, 10, 5)];
    let totals = [fis(25, 0, 14), fis(31, 1, 11), fis(38, 0, 0)];
    let sheet = Chain::new(&panels).starting_at(fis(19, 0, 0));
    assert_eq!(sheet.checked_end(), Some(fis(38, 0, 1)));
    let slips = sheet.slips(&totals).unwrap();
    assert_eq!(slips.len(), 1);
    assert_eq!((slips[0].number(), slips[0].printed(), slips[0].between()), (2, fis(6, 0, 14), fis(6, 0, 13)));
    assert_eq!(slips[0].off(), fis(0, 0, 1));

    // Panels of 6 ft 0 27/32 in print so: their totals are what is rounded.
    let exact = [fis(6, 0, 14) - inches(1, 32), fis(6, 0, 14) - inches(1, 32), fis(6, 10, 5)];
    let printed: Vec<_> = Chain::new(&exact).starting_at(fis(19, 0, 0)).on(&Tape::sixteenths()).map(Result::unwrap).collect();
    let links: Vec<_> = printed.iter().map(ChainLink::printed).collect();
    assert_eq!(links, [fis(6, 0, 14), fis(6, 0, 13), fis(6, 10, 5)]);
    let totals: Vec<_> = printed.iter().map(|link| link.total().mark()).collect();
    assert_eq!(totals, [fis(25, 0, 14), fis(31, 1, 11), fis(38, 0, 0)]);
    assert_eq!(Chain::new(&links).starting_at(fis(19, 0, 0)).slips(&totals), Ok(vec![]));
}

/// Field notes: six modules sized at a sixth of the wall, each 1/12 in over, came out 1/2 in too wide; and a printed bottom of
/// 3 5/8 in that should have been 5/8 in.
#[test]
fn lists_that_do_not_add_up() {
    let (wall, module) = (whole(144), whole(24) + inches(1, 12));
    let modules = [module; 6];
    assert_eq!(Chain::new(&modules).checked_end(), Some(wall + inches(1, 2)));
    let totals = [1, 2, 3, 4, 5, 6].map(|count| count * wall / 6);
    let slips = Chain::new(&modules).slips(&totals).unwrap();
    assert!(slips.iter().map(|slip| (slip.number(), slip.off())).eq((1..=6).map(|number| (number, inches(1, 12)))));

    // Worked by hand about it: top, opening and bottom of a case of 20 in.
    let printed = [inches(3, 4), inches(149, 8), inches(29, 8)];
    assert_eq!(Chain::new(&printed).checked_end().map(|end| end - whole(20)), Some(whole(3)));
    let slips = Chain::new(&printed).slips(&[inches(3, 4), inches(155, 8), whole(20)]).unwrap();
    assert_eq!((slips[0].number(), slips[0].off(), slips.len()), (3, whole(3), 1));
}

/// Worked by hand: thirds of an inch print as 5/16, 3/8 and 5/16 in; each alone is 5/16 in, a sixteenth short in all.
#[test]
fn totals_are_rounded_and_links_are_their_differences() {
    let links = [inches(1, 3); 4];
    let printed = |chain: Chain, tape: Tape| chain.on(&tape).map(|link| link.unwrap().printed()).collect::<Vec<_>>();
    let sixteenths = |counts: [i64; 4]| counts.map(|count| inches(count, 16));
    assert_eq!(printed(Chain::new(&links), Tape::sixteenths()), sixteenths([5, 6, 5, 5]));
    assert_eq!(printed(Chain::new(&links), Tape::sixteenths().mode(RoundingMode::Up)), sixteenths([6, 5, 5, 6]));
    assert_eq!(printed(Chain::new(&links).starting_at(inches(-1, 3)), Tape::sixteenths()), sixteenths([5, 5, 6, 5]));
    assert_eq!(printed(Chain::new(&links), Tape::sixteenths().offset(whole(1))), sixteenths([5, 6, 5, 5]));
    assert_eq!(printed(Chain::new(&[]), Tape::sixteenths()), []);

    let link = Chain::new(&links).starting_at(whole(2)).on(&Tape::sixteenths()).nth(1).unwrap().unwrap();
    assert_eq!((link.number(), link.exact(), link.printed()), (2, inches(1, 3), inches(6, 16)));
    assert_eq!((link.total().mark(), link.total().true_position()), (inches(43, 16), inches(8, 3)));
}

#[test]
fn chains_refused() {
    let links = [whole(10); 3];
    let tape = Tape::sixteenths().length(whole(16));
    let marks: Vec<_> = Chain::new(&links).on(&tape).map(|link| link.map(|link| link.total().mark())).collect();
    let past = |shown: i64| Err(TapeError::PastEnd { shown: whole(shown), length: whole(16) });
    assert_eq!(marks, [Ok(whole(10)), past(20), past(20)]);
    // A total that is not on the tape is the near end of no link.
    let back = [whole(10), whole(10), whole(-10)];
    let printed: Vec<_> = Chain::new(&back).on(&tape).map(|link| link.map(|link| link.printed())).collect();
    assert_eq!(printed, [Ok(whole(10)), past(20), past(20)]);
    let below = Chain::new(&links).starting_at(whole(-1)).on(&tape).next().unwrap();
    assert_eq!(below, Err(TapeError::BelowZero { shown: whole(-1) }));
    let longest = [Length::MAX, Length::MAX];
    assert_eq!(Chain::new(&longest).checked_end(), None);
    assert!(Chain::new(&longest).on(&Tape::sixteenths()).all(|link| link.is_err()));

    let missing = Chain::new(&links).slips(&links[..2]).unwrap_err();
    assert_eq!(missing, SpacingError::TotalsMissing { links: 3, totals: 2 });
    let text = "3 links with 2 running totals cannot be checked: there must be one total at the end of each link";
    assert_eq!(missing.to_string(), text);
    let far = Chain::new(&longest).starting_at(Length::MIN).slips(&longest);
    assert_eq!(far, Err(SpacingError::OutOfRange { run: Length::MAX }));
}
