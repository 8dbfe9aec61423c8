//! Browser storage, under the keys of [`Key`] and no others.
//!
//! It can be missing, forbidden or full. It is probed before first use (`LocalStorage` of gloo
//! panics where it may not be touched), and every failure is a value that the page shows.

use crate::store::Key;
use gloo_storage::{LocalStorage, Storage};
use serde::Serialize;
use serde::de::DeserializeOwned;
use std::cell::Cell;

/// Why something is not kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StorageFault {
    /// The browser forbids storage.
    Blocked,
    /// Storage is there, but writing failed; most often it is full.
    NotWritten,
    /// A newer version of the page wrote what is stored; this one must not write over it.
    Newer,
}

/// What stands under a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StoredText {
    /// Nothing.
    Nothing,
    /// This text.
    Text(String),
    /// The browser forbids looking.
    Blocked,
}

thread_local! {
    static USABLE: Cell<Option<bool>> = const { Cell::new(None) };
}

/// The browser's store, if it may be used at this moment.
fn usable() -> Option<web_sys::Storage> {
    let storage = web_sys::window()?.local_storage().ok()??;
    let usable = USABLE.get().unwrap_or_else(|| {
        let probe = Key::Probe.as_str();
        let works = storage.set_item(probe, "1").is_ok() && storage.remove_item(probe).is_ok();
        // A full store refuses the probe but can still be read.
        let readable = works || storage.length().is_ok_and(|entries| entries > 0);
        USABLE.set(Some(readable));
        readable
    });
    usable.then_some(storage)
}

/// The text under a key as it is.
#[must_use]
pub fn text(key: Key) -> StoredText {
    match usable().map(|storage| storage.get_item(key.as_str())) {
        Some(Ok(Some(text))) => StoredText::Text(text),
        Some(Ok(None)) => StoredText::Nothing,
        Some(Err(_)) | None => StoredText::Blocked,
    }
}

/// The value under a key; `None` where there is none, or none of this kind.
#[must_use]
pub fn get<T: DeserializeOwned>(key: Key) -> Option<T> {
    usable()?;
    LocalStorage::get(key.as_str()).ok()
}

/// Keeps a text as it is.
///
/// # Errors
///
/// [`StorageFault`] where the browser does not keep it.
pub fn set_text(key: Key, text: &str) -> Result<(), StorageFault> {
    let storage = usable().ok_or(StorageFault::Blocked)?;
    storage.set_item(key.as_str(), text).map_err(|_| StorageFault::NotWritten)
}

/// Keeps a value.
///
/// # Errors
///
/// [`StorageFault`] where the browser does not keep it.
pub fn set<T: Serialize>(key: Key, value: &T) -> Result<(), StorageFault> {
    usable().ok_or(StorageFault::Blocked)?;
    LocalStorage::set(key.as_str(), value).map_err(|_| StorageFault::NotWritten)
}

/// Takes a key of ours out; to be called only when the user asks for it.
///
/// # Errors
///
/// [`StorageFault::Blocked`].
pub fn remove(key: Key) -> Result<(), StorageFault> {
    let storage = usable().ok_or(StorageFault::Blocked)?;
    storage.remove_item(key.as_str()).map_err(|_| StorageFault::Blocked)
}

/// The store of this tab, which ends with it but survives a reload.
fn of_tab() -> Option<web_sys::Storage> {
    web_sys::window()?.session_storage().ok()?
}

/// The text under a key in this tab's store; `None` also where the browser forbids looking.
#[must_use]
pub fn text_of_tab(key: Key) -> Option<String> {
    of_tab()?.get_item(key.as_str()).ok()?
}

/// Keeps a text for this tab, or takes it out; gives whether the browser did so.
pub fn set_text_of_tab(key: Key, text: Option<&str>) -> bool {
    let Some(storage) = of_tab() else { return false };
    match text {
        Some(text) => storage.set_item(key.as_str(), text).is_ok(),
        None => storage.remove_item(key.as_str()).is_ok(),
    }
}
