//! Logs of readings as monitors keep them, written by hand: read, learned from and taken over.

use super::kept::Report;
use crate::advice_common::load;
use nightbank::advice::log::take_over::{
    bank_with, likely_load, measured_load, standby_load, usual_times,
};
use nightbank::advice::log::{Learned, LogJob};
use nightbank::forecast::{MonthlyClimate, climate_of};
use nightbank::import::log::{
    Choices, Clock, DateOrder, LogReader, LogSurvey, LogTable, PlusIs, Told, is_log,
};
use nightbank::import::number::DecimalMark;
use nightbank::model::{
    Bank, Chemistry, DayPlan, DutyCycle, Feed, InverterSwitching, Load, Sample, Setup, SolarArray,
    Usage, Weather, Window,
};
use nightbank::units::{AmpHours, Degrees, Watts};
use std::fmt::Write;
use std::sync::Arc;

/// A number between -1 and 1 that looks like chance and is the same everywhere.
fn noise(step: usize) -> f64 {
    let mixed = (step as u64).wrapping_mul(0x9e37_79b9_7f4a_7c15).rotate_left(23);
    let mixed = (mixed ^ (mixed >> 29)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    ((mixed >> 40) as f64 / (1_u64 << 23) as f64) - 1.0
}

/// The owner's list: a fridge, a lamp that is thought to take more, the television through the inverter.
fn owner() -> Setup {
    let mut setup = Setup::default();
    let fridge = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.3 } };
    setup.loads.push(load(1, 40.0, fridge));
    setup.loads.push(load(2, 3.0, Usage::AlwaysOn));
    setup.loads.push(load(3, 28.0, Usage::Daily { minutes: 120.0 }));
    setup.loads[2].feed = Feed::Inverter;
    setup.loads[2].window = Window { from_min: 19 * 60, to_min: 23 * 60 };
    setup.inverter.fitted = true;
    setup.inverter.idle = Watts(6.0);
    setup.inverter.continuous = Watts(400.0);
    setup.bank = Bank {
        chemistry: Chemistry::LiFePo4,
        capacity_20h: AmpHours(120.0),
        soc_min_frac: 0.1,
        ..Bank::default()
    };
    setup.solar.push(SolarArray { peak: Watts(150.0), ..SolarArray::default() });
    setup.trip.place.latitude = Degrees(52.0);
    setup.trip.utc_offset_min = 120;
    (setup.trip.year, setup.trip.month, setup.trip.day, setup.trip.nights) = (2026, 7, 13, 6);
    setup.trip.days = [Weather::Clear, Weather::Dull, Weather::Clear, Weather::Mixed]
        .map(|weather| DayPlan { weather, ..DayPlan::default() })
        .to_vec();
    setup
}

/// Draw of a minute of the day [W]: a floor, a fridge of 48 W that runs 12 of 35 minutes, longer in the afternoon, a
/// television of 37 W in the evening, a kettle of 140 W at breakfast.
fn drawn(minute: usize) -> f64 {
    let of_day = minute % 1440;
    let warm = (720..1140).contains(&of_day);
    let runs = minute % 35 < if warm { 18 } else { 12 };
    let fridge = if runs { 48.0 } else { 0.0 };
    let television = if (1_170..1_310).contains(&of_day) { 37.0 } else { 0.0 };
    let kettle = if (435..447).contains(&of_day) { 140.0 } else { 0.0 };
    7.5 + fridge + television + kettle
}

/// What the sun brings in a minute [W]: three skies in turn.
fn sun(minute: usize) -> f64 {
    let of_day = (minute % 1440) as f64;
    let height = (std::f64::consts::PI * (of_day - 330.0) / 960.0).sin();
    let inside = (330.0..1290.0).contains(&of_day);
    let sky = [0.75, 0.3, 0.55][minute / 1440 % 3];
    if inside { 120.0 * sky * height.max(0.0).powf(1.3) } else { 0.0 }
}

/// Five days of a monitor in German, every two minutes: dates with points, commas, a gap, rows that are spoilt.
fn of_monitor() -> String {
    let mut text = "Monitor;Version 3\nGerät;Wohnraum\n\
        Zeit;Ladezustand (%);Spannung (V);Strom (A);Batterietemperatur\n"
        .to_owned();
    let mut charge_ah = 96.0;
    for minute in (0..5 * 1440).step_by(2) {
        let clock = 900 + minute;
        let net = sun(clock) - drawn(clock);
        let volts = 12.9 + 0.5 * (charge_ah / 108.0 - 0.5) + net / 1200.0;
        let amps = net / volts;
        charge_ah = f64::min(charge_ah + amps * 2.0 / 60.0, 108.0);
        let (day, hour, of_hour) = (14 + clock / 1440, clock / 60 % 24, clock % 60);
        if (2_000..2_190).contains(&minute) {
            continue;
        }
        let shown = amps + 0.05 * noise(minute);
        let row = format!(
            "{day:02}.07.2026 {hour:02}:{of_hour:02};{:.0};{volts:.2};{shown:.1};{}",
            100.0 * charge_ah / 108.0,
            21 + minute % 7,
        );
        let _ = writeln!(text, "{}", row.replace(['.'], ",").replacen(',', ".", 2));
        match minute {
            300 => text += "14.07.2026 20:00;61;13,1;-2,0;22\n",
            1_400 => text += "15.07.2026 14:21;180;13,2;1,0;22\n",
            1_402 => text += "15.07.2026 14:23;--;n/a;;22\n",
            1_404 => text += "gestern;70;13,2;1,0;22\n15.07.2026 14:25;71;viel;1,0;22\n",
            _ => {}
        }
    }
    text
}

/// Three days of power in universal time every ten minutes, in seconds since 1970: with plus as using, a column of
/// what comes in and one of what is used.
fn of_controller() -> String {
    let mut text = "unix,Battery W,PV power kW,Load W,Battery V\n".to_owned();
    for minute in (0..3 * 1440).step_by(10) {
        let at = 1_784_073_600 + minute * 60;
        // The camp's clock is two hours ahead.
        let (comes, goes) = (sun(minute + 120), drawn(minute + 120));
        let _ = writeln!(
            text,
            "{at},{:.1},{:.4},{:.1},{:.2}",
            goes - comes,
            comes / 1000.0,
            goes,
            13.0 + (comes - goes) / 400.0
        );
    }
    text
}

/// An American list every five minutes without state of charge: full, fourteen hours of 5 A, a rest.
fn from_full() -> String {
    let mut text = "Date\tTime\tVolts\tmA\n".to_owned();
    for minute in (0..30 * 60).step_by(5) {
        let (volts, amps) = match minute {
            0..300 => (14.1, 0.6),
            300..1_140 => (12.6 - 0.0005 * (minute - 300) as f64, -5.0),
            _ => (12.21 + 0.00002 * (minute - 1_140) as f64, 0.0),
        };
        let clock = 14 * 60 + minute;
        let (day, hour, of_hour) = (29 + clock / 1440, clock / 60 % 24, clock % 60);
        let (month, day) = if day > 30 { (5, day - 30) } else { (4, day) };
        let half = if hour < 12 { "AM" } else { "PM" };
        let hour = if hour % 12 == 0 { 12 } else { hour % 12 };
        let milliamps = 1000.0 * amps + 20.0 * noise(minute);
        let _ = writeln!(
            text,
            "{month}/{day}/2026\t{hour}:{of_hour:02} {half}\t{volts:.3}\t{milliamps:.0}"
        );
    }
    text
}

fn survey(report: &mut Report, text: String) -> (Arc<LogTable>, Choices, Vec<Told>) {
    report.say("is a log", &is_log(&text));
    let mut survey = LogSurvey::new(Arc::from(text)).expect("a table");
    while survey.advance() {}
    let table = Arc::new(survey.table());
    report.say("head", &(&table.head, table.above, table.rows));
    report.each("shown", &table.preview);
    report.each("column", &table.columns);
    let (choices, told) = table.suggested();
    report.say("suggested", &choices);
    report.say("told", &told);
    report.say("asks", &(table.asks(&choices), table.mark(), table.date_order(&choices)));
    (table, choices, told)
}

fn read(report: &mut Report, table: Arc<LogTable>, choices: Choices, offset: i16) -> Vec<Sample> {
    let mut reader = LogReader::new(table, choices, offset);
    while reader.advance() {}
    report.say("plus is", &(reader.has_sign(), reader.plus_is()));
    report.each("left out", reader.rejected().iter().take(8));
    report.each("of a kind", reader.rejected_counts());
    let samples = reader.samples().to_vec();
    report.say("rows", &samples.len());
    for sample in samples.iter().step_by(samples.len().max(5) / 5) {
        let Sample { at_s, soc_frac, volts, amps, watts, charging, used } = sample;
        report.say(&format!("row at {at_s}"), &(soc_frac, volts, amps, watts, charging, used));
    }
    samples
}

fn learned(report: &mut Report, samples: Vec<Sample>, setup: &Setup) {
    let sky = MonthlyClimate::from(&climate_of(&setup.trip));
    let mut job = LogJob::new(samples, setup.clone(), sky);
    while job.advance().expect("weather in range") {}
    let learned = job.learned();
    report.part("Learned");
    report.say("rows", &(learned.rows, learned.span, learned.covered, learned.whole_day));
    for (hour, seen) in learned.by_hour.iter().enumerate() {
        report.row(
            &format!("hour {hour}, mean and time watched"),
            seen.iter().flat_map(|seen| [seen.mean.0, seen.watched.0]),
        );
    }
    report.say("never stops", &(learned.floor, learned.explained, learned.unexplained()));
    report.say("comes in", &learned.income);
    if let Some(income) = &learned.income {
        report.say("    a day, at most", &(income.mean_per_day(), income.peak()));
    }
    report.say("capacity", &learned.capacity);
    report.each("lacking", &learned.lacking);
    report.say("held", &learned.held);
    if let Some(fit) = &learned.fit {
        report.say("fit", &(fit.use_factor, fit.sun_factor, fit.start_soc_frac, fit.misfit));
        report.say("    more", &(fit.correlation, fit.readings, &fit.wanted, &fit.correction));
    }
    report.each("appliance", &learned.appliances);
    taken_over(report, learned, setup);
}

fn taken_over(report: &mut Report, learned: &Learned, setup: &Setup) {
    report.part("Taken over");
    if let Ok(capacity) = &learned.capacity {
        report.say("battery", &bank_with(&setup.bank, capacity));
    }
    if let Some(left) = learned.unexplained() {
        report.say("standby", &standby_load(setup.fresh_load_id(), "Standby".to_owned(), left));
    }
    let Some(trip) = &learned.trip else { return };
    report.say("steady at night", &trip.steady_at_night());
    let begins = &trip.setup.trip;
    report
        .say("days", &(begins.year, begins.month, begins.day, begins.arrival_hour, begins.nights));
    for found in &learned.appliances {
        report.say("times of day", &usual_times(found).windows());
        let likely = likely_load(setup, found);
        report.say("    likely", &likely);
        if let Some(load) = likely.and_then(|id| setup.load(id)) {
            report.say("    it", &measured_load(load, found, &setup.inverter, trip, false));
        }
        for feed in [Feed::Dc, Feed::Inverter] {
            let new = Load { id: 9, feed, quantity: 2, ..Load::default() };
            report.say("    new", &measured_load(&new, found, &setup.inverter, trip, true));
        }
    }
    if let Some(fit) = &learned.fit {
        report.say("correction", &trip.correction_for(&fit.correction, setup));
    }
}

pub fn monitor() -> Report {
    let mut report = Report::default();
    let setup = owner();
    let (table, choices, _) = survey(&mut report, of_monitor());
    let samples = read(&mut report, table, choices, setup.trip.utc_offset_min);
    learned(&mut report, samples, &setup);
    report
}

/// Two batteries, a solar controller with its own columns, and columns that say nothing.
pub fn two_batteries() -> Report {
    let mut report = Report::default();
    let mut text = "Log;;;;;;;;\nDay;Time;Starter battery (V);Leisure battery (V);Panel A;Battery A;SOC;PV W;Ah\n".to_owned();
    for row in 0..40 {
        let (hour, of_hour) = (row / 4, row % 4 * 15);
        let amps = if row % 7 < 3 { 2.5 } else { -1.5 - 0.25 * (row % 5) as f64 };
        let _ = writeln!(
            text,
            "2026/7/{};{hour}:{of_hour:02};12.9;{:.2};{:.1};{amps:.2};0.{};{};{}",
            1 + row / 30,
            12.8 + 0.02 * amps,
            amps.max(0.0),
            70 + row % 20,
            if amps > 0.0 { 40 } else { 0 },
            row,
        );
    }
    let (table, choices, _) = survey(&mut report, text);
    let _ = read(&mut report, table, choices, 0);
    report
}

pub fn controller() -> Report {
    let mut report = Report::default();
    let mut setup = owner();
    setup.inverter.switching = InverterSwitching::PowerSave { asleep: Watts(1.0) };
    setup.bank.chemistry = Chemistry::Agm;
    let (table, mut choices, _) = survey(&mut report, of_controller());
    choices.clock = Clock::Utc;
    let _ = read(&mut report, table.clone(), choices.clone(), setup.trip.utc_offset_min);
    report.text("told", "plus is using");
    choices.plus_is = Some(PlusIs::Using);
    let samples = read(&mut report, table, choices, setup.trip.utc_offset_min);
    learned(&mut report, samples, &setup);
    report
}

pub fn without_states() -> Report {
    let mut report = Report::default();
    let mut setup = owner();
    setup.bank.chemistry = Chemistry::Agm;
    setup.bank.soc_min_frac = 0.5;
    setup.inverter.switching = InverterSwitching::AllDay;
    let (table, mut choices, _) = survey(&mut report, from_full());
    choices.date_order = Some(DateOrder::Mdy);
    choices.mark = Some(DecimalMark::Point);
    let samples = read(&mut report, table, choices, -300);
    learned(&mut report, samples, &setup);
    report
}
