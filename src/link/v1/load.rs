//! Loads: what differs from the catalogue's entry, or from a plain load.

use super::codes::choice;
use super::{frozen, scales};
use crate::link::wire::{Fault, Wire, differing, differing_number, flag, optional};
use crate::model::limits::MAX_NAME_CHARS;
use crate::model::{CutOut, Draw, DutyCycle, Load, Usage, Window};
use crate::units::{Amps, Volts, Watts};

/// Bits of a minute of the day.
const MINUTE_BITS: u32 = 11;

/// One load. `base` gives the load that an entry of the catalogue starts from.
pub(super) fn load(
    w: &mut dyn Wire,
    load: &mut Load,
    base: &dyn Fn(u16) -> Option<Load>,
) -> Result<(), Fault> {
    optional(w, &mut load.appliance, || 0, appliance)?;
    let known = load.appliance.and_then(base);
    let base =
        Load { id: load.id, appliance: load.appliance, ..known.unwrap_or_else(frozen::load) };
    differing(w, load, &base, |w, load| differences(w, load, &base))
}

fn appliance(w: &mut dyn Wire, id: &mut u16) -> Result<(), Fault> {
    let mut number = u32::from(*id);
    w.whole(&mut number, 7)?;
    *id = u16::try_from(number).map_err(|_| Fault::Invalid)?;
    Ok(())
}

fn differences(w: &mut dyn Wire, load: &mut Load, base: &Load) -> Result<(), Fault> {
    differing(w, &mut load.quantity, &base.quantity, quantity)?;
    differing(w, &mut load.draw, &base.draw, draw)?;
    differing(w, &mut load.usage, &base.usage, |w, value| usage(w, value, base.usage))?;
    differing(w, &mut load.learned, &base.learned, choice)?;
    differing(w, &mut load.window, &base.window, window)?;
    let mut rest = base.clone();
    rest.quantity = load.quantity;
    rest.draw = load.draw;
    rest.usage = load.usage;
    rest.learned = load.learned;
    rest.window = load.window;
    differing(w, load, &rest, |w, load| seldom(w, load, base))
}

/// What is seldom changed after it came from the catalogue.
fn seldom(w: &mut dyn Wire, load: &mut Load, base: &Load) -> Result<(), Fault> {
    differing(w, &mut load.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    differing(w, &mut load.group, &base.group, choice)?;
    differing(w, &mut load.spread_frac, &base.spread_frac, |w, spread| {
        optional(w, spread, || 0.0, |w, spread| w.number(spread, &scales::FRAC))
    })?;
    differing(w, &mut load.feed, &base.feed, choice)?;
    differing_number(w, &mut load.standby.0, base.standby.0, &scales::STANDBY_W)?;
    differing_number(w, &mut load.surge_factor, base.surge_factor, &scales::SURGE_FACTOR)?;
    differing(w, &mut load.cut_out, &base.cut_out, |w, value| {
        optional(w, value, || CutOut { off: Volts(10.5), on: Volts(11.7) }, cut_out)
    })?;
    flag(w, &mut load.enabled)
}

fn quantity(w: &mut dyn Wire, quantity: &mut u16) -> Result<(), Fault> {
    let mut above_one = u32::from(quantity.saturating_sub(1));
    w.whole(&mut above_one, 1)?;
    *quantity = u16::try_from(above_one.saturating_add(1)).map_err(|_| Fault::Invalid)?;
    Ok(())
}

fn draw(w: &mut dyn Wire, draw: &mut Draw) -> Result<(), Fault> {
    let mut as_current = matches!(draw, Draw::Current { .. });
    flag(w, &mut as_current)?;
    if as_current != matches!(draw, Draw::Current { .. }) {
        *draw = if as_current {
            Draw::Current { amps: Amps(0.0), volts: Volts(12.0) }
        } else {
            Draw::Power { watts: Watts(0.0) }
        };
    }
    match draw {
        Draw::Power { watts } => w.number(&mut watts.0, &scales::DRAW_W),
        Draw::Current { amps, volts } => {
            w.number(&mut amps.0, &scales::DRAW_A)?;
            differing_number(w, &mut volts.0, 12.0, &scales::STATED_V)
        }
    }
}

fn rule(usage: Usage) -> u32 {
    match usage {
        Usage::Daily { .. } => 0,
        Usage::AlwaysOn => 1,
        Usage::Duty { cycle: DutyCycle::Fixed { .. } } => 2,
        Usage::Duty { cycle: DutyCycle::AirTemperature { .. } } => 3,
        Usage::Charges { .. } => 4,
        Usage::Litres { .. } => 5,
        Usage::Uses { .. } => 6,
        Usage::Energy { .. } => 7,
    }
}

/// The rule, then its values as they differ from those of `base` where that has the same rule.
fn usage(w: &mut dyn Wire, usage: &mut Usage, base: Usage) -> Result<(), Fault> {
    let mut number = rule(*usage);
    w.bits(&mut number, 3)?;
    let base = if rule(base) == number {
        base
    } else {
        let plain = frozen::usages();
        *plain.get(number as usize).ok_or(Fault::Invalid)?
    };
    if rule(*usage) != number {
        *usage = base;
    }
    match (usage, base) {
        (Usage::Daily { minutes }, _) => w.number(minutes, &scales::MINUTES),
        (Usage::Duty { cycle: DutyCycle::Fixed { frac } }, _) => w.number(frac, &scales::FRAC),
        (Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } }, _) => {
            w.number(frac_at_25c, &scales::FRAC)
        }
        (
            Usage::Charges { every_days, cell, cell_volts, charger_frac },
            Usage::Charges {
                every_days: base_days,
                cell: base_cell,
                cell_volts: base_volts,
                charger_frac: base_frac,
            },
        ) => {
            differing_number(w, every_days, base_days, &scales::CHARGE_EVERY)?;
            differing_number(w, &mut cell.0, base_cell.0, &scales::CELL_MAH)?;
            differing_number(w, &mut cell_volts.0, base_volts.0, &scales::CELL_V)?;
            differing_number(w, charger_frac, base_frac, &scales::FRAC)
        }
        (
            Usage::Litres { litres_per_day, flow, pumped_twice },
            Usage::Litres { litres_per_day: base_litres, flow: base_flow, .. },
        ) => {
            differing_number(w, &mut litres_per_day.0, base_litres.0, &scales::LITRES)?;
            differing_number(w, &mut flow.0, base_flow.0, &scales::FLOW)?;
            flag(w, pumped_twice)
        }
        (
            Usage::Uses { per_day, seconds },
            Usage::Uses { per_day: base_per_day, seconds: base_seconds },
        ) => {
            differing_number(w, per_day, base_per_day, &scales::USES)?;
            differing_number(w, seconds, base_seconds, &scales::SECONDS)
        }
        (Usage::Energy { per_day }, _) => w.number(&mut per_day.0, &scales::ENERGY_WH),
        (Usage::AlwaysOn, _) => Ok(()),
        (Usage::Charges { .. } | Usage::Litres { .. } | Usage::Uses { .. }, _) => {
            Err(Fault::Invalid)
        }
    }
}

/// Usual windows by number: all day, evening, night, daytime, morning. Others carry both minutes.
const USUAL_WINDOWS: [(u16, u16); 5] = [(0, 0), (1080, 1380), (1320, 420), (480, 1200), (360, 540)];

/// Number of a window that carries its own minutes; 5 and 6 are not in use.
const OWN_WINDOW: u32 = 7;

fn window(w: &mut dyn Wire, window: &mut Window) -> Result<(), Fault> {
    let usual = USUAL_WINDOWS.iter().position(|&usual| usual == (window.from_min, window.to_min));
    let mut number = usual.and_then(|at| u32::try_from(at).ok()).unwrap_or(OWN_WINDOW);
    w.bits(&mut number, 3)?;
    if let Some(&(from_min, to_min)) = USUAL_WINDOWS.get(number as usize) {
        *window = Window { from_min, to_min };
        return Ok(());
    }
    if number != OWN_WINDOW {
        return Err(Fault::Invalid);
    }
    minute_of_day(w, &mut window.from_min)?;
    minute_of_day(w, &mut window.to_min)
}

/// A minute of the day: whole half hours in 7 bits, others in 12.
pub(super) fn minute_of_day(w: &mut dyn Wire, minute: &mut u16) -> Result<(), Fault> {
    let mut odd = !minute.is_multiple_of(30);
    flag(w, &mut odd)?;
    let (step, width) = if odd { (1, MINUTE_BITS) } else { (30, 6) };
    let mut steps = u32::from(*minute) / step;
    w.bits(&mut steps, width)?;
    *minute = u16::try_from(steps * step).map_err(|_| Fault::Invalid)?;
    Ok(())
}

fn cut_out(w: &mut dyn Wire, cut_out: &mut CutOut) -> Result<(), Fault> {
    w.number(&mut cut_out.off.0, &scales::CUT_OUT_V)?;
    w.number(&mut cut_out.on.0, &scales::CUT_OUT_V)
}
