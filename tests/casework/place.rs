//! The place that a case is built for, and the stock that its parts are cut from. Worked by hand, apart from the crate.

use scantling::{Back, Case, FaceFrame, Length, Overall, Site, Unit};

fn inches(num: i64, den: u64) -> Length {
    Length::fraction(num, den, Unit::Inch)
}

fn case() -> Case {
    Case::new(inches(36, 1), inches(72, 1), inches(12, 1))
}

/// Walls 60 1/8, 60 and 60 3/16 apart, 1/2 and 3/4 for scribing: 58 3/4, and the walls run out by 3/16.
#[test]
fn between_walls() {
    let site = Site::new([inches(481, 8), inches(60, 1), inches(963, 16)]).scribing(inches(1, 2), inches(3, 4));
    assert_eq!(site.box_width(), Ok(Some(inches(235, 4))));
    assert_eq!(site.strips(), Some([inches(11, 16), inches(15, 16)]));
    let frame = FaceFrame::new(inches(3, 4), inches(3, 2)).past_sides(Length::ZERO, inches(3, 8));
    let width = |case: Case| case.as_wide_as(&site).unwrap().width;
    assert_eq!(width(case()), inches(235, 4));
    assert_eq!(width(case().frame(frame)), inches(467, 8));
    assert_eq!(width(case().frame(frame).measured_over(Overall::Frame)), inches(235, 4));
    // A molding of 3/4 stands out farther than the frame, at both sides.
    assert_eq!(width(case().frame(frame).molding(inches(3, 4))), inches(229, 4));
    assert_eq!(case().as_wide_as(&Site::OPEN).unwrap(), case());
}

#[test]
fn what_does_not_go_in() {
    let said = |case: Case, site: Site| -> Vec<String> {
        let advice = case.plan().unwrap().advice_at(&site, inches(1, 16)).unwrap();
        advice.iter().map(ToString::to_string).collect()
    };
    let site = Site::new([inches(36, 1); 3]);
    assert_eq!(said(case(), site), [""; 0]);
    assert_eq!(
        said(case().molding(inches(1, 2)), site),
        ["the case is 37\" wide over all, and there is room for 36\" between the walls"]
    );
    // 72² + 12² is 5328, and 73² is 5329.
    assert_eq!(said(case(), Site::OPEN.under(inches(73, 1))), [""; 0]);
    assert_eq!(
        said(case(), Site::OPEN.under(inches(145, 2))),
        ["tipped up, the case takes 73\", and the ceiling is 72 1/2\": build it standing, or in two"]
    );
    assert_eq!(said(case(), Site::OPEN.under(inches(71, 1))), ["the case is 72\" high, and the ceiling 71\""]);
    let refused = |site: Site| case().plan().unwrap().advice_at(&site, inches(1, 16)).unwrap_err().to_string();
    assert_eq!(refused(Site::OPEN.under(Length::ZERO)), "a height of the ceiling cannot be 0\": it must be above zero");
    assert_eq!(
        refused(site.scribing(inches(-1, 2), Length::ZERO)),
        "a room for scribing cannot be -1/2\": it must not be below zero"
    );
    let half = inches(18, 1);
    assert_eq!(
        refused(site.scribing(half, half)),
        "scribing takes 18\" and 18\" of 36\" between the walls: nothing is left for the case"
    );
    assert_eq!(
        refused(Site::new([Length::ZERO; 3]).scribing(half, half)),
        "a width between the walls cannot be 0\": it must be above zero"
    );
}

/// A sheet goes to panels alone, by its own length and width; a back is turned where that helps, and nothing else is.
#[test]
fn what_it_is_cut_from() {
    let (long, wide) = (inches(96, 1), inches(48, 1));
    let back = Back::Applied { thickness: inches(1, 4) };
    let sized =
        |width, height, depth| Case::new(inches(width, 1), inches(height, 1), inches(depth, 1)).back(back).plan().unwrap();
    let said = |plan: &scantling::CasePlan| -> Vec<String> {
        plan.parts().iter().flat_map(|part| part.advice_on_sheet(long, wide)).map(|advice| advice.to_string()).collect()
    };
    let turned = |plan: &scantling::CasePlan| plan.parts().iter().any(|part| part.is_turned_on(long, wide));
    for (width, height, depth, is_turned, expected) in [
        (48, 96, 12, false, &[][..]),
        (96, 48, 12, true, &[]),
        (49, 48, 12, true, &[]),
        (49, 49, 12, false, &["the back is 49\" wide: wider than a sheet of 48\"; join it of two, its grain one way"]),
        (
            40,
            97,
            12,
            false,
            &["the side is 97\" long: longer than a sheet of 96\"", "the back is 97\" long: longer than a sheet of 96\""],
        ),
        (
            36,
            36,
            50,
            false,
            &[
                "the side is 49 3/4\" wide: wider than a sheet of 48\"; join it of two, its grain one way",
                "the bottom is 49 3/4\" wide: wider than a sheet of 48\"; join it of two, its grain one way",
                "the top is 49 3/4\" wide: wider than a sheet of 48\"; join it of two, its grain one way",
            ],
        ),
    ] {
        let plan = sized(width, height, depth);
        assert_eq!(
            (turned(&plan), said(&plan)),
            (is_turned, expected.iter().map(ToString::to_string).collect()),
            "{width} {height}"
        );
    }
    let frame = Case::new(inches(36, 1), inches(100, 1), inches(12, 1)).frame(FaceFrame::new(inches(3, 4), inches(3, 2)));
    let plan = frame.plan().unwrap();
    let stile = plan.parts().iter().find(|part| part.name() == "stile").unwrap();
    assert!(!stile.is_panel());
    assert_eq!(stile.advice_on_board(inches(100, 1)), None);
    assert_eq!(stile.advice_on_board(long).unwrap().to_string(), "the stile is 100\" long: longer than a board of 96\"");
}
