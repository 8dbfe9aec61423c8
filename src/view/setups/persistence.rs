//! Saves the setups in this browser and merges what other tabs save.
//!
//! Nothing stored is written over unread: before each write the stored text is compared with the
//! one this tab knows, and reconciled where another tab was faster. What cannot be read is set
//! aside first; where even that finds no room, nothing is written at all.

use super::seen_hints::{self, SeenHint};
use super::{Pending, SaveState, Setups, tab_number};
use crate::model::Setup;
use crate::store::{Key, Library, Loaded, Misfit, TabMemory, TakenIn, read_library};
use crate::view::recovery;
use crate::view::storage::{self, StorageFault, StoredText};
use crate::view::words::names::name_or_nameless;
use crate::view::working::Working;
use leptos::prelude::*;
use std::time::Duration;

/// Pause in typing after which the setup is written [ms].
const SAVE_AFTER_MS: u64 = 300;

/// What was found on the way in.
struct Start {
    library: Library,
    stored: Option<String>,
    aside: Vec<String>,
    aside_now: bool,
    aside_pending: bool,
    kept: SaveState,
    adjusted: usize,
    misfits: Vec<Misfit>,
    in_part: bool,
}

/// Reads what this browser kept.
fn load() -> Start {
    let mut start = Start {
        library: Library::default(),
        stored: None,
        aside: set_aside_before(),
        aside_now: false,
        aside_pending: false,
        kept: SaveState::Saved,
        adjusted: 0,
        misfits: Vec::new(),
        in_part: false,
    };
    let mut unread = Vec::new();
    match storage::text(Key::Library) {
        StoredText::Blocked => start.kept = SaveState::NotSaved(StorageFault::Blocked),
        StoredText::Nothing => {}
        StoredText::Text(text) => {
            match read_library(&text) {
                Loaded::Ready { library, notes } => {
                    start.library = library;
                    start.adjusted = notes.adjusted;
                    start.misfits = notes.misfits;
                    start.in_part = !notes.quarantined.is_empty() || notes.adjusted > 0;
                    unread.extend(notes.quarantined);
                }
                Loaded::Newer { .. } => start.kept = SaveState::NotSaved(StorageFault::Newer),
                Loaded::Corrupt { raw, .. } => unread.push(raw),
            }
            start.stored = Some(text);
        }
    }
    if !unread.is_empty() {
        start.aside_now = true;
        start.aside_pending = !quarantine(&mut start.aside, unread);
    }
    remember(&start.library, start.library.current().map(|entry| &entry.setup));
    start
}

/// What was set aside on earlier visits. Where that does not read either it is one more text.
fn set_aside_before() -> Vec<String> {
    storage::get(Key::SetAside).unwrap_or_else(|| match storage::text(Key::SetAside) {
        StoredText::Text(text) => vec![text],
        _ => Vec::new(),
    })
}

/// Adds what could not be read to what is set aside; `false` where it could not be stored there.
fn quarantine(aside: &mut Vec<String>, unread: Vec<String>) -> bool {
    for text in unread {
        if !aside.contains(&text) {
            aside.push(text);
        }
    }
    storage::set(Key::SetAside, aside).is_ok()
}

/// Leaves a copy for the panel that is shown when the page breaks.
fn remember(library: &Library, on_screen: Option<&Setup>) {
    recovery::remember(library, on_screen);
}

/// Puts off what is due in `slot` by another pause.
pub(super) fn restart(slot: &mut Option<Pending>, after_ms: u64, run: impl FnOnce() + 'static) {
    let working = Working::begin();
    let timer = set_timeout_with_handle(run, Duration::from_millis(after_ms)).ok();
    let pending = timer.map(|timer| Pending { timer, _working: working });
    if let Some(earlier) = std::mem::replace(slot, pending) {
        earlier.timer.clear();
    }
}

impl Setups {
    /// Puts what this browser kept on screen.
    pub(super) fn restore(self) {
        let Start {
            library,
            stored,
            aside,
            aside_now,
            aside_pending,
            kept,
            adjusted,
            misfits,
            in_part,
        } = load();
        let newer = kept == SaveState::NotSaved(StorageFault::Newer);
        let mut memory = TabMemory::new(tab_number(), library.clone(), stored, newer);
        if in_part {
            memory.read_in_part();
        }
        let _ = self.tab.try_update_value(|tab| {
            tab.memory = memory;
            tab.aside_pending = aside_pending;
        });
        self.save_state.try_set(kept);
        self.aside.try_set(aside);
        self.aside_told.try_set(aside_now);
        self.adjusted.try_set(adjusted);
        self.misfits.try_set(misfits);
        let own = library.current().is_some();
        self.library.try_set(library);
        if own {
            self.show_current();
            SeenHint::NoneOfOwn.forget();
        }
        if in_part {
            self.save_now();
        }
    }

    pub(super) fn follow_storage(self) {
        let storage = window_event_listener(leptos::ev::storage, move |event| {
            // No key: everything was cleared.
            let ours = event.key().is_none_or(|key| Key::from_name(&key) == Some(Key::Library));
            if ours {
                self.take_in_other_tab();
            }
        });
        // The last keystrokes before the page goes away are kept too; phones may end a page in the
        // background without a word. The address stays as it is: written while the page is reloaded, it
        // loses its mark, and one's own setup of a moment ago would come back as somebody's link. With
        // the mark it opens what is kept.
        let hide = window_event_listener_untyped("pagehide", move |_| self.save_now());
        let hidden = window_event_listener_untyped("visibilitychange", move |_| {
            if document().hidden() {
                self.save_now();
            }
        });
        on_cleanup(move || {
            storage.remove();
            hide.remove();
            hidden.remove();
        });
    }

    pub(super) fn save_soon(self) {
        let _ = self.tab.try_update_value(|tab| {
            restart(&mut tab.save_timer, SAVE_AFTER_MS, move || {
                self.save_now();
                let _ = self.tab.try_update_value(|tab| tab.save_timer = None);
            });
        });
    }

    /// Writes the setups to this browser now.
    pub fn save_now(self) {
        self.flush();
        let written = self.write();
        self.note(written);
    }

    fn note(self, written: Result<(), StorageFault>) {
        let kept = match written {
            Ok(()) => SaveState::Saved,
            Err(fault) => SaveState::NotSaved(fault),
        };
        if self.save_state.try_get_untracked() != Some(kept) {
            self.save_state.try_set(kept);
        }
        let on_screen = self.app.setup.try_get_untracked();
        let _ = self.library.try_with_untracked(|library| remember(library, on_screen.as_ref()));
    }

    fn write(self) -> Result<(), StorageFault> {
        match storage::text(Key::Library) {
            StoredText::Blocked => return Err(StorageFault::Blocked),
            StoredText::Text(text) => {
                if self.tab.try_with_value(|tab| tab.memory.knows(&text)) != Some(true) {
                    self.take_in(text);
                }
            }
            StoredText::Nothing => {
                let _ = self.tab.try_update_value(|tab| tab.memory.found_nothing());
            }
        }
        let Some(library) = self.peek() else { return Ok(()) };
        let state = self.tab.try_with_value(|tab| {
            (tab.memory.is_newer(), tab.aside_pending, tab.memory.has_news(&library))
        });
        let Some((newer, pending, news)) = state else { return Ok(()) };
        if newer {
            return Err(StorageFault::Newer);
        }
        if pending {
            let aside = self.aside.try_get_untracked().unwrap_or_default();
            storage::set(Key::SetAside, &aside)?;
            let _ = self.tab.try_update_value(|tab| tab.aside_pending = false);
        }
        if !news {
            return Ok(());
        }
        let written = self.tab.try_update_value(|tab| {
            tab.memory.write(&library, |json| storage::set(Key::Library, json))
        });
        written.unwrap_or(Ok(()))?;
        seen_hints::ask_to_persist();
        Ok(())
    }

    /// Merges another tab's write with this tab's unsaved changes.
    fn take_in_other_tab(self) {
        self.flush();
        let StoredText::Text(text) = storage::text(Key::Library) else {
            // Cleared: what this tab has is written again with its next change.
            return;
        };
        if self.tab.try_with_value(|tab| tab.memory.knows(&text)) == Some(true) {
            return;
        }
        self.take_in(text);
        // Written only where the other tab lacks something: two tabs that show different setups
        // would otherwise answer each other for ever.
        let lacking = self
            .tab
            .try_with_value(|tab| self.library.try_with_untracked(|ours| tab.memory.lacks(ours)));
        if lacking.flatten() == Some(true) {
            self.save_now();
        } else {
            let newer = self.tab.try_with_value(|tab| tab.memory.is_newer()) == Some(true);
            self.note(if newer { Err(StorageFault::Newer) } else { Ok(()) });
        }
    }

    /// Brings the stored library in `text` and this tab's together.
    fn take_in(self, text: String) {
        let ours = self.peek().unwrap_or_default();
        let taken = self.tab.try_update_value(|tab| tab.memory.take_in(text, &ours));
        let Some(TakenIn { library, beside, misfits, unread }) = taken else { return };
        if let Some(library) = library {
            self.library.try_set(library);
            if !beside.is_empty() {
                let beside = beside.iter().map(|name| name_or_nameless(name));
                let _ = self.beside.try_update(|names| names.extend(beside));
            }
            if !self.in_preview() {
                let current = self.current().map(|entry| entry.setup);
                let on_screen = self.app.setup.try_get_untracked();
                if current.is_some() && current != on_screen
                    || current.is_none() != ours.current().is_none()
                {
                    self.show_current();
                }
            }
        }
        if !unread.is_empty() {
            self.put_aside(unread, misfits);
        }
    }

    /// Sets aside what cannot be read, in whole or in fields of it, and tells the user; `false` where it could not be
    /// stored there, so that what it comes from must not be written over.
    pub fn put_aside(self, mut unread: Vec<String>, misfits: Vec<Misfit>) -> bool {
        let mut aside = set_aside_before();
        if self.tab.try_with_value(|tab| tab.aside_pending) == Some(true) {
            unread.extend(self.aside.try_get_untracked().unwrap_or_default());
        }
        let stored = quarantine(&mut aside, unread);
        self.aside.try_set(aside);
        self.aside_told.try_set(true);
        let _ = self.misfits.try_update(|told| told.extend(misfits));
        let _ = self.tab.try_update_value(|tab| tab.aside_pending = !stored);
        stored
    }

    /// Takes what was set aside out of this browser, because the user says so.
    pub fn drop_aside(self) {
        // Where storage is blocked there is nothing stored to take out.
        let _ = storage::remove(Key::SetAside);
        let _ = self.tab.try_update_value(|tab| tab.aside_pending = false);
        self.aside.try_set(Vec::new());
        self.aside_told.try_set(false);
        self.save_now();
    }
}
