//! The address bar follows the user's setup, and links come in by it.
//!
//! The address is only ever replaced, never pushed, and only while an own setup is on screen. An
//! address this page wrote is marked in the history's state, so that a reload, or a tab opened
//! again, shows the user's own setup and not a preview of it. A browser may lose the mark where the
//! address is written while a reload is under way; the tab's own storage then tells what it showed.

use super::Setups;
use super::persistence::restart;
use crate::link::{self, LinkError, Opened, encode, quantised};
use crate::model::Setup;
use crate::store::{EntryId, Key, Library};
use crate::view::page_address::bare_path;
use crate::view::storage;
use js_sys::Reflect;
use leptos::prelude::*;
use wasm_bindgen::JsValue;

/// Pause in typing after which the address follows [ms]; browsers refuse too many changes.
const FOLLOW_AFTER_MS: u64 = 500;

/// Mark of an address this page wrote, with the id of the setup.
const OWN: &str = "nightbank own ";

/// The part after `#`, as the address bar has it.
fn fragment() -> String {
    let hash = window().location().hash().unwrap_or_default();
    hash.strip_prefix('#').map(str::to_owned).unwrap_or(hash)
}

/// The id in the mark of this address, if this page wrote it.
fn own_mark() -> Option<EntryId> {
    let state = window().history().ok()?.state().ok()?.as_string()?;
    state.strip_prefix(OWN)?.parse().ok().map(EntryId)
}

/// The own setup this tab showed before it was reloaded; `None` where it was not, or showed a link.
fn own_before_reload() -> Option<EntryId> {
    let entries = window().performance()?.get_entries_by_type("navigation");
    let kind = Reflect::get(&entries.get(0), &JsValue::from_str("type")).ok()?.as_string()?;
    if kind != "reload" {
        return None;
    }
    storage::text_of_tab(Key::Shown)?.parse().ok().map(EntryId)
}

/// Leaves the own setup that is on screen to this tab's storage, or that there is none. Where the
/// browser forbids it, the mark of the address has to do.
fn remember_shown(own: Option<EntryId>) {
    storage::set_text_of_tab(Key::Shown, own.map(|id| id.0.to_string()).as_deref());
}

/// The user's setup that a link of this content stands for.
fn same_as(library: &Library, setup: &Setup) -> Option<EntryId> {
    let current = library.current().into_iter();
    let all = current.chain(library.entries());
    all.into_iter().find(|entry| quantised(&entry.setup) == *setup).map(|entry| entry.id)
}

impl Setups {
    pub(super) fn follow_address(self) {
        let come_in = move |_| self.open_address(own_mark());
        let handle = window_event_listener_untyped("hashchange", come_in);
        on_cleanup(move || handle.remove());
    }

    pub(super) fn address_soon(self) {
        let _ = self.tab.try_update_value(|tab| {
            restart(&mut tab.address_timer, FOLLOW_AFTER_MS, move || {
                self.address_now();
                let _ = self.tab.try_update_value(|tab| tab.address_timer = None);
            });
        });
    }

    /// Brings the address in line with the setup on screen.
    pub(super) fn address_now(self) {
        if self.in_preview() {
            return;
        }
        self.flush();
        let path = bare_path();
        let (mark, url) = match self.current() {
            None => (JsValue::NULL, path),
            Some(entry) => {
                let mark = JsValue::from_str(&format!("{OWN}{}", entry.id.0));
                match encode(&entry.setup) {
                    Ok(text) => (mark, format!("{path}#{text}")),
                    Err(_) => (mark, path),
                }
            }
        };
        remember_shown(self.current().map(|entry| entry.id));
        let location = window().location();
        let now = [location.pathname(), location.search(), location.hash()];
        let now: String = now.into_iter().filter_map(Result::ok).collect();
        let Ok(history) = window().history() else { return };
        let marked = history.state().is_ok_and(|state| state == mark);
        if now != url || !marked {
            // Refused only where the address changes too often; the next change follows again.
            let _ = history.replace_state_with_url(&mark, "", Some(&url));
        }
    }

    /// Opens what stands in the address bar as the page starts.
    pub(super) fn open_first_address(self) {
        self.open_address(own_mark().or_else(own_before_reload));
    }

    /// Opens what stands in the address bar; `own` where it stands for that setup of the user.
    fn open_address(self, own: Option<EntryId>) {
        let fragment = fragment();
        if let Some(id) = own
            && self.library.with_untracked(|library| library.get(id).is_some())
        {
            self.select_quietly(id);
            self.link_fault.try_set(None);
            // What was changed last before a reload may not stand in the address yet.
            self.address_soon();
            return;
        }
        if !link::is_link(&fragment) {
            return;
        }
        // This page wrote the address, but the browser has lost what was stored: the address is
        // then all there is of the user's own setup.
        let lost = own.is_some()
            && self.tab.try_with_value(|tab| tab.memory.has_read_nothing()) == Some(true);
        match link::open(&fragment) {
            Ok(opened) if lost && self.library.with_untracked(|l| l.entries().is_empty()) => {
                self.add_setup(opened.setup);
            }
            opened => self.show_link(opened),
        }
    }

    /// Opens a link, or a text with one in it, beside the user's own setups. What does not open is
    /// told.
    pub fn open_link(self, pasted: &str) {
        self.show_link(link::open(pasted));
    }

    fn show_link(self, opened: Result<Opened, LinkError>) {
        remember_shown(None);
        match opened {
            Err(error) => {
                self.link_fault.try_set(Some(error));
            }
            Ok(opened) => {
                self.link_fault.try_set(None);
                self.flush();
                let own = self.library.with_untracked(|library| same_as(library, &opened.setup));
                match own {
                    Some(id) => self.select(id),
                    None => self.show_preview(opened.setup, opened.adjusted),
                }
            }
        }
    }

    /// Shows a setup of the library in this tab; what other tabs show is left alone.
    fn select_quietly(self, id: EntryId) {
        let shown = self.current().map(|entry| entry.id);
        if shown != Some(id) || self.in_preview() {
            self.select(id);
        }
    }
}
