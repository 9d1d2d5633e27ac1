//! Hinges along a door. Dividing what lies between them is left to the spacing layer.

use crate::length::Length;
use crate::spacing::{End, Spacing};

/// Hinges along a door or its jamb, the first and the last held off the ends, the others evenly between them.
/// Laid out over the height of the door, from its top.
///
/// The offsets run from the ends of the door to the near edge of a leaf; with a leaf of zero, to its center.
/// Take marks for door and jamb from one layout, and add the gap at the head to those of the jamb. Mark on
/// which side of each line the mortise lies before cutting it.
///
/// ```
/// use scantling::{Length, Unit, hinges};
///
/// let inches = |num, den| Length::fraction(num, den, Unit::Inch);
/// let layout = hinges(3, Length::ZERO, inches(5, 2), inches(5, 2)).over(inches(30, 1))?;
/// let centers: Vec<Length> = layout.marks().map(|mark| mark.center()).collect();
/// assert_eq!(centers, [inches(5, 2), inches(15, 1), inches(55, 2)]);
/// # Ok::<(), scantling::SpacingError>(())
/// ```
#[must_use]
pub fn hinges(count: usize, leaf: Length, top: Length, bottom: Length) -> Spacing {
    Spacing::equal_openings(count, leaf).near_end(End::Margin(top)).far_end(End::Margin(bottom))
}
