//! A face frame: stiles and rails before the front edges of a case. What it covers and what it leaves is left to `parts.rs`.

use crate::length::Length;

/// A face frame.
///
/// ```
/// use scantling::{FaceFrame, FrameJoint, Length, Unit};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let frame = FaceFrame::new(inches(3, 4), inches(7, 4)).rails(inches(9, 4), inches(3, 2)).past_sides(inches(1, 4), inches(1, 4));
/// assert_eq!((frame.top_rail, frame.joint), (inches(9, 4), FrameJoint::RailsBetween));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct FaceFrame {
    /// How thick its stock is.
    pub stock: Length,
    /// How wide a stile is; a mullion before a partition is as wide.
    pub stile: Length,
    /// How wide the top rail is.
    pub top_rail: Length,
    /// How wide the bottom rail is.
    pub bottom_rail: Length,
    /// How far it stands past the left side and past the right one.
    pub past: [Length; 2],
    /// Which run through.
    pub joint: FrameJoint,
}

/// Which pieces of a frame run through, and which lie between.
///
/// ```
/// assert_ne!(scantling::FrameJoint::RailsBetween, scantling::FrameJoint::StilesBetween);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(clippy::exhaustive_enums)] // there are no others
pub enum FrameJoint {
    /// The stiles run from end to end, and the rails lie between them.
    RailsBetween,
    /// The rails run from side to side, and the stiles lie between them.
    StilesBetween,
}

impl FaceFrame {
    /// A frame of one stock, its rails as wide as its stiles, flush with the sides, the rails between the stiles.
    ///
    /// ```
    /// use scantling::{FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// assert_eq!(FaceFrame::new(inches(3, 4), inches(3, 2)).bottom_rail, inches(3, 2));
    /// ```
    #[must_use]
    pub const fn new(stock: Length, stile: Length) -> Self {
        Self { stock, stile, top_rail: stile, bottom_rail: stile, past: [Length::ZERO; 2], joint: FrameJoint::RailsBetween }
    }

    /// With rails of these widths.
    ///
    /// ```
    /// use scantling::{FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// assert_eq!(FaceFrame::new(inches(3, 4), inches(3, 2)).rails(inches(2, 1), inches(3, 1)).top_rail, inches(2, 1));
    /// ```
    #[must_use]
    pub const fn rails(mut self, top: Length, bottom: Length) -> Self {
        (self.top_rail, self.bottom_rail) = (top, bottom);
        self
    }

    /// Standing so far past the left side and the right side of the case.
    ///
    /// ```
    /// use scantling::{FaceFrame, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let wall_on_the_left = FaceFrame::new(inches(3, 4), inches(3, 2)).past_sides(Length::ZERO, inches(1, 4));
    /// assert_eq!(wall_on_the_left.past, [Length::ZERO, inches(1, 4)]);
    /// ```
    #[must_use]
    pub const fn past_sides(mut self, left: Length, right: Length) -> Self {
        self.past = [left, right];
        self
    }

    /// With the pieces running through that this says.
    ///
    /// ```
    /// use scantling::{FaceFrame, FrameJoint, Length, Unit};
    ///
    /// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
    /// let frame = FaceFrame::new(inches(3, 4), inches(3, 2)).joined(FrameJoint::StilesBetween);
    /// assert_eq!(frame.joint, FrameJoint::StilesBetween);
    /// ```
    #[must_use]
    pub const fn joined(mut self, joint: FrameJoint) -> Self {
        self.joint = joint;
        self
    }
}
