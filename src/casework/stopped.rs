//! Dadoes that stop short of the front edge, so that no joint shows there: how long each runs, the pole
//! that marks its end, and the notches of what goes in.
//! That there is a dado to stop, and something left of it, is left to `sound.rs`.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::case::{Case, TopAt};
use super::error::CaseworkError;
use super::joint::Joint;
use super::part::Notch;
use super::plan::CasePlan;
use super::sum::Sum;
use crate::length::Length;
use crate::pole::{Datum, Mark, PartSide, StoryPole};

/// The dadoes of one panel, stopped short of its front edge.
///
/// ```
/// use scantling::{Case, Joint, Length, Shelves, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let case = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).joined(Joint::Dado(inches(1, 4))).stopped(inches(1, 2));
/// let plan = case.shelves(Shelves::Equal(4)).plan()?;
/// let dadoes = plan.stopped_dadoes();
/// assert_eq!((dadoes[0].panel, dadoes[0].short, dadoes[0].long), ("sides", inches(1, 2), inches(23, 2)));
/// assert_eq!(dadoes[0].to_string(), "11 1/2\" on the sides");
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct StoppedDado {
    /// What it is cut into: `sides`, `partitions`, `bottom`, `top`.
    pub panel: &'static str,
    /// From the front edge of the case to its end.
    pub short: Length,
    /// From the rear edge of the panel to its end.
    pub long: Length,
}

impl core::fmt::Display for StoppedDado {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(out, "{} on the {}", self.long, self.panel)
    }
}

impl Case {
    pub(super) const fn has_dadoes(&self) -> bool {
        matches!(self.joint, Joint::Dado(_)) || matches!(self.top_at, TopAt::BetweenSides(Joint::Dado(_)))
    }

    /// Whether shelves lie in dadoes.
    pub(super) fn has_dadoed_shelves(&self) -> bool {
        matches!(self.joint, Joint::Dado(_)) && self.shelves.pins().is_none() && self.shelves.count() > 0
    }

    /// The notches of a part of this length between panels so far apart, its sawn front edge so far behind theirs: between
    /// the notches it fills what is clear.
    pub(super) fn notch(
        &self,
        joint: Joint,
        length: &Sum,
        clear: Length,
        behind: Length,
    ) -> Result<Option<Notch>, CaseworkError> {
        if !matches!(joint, Joint::Dado(_)) {
            return Ok(None);
        }
        let back = self.stopped.checked_sub(behind).ok_or(CaseworkError::TooLarge)?;
        let let_in = length.total()?.checked_sub(clear).and_then(|both| both.checked_div(2));
        let deep = let_in.ok_or(CaseworkError::TooLarge)?;
        Ok((back > Length::ZERO && deep > Length::ZERO).then_some(Notch { deep, back }))
    }

    /// Where dadoes end, and where the shelves in them begin, from the front edge of the case.
    pub(super) fn depth_pole(&self) -> Result<Option<StoryPole>, CaseworkError> {
        if self.stopped == Length::ZERO {
            return Ok(None);
        }
        let line = |at, name| Mark::new(at, name, PartSide::Line);
        let is_set_back = self.has_dadoed_shelves() && self.set_back > Length::ZERO;
        let mut marks = Vec::from([line(self.stopped, "end of the dadoes")]);
        if is_set_back && self.set_back == self.stopped {
            marks = Vec::from([line(self.stopped, "end of the dadoes, front of the shelves")]);
        } else if is_set_back {
            marks.push(line(self.set_back, "front of the shelves"));
        }
        let pole = StoryPole::new("depth", self.side_depth().total()?).measured_from(Datum::Left);
        Ok(Some(pole.row("from the front edge", marks)?))
    }

    /// Panels with dadoes, and how far each reaches from its rear edge to the front of the case.
    fn dadoed(&self) -> Vec<(&'static str, Sum)> {
        let has_partitions = self.bays > 1 && matches!(self.joint, Joint::Dado(_));
        let top = match self.top_at {
            TopAt::BetweenSides(_) => self.bottom_depth(),
            TopAt::OverSides { .. } => self.box_depth(),
        };
        let all = [
            (self.has_dadoes(), "sides", self.side_depth()),
            (has_partitions && self.has_dadoed_shelves(), "partitions", self.shelf_depth()),
            (has_partitions, "bottom", self.bottom_depth()),
            (has_partitions, "top", top),
        ];
        all.into_iter().filter(|dadoed| dadoed.0).map(|(_, panel, depth)| (panel, depth)).collect()
    }
}

impl CasePlan {
    /// The dadoes that stop short of the front edge, panel by panel; none where they run through.
    ///
    /// ```
    /// use scantling::{Case, Joint, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let through = Case::new(inches(36, 1), inches(72, 1), inches(12, 1)).joined(Joint::Dado(inches(1, 4)));
    /// assert_eq!(through.plan()?.stopped_dadoes(), []);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn stopped_dadoes(&self) -> Vec<StoppedDado> {
        let short = self.case.stopped;
        if short == Length::ZERO {
            return Vec::new();
        }
        let run = |(panel, depth): (&'static str, Sum)| {
            Some(StoppedDado { panel, short, long: depth.total().ok()?.checked_sub(short)? })
        };
        self.case.dadoed().into_iter().filter_map(run).collect()
    }

    /// How far dadoes run, in the words of the order of work.
    pub(super) fn how_far_dadoes_run(&self) -> String {
        let runs: Vec<String> = self.stopped_dadoes().iter().map(|dado| format!("{dado}")).collect();
        if runs.is_empty() {
            let shows = if self.case.frame.is_some() { "the frame covers their ends" } else { "their ends show at the front" };
            return format!("run them through: {shows}");
        }
        let short = self.case.stopped;
        let ends = format!("stop them {short} short of the front edge, at the line of the pole \"depth\", and square their ends");
        let before = match self.case.top_at {
            TopAt::OverSides { past_front, .. } if past_front > Length::ZERO && self.case.bays > 1 => {
                format!("; the top's own front edge lies {past_front} before that of the case")
            }
            _ => String::new(),
        };
        format!("{ends}: from the rear edge they run {}{before}", runs.join(", "))
    }

    /// The step that notches what goes into stopped dadoes.
    pub(super) fn notching(&self) -> Option<String> {
        let notched = self.parts().iter().filter_map(|part| Some((part.name(), part.notch()?)));
        let each: Vec<String> =
            notched.map(|(name, Notch { deep, back })| format!("{name} {deep} off each end and {back} back")).collect();
        let together = "so that the front edges pass the ends of the dadoes";
        (!each.is_empty()).then(|| format!("Notch the front corners, {together}: {}.", each.join("; ")))
    }
}
