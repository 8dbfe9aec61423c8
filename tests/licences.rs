//! What the page is built from: free licences, one registry, and nothing twice without a reason.
//!
//! Cargo itself tells which crates the build for the browser takes in. Advisories are not looked up
//! here, as that needs a list from the network: see "Dependencies" in DEVELOPERS.md.

use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

/// Licences that let anyone use, change and pass on the page; SPDX identifiers.
const FREE: [&str; 9] = [
    "Apache-2.0",
    "BSD-3-Clause",
    "BSL-1.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "Unicode-3.0",
    "Unlicense",
    "Zlib",
];

/// Crates that are there in two versions, and why.
const TWICE: [(&str, &str); 6] = [
    ("convert_case", "while building only: leptos's macros and its configuration differ"),
    ("gloo-utils", "leptos's fetching and our storage differ; a few functions"),
    ("rand_core", "the newer one comes with tests: cargo tells the features of both together"),
    ("syn", "while building only: macros move over one by one"),
    ("thiserror", "leptos's fetching lags behind; texts of errors"),
    ("thiserror-impl", "while building only: goes with thiserror"),
];

/// A crate of the build.
#[derive(Debug)]
struct Crate {
    name: String,
    version: String,
    licence: Option<String>,
    source: Option<String>,
}

fn text(value: &Value) -> Option<String> {
    value.as_str().map(str::to_owned)
}

/// The crates that go into the page, ourselves left out: normal and build dependencies, not those of tests.
fn of_the_page() -> Vec<Crate> {
    let told = Command::new(env!("CARGO"))
        .args(["metadata", "--format-version", "1", "--locked", "--features", "web"])
        .args(["--filter-platform", "wasm32-unknown-unknown"])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs");
    assert!(told.status.success(), "{}", String::from_utf8_lossy(&told.stderr));
    let told: Value = serde_json::from_slice(&told.stdout).expect("cargo tells JSON");
    let list = |value: &Value| value.as_array().expect("a list").clone();
    let packages: BTreeMap<String, Value> = list(&told["packages"])
        .into_iter()
        .map(|package| (text(&package["id"]).expect("an id"), package))
        .collect();
    let needs: BTreeMap<String, Vec<String>> = list(&told["resolve"]["nodes"])
        .iter()
        .map(|node| {
            let for_tests_only =
                |dep: &Value| list(&dep["dep_kinds"]).iter().all(|kind| kind["kind"] == "dev");
            let deps = list(&node["deps"]);
            let deps = deps.iter().filter(|dep| !for_tests_only(dep));
            let ids = deps.map(|dep| text(&dep["pkg"]).expect("an id")).collect();
            (text(&node["id"]).expect("an id"), ids)
        })
        .collect();
    let root = text(&told["resolve"]["root"]).expect("our own id");
    let mut seen = BTreeSet::new();
    let mut open = needs[&root].clone();
    while let Some(id) = open.pop() {
        if seen.insert(id.clone()) {
            open.extend(needs[&id].iter().cloned());
        }
    }
    seen.iter()
        .map(|id| {
            let package = &packages[id];
            Crate {
                name: text(&package["name"]).expect("a name"),
                version: text(&package["version"]).expect("a version"),
                licence: text(&package["license"]),
                source: text(&package["source"]),
            }
        })
        .collect()
}

/// Whether an SPDX expression can be met with [`FREE`] alone: one side of each `OR`, both sides of
/// each `AND`, which binds tighter. Old manifests write `/` for `OR`.
fn is_free(expression: &str) -> bool {
    let spaced = expression.replace('/', " OR ").replace('(', " ( ").replace(')', " ) ");
    let words: Vec<&str> = spaced.split_whitespace().collect();
    let mut at = 0;
    let free = either(&words, &mut at);
    free == Some(true) && at == words.len()
}

fn either(words: &[&str], at: &mut usize) -> Option<bool> {
    let mut free = both(words, at)?;
    while words.get(*at) == Some(&"OR") {
        *at += 1;
        free |= both(words, at)?;
    }
    Some(free)
}

fn both(words: &[&str], at: &mut usize) -> Option<bool> {
    let mut free = one(words, at)?;
    while words.get(*at) == Some(&"AND") {
        *at += 1;
        free &= one(words, at)?;
    }
    Some(free)
}

fn one(words: &[&str], at: &mut usize) -> Option<bool> {
    let word = words.get(*at)?;
    *at += 1;
    if *word != "(" {
        return Some(FREE.contains(word));
    }
    let free = either(words, at)?;
    let closed = words.get(*at) == Some(&")");
    *at += 1;
    closed.then_some(free)
}

#[test]
fn every_licence_is_free() {
    let crates = of_the_page();
    assert!(crates.len() > 50, "hardly any crates found: cargo tells something else");
    let other: Vec<_> =
        crates.iter().filter(|one| !one.licence.as_deref().is_some_and(is_free)).collect();
    assert!(other.is_empty(), "read these licences before adding to the list: {other:#?}");
}

#[test]
fn everything_comes_from_the_registry_of_crates() {
    let crates = of_the_page();
    let sources: BTreeSet<_> = crates.iter().map(|one| one.source.as_deref()).collect();
    let registry = |source: &Option<&str>| source.is_some_and(|s| s.starts_with("registry+"));
    assert!(sources.iter().all(registry), "no paths and no repositories: {sources:?}");
    assert_eq!(sources.len(), 1, "one registry: {sources:?}");
}

#[test]
fn nothing_is_there_twice_without_a_reason() {
    let mut versions: BTreeMap<String, Vec<String>> = BTreeMap::new();
    for one in of_the_page() {
        versions.entry(one.name).or_default().push(one.version);
    }
    versions.retain(|_, versions| versions.len() > 1);
    let twice: Vec<&str> = versions.keys().map(String::as_str).collect();
    assert_eq!(twice, TWICE.map(|(name, _)| name), "{versions:#?}");
}

#[test]
fn the_reader_of_licences_sees_what_it_must() {
    for free in ["MIT", "MIT/Apache-2.0", "Apache-2.0 OR GPL-2.0-only", "(MIT OR GPL-3.0) AND ISC"]
    {
        assert!(is_free(free), "{free}");
    }
    let bound = ["GPL-3.0", "MIT AND GPL-3.0", "MIT OR", "(MIT", "MIT ISC", "MIT)", "", "AND MIT"];
    for bound in bound {
        assert!(!is_free(bound), "{bound}");
    }
    // `AND` binds tighter: either MIT alone, or both of the others.
    assert!(is_free("MIT OR GPL-3.0 AND ISC"));
    assert!(!is_free("GPL-3.0 OR MIT AND AGPL-3.0"));
}
