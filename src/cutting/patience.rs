//! How much work a plan may still cost: a count of steps, since nothing here has a clock, and a check of the caller's,
//! who may have one. What is done when it runs out is left to those who spend it.

/// How many steps are spent between two questions to the caller.
const BETWEEN_QUESTIONS: u64 = 20_000;

/// Steps still to spend. One step is a few dozen machine instructions, whatever it is spent on.
pub(super) struct Patience<'a> {
    left: u64,
    until_asked: u64,
    goes_on: &'a dyn Fn() -> bool,
}

impl<'a> Patience<'a> {
    pub(super) fn new(steps: u64, goes_on: &'a dyn Fn() -> bool) -> Self {
        Self { left: steps, until_asked: BETWEEN_QUESTIONS, goes_on }
    }

    /// Takes so many steps; `None` when they are not there any more, or the caller has had enough.
    pub(super) fn spend(&mut self, steps: u64) -> Option<()> {
        self.left = self.left.saturating_sub(steps);
        self.until_asked = self.until_asked.saturating_sub(steps);
        if self.until_asked == 0 && self.left > 0 {
            self.until_asked = BETWEEN_QUESTIONS;
            if !(self.goes_on)() {
                self.left = 0;
            }
        }
        (self.left > 0).then_some(())
    }

    pub(super) fn is_out(&self) -> bool {
        self.left == 0
    }

    /// At most so many of the steps left, for an attempt that may fail.
    pub(super) fn some(&self, steps: u64) -> Self {
        Patience { left: steps.min(self.left), ..*self }
    }

    /// Takes what an attempt has spent of its share.
    pub(super) fn settle(&mut self, share: u64, attempt: &Self) {
        let spent = share.min(self.left).saturating_sub(attempt.left);
        // An attempt that the caller ended ends everything.
        let _ = self.spend(spent);
    }
}

#[cfg(test)]
mod tests {
    use core::cell::Cell;

    use super::{BETWEEN_QUESTIONS, Patience};

    #[test]
    fn steps_and_shares_of_them() {
        let mut patience = Patience::new(100, &|| true);
        let mut share = patience.some(30);
        assert_eq!((share.spend(20), share.left), (Some(()), 10));
        patience.settle(30, &share);
        assert_eq!((patience.left, patience.some(500).left), (80, 80));
        assert_eq!((patience.spend(79), patience.is_out()), (Some(()), false));
        assert_eq!((patience.spend(1), patience.is_out()), (None, true));
    }

    /// Now and then, and not when nothing is left to spend.
    #[test]
    fn when_the_caller_is_asked() {
        let asked = Cell::new(0);
        let goes_on = || {
            asked.set(asked.get() + 1);
            asked.get() < 3
        };
        let mut patience = Patience::new(10 * BETWEEN_QUESTIONS, &goes_on);
        for (steps, questions, goes_on) in [
            (BETWEEN_QUESTIONS - 1, 0, true),
            (1, 1, true),
            (1, 1, true),
            (BETWEEN_QUESTIONS, 2, true),
            (BETWEEN_QUESTIONS, 3, false),
        ] {
            assert_eq!((patience.spend(steps).is_some(), asked.get()), (goes_on, questions));
        }
        assert!(patience.is_out());
        assert_eq!((Patience::new(BETWEEN_QUESTIONS, &goes_on).spend(BETWEEN_QUESTIONS), asked.get()), (None, 3));
    }
}
