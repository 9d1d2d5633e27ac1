//! Panels from sheets: a checker that saws every sheet by its cuts, one piece after the other, and finds every panel among the pieces;
//! layouts worked by hand; what is refused. Sources: field note, a problem as it was asked in a shop; all else worked by hand.

use std::collections::BTreeMap;

use num_rational::Ratio;
use scantling::{Area, CutSheet, Length, Panel, PanelPlace, PlanCost, Sheet, SheetCut, SheetCutting, SheetPlan, Unit, Way};

const fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

const fn mm(count: i64) -> Length {
    Length::new(count, Unit::Millimeter)
}

/// Where a piece lies and how large it is.
type Piece = [Length; 4];

fn piece(place: &PanelPlace) -> Piece {
    [place.along, place.across, place.length, place.width]
}

/// Cuts a piece in two; the second half may be dust.
fn saw(pieces: &mut Vec<Piece>, cut: &SheetCut, kerf: Length) {
    let whole = piece(&cut.piece);
    let index = pieces.iter().position(|other| *other == whole).expect("the piece is there");
    pieces.swap_remove(index);
    let (from, size) = if cut.way == Way::Rip { (1, 3) } else { (0, 2) };
    assert!(Length::ZERO < cut.at && cut.at < whole[size], "a cut lies on the piece");
    let (mut near, mut far) = (whole, whole);
    near[size] = cut.at;
    far[from] = whole[from] + cut.at + kerf;
    far[size] = whole[size] - cut.at - kerf;
    pieces.push(near);
    if far[size] > Length::ZERO {
        pieces.push(far);
    }
}

#[track_caller]
fn sawn(plan: &SheetPlan, cut: &CutSheet, kerf: Length, trim: Length) {
    let sheet = plan.sheet(cut);
    let mut pieces = vec![[trim, trim, sheet.length - 2 * trim, sheet.width - 2 * trim]];
    cut.cuts.iter().for_each(|cut| saw(&mut pieces, cut, kerf));
    for placed in &cut.panels {
        let panel = plan.panel(placed);
        let (length, width) = if placed.is_turned { (panel.width, panel.length) } else { (panel.length, panel.width) };
        assert_eq!((placed.place.length, placed.place.width), (length, width), "{}", panel.name);
        assert!(!placed.is_turned || panel.may_be_turned, "{}", panel.name);
        let index = pieces.iter().position(|other| *other == piece(&placed.place)).expect("the panel is cut free");
        pieces.swap_remove(index);
    }
    let mut offcuts: Vec<Piece> = cut.offcuts.iter().map(piece).collect();
    pieces.sort();
    offcuts.sort();
    assert_eq!(pieces, offcuts);
}

#[track_caller]
fn check(plan: &SheetPlan, kerf: Length, trim: Length) {
    let (mut cut, mut bought, mut used) = (BTreeMap::new(), Area::ZERO, Area::ZERO);
    for sheet in plan.sheets() {
        sawn(plan, sheet, kerf, trim);
        let times = i64::try_from(sheet.times).unwrap();
        bought += plan.sheet(sheet).length * plan.sheet(sheet).width * times;
        for placed in &sheet.panels {
            *cut.entry(placed.panel).or_insert(0) += sheet.times;
            used += placed.place.length * placed.place.width * times;
        }
    }
    let wanted: BTreeMap<usize, u64> = plan.panels().iter().map(|panel| panel.count).enumerate().collect();
    assert_eq!(cut, wanted);
    assert_eq!((plan.bought(), plan.used(), plan.waste()), (bought, used, bought - used));
    assert!(plan.taken().all(|(sheet, count)| sheet.limit.is_none_or(|limit| count <= limit)));
    match (plan.cost(), plan.bound()) {
        (PlanCost::Sheets(cost), PlanCost::Sheets(bound)) => assert!(cost == plan.sheet_count() && bound <= cost),
        (PlanCost::Area(cost), PlanCost::Area(bound)) => assert!(cost == bought && bound <= cost),
        (PlanCost::Price(cost), PlanCost::Price(bound)) => {
            let paid = plan.taken().map(|(sheet, count)| sheet.price.unwrap() * i128::from(count));
            assert!(cost == paid.sum::<Ratio<i128>>() && bound <= cost);
        }
        (cost, bound) => panic!("{cost} and {bound} are of different kinds"),
    }
}

fn four_by_eight() -> Sheet {
    Sheet::new("4 x 8 ft", inches(96, 1), inches(48, 1))
}

#[test]
fn panels_that_just_fit_and_that_do_not() {
    // Three strips of 15 11/12 in and two kerfs of 1/8 in fill 48 in; a hair more does not fit.
    let (kerf, third, hair) = (inches(1, 8), inches(191, 12), inches(1, 1_000_000));
    let sheets = |width, trim| {
        let cutting = SheetCutting::new().kerf(kerf).trim(trim).panel(Panel::new("strip", inches(90, 1), width, 3));
        let plan = cutting.sheet(four_by_eight()).plan().unwrap();
        check(&plan, kerf, trim);
        plan.sheet_count()
    };
    assert_eq!(sheets(third, Length::ZERO), 1);
    assert_eq!(sheets(third + hair, Length::ZERO), 2);
    assert_eq!(sheets(third, hair), 2);
}

/// A field note: 36 rectangles from sheets of 2440 x 1220 mm, the merchant allows 4 mm for a cut. Sizes made up: 400 x 300 mm, six along
/// and four across with kerfs of 4 mm (6 x 400 + 5 x 4 = 2420, 4 x 300 + 3 x 4 = 1212), so 24 to a sheet.
#[test]
fn rectangles_from_a_merchant() {
    let sheet = Sheet::new("merchant", mm(2440), mm(1220));
    let cutting = SheetCutting::new().kerf(mm(4)).panel(Panel::new("rectangle", mm(400), mm(300), 36)).sheet(sheet);
    let plan = cutting.plan().unwrap();
    check(&plan, mm(4), Length::ZERO);
    assert_eq!((plan.cost(), plan.is_optimal()), (PlanCost::Sheets(2), true));
}

#[test]
fn grain_is_kept_unless_a_panel_may_be_turned() {
    let tall = Panel::new("tall", inches(48, 1), inches(90, 1), 1);
    let cutting = |panel| SheetCutting::new().panel(panel).sheet(four_by_eight());
    assert_eq!(
        cutting(tall.clone()).plan().unwrap_err().to_string(),
        "tall, 48\" by 90\" with the grain along it, is larger than every sheet gives"
    );
    let plan = cutting(tall.turnable()).plan().unwrap();
    check(&plan, Length::ZERO, Length::ZERO);
    assert!(plan.sheets()[0].panels[0].is_turned);
}

#[test]
fn large_panels_need_a_sheet_each() {
    let plan =
        SheetCutting::new().panel(Panel::new("top", inches(60, 1), inches(25, 1), 3)).sheet(four_by_eight()).plan().unwrap();
    check(&plan, Length::ZERO, Length::ZERO);
    // By area two would do: 4500 square inches on 4608 each.
    assert_eq!((plan.cost(), plan.bound()), (PlanCost::Sheets(3), PlanCost::Sheets(3)));
}

/// Two panels of which one side is half the sheet's lie side by side on one sheet, so one is what the bound says.
#[test]
fn panels_of_half_a_sheet_share_one() {
    for (length, width) in [(48, 30), (60, 24)] {
        let half = Panel::new("half", inches(length, 1), inches(width, 1), 2);
        let plan = SheetCutting::new().panel(half).sheet(four_by_eight()).plan().unwrap();
        check(&plan, Length::ZERO, Length::ZERO);
        assert_eq!((plan.cost(), plan.bound()), (PlanCost::Sheets(1), PlanCost::Sheets(1)), "{length} x {width}");
    }
}

#[test]
fn sheets_cut_alike_are_told_once() {
    let whole = |name: &str, count| Panel::new(name, inches(96, 1), inches(48, 1), count);
    let cutting = SheetCutting::new().sheet(four_by_eight()).sheet(Sheet::new("same", inches(96, 1), inches(48, 1)).limit(1));
    for (panels, times) in [(vec![whole("left", 3)], vec![3]), (vec![whole("left", 2), whole("right", 2)], vec![2, 2])] {
        let plan = panels.into_iter().fold(cutting.clone(), SheetCutting::panel).plan().unwrap();
        check(&plan, Length::ZERO, Length::ZERO);
        assert_eq!(plan.sheets().iter().map(|sheet| sheet.times).collect::<Vec<_>>(), times);
    }
}

/// Worked by hand: the first rule cuts across, since more is left along than across, 20 in and 10 in; a rip leaves the larger piece.
#[test]
fn of_layouts_as_good_the_one_that_leaves_the_larger_piece() {
    let cutting = SheetCutting::new().panel(Panel::new("shelf", inches(52, 1), inches(6, 1), 1));
    let cutting = cutting.sheet(Sheet::new("plank", inches(72, 1), inches(16, 1)));
    for (steps, offcuts) in [(0, [(20, 16), (52, 10)]), (1000, [(72, 10), (20, 6)])] {
        let plan = cutting.clone().patience(steps).plan().unwrap();
        let left: Vec<_> = plan.sheets()[0].offcuts.iter().map(|place| (place.length, place.width)).collect();
        assert_eq!(left, offcuts.map(|(length, width)| (inches(length, 1), inches(width, 1))));
    }
}

/// Two of 60 x 20 in and one of 40 x 30 in are less than a sheet, and beside the first two there is no room for the third.
#[test]
fn what_is_not_proved_is_not_said_to_be() {
    let panel = |length, width, count| Panel::new("panel", inches(length, 1), inches(width, 1), count);
    let plan = SheetCutting::new().panel(panel(60, 20, 2)).panel(panel(40, 30, 1)).sheet(four_by_eight()).plan().unwrap();
    check(&plan, Length::ZERO, Length::ZERO);
    assert_eq!((plan.cost(), plan.bound(), plan.is_optimal()), (PlanCost::Sheets(2), PlanCost::Sheets(1), false));
}

/// As many panels as a plan is made for: 4608 squares of an inch to a sheet.
#[test]
fn as_many_panels_as_there_may_be() {
    let cutting = SheetCutting::new().panel(Panel::new("tile", inches(1, 1), inches(1, 1), 5000)).sheet(four_by_eight());
    assert_eq!(cutting.patience(0).plan().unwrap().sheet_count(), 2);
}

#[test]
fn sheets_of_two_sizes_prices_and_limits() {
    let half = Sheet::new("2 x 4 ft", inches(48, 1), inches(24, 1));
    let shelves = || SheetCutting::new().panel(Panel::new("shelf", inches(48, 1), inches(12, 1), 2));
    let by_area = shelves().sheet(four_by_eight()).sheet(half.clone()).plan().unwrap();
    assert_eq!((by_area.cost(), by_area.is_optimal()), (PlanCost::Area(inches(48, 1) * inches(24, 1)), true));
    let price = |count| Ratio::from_integer(count);
    let dear = shelves().sheet(four_by_eight().price(price(30))).sheet(half.clone().price(price(40))).plan().unwrap();
    check(&dear, Length::ZERO, Length::ZERO);
    assert_eq!(dear.cost(), PlanCost::Price(price(30)));
    // Both shelves fill the small sheet that is there already.
    let free = shelves().sheet(four_by_eight().price(price(30))).sheet(half.clone().price(price(0)).limit(1)).plan().unwrap();
    check(&free, Length::ZERO, Length::ZERO);
    assert_eq!((free.cost(), free.is_optimal()), (PlanCost::Price(price(0)), true));
    let few = SheetCutting::new().panel(Panel::new("shelf", inches(48, 1), inches(24, 1), 5));
    let few = few.sheet(half.clone().limit(1)).sheet(four_by_eight()).plan().unwrap();
    check(&few, Length::ZERO, Length::ZERO);
    // Four on the large one, one on the only small one.
    assert_eq!(few.taken().map(|(_, count)| count).collect::<Vec<_>>(), [1, 1]);
    let none = shelves().sheet(half.limit(1)).panel(Panel::new("more", inches(48, 1), inches(24, 1), 1)).plan();
    assert_eq!(
        none.unwrap_err().to_string(),
        "no layout was found for all panels on the sheets there are: it may need more of them"
    );
}

/// A plain generator of numbers that look random: xorshift, 64 bits.
struct Random(u64);

impl Random {
    fn between(&mut self, least: i64, most: i64) -> i64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        least + i64::try_from(self.0 % u64::try_from(most - least + 1).unwrap()).unwrap()
    }
}

#[test]
fn random_layouts_can_be_sawn() {
    let mut random = Random(7919);
    let mut optimal = 0;
    for _ in 0..150 {
        let (kerf, trim) = (inches(random.between(0, 3), 16), inches(random.between(0, 8), 16));
        let mut cutting = SheetCutting::new().kerf(kerf).trim(trim).patience(2_000).sheet(four_by_eight());
        if random.between(0, 1) == 1 {
            cutting = cutting.sheet(Sheet::new("5 x 5 ft", inches(60, 1), inches(60, 1)).limit(2));
        }
        for number in 0..random.between(1, 6) {
            let (length, width) = (inches(random.between(16, 700), 8), inches(random.between(16, 300), 8));
            let panel = Panel::new(number.to_string(), length, width, random.between(1, 4).unsigned_abs());
            cutting = cutting.panel(if random.between(0, 1) == 1 { panel.turnable() } else { panel });
        }
        let plan = cutting.plan().unwrap();
        check(&plan, kerf, trim);
        optimal += usize::from(plan.is_optimal());
    }
    assert!(optimal > 20, "{optimal}");
}

/// Sheets cut up at random by cuts from edge to edge, so that the pieces fill them: how many sheets the layout of all pieces takes.
#[test]
fn sheets_that_were_whole_take_few_more() {
    let mut random = Random(104_729);
    for wanted in [1, 2, 4] {
        let mut cutting = SheetCutting::new().sheet(four_by_eight());
        for _ in 0..wanted {
            let mut pieces = vec![(96, 48)];
            while pieces.len() < 9 {
                pieces.sort_by_key(|(length, width)| length * width);
                let (length, width) = pieces.pop().unwrap();
                if length >= width {
                    let at = random.between(length / 4, length * 3 / 4);
                    pieces.extend([(at, width), (length - at, width)]);
                } else {
                    let at = random.between(width / 4, width * 3 / 4);
                    pieces.extend([(length, at), (length, width - at)]);
                }
            }
            for (length, width) in pieces {
                cutting = cutting.panel(Panel::new("piece", inches(length, 1), inches(width, 1), 1));
            }
        }
        let plan = cutting.patience(20_000).plan().unwrap();
        check(&plan, Length::ZERO, Length::ZERO);
        assert_eq!(plan.bound(), PlanCost::Sheets(wanted));
        assert!(plan.sheet_count() <= wanted + 1, "{} for {wanted}", plan.sheet_count());
    }
}

#[test]
#[rustfmt::skip]
fn refusals() {
    let panel = |length, width, count| Panel::new("door", length, width, count);
    let job = || SheetCutting::new().sheet(four_by_eight());
    let (inch, zero) = (inches(1, 1), Length::ZERO);
    let priced = |price| SheetCutting::new().sheet(four_by_eight().price(price)).panel(panel(inch, inch, 1));
    for (cutting, message) in [
        (job(), "there are no panels to cut"),
        (SheetCutting::new().panel(panel(inch, inch, 1)), "there are no sheets to cut from"),
        (job().panel(panel(inch, zero, 1)), "door cannot be 1\" by 0\": both must be longer than nothing"),
        (job().panel(panel(-inch, inch, 1)), "door cannot be -1\" by 1\": both must be longer than nothing"),
        (job().panel(panel(inch, inch, 0)), "none of door: leave it out, or say how many"),
        (job().panel(panel(inch, inch, 1)).sheet(four_by_eight().limit(0)), "none of 4 x 8 ft: leave it out, or say how many"),
        (job().panel(panel(inch, inch, 1)).kerf(-inch), "a kerf or a trim cannot be -1\": it must not be below zero"),
        (job().panel(panel(inch, inch, 1)).trim(-inch), "a kerf or a trim cannot be -1\": it must not be below zero"),
        (job().panel(panel(inch, inch, 1)).trim(24 * inch), "nothing is left of 4 x 8 ft when 24\" is trimmed off every edge"),
        (job().panel(panel(97 * inch, inch, 1).turnable()), "door, 97\" by 1\", is larger than every sheet gives"),
        (job().panel(panel(inch, inch, 5001)), "5001 panels are too many for one plan: at most 5000"),
        (job().panel(panel(inches(1, u64::MAX), inch, 1)), "the lengths or prices are too large, or too finely divided beside each other, to be counted in one measure"),
        (job().panel(panel(inch, inch, 1)).trim(Length::MAX), "the lengths or prices are too large, or too finely divided beside each other, to be counted in one measure"),
        (job().panel(panel(inch, inch, 1)).sheet(four_by_eight().price(Ratio::from_integer(3))), "either every sheet has a price, not below zero, or none has: look at 4 x 8 ft"),
        (priced(Ratio::from_integer(-1)), "either every sheet has a price, not below zero, or none has: look at 4 x 8 ft"),
        (priced(Ratio::new_raw(1, 0)), "either every sheet has a price, not below zero, or none has: look at 4 x 8 ft"),
        (priced(Ratio::from_integer(0)), "there cannot be as many of 4 x 8 ft as it takes for nothing: say how many there are, or what one costs"),
    ] {
        assert_eq!(cutting.plan().unwrap_err().to_string(), message);
    }
}

/// Sizes on a picture, worked by hand: 14 1/2 in could be taken for 4 1/2 in where a blank parts it. What no tape shows keeps its blank,
/// and a sheet in millimeters has all its figures in them.
#[cfg(feature = "svg")]
#[test]
#[rustfmt::skip]
fn figures_on_pictures() {
    let half = Sheet::new("half", inches(48, 1), inches(48, 1));
    let metric = Sheet::new("metric", mm(2440), mm(1220));
    for (sheet, panel, figures) in [
        (&half, Panel::new("shelf", inches(36, 1), inches(29, 2), 1), [r#">36" x 14-1/2"</text>"#, "shelf, 36\" x 14-1/2\", 0\" from the near end and 0\" from the near edge", ">half, 48\" by 48\"<", ">left</text>"]),
        (&half, Panel::new("strip", inches(36, 1), inches(191, 12), 1), [r#">36" x 15 11/12"</text>"#, "strip, 36\" x 15 11/12\"", "half", "left"]),
        (&metric, Panel::new("door", mm(400), mm(300), 1), [">400 mm x 300 mm</text>", "door, 400 mm x 300 mm, 0 mm from the near end", ">metric, 2440 mm by 1220 mm<", "left"]),
        // 24 in, on a sheet in millimeters.
        (&metric, Panel::new("top", inches(24, 1), mm(600), 1), [">609.6 mm x 600 mm</text>", "top, 609.6 mm x 600 mm", "metric", "left"]),
    ] {
        let plan = SheetCutting::new().panel(panel).sheet(sheet.clone()).plan().unwrap();
        let picture = plan.svg(&plan.sheets()[0]).replace("&quot;", "\"");
        for figure in figures {
            assert!(picture.contains(figure), "{figure} in {picture}");
        }
    }
}

/// Drawn by hand: a character for each inch along the sheet, a line for every two across it, the near edge at the bottom.
#[test]
fn a_sheet_as_it_is_sketched() {
    let inches = |count| Length::new(count, Unit::Inch);
    let cutting = SheetCutting::new().panel(Panel::new("shelf", inches(36), inches(8), 1));
    let plan = cutting.sheet(Sheet::new("plank", inches(72), inches(16))).plan().unwrap();
    let (dots, blanks, dashes) = (".".repeat(35), " ".repeat(35), "-".repeat(35));
    let open = format!("|{dots}.{dots}|\n");
    let panel = format!("|{blanks}|{dots}|\n");
    let picture = [
        format!("+{dashes}-{dashes}+\n"),
        open.repeat(3),
        format!("+{dashes}+{dots}|\n"),
        panel.clone(),
        format!("|{}shelf{}|{dots}|\n", " ".repeat(15), " ".repeat(15)),
        panel,
        format!("+{dashes}+{dashes}+\n"),
    ];
    assert_eq!(plan.sketch(&plan.sheets()[0]), picture.concat());
}
