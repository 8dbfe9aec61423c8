//! From twelve monthly means to a mean for each day of the year.
//!
//! Straight lines between figures at the middle of the months, without steps on the first of the
//! month. The figures at the middle are not the means themselves: a summer month's mean would then
//! come out too low by what the lines cut off its top. They are shifted until the average over each
//! month's days is the month's mean again:
//!
//! ```text
//! x_m <- x_m + (mean_m - average over the days of month m of the lines through x)
//! ```
//!
//! which converges because the lines keep at least about half of any change in `x`.

use super::WeatherError;
use super::day_climate::DayClimate;
use super::day_distribution::{DayDistribution, MAX_MONTHLY_MEAN_FRAC, MIN_MONTHLY_MEAN_FRAC};

/// Days in the climate's year; 29 February and a day 366 are taken as their neighbours.
pub const DAYS_PER_YEAR: u16 = 365;

const MONTH_DAYS: [u16; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const SHIFT_ROUNDS: usize = 60;

/// Mean clearness index through the year at one place.
#[derive(Debug, Clone, PartialEq)]
pub struct MonthlyClearness {
    /// Mean clearness of each day of the year, 1 January first.
    days: Vec<f64>,
    was_clamped: bool,
    climate: DayClimate,
}

impl MonthlyClearness {
    /// From the mean clearness index of January to December (fractions).
    ///
    /// Means outside [`MIN_MONTHLY_MEAN_FRAC`]..=[`MAX_MONTHLY_MEAN_FRAC`] are brought to the nearer
    /// end ([`Self::was_clamped`] says so). For months without any sun pass a neighbouring month's:
    /// it is multiplied by nothing anyway.
    ///
    /// # Errors
    /// [`WeatherError::MonthlyMean`] if a mean is not a finite number.
    pub fn new(mean_frac: [f64; 12]) -> Result<Self, WeatherError> {
        if let Some(&clearness_frac) = mean_frac.iter().find(|mean| !mean.is_finite()) {
            return Err(WeatherError::MonthlyMean { clearness_frac });
        }
        let means = mean_frac.map(|mean| mean.clamp(MIN_MONTHLY_MEAN_FRAC, MAX_MONTHLY_MEAN_FRAC));
        let mut nodes = means;
        for _ in 0..SHIFT_ROUNDS {
            let averages = monthly_averages(&daily_line(&nodes));
            for ((node, mean), average) in nodes.iter_mut().zip(means).zip(averages) {
                *node =
                    (*node + mean - average).clamp(MIN_MONTHLY_MEAN_FRAC, MAX_MONTHLY_MEAN_FRAC);
            }
        }
        let was_clamped = means != mean_frac;
        Ok(Self { days: daily_line(&nodes), was_clamped, climate: DayClimate::INLAND })
    }

    /// The same with the days of a climate: near the equator and by the ocean they differ less than
    /// inland.
    #[must_use]
    pub fn of_climate(self, climate: DayClimate) -> Self {
        Self { climate, ..self }
    }

    /// Mean clearness index on a day of the year (1 = 1 January; days past the end start over, so a
    /// stay may run into the next year by counting on).
    #[must_use]
    pub fn on_day(&self, day_of_year: u32) -> f64 {
        let index = (day_of_year.saturating_sub(1) % u32::from(DAYS_PER_YEAR)) as usize;
        self.days.get(index).copied().unwrap_or(MIN_MONTHLY_MEAN_FRAC)
    }

    /// Day distributions for a stay of `days` days from `first_day_of_year`.
    ///
    /// # Errors
    /// None in practice: every mean was checked when `self` was made.
    pub fn distributions(
        &self,
        first_day_of_year: u32,
        days: usize,
    ) -> Result<Vec<DayDistribution>, WeatherError> {
        (0..days)
            .map(|day| {
                let day = (day % usize::from(DAYS_PER_YEAR)) as u32;
                let mean = self.on_day(first_day_of_year.max(1).saturating_add(day));
                DayDistribution::of_climate(self.climate, mean)
            })
            .collect()
    }

    /// Whether any monthly mean lay outside the range the day distribution holds for.
    #[must_use]
    pub fn was_clamped(&self) -> bool {
        self.was_clamped
    }
}

/// The figure of each day on the lines through the mid-month `nodes`.
fn daily_line(nodes: &[f64; 12]) -> Vec<f64> {
    let mut days = Vec::with_capacity(usize::from(DAYS_PER_YEAR));
    for month in 0..12 {
        let length = f64::from(MONTH_DAYS[month]);
        for day in 0..MONTH_DAYS[month] {
            let from_middle = f64::from(day) + 0.5 - 0.5 * length;
            let other = if from_middle < 0.0 { month + 11 } else { month + 1 } % 12;
            let gap = 0.5 * (length + f64::from(MONTH_DAYS[other]));
            let part = from_middle.abs() / gap;
            days.push(nodes[month] + part * (nodes[other] - nodes[month]));
        }
    }
    days
}

fn monthly_averages(days: &[f64]) -> [f64; 12] {
    let mut rest = days.iter();
    MONTH_DAYS.map(|length| {
        let sum: f64 = rest.by_ref().take(usize::from(length)).sum();
        sum / f64::from(length)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Monthly mean clearness of a typical year at Amsterdam, WMO 062400 (IWEC file).
    const AMSTERDAM: [f64; 12] =
        [0.297, 0.379, 0.420, 0.397, 0.455, 0.429, 0.445, 0.437, 0.403, 0.369, 0.329, 0.263];

    #[test]
    fn months_keep_their_means() {
        let year = MonthlyClearness::new(AMSTERDAM).expect("finite");
        for (average, mean) in monthly_averages(&year.days).iter().zip(AMSTERDAM) {
            assert!((average - mean).abs() < 1e-6, "{average} {mean}");
        }
        assert!(!year.was_clamped());
    }

    #[test]
    fn no_steps_anywhere_in_the_year() {
        let year = MonthlyClearness::new(AMSTERDAM).expect("finite");
        for day in 1..=365 {
            let step = (year.on_day(day + 1) - year.on_day(day)).abs();
            assert!(step < 0.007, "step {step} after day {day}");
        }
        assert_eq!(year.on_day(366), year.on_day(1));
        assert_eq!(year.on_day(0), year.on_day(1));
        assert!(year.on_day(u32::MAX).is_finite());
    }

    #[test]
    fn means_out_of_range_stay_in_range_and_are_reported() {
        let mut means = AMSTERDAM;
        means[11] = 0.0;
        means[6] = 1.0;
        let year = MonthlyClearness::new(means).expect("finite");
        assert!(year.was_clamped());
        for k in &year.days {
            assert!((MIN_MONTHLY_MEAN_FRAC..=MAX_MONTHLY_MEAN_FRAC).contains(k));
        }
        means[3] = f64::NAN;
        assert!(MonthlyClearness::new(means).is_err());
    }

    #[test]
    fn a_stay_runs_over_new_year() {
        let year = MonthlyClearness::new(AMSTERDAM).expect("finite");
        let stay = year.distributions(360, 14).expect("finite");
        assert_eq!(stay.len(), 14);
        assert_eq!(stay[13].mean(), year.on_day(8));
    }
}
