//! A table as text: what a spreadsheet writes, puts on the clipboard, or a forum shows.
//!
//! Tabs, semicolons, commas or the bars of a Markdown table stand between the cells; quotes as in
//! RFC 4180. Which it is, is found from the rows. Nothing is left out but rows without content and
//! the ruling of a Markdown table.

use std::borrow::Cow;
use std::fmt;

/// Most characters of a table that are read [bytes of UTF-8].
pub const MAX_TEXT_BYTES: usize = 32 << 20;
/// Most cells of a row; what lies right of them is no table for people.
pub const MAX_COLUMNS: usize = 64;
/// So many rows tell what stands between the cells.
const SAMPLE_ROWS: usize = 60;

/// One row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Line of the text it starts in, from 1.
    pub line: usize,
    /// Its cells, without space around them.
    pub cells: Vec<String>,
}

impl Row {
    /// The text of a cell; empty where the row has no such cell.
    #[must_use]
    pub fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", String::as_str)
    }
}

/// A table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// What stands between the cells.
    pub delimiter: char,
    /// Rows with content, from the top.
    pub rows: Vec<Row>,
}

impl Table {
    /// Cells of the widest row.
    #[must_use]
    pub fn columns(&self) -> usize {
        self.rows.iter().map(|row| row.cells.len()).max().unwrap_or(0)
    }
}

/// Why a text is no table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TableError {
    /// Nothing in it.
    Empty,
    /// More than [`MAX_TEXT_BYTES`].
    TooLarge,
    /// Not text: a spreadsheet's own file, a picture, a program.
    NotText,
    /// A row of more than [`MAX_COLUMNS`] cells.
    TooWide {
        /// Its line, from 1.
        line: usize,
    },
}

impl fmt::Display for TableError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(f, "there is nothing in it"),
            Self::TooLarge => write!(f, "more than {MAX_TEXT_BYTES} bytes"),
            Self::NotText => write!(f, "this is no text"),
            Self::TooWide { line } => write!(f, "line {line} has more than {MAX_COLUMNS} cells"),
        }
    }
}

impl std::error::Error for TableError {}

/// The encoding of a file of text, by its label in the Encoding Standard: `utf-8`, `utf-16le`,
/// `utf-16be` or, for what is none of these, `windows-1252`, which holds Latin-1.
///
/// Without a byte order mark UTF-16 is known by its zero bytes: text of the Latin script has one in
/// every other place.
#[must_use]
pub fn encoding_label(bytes: &[u8]) -> &'static str {
    match bytes {
        [0xef, 0xbb, 0xbf, ..] => return "utf-8",
        [0xff, 0xfe, ..] => return "utf-16le",
        [0xfe, 0xff, ..] => return "utf-16be",
        _ => {}
    }
    let head = &bytes[..bytes.len().min(2_000)];
    let zeros = |odd: usize| head.iter().skip(odd).step_by(2).filter(|&&byte| byte == 0).count();
    let (even, odd) = (zeros(0), zeros(1));
    let half = head.len() / 2;
    if half > 0 && odd * 10 >= half * 9 && even * 10 < half {
        "utf-16le"
    } else if half > 0 && even * 10 >= half * 9 && odd * 10 < half {
        "utf-16be"
    } else if std::str::from_utf8(bytes).is_ok() {
        "utf-8"
    } else {
        "windows-1252"
    }
}

/// The table in a text.
///
/// # Errors
///
/// [`TableError`] tells why it is none.
pub fn read_table(text: &str) -> Result<Table, TableError> {
    if text.len() > MAX_TEXT_BYTES {
        return Err(TableError::TooLarge);
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.contains('\0') {
        return Err(TableError::NotText);
    }
    let odd = text
        .chars()
        .take(4_000)
        .filter(|&c| c == '\u{fffd}' || c.is_control() && !c.is_whitespace());
    if odd.count() > 20 {
        return Err(TableError::NotText);
    }
    // Some spreadsheets say in the first line what stands between the cells.
    let (said, text, skipped) = match text.split_once('\n') {
        Some((first, rest)) => match first.trim_end().strip_prefix("sep=") {
            Some(said) if said.len() == 1 => (said.chars().next(), rest, 1),
            _ => (None, text, 0),
        },
        None => (None, text, 0),
    };
    let delimiter = said.unwrap_or_else(|| find_delimiter(text));
    let mut rows = rows(text, delimiter, usize::MAX);
    for row in &mut rows {
        row.line += skipped;
        if row.cells.len() > MAX_COLUMNS {
            return Err(TableError::TooWide { line: row.line });
        }
    }
    if rows.is_empty() { Err(TableError::Empty) } else { Ok(Table { delimiter, rows }) }
}

/// The rows of a piece of a table whose delimiter is known, as of a long log that is read piece by piece; lines
/// are counted from the start of the piece.
#[must_use]
pub fn rows_of_piece(piece: &str, delimiter: char) -> Vec<Row> {
    rows(piece, delimiter, usize::MAX)
}

/// What stands between the cells: the first of tab, semicolon, bar and comma that parts most rows, else the
/// one that parts half of them, else none and each row is one cell.
fn find_delimiter(text: &str) -> char {
    let parted = |delimiter: char| {
        let rows = rows(text, delimiter, SAMPLE_ROWS);
        let parted = rows.iter().filter(|row| row.cells.len() > 1).count();
        (delimiter, parted as f64 / rows.len().max(1) as f64)
    };
    let candidates = ['\t', ';', '|', ','].map(parted);
    let at_least = |share: f64| candidates.iter().find(|(_, parted)| *parted >= share);
    at_least(0.7).or_else(|| at_least(0.5)).map_or('\t', |(delimiter, _)| *delimiter)
}

/// The first rows with content.
fn rows(text: &str, delimiter: char, most: usize) -> Vec<Row> {
    if !text.contains('"') {
        return read_rows(text, delimiter, most, false);
    }
    let quoted = read_rows(text, delimiter, most, true);
    // A quote that is never closed takes all that follows into one cell: then quotes are just inches.
    let swallowed = |row: &Row| row.cells.iter().any(|cell| cell.matches('\n').count() > 20);
    if quoted.iter().any(swallowed) || quoted.last().is_some_and(|row| open_quote(row, text)) {
        read_rows(text, delimiter, most, false)
    } else {
        quoted
    }
}

/// Whether the last row reaches to the end of the text over several lines with quotes that do not pair.
fn open_quote(last: &Row, text: &str) -> bool {
    last.cells.iter().any(|cell| cell.contains('\n')) && text.matches('"').count() % 2 == 1
}

fn read_rows(text: &str, delimiter: char, most: usize, quoting: bool) -> Vec<Row> {
    let Ok(byte) = u8::try_from(u32::from(delimiter)) else { return Vec::new() };
    let bars = delimiter == '|';
    let text = if bars { Cow::Owned(text.replace("\\|", HIDDEN_BAR)) } else { Cow::Borrowed(text) };
    let text = text.as_ref();
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(byte)
        .has_headers(false)
        .flexible(true)
        .quoting(quoting && delimiter != '|')
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    let mut record = csv::StringRecord::new();
    // Text in memory is UTF-8 and rows may be uneven: there is nothing that fails.
    while let Ok(true) = reader.read_record(&mut record) {
        let line = record.position().map_or(0, |at| first_line(text, at));
        let mut cells: Vec<String> = record.iter().map(plain).collect();
        if bars {
            strip_bars(&mut cells);
            cells.iter_mut().for_each(|cell| *cell = unescaped(cell));
        }
        while cells.len() > 1 && cells.last().is_some_and(String::is_empty) {
            cells.pop();
        }
        let is_ruling =
            |cell: &String| cell.len() >= 3 && cell.bytes().all(|c| matches!(c, b'-' | b':'));
        if cells.iter().all(|cell| cell.bytes().all(is_delimiter))
            || bars && cells.iter().all(is_ruling)
        {
            continue;
        }
        rows.push(Row { line, cells });
        if rows.len() >= most {
            break;
        }
    }
    rows
}

fn is_delimiter(c: u8) -> bool {
    matches!(c, b'\t' | b';' | b'|' | b',')
}

/// The line a row starts in: the reader counts from the empty lines before it.
fn first_line(text: &str, at: &csv::Position) -> usize {
    let start = usize::try_from(at.byte()).unwrap_or(usize::MAX);
    let before = text.as_bytes().get(start..).unwrap_or_default();
    let breaks = before.iter().take_while(|byte| matches!(byte, b'\r' | b'\n'));
    let skipped = breaks.filter(|byte| **byte == b'\n').count();
    usize::try_from(at.line()).unwrap_or(usize::MAX).saturating_add(skipped)
}

/// In the place of an escaped bar while the cells are parted; no keyboard has it.
const HIDDEN_BAR: &str = "\u{1}";

/// A cell of a Markdown table as it is read: without the backslashes before marks (CommonMark 0.31, section 2.4).
fn unescaped(cell: &str) -> String {
    let mut plain = String::with_capacity(cell.len());
    let mut chars = cell.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '\\' if chars.peek().is_some_and(char::is_ascii_punctuation) => {
                plain.extend(chars.next())
            }
            '\u{1}' => plain.push('|'),
            c => plain.push(c),
        }
    }
    plain
}

/// The bars at both ends of a Markdown row part no cells.
fn strip_bars(cells: &mut Vec<String>) {
    if cells.first().is_some_and(String::is_empty) {
        cells.remove(0);
    }
}

/// A cell without the space around it, and without the apostrophe that keeps a spreadsheet from
/// running it as a formula.
fn plain(cell: &str) -> String {
    // Word joiners keep forums from making links of names.
    let joined = match cell.is_ascii() {
        true => Cow::Borrowed(cell),
        false => Cow::Owned(cell.replace('\u{2060}', "")),
    };
    let cell = joined.trim();
    match cell.strip_prefix('\'') {
        Some(rest)
            if rest.trim_start().starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠', '"']) =>
        {
            rest.trim().to_owned()
        }
        _ => cell.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(text: &str) -> Vec<Vec<String>> {
        read_table(text).expect("a table").rows.into_iter().map(|row| row.cells).collect()
    }

    #[test]
    fn four_ways_to_part_cells() {
        let want = vec![vec!["Name", "W", "h"], vec!["Lamp", "3,5", "4"], vec!["Fan", "20", "2,5"]];
        for text in [
            "Name\tW\th\nLamp\t3,5\t4\nFan\t20\t2,5\n",
            "Name;W;h\r\nLamp;3,5;4\r\nFan;20;2,5\r\n",
            "Name,W,h\nLamp,\"3,5\",4\nFan,20,\"2,5\"",
            "| Name | W | h |\n| :--- | ---: | ---: |\n| Lamp | 3,5 | 4 |\n| Fan | 20 | 2,5 |",
            "sep=;\nName;W;h\nLamp;3,5;4\nFan;20;2,5",
            "\u{feff}Name;W;h\n\n;;\nLamp;3,5;4\n  Fan ; 20;2,5;;\n",
        ] {
            assert_eq!(cells(text), want, "{text:?}");
        }
    }

    #[test]
    fn quotes_hold_marks_and_lines_together() {
        assert_eq!(
            cells("Name;W\n\"Lamp; \"\"big\"\"\nby the door\";3"),
            [vec!["Name", "W"], vec!["Lamp; \"big\"\nby the door", "3"]]
        );
    }

    #[test]
    fn an_inch_mark_swallows_nothing() {
        let read = cells("Name;W\n\"Screen;30\nLamp;3\nFan;20");
        assert_eq!(read.len(), 4, "{read:?}");
        assert_eq!(cells("Name;W\n15\" screen;30\nLamp;3")[1], ["15\" screen", "30"]);
    }

    #[test]
    fn lines_are_counted_as_an_editor_does() {
        let table = read_table("sep=;\nName;W\n\nLamp;3\n\"a\nb\";4\nFan;20").expect("a table");
        let lines: Vec<usize> = table.rows.iter().map(|row| row.line).collect();
        assert_eq!(lines, [2, 4, 5, 7]);
    }

    #[test]
    fn one_column_is_a_table() {
        assert_eq!(cells("Fridge\nWater pump\n"), [["Fridge"], ["Water pump"]]);
        assert_eq!(cells("Fridge, big\nWater pump\nLamp\nFan\n").len(), 4);
    }

    #[test]
    fn a_guarded_formula_is_its_text_again() {
        assert_eq!(cells("Name;W\n'=1+1;3\n'Fan;4"), [["Name", "W"], ["=1+1", "3"], ["'Fan", "4"]]);
    }

    #[test]
    fn what_is_no_table_is_told() {
        assert_eq!(read_table(""), Err(TableError::Empty));
        assert_eq!(read_table(" \n;;\n"), Err(TableError::Empty));
        assert_eq!(read_table("PK\u{3}\u{4}\0\0"), Err(TableError::NotText));
        assert_eq!(read_table(&";".repeat(100)), Err(TableError::Empty));
        assert_eq!(read_table(&"a;".repeat(100)), Err(TableError::TooWide { line: 1 }));
    }

    /// Decoded by `encoding_rs`, which follows the Encoding Standard as browsers do.
    #[test]
    fn the_encoding_is_told_by_its_bytes() {
        let text = "Gerät;Leistung (W)\r\nKühlschrank;45\r\n";
        let utf16 = |swap: bool| -> Vec<u8> {
            text.encode_utf16()
                .flat_map(|unit| if swap { unit.to_be_bytes() } else { unit.to_le_bytes() })
                .collect()
        };
        let with_mark = |mark: &[u8], bytes: Vec<u8>| [mark, &bytes].concat();
        let latin: Vec<u8> = text.chars().map(|c| c as u8).collect();
        for (bytes, label) in [
            (text.as_bytes().to_vec(), "utf-8"),
            (with_mark(&[0xef, 0xbb, 0xbf], text.as_bytes().to_vec()), "utf-8"),
            (utf16(false), "utf-16le"),
            (with_mark(&[0xff, 0xfe], utf16(false)), "utf-16le"),
            (utf16(true), "utf-16be"),
            (with_mark(&[0xfe, 0xff], utf16(true)), "utf-16be"),
            (latin, "windows-1252"),
        ] {
            assert_eq!(encoding_label(&bytes), label);
            let encoding = encoding_rs::Encoding::for_label(label.as_bytes()).expect("known");
            assert_eq!(encoding.decode(&bytes).0, text, "{label}");
        }
        assert_eq!(encoding_label(b""), "utf-8");
    }
}
