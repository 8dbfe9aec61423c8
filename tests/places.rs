//! Places by name and by coordinates.

use nightbank::model::Place;
use nightbank::model::places::coordinates::{CoordinateError, parse};
use nightbank::model::places::{all, nearest, search};
use nightbank::units::Degrees;
use proptest::prelude::*;

fn first(query: &str) -> Option<&'static str> {
    search(query, 8).first().map(|town| town.name())
}

#[test]
fn there_are_enough_and_they_are_sane() {
    let towns: Vec<_> = all().collect();
    assert!(towns.len() >= 250, "{}", towns.len());
    assert!(towns.iter().filter(|town| town.latitude().0 < 0.0).count() >= 40);
    for (at, town) in towns.iter().enumerate() {
        let name = town.name();
        assert!(!name.is_empty() && name.trim() == name, "{name}");
        assert!(town.country.len() == 2 && town.country.chars().all(|c| c.is_ascii_uppercase()));
        assert!((-60.0..=80.0).contains(&town.latitude().0), "{name}");
        assert!((-430.0..=4000.0).contains(&town.altitude().0), "{name}");
        for other in &towns[..at] {
            assert!(other.name() != name || other.country != town.country, "{name} twice");
        }
    }
}

/// Positions of airports and observatories near the towns, public geography: within 40 km.
#[test]
fn towns_lie_where_they_are() {
    for (name, lat, lon) in [
        ("Amsterdam", 52.31, 4.76),
        ("Tromsø", 69.68, 18.92),
        ("Lisboa", 38.77, -9.13),
        ("Athína", 37.94, 23.94),
        ("Denver", 39.86, -104.67),
        ("Perth", -31.94, 115.97),
        ("Queenstown", -45.02, 168.74),
        ("Ushuaia", -54.84, -68.30),
        ("Windhoek", -22.48, 17.47),
        ("Sapporo", 42.78, 141.69),
    ] {
        let found = search(name, 1)[0];
        let (near, km) = nearest(Degrees(lat), Degrees(lon)).expect("some town");
        assert!(std::ptr::eq(found, near) || km < 40.0, "{name}: {} {km:.0} km", near.name());
        assert!((found.latitude().0 - lat).abs() < 0.5, "{name}");
        assert!((found.longitude().0 - lon).abs() < 0.5, "{name}");
    }
}

#[test]
fn found_by_the_start_of_a_name_in_any_spelling() {
    for (query, name) in [
        ("amst", "Amsterdam"),
        ("MÜNCHEN", "München"),
        ("munchen", "München"),
        ("muenchen", "München"),
        ("munich", "München"),
        ("koeln", "Köln"),
        ("Kopenhagen", "København"),
        ("kobenhavn", "København"),
        ("alesund", "Ålesund"),
        ("lodz", ""),
        ("malaga", "Málaga"),
        ("malo", "Saint-Malo"),
        ("saint malo", "Saint-Malo"),
        ("gardasee", "Sirmione"),
        ("istanbul", "İstanbul"),
        ("corfu", ""),
        ("uluru", "Yulara"),
        ("l'aquila", "L'Aquila"),
    ] {
        assert_eq!(first(query).unwrap_or(""), name, "{query}");
    }
    assert!(search("", 8).is_empty());
    assert!(search("san", 3).len() == 3);
    assert!(search("san", 200).len() > 3);
}

#[test]
fn a_town_becomes_the_place_of_a_trip() {
    let place: Place = search("Cusco", 1)[0].to_place();
    assert_eq!(place.name, "Cusco");
    assert_eq!(place.altitude.0, 3400.0);
    assert!((place.latitude.0 + 13.53).abs() < 1e-9 && (place.longitude.0 + 71.97).abs() < 1e-9);
}

#[test]
fn coordinates_in_the_ways_people_write_them() {
    for (text, lat, lon) in [
        ("52.1, 5.2", 52.1, 5.2),
        ("52.1,5.2", 52.1, 5.2),
        ("52.1 5.2", 52.1, 5.2),
        ("52,1 5,2", 52.1, 5.2),
        ("52,1; 5,2", 52.1, 5.2),
        ("52,1, 5,2", 52.1, 5.2),
        ("52,1,5,2", 52.1, 5.2),
        ("52 6 N 5", 52.1, 5.0),
        ("52, 5", 52.0, 5.0),
        ("52 5", 52.0, 5.0),
        ("  52.1 / 5.2 ", 52.1, 5.2),
        ("52.1, 5.2,", 52.1, 5.2),
        ("(52.1, 5.2)", 52.1, 5.2),
        ("geo:52.1,5.2", 52.1, 5.2),
        ("-33.9, 18.4", -33.9, 18.4),
        ("−33,9 18,4", -33.9, 18.4),
        ("+52.1 -0.5", 52.1, -0.5),
        ("33.9S 18.4E", -33.9, 18.4),
        ("33,9 S 18,4 E", -33.9, 18.4),
        ("33.9Z, 18.4E", -33.9, 18.4),
        ("S33.9 W70.5", -33.9, -70.5),
        ("5.2E 52.1N", 52.1, 5.2),
        ("5.2 e, 52.1", 52.1, 5.2),
        ("52.1 5.2W", 52.1, -5.2),
        ("52°06'N 5°11'E", 52.1, 5.0 + 11.0 / 60.0),
        ("52° 6′ 0″ N, 5° 11′ 0″ E", 52.1, 5.0 + 11.0 / 60.0),
        ("52°06,5'N 5°11,5'E", 52.0 + 6.5 / 60.0, 5.0 + 11.5 / 60.0),
        ("N 52 06 36 E 5 11 24", 52.11, 5.19),
        ("N52 06.6 W5 11.4", 52.11, -5.19),
        ("52°6' 5°11'", 52.1, 5.0 + 11.0 / 60.0),
        ("52º30' 13º24'", 52.5, 13.4),
        ("52 6 36 5 11 24", 52.11, 5.19),
        ("-33°54' 18°24'", -33.9, 18.4),
        ("90, 180", 90.0, 180.0),
    ] {
        let (ours_lat, ours_lon) = parse(text).unwrap_or_else(|why| panic!("{text}: {why}"));
        assert!((ours_lat.0 - lat).abs() < 1e-9, "{text}: {}", ours_lat.0);
        assert!((ours_lon.0 - lon).abs() < 1e-9, "{text}: {}", ours_lon.0);
    }
}

#[test]
fn what_cannot_be_read_says_why() {
    use CoordinateError as E;
    for (text, why) in [
        ("", E::NotCoordinates),
        ("   ", E::NotCoordinates),
        ("Amsterdam", E::NotCoordinates),
        ("N E", E::NotCoordinates),
        ("Camping 7", E::NotCoordinates),
        ("x 5", E::NotCoordinates),
        ("52.1", E::OnlyOne),
        ("52,1", E::OnlyOne),
        ("52°06'N", E::OnlyOne),
        ("52 06' N", E::Unclear),
        ("52 6 N", E::Unclear),
        ("52° 6", E::OnlyOne),
        ("52 6 5", E::Unclear),
        ("52.1.3 5", E::Unclear),
        ("1 2 3 4 5 6 7", E::Unclear),
        ("-52.1N 5.2E", E::Unclear),
        ("52.1, 5.2, 30", E::Unclear),
        ("52°06'N 5°11'O", E::LetterO),
        ("52.1N 5.2S", E::TwoAlike),
        ("5.2E 6.2W", E::TwoAlike),
        ("52°75'N 5°11'E", E::SixtiethsOutOfRange { value: 75.0 }),
        ("95.1, 5.2", E::LatitudeOutOfRange { latitude: Degrees(95.1) }),
        ("52.1, 200", E::LongitudeOutOfRange { longitude: Degrees(200.0) }),
        ("N 91 E 5", E::LatitudeOutOfRange { latitude: Degrees(91.0) }),
    ] {
        assert_eq!(parse(text), Err(why), "{text}");
        assert!(!why.to_string().is_empty());
    }
}

proptest! {
    #[test]
    fn any_text_is_coordinates_in_range_or_an_error(text in "\\PC{0,40}") {
        if let Ok((lat, lon)) = parse(&text) {
            prop_assert!(lat.0.abs() <= 90.0 && lon.0.abs() <= 180.0);
        }
        prop_assert!(search(&text, 5).len() <= 5);
    }

    #[test]
    fn text_close_to_coordinates_never_panics(text in "[NSEWO0-9.,;°'\" +-]{0,30}") {
        if let Ok((lat, lon)) = parse(&text) {
            prop_assert!(lat.0.abs() <= 90.0 && lon.0.abs() <= 180.0);
        }
    }

    #[test]
    fn coordinates_written_out_are_read_back(lat in -9000i32..=9000, lon in -18000i32..=18000) {
        let (lat, lon) = (f64::from(lat) / 100.0, f64::from(lon) / 100.0);
        let point = format!("{lat:.2}, {lon:.2}");
        let comma = format!("{lat:.2} {lon:.2}").replace('.', ",");
        for text in [point, comma] {
            let (read_lat, read_lon) = parse(&text).expect(&text);
            prop_assert!((read_lat.0 - lat).abs() < 1e-9 && (read_lon.0 - lon).abs() < 1e-9);
        }
    }
}

/// Panels that face the noon sun face it on both sides of the equator; others stay as they were set.
#[test]
fn panels_that_face_noon_turn_with_the_hemisphere() {
    use nightbank::model::{Place, Setup, SolarArray};
    use nightbank::units::Degrees;
    let facing = |degrees| SolarArray { facing: Degrees(degrees), ..SolarArray::default() };
    let mut setup = Setup { solar: vec![facing(180.0), facing(135.0)], ..Setup::default() };
    setup.trip.place.latitude = Degrees(52.0);
    let south = Place { latitude: Degrees(-23.7), ..Place::default() };
    setup.turn_panels(&south);
    assert_eq!(setup.solar.iter().map(|array| array.facing.0).collect::<Vec<_>>(), [0.0, 135.0]);
    setup.trip.place = south.clone();
    setup.turn_panels(&south);
    assert_eq!(setup.solar[0].facing.0, 0.0);
    setup.turn_panels(&Place { latitude: Degrees(40.0), ..south });
    assert_eq!(setup.solar[0].facing.0, 180.0);
}
