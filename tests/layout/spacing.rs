//! Spacings against figures printed elsewhere or worked by hand; properties that hold for every spacing are
//! in `spacing_properties.rs`. Each row names its source:
//!
//! - ETM: Elementary Technical Mathematics, section and exercise;
//! - HAMMER, HUNKER, BHE, IRONF, EHOW, ALGCOM, HOMIFY, MCENT, PLAIN, HSST: how-to pages and worked samples, undated;
//! - field note: a problem as it was asked, or told, in a shop;
//! - common practice, no source; worked by hand.

use scantling::{Edge, End, Length, RoundingMode, Spacing, SpacingError, Tape, TapeError, Unit};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn whole(count: i64) -> Length {
    Length::new(count, Unit::Inch)
}

fn ends(spacing: &Spacing, end: End) -> Spacing {
    spacing.clone().near_end(end).far_end(end)
}

fn flush(members: usize, thickness: Length) -> Spacing {
    ends(&Spacing::equal_openings(members, thickness), End::Flush)
}

fn half(members: usize, thickness: Length) -> Spacing {
    ends(&Spacing::equal_openings(members, thickness), End::HalfGap)
}

fn gaps(members: usize, thickness: Length) -> Spacing {
    Spacing::equal_openings(members, thickness)
}

/// Source, rule, run, opening, near edge of the first member, far edge of the last.
#[rustfmt::skip]
fn rows() -> Vec<(&'static str, Spacing, Length, Length, Length, Length)> {
    let parts = Spacing::equal_parts;
    vec![
        ("common practice, no source", parts(5), whole(72), inches(72, 5), inches(72, 5), inches(288, 5)),
        ("ETM 1.8 ex. 49", parts(15), inches(225, 8), inches(15, 8), inches(15, 8), inches(105, 4)),
        ("ETM 1.8 ex. 49", flush(16, Length::ZERO), inches(225, 8), inches(15, 8), whole(0), inches(225, 8)),
        ("ETM 1.7 ex. 81", gaps(3, inches(53, 16)), inches(173, 16), inches(7, 32), inches(7, 32), inches(339, 32)),
        ("ETM 1.7 ex. 81", gaps(1, inches(53, 16)), inches(15, 4), inches(7, 32), inches(7, 32), inches(113, 32)),
        ("ETM 1.12 ex. 29", parts(11), inches(213, 2), inches(213, 22), inches(213, 22), inches(1065, 11)),
        ("HUNKER 13424807, printed 1.83", gaps(17, inches(7, 2)), inches(185, 2), inches(11, 6), inches(11, 6), inches(272, 3)),
        ("HAMMER case 1", flush(12, inches(11, 2)), whole(96), inches(30, 11), whole(0), whole(96)),
        ("BHE, headboard slats", gaps(4, inches(87, 16)), inches(575, 16), inches(227, 80), inches(227, 80), inches(331, 10)),
        ("IRONF, ten of them: 37 in of gaps", gaps(10, inches(3, 2)), whole(52), inches(37, 11), inches(37, 11), inches(535, 11)),
        ("EHOW even spacing, misprinted 3 in", gaps(15, whole(2)), whole(75), inches(45, 16), inches(45, 16), inches(1155, 16)),
        ("ALGCOM 802321, posts and spaces", flush(8, whole(6)), whole(384), whole(48), whole(0), whole(384)),
        ("HOMIFY stair", parts(14), inches(427, 4), inches(61, 8), inches(61, 8), inches(793, 8)),
        ("MCENT, 20 ft in three", parts(3), whole(240), whole(80), whole(80), whole(160)),
        ("PLAIN, kerfs as members: 8 ft 4 in in nine", gaps(8, inches(1, 8)), whole(100), whole(11), whole(11), whole(89)),
        ("HSST, kerfs as members: 5 1/2 in in four", gaps(3, inches(1, 8)), inches(11, 2), inches(41, 32), inches(41, 32), inches(135, 32)),
        ("common practice, no source", gaps(5, inches(3, 4)), whole(72), inches(91, 8), inches(91, 8), inches(485, 8)),
        ("field note: 13 balusters", gaps(13, inches(3, 2)), whole(72), inches(15, 4), inches(15, 4), inches(273, 4)),
        ("field note: 9 balusters do where a recipe says 10", gaps(9, inches(3, 2)), whole(52), inches(77, 20), inches(77, 20), inches(963, 20)),
        ("field note: hooks, half a space at the ends", half(12, Length::ZERO), whole(92), inches(23, 3), inches(23, 6), inches(529, 6)),
        ("field note: pegs, a full space at the ends", gaps(5, Length::ZERO), whole(27), inches(9, 2), inches(9, 2), inches(45, 2)),
        ("field note: pegs, half a space at the ends", half(5, Length::ZERO), whole(27), inches(27, 5), inches(27, 10), inches(243, 10)),
        ("field note: two frames", gaps(2, whole(13)), whole(47), whole(7), whole(7), whole(40)),
        ("field note: pots, pitch 28 in", flush(7, whole(12)), whole(180), whole(16), whole(0), whole(180)),
        ("field note: lights 5 ft apart, half at the walls", half(4, Length::ZERO), whole(240), whole(60), whole(30), whole(210)),
        ("field note: deck of whole boards", flush(21, inches(11, 2)), whole(120), inches(9, 40), whole(0), whole(120)),
        ("field note: middle of a 47 ft room", parts(2), whole(564), whole(282), whole(282), whole(282)),
        ("field note: three hinges", ends(&gaps(3, Length::ZERO), End::Margin(inches(5, 2))), whole(30), inches(25, 2), inches(5, 2), inches(55, 2)),
        ("field note: six drawers on average", flush(7, inches(3, 4)), whole(48), inches(57, 8), whole(0), whole(48)),
        ("field note: drawer fronts less clearance", parts(3), inches(549, 16), inches(183, 16), inches(183, 16), inches(183, 8)),
        ("field note: four risers", parts(4), inches(491, 16), inches(491, 64), inches(491, 64), inches(1473, 64)),
        ("field note: slanted rule, its marks", parts(3), whole(3), whole(1), whole(1), whole(2)),
        ("field note: slanted rule, its strips", parts(3), inches(11, 4), inches(11, 12), inches(11, 12), inches(11, 6)),
        ("field note: slanted rule in four", parts(4), inches(31, 4), inches(31, 16), inches(31, 16), inches(93, 16)),
        ("field note: 19.2 in truss marks", parts(5), whole(96), inches(96, 5), inches(96, 5), inches(384, 5)),
        ("worked by hand: a gap at one end", gaps(3, whole(2)).near_end(End::Flush), whole(36), whole(10), whole(0), whole(26)),
        ("worked by hand: a margin and a half gap", gaps(2, whole(3)).near_end(End::Margin(whole(5))).far_end(End::HalfGap), whole(20), whole(6), whole(5), whole(17)),
        ("worked by hand: members touch", gaps(4, whole(2)), whole(8), whole(0), whole(0), whole(8)),
        ("worked by hand: one that fills the run", flush(1, whole(9)), whole(9), whole(0), whole(0), whole(9)),
        ("worked by hand: margins that fill the run", ends(&gaps(1, whole(4)), End::Margin(whole(3))), whole(10), whole(0), whole(3), whole(7)),
        ("worked by hand: no run, no room, no matter", parts(4), whole(0), whole(0), whole(0), whole(0)),
    ]
}

#[test]
fn openings_and_outer_edges() {
    for (source, spacing, run, opening, first, last) in rows() {
        let layout = spacing.over(run).unwrap();
        assert_eq!(layout.run(), run, "{source}");
        assert_eq!(layout.opening(), opening, "{source}");
        assert_eq!(layout.marks().next().unwrap().near(), first, "{source}");
        assert_eq!(layout.marks().next_back().unwrap().far(), last, "{source}");
    }
}

/// Source, rule, run, every gap from the datum on.
#[test]
fn gaps_from_end_to_end() {
    let rows = [
        ("field note: 13 balusters", gaps(13, inches(3, 2)), whole(72), vec![inches(15, 4); 14]),
        (
            "HAMMER case 1",
            flush(12, inches(11, 2)),
            whole(96),
            [vec![whole(0)], vec![inches(30, 11); 11], vec![whole(0)]].concat(),
        ),
        ("field note: two frames", gaps(2, whole(13)), whole(47), vec![whole(7); 3]),
        ("field note: half ends", half(3, Length::ZERO), whole(36), vec![whole(6), whole(12), whole(12), whole(6)]),
        ("worked by hand: no member", gaps(0, whole(3)), whole(30), vec![whole(30)]),
        ("worked by hand: no member, one end flush", gaps(0, whole(3)).near_end(End::Flush), whole(30), vec![whole(30)]),
        ("worked by hand: no member, half ends", half(0, whole(3)), whole(30), vec![whole(30)]),
        (
            "worked by hand: no member to keep clear of",
            gaps(0, whole(3)).far_end(End::Margin(whole(40))),
            whole(30),
            vec![whole(30)],
        ),
        ("worked by hand: one part", Spacing::equal_parts(1), whole(30), vec![whole(30)]),
    ];
    for (source, spacing, run, expected) in rows {
        let layout = spacing.over(run).unwrap();
        assert_eq!(layout.gaps().collect::<Vec<_>>(), expected, "{source}");
        assert_eq!(layout.gaps().rev().count(), expected.len(), "{source}");
        assert_eq!(layout.gaps().len(), layout.members() + 1, "{source}");
        assert_eq!(layout.gap(layout.members()), expected.last().copied(), "{source}");
        assert_eq!(layout.gap(layout.members() + 1), None, "{source}");
    }
}

/// No member: the one opening is the whole run, and its own full gap.
#[test]
fn no_member_is_one_opening() {
    for spacing in [gaps(0, whole(3)), half(0, whole(3)), gaps(0, whole(3)).far_end(End::Flush)] {
        let layout = spacing.over(whole(30)).unwrap();
        assert_eq!((layout.opening(), layout.members(), layout.marks().len()), (whole(30), 0, 0));
        let marked = layout.on(&Tape::sixteenths()).unwrap();
        assert_eq!((marked.marks().len(), marked.worst(), marked.spread()), (0, Length::ZERO, Length::ZERO));
        assert!(marked.gaps().eq([whole(30)]));
    }
}

/// Field note: nails for two 13 in frames at 13 1/2 and 33 1/2 in.
#[test]
fn three_edges_of_a_member() {
    let layout = gaps(2, whole(13)).over(whole(47)).unwrap();
    let edges: Vec<_> = layout.marks().map(|mark| (mark.number(), mark.near(), mark.center(), mark.far())).collect();
    assert_eq!(edges, [(1, whole(7), inches(27, 2), whole(20)), (2, whole(27), inches(67, 2), whole(40))]);
    assert_eq!(layout.mark(2).map(|mark| mark.at(Edge::Center)), Some(inches(67, 2)));
    assert_eq!((layout.mark(0), layout.mark(3)), (None, None));

    // Worked by hand: a member so thin that half of it is finer than anything else about.
    let shim = gaps(1, inches(1, 1024)).over(inches(1025, 1024)).unwrap();
    assert_eq!(shim.mark(1).unwrap().center(), inches(1025, 2048));
}

/// Source, rule, run, tape, edge, every mark in sixty-fourths of an inch.
#[test]
#[rustfmt::skip]
fn marks_on_the_tape() {
    let rows = [
        ("common practice, no source", Spacing::equal_parts(5), whole(72), Tape::sixteenths(), Edge::Near, vec![920, 1844, 2764, 3688]),
        ("worked by hand: down", Spacing::equal_parts(5), whole(72), Tape::sixteenths().mode(RoundingMode::Down), Edge::Near, vec![920, 1840, 2764, 3684]),
        ("worked by hand: up", Spacing::equal_parts(5), whole(72), Tape::sixteenths().mode(RoundingMode::Up), Edge::Near, vec![924, 1844, 2768, 3688]),
        ("field note: 19.2 in truss marks", Spacing::equal_parts(5), whole(96), Tape::sixteenths(), Edge::Near, vec![1228, 2456, 3688, 4916]),
        ("field note: frames", gaps(2, whole(13)), whole(47), Tape::eighths(), Edge::Center, vec![864, 2144]),
        ("worked by hand: ties up", Spacing::equal_parts(4), inches(1, 8), Tape::sixteenths(), Edge::Near, vec![4, 4, 8]),
        ("worked by hand: ties even", Spacing::equal_parts(4), inches(1, 8), Tape::sixteenths().mode(RoundingMode::TiesEven), Edge::Near, vec![0, 4, 8]),
        ("worked by hand: far edges", gaps(2, inches(23, 32)), whole(10), Tape::thirty_seconds(), Edge::Far, vec![228, 458]),
    ];
    for (source, spacing, run, tape, edge, marks) in rows {
        let layout = spacing.over(run).unwrap();
        let marked = layout.on_edge(&tape, edge).unwrap();
        let expected: Vec<_> = marks.into_iter().map(|count| inches(count, 64)).collect();
        assert_eq!(marked.marks().map(|mark| mark.reading().mark()).collect::<Vec<_>>(), expected, "{source}");
        assert!(marked.marks().map(|mark| mark.number()).eq(1..=expected.len()), "{source}");
        assert!(marked.marks().all(|mark| mark.edge() == edge), "{source}");
        let mut left = marked.marks();
        assert!((0..=expected.len()).rev().all(|count| left.len() == count && left.next().is_some() == (count > 0)), "{source}");
        assert_eq!((marked.tape(), marked.edge()), (tape, edge), "{source}");
    }
}

/// HAMMER sets each of the eleven gaps at 2 3/4 in, and overruns by 1/4 in. From one datum no picket
/// is off by more than half a graduation, and the last gap comes out like the others.
#[test]
fn pickets_that_do_not_creep() {
    let layout = flush(12, inches(11, 2)).over(whole(96)).unwrap();
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert!(marked.marks().all(|mark| mark.reading().leftover().abs() <= inches(1, 32)));
    assert_eq!(marked.worst(), inches(5, 176)); // worked by hand: 5/11 of a sixteenth
    let inner: Vec<_> = marked.gaps().skip(1).take(11).collect();
    assert!(inner.iter().all(|gap| [inches(43, 16), inches(44, 16)].contains(gap)));
    assert_eq!(inner.into_iter().sum::<Length>(), whole(30));
    assert_eq!(marked.spread(), inches(1, 16));
}

/// Worked by hand: shelves 23/32 in thick marked in sixteenths. Openings are 5 9/128 in, the far face of
/// each lies off the graduations, so the inner gaps as cut do too, and the end gaps differ from them.
#[test]
fn gaps_as_cut_run_from_the_true_far_face() {
    let layout = gaps(3, inches(23, 32)).over(inches(717, 32)).unwrap();
    assert_eq!(layout.opening(), inches(81, 16));
    let marked = layout.on(&Tape::eighths()).unwrap();
    // True near edges 5 1/16, 10 27/32, 16 5/8 in; marks 5 1/8, 10 7/8, 16 5/8 in.
    assert!(marked.marks().map(|mark| mark.reading().mark()).eq([inches(41, 8), inches(87, 8), inches(133, 8)]));
    assert!(marked.gaps().eq([inches(164, 32), inches(161, 32), inches(161, 32), inches(162, 32)]));
    assert_eq!((marked.spread(), marked.worst()), (inches(3, 32), inches(1, 16)));
}

/// Worked by hand: pieces that touch, marked on a rule too coarse for them.
#[test]
fn members_that_overlap_say_so() {
    let layout = gaps(2, inches(1, 2)).over(whole(1)).unwrap();
    let marked = layout.on(&Tape::with_step(inches(1, 3)).unwrap()).unwrap();
    // True near edges 0 and 1/2 in, marks 0 and 2/3 in: a gap between, an overlap at the end.
    assert!(marked.gaps().eq([whole(0), inches(1, 6), inches(-1, 6)]));
}

/// Worked by hand: lines at thirds of an inch, marked on a rule of seventeenths, which are finer than ticks.
#[test]
fn gaps_as_cut_on_a_rule_finer_than_ticks() {
    let layout = Spacing::equal_parts(3).over(whole(1)).unwrap();
    let marked = layout.on(&Tape::with_step(inches(1, 17)).unwrap()).unwrap();
    let cut = [6, 5, 6].map(|count| inches(count, 17));
    assert!(marked.gaps().eq(cut));
    assert_eq!([0, 1, 2, 3].map(|after| marked.gap(after)), [Some(cut[0]), Some(cut[1]), Some(cut[2]), None]);
}

/// Worked by hand: half gaps are compared with half gaps, the rest with the rest.
#[test]
fn spread_compares_like_with_like() {
    let layout = half(4, Length::ZERO).over(whole(24)).unwrap();
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert!(marked.gaps().eq([whole(3), whole(6), whole(6), whole(6), whole(3)]));
    assert_eq!(marked.spread(), Length::ZERO);

    // Half gaps of 5/3 in, marked at 27/16 and 73/16 in: 27/16 in and 5 in + 5/3 in - 73/16 in at the ends.
    let layout = half(2, Length::ZERO).over(inches(20, 3)).unwrap();
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert!(marked.gaps().eq([inches(27, 16), inches(53, 16), inches(5, 3)]));
    assert_eq!(marked.spread(), inches(1, 48));
}

/// Worked by hand: why ties go up unless told otherwise. Marks a sixteenth apart, all of them midway between
/// graduations, stay a sixteenth apart; to the even graduation they go in pairs.
#[test]
fn ties_up_keep_equal_marks_equal() {
    let layout = Spacing::equal_parts(5).over(inches(5, 16)).unwrap();
    let tape = Tape::sixteenths().offset(inches(1, 32));
    let shown = |tape: Tape| layout.on(&tape).unwrap().marks().map(|mark| mark.reading().shown()).collect::<Vec<_>>();
    assert_eq!(shown(tape), [2, 3, 4, 5].map(|count| inches(count, 16)));
    assert_eq!(shown(tape.mode(RoundingMode::TiesEven)), [2, 2, 4, 4].map(|count| inches(count, 16)));
}

#[test]
fn a_layout_must_be_on_the_tape() {
    let layout = flush(3, whole(2)).over(whole(100)).unwrap();
    let tape = Tape::sixteenths().length(whole(96));
    assert_eq!(layout.on(&tape).unwrap_err(), TapeError::PastEnd { shown: whole(98), length: whole(96) });
    assert_eq!(layout.on(&tape.offset(whole(-1))).unwrap_err(), TapeError::BelowZero { shown: whole(-1) });
    assert!(layout.on(&tape.length(whole(98))).is_ok());
    assert!(layout.on_edge(&tape.length(whole(98)), Edge::Far).is_err());
    let too_fine = Tape::with_step(inches(1, u64::MAX)).unwrap().offset(inches(1, u64::MAX - 2));
    assert_eq!(layout.on(&too_fine).unwrap_err(), TapeError::OutOfRange { position: whole(100) });
}

#[test]
fn refusals() {
    let margin = |count| End::Margin(whole(count));
    let rows = [
        (Spacing::equal_parts(0), whole(72), SpacingError::ZeroParts),
        (gaps(5, inches(3, 4)), whole(-1), SpacingError::NegativeRun { run: whole(-1) }),
        (gaps(5, inches(-3, 4)), whole(72), SpacingError::NegativeThickness { thickness: inches(-3, 4) }),
        (gaps(0, inches(-3, 4)), whole(72), SpacingError::NegativeThickness { thickness: inches(-3, 4) }),
        (gaps(5, whole(1)).near_end(margin(-2)), whole(72), SpacingError::NegativeMargin { margin: whole(-2) }),
        (gaps(5, whole(1)).far_end(margin(-2)), whole(72), SpacingError::NegativeMargin { margin: whole(-2) }),
        (
            gaps(5, inches(3, 4)),
            whole(3),
            SpacingError::DoesNotFit { members: 5, need: inches(15, 4), run: whole(3), short: inches(3, 4) },
        ),
        (
            gaps(1, inches(3, 4)).near_end(margin(2)),
            whole(2),
            SpacingError::DoesNotFit { members: 1, need: inches(11, 4), run: whole(2), short: inches(3, 4) },
        ),
        (
            flush(1, inches(3, 4)),
            whole(72),
            SpacingError::NothingToShare { members: 1, need: inches(3, 4), run: whole(72), left: inches(285, 4) },
        ),
        (
            flush(0, inches(3, 4)),
            whole(72),
            SpacingError::NothingToShare { members: 0, need: whole(0), run: whole(72), left: whole(72) },
        ),
        (
            ends(&gaps(1, whole(1)), margin(2)),
            whole(72),
            SpacingError::NothingToShare { members: 1, need: whole(5), run: whole(72), left: whole(67) },
        ),
        (gaps(usize::MAX, Length::ZERO), whole(72), SpacingError::OutOfRange { run: whole(72) }),
        (gaps(usize::MAX, Length::MAX), whole(72), SpacingError::OutOfRange { run: whole(72) }),
        (gaps(16, inches(1, u64::MAX - 58)), whole(72), SpacingError::OutOfRange { run: whole(72) }),
    ];
    for (spacing, run, expected) in rows {
        assert_eq!(spacing.over(run), Err(expected), "{spacing:?}");
    }
    let layout = gaps(5, inches(3, 4)).over(whole(72)).unwrap();
    let mut places = [whole(1); 4];
    assert_eq!(layout.fill(&mut places), Err(SpacingError::TooFewPlaces { members: 5, places: 4 }));
    assert_eq!(places, [whole(1); 4]);
}

#[test]
fn refusals_in_words() {
    let (run, gap) = (whole(3), inches(-1, 2));
    let rows = [
        (SpacingError::NegativeRun { run: -run }, "a run cannot be -3\" long: it must not be below zero"),
        (SpacingError::NegativeThickness { thickness: gap }, "a member cannot be -1/2\" thick: it must not be below zero"),
        (SpacingError::NegativeMargin { margin: gap }, "a margin cannot be -1/2\": the member would lie past the end of the run"),
        (SpacingError::ZeroParts, "a run cannot be divided into zero parts"),
        (
            SpacingError::DoesNotFit { members: 5, need: inches(15, 4), run, short: inches(3, 4) },
            "5 members, with any fixed gaps, need 3 3/4\"; the run is 3\": 3/4\" short",
        ),
        (
            SpacingError::NothingToShare { members: 1, need: inches(3, 4), run, left: inches(9, 4) },
            "1 member, with any fixed gaps, needs 3/4\"; the run is 3\", and no gap is free to take the 2 1/4\" left over",
        ),
        (SpacingError::NegativeGap { gap, run }, "a gap comes out at -1/2\" in a run of 3\": it must not be below zero"),
        (
            SpacingError::OutOfRange { run },
            "the exact layout of a run of 3\" is out of range: longer, or more finely divided, than a length can hold",
        ),
        (SpacingError::TooFewPlaces { members: 5, places: 4 }, "5 marks do not fit in 4 places"),
    ];
    for (error, text) in rows {
        assert_eq!(error.to_string(), text);
    }
}

#[test]
fn near_edges_into_a_kept_slice() {
    let layout = Spacing::equal_parts(5).over(whole(72)).unwrap();
    let mut places = [whole(1); 6];
    let filled = layout.fill(&mut places).unwrap();
    assert_eq!(filled, [72, 144, 216, 288].map(|fifths| inches(fifths, 5)));
    assert_eq!(places[4..], [whole(1); 2]);
}

/// Worked by hand: as many parts as can be counted, each position still exact and found at once.
#[test]
fn huge_counts_are_closed_form() {
    let layout = Spacing::equal_parts(usize::MAX).over(whole(72)).unwrap();
    assert_eq!(layout.members(), usize::MAX - 1);
    assert_eq!(layout.opening(), whole(72) / num_rational::Ratio::from_integer(usize::MAX as i128));
    assert_eq!(layout.marks().next_back().unwrap().far() + layout.opening(), whole(72));
    assert_eq!(layout.mark(usize::MAX - 2).unwrap().near() + 2 * layout.opening(), whole(72));
    assert_eq!(layout.gap(usize::MAX - 1), Some(layout.opening()));
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert_eq!(marked.mark(usize::MAX / 2 + 1).unwrap().reading().mark(), whole(36));
    assert_eq!(marked.marks().next().unwrap().reading().mark(), Length::ZERO);
}

/// Worked by hand: laths of half an inch with half an inch between them, more than 32 bits can count.
#[test]
#[cfg(target_pointer_width = "64")]
fn ten_thousand_million_members() {
    let layout = gaps(10_000_000_000, inches(1, 2)).over(inches(20_000_000_001, 2)).unwrap();
    assert_eq!(layout.opening(), inches(1, 2));
    assert_eq!(layout.mark(9_999_999_999).unwrap().near(), inches(19_999_999_997, 2));
    let marked = layout.on(&Tape::millimeters()).unwrap();
    assert_eq!(marked.mark(254).unwrap().reading().true_position(), inches(507, 2));
}

/// Every mark and every figure of a million members, which takes seconds in debug builds. How little is kept for them is tested
/// beside the layout.
#[test]
fn a_million_members() {
    let layout = gaps(1_000_000, inches(1, 64)).over(Length::new(1, Unit::Meter) * 1000).unwrap();
    let marked = layout.on(&Tape::sixteenths()).unwrap();
    assert_eq!(marked.marks().filter(|mark| mark.reading().leftover().abs() <= inches(1, 32)).count(), 1_000_000);
    assert_eq!(marked.marks().map(|mark| mark.number()).last(), Some(1_000_000));
    assert_eq!(marked.gaps().count(), 1_000_001);
    assert!(marked.worst() <= inches(1, 32) && marked.spread() <= inches(3, 32));
    assert!(size_of_val(&layout) < 300 && size_of_val(&marked) < 500);
}

/// Worked by hand: marks from 6 to 12 in, and others that have only the number, the near edge or the far edge in common with them.
#[test]
fn marks_are_equal_by_number_and_edges() {
    let first = |spacing: &Spacing, run| spacing.over(whole(run)).unwrap().mark(1).unwrap();
    let from_six = |thickness| flush(2, thickness).near_end(End::Margin(whole(6)));
    let one = first(&Spacing::equal_openings(1, whole(6)), 18);
    assert_eq!((one.number(), one.near(), one.far()), (1, whole(6), whole(12)));
    assert_eq!(one, first(&from_six(whole(6)), 40));
    assert_ne!(one, first(&from_six(whole(7)), 40));
    assert_ne!(one, first(&Spacing::equal_openings(1, whole(4)), 20)); // from 8 to 12 in
    assert_ne!(one, flush(3, whole(6)).over(whole(18)).unwrap().mark(2).unwrap()); // the second, from 6 to 12 in
    assert_eq!(format!("{one:?}"), "MemberMark { number: 1, near: Length(6 in), far: Length(12 in) }");
}
