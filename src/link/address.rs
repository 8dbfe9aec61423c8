//! From whatever was pasted to the letters and digits of a link.
//!
//! Mail programs wrap lines, chats percent-encode, forums add emphasis, brackets and full stops,
//! messengers slip in characters of no width. All of that goes; the link itself is letters and
//! digits only, so it ends at the first other character.

/// Characters of a pasted text that are looked at.
pub const MAX_READ_CHARS: usize = 4096;

/// Most places in one text that are tried as a link.
const MAX_CANDIDATES: usize = 16;

/// Most rounds of percent-decoding: an address inside an address is encoded twice.
const MAX_ROUNDS: usize = 3;

/// A run of letters and digits that may be a link.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Candidate {
    /// The run, without `#`.
    pub(super) text: String,
    /// Dots of omission follow: an abridged link as forums show it.
    pub(super) abridged: bool,
}

/// Every run of letters and digits that follows a `#`, in order; without any `#` the run at the
/// start. At most [`MAX_READ_CHARS`] characters are looked at.
pub(super) fn candidates(pasted: &str) -> Vec<Candidate> {
    let plain = unwrapped(pasted.chars().take(MAX_READ_CHARS));
    let mut text = plain;
    for _ in 0..MAX_ROUNDS {
        if text.contains('#') || !text.contains('%') {
            break;
        }
        text = percent_decoded(&text);
    }
    let mut found: Vec<Candidate> = text
        .split('#')
        .skip(1)
        .map(run)
        .filter(|candidate| !candidate.text.is_empty() || candidate.abridged)
        .take(MAX_CANDIDATES)
        .collect();
    if !text.contains('#') {
        let start = text.trim_start_matches(|c: char| !c.is_ascii_alphanumeric());
        let bare = run(start);
        if !bare.text.is_empty() {
            found.push(bare);
        }
    }
    found
}

fn run(rest: &str) -> Candidate {
    let end = rest.find(|c: char| !c.is_ascii_alphanumeric()).unwrap_or(rest.len());
    let (text, after) = rest.split_at(end);
    Candidate {
        text: text.to_owned(),
        abridged: after.starts_with("...") || after.starts_with('…'),
    }
}

/// Without white space, characters of no width, and the marks that mail puts at line ends (`=` of
/// quoted-printable) and line starts (`>` or `|` of a quoted reply).
fn unwrapped(chars: impl Iterator<Item = char>) -> String {
    let mut text = String::new();
    let mut line_start = false;
    for c in chars {
        match c {
            '\n' | '\r' => {
                if !line_start && text.ends_with('=') {
                    text.pop();
                }
                line_start = true;
            }
            '>' | '|' if line_start => {}
            c if c.is_whitespace() || no_width(c) => {}
            c => {
                line_start = false;
                text.push(c);
            }
        }
    }
    text
}

fn no_width(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{ad}' | '\u{34f}' | '\u{61c}' | '\u{180e}' | '\u{200b}'..='\u{200f}'
            | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{fe00}'..='\u{fe0f}'
            | '\u{feff}')
}

/// `%23` becomes `#`; escaped white space and characters of no width go; an escape of anything else
/// that is not ASCII, or a broken one, stays as it is.
fn percent_decoded(text: &str) -> String {
    let mut decoded = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find('%') {
        decoded.push_str(&rest[..at]);
        let escape = rest.get(at + 1..at + 3).filter(|hex| hex.is_ascii());
        match escape.and_then(|hex| u8::from_str_radix(hex, 16).ok()).filter(u8::is_ascii) {
            Some(byte) => {
                let c = char::from(byte);
                if !c.is_whitespace() && !c.is_control() {
                    decoded.push(c);
                }
                rest = &rest[at + 3..];
            }
            None => {
                if let Some(length) = no_width_escape(&rest[at..]) {
                    rest = &rest[at + length..]
                } else {
                    decoded.push('%');
                    rest = &rest[at + 1..];
                }
            }
        }
    }
    decoded.push_str(rest);
    decoded
}

/// Length of an escaped character of no width at the start of `text`, such as `%E2%80%8B`.
fn no_width_escape(text: &str) -> Option<usize> {
    (2..=3).find_map(|count| {
        let escaped = text.get(..3 * count)?;
        let bytes: Option<Vec<u8>> = (0..count)
            .map(|index| {
                let hex = escaped.get(3 * index..3 * index + 3)?.strip_prefix('%')?;
                u8::from_str_radix(hex, 16).ok()
            })
            .collect();
        let bytes = bytes?;
        let one = std::str::from_utf8(&bytes).ok()?;
        one.chars().all(|c| no_width(c) || c.is_whitespace()).then_some(3 * count)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(pasted: &str) -> Vec<String> {
        candidates(pasted).into_iter().map(|candidate| candidate.text).collect()
    }

    #[test]
    fn the_run_after_each_hash_is_found() {
        assert_eq!(texts("https://camp.example/app/#1abc"), ["1abc"]);
        assert_eq!(
            texts("see #2 on the list: https://camp.example/#1abc."),
            ["2onthelist", "1abc"]
        );
        assert_eq!(texts("1abc"), ["1abc"]);
        assert_eq!(texts("<*1abc*>"), ["1abc"]);
        assert!(texts("#").is_empty());
        assert!(texts("  ").is_empty());
    }

    #[test]
    fn escapes_are_undone_as_often_as_needed() {
        assert_eq!(texts("https://camp.example/%231abc"), ["1abc"]);
        assert_eq!(texts("https%3A%2F%2Fcamp.example%2F%25231abc"), ["1abc"]);
        assert_eq!(texts("%"), Vec::<String>::new());
        assert_eq!(texts("%2"), ["2"]);
        assert_eq!(texts("%é%231a"), ["1a"]);
    }

    #[test]
    fn line_ends_and_quotes_go() {
        assert_eq!(texts("#1ab\n c\u{200b}d"), ["1abcd"]);
        assert_eq!(texts("1ab%E2%80%8Bcd"), ["1abcd"]);
        assert_eq!(texts("> #1ab\r\n> > cd"), ["1abcd"]);
        assert_eq!(texts("#1ab=\r\ncd"), ["1abcd"]);
    }

    #[test]
    fn dots_of_omission_are_noticed() {
        assert!(candidates("https://camp.example/#1ab … yz")[0].abridged);
        assert!(candidates("https://camp.example/#1ab...yz")[0].abridged);
        assert!(!candidates("https://camp.example/#1ab.")[0].abridged);
    }
}
