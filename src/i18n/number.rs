//! Reading a number as people type it.
//!
//! Accepted: digits with an optional sign, `.` or `,` as the decimal mark, and spaces (also narrow
//! and no-break ones), apostrophes, or the other of the two marks between groups of three digits.
//! A single `.` or `,` is always the decimal mark, since `1.500` typed by hand into a field of
//! ampere-hours or hours is far more often one and a half than fifteen hundred.

use std::ops::RangeInclusive;

/// Why a typed number cannot be used.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NumberError {
    /// Nothing typed.
    Empty,
    /// Not a number.
    NotANumber,
    /// Below what the field may hold.
    TooSmall {
        /// Smallest value allowed, in the unit of the field.
        min: f64,
    },
    /// Above what the field may hold.
    TooLarge {
        /// Largest value allowed, in the unit of the field.
        max: f64,
    },
}

/// The number in `text`, if it is one and lies within `range`.
///
/// # Errors
///
/// [`NumberError`] tells which rule it broke.
///
/// # Example
///
/// ```
/// use nightbank::i18n::{NumberError, parse_number};
/// assert_eq!(parse_number("7,5", &(0.0..=100.0)), Ok(7.5));
/// assert_eq!(parse_number("101", &(0.0..=100.0)), Err(NumberError::TooLarge { max: 100.0 }));
/// ```
pub fn parse_number(text: &str, range: &RangeInclusive<f64>) -> Result<f64, NumberError> {
    let value = read(text)?;
    if value < *range.start() {
        Err(NumberError::TooSmall { min: *range.start() })
    } else if value > *range.end() {
        Err(NumberError::TooLarge { max: *range.end() })
    } else {
        Ok(value)
    }
}

/// `value`, or zero where nothing is left of it with so many decimals, so that no "-0" is shown.
#[must_use]
pub fn without_signed_zero(value: f64, decimals: u8) -> f64 {
    let least = 0.5 / 10_f64.powi(i32::from(decimals));
    if value.abs() < least { 0.0 } else { value }
}

fn read(text: &str) -> Result<f64, NumberError> {
    let text = text.trim();
    if text.is_empty() {
        return Err(NumberError::Empty);
    }
    let (negative, digits) = match text.strip_prefix(['-', '\u{2212}']) {
        Some(rest) => (true, rest.trim_start()),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let (whole, decimals) = split_at_decimal_mark(digits)?;
    let whole = without_groups(whole)?;
    if whole.is_empty() && decimals.is_empty() {
        return Err(NumberError::NotANumber);
    }
    if !decimals.chars().all(|c| c.is_ascii_digit()) {
        return Err(NumberError::NotANumber);
    }
    let plain = format!("{}{whole}.{decimals}0", if negative { "-" } else { "" });
    let value: f64 = plain.parse().map_err(|_| NumberError::NotANumber)?;
    if value.is_finite() { Ok(value + 0.0) } else { Err(NumberError::NotANumber) }
}

/// Splits `1.234,5` into `1.234` and `5`: the decimal mark is the last of the two marks, unless
/// that one stands more than once.
fn split_at_decimal_mark(digits: &str) -> Result<(&str, &str), NumberError> {
    let Some(last) = digits.rfind([',', '.']) else {
        return Ok((digits, ""));
    };
    let (head, tail) = digits.split_at(last);
    let mark = tail.chars().next().unwrap_or('.');
    let decimals = tail.get(1..).unwrap_or("");
    if !head.contains(mark) {
        return Ok((head, decimals));
    }
    // 1.234.567: the mark groups; 1,234.567.8 is neither.
    if head.contains(if mark == '.' { ',' } else { '.' }) {
        return Err(NumberError::NotANumber);
    }
    Ok((digits, ""))
}

/// `1 234` and `1'234` to `1234`; groups after the first have three digits and one separator.
fn without_groups(whole: &str) -> Result<String, NumberError> {
    let separator = |c: char| {
        matches!(c, ' ' | '\u{a0}' | '\u{202f}' | '\u{2009}' | '\'' | '\u{2019}' | ',' | '.')
    };
    let mut plain = String::with_capacity(whole.len());
    let mut used = None;
    for (index, group) in whole.split(separator).enumerate() {
        let fits =
            if index == 0 { !group.is_empty() || whole.is_empty() } else { group.len() == 3 };
        if !fits || !group.bytes().all(|b| b.is_ascii_digit()) {
            return Err(NumberError::NotANumber);
        }
        plain.push_str(group);
    }
    let mut first_group = true;
    for c in whole.chars().filter(|&c| separator(c)) {
        if !first_group && used != Some(c) {
            return Err(NumberError::NotANumber);
        }
        used = Some(c);
        first_group = false;
    }
    if used.is_some() && whole.split(separator).next().is_some_and(|first| first.len() > 3) {
        return Err(NumberError::NotANumber);
    }
    Ok(plain)
}

#[cfg(test)]
mod tests {
    use super::*;

    const WIDE: &RangeInclusive<f64> = &(-1e9..=1e9);

    #[test]
    fn zero_has_no_sign() {
        for (value, decimals) in [(-0.0, 0), (-0.49, 0), (-0.04, 1), (0.004, 2)] {
            let shown = without_signed_zero(value, decimals);
            assert!(shown == 0.0 && shown.is_sign_positive(), "{value} with {decimals} decimals");
        }
        assert_eq!(without_signed_zero(-0.5, 0), -0.5);
        assert_eq!(without_signed_zero(-0.05, 1), -0.05);
    }

    #[test]
    fn both_decimal_marks() {
        for (text, value) in [
            ("1", 1.0),
            ("1.5", 1.5),
            ("1,5", 1.5),
            ("1,", 1.0),
            ("1.", 1.0),
            (",5", 0.5),
            (".5", 0.5),
            (" 12 ", 12.0),
            ("-3,5", -3.5),
            ("\u{2212}0.35", -0.35),
            ("+4", 4.0),
            ("1.500", 1.5),
            ("1,500", 1.5),
            ("-0", 0.0),
        ] {
            assert_eq!(parse_number(text, WIDE), Ok(value), "{text:?}");
        }
    }

    #[test]
    fn groups_where_they_are_plain() {
        for (text, value) in [
            ("1 234", 1234.0),
            ("1\u{202f}234,5", 1234.5),
            ("1\u{a0}234\u{a0}567", 1_234_567.0),
            ("1'234.5", 1234.5),
            ("1\u{2019}234", 1234.0),
            ("1.234,5", 1234.5),
            ("1,234.5", 1234.5),
            ("1.234.567", 1_234_567.0),
            ("12,345,678.9", 12_345_678.9),
        ] {
            assert_eq!(parse_number(text, WIDE), Ok(value), "{text:?}");
        }
    }

    #[test]
    fn what_is_not_a_number_is_refused() {
        for text in [
            "abc",
            "1a",
            "-",
            ".",
            ",",
            "1..5",
            "1,2,3",
            "1.2.3",
            "12 34",
            "1 2345",
            "1.234,5,6",
            "1e3",
            "NaN",
            "inf",
            "--1",
            "1-",
            "1,234.567.8",
            "1 234'567",
            "1234,567.8",
            "１",
            "5 W",
            "' '",
        ] {
            assert_eq!(parse_number(text, WIDE), Err(NumberError::NotANumber), "{text:?}");
        }
    }

    #[test]
    fn empty_and_out_of_range_say_so() {
        let range = &(1.0..=99.0);
        assert_eq!(parse_number("  ", range), Err(NumberError::Empty));
        assert_eq!(parse_number("0,9", range), Err(NumberError::TooSmall { min: 1.0 }));
        assert_eq!(parse_number("99.1", range), Err(NumberError::TooLarge { max: 99.0 }));
        assert_eq!(parse_number("1", range), Ok(1.0));
        assert_eq!(parse_number("99", range), Ok(99.0));
        let long = "9".repeat(400);
        assert_eq!(parse_number(&long, range), Err(NumberError::NotANumber));
    }

    proptest::proptest! {
        #[test]
        fn any_text_is_answered(text in "\\PC*") {
            if let Ok(value) = parse_number(&text, WIDE) {
                proptest::prop_assert!(WIDE.contains(&value));
            }
        }

        #[test]
        fn what_is_written_is_read_back(value in -99999.0f64..99999.0) {
            let text = format!("{value:.3}");
            let back = parse_number(&text, WIDE).expect("a plain number");
            proptest::prop_assert!((back - value).abs() <= 0.0005 + 1e-9);
            let comma = text.replace('.', ",");
            proptest::prop_assert_eq!(parse_number(&comma, WIDE), Ok(back));
        }
    }
}
