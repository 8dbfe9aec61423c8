//! Readings on site: bands, and factors recovered from invented logs with known truth and noise.

use crate::advice_common;

use advice_common::{failing_van, summer};
use nightbank::advice::on_site::fit::{Fit, Wanted, fit};
use nightbank::advice::on_site::{points, soc_at};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{Course, Outlook, TripPlan};
use nightbank::model::trip::Weather;
use nightbank::model::{Bank, Chemistry, DayPlan, Reading, ReadingKind, Setup};
use nightbank::physics::battery::open_circuit::OpenCircuit;
use nightbank::units::{AmpHours, Hours, Volts};
use rand::{Rng, SeedableRng};
use rand_distr::Normal;
use rand_pcg::Pcg32;
use std::sync::Arc;

/// The van with a battery that neither fills nor empties, so that every reading tells something.
fn van() -> Setup {
    let mut setup = failing_van();
    setup.bank = Bank { capacity_20h: AmpHours(200.0), ..Bank::default() };
    setup.bank.soc_start_frac = 0.9;
    setup.trip.arrival_hour = 18;
    setup
}

fn sun(setup: &Setup) -> Arc<TripSun> {
    Arc::new(TripSun::build(setup, &summer()).expect("valid climate"))
}

/// Readings of a trip with the factors `truth` at the hours `at`, with normal noise.
fn log(setup: &Setup, truth: (f64, f64), at: &[f64], noise_sd: f64, seed: u64) -> Vec<Reading> {
    let mut real = setup.clone();
    real.correction.use_factor = truth.0;
    real.correction.sun_factor = truth.1;
    let plan = TripPlan::build(&real, sun(setup));
    let course = Course::average(&plan);
    let mut rng = Pcg32::seed_from_u64(seed);
    let noise = Normal::new(0.0, noise_sd).expect("positive");
    at.iter()
        .map(|hour| {
            let soc = soc_at(&plan, &course, Hours(*hour)).expect("within the trip");
            let soc_frac = (soc + rng.sample(noise)).clamp(0.0, 1.0);
            Reading { at: Hours(*hour), kind: ReadingKind::StateOfCharge { soc_frac } }
        })
        .collect()
}

fn fitted(setup: &Setup, readings: Vec<Reading>) -> Fit {
    let setup = Setup { readings, ..setup.clone() };
    fit(&setup, sun(&setup)).expect("readings within the trip")
}

fn known_weather(mut setup: Setup) -> Setup {
    setup.trip.days = vec![DayPlan { weather: Weather::Mixed, ..DayPlan::default() }; 15];
    setup
}

/// Arrival at 18:00: evenings are at 4 + 24 n, mornings at 14 + 24 n (22:00 and 08:00).
const EVENING_AND_MORNING: [f64; 6] = [4.0, 14.0, 28.0, 38.0, 52.0, 62.0];

#[test]
fn known_factors_come_back_without_noise() {
    let setup = known_weather(van());
    // A monitor read every two hours for a week.
    let at: Vec<f64> = (1..84).map(|reading| 2.0 * f64::from(reading)).collect();
    for truth in [(1.18, 1.0), (0.8, 0.7), (1.3, 1.2), (1.0, 1.0)] {
        let fit = fitted(&setup, log(&setup, truth, &at, 1e-9, 1));
        assert!((fit.use_factor.value - truth.0).abs() < 0.03, "{truth:?} {:?}", fit.use_factor);
        assert!((fit.sun_factor.value - truth.1).abs() < 0.05, "{truth:?} {:?}", fit.sun_factor);
        assert!(fit.use_factor.known && fit.sun_factor.known, "{fit:?}");
        assert!(fit.is_consistent() && fit.misfit < 0.3, "{}", fit.misfit);
    }
}

#[test]
fn stated_uncertainty_covers_the_truth() {
    // Noise of 1.2 points from one reading to the next; two standard deviations should hold the
    // truth 95 times in a hundred, and must in 85.
    let setup = known_weather(van());
    let truth = (1.18, 0.85);
    let seeds = 40;
    let (mut in_use, mut in_sun, mut off) = (0, 0, 0.0);
    for seed in 0..seeds {
        let fit = fitted(&setup, log(&setup, truth, &EVENING_AND_MORNING, 0.012, seed));
        let within = |value: f64, sd: f64, truth: f64| i32::from((value - truth).abs() <= 2.0 * sd);
        in_use += within(fit.use_factor.value, fit.use_factor.sd, truth.0);
        in_sun += within(fit.sun_factor.value, fit.sun_factor.sd, truth.1);
        off += (fit.use_factor.value - truth.0) / f64::from(seeds as u32);
    }
    assert!(in_use >= 34 && in_sun >= 34, "{in_use} {in_sun}");
    assert!(off.abs() < 0.04, "biased by {off}");
}

/// Charge counted since full, and voltages after a rest, recover a known factor as a state of charge
/// does: noise of 2 % of the charge, of 0.02 V (a cheap voltmeter; common practice, no source).
#[test]
fn counted_charge_and_rested_voltages_recover_the_factor() {
    let setup = known_weather(van());
    let bank = &setup.bank;
    let capacity = bank.aged_capacity();
    let curve = OpenCircuit::new(bank.chemistry, bank.system, capacity);
    let truth = (1.3, 0.9);
    let seeds = 30_u64;
    let noise = Normal::new(0.0, 1.0).expect("positive");
    for counted in [true, false] {
        let (mut within, mut mean) = (0, 0.0);
        for seed in 0..seeds {
            let mut rng = Pcg32::seed_from_u64(100 + seed);
            let mut readings = log(&setup, truth, &EVENING_AND_MORNING, 1e-9, seed);
            for reading in &mut readings {
                let ReadingKind::StateOfCharge { soc_frac } = reading.kind else { unreachable!() };
                let off: f64 = rng.sample(noise);
                reading.kind = if counted {
                    let used = capacity * ((1.0 - soc_frac) * (1.0 + 0.02 * off));
                    ReadingKind::Used { amp_hours: used }
                } else {
                    let volts = Volts(curve.volts(soc_frac).0 + 0.02 * off);
                    ReadingKind::Voltage { volts, rested: Hours(6.0) }
                };
            }
            let fit = fitted(&setup, readings);
            let use_factor = fit.use_factor;
            within += i32::from((use_factor.value - truth.0).abs() <= 2.0 * use_factor.sd);
            mean += use_factor.value / seeds as f64;
            assert!(fit.is_consistent(), "{fit:?}");
        }
        assert!(within >= 26, "counted {counted}: {within} of {seeds}");
        let allowed = if counted { 0.03 } else { 0.08 };
        assert!((mean - truth.0).abs() < allowed, "counted {counted}: {mean}");
    }
}

#[test]
fn readings_of_one_night_tell_consumption_and_not_sun() {
    let setup = van();
    let at = [2.0, 5.0, 8.0, 10.0];
    let fit = fitted(&setup, log(&setup, (1.5, 0.3), &at, 0.002, 3));
    assert!(fit.use_factor.known, "{:?}", fit.use_factor);
    assert!((fit.use_factor.value - 1.5).abs() < 2.5 * fit.use_factor.sd);
    assert!(!fit.sun_factor.known);
    assert_eq!(fit.correction.sun_factor, 1.0);
    assert!(fit.wanted.contains(&Wanted::OverDay));
}

#[test]
fn one_reading_a_day_cannot_tell_sun_from_consumption() {
    let setup = van();
    let fit = fitted(&setup, log(&setup, (1.2, 0.8), &[24.0, 48.0], 1e-9, 4));
    assert!(fit.correlation > 0.6, "{}", fit.correlation);
    let both = fitted(&setup, log(&setup, (1.2, 0.8), &EVENING_AND_MORNING, 1e-9, 4));
    assert!(both.use_factor.sd < fit.use_factor.sd);
}

#[test]
fn unknown_weather_is_not_carried_into_the_forecast_in_full() {
    let (open, given) = (van(), known_weather(van()));
    let log_of = |setup: &Setup| log(setup, (1.0, 0.6), &EVENING_AND_MORNING, 1e-9, 5);
    let (open, given) = (fitted(&open, log_of(&open)), fitted(&given, log_of(&given)));
    assert!(open.sun_factor.known && given.sun_factor.known, "{open:?} {given:?}");
    assert!((given.correction.sun_factor - given.sun_factor.value).abs() < 1e-12);
    assert!(open.correction.sun_factor > open.sun_factor.value + 0.02);
    assert!(open.correction.sun_factor < 1.0);
}

/// The share that stays, by hand: 0.4^2 for place and panels, 0.35^2 for the sky of a day. Four days not entered leave
/// 0.16 / (0.16 + 0.1225 / 4) = 0.839; with two of four entered half of the sun is known, 0.16 / (0.16 + 0.1225 / 8) =
/// 0.913.
#[test]
fn what_the_sky_did_is_taken_off_by_its_share() {
    for (entered, share) in [(0, 0.16 / 0.190_625), (2, 0.16 / 0.175_312_5)] {
        let mut setup = van();
        setup.trip.days = vec![DayPlan { weather: Weather::Mixed, ..DayPlan::default() }; entered];
        let fit = fitted(&setup, log(&setup, (1.0, 0.6), &EVENING_AND_MORNING, 1e-9, 5));
        assert!(fit.sun_factor.known);
        let carried = (fit.correction.sun_factor - 1.0) / (fit.sun_factor.value - 1.0);
        assert!((carried - share).abs() < 1e-9, "{entered}: {carried}");
    }
}

#[test]
fn the_correction_restarts_the_forecast_at_the_last_reading() {
    let setup = known_weather(van());
    let readings = log(&setup, (1.4, 0.8), &EVENING_AND_MORNING, 1e-9, 6);
    let fit = fitted(&setup, readings.clone());
    let (at, soc_frac) = fit.correction.restart.expect("a restart");
    assert_eq!(at, Hours(62.0));
    let ReadingKind::StateOfCharge { soc_frac: read } = readings[5].kind else { unreachable!() };
    assert_eq!(soc_frac, read);
    let lasts = |correction| {
        let setup = Setup { correction, ..setup.clone() };
        let plan = TripPlan::build(&setup, sun(&setup));
        let outlook = Outlook::of(&setup, &plan);
        assert!((outlook.course.hours[61].soc_frac - read).abs() < 0.3);
        (outlook.first_low.map_or(9999.0, |low| low.0), outlook.course.hours[62].soc_frac)
    };
    let (planned, _) = lasts(nightbank::model::Correction::default());
    let (corrected, just_after) = lasts(fit.correction.clone());
    assert!(corrected < planned);
    assert!((just_after - read).abs() < 0.03);
}

#[test]
fn contradicting_readings_are_told() {
    let setup = known_weather(van());
    let mut readings = log(&setup, (1.0, 1.0), &EVENING_AND_MORNING, 1e-9, 7);
    for (reading, soc_frac) in readings.iter_mut().zip([0.2, 0.95, 0.2, 0.95, 0.2, 0.95]) {
        reading.kind = ReadingKind::StateOfCharge { soc_frac };
    }
    assert!(!fitted(&setup, readings).is_consistent());
}

#[test]
fn bands_follow_the_kind_of_reading() {
    let mut setup = van();
    setup.bank.capacity_20h = AmpHours(100.0);
    let reading = |at, kind| Reading { at: Hours(at), kind };
    setup.readings = vec![
        reading(30.0, ReadingKind::Used { amp_hours: AmpHours(40.0) }),
        reading(3.0, ReadingKind::StateOfCharge { soc_frac: 0.98 }),
        reading(20.0, ReadingKind::Voltage { volts: Volts(12.5), rested: Hours(8.0) }),
        reading(21.0, ReadingKind::Voltage { volts: Volts(12.5), rested: Hours(0.2) }),
    ];
    let points = points(&setup);
    assert_eq!(points.iter().map(|p| p.index).collect::<Vec<_>>(), [1, 2, 3, 0]);
    assert_eq!(points[0].high_frac, 1.0);
    assert!((points[0].low_frac - 0.93).abs() < 1e-12);
    // Published tables: 12.5 V is 65 to 80 %.
    assert!(points[1].low_frac <= 0.65 && points[1].high_frac >= 0.80);
    assert_eq!((points[1].rested, points[2].rested), (Some(true), Some(false)));
    assert!(points[2].sd_frac > points[1].sd_frac);
    assert!((points[3].likely_frac - 0.6).abs() < 1e-12);
    assert!((points[3].high_frac - 0.66).abs() < 1e-9);
}

#[test]
fn a_lithium_voltage_in_the_flat_part_teaches_nothing() {
    let mut setup = van();
    setup.bank.chemistry = Chemistry::LiFePo4;
    setup.bank.soc_min_frac = 0.1;
    let curve = OpenCircuit::new(Chemistry::LiFePo4, setup.bank.system, AmpHours(300.0));
    let at = [10.0, 34.0];
    setup.readings = at
        .iter()
        .map(|hour| Reading {
            at: Hours(*hour),
            kind: ReadingKind::Voltage { volts: curve.volts(0.6), rested: Hours(5.0) },
        })
        .collect();
    let fit = fit(&setup, sun(&setup)).expect("readings");
    assert!(!fit.sun_factor.known && !fit.use_factor.known, "{fit:?}");
    assert_eq!(fit.correction.use_factor, 1.0);
    assert!(fit.wanted.contains(&Wanted::OverNight));
}

#[test]
fn readings_outside_the_trip_are_no_readings() {
    let mut setup = van();
    let kind = ReadingKind::StateOfCharge { soc_frac: 0.5 };
    setup.readings = vec![Reading { at: Hours(1400.0), kind }];
    assert!(fit(&setup, sun(&setup)).is_none());
    setup.readings.clear();
    assert!(fit(&setup, sun(&setup)).is_none());
    for at in [0.0, 0.3] {
        setup.readings = vec![Reading { at: Hours(at), kind }];
        let fit = fit(&setup, sun(&setup)).expect("one reading");
        assert!(fit.use_factor.value.is_finite() && fit.sun_factor.sd.is_finite());
    }
}
