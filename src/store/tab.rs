//! What one tab knows of the storage it shares with other tabs.
//!
//! Storage has no lock, and two tabs may write before either hears of the other: then one writing
//! takes the place of the other unseen. So every stored library carries `Mark`s (`lineage`).
//! The newest state this tab remembers that the stored library contains is the merge base for
//! [`reconcile`]. A writing that was lost is not in common, so what was
//! typed in it counts as a change and comes back.

use super::library::Library;
use super::library_text::{Loaded, library_json, read_library};
use super::lineage::Mark;
use super::misfit::Misfit;
use super::reconcile::reconcile;
use serde_json::Value;

/// What one tab knows of storage.
#[derive(Clone, Debug)]
pub struct TabMemory {
    tab: u64,
    writes: u64,
    /// States read and written, the latest last.
    states: Vec<Library>,
    stored: Option<String>,
    newer: bool,
    /// Something of what is stored did not read as it stood.
    in_part: bool,
}

/// What came of a stored text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TakenIn {
    /// Both sides together; `None` where the text could not be read.
    pub library: Option<Library>,
    /// Names of setups that were changed on both sides and are kept beside the later version.
    pub beside: Vec<String>,
    /// Fields that did not fit.
    pub misfits: Vec<Misfit>,
    /// What could not be read, in whole or in part, or found no room, as JSON; to be set aside.
    pub unread: Vec<String>,
}

impl TabMemory {
    /// States that are remembered.
    const MOST_STATES: usize = 32;

    /// A tab with the number `tab` that found `library` in the text `stored`, or `newer` where a
    /// newer version of the page wrote it.
    #[must_use]
    pub fn new(tab: u64, library: Library, stored: Option<String>, newer: bool) -> Self {
        Self { tab, writes: 0, states: vec![library], stored, newer, in_part: false }
    }

    /// Something of what is stored did not read as it stood: what was made of it is to take its place, or the same would
    /// be found and told at every visit.
    pub fn read_in_part(&mut self) {
        self.in_part = true;
    }

    /// A newer version of the page wrote what is stored: it must not be written over.
    #[must_use]
    pub fn is_newer(&self) -> bool {
        self.newer
    }

    /// Whether `text` is what this tab last read or wrote.
    #[must_use]
    pub fn knows(&self, text: &str) -> bool {
        self.stored.as_deref() == Some(text)
    }

    /// Whether storage held nothing when this tab last looked.
    #[must_use]
    pub fn has_read_nothing(&self) -> bool {
        self.stored.is_none()
    }

    /// Storage was emptied.
    pub fn found_nothing(&mut self) {
        self.stored = None;
        self.newer = false;
        self.in_part = false;
    }

    /// Brings what another tab stored together with what this one has.
    pub fn take_in(&mut self, text: String, ours: &Library) -> TakenIn {
        let (theirs, misfits, unread) = match read_library(&text) {
            Loaded::Ready { library, notes } => (library, notes.misfits, notes.quarantined),
            Loaded::Newer { .. } => {
                self.newer = true;
                return TakenIn::default();
            }
            Loaded::Corrupt { raw, .. } => {
                // What this tab has is written over it once it is set aside.
                self.remember(Library::default());
                self.stored = Some(text);
                return TakenIn { unread: vec![raw], ..TakenIn::default() };
            }
        };
        self.in_part = !unread.is_empty();
        let nothing = Library::default();
        let common = self.states.iter().rev().find(|state| theirs.lineage.took_in(&state.lineage));
        let done = reconcile(common.unwrap_or(&nothing), ours, &theirs);
        let beside = done.conflict_copies.iter().filter_map(|id| done.library.get(*id));
        let left_over = done.left_over.iter();
        let taken = TakenIn {
            beside: beside.map(|entry| entry.setup.name.clone()).collect(),
            misfits,
            unread: unread
                .into_iter()
                .chain(left_over.filter_map(|entry| serde_json::to_string(&entry.setup).ok()))
                .collect(),
            library: Some(done.library),
        };
        self.remember(theirs);
        self.stored = Some(text);
        self.newer = false;
        taken
    }

    /// Whether storage lacks something of `ours`.
    #[must_use]
    pub fn lacks(&self, ours: &Library) -> bool {
        self.in_part || self.states.last().is_none_or(|latest| latest.entries() != ours.entries())
    }

    /// Whether there is something to write.
    #[must_use]
    pub fn has_news(&self, ours: &Library) -> bool {
        let nothing_stored = self.stored.is_none() && !ours.entries().is_empty();
        nothing_stored
            || self.lacks(ours)
            || self.states.last().map(|s| s.current) != Some(ours.current)
    }

    /// Writes `ours` through `keep`, marked as a writing of this tab.
    ///
    /// # Errors
    ///
    /// Those of `keep`; the tab then knows no more than before.
    pub fn write<E>(
        &mut self,
        ours: &Library,
        keep: impl FnOnce(&Value) -> Result<(), E>,
    ) -> Result<(), E> {
        self.writes += 1;
        let mark = Mark { tab: self.tab, write: self.writes };
        let mut library = ours.clone();
        library.lineage = self
            .states
            .iter()
            .rev()
            .fold(ours.lineage.clone(), |all, state| all.joined(&state.lineage))
            .signed(mark);
        let json = library_json(&library);
        keep(&json)?;
        self.stored = Some(json.to_string());
        self.in_part = false;
        self.remember(library);
        Ok(())
    }

    fn remember(&mut self, state: Library) {
        self.states.push(state);
        if self.states.len() > Self::MOST_STATES {
            self.states.remove(0);
        }
    }
}
