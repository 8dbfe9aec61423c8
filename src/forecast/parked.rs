//! The air a parked battery stands in, by date, and the coldest that must be expected.

use super::plan::{DayAir, MonthlyClimate};
use super::weather::AirSpread;
use crate::model::BatteryPlace;
use crate::physics::battery::storage::ParkedDay;
use crate::physics::battery::temperature::unheated_temperature;
use crate::units::Celsius;
use time::Date;

/// Frost to be expected lies so many standard deviations below the usual day: one day in forty is colder
/// (our choice).
const COLD_DAY_SDS: f64 = 2.0;

/// Temperature of a battery at `place` of a vehicle that is not heated, on a date: the usual mean, and the
/// coldest hour of a day as cold as must be expected.
#[must_use]
pub fn parked_day(place: BatteryPlace, climate: &MonthlyClimate, date: Date) -> ParkedDay {
    let usual = DayAir::usual(climate, date);
    let sd_k = AirSpread::of(&climate.air.map(|month| month.0), usual.mean.0).sd_k;
    let cold = Celsius(usual.mean.0 - COLD_DAY_SDS * sd_k);
    let at = |mean, half_range_k, hour| unheated_temperature(place, mean, half_range_k, hour);
    ParkedDay {
        mean: at(usual.mean, 0.0, 0.0),
        // A battery is coldest at 6:00, twelve hours before it is warmest.
        coldest: at(cold, usual.half_range_k, 6.0),
    }
}

/// Night to be expected once a year or less: so many standard deviations below the usual day (our choice).
const COLDEST_NIGHT_SDS: f64 = 3.0;

/// Coldest air to be expected in a year: a night that is as cold as hardly any, in the coldest month.
#[must_use]
pub fn coldest_air(climate: &MonthlyClimate) -> Celsius {
    let months = climate.air.map(|month| month.0);
    let nights = climate.air.iter().zip(climate.half_range_k).map(|(mean, half_range_k)| {
        mean.0 - COLDEST_NIGHT_SDS * AirSpread::of(&months, mean.0).sd_k - half_range_k
    });
    Celsius(nights.fold(f64::INFINITY, f64::min))
}

#[cfg(test)]
mod tests {
    use super::*;
    use time::Month;

    /// January of -1 degrees with half a range of 4 K where July has 19: seasons of 20 K spread cold days
    /// by 1 + 0.14 x 20 = 3.8 K, so a cold night is at -1 - 7.6 - 0.65 x 4 outside (by hand).
    #[test]
    fn frost_to_be_expected_lies_below_the_usual_day() {
        let air = [-1.0, 0.0, 4.0, 8.0, 13.0, 17.0, 19.0, 18.0, 14.0, 9.0, 4.0, 0.0].map(Celsius);
        let climate = MonthlyClimate {
            clearness_frac: [0.4; 12],
            air,
            half_range_k: [4.0; 12],
            error_frac: 0.0,
        };
        let date = Date::from_calendar_date(2026, Month::January, 16).expect("a date");
        let outside = parked_day(BatteryPlace::Outside, &climate, date);
        assert!((outside.mean.0 + 1.0).abs() < 0.1, "{outside:?}");
        assert!((outside.coldest.0 + 11.2).abs() < 0.3, "{outside:?}");
        let locker = parked_day(BatteryPlace::Locker, &climate, date);
        assert!(locker.coldest > outside.coldest && locker.coldest < locker.mean);
    }

    /// Mean January and July, half the range of a day, and the mean of the coldest nights of the years
    /// (handbook of design temperatures): all from memory.
    #[test]
    fn the_coldest_night_is_that_of_design_tables() {
        for (place, january, july, half_range_k, coldest) in [
            ("De Bilt", 3.5, 18.0, 3.0, -9.5),
            ("Berlin", 0.6, 19.0, 3.0, -13.0),
            ("Helsinki", -4.5, 17.5, 3.0, -22.0),
            ("Denver", -0.4, 23.5, 7.5, -23.0),
            ("Seville", 11.0, 28.0, 6.0, -1.0),
        ] {
            let air = std::array::from_fn(|month| {
                let season = (std::f64::consts::TAU * (month as f64) / 12.0).cos();
                Celsius(0.5 * (january + july) - 0.5 * (july - january) * season)
            });
            let half_range_k = [half_range_k; 12];
            let climate =
                MonthlyClimate { clearness_frac: [0.4; 12], air, half_range_k, error_frac: 0.0 };
            let ours = coldest_air(&climate).0;
            assert!((ours - coldest).abs() < 5.0, "{place}: {ours}");
        }
    }
}
