//! How likely the battery lasts, from thousands of weather sequences.
//!
//! Each sequence ([`super::weather`]) is played through the same battery simulation as the
//! average course. A sequence is one sky, the air that goes with it, and one answer to what nobody
//! knows: how far the climate of the place and the figures of the user are off. Counted are the night on which each passes the limit and, hour by hour, where
//! the state of charge lies. The seed is fixed: the same setup gives the same figures everywhere,
//! and two setups meet the same weather. Work goes in chunks so that a page stays alive.
//!
//! Checked against twenty measured years the chances come true within 5 to 10 points; the page
//! says no more than that.

use super::course::{advance_hour, is_low, sun_row};
use super::offer::Circuit;
use super::plan::TripPlan;
use super::weather::{Sequence, WeatherError, WeatherSequences};
use crate::physics::battery::BankState;
use crate::units::{Celsius, Watts};
use std::sync::Arc;

/// Sequences for the figures shown.
pub const SEQUENCES: usize = 2000;
/// Chance at which a camper can count on a night: nine in ten.
pub const SURE_FRAC: f64 = 0.9;
/// Chance of an even bet.
pub const EVEN_FRAC: f64 = 0.5;
/// Seed of the weather.
pub const SEED: u64 = 0x006e_6967_6874_626b;

/// Steps of the counted state of charge: half a percent.
const LEVELS: usize = 200;

/// Chances of a trip.
#[derive(Clone, Debug, PartialEq)]
pub struct Odds {
    /// Sequences played so far.
    pub played: usize,
    /// Sequences wanted.
    pub wanted: usize,
    /// Chance, 0..1, that the limit is not passed before night `i + 1` is over.
    pub lasting_frac: Vec<f64>,
    /// State of charge that one, five and nine sequences in ten stay below, by hour.
    pub band: Vec<SocQuantiles>,
    /// Share of sequences, 0..1, that have passed the limit by the end of each hour.
    pub low_by_hour_frac: Vec<f64>,
    /// Share of sequences, 0..1, whose lowest state of charge over the stay is at or below each
    /// level, from empty to full in equal steps.
    pub lowest_frac: Vec<f64>,
}

/// State of charge of an hour over all sequences.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct SocQuantiles {
    /// One sequence in ten is below, 0..1.
    pub p10_frac: f64,
    /// Half are below, 0..1.
    pub p50_frac: f64,
    /// Nine in ten are below, 0..1.
    pub p90_frac: f64,
}

/// Whether a chance, 0..1, reaches the wanted one, with room for the last digit of a sum.
#[must_use]
pub fn reaches(chance_frac: f64, wanted_frac: f64) -> bool {
    chance_frac >= wanted_frac - 1e-9
}

/// Nights with at least the chance `chance_frac`; `lasting_frac` holds the chance of lasting night
/// `i + 1`.
#[must_use]
pub fn nights_at(lasting_frac: &[f64], chance_frac: f64) -> usize {
    lasting_frac.iter().take_while(|chance| reaches(**chance, chance_frac)).count()
}

/// Chance of lasting `nights` nights, 0..1; 1 for none, and for more than were played that of the
/// last one.
#[must_use]
pub fn chance_of(lasting_frac: &[f64], nights: usize) -> f64 {
    nights
        .checked_sub(1)
        .map_or(1.0, |last| lasting_frac.get(last).or(lasting_frac.last()).copied().unwrap_or(1.0))
}

impl Odds {
    /// Nights with at least the chance `chance_frac` of lasting, see [`nights_at`].
    #[must_use]
    pub fn nights_at(&self, chance_frac: f64) -> usize {
        nights_at(&self.lasting_frac, chance_frac)
    }

    /// Chance of lasting `nights` nights, see [`chance_of`].
    #[must_use]
    pub fn chance_of(&self, nights: usize) -> f64 {
        chance_of(&self.lasting_frac, nights)
    }

    /// First hour by whose end the battery has passed the limit in more sequences than the chance
    /// `chance_frac` of lasting leaves; `None` if it never comes to that.
    #[must_use]
    pub fn first_low_at(&self, chance_frac: f64) -> Option<usize> {
        self.low_by_hour_frac.iter().position(|low| 1.0 - low < chance_frac - 1e-9)
    }

    /// State of charge, 0..1, that the stay keeps above with the chance `chance_frac`.
    #[must_use]
    pub fn lowest_at(&self, chance_frac: f64) -> f64 {
        let level = self.lowest_frac.iter().position(|below| 1.0 - below < chance_frac - 1e-9);
        level.unwrap_or(self.lowest_frac.len()) as f64 / LEVELS as f64
    }

    /// All sequences wanted have been played.
    #[must_use]
    pub fn is_complete(&self) -> bool {
        self.played >= self.wanted
    }
}

/// Odds in the making.
#[derive(Clone, Debug)]
pub struct OddsRun {
    plan: Arc<TripPlan>,
    weather: WeatherSequences,
    wanted: usize,
    played: usize,
    /// How many sequences lasted each night.
    lasted: Vec<u32>,
    /// How many sequences passed the limit first in each hour.
    first_low: Vec<u32>,
    /// How many sequences have each level as their lowest of the stay.
    lowest: Vec<u32>,
    /// Count of each level of charge, by hour; empty where the band is not wanted.
    levels: Vec<u32>,
    sequence: Sequence,
}

impl OddsRun {
    /// Ready to play `sequences` (at least one) weather sequences.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn new(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, true)
    }

    /// As [`Self::new`], counting nights only: quicker and smaller, for comparing setups.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn nights_only(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, false)
    }

    fn with_band(plan: Arc<TripPlan>, sequences: usize, band: bool) -> Result<Self, WeatherError> {
        let sun = &plan.sun;
        let weather = WeatherSequences::with_persistence(sun.days.clone(), SEED, sun.persistence)?
            .with_climate_error(sun.climate_error_frac);
        Ok(Self {
            wanted: sequences.max(1),
            played: 0,
            first_low: vec![0; plan.hours.len()],
            lowest: vec![0; LEVELS + 1],
            lasted: vec![0; plan.mornings.len()],
            levels: if band { vec![0; plan.hours.len() * (LEVELS + 1)] } else { Vec::new() },
            sequence: Sequence::default(),
            weather,
            plan,
        })
    }

    /// Wants at least so many sequences in all; those played before stay played, so that the
    /// chances are the same as of a run that wanted as many from the start.
    pub fn want(&mut self, sequences: usize) {
        self.wanted = self.wanted.max(sequences);
    }

    /// Plays at most `count` more sequences; false once all are done.
    pub fn advance(&mut self, count: usize) -> bool {
        let count = count.min(self.wanted - self.played);
        for _ in 0..count {
            self.weather.fill(&mut self.sequence);
            self.play_one();
        }
        self.played += count;
        self.played < self.wanted
    }

    fn play_one(&mut self) {
        let plan = &self.plan;
        let response = &plan.air_response;
        let stay = plan.stay_hours();
        let use_factor = use_factor(plan.use_error_frac, self.sequence.use_normal);
        let mut state = BankState::rested(plan.start_soc_frac);
        let mut first_low = None;
        let mut lowest = state.soc_frac;
        let mut day = usize::MAX;
        let mut row = sun_row(plan, usize::MAX, 0.0);
        let mut anomaly_k = 0.0;
        for (index, hour) in plan.hours.iter().enumerate() {
            if hour.day != day {
                day = hour.day;
                row = sun_row(plan, day, self.sequence.k_frac.get(day).copied().unwrap_or(0.0));
                anomaly_k = self.sequence.air_anomaly_k.get(day).copied().unwrap_or(0.0);
            }
            if let Some(soc_frac) = plan.restarts_at(index) {
                state = BankState::rested(soc_frac);
                first_low = None;
                lowest = state.soc_frac;
            }
            let conditions = response.conditions(Celsius(hour.unheated.0 + anomaly_k));
            let by_air = response.extra_draw(hour.hour_of_day, hour.air, anomaly_k);
            let load = hour.load + by_air + hour.demand.total() * (use_factor - 1.0);
            let circuit = Circuit { conditions, load: load.max(Watts::ZERO), ..hour.into() };
            advance_hour(plan, &mut state, &circuit, row[hour.hour_of_day]);
            if is_low(&state, conditions) && first_low.is_none() {
                first_low = Some(index);
                if self.levels.is_empty() && plan.restart.is_none() {
                    break;
                }
            }
            if index < stay {
                lowest = lowest.min(state.soc_frac);
            }
            let level = (state.soc_frac * LEVELS as f64 + 0.5) as usize;
            if let Some(count) = self.levels.get_mut(index * (LEVELS + 1) + level.min(LEVELS)) {
                *count += 1;
            }
        }
        if let Some(count) = first_low.and_then(|hour| self.first_low.get_mut(hour)) {
            *count += 1;
        }
        if let Some(count) = self.lowest.get_mut((lowest * LEVELS as f64) as usize) {
            *count += 1;
        }
        let nights = plan.nights_before(first_low);
        for count in self.lasted.iter_mut().take(nights) {
            *count += 1;
        }
    }

    /// Sequences played so far.
    #[must_use]
    pub fn played(&self) -> usize {
        self.played
    }

    /// Sequences wanted in all.
    #[must_use]
    pub fn wanted(&self) -> usize {
        self.wanted
    }

    /// The chances so far.
    #[must_use]
    pub fn odds(&self) -> Odds {
        let all = self.played.max(1) as f64;
        let quantile = |counts: &[u32], share: f64| {
            let mut seen = 0.0;
            let target = share * all;
            for (level, count) in counts.iter().enumerate() {
                let next = seen + f64::from(*count);
                if next >= target && *count > 0 {
                    return level as f64 / LEVELS as f64;
                }
                seen = next;
            }
            0.0
        };
        Odds {
            played: self.played,
            wanted: self.wanted,
            lasting_frac: self.lasted.iter().map(|count| f64::from(*count) / all).collect(),
            band: self
                .levels
                .chunks_exact(LEVELS + 1)
                .map(|counts| SocQuantiles {
                    p10_frac: quantile(counts, 0.1),
                    p50_frac: quantile(counts, 0.5),
                    p90_frac: quantile(counts, 0.9),
                })
                .collect(),
            low_by_hour_frac: running_share(&self.first_low, all),
            lowest_frac: running_share(&self.lowest, all),
        }
    }
}

/// What is really used over what was entered, at the standard normal figure `z`: log-normal, as
/// nobody uses less than nothing, with the mean 1 and the standard deviation `error_frac`.
fn use_factor(error_frac: f64, z: f64) -> f64 {
    let variance = (error_frac * error_frac).ln_1p();
    (variance.sqrt() * z - 0.5 * variance).exp()
}

/// Of counts, the share of `all` up to and with each.
fn running_share(counts: &[u32], all: f64) -> Vec<f64> {
    let mut sum = 0.0;
    counts
        .iter()
        .map(|count| {
            sum += f64::from(*count);
            sum / all
        })
        .collect()
}
