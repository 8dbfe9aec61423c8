//! What surrounds the appliances on a day, by hour: air outside and inside, heat needed, driving.

use super::supply::{HourSupply, day_supply};
use crate::model::{LoadPlace, Setup, Vehicle};
use crate::physics::indoors::{air_inside, heat_needed};
use crate::units::{Celsius, Watts};

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

    /// Air where an appliance stands, in one hour of the day.
    #[must_use]
    pub fn air(&self, place: LoadPlace, hour: usize) -> Celsius {
        match place {
            LoadPlace::Inside => self.inside[hour],
            LoadPlace::Outside => self.outside[hour],
        }
    }
}
