//! One of a thing is told as one and two as many, in every language; and every message is filled in
//! as Fluent's own library does it.

use crate::text_common;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use nightbank::i18n::texts::{ENGLISH_OUTLOOK, ENGLISH_REST, ENGLISH_STORAGE};
use nightbank::i18n::{Arg, Lang, Texts};
use std::collections::BTreeMap;
use std::fs;
use text_common::{files, language, messages, plural_category, root, view_sources};

/// All Fluent of a language.
fn source_of(lang: Lang) -> String {
    files(&root().join("src/i18n").join(lang.code()), "ftl")
        .iter()
        .map(|path| fs::read_to_string(path).expect("a Fluent file") + "\n")
        .collect()
}

/// The texts of a language as the page has them once every part is fetched.
fn texts_of(lang: Lang) -> Texts {
    let mut texts = Texts::new(lang, source_of(lang), plural_category);
    [ENGLISH_STORAGE, ENGLISH_OUTLOOK, ENGLISH_REST]
        .iter()
        .for_each(|files| texts.add_english(files));
    assert_eq!(texts.faults(), &[] as &[String], "{}", lang.code());
    texts
}

/// Every message with every value set to `count`: numbers that are counted as the page passes them,
/// all else as text that shows the same. Of a fraction (1.5 hours) a message that counts whole things
/// gets the whole part.
fn with_count(lang: Lang, count: f64, mut tell: impl FnMut(&str, &[(&str, Arg<'_>)])) {
    let shown = count.to_string();
    for path in files(&root().join("src/i18n").join(lang.code()), "ftl") {
        let source = fs::read_to_string(&path).expect("a Fluent file");
        for (key, variables) in messages(&source, &path) {
            let args: Vec<(&str, Arg<'_>)> = variables
                .iter()
                .filter(|name| !name.ends_with("_n"))
                .map(|name| {
                    let arg = if variables.contains(&format!("{name}_n")) {
                        Arg::Shown(&shown, count)
                    } else if source.contains(&format!("{{ ${name} ->")) {
                        Arg::Count(count as i32)
                    } else {
                        Arg::Text(&shown)
                    };
                    (name.as_str(), arg)
                })
                .collect();
            tell(&key, &args);
        }
    }
}

/// The texts of all messages with `count`, by key.
fn counted(lang: Lang, count: i32) -> BTreeMap<String, String> {
    let texts = texts_of(lang);
    let mut said = BTreeMap::new();
    with_count(lang, f64::from(count), |key, args| {
        let text = texts.text(key, args);
        assert!(texts.has_own(key) && text != key, "{}: {key}", lang.code());
        said.insert(key.to_owned(), text);
    });
    said
}

/// What is counted, one and many.
const COUNTED: &[(Lang, &[(&str, &str)])] = &[
    (
        Lang::En,
        &[
            ("night", "nights"),
            ("day", "days"),
            ("hour", "hours"),
            ("month", "months"),
            ("appliance", "appliances"),
            ("setup", "setups"),
            ("change", "changes"),
            ("run", "runs"),
            ("thing", "things"),
            ("value", "values"),
            ("field", "fields"),
            ("place", "places"),
            ("combination", "combinations"),
            ("reading", "readings"),
            ("time", "times"),
        ],
    ),
    (
        Lang::De,
        &[
            ("Nacht", "Nächte"),
            ("Nacht", "Nächten"),
            ("Tag", "Tage"),
            ("Tag", "Tagen"),
            ("Stunde", "Stunden"),
            ("Monat", "Monaten"),
            ("Gerät", "Geräte"),
            ("Setup", "Setups"),
            ("Änderung", "Änderungen"),
            ("Lauf", "Läufe"),
            ("Anschaffung", "Anschaffungen"),
            ("Wert", "Werte"),
            ("Feld", "Felder"),
            ("Ort", "Orte"),
            ("Kombination", "Kombinationen"),
            ("Messwert", "Messwerte"),
        ],
    ),
    (
        Lang::Fr,
        &[
            ("nuit", "nuits"),
            ("jour", "jours"),
            ("heure", "heures"),
            ("appareil", "appareils"),
            ("installation", "installations"),
            ("changement", "changements"),
            ("cycle", "cycles"),
            ("achat", "achats"),
            ("valeur", "valeurs"),
            ("champ", "champs"),
            ("lieu", "lieux"),
            ("combinaison", "combinaisons"),
            ("relevé", "relevés"),
        ],
    ),
    (
        Lang::Nl,
        &[
            ("nacht", "nachten"),
            ("dag", "dagen"),
            ("apparaat", "apparaten"),
            ("configuratie", "configuraties"),
            ("verandering", "veranderingen"),
            ("aankoop", "aankopen"),
            ("waarde", "waarden"),
            ("veld", "velden"),
            ("plaats", "plaatsen"),
            ("combinatie", "combinaties"),
            ("meting", "metingen"),
        ],
    ),
];

/// Messages whose number is a fixed limit above one, or is told only above one.
const NEVER_ONE: &[&str] = &[
    "from-nights",
    "loads-full",
    "site-fault-full",
    "wiring-full",
    "file-no-room",
    "file-too-many",
    "table-no-room",
    "table-too-wide",
];

/// Whether `text` has `number` and, the space aside, `word` behind it.
fn says(text: &str, number: &str, word: &str) -> bool {
    let words: Vec<&str> =
        text.split(|c: char| c.is_whitespace() || ",.;:()".contains(c)).collect();
    let number = |said: &str| said.trim_start_matches(['+', '±']) == number;
    words.windows(2).any(|pair| number(pair[0]) && pair[1] == word)
}

#[test]
fn one_of_a_thing_is_not_told_as_many_nor_two_as_one() {
    let counted_in: Vec<Lang> = COUNTED.iter().map(|(lang, _)| *lang).collect();
    assert_eq!(counted_in, Lang::ALL, "each language names what it counts");
    let mut faults = Vec::new();
    for (lang, nouns) in COUNTED {
        let (ones, twos) = (counted(*lang, 1), counted(*lang, 2));
        let mut seen = 0;
        for (key, text) in ones.iter().filter(|(key, _)| !NEVER_ONE.contains(&key.as_str())) {
            for (one, many) in *nouns {
                seen += usize::from(says(text, "1", one));
                if says(text, "1", many) {
                    faults.push(format!("{} {key}: {text}", lang.code()));
                }
                if says(&twos[key], "2", one) {
                    faults.push(format!("{} {key}: {}", lang.code(), twos[key]));
                }
            }
        }
        assert!(seen > 20, "{}: only {seen} counted things found", lang.code());
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

#[test]
fn the_reader_of_counts_sees_what_it_must() {
    assert!(says("lasts 1 nights.", "1", "nights"));
    assert!(says("+1\u{202f}nights on average", "1", "nights"));
    assert!(!says("lasts 11 nights", "1", "nights"));
    assert!(!says("1 night", "1", "nights"));
}

/// The page has to hand over the number with its value where a text chooses a plural by it; with
/// the text alone the key itself would show.
#[test]
fn shown_numbers_come_with_their_value() {
    let english = language("en");
    let mut seen = 0;
    for (path, source) in view_sources() {
        for (key, variables) in &english {
            let Some(at) = source.find(&format!("\"{key}\"")) else { continue };
            for name in variables.iter().filter_map(|name| name.strip_suffix("_n")) {
                // The call, or the closure that makes it, stands nearby.
                let handed = source.match_indices(&format!("(\"{name}\", ")).any(|(from, _)| {
                    let rest = &source[from + 1..];
                    let end = rest.find("(\"").into_iter().chain(rest.find(']')).min();
                    from + 1500 > at
                        && from < at + 400
                        && rest[..end.unwrap_or(rest.len())].contains(".arg()")
                });
                assert!(handed, "{}: {key} wants {name} with its value", path.display());
                seen += 1;
            }
        }
    }
    assert!(seen >= 10, "hardly any found: the pattern no longer fits");
}

/// `fluent-bundle` is the library of the Fluent project itself (version in `Cargo.lock`).
#[test]
fn messages_are_filled_in_as_fluent_does() {
    let mut compared = 0;
    for lang in Lang::ALL {
        let resource = FluentResource::try_new(source_of(lang)).expect("sound Fluent");
        let mut reference = FluentBundle::new(vec![lang.code().parse().expect("a code")]);
        reference.set_use_isolating(false);
        reference.add_resource(resource).expect("no key twice");
        let texts = texts_of(lang);
        for count in [0.0, 1.0, 1.5, 2.0, 5.0, 11.0, 100.0, 1000.0] {
            with_count(lang, count, |key, args| {
                let mut values = FluentArgs::new();
                for (name, arg) in args {
                    match arg {
                        Arg::Text(text) => values.set(*name, FluentValue::from(*text)),
                        Arg::Count(count) => values.set(*name, FluentValue::from(*count)),
                        Arg::Shown(text, number) => {
                            values.set(*name, FluentValue::from(*text));
                            values.set(format!("{name}_n"), FluentValue::from(*number));
                        }
                    }
                }
                let pattern = reference.get_message(key).and_then(|m| m.value()).expect("a text");
                let mut faults = Vec::new();
                let wanted = reference.format_pattern(pattern, Some(&values), &mut faults);
                assert!(faults.is_empty(), "{} {key}: {faults:?}", lang.code());
                assert_eq!(texts.text(key, args), wanted, "{} {key} with {count}", lang.code());
                compared += 1;
            });
        }
    }
    assert!(compared > 10_000, "only {compared} texts compared");
}
