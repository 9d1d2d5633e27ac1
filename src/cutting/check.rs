//! What is asked for, looked over before anything is counted: lengths that are lengths, prices for all boards or for none, boards
//! of which something is left.

use num_rational::Ratio;

use super::setup::LENGTHS;
use super::{Aim, Cutting, CuttingError, KerfRule, Stock};
use crate::length::Length;

impl Cutting {
    pub(super) fn check(&self) -> Result<(), CuttingError> {
        let lengths = [self.kerf, self.near_trim, self.far_trim, self.least_offcut, self.shortest_piece];
        match lengths.into_iter().position(Length::is_negative) {
            Some(0) => return Err(CuttingError::NegativeKerf { kerf: self.kerf }),
            Some(place @ (1 | 2)) => return Err(CuttingError::NegativeTrim { trim: lengths[place] }),
            Some(place) => return Err(CuttingError::NegativeLeast { length: lengths[place] }),
            None => {}
        }
        if self.parts.is_empty() {
            return Err(CuttingError::NoParts);
        }
        self.parts.iter().try_for_each(|part| match part {
            _ if part.length <= Length::ZERO => {
                Err(CuttingError::PartLength { name: part.name.as_str().into(), length: part.length })
            }
            _ if part.count == 0 => Err(CuttingError::NoneWanted { name: part.name.as_str().into() }),
            _ => Ok(()),
        })?;
        if self.stocks.is_empty() {
            return Err(CuttingError::NoStock);
        }
        self.stocks.iter().try_for_each(|stock| self.usable(stock).map(|_| ()))?;
        self.check_prices()
    }

    fn check_prices(&self) -> Result<(), CuttingError> {
        let zero = Ratio::from_integer(0);
        for stock in &self.stocks {
            let name = || stock.name.as_str().into();
            match stock.price {
                // A ratio that was not made by its constructor is not trusted.
                Some(price) if *price.denom() <= 0 || *price.numer() < 0 => return Err(CuttingError::BadPrice { name: name() }),
                Some(price) if price == zero && stock.limit.is_none() => {
                    return Err(CuttingError::FreeWithoutLimit { name: name() });
                }
                _ => {}
            }
        }
        let named = |is_priced: bool| self.stocks.iter().find(|stock| stock.price.is_some() == is_priced);
        match (named(true), named(false)) {
            (Some(priced), Some(unpriced)) => {
                Err(CuttingError::MixedPrices { priced: priced.name.as_str().into(), unpriced: unpriced.name.as_str().into() })
            }
            (None, Some(_)) if self.aim == Some(Aim::LowestPrice) => Err(CuttingError::NoPrices),
            _ => Ok(()),
        }
    }

    /// What is left of a board when it is trimmed.
    pub(super) fn usable(&self, stock: &Stock) -> Result<Length, CuttingError> {
        if stock.limit == Some(0) {
            return Err(CuttingError::NoneThere { name: stock.name.as_str().into() });
        }
        let trim = self.near_trim.checked_add(self.far_trim).ok_or(LENGTHS)?;
        let usable = stock.length.checked_sub(trim).ok_or(LENGTHS)?;
        if usable > Length::ZERO {
            return Ok(usable);
        }
        Err(CuttingError::NothingLeft { name: stock.name.as_str().into(), length: stock.length, trim })
    }

    /// Of some of the boards, those that give the longest part, and how long it is.
    pub(super) fn longest(&self, is_meant: impl Fn(&Stock) -> bool) -> Result<(&Stock, Length), CuttingError> {
        let mut longest: Option<(&Stock, Length)> = None;
        for stock in self.stocks.iter().filter(|stock| is_meant(stock)) {
            let usable = self.usable(stock)?;
            let gives = match self.kerf_rule {
                KerfRule::Between => usable,
                KerfRule::EachPart => usable.checked_sub(self.kerf).ok_or(LENGTHS)?,
            };
            if longest.is_none_or(|(_, most)| gives > most) {
                longest = Some((stock, gives));
            }
        }
        longest.ok_or(CuttingError::NoStock)
    }

    pub(super) fn aim_or_default(&self) -> Aim {
        let is_one_length = self.stocks.iter().all(|stock| stock.length == self.stocks[0].length);
        self.aim.unwrap_or(match self.stocks[0].price {
            Some(_) => Aim::LowestPrice,
            None if is_one_length => Aim::FewestBoards,
            None => Aim::LeastLength,
        })
    }
}
