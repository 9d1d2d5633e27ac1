//! How often to cut each pattern, and with it what each part is worth, by the simplex method in numbers of `fine.rs`. What comes
//! out is a proposal and nothing more: worths are proved in whole numbers by `worth.rs`, counts are rounded by `dive.rs`, and
//! what is lost by rounding here makes a plan or a bound weaker, never untrue.

use alloc::vec;
use alloc::vec::Vec;

use super::fine::{Fine, dot};
use super::job::{Job, Pattern};
use super::patience::Patience;

/// The cost of a part that is not cut from any board: more than its share of any board, however scarce boards are.
const NOT_CUT: u64 = 1000;
/// After so many exchanges the inverse is worked out anew.
const FRESH: usize = 100;

/// Its cost is a share of the dearest board's, and so one at the most.
struct Column {
    cost: Fine,
    entries: Vec<(usize, Fine)>,
    source: Option<(usize, Pattern)>,
}

/// The linear program over the patterns known so far, and its solution.
pub(super) struct Master {
    rows: usize,
    kinds: usize,
    /// The row of each supply's limit.
    limits: Vec<Option<usize>>,
    columns: Vec<Column>,
    basis: Vec<usize>,
    inverse: Vec<Fine>,
    needed: Vec<Fine>,
    amounts: Vec<Fine>,
    /// What each row is worth by the basis.
    duals: Vec<Fine>,
    dearest: u64,
    exchanges: usize,
}

impl Master {
    pub(super) fn new(job: &Job) -> Self {
        let kinds = job.kinds.len();
        let mut rows = kinds;
        let mut limits = Vec::new();
        for supply in &job.supplies {
            limits.push(supply.limit.map(|_| rows));
            rows += usize::from(supply.limit.is_some());
        }
        let slack = |row: usize| {
            let cost = if row < kinds { Fine::whole(NOT_CUT) } else { Fine::ZERO };
            Column { cost, entries: vec![(row, Fine::ONE)], source: None }
        };
        let surplus = |row| Column { cost: Fine::ZERO, entries: vec![(row, -Fine::ONE)], source: None };
        let columns = (0..rows).map(slack).chain((0..kinds).map(surplus)).collect();
        let mut master = Self {
            rows,
            kinds,
            limits,
            columns,
            basis: Vec::new(),
            inverse: Vec::new(),
            needed: Vec::new(),
            amounts: Vec::new(),
            duals: Vec::new(),
            dearest: job.dearest(),
            exchanges: 0,
        };
        master.start_over();
        master.need(job);
        master
    }

    /// The parts still needed and the boards still there: those of the job, or of what is left of it.
    pub(super) fn need(&mut self, job: &Job) {
        let limits = job.supplies.iter().filter_map(|supply| supply.limit);
        self.needed = job.kinds.iter().map(|kind| kind.count).chain(limits).map(Fine::whole).collect();
        self.amounts = self.times_inverse(&self.needed);
    }

    pub(super) fn knows(&self, supply: usize, pattern: &Pattern) -> bool {
        let known = |column: &Column| column.source.as_ref().is_some_and(|(other, known)| *other == supply && known == pattern);
        self.columns.iter().any(known)
    }

    pub(super) fn add(&mut self, job: &Job, supply: usize, pattern: Pattern) {
        let mut entries: Vec<_> = pattern.iter().map(|(kind, count)| (*kind, Fine::whole(*count))).collect();
        entries.extend(self.limits[supply].map(|row| (row, Fine::ONE)));
        let cost = Fine::share(job.supplies[supply].cost, self.dearest);
        self.columns.push(Column { cost, entries, source: Some((supply, pattern)) });
    }

    /// The patterns in the solution, with how often each is cut.
    pub(super) fn amounts(&self) -> impl Iterator<Item = (usize, &Pattern, Fine)> {
        let used = self.basis.iter().zip(&self.amounts);
        used.filter_map(|(column, amount)| {
            let (supply, pattern) = self.columns[*column].source.as_ref()?;
            Some((*supply, pattern, *amount))
        })
    }

    /// The least whole cost that is not below what the solution costs, which may be a hair off.
    pub(super) fn whole_cost(&self) -> u64 {
        let cost = dot(self.basis.iter().map(|column| self.columns[*column].cost).zip(self.amounts.iter().copied()));
        let whole = (cost - Fine::SMALL).of(self.dearest.into()).max(0);
        u64::try_from(whole).map_or(u64::MAX, |whole| whole.saturating_add(1))
    }

    /// What a part of each kind is worth, in so many units to one unit of cost.
    pub(super) fn worths(&self, unit: i64) -> Vec<i64> {
        self.duals[..self.kinds].iter().map(|dual| self.in_units(*dual, unit)).collect()
    }

    /// What one more board of a supply would save, in the same units.
    pub(super) fn extra(&self, supply: usize, unit: i64) -> i64 {
        self.limits[supply].map_or(0, |row| self.in_units(-self.duals[row], unit))
    }

    fn in_units(&self, share: Fine, unit: i64) -> i64 {
        i64::try_from(share.of(i128::from(self.dearest) * i128::from(unit))).unwrap_or(i64::MAX)
    }

    /// Solves it from where it stands: first what is negative since parts were taken out, then the cost.
    pub(super) fn solve(&mut self, patience: &mut Patience) -> Option<()> {
        // Cycles are cut off: a proposal need not be the best one.
        let most = 20 * self.rows + 200;
        for _ in 0..most {
            if !self.mend_step() {
                break;
            }
            self.spend(patience)?;
        }
        for _ in 0..most {
            if !self.improve_step() {
                break;
            }
            self.spend(patience)?;
        }
        Some(())
    }

    fn spend(&self, patience: &mut Patience) -> Option<()> {
        patience.spend((self.rows * self.rows / 16 + self.columns.len() / 2 + 1) as u64)
    }

    fn mend_step(&mut self) -> bool {
        let lowest = (0..self.rows).min_by_key(|row| self.amounts[*row]);
        let Some(row) = lowest.filter(|row| self.amounts[*row] < -Fine::SMALL) else { return false };
        let line = &self.inverse[row * self.rows..(row + 1) * self.rows];
        let mut best: Option<(Fine, usize)> = None;
        for (index, column) in self.columns.iter().enumerate() {
            let along = column.along(line);
            if along < -Fine::SMALL {
                let ratio = (column.cost - column.along(&self.duals)).max(Fine::ZERO).over(-along);
                if best.is_none_or(|(least, _)| ratio < least) {
                    best = Some((ratio, index));
                }
            }
        }
        let Some((_, index)) = best else { return false };
        let direction = self.direction(index);
        self.exchange(row, index, &direction);
        true
    }

    fn improve_step(&mut self) -> bool {
        let saving = |column: &Column| column.along(&self.duals) - column.cost;
        let best = (0..self.columns.len()).map(|index| (saving(&self.columns[index]), index)).max();
        let Some((_, index)) = best.filter(|(saving, _)| *saving > Fine::SMALL) else { return false };
        let direction = self.direction(index);
        let mut leaving: Option<(Fine, usize)> = None;
        for (row, along) in direction.iter().enumerate().filter(|(_, along)| **along > Fine::SMALL) {
            let ratio = self.amounts[row].max(Fine::ZERO).over(*along);
            let is_less = leaving.is_none_or(|(least, other)| {
                ratio < least - Fine::SMALL || (ratio < least + Fine::SMALL && *along > direction[other])
            });
            if is_less {
                leaving = Some((ratio, row));
            }
        }
        let Some((_, row)) = leaving else { return false };
        self.exchange(row, index, &direction);
        true
    }

    /// From the whole inverse. An exchange keeps them up to date.
    fn worked_out_duals(&self) -> Vec<Fine> {
        let mut duals = vec![Fine::ZERO; self.rows];
        for (row, column) in self.basis.iter().enumerate() {
            let cost = self.columns[*column].cost;
            if cost > Fine::ZERO {
                let line = &self.inverse[row * self.rows..(row + 1) * self.rows];
                duals.iter_mut().zip(line).for_each(|(dual, entry)| *dual += cost.times(*entry));
            }
        }
        duals
    }

    fn direction(&self, index: usize) -> Vec<Fine> {
        self.inverse.chunks(self.rows).map(|line| self.columns[index].along(line)).collect()
    }

    fn times_inverse(&self, vector: &[Fine]) -> Vec<Fine> {
        self.inverse.chunks(self.rows).map(|line| dot(line.iter().copied().zip(vector.iter().copied()))).collect()
    }

    /// A column takes the place of the one in a row of the basis.
    fn exchange(&mut self, row: usize, index: usize, direction: &[Fine]) {
        self.basis[row] = index;
        self.exchanges += 1;
        if self.exchanges % FRESH == 0 {
            self.invert();
            return;
        }
        let rows = self.rows;
        let pivot = direction[row];
        let line: Vec<Fine> = self.inverse[row * rows..(row + 1) * rows].iter().map(|entry| entry.over(pivot)).collect();
        let amount = self.amounts[row].over(pivot);
        let saved = self.columns[index].along(&self.duals) - self.columns[index].cost;
        subtract(&mut self.duals, &line, saved);
        for (other, along) in direction.iter().enumerate() {
            if *along != Fine::ZERO {
                subtract(&mut self.inverse[other * rows..(other + 1) * rows], &line, *along);
                self.amounts[other] -= along.times(amount);
            }
        }
        self.inverse[row * rows..(row + 1) * rows].copy_from_slice(&line);
        self.amounts[row] = amount;
    }

    /// The inverse of the basis from its columns, so that errors do not pile up.
    fn invert(&mut self) {
        let rows = self.rows;
        let mut matrix = vec![Fine::ZERO; rows * rows];
        for (place, column) in self.basis.iter().enumerate() {
            self.columns[*column].entries.iter().for_each(|(row, entry)| matrix[row * rows + place] = *entry);
        }
        match inverted(matrix, rows) {
            Some(inverse) => self.inverse = inverse,
            None => self.start_over(),
        }
        self.amounts = self.times_inverse(&self.needed);
        self.duals = self.worked_out_duals();
    }

    /// Nothing cut from any board.
    fn start_over(&mut self) {
        self.basis = (0..self.rows).collect();
        self.inverse = unit_matrix(self.rows);
        self.duals = self.worked_out_duals();
    }
}

impl Column {
    fn along(&self, line: &[Fine]) -> Fine {
        dot(self.entries.iter().map(|(row, entry)| (*entry, line[*row])))
    }
}

fn unit_matrix(rows: usize) -> Vec<Fine> {
    (0..rows * rows).map(|place| if place / rows == place % rows { Fine::ONE } else { Fine::ZERO }).collect()
}

fn subtract(line: &mut [Fine], other: &[Fine], times: Fine) {
    line.iter_mut()
        .zip(other)
        .filter(|(_, other)| **other != Fine::ZERO)
        .for_each(|(entry, other)| *entry -= times.times(*other));
}

/// By Gauss and Jordan, each time with the largest pivot there is; `None` when there is none.
fn inverted(mut matrix: Vec<Fine>, rows: usize) -> Option<Vec<Fine>> {
    let mut inverse = unit_matrix(rows);
    for place in 0..rows {
        let largest = (place..rows).max_by_key(|row| matrix[row * rows + place].size())?;
        if matrix[largest * rows + place].size() < Fine::SMALL.size() {
            return None;
        }
        for column in 0..rows {
            matrix.swap(place * rows + column, largest * rows + column);
            inverse.swap(place * rows + column, largest * rows + column);
        }
        let pivot = matrix[place * rows + place];
        matrix[place * rows..(place + 1) * rows].iter_mut().for_each(|entry| *entry = entry.over(pivot));
        inverse[place * rows..(place + 1) * rows].iter_mut().for_each(|entry| *entry = entry.over(pivot));
        let (line, inverse_line) =
            (matrix[place * rows..(place + 1) * rows].to_vec(), inverse[place * rows..(place + 1) * rows].to_vec());
        for other in (0..rows).filter(|other| *other != place) {
            let times = matrix[other * rows + place];
            if times != Fine::ZERO {
                subtract(&mut matrix[other * rows..(other + 1) * rows], &line, times);
                subtract(&mut inverse[other * rows..(other + 1) * rows], &inverse_line, times);
            }
        }
    }
    Some(inverse)
}

#[cfg(test)]
mod tests;
