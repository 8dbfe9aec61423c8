//! Camp clock against UTC: as this device keeps it on the day of arrival, or by the longitude.

use crate::model::Trip;
use crate::model::limits::UTC_OFFSET_MIN;
use crate::units::Degrees;
use time::Date;

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

/// This device's clock where it can be that of the place, else the longitude's.
pub(super) fn suggested(trip: &Trip) -> i16 {
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
    let followed = trip.utc_offset_min == suggested(trip);
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
