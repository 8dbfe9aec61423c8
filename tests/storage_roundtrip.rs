//! What goes into a file or storage comes out of it, for any setup.

use crate::common;

use common::setups;
use nightbank::model::Setup;
use nightbank::store::{
    Library, Loaded, Notes, read_file, read_library, reconcile, write_file, write_library,
};
use proptest::collection::vec;
use proptest::prelude::*;

fn config(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..Default::default() }
}

fn library_of(setups: &[Setup]) -> Library {
    let mut library = Library::default();
    for (setup, now_ms) in setups.iter().zip(1_700_000_000_000..) {
        library.add(setup.clone(), now_ms).expect("room");
    }
    library
}

proptest! {
    #![proptest_config(config(150))]

    /// Every number to the last bit.
    #[test]
    fn a_file_gives_back_what_it_took(setups in vec(setups::setup(), 1..4)) {
        let text = write_file(&setups).expect("writes");
        let content = read_file(&text).expect("reads");
        prop_assert_eq!((content.adjusted, content.ignored.len()), (0, 0));
        prop_assert_eq!(content.setups, setups);
    }

    /// Not a number, infinities and hostile text do not get into a file.
    #[test]
    fn a_file_of_wild_setups_is_tame(setup in setups::wild_setup()) {
        let text = write_file(std::slice::from_ref(&setup)).expect("writes");
        let content = read_file(&text).expect("reads");
        prop_assert_eq!(content.adjusted, 0);
        prop_assert_eq!(&content.setups, &[setup.sanitised().0]);
    }

    #[test]
    fn storage_gives_back_what_it_took(setups in vec(setups::setup(), 0..4)) {
        let library = library_of(&setups);
        match read_library(&write_library(&library)) {
            Loaded::Ready { library: back, notes } => {
                prop_assert_eq!(back, library);
                prop_assert_eq!(notes, Notes::default());
            }
            other => prop_assert!(false, "{:?}", other),
        }
    }

    #[test]
    fn any_text_reads_or_is_refused(text in any::<String>()) {
        prop_assert!(read_file(&text).is_err());
        prop_assert!(matches!(read_library(&text), Loaded::Corrupt { .. }), "{}", text);
    }

    /// Whatever two tabs did, every setup either wrote last is there afterwards.
    #[test]
    fn two_tabs_lose_nothing(
        start in vec(setups::setup(), 0..4),
        ours in vec((0usize..5, setups::setup()), 0..4),
        theirs in vec((0usize..5, setups::setup()), 0..4),
    ) {
        let base = library_of(&start);
        let change = |changes: &[(usize, Setup)], now_ms: u64| {
            let mut library = base.clone();
            for (at, setup) in changes {
                let id = library.entries().get(*at).map(|entry| entry.id);
                match id {
                    Some(id) => library.update(id, setup.clone(), now_ms).expect("there"),
                    None => { library.add(setup.clone(), now_ms).expect("room"); }
                }
            }
            library
        };
        let (ours, theirs) = (change(&ours, 1_800_000_000_000), change(&theirs, 1_900_000_000_000));
        let done = reconcile(&base, &ours, &theirs);
        prop_assert!(done.left_over.is_empty());
        let nameless = |setup: &Setup| Setup { name: String::new(), ..setup.clone() };
        let kept: Vec<Setup> =
            done.library.entries().iter().map(|entry| nameless(&entry.setup)).collect();
        for side in [&ours, &theirs] {
            for entry in side.entries() {
                let as_it_was = base.get(entry.id).is_some_and(|old| old.setup == entry.setup);
                prop_assert!(as_it_was || kept.contains(&nameless(&entry.setup)));
            }
        }
        let mut ids: Vec<_> = done.library.entries().iter().map(|entry| entry.id).collect();
        ids.sort();
        ids.dedup();
        prop_assert_eq!(ids.len(), done.library.entries().len());
    }
}

/// Every field and choice of a file is described.
#[test]
fn the_description_names_every_field() {
    let description = include_str!("../src/store/FORMAT.md");
    let value = serde_json::to_value(common::sample::everything()).expect("plain data");
    let mut names = Vec::new();
    collect_names(&value, &mut names);
    assert!(names.len() > 100);
    for name in names {
        let quoted = [format!("`{name}`"), format!("\"{name}\"")];
        assert!(quoted.iter().any(|name| description.contains(name)), "{name} is not described");
    }
}

/// Names of fields, and of choices, which are the texts that are no names a user typed.
fn collect_names(value: &serde_json::Value, names: &mut Vec<String>) {
    match value {
        serde_json::Value::Object(fields) => {
            for (name, value) in fields {
                names.push(name.clone());
                match value.as_str() {
                    Some(choice) if !["name", "currency"].contains(&name.as_str()) => {
                        names.push(choice.to_owned());
                    }
                    _ => collect_names(value, names),
                }
            }
        }
        serde_json::Value::Array(items) => items.iter().for_each(|item| collect_names(item, names)),
        _ => {}
    }
}
