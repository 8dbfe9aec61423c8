//! The layers point one way, calculation knows no browser, and no file grows beyond reading.

use std::fs;
use std::path::{Path, PathBuf};

/// A layer and what it may use of the crate.
const LAYERS: [(&str, &[&str]); 9] = [
    ("units", &[]),
    ("model", &["units"]),
    ("physics", &["units", "model"]),
    ("forecast", &["units", "model", "physics"]),
    ("advice", &["units", "model", "physics", "forecast"]),
    ("link", &["units", "model"]),
    ("store", &["units", "model", "link"]),
    ("i18n", &[]),
    ("view", &["units", "model", "physics", "forecast", "advice", "link", "store", "i18n"]),
];

/// Crates that only the page may touch.
const BROWSER: [&str; 7] =
    ["leptos", "web_sys", "js_sys", "wasm_bindgen", "gloo_storage", "plotters", "gloo"];

/// Longest file without a reason given in [`LONG_WITH_REASON`].
const MAX_LINES: usize = 400;

/// Longer files, and why they stay whole.
const LONG_WITH_REASON: [(&str, &str); 3] = [
    ("model/limits.rs", "one table of bounds and the one sanitiser that uses it"),
    ("advice/changes/ways.rs", "a way and the search for it"),
    ("advice/sizing.rs", "the search for sizes and what it finds"),
];

fn source() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

fn rust_files(dir: &Path, out: &mut Vec<PathBuf>) {
    let Ok(entries) = fs::read_dir(dir) else { return };
    for entry in entries.flatten() {
        let path = entry.path();
        if path.is_dir() {
            rust_files(&path, out);
        } else if path.extension().is_some_and(|end| end == "rs") {
            out.push(path);
        }
    }
}

/// Files of a layer: `src/layer.rs` and everything in `src/layer/`, with their path below `src`.
fn layer_files(layer: &str) -> Vec<(String, String)> {
    let root = source();
    let mut paths = Vec::new();
    rust_files(&root.join(layer), &mut paths);
    let single = root.join(format!("{layer}.rs"));
    if single.exists() {
        paths.push(single);
    }
    paths
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).expect("readable source");
            let name = path.strip_prefix(&root).expect("below src");
            (name.to_string_lossy().replace('\\', "/"), text)
        })
        .collect()
}

/// Code without comments (docs may name anything).
fn code(text: &str) -> impl Iterator<Item = &str> {
    text.lines().map(str::trim).filter(|line| !line.starts_with("//"))
}

#[test]
fn lower_layers_do_not_use_upper_ones() {
    for (layer, may_use) in LAYERS {
        for (name, text) in layer_files(layer) {
            for line in code(&text) {
                for (other, _) in LAYERS {
                    let used = line.contains(&format!("crate::{other}::"))
                        || line.contains(&format!("nightbank::{other}::"))
                        || line.contains(&format!("crate::{{{other}"));
                    let allowed = other == layer || may_use.contains(&other);
                    assert!(!used || allowed, "{name} uses {other}: {line}");
                }
            }
        }
    }
}

#[test]
fn only_the_page_knows_a_browser() {
    for (layer, _) in LAYERS.iter().filter(|(layer, _)| *layer != "view") {
        for (name, text) in layer_files(layer) {
            for line in code(&text) {
                for browser in BROWSER {
                    let used = line.contains(&format!("{browser}::"))
                        || line.contains(&format!("use {browser}"));
                    assert!(!used, "{name} uses {browser}: {line}");
                }
            }
        }
    }
}

#[test]
fn every_module_belongs_to_a_layer() {
    let lib = fs::read_to_string(source().join("lib.rs")).expect("readable source");
    for line in lib.lines().filter_map(|line| line.trim().strip_prefix("pub mod ")) {
        let name = line.trim_end_matches(';');
        assert!(LAYERS.iter().any(|(layer, _)| *layer == name), "no layer named {name}");
    }
}

#[test]
fn files_stay_short_enough_to_read() {
    let mut long = Vec::new();
    for (layer, _) in LAYERS {
        for (name, text) in layer_files(layer) {
            assert!(!name.contains("util") && !name.contains("helper"), "{name} says nothing");
            let lines = text.lines().count();
            if lines > MAX_LINES && !LONG_WITH_REASON.iter().any(|(file, _)| *file == name) {
                long.push(format!("{name}: {lines}"));
            }
        }
    }
    assert!(long.is_empty(), "split these or give a reason: {long:?}");
}

#[test]
fn reasons_for_length_are_still_needed() {
    for (file, _) in LONG_WITH_REASON {
        let text = fs::read_to_string(source().join(file)).expect("a file with a reason exists");
        assert!(text.lines().count() > MAX_LINES, "{file} is short again: drop its reason");
    }
}
