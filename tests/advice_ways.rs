//! Ways to reach a number of nights: they reach it, by their own means, at the stated price.

use crate::advice_common;

use advice_common::{failing_van, load, summer};
use nightbank::advice::changes::Change;
use nightbank::advice::changes::cost::{Bill, Cost};
use nightbank::advice::changes::ways::{Aim, Way, WayKind, WaysJob, apply_all};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{OddsRun, TripPlan};
use nightbank::model::{Group, Setup, Usage};
use nightbank::units::{Hours, Kilograms, Money, Watts};
use std::sync::Arc;

fn search(setup: &Setup, nights: usize, chance_frac: f64) -> WaysJob {
    let mut job = WaysJob::new(setup, &summer(), Aim { nights, chance_frac }).expect("valid");
    while job.advance(500).expect("valid") {}
    job
}

fn chance_directly(setup: &Setup, nights: usize) -> f64 {
    let mut setup = setup.clone();
    setup.trip.nights = setup.trip.nights.max(u8::try_from(nights).expect("few nights"));
    let sun = Arc::new(TripSun::build(&setup, &summer()).expect("valid"));
    let mut run = OddsRun::nights_only(Arc::new(TripPlan::build(&setup, sun)), 256).expect("valid");
    while run.advance(500) {}
    run.odds().chance_of(nights)
}

/// A bill is the sum of its lines.
#[test]
fn costs_add_up_by_their_kind() {
    let (night, hour) = (Cost::HookUp { nights: 2 }, Cost::Driving { time: Hours(1.5) });
    let panel = Cost::Money { amount: Money(120.0), weight: Kilograms(6.0) };
    let lighter = Cost::Money { amount: Money(450.0), weight: Kilograms(-15.0) };
    let bill = [night, night, hour, hour, panel, lighter, Cost::Unpriced, Cost::Unpriced]
        .into_iter()
        .chain([Cost::Free, Cost::Free, Cost::Effort, Cost::Effort])
        .fold(Bill::default(), Bill::with);
    let expected = Bill {
        money: Money(570.0),
        unpriced: 2,
        weight: Kilograms(-9.0),
        driving: Hours(3.0),
        hook_up_nights: 4,
        efforts: 2,
        free: 2,
    };
    assert_eq!(bill, expected);
}

fn by_kind(job: &WaysJob, kind: WayKind) -> &Way {
    job.ways().iter().find(|way| way.kind == kind).expect("a way of this kind")
}

#[test]
fn a_van_that_fails_on_the_fifth_night_reaches_the_eighth_in_three_ways() {
    let setup = failing_van();
    let job = search(&setup, 8, 0.9);
    let base = job.baseline().expect("played");
    assert_eq!(base.nights, 4, "{base:?}");
    assert_eq!(job.ways().len(), 3);
    for way in job.ways() {
        assert!(way.reaches, "{way:?}");
        let chance = chance_directly(&way.apply(&setup), 8);
        assert!(chance >= 0.9 - 1e-9, "{:?} {chance}", way.kind);
        assert!((chance - way.outcome.chance_of(8)).abs() < 1e-9);
        let mut standing = setup.clone();
        standing.trip.nights = 8;
        for step in &way.steps {
            let cost = step.cost(&standing);
            let fits = match way.kind {
                WayKind::Habits => matches!(cost, Cost::Free | Cost::Effort),
                WayKind::OnTheMove => matches!(cost, Cost::Driving { .. } | Cost::HookUp { .. }),
                WayKind::Purchase => matches!(cost, Cost::Money { .. }),
            };
            assert!(fits, "{step:?} in {:?}", way.kind);
        }
    }
    assert!(by_kind(&job, WayKind::Purchase).bill.money > Money(50.0));
    assert_eq!(by_kind(&job, WayKind::Habits).bill.money, Money::ZERO);
    let moving = by_kind(&job, WayKind::OnTheMove).bill;
    assert!(moving.driving.0 > 0.0 || moving.hook_up_nights > 0);
}

/// With 60 W of sun a drive on the second day is taken first that the later ones make unneeded.
#[test]
fn no_step_of_a_way_can_be_left_out() {
    for (peak, nights) in [(120.0, 8), (60.0, 5)] {
        let mut setup = failing_van();
        setup.solar[0].peak = Watts(peak);
        let job = search(&setup, nights, 0.9);
        for way in job.ways().iter().filter(|way| way.reaches && way.steps.len() > 1) {
            for left_out in 0..way.steps.len() {
                let mut steps = way.steps.clone();
                steps.remove(left_out);
                let chance = chance_directly(&apply_all(&setup, &steps), nights);
                assert!(chance < 0.9, "{:?} works without {:?}", way.kind, way.steps[left_out]);
            }
        }
    }
}

#[test]
fn without_sun_small_steps_still_add_up() {
    let mut setup = Setup::default();
    for id in 1..=6 {
        setup.loads.push(load(id, 2.0, Usage::AlwaysOn));
        setup.loads[id as usize - 1].group = Group::Standby;
    }
    let base = search(&setup, 4, 0.9);
    assert!(!base.is_reached_already());
    let way = by_kind(&base, WayKind::Habits);
    assert!(way.reaches && way.steps.len() >= 2, "{way:?}");
}

#[test]
fn what_lasts_already_needs_no_way_and_what_cannot_says_so() {
    let setup = failing_van();
    let easy = search(&setup, 2, 0.9);
    assert!(easy.is_reached_already() && easy.ways().is_empty());
    let mut heavy = failing_van();
    heavy.loads.push(load(9, 800.0, Usage::AlwaysOn));
    heavy.loads.last_mut().expect("just pushed").group = Group::Health;
    let hard = search(&heavy, 30, 0.9);
    let habits = hard.ways().iter().find(|way| way.kind == WayKind::Habits);
    assert!(habits.is_none_or(|way| !way.reaches));
    assert!(!hard.ways().iter().any(|way| { way.steps.iter().any(|step| step.load() == Some(9)) }));
}

#[test]
fn batteries_bought_one_by_one_are_told_as_one() {
    let mut setup = failing_van();
    setup.solar.clear();
    setup.driving.fitted = false;
    let job = search(&setup, 14, 0.9);
    let way = by_kind(&job, WayKind::Purchase);
    let batteries = way.steps.iter().filter(|s| matches!(s, Change::MoreBattery { .. })).count();
    let panels = way.steps.iter().filter(|s| matches!(s, Change::MoreSolar { .. })).count();
    assert!(batteries <= 1 && panels <= 1, "{:?}", way.steps);
    let mut peak = Watts::ZERO;
    for array in &way.apply(&setup).solar {
        peak += array.peak;
    }
    assert!(peak > Watts::ZERO || batteries > 0);
}

#[test]
fn portions_do_not_change_the_ways() {
    let setup = failing_van();
    let at_once = search(&setup, 7, 0.8);
    let aim = Aim { nights: 7, chance_frac: 0.8 };
    let mut job = WaysJob::new(&setup, &summer(), aim).expect("valid");
    while job.advance(23).expect("valid") {}
    assert_eq!(job.ways(), at_once.ways());
}
