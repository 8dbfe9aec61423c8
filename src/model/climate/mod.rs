//! The sky and the air a place usually has, and how far to trust them.
//!
//! Sun, in this order, each month by itself where the user gave only some:
//! 1. what the user typed for the month;
//! 2. the measured 1-degree table of central Europe ([`ClimateSource::Grid`]);
//! 3. the nearest touring region within [`REGION_WITHIN_KM`];
//! 4. latitude alone ([`by_latitude`]).
//!
//! Air: the nearest region within the same distance, else latitude; either brought to the
//! altitude of the place by [`LAPSE_K_PER_KM`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `K` | clearness index: sun on the horizontal over the same without an atmosphere, `H / H0` | - |
//! | `H` | irradiation of the horizontal, mean of a day | Wh/m2 |
//! | `H0` | the same above the atmosphere | Wh/m2 |

pub mod by_latitude;
mod grid;

use super::regions::{Nearby, nearest};
use super::{MonthlySun, Place};
use crate::units::{Celsius, Degrees, Metres, WattHoursPerSquareMetre};
use grid::{CLEARNESS_STEPS, FIRST_LAT_DEG, FIRST_LON_DEG, SIDE, STEP_FRAC};

/// Farther than this [km] no region speaks for a place.
pub const REGION_WITHIN_KM: f64 = 400.0;
/// Air cools by this much per kilometre of height [K/km], the standard atmosphere (ISO 2533).
pub const LAPSE_K_PER_KM: f64 = 6.5;
/// Credit to print wherever the measured table is used.
pub const GRID_CREDIT: &str = "© EUMETSAT CM SAF";
/// Clearness an own figure may give, 0..1; what lies outside is pulled in and reported.
pub const OWN_CLEARNESS_FRAC: (f64, f64) = (0.05, 0.85);

/// Months, January first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Months(u16);

impl Months {
    fn add(&mut self, month: usize) {
        self.0 |= 1 << month;
    }

    /// Whether month `index` (0 January, 11 December) is one of them.
    #[must_use]
    pub fn holds(self, index: usize) -> bool {
        index < 12 && self.0 & (1 << index) != 0
    }

    /// How many they are.
    #[must_use]
    pub fn count(self) -> usize {
        self.0.count_ones() as usize
    }
}

/// Where the sun's figures come from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ClimateSource {
    /// The user's own monthly sun.
    OwnSun {
        /// Months the user gave; a month of zero is one that was not given, and the months not
        /// given come from the next source.
        given: Months,
        /// Months whose figure no sky can give and that were pulled to [`OWN_CLEARNESS_FRAC`].
        pulled_in: Months,
    },
    /// Satellite data on a 1-degree grid, 2006-2025; print [`GRID_CREDIT`].
    Grid,
    /// An estimate from memory for a touring region.
    Region {
        /// Name of the region.
        name: &'static str,
        /// How far the region's centre is [km].
        distance_km: f64,
    },
    /// Nothing but the latitude.
    Latitude,
}

/// Where the air temperature comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AirSource {
    /// A touring region, brought to the altitude of the place.
    Region {
        /// Name of the region.
        name: &'static str,
        /// How far the region's centre is [km].
        distance_km: f64,
    },
    /// Latitude and altitude.
    Latitude,
}

/// Climate of a place, January first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Climate {
    /// Mean clearness index of the month, 0..1.
    pub clearness_frac: [f64; 12],
    /// Mean air temperature of the month.
    pub air: [Celsius; 12],
    /// Half the usual difference between the warmest and the coldest hour of a day [K].
    pub half_range_k: [f64; 12],
    /// Where the sun's figures come from.
    pub source: ClimateSource,
    /// Where the temperatures come from.
    pub air_source: AirSource,
    /// Likely error of a month's mean sun, as a share of it: 0.10 own figures, 0.15 measured table
    /// (it reads that much high in the winter at De Bilt), 0.20 at the centre of a region to 0.30
    /// at its far end, 0.30 by latitude. Single years stray farther.
    pub accuracy_frac: f64,
}

impl Climate {
    /// Climate of `place`.
    ///
    /// `h0_month` is the mean daily irradiation above the atmosphere in each month; it turns the
    /// user's own sun into clearness and is not needed otherwise. In a month without sun above
    /// the atmosphere (below 50 Wh/m2 a day) the own figure says nothing and is not used.
    ///
    /// Coordinates that are no numbers count as 0.
    #[must_use]
    pub fn at(
        place: &Place,
        own_sun: Option<&MonthlySun>,
        h0_month: &[WattHoursPerSquareMetre; 12],
    ) -> Self {
        let place = &Place {
            name: String::new(),
            latitude: Degrees(finite(place.latitude.0, 90.0)),
            longitude: Degrees(finite(place.longitude.0, 180.0)),
            altitude: Metres(finite(place.altitude.0, 9000.0)),
        };
        let near = nearest(place, 1).pop().filter(|near| near.distance_km <= REGION_WITHIN_KM);
        let mut climate = Self::built_in(place, near);
        if let Some(own) = own_sun {
            climate.take_own(own, h0_month);
        }
        climate
    }

    fn built_in(place: &Place, near: Option<Nearby>) -> Self {
        let (lat, altitude) = (place.latitude, place.altitude);
        let measured = grid_clearness(place.latitude.0, place.longitude.0);
        let (clearness_frac, source, accuracy_frac) = match (measured, near) {
            (Some(clearness), _) => (clearness, ClimateSource::Grid, 0.15),
            (None, Some(Nearby { region, distance_km, .. })) => (
                region.clearness_frac(),
                ClimateSource::Region { name: region.name, distance_km },
                0.20 + 0.10 * distance_km / REGION_WITHIN_KM,
            ),
            (None, None) => (by_latitude::clearness_frac(lat), ClimateSource::Latitude, 0.30),
        };
        let (air, half_range_k, air_source) = match near {
            Some(Nearby { region, distance_km, .. }) => {
                let cooler = (altitude.0 - region.altitude().0) / 1000.0 * LAPSE_K_PER_KM;
                (
                    region.air().map(|air| Celsius(air.0 - cooler)),
                    clearer_is_wider(region.day_night_range_k() / 2.0, &region.clearness_frac()),
                    AirSource::Region { name: region.name, distance_km },
                )
            }
            None => (
                by_latitude::air(lat, altitude),
                by_latitude::half_range_k(&clearness_frac),
                AirSource::Latitude,
            ),
        };
        Self { clearness_frac, air, half_range_k, source, air_source, accuracy_frac }
    }

    fn take_own(&mut self, own: &MonthlySun, h0_month: &[WattHoursPerSquareMetre; 12]) {
        let (mut given, mut pulled_in) = (Months::default(), Months::default());
        let (lowest, highest) = OWN_CLEARNESS_FRAC;
        for (month, clearness) in self.clearness_frac.iter_mut().enumerate() {
            let (Some(sun), Some(h0)) = (own.0.get(month), h0_month.get(month)) else { continue };
            let typed = *sun / *h0;
            if sun.0 > 0.0 && h0.0 >= 50.0 && typed.is_finite() {
                given.add(month);
                *clearness = typed.clamp(lowest, highest);
                if *clearness != typed {
                    pulled_in.add(month);
                }
            }
        }
        if given.count() > 0 {
            self.source = ClimateSource::OwnSun { given, pulled_in };
            if given.count() == 12 {
                self.accuracy_frac = 0.10;
            }
        }
    }
}

fn finite(value: f64, bound: f64) -> f64 {
    if value.is_finite() { value.clamp(-bound, bound) } else { 0.0 }
}

/// Day-night range by month: it grows with the square of the clearness (Hargreaves and Samani
/// 1982, `K ~ sqrt(range)`, FAO-56 eq. 50), about a usual value for the year.
fn clearer_is_wider(usual_k: f64, clearness_frac: &[f64; 12]) -> [f64; 12] {
    let mean = clearness_frac.iter().sum::<f64>() / 12.0;
    clearness_frac.map(|clearness| usual_k * (clearness / mean).powi(2).clamp(0.6, 1.4))
}

/// Clearness from the measured table: straight between cell centres, the edge cells carried to
/// their outer edge; `None` outside 45-57 N, 5-17 E.
fn grid_clearness(lat_deg: f64, lon_deg: f64) -> Option<[f64; 12]> {
    let rows = lat_deg - FIRST_LAT_DEG;
    let columns = lon_deg - FIRST_LON_DEG;
    let last = SIDE as f64 - 1.0;
    let covered = |cells: f64| (-0.5..=last + 0.5).contains(&cells);
    if !covered(rows) || !covered(columns) {
        return None;
    }
    let (row, up) = cell_and_share(rows, last);
    let (column, right) = cell_and_share(columns, last);
    let cell = |row: usize, column: usize| CLEARNESS_STEPS.get(row * SIDE + column);
    let (sw, se) = (cell(row, column)?, cell(row, column + 1)?);
    let (nw, ne) = (cell(row + 1, column)?, cell(row + 1, column + 1)?);
    let mut clearness = [0.0; 12];
    let corners = sw.iter().zip(se).zip(nw.iter().zip(ne));
    for (out, ((sw, se), (nw, ne))) in clearness.iter_mut().zip(corners) {
        let between =
            |a: u8, b: u8, share: f64| f64::from(a) * (1.0 - share) + f64::from(b) * share;
        let steps = between(*sw, *se, right) * (1.0 - up) + between(*nw, *ne, right) * up;
        *out = steps * STEP_FRAC;
    }
    Some(clearness)
}

/// The lower of the two cells around a position, and the share of the way to the upper one.
fn cell_and_share(cells: f64, last: f64) -> (usize, f64) {
    let cells = cells.clamp(0.0, last);
    let lower = cells.floor().min(last - 1.0);
    (lower as usize, cells - lower)
}
