//! Which changes make sense for a setup at all; what they are worth is found by playing them.
//!
//! Never offered: switching off or cutting what somebody's health depends on, or what protects or has to
//! run; gas for anything but cooking and heating; an adapter for what has none; driving or hook-up
//! where no charger is fitted; a wet battery moved indoors; anything that would change nothing.

use super::cost::is_medical;
use super::{Change, DRIVE_MINUTES};
use crate::advice::trial::Outcome;
use crate::forecast::demand::energy_per_day;
use crate::forecast::surroundings::Surroundings;
use crate::model::catalogue::{Caution, appliance};
use crate::model::{
    BatteryPlace, Chemistry, Controller, DrivingCharger, DutyCycle, Feed, Group, InverterSwitching,
    Load, Mounting, Setup, Usage,
};
use crate::units::{AmpHours, Amps, Celsius, Degrees, WattHours, Watts};

/// Loads below this a day are not worth a change [Wh].
const NEGLIGIBLE_WH: f64 = 0.5;
/// A mains load above this heats: gas or doing without is the usual way [W].
const HEAVY_W: f64 = 600.0;
/// Small enough for a dc adapter [W].
const ADAPTER_W: f64 = 150.0;
/// Nominal power of a loose panel.
const PORTABLE: Watts = Watts(100.0);
/// Tilts tried [deg].
const TILTS_DEG: [f64; 3] = [20.0, 40.0, 60.0];

/// All changes that make sense, given what becomes of the setup as it is.
#[must_use]
pub fn candidates(setup: &Setup, outcome: &Outcome) -> Vec<Change> {
    let mut list = Vec::new();
    for load in setup.enabled_loads() {
        load_changes(setup, load, &mut list);
    }
    inverter_changes(setup, &mut list);
    panel_changes(setup, &mut list);
    driving_changes(setup, outcome, &mut list);
    hook_up_changes(setup, outcome, &mut list);
    battery_changes(setup, outcome, &mut list);
    list.retain(|change| change.apply(setup) != *setup);
    list
}

fn load_changes(setup: &Setup, load: &Load, list: &mut Vec<Change>) {
    let id = load.id;
    if day_energy(setup, load).0 < NEGLIGIBLE_WH {
        return;
    }
    let small = load.draw.watts().0 * f64::from(load.quantity) <= ADAPTER_W;
    let electronics = matches!(
        load.group,
        Group::Screens | Group::Net | Group::Light | Group::Body | Group::Health
    );
    let entry = load.appliance.and_then(appliance);
    let mains_only = entry.is_some_and(|entry| entry.mains_only);
    if load.feed == Feed::Inverter && small && electronics && !mains_only {
        list.push(Change::DcInstead { load: id });
    }
    if is_medical(load) || entry.is_some_and(|entry| entry.stays_on) {
        return;
    }
    let has = |caution| entry.is_some_and(|entry| entry.has(caution));
    let parked = has(Caution::DrivingOnly) && load.usage != Usage::WhileDriving;
    if parked || has(Caution::CountedElsewhere) {
        list.push(Change::SwitchOff { load: id });
        return;
    }
    let sunny = setup.solar.iter().any(|array| array.enabled && array.peak.0 > 0.0);
    let chargeable = matches!(load.usage, Usage::Charges { .. }) || load.group == Group::Tools;
    if sunny && chargeable {
        list.push(Change::ToMidday { load: id });
    }
    let idles = !matches!(load.group, Group::Cold | Group::Heat);
    if load.standby.0 > 0.0 && idles {
        list.push(Change::Unplug { load: id });
    }
    let heats = matches!(load.group, Group::Kitchen | Group::Body | Group::Heat | Group::Air)
        && load.draw.watts().0 >= HEAVY_W;
    if heats || has(Caution::Heavy) {
        let flame = matches!(load.group, Group::Kitchen | Group::Heat);
        list.push(if flame {
            Change::GasInstead { load: id }
        } else {
            Change::DoWithout { load: id }
        });
    }
    less_use(load, list);
}

/// Energy a day in the warm or in the cold, whichever is more.
fn day_energy(setup: &Setup, load: &Load) -> WattHours {
    let at = |air| energy_per_day(load, &Surroundings::at_rest(setup, [Celsius(air); 24]));
    at(25.0).max(at(0.0))
}

fn less_use(load: &Load, list: &mut Vec<Change>) {
    let id = load.id;
    match load.usage {
        Usage::AlwaysOn => {
            if matches!(load.group, Group::Standby | Group::Net | Group::Screens | Group::Light) {
                list.push(Change::SwitchOff { load: id });
            }
            if !matches!(load.group, Group::Cold | Group::Heat) {
                list.push(Change::OffAtNight { load: id });
            }
        }
        Usage::Daily { minutes } if minutes >= 240.0 => {
            list.push(Change::ShorterUse { load: id, minutes_less: 120.0 });
        }
        Usage::Daily { minutes } if minutes >= 90.0 => {
            list.push(Change::ShorterUse { load: id, minutes_less: 60.0 });
        }
        Usage::Uses { per_day, .. } if per_day >= 2.0 => {
            list.push(Change::FewerUses { load: id, uses_less: 1.0 });
        }
        Usage::Duty { .. } if load.group == Group::Cold => {
            list.push(Change::WarmerFridge { load: id });
        }
        // Driving, the cold, and what has to be done decide.
        Usage::WhileDriving
        | Usage::Once { .. }
        | Usage::Duty { cycle: DutyCycle::Heating { .. } } => {}
        Usage::Duty { cycle: DutyCycle::Fixed { .. } } if load.group == Group::Heat => {
            list.push(Change::UseShare { load: id, share_frac: 0.75 });
        }
        _ => list.push(Change::UseShare { load: id, share_frac: 0.5 }),
    }
}

fn inverter_changes(setup: &Setup, list: &mut Vec<Change>) {
    let inverter = &setup.inverter;
    if !inverter.fitted || inverter.idle.0 <= 0.0 {
        return;
    }
    if inverter.switching != InverterSwitching::WhenUsed {
        list.push(Change::InverterWhenUsed);
    }
    if inverter.switching == InverterSwitching::AllDay {
        // A sleeping inverter draws about a sixth of its no-load draw (common practice).
        let asleep = Watts((inverter.idle.0 / 6.0).max(1.0).min(inverter.idle.0));
        list.push(Change::InverterPowerSave { asleep });
    }
}

fn panel_changes(setup: &Setup, list: &mut Vec<Change>) {
    let facing = setup.trip.place.noon_facing();
    let mut has_loose = false;
    for (index, array) in setup.solar.iter().enumerate() {
        if !array.enabled || array.peak.0 <= 0.0 {
            continue;
        }
        let loose = array.mounting == Mounting::OpenRack;
        has_loose |= loose;
        // A glued panel cannot be tilted, and one already on a bracket stays there.
        if loose || (array.mounting == Mounting::SmallGap && array.tilt.0 <= 10.0) {
            list.extend(TILTS_DEG.iter().map(|tilt| Change::Tilt {
                array: index,
                tilt: Degrees(*tilt),
                facing,
                roof: !loose,
            }));
        }
        if array.dirt_frac >= 0.02 {
            list.push(Change::Clean { array: index });
        }
        let shade = array.shade;
        if shade.morning_frac + shade.midday_frac + shade.afternoon_frac + shade.sky_frac > 0.02 {
            list.push(Change::OutOfShade { array: index });
        }
        if array.controller == Controller::Pwm {
            list.push(Change::MpptController { array: index });
        }
    }
    if !has_loose {
        list.extend([30.0, 60.0].map(|tilt| Change::PortablePanel {
            peak: PORTABLE,
            tilt: Degrees(tilt),
            facing,
        }));
    }
    list.push(Change::MoreSolar { peak: Watts(100.0) });
}

/// Days around those on which the battery gets low, in average weather and at nine in ten.
fn low_days(setup: &Setup, outcome: &Outcome) -> Vec<usize> {
    let arrival = usize::from(setup.trip.arrival_hour);
    let average = outcome.first_low.map(|low| (arrival + low.0 as usize).saturating_sub(1) / 24);
    let sure = (outcome.sequences > 0 && outcome.nights_sure < outcome.lasting_frac.len())
        .then_some(outcome.nights_sure);
    let mut days: Vec<usize> = [average, sure]
        .into_iter()
        .flatten()
        .flat_map(|low| [low.saturating_sub(2), low.saturating_sub(1), low])
        .filter(|day| *day >= 1 && *day <= usize::from(setup.trip.nights))
        .collect();
    days.sort_unstable();
    days.dedup();
    days
}

/// First day that still lies ahead once the forecast was restarted on site.
fn today(setup: &Setup) -> usize {
    setup.correction.restart.map_or(0, |(at, _)| {
        (usize::from(setup.trip.arrival_hour) + at.0.max(0.0) as usize) / 24 + 1
    })
}

fn driving_changes(setup: &Setup, outcome: &Outcome, list: &mut Vec<Change>) {
    let today = today(setup);
    let driving = &setup.driving;
    let planned = driving.every.0 != 0
        || setup.trip.days.iter().any(|day| day.drive_minutes.is_some_and(|m| m > 0.0));
    if driving.fitted {
        let days = low_days(setup, outcome).into_iter().filter(|day| *day >= today);
        list.extend(days.map(|day| Change::Drive { day, minutes: DRIVE_MINUTES }));
        if planned && matches!(driving.charger, DrivingCharger::Relay { .. }) {
            list.push(Change::DcDcCharger { amps: Amps(30.0), drive_every: None });
        }
    } else {
        let drive_every = (!planned).then_some(3);
        list.push(Change::DcDcCharger { amps: Amps(30.0), drive_every });
    }
}

fn hook_up_changes(setup: &Setup, outcome: &Outcome, list: &mut Vec<Change>) {
    if !setup.hook_up.fitted || setup.hook_up.amps.0 <= 0.0 {
        return;
    }
    let now = setup.hook_up.every.0;
    let lasts = [outcome.nights_sure, outcome.nights];
    let mut every: Vec<u8> = lasts
        .iter()
        .flat_map(|nights| [*nights, nights + 1])
        .filter_map(|nights| u8::try_from(nights).ok())
        .filter(|every| *every >= 2 && *every <= setup.trip.nights && (now == 0 || *every < now))
        .collect();
    every.sort_unstable();
    every.dedup();
    list.extend(every.into_iter().map(|every| Change::HookUp { every }));
}

fn battery_changes(setup: &Setup, outcome: &Outcome, list: &mut Vec<Change>) {
    let bank = &setup.bank;
    if bank.soc_start_frac < 0.99 && setup.correction.restart.is_none() {
        list.push(Change::ArriveFull);
    }
    let place = match (bank.chemistry, bank.place) {
        // Lead-acid gives off hydrogen: not into the living space.
        (Chemistry::LiFePo4, BatteryPlace::Locker | BatteryPlace::Outside) => {
            Some(BatteryPlace::Inside)
        }
        (_, BatteryPlace::Outside) => Some(BatteryPlace::Locker),
        _ => None,
    };
    if let Some(place) = place {
        list.push(Change::WarmerPlace { place });
    }
    if bank.chemistry == Chemistry::LiFePo4 && !bank.heated && outcome.cold_locked.0 > 0.0 {
        list.push(Change::HeatedBattery);
    }
    list.push(Change::MoreBattery { capacity: AmpHours(100.0 / bank.system.series_12v()) });
    if bank.chemistry.is_lead() {
        list.push(Change::Lithium { capacity: bank.rated_capacity() });
    }
}
