//! Monthly clearness and air temperature of a place, from the best source there is, with its error.
//!
//! Sun, in this order, each month by itself where the user gave only some:
//! 1. what the user typed for the month;
//! 2. the climate of the world ([`World`]), a file of its own beside the program: where it is here
//!    and has cells;
//! 3. the nearest touring region within [`REGION_WITHIN_KM`];
//! 4. latitude alone ([`by_latitude`]).
//!
//! Air: the same without the first; brought to the altitude of the place by [`LAPSE_K_PER_KM`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `K` | clearness index: sun on the horizontal over the same without an atmosphere, `H / H0` | - |
//! | `H` | irradiation of the horizontal, mean of a day | Wh/m2 |
//! | `H0` | the same above the atmosphere | Wh/m2 |

pub mod by_latitude;
pub mod world;

pub use world::{World, WorldAt};

use super::regions::{Nearby, nearest};
use super::{MonthlySun, Place};
use crate::units::{Celsius, Degrees, Metres, WattHoursPerSquareMetre};

/// Farther than this [km] no region speaks for a place.
pub const REGION_WITHIN_KM: f64 = 400.0;
/// Air cools by this much per kilometre of height [K/km], the standard atmosphere (ISO 2533).
pub const LAPSE_K_PER_KM: f64 = 6.5;
/// Credit to print wherever the climate of the world is used.
pub const WORLD_CREDIT: &str = "NASA MERRA-2; WMO normals 1991-2020 (NOAA NCEI); © EUMETSAT CM SAF; \
     © State of Queensland, SILO; KNMI; Copyright Met Éireann";
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
    /// The climate of the world on a grid of 1 degree; print [`WORLD_CREDIT`].
    World,
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
    /// The climate of the world, brought to the altitude of the place.
    World,
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
    /// Error of a month's mean sun, one standard deviation, as a share of it: 0.05 own figures, the
    /// cell's own where the climate of the world is used, 0.10 at the centre of a region (what the
    /// regions were off by at stations of five continents) to 0.15 at its far end, 0.18 by latitude.
    /// Single years stray farther.
    pub accuracy_frac: f64,
}

impl Climate {
    /// Climate of `place` from what the program carries: regions and latitude.
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
        Self::from_world(None, place, own_sun, h0_month)
    }

    /// As [`Self::at`], with the climate of the world where it is here.
    #[must_use]
    pub fn from_world(
        world: Option<&World>,
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
        let found = world.and_then(|world| world.at(place.latitude, place.longitude));
        let mut climate = found.map_or_else(
            || Self::built_in(place),
            |world| Self {
                clearness_frac: world.clearness_frac,
                air: world.air(place.altitude),
                half_range_k: world.half_range_k,
                source: ClimateSource::World,
                air_source: AirSource::World,
                accuracy_frac: world.error_frac,
            },
        );
        if let Some(own) = own_sun {
            climate.take_own(own, h0_month);
        }
        climate
    }

    fn built_in(place: &Place) -> Self {
        let near = nearest(place, 1).pop().filter(|near| near.distance_km <= REGION_WITHIN_KM);
        let altitude = place.altitude;
        if let Some(Nearby { region, distance_km, .. }) = near {
            let cooler = (altitude.0 - region.altitude().0) / 1000.0 * LAPSE_K_PER_KM;
            return Self {
                clearness_frac: region.clearness_frac(),
                air: region.air().map(|air| Celsius(air.0 - cooler)),
                half_range_k: clearer_is_wider(
                    region.day_night_range_k() / 2.0,
                    &region.clearness_frac(),
                ),
                source: ClimateSource::Region { name: region.name, distance_km },
                air_source: AirSource::Region { name: region.name, distance_km },
                accuracy_frac: 0.10 + 0.05 * distance_km / REGION_WITHIN_KM,
            };
        }
        let clearness_frac = by_latitude::clearness_frac(place.latitude);
        Self {
            clearness_frac,
            air: by_latitude::air(place.latitude, altitude),
            half_range_k: by_latitude::half_range_k(&clearness_frac),
            source: ClimateSource::Latitude,
            air_source: AirSource::Latitude,
            accuracy_frac: 0.18,
        }
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
                self.accuracy_frac = 0.05;
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
