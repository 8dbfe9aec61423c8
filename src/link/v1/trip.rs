//! The trip in version 1 of a link: place, date, nights, days.

use super::choice::{choice, choices};
use super::extension::Extension;
use super::power::byte;
use super::scales;
use crate::link::wire::{Fault, Scale, Wire, differing, differing_number, flag, list, optional};
use crate::model::limits::{self, MAX_NAME_CHARS, NIGHTS, Range};
use crate::model::{DayPlan, MonthlySun, Place, Trip, Vehicle, Weather};
use crate::units::{Celsius, Degrees, Metres, WattHoursPerSquareMetre};

/// Fields that came later.
pub(super) const EXTENSIONS: &[Extension] = &[Extension {
    number: 0,
    fields: |w, setup, _base| {
        differing(w, &mut setup.vehicle, &Vehicle::Van, choice)?;
        let plain = plain_trip().heated_to;
        differing(w, &mut setup.trip.heated_to, &plain, |w, heated_to| {
            optional(w, heated_to, || Celsius(0.0), |w, kept| w.number(&mut kept.0, &INSIDE_C))
        })
    },
}];

choices!(Vehicle: 3; Van = 0, Caravan = 1, Motorhome = 2);

/// Latitude: 0.1 deg, some 11 km; a link does not tell the pitch.
const LATITUDE: Scale = Scale::signed(limits::LATITUDE_DEG, 10, &[1], 9);
/// Longitude: 0.1 deg.
const LONGITUDE: Scale = Scale::signed(limits::LONGITUDE_DEG, 10, &[1], 9);
/// Altitudes are carried in steps of so many metres: a contour line through a cell of 0.1 deg would
/// tell more of the place than the forecast needs.
const ALTITUDE_STEP_M: f64 = 50.0;
/// Altitude in [`ALTITUDE_STEP_M`].
const ALTITUDE: Scale = Scale::signed(
    Range {
        min: limits::ALTITUDE_M.min / ALTITUDE_STEP_M,
        max: limits::ALTITUDE_M.max / ALTITUDE_STEP_M,
    },
    1,
    &[1],
    3,
);
/// Sun on the horizontal: 1 Wh/m2.
const SUN_WH_M2: Scale = Scale::unsigned(limits::SUN_WH_M2, 1, &[100, 10, 1], 5);
/// Air temperature: 0.1 degrees Celsius.
const AIR_C: Scale = Scale::signed(limits::AIR_C, 10, &[10, 1], 5);

/// What the vehicle is heated to: 0.1 degrees Celsius.
const INSIDE_C: Scale = Scale::unsigned(limits::INSIDE_C, 10, &[10, 1], 5);

/// Most days a trip may speak of: the nights and the day of departure.
const MAX_DAYS: usize = NIGHTS.max as usize + 1;

/// What a link that does not carry it means.
pub(super) fn plain_trip() -> Trip {
    Trip {
        place: Place {
            name: String::new(),
            latitude: Degrees(50.0),
            longitude: Degrees(8.0),
            altitude: Metres(100.0),
        },
        utc_offset_min: 60,
        year: 2026,
        month: 6,
        day: 15,
        arrival_hour: 16,
        nights: 7,
        days: Vec::new(),
        own_sun: None,
        own_air: None,
        heated_to: Some(Celsius(16.0)),
        ground_albedo_frac: 0.2,
    }
}

pub(super) fn trip(w: &mut dyn Wire, trip: &mut Trip) -> Result<(), Fault> {
    let base = plain_trip();
    differing(w, &mut trip.place, &base.place, place)?;
    differing(w, &mut trip.utc_offset_min, &base.utc_offset_min, utc_offset)?;
    date(w, trip)?;
    differing(w, &mut trip.arrival_hour, &base.arrival_hour, |w, hour| fixed(w, hour, 5))?;
    differing(w, &mut trip.nights, &base.nights, |w, nights| byte(w, nights, 3))?;
    list(w, &mut trip.days, MAX_DAYS, 0, plain_day, |w, _, day| {
        differing(w, day, &plain_day(), self::day)
    })?;
    let no_sun = || MonthlySun([WattHoursPerSquareMetre(0.0); 12]);
    optional(w, &mut trip.own_sun, no_sun, |w, sun| {
        sun.0.iter_mut().try_for_each(|month| w.number(&mut month.0, &SUN_WH_M2))
    })?;
    optional(w, &mut trip.own_air, || Celsius(0.0), |w, air| w.number(&mut air.0, &AIR_C))?;
    let albedo = &mut trip.ground_albedo_frac;
    differing_number(w, albedo, base.ground_albedo_frac, &scales::FRAC)
}

fn place(w: &mut dyn Wire, place: &mut Place) -> Result<(), Fault> {
    let base = plain_trip().place;
    differing(w, &mut place.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    w.number(&mut place.latitude.0, &LATITUDE)?;
    w.number(&mut place.longitude.0, &LONGITUDE)?;
    differing(w, &mut place.altitude, &base.altitude, |w, altitude| {
        let mut steps = altitude.0 / ALTITUDE_STEP_M;
        w.number(&mut steps, &ALTITUDE)?;
        altitude.0 = steps * ALTITUDE_STEP_M;
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

/// What a link that does not carry it means.
pub(super) fn plain_day() -> DayPlan {
    DayPlan { weather: Weather::Unknown, drive_minutes: None, hook_up: None }
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
            w.number(&mut sun.0, &SUN_WH_M2)?;
            Weather::Sun { per_day: sun }
        }
        _ => return Err(Fault::UnknownChoice),
    };
    Ok(())
}
