//! How likely the battery lasts, from thousands of weather sequences.
//!
//! Each sequence ([`super::weather`]) is played through the same battery simulation as the
//! average course. Counted are the night on which each passes the limit and, hour by hour, where
//! the state of charge lies. The seed is fixed: the same setup gives the same figures everywhere,
//! and two setups meet the same weather. Work goes in chunks so that a page stays alive.
//!
//! Checked against twenty measured years the chances come true within 5 to 10 points; the page
//! says no more than that.

use super::course::{advance_hour, is_low, sun_row};
use super::plan::TripPlan;
use super::weather::{WeatherError, WeatherSequences};
use crate::physics::battery::BankState;
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
    /// The weather makes no difference: no panel, or every day given.
    pub certain: bool,
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
    certain: bool,
    /// How many sequences lasted each night.
    lasted: Vec<u32>,
    /// Count of each level of charge, by hour; empty where the band is not wanted.
    levels: Vec<u32>,
    k_frac: Vec<f64>,
}

impl OddsRun {
    /// Ready to play `sequences` (at least one) weather sequences.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::new`].
    pub fn new(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, true)
    }

    /// As [`Self::new`], counting nights only: quicker and smaller, for comparing setups.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::new`].
    pub fn nights_only(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, false)
    }

    fn with_band(plan: Arc<TripPlan>, sequences: usize, band: bool) -> Result<Self, WeatherError> {
        let certain = !plan.sun.is_uncertain();
        let weather = WeatherSequences::new(plan.sun.days.clone(), SEED)?;
        Ok(Self {
            wanted: if certain { 1 } else { sequences.max(1) },
            played: 0,
            certain,
            lasted: vec![0; plan.mornings.len()],
            levels: if band { vec![0; plan.hours.len() * (LEVELS + 1)] } else { Vec::new() },
            k_frac: vec![0.0; weather.days()],
            weather,
            plan,
        })
    }

    /// Wants at least so many sequences in all; those played before stay played, so that the
    /// chances are the same as of a run that wanted as many from the start.
    pub fn want(&mut self, sequences: usize) {
        if !self.certain {
            self.wanted = self.wanted.max(sequences);
        }
    }

    /// Plays at most `count` more sequences; false once all are done.
    pub fn advance(&mut self, count: usize) -> bool {
        let count = count.min(self.wanted - self.played);
        for _ in 0..count {
            self.weather.fill(&mut self.k_frac);
            self.play_one();
        }
        self.played += count;
        self.played < self.wanted
    }

    fn play_one(&mut self) {
        let plan = &self.plan;
        let mut state = BankState::rested(plan.start_soc_frac);
        let mut first_low = None;
        let mut day = usize::MAX;
        let mut row = sun_row(plan, usize::MAX, 0.0);
        for (index, hour) in plan.hours.iter().enumerate() {
            if hour.day != day {
                day = hour.day;
                row = sun_row(plan, day, self.k_frac.get(day).copied().unwrap_or(0.0));
            }
            if let Some(soc_frac) = plan.restarts_at(index) {
                state = BankState::rested(soc_frac);
                first_low = None;
            }
            advance_hour(plan, &mut state, hour, row[hour.hour_of_day]);
            if is_low(&state, &hour.conditions) && first_low.is_none() {
                first_low = Some(index);
                if self.levels.is_empty() && plan.restart.is_none() {
                    break;
                }
            }
            let level = (state.soc_frac * LEVELS as f64 + 0.5) as usize;
            if let Some(count) = self.levels.get_mut(index * (LEVELS + 1) + level.min(LEVELS)) {
                *count += 1;
            }
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
            certain: self.certain,
        }
    }
}
