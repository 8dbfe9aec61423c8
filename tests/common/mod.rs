//! Shared by the tests that run against the library from outside.
//!
//! Each test file uses only part of it.
#![allow(dead_code)]

use nightbank::forecast::surroundings::Surroundings;
use nightbank::model::{Bank, BatteryPlace, Chemistry};
use nightbank::units::{AmpHours, Celsius, Watts};

mod load_rows;
mod power_parts;
pub mod sample;
pub mod setups;
mod values;

/// A healthy battery of this kind and capacity [Ah], used down to its usual limit.
pub fn bank(chemistry: Chemistry, ah: f64, place: BatteryPlace) -> Bank {
    Bank {
        chemistry,
        capacity_20h: AmpHours(ah),
        soc_min_frac: chemistry.usual_soc_min_frac(),
        place,
        ..Bank::default()
    }
}

/// The same air inside and out all day, nothing to heat and nobody driving.
pub fn still_air(air: Celsius) -> Surroundings {
    let (air, heat) = ([air; 24], [Watts::ZERO; 24]);
    Surroundings {
        outside: air,
        inside: air,
        heat,
        driving_frac: [0.0; 24],
        into_stay_h: f64::INFINITY,
        stay_left_h: f64::INFINITY,
    }
}
