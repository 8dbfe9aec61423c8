//! What was learned from a log, put into the setup.

use super::capacity::CapacityFound;
use super::held::LogTrip;
use super::steps::{Appliance, Pattern};
use crate::model::limits::{CAPACITY_AH, HEALTH_FRAC, MAX_MORE_WINDOWS};
use crate::model::{
    Bank, Draw, DrawSource, DutyCycle, Feed, Group, Inverter, InverterSwitching, Load, Setup,
    TimesOfDay, Usage, Window,
};
use crate::physics::fridge;
use crate::physics::inverter::InverterCurve;
use crate::units::{AmpHours, Hours, Watts};

/// A draw this near to that of a load in the list is taken for it.
const ALIKE_FRAC: f64 = 0.35;
/// Share of its time that the window of an appliance holds.
const IN_WINDOW_FRAC: f64 = 0.9;
/// Time between windows from which on several are taken for one.
const GAP: Hours = Hours(2.0);
/// Hours of the day that must be watched before a running time stands for the whole day.
const WHOLE_DAY_H: usize = 20;

/// The bank with the capacity found: what age has left of the label, or a larger one.
///
/// Below the least that age is allowed to leave, or above the label, the figure on the label itself is
/// replaced.
#[must_use]
pub fn bank_with(bank: &Bank, found: &CapacityFound) -> Bank {
    let left_frac = found.capacity / bank.rated_capacity().max(AmpHours(1e-3));
    let mut bank = bank.clone();
    if (HEALTH_FRAC.min..=HEALTH_FRAC.max).contains(&left_frac) {
        bank.health_frac = left_frac;
    } else {
        let string = found.capacity.0 / f64::from(bank.parallel.max(1));
        bank.capacity_20h = AmpHours(string.clamp(CAPACITY_AH.min, CAPACITY_AH.max));
        bank.health_frac = 1.0;
    }
    bank
}

/// A load for what never stops and the list does not explain.
#[must_use]
pub fn standby_load(id: u32, name: String, unexplained: Watts) -> Load {
    Load {
        id,
        name,
        group: Group::Standby,
        draw: Draw::Power { watts: unexplained },
        draw_source: DrawSource::Meter,
        usage: Usage::AlwaysOn,
        enabled: true,
        ..Load::default()
    }
}

/// What one piece of a load draws at the battery while it runs.
fn running_at_battery(load: &Load, inverter: &Inverter) -> Watts {
    let power = load.draw.watts() * f64::from(load.quantity);
    match load.feed {
        Feed::Dc => power,
        Feed::Inverter => {
            let curve = InverterCurve::of(inverter);
            power * (1.0 + curve.r_per_watt * power.0) + woken(inverter, &curve)
        }
    }
}

/// No-load draw that comes and goes with what runs on the inverter.
fn woken(inverter: &Inverter, curve: &InverterCurve) -> Watts {
    match inverter.switching {
        InverterSwitching::AllDay => Watts::ZERO,
        InverterSwitching::WhenUsed => curve.p0,
        InverterSwitching::PowerSave { asleep } => (curve.p0 - asleep).max(Watts::ZERO),
    }
}

/// The load of the list that an appliance may be: the nearest in power that comes and goes in the same way.
#[must_use]
pub fn likely_load(setup: &Setup, found: &Appliance) -> Option<u32> {
    setup
        .enabled_loads()
        .filter(|load| match (found.pattern, load.usage) {
            (_, Usage::AlwaysOn) => false,
            (Pattern::Thermostat, usage) => matches!(usage, Usage::Duty { .. }),
            (Pattern::Uses, usage) => !matches!(usage, Usage::Duty { .. }),
        })
        .map(|load| {
            let power = running_at_battery(load, &setup.inverter).max(Watts(0.1));
            (load.id, (found.power / power).ln().abs())
        })
        .filter(|(_, off)| *off <= (1.0 + ALIKE_FRAC).ln())
        .min_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(id, _)| id)
}

/// Times of day that hold nearly all of the time of an appliance, in whole hours: its busiest hours where
/// they make two or three windows, else the shortest window.
#[must_use]
pub fn usual_times(found: &Appliance) -> TimesOfDay {
    let ran: [f64; 24] = found.by_hour.map(|share| share.unwrap_or(0.0));
    let whole: f64 = ran.iter().sum();
    let single = TimesOfDay::of(shortest_window(&ran, whole), &[]);
    let mut hours: Vec<(usize, f64)> = ran.into_iter().enumerate().collect();
    hours.sort_by(|a, b| b.1.total_cmp(&a.1));
    let mut held = 0.0;
    let busiest = hours.iter().take_while(|(_, share)| {
        let more = held < IN_WINDOW_FRAC * whole;
        held += share;
        more
    });
    let minute = |hour: usize| (hour % 24 * 60) as u16;
    let busiest: Vec<Window> = busiest
        .map(|(hour, _)| Window { from_min: minute(*hour), to_min: minute(hour + 1) })
        .collect();
    let Some((first, more)) = busiest.split_first() else { return single };
    let several = TimesOfDay::of(*first, more);
    let shorter = several.length() + GAP <= single.length();
    if shorter && several.windows().len() <= MAX_MORE_WINDOWS + 1 { several } else { single }
}

/// The shortest part of the day that holds nearly all of the `whole` time.
fn shortest_window(ran: &[f64; 24], whole: f64) -> Window {
    for length in 1..24 {
        for from in 0..24 {
            let inside: f64 = (0..length).map(|hour| ran[(from + hour) % 24]).sum();
            if inside >= IN_WINDOW_FRAC * whole {
                let minute = |hour: usize| (hour % 24 * 60) as u16;
                return Window { from_min: minute(from), to_min: minute(from + length) };
            }
        }
    }
    Window::ALL_DAY
}

/// Share of the time a thermostat lets it run: carried to 25 degrees Celsius where it is warm enough for that.
fn cycle(found: &Appliance, load: &Load, trip: &LogTrip) -> DutyCycle {
    let air = trip.air_watched(&found.by_hour, load.place);
    fridge::duty_at_25c_from(found.duty_frac, air)
        .map_or(DutyCycle::Fixed { frac: found.duty_frac }, |frac_at_25c| {
            DutyCycle::AirTemperature { frac_at_25c }
        })
}

/// The load with what was measured of it.
///
/// Draw always; how long it runs only where that stands for the whole day: a thermostat, or most of the day
/// watched, or a load that says nothing of its own yet (`new`).
#[must_use]
pub fn measured_load(
    load: &Load,
    found: &Appliance,
    inverter: &Inverter,
    trip: &LogTrip,
    new: bool,
) -> Load {
    let mut load = load.clone();
    let pieces = f64::from(load.quantity.max(1));
    let watts = match load.feed {
        Feed::Dc => found.power,
        Feed::Inverter => {
            let curve = InverterCurve::of(inverter);
            let through = (found.power - woken(inverter, &curve)).max(Watts(0.1));
            // P + r P^2 = what the battery gives for it.
            let r = curve.r_per_watt;
            if r > 0.0 {
                Watts(((1.0 + 4.0 * r * through.0).sqrt() - 1.0) / (2.0 * r))
            } else {
                through
            }
        }
    };
    load.draw = Draw::Power { watts: watts / pieces };
    load.draw_source = DrawSource::Meter;
    load.spread_frac = None;
    let watched_hours = found.by_hour.iter().flatten().count();
    match found.pattern {
        Pattern::Thermostat => {
            let follows_air = !matches!(
                load.usage,
                Usage::Duty { cycle: DutyCycle::Heating { .. } | DutyCycle::Cooling { .. } }
            );
            if follows_air {
                load.usage = Usage::Duty { cycle: cycle(found, &load, trip) };
            }
        }
        Pattern::Uses if new || watched_hours >= WHOLE_DAY_H => {
            load.usage = Usage::Daily { minutes: found.per_day.minutes().min(1440.0) };
            load.set_times_of_day(&usual_times(found));
        }
        Pattern::Uses => {}
    }
    load
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Ran so much of these hours, and never of the others.
    fn ran(hours: &[(usize, f64)]) -> Appliance {
        let mut by_hour = [Some(0.0); 24];
        for (hour, share) in hours {
            by_hour[*hour] = Some(*share);
        }
        Appliance {
            power: Watts(60.0),
            power_sd: Watts(1.0),
            runs: 20,
            usual_run: Hours(1.0),
            duty_frac: 0.1,
            per_day: Hours(2.0),
            by_hour,
            pattern: Pattern::Uses,
        }
    }

    fn found(hours: &[(usize, f64)]) -> Vec<(u16, u16)> {
        let times = usual_times(&ran(hours)).windows();
        times.iter().map(|window| (window.from_min / 60, window.to_min / 60)).collect()
    }

    #[test]
    fn breakfast_and_evening_are_two_times_and_a_stray_run_is_none() {
        assert_eq!(found(&[(7, 0.5), (18, 0.4), (19, 0.6), (13, 0.02)]), [(7, 8), (18, 20)]);
        assert_eq!(found(&[(23, 0.5), (0, 0.5), (12, 0.5)]), [(12, 13), (23, 1)]);
    }

    #[test]
    fn a_pause_of_an_hour_and_use_all_over_the_day_are_one_time() {
        assert_eq!(found(&[(18, 0.5), (20, 0.5)]), [(18, 21)]);
        let all_over: Vec<(usize, f64)> = (0..8).map(|run| (6 + 2 * run, 0.5)).collect();
        assert_eq!(found(&all_over).len(), 1);
        assert_eq!(found(&[]), [(0, 1)]);
    }
}
