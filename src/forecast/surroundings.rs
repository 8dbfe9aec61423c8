//! What surrounds the appliances on a day, by hour: air outside and inside, heat needed, driving.

use super::supply::{HourSupply, day_supply};
use crate::model::{LoadPlace, Setup, StayEnd, Vehicle};
use crate::physics::indoors::{air_inside, heat_needed};
use crate::units::{Celsius, Hours, Watts};

/// Every energy a day is stated for this day of the trip, the first whole one (0 is the day of arrival).
pub const FIRST_WHOLE_DAY: usize = 1;

/// What surrounds the appliances on a day, by hour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Air outside.
    pub outside: [Celsius; 24],
    /// Air inside.
    pub inside: [Celsius; 24],
    /// Heat that keeps the vehicle as warm as it shall be.
    pub heat: [Watts; 24],
    /// Share of the hour driven, 0..1.
    pub driving_frac: [f64; 24],
    /// Hours of the stay that are over when the day begins, below 0 on the day of arrival; infinite where the day
    /// is no day of a stay.
    pub into_stay_h: f64,
    /// Hours from the beginning of the day to the end of the stay; infinite where the day is no day of a stay.
    pub stay_left_h: f64,
}

impl Surroundings {
    /// Of a setup with this air outside, on a day without driving.
    #[must_use]
    pub fn at_rest(setup: &Setup, outside: [Celsius; 24]) -> Self {
        Self::of_vehicle(setup.vehicle, setup.trip.heated_to, outside)
    }

    /// Of a vehicle kept at `heated_to` with this air outside, on a day without driving.
    #[must_use]
    pub fn of_vehicle(
        vehicle: Vehicle,
        heated_to: Option<Celsius>,
        outside: [Celsius; 24],
    ) -> Self {
        Self {
            outside,
            inside: outside.map(|air| air_inside(air, heated_to)),
            heat: outside.map(|air| heat_needed(vehicle, air, heated_to)),
            driving_frac: [0.0; 24],
            into_stay_h: f64::INFINITY,
            stay_left_h: f64::INFINITY,
        }
    }

    /// Of a setup with this air outside, on day `day` of the trip (0 is the day of arrival).
    #[must_use]
    pub fn on_day(setup: &Setup, day: usize, outside: [Celsius; 24]) -> Self {
        Self::supplied(setup, &day_supply(setup, day), outside)
    }

    /// The same on a day whose supply is known by hour.
    #[must_use]
    pub fn supplied(setup: &Setup, supply: &[HourSupply; 24], outside: [Celsius; 24]) -> Self {
        let driving_frac = supply.each_ref().map(|hour| hour.driving_share);
        Self { driving_frac, ..Self::at_rest(setup, outside) }
    }

    /// The same as a day of a stay that began so many hours before the day and ends so many after its beginning.
    #[must_use]
    pub fn in_stay(self, into_stay_h: f64, stay_left_h: f64) -> Self {
        Self { into_stay_h, stay_left_h, ..self }
    }

    /// Share of an hour of the day, 0..1, that lies within `length` of an end of the stay.
    #[must_use]
    pub fn near_stay_end_frac(&self, end: StayEnd, length: Hours, hour: usize) -> f64 {
        let hour = hour as f64;
        let from = match end {
            StayEnd::Arrival => self.into_stay_h + hour,
            StayEnd::Leaving => self.stay_left_h - hour - 1.0,
        };
        ((from + 1.0).min(length.0) - from.max(0.0)).clamp(0.0, 1.0)
    }

    /// Air where an appliance stands, in one hour of the day.
    #[must_use]
    pub fn air(&self, place: LoadPlace, hour: usize) -> Celsius {
        match place {
            LoadPlace::Inside => self.inside[hour],
            LoadPlace::Outside => self.outside[hour],
        }
    }
}
