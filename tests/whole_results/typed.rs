//! What people type: places, appliances, lamps by scenes; and quantities as readers know them.

use super::kept::Report;
use crate::import_tables::shown;
use nightbank::forecast::climate_of;
use nightbank::model::catalogue;
use nightbank::model::light_scenes::LightScenes;
use nightbank::model::places::{self, coordinates::parse};
use nightbank::model::{Place, Setup, Trip, regions};
use nightbank::physics::solar::SunTimes;
use nightbank::units::reader::{Measure, UnitSystem, gauge_in_noughts, gauge_of, section_of};
use nightbank::units::{Degrees, Metres};

const COORDINATES: [&str; 26] = [
    "52.1, 5.2",
    "52,1 5,2",
    "-33.5 / 18.25",
    "52°06'N 5°11'E",
    "N 52 6 30 E 5 11 12",
    "5°11'12\" E, 52°6'30\" N",
    "47 30 S 12 15 W",
    "12,5 Z 3,25 E",
    "geo:48.2010,16.3695,183",
    "geo:-8.1;crs=wgs84",
    "91 0",
    "45 181",
    "45 60 10 N 3 0 0 E",
    "45 12 75 N 3 0 0 E",
    "45 N 46 N",
    "10 O 45 N",
    "45",
    "1 2 3",
    "a lake",
    "",
    "48.2 N, 16.4 E, 12.1",
    "−12.5 −60.25",
    "52.1.5 3",
    "45°N 7°W",
    "45.5 S -3.2 E",
    "180 E 0 N",
];

/// Coordinates, towns, regions, hours of the sun.
pub fn places() -> Report {
    let mut report = Report::default();
    report.part("Coordinates");
    for text in COORDINATES {
        report.say(&format!("{text:?}"), &parse(text));
    }
    report.part("Towns");
    for query in ["san", "ber", "münch", "st", "port el", "x"] {
        let found = places::search(query, 5);
        report.each(query, found.iter().map(|town| (town.name(), town.to_place())));
    }
    for (latitude, longitude) in [(47.6, 9.4), (-41.0, 174.0), (64.0, -20.0), (0.0, -30.0)] {
        let place = Place {
            latitude: Degrees(latitude),
            longitude: Degrees(longitude),
            altitude: Metres(200.0),
            ..Place::default()
        };
        report.part(&format!("{latitude} {longitude}"));
        let near = places::nearest(place.latitude, place.longitude);
        report.say("town", &near.map(|(town, km)| (town.name(), km)));
        let regions = regions::nearest(&place, 2);
        report.each("region", regions.iter().map(|near| (near.region.name, near.distance_km)));
        let trip = Trip { place, ..Trip::default() };
        report.say("climate", &climate_of(&trip));
        let place = &trip.place;
        for month in [time::Month::January, time::Month::May, time::Month::November] {
            let date = time::Date::from_calendar_date(2026, month, 21).expect("a date");
            let sun = SunTimes::on(date, place.latitude, place.longitude, 60.0);
            report.say(&format!("sun in {month}"), &sun);
        }
    }
    report
}

/// Appliances by their names, lamps by scenes, units.
pub fn words(setup: &Setup) -> Report {
    let mut report = Report::default();
    report.part("Appliances");
    for query in ["pump", "kühl", "tv", "lampe led", "chauff", "heat wat", "zzz"] {
        let found = catalogue::search(query, shown);
        report.each(query, found.iter().take(6).map(|entry| (entry.id, entry.key)));
    }
    report.part("Lamps");
    let mut changed = setup.clone();
    let mut scenes = LightScenes::of(&changed);
    report.say("scenes", &scenes);
    let ids: Vec<u32> = scenes.lamps.iter().map(|lamp| lamp.id).collect();
    for (at, id) in ids.iter().enumerate() {
        scenes.toggle(*id, at % 5, 0);
        scenes.toggle(*id, 1, 1);
    }
    scenes.minutes[0] = 20.0;
    scenes.write(&mut changed);
    let lamps = changed.loads.iter().filter(|load| ids.contains(&load.id));
    report.each("lamp", lamps.map(|load| (load.id, load.usage, load.window, &load.more_windows)));
    report.say("read again", &LightScenes::of(&changed));
    report.part("Units");
    for system in ["US", "GB", "DE", "ZZ", ""].map(UnitSystem::of_region) {
        for measure in [
            Measure::Temperature,
            Measure::TemperatureDifference,
            Measure::Length,
            Measure::Distance,
            Measure::Volume,
            Measure::Flow,
            Measure::FuelRate,
            Measure::Weight,
            Measure::Opening,
            Measure::AirFlow,
            Measure::Section,
        ] {
            report.say(
                &format!("{system:?} {measure:?}"),
                &(
                    measure.unit(system),
                    measure.shown(system, 12.5),
                    measure.metric(system, 12.5),
                    measure.field_decimals(system),
                ),
            );
        }
    }
    for text in ["2/0", "1/0", "4/0", "0/0", "5/0", "12", "/0", "x/0"] {
        report.say(&format!("{text:?} as a gauge"), &gauge_in_noughts(text));
    }
    report.row("gauges", [1.0, 6.0, 53.5, 107.2].map(gauge_of));
    report.row("sections", [-3.0, 0.0, 6.0, 14.0].map(section_of));
    report
}
