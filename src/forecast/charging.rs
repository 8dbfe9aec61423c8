//! What a charger with stages does in one session: how far it gets, and how long it would take.
//!
//! The charger has left for the battery what the appliances do not take meanwhile:
//! `I = I_charger - P_load / V`, with the mean load of a whole day's hours in which it runs; on
//! hook-up without what the hook-up feeds itself. The battery is as warm as in those hours. It
//! starts from the lowest state of charge the user allows. The sun is left out: it only adds.
//!
//! A split-charge relay has no stages, and wind no current to rely on; both are left out.

use super::plan::TripPlan;
use super::supply::overlap;
use crate::model::{DrivingCharger, OtherSourceKind, Setup};
use crate::physics::battery::{ChargeStages, charge_stages};
use crate::units::{Amps, Celsius, Hours, Watts};

/// A charger with stages.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Charger {
    /// Dc-dc charger on the engine.
    Driving,
    /// Mains charger.
    HookUp,
    /// Generator or fuel cell, by its place in the list.
    Other(usize),
}

/// One session of a charger.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChargeSession {
    /// Current of the charger.
    pub current: Amps,
    /// What appliances and electronics take of it.
    pub drawn: Amps,
    /// How long the session lasts.
    pub time: Hours,
    /// Mean battery temperature in it.
    pub temperature: Celsius,
    /// State of charge it starts from: the lowest allowed, 0..1.
    pub from_frac: f64,
    /// Its stages; `None` where the battery gets or takes nothing.
    pub stages: Option<ChargeStages>,
}

struct Run {
    current: Amps,
    from_min: u16,
    time: Hours,
    feeds_sockets: bool,
}

fn run_of(setup: &Setup, charger: Charger) -> Option<Run> {
    match charger {
        Charger::Driving => {
            let driving = &setup.driving;
            let DrivingCharger::DcDc { amps } = driving.charger else { return None };
            driving.fitted.then_some(Run {
                current: amps,
                from_min: driving.from_min,
                time: Hours::from_minutes(driving.minutes),
                feeds_sockets: false,
            })
        }
        Charger::HookUp => {
            let hook_up = &setup.hook_up;
            hook_up.fitted.then_some(Run {
                current: hook_up.amps,
                from_min: hook_up.from_min,
                time: hook_up.hours,
                feeds_sockets: hook_up.pass_through,
            })
        }
        Charger::Other(row) => {
            let source = setup.other.get(row)?;
            (source.enabled && source.kind != OtherSourceKind::Wind).then_some(Run {
                current: source.amps,
                from_min: source.from_min,
                time: source.hours,
                feeds_sockets: false,
            })
        }
    }
}

/// A session of a charger, whether or not the trip has one planned; `None` where the charger is
/// not there, has no stages, or runs no time at all. `plan` must be the setup's.
#[must_use]
pub fn charge_session(setup: &Setup, plan: &TripPlan, charger: Charger) -> Option<ChargeSession> {
    let run = run_of(setup, charger)?;
    let from = f64::from(run.from_min) / 60.0;
    let (mut hours, mut load, mut warmth) = (0.0, Watts::ZERO, 0.0);
    // The first whole day; an hour past midnight belongs to the session of the day before.
    for hour in plan.hours.iter().filter(|hour| hour.day == 1) {
        let at = hour.hour_of_day as f64;
        let share = overlap(at, from, run.time) + overlap(at + 24.0, from, run.time);
        let demand =
            if run.feeds_sockets { hour.demand.with_sockets_on_hook_up(1.0) } else { hour.demand };
        hours += share;
        load += (demand.total() + hour.electronics) * share;
        warmth += hour.conditions.temperature.0 * share;
    }
    if hours <= 0.0 {
        return None;
    }
    let temperature = Celsius(warmth / hours);
    let drawn = load / hours / plan.bank.curve.volts(0.8);
    let from_frac = plan.bank.conditions(temperature).low_frac;
    let left = run.current - drawn;
    Some(ChargeSession {
        current: run.current,
        drawn,
        time: run.time,
        temperature,
        from_frac,
        stages: charge_stages(&setup.bank, temperature, from_frac, left, run.time),
    })
}
