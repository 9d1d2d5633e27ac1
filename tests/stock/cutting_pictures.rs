//! Sheets as they are drawn and sketched. The sketches were drawn by hand; the picture in `tests/data/sheet.svg` is what the crate
//! drew, looked at by eye, some of its places held by hand to those of the plan: it says when something changes.

use scantling::{Length, Panel, Sheet, SheetCutting, Unit};

const LAYERS: &str = "
+-----------------------------------------------------------------------+
+-----------------------------------------------------------------------+
+-----------------------------------------------------------------------+
|                                 rail                                  |
+---------------------------------------+-------------------------------+
|                                       |                               |
|                 near                  |              far              |
|                                       |                               |
+---------------------------------------+-------------------------------+
";

const TALL: &str = "
+-----------------------------------------------------------+-----------+
|...........................................................|           |
|...........................................................|           |
|...........................................................|           |
+-----------------------------------------------------------+    end    |
|                                                           |           |
|                           long                            |           |
|                                                           |           |
+-----------------------------------------------------------+-----------+
";

const RAIL_LAST: &str = "
+-----------------------------------------------------------------------+
+-----------------------------------------------------------------------+
|                                 rail                                  |
+---------------------------------------+-------------------------------+
|                                       |                               |
|                                       |                               |
|                 near                  |              far              |
|                                       |                               |
+---------------------------------------+-------------------------------+
";

/// Drawn by hand: a character for each inch along the sheet, a line for every two across it, the near edge at the bottom. Panels meet at
/// their edges; a name takes a line between two others.
#[test]
fn sketches_where_edges_meet() {
    let inches = |count| Length::new(count, Unit::Inch);
    let layers: &[_] = &[("near", 40, 8), ("far", 32, 8), ("rail", 72, 4), ("lath", 72, 2)];
    let rail_last: &[_] = &[("near", 40, 10), ("far", 32, 10), ("lath", 72, 2), ("rail", 72, 4)];
    let tall: &[_] = &[("long", 60, 8), ("end", 12, 16)];
    for (panels, sketch) in [(layers, LAYERS), (rail_last, RAIL_LAST), (tall, TALL)] {
        let panels = panels.iter().map(|(name, length, width)| Panel::new(*name, inches(*length), inches(*width), 1));
        let plan = panels.fold(SheetCutting::new(), SheetCutting::panel).sheet(Sheet::new("plank", inches(72), inches(16)));
        let plan = plan.plan().unwrap();
        let drawn = plan.sketch(&plan.sheets()[0]);
        assert_eq!(drawn.trim_end(), sketch.trim(), "{drawn}");
    }
}

/// A unit of the picture is 1/2 mm. Names and sizes as large as there is room for, along the sheet or across it, a name alone, a number
/// alone, nothing at all; a panel that is turned; edges between two units, since a cut takes 3.3 mm.
#[cfg(feature = "svg")]
#[test]
fn a_sheet_as_it_is_drawn() {
    let mm = |count| Length::new(count, Unit::Millimeter);
    let mut cutting = SheetCutting::new().kerf(Length::fraction(33, 10, Unit::Millimeter)).trim(mm(10));
    for (name, length, width) in [
        ("door panel", 400, 300),
        ("side", 40, 400),
        ("rail", 400, 35),
        ("bottom of a case", 120, 100),
        ("key", 40, 80),
        ("wedge under it", 25, 50),
        ("back", 60, 600),
        ("plug", 10, 10),
    ] {
        let panel = Panel::new(name, mm(length), mm(width), 1);
        cutting = cutting.panel(if name == "back" { panel.turnable() } else { panel });
    }
    let plan = cutting.sheet(Sheet::new("half", mm(1000), mm(500))).plan().unwrap();
    let drawn = plan.svg(&plan.sheets()[0]);
    assert_eq!(drawn, include_str!("../data/sheet.svg"), "{drawn}");
}
