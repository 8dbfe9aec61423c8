//! The trip: place, date, nights, weather and what differs day by day.

use super::sanitise::{FRAC, MAX_NAME_CHARS, MINUTES_A_DAY, SUN_WH_M2, Sanitiser};
use crate::units::{Celsius, Degrees, Metres, WattHoursPerSquareMetre};
use bounds::{
    AIR_C, ALTITUDE_M, ARRIVAL_HOUR, INSIDE_C, LATITUDE_DEG, LONGITUDE_DEG, NIGHTS, UTC_OFFSET_MIN,
    YEAR,
};
use serde::{Deserialize, Serialize};
use time::{Date, Month};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Latitude [deg].
    pub const LATITUDE_DEG: Range = Range::new(-90.0, 90.0);
    /// Longitude [deg].
    pub const LONGITUDE_DEG: Range = Range::new(-180.0, 180.0);
    /// Altitude [m].
    pub const ALTITUDE_M: Range = Range::new(-430.0, 6_000.0);
    /// Camp clock against UTC [min].
    pub const UTC_OFFSET_MIN: Range = Range::new(-720.0, 840.0);
    /// Hour of arrival.
    pub const ARRIVAL_HOUR: Range = Range::new(0.0, 23.0);
    /// Year.
    pub const YEAR: Range = Range::new(2000.0, 2099.0);
    /// Nights.
    pub const NIGHTS: Range = Range::new(1.0, 60.0);
    /// Air temperature [degrees Celsius].
    pub const AIR_C: Range = Range::new(-40.0, 50.0);
    /// What the vehicle is heated to [degrees Celsius].
    pub const INSIDE_C: Range = Range::new(5.0, 30.0);
}

/// A place on Earth.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Place {
    /// Name for people; changes no figure.
    pub name: String,
    /// Latitude [deg], north positive.
    pub latitude: Degrees,
    /// Longitude [deg], east positive.
    pub longitude: Degrees,
    /// Height above the sea [m].
    pub altitude: Metres,
}

impl Default for Place {
    fn default() -> Self {
        Self {
            name: String::new(),
            latitude: Degrees(50.0),
            longitude: Degrees(8.0),
            altitude: Metres(100.0),
        }
    }
}

impl Place {
    /// Where the sun stands at noon for most of the year: south, and north of it south of the equator.
    #[must_use]
    pub fn noon_facing(&self) -> Degrees {
        Degrees(if self.latitude.0 < 0.0 { 0.0 } else { 180.0 })
    }

    /// The same place to 0.1 degrees and 50 m: as fine as a shared link tells it, and as fine as the
    /// forecast looks, so that a link gives the same numbers as the setup it was made from.
    #[must_use]
    pub fn coarse(&self) -> Self {
        let tenth = |angle: Degrees| Degrees((angle.0 * 10.0).round() / 10.0);
        Self {
            name: self.name.clone(),
            latitude: tenth(self.latitude),
            longitude: tenth(self.longitude),
            altitude: Metres((self.altitude.0 / 50.0).round() * 50.0),
        }
    }
}

/// What the sky does on one day.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Weather {
    /// Not known: the odds draw it.
    #[default]
    Unknown,
    /// The month's average day.
    Typical,
    /// Clear sky.
    Clear,
    /// Sun and cloud.
    Mixed,
    /// Overcast.
    Dull,
    /// Known sun on the horizontal for the day [Wh/m2], e.g. from a forecast.
    Sun {
        /// Global irradiation on the horizontal [Wh/m2 a day].
        per_day: WattHoursPerSquareMetre,
    },
}

/// What differs on one day of the trip; day 0 is the day of arrival.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct DayPlan {
    /// The sky.
    pub weather: Weather,
    /// Driving time [min], where it differs from the plan.
    pub drive_minutes: Option<f64>,
    /// On hook-up or not, where it differs from the plan.
    pub hook_up: Option<bool>,
}

/// The user's own figures for the sun, month by month.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct MonthlySun(pub [WattHoursPerSquareMetre; 12]);

/// The trip.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Trip {
    /// Where.
    pub place: Place,
    /// Camp clock against UTC [min], east positive.
    pub utc_offset_min: i16,
    /// Year of arrival, 2000..2099.
    pub year: u16,
    /// Month of arrival, 1..12.
    pub month: u8,
    /// Day of arrival, 1..31.
    pub day: u8,
    /// Hour of arrival, camp time, 0..23.
    pub arrival_hour: u8,
    /// Nights to stay, 1..60.
    pub nights: u8,
    /// What differs by day; shorter than the trip means the rest follows the plan.
    pub days: Vec<DayPlan>,
    /// The user's own monthly sun; `None` takes the built-in climate.
    pub own_sun: Option<MonthlySun>,
    /// The user's own mean air temperature for the trip; `None` takes the climate's.
    pub own_air: Option<Celsius>,
    /// Heated to so much inside, day and night on average; `None`: not heated. 16 degrees Celsius unless
    /// the user says otherwise (common practice, no source).
    pub heated_to: Option<Celsius>,
    /// Light thrown back by the ground, 0..1: 0.2 grass, 0.6 and more snow.
    pub ground_albedo_frac: f64,
}

impl Default for Trip {
    fn default() -> Self {
        Self {
            place: Place::default(),
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
}

impl Trip {
    /// Date of arrival. An impossible date, such as 31 June, becomes the last day of its month.
    #[must_use]
    pub fn start(&self) -> Date {
        let month = Month::try_from(self.month.clamp(1, 12)).unwrap_or(Month::June);
        let year = i32::from(self.year);
        let last = month.length(year);
        Date::from_calendar_date(year, month, self.day.clamp(1, last)).unwrap_or(Date::MIN)
    }

    /// What was said of day `day` (0 is the day of arrival).
    #[must_use]
    pub fn day_plan(&self, day: usize) -> DayPlan {
        self.days.get(day).copied().unwrap_or_default()
    }

    /// What is said of day `day`, to be changed; days up to it that nothing was said of follow the plan.
    pub fn day_mut(&mut self, day: usize) -> &mut DayPlan {
        if self.days.len() <= day {
            self.days.resize(day + 1, DayPlan::default());
        }
        &mut self.days[day]
    }
}

impl DayPlan {
    /// Every field within its bounds.
    fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { weather, drive_minutes, hook_up: _ } = self;
        if let Weather::Sun { per_day } = weather {
            sanitiser.number(&mut per_day.0, SUN_WH_M2, 0.0);
        }
        if let Some(minutes) = drive_minutes {
            sanitiser.number(minutes, MINUTES_A_DAY, 0.0);
        }
    }
}

impl Trip {
    /// Every field within its bounds, the date one of the calendar.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        sanitiser.whole(&mut self.year, YEAR);
        let start = self.start();
        let Self {
            place,
            utc_offset_min,
            year: _,
            month,
            day,
            arrival_hour,
            nights,
            days,
            own_sun,
            own_air,
            heated_to,
            ground_albedo_frac,
        } = self;
        let Place { name, latitude, longitude, altitude } = place;
        sanitiser.text(name, MAX_NAME_CHARS);
        sanitiser.number(&mut latitude.0, LATITUDE_DEG, 50.0);
        sanitiser.number(&mut longitude.0, LONGITUDE_DEG, 0.0);
        sanitiser.number(&mut altitude.0, ALTITUDE_M, 100.0);
        sanitiser.whole(utc_offset_min, UTC_OFFSET_MIN);
        let of_calendar = (u8::from(start.month()), start.day());
        if (*month, *day) != of_calendar {
            (*month, *day) = of_calendar;
            sanitiser.changed += 1;
        }
        sanitiser.whole(arrival_hour, ARRIVAL_HOUR);
        sanitiser.whole(nights, NIGHTS);
        sanitiser.length(days, NIGHTS.max as usize + 1);
        for day in days {
            day.sanitise(sanitiser);
        }
        if let Some(sun) = own_sun {
            for month in &mut sun.0 {
                sanitiser.number(&mut month.0, SUN_WH_M2, 0.0);
            }
        }
        if let Some(air) = own_air {
            sanitiser.number(&mut air.0, AIR_C, 15.0);
        }
        if let Some(kept) = heated_to {
            sanitiser.number(&mut kept.0, INSIDE_C, 16.0);
        }
        sanitiser.number(ground_albedo_frac, FRAC, 0.2);
    }
}
