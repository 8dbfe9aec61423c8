//! Towns, regions, countries and parks of the world by name, from a file beside the program.
//!
//! Towns and their time zones: GeoNames (geonames.org), CC BY 4.0. Names of countries: Unicode
//! CLDR. Parks and names of regions: general geography, from memory. `make_places.py` beside this
//! file makes `places.txt` and says how a line reads.

use super::{distance_km, search};
use crate::model::Place;
use crate::model::limits::MAX_NAME_CHARS;
use crate::model::typed_words::{fold, rank};
use crate::units::{Degrees, Metres};
use std::fmt;

/// A place farther than this [km] does not tell the time zone of a point.
const ZONE_WITHIN_KM: f64 = 400.0;
/// Two finds of one name are one place within this distance [km].
const SAME_WITHIN_KM: f64 = 20.0;

/// A line of the list that cannot be read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnreadableLine {
    /// Its number, from 1.
    pub line: usize,
}

impl fmt::Display for UnreadableLine {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "line {} of the list of places cannot be read", self.line)
    }
}

impl std::error::Error for UnreadableLine {}

#[derive(Clone, Debug, PartialEq)]
struct Region {
    /// State or province, if it is listed.
    division: String,
    /// Country in English, German, French and Dutch.
    countries: Vec<String>,
    /// All of it folded, to be searched.
    words: String,
}

#[derive(Clone, Debug, PartialEq)]
struct Entry {
    names: Vec<String>,
    /// The same folded.
    folded: Vec<String>,
    region: usize,
    zone: usize,
    latitude: Degrees,
    longitude: Degrees,
    altitude: Metres,
}

/// The list.
#[derive(Clone, Debug, PartialEq)]
pub struct Gazetteer {
    regions: Vec<Region>,
    zones: Vec<String>,
    entries: Vec<Entry>,
}

/// A place that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct FoundPlace {
    /// By the name that was typed.
    pub place: Place,
    /// State or province; empty where it is not listed.
    pub division: String,
    /// Country in English, German, French and Dutch; none for the towns the program carries.
    pub countries: Vec<String>,
}

impl Gazetteer {
    /// Reads the list.
    ///
    /// # Errors
    /// The first line that cannot be read.
    pub fn read(text: &str) -> Result<Self, UnreadableLine> {
        let mut lines = text.lines().enumerate();
        let mut head = |line: usize| {
            let (_, text) = lines.next().ok_or(UnreadableLine { line })?;
            Ok(text.split('\t').map(str::to_owned).collect::<Vec<_>>())
        };
        let regions = head(1)?.iter().map(|region| region_of(region)).collect::<Vec<_>>();
        let zones = head(2)?;
        let mut entries = Vec::new();
        for (index, line) in lines {
            let entry = entry_of(line)
                .filter(|entry| entry.region < regions.len() && entry.zone < zones.len())
                .ok_or(UnreadableLine { line: index + 1 })?;
            entries.push(entry);
        }
        Ok(Self { regions, zones, entries })
    }

    /// How many places it has.
    #[must_use]
    pub fn count(&self) -> usize {
        self.entries.len()
    }

    /// At most `limit` places whose name, state and country hold every word typed, at least one of
    /// them in the name; best first, then the more peopled. Towns the program carries follow, where
    /// they are not the same.
    #[must_use]
    pub fn search(&self, query: &str, limit: usize) -> Vec<FoundPlace> {
        let typed = fold(query);
        if typed.is_empty() {
            return Vec::new();
        }
        let mut found: Vec<_> = self
            .entries
            .iter()
            .filter_map(|entry| {
                let words = &self.regions.get(entry.region)?.words;
                let in_name =
                    |name: &&String| typed.split(' ').any(|word| rank(word, name, "").is_some());
                let (best, name) = entry
                    .folded
                    .iter()
                    .zip(&entry.names)
                    .filter(|(folded, _)| in_name(folded))
                    .filter_map(|(folded, name)| Some((rank(&typed, folded, words)?, name)))
                    .min_by_key(|(rank, _)| *rank)?;
                Some((best, entry, name))
            })
            .collect();
        found.sort_by_key(|(rank, _, _)| *rank);
        let mut out: Vec<FoundPlace> = Vec::new();
        let listed = found.into_iter().map(|(_, entry, name)| self.found(entry, name));
        let carried = search(query, limit).into_iter().map(|town| FoundPlace {
            place: town.to_place(),
            division: String::new(),
            countries: Vec::new(),
        });
        for next in listed.chain(carried) {
            if out.len() >= limit {
                break;
            }
            if !out.iter().any(|known| same(&known.place, &next.place)) {
                out.push(next);
            }
        }
        out
    }

    /// Time zone (a name of the IANA data base) of the nearest place, if one is near enough.
    #[must_use]
    pub fn zone(&self, latitude: Degrees, longitude: Degrees) -> Option<&str> {
        let far =
            |entry: &Entry| distance_km((latitude, longitude), (entry.latitude, entry.longitude));
        let nearest = self
            .entries
            .iter()
            .map(|entry| (entry, far(entry)))
            .filter(|(_, km)| *km <= ZONE_WITHIN_KM)
            .min_by(|a, b| a.1.total_cmp(&b.1))?;
        self.zones.get(nearest.0.zone).map(String::as_str)
    }

    fn found(&self, entry: &Entry, name: &str) -> FoundPlace {
        let region = self.regions.get(entry.region);
        FoundPlace {
            place: Place {
                name: name.chars().take(MAX_NAME_CHARS).collect(),
                latitude: entry.latitude,
                longitude: entry.longitude,
                altitude: entry.altitude,
            },
            division: region.map(|region| region.division.clone()).unwrap_or_default(),
            countries: region.map(|region| region.countries.clone()).unwrap_or_default(),
        }
    }
}

fn same(a: &Place, b: &Place) -> bool {
    fold(&a.name) == fold(&b.name)
        && distance_km((a.latitude, a.longitude), (b.latitude, b.longitude)) < SAME_WITHIN_KM
}

/// `division|country in four languages|names to search the division by`.
fn region_of(text: &str) -> Region {
    let mut fields = text.split('|');
    let division = fields.next().unwrap_or_default().to_owned();
    let countries: Vec<String> =
        fields.next().unwrap_or_default().split('/').map(str::to_owned).collect();
    let words = fold(&text.replace(['|', '/'], " "));
    Region { division, countries, words }
}

fn entry_of(line: &str) -> Option<Entry> {
    let mut fields = line.split('\t');
    let names: Vec<String> = fields.next()?.split('/').map(str::to_owned).collect();
    if names.iter().any(String::is_empty) {
        return None;
    }
    let region = fields.next()?.parse().ok()?;
    let zone = fields.next()?.parse().ok()?;
    let mut number = |most: i32| {
        let value: i32 = fields.next()?.parse().ok()?;
        (value.abs() <= most).then_some(f64::from(value))
    };
    let latitude = Degrees(number(9000)? / 100.0);
    let longitude = Degrees(number(18_000)? / 100.0);
    let altitude = Metres(number(900)? * 10.0);
    let folded = names.iter().map(|name| fold(name)).collect();
    let entry = Entry { names, folded, region, zone, latitude, longitude, altitude };
    fields.next().is_none().then_some(entry)
}
