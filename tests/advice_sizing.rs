//! Sizing against brute force on small grids, its orderings, and the months of the year.

use crate::advice_common;

use advice_common::{failing_van, load, summer};
use nightbank::advice::season::{YearStripJob, in_month, months};
use nightbank::advice::sizing::{Choice, Curve, Sizing};
use nightbank::advice::sizing::{SizingAim, SizingJob, sized};
use nightbank::advice::trial::Trial;
use nightbank::forecast::climate::climate_of;
use nightbank::forecast::odds::SEQUENCES;
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{MonthlyClimate, OddsRun, Outlook, TripPlan};
use nightbank::model::trip::Weather;
use nightbank::model::{Chemistry, DayPlan, Setup, SolarArray, SystemVoltage, Usage};
use nightbank::units::{AmpHours, Celsius, Kilograms, Money, Watts};
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

/// By hand, at the prices of the page (180 for 100 Ah of lead at 12 V, 450 of lithium, 120 for 100 W; 28, 12 and 7 kg):
/// what a van with 200 Ah AGM and 120 W takes for each pair. The cheapest is not the lightest, nor the one that needs
/// least on top of what is there.
#[test]
fn pairs_are_priced_and_weighed_by_hand() {
    let mut setup = failing_van();
    setup.bank.capacity_20h = AmpHours(200.0);
    setup.solar.push(SolarArray { enabled: false, peak: Watts(500.0), ..SolarArray::default() });
    let curve = |chemistry, ah, watts| Curve {
        chemistry,
        solar_for_battery: vec![(AmpHours(ah), Some(Watts(watts))), (AmpHours(20.0), None)],
        battery_for_solar: vec![(Watts(50.0), None)],
    };
    let two = Sizing::of(
        &setup,
        vec![5],
        vec![
            curve(Chemistry::Agm, 300.0, 220.0),
            Curve {
                battery_for_solar: vec![(Watts(300.0), Some(AmpHours(80.0)))],
                ..curve(Chemistry::LiFePo4, 100.0, 200.0)
            },
        ],
    );
    let told = |choice: Option<Choice>| {
        let c = choice.expect("three pairs");
        (c.chemistry, c.battery.0, c.solar.0, c.money.0, c.to_buy.0, c.weight.0)
    };
    // 300 Ah: 540 and 84 kg; 220 W: 264 and 15.4 kg. To buy: 100 Ah and 100 W, 180 and 120.
    assert_eq!(told(two.least_to_buy), (Chemistry::Agm, 300.0, 220.0, 804.0, 300.0, 99.4));
    // 100 Ah: 450 and 12 kg; 200 W: 240 and 14 kg. To buy: all of the battery, 80 W.
    let lithium = (Chemistry::LiFePo4, 100.0, 200.0, 690.0, 546.0, 26.0);
    assert_eq!(told(two.cheapest), lithium);
    assert_eq!(told(two.lightest), lithium);
    // At 24 V 100 Ah are two blocks.
    setup.bank.system = SystemVoltage::V24;
    let high = Sizing::of(&setup, vec![5], vec![curve(Chemistry::LiFePo4, 100.0, 200.0)]);
    let choice = high.cheapest.expect("a pair");
    assert_eq!((choice.money, choice.weight), (Money(1140.0), Kilograms(38.0)));
    assert_eq!(Sizing::of(&setup, vec![5], Vec::new()).cheapest, None);
}

/// 100 and 300 W become 50 and 150 W of 200; without panels one flat one stands in, and none for none.
#[test]
fn panels_are_scaled_together() {
    let mut setup = failing_van();
    setup.solar[0].peak = Watts(100.0);
    setup.solar.push(SolarArray { peak: Watts(300.0), ..SolarArray::default() });
    setup.solar.push(SolarArray { enabled: false, peak: Watts(70.0), ..SolarArray::default() });
    let peaks = |setup: &Setup, watts: f64| {
        let sized = sized(setup, Chemistry::LiFePo4, AmpHours(90.0), Watts(watts));
        assert_eq!((sized.bank.capacity_20h, sized.bank.parallel), (AmpHours(90.0), 1));
        assert_eq!(sized.bank.chemistry, Chemistry::LiFePo4);
        sized.solar.iter().map(|array| array.peak.0).collect::<Vec<_>>()
    };
    assert_eq!(peaks(&setup, 200.0), [50.0, 150.0]);
    assert_eq!(peaks(&setup, 0.0), [0.0; 0]);
    setup.solar.clear();
    assert_eq!(peaks(&setup, 250.0), [250.0]);
}

/// A trial without panels and doubts: every sequence is alike, so the verdict falls as soon as those that are
/// left cannot turn it. Of ten at an even chance five that last are enough, and six that do not.
#[test]
fn a_verdict_falls_as_soon_as_it_is_certain() {
    for (watts, lasts) in [(1.0, true), (60.0, false)] {
        let mut setup = Setup::default();
        setup.loads.push(load(1, watts, Usage::AlwaysOn));
        setup.loads[0].spread_frac = Some(0.0);
        setup.trip.nights = 3;
        let mut trial = Trial::with_climate(&setup, &summer(), 10).expect("valid climate");
        assert_eq!((trial.verdict(3, 0.5), trial.outcome().sequences), (None, 0));
        for played in 1..=10 {
            // No units are left: one sequence is played all the same.
            let more = trial.advance(&mut 0);
            assert_eq!((more, trial.is_finished()), (played < 10, played == 10));
            let certain = played >= if lasts { 5 } else { 6 };
            assert_eq!(trial.verdict(3, 0.5), certain.then_some(lasts), "{played}");
            let outcome = trial.outcome();
            assert_eq!((outcome.sequences, outcome.nights_sure >= 3), (played, lasts));
        }
    }
}

/// Units count played fortnights, five sequences each: 14 nights from 15:00 are 331 hours, so that ten units are
/// 51 sequences; a trip of 30 nights costs as much as three to lay out.
#[test]
fn units_of_work_are_played_fortnights() {
    let mut setup = failing_van();
    setup.trip.arrival_hour = 15;
    setup.trip.nights = 14;
    let trial = |setup: &Setup, sequences| {
        Trial::with_climate(setup, &summer(), sequences).expect("valid climate")
    };
    let mut many = trial(&setup, 400);
    let mut units = 10;
    assert!(many.advance(&mut units));
    assert_eq!((many.outcome().sequences, units, many.set_up_units()), (51, 0, 8));
    let mut few = trial(&setup, 5);
    let mut units = 10;
    assert!(!few.advance(&mut units));
    assert_eq!((few.outcome().sequences, units), (5, 9));
    few.want(7);
    assert!(!few.is_finished());
    setup.trip.nights = 30;
    assert_eq!(trial(&setup, 5).set_up_units(), 24);
}

/// The need of the first whole day, by hand: 10 W day and night are 240 Wh, beside the controllers.
#[test]
fn the_need_is_that_of_the_first_whole_day() {
    let mut setup = Setup::default();
    setup.loads.push(load(1, 10.0, Usage::AlwaysOn));
    let trial = Trial::with_climate(&setup, &summer(), 1).expect("valid climate");
    let electronics: f64 = trial.plan().hours[30].electronics.0 * 24.0;
    assert!((trial.outcome().need_per_day.0 - 240.0 - electronics).abs() < 1e-9);
    let low = trial.outcome().first_low.expect("10 W empty it").0;
    let course = nightbank::forecast::Course::average(trial.plan());
    assert_eq!(Some(low as usize), course.first_low.map(|hour| hour + 1));
}
