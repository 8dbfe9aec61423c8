//! Draws the weather sequences of a stay: clearness and air of each day.
//!
//! Sequence number `i` of a seed is always the same, whatever was drawn before it, and its first
//! days do not change when the stay is made longer. Sequences are spread evenly over what matters most
//! ([`super::lattice`]). So two setups are compared under the same
//! weather, and work split into chunks gives the figures of one run.

use rand::{Rng, SeedableRng};
use rand_distr::StandardNormal;
use rand_pcg::Pcg32;

use super::WeatherError;
use super::day_air::{AirSpread, NEXT_DAY_CORR_FRAC};
use super::day_distribution::{
    CLEAR_DAY_QUANTILE, DULL_DAY_QUANTILE, DayDistribution, MIXED_DAY_QUANTILE,
};
use super::lattice::{DAILY, Lattice, Noise, WINDOW};
use super::persistence::{Chains, Persistence};
use crate::model::trip::Weather;
use crate::units::WattHoursPerSquareMetre;

/// Weather given for a day counts, for its neighbours, as no rarer than the clearest or dullest day
/// in a hundred.
const GIVEN_Z_LIMIT: f64 = 2.33;

/// One day of the stay.
#[derive(Debug, Clone, PartialEq)]
pub struct ForecastDay {
    /// How clear days are at this place and time of year.
    pub distribution: DayDistribution,
    /// Daily clearness index (0..1) where the weather of this day is given; `None` draws it.
    pub given_clearness_frac: Option<f64>,
    /// How the air strays from its mean; by default it does not.
    pub air: AirSpread,
}

impl ForecastDay {
    /// A day whose weather nobody knows.
    #[must_use]
    pub fn unknown(distribution: DayDistribution) -> Self {
        Self { distribution, given_clearness_frac: None, air: AirSpread::default() }
    }

    /// A day with the weather the camper set for it.
    ///
    /// Typical is the mean; clear, mixed and dull are the quantiles 0.9, 0.5 and 0.1 of this time
    /// of year. A known irradiation is divided by `extraterrestrial`, the day's irradiation on the
    /// horizontal outside the atmosphere; where that is zero (polar night) the day counts as
    /// unknown. An irradiation beyond `extraterrestrial` is refused by [`WeatherSequences::new`].
    #[must_use]
    pub fn for_weather(
        distribution: DayDistribution,
        weather: Weather,
        extraterrestrial: WattHoursPerSquareMetre,
    ) -> Self {
        let given_clearness_frac = match weather {
            Weather::Unknown => None,
            Weather::Typical => Some(distribution.mean()),
            Weather::Clear => Some(distribution.quantile(CLEAR_DAY_QUANTILE)),
            Weather::Mixed => Some(distribution.quantile(MIXED_DAY_QUANTILE)),
            Weather::Dull => Some(distribution.quantile(DULL_DAY_QUANTILE)),
            Weather::Sun { per_day } => {
                (extraterrestrial.0 > 0.0).then(|| per_day.0 / extraterrestrial.0)
            }
        };
        Self { distribution, given_clearness_frac, air: AirSpread::default() }
    }
}

impl Chains {
    fn correlation(self, days_apart: usize) -> f64 {
        let days = days_apart as f64;
        (1.0 - self.share) * libm::pow(self.fast, days) + self.share * libm::pow(self.slow, days)
    }

    /// `z` of days from their noise, and `w`, what of the air does not follow the sky. `before`: fast and
    /// slow part and air of the day before, `None` at the start.
    fn follow(
        self,
        noise: &Noise,
        before: Option<[f64; DAILY]>,
        days: (&mut [f64], &mut [f64]),
    ) -> [f64; DAILY] {
        let weight = [(1.0 - self.share).sqrt(), self.share.sqrt()];
        let kept = [self.fast, self.slow, NEXT_DAY_CORR_FRAC];
        let fresh = kept.map(|kept| (1.0 - kept * kept).sqrt());
        let mut at = before;
        for ((z, w), e) in days.0.iter_mut().zip(days.1).zip(noise.chunks_exact(DAILY)) {
            let now = std::array::from_fn(|which| match at {
                Some(before) => kept[which] * before[which] + fresh[which] * e[which],
                None => e[which],
            });
            let [fast, slow, air]: [f64; DAILY] = now;
            (*z, *w) = (weight[0] * fast + weight[1] * slow, air);
            at = Some(now);
        }
        at.unwrap_or_default()
    }
}

/// One possible run of the stay: its weather, and what else nobody knows beforehand.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sequence {
    /// Daily clearness index, 0..1, a figure a day.
    pub k_frac: Vec<f64>,
    /// Degrees of each day above the usual mean of its time of year [K].
    pub air_anomaly_k: Vec<f64>,
    /// How far the user's own figures are off, all together: a standard normal figure.
    pub use_normal: f64,
}

/// Draws weather sequences for a stay, one after the other, without allocating.
///
/// Same days and seed, same sequences, on every platform (up to the last bits of `f64`: the normal
/// figures in the far tails use the platform's logarithm).
#[derive(Debug, Clone)]
pub struct WeatherSequences {
    days: Vec<ForecastDay>,
    persistence: Persistence,
    chains: Chains,
    seed: u64,
    next_sequence: u64,
    /// Days with given weather, rising, and their `z`.
    given: Vec<(usize, f64)>,
    /// For each day, the kriging weights of the given days (`days.len() * given.len()`).
    weights: Vec<f64>,
    z: Vec<f64>,
    w: Vec<f64>,
    misses: Vec<f64>,
    /// `None` where every figure is plain.
    lattice: Option<Lattice>,
    climate_error_frac: f64,
}

impl WeatherSequences {
    /// Sequences for the days of a stay, with [`Persistence::MEASURED`].
    ///
    /// # Errors
    /// [`WeatherError::GivenDay`] if a given clearness is not a number from 0 to 1.
    pub fn new(days: Vec<ForecastDay>, seed: u64) -> Result<Self, WeatherError> {
        Self::with_persistence(days, seed, Persistence::MEASURED)
    }

    /// As [`Self::new`], with another persistence.
    ///
    /// # Errors
    /// Also [`WeatherError::Persistence`] if no stationary chain has those figures.
    pub fn with_persistence(
        days: Vec<ForecastDay>,
        seed: u64,
        persistence: Persistence,
    ) -> Result<Self, WeatherError> {
        let chains = persistence.chains()?;
        let mut given = Vec::new();
        for (day_index, day) in days.iter().enumerate() {
            let Some(clearness_frac) = day.given_clearness_frac else {
                continue;
            };
            if !(0.0..=1.0).contains(&clearness_frac) {
                return Err(WeatherError::GivenDay { day_index, clearness_frac });
            }
            let z = day.distribution.normal_at_k(clearness_frac);
            given.push((day_index, z.clamp(-GIVEN_Z_LIMIT, GIVEN_Z_LIMIT)));
        }
        Ok(Self {
            weights: kriging_weights(days.len(), &given, chains),
            z: vec![0.0; days.len()],
            w: vec![0.0; days.len()],
            climate_error_frac: 0.0,
            misses: vec![0.0; given.len()],
            lattice: Some(Lattice::new(chains, |j| scramble(seed, !j))),
            days,
            persistence,
            chains,
            seed,
            next_sequence: 0,
            given,
        })
    }

    /// Number of days in each sequence.
    #[must_use]
    pub fn days(&self) -> usize {
        self.days.len()
    }

    /// Whether these are, with their seed, the sequences of these days, persistence and error of the
    /// climate.
    #[must_use]
    pub fn are_of(&self, days: &[ForecastDay], by: Persistence, climate_error_frac: f64) -> bool {
        self.persistence == by
            && self.climate_error_frac == climate_error_frac.max(0.0)
            && self.days == days
    }

    /// Goes on with the sequence of this number, 0 the first.
    pub fn go_to(&mut self, number: u64) {
        self.next_sequence = number;
    }

    /// The same with a climate that may be off: each sequence scales the clearness of all its days
    /// by `1 + climate_error_frac e`, `e` standard normal, so that a place that is known badly gives
    /// wider odds. Days whose weather is given stay as given. Not below 0; not a number counts as 0.
    #[must_use]
    pub fn with_climate_error(mut self, climate_error_frac: f64) -> Self {
        self.climate_error_frac = climate_error_frac.max(0.0);
        self
    }

    /// The same of plain random figures alone: what the evenly spread ones are held to.
    #[must_use]
    pub fn plain(mut self) -> Self {
        self.lattice = None;
        self
    }

    /// Writes the next sequence into `out`, a figure a day.
    pub fn fill(&mut self, out: &mut Sequence) {
        let number = self.next_sequence;
        let mut rng = Pcg32::seed_from_u64(scramble(self.seed, number));
        self.next_sequence = number.wrapping_add(1);
        let [site, use_normal] = match &self.lattice {
            Some(lattice) => lattice.of_the_stay(number),
            None => [rng.sample(StandardNormal), rng.sample(StandardNormal)],
        };
        out.use_normal = use_normal;
        out.k_frac.resize(self.days.len(), 0.0);
        out.air_anomaly_k.resize(self.days.len(), 0.0);
        let scale = (1.0 + self.climate_error_frac * site).max(0.0);
        let mut before = None;
        let windows = self.z.chunks_mut(WINDOW).zip(self.w.chunks_mut(WINDOW));
        for (window, days) in windows.enumerate() {
            // The whole window, however short the stay: its first days are the same in any.
            let mut noise: Noise = std::array::from_fn(|_| rng.sample(StandardNormal));
            if let Some(lattice) = &self.lattice {
                lattice.turn(number, window, &mut noise);
            }
            before = Some(self.chains.follow(&noise, before, days));
        }
        for (miss, &(day, wanted)) in self.misses.iter_mut().zip(&self.given) {
            *miss = wanted - self.z.get(day).copied().unwrap_or(wanted);
        }
        let count = self.misses.len();
        let drawn = self.z.iter().zip(&self.w);
        let places = out.k_frac.iter_mut().zip(&mut out.air_anomaly_k);
        for (index, (((k, air), day), (z, w))) in places.zip(&self.days).zip(drawn).enumerate() {
            let row = self.weights.get(index * count..(index + 1) * count);
            let pull: f64 = row
                .unwrap_or(&[])
                .iter()
                .zip(&self.misses)
                .map(|(weight, miss)| weight * miss)
                .sum();
            let z = z + pull;
            *k = day.given_clearness_frac.unwrap_or_else(|| {
                let k = day.distribution.k_at_normal(z);
                (k * scale).min(day.distribution.clearest_frac().max(k))
            });
            *air = day.air.anomaly_k(z, *w);
        }
    }
}

/// A seed of its own for each sequence: the finaliser of SplitMix64 (Steele, Lea & Flood 2014;
/// constants from memory) over seed and number.
fn scramble(seed: u64, sequence: u64) -> u64 {
    let mut x = seed.wrapping_add(sequence.wrapping_mul(0x9E37_79B9_7F4A_7C15));
    x = (x ^ (x >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    x = (x ^ (x >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    x ^ (x >> 31)
}

/// Simple-kriging weights of the given days for each day of the stay: the rows `w` that solve
/// `C w = c`, `C` the correlations among the given days, `c` those with the day, by Cholesky
/// factors of `C`.
fn kriging_weights(days: usize, given: &[(usize, f64)], chains: Chains) -> Vec<f64> {
    let n = given.len();
    let correlations: Vec<f64> = (0..days).map(|apart| chains.correlation(apart)).collect();
    let between = |a: usize, b: usize| correlations[a.abs_diff(b)];
    let mut factor = vec![0.0; n * n];
    for row in 0..n {
        for column in 0..=row {
            let known: f64 =
                (0..column).map(|i| factor[row * n + i] * factor[column * n + i]).sum();
            let rest = between(given[row].0, given[column].0) - known;
            factor[row * n + column] = if row == column {
                // The chain always keeps some noise of its own, so this is far from zero.
                rest.max(1e-12).sqrt()
            } else {
                rest / factor[column * n + column]
            };
        }
    }
    let mut weights = vec![0.0; days * n];
    for (day, w) in weights.chunks_exact_mut(n.max(1)).enumerate() {
        for row in 0..n {
            let known: f64 = (0..row).map(|i| factor[row * n + i] * w[i]).sum();
            w[row] = (between(day, given[row].0) - known) / factor[row * n + row];
        }
        for row in (0..n).rev() {
            let known: f64 = (row + 1..n).map(|i| factor[i * n + row] * w[i]).sum();
            w[row] = (w[row] - known) / factor[row * n + row];
        }
    }
    weights
}

#[cfg(test)]
mod tests;
