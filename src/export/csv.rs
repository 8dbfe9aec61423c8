//! Tables for spreadsheets: the loads, and the days of the trip.
//!
//! RFC 4180: quoted where needed, lines end in CR LF, one header line. UTF-8 with a byte order
//! mark, without which common spreadsheets take umlauts for something else. Text that a spreadsheet
//! would run as a formula gets a leading apostrophe (OWASP, "CSV Injection": cells that begin with
//! `=`, `+`, `-`, `@`, tab or carriage return); numbers are ours and stay numbers.

use crate::units::{Amps, WattHours, Watts};
use std::fmt;

/// Marks of the reader's spreadsheet.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Dialect {
    /// Comma between fields, decimal point.
    #[default]
    Point,
    /// Semicolon between fields, decimal comma, as in much of Europe.
    Comma,
}

/// One load.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadRow {
    /// Name as shown.
    pub name: String,
    /// Group as shown.
    pub group: String,
    /// How many.
    pub quantity: u16,
    /// Draw of one while it runs.
    pub draw: Watts,
    /// The same at the nominal voltage of the system.
    pub current: Amps,
    /// From the battery or through the inverter, as shown.
    pub feed: String,
    /// How it is used, as shown.
    pub usage: String,
    /// Energy a day of all of them, at the battery.
    pub per_day: WattHours,
    /// Of which between uses.
    pub standby_per_day: WattHours,
    /// Share of the whole day's need, 0..1; written in percent.
    pub of_need_frac: f64,
    /// Counts in the sums.
    pub enabled: bool,
    /// The row for this page to read back.
    pub code: String,
}

/// One day of the trip.
#[derive(Clone, Debug, PartialEq)]
pub struct DayRow {
    /// Date, year-month-day (ISO 8601).
    pub date: String,
    /// Weather as shown.
    pub weather: String,
    /// Mean air temperature, in the unit that its header names.
    pub air: f64,
    /// Used at the battery.
    pub used: WattHours,
    /// Into the battery circuit from the sun.
    pub sun: WattHours,
    /// From the engine.
    pub driving: WattHours,
    /// From the mains.
    pub hook_up: WattHours,
    /// From other sources.
    pub other: WattHours,
    /// Lowest state of charge of the day, 0..1; written in percent.
    pub soc_low_frac: f64,
    /// State of charge at its end, 0..1; written in percent.
    pub soc_end_frac: f64,
}

/// Headers of the table of loads, in the order of [`LoadRow`], with units, in the reader's language.
pub type LoadHeaders = [String; 12];
/// Headers of the table of days, in the order of [`DayRow`].
pub type DayHeaders = [String; 10];

/// The table could not be written; only want of memory does that.
#[derive(Debug)]
pub struct CsvError(String);

impl fmt::Display for CsvError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "the table could not be written: {}", self.0)
    }
}

impl std::error::Error for CsvError {}

/// The table of loads.
///
/// # Errors
///
/// [`CsvError`].
pub fn loads_csv(
    headers: &LoadHeaders,
    rows: &[LoadRow],
    dialect: Dialect,
) -> Result<String, CsvError> {
    let number = |value, decimals| number(value, decimals, dialect);
    let cells = |row: &LoadRow| {
        vec![
            guarded(&row.name),
            guarded(&row.group),
            row.quantity.to_string(),
            number(row.draw.0, 2),
            number(row.current.0, 2),
            guarded(&row.feed),
            guarded(&row.usage),
            number(row.per_day.0, 1),
            number(row.standby_per_day.0, 1),
            number(row.of_need_frac * 100.0, 1),
            u8::from(row.enabled).to_string(),
            row.code.clone(),
        ]
    };
    table(headers, rows.iter().map(cells), dialect)
}

/// The table of days.
///
/// # Errors
///
/// [`CsvError`].
pub fn days_csv(
    headers: &DayHeaders,
    rows: &[DayRow],
    dialect: Dialect,
) -> Result<String, CsvError> {
    let number = |value, decimals| number(value, decimals, dialect);
    let cells = |row: &DayRow| {
        vec![
            guarded(&row.date),
            guarded(&row.weather),
            number(row.air, 1),
            number(row.used.0, 0),
            number(row.sun.0, 0),
            number(row.driving.0, 0),
            number(row.hook_up.0, 0),
            number(row.other.0, 0),
            number(row.soc_low_frac * 100.0, 1),
            number(row.soc_end_frac * 100.0, 1),
        ]
    };
    table(headers, rows.iter().map(cells), dialect)
}

fn table(
    headers: &[String],
    rows: impl Iterator<Item = Vec<String>>,
    dialect: Dialect,
) -> Result<String, CsvError> {
    let delimiter = match dialect {
        Dialect::Point => b',',
        Dialect::Comma => b';',
    };
    let mut writer = ::csv::WriterBuilder::new()
        .delimiter(delimiter)
        .terminator(::csv::Terminator::CRLF)
        .from_writer(Vec::new());
    let told = |error: ::csv::Error| CsvError(error.to_string());
    let headers: Vec<String> = headers.iter().map(|header| guarded(header)).collect();
    writer.write_record(&headers).map_err(told)?;
    for row in rows {
        writer.write_record(&row).map_err(told)?;
    }
    let bytes = writer.into_inner().map_err(|error| CsvError(error.to_string()))?;
    let text = String::from_utf8(bytes).map_err(|error| CsvError(error.to_string()))?;
    Ok(format!("\u{feff}{text}"))
}

/// Text that no spreadsheet runs: a leading apostrophe where it would start a formula, and line
/// ends and tabs as spaces.
fn guarded(text: &str) -> String {
    let plain: String = text.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    // The full-width marks are taken for the plain ones by some spreadsheets.
    let starts_formula = |c| matches!(c, '=' | '+' | '-' | '@' | '＝' | '＋' | '－' | '＠');
    let start = plain.trim_start_matches(|c: char| c.is_whitespace() || c == '"');
    if start.starts_with(starts_formula) { format!("'{plain}") } else { plain }
}

/// A number for a spreadsheet; empty where there is none.
fn number(value: f64, decimals: usize, dialect: Dialect) -> String {
    if !value.is_finite() {
        return String::new();
    }
    let mut text = format!("{value:.decimals$}");
    if text.starts_with('-') && !text.contains(|c: char| matches!(c, '1'..='9')) {
        text.remove(0);
    }
    match dialect {
        Dialect::Point => text,
        Dialect::Comma => text.replace('.', ","),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn load(name: &str) -> LoadRow {
        LoadRow {
            name: name.to_owned(),
            group: "Cold".to_owned(),
            quantity: 2,
            draw: Watts(45.0),
            current: Amps(3.75),
            feed: "Battery".to_owned(),
            usage: "30 % of the time".to_owned(),
            per_day: WattHours(648.04),
            standby_per_day: WattHours(0.0),
            of_need_frac: 0.5,
            enabled: true,
            code: "1code".to_owned(),
        }
    }

    fn headers<const N: usize>() -> [String; N] {
        std::array::from_fn(|index| format!("h{index}"))
    }

    /// Cells as a reader of RFC 4180 sees them.
    fn cells(text: &str, delimiter: u8) -> Vec<Vec<String>> {
        let text = text.strip_prefix('\u{feff}').expect("a byte order mark");
        ::csv::ReaderBuilder::new()
            .delimiter(delimiter)
            .has_headers(false)
            .from_reader(text.as_bytes())
            .records()
            .map(|record| record.expect("a record").iter().map(str::to_owned).collect())
            .collect()
    }

    #[test]
    fn a_row_is_written_as_rfc_4180_has_it() {
        let text = loads_csv(&headers(), &[load("Box, \"blue\"")], Dialect::Point).expect("writes");
        let lines: Vec<&str> = text.split("\r\n").collect();
        assert_eq!(lines[0], "\u{feff}h0,h1,h2,h3,h4,h5,h6,h7,h8,h9,h10,h11");
        let row = "\"Box, \"\"blue\"\"\",Cold,2,45.00,3.75,Battery,30 % of the time,648.0,0.0,50.0,1,1code";
        assert_eq!(lines[1], row);
        assert_eq!(lines[2..], [""]);
    }

    #[test]
    fn a_comma_for_those_who_write_one() {
        let text = loads_csv(&headers(), &[load("A;B")], Dialect::Comma).expect("writes");
        let cells = cells(&text, b';');
        assert_eq!(cells[1][0], "A;B");
        assert_eq!(cells[1][4], "3,75");
    }

    #[test]
    fn no_text_runs_as_a_formula() {
        for name in [
            "=1+1",
            "+1",
            "-1",
            "@SUM(A1)",
            "\t=1",
            "\r=1",
            " =1",
            "\"=1",
            "＝1",
            "=cmd|'/c calc'!A1",
        ] {
            let text = loads_csv(&headers(), &[load(name)], Dialect::Point).expect("writes");
            let cell = &cells(&text, b',')[1][0];
            assert!(cell.starts_with('\''), "{name:?} became {cell:?}");
        }
        let text = loads_csv(&headers(), &[load("Fridge - big")], Dialect::Point).expect("writes");
        assert_eq!(cells(&text, b',')[1][0], "Fridge - big");
    }

    #[test]
    fn days_have_their_numbers() {
        let day = DayRow {
            date: "2026-06-15".to_owned(),
            weather: "Dull".to_owned(),
            air: -0.04,
            used: WattHours(812.4),
            sun: WattHours(f64::NAN),
            driving: WattHours(0.0),
            hook_up: WattHours(0.0),
            other: WattHours(100.0),
            soc_low_frac: 0.4567,
            soc_end_frac: 1.0,
        };
        let text = days_csv(&headers(), &[day], Dialect::Point).expect("writes");
        let row = ["2026-06-15", "Dull", "0.0", "812", "", "0", "0", "100", "45.7", "100.0"];
        assert_eq!(cells(&text, b',')[1], row);
    }
}
