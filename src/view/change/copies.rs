//! Copies of setups set beside for comparing, kept in this browser.
//!
//! Every change reads what is stored, changes it and writes it at once, so that two tabs share one
//! list. What cannot be read is set aside first; what a newer version wrote is left alone, and the
//! copies then last as long as the page.

use crate::advice::compare::MOST_SETUPS;
use crate::model::Setup;
use crate::store::{FileError, Key, copies_json, read_copies};
use crate::view::setups::Setups;
use crate::view::storage::{self, StorageFault, StoredText};
use leptos::prelude::*;

/// The copies; copies of this share them.
#[derive(Clone, Copy, Default)]
pub struct Copies {
    setups: RwSignal<Vec<Setup>>,
    fault: RwSignal<Option<StorageFault>>,
}

impl Copies {
    /// Shows what is stored, and follows what other tabs store as long as the part is shown.
    pub fn follow(self, setups: Option<Setups>) {
        self.take_in(setups);
        let storage = window_event_listener(leptos::ev::storage, move |event| {
            if event.key().is_some_and(|key| Key::from_name(&key) == Some(Key::Compared)) {
                self.take_in(setups);
            }
        });
        on_cleanup(move || storage.remove());
    }

    /// The copies, in the order they were set beside.
    #[must_use]
    pub fn get(self) -> Vec<Setup> {
        self.setups.get()
    }

    /// How many there are.
    #[must_use]
    pub fn count(self) -> usize {
        self.setups.with(Vec::len)
    }

    /// There are some, and they are not kept.
    #[must_use]
    pub fn are_passing(self) -> bool {
        self.count() > 0 && self.fault.get().is_some()
    }

    /// Sets a copy beside, if there is room.
    pub fn add(self, setups: Option<Setups>, copy: Setup) {
        self.change(setups, move |copies| {
            if copies.len() + 1 < MOST_SETUPS {
                copies.push(copy.sanitised().0);
            }
        });
    }

    /// Puts a copy away.
    pub fn put_away(self, setups: Option<Setups>, index: usize) {
        let Some(Some(copy)) = self.setups.try_with_untracked(|known| known.get(index).cloned())
        else {
            return;
        };
        self.change(setups, move |copies| {
            if let Some(position) = copies.iter().position(|other| *other == copy) {
                copies.remove(position);
            }
        });
    }

    fn change(self, setups: Option<Setups>, edit: impl FnOnce(&mut Vec<Setup>)) {
        let stored = stored(setups);
        let mut copies = self.with_own(stored.as_ref().ok().and_then(Option::as_ref));
        edit(&mut copies);
        let written = stored.and_then(|_| storage::set(Key::Compared, &copies_json(&copies)));
        self.fault.try_set(written.err());
        self.setups.try_set(copies);
    }

    fn take_in(self, setups: Option<Setups>) {
        let stored = stored(setups);
        let copies = self.with_own(stored.as_ref().ok().and_then(Option::as_ref));
        if self.setups.try_with_untracked(|known| *known == copies) == Some(false) {
            self.setups.try_set(copies);
        }
        if let Err(fault) = stored {
            self.fault.try_set(Some(fault));
        }
    }

    /// What is stored, and what this page alone has because it could not be written.
    fn with_own(self, stored: Option<&Vec<Setup>>) -> Vec<Setup> {
        let own = self.setups.try_get_untracked().unwrap_or_default();
        let Some(stored) = stored else { return own };
        let mut copies = stored.clone();
        if self.fault.try_get_untracked().flatten().is_some() {
            copies.extend(own.into_iter().filter(|copy| !stored.contains(copy)));
        }
        copies
    }
}

/// What is stored; `None` where nothing is. An error where nothing must be written.
fn stored(setups: Option<Setups>) -> Result<Option<Vec<Setup>>, StorageFault> {
    match storage::text(Key::Compared) {
        StoredText::Blocked => Err(StorageFault::Blocked),
        StoredText::Nothing => Ok(None),
        StoredText::Text(text) => {
            let (copies, misfits) = match read_copies(&text) {
                Ok(read) if read.misfits.is_empty() => return Ok(Some(read.setups)),
                Ok(read) => (Some(read.setups), read.misfits),
                Err(FileError::Newer { .. }) => return Err(StorageFault::Newer),
                Err(_) => (None, Vec::new()),
            };
            if !setups.is_some_and(|setups| setups.put_aside(vec![text], misfits)) {
                return Err(StorageFault::NotWritten);
            }
            storage::set(Key::Compared, &copies_json(copies.as_deref().unwrap_or_default()))?;
            Ok(copies)
        }
    }
}
