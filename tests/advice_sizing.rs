//! Sizing against brute force on small grids, its orderings, and the months of the year.

use crate::advice_common;

use advice_common::{failing_van, summer};
use nightbank::advice::season::{YearStripJob, in_month, months};
use nightbank::advice::sizing::{Choice, Sizing};
use nightbank::advice::sizing::{SizingAim, SizingJob, sized};
use nightbank::forecast::climate::climate_of;
use nightbank::forecast::odds::SEQUENCES;
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{MonthlyClimate, OddsRun, Outlook, TripPlan};
use nightbank::model::trip::Weather;
use nightbank::model::{Chemistry, DayPlan, Setup, SystemVoltage};
use nightbank::units::{AmpHours, Celsius, Watts};
use std::sync::Arc;

fn found(setup: &Setup, climate: &MonthlyClimate, aim: SizingAim) -> Sizing {
    let mut job = SizingJob::new(setup, climate, aim);
    while job.advance(500).expect("valid climate") {}
    assert_eq!(job.progress_frac(), 1.0);
    job.sizing()
}

/// Whether a setup does, played with its real panels and battery.
fn does(setup: &Setup, climate: &MonthlyClimate, month: u8, nights: usize, chance: f64) -> bool {
    let setup = in_month(setup, month, nights);
    let sun = Arc::new(TripSun::build(&setup, climate).expect("valid"));
    let plan = Arc::new(TripPlan::build(&setup, sun));
    let mut run = OddsRun::nights_only(plan, SEQUENCES).expect("valid");
    while run.advance(500) {}
    run.odds().chance_of(nights) >= chance - 1e-9
}

#[test]
fn sizes_agree_with_brute_force() {
    let (setup, climate) = (failing_van(), summer());
    let (nights, chance) = (5, 0.9);
    let aim = SizingAim {
        nights,
        chance_frac: chance,
        months: vec![5],
        batteries: [120.0, 300.0].map(AmpHours).to_vec(),
        solars: [100.0].map(Watts).to_vec(),
    };
    let sizing = found(&setup, &climate, aim);
    assert_eq!(sizing.hard_months, [5]);
    for curve in &sizing.curves {
        for (battery, solar) in &curve.solar_for_battery {
            let brute = (0..=200).map(|step| Watts(10.0 * f64::from(step))).find(|solar| {
                does(&sized(&setup, curve.chemistry, *battery, *solar), &climate, 5, nights, chance)
            });
            assert_eq!(*solar, brute, "{:?} {battery:?}", curve.chemistry);
        }
        for (solar, battery) in &curve.battery_for_solar {
            let brute = (1..=300).map(|step| AmpHours(5.0 * f64::from(step))).find(|battery| {
                does(&sized(&setup, curve.chemistry, *battery, *solar), &climate, 5, nights, chance)
            });
            assert_eq!(*battery, brute, "{:?} {solar:?}", curve.chemistry);
        }
    }
    // The grid held something on both sides of what does.
    let own = &sizing.curves[0];
    assert_eq!(own.chemistry, Chemistry::Agm);
    assert!(own.solar_for_battery.iter().any(|(_, w)| w.is_some_and(|w| w.0 > 0.0)));
    assert!(own.battery_for_solar.iter().all(|(_, ah)| ah.is_some()));
}

#[test]
fn more_of_the_one_takes_no_more_of_the_other() {
    let setup = failing_van();
    let climate = summer();
    let usual = SizingAim::usual(&setup, 7, 0.9, vec![5]);
    let sizing = found(&setup, &climate, usual);
    for curve in &sizing.curves {
        let falls = |sizes: Vec<f64>| sizes.windows(2).all(|pair| pair[1] <= pair[0]);
        let of = |size: Option<f64>| size.unwrap_or(f64::INFINITY);
        let solar = curve.solar_for_battery.iter().map(|(_, w)| of(w.map(|w| w.0))).collect();
        let battery = curve.battery_for_solar.iter().map(|(_, ah)| of(ah.map(|ah| ah.0))).collect();
        assert!(falls(solar) && falls(battery), "{curve:?}");
    }
    // A higher chance takes no less.
    let surer = found(&setup, &climate, SizingAim::usual(&setup, 7, 0.97, vec![5]));
    let solars = |sizing: &Sizing| -> Vec<f64> {
        let sizes = sizing.curves[0].solar_for_battery.iter();
        sizes.map(|(_, w)| w.map_or(f64::INFINITY, |w| w.0)).collect()
    };
    assert!(solars(&sizing).iter().zip(solars(&surer)).all(|(a, b)| *a <= b));
    assert_ne!(solars(&sizing), solars(&surer));
}

#[test]
fn cheapest_and_lightest_are_so_among_all_pairs() {
    let mut setup = failing_van();
    setup.prices.lithium_per_100ah.0 = 500.0;
    let sizing = found(&setup, &summer(), SizingAim::usual(&setup, 6, 0.9, vec![6]));
    let (cheapest, lightest) = (sizing.cheapest.expect("one"), sizing.lightest.expect("one"));
    let buy = sizing.least_to_buy.expect("one");
    let price = |c: &Choice| {
        let per_ah = if c.chemistry == Chemistry::LiFePo4 { 5.0 } else { 1.8 };
        c.battery.0 * per_ah + c.solar.0 * 1.2
    };
    let weight = |c: &Choice| {
        let per_ah = if c.chemistry == Chemistry::LiFePo4 { 0.12 } else { 0.28 };
        c.battery.0 * per_ah + c.solar.0 * 0.07
    };
    for choice in [&cheapest, &lightest, &buy] {
        assert!((price(choice) - choice.money.0).abs() < 1e-6);
        assert!((weight(choice) - choice.weight.0).abs() < 1e-6);
        assert!(choice.to_buy.0 <= choice.money.0 + 1e-9);
    }
    for curve in &sizing.curves {
        for (battery, solar) in curve.pairs() {
            let choice = Choice { chemistry: curve.chemistry, battery, solar, ..cheapest };
            assert!(price(&choice) >= cheapest.money.0 - 1e-6);
            assert!(weight(&choice) >= lightest.weight.0 - 1e-6);
        }
    }
    // Lithium uses nine tenths of its charge at less than half the weight.
    assert_eq!(lightest.chemistry, Chemistry::LiFePo4);
}

#[test]
fn a_season_is_sized_for_its_hard_months() {
    let mut setup = failing_van();
    setup.trip.place.latitude.0 = 52.0;
    let climate = MonthlyClimate::from(&climate_of(&setup.trip));
    let aim = |months| SizingAim {
        batteries: vec![AmpHours(200.0)],
        solars: vec![],
        ..SizingAim::usual(&setup, 4, 0.9, months)
    };
    let season = found(&setup, &climate, aim(months(4, 10)));
    assert!(season.hard_months.contains(&10), "{:?}", season.hard_months);
    let need = |sizing: &Sizing| sizing.curves[0].solar_for_battery[0].1.expect("does").0;
    for month in 4..=10 {
        let one = found(&setup, &climate, aim(vec![month]));
        assert!(need(&one) <= need(&season) + 1e-9, "month {month}");
    }
}

#[test]
fn twenty_four_volts_take_half_the_ampere_hours() {
    let setup = failing_van();
    let mut high = setup.clone();
    high.bank.system = SystemVoltage::V24;
    high.bank.block_volts.0 = 12.0;
    let aim = |setup: &Setup| SizingAim {
        batteries: vec![],
        solars: vec![Watts(100.0)],
        ..SizingAim::usual(setup, 5, 0.9, vec![5])
    };
    let low = found(&setup, &summer(), aim(&setup)).curves[0].battery_for_solar[0].1.expect("does");
    let high = found(&high, &summer(), aim(&high)).curves[0].battery_for_solar[0].1.expect("does");
    assert!((low.0 - 2.0 * high.0).abs() <= 10.0, "{low:?} {high:?}");
}

#[test]
fn months_run_over_the_new_year() {
    assert_eq!(months(11, 2), [11, 12, 1, 2]);
    assert_eq!(months(4, 4), [4]);
    assert_eq!(months(1, 12).len(), 12);
    let mut setup = failing_van();
    setup.trip.own_air = Some(Celsius(30.0));
    setup.trip.days = vec![DayPlan { weather: Weather::Dull, ..DayPlan::default() }; 3];
    assert_eq!(in_month(&setup, 5, 7).trip.own_air, Some(Celsius(30.0)));
    let december = in_month(&setup, 12, 7);
    assert_eq!(december.trip.own_air, None);
    assert!(december.trip.days.iter().all(|day| day.weather == Weather::Unknown));
    assert_eq!(december.clone().sanitised(), (december, 0));
}

#[test]
fn the_year_strip_is_each_month_played() {
    let mut setup = failing_van();
    setup.trip.place.latitude.0 = 52.0;
    let climate = MonthlyClimate::from(&climate_of(&setup.trip));
    let mut job = YearStripJob::new(&setup, &climate);
    let mut seen = 0;
    while job.advance(60).expect("valid") {
        assert!(job.months().len() >= seen);
        seen = job.months().len();
    }
    let strip = job.months();
    assert_eq!(strip.len(), 12);
    assert!(strip[5].nights > strip[11].nights, "June against December");
    for (index, outcome) in strip.iter().enumerate() {
        let month = in_month(&setup, index as u8 + 1, usize::from(setup.trip.nights));
        let sun = Arc::new(TripSun::build(&month, &climate).expect("valid"));
        let plan = Arc::new(TripPlan::build(&month, sun));
        assert_eq!(outcome.nights, Outlook::of(&month, &plan).nights);
        let mut run = OddsRun::nights_only(plan, 128).expect("valid");
        while run.advance(500) {}
        assert_eq!(outcome.nights_sure, run.odds().nights_at(0.9));
        assert_eq!(outcome.nights_even, run.odds().nights_at(0.5));
        assert!(outcome.nights_sure <= outcome.nights_even);
    }
}
