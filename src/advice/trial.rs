//! Simulates a changed setup: average weather and a number of weather sequences, in portions.
//!
//! Every setup meets the same weather, sequence by sequence (one seed), so that a difference
//! between two setups is the setups' own and not the draw's. Work goes in portions: `units` count
//! played fortnights, about the time of five weather sequences over fourteen nights.

use crate::forecast::course::AverageCourse;
use crate::forecast::odds::{self, EVEN_FRAC, OddsCache, SEQUENCES, SURE_FRAC};
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::forecast::{MonthlyClimate, OddsRun, TripPlan};
use crate::model::Setup;
use crate::units::{Hours, WattHours};
use std::sync::Arc;

/// Hours of the trip that make one unit of work.
const HOURS_A_UNIT: usize = 5 * HOURS_A_FORTNIGHT;
/// Hours of a fortnight with its arrival, about.
const HOURS_A_FORTNIGHT: usize = 340;
/// Units of laying out a plan and playing its average course, for one fortnight.
const PLAN_UNITS: usize = 8;
/// Units of working out the sun of one fortnight.
pub(super) const SUN_UNITS: usize = 40;

/// What becomes of a trip with one setup.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome {
    /// Nights lasted in average weather, as far as the plan looks.
    pub nights: usize,
    /// The plan's horizon was reached in average weather without passing the limit.
    pub nights_open: bool,
    /// Nights with a chance of at least nine in ten ([`SURE_FRAC`]).
    pub nights_sure: usize,
    /// Nights with at least an even chance ([`EVEN_FRAC`]).
    pub nights_even: usize,
    /// Mean over all weather sequences of the nights lasted.
    pub nights_mean: f64,
    /// Chance, 0..1, of lasting night `i + 1`.
    pub lasting_frac: Vec<f64>,
    /// Lowest state of charge of the stay in average weather, 0..1.
    pub lowest_frac: f64,
    /// Time until the limit is passed in average weather, from arrival.
    pub first_low: Option<Hours>,
    /// Energy drawn on the first whole day.
    pub need_per_day: WattHours,
    /// Time of the stay in which charge was offered to a battery too cold for it, average weather.
    pub cold_locked: Hours,
    /// Weather sequences behind the chances; 0 before any was played.
    pub sequences: usize,
}

impl Outcome {
    /// Nights with at least the chance `chance_frac` of lasting, see [`odds::nights_at`].
    #[must_use]
    pub fn nights_at(&self, chance_frac: f64) -> usize {
        odds::nights_at(&self.lasting_frac, chance_frac)
    }

    /// Chance of lasting `nights` nights, see [`odds::chance_of`].
    #[must_use]
    pub fn chance_of(&self, nights: usize) -> f64 {
        odds::chance_of(&self.lasting_frac, nights)
    }
}

/// What one trial has worked out and others may read: the same figures are sooner there. Kept for the
/// battery, the weather and the loads that others share with it.
#[derive(Clone, Debug)]
pub struct TrialCache {
    plan: Arc<TripPlan>,
    odds: OddsCache,
}

impl TrialCache {
    /// The plan that was played.
    #[must_use]
    pub fn plan(&self) -> &TripPlan {
        &self.plan
    }
}

/// A setup being tried out.
#[derive(Clone, Debug)]
pub struct Trial {
    plan: Arc<TripPlan>,
    odds: OddsRun,
    average: Outcome,
    unit_hours: usize,
    more: bool,
}

impl Trial {
    /// Lays out the trip, plays it in average weather and gets ready to play `sequences` weather
    /// sequences. `sun` must belong to the setup's trip and panels; `cache` may be of any trial.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`OddsRun::new`].
    pub fn new(
        setup: &Setup,
        sun: Arc<TripSun>,
        sequences: usize,
        cache: Option<&TrialCache>,
    ) -> Result<Self, WeatherError> {
        let plan = TripPlan::build_like(setup, sun, cache.map(TrialCache::plan));
        Self::of_plan(Arc::new(plan), sequences, cache)
    }

    /// As [`Self::new`] with the sun worked out on the spot, and [`Self::booked`].
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn with_climate(
        setup: &Setup,
        climate: &MonthlyClimate,
        sequences: usize,
    ) -> Result<Self, WeatherError> {
        Self::new(setup, Arc::new(TripSun::build(setup, climate)?), sequences, None)
            .map(Self::booked)
    }

    /// Tries a plan laid out before.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`OddsRun::new`].
    pub fn of_plan(
        plan: Arc<TripPlan>,
        sequences: usize,
        cache: Option<&TrialCache>,
    ) -> Result<Self, WeatherError> {
        let odds = match cache {
            Some(cache) => OddsRun::nights_only_with_cache(plan.clone(), sequences, &cache.odds)?,
            None => OddsRun::nights_only(plan.clone(), sequences)?,
        };
        let course = AverageCourse::of(&plan);
        let whole_day = plan.hours.iter().filter(|hour| hour.day == 1);
        let average = Outcome {
            nights: plan.nights_before(course.first_low),
            nights_open: course.first_low.is_none(),
            nights_sure: 0,
            nights_even: 0,
            nights_mean: 0.0,
            lasting_frac: Vec::new(),
            lowest_frac: course.lowest_frac,
            first_low: course.first_low.map(|hour| Hours((hour + 1) as f64)),
            need_per_day: whole_day
                .map(|hour| (hour.demand.total() + hour.electronics) * Hours(1.0))
                .sum(),
            cold_locked: course.cold_locked,
            sequences: 0,
        };
        let unit_hours = plan.hours.len().max(1);
        Ok(Self { plan, odds, average, unit_hours, more: true })
    }

    /// The same with the lowest state of charge in average weather as the booked course has it, for what is
    /// shown; without, it may be 0.0003 off.
    #[must_use]
    pub fn booked(mut self) -> Self {
        self.average.lowest_frac = AverageCourse::booked(&self.plan).lowest_frac;
        self
    }

    /// What is worked out here, for other trials to read.
    #[must_use]
    pub fn cache(&self) -> TrialCache {
        TrialCache { plan: self.plan.clone(), odds: self.odds.cache() }
    }

    /// Units of work it took to make this trial, the sun apart.
    #[must_use]
    pub fn set_up_units(&self) -> usize {
        PLAN_UNITS * self.unit_hours.div_ceil(HOURS_A_FORTNIGHT)
    }

    fn units_of(&self, sequences: usize) -> usize {
        (sequences * self.unit_hours).div_ceil(HOURS_A_UNIT)
    }

    /// Plays on for about `units` of work (at least one sequence); false once all sequences are
    /// played. `units` is lowered by what was done.
    pub fn advance(&mut self, units: &mut usize) -> bool {
        let wanted = (*units * HOURS_A_UNIT / self.unit_hours).max(1);
        let before = self.odds.played();
        self.more = self.odds.advance(wanted);
        let played = self.odds.played() - before;
        *units = units.saturating_sub(self.units_of(played));
        self.more
    }

    /// Wants at least so many sequences in all, those played before among them.
    pub fn want(&mut self, sequences: usize) {
        self.odds.want(sequences);
        self.more = self.odds.played() < self.odds.wanted();
    }

    /// Plays all sequences.
    #[must_use]
    pub fn finished(mut self) -> Self {
        while self.odds.advance(usize::MAX) {}
        self.more = false;
        self
    }

    /// Whether the chance of lasting `nights` nights is at least `chance_frac`, as all sequences
    /// together would say; `None` while those played so far leave it open.
    #[must_use]
    pub fn verdict(&self, nights: usize, chance_frac: f64) -> Option<bool> {
        let odds = self.odds.odds();
        let lasted = (odds.chance_of(nights) * odds.played as f64).round();
        let needed = chance_frac * odds.wanted as f64 - 1e-6;
        let open = odds.wanted.saturating_sub(odds.played) as f64;
        if odds.played > 0 && lasted >= needed {
            Some(true)
        } else if lasted + open < needed {
            Some(false)
        } else {
            None
        }
    }

    /// All sequences have been played.
    #[must_use]
    pub fn is_finished(&self) -> bool {
        !self.more
    }

    /// The plan that is played.
    #[must_use]
    pub fn plan(&self) -> &Arc<TripPlan> {
        &self.plan
    }

    /// What is known so far.
    #[must_use]
    pub fn outcome(&self) -> Outcome {
        let odds = self.odds.odds();
        if odds.played == 0 {
            return self.average.clone();
        }
        Outcome {
            nights_sure: odds.nights_at(SURE_FRAC),
            nights_even: odds.nights_at(EVEN_FRAC),
            nights_mean: odds.lasting_frac.iter().sum(),
            sequences: odds.played,
            lasting_frac: odds.lasting_frac,
            ..self.average.clone()
        }
    }
}

/// Plays setups one after the other, for about `units`; `next` gives the setup of a number with its climate.
/// False once all are played.
pub(super) fn play_on<'a>(
    trials: &mut Vec<Trial>,
    next: impl Fn(usize) -> Option<(&'a Setup, &'a MonthlyClimate)>,
    units: usize,
) -> Result<bool, WeatherError> {
    let mut left = units.max(1);
    while left > 0 {
        let playing = trials.iter_mut().find(|trial| !trial.is_finished());
        if let Some(trial) = playing {
            trial.advance(&mut left);
        } else if let Some((setup, climate)) = next(trials.len()) {
            let trial = Trial::with_climate(setup, climate, SEQUENCES)?;
            left = left.saturating_sub(SUN_UNITS + trial.set_up_units());
            trials.push(trial);
        } else {
            return Ok(false);
        }
    }
    Ok(true)
}
