//! First pass over a log: where its heading ends, and what each column holds.

use super::columns::{Choices, Role, Told, by_heading, of_house};
use super::piece;
use super::stamp::{DateOrder, Stamp};
use crate::import::number::{DecimalMark, MarkFound, find_mark, is_plain, read_number, split_unit};
use crate::import::table::{
    MAX_COLUMNS, MAX_TEXT_BYTES, Row, TableError, read_table, rows_of_piece,
};
use std::sync::Arc;

/// Rows shown before anything is read.
const PREVIEW_ROWS: usize = 3;
/// Lines above the table at most: titles, the name of a device.
const MOST_ABOVE: usize = 40;
/// Cells that tell the decimal mark, at most.
const MARK_CELLS: usize = 4_000;
/// A column is of a kind when so many of its cells are.
const MOSTLY_FRAC: f64 = 0.6;

/// What cannot be told and has to be asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ask {
    /// Which column is the time.
    Time,
    /// Which column is a figure.
    Figure,
    /// Day or month first.
    DateOrder,
    /// Decimal comma or point.
    Mark,
}

/// What the cells of a column are.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ColumnSurvey {
    /// With something in them.
    pub cells: usize,
    /// Numbers.
    pub numbers: usize,
    /// Below 0.
    pub negative: usize,
    /// Least and largest number.
    pub least: f64,
    /// Largest number.
    pub largest: f64,
    /// Dates with a clock time, or seconds from 1970.
    pub stamps: usize,
    /// Dates alone.
    pub dates: usize,
    /// Clock times alone.
    pub clocks: usize,
    /// Dates that do not say what comes first.
    pub open_dates: usize,
    /// Of those, first number above 12.
    pub day_first: usize,
    /// Of those, second number above 12.
    pub month_first: usize,
    sum: f64,
}

impl ColumnSurvey {
    fn look(&mut self, cell: &str) {
        if is_nothing(cell) {
            return;
        }
        self.cells += 1;
        match Stamp::read(cell) {
            Some(Stamp::Unix(_)) => self.stamps += 1,
            Some(Stamp::Written { date, clock_s, .. }) => {
                match (date, clock_s) {
                    (Some(_), Some(_)) => self.stamps += 1,
                    (Some(_), None) => self.dates += 1,
                    (None, _) => self.clocks += 1,
                }
                if let Some(date) = date.filter(|date| date.order.is_none()) {
                    self.open_dates += 1;
                    self.day_first += usize::from(date.parts[0] > 12);
                    self.month_first += usize::from(date.parts[1] > 12);
                }
            }
            None => {
                // Where the mark is open the size hardly matters here.
                if let Some(value) = read_number(split_unit(cell).0, DecimalMark::Point) {
                    if self.numbers == 0 {
                        (self.least, self.largest) = (value, value);
                    }
                    self.numbers += 1;
                    self.sum += value;
                    self.negative += usize::from(value < 0.0);
                    self.least = self.least.min(value);
                    self.largest = self.largest.max(value);
                }
            }
        }
    }

    fn mostly(&self, count: usize) -> bool {
        self.cells > 0 && count as f64 >= MOSTLY_FRAC * self.cells as f64
    }

    fn mean(&self) -> f64 {
        self.sum / self.numbers.max(1) as f64
    }
}

/// An empty cell, or a word for one.
pub(super) fn is_nothing(cell: &str) -> bool {
    if is_plain(cell) {
        return false;
    }
    let cell = cell.trim();
    cell.is_empty()
        || ["-", "--", "\u{2013}", "\u{2014}", "nan", "null", "none", "n/a", "na"]
            .iter()
            .any(|word| cell.eq_ignore_ascii_case(word))
}

/// A log before its rows are read.
#[derive(Clone, Debug, PartialEq)]
pub struct LogTable {
    /// All of it.
    pub(super) text: Arc<str>,
    pub(super) delimiter: char,
    /// Line of the first row, from 1; above it are headings.
    pub(super) first_line: usize,
    /// Headings; empty where there are none.
    pub head: Vec<String>,
    /// Lines above the heading that are no rows.
    pub above: usize,
    /// First rows.
    pub preview: Vec<Row>,
    /// Rows altogether.
    pub rows: usize,
    /// By column.
    pub columns: Vec<ColumnSurvey>,
    mark: MarkFound,
}

/// Looks a log over, piece by piece.
pub struct LogSurvey {
    table: LogTable,
    at: usize,
    line: usize,
    started: bool,
    marks: Vec<String>,
}

/// A row of data: a time and a number in it.
fn is_data(row: &Row) -> bool {
    let time = row.cells.iter().any(|cell| Stamp::read(cell).is_some());
    let number = row.cells.iter().any(|cell| {
        Stamp::read(cell).is_none() && read_number(split_unit(cell).0, DecimalMark::Point).is_some()
    });
    time && number
}

impl LogSurvey {
    /// On a text.
    ///
    /// # Errors
    /// [`TableError`] where it is no table.
    pub fn new(text: Arc<str>) -> Result<Self, TableError> {
        if text.len() > MAX_TEXT_BYTES {
            return Err(TableError::TooLarge);
        }
        let first = read_table(piece(&text, 0))?;
        let table = LogTable {
            delimiter: first.delimiter,
            first_line: 1,
            head: Vec::new(),
            above: 0,
            preview: Vec::new(),
            rows: 0,
            columns: Vec::new(),
            mark: MarkFound::Unknown,
            text,
        };
        Ok(Self { table, at: 0, line: 0, started: false, marks: Vec::new() })
    }

    /// Looks at the next piece; false after the last one.
    pub fn advance(&mut self) -> bool {
        let text = Arc::clone(&self.table.text);
        let part = piece(&text, self.at);
        let rows = rows_of_piece(part, self.table.delimiter);
        let mut rows = &rows[..];
        if !self.started {
            self.started = true;
            let data = rows.iter().take(MOST_ABOVE).position(is_data).unwrap_or(0);
            if let Some(head) = data.checked_sub(1) {
                self.table.head = rows[head].cells.iter().take(MAX_COLUMNS).cloned().collect();
                self.table.above = head;
                self.table.first_line = rows[data].line;
            }
            rows = &rows[data..];
        }
        for row in rows {
            self.table.rows += 1;
            if self.table.preview.len() < PREVIEW_ROWS {
                let mut shown = row.clone();
                shown.line += self.line;
                shown.cells.truncate(MAX_COLUMNS);
                self.table.preview.push(shown);
            }
            for (column, cell) in row.cells.iter().enumerate().take(MAX_COLUMNS) {
                if self.table.columns.len() <= column {
                    self.table.columns.resize(column + 1, ColumnSurvey::default());
                }
                self.table.columns[column].look(cell);
                if self.marks.len() < MARK_CELLS
                    && cell.contains(['.', ','])
                    && Stamp::read(cell).is_none()
                {
                    self.marks.push(cell.clone());
                }
            }
        }
        self.at += part.len();
        self.line += part.matches('\n').count();
        self.at < text.len()
    }

    /// The table, once [`Self::advance`] says that all was looked at.
    #[must_use]
    pub fn table(&self) -> LogTable {
        let mut table = self.table.clone();
        table.mark = find_mark(self.marks.iter().map(String::as_str));
        table.columns.resize(table.columns.len().max(table.head.len()), ColumnSurvey::default());
        table
    }
}

impl LogTable {
    /// Heading of a column, empty where it has none.
    #[must_use]
    pub fn heading(&self, column: usize) -> &str {
        self.head.get(column).map_or("", String::as_str)
    }

    /// How the columns look by heading and content, and how each was told.
    #[must_use]
    pub fn suggested(&self) -> (Choices, Vec<Told>) {
        let count = self.columns.len();
        let mut choices = Choices { roles: vec![Role::Unused; count], ..Choices::default() };
        let mut told = vec![Told::Not; count];
        self.tell_times(&mut choices, &mut told);
        // Headings, the house battery's first.
        for house in [true, false] {
            for (column, told) in told.iter_mut().enumerate() {
                let (role, _) = by_heading(self.heading(column));
                let survey = &self.columns[column];
                let fits = survey.mostly(survey.numbers) && !role.is_time() && role != Role::Unused;
                let free = choices.column(role).is_none() && choices.roles[column] == Role::Unused;
                if fits && free && (!house || of_house(self.heading(column))) {
                    (choices.roles[column], *told) = (role, Told::Heading);
                }
            }
        }
        if choices.roles.iter().all(|role| matches!(role, Role::Unused | Role::Time | Role::Date)) {
            self.tell_by_figures(&mut choices, &mut told);
        }
        (choices, told)
    }

    fn tell_times(&self, choices: &mut Choices, told: &mut [Told]) {
        let named = |column: usize, role: Role| {
            if by_heading(self.heading(column)).0 == role { Told::Heading } else { Told::Figures }
        };
        let columns = || self.columns.iter().enumerate();
        // Where several hold whole times, a heading decides, then the first.
        let whole = |(column, survey): &(usize, &ColumnSurvey)| {
            survey
                .mostly(survey.stamps)
                .then_some((named(*column, Role::Time) != Told::Heading, *column))
        };
        if let Some((_, column)) = columns().filter_map(|entry| whole(&entry)).min() {
            (choices.roles[column], told[column]) = (Role::Time, named(column, Role::Time));
            return;
        }
        let date = columns().find(|(_, survey)| survey.mostly(survey.dates));
        let clock = columns().find(|(_, survey)| survey.mostly(survey.clocks));
        match (date, clock) {
            (Some((date, _)), Some((clock, _))) => {
                (choices.roles[date], told[date]) = (Role::Date, named(date, Role::Date));
                (choices.roles[clock], told[clock]) = (Role::Time, named(clock, Role::Time));
            }
            // One figure a day.
            (Some((date, _)), None) => {
                (choices.roles[date], told[date]) = (Role::Time, named(date, Role::Date));
            }
            (None, _) => {}
        }
    }

    /// Columns without a heading that says it: a voltage keeps to 9 to 16.5 or 18 to 33 V, a state of charge to
    /// 0 to 100, a current goes both ways.
    fn tell_by_figures(&self, choices: &mut Choices, told: &mut [Told]) {
        let mut free: Vec<usize> = (0..self.columns.len())
            .filter(|column| choices.roles[*column] == Role::Unused)
            .filter(|column| by_heading(self.heading(*column)).1 == 1.0)
            .filter(|column| {
                let survey = &self.columns[*column];
                survey.numbers > 0 && survey.mostly(survey.numbers)
            })
            .collect();
        let mut give = |free: &mut Vec<usize>, role: Role, fits: &dyn Fn(&ColumnSurvey) -> bool| {
            if let Some(at) = free.iter().position(|column| fits(&self.columns[*column])) {
                let column = free.remove(at);
                (choices.roles[column], told[column]) = (role, Told::Figures);
            }
        };
        let within = |survey: &ColumnSurvey, low: f64, high: f64| {
            survey.least >= low && survey.largest <= high
        };
        give(&mut free, Role::Volts, &|s| within(s, 9.0, 16.5) || within(s, 18.0, 33.0));
        give(&mut free, Role::Soc, &|s| {
            within(s, 0.0, 100.0) && s.largest > 20.0 && s.mean() > 20.0
        });
        give(&mut free, Role::Amps, &|s| s.negative > 0 && within(s, -300.0, 300.0));
    }

    /// What has to be asked before the rows can be read.
    #[must_use]
    pub fn asks(&self, choices: &Choices) -> Vec<Ask> {
        let mut asks = Vec::new();
        if choices.column(Role::Time).is_none() {
            asks.push(Ask::Time);
        }
        let figure = |role: &Role| !matches!(role, Role::Unused | Role::Time | Role::Date);
        if !choices.roles.iter().any(figure) {
            asks.push(Ask::Figure);
        }
        if choices.date_order.is_none() && self.date_order(choices).is_none() {
            asks.push(Ask::DateOrder);
        }
        if choices.mark.is_none() && self.mark() == MarkFound::Unknown {
            asks.push(Ask::Mark);
        }
        asks
    }

    /// The order of dates in the chosen columns as the log itself tells it; `None` where it does not.
    #[must_use]
    pub fn date_order(&self, choices: &Choices) -> Option<DateOrder> {
        let of_times = || {
            let chosen = choices.roles.iter().enumerate().filter(|(_, role)| role.is_time());
            chosen.filter_map(|(column, _)| self.columns.get(column))
        };
        let sum = |count: fn(&ColumnSurvey) -> usize| of_times().map(count).sum::<usize>();
        match (sum(|s| s.day_first), sum(|s| s.month_first), sum(|s| s.open_dates)) {
            (_, _, 0) => Some(DateOrder::Ymd),
            (1.., 0, _) => Some(DateOrder::Dmy),
            (0, 1.., _) => Some(DateOrder::Mdy),
            _ => None,
        }
    }

    /// The decimal mark as the log tells it.
    #[must_use]
    pub fn mark(&self) -> MarkFound {
        self.mark
    }
}
