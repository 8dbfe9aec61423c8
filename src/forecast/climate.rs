//! Sky and air of a trip's place: the climate of the model with the sun above the atmosphere that
//! turns a user's own kWh/m2 into clearness.

use super::plan::MonthlyClimate;
use crate::model::climate::{Climate, World};
use crate::model::{Place, Trip};
use crate::physics::solar::sun::daily_extraterrestrial;
use crate::units::WattHoursPerSquareMetre;
use time::{Date, Month};

/// Mean daily irradiation above the atmosphere on level ground, January first.
#[must_use]
pub fn monthly_extraterrestrial(place: &Place, year: i32) -> [WattHoursPerSquareMetre; 12] {
    std::array::from_fn(|index| {
        let month = Month::January.nth_next(u8::try_from(index).unwrap_or(0));
        let length = month.length(year);
        let sum: WattHoursPerSquareMetre = (1..=length)
            .filter_map(|day| Date::from_calendar_date(year, month, day).ok())
            .map(|date| daily_extraterrestrial(date, place.latitude, place.longitude))
            .sum();
        sum / f64::from(length)
    })
}

/// Climate of the trip's place from what the program carries, the user's own sun first.
#[must_use]
pub fn climate_of(trip: &Trip) -> Climate {
    climate_in(None, trip)
}

/// As [`climate_of`], with the climate of the world where it is here.
#[must_use]
pub fn climate_in(world: Option<&World>, trip: &Trip) -> Climate {
    let place = trip.place.coarse();
    let above = monthly_extraterrestrial(&place, i32::from(trip.year));
    Climate::from_world(world, &place, trip.own_sun.as_ref(), &above)
}

impl From<&Climate> for MonthlyClimate {
    fn from(climate: &Climate) -> Self {
        Self {
            clearness_frac: climate.clearness_frac,
            air: climate.air,
            half_range_k: climate.half_range_k,
            error_frac: climate.accuracy_frac,
        }
    }
}
