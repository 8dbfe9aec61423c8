//! Second pass over a log: rows as samples, with the reason for everything left out.

use super::columns::{Choices, Clock, PlusIs, Role, by_heading};
use super::piece;
use super::stamp::{DateOrder, Stamp};
use super::survey::{LogTable, is_nothing};
use crate::import::number::{DecimalMark, MarkFound, read_number, split_unit};
use crate::import::table::{Row, rows_of_piece};
use crate::model::Sample;
use crate::units::{Amps, Volts, Watts};
use std::collections::HashSet;
use std::sync::Arc;

/// Rows left out that are kept with their text.
const MOST_KEPT: usize = 40;
/// Julian day of 1 January 1970.
const EPOCH: i32 = 2_440_588;
/// Time over which the state of charge shows what a current does [s].
const TREND_S: f64 = 3_600.0;

/// Why a row or cell was left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fault {
    /// No time in it.
    NoTime,
    /// The time cannot be read.
    TimeUnread,
    /// A row of the same time came before.
    SameTime,
    /// No figure in it.
    NoFigure,
    /// A figure cannot be read; the others of the row count.
    Unread(Role),
    /// A figure that cannot be; the others of the row count.
    OutOfRange(Role),
}

/// Something left out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rejected {
    /// Line of the text, from 1.
    pub line: usize,
    /// Why.
    pub fault: Fault,
    /// The cell, shortened.
    pub cell: String,
}

/// Makes samples of the rows.
pub struct LogReader {
    table: Arc<LogTable>,
    /// Role, column, size of its unit.
    figures: Vec<(Role, usize, f64)>,
    time: Option<usize>,
    date: Option<usize>,
    order: DateOrder,
    mark: DecimalMark,
    choices: Choices,
    offset_s: f64,
    at: usize,
    line: usize,
    seen: HashSet<u64>,
    samples: Vec<Sample>,
    kept: Vec<Rejected>,
    counts: Vec<(Fault, usize)>,
    plus_is: Option<PlusIs>,
}

impl LogReader {
    /// On a log, read as chosen; `camp_offset_min`: the camp's clock ahead of universal time [min].
    #[must_use]
    pub fn new(table: Arc<LogTable>, choices: Choices, camp_offset_min: i16) -> Self {
        let figures = choices
            .roles
            .iter()
            .enumerate()
            .filter(|(_, role)| !matches!(role, Role::Unused | Role::Time | Role::Date))
            .map(|(column, role)| {
                let mut scale = by_heading(table.heading(column)).1;
                let largest = table.columns.get(column).map_or(100.0, |survey| survey.largest);
                if *role == Role::Soc {
                    // Shares of 1 are as usual as percent.
                    let of_one = largest <= 1.0 && !table.heading(column).contains('%');
                    scale = if of_one { 1.0 } else { 0.01 };
                }
                (*role, column, scale)
            })
            .collect();
        let order = choices.date_order.or_else(|| table.date_order(&choices));
        let mark = choices.mark.unwrap_or(match table.mark() {
            MarkFound::Known(mark) => mark,
            MarkFound::Unknown => DecimalMark::Point,
        });
        Self {
            figures,
            time: choices.column(Role::Time),
            date: choices.column(Role::Date),
            order: order.unwrap_or(DateOrder::Dmy),
            mark,
            offset_s: f64::from(camp_offset_min) * 60.0,
            at: 0,
            line: 0,
            seen: HashSet::new(),
            samples: Vec::with_capacity(table.rows),
            kept: Vec::new(),
            counts: Vec::new(),
            plus_is: choices.plus_is,
            choices,
            table,
        }
    }

    /// Reads the next piece; false after the last one, when signs are settled too.
    pub fn advance(&mut self) -> bool {
        let table = Arc::clone(&self.table);
        let part = piece(&table.text, self.at);
        // The same pieces as of the survey, so that the rows are the same.
        for row in rows_of_piece(part, table.delimiter) {
            if row.line + self.line >= table.first_line {
                self.read(&row);
            }
        }
        self.at += part.len();
        self.line += part.matches('\n').count();
        if self.at < table.text.len() {
            return true;
        }
        self.settle_sign();
        false
    }

    /// Rows read so far; [`Self::plus_is`] is settled at the end.
    #[must_use]
    pub fn samples(&self) -> &[Sample] {
        &self.samples
    }

    /// What was left out: the first of them, with line and cell.
    #[must_use]
    pub fn rejected(&self) -> &[Rejected] {
        &self.kept
    }

    /// How much was left out for each reason.
    #[must_use]
    pub fn rejected_counts(&self) -> &[(Fault, usize)] {
        &self.counts
    }

    /// What a positive current or power means, as chosen or as the log shows; `None` where neither says:
    /// then it has to be asked, and minus is taken as use meanwhile.
    #[must_use]
    pub fn plus_is(&self) -> Option<PlusIs> {
        self.plus_is
    }

    /// A current or power of the battery is among the columns.
    #[must_use]
    pub fn has_sign(&self) -> bool {
        self.figures.iter().any(|(role, _, _)| matches!(role, Role::Amps | Role::Watts))
    }

    fn reject(&mut self, line: usize, fault: Fault, cell: &str) {
        match self.counts.iter_mut().find(|(known, _)| *known == fault) {
            Some((_, count)) => *count += 1,
            None => self.counts.push((fault, 1)),
        }
        if self.kept.len() < MOST_KEPT {
            let cell = cell.chars().take(40).collect();
            self.kept.push(Rejected { line, fault, cell });
        }
    }

    /// Seconds of the camp's clock of a row.
    fn time_of(&self, row: &Row) -> Result<f64, (Fault, usize)> {
        let column = self.time.ok_or((Fault::NoTime, 0))?;
        let cell = row.cell(column);
        let dated = self.date.map(|date| (date, row.cell(date)));
        if is_nothing(cell) || dated.is_some_and(|(_, date)| is_nothing(date)) {
            return Err((Fault::NoTime, column));
        }
        let unread = (Fault::TimeUnread, column);
        let (mut date, clock_s, offset_s) = match Stamp::read(cell).ok_or(unread)? {
            Stamp::Unix(seconds) => return Ok(seconds + self.offset_s),
            Stamp::Written { date, clock_s, offset_s } => (date, clock_s.unwrap_or(0.0), offset_s),
        };
        if let Some((column, cell)) = dated {
            match Stamp::read(cell) {
                Some(Stamp::Written { date: Some(own), .. }) => date = Some(own),
                _ => return Err((Fault::TimeUnread, column)),
            }
        }
        let day = date.and_then(|date| date.day(self.order)).ok_or(unread)?;
        let written = f64::from(day.to_julian_day() - EPOCH) * 86_400.0 + clock_s;
        let ahead_s = match (offset_s, self.choices.clock) {
            (Some(offset_s), _) => offset_s,
            (None, Clock::Utc) => 0.0,
            (None, Clock::Camp) => self.offset_s,
        };
        Ok(written - ahead_s + self.offset_s)
    }

    fn read(&mut self, row: &Row) {
        let line = row.line + self.line;
        let at_s = match self.time_of(row) {
            Ok(at_s) => at_s,
            Err((fault, column)) => return self.reject(line, fault, row.cell(column)),
        };
        let mut sample = Sample { at_s, ..Sample::default() };
        let mut any = false;
        for (role, column, scale) in self.figures.clone() {
            let cell = row.cell(column);
            if is_nothing(cell) {
                continue;
            }
            let (number, unit) = split_unit(cell);
            let Some(value) = read_number(number, self.mark) else {
                self.reject(line, Fault::Unread(role), cell);
                continue;
            };
            // A unit in the cell says more than the heading.
            let scale = match unit {
                "mV" | "mA" | "mW" => 0.001,
                "kW" => 1000.0,
                "V" | "A" | "W" => 1.0,
                "%" => 0.01,
                _ => scale,
            };
            let value = value * scale;
            let range = match role {
                Role::Soc => -0.01..=1.1,
                Role::Volts => 0.0..=70.0,
                Role::Amps => -2_000.0..=2_000.0,
                _ => -50_000.0..=50_000.0,
            };
            if !range.contains(&value) {
                self.reject(line, Fault::OutOfRange(role), cell);
                continue;
            }
            any = true;
            match role {
                Role::Soc => sample.soc_frac = Some(value.clamp(0.0, 1.0)),
                Role::Volts => sample.volts = Some(Volts(value)),
                Role::Amps => sample.amps = Some(Amps(value)),
                Role::Watts => sample.watts = Some(Watts(value)),
                // Some write what is used as less than nothing.
                Role::Used => sample.used = Some(Watts(value.abs())),
                Role::Charging => sample.charging = Some(Watts(value.abs())),
                Role::Unused | Role::Time | Role::Date => {}
            }
        }
        if !any {
            return self.reject(line, Fault::NoFigure, "");
        }
        // To the millisecond, as finely as any log tells the time.
        if self.seen.insert((at_s * 1000.0).round().to_bits()) {
            self.samples.push(sample);
        } else {
            let cell = self.time.map_or("", |column| row.cell(column));
            self.reject(line, Fault::SameTime, cell);
        }
    }

    /// Turns the samples so that plus is charging.
    fn settle_sign(&mut self) {
        if self.plus_is.is_none() && self.has_sign() {
            self.plus_is = shown_sign(&self.samples);
        }
        if self.plus_is == Some(PlusIs::Using) {
            for sample in &mut self.samples {
                sample.amps = sample.amps.map(|amps| -amps);
                sample.watts = sample.watts.map(|watts| -watts);
            }
        }
    }
}

/// What plus means, from the log itself: the state of charge follows the current, and the voltage rises with a
/// current that charges. `None` where neither shows it.
fn shown_sign(samples: &[Sample]) -> Option<PlusIs> {
    let flow = |sample: &Sample| sample.amps.map(|a| a.0).or(sample.watts.map(|w| w.0));
    let of = |together: f64, alone: f64, clear: f64| {
        let share = if alone > 0.0 { together / alone } else { 0.0 };
        if share > clear {
            Some(PlusIs::Charging)
        } else if share < -clear {
            Some(PlusIs::Using)
        } else {
            None
        }
    };
    let mut sorted: Vec<&Sample> = samples.iter().filter(|s| flow(s).is_some()).collect();
    sorted.sort_by(|a, b| a.at_s.total_cmp(&b.at_s));
    // Charge counted over an hour or so against what the state of charge did.
    let (mut together, mut alone) = (0.0, 0.0);
    let mut begin: Option<(f64, f64)> = None;
    let mut counted = 0.0;
    let mut last: Option<(f64, f64)> = None;
    for sample in &sorted {
        let flow = flow(sample).unwrap_or_default();
        if let Some((at_s, before)) = last {
            let apart = sample.at_s - at_s;
            if apart > 4.0 * TREND_S {
                begin = None;
            } else {
                counted += before * apart;
            }
        }
        last = Some((sample.at_s, flow));
        let Some(soc) = sample.soc_frac else { continue };
        match begin {
            Some((at_s, from)) if sample.at_s - at_s >= TREND_S => {
                together += counted * (soc - from);
                alone += (counted * (soc - from)).abs();
                (begin, counted) = (Some((sample.at_s, soc)), 0.0);
            }
            None => (begin, counted) = (Some((sample.at_s, soc)), 0.0),
            Some(_) => {}
        }
    }
    let by_soc = of(together, alone, 0.5);
    if by_soc.is_some() {
        return by_soc;
    }
    let (mut together, mut alone) = (0.0, 0.0);
    for pair in sorted.windows(2) {
        if let (Some(before), Some(after)) = (pair[0].volts, pair[1].volts) {
            let change = flow(pair[1]).unwrap_or_default() - flow(pair[0]).unwrap_or_default();
            together += change * (after - before).0;
            alone += (change * (after - before).0).abs();
        }
    }
    of(together, alone, 0.5)
}
