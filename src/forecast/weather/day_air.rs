//! How far single days are warmer or colder than their time of year, drawn together with the sky.
//!
//! # Equations
//!
//! ```text
//! T_d = mean_d + sd t_d               t_d = r z_d + sqrt(1 - r^2) w_d
//! w_d = b w_(d-1) + sqrt(1 - b^2) e_d
//! sd  = 1.0 K + 0.14 A                in the coldest month
//! sd  = 1.0 K + min(0.14 A, 2.0 K)    in the warmest
//! r   = -0.30                         in the coldest month: clear winter days are cold, dull ones mild
//! r   = +0.35                         in the warmest: the other way round
//! ```
//!
//! with `A` the difference between the warmest and the coldest month. Between the two, `sd` and `r`
//! follow the mean temperature on a straight line; where the year has no seasons (`A` under 4 K)
//! `r` fades to its middle.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `z` | standard normal figure of the day's clearness ([`super::sequences`]) | - |
//! | `w` | what of the air does not follow the sky, `e` its noise, standard normal | - |
//! | `b` | persistence of `w`: 0.79, so that `t` follows the day before by 0.75 | - |
//!
//! # Source
//!
//! Read off the hourly typical years and single years that pvlib-python 0.16.1 carries for its own
//! tests (Amsterdam IWEC; 45 N 8 E; Greensboro; Sand Point; Burlington 2021; three of the interior
//! United States), anomalies against two yearly harmonics: next-day correlation 0.63 to 0.87,
//! spread in winter 1.8 to 5.9 K (the lines above 2.8 to 5.4), in summer 1.9 to 3.5 K (2.8 to 3.0),
//! correlation with clearness in winter -0.71 to +0.14, in summer +0.27 to +0.46.

/// Next-day correlation of what does not follow the sky, `b`.
pub(super) const NEXT_DAY_CORR_FRAC: f64 = 0.79;
/// Spread where there are no seasons [K].
const SPREAD_WITHOUT_SEASONS_K: f64 = 1.0;
/// Spread a kelvin between the warmest and the coldest month adds.
const SPREAD_PER_K: f64 = 0.14;
/// Most that seasons add in the warmest month [K].
const MOST_IN_SUMMER_K: f64 = 2.0;
/// Most that seasons add in the coldest month [K]: as in the inner continents.
const MOST_IN_WINTER_K: f64 = 6.0;
/// Correlation of the air with a clear sky in the coldest month.
const WITH_SKY_IN_WINTER: f64 = -0.30;
/// The same in the warmest.
const WITH_SKY_IN_SUMMER: f64 = 0.35;
/// With less between the warmest and the coldest month there are hardly any seasons [K].
const SEASONS_FROM_K: f64 = 4.0;

/// How the air of one day strays from the mean of its time of year.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct AirSpread {
    /// Standard deviation of the daily mean [K].
    pub sd_k: f64,
    /// Correlation with the clearness of the day, -1..1.
    pub with_sky: f64,
}

impl AirSpread {
    /// For a day whose usual mean is `mean_c`, at a place whose months have the means `months_c`
    /// (degrees Celsius).
    #[must_use]
    pub fn of(months_c: &[f64; 12], mean_c: f64) -> Self {
        let coldest = months_c.iter().copied().fold(f64::INFINITY, f64::min);
        let warmest = months_c.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let range = warmest - coldest;
        if !range.is_finite() || !mean_c.is_finite() {
            return Self::default();
        }
        let season = if range > 0.0 { ((mean_c - coldest) / range).clamp(0.0, 1.0) } else { 0.5 };
        let seasons = (range / SEASONS_FROM_K).min(1.0);
        let between = |winter: f64, summer: f64| winter + season * (summer - winter);
        let middle = 0.5 * (WITH_SKY_IN_WINTER + WITH_SKY_IN_SUMMER);
        let added = SPREAD_PER_K * range;
        Self {
            sd_k: SPREAD_WITHOUT_SEASONS_K
                + between(added.min(MOST_IN_WINTER_K), added.min(MOST_IN_SUMMER_K)),
            with_sky: middle + seasons * (between(WITH_SKY_IN_WINTER, WITH_SKY_IN_SUMMER) - middle),
        }
    }

    /// Degrees above the usual mean [K], from the standard normal figures of sky and air.
    #[inline]
    #[must_use]
    pub fn anomaly_k(&self, z: f64, w: f64) -> f64 {
        self.sd_k * (self.with_sky * z + (1.0 - self.with_sky * self.with_sky).sqrt() * w)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const AMSTERDAM: [f64; 12] = [4.2, 3.7, 5.3, 8.4, 12.7, 15.2, 16.9, 17.1, 14.4, 10.9, 6.5, 4.4];

    /// Typical year of Amsterdam (IWEC, WMO 062400) as carried by pvlib-python 0.16.1: spread 3.1 K
    /// in winter and 2.9 K in summer, correlation with clearness -0.30 and +0.39.
    #[test]
    fn amsterdam_strays_as_in_its_typical_year() {
        let winter = AirSpread::of(&AMSTERDAM, 4.0);
        let summer = AirSpread::of(&AMSTERDAM, 17.0);
        assert!((winter.sd_k - 3.1).abs() < 0.4 && (winter.with_sky + 0.30).abs() < 0.05);
        assert!((summer.sd_k - 2.9).abs() < 0.4 && (summer.with_sky - 0.39).abs() < 0.06);
    }

    /// Seasons of 20 K, by hand: 1 + 0.14 x 20 = 3.8 K in the coldest month, 1 + 2 K in the warmest, half way between
    /// them 3.4 K. 60 K are as in the inner continents, 7 K; with 2 K the tie to the sky is half of what it is.
    #[test]
    fn the_spread_goes_straight_from_winter_to_summer() {
        let year = |range: f64| {
            let mut months = [10.0; 12];
            months[6] = 10.0 + range;
            months
        };
        for (range, mean, sd_k, with_sky) in [
            (20.0, 10.0, 3.8, -0.30),
            (20.0, 30.0, 3.0, 0.35),
            (20.0, 20.0, 3.4, 0.025),
            (20.0, 5.0, 3.8, -0.30),
            (60.0, 10.0, 7.0, -0.30),
            (60.0, 70.0, 3.0, 0.35),
            (2.0, 10.0, 1.28, 0.025 - 0.1625),
            (2.0, 12.0, 1.28, 0.025 + 0.1625),
        ] {
            let told = AirSpread::of(&year(range), mean);
            assert!((told.sd_k - sd_k).abs() < 1e-12, "{range} {mean}: {told:?}");
            assert!((told.with_sky - with_sky).abs() < 1e-12, "{range} {mean}: {told:?}");
        }
        // 0.6 of the sky and 0.8 of its own.
        let half = AirSpread { sd_k: 2.0, with_sky: 0.6 };
        assert!((half.anomaly_k(1.0, 0.0) - 1.2).abs() < 1e-12);
        assert!((half.anomaly_k(0.5, -1.0) + 1.0).abs() < 1e-12);
        assert_eq!(AirSpread::of(&year(5.0), f64::NAN), AirSpread::default());
    }

    #[test]
    fn without_seasons_the_air_strays_little_and_hardly_follows_the_sky() {
        let tropics = AirSpread::of(&[27.0; 12], 27.0);
        assert_eq!(tropics.sd_k, 1.0);
        assert!(tropics.with_sky.abs() < 0.05);
        let broken = AirSpread::of(&[f64::NAN; 12], 3.0);
        assert_eq!(broken, AirSpread::default());
    }

    #[test]
    fn clear_days_are_cold_in_winter_and_warm_in_summer() {
        let of = |mean| AirSpread::of(&AMSTERDAM, mean).anomaly_k(2.0, 0.0);
        assert!(of(4.0) < -1.0 && of(17.0) > 1.0);
    }
}
