//! How far the shelves sag, where their material is named: help, not engineering. The formula and the figures are left to
//! the library.

use num_rational::Ratio;
use scantling::{
    CasePlan, CaseworkError, Length, LoadedShelf, Material, Quantity, SagLimit, ShelfLoad, Unit, evaluate, material,
};

use super::job::Job;
use crate::problem::Problem;

/// What stands below the figures.
pub const HELP: &str = "Help in choosing a shelf, not engineering: moduli are averages, and under load for months wood creeps to\n\
twice the sag or more. What it must bear is for local codes and licensed practice.";

/// A shelf under its load.
pub struct Sag {
    pub material: Material,
    pub load: ShelfLoad,
    pub limit: SagLimit,
    pub span: Length,
    pub depth: Length,
    pub greatest: Length,
}

impl Sag {
    pub fn is_within(&self) -> bool {
        self.span <= self.greatest || self.depth.checked_mul(self.limit.parts().into()).is_some_and(|all| all <= self.span)
    }
}

#[allow(clippy::needless_pass_by_value)] // so that it can stand behind `map_err`
pub fn refused(error: CaseworkError) -> Problem {
    Problem::plain(error.to_string())
}

pub fn sag(job: &Job, plan: &CasePlan) -> Result<Option<Sag>, Problem> {
    let Some(name) = &job.material else {
        let given = job.load.is_some() || job.limit.is_some();
        let lacking = Problem::plain("a load and a limit say nothing without a material").hint("--material \"northern red oak\"");
        return if given { Err(lacking) } else { Ok(None) };
    };
    if plan.case().shelves.count() == 0 {
        return Err(Problem::plain("--material is that of the shelves, and there are none").hint("--shelves 4"));
    }
    let material = material(name).map_err(refused)?;
    let load = job.load.as_deref().map_or(Ok(ShelfLoad::OTHER), load)?;
    let limit = match job.limit {
        Some(0) => return Err(Problem::plain("--limit: a sag of one part in none")),
        Some(parts) => SagLimit::part_of_span(parts),
        None => SagLimit::STANDARD,
    };
    let clear = plan.closings()[0].links().iter().find(|(name, _)| *name == "clear");
    let span = clear.map_or(plan.case().width, |(_, span)| *span);
    let shelf = LoadedShelf::new(plan.case().shelf, material.modulus(), load).map_err(refused)?;
    let depth = shelf.sag(span).map_err(refused)?;
    let greatest = shelf.greatest_span(limit, Unit::Inch.length()).map_err(refused)?;
    Ok(Some(Sag { material, load, limit, span, depth, greatest }))
}

fn load(text: &str) -> Result<ShelfLoad, Problem> {
    match text {
        "kitchen" => Ok(ShelfLoad::KITCHEN),
        "library" => Ok(ShelfLoad::LIBRARY),
        "other" => Ok(ShelfLoad::OTHER),
        number => match evaluate(number) {
            Ok(Quantity::Number(pounds)) if pounds > Ratio::from(0) => Ok(ShelfLoad::new(pounds)),
            _ => Err(Problem::plain(format!("--load: {text} is no load"))
                .hint("kitchen, library, other, or pounds on a square foot: 45")),
        },
    }
}
