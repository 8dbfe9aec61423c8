//! The chunk that reads and writes setups, as a table of functions for the start of the page.
//!
//! Reading and writing setups is a large share of the program, and a first visit has nothing to
//! read. So it travels in a part of its own (see [`crate::view::parts`]): the start waits for it
//! where there is something to read, and nothing can be changed before it is here.

use super::Setups;
use super::{files, notices};
use crate::store::Key;
use crate::view::climate_file;
use crate::view::lang::t;
use crate::view::offline::Offline;
use crate::view::outlook::ClimateOf;
use crate::view::recovery;
use crate::view::state::{AppState, Tab};
use crate::view::storage::{self, StoredText};
use crate::view::widgets::toasts;
use leptos::prelude::*;

/// The functions the chunk brings. The start calls them through this table and so does not link
/// them itself.
pub struct StorageModule {
    /// What it has to do before anything can be changed, in this order: opens what this browser kept,
    /// or what the address holds; follows every change; keeps the page for when there is no network.
    pub steps: [fn(Setups, Offline); 3],
    /// What the reader has to know of storage, links and a newer page.
    pub notices: fn(Setups, Offline) -> AnyView,
    /// The place where messages appear.
    pub toasts: fn(AppState) -> AnyView,
    /// Climate of a trip, out of the tables: only a place of the user's own needs them.
    pub climate: ClimateOf,
}

/// The table. Only its chunk may call this.
#[must_use]
pub fn storage_module() -> &'static StorageModule {
    static MODULE: StorageModule = StorageModule {
        steps: [open, follow, stay_usable],
        notices: notices::notices,
        toasts,
        climate: climate_file::climate,
    };
    &MODULE
}

fn open(setups: Setups, _: Offline) {
    recovery::offer_empty();
    setups.restore();
    setups.open_first_address();
}

fn follow(setups: Setups, _: Offline) {
    setups.follow();
    files::follow_drops(setups);
}

fn stay_usable(setups: Setups, offline: Offline) {
    offline.register();
    let app = setups.app;
    Effect::new(move |_| {
        // Another message may offer to take something back: this one waits until it is gone, and it never lies
        // over the answer.
        let free = app.tab.get() != Tab::Nights && app.toast.with(Option::is_none);
        if offline.stored_now.get() && free {
            offline.stored_now.set(false);
            app.tell(t("offline-ready"), false);
        }
    });
    if let Some(host) = document().get_element_by_id("app") {
        // Tells measurements and tests that nothing typed or dropped is lost from here on. Fails only
        // for an invalid attribute name.
        let _ = host.set_attribute("data-keeps", "");
    }
}

/// Whether storage or the address holds something that a start has to read first.
#[must_use]
pub fn something_to_read() -> bool {
    let stored =
        |key: Key| matches!(storage::text(key), StoredText::Text(text) if !text.trim().is_empty());
    let address = window().location().hash().unwrap_or_default();
    stored(Key::Library) || stored(Key::SetAside) || address.len() > 1
}
