//! How many members a run takes: the fewest for a widest gap, the most for a narrowest, or those whose
//! openings come nearest to a size. Every candidate is laid out by the one solver and judged by `limit.rs`.

use super::limit::Patience;
use super::pattern::Pattern;
use super::rule::{Count, Rule};
use super::{Layout, Narrowest, Spacing, SpacingError, Widest};
use crate::length::Length;

impl Spacing {
    /// The fewest members of a thickness that leave no gap too wide: balusters, slats, studs.
    ///
    /// A recipe that divides the run by thickness and gap together, and rounds up, is one member over for many
    /// runs: the last gap needs no member after it. What counts is the run and *one thickness more*, and which ends
    /// are open.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit, Widest};
    ///
    /// let (baluster, run) = (Length::fraction(3, 2, Unit::Inch), Length::new(52, Unit::Inch));
    /// let layout = Spacing::fewest_members(baluster, Widest::AtMost(Length::new(4, Unit::Inch))).over(run)?;
    /// assert_eq!(layout.members(), 9); // 52 ÷ 5 1/2 is 9.45, and so ten by the recipe
    /// assert_eq!(layout.opening(), Length::fraction(77, 20, Unit::Inch)); // 3 17/20 in
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn fewest_members(thickness: Length, widest: Widest) -> Self {
        Self::by(Rule::Counted { thickness, count: Count::Fewest }).widest(widest)
    }

    /// The most members of a thickness that leave no gap too narrow.
    ///
    /// ```
    /// use scantling::{End, Length, Narrowest, Spacing, Unit};
    ///
    /// // Hooks on a rail of 92 in, no two nearer than 7 in, half a space at the ends.
    /// let hooks = Spacing::most_members(Length::ZERO, Narrowest::AtLeast(Length::new(7, Unit::Inch)));
    /// let layout = hooks.near_end(End::HalfGap).far_end(End::HalfGap).over(Length::new(92, Unit::Inch))?;
    /// assert_eq!(layout.members(), 13);
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn most_members(thickness: Length, narrowest: Narrowest) -> Self {
        Self::by(Rule::Counted { thickness, count: Count::Most }).narrowest(narrowest)
    }

    /// As many members of a thickness as bring the openings nearest to a preferred size: the remainder of that size is
    /// shared among all of them. Of two openings that are as near, one wider and one narrower, the narrower.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// // Slats of 1 1/2 in with about 2 in between them.
    /// let (slat, about) = (Length::fraction(3, 2, Unit::Inch), Length::new(2, Unit::Inch));
    /// let layout = Spacing::nearest_openings(slat, about).over(Length::new(48, Unit::Inch))?;
    /// assert_eq!((layout.members(), layout.opening()), (13, Length::fraction(57, 28, Unit::Inch)));
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn nearest_openings(thickness: Length, preferred: Length) -> Self {
        Self::by(Rule::Counted { thickness, count: Count::Nearest(preferred) })
    }

    /// As many equal parts as come nearest to a preferred size: courses of siding, steps of a stair.
    ///
    /// ```
    /// use scantling::{Length, Spacing, Unit};
    ///
    /// // A rise of 8 ft 10 3/4 in, each step about 7 1/2 in.
    /// let about = Length::fraction(15, 2, Unit::Inch);
    /// let layout = Spacing::nearest_parts(about).over(Length::fraction(427, 4, Unit::Inch))?;
    /// assert_eq!(layout.opening(), Length::fraction(61, 8, Unit::Inch)); // 14 of 7 5/8 in
    /// # Ok::<(), scantling::SpacingError>(())
    /// ```
    #[must_use]
    pub const fn nearest_parts(preferred: Length) -> Self {
        Self::nearest_openings(Length::ZERO, preferred)
    }
}

/// What a number of members comes to.
enum Verdict {
    TooFew(SpacingError),
    /// Near enough to the limits to be judged by them.
    MayDo(Layout),
    TooMany(SpacingError),
}

impl Spacing {
    pub(super) fn counted(&self, count: Count, thickness: Length, run: Length) -> Result<Pattern, SpacingError> {
        let of = |members| self.equal(members, thickness)?.setting(&self.held, run);
        let lay = |members| of(members).and_then(|pattern| pattern.over(run));
        of(match count {
            Count::Fewest => self.fewest(lay, run),
            Count::Most => self.most(lay, run),
            Count::Nearest(preferred) => nearest(lay, preferred, run),
        }?)
    }

    fn fewest(&self, lay: impl Fn(usize) -> Result<Layout, SpacingError>, run: Length) -> Result<usize, SpacingError> {
        let (slack, mut patience) = (self.telling_slack()?, Patience::fresh());
        let mut refused = None;
        let mut members = first(run, |members| match self.verdict(lay(members), slack) {
            Ok(Verdict::TooFew(error)) => {
                refused = Some(error);
                Ok(false)
            }
            Ok(_) => Ok(true),
            Err(error) => Err(refused.unwrap_or(error)),
        })?;
        loop {
            match self.verdict(lay(members), slack)? {
                Verdict::MayDo(layout) => match self.judge(&layout, &mut patience) {
                    Ok(()) => return Ok(members),
                    Err(error) => refused = Some(self.passing(error)?),
                },
                Verdict::TooFew(error) => refused = Some(error),
                Verdict::TooMany(error @ SpacingError::GapTooNarrow { .. }) => return Err(error),
                Verdict::TooMany(error) => return Err(refused.unwrap_or(error)),
            }
            members = members.checked_add(1).ok_or(SpacingError::OutOfRange { run })?;
        }
    }

    fn most(&self, lay: impl Fn(usize) -> Result<Layout, SpacingError>, run: Length) -> Result<usize, SpacingError> {
        let (slack, mut patience) = (self.telling_slack()?, Patience::fresh());
        let mut refused = None;
        let too_many = first(run, |members| match self.verdict(lay(members), slack)? {
            Verdict::TooMany(error) => {
                refused = Some(error);
                Ok(true)
            }
            _ => Ok(false),
        })?;
        for members in (0..too_many).rev() {
            match self.verdict(lay(members), slack)? {
                Verdict::MayDo(layout) => match self.judge(&layout, &mut patience) {
                    Ok(()) => return Ok(members),
                    Err(error) => refused = Some(self.passing(error)?),
                },
                Verdict::TooMany(error) => refused = Some(error),
                Verdict::TooFew(error @ SpacingError::GapTooWide { .. }) => return Err(error),
                Verdict::TooFew(error) => return Err(refused.unwrap_or(error)),
            }
        }
        Err(refused.unwrap_or(SpacingError::OutOfRange { run }))
    }

    /// A refusal that another number of members may not get. What a flush end or a margin is cut at is the same with any.
    fn passing(&self, error: SpacingError) -> Result<SpacingError, SpacingError> {
        let (SpacingError::GapTooWide { members, after, .. } | SpacingError::GapTooNarrow { members, after, .. }) = error else {
            return Err(error);
        };
        let is_settled = members > 0 && (after == 0 && self.near.is_fixed() || after == members && self.far.is_fixed());
        if is_settled { Err(error) } else { Ok(error) }
    }

    /// The slack, where it leaves anything of the limits.
    fn telling_slack(&self) -> Result<Length, SpacingError> {
        let slack = self.slack();
        let sizes = [self.limits.widest.map(Widest::length), self.limits.narrowest.map(Narrowest::length)];
        match sizes.into_iter().flatten().find(|size| *size <= slack && !slack.is_zero()) {
            Some(limit) => Err(SpacingError::BelowGraduation { limit, step: slack }),
            None => Ok(slack),
        }
    }

    /// By the exact gaps, with some slack. Gaps shrink as members are added, so the verdict turns but twice.
    fn verdict(&self, layout: Result<Layout, SpacingError>, slack: Length) -> Result<Verdict, SpacingError> {
        let layout = match layout {
            Err(error @ (SpacingError::NothingToShare { .. } | SpacingError::NoSuchOpening { .. })) => {
                return Ok(Verdict::TooFew(error));
            }
            Err(error @ SpacingError::DoesNotFit { .. }) => return Ok(Verdict::TooMany(error)),
            layout => layout?,
        };
        Ok(match self.judge_exactly(&layout) {
            Err(error) if self.is_too_wide(&layout, slack) => Verdict::TooFew(error),
            Err(error) if self.is_too_narrow(&layout, slack) => Verdict::TooMany(error),
            _ => Verdict::MayDo(layout),
        })
    }

    /// Whether some gap is too wide even less the slack.
    fn is_too_wide(&self, layout: &Layout, slack: Length) -> bool {
        let is_over = |gap: Length, widest: Widest| gap.checked_sub(slack).is_some_and(|gap| !widest.allows(gap));
        self.limits.widest.is_some_and(|widest| layout.some_of_each_kind().any(|(_, gap)| is_over(gap, widest)))
    }

    /// Whether some full gap is too narrow even with the slack.
    fn is_too_narrow(&self, layout: &Layout, slack: Length) -> bool {
        let mut full = layout.some_of_each_kind().filter(|(after, _)| self.is_full(*after, layout.members()));
        let is_under = |gap: Length, narrowest: Narrowest| gap.checked_add(slack).is_some_and(|gap| !narrowest.allows(gap));
        self.limits.narrowest.is_some_and(|narrowest| full.any(|(_, gap)| is_under(gap, narrowest)))
    }
}

fn nearest(lay: impl Fn(usize) -> Result<Layout, SpacingError>, preferred: Length, run: Length) -> Result<usize, SpacingError> {
    if preferred.is_negative() {
        return Err(SpacingError::NegativeOpening { opening: preferred });
    }
    let opening = |members| lay(members).map(|layout| layout.opening());
    let narrow = first(run, |members| match opening(members) {
        Err(SpacingError::NothingToShare { .. } | SpacingError::NoSuchOpening { .. }) => Ok(false),
        Err(SpacingError::DoesNotFit { .. }) => Ok(true),
        opening => Ok(opening? <= preferred),
    })?;
    let Some(wide) = narrow.checked_sub(1) else { return Ok(narrow) };
    let (Ok(above), below) = (opening(wide), opening(narrow)) else { return Ok(narrow) };
    let Ok(below) = below else { return Ok(wide) };
    let apart = above.checked_sub(preferred).zip(preferred.checked_sub(below));
    apart.map(|(over, under)| if under <= over { narrow } else { wide }).ok_or(SpacingError::OutOfRange { run })
}

/// The first number for which something holds that goes on holding from there.
fn first(run: Length, mut holds: impl FnMut(usize) -> Result<bool, SpacingError>) -> Result<usize, SpacingError> {
    let (mut low, mut high) = (0, 0);
    while !holds(high)? {
        low = high + 1;
        high = high.checked_mul(2).and_then(|twice| twice.checked_add(1)).ok_or(SpacingError::OutOfRange { run })?;
    }
    while low < high {
        let middle = low + (high - low) / 2;
        if holds(middle)? { high = middle } else { low = middle + 1 }
    }
    Ok(low)
}
