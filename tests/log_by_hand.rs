//! Logs made by hand, minute by minute, of which every figure can be worked out on paper. All invented.

use crate::advice_common::{load, summer};
use nightbank::advice::log::capacity::{CapacityFound, CapacityMissing, CapacityWay, capacity};
use nightbank::advice::log::held::LogTrip;
use nightbank::advice::log::series::{Series, date_of};
use nightbank::advice::log::steps::{Appliance, Level, Pattern, appliances, levels};
use nightbank::advice::log::take_over::{bank_with, likely_load, measured_load, usual_times};
use nightbank::advice::log::use_by_hour::{floor, income, use_by_hour};
use nightbank::forecast::Course;
use nightbank::model::{
    Bank, Chemistry, Draw, DutyCycle, Feed, InverterSwitching, Sample, Setup, SolarArray, Usage,
    Window,
};
use nightbank::units::{AmpHours, Amps, Hours, Volts, Watts};

/// Midnight of 1 June 2024, a date with a high sun.
const MIDNIGHT: f64 = 1_717_200_000.0;
const HOUR: f64 = 3_600.0;

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "got {got}, want {want} +- {tolerance}");
}

/// A row `seconds` after midnight.
fn at(seconds: f64) -> Sample {
    Sample { at_s: MIDNIGHT + seconds, ..Sample::default() }
}

fn soc(seconds: f64, soc_frac: f64) -> Sample {
    Sample { soc_frac: Some(soc_frac), ..at(seconds) }
}

/// Rows a minute apart over some hours, from midnight.
fn minutes(hours: usize, row: impl Fn(usize) -> Sample) -> Vec<Sample> {
    (0..=hours * 60).map(row).collect()
}

fn drawn(series: &Series) -> Vec<Option<f64>> {
    series.drawn.iter().map(|watts| watts.map(|watts| watts.0)).collect()
}

/// 100 Ah of LiFePO4 by the sea at 52 degrees north, without panels.
fn van() -> Setup {
    let bank = Bank {
        chemistry: Chemistry::LiFePo4,
        capacity_20h: AmpHours(100.0),
        soc_min_frac: 0.1,
        ..Bank::default()
    };
    Setup { bank, ..Setup::default() }
}

#[test]
fn times_are_dates_of_the_calendar() {
    let (date, second) = date_of(MIDNIGHT + 3_661.5).expect("a date");
    assert_eq!((date.year(), u8::from(date.month()), date.day()), (2024, 6, 1));
    near(second, 3_661.5, 1e-6);
    let (before, second) = date_of(-1.0).expect("a date");
    assert_eq!((before.year(), before.ordinal(), second), (1969, 365, 86_399.0));
    for none in [f64::NAN, f64::INFINITY, 2e11, -2e11] {
        assert_eq!(date_of(none), None);
    }
}

/// Rows at 0, 1, 2, 3 and 4 minutes, then a gap to 20 and 21 minutes: 22 minutes in all, five of them covered.
#[test]
fn rows_stand_in_order_with_their_gaps() {
    let rows = [180.0, 0.0, 60.0, 240.0, 120.0, 60.0, 1_260.0, 1_200.0, f64::NAN];
    let samples: Vec<Sample> =
        rows.iter().enumerate().map(|(i, s)| soc(*s, i as f64 / 10.0)).collect();
    let series = Series::new(samples, &van());
    assert_eq!(series.step_s, 60.0);
    let times: Vec<f64> = series.samples.iter().map(|row| row.at_s - MIDNIGHT).collect();
    assert_eq!(times, [0.0, 60.0, 120.0, 180.0, 240.0, 1_200.0, 1_260.0]);
    // Of two rows at one time the first stays.
    assert_eq!(series.samples[1].soc_frac, Some(0.2));
    assert_eq!(series.stretches(), [0..5, 5..7]);
    let held: Vec<f64> = (0..8).map(|row| series.held_s(row)).collect();
    assert_eq!(held, [60.0, 60.0, 60.0, 60.0, 0.0, 60.0, 0.0, 0.0]);
    near(series.span().0, 21.0 / 60.0, 1e-12);
    near(series.covered().0, 5.0 / 60.0, 1e-12);
    assert_eq!(Series::new(Vec::new(), &van()).span(), Hours(0.0));
    // A gap is longer than three and a half steps, and two hours at most.
    for (step, next, held) in [
        (60.0, 210.0, 210.0),
        (60.0, 211.0, 0.0),
        (10.0, 90.0, 90.0),
        (10.0, 91.0, 0.0),
        (3_600.0, 7_200.0, 7_200.0),
        (3_600.0, 7_201.0, 0.0),
    ] {
        let rows =
            [0.0, 1.0, 2.0, 3.0, 4.0].map(|n| n * step).into_iter().chain([4.0 * step + next]);
        let series = Series::new(rows.map(at).collect(), &van());
        assert_eq!(series.held_s(4), held, "{step} {next}");
    }
}

#[test]
fn states_of_charge_lie_straight_between_rows() {
    let rows = vec![soc(0.0, 0.8), soc(3_600.0, 0.7), soc(5_400.0, 0.5), soc(20_000.0, 0.3)];
    let series = Series::new(rows, &van());
    let told = |s: f64| series.soc_at(MIDNIGHT + s);
    assert_eq!((told(0.0), told(3_600.0)), (Some(0.8), Some(0.7)));
    near(told(900.0).expect("between"), 0.775, 1e-12);
    near(told(4_800.0).expect("between"), 0.566_666_666, 1e-6);
    assert_eq!((told(-1.0), told(10_000.0), told(20_001.0)), (None, None, None));
    let mean = |s: f64, within: f64| series.mean_soc(MIDNIGHT + s, within);
    near(mean(4_500.0, 900.0).expect("two rows"), 0.6, 1e-12);
    near(mean(4_500.0, 899.0).expect("straight between"), 0.6, 1e-12);
    near(mean(2_700.0, 2_700.0).expect("three rows"), 2.0 / 3.0, 1e-12);
    assert_eq!(mean(10_000.0, 600.0), None);
}

#[test]
fn current_and_power_stand_for_each_other() {
    let row = |volts: Option<f64>, amps: Option<f64>, watts: Option<f64>| Sample {
        volts: volts.map(Volts),
        amps: amps.map(Amps),
        watts: watts.map(Watts),
        ..at(0.0)
    };
    let told = |row: Sample| {
        let series = Series::new(vec![row], &van());
        (series.amps(0).map(|amps| amps.0), series.watts(0).map(|watts| watts.0))
    };
    assert_eq!(told(row(Some(13.0), Some(-4.0), None)), (Some(-4.0), Some(-52.0)));
    assert_eq!(told(row(Some(12.5), None, Some(-50.0))), (Some(-4.0), Some(-50.0)));
    assert_eq!(told(row(Some(12.5), None, None)), (None, None));
    // Without a voltage that of the battery at rest counts: LiFePO4 some 13.1 V.
    let (_, watts) = told(row(None, Some(10.0), None));
    assert!((129.0..133.0).contains(&watts.expect("a power")), "{watts:?}");
    let columns = Sample { charging: Some(Watts(80.0)), used: Some(Watts(30.0)), ..at(0.0) };
    assert_eq!(told(columns), (None, Some(50.0)));
}

/// What is drawn, by the columns there are; in the last row none tells it.
#[test]
fn the_draw_is_what_the_columns_say() {
    let used = Sample { used: Some(Watts(30.0)), watts: Some(Watts(-99.0)), ..at(0.0) };
    let from_charging =
        Sample { charging: Some(Watts(80.0)), watts: Some(Watts(50.0)), ..at(60.0) };
    let mut setup = van();
    setup.solar.push(SolarArray { peak: Watts(100.0), ..SolarArray::default() });
    let mut series = Series::new(vec![used, from_charging, at(120.0)], &setup);
    series.find_drawn(&setup);
    assert_eq!(drawn(&series), [Some(30.0), Some(30.0), None]);
    assert!(series.whole_day);
}

/// A battery alone tells the draw at night. Its charger is seen from 00:30 to 00:40, and hides it from a quarter of an
/// hour before to a quarter of an hour after; the sun hides it by day, unless nothing charges by day and no panel
/// is listed.
#[test]
fn a_battery_alone_tells_the_draw_by_night() {
    let mut setup = van();
    let row = |minute: usize| {
        let net = if (30..=40).contains(&minute) { 60.0 } else { -20.0 };
        Sample { watts: Some(Watts(net)), ..at(minute as f64 * 60.0) }
    };
    let rows = minutes(14, row);
    let mut series = Series::new(rows.clone(), &setup);
    series.find_drawn(&setup);
    let seen = drawn(&series);
    for (minute, watts) in [
        (0, Some(20.0)),
        (14, Some(20.0)),
        (15, None),
        (35, None),
        (55, None),
        (56, Some(20.0)),
        (720, Some(20.0)),
    ] {
        assert_eq!(seen[minute], watts, "minute {minute}");
    }
    assert!(series.whole_day && !series.sun_up[0] && series.sun_up[720]);
    setup.solar.push(SolarArray { peak: Watts(100.0), ..SolarArray::default() });
    let mut series = Series::new(rows, &setup);
    series.find_drawn(&setup);
    let seen = drawn(&series);
    assert_eq!((seen[14], seen[35], seen[60], seen[720]), (Some(20.0), None, Some(20.0), None));
    assert!(!series.whole_day);
}

/// At a quarter of its charge and less, a battery that gives nothing for twenty minutes has switched off: that
/// is no draw of nothing. One that gives 2 W has not.
#[test]
fn an_empty_battery_tells_no_draw() {
    let setup = van();
    for (level, net, told) in
        [(0.25, -0.5, None), (0.25, -2.0, Some(2.0)), (0.26, -0.5, Some(0.5)), (0.25, 0.9, None)]
    {
        let row = |minute: usize| Sample {
            soc_frac: Some(level),
            watts: Some(Watts(net)),
            ..at(minute as f64 * 60.0)
        };
        let mut series = Series::new(minutes(2, row), &setup);
        series.find_drawn(&setup);
        assert_eq!(drawn(&series)[30], told, "{level} {net}");
    }
}

/// The last digit of what a monitor shows: it goes up and down by a fifth of a watt, a tenth on average.
fn last_digit(minute: usize) -> f64 {
    if minute.is_multiple_of(2) { 0.2 } else { 0.0 }
}

/// Two days of a log of all that is used: 10 W always (with its last digit), 50 W more for the first quarter of every hour, and 100 W
/// more from 19:00 to 20:30. 200 W come in from 10:00 to 14:00, and 400 W for one of those minutes.
fn two_days() -> Series {
    let row = |minute: usize| {
        let of_day = minute % 1_440;
        let fridge = if of_day % 60 < 15 { 50.0 } else { 0.0 };
        let evening = if (1_140..1_230).contains(&of_day) { 100.0 } else { 0.0 };
        let charging = match of_day {
            700 => 400.0,
            600..840 => 200.0,
            _ => 0.0,
        };
        Sample {
            used: Some(Watts(9.9 + last_digit(minute) + fridge + evening)),
            charging: Some(Watts(charging)),
            ..at(minute as f64 * 60.0)
        }
    };
    let setup = van();
    let mut series = Series::new(minutes(48, row), &setup);
    series.find_drawn(&setup);
    series
}

#[test]
fn the_use_of_each_hour_is_its_mean() {
    let by_hour = use_by_hour(&two_days());
    for (hour, watts) in
        [(0, 22.5), (6, 22.5), (12, 22.5), (18, 22.5), (19, 122.5), (20, 72.5), (21, 22.5)]
    {
        let told = by_hour[hour].expect("watched");
        near(told.mean.0, watts, 1e-9);
        near(told.watched.0, 2.0, 1e-9);
    }
    // Half of an hour is enough to know it, less is not.
    for (minutes, known) in [(29, false), (30, true)] {
        let rows =
            (0..=minutes).map(|m| Sample { used: Some(Watts(5.0)), ..at(f64::from(m) * 60.0) });
        let mut series = Series::new(rows.collect(), &van());
        series.find_drawn(&van());
        assert_eq!(use_by_hour(&series)[0].is_some(), known, "{minutes}");
    }
}

#[test]
fn what_never_stops_is_the_lowest_level_of_the_night() {
    let series = two_days();
    let by_hour = use_by_hour(&series);
    let told = floor(&series, &levels(&series), &by_hour).expect("nights were logged");
    near(told.power.0, 10.0, 0.01);
    assert_eq!((told.sd, told.seen_between_runs), (Watts(0.5), true));
    // Rows ten minutes apart only say that it is no more than the quietest hour of the night.
    let rows = (0..=144).map(|n| {
        let watts = if n / 6 == 3 { 12.0 } else { 20.0 };
        Sample { used: Some(Watts(watts)), ..at(f64::from(n) * 600.0) }
    });
    let mut coarse = Series::new(rows.collect(), &van());
    coarse.find_drawn(&van());
    let told = floor(&coarse, &levels(&coarse), &use_by_hour(&coarse)).expect("nights");
    near(told.power.0, 12.0, 1e-9);
    near(told.sd.0, 2.4, 1e-9);
    assert!(!told.seen_between_runs);
}

#[test]
fn what_comes_in_is_summed_day_by_day() {
    let told = income(&two_days(), None).expect("a column of it");
    assert!(told.measured);
    // 240 minutes of 200 W and one of 200 W more; the one high minute is looked past.
    let wh = 200.0 * 4.0 + 200.0 / 60.0;
    for day in &told.days[..2] {
        near(day.energy.0, wh, 1e-6);
        assert_eq!(day.peak, Watts(200.0));
    }
    assert_eq!((told.days.len(), told.peak()), (2, Watts(200.0)));
    near(told.mean_per_day().0, wh, 1e-6);
    // Without such a column: what reached the battery, and what never stops, while it was charged.
    let row = |minute: usize| {
        let net = if (600..720).contains(&minute) { 90.0 } else { -10.0 };
        Sample { watts: Some(Watts(net)), ..at(minute as f64 * 60.0) }
    };
    let mut series = Series::new(minutes(24, row), &van());
    series.find_drawn(&van());
    let floor = floor(&series, &levels(&series), &use_by_hour(&series));
    let told = income(&series, floor).expect("it was charged");
    assert!(!told.measured);
    near(told.days[0].energy.0, 2.0 * 100.0, 1e-6);
    // Eight tenths of a day are a day, less is not.
    for (hours, days) in [(19, 0), (20, 1)] {
        let mut series = Series::new(minutes(hours, row), &van());
        series.find_drawn(&van());
        assert_eq!(income(&series, None).map_or(0, |told| told.days.len()), days, "{hours}");
    }
}

#[test]
fn levels_and_the_appliances_behind_them() {
    let series = two_days();
    let found = levels(&series);
    assert_eq!(found.threshold, Watts(8.0));
    // 48 runs of the fridge, and two evenings that begin and end with one: the evening ends half an hour after a run.
    let Level { from_s, to_s, power, rows, joined, .. } = found.levels[0];
    assert_eq!((from_s, to_s, rows, joined), (MIDNIGHT, MIDNIGHT + 900.0, 15, false));
    near(power.0, 60.0, 0.02);
    let Level { from_s, to_s, power, rows, joined, .. } = found.levels[1];
    assert_eq!((from_s, to_s, rows, joined), (MIDNIGHT + 900.0, MIDNIGHT + HOUR, 45, true));
    near(power.0, 10.0, 0.02);
    let told = appliances(&series, &found, Watts(10.0));
    let of = |watts: f64| {
        told.iter()
            .find(|found| (found.power.0 - watts).abs() < 3.0)
            .unwrap_or_else(|| panic!("{watts} W: {told:?}"))
    };
    let fridge = of(50.0);
    assert_eq!(fridge.pattern, Pattern::Thermostat);
    near(fridge.usual_run.0, 0.25, 1e-9);
    near(fridge.duty_frac, 0.25, 0.01);
    near(fridge.per_day.0, 6.0, 0.2);
    near(fridge.by_hour[3].expect("watched"), 0.25, 1e-6);
    assert!((44..=48).contains(&fridge.runs), "{}", fridge.runs);
}

/// Five evenings of a 60 W television from 19:00 to 20:30 and a 25 W lamp from 20:00 to 23:00, over 8 W of
/// standby: each is told, with its hours, and neither is a thermostat.
#[test]
fn evenings_tell_their_appliances() {
    let row = |minute: usize| {
        let of_day = minute % 1_440;
        let television = if (1_140..1_230).contains(&of_day) { 60.0 } else { 0.0 };
        let lamp = if (1_200..1_380).contains(&of_day) { 25.0 } else { 0.0 };
        Sample {
            used: Some(Watts(7.9 + last_digit(minute) + television + lamp)),
            ..at(minute as f64 * 60.0)
        }
    };
    let setup = van();
    let mut series = Series::new(minutes(120, row), &setup);
    series.find_drawn(&setup);
    let told = appliances(&series, &levels(&series), Watts(8.0));
    let told: Vec<(f64, f64, f64, usize, Pattern)> = told
        .iter()
        .map(|a| (a.power.0.round(), a.per_day.0, a.usual_run.0, a.runs, a.pattern))
        .collect();
    // The television takes 90 Wh a day, the lamp 75.
    assert_eq!(told, [(60.0, 1.5, 1.5, 5, Pattern::Uses), (25.0, 3.0, 3.0, 5, Pattern::Uses)],);
    let told = appliances(&series, &levels(&series), Watts(8.0));
    assert!(told[0].power_sd < Watts(0.01));
    near(told[0].duty_frac, 1.5 / 24.0, 1e-9);
    for (hour, ran) in [(18, 0.0), (19, 1.0), (20, 0.5), (21, 0.0)] {
        near(told[0].by_hour[hour].expect("watched"), ran, 1e-9);
    }
    assert_eq!(usual_times(&told[0]).windows(), [Window { from_min: 19 * 60, to_min: 21 * 60 }]);
    assert_eq!(usual_times(&told[1]).windows(), [Window { from_min: 20 * 60, to_min: 23 * 60 }]);
}

/// 10 A for six hours take 60 Ah and half of the charge: 120 Ah. The error is that of two states of charge,
/// 1.2 % each, over the swing, and of the shunt, 1 %.
#[test]
fn charge_counted_between_two_states_tells_the_capacity() {
    let row = |minute: usize| Sample {
        amps: Some(Amps(-10.0)),
        ..soc(minute as f64 * 60.0, 0.9 - minute as f64 / 60.0 * 10.0 / 120.0)
    };
    let told = capacity(&Series::new(minutes(6, row), &van()), &van()).expect("a swing of a half");
    near(told.capacity.0, 120.0, 1e-6);
    assert_eq!(told.way, CapacityWay::BetweenStates);
    // Quarter hours: the first and the last mean stand a quarter of an hour's charge apart from the ends.
    near(told.swing_frac, 0.5, 0.025);
    let by_hand = (0.012 * 2_f64.sqrt() / told.swing_frac).hypot(0.01);
    near(told.error_frac, by_hand, 1e-6);
    // In 24 minutes it falls by 3.3 %: too little to say.
    let short = capacity(&Series::new(minutes(2, row), &van()), &van());
    assert!(
        matches!(short, Err(CapacityMissing::SmallSwing(swing)) if (swing - 0.16).abs() < 0.03),
        "{short:?}"
    );
    // States that rise while charge is drawn contradict it.
    let against = |minute: usize| {
        let row = row(minute);
        Sample {
            soc_frac: row.soc_frac.map(|soc| if minute < 240 { soc } else { 1.8 - soc }),
            ..row
        }
    };
    let told = capacity(&Series::new(minutes(6, against), &van()), &van());
    assert!(!matches!(told, Ok(found) if found.error_frac < 0.05), "{told:?}");
    let none = minutes(6, |minute| soc(minute as f64 * 60.0, 0.5));
    assert_eq!(capacity(&Series::new(none, &van()), &van()), Err(CapacityMissing::NoCurrent));
}

/// AGM full at 14.4 V with 1 A left, then 10 A for five hours, then a night's rest at 12.2 V: half empty or a little
/// more, so that 50 Ah are what is missing.
#[test]
fn a_rested_voltage_after_a_full_battery_tells_the_capacity() {
    let mut setup = van();
    setup.bank.chemistry = Chemistry::Agm;
    let row = |minute: usize| {
        let (volts, amps) = match minute {
            0..60 => (14.4, 1.0),
            60..360 => (12.3, -10.0),
            _ => (12.2, 0.0),
        };
        Sample { volts: Some(Volts(volts)), amps: Some(Amps(amps)), ..at(minute as f64 * 60.0) }
    };
    let told = capacity(&Series::new(minutes(16, row), &setup), &setup).expect("full, then low");
    assert_eq!(told.way, CapacityWay::RestedVoltage);
    assert!((0.40..0.62).contains(&told.swing_frac), "{told:?}");
    // A quarter of an hour at 1 A is what the mean of the last full block lies back by.
    near(told.capacity.0 * told.swing_frac, 50.0, 0.6);
    assert!((0.01..0.15).contains(&told.error_frac));
    // Never full, or never rested: nothing to tell.
    let never_full = minutes(16, |minute| Sample { volts: Some(Volts(12.2)), ..row(minute) });
    let told = capacity(&Series::new(never_full, &setup), &setup);
    assert_eq!(told, Err(CapacityMissing::NoState));
    let told = capacity(&Series::new(minutes(6, row), &setup), &setup);
    assert_eq!(told, Err(CapacityMissing::NoState));
}

/// 80 Ah of 100 on the label: eight tenths are left. More than the label, or less than age may leave, is another label.
#[test]
fn a_capacity_is_taken_over_as_health_or_as_another_label() {
    let found = |ah: f64| CapacityFound {
        capacity: AmpHours(ah),
        error_frac: 0.02,
        swing_frac: 0.5,
        way: CapacityWay::BetweenStates,
    };
    let bank = Bank { capacity_20h: AmpHours(50.0), parallel: 2, ..van().bank };
    let taken = bank_with(&bank, &found(80.0));
    assert_eq!((taken.capacity_20h, taken.parallel), (AmpHours(50.0), 2));
    near(taken.health_frac, 0.8, 1e-12);
    let larger = bank_with(&bank, &found(130.0));
    assert_eq!((larger.capacity_20h, larger.health_frac), (AmpHours(65.0), 1.0));
}

fn appliance(watts: f64, pattern: Pattern, by_hour: [Option<f64>; 24]) -> Appliance {
    Appliance {
        power: Watts(watts),
        power_sd: Watts(1.0),
        runs: 9,
        usual_run: Hours(0.5),
        duty_frac: 0.3,
        per_day: Hours(1.5),
        by_hour,
        pattern,
    }
}

/// Of the list the load that is nearest in power and comes and goes alike, no more than a third off.
#[test]
fn the_load_of_the_list_that_was_seen() {
    let mut setup = van();
    let fridge = Usage::Duty { cycle: DutyCycle::Fixed { frac: 0.3 } };
    setup.loads.push(load(1, 45.0, fridge));
    setup.loads.push(load(2, 40.0, Usage::Daily { minutes: 60.0 }));
    setup.loads.push(load(3, 50.0, Usage::Daily { minutes: 60.0 }));
    setup.loads.push(load(4, 46.0, Usage::AlwaysOn));
    let seen = |watts, pattern| likely_load(&setup, &appliance(watts, pattern, [None; 24]));
    assert_eq!(seen(46.0, Pattern::Thermostat), Some(1));
    assert_eq!(seen(44.0, Pattern::Uses), Some(2));
    assert_eq!(seen(46.0, Pattern::Uses), Some(3));
    assert_eq!((seen(67.0, Pattern::Uses), seen(68.0, Pattern::Uses)), (Some(3), None));
    assert_eq!((seen(30.0, Pattern::Uses), seen(29.0, Pattern::Uses)), (Some(2), None));
    // Two pieces draw twice; behind the inverter what it loses and draws itself comes on top.
    setup.loads[1].quantity = 2;
    assert_eq!(likely_load(&setup, &appliance(80.0, Pattern::Uses, [None; 24])), Some(2));
    setup.loads.truncate(3);
    setup.loads.remove(0);
    setup.loads[1].feed = Feed::Inverter;
    setup.inverter.fitted = true;
    setup.inverter.idle = Watts(20.0);
    setup.inverter.switching = InverterSwitching::WhenUsed;
    assert_eq!(likely_load(&setup, &appliance(73.0, Pattern::Uses, [None; 24])), Some(3));
}

/// What was measured goes into the load: its power each, and how long it runs where the whole day was watched.
#[test]
fn a_load_takes_over_what_was_measured() {
    let setup = van();
    let row = |minute: usize| Sample {
        amps: Some(Amps(-1.0)),
        ..soc(minute as f64 * 60.0, 0.9 - minute as f64 * 1e-4)
    };
    let series = Series::new(minutes(30, row), &setup);
    let trip = LogTrip::of(&series, &setup, &summer()).expect("valid climate").expect("a time");
    let mut evening = [Some(0.0); 24];
    (evening[19], evening[20]) = (Some(1.0), Some(0.5));
    let seen = appliance(60.0, Pattern::Uses, evening);
    let mut listed = load(7, 45.0, Usage::Daily { minutes: 30.0 });
    listed.quantity = 2;
    let taken = measured_load(&listed, &seen, &setup.inverter, &trip, false);
    assert_eq!(taken.draw, Draw::Power { watts: Watts(30.0) });
    assert_eq!(taken.usage, Usage::Daily { minutes: 90.0 });
    assert_eq!(taken.window, Window { from_min: 19 * 60, to_min: 21 * 60 });
    // Watched for 19 hours of the day it says less about the whole of it; a new load has nothing better.
    evening[..5].fill(None);
    let part = appliance(60.0, Pattern::Uses, evening);
    assert_eq!(measured_load(&listed, &part, &setup.inverter, &trip, false).usage, listed.usage);
    let new = measured_load(&listed, &part, &setup.inverter, &trip, true);
    assert_eq!(new.usage, Usage::Daily { minutes: 90.0 });
    // Behind an inverter: what it loses is taken off again.
    let mut inverter = setup.inverter.clone();
    inverter.fitted = true;
    inverter.switching = InverterSwitching::WhenUsed;
    let curve = nightbank::physics::inverter::InverterCurve::of(&inverter);
    let socket = 40.0;
    let seen =
        appliance(socket + curve.r_per_watt * socket * socket + curve.p0.0, Pattern::Uses, evening);
    listed.feed = Feed::Inverter;
    listed.quantity = 1;
    let taken = measured_load(&listed, &seen, &inverter, &trip, false);
    near(taken.draw.watts().0, socket, 1e-6);
}

/// A log that lies 4 % above the forecast of its own setup all along: so much the two differ by.
#[test]
fn the_forecast_is_held_against_the_log_hour_by_hour() {
    let mut setup = van();
    setup.loads.push(load(1, 20.0, Usage::AlwaysOn));
    let flat = Series::new(minutes(40, |minute| soc(minute as f64 * 60.0, 0.9)), &setup);
    let trip = LogTrip::of(&flat, &setup, &summer()).expect("valid").expect("a time");
    assert!(trip.has_soc);
    assert_eq!(trip.from_s, MIDNIGHT);
    near(trip.setup.bank.soc_start_frac, 0.9, 1e-12);
    assert_eq!((trip.setup.trip.year, trip.setup.trip.month, trip.setup.trip.day), (2024, 6, 1));
    assert_eq!((trip.setup.trip.nights, trip.setup.trip.arrival_hour), (2, 0));
    let course = Course::average(&trip.plan);
    // On the hour the log shows the forecast and 4 % more, and stays so for the ten minutes around it.
    let row = |minute: usize| {
        let hour = (minute + 30) / 60;
        let played = if hour == 0 { 0.9 } else { course.hours[hour - 1].soc_frac + 0.04 };
        soc(minute as f64 * 60.0, played)
    };
    let log = Series::new(minutes(40, row), &setup);
    let held = trip.held(&log).expect("hours enough");
    assert_eq!(held.hours, 40);
    near(held.mean_frac, -0.04, 1e-9);
    near(held.rms_frac, 0.04, 1e-9);
    // Twenty watts and what the battery's management draws never stop at night.
    let management = trip.plan.bank.management().0;
    near(trip.steady_at_night().0, 20.0 + management, 1e-6);
    // A log of eleven hours is too short to say.
    let short = Series::new(minutes(11, row), &setup);
    let trip = LogTrip::of(&short, &setup, &summer()).expect("valid").expect("a time");
    assert_eq!(trip.held(&short), None);
    assert!(trip.fitted(&short).is_none());
}
