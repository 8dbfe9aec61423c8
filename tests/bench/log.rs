//! How long a log of a month at one row a minute takes: looked over, read, learned from, and the longest
//! slice of each, beside what the rows alone take to be split into cells.
//!
//! Run with `cargo bench --bench log`. Prints figures; nothing here can fail on a slow machine.

#[path = "support.rs"]
mod support;

use nightbank::advice::log::LogJob;
use nightbank::import::log::{LogReader, LogSurvey};
use nightbank::import::table::read_table;
use std::fmt::Write;
use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;
use support::{best_of, climate, forty_loads};

/// Rows: thirty days, one a minute.
const ROWS: usize = 30 * 24 * 60;

/// A log of a fridge that comes and goes, by day with sun.
fn text() -> String {
    let mut text = String::from("Time,State of charge (%),Voltage (V),Current (A)\n");
    for row in 0..ROWS {
        let (minute, day) = (row % 1440, row / 1440);
        let fridge = if row % 40 < 14 { 3.5 } else { 0.0 };
        let sun = (((minute as f64) - 780.0) / 320.0).powi(2);
        let amps = 9.0 * (1.0 - sun).max(0.0) - 0.6 - fridge;
        let soc = 70.0 + 20.0 * (minute as f64 / 1440.0 * std::f64::consts::TAU).cos();
        let (hour, minute, dom) = (minute / 60, minute % 60, day + 1);
        let volts = 13.1 + 0.02 * amps;
        // Writing to a text in memory does not fail.
        let _ = writeln!(
            text,
            "2026-06-{dom:02}T{hour:02}:{minute:02}:00Z,{soc:.0},{volts:.2},{amps:.1}"
        );
    }
    text
}

/// Whole time and longest slice of a job, quickest of some goes [ms].
fn slices(mut start: impl FnMut() -> Box<dyn FnMut() -> bool>) -> (f64, f64) {
    let mut best = (f64::INFINITY, f64::INFINITY);
    for _ in 0..5 {
        let mut job = start();
        let (mut whole, mut longest) = (0.0, 0.0_f64);
        loop {
            let begin = Instant::now();
            let more = job();
            let slice = begin.elapsed().as_secs_f64() * 1000.0;
            whole += slice;
            longest = longest.max(slice);
            if !more {
                break;
            }
        }
        best = (best.0.min(whole), best.1.min(longest));
    }
    best
}

fn main() {
    let text: Arc<str> = Arc::from(text());
    let split_ms = 1000.0
        * best_of(5, || {
            black_box(read_table(&text).is_ok());
        });
    let Ok(mut survey) = LogSurvey::new(text.clone()) else { return };
    while survey.advance() {}
    let table = Arc::new(survey.table());
    let (choices, _) = table.suggested();
    let reader = || LogReader::new(table.clone(), choices.clone(), 120);
    let mut read = reader();
    while read.advance() {}
    let samples = read.samples().to_vec();
    let looked = slices(|| {
        let mut survey = LogSurvey::new(text.clone()).ok();
        Box::new(move || survey.as_mut().is_some_and(LogSurvey::advance))
    });
    let rows = slices(|| {
        let mut reader = reader();
        Box::new(move || reader.advance())
    });
    let learned = slices(|| {
        let mut job = LogJob::new(samples.clone(), forty_loads(), climate());
        Box::new(move || job.advance().unwrap_or(false))
    });
    println!("{} rows, {} KB", samples.len(), text.len() / 1000);
    println!("split into cells: {split_ms:.1} ms");
    for (name, (whole, longest)) in
        [("looked over", looked), ("read", rows), ("learned from", learned)]
    {
        println!(
            "{name}: {whole:.1} ms ({:.1} times the splitting), longest slice {longest:.1} ms",
            whole / split_ms
        );
    }
}
