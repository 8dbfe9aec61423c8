//! What one change brings, against the setup as it is under the very same weather.

use super::Change;
use super::cost::{Cost, Hazard};
use crate::advice::trial::Outcome;
use crate::forecast::odds::SEQUENCES;
use crate::model::Setup;
use crate::units::{Hours, WattHours};
use std::cmp::Ordering;
use std::sync::Arc;

/// What a change brings, against the setup as it is under the same weather.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Gain {
    /// Nights more in average weather.
    pub nights: i32,
    /// Nights more at nine in ten.
    pub nights_sure: i32,
    /// Nights more at an even chance.
    pub nights_even: i32,
    /// Nights more on the mean of all weather sequences.
    pub nights_mean: f64,
    /// Longer until the limit is passed, average weather; up to the horizon where it is not.
    pub until_low: Hours,
    /// Lowest state of charge higher by this, 0..1.
    pub lowest_frac: f64,
    /// Drawn less on a day.
    pub saved_per_day: WattHours,
}

impl Gain {
    /// From one outcome to another of the same trip.
    #[must_use]
    pub fn between(before: &Outcome, after: &Outcome) -> Self {
        let more = |a: usize, b: usize| {
            i32::try_from(b).unwrap_or(i32::MAX) - i32::try_from(a).unwrap_or(i32::MAX)
        };
        let horizon = Hours(before.lasting_frac.len().max(after.lasting_frac.len()) as f64 * 24.0);
        let until = |outcome: &Outcome| outcome.first_low.unwrap_or(horizon.max(Hours(0.0)));
        Self {
            nights: more(before.nights, after.nights),
            nights_sure: more(before.nights_sure, after.nights_sure),
            nights_even: more(before.nights_even, after.nights_even),
            nights_mean: after.nights_mean - before.nights_mean,
            until_low: until(after) - until(before),
            lowest_frac: after.lowest_frac - before.lowest_frac,
            saved_per_day: before.need_per_day - after.need_per_day,
        }
    }

    /// Order by what it brings, the most first: mean nights to a fiftieth, hours, lowest point.
    #[must_use]
    pub fn rank(&self, other: &Self) -> Ordering {
        let key = |gain: &Self| {
            ((gain.nights_mean * 50.0).round() as i64, gain.until_low.0.round() as i64)
        };
        key(other).cmp(&key(self)).then_with(|| other.lowest_frac.total_cmp(&self.lowest_frac))
    }

    /// Enough to be worth a line: a fiftieth of a night, an hour, or half a percent of charge.
    #[must_use]
    pub fn is_noticeable(&self) -> bool {
        let mean = (self.nights_mean * 50.0).round();
        mean > 0.0 || (mean == 0.0 && (self.until_low.0 >= 1.0 || self.lowest_frac >= 0.005))
    }
}

/// One change and what it brings.
#[derive(Clone, Debug, PartialEq)]
pub struct Improvement {
    /// The change.
    pub change: Change,
    /// What it asks for.
    pub cost: Cost,
    /// What to beware of.
    pub hazards: &'static [Hazard],
    /// What it brings.
    pub gain: Gain,
    /// What becomes of the trip with it.
    pub outcome: Outcome,
    /// What becomes of the trip without it, under the same weather sequences.
    pub before: Arc<Outcome>,
}

impl Improvement {
    /// A change to `setup`, with what became of the trip before and after, under the same weather sequences.
    pub(super) fn of(
        change: Change,
        setup: &Setup,
        before: &Arc<Outcome>,
        outcome: Outcome,
    ) -> Self {
        Self {
            change,
            cost: change.cost(setup),
            hazards: change.hazards(setup),
            gain: Gain::between(before, &outcome),
            outcome,
            before: before.clone(),
        }
    }

    /// Played as often as the answer: its figures come true to the percent.
    #[must_use]
    pub fn is_in_full(&self) -> bool {
        self.outcome.sequences >= SEQUENCES
    }
}
