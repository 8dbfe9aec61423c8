//! Setups side by side, cost over a battery's life, and what unmeasured loads could change.

use crate::advice_common;

use advice_common::{failing_van, summer};
use nightbank::advice::changes::Change;
use nightbank::advice::changes::cost::{Cost, hardware};
use nightbank::advice::compare::differences::{Difference, Field, Value, differences};
use nightbank::advice::compare::{Column, CompareJob, LifeCost};
use nightbank::advice::on_site::unknowns::Unknowns;
use nightbank::forecast::demand::LoadEnergy;
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{OddsRun, Outlook, TripPlan};
use nightbank::model::{
    Chemistry, Draw, DrawSource, EveryNth, Load, Setup, SystemVoltage, Usage, Window,
};
use nightbank::units::{AmpHours, Celsius, Kilograms, Money, WattHours, Watts};
use std::sync::Arc;

fn columns(setups: &[&Setup]) -> Vec<Column> {
    let climate = summer();
    let with: Vec<_> = setups.iter().map(|setup| (*setup, &climate)).collect();
    let mut job = CompareJob::new(&with);
    while job.advance(70).expect("valid") {}
    job.columns()
}

fn played(setup: &Setup, sequences: usize) -> (Outlook, Vec<f64>) {
    let sun = Arc::new(TripSun::build(setup, &summer()).expect("valid"));
    let plan = Arc::new(TripPlan::build(setup, sun));
    let outlook = Outlook::of(setup, &plan);
    let mut run = OddsRun::nights_only(plan, sequences).expect("valid");
    while run.advance(500) {}
    (outlook, run.odds().lasting_frac)
}

#[test]
fn each_column_is_that_setup_played_by_itself() {
    let lead = failing_van();
    let mut lithium = failing_van();
    lithium.bank.chemistry = Chemistry::LiFePo4;
    lithium.bank.soc_min_frac = 0.1;
    lithium.prices.lithium_per_100ah = Money(1.0);
    let columns = columns(&[&lead, &lithium]);
    for (column, setup) in columns.iter().zip([&lead, &lithium]) {
        let (outlook, lasting) = played(setup, nightbank::forecast::odds::SEQUENCES);
        assert_eq!(column.outcome.nights, outlook.nights);
        assert_eq!(column.outcome.lowest_frac, outlook.course.lowest.0);
        assert_eq!(column.outcome.lasting_frac, lasting);
    }
    assert!(columns[1].outcome.nights > columns[0].outcome.nights);
    assert!(columns[1].weight < columns[0].weight);
    // Prices of the first setup for all: 190 Ah at 450 and at 180 per 100 Ah, 120 W at 120, a
    // dc-dc charger at 250.
    assert!((columns[0].money.0 - (1.9 * 180.0 + 1.2 * 120.0 + 250.0)).abs() < 1e-9);
    assert!((columns[1].money.0 - (1.9 * 450.0 + 1.2 * 120.0 + 250.0)).abs() < 1e-9);
}

/// Weight for what can be taken out: lead some 60 kg a kWh, LiFePO4 some 10 (common practice, no source). Two blocks
/// weigh and give twice as much.
#[test]
fn weight_for_a_kilowatt_hour_is_that_of_the_kind() {
    let mut lead = failing_van();
    lead.bank.capacity_20h = AmpHours(100.0);
    let mut more = lead.clone();
    more.bank.capacity_20h = AmpHours(230.0);
    let mut lithium = lead.clone();
    lithium.bank.chemistry = Chemistry::LiFePo4;
    lithium.bank.soc_min_frac = 0.1;
    let weight = columns(&[&lead, &more, &lithium])
        .iter()
        .map(|column| column.battery_weight_per_kwh.expect("something can be taken out").0)
        .collect::<Vec<_>>();
    assert!((weight[0] / weight[1] - 1.0).abs() < 1e-6, "{weight:?}");
    assert!((40.0..75.0).contains(&weight[0]) && (8.0..15.0).contains(&weight[2]), "{weight:?}");
}

#[test]
fn at_most_four_and_none_is_nothing() {
    let setup = failing_van();
    assert_eq!(columns(&[&setup; 6]).len(), 4);
    assert!(columns(&[]).is_empty());
}

fn listed(setups: &[&Setup]) -> Vec<Difference> {
    let air = [Celsius(20.0); 24];
    let with_energy = setups.iter().map(|setup| (*setup, LoadEnergy::of(setup, &air)));
    differences(&with_energy.collect::<Vec<_>>())
}

#[test]
fn what_differs_is_listed_and_nothing_else() {
    let a = failing_van();
    assert!(listed(&[&a, &a.clone(), &a]).is_empty());
    let mut b = a.clone();
    b.name = "another name".to_owned();
    b.bank.capacity_20h = AmpHours(95.0);
    b.bank.parallel = 2;
    assert!(listed(&[&a, &b]).is_empty(), "two of half the size are the same bank");
    b.bank.chemistry = Chemistry::LiFePo4;
    b.solar[0].tilt.0 = 40.0;
    b.loads[0].enabled = false;
    b.loads[2].name = "awning".to_owned();
    b.hook_up.every = EveryNth(5);
    let lines = listed(&[&a, &b]);
    let fields: Vec<&Field> = lines.iter().map(|line| &line.field).collect();
    let named = |name: &str| Field::Load { appliance: None, name: name.to_owned() };
    assert_eq!(
        fields,
        [
            &Field::AllLoads,
            &Field::Chemistry,
            &Field::SolarTilt,
            &Field::HookUpEvery,
            &named(""),
            &named("awning")
        ]
    );
    assert_eq!(lines[3].values, [Value::Absent, Value::EveryDays(5)]);
    // What one has and the other has not is absent there, not "0 W".
    let mut c = a.clone();
    c.solar.clear();
    let without = listed(&[&a, &c]);
    let peak = without.iter().find(|line| line.field == Field::SolarPeak).expect("listed");
    assert_eq!(peak.values, [Value::Power(Watts(120.0)), Value::Absent]);
    assert_eq!(lines[5].values, [Value::Absent, Value::Energy(WattHours(40.0))]);
}

#[test]
fn other_times_of_day_are_told_where_the_energy_is_the_same() {
    let mut a = failing_van();
    let lamp = a.loads.iter().position(|load| load.usage.has_time_of_day()).expect("one");
    let name = "by the door".to_owned();
    a.loads[lamp].name.clone_from(&name);
    let mut b = a.clone();
    b.loads[lamp].window = Window { from_min: 1080, to_min: 1320 };
    b.loads[lamp].more_windows = vec![Window { from_min: 360, to_min: 480 }];
    let lines = listed(&[&a, &b]);
    assert_eq!(lines.len(), 1, "{lines:?}");
    assert_eq!(lines[0].field, Field::LoadTimes { appliance: a.loads[lamp].appliance, name });
    let times =
        vec![Window { from_min: 360, to_min: 480 }, Window { from_min: 1080, to_min: 1320 }];
    assert_eq!(lines[0].values[1], Value::Times(times));
    // The same times in another order are no difference.
    let mut c = b.clone();
    c.loads[lamp].window = Window { from_min: 360, to_min: 480 };
    c.loads[lamp].more_windows = vec![Window { from_min: 1080, to_min: 1320 }];
    assert!(listed(&[&b, &c]).is_empty());
}

#[test]
fn lead_against_lithium_over_their_life() {
    // By hand, 180 and 450 per 100 Ah: lead 12 V x 100 Ah x 0.5 = 0.6 kWh over 500 to 700 cycles
    // is 0.43 to 0.60 a kWh; lithium 12.8 V x 100 Ah x 0.9 = 1.152 kWh over 2500 to 6000 cycles is
    // 0.065 to 0.156. Cycles from memory.
    let setup = failing_van();
    let lead = LifeCost::of(&setup, Chemistry::Agm).expect("priced");
    let lithium = LifeCost::of(&setup, Chemistry::LiFePo4).expect("priced");
    assert!((lead.low.0 - 0.429).abs() < 0.001 && (lead.high.0 - 0.6).abs() < 1e-9, "{lead:?}");
    assert!((lithium.low.0 - 0.0651).abs() < 1e-3 && (lithium.high.0 - 0.156).abs() < 1e-3);
    let mut free = setup;
    free.prices.lead_per_100ah = Money(0.0);
    assert_eq!(LifeCost::of(&free, Chemistry::Gel), None);
}

/// Weight of a purchase is what the van weighs more afterwards, less what is taken out of it: lithium
/// makes it lighter.
#[test]
fn the_weight_of_a_purchase_is_what_it_adds_aboard() {
    let setup = failing_van();
    for change in [
        Change::Lithium { capacity: setup.bank.rated_capacity() },
        Change::MoreBattery { capacity: AmpHours(100.0) },
        Change::MoreSolar { peak: Watts(200.0) },
    ] {
        let Cost::Money { weight, .. } = change.cost(&setup) else {
            panic!("{change:?} is bought")
        };
        let added = hardware(&change.apply(&setup)).1 - hardware(&setup).1;
        assert!((weight - added).0.abs() < 1e-9, "{change:?}: {weight:?} {added:?}");
        assert_eq!(
            weight < Kilograms::ZERO,
            matches!(change, Change::Lithium { .. }),
            "{change:?}: {weight:?}"
        );
    }
}

#[test]
fn hardware_at_twenty_four_volts_counts_both_blocks() {
    let mut setup = Setup::default();
    setup.bank.system = SystemVoltage::V24;
    assert_eq!(hardware(&setup), (Money(360.0), Kilograms(56.0)));
}

fn guessed_van() -> Setup {
    let mut setup = failing_van();
    setup.loads[0].draw_source = DrawSource::Meter;
    setup.loads[1].draw_source = DrawSource::Estimate;
    setup.loads[2].draw_source = DrawSource::SpecSheet;
    setup.loads[3].draw_source = DrawSource::Label;
    setup
}

#[test]
fn the_one_to_measure_first_moves_the_need_most() {
    let setup = guessed_van();
    let Unknowns { ranking, likely_error } = Unknowns::of(&setup, &summer());
    let parts: f64 = ranking.iter().map(|unknown| unknown.part_frac).sum();
    assert!((parts - 1.0).abs() < 1e-12);
    assert!(ranking.windows(2).all(|pair| pair[0].part_frac >= pair[1].part_frac));
    // Directly: the need of a day with one load off by its likely error, all others as entered.
    let need = |setup: &Setup| played(setup, 1).0.need_per_day.0;
    let mut moves: Vec<(u32, f64)> = setup
        .loads
        .iter()
        .map(|l| {
            let mut off = setup.clone();
            let row = off.loads.iter_mut().find(|row| row.id == l.id).expect("same rows");
            *row = off_by(l, 1.0 + l.likely_error_frac());
            (l.id, need(&off) - need(&setup))
        })
        .collect();
    moves.sort_by(|a, b| b.1.total_cmp(&a.1));
    let order: Vec<u32> = moves.iter().map(|(id, _)| *id).collect();
    assert_eq!(ranking.iter().map(|unknown| unknown.load).collect::<Vec<_>>(), order);
    let together = moves.iter().map(|(_, move_wh)| move_wh * move_wh).sum::<f64>().sqrt();
    assert!((likely_error.0 - together).abs() < 0.03 * together, "{together}");
}

#[test]
fn what_is_measured_leaves_nothing_to_measure() {
    let mut setup = guessed_van();
    for load in &mut setup.loads {
        load.spread_frac = Some(0.0);
    }
    let Unknowns { ranking, likely_error } = Unknowns::of(&setup, &summer());
    assert_eq!(likely_error, WattHours::ZERO);
    assert!(ranking.iter().all(|unknown| unknown.part_frac == 0.0));
}

/// A load that really draws `factor` of what was entered: running, standby, and where the use
/// fixes the energy itself, that too.
fn off_by(load: &Load, factor: f64) -> Load {
    let mut load = load.clone();
    match &mut load.draw {
        Draw::Power { watts } => *watts = *watts * factor,
        Draw::Current { amps, .. } => *amps = *amps * factor,
    }
    load.standby = load.standby * factor;
    match &mut load.usage {
        Usage::Charges { cell, .. } => *cell = *cell * factor,
        Usage::Energy { per_day } => *per_day = *per_day * factor,
        _ => {}
    }
    load
}
