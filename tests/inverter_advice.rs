//! What may run together, and what the battery says to it.

use nightbank::advice::workshop::inverter_check::{
    self, Clash, InverterFinding, MAX_SETS, battery_limits, check, clash, demand, forbidden_sets,
    loads_on,
};
use nightbank::advice::workshop::wiring::Severity;
use nightbank::model::{
    Bank, CableRun, Chemistry, ConductorSize, Draw, Feed, Inverter, InverterSwitching, Load, Setup,
    SystemVoltage, Window,
};
use nightbank::physics::ampacity::Surroundings;
use nightbank::units::{AmpHours, Amps, Ohms, SquareMillimetres, Volts, WattHours, Watts};
use proptest::prelude::*;

fn load(id: u32, watts: f64, surge_factor: f64, window: Window) -> Load {
    Load {
        id,
        draw: Draw::Power { watts: Watts(watts) },
        feed: Feed::Inverter,
        surge_factor,
        window,
        ..Load::default()
    }
}

fn unit(continuous_w: f64, surge_w: f64) -> Inverter {
    Inverter {
        fitted: true,
        continuous: Watts(continuous_w),
        surge: Watts(surge_w),
        idle: Watts(20.0),
        full_load_frac: 0.88,
        ..Inverter::default()
    }
}

fn setup(loads: Vec<Load>, inverter: Inverter) -> Setup {
    Setup { loads, inverter, ..Setup::default() }
}

fn has(found: &[InverterFinding], pick: impl Fn(&InverterFinding) -> bool) -> bool {
    found.iter().any(pick)
}

/// Toaster 850 W and microwave 1250 W (common practice, no source) on 2000 W: each alone, not both.
#[test]
fn toaster_and_microwave() {
    let all = setup(
        vec![load(1, 850.0, 1.0, Window::MORNING), load(2, 1250.0, 1.4, Window::MORNING)],
        unit(2000.0, 4000.0),
    );
    let verdict = check(&all, Surroundings::default());
    assert_eq!(verdict.forbidden.len(), 1);
    let pair = &verdict.forbidden[0];
    assert_eq!(
        (pair.ids.as_slice(), pair.clash, pair.planned),
        (&[1, 2][..], Clash::Continuous, true)
    );
    assert_eq!(verdict.together.running, Watts(2100.0));
    assert_eq!(verdict.together.at_min, 6 * 60);
    assert!(has(&verdict.findings, |f| matches!(f, InverterFinding::TogetherTooMuch { .. })));
    // One in the morning, one in the evening: still forbidden together, but not planned so.
    let mut apart = all;
    apart.loads[1].window = Window::EVENING;
    let verdict = check(&apart, Surroundings::default());
    assert!(!verdict.forbidden[0].planned);
    assert!(!has(&verdict.findings, |f| matches!(f, InverterFinding::TogetherTooMuch { .. })));
    assert_eq!(verdict.together.running, Watts(1250.0));
}

#[test]
fn a_start_can_be_too_much_where_running_is_not() {
    let fridge = load(1, 120.0, 7.0, Window::ALL_DAY);
    let lamp = load(2, 300.0, 1.0, Window::ALL_DAY);
    // Neither a lamp on the battery nor a plug that draws nothing is behind the inverter.
    let direct = Load { feed: Feed::Dc, ..load(3, 50.0, 1.0, Window::ALL_DAY) };
    let empty = load(4, 0.0, 1.0, Window::ALL_DAY);
    let all = setup(vec![fridge, lamp, direct, empty], unit(600.0, 1000.0));
    let set = loads_on(&all);
    assert_eq!(demand(&set), (Watts(420.0), Watts(1140.0)));
    assert_eq!(clash(&set, &all.inverter), Some(Clash::Surge));
    assert_eq!(clash(&set[..1], &all.inverter), None);
    let found = forbidden_sets(&set, &all.inverter);
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].clash, Clash::Surge);
}

#[test]
fn windows_that_wrap_past_midnight_meet() {
    let night = load(1, 800.0, 1.0, Window::NIGHT);
    let morning = load(2, 800.0, 1.0, Window::MORNING);
    let evening = load(3, 800.0, 1.0, Window { from_min: 12 * 60, to_min: 21 * 60 });
    let all = setup(vec![night, morning, evening], unit(1000.0, 2000.0));
    let found = check(&all, Surroundings::default()).forbidden;
    let planned = |ids: &[u32]| found.iter().find(|set| set.ids == ids).map(|set| set.planned);
    assert_eq!(planned(&[1, 2]), Some(true));
    assert_eq!(planned(&[1, 3]), Some(false));
    assert_eq!(planned(&[2, 3]), Some(false));
}

#[test]
fn each_of_several_windows_counts() {
    let mut coffee = load(1, 800.0, 1.0, Window::MORNING);
    let oven = load(2, 900.0, 1.0, Window::EVENING);
    let planned = |coffee: &Load| {
        let all = setup(vec![coffee.clone(), oven.clone()], unit(1000.0, 2000.0));
        let verdict = check(&all, Surroundings::default());
        (verdict.forbidden[0].planned, verdict.together.at_min, verdict.together.running)
    };
    assert_eq!(planned(&coffee), (false, 18 * 60, Watts(900.0)));
    coffee.more_windows.push(Window { from_min: 20 * 60, to_min: 21 * 60 });
    assert_eq!(planned(&coffee), (true, 20 * 60, Watts(1700.0)));
}

/// 1 kW kettle on 100 Ah of lead-acid: 12.2 V at rest becomes 11.0 to 11.3 V (4 milliohms battery,
/// 2.4 milliohms cable, ohmic plus 0.3 to 0.6 V of polarisation; computed), so an inverter that
/// stops at 11.5 V stops long before the battery is empty.
#[test]
fn a_kettle_pulls_the_voltage_down() {
    let mut all = setup(vec![load(1, 1000.0, 1.0, Window::ALL_DAY)], unit(1000.0, 2000.0));
    all.bank = Bank { chemistry: Chemistry::Flooded, cable: Ohms(0.0024), ..Bank::default() };
    let volts = inverter_check::voltage_under(&all, Watts(1000.0));
    assert!((11.0..11.3).contains(&volts.0), "{volts:?}");
    assert!(!has(&check(&all, Surroundings::default()).findings, |f| matches!(
        f,
        InverterFinding::MayCutOut { .. }
    )));
    all.inverter.cut_out = Volts(11.5);
    assert!(has(&check(&all, Surroundings::default()).findings, |f| matches!(
        f,
        InverterFinding::MayCutOut { .. }
    )));
    // A load no such battery can carry collapses to a finite voltage.
    all.bank.capacity_20h = AmpHours(5.0);
    assert!(inverter_check::voltage_under(&all, Watts(1000.0)).0 > 5.0);
}

/// 2000 W at 88 % and 11 V is 206.6 A (computed): too much for 100 Ah of anything, fine for
/// 500 Ah of lithium, strained on 300 Ah of AGM.
#[test]
fn the_battery_has_its_say() {
    let mut all = setup(vec![load(1, 2000.0, 1.0, Window::ALL_DAY)], unit(2000.0, 4000.0));
    let findings = |all: &Setup| check(all, Surroundings::default()).findings;
    for chemistry in Chemistry::ALL {
        all.bank = Bank { chemistry, ..Bank::default() };
        let verdict = check(&all, Surroundings::default());
        assert!((verdict.worst_current.0 - 206.6).abs() < 0.05);
        assert!((verdict.worst_c_rate_per_hour - 2.066).abs() < 5e-4);
        assert!(has(&verdict.findings, |f| matches!(f, InverterFinding::BatteryOverloaded { .. })));
        assert_eq!(verdict.findings.first().map(InverterFinding::severity), Some(Severity::Danger));
    }
    all.bank = Bank { chemistry: Chemistry::LiFePo4, parallel: 5, ..Bank::default() };
    assert!(!has(&findings(&all), |f| matches!(
        f,
        InverterFinding::BatteryOverloaded { .. } | InverterFinding::BatteryStrained { .. }
    )));
    all.bank = Bank { chemistry: Chemistry::Agm, parallel: 3, ..Bank::default() };
    assert!(has(&findings(&all), |f| matches!(f, InverterFinding::BatteryStrained { .. })));
    // A small load on it leaves only the note about the rating.
    all.bank = Bank::default();
    all.loads[0].draw = Draw::Power { watts: Watts(200.0) };
    assert!(has(&findings(&all), |f| matches!(f, InverterFinding::RatingAboveBattery { .. })));
    assert_eq!(battery_limits(&Bank::default()).most, Amps(100.0));
}

#[test]
fn its_cable_is_checked_too() {
    let mut all = setup(vec![load(1, 1500.0, 1.0, Window::ALL_DAY)], unit(1500.0, 3000.0));
    let mut run = CableRun { load_id: Some(1), ..CableRun::default() };
    run.size = ConductorSize::Metric { area: SquareMillimetres(25.0) };
    all.cables = vec![run.clone()];
    let thin = |all: &Setup| {
        has(&check(all, Surroundings::default()).findings, |f| {
            matches!(f, InverterFinding::CableTooThin { .. })
        })
    };
    assert!(thin(&all));
    run.size = ConductorSize::Metric { area: SquareMillimetres(50.0) };
    all.cables = vec![run];
    assert!(!thin(&all));
}

/// 40 W of idle draw all day is 960 Wh (published).
#[test]
fn idle_and_contradictions_are_told() {
    let mut all = setup(vec![load(1, 100.0, 1.0, Window::ALL_DAY)], unit(2000.0, 1500.0));
    all.inverter.idle = Watts(40.0);
    all.inverter.switching = InverterSwitching::AllDay;
    let found = check(&all, Surroundings::default()).findings;
    assert!(has(&found, |f| *f == InverterFinding::IdleAllDay { per_day: WattHours(960.0) }));
    assert!(has(&found, |f| matches!(f, InverterFinding::SurgeBelowContinuous { .. })));
    all.inverter.full_load_frac = 0.98;
    all.inverter.idle = Watts(60.0);
    assert!(has(&check(&all, Surroundings::default()).findings, |f| *f
        == InverterFinding::FiguresContradict));
    all.inverter.fitted = false;
    assert_eq!(check(&all, Surroundings::default()).findings, [InverterFinding::NotFitted]);
    all.loads.clear();
    assert!(check(&all, Surroundings::default()).findings.is_empty());
}

proptest! {
    #[test]
    fn forbidden_sets_are_too_much_and_no_smaller_part_is(powers in prop::collection::vec((10.0..1500.0f64, 1.0..5.0f64), 1..9), rating in 200.0..3000.0f64, surge in 1.0..3.0f64) {
        let loads: Vec<Load> = powers.iter().zip(1..).map(|(&(watts, factor), id)| load(id, watts, factor, Window::ALL_DAY)).collect();
        let all = setup(loads, unit(rating, rating * surge));
        let on = loads_on(&all);
        let found = forbidden_sets(&on, &all.inverter);
        prop_assert!(found.len() <= MAX_SETS);
        for set in &found {
            let members: Vec<_> = on.iter().filter(|one| set.ids.contains(&one.id)).copied().collect();
            prop_assert_eq!(clash(&members, &all.inverter), Some(set.clash));
            for left_out in 0..members.len() {
                let mut part = members.clone();
                part.remove(left_out);
                prop_assert_eq!(clash(&part, &all.inverter), None);
            }
        }
        // Every pair that is too much is told, by itself or by a part of it.
        if found.len() < MAX_SETS {
            for (i, a) in on.iter().enumerate() {
                for b in on.iter().skip(i + 1) {
                    let told = found.iter().any(|set| set.ids.iter().all(|id| *id == a.id || *id == b.id));
                    prop_assert_eq!(told, clash(&[*a, *b], &all.inverter).is_some());
                }
            }
        }
    }

    #[test]
    fn the_worst_coincidence_is_the_worst_minute(windows in prop::collection::vec((0u16..1440, 0u16..1440, 10.0..900.0f64), 1..8)) {
        let loads: Vec<Load> = windows.iter().zip(1..).map(|(&(from_min, to_min, watts), id)| load(id, watts, 1.0, Window { from_min, to_min })).collect();
        let all = setup(loads, unit(2000.0, 4000.0));
        let brute = (0..1440u32)
            .map(|minute| {
                all.loads.iter().filter(|one| {
                    let from = u32::from(one.window.from_min);
                    let long = (one.window.length().minutes()).round() as u32;
                    (minute + 1440 - from) % 1440 < long
                }).map(|one| one.draw.watts().0).sum::<f64>()
            })
            .fold(0.0, f64::max);
        let got = check(&all, Surroundings::default()).together.running.0;
        prop_assert!((got - brute).abs() < 1e-6, "{got} {brute}");
    }

    #[test]
    fn twenty_four_volts_halve_the_current(watts in 10.0..3000.0f64) {
        let mut all = setup(vec![load(1, watts, 1.0, Window::ALL_DAY)], unit(3000.0, 6000.0));
        let twelve = check(&all, Surroundings::default()).worst_current;
        all.bank.system = SystemVoltage::V24;
        let twenty_four = check(&all, Surroundings::default()).worst_current;
        prop_assert!((twelve / twenty_four - 2.0).abs() < 1e-9);
    }
}
