//! What of a place's climate shapes how its days differ and follow each other.
//!
//! # Equations
//!
//! ```text
//! m      = clamp((15 K - A) / 4 K, 0, 1) clamp((|latitude| - 25) / 10, 0, 1)
//! spread = (1 - n (0.1 + 1.2 clamp(0.6 - Kt, 0, 0.5))) (1 - 0.10 m)
//! n      = clamp(1 - |latitude| / 30, 0, 1)
//! next   = 0.36 - 0.11 m
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `A` | warmest less coldest month | K |
//! | `m` | how far the sea makes the weather, outside the tropics: 1 by the ocean, 0 inland | - |
//! | `n` | how near the equator is | - |
//! | `Kt` | mean clearness of the month | - |
//! | `spread` | days stray from the mean by so much of what the density of Hollands & Huget says | - |
//! | `next` | correlation from one day to the next | - |
//!
//! # Sources
//!
//! Spread, tropics: fitted to the spread of days in MERRA-2 (2011-2015, 3 degrees) at its own
//! clearness: there the density says 0.41 of the mean where days of the wet tropics stray by 0.30. It
//! brings the share of cells that are off by more than 0.05 within 10 degrees from 61 to 18 %, from 10
//! to 20 degrees from 25 to 16 %.
//!
//! Spread, by the sea: the same data beyond 30 degrees, at the same clearness, have days stray by 12 %
//! less where `A` is under 10 K and by 7 % less from 10 to 14 K than farther inland. Measured days
//! stray by 1.01 (De Bilt, `A` 14 K) and 0.95 (Dublin, 10 K) of what the density says; in Hamilton,
//! Australia, from satellite, 0.85 (11 K); typical years 0.75 to 0.81 of it at 12 to 13 K
//! (Amsterdam, Sand Point) and 0.93 to 1.3 at 18 to 31 K.
//!
//! Next day: 0.36 made forecasts come true over seven measured multi-year sites. Where `A` is under
//! 14 K it is less: Dublin 0.22, Hamilton 0.24, Sand Point 0.30, Amsterdam's typical year 0.22; in De
//! Bilt 0.34, in six typical years inland 0.15 to 0.49, 0.37 on average (files that pvlib-python
//! 0.16.1 carries, within months; 0.07 added for what the month's own mean takes away).

use super::persistence::Persistence;
use crate::units::Degrees;

/// Where `A` is larger the sea makes no difference [K].
const INLAND_FROM_K: f64 = 15.0;
/// `A` falls so far below that [K] until the ocean alone makes the weather.
const TO_OCEAN_K: f64 = 4.0;
/// By the ocean days stray less by this share.
const OCEAN_SPREAD_LESS_FRAC: f64 = 0.10;
/// By the ocean one day follows the other less by this.
const OCEAN_CORR_LESS_FRAC: f64 = 0.11;

/// Latitude and seasons of a place, as far as its days depend on them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayClimate {
    latitude: Degrees,
    air_range_k: f64,
}

impl DayClimate {
    /// Inland, in middle latitudes: the density's own spread.
    pub const INLAND: Self = Self { latitude: Degrees(50.0), air_range_k: 20.0 };

    /// Of a place whose months have the mean temperatures `months_c` (degrees Celsius).
    #[must_use]
    pub fn of(latitude: Degrees, months_c: &[f64; 12]) -> Self {
        let coldest = months_c.iter().copied().fold(f64::INFINITY, f64::min);
        let warmest = months_c.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        Self { latitude, air_range_k: warmest - coldest }
    }

    /// `m`; 0 for what is not a number.
    fn maritime_frac(self) -> f64 {
        let by_the_sea = (INLAND_FROM_K - self.air_range_k) / TO_OCEAN_K;
        let beyond_the_tropics = (self.latitude.0.abs() - 25.0) / 10.0;
        let frac = by_the_sea.clamp(0.0, 1.0) * beyond_the_tropics.clamp(0.0, 1.0);
        if frac.is_finite() { frac } else { 0.0 }
    }

    /// Share of the density's spread about the month's mean that the days have, 0..1.
    #[must_use]
    pub fn spread(self, kt_month_frac: f64) -> f64 {
        let near = (1.0 - self.latitude.0.abs() / 30.0).clamp(0.0, 1.0);
        let cloudy = (0.6 - kt_month_frac).clamp(0.0, 0.5);
        let tropics = 1.0 - near * (0.1 + 1.2 * cloudy);
        let tropics = if tropics.is_finite() { tropics } else { 1.0 };
        tropics * (1.0 - OCEAN_SPREAD_LESS_FRAC * self.maritime_frac())
    }

    /// How strongly one day follows the other.
    #[must_use]
    pub fn persistence(self) -> Persistence {
        let inland = Persistence::MEASURED;
        Persistence {
            next_day_corr_frac: inland.next_day_corr_frac
                - OCEAN_CORR_LESS_FRAC * self.maritime_frac(),
            ..inland
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(latitude: f64, range_k: f64) -> DayClimate {
        let mut months = [10.0; 12];
        months[6] += range_k;
        DayClimate::of(Degrees(latitude), &months)
    }

    /// Next-day correlation of measured years: KNMI (De Bilt), Met Eireann (Dublin), SILO (Hamilton).
    #[test]
    fn days_follow_each_other_as_measured() {
        for (latitude, range_k, measured) in
            [(52.1, 14.3, 0.34), (53.4, 10.0, 0.22), (-37.7, 11.0, 0.24)]
        {
            let found = at(latitude, range_k).persistence().next_day_corr_frac;
            assert!((found - measured).abs() < 0.04, "{latitude}: {found:.3} {measured}");
        }
        assert_eq!(at(45.0, 25.0).persistence(), Persistence::MEASURED);
    }

    #[test]
    fn the_tropics_have_no_seasons_and_are_no_ocean_coast() {
        assert_eq!(at(5.0, 2.0).persistence(), Persistence::MEASURED);
        assert!(at(5.0, 2.0).spread(0.45) < 0.8);
        assert!((at(50.0, 8.0).spread(0.45) - 0.9).abs() < 1e-12);
        assert_eq!(DayClimate::INLAND.spread(0.45), 1.0);
    }

    /// Half way to the tropics, and half way inland, the sea makes half the difference: 5 % of the spread, 0.055
    /// of what one day follows the other. On the equator clear skies stray by a tenth less, cloudy ones by more.
    #[test]
    fn between_sea_and_land_and_tropics_it_goes_straight() {
        for half in [at(30.0, 11.0), at(-30.0, 11.0), at(50.0, 13.0)] {
            assert!((half.spread(0.45) - 0.95).abs() < 1e-12);
            assert!((half.persistence().next_day_corr_frac - 0.305).abs() < 1e-12);
        }
        for (latitude, kt, spread) in [
            (0.0, 0.6, 0.9),
            (0.0, 0.4, 0.66),
            (0.0, 0.05, 0.3),
            (15.0, 0.4, 0.83),
            (-15.0, 0.7, 0.95),
        ] {
            assert!((at(latitude, 3.0).spread(kt) - spread).abs() < 1e-12, "{latitude} {kt}");
        }
    }

    #[test]
    fn what_is_no_number_counts_as_inland() {
        let broken = DayClimate::of(Degrees(f64::NAN), &[f64::NAN; 12]);
        assert_eq!(broken.spread(f64::NAN), 1.0);
        assert_eq!(broken.persistence(), Persistence::MEASURED);
    }
}
