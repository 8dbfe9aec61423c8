//! Sky and air of a trip, and the invented example played through.

use crate::climate_world::world;
use nightbank::forecast::climate::{climate_in, climate_of};
use nightbank::forecast::{MonthlyClimate, Odds, OddsRun, Outlook, TripPlan, plan::TripSun};
use nightbank::model::climate::ClimateSource;
use nightbank::model::example::{example_climate, example_setup};
use nightbank::model::{MonthlySun, Place, Setup, Trip};
use nightbank::physics::solar::sun::monthly_extraterrestrial;
use nightbank::units::{Degrees, WattHoursPerSquareMetre};
use std::sync::Arc;

fn odds(setup: &Setup) -> (Outlook, Odds) {
    let climate = MonthlyClimate::from(&climate_in(Some(world()), &setup.trip));
    let sun = Arc::new(TripSun::build(setup, &climate).expect("valid climate"));
    let plan = Arc::new(TripPlan::build(setup, sun));
    let mut run = OddsRun::new(plan.clone(), 500).expect("valid weather");
    while run.advance(500) {}
    (Outlook::of(setup, &plan), run.odds())
}

/// pvlib-python 0.16.1 (NREL SPA), whole months of 2025: H0 at 50 N.
#[test]
fn monthly_sun_above_the_air() {
    let table = include_str!("data/pvlib/c_h0_monthly.csv");
    let mut checked = 0;
    for line in table.lines().skip(1) {
        let fields: Vec<f64> = line.split(',').filter_map(|field| field.parse().ok()).collect();
        let (latitude, month, h0) = (fields[0], fields[1] as usize, fields[2]);
        let place =
            Place { latitude: Degrees(latitude), longitude: Degrees(0.0), ..Place::default() };
        let found = monthly_extraterrestrial(&place, 2025)[month - 1].0;
        if h0 > 500.0 {
            assert!((found / h0 - 1.0).abs() < 0.002, "{latitude} {month}: {found} {h0}");
            checked += 1;
        }
    }
    assert!(checked > 200);
}

#[test]
fn own_sun_comes_first() {
    let mut trip = Trip::default();
    trip.place.latitude = Degrees(52.1);
    assert_eq!(climate_in(Some(world()), &trip).source, ClimateSource::World);
    assert!(matches!(climate_of(&trip).source, ClimateSource::Region { .. }));
    trip.own_sun = Some(MonthlySun([WattHoursPerSquareMetre(2000.0); 12]));
    let own = climate_of(&trip);
    assert!(matches!(own.source, ClimateSource::OwnSun { .. }));
    // 2 kWh/m2 a day is a bright December and a dull June.
    assert!(own.clearness_frac[11] > 0.8 && own.clearness_frac[5] < 0.2);
}

#[test]
fn the_example_fails_in_an_instructive_way() {
    let setup = example_setup();
    let (outlook, odds) = odds(&setup);
    println!(
        "example: need {:.0}, usable {:.0} Wh; {} nights average, {} at 9 in 10, {} even",
        outlook.need_per_day.0,
        outlook.usable.0,
        outlook.nights,
        odds.nights_at(0.9),
        odds.nights_at(0.5)
    );
    assert!(setup.example);
    assert!(odds.nights_at(0.9) >= 1 && odds.nights_at(0.9) < 14);
    assert!(outlook.shares.len() > 8);
}

/// The start of the page carries the climate of its example alone, not the tables it comes from.
#[test]
fn the_climate_written_out_for_the_example_is_that_of_the_tables() {
    let mut trip = example_setup().trip;
    let written = example_climate(&trip).expect("the trip of the example");
    let tables = climate_in(Some(world()), &trip);
    for month in 0..12 {
        let close = |a: f64, b: f64| assert!((a - b).abs() < 6e-5, "month {month}: {a} {b}");
        close(written.clearness_frac[month], tables.clearness_frac[month]);
        close(written.air[month].0, tables.air[month].0);
        close(written.half_range_k[month], tables.half_range_k[month]);
    }
    assert_eq!(written.source, tables.source);
    assert!((written.accuracy_frac - tables.accuracy_frac).abs() < 1e-9);
    assert_eq!(written.air_source, tables.air_source);
    trip.place.latitude.0 += 0.01;
    assert_eq!(example_climate(&trip), None);
}
