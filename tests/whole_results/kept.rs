//! Reports kept as text beside the tests: how values are written, compared and accepted.

use std::fmt::{Debug, Write};
use std::path::Path;

/// Significant digits of the numbers in a report.
const DIGITS: usize = 7;
/// Numbers this near to each other, as a share, are the same: another mathematics library may round otherwise.
const WITHIN_FRAC: f64 = 1e-6;
/// The same for numbers about zero.
const WITHIN: f64 = 1e-9;
/// Values that fit into a line of this length stand in one.
const WIDTH: usize = 160;
/// Differing lines that are told.
const TOLD: usize = 40;

/// A piece of a text: a number with a decimal point or an exponent, or anything else.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Token<'a> {
    Number(f64),
    Text(&'a str),
}

fn is_word(byte: u8) -> bool {
    byte.is_ascii_alphanumeric() || byte == b'_' || !byte.is_ascii()
}

/// End of the number that begins at `at` with a digit; `None` for whole numbers and for words that begin with digits.
fn number_end(bytes: &[u8], at: usize) -> Option<usize> {
    let digits =
        |from: usize| from + bytes[from..].iter().take_while(|b| b.is_ascii_digit()).count();
    let whole = digits(at);
    let mut end = whole;
    if bytes.get(end) == Some(&b'.') && digits(end + 1) > end + 1 {
        end = digits(end + 1);
    }
    if bytes.get(end) == Some(&b'e') {
        let sign = usize::from(bytes.get(end + 1) == Some(&b'-'));
        let exponent = digits(end + 1 + sign);
        if exponent > end + 1 + sign {
            end = exponent;
        }
    }
    (end > whole && bytes.get(end).is_none_or(|next| !is_word(*next))).then_some(end)
}

fn tokens(text: &str) -> Vec<Token<'_>> {
    let bytes = text.as_bytes();
    let mut found = Vec::new();
    let (mut from, mut at) = (0, 0);
    while at < bytes.len() {
        let begins = bytes[at].is_ascii_digit() && (at == 0 || !is_word(bytes[at - 1]));
        let Some(end) = number_end(bytes, at).filter(|_| begins) else {
            at += 1;
            continue;
        };
        let begin = if at > from && bytes[at - 1] == b'-' { at - 1 } else { at };
        if begin > from {
            found.push(Token::Text(&text[from..begin]));
        }
        found.push(Token::Number(text[begin..end].parse().expect("a number")));
        (from, at) = (end, end);
    }
    if from < bytes.len() {
        found.push(Token::Text(&text[from..]));
    }
    found
}

/// The text with its numbers to [`DIGITS`] significant digits.
fn rounded(text: &str) -> String {
    let mut out = String::new();
    for token in tokens(text) {
        match token {
            Token::Text(text) => out.push_str(text),
            Token::Number(number) => {
                let short = format!("{number:.*e}", DIGITS - 1).parse().unwrap_or(number);
                let short = if number.abs() < WITHIN { 0.0 } else { short };
                let _ = write!(out, "{short:?}");
            }
        }
    }
    out
}

/// What `{:#?}` writes, with all that fits into a line in one.
fn joined(pretty: &str) -> String {
    let mut open: Vec<(&str, Vec<String>)> = vec![("", Vec::new())];
    for line in pretty.lines() {
        let line = line.trim_start();
        if line.ends_with(['{', '(', '[']) {
            open.push((line, Vec::new()));
            continue;
        }
        let mut item = line.to_owned();
        if line.starts_with(['}', ')', ']'])
            && let Some((head, items)) = (open.len() > 1).then(|| open.pop()).flatten()
        {
            let room = if head.ends_with('{') { " " } else { "" };
            let inside = items.join(" ");
            let one = format!("{head}{room}{}{room}{line}", inside.trim_end_matches(','));
            let fits = one.len() + 4 * (open.len() - 1) <= WIDTH && !one.contains('\n');
            item = if fits {
                one
            } else {
                let items: Vec<String> = items
                    .iter()
                    .map(|item| format!("    {}", item.replace('\n', "\n    ")))
                    .collect();
                format!("{head}\n{}\n{line}", items.join("\n"))
            };
        }
        if let Some((_, items)) = open.last_mut() {
            items.push(item);
        }
    }
    open.pop().map_or_else(String::new, |(_, items)| items.join("\n"))
}

/// A report in the making.
#[derive(Default)]
pub struct Report(String);

impl Report {
    /// A heading.
    pub fn part(&mut self, title: &str) {
        let _ = writeln!(self.0, "\n# {title}");
    }

    /// A value under its name.
    pub fn say(&mut self, name: &str, value: &(impl Debug + ?Sized)) {
        let _ = writeln!(self.0, "{name}: {}", joined(&rounded(&format!("{value:#?}"))));
    }

    /// Values one by one.
    pub fn each<T: Debug>(&mut self, name: &str, values: impl IntoIterator<Item = T>) {
        let before = self.0.len();
        for value in values {
            self.say(&format!("- {name}"), &value);
        }
        if self.0.len() == before {
            let _ = writeln!(self.0, "- {name}: none");
        }
    }

    /// Numbers in a row.
    pub fn row(&mut self, name: &str, numbers: impl IntoIterator<Item = f64>) {
        let numbers: Vec<String> =
            numbers.into_iter().map(|number| rounded(&format!("{number:?}"))).collect();
        let _ = writeln!(self.0, "{name}: {}", numbers.join(" "));
    }

    /// A value as JSON.
    pub fn json(&mut self, name: &str, value: &serde_json::Value) {
        let pretty = serde_json::to_string_pretty(value).expect("JSON");
        let _ = writeln!(self.0, "{name}: {}", joined(&rounded(&pretty)));
    }

    /// A text as it is.
    pub fn text(&mut self, name: &str, text: &str) {
        let _ = writeln!(self.0, "{name}: {text}");
    }

    /// Holds the report to the one kept as `tests/results/{name}.txt`.
    #[track_caller]
    pub fn hold(self, name: &str) {
        let now = format!("{}\n", self.0.trim());
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("tests/results/{name}.txt"));
        let kept = std::fs::read_to_string(&path).unwrap_or_default();
        let differing = differences(&kept, &now);
        if differing.is_empty() {
            return;
        }
        if std::env::var_os("NIGHTBANK_ACCEPT").is_some() {
            std::fs::write(&path, now).expect("a folder that can be written to");
            return;
        }
        let shown = differing.iter().take(TOLD).map(String::as_str).collect::<Vec<_>>().join("\n");
        panic!(
            "tests/results/{name}.txt differs in {} lines (- kept, + now):\n{shown}\n\nIf the change is \
             meant: NIGHTBANK_ACCEPT=1 cargo test --test all whole_results, and look at the diff.",
            differing.len()
        );
    }
}

fn same(kept: &str, now: &str) -> bool {
    let (kept, now) = (tokens(kept), tokens(now));
    kept.len() == now.len()
        && kept.iter().zip(&now).all(|pair| match pair {
            (Token::Number(a), Token::Number(b)) => {
                (a - b).abs() <= WITHIN + WITHIN_FRAC * a.abs().max(b.abs())
            }
            (a, b) => a == b,
        })
}

/// Lines that differ. Where lines came or went, what lies between the first and the last that are the same.
fn differences(kept: &str, now: &str) -> Vec<String> {
    let (mut kept, mut now): (Vec<&str>, Vec<&str>) =
        (kept.lines().collect(), now.lines().collect());
    if kept.len() == now.len() {
        let pairs = kept.iter().zip(&now).filter(|(a, b)| !same(a, b));
        return pairs.flat_map(|(a, b)| [format!("- {a}"), format!("+ {b}")]).collect();
    }
    while let (Some(a), Some(b)) = (kept.last(), now.last())
        && same(a, b)
    {
        kept.pop();
        now.pop();
    }
    let begin = kept.iter().zip(&now).take_while(|(a, b)| same(a, b)).count();
    let gone = kept[begin..].iter().map(|line| format!("- {line}"));
    gone.chain(now[begin..].iter().map(|line| format!("+ {line}"))).collect()
}

/// What the other tests of this file rest on.
#[test]
fn a_report_is_held_word_by_word_and_its_numbers_nearly() {
    let kept =
        "nights: 5\nlowest: 0.4512345 at Watts(-12.5)\nname: p10_frac LiFePo4 2026-06-15 1e7Kx";
    assert_eq!(differences(kept, kept), Vec::<String>::new());
    let near = kept.replace("0.4512345", "0.4512347").replace("-12.5", "-12.500001");
    assert_eq!(differences(kept, &near), Vec::<String>::new());
    for (from, to) in [
        ("nights: 5", "nights: 6"),
        ("0.4512345", "0.4512355"),
        ("-12.5", "12.5"),
        ("p10", "p11"),
        ("06-15", "06-16"),
        ("1e7Kx", "1e8Kx"),
        ("lowest", "highest"),
    ] {
        assert_eq!(differences(kept, &kept.replace(from, to)).len(), 2, "{from}");
    }
    assert_eq!(differences(kept, &format!("{kept}\nmore")), ["+ more"]);
    assert_eq!(differences(&format!("first\n{kept}"), kept), ["- first"]);
    assert_eq!(differences("", "first"), ["+ first"]);
}

#[test]
fn numbers_are_rounded_and_short_values_stand_in_one_line() {
    assert_eq!(
        rounded("a 1.23456789 -0.000012345678 1e-12 -3e-10 7 v2.5x"),
        "a 1.234568 -1.234568e-5 0.0 0.0 7 v2.5x"
    );
    let value = (Some(1.5), vec![("a", 2), ("b", 3)]);
    assert_eq!(joined(&format!("{value:#?}")), "(Some(1.5), [(\"a\", 2), (\"b\", 3)])");
    let long = vec!["x".repeat(90); 2];
    assert_eq!(joined(&format!("{long:#?}")).lines().count(), 4);
}
