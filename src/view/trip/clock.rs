//! Camp clock against UTC: by the time zone of the place on the day of arrival where the list of
//! places is here, else as this device keeps it, or by the longitude.

use crate::model::Trip;
use crate::model::limits::UTC_OFFSET_MIN;
use crate::units::Degrees;
use crate::view::places_file;
use js_sys::{Array, Function, Object, Reflect};
use time::Date;
use wasm_bindgen::JsCast;

/// Julian day of 1 January 1970.
const UNIX_JULIAN_DAY: i32 = 2_440_588;
/// A zone clock strays from the sun by less than this [min] nearly everywhere; where this device's
/// clock strays farther, the place lies in another zone.
const SAME_ZONE_MIN: f64 = 165.0;

/// The clock of the longitude in whole hours [min east of UTC]; 15 degrees are one hour.
pub(super) fn by_longitude(longitude: Degrees) -> i16 {
    within((longitude.0 / 15.0).round() * 60.0)
}

/// This device's clock on that day at noon, summer time included [min east of UTC].
pub(super) fn of_device(date: Date) -> i16 {
    let year = u32::try_from(date.year()).unwrap_or(2026);
    let month = i32::from(u8::from(date.month())) - 1;
    let noon = js_sys::Date::new_with_year_month_day_hr(year, month, i32::from(date.day()), 12);
    within(-noon.get_timezone_offset())
}

/// The clock of the place's time zone on the day of arrival, summer time included.
pub(super) fn suggested(trip: &Trip) -> i16 {
    of_zone(trip).unwrap_or_else(|| without_zone(trip))
}

/// The clock [min east of UTC] that the browser keeps for the zone of the nearest listed place.
fn of_zone(trip: &Trip) -> Option<i16> {
    let list = places_file::here()?;
    let zone = list.zone(trip.place.latitude, trip.place.longitude)?;
    let date = trip.start();
    let noon = f64::from(date.to_julian_day() - UNIX_JULIAN_DAY) * 86_400_000.0 + 43_200_000.0;
    let options = Object::new();
    for (name, value) in [("timeZone", zone), ("timeZoneName", "longOffset")] {
        Reflect::set(&options, &name.into(), &value.into()).ok()?;
    }
    // Made by name: a zone or an option the browser does not know makes the class throw.
    let intl = Reflect::get(&js_sys::global(), &"Intl".into()).ok()?;
    let class: Function = Reflect::get(&intl, &"DateTimeFormat".into()).ok()?.dyn_into().ok()?;
    let format = Reflect::construct(&class, &Array::of2(&"en-US".into(), &options)).ok()?;
    let parts: Function = Reflect::get(&format, &"formatToParts".into()).ok()?.dyn_into().ok()?;
    let parts: Array = parts.call1(&format, &noon.into()).ok()?.dyn_into().ok()?;
    parts.iter().find_map(|part| {
        let field = |name: &str| Reflect::get(&part, &name.into()).ok()?.as_string();
        (field("type")? == "timeZoneName").then(|| offset_min(&field("value")?)).flatten()
    })
}

/// Minutes east of UTC in a text such as `GMT`, `GMT+02:00` or `GMT-03:30`.
fn offset_min(text: &str) -> Option<i16> {
    let rest = text.strip_prefix("GMT")?;
    if rest.is_empty() {
        return Some(0);
    }
    let sign = if rest.starts_with(['-', '\u{2212}']) { -1.0 } else { 1.0 };
    let mut figures = rest.trim_start_matches(['+', '-', '\u{2212}']).split(':');
    let hours: f64 = figures.next()?.parse().ok()?;
    let minutes: f64 = figures.next().unwrap_or("0").parse().ok()?;
    Some(within(sign * (hours * 60.0 + minutes)))
}

/// This device's clock where it can be that of the place, else the longitude's.
fn without_zone(trip: &Trip) -> i16 {
    let device = of_device(trip.start());
    let longitude = trip.place.longitude;
    if (f64::from(device) - longitude.0 * 4.0).abs() <= SAME_ZONE_MIN {
        device
    } else {
        by_longitude(longitude)
    }
}

fn within(minutes: f64) -> i16 {
    if minutes.is_finite() {
        minutes.round().clamp(UTC_OFFSET_MIN.min, UTC_OFFSET_MIN.max) as i16
    } else {
        0
    }
}

/// Changes place or date; a clock that was the suggested one stays the suggested one.
pub(super) fn keep_suggested(trip: &mut Trip, change: impl FnOnce(&mut Trip)) {
    let now = trip.utc_offset_min;
    let followed = now == suggested(trip) || now == without_zone(trip);
    change(trip);
    if followed {
        trip.utc_offset_min = suggested(trip);
    }
}

/// `UTC+2`, `UTC−3:30`.
pub(super) fn utc(minutes: i16) -> String {
    let size = minutes.unsigned_abs();
    let sign = if minutes < 0 { '−' } else { '+' };
    let (hours, rest) = (size / 60, size % 60);
    if rest == 0 { format!("UTC{sign}{hours}") } else { format!("UTC{sign}{hours}:{rest:02}") }
}
