//! The packed climate of the world: read back as it was made, held against measured places, and
//! safe with any bytes.

use nightbank::model::climate::World;
use nightbank::units::{Degrees, Metres};
use proptest::prelude::*;
use std::sync::OnceLock;

static FILE: &[u8] = include_bytes!("../src/model/climate/climate.bin");

/// The file that the page fetches.
pub fn world() -> &'static World {
    static WORLD: OnceLock<World> = OnceLock::new();
    WORLD.get_or_init(|| World::decode(FILE).expect("the climate of the world"))
}

/// Rows of `data/climate/world_places.csv`: what was read in Python from the given tables
/// ("table": clearness as given; "weighed": after the weighing, before packing; "air_at_sea" and
/// "range" as given). Source and credit: see `data/README.md`.
fn places() -> Vec<(String, f64, f64, String, [f64; 12])> {
    include_str!("data/climate/world_places.csv")
        .lines()
        .skip(1)
        .map(|line| {
            let fields: Vec<&str> = line.split(',').collect();
            let months: Vec<f64> = fields[4..].iter().map(|f| f.parse().expect(line)).collect();
            (
                fields[0].to_owned(),
                fields[1].parse().expect(line),
                fields[2].parse().expect(line),
                fields[3].to_owned(),
                months.try_into().expect("twelve months"),
            )
        })
        .collect()
}

#[test]
fn places_come_out_of_the_file_as_they_were_made() {
    let mut rows = 0;
    for (name, lat, lon, kind, expected) in places() {
        let found = world().at(Degrees(lat), Degrees(lon)).expect(&name);
        for (month, expected) in expected.into_iter().enumerate() {
            // Steps and dropped harmonics: 1.9 % of the sun, 0.45 K, 0.67 K on average.
            let (ours, within) = match kind.as_str() {
                "weighed" => (found.clearness_frac[month], 0.035),
                "table" => (found.clearness_frac[month], 0.13),
                "air_at_sea" => (found.air_at_sea[month].0, 1.6),
                "range" => (2.0 * found.half_range_k[month], 2.5),
                other => panic!("{other}"),
            };
            let off = (ours - expected).abs();
            assert!(off <= within, "{name} {kind} month {month}: {ours:.3} {expected}");
        }
        rows += 1;
    }
    assert!(rows >= 52, "{rows}");
}

/// Monthly clearness of measured years, recent ones counted as recent (half as much for each 15
/// years back). Dublin airport, 1980-2024, even years: Copyright Met Eireann, source met.ie,
/// CC BY 4.0. Hamilton, 2020-2025: (c) State of Queensland, SILO, CC BY 4.0. De Bilt, 1980-2018,
/// even years: KNMI, CC BY 4.0. All three have a say in the climate; what it is without them,
/// `make_climate.py` prints (rms of a month 4.3, 5.9 and 5.3 %).
#[test]
fn measured_places_keep_their_sun() {
    for (name, lat, lon, measured) in [
        (
            "De Bilt",
            52.10,
            5.18,
            [0.278, 0.351, 0.384, 0.438, 0.456, 0.439, 0.461, 0.442, 0.433, 0.383, 0.307, 0.263],
        ),
        (
            "Dublin",
            53.43,
            -6.24,
            [0.326, 0.363, 0.396, 0.438, 0.460, 0.433, 0.416, 0.418, 0.419, 0.400, 0.351, 0.320],
        ),
        (
            "Hamilton",
            -37.65,
            142.06,
            [0.536, 0.547, 0.512, 0.458, 0.523, 0.523, 0.515, 0.515, 0.500, 0.499, 0.507, 0.528],
        ),
    ] {
        let found = world().at(Degrees(lat), Degrees(lon)).expect(name);
        let off = |month: usize| found.clearness_frac[month] / measured[month] - 1.0;
        let rms = ((0..12).map(|m| off(m).powi(2)).sum::<f64>() / 12.0).sqrt();
        let mean = (0..12).map(off).sum::<f64>() / 12.0;
        println!("{name}: rms {:.1} %, mean {:+.1} %", rms * 100.0, mean * 100.0);
        assert!(rms < 0.065 && mean.abs() < 0.03, "{name}: {rms:.3} {mean:+.3}");
        assert!(rms < 2.0 * found.error_frac, "{name} says {}", found.error_frac);
    }
}

/// Cities of the United States, kWh/m2 a day over the year: National Solar Radiation Data Base
/// 1961-1990 (NREL, Solar Radiation Data Manual for Flat-Plate and Concentrating Collectors), from
/// memory. The world table alone read 15 % high in Boulder and 14 % in Salt Lake City.
#[test]
fn the_mountain_west_is_not_too_sunny() {
    for (name, lat, lon, year_kwh_m2) in [
        ("Boulder", 40.02, -105.25, 4.6),
        ("Salt Lake City", 40.77, -111.97, 4.6),
        ("Albuquerque", 35.05, -106.62, 5.6),
        ("Seattle", 47.45, -122.30, 3.3),
        ("Great Falls", 47.48, -111.37, 3.8),
    ] {
        let found = world().at(Degrees(lat), Degrees(lon)).expect(name);
        let place = nightbank::model::Place {
            latitude: Degrees(lat),
            longitude: Degrees(lon),
            ..Default::default()
        };
        let above = nightbank::physics::solar::sun::monthly_extraterrestrial(&place, 2025);
        let sun: f64 = (0..12).map(|m| above[m].0 * found.clearness_frac[m] / 1000.0 / 12.0).sum();
        println!("{name}: {sun:.2} {year_kwh_m2}");
        assert!((sun / year_kwh_m2 - 1.0).abs() < 0.065, "{name}: {sun:.2}");
    }
}

#[test]
fn land_counts_before_sea_and_the_date_line_is_no_edge() {
    // Fiji lies on both sides of it.
    for lon in [177.5, 179.0, 179.9, -179.9] {
        assert!(world().at(Degrees(-17.0), Degrees(lon)).is_some(), "{lon}");
    }
    // The middle of the Pacific, Madeira and the Azores have no cells.
    for (lat, lon) in [(-40.0, -120.0), (32.75, -17.0), (37.8, -25.5), (89.0, 0.0), (-80.0, 0.0)] {
        assert_eq!(world().at(Degrees(lat), Degrees(lon)), None, "{lat} {lon}");
    }
    // Mountains: the height of the cell, and the air cooler by 6.5 K for each km.
    let alps = world().at(Degrees(46.6), Degrees(8.6)).expect("the Alps");
    assert!((1000.0..2600.0).contains(&alps.height.0), "{}", alps.height.0);
    let (sea, high) = (alps.air(Metres(0.0)), alps.air(Metres(2000.0)));
    assert!((sea[6].0 - high[6].0 - 13.0).abs() < 1e-9);
    for bad in [f64::NAN, f64::INFINITY] {
        assert_eq!(world().at(Degrees(bad), Degrees(0.0)), None);
        assert_eq!(world().at(Degrees(0.0), Degrees(bad)), None);
    }
}

/// Every region's place has its climate, save the islands without cells.
#[test]
fn nearly_every_region_has_cells() {
    let without: Vec<&str> = nightbank::model::regions::all()
        .filter(|region| world().at(region.latitude(), region.longitude()).is_none())
        .map(|region| region.name)
        .collect();
    println!("{without:?}");
    assert!(without.len() <= 16, "{without:?}");
}

/// The regions' air (from memory, to about 2 K) against the climate of the world (measured, see
/// `data/README.md`) at the same place and height.
#[test]
fn the_regions_have_the_air_measured_there() {
    let (mut months, mut sum_k) = (0.0, 0.0);
    for region in nightbank::model::regions::all() {
        let Some(found) = world().at(region.latitude(), region.longitude()) else { continue };
        // Fog over cold currents: the shore is cooler than the cell, which reaches inland.
        let within_k =
            if ["Namib coast", "Baja California"].contains(&region.name) { 4.5 } else { 3.0 };
        for (month, (ours, measured)) in
            region.air().into_iter().zip(found.air(region.altitude())).enumerate()
        {
            let off_k = (ours.0 - measured.0).abs();
            assert!(off_k < within_k, "{} month {month}: {ours:?} {measured:?}", region.name);
            months += 1.0;
            sum_k += off_k;
        }
    }
    assert!(months >= 2900.0 && sum_k / months < 0.5, "{months} {}", sum_k / months);
}

#[test]
fn cut_and_changed_files_are_refused() {
    for length in [0, 3, 4, 7, 8, 500, FILE.len() - 1] {
        assert!(World::decode(&FILE[..length]).is_err(), "{length}");
    }
    let mut longer = FILE.to_vec();
    longer.push(0);
    assert!(World::decode(&longer).is_err());
    let mut other = FILE.to_vec();
    other[3] = b'1';
    assert!(World::decode(&other).is_err());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]
    #[test]
    fn any_bytes_are_a_climate_in_range_or_an_error(
        at in 8usize..300_000, bytes in proptest::collection::vec(any::<u8>(), 1..400),
        lat in -90.0..90.0f64, lon in -400.0..400.0f64,
    ) {
        let mut file = FILE.to_vec();
        for (slot, byte) in file[at..].iter_mut().zip(&bytes) {
            *slot = *byte;
        }
        if let Ok(world) = World::decode(&file)
            && let Some(found) = world.at(Degrees(lat), Degrees(lon)) {
            prop_assert!(found.clearness_frac.iter().all(|k| (0.1..=0.8).contains(k)));
            prop_assert!(found.air_at_sea.iter().all(|air| (-60.0..=50.0).contains(&air.0)));
            prop_assert!((0.02..=0.3).contains(&found.error_frac));
        }
        prop_assert!(World::decode(&bytes).is_err());
        let with_magic: Vec<u8> = b"NBC2".iter().chain(&bytes).copied().collect();
        prop_assert!(World::decode(&with_magic).is_err());
    }
}
