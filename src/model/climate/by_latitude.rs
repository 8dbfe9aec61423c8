//! A guess at sky and air from latitude and altitude alone, where nothing better is known.
//!
//! Clearness and sea-level air temperature of a month are a mean of the year plus a seasonal
//! swing that peaks in mid-July north and mid-January south of the equator:
//!
//! `x(month) = mean(|lat|) + swing(|lat|) cos(2 pi (month - 7) / 12)`, six months later south
//!
//! Means and swings run straight between the points of the tables below. The points were drawn
//! through the means of this program's own regions by bands of latitude (no other source); single
//! regions stray from them by 0.03 to 0.10 in clearness and by 3 to 5 K in temperature, most on
//! west coasts and in the dry middles of continents: how far the sea is, the tables do not know.
//! South of the equator there is more sea, so the temperature swings about half as much.

use super::LAPSE_K_PER_KM;
use crate::units::{Celsius, Degrees, Metres};
use std::f64::consts::PI;

/// Latitude [deg], mean clearness index of the year, its seasonal swing.
const CLEARNESS: [(f64, f64, f64); 12] = [
    (0.0, 0.49, 0.0),
    (10.0, 0.50, -0.03),
    (17.0, 0.55, -0.05),
    (25.0, 0.57, -0.02),
    (33.0, 0.56, 0.05),
    (38.0, 0.545, 0.075),
    (43.0, 0.49, 0.075),
    (48.0, 0.44, 0.08),
    (53.0, 0.41, 0.085),
    (60.0, 0.385, 0.09),
    (70.0, 0.36, 0.12),
    (90.0, 0.40, 0.12),
];

/// Latitude [deg], mean air temperature at the sea [degrees Celsius], seasonal swing in the north
/// and in the south [K].
const AIR: [(f64, f64, f64, f64); 10] = [
    (0.0, 27.5, 0.0, 0.0),
    (10.0, 27.5, 1.0, 1.5),
    (20.0, 25.5, 4.0, 4.0),
    (30.0, 20.5, 7.5, 5.5),
    (40.0, 14.5, 9.5, 5.5),
    (50.0, 9.0, 9.5, 5.5),
    (60.0, 4.0, 10.5, 5.5),
    (70.0, -2.0, 11.0, 7.0),
    (80.0, -11.0, 14.0, 12.0),
    (90.0, -18.0, 16.0, 14.0),
];

/// Season of month `index` (0 January): 1 in mid-summer, -1 in mid-winter.
fn season(index: usize, latitude: Degrees) -> f64 {
    let peak = if latitude.0 < 0.0 { 0.0 } else { 6.0 };
    (2.0 * PI * (index as f64 - peak) / 12.0).cos()
}

/// The value at `x` on the straight lines through `points`, which rise in `x`.
fn line(x: f64, points: impl Iterator<Item = (f64, f64)>) -> f64 {
    let mut before: Option<(f64, f64)> = None;
    for (at, value) in points {
        match before {
            Some((x0, y0)) if x < at => return y0 + (value - y0) * (x - x0) / (at - x0),
            None if x < at => return value,
            _ => before = Some((at, value)),
        }
    }
    before.map_or(0.0, |(_, value)| value)
}

/// Monthly clearness index, 0..1, January first.
#[must_use]
pub fn clearness_frac(latitude: Degrees) -> [f64; 12] {
    let off = latitude.0.abs();
    let mean = line(off, CLEARNESS.iter().map(|point| (point.0, point.1)));
    let swing = line(off, CLEARNESS.iter().map(|point| (point.0, point.2)));
    std::array::from_fn(|index| mean + swing * season(index, latitude))
}

/// Mean air temperature of each month at this altitude, January first.
#[must_use]
pub fn air(latitude: Degrees, altitude: Metres) -> [Celsius; 12] {
    let off = latitude.0.abs();
    let mean = line(off, AIR.iter().map(|point| (point.0, point.1)));
    let south = latitude.0 < 0.0;
    let swing = line(off, AIR.iter().map(|point| (point.0, if south { point.3 } else { point.2 })));
    let cooler = altitude.0 / 1000.0 * LAPSE_K_PER_KM;
    std::array::from_fn(|index| Celsius(mean + swing * season(index, latitude) - cooler))
}

/// Half the usual difference between the warmest and the coldest hour of a day [K]:
/// `K = 0.175 sqrt(range)`, between the coefficients 0.16 inland and 0.19 by the sea of
/// Hargreaves and Samani (FAO-56 eq. 50), kept within 2 and 9 K.
#[must_use]
pub fn half_range_k(clearness_frac: &[f64; 12]) -> [f64; 12] {
    clearness_frac.map(|clearness| ((clearness / 0.175).powi(2) / 2.0).clamp(2.0, 9.0))
}
