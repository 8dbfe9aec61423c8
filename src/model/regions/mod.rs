//! Touring regions of the world with the sky and the air they usually have.
//!
//! All figures are estimates from memory: the monthly clearness index to about 20 %, the mean air
//! temperature to about 2 K. They are no measurements and have no source beyond that.
//!
//! The clearness index is the sun that arrives on the horizontal over the month, as a share of
//! the sun that would arrive without an atmosphere.

mod americas;
mod europe;
mod south;
mod south_east;

use crate::model::Place;
use crate::units::{Celsius, Degrees, Metres};

/// One region, packed as the tables hold it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Region {
    /// Geographic name.
    pub name: &'static str,
    lat_tenths: i16,
    lon_tenths: i16,
    altitude_m: i16,
    clearness_percent: [u8; 12],
    air_c: [i8; 12],
    day_night_k: u8,
}

/// Name, latitude and longitude [0.1 deg], altitude [m], clearness January to December [%], mean
/// air January to December [degrees Celsius], usual difference of warmest and coldest hour of a
/// day [K].
const fn r(
    name: &'static str,
    lat_tenths: i16,
    lon_tenths: i16,
    altitude_m: i16,
    clearness_percent: [u8; 12],
    air_c: [i8; 12],
    day_night_k: u8,
) -> Region {
    Region { name, lat_tenths, lon_tenths, altitude_m, clearness_percent, air_c, day_night_k }
}

static TABLES: [&[Region]; 4] =
    [&europe::TABLE, &south_east::TABLE, &americas::TABLE, &south::TABLE];

/// All regions. The place in this order is the region's index; it may change between versions.
pub fn all() -> impl Iterator<Item = &'static Region> {
    TABLES.iter().copied().flatten()
}

/// The region of this index.
#[must_use]
pub fn region(index: usize) -> Option<&'static Region> {
    all().nth(index)
}

/// A region and how far it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nearby {
    /// Index of the region.
    pub index: usize,
    /// The region.
    pub region: &'static Region,
    /// Great-circle distance to its centre [km].
    pub distance_km: f64,
}

/// The `count` regions nearest to a place, nearest first.
#[must_use]
pub fn nearest(place: &Place, count: usize) -> Vec<Nearby> {
    let mut near: Vec<_> = all()
        .enumerate()
        .map(|(index, region)| {
            let distance_km = distance_km(
                (place.latitude, place.longitude),
                (region.latitude(), region.longitude()),
            );
            Nearby { index, region, distance_km }
        })
        .collect();
    near.sort_by(|a, b| a.distance_km.total_cmp(&b.distance_km));
    near.truncate(count);
    near
}

/// Great-circle distance [km] between two points (latitude, longitude), haversine formula on a
/// sphere of 6371 km.
#[must_use]
pub fn distance_km(from: (Degrees, Degrees), to: (Degrees, Degrees)) -> f64 {
    let (lat_a, lat_b) = (from.0.radians(), to.0.radians());
    let half_lat = ((lat_b - lat_a) / 2.0).sin();
    let half_lon = ((to.1.radians() - from.1.radians()) / 2.0).sin();
    let chord = half_lat * half_lat + lat_a.cos() * lat_b.cos() * half_lon * half_lon;
    2.0 * 6371.0 * chord.clamp(0.0, 1.0).sqrt().asin()
}

impl Region {
    /// Latitude of its centre [deg].
    #[must_use]
    pub fn latitude(&self) -> Degrees {
        Degrees(f64::from(self.lat_tenths) / 10.0)
    }

    /// Longitude of its centre [deg].
    #[must_use]
    pub fn longitude(&self) -> Degrees {
        Degrees(f64::from(self.lon_tenths) / 10.0)
    }

    /// Altitude the temperatures are for [m].
    #[must_use]
    pub fn altitude(&self) -> Metres {
        Metres(f64::from(self.altitude_m))
    }

    /// Monthly clearness index, 0..1, January first.
    #[must_use]
    pub fn clearness_frac(&self) -> [f64; 12] {
        self.clearness_percent.map(|percent| f64::from(percent) / 100.0)
    }

    /// Mean air temperature of the month [degrees Celsius], January first.
    #[must_use]
    pub fn air(&self) -> [Celsius; 12] {
        self.air_c.map(|degrees| Celsius(f64::from(degrees)))
    }

    /// Usual difference between the warmest and the coldest hour of a day [K], all year.
    #[must_use]
    pub fn day_night_range_k(&self) -> f64 {
        f64::from(self.day_night_k)
    }
}
