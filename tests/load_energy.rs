//! What a use takes in a day is one figure wherever it is told, also after readings taught that more
//! or less is used than planned.
//!
//! The list of loads shows [`LoadEnergy`] and what the inverter takes on account of each
//! ([`InverterEnergy`]); the answer, its pictures, print and tables show the shares of [`Outlook`], by the same
//! rule; comparing and the list of what is not measured have their own lines.

use crate::advice_common;
use crate::common;

use advice_common::summer;
use common::sample;
use nightbank::advice::compare::CompareJob;
use nightbank::advice::compare::differences::{Field, Value};
use nightbank::advice::on_site::unknowns::Unknowns;
use nightbank::forecast::demand::LoadEnergy;
use nightbank::forecast::demand::inverter_share::InverterEnergy;
use nightbank::forecast::outlook::Drawer;
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{Outlook, TripPlan};
use nightbank::model::{Draw, DutyCycle, Feed, InverterSwitching, Load, Setup, Usage};
use nightbank::units::{WattHours, Watts};
use std::sync::Arc;

fn learned_on_site(use_factor: f64) -> Setup {
    let mut setup = sample::typical(12);
    setup.loads.push(Load {
        id: 90,
        name: "Coffee behind the inverter".to_owned(),
        draw: Draw::Power { watts: Watts(900.0) },
        feed: Feed::Inverter,
        usage: Usage::Uses { per_day: 3.0, seconds: 240.0 },
        standby: Watts(0.8),
        ..Load::default()
    });
    setup.loads.push(Load {
        id: 91,
        name: "Cold box".to_owned(),
        draw: Draw::Power { watts: Watts(45.0) },
        usage: Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.4 } },
        ..Load::default()
    });
    setup.loads[1].enabled = false;
    setup.correction.use_factor = use_factor;
    setup
}

fn plan_of(setup: &Setup) -> TripPlan {
    let sun = TripSun::build(setup, &summer()).expect("valid");
    TripPlan::build(setup, Arc::new(sun))
}

#[test]
fn a_use_has_one_total_in_the_list_the_answer_and_the_exports() {
    let switchings = [
        InverterSwitching::AllDay,
        InverterSwitching::WhenUsed,
        InverterSwitching::PowerSave { asleep: Watts(1.5) },
    ];
    for (use_factor, switching) in [0.6, 1.0, 1.35].into_iter().zip(switchings) {
        let mut setup = learned_on_site(use_factor);
        setup.inverter.fitted = true;
        setup.inverter.switching = switching;
        let plan = plan_of(&setup);
        let outlook = Outlook::of(&setup, &plan);
        let air = plan.sun.first_whole_day_air();
        let (list, inverter) = (LoadEnergy::of(&setup, &air), InverterEnergy::of(&setup, &air));
        let mut told = WattHours::ZERO;
        for load in setup.enabled_loads() {
            let own = Drawer::Load(load.id);
            let share = outlook.shares.iter().find(|share| share.drawer == own).expect("told");
            let listed = list.of_load(load.id) + inverter.of_load(load.id).idle;
            assert_eq!(listed, share.per_day, "{} {switching:?}", load.id);
            told += share.per_day;
        }
        assert!((list.total + inverter.shared - told).0.abs() < 1e-9);
        // What stands by itself is the draw with nothing running: none where it is off then.
        let own = outlook.shares.iter().find(|share| share.drawer == Drawer::InverterIdle);
        assert_eq!(own.map_or(WattHours::ZERO, |share| share.per_day), inverter.alone);
        assert_eq!(own.is_none(), switching == InverterSwitching::WhenUsed);
        // In all it is what the trip is played with.
        let played: f64 = plan
            .hours
            .iter()
            .filter(|hour| hour.day == 1)
            .map(|hour| hour.demand.inverter_idle.0)
            .sum();
        assert!((inverter.shared + inverter.alone - WattHours(played)).0.abs() < 1e-9);
        assert!(played > 0.0);
        let rest: WattHours = outlook
            .shares
            .iter()
            .filter(|share| !matches!(share.drawer, Drawer::Load(_)))
            .map(|share| share.per_day)
            .sum();
        assert!((told + rest - outlook.need_per_day).0.abs() < 1e-9);
        for unknown in Unknowns::of(&setup, &summer()).ranking {
            assert_eq!(unknown.per_day, list.of_load(unknown.load), "{}", unknown.load);
        }
    }
}

#[test]
fn the_simulation_draws_what_the_list_says() {
    let setup = learned_on_site(1.35);
    let plan = plan_of(&setup);
    let list = LoadEnergy::of(&setup, &plan.sun.first_whole_day_air());
    let drawn: f64 = plan
        .hours
        .iter()
        .filter(|hour| hour.day == 1)
        .map(|hour| (hour.demand.total() - hour.demand.inverter_idle).0)
        .sum();
    assert!((drawn - list.total.0).abs() < 1e-6, "{drawn} against {}", list.total.0);
}

#[test]
fn readings_scale_every_use_alike() {
    let (planned, learned) = (learned_on_site(1.0), learned_on_site(1.35));
    let air = plan_of(&planned).sun.first_whole_day_air();
    let (before, after) = (LoadEnergy::of(&planned, &air), LoadEnergy::of(&learned, &air));
    for load in &planned.loads {
        let (before, after) = (before.of_load(load.id).0, after.of_load(load.id).0);
        assert!((after - 1.35 * before).abs() < 1e-9, "{before} {after}");
    }
    assert_eq!(after.of_load(12345), WattHours::ZERO);
}

#[test]
fn comparing_tells_the_same_totals() {
    let setups = [learned_on_site(1.0), learned_on_site(1.35)];
    let climate = summer();
    let pairs = [(&setups[0], &climate), (&setups[1], &climate)];
    let job = CompareJob::new(&pairs);
    let lists = setups.each_ref().map(|setup| {
        let air = plan_of(setup).sun.first_whole_day_air();
        LoadEnergy::of(setup, &air)
    });
    let line = |field: &Field| {
        job.differences().iter().find(|line| line.field == *field).expect("they differ")
    };
    assert_eq!(
        line(&Field::AllLoads).values,
        lists.each_ref().map(|list| Value::Energy(list.total))
    );
    let cold_box = Field::Load { appliance: None, name: "Cold box".to_owned() };
    assert_eq!(
        line(&cold_box).values,
        lists.each_ref().map(|list| Value::Energy(list.of_load(91)))
    );
}
