//! The wiring check on whole setups.

use nightbank::advice::workshop::wiring::{self, CableFinding, CurrentFrom, Severity};
use nightbank::advice::workshop::wiring_runs::{RunPurpose, suggested_runs};
use nightbank::model::{
    Bank, CableRun, ConductorSize, CutOut, Draw, Driving, DrivingCharger, Feed, HookUp, Inverter,
    Load, Setup, SolarArray, SystemVoltage,
};
use nightbank::physics::ampacity::Surroundings;
use nightbank::units::{AmpHours, Amps, Celsius, Metres, SquareMillimetres, Volts, Watts};
use proptest::prelude::*;

fn close(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "got {got}, expected {expected} +- {tolerance}");
}

fn mm2(area: f64) -> ConductorSize {
    ConductorSize::Metric { area: SquareMillimetres(area) }
}

fn fridge() -> Load {
    Load {
        id: 1,
        draw: Draw::Power { watts: Watts(45.0) },
        surge_factor: 2.9,
        cut_out: Some(CutOut { off: Volts(10.4), on: Volts(11.7) }),
        ..Load::default()
    }
}

fn setup(loads: Vec<Load>) -> Setup {
    Setup { loads, ..Setup::default() }
}

fn run_for(id: u32, area: f64, length_m: f64, fuse_a: f64) -> CableRun {
    CableRun {
        load_id: Some(id),
        size: mm2(area),
        length: Metres(length_m),
        working: Celsius(20.0),
        fuse: Amps(fuse_a),
        ..CableRun::default()
    }
}

fn has(verdict: &wiring::RunVerdict, pick: impl Fn(&CableFinding) -> bool) -> bool {
    verdict.findings.iter().any(pick)
}

/// Running currents of constant-power loads are taken at 95 % of nominal voltage (IEEE 1013):
/// 60 W on 12 V is 5.263 A.
#[test]
fn constant_power_draws_more_at_low_voltage() {
    let mut load = fridge();
    load.draw = Draw::Power { watts: Watts(60.0) };
    load.cut_out = None;
    let current = wiring::load_current(&load, SystemVoltage::V12);
    close(current.nominal.0, 5.0, 1e-12);
    close(current.continuous.0, 5.263, 5e-4);
    close(load.draw.amps_at(Volts(24.0)).0, 2.5, 1e-12);
    assert_eq!(load.draw.amps_at(Volts(0.0)), Amps(0.0));
}

/// Cut-outs are stated for 12 V: a fridge of 45 W that stops at 11.4 V per 12 V stops at 22.8 V of
/// 24, where it draws 1.97 A (computed by hand), and half a volt above that is no cut-out yet.
#[test]
fn a_cut_out_stated_for_twelve_volts_counts_twice_at_twenty_four() {
    let mut all = setup(vec![Load {
        cut_out: Some(CutOut { off: Volts(11.4), on: Volts(12.1) }),
        ..fridge()
    }]);
    all.bank.system = SystemVoltage::V24;
    close(wiring::run_current(&run_for(1, 2.5, 6.0, 10.0), &all).continuous.0, 1.974, 5e-4);
    let thin = wiring::check(&run_for(1, 1.0, 20.0, 10.0), &all, Surroundings::default());
    assert!(has(&thin, |finding| matches!(
        finding,
        CableFinding::MayCutOut { at_load, cut_out } if at_load < cut_out && *cut_out == Volts(22.8)
    )));
}

/// A 2000 W inverter of 88 %: 206.6 A at 11 V (computed by hand).
#[test]
fn the_inverter_is_sized_at_eleven_volts() {
    let unit = Inverter {
        fitted: true,
        continuous: Watts(2000.0),
        idle: Watts(20.0),
        ..Inverter::default()
    };
    close(wiring::inverter_current(&unit, SystemVoltage::V12).continuous.0, 206.6, 0.05);
    close(wiring::inverter_current(&unit, SystemVoltage::V24).continuous.0, 103.3, 0.05);
    let mut all = setup(vec![Load { feed: Feed::Inverter, ..fridge() }]);
    all.inverter = unit;
    let current = wiring::run_current(&run_for(1, 70.0, 1.5, 300.0), &all);
    assert_eq!(current.from, CurrentFrom::Inverter);
    close(current.continuous.0, 206.6, 0.05);
}

/// 1.5 mm2 over 6 m: the running fridge loses 0.6 V, its start 1.8 V (computed by hand), and with
/// the battery at 11.4 V the start falls below the cut-out of 10.4 V (published cut-out).
#[test]
fn a_long_thin_cable_stops_the_fridge() {
    let all = setup(vec![fridge()]);
    let verdict = wiring::check(&run_for(1, 1.5, 6.0, 7.5), &all, Surroundings::default());
    let current = verdict.current;
    close(current.nominal.0, 3.75, 1e-12);
    close(verdict.drop.0, 0.599 * current.continuous.0 / 3.75, 1e-3);
    assert!(has(
        &verdict,
        |f| matches!(f, CableFinding::MayCutOut { at_load, .. } if at_load.0 < 10.4)
    ));
    assert!(!has(&verdict, |f| matches!(f, CableFinding::DropTooHigh { .. })));
    let thick = wiring::check(&run_for(1, 4.0, 6.0, 7.5), &all, Surroundings::default());
    assert!(!has(&thick, |f| matches!(f, CableFinding::MayCutOut { .. })));
}

#[test]
fn three_percent_is_stricter_than_ten() {
    let all = setup(Vec::new());
    let mut run =
        CableRun { amps: Amps(10.0), size: mm2(2.5), fuse: Amps(15.0), ..CableRun::default() };
    let relaxed = wiring::check(&run, &all, Surroundings::default());
    close(relaxed.drop.0, 0.892, 5e-4);
    assert!(!has(&relaxed, |f| matches!(f, CableFinding::DropTooHigh { .. })));
    run.critical = true;
    let strict = wiring::check(&run, &all, Surroundings::default());
    assert!(has(
        &strict,
        |f| matches!(f, CableFinding::DropTooHigh { allowed_frac, .. } if *allowed_frac == 0.03)
    ));
    assert_eq!(strict.for_3_percent.metric, Some(SquareMillimetres(10.0)));
    assert_eq!(strict.for_10_percent.metric, Some(SquareMillimetres(2.5)));
    assert_eq!(strict.suggested(), strict.for_3_percent);
}

/// The fridge takes 3.95 A and starts with 11.45 A: 7.5 A hold that (twice the rating for a moment), 5 A may blow,
/// and 4 A are too little even for running (1.25 times: 4.93 A).
#[test]
fn a_fuse_that_may_blow_at_the_start_is_told() {
    let all = setup(vec![Load { cut_out: None, ..fridge() }]);
    let told = |fuse_a| {
        let verdict = wiring::check(&run_for(1, 6.0, 3.0, fuse_a), &all, Surroundings::default());
        (
            has(&verdict, |f| matches!(f, CableFinding::FuseBelowLoad { .. })),
            has(&verdict, |f| matches!(f, CableFinding::FuseMayBlowAtStart { .. })),
        )
    };
    assert_eq!([7.5, 5.0, 4.0].map(told), [(false, false), (false, true), (true, false)]);
}

/// A cable that feeds a load behind the inverter is the inverter's; one that feeds a lamp is not.
#[test]
fn the_inverters_cable_is_proposed_until_it_is_drawn() {
    let lamp = Load { id: 1, draw: Draw::Power { watts: Watts(20.0) }, ..Load::default() };
    let kettle = Load { id: 2, feed: Feed::Inverter, ..lamp.clone() };
    let mut all = setup(vec![lamp, kettle]);
    all.inverter = Inverter { fitted: true, ..Inverter::default() };
    let proposed = |all: &Setup| {
        let runs = suggested_runs(all, Surroundings::default());
        runs.iter().any(|one| one.purpose == RunPurpose::Inverter)
    };
    all.cables = vec![run_for(1, 2.5, 2.0, 10.0)];
    assert!(proposed(&all));
    all.cables.push(run_for(2, 50.0, 1.0, 150.0));
    assert!(!proposed(&all));
}

#[test]
fn fuses_are_judged_against_cable_and_load() {
    let all = setup(Vec::new());
    let check = |size: f64, amps: f64, fuse: f64| {
        let run = CableRun {
            amps: Amps(amps),
            size: mm2(size),
            length: Metres(1.0),
            fuse: Amps(fuse),
            ..CableRun::default()
        };
        wiring::check(&run, &all, Surroundings::default())
    };
    let bare = check(2.5, 10.0, 0.0);
    assert_eq!(bare.severity(), Some(Severity::Danger));
    assert!(has(&bare, |f| *f == CableFinding::NoFuse));
    // 2.5 mm2 carries 25 A (from memory): 40 A is too much fuse, 10 A too little for 10 A of load.
    assert!(has(&check(2.5, 10.0, 40.0), |f| matches!(f, CableFinding::FuseAboveCable { .. })));
    assert!(has(
        &check(2.5, 10.0, 10.0),
        |f| matches!(f, CableFinding::FuseBelowLoad { needed, .. } if *needed == Amps(12.5))
    ));
    let good = check(2.5, 10.0, 15.0);
    assert!(good.severity() <= Some(Severity::Warning));
    assert!(!has(&good, |f| matches!(
        f,
        CableFinding::FuseAboveCable { .. } | CableFinding::FuseBelowLoad { .. }
    )));
    assert_eq!(good.fuse.map(|fuse| fuse.rating), Some(Amps(15.0)));
    // 30 A on 2.5 mm2: too thin, no fuse can make it safe, thicker is suggested.
    let thin = check(2.5, 30.0, 40.0);
    assert!(has(&thin, |f| matches!(f, CableFinding::CableTooThin { .. })));
    assert!(thin.conductor > Celsius(70.0));
    assert_eq!(thin.fuse, None);
    assert_eq!(thin.suggested().metric, Some(SquareMillimetres(6.0)));
    assert_eq!(thin.suggested_fuse.map(|fuse| fuse.rating), Some(Amps(40.0)));
}

/// 22 A on 2.5 mm2, which carries 25 A: not too thin, but a fuse would have to be of 27.5 A at least.
#[test]
fn a_cable_with_no_room_for_a_fuse_is_told() {
    let run = |area| CableRun {
        amps: Amps(22.0),
        size: mm2(area),
        length: Metres(1.0),
        fuse: Amps(25.0),
        ..CableRun::default()
    };
    let told = |area| wiring::check(&run(area), &setup(Vec::new()), Surroundings::default());
    let tight = told(2.5);
    assert!(has(&tight, |f| *f == CableFinding::NoFuseFits { from: Amps(27.5), to: Amps(25.0) }));
    assert!(!has(&tight, |f| matches!(f, CableFinding::CableTooThin { .. })));
    assert_eq!(tight.fuse, None);
    assert!(!has(&told(4.0), |f| matches!(f, CableFinding::NoFuseFits { .. })));
}

#[test]
fn only_a_small_battery_lets_a_blade_fuse_stand_alone() {
    let mut all = setup(Vec::new());
    let run = CableRun { fuse: Amps(15.0), ..CableRun::default() };
    let high = |all: &Setup| {
        has(&wiring::check(&run, all, Surroundings::default()), |f| {
            matches!(f, CableFinding::HighInterruptNeeded { .. })
        })
    };
    assert!(high(&all));
    all.bank.capacity_20h = AmpHours(20.0);
    assert!(!high(&all));
}

#[test]
fn a_gauge_that_only_passes_as_american_gauge_is_told() {
    let all = setup(Vec::new());
    let run = CableRun {
        amps: Amps(10.0),
        length: Metres(3.2),
        size: ConductorSize::Awg { gauge: 12 },
        working: Celsius(29.3),
        fuse: Amps(15.0),
        critical: true,
        ..CableRun::default()
    };
    let verdict = wiring::check(&run, &all, Surroundings::default());
    assert!(has(&verdict, |f| matches!(f, CableFinding::FailsAsSaeGauge { gauge: 12, .. })));
    assert!(!has(&verdict, |f| matches!(f, CableFinding::DropTooHigh { .. })));
}

#[test]
fn what_is_not_known_is_said() {
    let all = setup(Vec::new());
    let gone = wiring::check(&run_for(9, 2.5, 3.0, 15.0), &all, Surroundings::default());
    assert!(has(&gone, |f| *f == CableFinding::LoadMissing { load_id: 9 }));
    let none = CableRun { amps: Amps::ZERO, fuse: Amps(10.0), ..CableRun::default() };
    let none = wiring::check(&none, &all, Surroundings::default());
    assert!(has(&none, |f| *f == CableFinding::CurrentUnknown));
}

fn full_setup() -> Setup {
    let pump = Load { id: 2, draw: Draw::Power { watts: Watts(90.0) }, ..Load::default() };
    let lamp = Load { id: 3, draw: Draw::Power { watts: Watts(4.0) }, ..Load::default() };
    let mover = Load { id: 4, draw: Draw::Power { watts: Watts(500.0) }, ..Load::default() };
    let mut all = setup(vec![fridge(), pump, lamp, mover]);
    all.inverter = Inverter { fitted: true, ..Inverter::default() };
    all.driving = Driving {
        fitted: true,
        charger: DrivingCharger::DcDc { amps: Amps(30.0) },
        ..Driving::default()
    };
    all.hook_up = HookUp { fitted: true, ..HookUp::default() };
    all.solar = vec![SolarArray { peak: Watts(200.0), ..SolarArray::default() }];
    all
}

#[test]
fn proposals_cover_what_is_heavy_and_what_charges() {
    let mut all = full_setup();
    let purposes = |all: &Setup| -> Vec<RunPurpose> {
        suggested_runs(all, Surroundings::default()).iter().map(|one| one.purpose).collect()
    };
    let found = purposes(&all);
    for expected in [
        RunPurpose::Load(2),
        RunPurpose::Load(4),
        RunPurpose::Inverter,
        RunPurpose::DcDcCharger,
        RunPurpose::MainsCharger,
        RunPurpose::Solar(0),
    ] {
        assert!(found.contains(&expected), "{expected:?}");
    }
    assert_eq!(found.len(), 6);
    assert_eq!(found.first(), Some(&RunPurpose::Inverter));
    all.cables.push(run_for(4, 16.0, 4.0, 60.0));
    assert!(!purposes(&all).contains(&RunPurpose::Load(4)));
}

proptest! {
    #[test]
    fn proposals_pass_their_own_check(watts in 40.0..1500.0f64, rating in 100.0..3000.0f64, dcdc in 5.0..60.0f64, solar in 50.0..600.0f64, twenty_four in any::<bool>()) {
        let mut all = full_setup();
        all.loads[3].draw = Draw::Power { watts: Watts(watts) };
        all.inverter.continuous = Watts(rating);
        all.inverter.surge = Watts(2.0 * rating);
        all.driving.charger = DrivingCharger::DcDc { amps: Amps(dcdc) };
        all.solar[0].peak = Watts(solar);
        all.bank.system = if twenty_four { SystemVoltage::V24 } else { SystemVoltage::V12 };
        for proposal in suggested_runs(&all, Surroundings::default()) {
            let verdict = wiring::check(&proposal.run, &all, Surroundings::default());
            prop_assert!(verdict.severity() < Some(Severity::Danger), "{proposal:?}: {:?}", verdict.findings);
            prop_assert!(verdict.fuse_window.holds(proposal.run.fuse));
            prop_assert!(verdict.drop_frac <= verdict.allowed_frac);
        }
    }

    #[test]
    fn twenty_four_volts_halve_the_current_and_quarter_the_loss(watts in 1.0..1000.0f64, area in 1.0..95.0f64, length in 0.1..20.0f64) {
        let load = Load { id: 1, draw: Draw::Power { watts: Watts(watts) }, ..Load::default() };
        let at = |system: SystemVoltage| {
            let all = Setup { bank: Bank { system, ..Bank::default() }, ..setup(vec![load.clone()]) };
            wiring::check(&run_for(1, area, length, 10.0), &all, Surroundings::default())
        };
        let (twelve, twenty_four) = (at(SystemVoltage::V12), at(SystemVoltage::V24));
        prop_assert!((twelve.current.continuous / twenty_four.current.continuous - 2.0).abs() < 1e-9);
        prop_assert!((twelve.lost / twenty_four.lost - 4.0).abs() < 1e-9);
        prop_assert!((twelve.drop_frac / twenty_four.drop_frac - 4.0).abs() < 1e-9);
    }

    #[test]
    fn numbers_stay_finite_for_anything_within_bounds(amps in 0.0..1000.0f64, length in 0.1..50.0f64, area in 0.5..240.0f64, fuse in 0.0..600.0f64, working in -20.0..105.0f64) {
        let run = CableRun { amps: Amps(amps), length: Metres(length), size: mm2(area), fuse: Amps(fuse), working: Celsius(working), ..CableRun::default() };
        let verdict = wiring::check(&run, &setup(Vec::new()), Surroundings::default());
        for number in [verdict.drop.0, verdict.drop_frac, verdict.lost.0, verdict.ampacity.0, verdict.conductor.0, verdict.prospective.0, verdict.start_drop.0] {
            prop_assert!(number.is_finite());
        }
    }
}
