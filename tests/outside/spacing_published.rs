//! Problems worked in books and on how-to pages, as spacings, against `data/spacing_problems.csv`: the answer that is
//! right, the answer that is printed, and where the two differ, the slip. Printed figures are read by
//! `support/tables.rs`, never by the crate's own parser.
//!
//! Sources, as named in the file: ETM is Ewen and Nelson, "Elementary Technical Mathematics"; EN5156 the United States Army's
//! subcourse EN5156, "Carpentry II"; HUNKER, HAMMER, BHE, HOMIFY, IRONF, EHOW, ALGCOM and MCENT are how-to pages and
//! worked samples, undated or seen without their date.

use crate::support::tables::{Row, figure, rows};
use scantling::{Chain, End, First, Length, Rounding, Spacing, Tape, Unit, Widest};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn flush(spacing: Spacing) -> Spacing {
    spacing.near_end(End::Flush).far_end(End::Flush)
}

fn opening(spacing: &Spacing, run: Length) -> Length {
    spacing.over(run).unwrap().opening()
}

/// A count where the printed answer is one.
fn count(members: usize) -> Length {
    Length::new(members.try_into().unwrap(), Unit::Inch)
}

/// What is left behind pieces cut one after the other, with a kerf behind each: kerfs are members, pieces openings.
fn left(pieces: &[Length], kerf: Length, stock: Length) -> Length {
    let cut = Spacing::equal_openings(pieces.len(), kerf);
    let cut = pieces.iter().enumerate().fold(cut, |cut, (index, piece)| cut.hold(index, *piece));
    opening(&cut, stock)
}

#[rustfmt::skip]
fn answer(id: &str) -> Length {
    let gaps = Spacing::equal_openings;
    match id {
        "etm-17-72" => left(&[inches(11, 8), inches(37, 16), inches(19, 4)], inches(1, 16), inches(221, 16)),
        "etm-17-73a" => Chain::new(&[inches(41, 8), inches(5, 1), inches(61, 8), inches(65, 16)]).checked_end().unwrap(),
        "etm-17-73b" => opening(&flush(gaps(2, inches(51, 16))), inches(29, 4)),
        "etm-17-74" => {
            let margin = End::Margin(inches(7, 8));
            opening(&gaps(2, inches(3, 16)).near_end(margin).far_end(margin), inches(57, 8))
        }
        // The strip is what gaps of just 7/32 in fill.
        "etm-17-81" | "etm-17-81b" => {
            let (discs, strip) = if id == "etm-17-81" { (3, inches(173, 16)) } else { (1, inches(15, 4)) };
            let layout = gaps(discs, inches(53, 16)).over(strip).unwrap();
            assert!(layout.gaps().all(|gap| gap == inches(7, 32)), "{id}");
            layout.run()
        }
        "etm-18-49" => opening(&flush(gaps(16, Length::ZERO)), inches(225, 8)),
        "etm-18-51" => {
            let pieces = [vec![inches(17, 8); 3], vec![inches(23, 4); 2], vec![inches(7, 8); 6], vec![inches(7, 2)]].concat();
            left(&pieces, inches(1, 16), inches(36, 1))
        }
        "etm-112-29" => opening(&Spacing::equal_parts(11), 12 * inches(71, 8)),
        "en5156-run" => Chain::new(&[inches(21, 2); 12]).checked_end().unwrap(),
        "homify" => opening(&Spacing::nearest_parts(inches(15, 2)), inches(427, 4)),
        "hunker-92.5" => opening(&gaps(17, inches(7, 2)), inches(185, 2)),
        "hunker-92.5n" => count(Spacing::nearest_parts(inches(11, 2)).over(inches(185, 2)).unwrap().gaps().len()),
        "hammer" => opening(&flush(gaps(12, inches(11, 2))), inches(96, 1)),
        "bhe-slats" => opening(&gaps(4, inches(87, 16)), inches(575, 16)),
        "bhe-words" => opening(&gaps(4, inches(85, 16)), inches(575, 16)),
        "bhe-tape" => {
            let layout = gaps(4, inches(87, 16)).over(inches(575, 16)).unwrap();
            layout.on(&Tape::sixteenths()).unwrap().mark(1).unwrap().reading().mark()
        }
        "ironf" => count(Spacing::fewest_members(inches(3, 2), Widest::AtMost(inches(4, 1))).over(inches(52, 1)).unwrap().members()),
        "ehow" => opening(&gaps(15, inches(2, 1)), inches(75, 1)),
        "algcom" => count(flush(Spacing::fewest_members(inches(6, 1), Widest::AtMost(inches(48, 1)))).over(inches(384, 1)).unwrap().members()),
        "mcent-20ft" => opening(&Spacing::equal_parts(3), inches(240, 1)),
        _ => panic!("no spacing for {id}"),
    }
}

/// The answer as printed: to so many decimals, where it is a decimal.
fn as_printed(answer: Length, row: &Row) -> Length {
    let Some((_, decimals)) = row["printed_answer"].split_once('.') else { return answer };
    let places = decimals.bytes().take_while(u8::is_ascii_digit).count();
    let step = Length::fraction(1, 10_u64.pow(u32::try_from(places).unwrap()), Unit::Inch);
    answer.round(Rounding::to(step)).unwrap()
}

#[test]
fn every_answer_is_right_and_every_slip_is_shown() {
    let rows = rows("spacing_problems.csv");
    for row in &rows {
        let (id, printed, correct) = (&row["id"], figure(&row["printed"]), figure(&row["correct"]));
        let answer = answer(id);
        assert_eq!(answer, correct, "{id}");
        let is_as_printed = as_printed(answer, row) == printed;
        assert_eq!(is_as_printed, row["slip"].is_empty(), "{id}: {answer}, printed {printed}");
    }
    let slips = rows.iter().filter(|row| !row["slip"].is_empty()).count();
    assert_eq!((rows.len(), slips), (21, 4));
}

/// IRONF divides the run by thickness and gap together and rounds up. Worked by hand: how many balusters of 1 1/2 in that
/// gives for gaps of up to 4 in, and how many are enough.
#[test]
fn a_recipe_that_is_one_baluster_off() {
    let (baluster, gap) = (inches(3, 2), inches(4, 1));
    for (run, recipe, enough) in [(48, 9, 8), (52, 10, 9), (59, 11, 10), (72, 14, 13), (80, 15, 14), (100, 19, 18), (55, 10, 10)]
    {
        let run = inches(run, 1);
        let (pitches, rest) = (run / (baluster + gap), (run / (baluster + gap)).fract());
        let by_recipe = pitches.trunc().to_integer() + i128::from(rest != num_rational::Ratio::from_integer(0));
        let layout = Spacing::fewest_members(baluster, Widest::AtMost(gap)).over(run).unwrap();
        assert_eq!((by_recipe, layout.members()), (recipe, enough), "{run}");
        assert!(layout.opening() <= gap, "{run}");
        // One less leaves too wide a gap, so nothing but the recipe asks for more.
        assert!(Spacing::equal_openings(enough - 1, baluster).over(run).unwrap().opening() > gap, "{run}");
    }
}

/// HAMMER sets eleven gaps of 2 8/11 in at 2 3/4 in, and a field note sets twenty of 183/250 in at 3/4 in. What that comes
/// to at the last one, and that no mark from one datum is off by more than half a graduation.
#[test]
fn gaps_rounded_one_by_one_creep() {
    let pickets = flush(Spacing::equal_openings(12, inches(11, 2))).over(inches(96, 1)).unwrap();
    assert_eq!(11 * inches(11, 4) - 11 * pickets.opening(), inches(1, 4));
    let slats = Spacing::equal_parts(20).over(20 * inches(183, 250)).unwrap();
    assert_eq!(20 * inches(3, 4) - slats.run(), inches(9, 25));
    for layout in [pickets, slats] {
        assert!(layout.on(&Tape::sixteenths()).unwrap().worst() <= inches(1, 32));
    }
}

/// Field notes: pieces from a bar or a board, where every kerf counts.
#[test]
fn pieces_with_a_kerf_between() {
    // Blocks of 8 in from 96 in, the saw takes 1/8 in: eleven, whose last face is at 89 1/4 in. Twelve would need 97 3/8 in.
    let kerf = inches(1, 8);
    let blocks = Spacing::on_center(inches(8, 1) + kerf, kerf, First::FaceAt(inches(8, 1))).over(inches(96, 1)).unwrap();
    assert_eq!((blocks.members(), blocks.marks().next_back().unwrap().near()), (11, inches(357, 4)));
    // 2'-6", 3'-4" and 1'-2" from 8 ft, three cuts of 3/16 in.
    assert_eq!(left(&[30, 40, 14].map(|piece| inches(piece, 1)), inches(3, 16), inches(96, 1)), inches(183, 16));
    // Three tongued sheets that cover 47 1/2 in each, on a frame of 12 ft: short by 1 1/2 in.
    let sheet = inches(95, 2);
    let sheets = Spacing::on_center(sheet, sheet, First::FaceAt(Length::ZERO)).over(inches(144, 1)).unwrap();
    assert_eq!((sheets.members(), sheets.opening()), (3, inches(3, 2)));
}
