//! From lengths and prices to whole numbers and back, for sheets.

use alloc::vec::Vec;

use num_rational::Ratio;

use super::bound::bound;
use super::layout::{Blank, Item, Laid, Rect, layout, sides, turns};
use super::{CutSheet, Panel, PanelPlace, PlacedPanel, Sheet, SheetCut, SheetCutting, SheetError, SheetPlan, Way};
use crate::cutting::PlanCost;
use crate::cutting::grain::{self, counted, counted_lengths};
use crate::cutting::job::MOST_COST;
use crate::cutting::patience::Patience;
use crate::length::{Area, Length};

const OUT: SheetError = SheetError::OutOfRange;
/// So that areas can be multiplied by costs and counts in 128 bits.
const MOST_SIDE: u64 = 1 << 31;
const MOST_PANELS: u64 = 5000;
/// Steps unless told otherwise: under a second on an everyday machine.
const STEPS: u64 = 3_000_000;

/// The unit that costs are counted in.
#[derive(Clone, Copy)]
enum Unit {
    Sheets,
    Area(Area),
    Price((u128, u128)),
}

impl SheetCutting {
    /// The plan, and what none can cost less than.
    ///
    /// ```
    /// use scantling::{Panel, Sheet, SheetCutting, Unit};
    ///
    /// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let plan = SheetCutting::new().panel(Panel::new("door", yard, foot, 4)).sheet(Sheet::new("square", yard, yard)).plan()?;
    /// assert_eq!((plan.sheet_count(), plan.is_optimal()), (2, true));
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Every [`SheetError`].
    pub fn plan(&self) -> Result<SheetPlan, SheetError> {
        self.plan_while(&|| true)
    }

    /// The plan, worked at as long as a check that is asked now and then says so.
    ///
    /// ```
    /// use scantling::{Panel, Sheet, SheetCutting, Unit};
    ///
    /// let (foot, yard) = (Unit::Foot.length(), Unit::Yard.length());
    /// let cutting = SheetCutting::new().panel(Panel::new("door", yard, foot, 4)).sheet(Sheet::new("square", yard, yard));
    /// assert_eq!(cutting.plan_while(&|| false)?.sheet_count(), 2);
    /// # Ok::<(), scantling::SheetError>(())
    /// ```
    ///
    /// # Errors
    ///
    /// Every [`SheetError`].
    pub fn plan_while(&self, goes_on: &dyn Fn() -> bool) -> Result<SheetPlan, SheetError> {
        self.check()?;
        let (lengths, grain) = self.lengths()?;
        let (costs, unit) = self.costs()?;
        let kerf = lengths[0];
        let (sheet_sides, panel_sides) = lengths[1..].split_at(2 * self.sheets.len());
        let mut blanks = Vec::new();
        for ((sides, sheet), cost) in sheet_sides.chunks(2).zip(&self.sheets).zip(costs) {
            blanks.push(Blank { length: sides[0], width: sides[1], cost, limit: sheet.limit });
        }
        let mut items = Vec::new();
        for (index, (sides, panel)) in panel_sides.chunks(2).zip(&self.panels).enumerate() {
            let item = Item { panel: index, length: sides[0], width: sides[1], may_be_turned: panel.may_be_turned };
            refuse_too_large(&item, &blanks, panel)?;
            items.extend((0..panel.count).map(|_| item));
        }
        let bound = bound(&items, &blanks);
        let mut patience = Patience::new(self.patience.unwrap_or(STEPS), goes_on);
        let sheets = layout(&items, &blanks, kerf, bound, &mut patience).ok_or(SheetError::NoPlanFound)?;
        let cost = sheets.iter().map(|sheet| blanks[sheet.blank].cost).sum();
        self.named(&sheets, grain, in_unit(cost, unit)?, in_unit(bound, unit)?)
    }

    fn check(&self) -> Result<(), SheetError> {
        for length in [self.kerf, self.trim] {
            if length.is_negative() {
                return Err(SheetError::Negative { length });
            }
        }
        if self.panels.is_empty() {
            return Err(SheetError::NoPanels);
        }
        if self.sheets.is_empty() {
            return Err(SheetError::NoSheets);
        }
        let panels = self.panels.iter().map(|panel| (&panel.name, panel.length, panel.width, panel.count));
        let sheets = self.sheets.iter().map(|sheet| (&sheet.name, sheet.length, sheet.width, sheet.limit.unwrap_or(1)));
        for (name, length, width, count) in panels.chain(sheets) {
            let name = name.as_str().into();
            if length <= Length::ZERO || width <= Length::ZERO {
                return Err(SheetError::NotARectangle { name, length, width });
            }
            if count == 0 {
                return Err(SheetError::NoneOf { name });
            }
        }
        let panels = self.panels.iter().fold(0_u64, |sum, panel| sum.saturating_add(panel.count));
        if panels > MOST_PANELS {
            return Err(SheetError::TooManyPanels { panels, most: MOST_PANELS });
        }
        Ok(())
    }

    /// In a common grain: the kerf, then the two sides of every sheet and of every panel, each with a kerf.
    fn lengths(&self) -> Result<(Vec<u64>, (u128, u128)), SheetError> {
        let mut lengths = Vec::from([self.kerf]);
        for sheet in &self.sheets {
            for side in [sheet.length, sheet.width] {
                let left = side.checked_sub(self.trim).and_then(|left| left.checked_sub(self.trim)).ok_or(OUT)?;
                if left <= Length::ZERO {
                    return Err(SheetError::NothingLeft { name: sheet.name.as_str().into(), trim: self.trim });
                }
                lengths.push(left.checked_add(self.kerf).ok_or(OUT)?);
            }
        }
        for side in self.panels.iter().flat_map(|panel| [panel.length, panel.width]) {
            lengths.push(side.checked_add(self.kerf).ok_or(OUT)?);
        }
        let counted = counted_lengths(&lengths, MOST_SIDE).ok_or(OUT)?;
        Ok((counted.counts, counted.grain))
    }

    fn costs(&self) -> Result<(Vec<u128>, Unit), SheetError> {
        let is_priced = self.sheets[0].price.is_some();
        for sheet in &self.sheets {
            let is_good = sheet.price.is_none_or(|price| *price.denom() > 0 && *price.numer() >= 0);
            if sheet.price.is_some() != is_priced || !is_good {
                return Err(SheetError::BadPrice { name: sheet.name.as_str().into() });
            }
            if sheet.limit.is_none() && sheet.price.is_some_and(|price| *price.numer() == 0) {
                return Err(SheetError::FreeWithoutLimit { name: sheet.name.as_str().into() });
            }
        }
        if is_priced {
            let price = |sheet: &Sheet| sheet.price.map_or((0, 1), |price| (*price.numer(), price.denom().unsigned_abs()));
            let counted = counted(&self.sheets.iter().map(price).collect::<Vec<_>>(), MOST_COST).ok_or(OUT)?;
            return Ok((counted.counts.into_iter().map(u128::from).collect(), Unit::Price(counted.grain)));
        }
        let both = |sheet: &Sheet| (sheet.length, sheet.width);
        if self.sheets.iter().all(|sheet| both(sheet) == both(&self.sheets[0])) {
            return Ok((self.sheets.iter().map(|_| 1).collect(), Unit::Sheets));
        }
        let sides: Vec<_> = self.sheets.iter().flat_map(|sheet| [sheet.length, sheet.width]).collect();
        // Sides of a few thousand of the grain at the most, so that their products stay costs.
        let counted = counted_lengths(&sides, 1 << 17).ok_or(OUT)?;
        let side = grain::length(counted.grain, 1).ok_or(OUT)?;
        let costs = counted.counts.chunks(2).map(|sides| u128::from(sides[0]) * u128::from(sides[1]));
        Ok((costs.collect(), Unit::Area(side.checked_area(side).ok_or(OUT)?)))
    }

    fn named(&self, sheets: &[Laid], grain: (u128, u128), cost: PlanCost, bound: PlanCost) -> Result<SheetPlan, SheetError> {
        let mut named: Vec<CutSheet> = Vec::new();
        for laid in sheets {
            let sheet = self.sheet_of(laid, grain).ok_or(OUT)?;
            let alike =
                |last: &&mut CutSheet| last.sheet == sheet.sheet && last.panels == sheet.panels && last.cuts == sheet.cuts;
            match named.last_mut().filter(alike) {
                Some(last) => last.times += 1,
                None => named.push(sheet),
            }
        }
        let area =
            |length: Length, width: Length, count: u64| length.checked_area(width)?.checked_mul(i64::try_from(count).ok()?);
        let sum = |areas: &mut dyn Iterator<Item = Option<Area>>| {
            let mut sum = Area::ZERO;
            for area in areas {
                sum = sum.checked_add(area?)?;
            }
            Some(sum)
        };
        let bought = &mut named.iter().map(|cut| area(self.sheets[cut.sheet].length, self.sheets[cut.sheet].width, cut.times));
        let used = &mut self.panels.iter().map(|panel| area(panel.length, panel.width, panel.count));
        let (bought, used) = (sum(bought).ok_or(OUT)?, sum(used).ok_or(OUT)?);
        let (panels, stock) = (self.panels.clone(), self.sheets.clone());
        Ok(SheetPlan { panels, stock, sheets: named, cost, bound, bought, used })
    }

    fn sheet_of(&self, laid: &Laid, grain: (u128, u128)) -> Option<CutSheet> {
        let length = |count| grain::length(grain, count);
        let side = |count| length(count)?.checked_sub(self.kerf);
        let place = |rect: Rect| {
            let (along, across) = (length(rect.along)?.checked_add(self.trim)?, length(rect.across)?.checked_add(self.trim)?);
            Some(PanelPlace { along, across, length: side(rect.length)?, width: side(rect.width)? })
        };
        let panels = laid.placed.iter().map(|placed| {
            let (panel, is_turned) = (placed.panel, placed.is_turned);
            Some(PlacedPanel { panel, place: place(placed.rect)?, is_turned })
        });
        let cuts = laid.cuts.iter().map(|cut| {
            let way = if cut.is_rip { Way::Rip } else { Way::Crosscut };
            Some(SheetCut { piece: place(cut.piece)?, way, at: side(cut.at)? })
        });
        Some(CutSheet {
            sheet: laid.blank,
            times: 1,
            panels: panels.collect::<Option<_>>()?,
            cuts: cuts.collect::<Option<_>>()?,
            offcuts: laid.free.iter().map(|rect| place(*rect)).collect::<Option<_>>()?,
        })
    }
}

fn refuse_too_large(item: &Item, blanks: &[Blank], panel: &Panel) -> Result<(), SheetError> {
    let fits = |blank: &Blank| {
        turns(item).any(|is_turned| {
            let (length, width) = sides(item, is_turned);
            length <= blank.length && width <= blank.width
        })
    };
    if blanks.iter().any(fits) {
        return Ok(());
    }
    let (name, is_grain_fixed) = (panel.name.as_str().into(), !panel.may_be_turned);
    Err(SheetError::PanelTooLarge { name, length: panel.length, width: panel.width, is_grain_fixed })
}

fn in_unit(cost: u128, unit: Unit) -> Result<PlanCost, SheetError> {
    let count = i128::try_from(cost).map_err(|_| OUT)?;
    Ok(match unit {
        Unit::Sheets => PlanCost::Sheets(u64::try_from(cost).map_err(|_| OUT)?),
        Unit::Area(area) => PlanCost::Area(area.checked_mul_ratio(Ratio::from_integer(count)).ok_or(OUT)?),
        Unit::Price((num, den)) => {
            let num = i128::try_from(num).ok().and_then(|num| num.checked_mul(count)).ok_or(OUT)?;
            PlanCost::Price(Ratio::new(num, i128::try_from(den).map_err(|_| OUT)?))
        }
    })
}
