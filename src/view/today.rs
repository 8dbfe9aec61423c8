//! The camp's clock now, and how far the stay has come.

use crate::model::Trip;
use crate::units::Hours;
use time::Date;

/// Date and minute of the day of the camp's clock now.
#[must_use]
pub fn camp_now(trip: &Trip) -> Option<(Date, u16)> {
    let minutes = (js_sys::Date::now() / 60_000.0).floor() + f64::from(trip.utc_offset_min);
    let days = (minutes / 1440.0).floor();
    let date = Date::from_julian_day(days as i32 + 2_440_588).ok()?;
    Some((date, (minutes - days * 1440.0) as u16))
}

/// Time from arrival to a moment of the camp's clock.
#[must_use]
pub fn since_arrival(trip: &Trip, date: Date, minute: u16) -> Hours {
    let days = (date - trip.start()).whole_days() as f64;
    Hours(days * 24.0 + f64::from(minute) / 60.0 - f64::from(trip.arrival_hour))
}

/// Time since arrival now; `None` before it.
#[must_use]
pub fn since_arrival_now(trip: &Trip) -> Option<Hours> {
    let (date, minute) = camp_now(trip)?;
    Some(since_arrival(trip, date, minute)).filter(|since| since.0 >= 0.0)
}
