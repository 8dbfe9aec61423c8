//! Ways to reach a number of nights: they reach it, by their own means, at the stated price; none that is found
//! elsewhere is cheaper; and the same change has the same figures wherever it is told.

use crate::advice_common;

use advice_common::{failing_van, load, summer};
use nightbank::advice::changes::Change;
use nightbank::advice::changes::candidates::candidates;
use nightbank::advice::changes::cost::{Bill, Cost, driving_hour, hook_up_night};
use nightbank::advice::changes::improvements::{ImprovementsJob, TOLD};
use nightbank::advice::changes::ways::{Aim, Way, WayKind, WaysJob, apply_all, bill_of};
use nightbank::advice::changes::wish::Advice;
use nightbank::advice::sizing::{SizingAim, SizingJob, lasting};
use nightbank::forecast::odds::{SEQUENCES, SURE_FRAC, chance_of, reaches};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{OddsRun, TripPlan};
use nightbank::model::{Chemistry, Group, Prices, Setup, Usage};
use nightbank::units::{AmpHours, Hours, Kilograms, Money, Watts};
use proptest::prelude::*;
use std::sync::Arc;

fn search(setup: &Setup, nights: usize, chance_frac: f64) -> WaysJob {
    let mut job = WaysJob::new(setup, &summer(), Aim { nights, chance_frac }).expect("valid");
    while job.advance(500).expect("valid") {}
    job
}

/// Chances as the answer has them: every sequence, with the band.
fn answer(setup: &Setup, nights: usize) -> Vec<f64> {
    let setup = lasting(setup, nights);
    let sun = Arc::new(TripSun::build(&setup, &summer()).expect("valid"));
    let mut run = OddsRun::new(Arc::new(TripPlan::build(&setup, sun)), SEQUENCES).expect("valid");
    while run.advance(500) {}
    run.odds().lasting_frac
}

fn chance_directly(setup: &Setup, nights: usize) -> f64 {
    chance_of(&answer(setup, nights), nights)
}

/// A bill is the sum of its lines.
#[test]
fn costs_add_up_by_their_kind() {
    let (night, hour) = (Cost::HookUp { nights: 2 }, Cost::Driving { time: Hours(1.5) });
    let bought = |amount, weight, driving| Cost::Money {
        amount: Money(amount),
        weight: Kilograms(weight),
        driving: Hours(driving),
    };
    let (panel, lighter) = (bought(120.0, 6.0, 0.0), bought(450.0, -15.0, 0.5));
    let bill = [night, night, hour, hour, panel, lighter, Cost::Unpriced, Cost::Unpriced]
        .into_iter()
        .chain([Cost::Free, Cost::Free, Cost::Effort, Cost::Effort])
        .fold(Bill::default(), Bill::with);
    let expected = Bill {
        money: Money(570.0),
        unpriced: 2,
        weight: Kilograms(-9.0),
        driving: Hours(3.5),
        hook_up_nights: 4,
        efforts: 2,
        free: 2,
    };
    assert_eq!(bill, expected);
    // With the price list to start from: 10 an hour, 20 a night, 5 for some comfort, a half to be remembered.
    let prices = Prices::default();
    assert_eq!((driving_hour(&prices), hook_up_night(&prices)), (Money(10.0), Money(20.0)));
    assert!((bill.price(&prices).0 - (570.0 + 35.0 + 80.0 + 10.0 + 1.0)).abs() < 1e-9);
    // In another currency all of it grows alike.
    let dearer = |price: Money| price * 10.0;
    let krona = Prices {
        solar_per_100w: dearer(prices.solar_per_100w),
        lead_per_100ah: dearer(prices.lead_per_100ah),
        ..prices.clone()
    };
    assert_eq!(driving_hour(&krona), dearer(driving_hour(&prices)));
}

/// Only what comes on top of what is planned is counted.
#[test]
fn what_is_planned_or_owned_costs_nothing_more() {
    let mut setup = failing_van();
    setup.trip.nights = 12;
    assert_eq!(Change::HookUp { every: 2 }.cost(&setup), Cost::HookUp { nights: 6 });
    setup.hook_up.every.0 = 4;
    assert_eq!(Change::HookUp { every: 2 }.cost(&setup), Cost::HookUp { nights: 3 });
    let charger = Change::DcDcCharger { amps: nightbank::units::Amps(30.0), drive_every: Some(3) };
    let Cost::Money { driving, .. } = charger.cost(&setup) else { panic!("it is bought") };
    assert_eq!(driving, Hours(4.0), "an hour every third day of twelve");
    let same = AmpHours(setup.bank.rated_capacity().0);
    let Cost::Money { amount, .. } = (Change::Lithium { capacity: same }).cost(&setup) else {
        panic!("it is bought")
    };
    assert!((amount.0 - 1.9 * 450.0).abs() < 1e-9);
}

fn of_kind(ways: &[Way], kind: WayKind) -> &Way {
    ways.iter().find(|way| way.kinds.contains(&kind)).expect("a way of this kind")
}

#[test]
fn a_van_that_fails_on_the_fifth_night_reaches_the_eighth_with_and_without_buying() {
    let setup = failing_van();
    let job = search(&setup, 8, 0.9);
    let base = job.baseline().expect("played");
    assert_eq!(base.nights, 4, "{base:?}");
    let ways = job.ways();
    assert!(ways.len() >= 2, "{ways:?}");
    for way in &ways {
        assert!(way.reaches, "{way:?}");
        assert_eq!(way.outcome.lasting_frac, answer(&way.apply(&setup), 8), "{way:?}");
        assert!(reaches(way.outcome.chance_of(8), 0.9));
        assert_eq!(way.bill, bill_of(&lasting(&setup, 8), &way.steps));
        assert_eq!(way.price, way.bill.price(&setup.prices));
        assert!(way.price >= ways[0].price, "the cheapest comes first");
        let mut standing = lasting(&setup, 8);
        for step in &way.steps {
            let cost = step.cost(&standing);
            assert!(way.kinds.iter().all(|kind| kind.allows(cost)), "{step:?} in {:?}", way.kinds);
            standing = step.apply(&standing);
        }
    }
    assert!(of_kind(&ways, WayKind::OnlyBought).bill.money > Money(50.0));
    let unbought = of_kind(&ways, WayKind::NothingBought).bill;
    assert_eq!((unbought.money, unbought.unpriced), (Money::ZERO, 0));
}

/// With one appliance that nobody may touch and a stay that needs driving and panels: means are mixed.
#[test]
fn a_way_mixes_means_where_that_is_cheaper() {
    let mut setup = failing_van();
    setup.hook_up.fitted = false;
    setup.driving.fitted = false;
    setup.loads.push(load(9, 14.0, Usage::AlwaysOn));
    setup.loads[4].group = Group::Health;
    let ways = search(&setup, 8, 0.9).ways();
    let cheapest = &ways[0];
    assert!(cheapest.reaches && cheapest.kinds == [WayKind::Any], "{ways:?}");
    let bought = of_kind(&ways, WayKind::OnlyBought);
    assert!(cheapest.price < bought.price && cheapest.bill.money < bought.bill.money, "{ways:?}");
    assert!(cheapest.bill.money > Money::ZERO && cheapest.bill.free + cheapest.bill.efforts > 0);
}

/// With 60 W of sun a drive on the second day is taken first that the later ones make unneeded.
#[test]
fn no_step_of_a_way_can_be_left_out_and_nothing_bought_be_smaller() {
    for (peak, nights) in [(120.0, 8), (60.0, 5)] {
        let mut setup = failing_van();
        setup.solar[0].peak = Watts(peak);
        let job = search(&setup, nights, 0.9);
        for way in job.ways().iter().filter(|way| way.reaches) {
            for place in 0..way.steps.len() {
                let mut steps = way.steps.clone();
                steps.remove(place);
                let chance = chance_directly(&apply_all(&setup, &steps), nights);
                assert!(chance < 0.9, "{:?} works without {:?}", way.kinds, way.steps[place]);
                let mut steps = way.steps.clone();
                match &mut steps[place] {
                    Change::MoreSolar { peak } => *peak -= Watts(10.0),
                    Change::MoreBattery { capacity } => *capacity -= AmpHours(5.0),
                    _ => continue,
                }
                let chance = chance_directly(&apply_all(&setup, &steps), nights);
                assert!(chance < 0.9, "{:?} works with {:?}", way.kinds, steps[place]);
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
    let ways = base.ways();
    let way = of_kind(&ways, WayKind::NothingBought);
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
    assert!(hard.ways().iter().all(|way| !way.reaches));
    // What is told all the same brings the trip nearer.
    let nights = |outcome: &nightbank::advice::trial::Outcome| outcome.nights_at(0.9);
    let before = nights(hard.baseline().expect("played"));
    assert!(hard.ways().iter().all(|way| nights(&way.outcome) > before));
    assert!(!hard.ways().iter().any(|way| { way.steps.iter().any(|step| step.load() == Some(9)) }));
}

#[test]
fn batteries_bought_one_by_one_are_told_as_one() {
    let mut setup = failing_van();
    setup.solar.clear();
    setup.driving.fitted = false;
    let ways = search(&setup, 14, 0.9).ways();
    let way = of_kind(&ways, WayKind::OnlyBought);
    let batteries = way.steps.iter().filter(|s| matches!(s, Change::MoreBattery { .. })).count();
    let panels = way.steps.iter().filter(|s| matches!(s, Change::MoreSolar { .. })).count();
    assert!(batteries <= 1 && panels <= 1, "{:?}", way.steps);
    assert!(way.reaches && way.bill.money > Money::ZERO);
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

proptest! {
    #![proptest_config(ProptestConfig { cases: 4, failure_persistence: None, ..ProptestConfig::default() })]

    /// What helps, ways and sizes are of one search: no single change and no sizes that reach the nights are
    /// cheaper than the cheapest way, and every figure told is that of the answer once the change is made.
    #[test]
    fn no_screen_names_a_cheaper_way_and_each_change_has_one_figure(
        peak in 60.0..200.0_f64, ah in 90.0..220.0_f64, lithium in any::<bool>(),
        driving in any::<bool>(), hook_up in any::<bool>(), solar_price in 40.0..400.0_f64,
        month in 4_u8..=9, nights in 4_usize..=8, surer in any::<bool>(), untouchable_w in 0.0..12.0_f64,
    ) {
        let mut setup = failing_van();
        setup.solar[0].peak = Watts(peak);
        setup.bank.capacity_20h = AmpHours(ah);
        if lithium {
            setup.bank.exchange(Chemistry::LiFePo4);
            setup.bank.capacity_20h = AmpHours(0.5 * ah);
        }
        setup.driving.fitted = driving;
        setup.hook_up.fitted = hook_up;
        setup.prices.solar_per_100w = Money(solar_price);
        setup.trip.month = month;
        setup.trip.nights = nights as u8;
        setup.loads.push(load(9, untouchable_w, Usage::AlwaysOn));
        setup.loads[4].group = Group::Health;
        let aim = if surer { 0.95 } else { SURE_FRAC };
        let job = search(&setup, nights, aim);
        prop_assume!(!job.is_reached_already());
        let ways = job.ways();
        let price = |steps: &[Change]| bill_of(&setup, steps).price(&setup.prices);
        let cheapest = ways.first().filter(|way| way.reaches).map_or(Money(f64::INFINITY), |way| way.price);
        for way in &ways {
            prop_assert_eq!(&way.outcome.lasting_frac, &answer(&way.apply(&setup), nights));
        }
        // Every single change that has a price.
        for change in candidates(&setup, job.baseline().expect("played")) {
            if change.cost(&setup) == Cost::Unpriced || price(&[change]).0 >= cheapest.0 - 1e-6 {
                continue;
            }
            let chance = chance_directly(&change.apply(&setup), nights);
            prop_assert!(!reaches(chance, aim), "{change:?} reaches it for {:?}: {ways:?}", price(&[change]));
        }
        // All sizes, as "What to buy" lists them.
        let usual = SizingAim::usual(&setup, nights, aim, Vec::new());
        let mut sizes = SizingJob::new(&setup, &summer(), usual);
        while sizes.advance(500).expect("valid") {}
        if let Some(choice) = sizes.sizing().least_to_buy {
            let steps = choice.changes(&setup);
            prop_assert!((price(&steps).0 - choice.to_buy.0).abs() < 1e-6);
            let bought = of_kind(&ways, WayKind::OnlyBought);
            prop_assert!(bought.price.0 <= choice.to_buy.0 + 1e-6, "{choice:?} {bought:?}");
            prop_assert!(cheapest <= bought.price);
            prop_assert!(reaches(chance_directly(&apply_all(&setup, &steps), nights), aim));
        }
        // What helps: what is told first is played as often as the answer, and a way of one step is one of it.
        let mut helps = ImprovementsJob::new(&setup, &summer(), aim).expect("valid");
        while helps.advance(500).expect("valid") {}
        let advice = Advice::of(&helps.improvements(), nights, aim);
        for help in advice.improvements.iter().take(TOLD).chain(advice.next_step()) {
            prop_assert!(help.is_in_full(), "{:?}", help.change);
            let after = answer(&help.change.apply(&setup), nights);
            prop_assert_eq!(&help.outcome.lasting_frac, &after, "{:?}", help.change);
            for way in ways.iter().filter(|way| way.steps == [help.change]) {
                prop_assert_eq!(&way.outcome.lasting_frac, &help.outcome.lasting_frac);
            }
        }
    }
}
