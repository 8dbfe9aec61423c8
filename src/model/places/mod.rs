//! Towns and camping areas to start from, found by name, and coordinates as people type them.
//!
//! Positions are rounded to 0.01 degrees (about a kilometre), altitudes to what suits the weather:
//! public geography, good enough for sun and air, not for finding the way.

pub mod coordinates;
pub mod gazetteer;
mod north_west;
mod south_east;
mod world;

use super::Place;
use super::regions::distance_km;
use super::typed_words::{fold, rank};
use crate::units::{Degrees, Metres};

/// A town or camping area.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Town {
    /// Country, ISO 3166-1 alpha-2 (XK for Kosovo).
    pub country: &'static str,
    /// The local name, then other names it is searched by, a slash between.
    names: &'static str,
    lat_hundredths: i16,
    lon_hundredths: i16,
    altitude_m: i16,
}

/// Country, names with a slash between, latitude and longitude [0.01 deg], altitude [m].
const fn t(
    country: &'static str,
    names: &'static str,
    lat_hundredths: i16,
    lon_hundredths: i16,
    altitude_m: i16,
) -> Town {
    Town { country, names, lat_hundredths, lon_hundredths, altitude_m }
}

static TABLES: [&[Town]; 3] = [&north_west::TABLE, &south_east::TABLE, &world::TABLE];

/// All towns.
pub fn all() -> impl Iterator<Item = &'static Town> {
    TABLES.iter().copied().flatten()
}

impl Town {
    /// Its local name.
    #[must_use]
    pub fn name(&self) -> &'static str {
        self.names.split('/').next().unwrap_or(self.names)
    }

    /// Latitude [deg].
    #[must_use]
    pub fn latitude(&self) -> Degrees {
        Degrees(f64::from(self.lat_hundredths) / 100.0)
    }

    /// Longitude [deg].
    #[must_use]
    pub fn longitude(&self) -> Degrees {
        Degrees(f64::from(self.lon_hundredths) / 100.0)
    }

    /// Height above the sea [m].
    #[must_use]
    pub fn altitude(&self) -> Metres {
        Metres(f64::from(self.altitude_m))
    }

    /// As the place of a trip.
    #[must_use]
    pub fn to_place(&self) -> Place {
        Place {
            name: self.name().to_owned(),
            latitude: self.latitude(),
            longitude: self.longitude(),
            altitude: self.altitude(),
        }
    }
}

/// At most `limit` towns one of whose names holds every word typed, best first. The start of a
/// word is enough; accents and case do not matter. Nothing typed gives none.
#[must_use]
pub fn search(query: &str, limit: usize) -> Vec<&'static Town> {
    let query = fold(query);
    if query.is_empty() {
        return Vec::new();
    }
    let mut found: Vec<_> = all()
        .filter_map(|town| {
            let best = town.names.split('/').filter_map(|name| rank(&query, &fold(name), "")).min();
            Some((best?, town))
        })
        .collect();
    found.sort_by_key(|(rank, _)| *rank);
    found.truncate(limit);
    found.into_iter().map(|(_, town)| town).collect()
}

/// The town nearest to a point, and how far it is [km]; to name a position on the map.
#[must_use]
pub fn nearest(latitude: Degrees, longitude: Degrees) -> Option<(&'static Town, f64)> {
    all()
        .map(|town| (town, distance_km((latitude, longitude), (town.latitude(), town.longitude()))))
        .min_by(|a, b| a.1.total_cmp(&b.1))
}
