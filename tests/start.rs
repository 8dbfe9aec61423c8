//! The invented example and the starts for newcomers.

use crate::common::still_air;
use nightbank::forecast::demand::energy_per_day;
use nightbank::forecast::plan::{MonthlyClimate, TripSun};
use nightbank::forecast::surroundings::Surroundings;
use nightbank::forecast::{Outlook, TripPlan};
use nightbank::model::example::{Start, example_setup, start_setup};
use nightbank::model::{Chemistry, Climate, Group, Setup, Vehicle, places};
use nightbank::units::{AmpHours, Celsius, WattHoursPerSquareMetre, Watts};
use std::sync::Arc;

fn outlook(setup: &Setup) -> Outlook {
    let climate = Climate::at(&setup.trip.place, None, &[WattHoursPerSquareMetre::ZERO; 12]);
    let sky = MonthlyClimate::from(&climate);
    let sun = TripSun::build(setup, &sky).expect("a climate in range");
    Outlook::of(setup, &TripPlan::build(setup, Arc::new(sun)))
}

fn start(vehicle: Vehicle, month: u8) -> Start {
    Start {
        vehicle,
        chemistry: Chemistry::LiFePo4,
        capacity: AmpHours(100.0),
        solar_peak: Watts(150.0),
        place: places::search("Cochem", 1)[0].to_place(),
        utc_offset_min: 120,
        year: 2031,
        month,
        nights: 4,
    }
}

#[test]
fn the_example_is_marked_in_bounds_and_its_ids_differ() {
    let example = example_setup();
    assert!(example.example);
    assert_eq!(example.trip.place, places::search("Waren", 1)[0].to_place());
    let (kept, changed) = example.clone().sanitised();
    assert_eq!((kept, changed), (example.clone(), 0));
    assert!((12..=20).contains(&example.loads.len()));
    for (at, load) in example.loads.iter().enumerate() {
        assert!(load.appliance.is_some() && load.quantity > 0);
        assert!(example.loads[..at].iter().all(|other| other.id != load.id));
    }
    assert!(example.loads.iter().filter(|load| load.group == Group::Standby).count() >= 3);
}

/// A week is asked for; the battery gives some nights, not all: there is something to change.
#[test]
fn the_example_has_an_answer_worth_reading() {
    let example = example_setup();
    let outlook = outlook(&example);
    println!("{} nights, {:.0} Wh a day", outlook.nights, outlook.need_per_day.0);
    assert!((2..7).contains(&outlook.nights), "{}", outlook.nights);
    assert!((350.0..900.0).contains(&outlook.need_per_day.0), "{}", outlook.need_per_day.0);
    // What nobody thinks of is a tenth of it or more.
    let air = Celsius(15.0);
    let standby: f64 = example
        .loads
        .iter()
        .filter(|load| load.group == Group::Standby)
        .map(|load| energy_per_day(load, &still_air(air)).0)
        .sum();
    assert!(standby > 0.1 * outlook.need_per_day.0, "{standby:.0} Wh");
}

#[test]
fn starts_carry_what_was_said() {
    for vehicle in Vehicle::ALL {
        let start = start(vehicle, 7);
        let setup = start_setup(&start);
        assert!(!setup.example);
        assert_eq!(setup.bank.chemistry, Chemistry::LiFePo4);
        assert_eq!(setup.bank.rated_capacity(), AmpHours(100.0));
        assert!((setup.bank.soc_min_frac - 0.1).abs() < 1e-12);
        assert_eq!(setup.solar.len(), 1);
        assert_eq!(setup.solar[0].peak, Watts(150.0));
        assert_eq!((setup.trip.month, setup.trip.nights, setup.trip.year), (7, 4, 2031));
        assert_eq!(setup.trip.place.name, "Cochem");
        assert_eq!(setup.clone().sanitised(), (setup.clone(), 0));
        assert!(outlook(&setup).nights >= 1, "{vehicle:?}");
        let without = start_setup(&Start { solar_peak: Watts(0.0), ..start });
        assert!(without.solar.is_empty());
    }
}

#[test]
fn starts_heat_in_winter_and_not_in_summer() {
    let heating = |vehicle, month: u8| -> f64 {
        let setup = start_setup(&start(vehicle, month));
        assert_eq!(setup.vehicle, vehicle);
        let climate = Climate::at(&setup.trip.place, None, &[WattHoursPerSquareMetre::ZERO; 12]);
        let around = Surroundings::at_rest(&setup, [climate.air[usize::from(month) - 1]; 24]);
        setup
            .enabled_loads()
            .filter(|load| matches!(load.appliance, Some(12..=14)))
            .map(|load| energy_per_day(load, &around).0)
            .sum()
    };
    for vehicle in Vehicle::ALL {
        assert_eq!(heating(vehicle, 7), 0.0, "{vehicle:?}");
        assert!(heating(vehicle, 10) > 0.0, "{vehicle:?}");
        assert!(heating(vehicle, 1) > heating(vehicle, 10), "{vehicle:?}");
    }
}

#[test]
fn a_mover_runs_twice_a_stay() {
    let setup = start_setup(&start(Vehicle::Caravan, 7));
    let mover = setup.loads.iter().find(|load| load.appliance == Some(117)).expect("has one");
    // 500 W for twice 5 min over 4 nights.
    let wh = energy_per_day(mover, &still_air(Celsius(15.0))).0 * 4.0;
    assert!((wh - 2.0 * 500.0 * 5.0 / 60.0).abs() < 1e-6, "{wh}");
}

#[test]
fn nonsense_answers_give_a_setup_in_bounds() {
    let setup = start_setup(&Start {
        capacity: AmpHours(f64::NAN),
        solar_peak: Watts(f64::INFINITY),
        month: 99,
        nights: 0,
        ..start(Vehicle::Van, 1)
    });
    assert_eq!(setup.clone().sanitised().1, 0);
    assert!(setup.bank.capacity_20h.is_finite());
}
