//! Where the sun stands and how strong it is above the air.
//!
//! Low-precision formulas of the Astronomical Almanac (page C5 of any recent year; also
//! J. J. Michalsky, Solar Energy 40(3), 1988, 227-235). They stay within 0.012 degrees of the
//! NREL Solar Position Algorithm for 2025-2034.
//!
//! ```text
//! n     = JD - 2451545.0                                 days since J2000
//! L     = 280.460 + 0.9856474 n                          mean longitude            [deg]
//! g     = 357.528 + 0.9856003 n                          mean anomaly              [deg]
//! lam   = L + 1.915 sin g + 0.020 sin 2g                 ecliptic longitude        [deg]
//! eps   = 23.439 - 0.0000004 n                           obliquity                 [deg]
//! alpha = atan2(cos eps sin lam, cos lam)                right ascension
//! delta = asin(sin eps sin lam)                          declination
//! R     = 1.00014 - 0.01671 cos g - 0.00014 cos 2g       distance                  [AU]
//! GMST  = 280.46062 + 360.98564737 n                     Greenwich sidereal angle  [deg]
//! H     = GMST + longitude - alpha                       hour angle, west positive
//! east  = -cos delta sin H
//! north =  sin delta cos phi - cos delta sin phi cos H   phi: latitude
//! up    =  sin delta sin phi + cos delta cos phi cos H - 8.794"/R   (the last: parallax)
//! G0n   = Gsc / R^2,  Gsc = 1361.1 W/m2 (C. A. Gueymard, Solar Energy 168, 2018)
//! ```
//!
//! A direction is kept as the vector (east, north, up), so the poles and the zenith need no
//! special case and the angle to a panel is one dot product.

use crate::model::Place;
use crate::units::{Degrees, WattHoursPerSquareMetre, WattsPerSquareMetre};
use std::f64::consts::PI;
use time::{Date, Month};

/// Irradiance facing the sun at one astronomical unit, above the air.
pub const SOLAR_CONSTANT: WattsPerSquareMetre = WattsPerSquareMetre(1361.1);

/// 2000-01-01 12:00, the epoch of the formulas, as a Julian date.
const J2000: f64 = 2_451_545.0;
/// Angle of the earth's radius seen from the sun at 1 AU, 8.794 arc seconds [rad].
const PARALLAX_RAD: f64 = 8.794 / 3600.0 * PI / 180.0;

/// An instant: days since noon on 1 January 4713 BC, universal time (UTC is near enough).
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct JulianDate(pub f64);

impl JulianDate {
    /// The instant `minutes_utc` after 0 h UTC of `date`; negative and beyond a day are fine.
    #[must_use]
    pub fn from_utc(date: Date, minutes_utc: f64) -> Self {
        Self(f64::from(date.to_julian_day()) - 0.5 + minutes_utc / 1440.0)
    }

    /// The instant a clock `utc_offset_min` ahead of UTC shows `minutes_local` after midnight of
    /// `date`.
    #[must_use]
    pub fn from_local(date: Date, minutes_local: f64, utc_offset_min: f64) -> Self {
        Self::from_utc(date, minutes_local - utc_offset_min)
    }

    /// Days since the epoch J2000.
    #[must_use]
    pub fn days_since_j2000(self) -> f64 {
        self.0 - J2000
    }
}

/// The sun as seen from the middle of the earth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sun {
    /// Hour angle at longitude 0, west positive [rad], not reduced to one turn.
    greenwich_hour_angle_rad: f64,
    declination_rad: f64,
    /// Distance [AU], 0.983 to 1.017.
    distance_au: f64,
}

impl Sun {
    /// The sun at an instant.
    #[must_use]
    pub fn at(instant: JulianDate) -> Self {
        let n = instant.days_since_j2000();
        let anomaly = (357.528 + 0.985_600_3 * n).rem_euclid(360.0).to_radians();
        let (sin_g, cos_g) = anomaly.sin_cos();
        let sin_2g = 2.0 * sin_g * cos_g;
        let cos_2g = 2.0 * cos_g * cos_g - 1.0;
        let longitude = (280.460 + 0.985_647_4 * n + 1.915 * sin_g + 0.020 * sin_2g)
            .rem_euclid(360.0)
            .to_radians();
        let (sin_obliquity, cos_obliquity) = (23.439 - 4.0e-7 * n).to_radians().sin_cos();
        let (sin_lam, cos_lam) = longitude.sin_cos();
        let right_ascension = (cos_obliquity * sin_lam).atan2(cos_lam);
        let sidereal = (280.460_62 + 360.985_647_37 * n).rem_euclid(360.0).to_radians();
        Self {
            greenwich_hour_angle_rad: sidereal - right_ascension,
            declination_rad: (sin_obliquity * sin_lam).asin(),
            distance_au: 1.00014 - 0.01671 * cos_g - 0.00014 * cos_2g,
        }
    }

    /// Angle north of the equator, -23.44 to 23.44 degrees.
    #[must_use]
    pub fn declination(self) -> Degrees {
        Degrees(self.declination_rad.to_degrees())
    }

    /// Distance to the earth [AU].
    #[must_use]
    pub fn distance_au(self) -> f64 {
        self.distance_au
    }

    /// Hour angle at a longitude (east positive): 0 at solar noon, 15 degrees an hour, negative
    /// before noon; -180 to 180.
    #[must_use]
    pub fn hour_angle(self, longitude: Degrees) -> Degrees {
        let turns = (self.greenwich_hour_angle_rad.to_degrees() + longitude.0 + 180.0) / 360.0;
        Degrees((turns - turns.floor()) * 360.0 - 180.0)
    }

    /// Irradiance on a surface facing the sun, above the air.
    #[must_use]
    pub fn extraterrestrial_normal(self) -> WattsPerSquareMetre {
        SOLAR_CONSTANT / (self.distance_au * self.distance_au)
    }

    /// Direction of the sun at a point on the ground: latitude north positive, longitude east
    /// positive.
    #[must_use]
    pub fn seen_from(self, latitude: Degrees, longitude: Degrees) -> SunDirection {
        let hour_angle = Degrees(self.greenwich_hour_angle_rad.to_degrees() + longitude.0);
        let mut seen = SunDirection::from_hour_angle(latitude, self.declination(), hour_angle);
        seen.up -= PARALLAX_RAD / self.distance_au;
        seen
    }

    /// Irradiation of a horizontal surface above the air over a whole day with this sun.
    #[must_use]
    pub fn daily_horizontal(self, latitude: Degrees) -> WattHoursPerSquareMetre {
        daily_horizontal(self.extraterrestrial_normal(), latitude, self.declination())
    }
}

/// Hour angle at which the sun's centre sinks to `elevation` (0: the horizon, no refraction):
/// 0 in the polar night, 180 degrees in the polar day.
#[must_use]
pub fn sunset_hour_angle(latitude: Degrees, declination: Degrees, elevation: Degrees) -> Degrees {
    let (sin_dec, cos_dec) = declination.radians().sin_cos();
    let (sin_lat, cos_lat) = latitude.radians().sin_cos();
    let above = elevation.radians().sin() - sin_lat * sin_dec;
    let swing = (cos_lat * cos_dec).abs();
    // At a pole the swing vanishes; the sign of `above` alone decides.
    if above >= swing {
        Degrees(0.0)
    } else if above <= -swing {
        Degrees(180.0)
    } else {
        Degrees((above / swing).acos().to_degrees())
    }
}

/// Irradiation of a horizontal surface above the air over a whole day at one declination:
/// `24/pi G0n (cos phi cos delta sin ws + ws sin phi sin delta)`, ws the sunset hour angle. Zero in
/// the polar night.
///
/// Source: Duffie and Beckman, Solar Engineering of Thermal Processes, eq. 1.10.3.
#[must_use]
pub fn daily_horizontal(
    extraterrestrial_normal: WattsPerSquareMetre,
    latitude: Degrees,
    declination: Degrees,
) -> WattHoursPerSquareMetre {
    let sunset = sunset_hour_angle(latitude, declination, Degrees(0.0)).radians();
    let (sin_dec, cos_dec) = declination.radians().sin_cos();
    let (sin_lat, cos_lat) = latitude.radians().sin_cos();
    let swept = cos_lat * cos_dec * sunset.sin() + sunset * sin_lat * sin_dec;
    WattHoursPerSquareMetre(24.0 / PI * extraterrestrial_normal.0 * swept.max(0.0))
}

/// Direction to the sun as a unit vector in the ground's frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SunDirection {
    /// Component towards east.
    pub east: f64,
    /// Component towards north.
    pub north: f64,
    /// Component towards the zenith: cosine of the zenith angle, negative at night.
    pub up: f64,
}

impl SunDirection {
    /// The sun at a declination and hour angle (0 at solar noon, west positive), seen from a
    /// latitude.
    #[must_use]
    pub fn from_hour_angle(latitude: Degrees, declination: Degrees, hour_angle: Degrees) -> Self {
        let (sin_h, cos_h) = hour_angle.radians().sin_cos();
        let (sin_dec, cos_dec) = declination.radians().sin_cos();
        let (sin_lat, cos_lat) = latitude.radians().sin_cos();
        Self {
            east: -cos_dec * sin_h,
            north: sin_dec * cos_lat - cos_dec * sin_lat * cos_h,
            up: sin_dec * sin_lat + cos_dec * cos_lat * cos_h,
        }
    }

    /// True elevation above the horizon (no refraction), -90 to 90.
    #[must_use]
    pub fn elevation(self) -> Degrees {
        Degrees(self.up.atan2(self.east.hypot(self.north)).to_degrees())
    }
}

/// Irradiation of a horizontal surface above the air over one day, H0, with the sun taken at the
/// place's own noon of `date`.
#[must_use]
pub fn daily_extraterrestrial(
    date: Date,
    latitude: Degrees,
    longitude: Degrees,
) -> WattHoursPerSquareMetre {
    Sun::at(JulianDate::from_utc(date, 720.0 - longitude.0 * 4.0)).daily_horizontal(latitude)
}

/// Mean daily irradiation of a horizontal surface above the air by month of `year`, January first.
#[must_use]
pub fn monthly_extraterrestrial(place: &Place, year: i32) -> [WattHoursPerSquareMetre; 12] {
    std::array::from_fn(|index| {
        let month = Month::January.nth_next(u8::try_from(index).unwrap_or(0));
        let length = month.length(year);
        let sum: WattHoursPerSquareMetre = (1..=length)
            .filter_map(|day| Date::from_calendar_date(year, month, day).ok())
            .map(|date| daily_extraterrestrial(date, place.latitude, place.longitude))
            .sum();
        sum / f64::from(length)
    })
}
