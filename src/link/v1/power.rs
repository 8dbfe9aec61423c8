//! Battery bank, inverter and chargers in version 1 of a link.

use super::choice::{choice, choices};
use super::extension::Extension;
use super::load::minute_of_day;
use super::scales;
use crate::link::wire::{Fault, Scale, Wire, differing, differing_number, flag, optional};
use crate::model::limits::{self, MAX_NAME_CHARS};
use crate::model::{
    Bank, BatteryPlace, Chemistry, Controller, Driving, DrivingCharger, EveryNth, HookUp, Inverter,
    InverterSwitching, Mounting, OtherSource, OtherSourceKind, Shade, SolarArray, SystemVoltage,
};
use crate::units::{
    AmpHours, Amps, Degrees, Hours, Litres, Metres, Ohms, SquareMillimetres, Volts, Watts,
};

/// Fields that came later.
pub(super) const EXTENSIONS: &[Extension] = &[Extension {
    number: 2,
    fields: |w, setup, _base| {
        for array in &mut setup.solar {
            let volts = &mut array.vmp;
            optional(w, volts, || Volts(18.2), |w, volts| w.number(&mut volts.0, &PANEL_V))?;
        }
        Ok(())
    },
}];

choices!(Chemistry: 3; Flooded = 0, Agm = 1, Gel = 2, LiFePo4 = 3);
choices!(SystemVoltage: 2; V12 = 0, V24 = 1);
choices!(BatteryPlace: 2; Inside = 0, Locker = 1, Outside = 2);
choices!(Mounting: 2; Glued = 0, SmallGap = 1, OpenRack = 2);
choices!(Controller: 2; Mppt = 0, Pwm = 1);
choices!(OtherSourceKind: 3; Generator = 0, FuelCell = 1, Wind = 2);

/// Capacity of a string: 0.1 Ah.
const CAPACITY_AH: Scale = Scale::unsigned(limits::CAPACITY_AH, 10, &[100, 50, 10, 1], 4);
/// Cable resistance of the bank: 0.01 mOhm.
const CABLE_OHM: Scale = Scale::unsigned(limits::CABLE_OHM, 100_000, &[100, 10, 1], 3);
/// Inverter rating: 0.1 W.
const INVERTER_W: Scale = Scale::unsigned(limits::INVERTER_W, 10, &[1000, 100, 10, 1], 4);
/// Inverter surge rating: 0.1 W.
const INVERTER_SURGE_W: Scale =
    Scale::unsigned(limits::INVERTER_SURGE_W, 10, &[1000, 100, 10, 1], 4);
/// Inverter no-load draw: 0.01 W.
const INVERTER_IDLE_W: Scale = Scale::unsigned(limits::INVERTER_IDLE_W, 100, &[100, 10, 1], 4);
/// Inverter efficiency at full load: 0.001.
const INVERTER_FRAC: Scale = Scale::unsigned(limits::INVERTER_FRAC, 1000, &[50, 10, 1], 5);
/// Inverter cut-out: 0.01 V.
const INVERTER_CUT_OUT_V: Scale = Scale::unsigned(limits::INVERTER_CUT_OUT_V, 100, &[50, 10, 1], 5);
/// Peak power of an array: 0.1 W.
const SOLAR_W: Scale = Scale::unsigned(limits::SOLAR_W, 10, &[100, 50, 10, 1], 4);
/// Tilt: 0.1 deg.
const TILT: Scale = Scale::unsigned(limits::TILT_DEG, 10, &[50, 10, 1], 3);
/// Facing: 0.1 deg.
const FACING: Scale = Scale::unsigned(limits::FACING_DEG, 10, &[450, 50, 10, 1], 3);
/// Controller self-use: 0.01 W.
const SELF_USE_W: Scale = Scale::unsigned(limits::SELF_USE_W, 100, &[10, 1], 3);
/// Temperature coefficient: 0.001 %/K.
const TEMP_COEFF: Scale = Scale::signed(limits::TEMP_COEFF_PER_K, 100_000, &[10, 1], 6);
/// Voltage of an array at its best power: 0.1 V.
const PANEL_V: Scale = Scale::unsigned(limits::PANEL_V, 10, &[10, 1], 5);
/// Charging current: 0.01 A.
const CHARGER_A: Scale = Scale::unsigned(limits::CHARGER_A, 100, &[500, 100, 10, 1], 3);
/// Alternator voltage: 0.01 V.
const ALTERNATOR_V: Scale = Scale::unsigned(limits::ALTERNATOR_V, 100, &[10, 1], 7);
/// Hours a day: 0.01 h.
const HOURS: Scale = Scale::unsigned(limits::HOURS_A_DAY, 100, &[100, 50, 25, 1], 3);
/// Fuel an hour: 0.01 L.
const FUEL_L_H: Scale = Scale::unsigned(limits::FUEL_L_H, 100, &[100, 10, 1], 2);

/// What a link that does not carry it means.
pub(super) fn plain_bank() -> Bank {
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

/// What a link that does not carry it means.
pub(super) fn plain_relay() -> DrivingCharger {
    DrivingCharger::Relay {
        alternator: Volts(14.2),
        cable_length: Metres(6.0),
        cable_size: SquareMillimetres(6.0),
        limit: Amps(30.0),
        smart_alternator: false,
    }
}

/// What a link that does not carry it means.
pub(super) fn plain_dc_dc() -> DrivingCharger {
    DrivingCharger::DcDc { amps: Amps(30.0) }
}

pub(super) fn bank(w: &mut dyn Wire, bank: &mut Bank) -> Result<(), Fault> {
    let base = plain_bank();
    choice(w, &mut bank.chemistry)?;
    w.number(&mut bank.capacity_20h.0, &CAPACITY_AH)?;
    differing(w, &mut bank.parallel, &base.parallel, |w, strings| byte(w, strings, 2))?;
    choice(w, &mut bank.system)?;
    differing(w, &mut bank.block_volts, &base.block_volts, |w, volts| {
        let mut is_24 = volts.0 > 12.0;
        flag(w, &mut is_24)?;
        volts.0 = if is_24 { 24.0 } else { 6.0 };
        Ok(())
    })?;
    differing_number(w, &mut bank.health_frac, base.health_frac, &scales::FRAC)?;
    differing_number(w, &mut bank.soc_min_frac, base.soc_min_frac, &scales::FRAC)?;
    differing_number(w, &mut bank.soc_start_frac, base.soc_start_frac, &scales::FRAC)?;
    choice(w, &mut bank.place)?;
    flag(w, &mut bank.heated)?;
    flag(w, &mut bank.cold_charge_allowed)?;
    differing_number(w, &mut bank.cable.0, base.cable.0, &CABLE_OHM)
}

/// What a link that does not carry it means.
pub(super) fn plain_inverter() -> Inverter {
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

pub(super) fn inverter(w: &mut dyn Wire, inverter: &mut Inverter) -> Result<(), Fault> {
    let base = plain_inverter();
    flag(w, &mut inverter.fitted)?;
    let (continuous, surge, idle) =
        (&mut inverter.continuous.0, &mut inverter.surge.0, &mut inverter.idle.0);
    differing_number(w, continuous, base.continuous.0, &INVERTER_W)?;
    differing_number(w, surge, base.surge.0, &INVERTER_SURGE_W)?;
    differing_number(w, idle, base.idle.0, &INVERTER_IDLE_W)?;
    let full_load_frac = &mut inverter.full_load_frac;
    differing_number(w, full_load_frac, base.full_load_frac, &INVERTER_FRAC)?;
    switching(w, &mut inverter.switching)?;
    differing_number(w, &mut inverter.cut_out.0, base.cut_out.0, &INVERTER_CUT_OUT_V)
}

fn switching(w: &mut dyn Wire, switching: &mut InverterSwitching) -> Result<(), Fault> {
    let mut number = match switching {
        InverterSwitching::AllDay => 0,
        InverterSwitching::WhenUsed => 1,
        InverterSwitching::PowerSave { .. } => 2,
    };
    w.bits(&mut number, 2)?;
    match (number, &mut *switching) {
        (0, _) => *switching = InverterSwitching::AllDay,
        (1, _) => *switching = InverterSwitching::WhenUsed,
        (2, InverterSwitching::PowerSave { asleep }) => {
            w.number(&mut asleep.0, &INVERTER_IDLE_W)?;
        }
        (2, _) => {
            let mut asleep = Watts(0.0);
            w.number(&mut asleep.0, &INVERTER_IDLE_W)?;
            *switching = InverterSwitching::PowerSave { asleep };
        }
        _ => return Err(Fault::UnknownChoice),
    }
    Ok(())
}

/// What a link that does not carry it means.
pub(super) fn plain_array() -> SolarArray {
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
        vmp: None,
    }
}

pub(super) fn array(w: &mut dyn Wire, array: &mut SolarArray) -> Result<(), Fault> {
    let base = plain_array();
    flag(w, &mut array.enabled)?;
    differing(w, &mut array.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    w.number(&mut array.peak.0, &SOLAR_W)?;
    differing_number(w, &mut array.tilt.0, base.tilt.0, &TILT)?;
    differing_number(w, &mut array.facing.0, base.facing.0, &FACING)?;
    choice(w, &mut array.mounting)?;
    choice(w, &mut array.controller)?;
    differing(w, &mut array.shade, &base.shade, |w, shade| {
        let Shade { morning_frac, midday_frac, afternoon_frac, sky_frac } = shade;
        for share in [morning_frac, midday_frac, afternoon_frac, sky_frac] {
            differing_number(w, share, 0.0, &scales::FRAC)?;
        }
        Ok(())
    })?;
    differing_number(w, &mut array.controller_frac, base.controller_frac, &scales::FRAC)?;
    differing_number(w, &mut array.self_use.0, base.self_use.0, &SELF_USE_W)?;
    differing_number(w, &mut array.low_light_frac, base.low_light_frac, &scales::FRAC)?;
    differing_number(w, &mut array.dirt_frac, base.dirt_frac, &scales::FRAC)?;
    differing_number(w, &mut array.wiring_frac, base.wiring_frac, &scales::FRAC)?;
    differing_number(w, &mut array.mismatch_frac, base.mismatch_frac, &scales::FRAC)?;
    let coefficient = &mut array.temp_coeff_per_k;
    differing_number(w, coefficient, base.temp_coeff_per_k, &TEMP_COEFF)
}

/// What a link that does not carry it means.
pub(super) fn plain_driving() -> Driving {
    Driving {
        fitted: false,
        charger: plain_dc_dc(),
        minutes: 60.0,
        every: EveryNth(0),
        from_min: 600,
    }
}

pub(super) fn driving(w: &mut dyn Wire, driving: &mut Driving) -> Result<(), Fault> {
    let base = plain_driving();
    flag(w, &mut driving.fitted)?;
    differing(w, &mut driving.charger, &base.charger, charger)?;
    differing_number(w, &mut driving.minutes, base.minutes, &scales::MINUTES)?;
    every(w, &mut driving.every)?;
    differing(w, &mut driving.from_min, &base.from_min, minute_of_day)
}

fn charger(w: &mut dyn Wire, charger: &mut DrivingCharger) -> Result<(), Fault> {
    let mut number = u32::from(matches!(charger, DrivingCharger::Relay { .. }));
    w.bits(&mut number, 2)?;
    let by_relay = match number {
        0 => false,
        1 => true,
        _ => return Err(Fault::UnknownChoice),
    };
    if by_relay != matches!(charger, DrivingCharger::Relay { .. }) {
        *charger = if by_relay { plain_relay() } else { plain_dc_dc() };
    }
    match charger {
        DrivingCharger::DcDc { amps } => w.number(&mut amps.0, &CHARGER_A),
        DrivingCharger::Relay { alternator, cable_length, cable_size, limit, smart_alternator } => {
            differing_number(w, &mut alternator.0, 14.2, &ALTERNATOR_V)?;
            w.number(&mut cable_length.0, &scales::CABLE_M)?;
            w.number(&mut cable_size.0, &scales::CABLE_MM2)?;
            differing_number(w, &mut limit.0, 30.0, &CHARGER_A)?;
            flag(w, smart_alternator)
        }
    }
}

/// What a link that does not carry it means.
pub(super) fn plain_hook_up() -> HookUp {
    HookUp {
        fitted: false,
        amps: Amps(20.0),
        every: EveryNth(0),
        from_min: 1080,
        hours: Hours(15.0),
        pass_through: true,
    }
}

pub(super) fn hook_up(w: &mut dyn Wire, hook_up: &mut HookUp) -> Result<(), Fault> {
    let base = plain_hook_up();
    flag(w, &mut hook_up.fitted)?;
    differing_number(w, &mut hook_up.amps.0, base.amps.0, &CHARGER_A)?;
    every(w, &mut hook_up.every)?;
    differing(w, &mut hook_up.from_min, &base.from_min, minute_of_day)?;
    differing_number(w, &mut hook_up.hours.0, base.hours.0, &HOURS)?;
    flag(w, &mut hook_up.pass_through)
}

/// What a link that does not carry it means.
pub(super) fn plain_other() -> OtherSource {
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

pub(super) fn other(w: &mut dyn Wire, source: &mut OtherSource) -> Result<(), Fault> {
    let base = plain_other();
    flag(w, &mut source.enabled)?;
    choice(w, &mut source.kind)?;
    w.number(&mut source.amps.0, &CHARGER_A)?;
    differing(w, &mut source.from_min, &base.from_min, minute_of_day)?;
    differing_number(w, &mut source.hours.0, base.hours.0, &HOURS)?;
    every(w, &mut source.every)?;
    differing_number(w, &mut source.fuel_per_hour.0, base.fuel_per_hour.0, &FUEL_L_H)
}

fn every(w: &mut dyn Wire, every: &mut EveryNth) -> Result<(), Fault> {
    byte(w, &mut every.0, 1)
}

/// A small whole number.
pub(super) fn byte(w: &mut dyn Wire, value: &mut u8, order: u32) -> Result<(), Fault> {
    let mut whole = u32::from(*value);
    w.whole(&mut whole, order)?;
    *value = u8::try_from(whole).map_err(|_| Fault::Invalid)?;
    Ok(())
}
