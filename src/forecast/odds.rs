//! How likely the battery lasts, from hundreds of weather sequences.
//!
//! Each sequence ([`super::weather`]) is played through the same battery simulation as the average
//! course, whose hours are read from maps that its steps have made ([`HourMaps`]). A sequence is one
//! sky, the air that goes with it, and one answer to what nobody knows: how far the climate of the place
//! and the figures of the user are off. Sequences are spread evenly, so that few do. Counted are the
//! night on which each passes the limit and, hour by hour, where the state of charge lies. The seed is
//! fixed: the same setup gives the same figures everywhere, and two setups meet the same weather. Work
//! goes in chunks so that a page stays alive.
//!
//! Checked against twenty measured years the chances come true within 5 to 10 points; the page
//! says no more than that.

mod block;
mod maps;

pub use maps::HourMaps;

use super::plan::TripPlan;
use super::weather::{DrawnWeather, WeatherError};
use block::{Block, Mapped, Now, Played};
use maps::SharedMaps;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

/// Sequences for the figures shown: a power of two, so that they lie evenly. Chances then are off by about
/// as much as with 2,000 plain ones, 0.9 points.
pub const SEQUENCES: usize = 512;
/// Chance at which a camper can count on a night: nine in ten.
pub const SURE_FRAC: f64 = 0.9;
/// Chance of an even bet.
pub const EVEN_FRAC: f64 = 0.5;
/// Seed of the weather.
pub const SEED: u64 = 0x006e_6967_6874_626b;

/// Sequences played side by side: their hours do not wait for each other.
const BLOCK: usize = 128;

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

/// How the hours of a sequence are played.
#[derive(Clone, Debug)]
enum Pace {
    /// Read from maps of the battery.
    Mapped(Mapped),
    /// Step by step; what the maps are held to.
    Stepped,
}

/// What one run has worked out and others may read: maps of its battery, weather of its stay.
#[derive(Clone, Debug)]
pub struct OddsCache {
    /// `None` where the run was played step by step.
    maps: Option<SharedMaps>,
    weather: Arc<Mutex<DrawnWeather>>,
}

impl OddsCache {
    fn maps_of(&self, plan: &TripPlan) -> Option<&SharedMaps> {
        let maps = self.maps.as_ref();
        maps.filter(|maps| open(maps).are_of(&plan.bank, plan.steps_per_hour))
    }

    fn has_weather_of(&self, plan: &TripPlan) -> bool {
        plan.sun.has_weather(&open(&self.weather))
    }
}

/// Odds in the making.
#[derive(Clone, Debug)]
pub struct OddsRun {
    plan: Arc<TripPlan>,
    weather: Arc<Mutex<DrawnWeather>>,
    pace: Pace,
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
    block: Block,
}

impl OddsRun {
    /// Ready to play `sequences` (at least one) weather sequences.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn new(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, true, None)
    }

    /// As [`Self::new`], counting nights only: quicker and smaller, for comparing setups.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn nights_only(plan: Arc<TripPlan>, sequences: usize) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, false, None)
    }

    /// As [`Self::new`], reading what another run has worked out as far as it is this one's too. The
    /// figures are the same, and sooner there.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn with_cache(
        plan: Arc<TripPlan>,
        sequences: usize,
        cache: &OddsCache,
    ) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, true, Some(cache))
    }

    /// As [`Self::nights_only`], with a cache as of [`Self::with_cache`].
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn nights_only_with_cache(
        plan: Arc<TripPlan>,
        sequences: usize,
        cache: &OddsCache,
    ) -> Result<Self, WeatherError> {
        Self::with_band(plan, sequences, false, Some(cache))
    }

    fn with_band(
        plan: Arc<TripPlan>,
        sequences: usize,
        band: bool,
        cache: Option<&OddsCache>,
    ) -> Result<Self, WeatherError> {
        let maps = cache.and_then(|cache| cache.maps_of(&plan)).cloned();
        let maps = maps.unwrap_or_else(|| {
            Arc::new(Mutex::new(HourMaps::new(&plan.bank, plan.steps_per_hour)))
        });
        let weather = cache.filter(|cache| cache.has_weather_of(&plan));
        let weather = match weather {
            Some(cache) => cache.weather.clone(),
            None => Arc::new(Mutex::new(DrawnWeather::new(plan.sun.sequences(SEED)?))),
        };
        Ok(Self {
            wanted: sequences.max(1),
            played: 0,
            first_low: vec![0; plan.hours.len()],
            lowest: vec![0; LEVELS + 1],
            lasted: vec![0; plan.mornings.len()],
            levels: if band { vec![0; plan.hours.len() * (LEVELS + 1)] } else { Vec::new() },
            pace: Pace::Mapped(Mapped::new(&plan, maps)),
            block: Block::default(),
            weather,
            plan,
        })
    }

    /// The same with every hour played step by step: many times slower, to hold the maps to.
    #[must_use]
    pub fn step_by_step(mut self) -> Self {
        self.pace = Pace::Stepped;
        self
    }

    /// The same with plain random sequences, not spread evenly: to hold the others to.
    #[must_use]
    pub fn plain(mut self) -> Self {
        let plain = open(&self.weather).plain();
        self.weather = Arc::new(Mutex::new(plain));
        self
    }

    /// What is worked out here, for others to read.
    #[must_use]
    pub fn cache(&self) -> OddsCache {
        let maps = match &self.pace {
            Pace::Mapped(mapped) => Some(mapped.maps.clone()),
            Pace::Stepped => None,
        };
        OddsCache { maps, weather: self.weather.clone() }
    }

    /// Wants at least so many sequences in all; those played before stay played, so that the
    /// chances are the same as of a run that wanted as many from the start.
    pub fn want(&mut self, sequences: usize) {
        self.wanted = self.wanted.max(sequences);
    }

    /// Plays at most `count` more sequences; false once all are done.
    pub fn advance(&mut self, count: usize) -> bool {
        let last = self.wanted.min(self.played.saturating_add(count));
        while self.played < last {
            let block = (last - self.played).min(BLOCK);
            let mut weather = open(&self.weather);
            self.block.draw(&self.plan, &mut weather, (self.played, block));
            drop(weather);
            self.play_block();
            self.played += block;
        }
        self.played < self.wanted
    }

    /// Plays the block hour by hour, all its sequences in each.
    fn play_block(&mut self) {
        let plan = self.plan.clone();
        let pace = self.pace.clone();
        let mut mapped = match &pace {
            Pace::Mapped(mapped) => Some((open(&mapped.maps), &*mapped.reach)),
            Pace::Stepped => None,
        };
        let stay = plan.stay_hours();
        // What comes after the first low hour is told by the band, and by a reading that forgets it.
        let to_the_end = !self.levels.is_empty() || plan.restart.is_some();
        for (index, hour) in plan.hours.iter().enumerate() {
            if let Some(soc_frac) = plan.restarts_at(index) {
                for played in &mut self.block.played {
                    played.restart(soc_frac);
                }
            }
            let now = Now::of(&plan, hour);
            let (all, skies) = self.block.on_day(hour.day);
            match &mut mapped {
                Some((maps, reach)) if now.is_mapped() => {
                    for played in &mut *all {
                        let Some(sky) = skies.get(played.index) else { continue };
                        let low_frac = now.read(maps, reach, played, sky);
                        played.note(index, index < stay, low_frac);
                    }
                }
                _ => {
                    for played in &mut *all {
                        let Some(sky) = skies.get(played.index) else { continue };
                        let low_frac = now.step(played, sky);
                        played.note(index, index < stay, low_frac);
                    }
                }
            }
            if let Some(counts) = self.levels.get_mut(index * (LEVELS + 1)..) {
                for played in &*all {
                    let level = (played.state.soc_frac * LEVELS as f64 + 0.5) as u32 as usize;
                    if let Some(count) = counts.get_mut(level.min(LEVELS)) {
                        *count += 1;
                    }
                }
            }
            if !to_the_end {
                let mut still = 0;
                while let Some(played) = self.block.played.get(still) {
                    if played.first_low.is_some() {
                        let played = self.block.played.swap_remove(still);
                        self.note(&played);
                    } else {
                        still += 1;
                    }
                }
                if self.block.played.is_empty() {
                    return;
                }
            }
        }
        for played in std::mem::take(&mut self.block.played) {
            self.note(&played);
        }
    }

    /// Counts a sequence that is over.
    fn note(&mut self, played: &Played) {
        if let Some(count) = played.first_low.and_then(|hour| self.first_low.get_mut(hour)) {
            *count += 1;
        }
        if let Some(count) = self.lowest.get_mut((played.lowest * LEVELS as f64) as usize) {
            *count += 1;
        }
        let nights = self.plan.nights_before(played.first_low);
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

/// Something shared, to read; whoever held it before left it whole, whatever came of it.
fn open<T>(shared: &Mutex<T>) -> MutexGuard<'_, T> {
    shared.lock().unwrap_or_else(PoisonError::into_inner)
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

#[cfg(test)]
mod tests {
    use super::*;

    fn with(low_by_hour_frac: Vec<f64>, lowest_frac: Vec<f64>) -> Odds {
        Odds {
            played: 20,
            wanted: 20,
            lasting_frac: vec![1.0, 0.9, 0.9, 0.45],
            band: Vec::new(),
            low_by_hour_frac,
            lowest_frac,
        }
    }

    /// Nine in ten is reached by nine of ten, whatever the last digit of the sum that made it.
    #[test]
    fn a_chance_is_reached_to_its_last_digit() {
        assert!(reaches(0.9, 0.9) && reaches(0.3 + 0.6, 0.9) && reaches(0.9 - 5e-10, 0.9));
        assert!(!reaches(0.9 - 2e-9, 0.9) && !reaches(0.898, 0.9));
        let odds = with(Vec::new(), Vec::new());
        assert_eq!(
            [1.0, 0.9, 0.5, 0.45, 0.1].map(|chance| odds.nights_at(chance)),
            [1, 3, 3, 4, 4]
        );
        let chances = [0, 1, 2, 4, 9].map(|nights| odds.chance_of(nights));
        assert_eq!(chances, [1.0, 1.0, 0.9, 0.45, 0.45]);
        assert_eq!(chance_of(&[], 3), 1.0);
        assert!(odds.is_complete() && !Odds { played: 19, ..odds }.is_complete());
    }

    /// One in ten is low by the end of the third hour, two in ten by the fourth: nine in ten last till the fourth,
    /// an even bet has no such hour.
    #[test]
    fn the_hour_that_a_chance_ends_in() {
        let odds = with(vec![0.0, 0.05, 0.1, 0.2, 0.4], Vec::new());
        let hours = [1.0, 0.95, 0.9, 0.8, 0.5].map(|chance| odds.first_low_at(chance));
        assert_eq!(hours, [Some(1), Some(2), Some(3), Some(4), None]);
    }

    /// A tenth of the sequences have their lowest at 30 %, two tenths at 40 %, the rest at 55 %.
    #[test]
    fn the_level_that_a_chance_keeps_above() {
        let share = |level: usize| match level {
            0..60 => 0.0,
            60..80 => 0.1,
            80..110 => 0.3,
            _ => 1.0,
        };
        let odds = with(Vec::new(), (0..=LEVELS).map(share).collect());
        for (chance, lowest) in
            [(1.0, 0.30), (0.95, 0.30), (0.9, 0.40), (0.8, 0.40), (0.7, 0.55), (0.1, 0.55)]
        {
            assert!((odds.lowest_at(chance) - lowest).abs() < 1e-9, "{chance}");
        }
    }

    #[test]
    fn shares_run_up_to_each() {
        assert_eq!(running_share(&[1, 0, 2, 1], 8.0), [0.125, 0.125, 0.375, 0.5]);
    }
}
