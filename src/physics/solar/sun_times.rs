//! Sunrise, solar noon and sunset in camp time.
//!
//! The centre of the sun stands at -0.8333 degrees when its upper edge touches the horizon:
//! 16 arc minutes of radius and 34 of refraction (US Naval Observatory convention).
//!
//! ```text
//! cos H0 = (sin e0 - sin phi sin delta) / (cos phi cos delta),  e0 = -0.8333 deg
//! noon: H = 0;  rise: noon - H0 / 15;  set: noon + H0 / 15     [h], angles in degrees
//! ```
//! H: hour angle, phi: latitude, delta: declination of the sun ([`super::sun`]).
//! Noon is where the hour angle is zero; rise and set lie the sunset hour angle before and after
//! it. Each is found by three rounds of substitution, as the sun moves on meanwhile.

use super::sun::{JulianDate, Sun, sunset_hour_angle};
use crate::units::{Degrees, Hours};
use time::Date;

/// Elevation of the sun's centre at rise and set.
pub const RISE_ELEVATION: Degrees = Degrees(-0.8333);

/// How the sun passes over one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SunTimes {
    /// The sun rises and sets. Clock times after midnight of the day; a time may lie before 0 or
    /// after 24 where the clock is far from the sun.
    RisesAndSets {
        /// Upper edge appears.
        rise: Hours,
        /// Highest.
        noon: Hours,
        /// Upper edge vanishes.
        set: Hours,
    },
    /// Above the horizon all day.
    PolarDay {
        /// Highest.
        noon: Hours,
    },
    /// Below the horizon all day.
    PolarNight {
        /// Least deep.
        noon: Hours,
    },
}

impl SunTimes {
    /// Rise, noon and set on `date` by a clock `utc_offset_min` ahead of UTC. Noon is the one
    /// nearest to 12 h on that clock.
    #[must_use]
    pub fn on(date: Date, latitude: Degrees, longitude: Degrees, utc_offset_min: f64) -> Self {
        let sun_at =
            |hours: f64| Sun::at(JulianDate::from_local(date, hours * 60.0, utc_offset_min));
        let mut noon = 12.0;
        for _ in 0..3 {
            noon -= sun_at(noon).hour_angle(longitude).0 / 15.0;
        }
        // `side`: -1 rise, 1 set. None when the sun does not cross the horizon on that side.
        let crossing = |side: f64| {
            let mut hours = noon + side * 6.0;
            for _ in 0..5 {
                let sun = sun_at(hours);
                let half_day = sunset_hour_angle(latitude, sun.declination(), RISE_ELEVATION).0;
                if half_day <= 0.0 || half_day >= 180.0 {
                    return None;
                }
                // Difference of hour angles the short way round.
                let behind = side * half_day - sun.hour_angle(longitude).0;
                let behind = behind - (behind / 360.0).round() * 360.0;
                hours += behind / 15.0;
            }
            Some(Hours(hours))
        };
        let noon_h = Hours(noon);
        match (crossing(-1.0), crossing(1.0)) {
            (Some(rise), Some(set)) => Self::RisesAndSets { rise, noon: noon_h, set },
            _ if sun_at(noon).seen_from(latitude, longitude).elevation().0 > RISE_ELEVATION.0 => {
                Self::PolarDay { noon: noon_h }
            }
            _ => Self::PolarNight { noon: noon_h },
        }
    }
}
