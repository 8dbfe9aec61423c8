//! How clear the single days of one time of year are.
//!
//! With `y = (Kmax' - k') / Kmax'` the Hollands & Huget density becomes `y exp(-t y)` on 0..1, where
//! `t = lambda Kmax'`. Its integrals have closed forms,
//!
//! ```text
//! int_0^Y y exp(-t y) dy   = Y^2 g(tY)    g(x) = (1 - (1 + x) exp(-x)) / x^2
//! int_0^1 y^2 exp(-t y) dy = h(t)         h(x) = (2 - (2 + 2x + x^2) exp(-x)) / x^3
//! mean of y                = h(t) / g(t)  falls steadily from 1 (t -> -inf) to 0 (t -> inf)
//! ```
//!
//! so `t` is found by bisection and cannot fail; near `x = 0` both are summed as power series.
//! Near the equator and by the ocean days differ less than the density says: see [`DayClimate`].

use super::WeatherError;
use super::day_climate::DayClimate;

/// Lowest daily clearness index of the density (Hollands & Huget as used here; a day as dark as the
/// darkest ones measured).
const DARKEST_DAY_FRAC: f64 = 0.04;
/// Lowest monthly mean clearness the density is used for. Below, the formula for the clearest day
/// runs away (it falls under the monthly mean at about 0.06).
pub const MIN_MONTHLY_MEAN_FRAC: f64 = 0.10;
/// Highest monthly mean clearness the density is used for: above the clearest deserts.
pub const MAX_MONTHLY_MEAN_FRAC: f64 = 0.80;

/// A "clear" day is one that only one day in ten beats. Our choice.
pub const CLEAR_DAY_QUANTILE: f64 = 0.9;
/// A "mixed" day is the middle one. Our choice.
pub const MIXED_DAY_QUANTILE: f64 = 0.5;
/// A "dull" day is one that nine days in ten beat. Our choice.
pub const DULL_DAY_QUANTILE: f64 = 0.1;

/// The table reaches this many standard deviations to either side (three days in 100,000 outside).
const Z_LIMIT: f64 = 4.0;
const STEPS_PER_Z: f64 = 20.0;
const TABLE_STEPS: usize = 160;
const BISECTION_STEPS: usize = 64;

/// Distribution of the daily clearness index on one day of the year.
#[derive(Debug, Clone, PartialEq)]
pub struct DayDistribution {
    mean_frac: f64,
    clearest_frac: f64,
    shape: f64,
    /// Days stray from the mean by so much of what the density says.
    spread: f64,
    was_clamped: bool,
    /// Clearness at `z = -Z_LIMIT + i / STEPS_PER_Z`, rising.
    table: [f64; TABLE_STEPS + 1],
}

impl DayDistribution {
    /// The distribution of days whose mean clearness index is `kt_month_frac`, with the spread of the
    /// climate.
    ///
    /// A mean outside [`MIN_MONTHLY_MEAN_FRAC`]..=[`MAX_MONTHLY_MEAN_FRAC`] is brought to the
    /// nearer end, and [`Self::was_clamped`] says so.
    ///
    /// # Errors
    /// [`WeatherError::MonthlyMean`] if the mean is not a finite number.
    pub fn of_climate(climate: DayClimate, kt_month_frac: f64) -> Result<Self, WeatherError> {
        Self::with_spread(kt_month_frac, climate.spread(kt_month_frac))
    }

    /// Inland and far from the equator, where the spread is the density's own.
    #[cfg(test)]
    pub(super) fn from_monthly_mean(kt_month_frac: f64) -> Result<Self, WeatherError> {
        Self::with_spread(kt_month_frac, 1.0)
    }

    fn with_spread(kt_month_frac: f64, spread: f64) -> Result<Self, WeatherError> {
        if !kt_month_frac.is_finite() {
            return Err(WeatherError::MonthlyMean { clearness_frac: kt_month_frac });
        }
        let mean_frac = kt_month_frac.clamp(MIN_MONTHLY_MEAN_FRAC, MAX_MONTHLY_MEAN_FRAC);
        let clearest_frac = clearest_day_frac(mean_frac);
        let span = clearest_frac - DARKEST_DAY_FRAC;
        let mut day = Self {
            mean_frac,
            clearest_frac,
            shape: shape_for_mean((clearest_frac - mean_frac) / span),
            spread,
            was_clamped: mean_frac != kt_month_frac,
            table: [0.0; TABLE_STEPS + 1],
        };
        let mut table = day.table;
        let mut before = [1.0_f64; 2];
        for (i, k) in table.iter_mut().enumerate() {
            let z = i as f64 / STEPS_PER_Z - Z_LIMIT;
            let above = 0.5 * libm::erfc(z / std::f64::consts::SQRT_2);
            // From one to the next it goes on much as before.
            let guess = (2.0 * before[1] - before[0]).clamp(0.0, 1.0);
            let shortfall = shortfall_with_share_below(day.shape, above, guess);
            before = [before[1], shortfall];
            *k = day.clearness_at_shortfall(shortfall);
        }
        day.table = table;
        Ok(day)
    }

    /// Clearness index at standard normal figure `z`: `F^-1(Phi(z))`.
    ///
    /// Read from a table with linear interpolation, within 0.0005 of the exact figure; beyond four
    /// standard deviations, the end of the table. Never NaN: without a figure, the dullest day.
    #[inline]
    #[must_use]
    pub fn k_at_normal(&self, z: f64) -> f64 {
        let x = from_zero_to((z + Z_LIMIT) * STEPS_PER_Z, TABLE_STEPS as f64);
        let i = (x as usize).min(TABLE_STEPS - 1);
        let part = x - i as f64;
        self.table[i] + part * (self.table[i + 1] - self.table[i])
    }

    /// Standard normal figure at which the table reads `clearness_frac`; the ends of the table for
    /// clearness outside it. The inverse of [`Self::k_at_normal`].
    #[must_use]
    pub fn normal_at_k(&self, clearness_frac: f64) -> f64 {
        let above = self.table.partition_point(|&k| k <= clearness_frac);
        let i = above.saturating_sub(1).min(TABLE_STEPS - 1);
        let rise = self.table[i + 1] - self.table[i];
        let part = if rise > 0.0 {
            from_zero_to((clearness_frac - self.table[i]) / rise, 1.0)
        } else {
            0.5
        };
        (i as f64 + part) / STEPS_PER_Z - Z_LIMIT
    }

    /// Clearness index that a share `p` (0..1) of the days stay below. Exact, not from the table.
    #[must_use]
    pub fn quantile(&self, p: f64) -> f64 {
        self.clearness_with_share_above(1.0 - from_zero_to(p, 1.0))
    }

    /// Mean clearness index: the monthly mean, after clamping.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.mean_frac
    }

    /// Clearness index of the clearest possible day, `Kmax`.
    #[must_use]
    pub fn clearest_frac(&self) -> f64 {
        self.squeezed(self.clearest_frac)
    }

    /// `lambda` of the density.
    #[cfg(test)]
    fn lambda(&self) -> f64 {
        self.shape / (self.clearest_frac - DARKEST_DAY_FRAC)
    }

    /// Whether the mean asked for lay outside the range the density holds for.
    #[must_use]
    pub fn was_clamped(&self) -> bool {
        self.was_clamped
    }

    /// The clearness that a share `above` of the days exceed.
    fn clearness_with_share_above(&self, above: f64) -> f64 {
        self.clearness_at_shortfall(shortfall_with_share_below(self.shape, above, above.sqrt()))
    }

    /// The clearness at `y`.
    fn clearness_at_shortfall(&self, shortfall: f64) -> f64 {
        let span = self.clearest_frac - DARKEST_DAY_FRAC;
        self.squeezed(self.clearest_frac - span * shortfall)
    }

    fn squeezed(&self, clearness_frac: f64) -> f64 {
        self.mean_frac + self.spread * (clearness_frac - self.mean_frac)
    }
}

/// `x` kept within 0..=`most`; 0 for NaN.
#[inline]
fn from_zero_to(x: f64, most: f64) -> f64 {
    if x > 0.0 { x.min(most) } else { 0.0 }
}

/// Kmax of Hollands & Huget, as a function of the monthly mean.
fn clearest_day_frac(mean_frac: f64) -> f64 {
    let squared = (mean_frac - 0.75) * (mean_frac - 0.75);
    let fourth = squared * squared;
    0.6313 + 0.267 * mean_frac - 11.9 * fourth * fourth
}

/// `t` for which the mean of `y` is `mean_shortfall`.
fn shape_for_mean(mean_shortfall: f64) -> f64 {
    let (mut low, mut high) = (-200.0, 200.0);
    for _ in 0..BISECTION_STEPS {
        let middle = 0.5 * (low + high);
        if second_integral(middle) / first_integral(middle) > mean_shortfall {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

/// The `y` that a share `below` of the density `y exp(-t y)` stays under: Newton's method from `guess`
/// (0..1), kept inside a bracket that bisection shrinks.
fn shortfall_with_share_below(shape: f64, below: f64, guess: f64) -> f64 {
    let whole = first_integral(shape);
    let (mut low, mut high) = (0.0, 1.0);
    let mut y = guess;
    for _ in 0..BISECTION_STEPS {
        let error = y * y * first_integral(shape * y) - below * whole;
        if error > 0.0 {
            high = y;
        } else {
            low = y;
        }
        let next = y - error / (y * libm::exp(-shape * y));
        let next = if next > low && next < high { next } else { 0.5 * (low + high) };
        let done = (next - y).abs() < 1e-13;
        y = next;
        if done {
            break;
        }
    }
    y
}

/// `g(x) = (1 - (1 + x) exp(-x)) / x^2`.
fn first_integral(x: f64) -> f64 {
    if x.abs() < 1.0 {
        return power_series(x, 2.0);
    }
    (1.0 - (1.0 + x) * libm::exp(-x)) / (x * x)
}

/// `h(x) = (2 - (2 + 2x + x^2) exp(-x)) / x^3`.
fn second_integral(x: f64) -> f64 {
    if x.abs() < 1.0 {
        return power_series(x, 3.0);
    }
    (2.0 - (2.0 + 2.0 * x + x * x) * libm::exp(-x)) / (x * x * x)
}

/// `sum over n of (-x)^n / (n! (n + offset))`.
fn power_series(x: f64, offset: f64) -> f64 {
    let (mut term, mut sum) = (1.0, 0.0);
    for n in 0..20 {
        let n = f64::from(n);
        sum += term / (n + offset);
        term *= -x / (n + 1.0);
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Degrees;

    /// Standard deviation over mean of days, from equally likely ones.
    fn sd_over_mean(latitude: f64, range_k: f64, kt: f64) -> f64 {
        let mut months = [15.0; 12];
        months[6] += range_k;
        let climate = DayClimate::of(Degrees(latitude), &months);
        let day = DayDistribution::of_climate(climate, kt).expect("finite");
        let days: Vec<f64> =
            (0..2000).map(|i| day.quantile((f64::from(i) + 0.5) / 2000.0)).collect();
        let mean = days.iter().sum::<f64>() / 2000.0;
        assert!((mean - kt).abs() < 1e-3, "{mean} {kt}");
        (days.iter().map(|k| (k - mean).powi(2)).sum::<f64>() / 2000.0).sqrt() / mean
    }

    /// Mean of sd/mean over the cells of MERRA-2 (NASA GMAO), 2011-2015, 3 degrees, by latitude and
    /// clearness; and of measured days (De Bilt: KNMI; Dublin: Met Eireann; Hamilton in Australia:
    /// SILO) in whole years. Range: warmest less coldest month [K].
    #[test]
    fn days_stray_as_they_do_in_their_climate() {
        for (latitude, range_k, kt, measured) in [
            (5.0, 3.0, 0.38, 0.31),
            (5.0, 3.0, 0.45, 0.30),
            (5.0, 3.0, 0.55, 0.24),
            (5.0, 3.0, 0.65, 0.14),
            (15.0, 6.0, 0.38, 0.33),
            (15.0, 6.0, 0.45, 0.32),
            (15.0, 6.0, 0.55, 0.26),
            (15.0, 6.0, 0.65, 0.14),
            (25.0, 12.0, 0.45, 0.33),
            (25.0, 12.0, 0.55, 0.27),
            (25.0, 12.0, 0.65, 0.17),
            (52.1, 14.3, 0.43, 0.39),
            (53.4, 10.0, 0.43, 0.38),
            (-37.7, 11.0, 0.51, 0.27),
        ] {
            let found = sd_over_mean(latitude, range_k, kt);
            println!("{latitude} {kt}: {found:.3} {measured}");
            assert!((found - measured).abs() < 0.05, "{latitude} {kt}: {found:.3}");
        }
    }

    /// Density written down again, summed by the midpoint rule: (area-weighted mean, share below).
    fn summed(day: &DayDistribution, below_frac: f64) -> (f64, f64) {
        let steps = 200_000;
        let span = day.clearest_frac() - DARKEST_DAY_FRAC;
        let (mut area, mut moment, mut under) = (0.0, 0.0, 0.0);
        for i in 0..steps {
            let above = (f64::from(i) + 0.5) / f64::from(steps) * span;
            let density = (span - above) * (day.lambda() * (above - span)).exp();
            area += density;
            moment += density * (above + DARKEST_DAY_FRAC);
            if above + DARKEST_DAY_FRAC < below_frac {
                under += density;
            }
        }
        (moment / area, under / area)
    }

    #[test]
    fn mean_and_quantiles_agree_with_the_summed_density() {
        for percent in (10..=80).step_by(2) {
            let kt = f64::from(percent) / 100.0;
            let day = DayDistribution::from_monthly_mean(kt).expect("finite");
            assert!(!day.was_clamped());
            for p in [0.01, 0.1, 0.5, 0.9, 0.99] {
                let (mean, under) = summed(&day, day.quantile(p));
                assert!((mean - kt).abs() < 1e-6, "mean {mean} for {kt}");
                assert!((under - p).abs() < 1e-4, "{under} under p{p} at {kt}");
            }
        }
    }

    #[test]
    fn table_follows_the_exact_quantiles_and_keeps_the_mean() {
        for percent in (10..=80).step_by(5) {
            let kt = f64::from(percent) / 100.0;
            let day = DayDistribution::from_monthly_mean(kt).expect("finite");
            let (mut weight, mut moment) = (0.0, 0.0);
            for i in -4000..=4000_i32 {
                let z = f64::from(i) / 1000.0;
                let k = day.k_at_normal(z);
                let share = 0.5 * libm::erfc(-z / std::f64::consts::SQRT_2);
                let exact = day.quantile(share);
                assert!((k - exact).abs() < 5e-4, "{k} {exact} at z {z}, {kt}");
                assert!((day.normal_at_k(k) - z).abs() < 1e-6, "z {z} at {kt}");
                let density = (-0.5 * z * z).exp();
                weight += density;
                moment += density * k;
            }
            assert!((moment / weight - kt).abs() < 2e-4, "mean at {kt}");
        }
    }

    #[test]
    fn lambda_zero_is_the_triangle() {
        // With lambda = 0 the density is a falling straight line; its mean lies a third of the way
        // up and its median at 1 - sqrt(1/2) (geometry, no source needed).
        let kt = (0..4000)
            .map(|i| 0.15 + f64::from(i) * 1e-4)
            .min_by(|a, b| {
                let off = |kt: f64| {
                    (kt - DARKEST_DAY_FRAC - (clearest_day_frac(kt) - DARKEST_DAY_FRAC) / 3.0).abs()
                };
                off(*a).total_cmp(&off(*b))
            })
            .expect("not empty");
        let day = DayDistribution::from_monthly_mean(kt).expect("finite");
        assert!(day.lambda().abs() < 0.01, "lambda {}", day.lambda());
        let span = day.clearest_frac() - DARKEST_DAY_FRAC;
        let median = DARKEST_DAY_FRAC + span * (1.0 - 0.5_f64.sqrt());
        assert!((day.quantile(0.5) - median).abs() < 1e-3);
    }

    #[test]
    fn means_out_of_range_are_clamped_and_said_so() {
        for (asked, used) in
            [(-3.0, 0.10), (0.0, 0.10), (0.0999, 0.10), (0.81, 0.80), (1e300, 0.80)]
        {
            let day = DayDistribution::from_monthly_mean(asked).expect("finite");
            assert!(day.was_clamped());
            assert_eq!(day.mean(), used);
        }
        for asked in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert!(DayDistribution::from_monthly_mean(asked).is_err());
        }
    }

    #[test]
    fn any_figure_gives_a_clearness_within_the_range() {
        for kt in [0.1, 0.26, 0.45, 0.8] {
            let day = DayDistribution::from_monthly_mean(kt).expect("finite");
            let range = DARKEST_DAY_FRAC..=day.clearest_frac();
            for figure in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -9.0, -4.0, 0.0, 4.0, 9.0] {
                assert!(range.contains(&day.k_at_normal(figure)), "z {figure}");
                assert!(range.contains(&day.quantile(figure)), "p {figure}");
                assert!(day.normal_at_k(figure).abs() <= Z_LIMIT, "k {figure}");
            }
            assert!(day.table.windows(2).all(|pair| pair[0] < pair[1]));
        }
    }
}
