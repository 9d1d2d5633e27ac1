//! What the plan comes to: what to take or buy, what it costs, how good that is, and where the wood goes.

use std::fmt::Write as _;

use num_rational::Ratio;
use scantling::{Length, PlanCost};

use super::Report;
use super::arguments::Rule;
use crate::words::{Bench, mixed};

impl Report<'_> {
    pub(super) fn heading(&self) -> String {
        let (plan, bench) = (self.plan, self.bench);
        let parts: u64 = plan.parts().iter().map(|part| part.count).sum();
        let mut text = format!("Parts    {parts}, {} in all\n", bench.measured(plan.used(), Bench::mark_in_feet_too));
        let rule = match self.options.kerf_rule {
            Rule::Between => "between parts, and behind the last where something is left",
            Rule::EachPart => "for every part",
        };
        let _ = writeln!(text, "Kerf     {} {rule}", bench.mark(self.kerf));
        let (near, far) = self.trims;
        if !(near.is_zero() && far.is_zero()) {
            let (near, far) = (bench.mark(near), bench.mark(far));
            let _ = writeln!(text, "Trim     {near} off the near end and {far} off the far end, saw cuts included");
        }
        let _ = writeln!(text, "Plan     {}", self.verdict());
        let _ = writeln!(text, "Tape     {}\n\nTake", bench.tape_in_words(self.options.tape.round));
        for (stock, count) in plan.taken().filter(|(_, count)| *count > 0) {
            let price = each(stock.price);
            let _ = writeln!(text, "  [ ] {count} of {}, {} long{price}", stock.name, bench.mark_in_feet_too(stock.length));
        }
        text += &self.how_to_mark();
        text
    }

    fn how_to_mark(&self) -> String {
        let datum = self.bench.tape.datum_reading();
        let (hook, again) = if datum.is_zero() {
            ("hook the tape at".to_owned(), "hook the tape at the fresh end")
        } else {
            (format!("lay the {} line of the tape on", self.bench.mark(datum)), "lay the same line on the fresh end")
        };
        let trimmed = if self.trims.0.is_zero() { "" } else { " trim the near end," };
        format!(
            "\nEach mark is given twice. Either {hook} the near end of the board, leave it there and\n\
             make every mark; each kerf lies past its mark. Or{trimmed} cut, {again}, and mark the next part.\n"
        )
    }

    /// What it costs, and how good that is.
    fn verdict(&self) -> String {
        let cost = self.cost(self.plan.cost());
        if self.plan.is_optimal() {
            return format!("{cost}; no plan takes less (proved)");
        }
        format!("{cost}; whether it can be done with less is not known, but not with less than {}", self.cost(self.plan.bound()))
    }

    pub(super) fn cost(&self, cost: PlanCost) -> String {
        match cost {
            PlanCost::Length(length) => format!("{} of boards", self.bench.mark_in_feet_too(length)),
            PlanCost::Price(price) => format!("a price of {}", money(price)),
            other => other.to_string(),
        }
    }

    pub(super) fn sums(&self) -> String {
        let plan = self.plan;
        let row = |name: &str, length: Length| format!("{name:<8} {}\n", self.bench.measured(length, Bench::mark_in_feet_too));
        [("Boards", plan.bought()), ("Parts", plan.used()), ("Kept", plan.kept()), ("Waste", plan.waste())]
            .map(|(name, length)| row(name, length))
            .concat()
    }
}

/// What one costs, behind its size.
pub(super) fn each(price: Option<Ratio<i128>>) -> String {
    match price {
        None => String::new(),
        Some(price) if price == Ratio::from_integer(0) => ", for nothing".to_owned(),
        Some(price) => format!(", at {} each", money(price)),
    }
}

/// A price as it is written: with two decimals where that is exact.
pub(super) fn money(price: Ratio<i128>) -> String {
    let (num, den) = (*price.numer(), *price.denom());
    match 100 % den {
        _ if den == 1 => num.to_string(),
        0 => format!("{}.{:02}", num / den, num % den * (100 / den)),
        _ => mixed(price),
    }
}
