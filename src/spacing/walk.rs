//! Along the marks of a layout by additions alone, so that the millionth mark costs what the tenth
//! does. Every position is still rounded from its own exact value, never from the mark before it: what is
//! carried along is the exact rest, not the rounded mark. The rounding itself is the kernel's, in `length/`.

use core::iter::FusedIterator;
use core::ops::{Add, Mul, Range, Sub};
use core::slice;

use super::OnTape;
use super::layout::{Space, Stretch};
use crate::length::{Floor, RoundingMode, gcd};

/// One member on the tape, in counts.
#[derive(Clone, Copy)]
pub(super) struct Place {
    pub(super) number: usize,
    /// The graduation, from the datum, in grains of the rule.
    pub(super) mark: i128,
    /// The true position past it, in grains.
    pub(super) leftover: i128,
    /// The true gap before the member.
    pub(super) space: Space,
}

/// Goes over the members of a layout in order.
#[derive(Clone)]
pub(super) struct Walk<'a> {
    on: &'a OnTape<'a>,
    later: slice::Iter<'a, Stretch>,
    /// How many members are behind, and how many will be at the end of this stretch.
    behind: usize,
    until: usize,
    space: Space,
    dial: Dial<i128>,
}

/// A position between two graduations, the pitch that takes it to the next, and the scale of the tape.
#[derive(Clone, Copy, Default)]
pub(super) struct Dial<T> {
    pub(super) at: Hand<T>,
    pub(super) pitch: Hand<T>,
    /// In grains.
    pub(super) step: T,
    /// The same in grains of the rule, and what the tape shows at the datum.
    pub(super) rule_step: T,
    pub(super) rule_offset: T,
}

/// A distance as whole steps of the tape, and the rest above them in grains.
#[derive(Clone, Copy, Default)]
pub(super) struct Hand<T> {
    pub(super) steps: T,
    pub(super) rest: T,
}

/// The two integers that a dial comes in.
pub(super) trait Count:
    Copy + Default + Ord + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self> + From<bool> + Into<i128>
{
}

impl Count for i64 {}
impl Count for i128 {}

impl<T: Count> Dial<T> {
    /// The mark and the leftover here, before going on by one pitch.
    #[inline]
    fn turn(&mut self, mode: RoundingMode) -> (T, T) {
        let Hand { steps, rest } = self.at;
        let up = Floor::new(steps.into(), rest, self.step).rises(mode, steps < T::default());
        self.at = Hand { steps: steps + self.pitch.steps, rest: rest + self.pitch.rest };
        if self.at.rest >= self.step {
            self.at = Hand { steps: self.at.steps + T::from(true), rest: self.at.rest - self.step };
        }
        let (steps, rest) = if up { (steps + T::from(true), rest - self.step) } else { (steps, rest) };
        (steps * self.rule_step - self.rule_offset, rest)
    }

    #[inline]
    fn run<B>(mut self, numbers: Range<usize>, mode: RoundingMode, start: B, mut go: impl FnMut(B, usize, T, T) -> B) -> B {
        let mut so_far = start;
        for number in numbers {
            let (mark, leftover) = self.turn(mode);
            so_far = go(so_far, number, mark, leftover);
        }
        so_far
    }
}

impl Dial<i128> {
    /// The mark and the leftover here.
    pub(super) fn reads(mut self, mode: RoundingMode) -> (i128, i128) {
        self.turn(mode)
    }

    /// The same in 64 bits, and how many grains its unit for rests is. The caller answers for marks
    /// that fit.
    fn narrow(&self) -> Option<(Dial<i64>, i128)> {
        let unit = gcd(gcd(self.at.rest.unsigned_abs(), self.pitch.rest.unsigned_abs()), self.step.unsigned_abs());
        let unit = i128::try_from(unit).ok().filter(|unit| *unit > 0)?;
        let narrow = |count: i128| i64::try_from(count).ok();
        let hand = |hand: Hand<i128>| Some(Hand { steps: narrow(hand.steps)?, rest: narrow(hand.rest / unit)? });
        // A rest and a pitch's rest, each under a step, are added up before they carry.
        narrow(self.step / unit * 2)?;
        let dial = Dial {
            at: hand(self.at)?,
            pitch: hand(self.pitch)?,
            step: narrow(self.step / unit)?,
            rule_step: narrow(self.rule_step)?,
            rule_offset: narrow(self.rule_offset)?,
        };
        Some((dial, unit))
    }
}

impl<'a> Walk<'a> {
    pub(super) fn new(on: &'a OnTape<'a>) -> Self {
        let later = on.layout.stretches.iter();
        Self { on, later, behind: 0, until: 0, space: on.layout.last, dial: Dial::default() }
    }

    fn enter(&mut self, stretch: &Stretch) {
        self.until = stretch.first + stretch.count;
        self.space = stretch.space;
        self.dial = self.on.dial(stretch, stretch.first);
    }

    /// Goes to the end of this stretch at once, in 64 bits if they hold it.
    #[inline]
    fn finish<B>(&mut self, start: B, go: &mut impl FnMut(B, Place) -> B) -> B {
        let (numbers, space, mode) = (self.behind + 1..self.until + 1, self.space, self.on.tape.rounding_mode());
        self.behind = self.until;
        let narrow = if self.on.is_narrow { self.dial.narrow() } else { None };
        let Some((dial, unit)) = narrow else {
            return self
                .dial
                .run(numbers, mode, start, |so_far, number, mark, leftover| go(so_far, Place { number, mark, leftover, space }));
        };
        let place = |so_far, number, mark: i64, leftover: i64| {
            go(so_far, Place { number, mark: mark.into(), leftover: i128::from(leftover) * unit, space })
        };
        // The usual mode gets a loop of its own, in which nothing is left to choose.
        match mode {
            RoundingMode::TiesUp => dial.run(numbers, RoundingMode::TiesUp, start, place),
            _ => dial.run(numbers, mode, start, place),
        }
    }
}

impl Iterator for Walk<'_> {
    type Item = Place;

    #[inline]
    fn next(&mut self) -> Option<Place> {
        if self.behind == self.until {
            let stretch = self.later.next()?;
            self.enter(stretch);
        }
        self.behind += 1;
        let (mark, leftover) = self.dial.turn(self.on.tape.rounding_mode());
        Some(Place { number: self.behind, mark, leftover, space: self.space })
    }

    #[inline]
    fn size_hint(&self) -> (usize, Option<usize>) {
        let left = self.on.layout.members() - self.behind;
        (left, Some(left))
    }

    /// What `next` does, twice as fast: a whole stretch is gone over with the dial in registers.
    #[inline]
    fn fold<B, F: FnMut(B, Place) -> B>(mut self, start: B, mut go: F) -> B {
        let mut so_far = self.finish(start, &mut go);
        while let Some(stretch) = self.later.next() {
            self.enter(stretch);
            so_far = self.finish(so_far, &mut go);
        }
        so_far
    }
}

impl ExactSizeIterator for Walk<'_> {}
impl FusedIterator for Walk<'_> {}
