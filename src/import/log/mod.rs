//! A log as a table: which column is what, and its rows as [`Sample`]s.
//!
//! Read in two passes of small pieces, so that a month at one row a minute holds up no page: [`LogSurvey`] looks
//! at every cell and finds what the columns are, [`LogReader`] makes samples of the rows as the user's choices
//! say. Nothing is guessed silently: what cannot be told is asked ([`LogTable::asks`]), what was told by the figures
//! alone is marked, and every row or cell left out is listed with its line and reason.

pub mod columns;
pub mod reader;
pub mod stamp;
pub mod survey;

use super::table::read_table;
pub use columns::{Choices, Clock, PlusIs, Role, Told};
pub use reader::{Fault, LogReader, Rejected};
pub use stamp::{DateOrder, Stamp};
pub use survey::{Ask, LogSurvey, LogTable};

/// Size of a piece [bytes].
pub(crate) const PIECE_BYTES: usize = 16 << 10;

/// The next piece of a text from `at`, up to the end of a line.
pub(crate) fn piece(text: &str, at: usize) -> &str {
    let rest = text.get(at..).unwrap_or_default();
    if rest.len() <= PIECE_BYTES {
        return rest;
    }
    let end = rest.as_bytes()[PIECE_BYTES..].iter().position(|byte| *byte == b'\n');
    end.map_or(rest, |end| &rest[..=PIECE_BYTES + end])
}

/// Whether a text is a log of readings rather than a list of appliances: most of its first rows hold a date.
///
/// ```
/// use nightbank::import::log::is_log;
/// assert!(is_log("Time;V\n2026-09-01 21:05;13.2\n2026-09-01 21:06;13.2\n"));
/// assert!(!is_log("Name;W;Hours\nLamp;5;1:30\nFan;20;2\n"));
/// ```
#[must_use]
pub fn is_log(text: &str) -> bool {
    let Ok(table) = read_table(piece(text, 0)) else { return false };
    let has_date = |cell: &String| match Stamp::read(cell) {
        Some(Stamp::Unix(_)) => true,
        Some(Stamp::Written { date, .. }) => date.is_some(),
        None => false,
    };
    let rows = table.rows.iter().take(50);
    let dated = rows.clone().filter(|row| row.cells.iter().any(has_date)).count();
    dated >= 2 && dated * 2 > rows.count()
}
