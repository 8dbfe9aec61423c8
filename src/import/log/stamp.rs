//! Times as logs write them.
//!
//! ISO 8601 (RFC 3339) with or without offset, day.month.year, day/month/year and month/day/year with a time of
//! 24 or 12 hours, and seconds or milliseconds from 1970. Which of two numbers is the day is for the table to
//! say: one above 12 somewhere tells it.

use crate::import::number::is_plain;
use time::{Date, Month};

/// What comes first in a date.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DateOrder {
    /// Year, month, day.
    Ymd,
    /// Day, month, year.
    Dmy,
    /// Month, day, year.
    Mdy,
}

/// A date as written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WrittenDate {
    /// The three numbers.
    pub parts: [u32; 3],
    /// Known from the way it is written: a year in front, or points between.
    pub order: Option<DateOrder>,
}

/// A time as written.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stamp {
    /// Seconds from 1970, universal time.
    Unix(f64),
    /// A date, a clock time, or both.
    Written {
        /// The date.
        date: Option<WrittenDate>,
        /// Seconds after midnight.
        clock_s: Option<f64>,
        /// Ahead of universal time [s], where it says so.
        offset_s: Option<f64>,
    },
}

/// Earliest and latest seconds from 1970 taken for a time: 2001 to 2100.
const UNIX_S: std::ops::Range<f64> = 978_307_200.0..4_133_980_800.0;

impl WrittenDate {
    /// The day, with the order of the table where the date itself does not say; `None` for no day of the
    /// calendar.
    #[must_use]
    pub fn day(self, order: DateOrder) -> Option<Date> {
        let [a, b, c] = self.parts;
        let (year, month, day) = match self.order.unwrap_or(order) {
            DateOrder::Ymd => (a, b, c),
            DateOrder::Dmy => (c, b, a),
            DateOrder::Mdy => (c, a, b),
        };
        // Two digits are of this century.
        let year = if year < 100 { 2000 + year } else { year };
        if !(1990..=2100).contains(&year) {
            return None;
        }
        let month = Month::try_from(u8::try_from(month).ok()?).ok()?;
        Date::from_calendar_date(i32::try_from(year).ok()?, month, u8::try_from(day).ok()?).ok()
    }
}

/// Takes digits from the front.
fn digits<'a>(text: &mut &'a str, most: usize) -> Option<&'a str> {
    let length = text.bytes().take(most).take_while(u8::is_ascii_digit).count();
    let (taken, rest) = text.split_at(length);
    *text = rest;
    (length > 0).then_some(taken)
}

fn take(text: &mut &str, mark: &[char]) -> Option<char> {
    let found = text.chars().next().filter(|c| mark.contains(c))?;
    *text = &text[found.len_utf8()..];
    Some(found)
}

fn date(text: &mut &str) -> Option<WrittenDate> {
    let mut rest = *text;
    let first = digits(&mut rest, 4)?;
    let mark = take(&mut rest, &['-', '/', '.'])?;
    let spaced = rest.trim_start();
    rest = spaced;
    let second = digits(&mut rest, 2)?;
    take(&mut rest, &[mark])?;
    rest = rest.trim_start();
    let third = digits(&mut rest, 4)?;
    let order = if first.len() == 4 {
        Some(DateOrder::Ymd)
    } else if mark == '.' {
        Some(DateOrder::Dmy)
    } else {
        None
    };
    if first.len() == 3 || third.len() == 3 || (first.len() < 4 && third.len() < 2) {
        return None;
    }
    *text = rest;
    Some(WrittenDate {
        parts: [first.parse().ok()?, second.parse().ok()?, third.parse().ok()?],
        order,
    })
}

fn clock(text: &mut &str) -> Option<f64> {
    let mut rest = *text;
    let hour: f64 = digits(&mut rest, 2)?.parse().ok()?;
    take(&mut rest, &[':'])?;
    let minute: f64 = digits(&mut rest, 2)?.parse().ok()?;
    let mut second = 0.0;
    if take(&mut rest, &[':']).is_some() {
        second = digits(&mut rest, 2)?.parse().ok()?;
        let mut fraction = rest;
        if take(&mut fraction, &['.', ',']).is_some()
            && let Some(found) = digits(&mut fraction, 12)
        {
            second += format!("0.{found}").parse::<f64>().ok()?;
            rest = fraction;
        }
    }
    let mut hour = hour;
    let after = rest.trim_start();
    let half = after.get(..2).map(str::to_ascii_lowercase);
    if let Some(half @ ("am" | "pm")) = half.as_deref() {
        if !(1.0..=12.0).contains(&hour) {
            return None;
        }
        hour = hour % 12.0 + if half == "pm" { 12.0 } else { 0.0 };
        rest = &after[2..];
    }
    // 24:00 ends a day; a leap second counts as the next.
    if hour > 24.0 || minute > 59.0 || second >= 61.0 || (hour == 24.0 && minute + second > 0.0) {
        return None;
    }
    *text = rest;
    Some(hour * 3600.0 + minute * 60.0 + second)
}

fn offset(text: &mut &str) -> Option<Option<f64>> {
    let rest = text.trim();
    *text = "";
    if rest.is_empty() {
        return Some(None);
    }
    if matches!(rest, "Z" | "z" | "UTC" | "GMT") {
        return Some(Some(0.0));
    }
    let mut rest = rest;
    let sign = match take(&mut rest, &['+', '-', '\u{2212}'])? {
        '+' => 1.0,
        _ => -1.0,
    };
    let hours: f64 = digits(&mut rest, 2)?.parse().ok()?;
    take(&mut rest, &[':']);
    let minutes: f64 = if rest.is_empty() { 0.0 } else { digits(&mut rest, 2)?.parse().ok()? };
    (rest.is_empty() && hours <= 14.0 && minutes < 60.0)
        .then_some(Some(sign * (hours * 3600.0 + minutes * 60.0)))
}

impl Stamp {
    /// Reads a cell; `None` where it is no time.
    ///
    /// ```
    /// use nightbank::import::log::stamp::Stamp;
    /// assert_eq!(Stamp::read("1788300000"), Some(Stamp::Unix(1_788_300_000.0)));
    /// assert!(Stamp::read("2026-09-01T21:05:00+02:00").is_some());
    /// assert!(Stamp::read("13.2").is_none());
    /// ```
    #[must_use]
    pub fn read(cell: &str) -> Option<Self> {
        let cell = cell.trim();
        if cell.len() > 40 || is_plain(cell) {
            return None;
        }
        if let Some(unix) = unix(cell) {
            return Some(unix);
        }
        let mut rest = cell;
        let date = date(&mut rest);
        if date.is_some() {
            // Between date and time: a T, a comma, blanks.
            rest = rest.strip_prefix(['T', 't', ',']).unwrap_or(rest).trim_start();
        }
        if date.is_some() && rest.is_empty() {
            return Some(Self::Written { date, clock_s: None, offset_s: None });
        }
        let clock_s = clock(&mut rest)?;
        let offset_s = offset(&mut rest)?;
        Some(Self::Written { date, clock_s: Some(clock_s), offset_s })
    }
}

/// Seconds from 1970 from ten digits, milliseconds from thirteen, with or without decimals.
fn unix(cell: &str) -> Option<Stamp> {
    let plain = cell.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
    if !plain || cell.len() < 9 {
        return None;
    }
    let value: f64 = cell.parse().ok()?;
    [value, value / 1000.0].into_iter().find(|s| UNIX_S.contains(s)).map(Stamp::Unix)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(cell: &str, order: DateOrder) -> Option<(Date, Option<f64>, Option<f64>)> {
        match Stamp::read(cell)? {
            Stamp::Written { date, clock_s, offset_s } => {
                Some((date?.day(order)?, clock_s, offset_s))
            }
            Stamp::Unix(_) => None,
        }
    }

    #[test]
    fn dates_and_times_of_many_hands_are_read() {
        let day = Date::from_calendar_date(2026, Month::September, 3).expect("a day");
        let nine = Some(21.0 * 3600.0 + 5.0 * 60.0);
        for (cell, order, clock, offset) in [
            ("2026-09-03T21:05:00Z", DateOrder::Mdy, nine, Some(0.0)),
            ("2026-09-03 21:05", DateOrder::Mdy, nine, None),
            ("2026-09-03T21:05:00+02:00", DateOrder::Dmy, nine, Some(7200.0)),
            ("2026-09-03 21:05:00-0330", DateOrder::Dmy, nine, Some(-12_600.0)),
            ("2026/09/03 21:05", DateOrder::Dmy, nine, None),
            ("03.09.2026 21:05", DateOrder::Mdy, nine, None),
            ("3. 9. 2026, 21:05:00", DateOrder::Mdy, nine, None),
            ("03/09/2026 21:05", DateOrder::Dmy, nine, None),
            ("9/3/26 9:05 PM", DateOrder::Mdy, nine, None),
            ("09-03-2026 09:05:00pm", DateOrder::Mdy, nine, None),
            ("03.09.26", DateOrder::Mdy, None, None),
            ("2026-09-03 00:00:00.250", DateOrder::Ymd, Some(0.25), None),
        ] {
            assert_eq!(at(cell, order), Some((day, clock, offset)), "{cell}");
        }
        assert_eq!(Stamp::read("1788300000123"), Some(Stamp::Unix(1_788_300_000.123)));
        assert_eq!(
            Stamp::read("7:30"),
            Some(Stamp::Written { date: None, clock_s: Some(27_000.0), offset_s: None })
        );
    }

    #[test]
    fn what_is_no_time_is_none() {
        for cell in [
            "",
            "12",
            "13.2",
            "-4,5",
            "85 %",
            "2026-13",
            "25:00",
            "12:61",
            "13:00 pm",
            "1.2.3.4",
            "31/31",
            "hello",
            "12:00 noon",
            "2026-09-03T21:05:00+99:00",
            "1234567890123456",
        ] {
            assert_eq!(Stamp::read(cell), None, "{cell:?}");
        }
        // No day of the calendar in either order.
        let Some(Stamp::Written { date: Some(date), .. }) = Stamp::read("31/31/2026 10:00") else {
            panic!("written as a date")
        };
        assert_eq!((date.day(DateOrder::Dmy), date.day(DateOrder::Mdy)), (None, None));
    }
}
