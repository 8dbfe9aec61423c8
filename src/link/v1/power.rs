//! The bank, the inverter and what charges.

use super::codes::choice;
use super::load::minute_of_day;
use super::{frozen, scales};
use crate::link::wire::{Fault, Wire, differing, differing_number, flag};
use crate::model::limits::MAX_NAME_CHARS;
use crate::model::{
    Bank, Driving, DrivingCharger, EveryNth, HookUp, Inverter, InverterSwitching, OtherSource,
    Shade, SolarArray,
};
use crate::units::Watts;

pub(super) fn bank(w: &mut dyn Wire, bank: &mut Bank) -> Result<(), Fault> {
    let base = frozen::bank();
    choice(w, &mut bank.chemistry)?;
    w.number(&mut bank.capacity_20h.0, &scales::CAPACITY_AH)?;
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
    differing_number(w, &mut bank.cable.0, base.cable.0, &scales::CABLE_OHM)
}

pub(super) fn inverter(w: &mut dyn Wire, inverter: &mut Inverter) -> Result<(), Fault> {
    let base = frozen::inverter();
    flag(w, &mut inverter.fitted)?;
    let (continuous, surge, idle) =
        (&mut inverter.continuous.0, &mut inverter.surge.0, &mut inverter.idle.0);
    differing_number(w, continuous, base.continuous.0, &scales::INVERTER_W)?;
    differing_number(w, surge, base.surge.0, &scales::INVERTER_SURGE_W)?;
    differing_number(w, idle, base.idle.0, &scales::INVERTER_IDLE_W)?;
    let full_load_frac = &mut inverter.full_load_frac;
    differing_number(w, full_load_frac, base.full_load_frac, &scales::INVERTER_FRAC)?;
    switching(w, &mut inverter.switching)?;
    differing_number(w, &mut inverter.cut_out.0, base.cut_out.0, &scales::INVERTER_CUT_OUT_V)
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
            w.number(&mut asleep.0, &scales::INVERTER_IDLE_W)?;
        }
        (2, _) => {
            let mut asleep = Watts(0.0);
            w.number(&mut asleep.0, &scales::INVERTER_IDLE_W)?;
            *switching = InverterSwitching::PowerSave { asleep };
        }
        _ => return Err(Fault::Invalid),
    }
    Ok(())
}

pub(super) fn array(w: &mut dyn Wire, array: &mut SolarArray) -> Result<(), Fault> {
    let base = frozen::array();
    flag(w, &mut array.enabled)?;
    differing(w, &mut array.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    w.number(&mut array.peak.0, &scales::SOLAR_W)?;
    differing_number(w, &mut array.tilt.0, base.tilt.0, &scales::TILT)?;
    differing_number(w, &mut array.facing.0, base.facing.0, &scales::FACING)?;
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
    differing_number(w, &mut array.self_use.0, base.self_use.0, &scales::SELF_USE_W)?;
    differing_number(w, &mut array.low_light_frac, base.low_light_frac, &scales::FRAC)?;
    differing_number(w, &mut array.dirt_frac, base.dirt_frac, &scales::FRAC)?;
    differing_number(w, &mut array.wiring_frac, base.wiring_frac, &scales::FRAC)?;
    differing_number(w, &mut array.mismatch_frac, base.mismatch_frac, &scales::FRAC)?;
    let coefficient = &mut array.temp_coeff_per_k;
    differing_number(w, coefficient, base.temp_coeff_per_k, &scales::TEMP_COEFF)
}

pub(super) fn driving(w: &mut dyn Wire, driving: &mut Driving) -> Result<(), Fault> {
    let base = frozen::driving();
    flag(w, &mut driving.fitted)?;
    differing(w, &mut driving.charger, &base.charger, charger)?;
    differing_number(w, &mut driving.minutes, base.minutes, &scales::MINUTES)?;
    every(w, &mut driving.every)?;
    differing(w, &mut driving.from_min, &base.from_min, minute_of_day)
}

fn charger(w: &mut dyn Wire, charger: &mut DrivingCharger) -> Result<(), Fault> {
    let mut by_relay = matches!(charger, DrivingCharger::Relay { .. });
    flag(w, &mut by_relay)?;
    if by_relay != matches!(charger, DrivingCharger::Relay { .. }) {
        *charger = if by_relay { frozen::relay() } else { frozen::dc_dc() };
    }
    match charger {
        DrivingCharger::DcDc { amps } => w.number(&mut amps.0, &scales::CHARGER_A),
        DrivingCharger::Relay { alternator, cable_length, cable_size, limit, smart_alternator } => {
            differing_number(w, &mut alternator.0, 14.2, &scales::ALTERNATOR_V)?;
            w.number(&mut cable_length.0, &scales::CABLE_M)?;
            w.number(&mut cable_size.0, &scales::CABLE_MM2)?;
            differing_number(w, &mut limit.0, 30.0, &scales::CHARGER_A)?;
            flag(w, smart_alternator)
        }
    }
}

pub(super) fn hook_up(w: &mut dyn Wire, hook_up: &mut HookUp) -> Result<(), Fault> {
    let base = frozen::hook_up();
    flag(w, &mut hook_up.fitted)?;
    differing_number(w, &mut hook_up.amps.0, base.amps.0, &scales::CHARGER_A)?;
    every(w, &mut hook_up.every)?;
    differing(w, &mut hook_up.from_min, &base.from_min, minute_of_day)?;
    differing_number(w, &mut hook_up.hours.0, base.hours.0, &scales::HOURS)?;
    flag(w, &mut hook_up.pass_through)
}

pub(super) fn other(w: &mut dyn Wire, source: &mut OtherSource) -> Result<(), Fault> {
    let base = frozen::other();
    flag(w, &mut source.enabled)?;
    choice(w, &mut source.kind)?;
    w.number(&mut source.amps.0, &scales::CHARGER_A)?;
    differing(w, &mut source.from_min, &base.from_min, minute_of_day)?;
    differing_number(w, &mut source.hours.0, base.hours.0, &scales::HOURS)?;
    every(w, &mut source.every)?;
    differing_number(w, &mut source.fuel_per_hour.0, base.fuel_per_hour.0, &scales::FUEL_L_H)
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
