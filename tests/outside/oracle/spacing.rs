//! Every kind of dividing a run: exactly, on a tape, and as it will be cut.

use csv::StringRecord;
use scantling::{Edge, End, First, Growth, Layout, Length, Narrowest, Remainder, Spacing, SpacingError, Widest};

use super::{all_inches, golden, inches, ratio, tape};

/// The arguments of a row, whatever stands between them.
fn arguments(row: &StringRecord) -> Vec<&str> {
    row[1].split(if row[1].contains(',') { ',' } else { ' ' }).collect()
}

fn end(cell: &str) -> End {
    match cell {
        "gap" => End::Gap,
        "half gap" => End::HalfGap,
        "flush" => End::Flush,
        margin => End::Margin(inches(margin)),
    }
}

fn edge(row: &StringRecord) -> Edge {
    match &row[8] {
        "near" => Edge::Near,
        "center" => Edge::Center,
        "far" => Edge::Far,
        unknown => panic!("edge {unknown:?}"),
    }
}

fn drawers(of: &[&str]) -> Spacing {
    let growth = match of[2] {
        "step" => Growth::Step(inches(of[3])),
        "ratio" => Growth::Ratio(ratio(of[3])),
        "top" => Growth::Top(inches(of[3])),
        "bottom" => Growth::Bottom(inches(of[3])),
        unknown => panic!("growth {unknown:?}"),
    };
    let (count, divider) = (of[0].parse().unwrap(), inches(of[1]));
    match of[4] {
        "top" => Spacing::drawers_from_top(count, divider, growth),
        _ => Spacing::drawers_from_bottom(count, divider, growth),
    }
}

fn on_center(of: &[&str]) -> Spacing {
    let at = inches(of[3]);
    let first = match of[2] {
        "center" => First::CenterAt(at),
        "face" => First::FaceAt(at),
        "off center" => First::OffCenterLine(at),
        "shared" => First::Shared,
        unknown => panic!("first {unknown:?}"),
    };
    Spacing::on_center(inches(of[0]), inches(of[1]), first)
}

fn counted(of: &[&str]) -> Spacing {
    let (thickness, bound) = (inches(of[0]), inches(of[2]));
    match of[1] {
        "under" => Spacing::fewest_members(thickness, Widest::Under(bound)),
        "at most" => Spacing::fewest_members(thickness, Widest::AtMost(bound)),
        "over" => Spacing::most_members(thickness, Narrowest::Over(bound)),
        "at least" => Spacing::most_members(thickness, Narrowest::AtLeast(bound)),
        unknown => panic!("limit {unknown:?}"),
    }
}

fn spacing(row: &StringRecord) -> Spacing {
    let of = arguments(row);
    let spacing = match &row[0] {
        "parts" => Spacing::equal_parts(of[0].parse().unwrap()),
        "unequal" => Spacing::unequal_members(all_inches(&row[1])),
        "shares" => Spacing::proportional(of[1..].iter().map(|share| share.parse().unwrap()), inches(of[0])),
        "drawers" => drawers(&of),
        "on center" => on_center(&of),
        "nearest" => Spacing::nearest_openings(inches(of[0]), inches(of[1])),
        "fewest" | "most" if of[3] == "as cut" => counted(&of).as_cut(&tape(&row[6], &row[7])),
        "fewest" | "most" => counted(&of),
        _ => Spacing::equal_openings(of[0].parse().unwrap(), inches(of[1])),
    };
    let spacing = spacing.near_end(end(&row[2])).far_end(end(&row[3]));
    match row[5].split_once(' ') {
        Some((after, length)) => spacing.hold(after.parse().unwrap(), inches(length)),
        None => spacing,
    }
}

/// The layout; of a block, after its own figures were compared.
fn layout(row: &StringRecord) -> Result<Layout, SpacingError> {
    let (spacing, run) = (spacing(row), inches(&row[4]));
    let Some(remainder) = row[0].strip_prefix("block ") else { return spacing.over(run) };
    let remainder = match remainder {
        "last" => Remainder::Last,
        "first" => Remainder::First,
        _ => Remainder::Split,
    };
    let block = spacing.spacer_block(run, &tape(&row[6], &row[7]), remainder)?;
    if let [.., length, times] = arguments(row)[2..] {
        assert_eq!((block.block(), block.times()), (inches(length), times.parse().unwrap()), "{row:?}");
    }
    Ok(block.layout().clone())
}

/// What is compared: sizes, places, marks, and what comes of them.
fn compare(layout: &Layout, row: &StringRecord) -> Option<&'static str> {
    let tape = tape(&row[6], &row[7]);
    let marked = layout.on_edge(&tape, edge(row)).unwrap();
    let marks = row[12].split(' ').filter(|count| !count.is_empty()).map(|count| tape.step() * count.parse::<i64>().unwrap());
    let is = |column: usize, found: Length| row[column].is_empty() || found == inches(&row[column]);
    let checks = [
        ("opening", is(9, layout.opening())),
        ("gaps", layout.gaps().eq(all_inches(&row[10]))),
        ("near edges", layout.marks().map(|mark| mark.near()).eq(all_inches(&row[11]))),
        ("marks", marked.marks().map(|mark| mark.reading().mark()).eq(marks)),
        ("gaps as cut", marked.gaps().eq(all_inches(&row[13]))),
        ("spread", is(14, marked.spread())),
        ("worst mark", is(15, marked.worst())),
    ];
    checks.into_iter().find(|(_, is_right)| !is_right).map(|(what, _)| what)
}

#[test]
fn every_layout() {
    let rows = golden("spacing.csv");
    let mut wrong = Vec::new();
    for row in &rows {
        match (layout(row), &row[9]) {
            (Err(_), "refused") => {}
            (Ok(layout), cell) if cell != "refused" => {
                wrong.extend(compare(&layout, row).map(|what| format!("{what}: {row:?}: {layout:?}")));
            }
            (layout, _) => wrong.push(format!("{row:?}: {layout:?}")),
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), rows.len(), wrong.join("\n"));
    assert_eq!(rows.len(), 680);
}
