//! Setups and climates for the tests of the played trip; all invented.

use nightbank::forecast::{MonthlyClimate, Outlook, TripPlan, plan::TripSun};
use nightbank::model::{
    Bank, Chemistry, Controller, Draw, Driving, EveryNth, Feed, HookUp, Load, OtherSource, Setup,
    SolarArray, SystemVoltage, Trip, Usage, Window,
};
use nightbank::units::{AmpHours, Celsius, Degrees, Watts};
use proptest::prelude::*;
use std::sync::Arc;

/// The same sky and air all year round.
pub fn climate(air_c: f64) -> MonthlyClimate {
    MonthlyClimate {
        clearness_frac: [0.42; 12],
        air: [Celsius(air_c); 12],
        half_range_k: [0.0; 12],
        error_frac: 0.0,
    }
}

/// 100 Ah AGM and one load that never stops.
pub fn steady(watts: f64) -> Setup {
    let mut setup = Setup::default();
    setup.bank.place = nightbank::model::BatteryPlace::Outside;
    setup.loads.push(Load {
        id: 1,
        draw: Draw::Power { watts: Watts(watts) },
        usage: Usage::AlwaysOn,
        ..Load::default()
    });
    setup
}

/// A load behind the inverter.
pub fn on_the_sockets(watts: Watts, usage: Usage) -> Load {
    Load { id: 9, draw: Draw::Power { watts }, feed: Feed::Inverter, usage, ..Load::default() }
}

pub fn plan(setup: &Setup, air_c: f64) -> TripPlan {
    plan_in(setup, Celsius(air_c))
}

pub fn plan_in(setup: &Setup, air: Celsius) -> TripPlan {
    let sun = TripSun::build(setup, &climate(air.0)).expect("valid climate");
    TripPlan::build(setup, Arc::new(sun))
}

pub fn outlook(setup: &Setup, air_c: f64) -> Outlook {
    Outlook::of(setup, &plan(setup, air_c))
}

prop_compose! {
    fn arbitrary_load()(
        watts in 0.1..400.0_f64, minutes in 0.0..600.0_f64, standby in 0.0..3.0_f64,
        inverter in any::<bool>(), from in 0_u16..1440, to in 0_u16..1440, id in 1_u32..1000,
    ) -> Load {
        Load {
            id,
            draw: Draw::Power { watts: Watts(watts) },
            usage: Usage::Daily { minutes },
            standby: Watts(standby),
            feed: if inverter { Feed::Inverter } else { Feed::Dc },
            window: Window { from_min: from, to_min: to },
            ..Load::default()
        }
    }
}

prop_compose! {
    fn arbitrary_bank()(
        chemistry in prop::sample::select(Chemistry::ALL.to_vec()), ah in 20.0..600.0_f64,
        health in 0.4..1.0_f64, start in 0.05..1.0_f64, v24 in any::<bool>(),
    ) -> Bank {
        Bank {
            chemistry,
            capacity_20h: AmpHours(ah),
            health_frac: health,
            soc_start_frac: start,
            soc_min_frac: chemistry.usual_soc_min_frac(),
            system: if v24 { SystemVoltage::V24 } else { SystemVoltage::V12 },
            ..Bank::default()
        }
    }
}

prop_compose! {
    /// A setup of believable size.
    pub fn arbitrary_setup()(
        loads in prop::collection::vec(arbitrary_load(), 0..6), bank in arbitrary_bank(),
        wp in 0.0..500.0_f64, tilt in 0.0..90.0_f64, pwm in any::<bool>(), month in 1_u8..=12,
        latitude in -66.0..66.0_f64, drive in 0_u8..4, hook_up in 0_u8..5, other in 0_u8..3,
        arrival_hour in 0_u8..24, nights in 1_u8..10,
    ) -> Setup {
        let mut trip = Trip { month, arrival_hour, nights, ..Trip::default() };
        trip.place.latitude = Degrees(latitude);
        let controller = if pwm { Controller::Pwm } else { Controller::Mppt };
        let mut setup = Setup { loads, bank, trip, ..Setup::default() };
        setup.inverter.fitted = true;
        setup.solar.push(SolarArray {
            peak: Watts(wp), tilt: Degrees(tilt), controller, ..SolarArray::default()
        });
        setup.driving = Driving { fitted: true, every: EveryNth(drive), ..Driving::default() };
        setup.hook_up = HookUp { fitted: true, every: EveryNth(hook_up), ..HookUp::default() };
        setup.other.push(OtherSource { every: EveryNth(other), ..OtherSource::default() });
        setup
    }
}
