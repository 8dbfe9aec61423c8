//! Logs of readings: what they tell, from logs whose truth is known.
//!
//! The logs are made from the forecast itself: its demand by hour, switched on and off minute by minute, its
//! sun, and its battery stepped by the minute; then noise, gaps and drift as a monitor has them.

use crate::advice_common::{load, summer};
use nightbank::advice::log::capacity::{CapacityMissing, CapacityWay};
use nightbank::advice::log::steps::{Appliance, Pattern};
use nightbank::advice::log::take_over::{bank_with, likely_load, measured_load, standby_load};
use nightbank::advice::log::{Lacking, Learned, LogJob};
use nightbank::forecast::demand::LoadDay;
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::surroundings::Surroundings;
use nightbank::forecast::{MonthlyClimate, TripPlan};
use nightbank::import::log::{
    Ask, Choices, Clock, DateOrder, Fault, LogReader, LogSurvey, LogTable, PlusIs, Role,
};
use nightbank::model::{
    Bank, Chemistry, Draw, DutyCycle, Sample, Setup, SolarArray, Usage, Window,
};
use nightbank::physics::battery::BankState;
use nightbank::physics::solar::sun::{JulianDate, Sun};
use nightbank::units::{AmpHours, Amps, Volts, Watts};
use proptest::prelude::*;
use rand::{Rng, SeedableRng};
use rand_distr::Normal;
use rand_pcg::Pcg32;
use std::sync::Arc;

/// A van with a fridge, two lamps, a television, a pump and standby, 200 Ah and a panel.
fn van() -> Setup {
    let mut setup = Setup::default();
    let fridge = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.4 } };
    setup.loads.push(load(1, 45.0, fridge));
    setup.loads.push(load(2, 7.0, Usage::AlwaysOn));
    setup.loads.push(load(3, 32.0, Usage::Daily { minutes: 180.0 }));
    setup.loads[2].window = Window { from_min: 19 * 60, to_min: 22 * 60 };
    setup.loads.push(load(4, 90.0, Usage::Daily { minutes: 60.0 }));
    setup.loads[3].window = Window { from_min: 21 * 60, to_min: 22 * 60 };
    setup.bank = Bank {
        chemistry: Chemistry::LiFePo4,
        capacity_20h: AmpHours(100.0),
        soc_min_frac: 0.1,
        soc_start_frac: 0.9,
        ..Bank::default()
    };
    setup.solar.push(SolarArray { peak: Watts(450.0), ..SolarArray::default() });
    setup.trip.month = 9;
    setup.trip.arrival_hour = 16;
    setup.trip.nights = 10;
    setup
}

/// What spoils a log.
#[derive(Clone, Copy)]
struct Spoil {
    /// Noise of the current, one standard deviation [A].
    amps_sd: f64,
    /// Gain of the shunt off by so much, as a share.
    gain: f64,
    /// What the monitor's state of charge drifts in a day, as a share of the charge.
    drift_a_day: f64,
    /// Share of quarter hours that are missing.
    gaps: f64,
    /// Seconds from row to row.
    step_s: usize,
}

const CLEAN: Spoil = Spoil { amps_sd: 0.0, gain: 1.0, drift_a_day: 0.0, gaps: 0.0, step_s: 60 };
const USUAL: Spoil =
    Spoil { amps_sd: 0.1, gain: 1.01, drift_a_day: -0.004, gaps: 0.06, step_s: 60 };

fn normal(rng: &mut Pcg32, sd: f64) -> f64 {
    if sd > 0.0 { rng.sample(Normal::new(0.0, sd).expect("positive")) } else { 0.0 }
}

/// A log of `days` of the real setup, as its monitor keeps it.
fn log_of(
    real: &Setup,
    climate: &MonthlyClimate,
    days: usize,
    spoil: Spoil,
    seed: u64,
) -> Vec<Sample> {
    let sun = Arc::new(TripSun::build(real, climate).expect("valid climate"));
    let plan = TripPlan::with_steps(real, Arc::clone(&sun), 60);
    let around = Surroundings::on_day(real, 1, sun.first_whole_day_air());
    let mut rng = Pcg32::seed_from_u64(seed);
    let hours: Vec<LoadDay> = real.loads.iter().map(|load| LoadDay::of(load, &around)).collect();
    let mut state = BankState::rested(real.bank.soc_start_frac);
    let start_day = f64::from(real.trip.start().to_julian_day() - 2_440_588);
    let start_s = start_day * 86_400.0 + f64::from(real.trip.arrival_hour) * 3600.0;
    // Time of each load until it switches [min], and whether it runs.
    let mut cycles: Vec<(f64, bool)> =
        real.loads.iter().map(|_| (rng.random_range(0.0..20.0), false)).collect();
    let mut rows = Vec::new();
    let mut missing = false;
    for minute in 0..days * 24 * 60 {
        let hour = &plan.hours[minute / 60];
        let mut drawn = hour.electronics;
        for ((load, day), cycle) in real.loads.iter().zip(&hours).zip(&mut cycles) {
            let slot = day.hours[hour.hour_of_day];
            drawn += slot.standby;
            let busy = if slot.momentary.0 > 0.0 { slot.running / slot.momentary } else { 0.0 };
            let on = match load.usage {
                Usage::Duty { .. } => {
                    cycle.0 -= 1.0;
                    if cycle.0 <= 0.0 {
                        cycle.1 = !cycle.1;
                        let share = if cycle.1 { busy } else { 1.0 - busy };
                        cycle.0 = 40.0 * share * rng.random_range(0.8..1.2);
                    }
                    cycle.1
                }
                _ => (minute % 60) as f64 / 60.0 < busy - 1e-9,
            };
            if on {
                drawn += slot.momentary;
            }
        }
        // The mean of the hour, while the sun is up.
        let instant = JulianDate::from_local(
            sun.dates[hour.day],
            (hour.hour_of_day * 60 + minute % 60) as f64,
            f64::from(real.trip.utc_offset_min),
        );
        let place = &real.trip.place;
        let up = Sun::at(instant).seen_from(place.latitude, place.longitude).up > 0.0;
        let sun_power = sun.average[hour.day][hour.hour_of_day].mppt * f64::from(u8::from(up));
        let surplus = sun_power - drawn;
        let flow = if surplus.0 >= 0.0 {
            plan.bank.charge(&mut state, &hour.conditions, surplus)
        } else {
            plan.bank.discharge(&mut state, &hour.conditions, -surplus)
        };
        if minute % 15 == 0 {
            missing = rng.random_bool(spoil.gaps);
        }
        if missing || minute * 60 % spoil.step_s != 0 {
            continue;
        }
        let day = minute as f64 / 1440.0;
        let amps = flow.current.0 * spoil.gain + normal(&mut rng, spoil.amps_sd);
        let soc = state.soc_frac + spoil.drift_a_day * day;
        rows.push(Sample {
            at_s: start_s + minute as f64 * 60.0,
            // A monitor shows whole percent.
            soc_frac: Some((soc * 100.0).round().clamp(0.0, 100.0) / 100.0),
            volts: Some(Volts((flow.volts.0 * 100.0).round() / 100.0)),
            amps: Some(Amps((amps * 10.0).round() / 10.0)),
            ..Sample::default()
        });
    }
    rows
}

fn learned(samples: Vec<Sample>, setup: &Setup, climate: &MonthlyClimate) -> Learned {
    let mut job = LogJob::new(samples, setup.clone(), *climate);
    while job.advance().expect("valid climate") {}
    job.learned().clone()
}

fn of_power(learned: &Learned, watts: f64) -> &Appliance {
    learned
        .appliances
        .iter()
        .filter(|found| (found.power.0 / watts).ln().abs() < 0.15)
        .min_by(|a, b| (a.power.0 - watts).abs().total_cmp(&(b.power.0 - watts).abs()))
        .unwrap_or_else(|| panic!("{watts} W: {:?}", learned.appliances))
}

/// What the battery gives all night in [`van`]: the load that never stops, solar controllers and management.
fn steady(setup: &Setup) -> f64 {
    let sun = Arc::new(TripSun::build(setup, &summer()).expect("valid climate"));
    7.0 + TripPlan::build(setup, sun).hours[0].electronics.0
}

#[test]
fn standby_capacity_and_switching_loads_come_back() {
    for chemistry in [Chemistry::LiFePo4, Chemistry::Agm] {
        for (spoil, days, seed) in [(CLEAN, 7, 1), (USUAL, 7, 2), (USUAL, 7, 3), (USUAL, 13, 4)] {
            let mut real = van();
            real.bank.chemistry = chemistry;
            let told = learned(log_of(&real, &summer(), days, spoil, seed), &real, &summer());
            let floor = told.floor.expect("nights were logged");
            let truth = steady(&real);
            assert!(floor.seen_between_runs);
            assert!((floor.power.0 / truth - 1.0).abs() < 0.1, "floor {floor:?} of {truth}");
            let capacity = told.capacity.expect("a swing of a third");
            assert!((capacity.capacity.0 / 100.0 - 1.0).abs() < 0.05, "{chemistry:?} {capacity:?}");
            assert_eq!(capacity.way, CapacityWay::BetweenStates);
            // 45 W by thermostat, 32 W and 90 W at their hours.
            for watts in [45.0, 32.0, 90.0] {
                of_power(&told, watts);
            }
            assert_eq!(of_power(&told, 45.0).pattern, Pattern::Thermostat);
            assert_eq!(of_power(&told, 32.0).pattern, Pattern::Uses);
            assert!(told.appliances.len() <= 4, "{:?}", told.appliances);
            assert!(told.lacking.is_empty(), "{:?}", told.lacking);
        }
    }
}

#[test]
fn an_empty_battery_is_not_taken_for_no_standby() {
    let mut real = van();
    real.solar.clear();
    let told = learned(log_of(&real, &summer(), 5, USUAL, 9), &real, &summer());
    let floor = told.floor.expect("nights were logged").power.0;
    assert!((floor / steady(&real) - 1.0).abs() < 0.1, "{floor}");
}

#[test]
fn rows_an_hour_apart_say_the_most_that_standby_can_be() {
    let real = van();
    let told =
        learned(log_of(&real, &summer(), 7, Spoil { step_s: 3600, ..USUAL }, 5), &real, &summer());
    let floor = told.floor.expect("nights were logged");
    assert!(!floor.seen_between_runs && floor.power.0 > 0.9 * steady(&real), "{floor:?}");
    assert_eq!(told.unexplained(), None, "the most it can be is no finding");
    assert!(told.appliances.is_empty());
    assert!(matches!(told.lacking[..], [Lacking::TooCoarse(_)]), "{:?}", told.lacking);
}

#[test]
fn what_a_log_lacks_is_said() {
    let real = van();
    let whole = log_of(&real, &summer(), 2, USUAL, 6);
    let without = |change: fn(&mut Sample)| {
        let mut rows = whole.clone();
        rows.iter_mut().for_each(change);
        learned(rows, &real, &summer())
    };
    let no_soc = without(|row| row.soc_frac = None);
    assert!(no_soc.lacking.contains(&Lacking::NoSoc));
    assert_eq!(no_soc.capacity, Err(CapacityMissing::NoState));
    assert!(no_soc.held.is_none() && no_soc.fit.is_none() && no_soc.floor.is_some());
    let no_current = without(|row| row.amps = None);
    assert!(no_current.lacking.contains(&Lacking::NoPower));
    assert_eq!(no_current.capacity, Err(CapacityMissing::NoCurrent));
    assert!(no_current.held.is_some());
    let short = learned(whole[..120].to_vec(), &real, &summer());
    assert!(matches!(short.lacking[0], Lacking::TooShort(_)), "{:?}", short.lacking);
    let holes: Vec<Sample> =
        whole.iter().filter(|row| (row.at_s / 86_400.0).fract() < 0.3).copied().collect();
    let holed = learned(holes, &real, &summer());
    assert!(holed.lacking.iter().any(|l| matches!(l, Lacking::Gaps(_))), "{:?}", holed.lacking);
    // A battery that hardly moves tells no capacity.
    let mut large = van();
    large.bank.capacity_20h = AmpHours(900.0);
    let told = learned(log_of(&large, &summer(), 2, USUAL, 7), &large, &summer());
    assert!(
        matches!(told.capacity, Err(CapacityMissing::SmallSwing(s)) if s < 0.3),
        "{:?}",
        told.capacity
    );
    let nothing = learned(Vec::new(), &real, &summer());
    assert_eq!((nothing.rows, nothing.floor), (0, None));
}

#[test]
fn the_forecast_held_against_a_log_shows_use_off_by_a_fifth_and_learns_it() {
    let planned = van();
    let mut real = planned.clone();
    for load in &mut real.loads {
        load.draw = Draw::Power { watts: load.draw.watts() * 1.2 };
    }
    let rows = log_of(&real, &summer(), 6, USUAL, 11);
    let told = learned(rows.clone(), &planned, &summer());
    let held = told.held.expect("six days");
    assert!(held.mean_frac > 0.02 && held.rms_frac > held.mean_frac, "{held:?}");
    let fit = told.fit.expect("six days");
    assert!((fit.use_factor.value - 1.2).abs() < 0.1, "{:?}", fit.use_factor);
    let trip = told.trip.expect("six days");
    let mut corrected = planned.clone();
    corrected.correction = trip.correction_for(&fit.correction, &planned);
    assert!(corrected.correction.restart.is_some(), "the log lies within the trip");
    let after = learned(rows, &corrected, &summer()).held.expect("six days");
    assert!(after.rms_frac < 0.5 * held.rms_frac, "{after:?} {held:?}");
    // Last year's log says nothing of where this trip's charge stands.
    let mut next_year = planned;
    next_year.trip.year += 1;
    let correction = trip.correction_for(&fit.correction, &next_year);
    assert_eq!((correction.restart, correction.use_factor), (None, fit.correction.use_factor));
}

#[test]
fn findings_are_taken_over_into_the_setup() {
    let real = van();
    // The list knows no standby, a fridge with a guessed draw, and a battery as labelled.
    let mut planned = real.clone();
    planned.loads.remove(1);
    planned.loads[0].draw = Draw::Power { watts: Watts(55.0) };
    planned.loads[0].usage = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.32 } };
    planned.bank.capacity_20h = AmpHours(120.0);
    let told = learned(log_of(&real, &summer(), 7, USUAL, 12), &planned, &summer());
    let trip = told.trip.as_ref().expect("a week");

    let bank = bank_with(&planned.bank, &told.capacity.expect("a swing"));
    assert_eq!(bank.capacity_20h, AmpHours(120.0), "the label stays");
    assert!((bank.aged_capacity().0 / 100.0 - 1.0).abs() < 0.05, "{}", bank.aged_capacity().0);

    let left = told.unexplained().expect("7 W are not in the list");
    assert!((left.0 - 7.0).abs() < 1.0, "{left:?}");
    let mut with_standby = planned.clone();
    with_standby.loads.push(standby_load(9, "Measured standby".to_owned(), left));
    let again = learned(log_of(&real, &summer(), 7, USUAL, 12), &with_standby, &summer());
    assert_eq!(again.unexplained(), None, "taken over it is explained");

    let fridge = of_power(&told, 45.0);
    assert_eq!(likely_load(&planned, fridge), Some(1));
    let measured = measured_load(&planned.loads[0], fridge, &planned.inverter, trip, false);
    assert!((measured.draw.watts().0 - 45.0).abs() < 2.0, "{:?}", measured.draw);
    let Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } } = measured.usage else {
        panic!("{:?}", measured.usage)
    };
    assert!((frac_at_25c / 0.4 - 1.0).abs() < 0.15, "{frac_at_25c}");

    // The lamp is not seen by day: its draw is taken, its hours stay.
    let lamp = of_power(&told, 32.0);
    let listed = planned.loads.iter().find(|load| load.id == 3).expect("the lamp");
    assert_eq!(likely_load(&planned, lamp), Some(3));
    let measured = measured_load(listed, lamp, &planned.inverter, trip, false);
    assert_eq!((measured.usage, measured.window), (listed.usage, listed.window));
    let new = measured_load(&load(7, 0.0, Usage::default()), lamp, &planned.inverter, trip, true);
    let Usage::Daily { minutes } = new.usage else { panic!("{:?}", new.usage) };
    assert!((minutes / 180.0 - 1.0).abs() < 0.15, "{minutes}");
    assert_eq!((new.window.from_min, new.window.to_min), (19 * 60, 22 * 60));
}

/// The house of the dataset named in `tests/data/README.md`, its people away: a fridge on sub-meter 2, a water
/// heater on sub-meter 3, and what never stops.
#[test]
fn a_real_house_is_told_apart_as_its_sub_meters_do() {
    let text = include_str!("data/household/empty_house.csv");
    let table = survey(text);
    let (mut choices, _) = table.suggested();
    assert_eq!(choices.roles[..2], [Role::Time, Role::Watts]);
    choices.assign(1, Role::Used);
    choices.assign(2, Role::Unused);
    choices.assign(3, Role::Unused);
    let read = read(table, choices);
    assert_eq!((read.samples().len(), read.rejected().len()), (4320, 0));
    let told = learned(read.samples().to_vec(), &Setup::default(), &summer());
    // The sub-meters, in Wh a minute.
    let rows: Vec<Vec<f64>> = text
        .lines()
        .skip(1)
        .map(|line| line.split(',').skip(1).map(|cell| cell.parse().expect("number")).collect())
        .collect();
    // What is seen most often by far is the house with nothing running.
    let mut often = std::collections::BTreeMap::new();
    for row in &rows {
        *often.entry((row[0] * 1000.0 / 2.0).round() as i64 * 2).or_insert(0) += 1;
    }
    let standby = *often.iter().max_by_key(|(_, count)| **count).expect("rows").0 as f64;
    let floor = told.floor.expect("three nights").power.0;
    assert!((floor / standby - 1.0).abs() < 0.05, "{floor} of {standby}");
    let days = rows.len() as f64 / 1440.0;
    let energy = |found: &Appliance| found.power.0 * found.per_day.0;
    // The water heater, with what of its sub-meter never stops left out.
    let heater_meter = rows.iter().map(|row| row[2]).filter(|wh| *wh > 2.0).sum::<f64>() / days;
    let heater: f64 = told.appliances.iter().filter(|a| a.power.0 > 500.0).map(energy).sum();
    assert!((heater / heater_meter - 1.0).abs() < 0.2, "{heater} of {heater_meter}");
    // Compressors of 80 to 95 W: cold boxes come and go by themselves, one of them on sub-meter 2.
    let cold =
        told.appliances.iter().find(|a| (70.0..110.0).contains(&a.power.0)).expect("a fridge");
    assert_eq!(cold.pattern, Pattern::Thermostat);
    let fridge_meter = rows.iter().map(|row| row[1]).sum::<f64>() / days;
    assert!(energy(cold) > fridge_meter, "{} {fridge_meter}", energy(cold));
    // Together they make the day's energy.
    let whole = rows.iter().map(|row| row[0] * 1000.0).sum::<f64>() / 60.0 / days;
    let told_of = floor * 24.0 + told.appliances.iter().map(energy).sum::<f64>();
    assert!((told_of / whole - 1.0).abs() < 0.1, "{told_of} of {whole}");
}

fn survey(text: &str) -> LogTable {
    let mut survey = LogSurvey::new(Arc::from(text)).expect("a table");
    while survey.advance() {}
    survey.table()
}

fn read(table: LogTable, choices: Choices) -> LogReader {
    let mut reader = LogReader::new(Arc::new(table), choices, 120);
    while reader.advance() {}
    reader
}

/// A log as a text: heading, and each row by a writer.
fn text_of(samples: &[Sample], head: &str, row: impl Fn(&Sample) -> String) -> String {
    let mut text = format!("{head}\n");
    for sample in samples {
        text.push_str(&row(sample));
        text.push('\n');
    }
    text
}

fn civil(at_s: f64) -> (i32, u8, u8, u32, u32) {
    let (date, second) = nightbank::advice::log::series::date_of(at_s).expect("a day");
    let second = second as u32;
    (date.year(), u8::from(date.month()), date.day(), second / 3600, second % 3600 / 60)
}

#[test]
fn logs_of_many_hands_give_the_same_samples() {
    let real = van();
    let rows = log_of(&real, &summer(), 2, CLEAN, 3);
    let figures = |s: &Sample| {
        (
            s.soc_frac.unwrap_or(9.0) * 100.0,
            s.volts.map_or(0.0, |v| v.0),
            s.amps.map_or(1e9, |a| a.0),
        )
    };
    let iso = |s: &Sample, minutes: f64| {
        let (y, m, d, h, min) = civil(s.at_s + minutes * 60.0);
        format!("{y}-{m:02}-{d:02}T{h:02}:{min:02}:00")
    };
    let texts = [
        // English, with the camp's offset of two hours.
        text_of(&rows, "Time,State of charge (%),Voltage (V),Current (A)", |s| {
            let (soc, v, a) = figures(s);
            format!("{}+02:00,{soc:.0},{v:.2},{a:.1}", iso(s, 0.0))
        }),
        // Universal time.
        text_of(&rows, "timestamp,soc,volts,amps", |s| {
            let (soc, v, a) = figures(s);
            format!("{}Z,{soc:.0},{v:.2},{a:.1}", iso(s, -120.0))
        }),
        // German: semicolons, decimal commas, date and time apart, use counted as plus.
        text_of(&rows, "Datum;Uhrzeit;Ladezustand %;Spannung V;Strom A", |s| {
            let (soc, v, a) = figures(s);
            let (y, m, d, h, min) = civil(s.at_s);
            format!("{d:02}.{m:02}.{y};{h:02}:{min:02};{soc:.0};{v:.2};{:.1}", -a)
                .replace('.', ",")
                .replacen(',', ".", 2)
        }),
        // French, with units in the cells and tabs.
        text_of(&rows, "Heure\tÉtat de charge\tTension\tCourant", |s| {
            let (soc, v, a) = figures(s);
            let (y, m, d, h, min) = civil(s.at_s);
            format!("{d:02}/{m:02}/{y} {h:02}:{min:02}\t{soc:.0} %\t{v:.2} V\t{:.0} mA", a * 1000.0)
                .replace('.', ",")
        }),
        // Dutch, from a device that writes its name first.
        format!(
            "Logboek;;;\nvan 12 V;;;\n{}",
            text_of(&rows, "Tijd;Laadtoestand (%);Spanning (mV);Stroom (A)", |s| {
                let (soc, v, a) = figures(s);
                format!("{:.0};{soc:.0};{:.0};{a:.1}", s.at_s - 7200.0, v * 1000.0)
                    .replace('.', ",")
            })
        ),
    ];
    for (text, sign) in texts.iter().zip([true, true, false, true, true]) {
        let table = survey(text);
        let (choices, _) = table.suggested();
        let head = text.lines().next().unwrap_or_default();
        assert_eq!(table.asks(&choices), [], "{head}: {choices:?}");
        let read = read(table, choices);
        assert_eq!(read.rejected(), [], "{head}");
        let sign = if sign { PlusIs::Charging } else { PlusIs::Using };
        assert_eq!(read.plus_is(), Some(sign), "{head}");
        assert_eq!(read.samples().len(), rows.len(), "{head}");
        for (found, row) in read.samples().iter().zip(&rows) {
            let close = |a: f64, b: f64| (a - b).abs() < 1e-6;
            assert!(close(found.at_s, row.at_s), "{head}: {found:?} {row:?}");
            let (a, b) = (figures(found), figures(row));
            assert!(close(a.0, b.0) && close(a.1, b.1) && close(a.2, b.2), "{head}: {a:?} {b:?}");
        }
    }
}

#[test]
fn what_cannot_be_told_is_asked() {
    // Neither number of any date is above 12, and nothing shows what plus is.
    let text = "when,A\n03/04/2026 10:00,1.5\n03/04/2026 11:00,2.5\n03/05/2026 10:00,1.5\n";
    let table = survey(text);
    let (mut choices, _) = table.suggested();
    assert_eq!(table.asks(&choices), [Ask::DateOrder]);
    choices.date_order = Some(DateOrder::Mdy);
    assert_eq!(table.asks(&choices), []);
    let read_as_mdy = read(table.clone(), choices.clone());
    assert_eq!(read_as_mdy.plus_is(), None);
    assert_eq!(civil(read_as_mdy.samples()[2].at_s).1, 3);
    choices.date_order = Some(DateOrder::Dmy);
    choices.plus_is = Some(PlusIs::Using);
    choices.clock = Clock::Utc;
    let read = read(table, choices);
    let (_, month, day, hour, _) = civil(read.samples()[2].at_s);
    assert_eq!((month, day, hour), (5, 3, 12));
    assert_eq!(read.samples()[0].amps, Some(Amps(-1.5)));
    // A decimal mark before three digits.
    let text = "Zeit;W\n2026-09-01 10:00;1.500\n2026-09-01 11:00;1.700\n";
    let table = survey(text);
    assert_eq!(table.asks(&table.suggested().0), [Ask::Mark]);
    // No time at all.
    let table = survey("W,V\n10,13\n20,13.1\n");
    assert!(table.asks(&table.suggested().0).contains(&Ask::Time));
}

#[test]
fn rows_without_sense_are_listed_with_their_line_and_reason() {
    let text = "Time,SoC %,V,A\n\
        2026-09-01 10:00,80,13.1,-2\n\
        yesterday,80,13.1,-2\n\
        2026-09-01 10:00,80,13.1,-2\n\
        2026-09-01 10:02,,,\n\
        2026-09-01 10:03,180,13.1,-2\n\
        2026-09-01 10:04,79,low,-2\n\
        ,79,13,-2\n\
        Time,SoC %,V,A\n\
        2026-09-31 10:05,79,13,-2\n";
    let table = survey(text);
    let (choices, _) = table.suggested();
    let read = read(table, choices);
    let found: Vec<(usize, Fault)> = read.rejected().iter().map(|r| (r.line, r.fault)).collect();
    assert_eq!(
        found,
        [
            (3, Fault::TimeUnread),
            (4, Fault::SameTime),
            (5, Fault::NoFigure),
            (6, Fault::OutOfRange(Role::Soc)),
            (7, Fault::Unread(Role::Volts)),
            (8, Fault::NoTime),
            (9, Fault::TimeUnread),
            (10, Fault::TimeUnread),
        ]
    );
    assert_eq!(read.samples().len(), 3);
}

/// Rows that became samples and rows that were left out for a reason.
fn accounted(read: &LogReader) -> usize {
    let whole_row = |fault: &Fault| !matches!(fault, Fault::Unread(_) | Fault::OutOfRange(_));
    let left: usize =
        read.rejected_counts().iter().filter(|(f, _)| whole_row(f)).map(|(_, n)| n).sum();
    read.samples().len() + left
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(100))]

    /// Bytes of a good log changed, cut and doubled: every row is a sample or told of, and nothing panics, down
    /// to what is learned.
    #[test]
    fn mangled_logs_lose_nothing_silently(
        seed in 0_u64..1000,
        hits in prop::collection::vec((0.0_f64..1.0, "[0-9,;:./ \\-\n\"a-zé%]{0,6}"), 0..12),
        cut in 0.0_f64..1.0,
    ) {
        let real = van();
        let rows = log_of(&real, &summer(), 1, Spoil { step_s: 600, ..USUAL }, seed);
        let mut text = text_of(&rows, "Time,SoC %,Voltage V,Current A", |s| {
            let (y, m, d, h, min) = civil(s.at_s);
            format!("{d}/{m}/{y} {h:02}:{min:02},{:.0},{:.2},{:.1}",
                s.soc_frac.unwrap() * 100.0, s.volts.unwrap().0, s.amps.unwrap().0)
        });
        for (place, with) in &hits {
            let mut at = (place * text.len() as f64) as usize;
            while !text.is_char_boundary(at) { at -= 1; }
            text.insert_str(at, with);
        }
        let mut end = ((0.2 + 0.8 * cut) * text.len() as f64) as usize;
        while !text.is_char_boundary(end) { end -= 1; }
        text.truncate(end);
        if let Ok(mut looked) = LogSurvey::new(Arc::from(text.as_str())) {
            while looked.advance() {}
            let table = looked.table();
            let (choices, _) = table.suggested();
            let count = table.rows;
            let read = read(table, choices);
            prop_assert_eq!(accounted(&read), count);
            let told = learned(read.samples().to_vec(), &real, &summer());
            prop_assert!(told.rows <= read.samples().len());
        }
    }
}

#[test]
fn a_million_hostile_bytes_are_read_without_harm() {
    let mut rng = Pcg32::seed_from_u64(19);
    let pieces: [&[u8]; 14] = [
        b"2026-09-01T10:00:00Z",
        b"1788300000",
        b"31/12/2026 23:59",
        b",",
        b";",
        b"\t",
        b"\n",
        b"\"",
        b"-1e308",
        b"99999999999999999999",
        b"\xff\xfe\x00",
        b"13,2",
        b"=cmd()",
        b"NaN",
    ];
    let mut bytes = Vec::new();
    while bytes.len() < 1_000_000 {
        if rng.random_bool(0.8) {
            bytes.extend_from_slice(pieces[rng.random_range(0..pieces.len())]);
        } else {
            bytes.push(rng.random());
        }
    }
    let text = String::from_utf8_lossy(&bytes);
    let mut told = 0;
    for part in [&*text, &text.replace('\u{fffd}', ""), &text.replace(['"', '\u{fffd}'], ";")] {
        let plain: String = part.chars().filter(|c| !c.is_control() || c.is_whitespace()).collect();
        let Ok(mut looked) = LogSurvey::new(Arc::from(plain.as_str())) else { continue };
        while looked.advance() {}
        let table = looked.table();
        let (mut choices, _) = table.suggested();
        for (column, role) in [(0, Role::Time), (1, Role::Soc), (2, Role::Volts), (3, Role::Amps)] {
            choices.assign(column, role);
        }
        let count = table.rows;
        let read = read(table, choices);
        assert_eq!(accounted(&read), count);
        learned(read.samples().to_vec(), &van(), &summer());
        told += 1;
    }
    assert!(told > 0, "some of it looks like a table");
}
