//! The user's setups: which there are, which one is on screen, and a setup out of a link beside
//! them.
//!
//! ```text
//! storage <-> library -> setup on screen -> library (after every change)
//! link    ------------->  as a preview   -> library only on "keep"
//! ```
//!
//! [`Setups::begin`] knows nothing of storage; [`storage_module`] brings what reads and writes.
//! `persistence` writes the library and merges other tabs' changes; `address` is the address bar.

mod address;
pub mod files;
mod notices;
mod persistence;
mod seen_hints;
pub mod storage_module;

use crate::link::LinkError;
use crate::model::Setup;
use crate::store::{Deleted, Entry, EntryId, Library, LibraryError, Misfit, TabMemory};
use crate::view::lang::{t, t_args};
use crate::view::state::AppState;
use crate::view::storage::StorageFault;
use crate::view::working::Working;
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::sync::Arc;

/// A setup out of a link, on screen beside the user's own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Preview {
    /// Values of the link that had to be pulled into bounds.
    pub adjusted: usize,
}

/// Whether the setups are saved in this browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SaveState {
    /// Written, or nothing to write yet.
    Saved,
    /// Not written, and why.
    NotSaved(StorageFault),
}

/// The setups; copies share them.
#[derive(Clone, Copy)]
pub struct Setups {
    /// The page.
    pub app: AppState,
    /// The user's own setups.
    pub library: RwSignal<Library>,
    /// The setup on screen came in a link and is not the user's own.
    pub preview: RwSignal<Option<Preview>>,
    /// A link that did not open.
    pub link_fault: RwSignal<Option<LinkError>>,
    /// Whether the setups are kept.
    pub save_state: RwSignal<SaveState>,
    /// What could not be read, as it was.
    pub aside: RwSignal<Vec<String>>,
    /// Something was set aside during this visit.
    pub aside_told: RwSignal<bool>,
    /// Stored values that had to be pulled into bounds.
    pub adjusted: RwSignal<usize>,
    /// Stored fields that did not fit.
    pub misfits: RwSignal<Vec<Misfit>>,
    /// Names of setups kept beside the version of another tab.
    pub beside: RwSignal<Vec<String>>,
    /// The page to print is built.
    pub printing: RwSignal<bool>,
    /// What came of a file.
    pub file_told: RwSignal<Option<String>>,
    /// A change of the user's own was written during or before this visit.
    pub has_own: Memo<bool>,
    tab: StoredValue<TabState>,
}

/// Something due soon; the page counts as at work until it is done or dropped.
struct Pending {
    timer: TimeoutHandle,
    _working: Working,
}

/// What this tab remembers; nothing of it is shown.
struct TabState {
    /// What it knows of storage.
    memory: TabMemory,
    /// What was set aside is not yet stored: nothing may be written over it.
    aside_pending: bool,
    /// The setup the page put on screen itself: different from it means that the user changed it.
    shown: Setup,
    save_timer: Option<Pending>,
    address_timer: Option<Pending>,
    first: fn() -> Setup,
    deleted: Option<Deleted>,
    left: Option<(Preview, Setup)>,
}

/// Time of a change [ms since 1970-01-01 UTC].
fn now_ms() -> u64 {
    js_sys::Date::now() as u64
}

/// A number that tells this tab from others; exact in every reader of JSON.
fn tab_number() -> u64 {
    (js_sys::Math::random() * (1_u64 << 52) as f64) as u64
}

impl Setups {
    /// `first` on screen, as nothing is read yet.
    #[must_use]
    pub fn begin(first: fn() -> Setup) -> Self {
        let shown = first();
        let app = AppState::new(shown.clone());
        let tab = TabState {
            memory: TabMemory::new(tab_number(), Library::default(), None, false),
            aside_pending: false,
            shown,
            save_timer: None,
            address_timer: None,
            first,
            deleted: None,
            left: None,
        };
        let library = RwSignal::new(Library::default());
        Self {
            app,
            library,
            preview: RwSignal::new(None),
            link_fault: RwSignal::new(None),
            save_state: RwSignal::new(SaveState::Saved),
            aside: RwSignal::new(Vec::new()),
            aside_told: RwSignal::new(false),
            adjusted: RwSignal::new(0),
            misfits: RwSignal::new(Vec::new()),
            beside: RwSignal::new(Vec::new()),
            printing: RwSignal::new(false),
            file_told: RwSignal::new(None),
            has_own: Memo::new(move |_| library.with(|library| !library.entries().is_empty())),
            tab: StoredValue::new(tab),
        }
    }

    /// Follows every change from here on.
    fn follow(self) {
        Effect::new(move |first: Option<()>| {
            self.app.setup.track();
            if first.is_some() && self.preview.with_untracked(Option::is_none) {
                self.save_soon();
                self.address_soon();
            }
        });
        self.follow_storage();
        self.follow_address();
    }

    fn in_preview(self) -> bool {
        self.preview.try_with_untracked(Option::is_some) == Some(true)
    }

    /// The library as it is now, for changing; `None` once the page is gone.
    fn peek(self) -> Option<Library> {
        self.library.try_get_untracked()
    }

    /// The setup of the user on screen.
    #[must_use]
    pub fn current(self) -> Option<Entry> {
        self.library.try_with_untracked(|library| library.current().cloned()).flatten()
    }

    /// Puts a setup on screen as the page's own doing.
    fn show(self, setup: Setup) {
        let _ = self.tab.try_update_value(|tab| setup.clone_into(&mut tab.shown));
        self.app.show(setup);
    }

    /// Puts the current setup of the library on screen, or what stands there where there is none.
    fn show_current(self) {
        let first = self.tab.try_with_value(|tab| tab.first);
        let setup = self.current().map(|entry| entry.setup).or_else(|| first.map(|first| first()));
        if let Some(setup) = setup {
            self.show(setup);
        }
    }

    /// Takes the changes on screen over into the library; a setup out of a link stays out.
    fn flush(self) {
        if self.in_preview() {
            return;
        }
        let (Some(mut library), Some(setup)) = (self.peek(), self.app.setup.try_get_untracked())
        else {
            return;
        };
        let changed = match library.current() {
            Some(entry) if entry.setup == setup => false,
            // It is there: `current` found it.
            Some(entry) => library.update(entry.id, setup, now_ms()).is_ok(),
            None => {
                let by_user = self.tab.try_with_value(|tab| tab.shown != setup) == Some(true);
                by_user && library.add(setup, now_ms()).is_ok()
            }
        };
        if changed {
            self.library.try_set(library);
        }
    }

    /// Changes the library by one deliberate step and keeps it.
    fn change<T>(
        self,
        step: impl FnOnce(&mut Library) -> Result<T, LibraryError>,
    ) -> Result<T, LibraryError> {
        self.flush();
        let mut library = self.peek().ok_or(LibraryError::NoSuchSetup)?;
        let done = step(&mut library);
        match &done {
            Ok(_) => {
                self.library.try_set(library);
                // What is on screen is the current setup, or the next flush would mix two up.
                if !self.in_preview() {
                    self.show_current();
                }
                self.save_now();
                self.address_now();
            }
            Err(LibraryError::Full) => self.app.tell(t("setups-full"), false),
            Err(LibraryError::NoSuchSetup) => self.app.tell(t("setups-gone"), false),
        }
        done
    }

    /// Shows another of the user's setups.
    pub fn select(self, id: EntryId) {
        self.flush();
        self.leave_preview();
        // A setup that is gone is told.
        let _ = self.change(|library| library.select(id));
    }

    /// Adds a setup and shows it; `false` where there is no room.
    pub fn add_setup(self, setup: Setup) -> bool {
        let added = self.change(|library| library.add(setup, now_ms())).is_ok();
        if added && self.in_preview() {
            self.leave_preview();
            self.address_now();
        }
        added
    }

    /// Adds setups out of a file and shows the first; gives how many found room.
    pub fn add_all(self, setups: Vec<Setup>) -> usize {
        let mut first = None;
        let mut count = 0;
        for setup in setups {
            let Ok(id) = self.change(|library| library.add(setup, now_ms())) else { break };
            first = first.or(Some(id));
            count += 1;
        }
        if let Some(id) = first {
            self.select(id);
        }
        count
    }

    /// Adds a copy of what is on screen, and shows it.
    pub fn duplicate(self) {
        if let Some(setup) = self.app.setup.try_get_untracked() {
            self.add_setup(setup);
        }
    }

    /// Deletes the setup `id`, with a message that offers to take it back.
    pub fn delete(self, id: EntryId) {
        let Ok(deleted) = self.change(|library| library.delete(id)) else { return };
        let name = crate::view::words::names::name_or_nameless(deleted.name());
        let _ = self.tab.try_update_value(|tab| tab.deleted = Some(deleted));
        let told = t_args("setups-deleted", &[("name", crate::i18n::Arg::Text(&name))]);
        self.app.tell_with(told, Arc::new(move || self.undelete()));
    }

    /// Puts back what was deleted last.
    pub fn undelete(self) {
        let deleted = self.tab.try_update_value(|tab| tab.deleted.take()).flatten();
        let Some(deleted) = deleted else { return };
        let mut kept = None;
        let done = self.change(|library| {
            library.restore(deleted).map_err(|(error, deleted)| {
                kept = Some(deleted);
                error
            })
        });
        if let Some(deleted) = kept {
            let _ = self.tab.try_update_value(|tab| tab.deleted = Some(deleted));
        }
        if let Ok(id) = done {
            self.select(id);
            self.app.tell(t("toast-undone"), false);
        }
    }

    /// Puts a setup out of a link on screen, beside the user's own.
    fn show_preview(self, setup: Setup, adjusted: usize) {
        self.flush();
        self.leave_preview();
        self.preview.try_set(Some(Preview { adjusted }));
        self.show(setup);
    }

    /// Makes the setup out of a link one of the user's own.
    pub fn keep_preview(self) {
        let Some(setup) = self.app.setup.try_get_untracked() else { return };
        if self.change(|library| library.add(setup, now_ms())).is_err() {
            return;
        }
        self.preview.try_set(None);
        if let Some(entry) = self.current() {
            let _ = self.tab.try_update_value(|tab| tab.shown = entry.setup.clone());
            // The name may have got a number; the way back through changes stays.
            self.app.setup.try_set(entry.setup);
        }
        self.address_now();
        self.app.tell(t("preview-kept"), false);
    }

    /// Shows the user's own setup again.
    pub fn leave_for_own(self) {
        self.leave_preview();
        self.address_now();
    }

    /// Ends the preview and shows the user's own. One that was changed can be taken back to.
    fn leave_preview(self) {
        let Some(Some(preview)) = self.preview.try_get_untracked() else { return };
        let Some(setup) = self.app.setup.try_get_untracked() else { return };
        let changed = self.tab.try_with_value(|tab| tab.shown != setup) == Some(true);
        self.preview.try_set(None);
        self.show_current();
        if changed {
            let _ = self.tab.try_update_value(|tab| tab.left = Some((preview, setup)));
            self.app.tell_with(t("preview-left"), Arc::new(move || self.return_to_left()));
        }
    }

    /// Shows the setup out of a link again that was left with changes.
    pub fn return_to_left(self) {
        let left = self.tab.try_update_value(|tab| tab.left.take()).flatten();
        let Some((preview, setup)) = left else { return };
        self.flush();
        self.leave_preview();
        self.preview.try_set(Some(preview));
        // As first shown, it would count as unchanged.
        let _ = self.tab.try_update_value(|tab| tab.shown = Setup::default());
        self.app.show(setup);
        self.app.tell(t("toast-undone"), false);
    }
}
