//! What can hurt someone, and whom to ask. A caution is the usual one; local codes, the tool's manual and licensed people
//! come first.

use alloc::vec::Vec;
use core::fmt;

use super::plan::CasePlan;
use crate::length::{Length, Unit};

/// The usual caution for something that can hurt someone.
///
/// ```
/// use scantling::{Case, Caution, Length, Unit};
///
/// let foot = Length::new(1, Unit::Foot);
/// assert!(Case::new(3 * foot, 6 * foot, foot).plan()?.cautions().contains(&Caution::TipOver));
/// assert!(!Case::new(3 * foot, 2 * foot, foot).plan()?.cautions().contains(&Caution::TipOver));
/// assert!(Caution::TipOver.to_string().contains("Fasten it to the wall"));
/// # Ok::<(), scantling::CaseworkError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Caution {
    /// A case that can fall on someone.
    TipOver,
    /// What the shelves bear.
    Load,
    /// Saws, and the dust they make.
    Saw,
    /// What the wood is finished with.
    Finish,
}

impl fmt::Display for Caution {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::TipOver => {
                "A case this tall can tip over, more so when it is climbed, loaded at the top, or set back at the base. Fasten it to the wall, \
                 into framing, and load it from the bottom. The federal rule for clothing storage (16 CFR 1261) begins at 27 in; other \
                 cases fall as hard. Local codes come first."
            }
            Self::Load => {
                "Weigh what the shelves will bear, and never take a design load for a promise. Where a fall could hurt someone, have a \
                 licensed designer look at shelves and fastenings."
            }
            Self::Saw => {
                "Guards on, blade set by its manual, push sticks at hand. Fine dust harms the lungs: collect it at the tool, and wear a \
                 respirator that fits."
            }
            Self::Finish => {
                "Air the room when you finish, and spread oily rags flat outdoors to dry: in a heap they can catch fire by themselves. The \
                 label comes first."
            }
        })
    }
}

impl CasePlan {
    /// The cautions that belong to this case. One is about tipping where the case is 27 in high or more, the height at which
    /// the rule for clothing storage begins (16 CFR 1261, ASTM F2057-23), or stands higher than twice its depth (common practice, no source).
    ///
    /// ```
    /// use scantling::{Case, Caution, Length, Unit};
    ///
    /// let foot = Length::new(1, Unit::Foot);
    /// assert_eq!(Case::new(3 * foot, foot, 2 * foot).plan()?.cautions(), [Caution::Load, Caution::Saw, Caution::Finish]);
    /// # Ok::<(), scantling::CaseworkError>(())
    /// ```
    #[must_use]
    pub fn cautions(&self) -> Vec<Caution> {
        let (height, depth) = (self.case.height, self.case.depth);
        let is_tall = height >= Length::new(27, Unit::Inch) || height.checked_div(2).is_some_and(|half| half > depth);
        let tip_over = is_tall.then_some(Caution::TipOver);
        tip_over.into_iter().chain([Caution::Load, Caution::Saw, Caution::Finish]).collect()
    }
}
