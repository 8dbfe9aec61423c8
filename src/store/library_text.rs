//! The library as stored.
//!
//! The same JSON as a file, with ids, times and the setup on screen:
//!
//! ```json
//! { "format": "nightbank", "schema": 1, "revision": 5, "last_id": 2, "current": 2,
//!   "marks": [ { "tab": 7, "write": 3 } ],
//!   "entries": [ { "id": 2, "changed_at_ms": 0, "setup": {} } ] }
//! ```

use super::file::{self, FORMAT, FileError, MAX_SETUPS, ReadSetup};
use super::library::{Entry, EntryId, Library};
use super::lineage::{Lineage, Mark};
use super::migration::{SCHEMA, Step};
use super::misfit::Misfit;
use serde_json::{Value, json};

/// What reading changed or could not use.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Notes {
    /// Values that had to be pulled into bounds.
    pub adjusted: usize,
    /// Fields nobody knows; the first few of each setup.
    pub ignored: Vec<String>,
    /// Steps that brought an older schema to the present one.
    pub migrated: Vec<&'static str>,
    /// Fields that did not fit.
    pub misfits: Vec<Misfit>,
    /// Setups that do not read or of which a field did not fit, each as the JSON it was; to be set aside, not dropped.
    pub quarantined: Vec<String>,
}

/// What storage held.
#[derive(Clone, Debug, PartialEq)]
pub enum Loaded {
    /// A library.
    Ready {
        /// The library.
        library: Library,
        /// What reading changed.
        notes: Notes,
    },
    /// Of a newer version of the page, which another tab may run: must not be written over.
    Newer {
        /// Its schema.
        schema: u32,
    },
    /// Not readable; `raw` is to be set aside before anything is written.
    Corrupt {
        /// What was stored.
        raw: String,
        /// What is wrong with it.
        why: FileError,
    },
}

/// The library in the stored text.
#[must_use]
pub fn read_library(raw: &str) -> Loaded {
    match read(raw) {
        Ok((library, notes)) => Loaded::Ready { library, notes },
        Err(FileError::Newer { schema }) => Loaded::Newer { schema },
        Err(why) => Loaded::Corrupt { raw: raw.to_owned(), why },
    }
}

fn read(raw: &str) -> Result<(Library, Notes), FileError> {
    let mut object = file::object(raw)?;
    let steps = file::steps(&object)?;
    let Some(Value::Array(entries)) = object.remove("entries") else {
        return Err(FileError::NoSetups);
    };
    let marks = object.remove("marks").and_then(|marks| serde_json::from_value(marks).ok());
    let whole = |name: &str| object.get(name).and_then(Value::as_u64);
    let mut notes = Notes::default();
    let mut library = Library {
        current: whole("current").map(EntryId),
        entries: Vec::new(),
        revision: whole("revision").unwrap_or(0).min(MAX_COUNT),
        last_id: EntryId(whole("last_id").unwrap_or(0).min(MAX_COUNT)),
        // Marks that do not read are as good as none: at worst a version too many is kept.
        lineage: Lineage::from_marks(marks.unwrap_or_else(Vec::<Mark>::new)),
    };
    let highest = entries.iter().filter_map(stored_id).max().unwrap_or_default();
    library.last_id = library.last_id.max(highest);
    for (index, value) in entries.into_iter().enumerate() {
        let raw = value.to_string();
        let id = stored_id(&value).filter(|id| library.get(*id).is_none());
        match read_entry(value, &steps, index) {
            Some((read, changed_at_ms)) if library.entries.len() < MAX_SETUPS => {
                let id = id.unwrap_or_else(|| library.fresh_id(0));
                library.entries.push(Entry { id, setup: read.setup, changed_at_ms });
                notes.adjusted += read.adjusted;
                notes.ignored.extend(read.ignored);
                if !read.misfits.is_empty() {
                    notes.quarantined.push(raw);
                }
                notes.misfits.extend(read.misfits);
            }
            _ => notes.quarantined.push(raw),
        }
    }
    let there = |id: &EntryId| library.get(*id).is_some();
    let current = library.current.filter(there);
    library.current = current.or(library.entries.first().map(|entry| entry.id));
    notes.migrated = steps.iter().map(|step| step.name).collect();
    Ok((library, notes))
}

/// Ids, revisions and times stay exact in every reader of JSON up to twice this.
const MAX_COUNT: u64 = 1 << 52;

fn stored_id(entry: &Value) -> Option<EntryId> {
    entry.get("id")?.as_u64().filter(|&id| id <= MAX_COUNT).map(EntryId)
}

fn read_entry(value: Value, steps: &[Step], index: usize) -> Option<(ReadSetup, u64)> {
    let Value::Object(mut entry) = value else { return None };
    let changed_at_ms = entry.get("changed_at_ms").and_then(Value::as_u64).unwrap_or(0);
    let read = file::read_setup(entry.remove("setup")?, steps, &format!("entries[{index}]"))?;
    Some((read, changed_at_ms.min(MAX_COUNT)))
}

/// The text to store.
#[must_use]
pub fn write_library(library: &Library) -> String {
    library_json(library).to_string()
}

/// The same as a value, for stores that write JSON themselves.
#[must_use]
pub fn library_json(library: &Library) -> Value {
    let entries: Vec<Value> = library
        .entries
        .iter()
        .map(|entry| {
            let (setup, _) = entry.setup.clone().sanitised();
            json!({ "id": entry.id, "changed_at_ms": entry.changed_at_ms, "setup": setup })
        })
        .collect();
    json!({
        "format": FORMAT,
        "schema": SCHEMA,
        "revision": library.revision,
        "last_id": library.last_id,
        "current": library.current,
        "marks": library.lineage.marks(),
        "entries": entries,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{Chemistry, Load, Setup};

    fn library() -> Library {
        let mut library = Library::default();
        for name in ["A", "B"] {
            let setup =
                Setup { name: name.into(), loads: vec![Load::default()], ..Setup::default() };
            library.add(setup, 1_700_000_000_000).expect("room");
        }
        library.select(library.entries()[0].id).expect("there");
        library
    }

    fn ready(text: &str) -> (Library, Notes) {
        match read_library(text) {
            Loaded::Ready { library, notes } => (library, notes),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_library_comes_back() {
        let library = library();
        assert_eq!(ready(&write_library(&library)), (library, Notes::default()));
        let empty = Library::default();
        assert_eq!(ready(&write_library(&empty)), (empty, Notes::default()));
    }

    #[test]
    fn what_does_not_read_is_handed_back_as_it_was() {
        let whole = write_library(&library());
        for raw in ["", "{", "[]", "{\"format\":\"nightbank\",\"schema\":1}", &whole[..200]] {
            match read_library(raw) {
                Loaded::Corrupt { raw: kept, .. } => assert_eq!(kept, raw),
                other => panic!("{raw}: {other:?}"),
            }
        }
    }

    #[test]
    fn a_newer_library_is_left_alone() {
        let newer = write_library(&library()).replace("\"schema\":1", "\"schema\":2");
        assert_eq!(read_library(&newer), Loaded::Newer { schema: 2 });
    }

    #[test]
    fn what_is_no_setup_does_not_cost_the_others() {
        let mut json = library_json(&library());
        json["entries"][0]["setup"] = "lost".into();
        let (kept, notes) = ready(&json.to_string());
        assert_eq!(kept.entries().len(), 1);
        assert_eq!(kept.current().map(|e| e.setup.name.as_str()), Some("B"));
        assert_eq!(notes.quarantined, [json["entries"][0].to_string()]);
    }

    #[test]
    fn a_bad_field_costs_no_more_than_itself_and_is_set_aside_as_it_was() {
        let library = library();
        let mut json = library_json(&library);
        json["entries"][0]["setup"]["bank"]["chemistry"] = "stone".into();
        let (kept, notes) = ready(&json.to_string());
        let mut as_usual = library.clone();
        as_usual.entries[0].setup.bank.chemistry = Chemistry::default();
        assert_eq!(kept, as_usual);
        assert_eq!(notes.quarantined, [json["entries"][0].to_string()]);
        let misfit = &notes.misfits[0];
        let told = (misfit.setup.as_str(), misfit.part.as_str(), misfit.field.as_str());
        assert_eq!((notes.misfits.len(), told), (1, ("A", "bank", "chemistry")));
    }

    #[test]
    fn the_same_id_twice_gets_another() {
        let one = r#"{"id":4,"changed_at_ms":0,"setup":{"name":"A"}}"#;
        let two = r#"{"id":4,"changed_at_ms":0,"setup":{"name":"B"}}"#;
        let text = format!(
            r#"{{"format":"nightbank","schema":1,"current":9,"entries":[{one},{two},{{}},5]}}"#
        );
        let (kept, notes) = ready(&text);
        let ids: Vec<_> = kept.entries().iter().map(|entry| entry.id).collect();
        assert_eq!(ids, [EntryId(4), EntryId(5)]);
        assert_eq!(kept.current().map(|e| e.id), Some(EntryId(4)));
        assert_eq!(notes.quarantined, ["{}", "5"]);
    }

    #[test]
    fn numbers_out_of_bounds_are_counted() {
        let text = write_library(&library()).replacen("\"parallel\":1", "\"parallel\":200", 1);
        let (kept, notes) = ready(&text);
        assert_eq!(notes.adjusted, 1);
        assert_eq!(kept.entries()[0].setup.bank.parallel, 16);
    }
}
