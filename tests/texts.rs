//! Every text of the page is in English, is used, and is in each language there is; no text is
//! written into the markup itself.

use crate::text_common;

use nightbank::i18n::Lang;
use nightbank::i18n::texts::{ENGLISH_OUTLOOK, ENGLISH_REST, ENGLISH_START, ENGLISH_STORAGE};
use nightbank::model::catalogue;
use std::collections::BTreeSet;
use std::path::Path;
use text_common::{files, language, messages, root, view_sources};

/// Keys written as `t("key")`, `t_args("key", ..)` or `key!("key")`.
fn keys_in(source: &str) -> BTreeSet<String> {
    let mut keys = BTreeSet::new();
    for opening in ["t(", "t_args(", "key!("] {
        for (at, _) in source.match_indices(opening) {
            let before = source[..at].chars().next_back();
            if before.is_some_and(|c| c.is_alphanumeric() || c == '_' || c == '.') {
                continue;
            }
            let rest = source[at + opening.len()..].trim_start();
            if let Some(literal) = rest.strip_prefix('"')
                && let Some(end) = literal.find('"')
            {
                keys.insert(literal[..end].to_owned());
            }
        }
    }
    keys
}

/// The keys of all sources of the view.
fn used_keys() -> BTreeSet<String> {
    let keys: BTreeSet<String> =
        view_sources().iter().flat_map(|(_, source)| keys_in(source)).collect();
    assert!(keys.len() > 50, "hardly any keys found: the pattern no longer fits");
    keys
}

/// Keys that come from data, not from the view: names of appliances.
fn made_from_data(key: &str) -> bool {
    catalogue::ALL.iter().any(|appliance| appliance.key == key)
}

#[test]
fn every_key_used_is_in_english() {
    let english = language("en");
    let missing: Vec<_> = used_keys().into_iter().filter(|k| !english.contains_key(k)).collect();
    assert!(missing.is_empty(), "not in English: {missing:#?}");
}

#[test]
fn every_english_key_is_used() {
    let used = used_keys();
    let idle: Vec<_> = language("en")
        .into_keys()
        .filter(|key| !used.contains(key) && !made_from_data(key))
        .collect();
    assert!(idle.is_empty(), "in English but never shown: {idle:#?}");
}

#[test]
fn every_language_has_every_key_with_the_same_values() {
    let english = language("en");
    for code in Lang::ALL.map(Lang::code) {
        let own = language(code);
        let missing: Vec<_> = english.keys().filter(|key| !own.contains_key(*key)).collect();
        assert!(missing.is_empty(), "{code} lacks {missing:#?}");
        let extra: Vec<_> = own.keys().filter(|key| !english.contains_key(*key)).collect();
        assert!(extra.is_empty(), "{code} has what English has not: {extra:#?}");
        for (key, variables) in &own {
            let given = |name: &&String| !english[key].contains(*name) && !is_fixed(name);
            assert!(
                !variables.iter().any(|name| given(&name)),
                "{code}: {key} asks for {variables:?}, but is given {:?}",
                english[key]
            );
        }
    }
}

/// A figure that any text may name in the reader's units, such as `temp_25`.
fn is_fixed(name: &str) -> bool {
    ["temp_", "warmer_", "km_"]
        .iter()
        .any(|kind| name.strip_prefix(kind).is_some_and(|figure| figure.parse::<u16>().is_ok()))
}

#[test]
fn figures_named_by_texts_are_those_the_page_gives_them() {
    let (_, lang) = view_sources()
        .into_iter()
        .find(|(path, _)| path.ends_with("view/lang.rs"))
        .expect("where texts are filled in");
    let mut used = BTreeSet::new();
    for code in Lang::ALL.map(Lang::code) {
        for name in language(code).into_values().flatten().filter(|name| is_fixed(name)) {
            assert!(lang.contains(&format!("(\"{name}\", ")), "{code}: nothing gives {name}");
            used.insert(name);
        }
    }
    assert!(used.len() > 10, "hardly any: {used:?}");
    let given = lang.matches("(\"temp_").count()
        + lang.matches("(\"warmer_").count()
        + lang.matches("(\"km_").count();
    assert_eq!(given, used.len(), "given to texts, but named by none");
}

/// Degrees, litres, metres, kilograms, mm2 and money are the reader's: no text and no view writes their unit itself.
/// Fridges are sold by litres in all countries (common practice, no source), so their names keep it.
#[test]
fn no_unit_of_the_reader_stands_fixed() {
    let space = |c: char| matches!(c, ' ' | '\u{a0}' | '\u{202f}');
    let after_a_figure = |text: &str, unit: &str| {
        text.match_indices(unit).any(|(at, _)| {
            let ends = !text[at + unit.len()..].starts_with(char::is_alphanumeric);
            let before = text[..at].trim_end_matches(space);
            let figure = before.ends_with(|c: char| c.is_ascii_digit() || c == '}');
            ends && figure && before.len() < at
        })
    };
    let mut faults = Vec::new();
    for code in Lang::ALL.map(Lang::code) {
        for path in files(&root().join("src/i18n").join(code), "ftl") {
            let text = std::fs::read_to_string(&path).expect("a Fluent file");
            for line in text.lines().filter(|line| !line.starts_with("app-")) {
                let signs = ["°C", "°F", "mm²", "cm²", "m³"].iter().any(|sign| line.contains(sign));
                let of_units = line.starts_with("units-us = ");
                let named = ["L", "m", "km", "kg", "cm", "€", "gal", "ft", "lb"];
                if !of_units && (signs || named.iter().any(|unit| after_a_figure(line, unit))) {
                    faults.push(format!("{code}: {line}"));
                }
            }
        }
    }
    for (path, source) in view_sources() {
        let of_the_currency = path.ends_with("view/reader.rs");
        let quoted = ["°C", "L", "L/min", "L/h", "m", "km", "mm²", "kg", "cm²", "m³", "€"];
        let of_types =
            ["Celsius", "Litres", "LitresPerMinute", "Metres", "Kilograms", "SquareMillimetres"];
        let written = quoted.iter().any(|unit| source.contains(&format!("\"{unit}\"")))
            || of_types.iter().any(|kind| source.contains(&format!("{kind}::UNIT")));
        if written && !of_the_currency {
            faults.push(path.display().to_string());
        }
    }
    assert!(faults.is_empty(), "the reader's unit comes from `Measure`: {faults:#?}");
}

#[test]
fn every_file_is_built_in_and_in_each_language() {
    let all =
        ENGLISH_START.iter().chain(ENGLISH_STORAGE).chain(ENGLISH_OUTLOOK).chain(ENGLISH_REST);
    let listed: BTreeSet<String> = all.map(|(name, _)| (*name).to_owned()).collect();
    for code in Lang::ALL.map(Lang::code) {
        let own: BTreeSet<String> = files(&root().join("src/i18n").join(code), "ftl")
            .iter()
            .filter_map(|path| path.file_name()?.to_str().map(str::to_owned))
            .collect();
        assert_eq!(own, listed, "files of {code}");
    }
}

/// Sources of what keeps the setups: they may use the texts that come with that part.
const IN_STORAGE: &[&str] = &["setups/", "words/setups.rs", "widgets/toast.rs"];

/// Sources of what shows the course and stands below the answer: they may use the texts that come
/// with it.
const IN_OUTLOOK: &[&str] = &["chart/", "outlook/"];

/// What the answer itself is worded with, although its source stands in [`IN_OUTLOOK`].
const OF_THE_ANSWER: &[&str] = &["load-unnamed", "moment", "term-soc-text", "term-chance-text"];

/// Sources of the view that are reached through `view/parts.rs` alone, or whose texts only show
/// there: they may use texts that come with a part.
const IN_PARTS: &[&str] = &[
    "loads/",
    "power/",
    "trip/",
    "change/",
    "tools/",
    "share/",
    "words/changes.rs",
    "words/loads.rs",
    "words/names.rs",
    "search.rs",
    "more.rs",
    "start.rs",
    "outlook/hours.rs",
    "widgets/caution.rs",
    "widgets/number_field.rs",
    "widgets/time_field.rs",
    // All words of the trade; those the start explains are in OF_THE_ANSWER.
    "widgets/tip.rs",
];

fn keys_of(files: &[(&str, &str)]) -> BTreeSet<String> {
    files.iter().flat_map(|(name, text)| messages(text, Path::new(name)).into_keys()).collect()
}

/// A key that is not there would show as it is.
#[test]
fn what_the_start_shows_is_in_the_texts_it_carries() {
    let (start, keep, look) =
        (keys_of(ENGLISH_START), keys_of(ENGLISH_STORAGE), keys_of(ENGLISH_OUTLOOK));
    let view = root().join("src/view");
    let mut seen = 0;
    for (path, source) in view_sources() {
        let name = path.strip_prefix(&view).expect("in the view").to_string_lossy();
        if IN_PARTS.iter().any(|part| name.starts_with(part)) {
            continue;
        }
        for key in keys_in(&source) {
            seen += 1;
            let with_keeper =
                keep.contains(&key) && IN_STORAGE.iter().any(|part| name.starts_with(part));
            let with_look =
                look.contains(&key) && IN_OUTLOOK.iter().any(|part| name.starts_with(part));
            assert!(
                start.contains(&key) || with_keeper || with_look,
                "{name}: {key} comes only with a part"
            );
        }
    }
    assert!(seen > 50, "hardly any keys found: the pattern no longer fits");
    for key in OF_THE_ANSWER {
        assert!(start.contains(*key), "{key} comes only with a part");
    }
}

#[test]
fn no_text_stands_in_the_markup() {
    let mut faults = Vec::new();
    let mut views = 0;
    for (path, source) in view_sources() {
        for (at, _) in source.match_indices("view! {") {
            views += 1;
            for text in written_out(&source[at + "view! {".len()..]) {
                faults.push(format!("{}: {text:?}", path.display()));
            }
        }
    }
    assert!(views > 20, "hardly any markup found: the pattern no longer fits");
    assert!(faults.is_empty(), "write these into the Fluent files: {faults:#?}");
}

/// Texts with letters in child position, and in attributes that people read, of the markup that
/// starts here. Code in braces is passed over; markup inside it is found by its own `view!`.
fn written_out(markup: &str) -> Vec<String> {
    let mut found = Vec::new();
    let chars: Vec<char> = markup.chars().collect();
    let (mut at, mut braces, mut parens) = (0, 0usize, 0usize);
    let mut in_tag = false;
    let mut attribute = String::new();
    while at < chars.len() {
        let c = chars[at];
        match c {
            '"' => {
                let mut text = String::new();
                at += 1;
                while at < chars.len() && chars[at] != '"' {
                    if chars[at] == '\\' {
                        at += 1;
                    }
                    text.push(chars[at]);
                    at += 1;
                }
                let read = !in_tag
                    || ["aria-label", "title", "placeholder", "alt"].contains(&attribute.as_str());
                if braces == 0 && parens == 0 && read && text.chars().any(char::is_alphabetic) {
                    found.push(text);
                }
            }
            '{' => braces += 1,
            '}' if braces == 0 => break,
            '}' => braces -= 1,
            '(' if braces == 0 => parens += 1,
            ')' if braces == 0 => parens = parens.saturating_sub(1),
            '<' if braces == 0 && parens == 0 && !in_tag => in_tag = true,
            '>' if braces == 0 && parens == 0 && !matches!(chars[at - 1], '-' | '=') => {
                in_tag = false;
            }
            '=' if in_tag && braces == 0 && parens == 0 => {
                let start = chars[..at]
                    .iter()
                    .rposition(|c| !(c.is_alphanumeric() || matches!(c, '-' | ':' | '_')))
                    .map_or(0, |i| i + 1);
                attribute = chars[start..at].iter().collect();
            }
            _ => {}
        }
        at += 1;
    }
    found
}

#[test]
fn the_markup_reader_sees_what_it_must() {
    assert_eq!(written_out(r#"<p>"Hello"</p> }"#), ["Hello"]);
    assert_eq!(written_out(r#"<p aria-label="Help">{t("key")}</p> }"#), ["Help"]);
    assert_eq!(written_out(r#"<p>" · " {x}</p> } "after""#), [] as [&str; 0]);
    assert_eq!(written_out(r#"<a on:click=move |_| f("x") class="b">{y("z")}"t"</a> }"#), ["t"]);
}
