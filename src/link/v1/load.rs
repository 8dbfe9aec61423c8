//! Loads in version 1 of a link: only what differs from the catalogue's entry, or from a plain load.

use super::choice::{choice, choices};
use super::extension::{Base, Extension};
use super::scales;
use crate::link::wire::{Fault, Scale, Wire, differing, differing_number, flag, optional};
use crate::model::limits::{self, MAX_NAME_CHARS};
use crate::model::{
    CutOut, Draw, DrawSource, DutyCycle, Feed, Group, Load, LoadPlace, StayEnd, Usage, Window,
};
use crate::units::{Amps, Litres, LitresPerMinute, MilliAmpHours, Volts, WattHours, Watts};

/// Fields that came later.
pub(super) const EXTENSIONS: &[Extension] = &[
    Extension {
        number: 1,
        fields: |w, setup, base| {
            for load in &mut setup.loads {
                let base = load.appliance.and_then(base).unwrap_or_else(plain_load);
                differing(w, &mut load.place, &base.place, choice)?;
            }
            Ok(())
        },
    },
    Extension {
        number: 3,
        fields: |w, setup, _base| {
            setup.loads.iter_mut().try_for_each(|load| more_windows(w, &mut load.more_windows))
        },
    },
];

/// Whether there are windows after the first; one less than their count, then each.
fn more_windows(w: &mut dyn Wire, more: &mut Vec<Window>) -> Result<(), Fault> {
    let mut any = !more.is_empty();
    flag(w, &mut any)?;
    if !any {
        more.clear();
        return Ok(());
    }
    let mut above_one = u32::from(more.len() > 1);
    w.bits(&mut above_one, 1)?;
    more.resize(above_one as usize + 1, Window { from_min: 0, to_min: 0 });
    more.iter_mut().try_for_each(|one| window(w, one))
}

choices!(Group: 4;
    Cold = 0, Heat = 1, Air = 2, Water = 3, Light = 4, Screens = 5, Net = 6, Health = 7,
    Kitchen = 8, Body = 9, Tools = 10, Vehicle = 11, Standby = 12, Other = 13);
choices!(DrawSource: 3; Meter = 0, SpecSheet = 1, Label = 2, Estimate = 3);
choices!(Feed: 2; Dc = 0, Inverter = 1);
choices!(LoadPlace: 2; Inside = 0, Outside = 1);
choices!(StayEnd: 2; Arrival = 0, Leaving = 1);

/// Draw of a load: 0.01 W.
const DRAW_W: Scale = Scale::unsigned(limits::DRAW_W, 100, &[500, 100, 10, 1], 4);
/// Standby draw: 0.01 W.
const STANDBY_W: Scale = Scale::unsigned(limits::STANDBY_W, 100, &[100, 10, 1], 2);
/// Voltage a current was read at: 0.01 V.
const STATED_V: Scale = Scale::unsigned(limits::STATED_V, 100, &[100, 10, 1], 3);
/// Days between charges: 0.01.
const CHARGE_EVERY: Scale = Scale::unsigned(limits::CHARGE_EVERY_DAYS, 100, &[100, 10, 1], 1);
/// Charge of a small cell: 1 mAh.
const CELL_MAH: Scale = Scale::unsigned(limits::CELL_MAH, 1, &[1000, 100, 1], 4);
/// Voltage of a small cell: 0.01 V.
const CELL_V: Scale = Scale::unsigned(limits::CELL_V, 100, &[100, 10, 1], 5);
/// Water a day: 0.1 L.
const LITRES: Scale = Scale::unsigned(limits::LITRES_A_DAY, 10, &[50, 10, 1], 3);
/// Flow of a pump: 0.01 L/min.
const FLOW: Scale = Scale::unsigned(limits::FLOW_L_MIN, 100, &[100, 10, 1], 4);
/// Uses a day: 0.01.
const USES: Scale = Scale::unsigned(limits::USES_A_DAY, 100, &[100, 10, 1], 3);
/// Seconds a use: 0.1 s.
const SECONDS: Scale = Scale::unsigned(limits::SECONDS_A_USE, 10, &[300, 50, 10, 1], 3);
/// Energy a day of one load: 0.1 Wh.
const ENERGY_WH: Scale = Scale::unsigned(limits::ENERGY_WH_A_DAY, 10, &[500, 100, 10, 1], 4);
/// Heat of a heater: 1 W.
const HEAT_W: Scale = Scale::unsigned(limits::HEAT_W, 1, &[500, 100, 10, 1], 3);
/// Energy of a start: 0.1 Wh.
const START_WH: Scale = Scale::unsigned(limits::START_WH, 10, &[10, 1], 3);
/// Starting over running draw: 0.01.
const SURGE_FACTOR: Scale = Scale::unsigned(limits::SURGE_FACTOR, 100, &[100, 10, 1], 2);
/// Cut-out of a load: 0.01 V.
const CUT_OUT_V: Scale = Scale::unsigned(limits::CUT_OUT_V, 100, &[50, 10, 1], 5);

/// Bits of a minute of the day.
const MINUTE_BITS: u32 = 11;

/// What a link that does not carry it means.
pub(super) fn plain_load() -> Load {
    Load {
        id: 0,
        appliance: None,
        name: String::new(),
        group: Group::Other,
        quantity: 1,
        draw_source: DrawSource::Estimate,
        draw: Draw::Power { watts: Watts(0.0) },
        spread_frac: None,
        feed: Feed::Dc,
        place: LoadPlace::Inside,
        usage: Usage::Daily { minutes: 60.0 },
        standby: Watts(0.0),
        window: Window { from_min: 0, to_min: 0 },
        more_windows: Vec::new(),
        surge_factor: 1.0,
        cut_out: None,
        enabled: true,
    }
}

/// What the values of each rule are compared with where the load's base follows another rule.
pub(super) fn plain_usages() -> [Usage; 12] {
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
        Usage::Duty { cycle: DutyCycle::Heating { heat: Watts(2000.0), start: WattHours(0.0) } },
        Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: 0.3 } },
        Usage::WhileDriving,
        Usage::Once { at: StayEnd::Arrival, minutes: 10.0 },
    ]
}

/// One load. `base` gives the load that an entry of the catalogue starts from.
pub(super) fn load(w: &mut dyn Wire, load: &mut Load, base: Base<'_>) -> Result<(), Fault> {
    optional(w, &mut load.appliance, || 0, appliance)?;
    let known = load.appliance.and_then(base);
    let known = known.unwrap_or_else(plain_load);
    // Its place and further windows go in extensions.
    let base = Load {
        id: load.id,
        appliance: load.appliance,
        place: load.place,
        more_windows: load.more_windows.clone(),
        ..known
    };
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
    differing(w, &mut load.draw_source, &base.draw_source, choice)?;
    differing(w, &mut load.window, &base.window, window)?;
    let mut rest = base.clone();
    rest.quantity = load.quantity;
    rest.draw = load.draw;
    rest.usage = load.usage;
    rest.draw_source = load.draw_source;
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
    differing_number(w, &mut load.standby.0, base.standby.0, &STANDBY_W)?;
    differing_number(w, &mut load.surge_factor, base.surge_factor, &SURGE_FACTOR)?;
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
        Draw::Power { watts } => w.number(&mut watts.0, &DRAW_W),
        Draw::Current { amps, volts } => {
            w.number(&mut amps.0, &scales::DRAW_A)?;
            differing_number(w, &mut volts.0, 12.0, &STATED_V)
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
        Usage::Duty { cycle: DutyCycle::Heating { .. } } => 8,
        Usage::Duty { cycle: DutyCycle::Cooling { .. } } => 9,
        Usage::WhileDriving => 10,
        Usage::Once { .. } => 11,
    }
}

/// The rule, then its values as they differ from those of `base` where that has the same rule.
fn usage(w: &mut dyn Wire, usage: &mut Usage, base: Usage) -> Result<(), Fault> {
    let mut number = rule(*usage);
    w.bits(&mut number, 4)?;
    let base = if rule(base) == number {
        base
    } else {
        let plain = plain_usages();
        *plain.get(number as usize).ok_or(Fault::UnknownChoice)?
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
            differing_number(w, every_days, base_days, &CHARGE_EVERY)?;
            differing_number(w, &mut cell.0, base_cell.0, &CELL_MAH)?;
            differing_number(w, &mut cell_volts.0, base_volts.0, &CELL_V)?;
            differing_number(w, charger_frac, base_frac, &scales::FRAC)
        }
        (
            Usage::Litres { litres_per_day, flow, pumped_twice },
            Usage::Litres { litres_per_day: base_litres, flow: base_flow, .. },
        ) => {
            differing_number(w, &mut litres_per_day.0, base_litres.0, &LITRES)?;
            differing_number(w, &mut flow.0, base_flow.0, &FLOW)?;
            flag(w, pumped_twice)
        }
        (
            Usage::Uses { per_day, seconds },
            Usage::Uses { per_day: base_per_day, seconds: base_seconds },
        ) => {
            differing_number(w, per_day, base_per_day, &USES)?;
            differing_number(w, seconds, base_seconds, &SECONDS)
        }
        (
            Usage::Duty { cycle: DutyCycle::Heating { heat, start } },
            Usage::Duty { cycle: DutyCycle::Heating { heat: base_heat, start: base_start } },
        ) => {
            differing_number(w, &mut heat.0, base_heat.0, &HEAT_W)?;
            differing_number(w, &mut start.0, base_start.0, &START_WH)
        }
        (Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c } }, _) => {
            w.number(frac_at_25c, &scales::FRAC)
        }
        (Usage::Energy { per_day }, _) => w.number(&mut per_day.0, &ENERGY_WH),
        (Usage::Once { at, minutes }, _) => {
            choice(w, at)?;
            w.number(minutes, &scales::MINUTES)
        }
        (Usage::AlwaysOn | Usage::WhileDriving, _) => Ok(()),
        (
            Usage::Charges { .. }
            | Usage::Litres { .. }
            | Usage::Uses { .. }
            | Usage::Duty { cycle: DutyCycle::Heating { .. } },
            _,
        ) => Err(Fault::Invalid),
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
        return Err(Fault::UnknownChoice);
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
    w.number(&mut cut_out.off.0, &CUT_OUT_V)?;
    w.number(&mut cut_out.on.0, &CUT_OUT_V)
}
