//! Numbers as spreadsheets and people write them in a cell.
//!
//! Most cells tell by themselves whether point or comma is the decimal mark: `3,5`, `1.234,5`,
//! `1,234,567`. Only one mark before exactly three digits, `1.500`, can be read either way; such a
//! cell is read by what the other cells of the table tell, and if they tell nothing, the user is
//! asked ([`MarkFound::Unknown`]).

/// What stands before the decimals.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum DecimalMark {
    /// `3.5`.
    #[default]
    Point,
    /// `3,5`.
    Comma,
}

impl DecimalMark {
    fn char(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }
}

/// What a table tells of its decimal mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkFound {
    /// Cells show it, or no cell depends on it.
    Known(DecimalMark),
    /// Some cells can be read either way, and no other cell tells which is meant.
    Unknown,
}

/// The decimal mark of a table, from all its cells.
pub fn find_mark<'a>(cells: impl Iterator<Item = &'a str>) -> MarkFound {
    let (mut points, mut commas, mut open) = (0_usize, 0_usize, 0_usize);
    for cell in cells {
        let (number, _) = split_unit(cell);
        match shape(number) {
            Some(Shape::Plain) | None => {}
            Some(Shape::Mark(DecimalMark::Point)) => points += 1,
            Some(Shape::Mark(DecimalMark::Comma)) => commas += 1,
            Some(Shape::Either) => open += 1,
        }
    }
    match (points, commas, open) {
        (0, 0, 0) => MarkFound::Known(DecimalMark::Point),
        (0, 0, _) => MarkFound::Unknown,
        (_, 0, _) => MarkFound::Known(DecimalMark::Point),
        (0, _, _) => MarkFound::Known(DecimalMark::Comma),
        (points, commas, 0) if points >= commas => MarkFound::Known(DecimalMark::Point),
        (_, _, 0) => MarkFound::Known(DecimalMark::Comma),
        // Both are used and some cells depend on it: no vote, the user says.
        _ => MarkFound::Unknown,
    }
}

/// The number in a cell; `mark` decides only where the cell can be read either way. `None` where it is
/// no number.
///
/// ```
/// use nightbank::import::number::{DecimalMark, read_number};
/// assert_eq!(read_number("1.234,5", DecimalMark::Point), Some(1234.5));
/// assert_eq!(read_number("1.500", DecimalMark::Point), Some(1.5));
/// assert_eq!(read_number("1.500", DecimalMark::Comma), Some(1500.0));
/// ```
#[must_use]
pub fn read_number(cell: &str, mark: DecimalMark) -> Option<f64> {
    if is_plain(cell) {
        return cell.parse().ok();
    }
    let text = cell.trim();
    let mark = match shape(text)? {
        Shape::Plain => DecimalMark::Point,
        Shape::Mark(own) => own,
        Shape::Either => mark,
    };
    let mut plain = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\u{2212}' => plain.push('-'),
            c if c == mark.char() => plain.push('.'),
            '.' | ',' => {}
            c if is_space_or_apostrophe(c) => {}
            c => plain.push(c),
        }
    }
    plain.parse().ok().filter(|value: &f64| value.is_finite())
}

/// The number and the unit of a cell such as `45 W`, `3,5Ah` or `~20 min`; either may be empty.
#[must_use]
pub fn split_unit(cell: &str) -> (&str, &str) {
    if is_plain(cell) {
        return (cell, "");
    }
    let cell = cell.trim().trim_start_matches(['~', '≈']).trim_start();
    let is_part = |c: char| {
        c.is_ascii_digit()
            || matches!(c, '.' | ',' | '+' | '-' | '\u{2212}')
            || is_space_or_apostrophe(c)
    };
    let mut end = cell.find(|c| !is_part(c)).unwrap_or(cell.len());
    // An exponent is part of the number: 1.2E+03.
    let rest = &cell[end..];
    if let Some(exponent) = rest.strip_prefix(['e', 'E']) {
        let digits = exponent.trim_start_matches(['+', '-']);
        let length = digits.bytes().take_while(u8::is_ascii_digit).count();
        if length > 0 && end > 0 {
            end = cell.len() - digits.len() + length;
        }
    }
    let (number, unit) = cell.split_at(end);
    (number.trim(), unit.trim())
}

/// A figure as nearly all cells of a log have it: digits, with one or two after a point. It can be read in one way
/// only, and at once.
pub(crate) fn is_plain(cell: &str) -> bool {
    let bytes = cell.strip_prefix('-').unwrap_or(cell).as_bytes();
    let whole = bytes.iter().take_while(|byte| byte.is_ascii_digit()).count();
    let decimals = match bytes.get(whole..) {
        Some([]) => true,
        Some([b'.', decimals @ ..]) => {
            matches!(decimals.len(), 1..=2) && decimals.iter().all(u8::is_ascii_digit)
        }
        _ => false,
    };
    (1..9).contains(&whole) && decimals
}

fn is_space_or_apostrophe(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '\'' | '\u{2019}')
}

/// What a number tells of its decimal mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shape {
    /// No mark in it.
    Plain,
    /// This is its decimal mark.
    Mark(DecimalMark),
    /// One mark before three digits.
    Either,
}

/// `None` for what is no number.
fn shape(text: &str) -> Option<Shape> {
    let text = text.trim();
    let unsigned = text.strip_prefix(['-', '+', '\u{2212}']).unwrap_or(text).trim_start();
    let (digits, exponent) = match unsigned.find(['e', 'E']) {
        Some(at) => (&unsigned[..at], Some(&unsigned[at + 1..])),
        None => (unsigned, None),
    };
    if let Some(exponent) = exponent {
        let digits = exponent.strip_prefix(['+', '-']).unwrap_or(exponent);
        if digits.is_empty() || !digits.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
    }
    let count = |mark: char| digits.matches(mark).count();
    let (points, commas) = (count('.'), count(','));
    let last = digits.rfind(['.', ',']);
    let (whole, decimals, found) = match (points, commas, last) {
        (0, 0, _) | (_, _, None) => (digits, "", Shape::Plain),
        (points, commas, Some(at)) => {
            let own =
                if digits[at..].starts_with('.') { DecimalMark::Point } else { DecimalMark::Comma };
            let split = (&digits[..at], &digits[at + 1..]);
            match (points.min(commas), points.max(commas)) {
                // 1,234.5
                (1.., _) if count(own.char()) == 1 => (split.0, split.1, Shape::Mark(own)),
                (1.., _) => return None,
                // 1.234.567
                (0, 2..) => {
                    let other = match own {
                        DecimalMark::Point => DecimalMark::Comma,
                        DecimalMark::Comma => DecimalMark::Point,
                    };
                    (digits, "", Shape::Mark(other))
                }
                _ => {
                    let groups = split.1.len() == 3
                        && exponent.is_none()
                        && matches!(split.0.len(), 1..=3)
                        && !split.0.starts_with('0')
                        && split.0.bytes().all(|b| b.is_ascii_digit());
                    (split.0, split.1, if groups { Shape::Either } else { Shape::Mark(own) })
                }
            }
        }
    };
    let fits = decimals.bytes().all(|b| b.is_ascii_digit())
        && is_grouped(whole)
        && !(whole.is_empty() && decimals.is_empty());
    fits.then_some(found)
}

/// Digits, or groups of three parted by one and the same separator.
fn is_grouped(whole: &str) -> bool {
    let mut separators = whole.chars().filter(|c| !c.is_ascii_digit());
    let Some(first) = separators.next() else { return true };
    let separates = first == '.' || first == ',' || is_space_or_apostrophe(first);
    let mut groups = whole.split(first);
    separates
        && separators.all(|c| c == first)
        && groups.next().is_some_and(|group| matches!(group.len(), 1..=3))
        && groups.all(|group| group.len() == 3)
}

#[cfg(test)]
mod tests {
    use super::*;
    use DecimalMark::{Comma, Point};

    #[test]
    fn a_cell_that_tells_its_mark_is_read_by_itself() {
        for (text, value) in [
            ("45", 45.0),
            ("3,5", 3.5),
            ("3.5", 3.5),
            ("0,125", 0.125),
            ("0.125", 0.125),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("1.234.567", 1_234_567.0),
            ("1,234,567", 1_234_567.0),
            ("1 234,5", 1234.5),
            ("1'234.5", 1234.5),
            ("1\u{202f}234", 1234.0),
            ("-2,5", -2.5),
            ("\u{2212}2.5", -2.5),
            ("+4", 4.0),
            ("1.2E+03", 1200.0),
            ("5e-1", 0.5),
            (".5", 0.5),
            ("12,", 12.0),
            ("12345.678", 12345.678),
        ] {
            for mark in [Point, Comma] {
                assert_eq!(read_number(text, mark), Some(value), "{text} with {mark:?}");
            }
        }
    }

    #[test]
    fn one_mark_before_three_digits_is_read_as_the_table_has_it() {
        for (text, point, comma) in
            [("1.500", 1.5, 1500.0), ("1,500", 1500.0, 1.5), ("12.345", 12.345, 12345.0)]
        {
            assert_eq!(read_number(text, Point), Some(point), "{text}");
            assert_eq!(read_number(text, Comma), Some(comma), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_is_none() {
        for text in [
            "",
            " ",
            "W",
            "1.2.3,4,5",
            "1,23,456",
            "12:30",
            "30-45",
            "--1",
            "1e",
            "1 2 3",
            "NaN",
            "inf",
            "1.234.56",
            "=2*3",
        ] {
            assert_eq!(read_number(text, Point), None, "{text:?}");
        }
        assert_eq!(read_number("1e999", Point), None, "more than a number holds");
    }

    #[test]
    fn the_mark_of_a_table_is_found_or_asked() {
        let find = |cells: &[&str]| find_mark(cells.iter().copied());
        assert_eq!(find(&["Lamp", "45", "2"]), MarkFound::Known(Point));
        assert_eq!(find(&["1.500", "3,5 W"]), MarkFound::Known(Comma));
        assert_eq!(find(&["1.500", "13.2"]), MarkFound::Known(Point));
        assert_eq!(find(&["1.500", "Lamp"]), MarkFound::Unknown);
        assert_eq!(find(&["1.500", "3,5", "3.5"]), MarkFound::Unknown, "both are used");
        assert_eq!(find(&["3,5", "3.5"]), MarkFound::Known(Point), "no cell depends on it");
    }

    #[test]
    fn a_unit_is_split_off() {
        for (cell, number, unit) in [
            ("45 W", "45", "W"),
            ("3,5Ah", "3,5", "Ah"),
            ("~20 min", "20", "min"),
            ("1.2E+03 W", "1.2E+03", "W"),
            ("230V", "230", "V"),
            ("12 e", "12", "e"),
            ("Lamp", "", "Lamp"),
            ("1 234 Wh", "1 234", "Wh"),
        ] {
            assert_eq!(split_unit(cell), (number, unit), "{cell}");
        }
    }
}
