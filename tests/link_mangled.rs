//! What chats, mail and forums do to a link, and what the page makes of it.

use crate::common;

use common::sample;
use nightbank::link::{LinkError, MAX_READ_CHARS, decode, encode, is_link, quantised};
use nightbank::model::Setup;
use proptest::prelude::*;

fn sent() -> (Setup, String) {
    let setup = sample::typical(12);
    let text = encode(&setup).expect("short enough");
    (quantised(&setup), text)
}

/// Each makes of a fragment what a reader may end up with.
type Mangling = (&'static str, fn(&str) -> String);

const HARMLESS: [Mangling; 37] = [
    ("as it is", |f| f.to_owned()),
    ("with its hash", |f| format!("#{f}")),
    ("whole address", |f| format!("https://camp.example/night/#{f}")),
    ("address of a file", |f| format!("https://camp.example/index.html#{f}")),
    ("with a query", |f| format!("https://camp.example/?from=chat#{f}")),
    ("query after the fragment", |f| format!("https://camp.example/#{f}?utm_source=chat")),
    ("parameter after the fragment", |f| format!("https://camp.example/#{f}&a=1")),
    ("full stop", |f| format!("https://camp.example/#{f}.")),
    ("comma", |f| format!("https://camp.example/#{f},")),
    ("closing bracket", |f| format!("(see https://camp.example/#{f})")),
    ("square brackets", |f| format!("[https://camp.example/#{f}]")),
    ("angle brackets", |f| format!("<https://camp.example/#{f}>")),
    ("angle bracket behind", |f| format!("https://camp.example/#{f}>")),
    ("exclamation mark", |f| format!("https://camp.example/#{f}!")),
    ("question mark", |f| format!("https://camp.example/#{f}?")),
    ("colon", |f| format!("https://camp.example/#{f}:")),
    ("asterisk", |f| format!("*https://camp.example/#{f}*")),
    ("bold", |f| format!("**https://camp.example/#{f}**")),
    ("underscore", |f| format!("_https://camp.example/#{f}_")),
    ("tilde", |f| format!("~~https://camp.example/#{f}~~")),
    ("quotation marks", |f| format!("\u{201e}https://camp.example/#{f}\u{201c}")),
    ("Markdown link", |f| format!("[my van](https://camp.example/#{f})")),
    ("BBCode link", |f| format!("[url=https://camp.example/#{f}]my van[/url]")),
    ("HTML link", |f| format!("<a href=\"https://camp.example/#{f}\">my van</a>")),
    ("hash encoded", |f| format!("https://camp.example/%23{f}")),
    ("hash encoded twice", |f| format!("https://camp.example/%2523{f}")),
    ("encoded whole", |f| format!("https%3A%2F%2Fcamp.example%2F%23{f}")),
    ("inside a redirect", |f| {
        format!("https://away.example/?to=https%3A%2F%2Fcamp.example%2F%23{f}&x=1")
    }),
    ("line wrap", |f| wrapped(&format!("https://camp.example/#{f}"), 76, "\r\n")),
    ("line wrap, indented", |f| wrapped(&format!("https://camp.example/#{f}"), 60, "\n    ")),
    ("line wrap, quoted", |f| wrapped(&format!("> https://camp.example/#{f}"), 72, "\n> ")),
    ("line wrap, quoted-printable", |f| {
        wrapped(&format!("https://camp.example/#{f}"), 75, "=\r\n")
    }),
    ("zero-width spaces", |f| wrapped(&format!("https://camp.example/#{f}"), 10, "\u{200b}")),
    ("soft hyphens", |f| wrapped(&format!("https://camp.example/#{f}"), 20, "\u{ad}")),
    ("byte order mark", |f| format!("\u{feff}https://camp.example/#{f}\u{2060}")),
    ("words around", |f| {
        format!("Our van, #3 this year: https://camp.example/#{f} what do you say?")
    }),
    ("next line", |f| format!("https://camp.example/#{f}\nGreetings from the lake")),
];

fn wrapped(text: &str, width: usize, break_with: &str) -> String {
    let chars: Vec<char> = text.chars().collect();
    let lines: Vec<String> = chars.chunks(width).map(|line| line.iter().collect()).collect();
    lines.join(break_with)
}

#[test]
fn a_link_survives_what_is_usually_done_to_it() {
    let (setup, fragment) = sent();
    for (what, mangle) in HARMLESS {
        let there = mangle(&fragment);
        assert_eq!(decode(&there).as_ref(), Ok(&setup), "{what}: {there}");
        assert!(is_link(&there), "{what}");
    }
}

#[test]
fn a_part_of_a_link_is_told_as_a_part() {
    let (_, fragment) = sent();
    let address = format!("https://camp.example/night/#{fragment}");
    let shown = format!("{} … {}", &address[..39], &address[address.len() - 10..]);
    let dots = format!("{}...{}", &address[..39], &address[address.len() - 10..]);
    for part in [shown.as_str(), dots.as_str(), "https://camp.example/#…", "#1", "#1…", "#1a"] {
        assert_eq!(decode(part), Err(LinkError::Truncated), "{part}");
    }
    for keep in 1..fragment.len() {
        assert_eq!(decode(&fragment[..keep]), Err(LinkError::Truncated), "first {keep}");
    }
}

#[test]
fn no_link_is_told_as_none() {
    for nothing in ["", "#", "  ", "https://camp.example/#", "\u{200b}#\u{feff}", "...", "<>"] {
        assert_eq!(decode(nothing), Err(LinkError::Empty), "{nothing:?}");
        assert!(!is_link(nothing));
    }
}

#[test]
fn only_so_many_characters_are_looked_at() {
    let (setup, fragment) = sent();
    let late = |before: usize| format!("{}#{fragment}", ".".repeat(before));
    assert_eq!(decode(&late(MAX_READ_CHARS - fragment.len() - 1)), Ok(setup));
    assert_eq!(decode(&late(MAX_READ_CHARS - 9)), Err(LinkError::Truncated));
    assert_eq!(decode(&late(MAX_READ_CHARS)), Err(LinkError::Empty));
    assert_eq!(decode(&"#1a".repeat(1_000_000)), Err(LinkError::Truncated));
}

#[test]
fn a_newer_link_is_told_as_newer() {
    let (_, fragment) = sent();
    let newer = format!("https://camp.example/#2{}", &fragment[1..]);
    assert_eq!(decode(&newer), Err(LinkError::Newer { version: "2".to_owned() }));
    assert!(is_link(&newer));
}

#[test]
fn a_place_on_the_page_is_no_link() {
    for anchor in ["#main", "#loads", "main", "https://camp.example/#top"] {
        assert!(!is_link(anchor), "{anchor}");
        assert_eq!(decode(anchor), Err(LinkError::Corrupt));
    }
}

#[test]
fn a_changed_character_is_noticed() {
    let (_, fragment) = sent();
    let other = |c: char| if c == 'x' { 'y' } else { 'x' };
    for at in 3..fragment.len() {
        let changed: String =
            fragment.chars().enumerate().map(|(i, c)| if i == at { other(c) } else { c }).collect();
        assert_eq!(decode(&changed), Err(LinkError::Corrupt), "character {at}");
    }
    let lower = fragment.to_lowercase();
    assert!(matches!(decode(&lower), Err(LinkError::Corrupt | LinkError::Truncated)));
    let swapped: String =
        [&fragment[..40], &fragment[41..42], &fragment[40..41], &fragment[42..]].concat();
    assert!(swapped == fragment || decode(&swapped) == Err(LinkError::Corrupt));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..Default::default() })]

    #[test]
    fn any_text_opens_or_is_refused(text in any::<String>()) {
        let _: Result<Setup, LinkError> = decode(&text);
    }

    #[test]
    fn any_letters_and_digits_are_refused(text in "#?1[0-9A-Za-z]{0,400}") {
        prop_assert!(decode(&text).is_err());
    }
}
