//! What a version 1 link leaves out: the value of every field that it does not carry.
//!
//! Frozen with the version. The model may choose other defaults later; a link that was given away
//! still opens with the figures its sender saw. Every field is spelt out, so a field added to the
//! model does not compile here until someone says what it meant in the links before it.

use crate::model::{
    Bank, BatteryPlace, CableRun, Chemistry, ConductorSize, Controller, Correction, DayPlan, Draw,
    Driving, DrivingCharger, DutyCycle, EveryNth, Feed, Group, HookUp, Inverter, InverterSwitching,
    Learned, Load, Mounting, OtherSource, OtherSourceKind, Place, Prices, Setup, Shade, SolarArray,
    SystemVoltage, Trip, Usage, Weather, Window,
};
use crate::units::{
    AmpHours, Amps, Celsius, Degrees, Hours, Kilograms, Litres, LitresPerMinute, Metres,
    MilliAmpHours, Money, Ohms, SquareMillimetres, Volts, WattHours, Watts,
};

pub(super) fn setup() -> Setup {
    Setup {
        name: String::new(),
        example: false,
        loads: Vec::new(),
        bank: bank(),
        inverter: inverter(),
        solar: Vec::new(),
        driving: driving(),
        hook_up: hook_up(),
        other: Vec::new(),
        trip: trip(),
        prices: prices(),
        readings: Vec::new(),
        correction: correction(),
        cables: Vec::new(),
    }
}

pub(super) fn load() -> Load {
    Load {
        id: 0,
        appliance: None,
        name: String::new(),
        group: Group::Other,
        quantity: 1,
        learned: Learned::Estimate,
        draw: Draw::Power { watts: Watts(0.0) },
        spread_frac: None,
        feed: Feed::Dc,
        usage: Usage::Daily { minutes: 60.0 },
        standby: Watts(0.0),
        window: Window { from_min: 0, to_min: 0 },
        surge_factor: 1.0,
        cut_out: None,
        enabled: true,
    }
}

/// What the values of each rule are compared with where the load's base follows another rule.
pub(super) fn usages() -> [Usage; 8] {
    [
        Usage::Daily { minutes: 60.0 },
        Usage::AlwaysOn,
        Usage::Duty { cycle: DutyCycle::Fixed { frac: 0.3 } },
        Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.3 } },
        Usage::Charges {
            every_days: 1.0,
            cell: MilliAmpHours(5000.0),
            cell_volts: Volts(3.85),
            charger_frac: 0.8,
        },
        Usage::Litres {
            litres_per_day: Litres(20.0),
            flow: LitresPerMinute(10.0),
            pumped_twice: false,
        },
        Usage::Uses { per_day: 2.0, seconds: 60.0 },
        Usage::Energy { per_day: WattHours(100.0) },
    ]
}

pub(super) fn bank() -> Bank {
    Bank {
        chemistry: Chemistry::Agm,
        capacity_20h: AmpHours(100.0),
        parallel: 1,
        system: SystemVoltage::V12,
        block_volts: Volts(12.0),
        health_frac: 1.0,
        soc_min_frac: 0.5,
        soc_start_frac: 1.0,
        place: BatteryPlace::Locker,
        heated: false,
        cold_charge_allowed: false,
        cable: Ohms(0.004),
    }
}

pub(super) fn inverter() -> Inverter {
    Inverter {
        fitted: false,
        continuous: Watts(1000.0),
        surge: Watts(2000.0),
        idle: Watts(12.0),
        full_load_frac: 0.88,
        switching: InverterSwitching::WhenUsed,
        cut_out: Volts(10.5),
    }
}

pub(super) fn array() -> SolarArray {
    SolarArray {
        enabled: true,
        name: String::new(),
        peak: Watts(100.0),
        tilt: Degrees(0.0),
        facing: Degrees(180.0),
        mounting: Mounting::SmallGap,
        controller: Controller::Mppt,
        controller_frac: 0.96,
        self_use: Watts(0.3),
        shade: Shade { morning_frac: 0.0, midday_frac: 0.0, afternoon_frac: 0.0, sky_frac: 0.0 },
        low_light_frac: 0.04,
        dirt_frac: 0.03,
        wiring_frac: 0.03,
        mismatch_frac: 0.02,
        temp_coeff_per_k: -0.0035,
    }
}

pub(super) fn relay() -> DrivingCharger {
    DrivingCharger::Relay {
        alternator: Volts(14.2),
        cable_length: Metres(6.0),
        cable_size: SquareMillimetres(6.0),
        limit: Amps(30.0),
        smart_alternator: false,
    }
}

pub(super) fn dc_dc() -> DrivingCharger {
    DrivingCharger::DcDc { amps: Amps(30.0) }
}

pub(super) fn driving() -> Driving {
    Driving { fitted: false, charger: dc_dc(), minutes: 60.0, every: EveryNth(0), from_min: 600 }
}

pub(super) fn hook_up() -> HookUp {
    HookUp {
        fitted: false,
        amps: Amps(20.0),
        every: EveryNth(0),
        from_min: 1080,
        hours: Hours(15.0),
        pass_through: true,
    }
}

pub(super) fn other() -> OtherSource {
    OtherSource {
        enabled: true,
        kind: OtherSourceKind::Generator,
        amps: Amps(20.0),
        from_min: 600,
        hours: Hours(2.0),
        every: EveryNth(1),
        fuel_per_hour: Litres(0.4),
    }
}

pub(super) fn day() -> DayPlan {
    DayPlan { weather: Weather::Unknown, drive_minutes: None, hook_up: None }
}

pub(super) fn trip() -> Trip {
    Trip {
        place: Place {
            name: String::new(),
            latitude: Degrees(50.0),
            longitude: Degrees(8.0),
            altitude: Metres(100.0),
        },
        utc_offset_min: 60,
        year: 2026,
        month: 6,
        day: 15,
        arrival_hour: 16,
        nights: 7,
        days: Vec::new(),
        own_sun: None,
        own_air: None,
        ground_albedo_frac: 0.2,
    }
}

pub(super) fn prices() -> Prices {
    Prices {
        currency: "€".to_owned(),
        solar_per_100w: Money(120.0),
        solar_kg_per_100w: Kilograms(7.0),
        lead_per_100ah: Money(180.0),
        lead_kg_per_100ah: Kilograms(28.0),
        lithium_per_100ah: Money(450.0),
        lithium_kg_per_100ah: Kilograms(12.0),
        dcdc: Money(250.0),
    }
}

pub(super) fn correction() -> Correction {
    Correction { use_factor: 1.0, sun_factor: 1.0, restart: None }
}

pub(super) fn cable() -> CableRun {
    CableRun {
        name: String::new(),
        load_id: None,
        amps: Amps(10.0),
        length: Metres(5.0),
        size: ConductorSize::Metric { area: SquareMillimetres(6.0) },
        working: Celsius(50.0),
        fuse: Amps(0.0),
        critical: false,
    }
}
