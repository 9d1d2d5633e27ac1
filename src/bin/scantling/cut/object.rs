//! The whole plan as one JSON object, every figure exact.

use scantling::{CutBoard, Length, PlanCost};
use serde_json::{Value, json};

use super::{CAUTION, Report};
use crate::json;
use crate::problem::Problem;

impl Report<'_> {
    pub(super) fn object(&self) -> Result<Value, Problem> {
        let plan = self.plan;
        let taken = plan.taken().filter(|(_, count)| *count > 0).map(|(stock, count)| {
            let price = stock.price.map(|price| price.to_string());
            Ok::<_, Problem>(json!({ "name": stock.name, "length": self.figure(stock.length)?, "count": count, "price": price }))
        });
        let boards = plan.boards().iter().map(|board| self.board_object(board));
        Ok(json!({
            "cost": self.cost_object(plan.cost()),
            "bound": self.cost_object(plan.bound()),
            "optimal": plan.is_optimal(),
            "kerf": self.figure(self.kerf)?,
            "take": taken.collect::<Result<Vec<_>, _>>()?,
            "boards": boards.collect::<Result<Vec<_>, _>>()?,
            "bought": self.figure(plan.bought())?,
            "used": self.figure(plan.used())?,
            "kept": self.figure(plan.kept())?,
            "waste": self.figure(plan.waste())?,
            "caution": CAUTION.replace('\n', " "),
        }))
    }

    fn board_object(&self, board: &CutBoard) -> Result<Value, Problem> {
        let cuts = board.cuts().iter().map(|cut| {
            let mark = |length| json::length(length, self.bench);
            Ok::<_, Problem>(json!({
                "part": self.plan.part(cut).name,
                "piece": cut.piece().map(|(piece, of)| json!({ "number": piece, "of": of })),
                "from_near_end": mark(cut.far())?,
                "from_fresh_end": mark(cut.length())?,
            }))
        });
        Ok(json!({
            "stock": self.plan.stock(board).name,
            "times": board.times(),
            "cuts": cuts.collect::<Result<Vec<_>, _>>()?,
            "offcut": self.figure(board.offcut())?,
            "kept": board.is_kept(),
        }))
    }

    fn cost_object(&self, cost: PlanCost) -> Value {
        match cost {
            PlanCost::Boards(count) => json!({ "boards": count }),
            PlanCost::Length(length) => json!({ "length": json::in_words(length, self.bench) }),
            PlanCost::Price(price) => json!({ "price": price.to_string() }),
            _ => Value::Null,
        }
    }

    fn figure(&self, length: Length) -> Result<Value, Problem> {
        json::length(length, self.bench.unburned()).map(Value::Object)
    }
}
