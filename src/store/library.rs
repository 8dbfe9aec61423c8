//! The library: several setups by name, one of them on screen.

use super::file::MAX_SETUPS;
use super::lineage::Lineage;
use crate::model::Setup;
use crate::model::limits::MAX_NAME_CHARS;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Tells setups of a library apart; never given twice in one library.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct EntryId(pub u64);

/// A setup of the library. Its name is the setup's.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Entry {
    /// Its id.
    pub id: EntryId,
    /// The setup.
    pub setup: Setup,
    /// When it was last changed [ms since 1970-01-01 UTC].
    pub changed_at_ms: u64,
}

/// All setups.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Library {
    /// The setup on screen; `None` only where there is no setup.
    pub(super) current: Option<EntryId>,
    /// The setups, in the order they are listed.
    pub(super) entries: Vec<Entry>,
    /// Counts the changes.
    pub(super) revision: u64,
    /// The highest id given so far, deleted setups included.
    pub(super) last_id: EntryId,
    /// The writings this library has taken in.
    pub(super) lineage: Lineage,
}

/// Why the library did not change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LibraryError {
    /// There are [`MAX_SETUPS`] already.
    Full,
    /// No setup has this id, e.g. because another tab deleted it.
    NoSuchSetup,
}

impl fmt::Display for LibraryError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Full => write!(f, "there are {MAX_SETUPS} setups, which is the limit"),
            Self::NoSuchSetup => write!(f, "there is no such setup any more"),
        }
    }
}

impl std::error::Error for LibraryError {}

/// What a deletion took away; [`Library::restore`] puts it back.
#[derive(Clone, Debug, PartialEq)]
pub struct Deleted {
    entry: Box<Entry>,
    position: usize,
    was_current: bool,
}

impl Deleted {
    /// Name of the setup that was deleted.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.entry.setup.name
    }
}

impl Library {
    /// The setups, in the order they are listed.
    #[must_use]
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The setup on screen.
    #[must_use]
    pub fn current(&self) -> Option<&Entry> {
        self.current.and_then(|id| self.get(id))
    }

    /// The setup with this id.
    #[must_use]
    pub fn get(&self, id: EntryId) -> Option<&Entry> {
        self.entries.iter().find(|entry| entry.id == id)
    }

    /// Counts the changes; two libraries of the same history differ where it does.
    #[must_use]
    pub fn revision(&self) -> u64 {
        self.revision
    }

    /// Adds a setup at the end and shows it; a name already taken gets a number.
    ///
    /// # Errors
    ///
    /// [`LibraryError::Full`].
    pub fn add(&mut self, setup: Setup, now_ms: u64) -> Result<EntryId, LibraryError> {
        self.insert(self.entries.len(), setup, now_ms)
    }

    /// Adds a copy behind the setup `id` and shows it.
    ///
    /// # Errors
    ///
    /// [`LibraryError::Full`] and [`LibraryError::NoSuchSetup`].
    pub fn duplicate(&mut self, id: EntryId, now_ms: u64) -> Result<EntryId, LibraryError> {
        let position = self.position(id)?;
        let setup = self.find(id)?.setup.clone();
        self.insert(position + 1, setup, now_ms)
    }

    /// Puts `setup` in place of the setup `id`. One that is the same changes nothing.
    ///
    /// # Errors
    ///
    /// [`LibraryError::NoSuchSetup`].
    pub fn update(&mut self, id: EntryId, setup: Setup, now_ms: u64) -> Result<(), LibraryError> {
        let position = self.position(id)?;
        let (setup, _) = setup.sanitised();
        if let Some(entry) = self.entries.get_mut(position)
            && entry.setup != setup
        {
            entry.setup = setup;
            entry.changed_at_ms = now_ms;
            self.revision += 1;
        }
        Ok(())
    }

    /// Takes the setup `id` out. Its neighbour is shown where it was on screen.
    ///
    /// # Errors
    ///
    /// [`LibraryError::NoSuchSetup`].
    pub fn delete(&mut self, id: EntryId) -> Result<Deleted, LibraryError> {
        let position = self.position(id)?;
        let was_current = self.current == Some(id);
        let entry = Box::new(self.entries.remove(position));
        if was_current {
            let neighbour = self.entries.get(position).or(self.entries.last());
            self.current = neighbour.map(|entry| entry.id);
        }
        self.revision += 1;
        Ok(Deleted { entry, position, was_current })
    }

    /// Puts back what [`Library::delete`] took.
    ///
    /// # Errors
    ///
    /// [`LibraryError::Full`], with what could not be put back.
    pub fn restore(&mut self, deleted: Deleted) -> Result<EntryId, (LibraryError, Deleted)> {
        let id = deleted.entry.id;
        if self.get(id).is_some() {
            return Ok(id);
        }
        if self.entries.len() >= MAX_SETUPS {
            return Err((LibraryError::Full, deleted));
        }
        let Deleted { entry, position, was_current } = deleted;
        self.entries.insert(position.min(self.entries.len()), *entry);
        if was_current || self.current.is_none() {
            self.current = Some(id);
        }
        self.revision += 1;
        Ok(id)
    }

    /// Shows the setup `id`.
    ///
    /// # Errors
    ///
    /// [`LibraryError::NoSuchSetup`].
    pub fn select(&mut self, id: EntryId) -> Result<(), LibraryError> {
        self.position(id)?;
        if self.current != Some(id) {
            self.current = Some(id);
            self.revision += 1;
        }
        Ok(())
    }

    /// A name like `name` that no setup has: `Van`, then `Van 2`, `Van 3`.
    #[must_use]
    pub fn free_name(&self, name: &str) -> String {
        let taken = |name: &str| self.entries.iter().any(|entry| entry.setup.name == name);
        if name.is_empty() || !taken(name) {
            return name.to_owned();
        }
        let (stem, number) = split_number(name);
        (number + 1..=number + 1 + MAX_SETUPS as u32)
            .map(|number| {
                let ending = format!(" {number}");
                let room = MAX_NAME_CHARS.saturating_sub(ending.chars().count());
                stem.chars().take(room).chain(ending.chars()).collect::<String>()
            })
            .find(|name| !taken(name))
            .unwrap_or_else(|| name.to_owned())
    }

    fn insert(
        &mut self,
        position: usize,
        setup: Setup,
        now_ms: u64,
    ) -> Result<EntryId, LibraryError> {
        if self.entries.len() >= MAX_SETUPS {
            return Err(LibraryError::Full);
        }
        let (mut setup, _) = setup.sanitised();
        setup.name = self.free_name(&setup.name);
        let id = self.fresh_id(now_ms);
        let entry = Entry { id, setup, changed_at_ms: now_ms };
        self.entries.insert(position.min(self.entries.len()), entry);
        self.current = Some(id);
        self.revision += 1;
        Ok(id)
    }

    /// The time, so that two tabs hardly ever give the same id; above every id given here.
    pub(super) fn fresh_id(&mut self, now_ms: u64) -> EntryId {
        let highest = self.entries.iter().map(|entry| entry.id.0).max().unwrap_or(0);
        let id = now_ms.max(highest.max(self.last_id.0).saturating_add(1));
        self.last_id = EntryId(id);
        self.last_id
    }

    fn position(&self, id: EntryId) -> Result<usize, LibraryError> {
        let found = self.entries.iter().position(|entry| entry.id == id);
        found.ok_or(LibraryError::NoSuchSetup)
    }

    fn find(&self, id: EntryId) -> Result<&Entry, LibraryError> {
        self.get(id).ok_or(LibraryError::NoSuchSetup)
    }
}

/// `Van 3` is `Van` and 3; `Van` is `Van` and 1.
fn split_number(name: &str) -> (&str, u32) {
    let split = name.rsplit_once(' ');
    let numbered = split.and_then(|(stem, n)| Some((stem, n.parse::<u16>().ok()?)));
    match numbered {
        Some((stem, number)) if number >= 2 && !stem.is_empty() => (stem, u32::from(number)),
        _ => (name, 1),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(name: &str) -> Setup {
        Setup { name: name.to_owned(), ..Setup::default() }
    }

    fn names(library: &Library) -> Vec<&str> {
        library.entries().iter().map(|entry| entry.setup.name.as_str()).collect()
    }

    fn shown(library: &Library) -> Option<&str> {
        library.current().map(|entry| entry.setup.name.as_str())
    }

    #[test]
    fn what_is_added_is_shown_and_names_stay_apart() {
        let mut library = Library::default();
        let van = library.add(named("Van"), 1000).expect("room");
        library.add(named("Van"), 1000).expect("room");
        library.duplicate(van, 1000).expect("room");
        assert_eq!(names(&library), ["Van", "Van 3", "Van 2"]);
        assert_eq!(shown(&library), Some("Van 3"));
        let ids: std::collections::HashSet<_> = library.entries().iter().map(|e| e.id).collect();
        assert_eq!(ids.len(), 3);
    }

    #[test]
    fn a_long_name_keeps_its_length_with_a_number() {
        let mut library = Library::default();
        let long = "x".repeat(MAX_NAME_CHARS);
        let id = library.add(named(&long), 1).expect("room");
        library.duplicate(id, 1).expect("room");
        assert_eq!(names(&library)[1], format!("{} 2", "x".repeat(MAX_NAME_CHARS - 2)));
        assert!(library.entries().iter().all(|e| e.setup.clone().sanitised().1 == 0));
    }

    #[test]
    fn a_deletion_is_undone_in_place() {
        let mut library = Library::default();
        for name in ["A", "B", "C"] {
            library.add(named(name), 1).expect("room");
        }
        let b = library.entries()[1].id;
        library.select(b).expect("there");
        let before = library.clone();
        let deleted = library.delete(b).expect("there");
        assert_eq!((names(&library), shown(&library)), (vec!["A", "C"], Some("C")));
        assert_eq!(deleted.name(), "B");
        assert_eq!(library.delete(b), Err(LibraryError::NoSuchSetup));
        library.restore(deleted.clone()).expect("room");
        assert_eq!(library.entries, before.entries);
        assert_eq!(shown(&library), Some("B"));
        library.restore(deleted).expect("twice does no harm");
        assert_eq!(library.entries, before.entries);
    }

    #[test]
    fn the_last_setup_may_go_and_come_back() {
        let mut library = Library::default();
        let id = library.add(named("A"), 1).expect("room");
        let deleted = library.delete(id).expect("there");
        assert_eq!((library.entries().len(), library.current()), (0, None));
        library.restore(deleted).expect("room");
        assert_eq!(shown(&library), Some("A"));
    }

    #[test]
    fn a_deleted_id_is_not_given_again() {
        let mut library = Library::default();
        let id = library.add(named("A"), 500).expect("room");
        library.delete(id).expect("there");
        assert!(library.add(named("B"), 100).expect("room") > id);
    }

    #[test]
    fn a_full_library_says_so_and_loses_nothing() {
        let mut library = Library::default();
        for _ in 0..MAX_SETUPS {
            library.add(named("A"), 1).expect("room");
        }
        assert_eq!(library.add(named("A"), 1), Err(LibraryError::Full));
        let first = library.entries()[0].id;
        assert_eq!(library.duplicate(first, 1), Err(LibraryError::Full));
        let deleted = library.delete(first).expect("there");
        library.add(named("New"), 1).expect("room");
        let (error, deleted) = library.restore(deleted).expect_err("full");
        assert_eq!((error, deleted.name()), (LibraryError::Full, "A"));
    }

    #[test]
    fn only_a_real_change_counts() {
        let mut library = Library::default();
        let id = library.add(named("A"), 1).expect("room");
        let before = library.clone();
        library.update(id, named("A"), 99).expect("there");
        library.select(id).expect("there");
        assert_eq!(library, before);
        library.update(id, named("B"), 99).expect("there");
        assert_eq!(shown(&library), Some("B"));
        assert_eq!(library.entries()[0].changed_at_ms, 99);
        assert!(library.revision() > before.revision());
        let gone = EntryId(1 << 40);
        assert_eq!(library.update(gone, named("C"), 1), Err(LibraryError::NoSuchSetup));
        assert_eq!(library.select(gone), Err(LibraryError::NoSuchSetup));
    }
}
