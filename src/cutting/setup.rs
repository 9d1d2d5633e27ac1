//! From lengths and prices to whole numbers and back: what was asked for is checked, counted in a common grain, and solved; what
//! came of it gets its names again. The work between is left to `solve.rs`.

use alloc::collections::BTreeMap;
use alloc::vec::Vec;

use num_rational::Ratio;

use super::board::CutBoard;
use super::cut::Cut;
use super::grain::{self, Counted, counted, counted_lengths};
use super::job::{Batch, Job, Kind, MOST_CAPACITY, MOST_COST, Supply};
use super::patience::Patience;
use super::pieces::Piece;
use super::solve::{Answer, solve};
use super::{Aim, Cutting, CuttingError, KerfRule, Plan, PlanCost, Stock};
use crate::length::Length;

pub(super) const LENGTHS: CuttingError = CuttingError::OutOfRange { what: "lengths" };
const PRICES: CuttingError = CuttingError::OutOfRange { what: "prices" };

/// A job, and what its numbers stand for.
struct Setup<'a> {
    cutting: &'a Cutting,
    pieces: Vec<Piece>,
    job: Job,
    /// For each kind of the job, the pieces of its size.
    of_kind: Vec<Vec<usize>>,
    aim: Aim,
    length_grain: (u128, u128),
    cost_grain: (u128, u128),
}

impl Cutting {
    /// The plan, and how good it is.
    ///
    /// ```
    /// use scantling::{Cutting, Length, Part, PlanCost, Stock, Unit};
    ///
    /// let feet = |count| Length::new(count, Unit::Foot);
    /// let plan = Cutting::new().part(Part::new("post", feet(5), 3)).stock(Stock::new("8 ft", feet(8))).plan()?;
    /// // Three boards, and two are not enough: 15 ft would go into 16 ft, but no board holds two posts.
    /// assert_eq!((plan.cost(), plan.bound()), (PlanCost::Boards(3), PlanCost::Boards(3)));
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Every [`CuttingError`].
    pub fn plan(&self) -> Result<Plan, CuttingError> {
        self.plan_while(&|| true)
    }

    /// The plan, worked at as long as a check that is asked now and then says so: a clock, or a person who has had enough.
    ///
    /// ```
    /// use std::time::{Duration, Instant};
    ///
    /// use scantling::{Cutting, Part, Stock, Unit};
    ///
    /// let cutting = Cutting::new().part(Part::new("cleat", Unit::Foot.length(), 7)).stock(Stock::new("yard", Unit::Yard.length()));
    /// let end = Instant::now() + Duration::from_secs(2);
    /// assert_eq!(cutting.plan_while(&|| Instant::now() < end)?.board_count(), 3);
    /// # Ok::<(), scantling::CuttingError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Every [`CuttingError`].
    pub fn plan_while(&self, goes_on: &dyn Fn() -> bool) -> Result<Plan, CuttingError> {
        self.check()?;
        let setup = Setup::new(self)?;
        let answer = solve(&setup.job, &mut Patience::new(self.patience, goes_on));
        setup.plan(answer)
    }
}

impl<'a> Setup<'a> {
    fn new(cutting: &'a Cutting) -> Result<Self, CuttingError> {
        let pieces = cutting.pieces()?;
        // A kerf goes with every part; where the last one needs none, the board is as much longer.
        let mut lengths = Vec::new();
        for piece in &pieces {
            lengths.push(piece.length.checked_add(cutting.kerf).ok_or(LENGTHS)?);
        }
        for stock in &cutting.stocks {
            let usable = cutting.usable(stock)?;
            lengths.push(match cutting.kerf_rule {
                KerfRule::Between => usable.checked_add(cutting.kerf).ok_or(LENGTHS)?,
                KerfRule::EachPart => usable,
            });
        }
        let Counted { grain: length_grain, counts } = counted_lengths(&lengths, MOST_CAPACITY).ok_or(LENGTHS)?;
        let aim = cutting.aim_or_default();
        let Counted { grain: cost_grain, counts: costs } = costs(cutting, aim)?;
        let (sizes, capacities) = counts.split_at(pieces.len());
        let (kinds, of_kind) = kinds(&pieces, sizes);
        let supplies = cutting.stocks.iter().zip(capacities).zip(&costs);
        // No plan takes more boards than there are parts.
        let most: u64 = kinds.iter().map(|kind: &Kind| kind.count).sum();
        let supplies = supplies.map(|((stock, capacity), cost)| {
            let limit = stock.limit.map(|limit| limit.min(most));
            Supply { capacity: *capacity, cost: *cost, limit }
        });
        let job = Job { kinds, supplies: supplies.collect() };
        Ok(Self { cutting, pieces, job, of_kind, aim, length_grain, cost_grain })
    }

    fn plan(&self, answer: Answer) -> Result<Plan, CuttingError> {
        let Some(mut batches) = answer.batches else { return Err(self.no_plan(answer.is_settled)?) };
        let (cost, bound) = (self.cost(self.job.cost(&batches))?, self.cost(answer.bound)?);
        // The longest parts are cut first, while there are boards to choose from.
        batches.sort_by(|a, b| compare(&a.pattern, &b.pattern).then(a.supply.cmp(&b.supply)));
        let boards = self.boards(&batches)?;
        Plan::new(self.cutting, boards, cost, bound).ok_or(LENGTHS)
    }

    fn no_plan(&self, is_settled: bool) -> Result<CuttingError, CuttingError> {
        let need = self.job.kinds.iter().map(|kind| kind.size * kind.count).sum();
        let need = grain::length(self.length_grain, need).ok_or(LENGTHS)?;
        // Of the boards as they were asked for: the job counts no more of them than there are parts.
        let mut give = Some(Length::ZERO);
        for stock in &self.cutting.stocks {
            let usable = self.cutting.usable(stock)?;
            let all = |limit: u64| usable.checked_mul(i64::try_from(limit).ok()?);
            let all = stock.limit.map(|limit| all(limit).ok_or(LENGTHS)).transpose()?;
            give = give.zip(all).map(|(give, all)| give.checked_add(all).ok_or(LENGTHS)).transpose()?;
        }
        Ok(if is_settled { CuttingError::NotEnoughStock { need, give } } else { CuttingError::NoPlanYet { need, give } })
    }

    fn cost(&self, cost: u64) -> Result<PlanCost, CuttingError> {
        Ok(match self.aim {
            Aim::FewestBoards => PlanCost::Boards(cost),
            Aim::LeastLength => PlanCost::Length(grain::length(self.cost_grain, cost).ok_or(LENGTHS)?),
            Aim::LowestPrice => {
                let (num, den) = self.cost_grain;
                let num = num.checked_mul(cost.into()).and_then(|num| i128::try_from(num).ok()).ok_or(PRICES)?;
                PlanCost::Price(Ratio::new(num, i128::try_from(den).map_err(|_| PRICES)?))
            }
        })
    }

    /// Every board with its parts, those that are cut alike together.
    fn boards(&self, batches: &[Batch]) -> Result<Vec<CutBoard>, CuttingError> {
        let mut left: Vec<u64> = self.pieces.iter().map(|piece| piece.count).collect();
        let mut boards: Vec<CutBoard> = Vec::new();
        for batch in batches {
            for _ in 0..batch.times {
                let board = self.board(batch, &mut left).ok_or(LENGTHS)?;
                match boards.last_mut().filter(|last| last.is_cut_like(&board)) {
                    Some(last) => last.times += 1,
                    None => boards.push(board),
                }
            }
        }
        Ok(boards)
    }

    fn board(&self, batch: &Batch, left: &mut [u64]) -> Option<CutBoard> {
        let mut near = self.cutting.near_trim;
        let mut cuts = Vec::new();
        for (kind, count) in &batch.pattern {
            for _ in 0..*count {
                // There are as many pieces of a size as the job has parts of the kind.
                let index = *self.of_kind[*kind].iter().find(|index| left[**index] > 0)?;
                left[index] -= 1;
                let cut = Cut::new(&self.pieces[index], near)?;
                near = cut.far().checked_add(self.cutting.kerf)?;
                cuts.push(cut);
            }
        }
        let stock = &self.cutting.stocks[batch.supply];
        let end = stock.length.checked_sub(self.cutting.far_trim)?;
        // The last kerf may run out over the end.
        let offcut = end.checked_sub(near)?.max(Length::ZERO);
        let is_kept = offcut > Length::ZERO && offcut >= self.cutting.least_offcut;
        Some(CutBoard { stock: batch.supply, times: 1, cuts, offcut, is_kept })
    }
}

/// The largest parts first, then more of them; ends with what has none.
fn compare(a: &[(usize, u64)], b: &[(usize, u64)]) -> core::cmp::Ordering {
    let key = |pattern: &[(usize, u64)]| pattern.iter().map(|(kind, count)| (*kind, u64::MAX - count)).collect::<Vec<_>>();
    key(a).cmp(&key(b))
}

fn costs(cutting: &Cutting, aim: Aim) -> Result<Counted, CuttingError> {
    match aim {
        Aim::FewestBoards => counted(&alloc::vec![(1, 1); cutting.stocks.len()], MOST_COST).ok_or(LENGTHS),
        Aim::LeastLength => {
            let lengths: Vec<_> = cutting.stocks.iter().map(|stock| stock.length).collect();
            counted_lengths(&lengths, MOST_COST).ok_or(LENGTHS)
        }
        Aim::LowestPrice => {
            let price = |stock: &Stock| stock.price.map_or((0, 1), |price| (*price.numer(), price.denom().unsigned_abs()));
            counted(&cutting.stocks.iter().map(price).collect::<Vec<_>>(), MOST_COST).ok_or(PRICES)
        }
    }
}

/// One kind for each size, the largest first, and the pieces that belong to it.
fn kinds(pieces: &[Piece], sizes: &[u64]) -> (Vec<Kind>, Vec<Vec<usize>>) {
    let mut by_size: BTreeMap<u64, Vec<usize>> = BTreeMap::new();
    for (index, size) in sizes.iter().enumerate() {
        by_size.entry(*size).or_default().push(index);
    }
    let count = |indices: &[usize]| indices.iter().map(|index| pieces[*index].count).sum();
    by_size.into_iter().rev().map(|(size, indices)| (Kind { size, count: count(&indices) }, indices)).unzip()
}
