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
