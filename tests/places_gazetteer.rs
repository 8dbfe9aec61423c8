//! The list of the world's places: what people type is found, in four languages, and any text is
//! safe.

use nightbank::model::places::all;
use nightbank::model::places::gazetteer::{FoundPlace, Gazetteer};
use nightbank::model::regions::distance_km;
use nightbank::units::Degrees;
use proptest::prelude::*;
use std::collections::HashMap;
use std::sync::OnceLock;

/// The file that the page fetches.
static LIST: &str = include_str!("../src/model/places/places.txt");

fn list() -> &'static Gazetteer {
    static READ: OnceLock<Gazetteer> = OnceLock::new();
    READ.get_or_init(|| Gazetteer::read(LIST).expect("the list"))
}

fn first(query: &str) -> FoundPlace {
    list().search(query, 8).into_iter().next().unwrap_or_else(|| panic!("{query}"))
}

/// Positions from general geography, to a degree or two (states and countries: a town in the middle).
#[test]
fn towns_regions_countries_and_parks_are_found_in_four_languages() {
    assert!(list().count() >= 3000, "{}", list().count());
    for (query, lat, lon, within_deg) in [
        ("Windermere", 54.4, -2.9, 0.2),
        ("Lake District", 54.5, -3.1, 0.3),
        ("Moab, Utah", 38.57, -109.55, 0.2),
        ("moab ut", 38.57, -109.55, 0.2),
        ("Bavaria", 48.9, 11.4, 1.0),
        ("Bayern", 48.9, 11.4, 1.0),
        ("Bavière", 48.9, 11.4, 1.0),
        ("Beieren", 48.9, 11.4, 1.0),
        ("Scotland", 56.3, -3.8, 1.5),
        ("Schottland", 56.3, -3.8, 1.5),
        ("ecosse", 56.3, -3.8, 1.5),
        ("Schotland", 56.3, -3.8, 1.5),
        ("Germany", 51.0, 10.0, 1.5),
        ("Deutschland", 51.0, 10.0, 1.5),
        ("Allemagne", 51.0, 10.0, 1.5),
        ("Duitsland", 51.0, 10.0, 1.5),
        ("Utah", 40.3, -111.8, 1.5),
        ("Black Forest", 48.1, 8.2, 0.5),
        ("Schwarzwald", 48.1, 8.2, 0.5),
        ("foret noire", 48.1, 8.2, 0.5),
        ("Gardameer", 45.65, 10.65, 0.5),
        ("Wenen", 48.2, 16.37, 0.2),
        ("Munich", 48.14, 11.58, 0.2),
        ("munchen", 48.14, 11.58, 0.2),
        ("zurich", 47.37, 8.55, 0.2),
        ("paris france", 48.86, 2.35, 0.2),
        ("perth australia", -31.95, 115.86, 0.3),
        ("Yellowstone", 44.6, -110.5, 0.5),
        ("Zermatt", 46.02, 7.75, 0.2),
        ("Kruger", -24.0, 31.5, 0.5),
        ("Cornwall", 50.4, -4.9, 0.7),
        ("Waren", 53.52, 12.68, 0.2),
        ("Geiranger", 62.10, 7.21, 0.1),
        ("Alice Springs", -23.70, 133.88, 0.1),
        ("Milford Sound", -44.67, 167.93, 0.1),
        ("Binz", 54.40, 13.61, 0.1),
        ("Mont-Saint-Michel", 48.64, -1.51, 0.1),
        ("Xabia", 38.79, 0.17, 0.1),
    ] {
        let place = first(query).place;
        let off = (place.latitude.0 - lat).abs().max((place.longitude.0 - lon).abs());
        assert!(off <= within_deg, "{query}: {place:?}");
    }
    let moab = first("Moab, Utah");
    assert_eq!(moab.place.name, "Moab");
    assert!(moab.division.starts_with("Utah"), "{moab:?}");
    assert_eq!(moab.countries.len(), 4);
    // 1,225 m (public geography).
    assert!((moab.place.altitude.0 - 1225.0).abs() < 200.0, "{}", moab.place.altitude.0);
    assert!(list().search("", 8).is_empty() && list().search("qqxyz", 8).is_empty());
    assert_eq!(list().search("san", 5).len(), 5);
    // The more peopled first.
    assert!(first("London").place.longitude.0 > -1.0);
}

/// Both lists against each other: the towns the page carries (from general geography) lie where the list of
/// GeoNames has one of that name.
#[test]
fn the_towns_of_the_page_lie_where_the_list_has_them() {
    // The name is that of another place, of a country's part or of a landscape too.
    const OTHERS: &[&str] = &[
        "Irákleio",
        "Jackson",
        "La Paz",
        "New York",
        "Newcastle",
        "Outer Banks",
        "Palau",
        "Springdale",
        "White Sands",
    ];
    let mut listed: HashMap<&str, Vec<(Degrees, Degrees)>> = HashMap::new();
    for line in LIST.lines().skip(2) {
        let fields: Vec<&str> = line.split('\t').collect();
        let degrees = |at: usize| Degrees(fields[at].parse::<f64>().expect(line) / 100.0);
        for name in fields[0].split('/') {
            listed.entry(name).or_default().push((degrees(3), degrees(4)));
        }
    }
    let (mut compared, mut apart) = (0, Vec::new());
    for town in all() {
        let Some(namesakes) = listed.get(town.name()) else { continue };
        let here = (town.latitude(), town.longitude());
        compared += 1;
        if namesakes.iter().all(|there| distance_km(here, *there) > 25.0) {
            apart.push(town.name());
        }
    }
    apart.sort_unstable();
    println!("{compared} compared");
    assert!(compared >= 400, "{compared}");
    assert_eq!(apart, OTHERS);
}

/// No town of the list lies higher than the Altiplano, 4,150 m, which is its height of Peru's middle (public
/// geography); the named ones lie by the sea. A map of heights has a mark for "no data" that is no height.
#[test]
fn heights_are_those_of_the_land() {
    for line in LIST.lines().skip(2) {
        let tens = line.rsplit('\t').next().and_then(|text| text.parse::<i32>().ok());
        assert!(tens.is_some_and(|tens| (0..=415).contains(&tens)), "{line}");
    }
    for name in ["Kaikoura", "Vieste", "Trabzon", "Fisterra", "Apollo Bay", "Maldives"] {
        let place = first(name).place;
        assert!(place.altitude.0 <= 60.0, "{place:?}");
    }
}

/// Zones of the IANA data base.
#[test]
fn the_clock_goes_by_the_place() {
    for (lat, lon, zone) in [
        (38.57, -109.55, "America/Denver"),
        (52.1, 5.2, "Europe/Amsterdam"),
        (57.3, -6.3, "Europe/London"),
        (40.4, -3.7, "Europe/Madrid"),
        (-25.3, 131.0, "Australia/Darwin"),
        (-45.0, 168.7, "Pacific/Auckland"),
        (33.4, -112.1, "America/Phoenix"),
        (28.3, -16.6, "Atlantic/Canary"),
    ] {
        assert_eq!(list().zone(Degrees(lat), Degrees(lon)), Some(zone), "{lat} {lon}");
    }
    assert_eq!(list().zone(Degrees(-45.0), Degrees(-120.0)), None);
}

#[test]
fn a_line_that_cannot_be_read_is_told() {
    let read = |line: &str| Gazetteer::read(&format!("|A/B/C/D|\nEurope/Paris\n{line}\n"));
    assert!(read("X\t0\t0\t100\t100\t1").is_ok());
    for bad in [
        "",
        "X",
        "X\t1\t0\t100\t100\t1",
        "X\t0\t1\t100\t100\t1",
        "X\t0\t0\t9100\t0\t1",
        "X\t0\t0\t0\t18001\t1",
        "X\t0\t0\t0\t0\t1\t1",
        "/\t0\t0\t0\t0\t1",
        "X\t0\t0\ta\t0\t1",
    ] {
        assert_eq!(read(bad).expect_err(bad).line, 3, "{bad}");
    }
    assert!(Gazetteer::read("").is_err());
}

proptest! {
    #[test]
    fn any_text_is_a_list_or_an_error(text in "[A-Za-z0-9/|\t\n-]{0,200}") {
        if let Ok(list) = Gazetteer::read(&text) {
            prop_assert!(list.search("a", 3).len() <= 3);
        }
    }

    #[test]
    fn any_query_gives_no_more_than_asked(query in "\\PC{0,30}") {
        prop_assert!(list().search(&query, 5).len() <= 5);
    }
}
