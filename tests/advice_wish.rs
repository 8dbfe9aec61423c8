//! Advice for the nights wanted: ranked by their chance, the next step, the comparison card, and how a loose
//! panel stands best today.

use crate::advice_common;

use advice_common::{failing_van, frost, summer};
use nightbank::advice::changes::cost::Cost;
use nightbank::advice::changes::improvements::ImprovementsJob;
use nightbank::advice::changes::wish::Advice;
use nightbank::advice::compare::alternatives::{AlternativesJob, Choice, alternatives};
use nightbank::advice::on_site::tilt::best_stand;
use nightbank::forecast::odds::{SEQUENCES, SURE_FRAC};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{MonthlyClimate, OddsRun, TripPlan};
use nightbank::model::trip::Weather;
use nightbank::model::{Chemistry, DayPlan, Mounting, Setup, SolarArray};
use nightbank::units::{Degrees, Watts};
use std::sync::Arc;

fn advice(setup: &Setup) -> Advice {
    let mut job = ImprovementsJob::new(setup, &summer(), SURE_FRAC).expect("valid climate");
    while job.advance(200).expect("valid climate") {}
    Advice::of(&job.improvements(), usize::from(setup.trip.nights), SURE_FRAC)
}

/// Chance of lasting night `i + 1`, without the advice's own code.
fn lasting(setup: &Setup, climate: &MonthlyClimate, sequences: usize) -> Vec<f64> {
    let sun = Arc::new(TripSun::build(setup, climate).expect("valid climate"));
    let plan = Arc::new(TripPlan::build(setup, sun));
    let mut run = OddsRun::nights_only(plan, sequences).expect("valid climate");
    while run.advance(500) {}
    run.odds().lasting_frac
}

#[test]
fn the_list_is_ranked_by_the_chance_of_the_nights_wanted() {
    let setup = failing_van();
    let advice = advice(&setup);
    assert_eq!(advice.nights, 7);
    assert!(advice.improvements.len() >= 5, "{}", advice.improvements.len());
    let mut last = f64::INFINITY;
    for help in &advice.improvements {
        let sequences = help.outcome.sequences;
        let before = lasting(&setup, &summer(), sequences)[6];
        let after = lasting(&help.change.apply(&setup), &summer(), sequences)[6];
        assert!((help.chances(7).0 - before).abs() < 1e-9, "{:?}", help.change);
        assert!((help.chances(7).1 - after).abs() < 1e-9, "{:?}", help.change);
        assert!(after - before >= 0.01, "{:?} does not move the wish", help.change);
        assert!(after - before <= last + 0.01, "{:?} stands too low", help.change);
        last = after - before;
    }
}

/// More nights than any single change brings: the advice is about the first night that is not sure.
#[test]
fn a_wish_out_of_reach_is_neared_by_the_first_unsure_night() {
    let mut setup = failing_van();
    setup.trip.nights = 14;
    setup.solar.clear();
    setup.driving.fitted = false;
    setup.hook_up.fitted = false;
    setup.bank.capacity_20h.0 = 60.0;
    let advice = advice(&setup);
    let sure = lasting(&setup, &summer(), SEQUENCES);
    let first = sure.iter().take_while(|chance| **chance >= SURE_FRAC).count() + 1;
    assert!(advice.nights == 14 || advice.nights.abs_diff(first) <= 1, "{}", advice.nights);
    assert!(advice.nights < 14, "something moved the fourteenth night");
    assert!(!advice.improvements.is_empty());
    assert!(advice.improvements.iter().all(|help| help.chance_gain(advice.nights) >= 0.01));
}

#[test]
fn a_stay_that_is_sure_needs_no_advice() {
    let mut setup = failing_van();
    setup.trip.nights = 1;
    assert!(advice(&setup).improvements.is_empty());
    assert_eq!(advice(&setup).next_step(), None);
}

/// What costs nothing comes first if it brings half as much as the best, or reaches the aim; what is bought
/// only where nothing free does.
#[test]
fn the_next_step_asks_for_no_money_where_a_switch_does_nearly_as_much() {
    let advice = advice(&failing_van());
    let step = advice.next_step().expect("something helps");
    let best = advice.improvements[0].chance_gain(7);
    let free =
        advice.improvements.iter().find(|help| help.is_free()).expect("the van has free changes");
    let enough = free.chance_gain(7) >= 0.5 * best || free.outcome.chance_of(7) >= SURE_FRAC;
    assert_eq!(step.is_free(), enough, "{:?}, {:?}", step.change, free.change);
    // Where nothing but switches is left, one of them is the step.
    let switches = Advice {
        nights: 7,
        sure_frac: SURE_FRAC,
        improvements: advice.improvements.iter().filter(|help| help.is_free()).cloned().collect(),
    };
    assert_eq!(switches.next_step().map(|help| help.change), Some(free.change));
    let bought = Advice {
        nights: 7,
        sure_frac: SURE_FRAC,
        improvements: advice.improvements.iter().filter(|help| !help.is_free()).cloned().collect(),
    };
    assert_eq!(
        bought.next_step().map(|help| help.change),
        bought.improvements.first().map(|h| h.change)
    );
}

#[test]
fn each_alternative_is_that_setup_played_as_often_as_the_answer() {
    let setup = failing_van();
    let mut job = AlternativesJob::new(&setup, &summer());
    assert!(job.found().iter().all(|(_, outcome)| outcome.is_none()));
    while job.advance(50).expect("valid climate") {}
    let found = job.found();
    let choices: Vec<Choice> = found.iter().map(|(it, _)| it.choice).collect();
    let all = [
        Choice::AsItIs,
        Choice::SecondBattery,
        Choice::Lithium,
        Choice::SecondPanel,
        Choice::Drive,
    ];
    assert_eq!(choices, all);
    for (it, outcome) in &found {
        let outcome = outcome.as_ref().expect("played");
        assert_eq!(
            outcome.lasting_frac,
            lasting(&it.setup, &summer(), SEQUENCES),
            "{:?}",
            it.choice
        );
        assert_eq!(it.cost.is_none(), it.choice == Choice::AsItIs);
    }
    let mean = |at: usize| found[at].1.as_ref().map_or(0.0, |outcome| outcome.nights_mean);
    assert!((1..all.len()).all(|at| mean(at) > mean(0)), "each of them improvements this van");
}

#[test]
fn alternatives_leave_out_what_is_there_already() {
    let mut setup = failing_van();
    let of = |setup: &Setup| -> Vec<Choice> {
        alternatives(setup).into_iter().map(|it| it.choice).collect()
    };
    setup.bank.chemistry = Chemistry::LiFePo4;
    assert!(!of(&setup).contains(&Choice::Lithium));
    setup.driving.every.0 = 2;
    setup.driving.minutes = 60.0;
    assert!(!of(&setup).contains(&Choice::Drive));
    setup.driving.fitted = false;
    let drive = alternatives(&setup).into_iter().find(|it| it.choice == Choice::Drive);
    let drive = drive.expect("a charger is needed for it");
    assert!(drive.setup.driving.fitted && matches!(drive.cost, Some(Cost::Money { .. })));
    // A second battery is as large as the first, a second panel too.
    let battery = &alternatives(&setup)[1].setup.bank;
    assert!((battery.rated_capacity().0 - 2.0 * setup.bank.rated_capacity().0).abs() < 1e-9);
    let panels: f64 = alternatives(&setup)[2].setup.solar.iter().map(|array| array.peak.0).sum();
    assert!((panels - 240.0).abs() < 1e-9, "{panels}");
}

/// At noon in December at 52 degrees north the sun stands 15 degrees high, in June 61 (declination 23.44
/// degrees; spherical astronomy): on clear days a panel that is turned to the south stands best steep in
/// December and flat in June. A fixed panel has no stand.
#[test]
fn a_loose_panel_stands_steep_in_winter_and_flat_in_summer() {
    let clear = |month: u8, climate: &MonthlyClimate| {
        let mut setup = failing_van();
        setup.trip.month = month;
        setup.trip.day = 15;
        setup.trip.place.latitude = Degrees(52.0);
        setup.trip.days = vec![DayPlan { weather: Weather::Clear, ..DayPlan::default() }; 15];
        setup.solar = vec![SolarArray {
            peak: Watts(100.0),
            mounting: Mounting::OpenRack,
            ..SolarArray::default()
        }];
        let sun = TripSun::build(&setup, climate).expect("valid climate");
        best_stand(&setup, &sun, 2).expect("it is loose")
    };
    let (winter, south) = clear(12, &frost());
    let (summer_tilt, _) = clear(6, &summer());
    assert!((60.0..=80.0).contains(&winter.0), "{winter:?}");
    assert!((10.0..=40.0).contains(&summer_tilt.0), "{summer_tilt:?}");
    assert_eq!(south, Degrees(180.0));
    let setup = failing_van();
    let sun = TripSun::build(&setup, &summer()).expect("valid climate");
    assert_eq!(best_stand(&setup, &sun, 2), None);
}
