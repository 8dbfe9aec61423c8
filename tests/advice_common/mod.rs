//! Setups for the tests of the advice; all invented.
#![allow(dead_code)]

use nightbank::forecast::MonthlyClimate;
use nightbank::model::catalogue::ALL;
use nightbank::model::{
    Bank, Draw, DutyCycle, Feed, InverterSwitching, Load, LoadPlace, Setup, SolarArray,
    SystemVoltage, Usage, Window,
};
use nightbank::units::{AmpHours, Celsius, Watts};

/// Summer in the middle of Europe.
pub fn summer() -> MonthlyClimate {
    MonthlyClimate {
        clearness_frac: [0.42; 12],
        air: [Celsius(18.0); 12],
        half_range_k: [5.0; 12],
        error_frac: 0.0,
    }
}

/// Frost day and night.
pub fn frost() -> MonthlyClimate {
    MonthlyClimate {
        clearness_frac: [0.42; 12],
        air: [Celsius(-8.0); 12],
        half_range_k: [3.0; 12],
        error_frac: 0.0,
    }
}

pub fn load(id: u32, watts: f64, usage: Usage) -> Load {
    Load { id, draw: Draw::Power { watts: Watts(watts) }, usage, ..Load::default() }
}

/// A van that fails on the fifth night in average weather: fridge, standby, light, laptop on an
/// inverter that is left on, 190 Ah AGM, 120 W flat on the roof in May.
pub fn failing_van() -> Setup {
    let mut setup = Setup::default();
    let fridge = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.32 } };
    setup.loads.push(load(1, 45.0, fridge));
    // A box in the awning.
    setup.loads[0].place = LoadPlace::Outside;
    setup.loads.push(load(2, 6.0, Usage::AlwaysOn));
    setup.loads[1].group = nightbank::model::Group::Standby;
    setup.loads.push(load(3, 8.0, Usage::Daily { minutes: 300.0 }));
    setup.loads[2].window = Window::EVENING;
    setup.loads.push(load(4, 50.0, Usage::Daily { minutes: 120.0 }));
    setup.loads[3].feed = Feed::Inverter;
    setup.loads[3].group = nightbank::model::Group::Screens;
    setup.inverter.fitted = true;
    setup.inverter.idle = Watts(6.0);
    setup.inverter.switching = InverterSwitching::AllDay;
    setup.bank = Bank { capacity_20h: AmpHours(190.0), ..Bank::default() };
    setup.solar.push(SolarArray { peak: Watts(120.0), ..SolarArray::default() });
    setup.driving.fitted = true;
    setup.hook_up.fitted = true;
    setup.trip.month = 5;
    setup.trip.nights = 7;
    setup
}

/// One of everything in the catalogue, switched on.
pub fn everything(system: SystemVoltage, offset: usize) -> Setup {
    let mut setup = failing_van();
    setup.bank.system = system;
    setup.loads = ALL
        .iter()
        .skip(offset)
        .take(64)
        .enumerate()
        .map(|(row, entry)| entry.to_load(row as u32 + 1, system))
        .collect();
    setup
}
