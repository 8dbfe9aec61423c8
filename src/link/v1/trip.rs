//! Where, when and for how long.

use super::power::byte;
use super::{frozen, scales};
use crate::link::wire::{Fault, Wire, differing, differing_number, flag, list, optional};
use crate::model::limits::{MAX_NAME_CHARS, NIGHTS};
use crate::model::{DayPlan, MonthlySun, Place, Trip, Weather};
use crate::units::{Celsius, WattHoursPerSquareMetre};

/// Most days a trip may speak of: the nights and the day of departure.
const MAX_DAYS: usize = NIGHTS.max as usize + 1;

pub(super) fn trip(w: &mut dyn Wire, trip: &mut Trip) -> Result<(), Fault> {
    let base = frozen::trip();
    differing(w, &mut trip.place, &base.place, place)?;
    differing(w, &mut trip.utc_offset_min, &base.utc_offset_min, utc_offset)?;
    date(w, trip)?;
    differing(w, &mut trip.arrival_hour, &base.arrival_hour, |w, hour| fixed(w, hour, 5))?;
    differing(w, &mut trip.nights, &base.nights, |w, nights| byte(w, nights, 3))?;
    list(w, &mut trip.days, MAX_DAYS, 0, frozen::day, |w, _, day| {
        differing(w, day, &frozen::day(), self::day)
    })?;
    let no_sun = || MonthlySun([WattHoursPerSquareMetre(0.0); 12]);
    optional(w, &mut trip.own_sun, no_sun, |w, sun| {
        sun.0.iter_mut().try_for_each(|month| w.number(&mut month.0, &scales::SUN_WH_M2))
    })?;
    optional(w, &mut trip.own_air, || Celsius(0.0), |w, air| w.number(&mut air.0, &scales::AIR_C))?;
    let albedo = &mut trip.ground_albedo_frac;
    differing_number(w, albedo, base.ground_albedo_frac, &scales::FRAC)
}

fn place(w: &mut dyn Wire, place: &mut Place) -> Result<(), Fault> {
    let base = frozen::trip().place;
    differing(w, &mut place.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    w.number(&mut place.latitude.0, &scales::LATITUDE)?;
    w.number(&mut place.longitude.0, &scales::LONGITUDE)?;
    differing(w, &mut place.altitude, &base.altitude, |w, altitude| {
        let mut steps = altitude.0 / scales::ALTITUDE_STEP_M;
        w.number(&mut steps, &scales::ALTITUDE)?;
        altitude.0 = steps * scales::ALTITUDE_STEP_M;
        Ok(())
    })
}

/// Quarter hours from -12 h.
const QUARTER_MIN: i32 = 15;

fn utc_offset(w: &mut dyn Wire, offset_min: &mut i16) -> Result<(), Fault> {
    let from_west = (i32::from(*offset_min) + 720).max(0);
    let mut odd = from_west % QUARTER_MIN != 0;
    flag(w, &mut odd)?;
    let (step, width) = if odd { (1, 11) } else { (QUARTER_MIN, 7) };
    let mut steps = u32::try_from(from_west / step).unwrap_or(0);
    w.bits(&mut steps, width)?;
    let minutes = i32::try_from(steps).map_err(|_| Fault::Invalid)? * step - 720;
    *offset_min = i16::try_from(minutes).map_err(|_| Fault::Invalid)?;
    Ok(())
}

fn date(w: &mut dyn Wire, trip: &mut Trip) -> Result<(), Fault> {
    let mut year = u32::from(trip.year.saturating_sub(2000));
    w.bits(&mut year, 7)?;
    trip.year = u16::try_from(year).map_err(|_| Fault::Invalid)?.saturating_add(2000);
    fixed(w, &mut trip.month, 4)?;
    fixed(w, &mut trip.day, 5)
}

fn fixed(w: &mut dyn Wire, value: &mut u8, width: u32) -> Result<(), Fault> {
    let mut bits = u32::from(*value);
    w.bits(&mut bits, width)?;
    *value = u8::try_from(bits).map_err(|_| Fault::Invalid)?;
    Ok(())
}

fn day(w: &mut dyn Wire, day: &mut DayPlan) -> Result<(), Fault> {
    weather(w, &mut day.weather)?;
    optional(w, &mut day.drive_minutes, || 0.0, |w, minutes| w.number(minutes, &scales::MINUTES))?;
    optional(w, &mut day.hook_up, || false, flag)
}

fn weather(w: &mut dyn Wire, weather: &mut Weather) -> Result<(), Fault> {
    let mut number = match weather {
        Weather::Unknown => 0,
        Weather::Typical => 1,
        Weather::Clear => 2,
        Weather::Mixed => 3,
        Weather::Dull => 4,
        Weather::Sun { .. } => 5,
    };
    w.bits(&mut number, 3)?;
    let mut sun = match *weather {
        Weather::Sun { per_day } => per_day,
        _ => WattHoursPerSquareMetre(0.0),
    };
    *weather = match number {
        0 => Weather::Unknown,
        1 => Weather::Typical,
        2 => Weather::Clear,
        3 => Weather::Mixed,
        4 => Weather::Dull,
        5 => {
            w.number(&mut sun.0, &scales::SUN_WH_M2)?;
            Weather::Sun { per_day: sun }
        }
        _ => return Err(Fault::Invalid),
    };
    Ok(())
}
