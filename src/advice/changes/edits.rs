//! How changes edit a setup; every number stays within the bounds of the model.

use crate::model::limits::{self, Range};
use crate::model::{Chemistry, DutyCycle, Load, Mounting, Setup, SolarArray, Usage, Window};
use crate::units::{AmpHours, Degrees, Watts};

/// Off from this minute of the day ..
const NIGHT_FROM_MIN: u16 = 23 * 60;
/// .. to this one, when something is switched off for the night.
const NIGHT_TO_MIN: u16 = 7 * 60;
pub(super) fn within(value: f64, range: Range) -> f64 {
    value.clamp(range.min, range.max)
}

/// Six hours around solar noon in camp time.
#[must_use]
pub fn midday(setup: &Setup) -> Window {
    let trip = &setup.trip;
    let noon = 12.0 * 60.0 + f64::from(trip.utc_offset_min) - 4.0 * trip.place.longitude.0;
    let at = |minute: f64| (((minute / 30.0).round() * 30.0).rem_euclid(1440.0)) as u16 % 1440;
    Window { from_min: at(noon - 180.0), to_min: at(noon + 180.0) }
}

pub(super) fn on_load(setup: &mut Setup, id: u32, change: impl Fn(&mut Load)) {
    if let Some(load) = setup.load_mut(id) {
        change(load);
    }
}

pub(super) fn on_array(setup: &mut Setup, index: usize, change: impl Fn(&mut SolarArray)) {
    if let Some(array) = setup.solar.get_mut(index) {
        change(array);
    }
}

pub(super) fn off_at_night(load: &mut Load) {
    load.use_only_in(Window { from_min: NIGHT_TO_MIN, to_min: NIGHT_FROM_MIN });
    if load.usage == Usage::AlwaysOn {
        load.usage = Usage::Daily { minutes: load.window.length().minutes() };
    }
}

pub(super) fn use_share(load: &mut Load, share_frac: f64) {
    match &mut load.usage {
        Usage::Daily { minutes } | Usage::Once { minutes, .. } => *minutes *= share_frac,
        Usage::AlwaysOn => load.usage = Usage::Daily { minutes: 1440.0 * share_frac },
        Usage::Duty { cycle: DutyCycle::Fixed { frac } } => *frac *= share_frac,
        Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } } => {
            *frac_at_25c *= share_frac;
        }
        Usage::Duty { cycle: DutyCycle::Heating { heat, .. } } => {
            let more = if share_frac > 0.0 { heat.0 / share_frac } else { f64::INFINITY };
            heat.0 = within(more, limits::HEAT_W);
        }
        Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c } } => *frac_at_25c *= share_frac,
        // Driving decides.
        Usage::WhileDriving => {}
        Usage::Charges { every_days, .. } => {
            let rarer = if share_frac > 0.0 { *every_days / share_frac } else { f64::INFINITY };
            *every_days = within(rarer, limits::CHARGE_EVERY_DAYS);
        }
        Usage::Litres { litres_per_day, .. } => *litres_per_day = *litres_per_day * share_frac,
        Usage::Uses { per_day, .. } => *per_day *= share_frac,
        Usage::Energy { per_day } => *per_day = *per_day * share_frac,
    }
}

pub(super) fn put_up(setup: &mut Setup, peak: Watts, tilt: Degrees, facing: Degrees) {
    if setup.solar.len() >= limits::MAX_ARRAYS {
        return;
    }
    setup.solar.push(SolarArray {
        peak: Watts(within(peak.0, limits::SOLAR_W)),
        tilt: Degrees(within(tilt.0, limits::TILT_DEG)),
        facing: Degrees(within(facing.0, limits::FACING_DEG)),
        mounting: Mounting::OpenRack,
        ..SolarArray::default()
    });
}

pub(super) fn drive(setup: &mut Setup, day: usize, more: f64) {
    if day > limits::NIGHTS.max as usize {
        return;
    }
    let planned = if setup.driving.every.falls_on(day) { setup.driving.minutes } else { 0.0 };
    let plan = setup.trip.day_mut(day);
    let minutes = plan.drive_minutes.unwrap_or(planned) + more.max(0.0);
    plan.drive_minutes = Some(within(minutes, limits::MINUTES_A_DAY));
}

pub(super) fn more_battery(setup: &mut Setup, more: AmpHours) {
    let strings = f64::from(setup.bank.parallel.max(1));
    let string = setup.bank.capacity_20h.0 + more.0.max(0.0) / strings;
    setup.bank.capacity_20h = AmpHours(within(string, limits::CAPACITY_AH));
}

pub(super) fn lithium(setup: &mut Setup, capacity: AmpHours) {
    let bank = &mut setup.bank;
    if bank.chemistry.is_lead() {
        bank.exchange(Chemistry::LiFePo4);
        bank.health_frac = 1.0;
        if capacity != bank.rated_capacity() {
            bank.parallel = 1;
            bank.capacity_20h = AmpHours(within(capacity.0, limits::CAPACITY_AH));
        }
    }
}

pub(super) fn more_solar(setup: &mut Setup, more: Watts) {
    let more = more.max(Watts::ZERO);
    let have = setup.solar_peak();
    if have.0 > 0.0 {
        for array in setup.solar.iter_mut().filter(|array| array.enabled) {
            array.peak =
                Watts(within(array.peak.0 + more.0 * (array.peak / have), limits::SOLAR_W));
        }
    } else if let Some(array) = setup.solar.iter_mut().find(|array| array.enabled) {
        array.peak = Watts(within(more.0, limits::SOLAR_W));
    } else if setup.solar.len() < limits::MAX_ARRAYS {
        let facing = setup.trip.place.noon_facing();
        setup.solar.push(SolarArray {
            peak: Watts(within(more.0, limits::SOLAR_W)),
            facing,
            ..SolarArray::default()
        });
    }
}
