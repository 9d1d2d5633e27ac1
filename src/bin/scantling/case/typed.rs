//! Options in the words of the trade, laid on a case. What they come to is left to the library.

use scantling::{
    Allowances, Back, Base, Case, FaceFrame, FrameJoint, Growth, Joint, Length, LengthParser, PinHoles, Shelves, TopAt, Unit,
};

use super::job::{self, Job};
use super::stock::{Named, thickness};
use super::{arguments, before, place, refused};
use crate::problem::{self, Problem};

/// The job with everything that was typed.
pub fn job(options: &arguments::Case, parser: LengthParser) -> Result<Job, Problem> {
    let mut job = job::begun(options, parser)?;
    let Job { case, named, .. } = &mut job;
    overall(case, options, parser)?;
    let mut typed = Typed { parser, named };
    typed.stock(case, &options.stock)?;
    typed.build(case, &options.build)?;
    shelves(case, &options.shelves, parser)?;
    before::fronts(case, &options.fronts, parser, named)?;
    place::place(&mut job.site, &options.place, parser)?;
    job.seasons.typed(&options.seasons);
    if options.width.is_none() && (options.place.between_walls.is_some() || job.fills_its_place) {
        job.case = job.case.as_wide_as(&job.site).map_err(refused)?;
    }
    if let Some(name) = &options.name {
        job.name.clone_from(name);
    }
    // A name is for one line of a terminal.
    job.name = job.name.replace(char::is_control, " ");
    job.material = options.shelves.material.clone().or(job.material);
    job.load = options.shelves.load.clone().or(job.load);
    job.limit = options.shelves.limit.or(job.limit);
    Ok(job)
}

fn overall(case: &mut Case, options: &arguments::Case, parser: LengthParser) -> Result<(), Problem> {
    set(&mut case.width, "--width", options.width.as_ref(), parser)?;
    set(&mut case.height, "--height", options.height.as_ref(), parser)?;
    set(&mut case.depth, "--depth", options.depth.as_ref(), parser)?;
    case.over = options.over.map_or(case.over, Into::into);
    Ok(())
}

fn set(place: &mut Length, option: &str, text: Option<&String>, parser: LengthParser) -> Result<(), Problem> {
    if let Some(text) = text {
        *place = problem::read(parser, option, text)?;
    }
    Ok(())
}

struct Typed<'a> {
    parser: LengthParser,
    named: &'a mut Vec<Named>,
}

impl Typed<'_> {
    fn stock(&mut self, case: &mut Case, options: &arguments::StockOptions) -> Result<(), Problem> {
        if let Some(sheet) = &options.sheet {
            *case = case.clone().sheet(thickness("sheet", sheet, self.parser, self.named)?);
        }
        for (place, of, text) in [
            (&mut case.side, "side", &options.side),
            (&mut case.shelf, "shelf", &options.shelf),
            (&mut case.top, "top", &options.top),
            (&mut case.bottom, "bottom", &options.bottom),
            (&mut case.partition, "partition", &options.partition),
            (&mut case.edging, "edging", &options.edging),
        ] {
            if let Some(text) = text {
                *place = thickness(of, text, self.parser, self.named)?;
            }
        }
        Ok(())
    }

    fn build(&mut self, case: &mut Case, options: &arguments::BuildOptions) -> Result<(), Problem> {
        if let Some(text) = &options.joint {
            case.joint = joint("--joint", text, self.parser)?;
        }
        set(&mut case.stopped, "--stopped", options.stopped.as_ref(), self.parser)?;
        if let Some(text) = &options.top_joint {
            case.top_at = TopAt::BetweenSides(joint("--top-joint", text, self.parser)?);
        }
        if let Some(text) = &options.top_over {
            let [past_sides, past_front] = two("--top-over", text, self.parser)?;
            case.top_at = TopAt::OverSides { past_sides, past_front };
        }
        if let Some(text) = &options.back {
            case.back = self.back(text)?;
        }
        if let Some(text) = &options.base {
            case.base = self.base(text)?;
        }
        if let Some(count) = options.ties {
            let Base::Separate { ties, .. } = &mut case.base else {
                return Err(Problem::plain("--ties are for a separate base").hint("--base separate:HEIGHT:RECESS:STOCK:AT-SIDES"));
            };
            *ties = count;
        }
        self.frame(case, options)?;
        set(&mut case.molding, "--molding", options.molding.as_ref(), self.parser)?;
        if let Some(text) = &options.play {
            let [back, on_pins, glue] = measures("--play", text, self.parser)?;
            case.allowances = Allowances::new(back, on_pins, glue);
        }
        Ok(())
    }

    fn back(&mut self, text: &str) -> Result<Back, Problem> {
        let parts: Vec<&str> = text.split(':').collect();
        let mut thick = |text| thickness("back", text, self.parser, self.named);
        let length = |text| problem::read(self.parser, "--back", text);
        match parts[..] {
            ["none"] => Ok(Back::None),
            ["applied", thickness] => Ok(Back::Applied { thickness: thick(thickness)? }),
            ["rabbet", thickness, depth] => Ok(Back::Rabbet { thickness: thick(thickness)?, depth: length(depth)? }),
            ["groove", thickness, depth, set_in] => {
                Ok(Back::Groove { thickness: thick(thickness)?, depth: length(depth)?, set_in: length(set_in)? })
            }
            _ => Err(unread("--back", text, "none, applied:7/32, rabbet:7/32:3/8 or groove:1/4:1/4:1/2")),
        }
    }

    fn base(&mut self, text: &str) -> Result<Base, Problem> {
        let parts: Vec<&str> = text.split(':').collect();
        let mut thick = |text| thickness("base", text, self.parser, self.named);
        let length = |text| problem::read(self.parser, "--base", text);
        match parts[..] {
            ["none"] => Ok(Base::None),
            ["toe", height, recess, stock] => {
                Ok(Base::SidesToFloor { height: length(height)?, recess: length(recess)?, stock: thick(stock)? })
            }
            ["separate", height, from_front, stock, from_sides] => Ok(Base::Separate {
                height: length(height)?,
                stock: thick(stock)?,
                from_front: length(from_front)?,
                from_sides: length(from_sides)?,
                ties: 0,
            }),
            _ => Err(unread("--base", text, "none, toe:4:3:3/4 or separate:4:3:3/4:1/2")),
        }
    }

    fn frame(&mut self, case: &mut Case, options: &arguments::BuildOptions) -> Result<(), Problem> {
        if let Some(text) = &options.frame {
            let parts: Vec<&str> = text.split(':').collect();
            let length = |text| problem::read(self.parser, "--frame", text);
            let [stock, stile, rails @ ..] = &parts[..] else { return Err(unread("--frame", text, FRAME)) };
            let frame = FaceFrame::new(thickness("frame", stock, self.parser, self.named)?, length(stile)?);
            case.frame = Some(match rails {
                [] => frame,
                [both] => frame.rails(length(both)?, length(both)?),
                [top, bottom] => frame.rails(length(top)?, length(bottom)?),
                _ => return Err(unread("--frame", text, FRAME)),
            });
        }
        let is_of_frame = options.past.is_some() || options.stiles_between;
        match &mut case.frame {
            Some(frame) => {
                if let Some(text) = &options.past {
                    frame.past = two("--past", text, self.parser)?;
                }
                if options.stiles_between {
                    frame.joint = FrameJoint::StilesBetween;
                }
            }
            None if is_of_frame => {
                return Err(
                    Problem::plain("--past and --stiles-between are for a face frame").hint("--frame 3/4:1-1/2 gives it one")
                );
            }
            None => {}
        }
        case.level_with_rail |= options.level_with_rail;
        Ok(())
    }
}

const FRAME: &str = "3/4:1-1/2, or with its rails 3/4:1-3/4:2-1/4:1-1/2";

fn joint(option: &str, text: &str, parser: LengthParser) -> Result<Joint, Problem> {
    let depth = |depth| problem::read(parser, option, depth);
    match text.split_once(':') {
        None if text == "butt" => Ok(Joint::Butt),
        Some(("dado", deep)) => Ok(Joint::Dado(depth(deep)?)),
        Some(("rabbet", deep)) => Ok(Joint::Rabbet(depth(deep)?)),
        _ => Err(unread(option, text, "butt, dado:7/32 or rabbet:7/32")),
    }
}

/// One length for both, or two.
pub fn two(option: &str, text: &str, parser: LengthParser) -> Result<[Length; 2], Problem> {
    let length = |text| problem::read(parser, option, text);
    match text.split_once(':') {
        None => length(text).map(|both| [both; 2]),
        Some((first, second)) => Ok([length(first)?, length(second)?]),
    }
}

/// Just so many lengths.
pub fn measures<const COUNT: usize>(option: &str, text: &str, parser: LengthParser) -> Result<[Length; COUNT], Problem> {
    let lengths = text.split(':').map(|text| problem::read(parser, option, text)).collect::<Result<Vec<_>, _>>()?;
    lengths.try_into().map_err(|_| unread(option, text, &format!("{COUNT} lengths joined by colons")))
}

pub fn unread(option: &str, text: &str, wanted: &str) -> Problem {
    Problem::plain(format!("{option}: {text} is not understood")).hint(format!("write {wanted}"))
}

fn shelves(case: &mut Case, options: &arguments::ShelfOptions, parser: LengthParser) -> Result<(), Problem> {
    case.bays = options.bays.unwrap_or(case.bays);
    set(&mut case.set_back, "--set-back", options.set_back.as_ref(), parser)?;
    if let Some(count) = options.shelves {
        case.shelves = match (&options.grow_by, &options.pins) {
            (Some(step), _) => Shelves::Growing(count, Growth::Step(problem::read(parser, "--grow-by", step)?)),
            (None, Some(pins)) => Shelves::Adjustable(count, pin_holes(pins, parser)?),
            (None, None) => Shelves::Equal(count),
        };
    }
    if !options.openings.is_empty() {
        let read = |text: &String| problem::read(parser, "--openings", text);
        case.shelves = Shelves::Openings(options.openings.iter().map(read).collect::<Result<_, _>>()?);
    }
    if let Some(text) = &options.proportions {
        let shares: Result<Vec<u64>, _> = text.split(':').map(str::parse).collect();
        case.shelves = Shelves::Proportional(shares.map_err(|_| unread("--proportions", text, "whole numbers such as 3:2:2"))?);
    }
    Ok(())
}

fn pin_holes(text: &str, parser: LengthParser) -> Result<PinHoles, Problem> {
    if text == "32" || parser.parse(text) == Ok(Length::new(32, Unit::Millimeter)) {
        return Ok(PinHoles::ROWS_OF_32);
    }
    let [pitch, first, from_edges, deep] = measures("--pins", text, parser)?;
    Ok(PinHoles::new(pitch, first, from_edges, deep))
}
