//! Sky and air of a trip's place: the climate of the model with the sun above the atmosphere that
//! turns a user's own kWh/m2 into clearness.

use super::plan::MonthlyClimate;
use crate::model::Trip;
use crate::model::climate::{Climate, World};
use crate::physics::solar::sun::monthly_extraterrestrial;

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
