//! When the engine, the hook-up and other machines charge, hour by hour.
//!
//! Time runs from midnight, camp time, before arrival. A session that starts at `from` on a day
//! and lasts `t` covers the share of each hour that overlaps it, past midnight too.

use crate::model::{DrivingCharger, Setup, SystemVoltage};
use crate::physics::cable::copper_loop;
use crate::units::{Amps, Hours, Litres, Ohms, Volts};

/// Resistance left in relay, connectors and fuse of a split-charge circuit (from memory).
const CONTACTS: Ohms = Ohms(0.015);
/// Share of driving time in which a smart alternator charges at its full voltage (common
/// practice, no source).
const SMART_SHARE: f64 = 0.5;

/// What can charge in one hour, apart from the sun.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct HourSupply {
    /// Mean current offered by a dc-dc charger while driving.
    pub dcdc: Amps,
    /// Split-charge relay.
    pub relay: Option<Relay>,
    /// Mean current offered by the mains charger.
    pub hook_up: Amps,
    /// Mean current offered by generator, fuel cell and wind.
    pub other: Amps,
    /// Share of the hour in which the sockets are fed by the hook-up itself, 0..1.
    pub sockets_on_hook_up: f64,
    /// Share of the hour spent driving, 0..1.
    pub driving_share: f64,
    /// Share of the hour on hook-up, 0..1.
    pub hook_up_share: f64,
    /// Fuel burnt.
    pub fuel: Litres,
}

/// A split-charge circuit in one hour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Relay {
    /// Alternator voltage, of the whole system.
    pub alternator: Volts,
    /// Resistance of the charging cable and its contacts, both ways.
    pub loop_resistance: Ohms,
    /// What the circuit carries at most.
    pub limit: Amps,
    /// Share of the hour it is connected at that voltage, 0..1.
    pub share: f64,
}

/// Share of the hour `hour` (from midnight of the day of arrival) covered by a session from
/// `from` for `length`.
pub(super) fn overlap(hour: f64, from: f64, length: Hours) -> f64 {
    ((hour + 1.0).min(from + length.0) - hour.max(from)).clamp(0.0, 1.0)
}

/// Supply of each hour of day `day` of the trip, 0 the day of arrival.
#[must_use]
pub fn day_supply(setup: &Setup, day: usize) -> [HourSupply; 24] {
    std::array::from_fn(|hour| hour_supply(setup, day * 24 + hour))
}

/// Supply of the hour `hour` counted from midnight of the day of arrival.
#[must_use]
pub fn hour_supply(setup: &Setup, hour: usize) -> HourSupply {
    let today = hour / 24;
    let at = hour as f64;
    // A session may have begun the day before.
    let days = today.saturating_sub(1)..=today;
    let mut supply = HourSupply::default();
    for day in days {
        let midnight = (day * 24) as f64;
        let plan = setup.trip.day_plan(day);
        let covered = |from_min: u16, length: Hours| {
            overlap(at, midnight + f64::from(from_min) / 60.0, length)
        };
        let driving = &setup.driving;
        let minutes = plan.drive_minutes.unwrap_or(if driving.every.falls_on(day) {
            driving.minutes
        } else {
            0.0
        });
        if driving.fitted && minutes > 0.0 {
            let share = covered(driving.from_min, Hours::from_minutes(minutes));
            drive(&mut supply, &driving.charger, setup.bank.system, share);
        }
        let hook_up = &setup.hook_up;
        let plugged = plan.hook_up.unwrap_or(hook_up.every.falls_on(day));
        if hook_up.fitted && plugged {
            let share = covered(hook_up.from_min, hook_up.hours);
            supply.hook_up += hook_up.amps * share;
            supply.hook_up_share = (supply.hook_up_share + share).min(1.0);
            if hook_up.pass_through {
                supply.sockets_on_hook_up = supply.hook_up_share;
            }
        }
        for source in setup.other.iter().filter(|s| s.enabled && s.every.falls_on(day)) {
            let share = covered(source.from_min, source.hours);
            supply.other += source.amps * share;
            supply.fuel += source.fuel_per_hour * share;
        }
    }
    supply
}

fn drive(supply: &mut HourSupply, charger: &DrivingCharger, system: SystemVoltage, share: f64) {
    if share <= 0.0 {
        return;
    }
    supply.driving_share = (supply.driving_share + share).min(1.0);
    match *charger {
        DrivingCharger::DcDc { amps } => supply.dcdc += amps * share,
        DrivingCharger::Relay { alternator, cable_length, cable_size, limit, smart_alternator } => {
            let charging = if smart_alternator { SMART_SHARE } else { 1.0 };
            supply.relay = Some(Relay {
                alternator: alternator * system.series_12v(),
                loop_resistance: copper_loop(cable_length, cable_size) + CONTACTS,
                limit,
                share: share * charging,
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{DayPlan, EveryNth, OtherSource};

    #[test]
    fn hook_up_runs_past_midnight() {
        let mut setup = Setup::default();
        setup.hook_up.fitted = true;
        setup.hook_up.every = EveryNth(2);
        let amps = |hour| hour_supply(&setup, hour).hook_up.0;
        assert_eq!(amps(20), 0.0); // day of arrival: not every second day
        assert_eq!(amps(24 + 17), 0.0);
        assert_eq!(amps(24 + 18), 20.0);
        assert_eq!(amps(48 + 8), 20.0);
        assert_eq!(amps(48 + 9), 0.0);
        assert_eq!(hour_supply(&setup, 48).sockets_on_hook_up, 1.0);
    }

    #[test]
    fn a_day_may_differ_from_the_plan() {
        let mut setup = Setup::default();
        setup.driving.fitted = true;
        setup.driving.every = EveryNth(1);
        setup.trip.days =
            vec![DayPlan::default(), DayPlan { drive_minutes: Some(90.0), ..DayPlan::default() }];
        assert_eq!(hour_supply(&setup, 10).dcdc, Amps(30.0));
        assert_eq!(hour_supply(&setup, 11).dcdc, Amps(0.0));
        assert_eq!(hour_supply(&setup, 24 + 11).dcdc, Amps(15.0));
    }

    #[test]
    fn fuel_is_counted_by_the_hour() {
        let mut setup = Setup::default();
        setup.other.push(OtherSource::default());
        let litres: f64 = (0..24).map(|hour| hour_supply(&setup, hour).fuel.0).sum();
        assert!((litres - 0.8).abs() < 1e-12);
    }
}
