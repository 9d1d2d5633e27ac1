//! How often to cut each pattern, and with it what each part is worth, by the simplex method in floats. What comes out is a
//! proposal and nothing more: worths are proved in whole numbers by `worth.rs`, counts are rounded by `dive.rs`, and a wrong
//! digit here makes a plan or a bound weaker, never untrue.

use alloc::vec;
use alloc::vec::Vec;

use super::job::{Job, Pattern};
use super::patience::Patience;

/// Below this a number counts as zero. Costs are scaled to one at the most, and patterns hold small whole numbers.
const SMALL: f64 = 1e-9;
/// The cost of a part that is not cut from any board: more than its share of any board, however scarce boards are.
const NOT_CUT: f64 = 1000.0;
/// After so many exchanges the inverse is worked out anew.
const FRESH: usize = 150;

struct Column {
    cost: f64,
    entries: Vec<(usize, f64)>,
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
    inverse: Vec<f64>,
    needed: Vec<f64>,
    amounts: Vec<f64>,
    scale: f64,
    exchanges: usize,
}

#[allow(clippy::cast_precision_loss)] // a proposal
fn float(count: u64) -> f64 {
    count as f64
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
            let cost = if row < kinds { NOT_CUT } else { 0.0 };
            Column { cost, entries: vec![(row, 1.0)], source: None }
        };
        let surplus = |row| Column { cost: 0.0, entries: vec![(row, -1.0)], source: None };
        let columns = (0..rows).map(slack).chain((0..kinds).map(surplus)).collect();
        let scale = 1.0 / float(job.dearest());
        let mut master = Self {
            rows,
            kinds,
            limits,
            columns,
            basis: Vec::new(),
            inverse: Vec::new(),
            needed: Vec::new(),
            amounts: Vec::new(),
            scale,
            exchanges: 0,
        };
        master.start_over();
        master.need(job);
        master
    }

    /// The parts still needed and the boards still there: those of the job, or of what is left of it.
    pub(super) fn need(&mut self, job: &Job) {
        let limits = job.supplies.iter().filter_map(|supply| supply.limit);
        self.needed = job.kinds.iter().map(|kind| kind.count).chain(limits).map(float).collect();
        self.amounts = self.times_inverse(&self.needed);
    }

    pub(super) fn knows(&self, supply: usize, pattern: &Pattern) -> bool {
        let known = |column: &Column| column.source.as_ref().is_some_and(|(other, known)| *other == supply && known == pattern);
        self.columns.iter().any(known)
    }

    pub(super) fn add(&mut self, job: &Job, supply: usize, pattern: Pattern) {
        let mut entries: Vec<_> = pattern.iter().map(|(kind, count)| (*kind, float(*count))).collect();
        entries.extend(self.limits[supply].map(|row| (row, 1.0)));
        let cost = float(job.supplies[supply].cost) * self.scale;
        self.columns.push(Column { cost, entries, source: Some((supply, pattern)) });
    }

    /// The patterns in the solution, with how often each is cut.
    pub(super) fn amounts(&self) -> impl Iterator<Item = (usize, &Pattern, f64)> {
        let used = self.basis.iter().zip(&self.amounts);
        used.filter_map(|(column, amount)| {
            let (supply, pattern) = self.columns[*column].source.as_ref()?;
            Some((*supply, pattern, *amount))
        })
    }

    /// What the solution costs, in costs.
    pub(super) fn cost(&self) -> f64 {
        self.basis.iter().zip(&self.amounts).map(|(column, amount)| self.columns[*column].cost * amount).sum::<f64>() / self.scale
    }

    /// What a part of each kind is worth, in so many units to one unit of cost.
    #[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)] // a proposal; a cast of a float saturates
    pub(super) fn worths(&self, unit: i64) -> Vec<i64> {
        let factor = unit as f64 / self.scale;
        self.duals()[..self.kinds].iter().map(|dual| (dual * factor) as i64).collect()
    }

    /// What one more board of a supply would save, in the same units.
    #[allow(clippy::cast_possible_truncation, clippy::cast_precision_loss)] // a proposal; a cast of a float saturates
    pub(super) fn extra(&self, supply: usize, unit: i64) -> i64 {
        self.limits[supply].map_or(0, |row| (-self.duals()[row] * unit as f64 / self.scale) as i64)
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
        let lowest = (0..self.rows).min_by(|a, b| self.amounts[*a].total_cmp(&self.amounts[*b]));
        let Some(row) = lowest.filter(|row| self.amounts[*row] < -SMALL) else { return false };
        let duals = self.duals();
        let line = &self.inverse[row * self.rows..(row + 1) * self.rows];
        let mut best: Option<(f64, usize)> = None;
        for (index, column) in self.columns.iter().enumerate() {
            let along = dot(&column.entries, line);
            if along < -SMALL {
                let ratio = (column.cost - dot(&column.entries, &duals)).max(0.0) / -along;
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
        let duals = self.duals();
        let saving = |column: &Column| dot(&column.entries, &duals) - column.cost;
        let best = (0..self.columns.len()).map(|index| (saving(&self.columns[index]), index)).max_by(|a, b| a.0.total_cmp(&b.0));
        let Some((_, index)) = best.filter(|(saving, _)| *saving > SMALL) else { return false };
        let direction = self.direction(index);
        let mut leaving: Option<(f64, usize)> = None;
        for (row, along) in direction.iter().enumerate().filter(|(_, along)| **along > SMALL) {
            let ratio = self.amounts[row].max(0.0) / along;
            let is_less = leaving
                .is_none_or(|(least, other)| ratio < least - SMALL || (ratio < least + SMALL && *along > direction[other]));
            if is_less {
                leaving = Some((ratio, row));
            }
        }
        let Some((_, row)) = leaving else { return false };
        self.exchange(row, index, &direction);
        true
    }

    fn duals(&self) -> Vec<f64> {
        let mut duals = vec![0.0; self.rows];
        for (row, column) in self.basis.iter().enumerate() {
            let cost = self.columns[*column].cost;
            if cost > 0.0 {
                let line = &self.inverse[row * self.rows..(row + 1) * self.rows];
                duals.iter_mut().zip(line).for_each(|(dual, entry)| *dual += cost * entry);
            }
        }
        duals
    }

    fn direction(&self, index: usize) -> Vec<f64> {
        let entries = &self.columns[index].entries;
        self.inverse.chunks(self.rows).map(|line| dot(entries, line)).collect()
    }

    fn times_inverse(&self, vector: &[f64]) -> Vec<f64> {
        self.inverse.chunks(self.rows).map(|line| line.iter().zip(vector).map(|(a, b)| a * b).sum()).collect()
    }

    /// A column takes the place of the one in a row of the basis.
    fn exchange(&mut self, row: usize, index: usize, direction: &[f64]) {
        self.basis[row] = index;
        self.exchanges += 1;
        if self.exchanges % FRESH == 0 {
            self.invert();
            return;
        }
        let rows = self.rows;
        let pivot = direction[row];
        let line: Vec<f64> = self.inverse[row * rows..(row + 1) * rows].iter().map(|entry| entry / pivot).collect();
        let amount = self.amounts[row] / pivot;
        for (other, along) in direction.iter().enumerate() {
            if other != row && *along != 0.0 {
                subtract(&mut self.inverse[other * rows..(other + 1) * rows], &line, *along);
                self.amounts[other] -= along * amount;
            }
        }
        self.inverse[row * rows..(row + 1) * rows].copy_from_slice(&line);
        self.amounts[row] = amount;
    }

    /// The inverse of the basis from its columns, so that errors do not pile up.
    fn invert(&mut self) {
        let rows = self.rows;
        let mut matrix = vec![0.0; rows * rows];
        for (place, column) in self.basis.iter().enumerate() {
            self.columns[*column].entries.iter().for_each(|(row, entry)| matrix[row * rows + place] = *entry);
        }
        match inverted(matrix, rows) {
            Some(inverse) => self.inverse = inverse,
            None => self.start_over(),
        }
        self.amounts = self.times_inverse(&self.needed);
    }

    /// Nothing cut from any board.
    fn start_over(&mut self) {
        self.basis = (0..self.rows).collect();
        self.inverse =
            (0..self.rows * self.rows).map(|place| if place / self.rows == place % self.rows { 1.0 } else { 0.0 }).collect();
    }
}

fn dot(entries: &[(usize, f64)], line: &[f64]) -> f64 {
    entries.iter().map(|(row, entry)| entry * line[*row]).sum()
}

fn subtract(line: &mut [f64], other: &[f64], times: f64) {
    line.iter_mut().zip(other).for_each(|(entry, other)| *entry -= times * other);
}

/// By Gauss and Jordan, each time with the largest pivot there is; `None` when there is none.
fn inverted(mut matrix: Vec<f64>, rows: usize) -> Option<Vec<f64>> {
    let mut inverse: Vec<f64> = (0..rows * rows).map(|place| if place / rows == place % rows { 1.0 } else { 0.0 }).collect();
    let size = |entry: f64| if entry < 0.0 { -entry } else { entry };
    for place in 0..rows {
        let largest = (place..rows).max_by(|a, b| size(matrix[a * rows + place]).total_cmp(&size(matrix[b * rows + place])))?;
        if size(matrix[largest * rows + place]) < SMALL {
            return None;
        }
        for column in 0..rows {
            matrix.swap(place * rows + column, largest * rows + column);
            inverse.swap(place * rows + column, largest * rows + column);
        }
        let pivot = matrix[place * rows + place];
        matrix[place * rows..(place + 1) * rows].iter_mut().for_each(|entry| *entry /= pivot);
        inverse[place * rows..(place + 1) * rows].iter_mut().for_each(|entry| *entry /= pivot);
        let (line, inverse_line) =
            (matrix[place * rows..(place + 1) * rows].to_vec(), inverse[place * rows..(place + 1) * rows].to_vec());
        for other in (0..rows).filter(|other| *other != place) {
            let times = matrix[other * rows + place];
            if times != 0.0 {
                subtract(&mut matrix[other * rows..(other + 1) * rows], &line, times);
                subtract(&mut inverse[other * rows..(other + 1) * rows], &inverse_line, times);
            }
        }
    }
    Some(inverse)
}
