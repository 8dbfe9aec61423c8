//! The Fluent files and the sources of the view, for the tests that read them.

#![allow(dead_code, reason = "each test file uses its own part")]

use fluent_bundle::FluentResource;
use intl_pluralrules::{PluralRuleType, PluralRules};
use nightbank::i18n::Lang;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

pub fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

/// The plural category of a number by the tables of CLDR in `intl_pluralrules`, where the page asks
/// the browser.
pub fn plural_category(lang: Lang, number: f64) -> String {
    let id: unic_langid::LanguageIdentifier = lang.code().parse().expect("a code");
    let rules = PluralRules::create(id, PluralRuleType::CARDINAL).expect("a known language");
    format!("{:?}", rules.select(number).expect("a number")).to_lowercase()
}

pub fn files(dir: &Path, extension: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let Ok(entries) = fs::read_dir(dir) else { return found };
    for entry in entries {
        let path = entry.expect("a directory entry").path();
        if path.is_dir() {
            found.extend(files(&path, extension));
        } else if path.extension().is_some_and(|e| e == extension) {
            found.push(path);
        }
    }
    found.sort();
    found
}

pub fn view_sources() -> Vec<(PathBuf, String)> {
    let sources: Vec<_> = files(&root().join("src/view"), "rs")
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).expect("a source file");
            (path, text)
        })
        .collect();
    assert!(sources.len() > 10, "the view has moved: this test reads nothing");
    sources
}

/// Message names of a Fluent file with the variables each uses.
pub fn messages(text: &str, from: &Path) -> BTreeMap<String, BTreeSet<String>> {
    let resource = FluentResource::try_new(text.to_owned())
        .unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", from.display()));
    drop(resource);
    let mut found: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut current = None;
    for line in text.lines() {
        let starts = line.starts_with(|c: char| c.is_ascii_alphabetic());
        if starts && let Some((name, _)) = line.split_once('=') {
            let name = name.trim().to_owned();
            let earlier = found.insert(name.clone(), BTreeSet::new());
            assert!(earlier.is_none(), "{}: {name} stands twice", from.display());
            current = Some(name);
        }
        if line.starts_with('#') {
            continue;
        }
        if let Some(name) = &current {
            for (at, _) in line.match_indices('$') {
                let variable: String = line[at + 1..]
                    .chars()
                    .take_while(|c| c.is_alphanumeric() || *c == '_')
                    .collect();
                found.get_mut(name).expect("just inserted").insert(variable);
            }
        }
    }
    found
}

pub fn language(code: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut all = BTreeMap::new();
    for path in files(&root().join("src/i18n").join(code), "ftl") {
        let text = fs::read_to_string(&path).expect("a Fluent file");
        for (key, variables) in messages(&text, &path) {
            let earlier = all.insert(key.clone(), variables);
            assert!(earlier.is_none(), "{key} stands in two files of {code}");
        }
    }
    all
}
