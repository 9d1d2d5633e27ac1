//! The pieces that parts are cut as: each part one piece, but for those that no board is long enough for and that may be joined.

use alloc::vec::Vec;

use super::job::MOST_PARTS;
use super::setup::LENGTHS;
use super::{Cutting, CuttingError, Part};
use crate::length::{Length, Rounding, RoundingMode};

/// Pieces of one length that belong to the same place in a part.
#[derive(Clone, Copy, Debug)]
pub(super) struct Piece {
    /// Which part of the cutting.
    pub(super) part: usize,
    /// Which piece of how many, for a part that is joined.
    pub(super) of: Option<(u64, u64)>,
    pub(super) length: Length,
    pub(super) count: u64,
}

impl Cutting {
    /// All pieces, in the order of the parts.
    pub(super) fn pieces(&self) -> Result<Vec<Piece>, CuttingError> {
        let (mut pieces, mut total) = (Vec::new(), 0_u64);
        for (index, part) in self.parts.iter().enumerate() {
            let lengths = self.lengths_of(part)?;
            total = total.saturating_add(part.count.saturating_mul(lengths.len() as u64));
            if total > MOST_PARTS {
                return Err(CuttingError::TooManyParts { parts: total, most: MOST_PARTS });
            }
            let many = lengths.len() as u64;
            pieces.extend((1..).zip(lengths).map(|(number, length)| Piece {
                part: index,
                of: (many > 1).then_some((number, many)),
                length,
                count: part.count,
            }));
        }
        Ok(pieces)
    }

    fn lengths_of(&self, part: &Part) -> Result<Vec<Length>, CuttingError> {
        let (stock, gives) = self.longest(|_| true)?;
        if part.length <= gives {
            return Ok(Vec::from([part.length]));
        }
        if !part.may_be_joined || gives <= Length::ZERO {
            let short = part.length.checked_sub(gives).ok_or(LENGTHS)?;
            let (name, stock) = (part.name.as_str().into(), stock.name.as_str().into());
            return Err(CuttingError::PartTooLong { name, length: part.length, stock, short });
        }
        // Of the longest boards there may be too few.
        let enough = self.longest(|stock| stock.limit.is_none()).map_or(gives, |(_, gives)| gives);
        self.joined(part, if enough > Length::ZERO { enough } else { gives })
    }

    /// Whole boards and the rest, which is made no shorter than asked for at the cost of the one before.
    fn joined(&self, part: &Part, gives: Length) -> Result<Vec<Length>, CuttingError> {
        let whole = part.length.steps(Rounding::to(gives).mode(RoundingMode::Down)).map_err(|_| LENGTHS)?;
        let whole = usize::try_from(whole).ok().filter(|whole| *whole as u64 <= MOST_PARTS);
        let Some(whole) = whole else { return Err(CuttingError::TooManyParts { parts: MOST_PARTS + 1, most: MOST_PARTS }) };
        let taken = i64::try_from(whole).ok().and_then(|whole| gives.checked_mul(whole)).ok_or(LENGTHS)?;
        let rest = part.length.checked_sub(taken).ok_or(LENGTHS)?;
        let mut lengths = alloc::vec![gives; whole];
        if !rest.is_zero() {
            let last = rest.max(self.shortest_piece);
            let before = gives.checked_sub(last).and_then(|spare| spare.checked_add(rest)).ok_or(LENGTHS)?;
            // A last piece longer than a board leaves less than itself before it.
            if before < self.shortest_piece {
                let name = part.name.as_str().into();
                return Err(CuttingError::PieceTooShort { name, least: self.shortest_piece, gives });
            }
            lengths[whole - 1] = before;
            lengths.push(last);
        }
        Ok(lengths)
    }
}
