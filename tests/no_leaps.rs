//! A tiny change of a figure changes the course of the battery by next to nothing.
//!
//! For random setups each figure is walked from one end of its range to the other. Where two neighbours
//! differ most, that stretch is halved again and again: what is steady shrinks with it, a leap stays.

use crate::trip_common::{arbitrary_setup, climate};

use nightbank::forecast::{Course, MonthlyClimate, OddsRun, TripPlan, climate_of, plan::TripSun};
use nightbank::model::{
    BatteryPlace, Chemistry, Draw, DrivingCharger, InverterSwitching, MonthlySun, Setup,
    SystemVoltage, Usage, Window, catalogue,
};
use nightbank::units::{
    AmpHours, Amps, Celsius, Degrees, Hours, Metres, Ohms, SquareMillimetres, Volts,
    WattHoursPerSquareMetre, Watts,
};
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use std::sync::Arc;

/// Steps of the first walk.
const STEPS: usize = 16;
/// Halvings of the steepest stretch: 16 384 times finer than a step.
const HALVINGS: usize = 14;
/// Most that charge or limit may differ at the end of that, as a share of the capacity: places are rounded to
/// a tenth of a degree, which is what is left of it.
const NEXT_TO_NOTHING: f64 = 0.003;

/// A figure: its name, from, to, and how it is set.
type Figure = (&'static str, f64, f64, fn(&mut Setup, f64));

const FIGURES: &[Figure] = &[
    ("draw", 0.0, 400.0, |s, x| s.loads[0].draw = Draw::Power { watts: Watts(x) }),
    ("minutes through a window", 0.0, 1440.0, |s, x| {
        s.loads[0].usage = Usage::Daily { minutes: x };
        s.loads[0].window = Window::EVENING;
    }),
    // Whatever sleeps behind the inverter keeps it on: a step by nature between none and some.
    ("standby", 0.5, 20.0, |s, x| s.loads[0].standby = Watts(x)),
    ("capacity", 20.0, 600.0, |s, x| s.bank.capacity_20h = AmpHours(x)),
    ("health", 0.3, 1.0, |s, x| s.bank.health_frac = x),
    ("limit", 0.0, 0.9, |s, x| s.bank.soc_min_frac = x),
    ("charge on arrival", 0.0, 1.0, |s, x| s.bank.soc_start_frac = x),
    ("battery cable", 0.0, 0.05, |s, x| s.bank.cable = Ohms(x)),
    ("inverter, no-load draw", 0.0, 50.0, |s, x| s.inverter.idle = Watts(x)),
    ("inverter asleep", 0.0, 20.0, |s, x| {
        s.inverter.switching = InverterSwitching::PowerSave { asleep: Watts(x) };
    }),
    ("panel", 0.0, 800.0, |s, x| s.solar[0].peak = Watts(x)),
    ("tilt", 0.0, 90.0, |s, x| s.solar[0].tilt = Degrees(x)),
    ("facing", 0.0, 360.0, |s, x| {
        s.solar[0].tilt = Degrees(50.0);
        s.solar[0].facing = Degrees(x);
    }),
    ("shade", 0.0, 1.0, |s, x| s.solar[0].shade.morning_frac = x),
    ("best voltage of a panel", 14.0, 60.0, |s, x| s.solar[0].vmp = Some(Volts(x))),
    ("driving", 0.0, 600.0, |s, x| s.driving.minutes = x),
    ("charger", 0.0, 100.0, |s, x| s.driving.charger = DrivingCharger::DcDc { amps: Amps(x) }),
    ("alternator", 12.0, 15.5, |s, x| s.driving.charger = relay(x, 6.0)),
    ("charging cable", 1.0, 20.0, |s, x| s.driving.charger = relay(14.2, x)),
    ("hook-up", 0.0, 24.0, |s, x| s.hook_up.hours = Hours(x)),
    ("mains charger", 0.0, 100.0, |s, x| s.hook_up.amps = Amps(x)),
    ("other source", 0.0, 24.0, |s, x| s.other[0].hours = Hours(x)),
    ("air", -30.0, 45.0, |s, x| s.trip.own_air = Some(Celsius(x))),
    ("heated to", 0.0, 25.0, |s, x| s.trip.heated_to = Some(Celsius(x))),
    ("latitude", -60.0, 60.0, |s, x| s.trip.place.latitude = Degrees(x)),
    ("altitude", 0.0, 3000.0, |s, x| s.trip.place.altitude = Metres(x)),
    ("ground", 0.0, 1.0, |s, x| s.trip.ground_albedo_frac = x),
    ("own sun", 200.0, 9000.0, |s, x| {
        s.trip.own_sun = Some(MonthlySun([WattHoursPerSquareMetre(x); 12]));
    }),
    ("use as readings taught", 0.2, 4.0, |s, x| s.correction.use_factor = x),
    ("sun as readings taught", 0.2, 2.0, |s, x| s.correction.sun_factor = x),
];

fn relay(alternator: f64, length: f64) -> DrivingCharger {
    DrivingCharger::Relay {
        alternator: Volts(alternator),
        cable_length: Metres(length),
        cable_size: SquareMillimetres(10.0),
        limit: Amps(70.0),
        smart_alternator: false,
    }
}

/// So many setups, the same each time, with rows of the catalogue and a battery anywhere.
fn setups(count: usize) -> Vec<Setup> {
    let mut runner = TestRunner::deterministic();
    let places = prop::sample::select(vec![
        BatteryPlace::Inside,
        BatteryPlace::Locker,
        BatteryPlace::Outside,
    ]);
    let row = (prop::sample::select(catalogue::ALL.to_vec()), 100_u32..200)
        .prop_map(|(appliance, id)| appliance.to_load(id, SystemVoltage::V12));
    let rows = prop::collection::vec(row, 1..4);
    let any = (arbitrary_setup(), rows, places, any::<bool>());
    let any = any.prop_map(|(mut setup, rows, place, heated)| {
        // The first row is the one whose figures are walked.
        setup.loads.truncate(1);
        setup.loads.extend(rows);
        setup.loads[0].enabled = true;
        (setup.bank.place, setup.bank.heated) = (place, heated);
        setup.trip.own_air.get_or_insert(Celsius(3.0));
        setup.sanitised().0
    });
    (0..count).map(|_| any.new_tree(&mut runner).expect("a setup").current()).collect()
}

/// State of charge and limit at the end of each hour.
fn course(setup: &Setup) -> Vec<(f64, f64)> {
    let usual = match &setup.trip.own_sun {
        Some(_) => MonthlyClimate::from(&climate_of(&setup.trip)),
        None => climate(10.0),
    };
    let climate = MonthlyClimate { half_range_k: [4.0; 12], ..usual };
    let sun = TripSun::build(setup, &climate).expect("valid climate");
    let plan = TripPlan::build(setup, Arc::new(sun));
    Course::average(&plan).hours.iter().map(|hour| (hour.soc_frac, hour.low_frac)).collect()
}

fn apart(a: &[(f64, f64)], b: &[(f64, f64)]) -> f64 {
    a.iter().zip(b).map(|(a, b)| (a.0 - b.0).abs().max((a.1 - b.1).abs())).fold(0.0, f64::max)
}

/// The largest leap of a figure, with where it is.
fn leap(setup: &Setup, (_, from, to, set): Figure) -> (f64, f64) {
    let at = |x: f64| {
        let mut setup = setup.clone();
        set(&mut setup, x);
        course(&setup)
    };
    let points: Vec<(f64, Vec<_>)> = (0..=STEPS)
        .map(|step| from + (to - from) * step as f64 / STEPS as f64)
        .map(|x| (x, at(x)))
        .collect();
    let steepest = points
        .windows(2)
        .max_by(|a, b| apart(&a[0].1, &a[1].1).total_cmp(&apart(&b[0].1, &b[1].1)))
        .expect("steps");
    let (mut low, mut high) = (steepest[0].clone(), steepest[1].clone());
    for _ in 0..HALVINGS {
        let x = f64::midpoint(low.0, high.0);
        let middle = (x, at(x));
        if apart(&low.1, &middle.1) > apart(&middle.1, &high.1) {
            high = middle;
        } else {
            low = middle;
        }
    }
    (apart(&low.1, &high.1), low.0)
}

/// Below freezing lithium takes no charge, hour by hour: there the course has a step by nature, and what is
/// told are the odds, in which no two days are as cold.
fn has_the_cold_lock(setup: &Setup) -> bool {
    let bank = &setup.bank;
    !bank.chemistry.is_lead() && !bank.cold_charge_allowed && !bank.heated
}

#[test]
fn no_figure_makes_the_course_leap() {
    let mut leaps = Vec::new();
    for setup in setups(5) {
        for figure in FIGURES {
            let by_air = ["air", "heated to"].contains(&figure.0);
            if by_air && has_the_cold_lock(&setup) {
                continue;
            }
            let (by, at) = leap(&setup, *figure);
            if by > NEXT_TO_NOTHING {
                leaps.push(format!("{} by {by:.4} at {at}: {:?}", figure.0, setup.bank));
            }
        }
    }
    assert!(leaps.is_empty(), "{}", leaps.join("\n"));
}

/// Around freezing an hour's charge of lithium hangs on a hair; the chances do not.
#[test]
fn the_odds_of_lithium_do_not_leap_at_freezing() {
    let mut setup = setups(1).remove(0);
    setup.bank.chemistry = Chemistry::LiFePo4;
    (setup.bank.heated, setup.bank.cold_charge_allowed) = (false, false);
    setup.bank.place = BatteryPlace::Outside;
    let chances = |air: f64| {
        let mut setup = setup.clone();
        setup.trip.own_air = Some(Celsius(air));
        let months: [f64; 12] = std::array::from_fn(|month| 10.0 - f64::from(month as u8 % 6));
        let climate =
            MonthlyClimate { half_range_k: [4.0; 12], air: months.map(Celsius), ..climate(air) };
        let sun = TripSun::build(&setup, &climate).expect("valid climate");
        let plan = Arc::new(TripPlan::build(&setup, Arc::new(sun)));
        let mut run = OddsRun::nights_only(plan, 400).expect("valid weather");
        while run.advance(400) {}
        run.odds().lasting_frac
    };
    for air in [-3.0, -2.0, -1.0, -0.5, 0.0, 0.5, 1.0, 2.0] {
        let (here, there) = (chances(air), chances(air + 0.001));
        let most = here.iter().zip(&there).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
        assert!(most <= 0.02, "{air}: {here:?} {there:?}");
    }
}
