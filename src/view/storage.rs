//! What stays in this browser: the setup and the reader's preferences.
//!
//! Browser storage can be missing, forbidden or full. It is probed once before first use, only
//! keys with our own prefix are touched, and every failure is a value that the page shows.

use crate::model::Setup;
use gloo_storage::{LocalStorage, Storage};
use std::cell::Cell;

/// Every key the page uses in local storage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Key {
    /// The setup.
    Setup,
    /// A stored setup that could not be read, set aside.
    SetupUnread,
    /// Look of the page.
    Theme,
    /// Language.
    Lang,
    /// Written and removed again to see whether storage works.
    Probe,
}

impl Key {
    /// The key as stored.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Setup => "nightbank.setup.v1",
            Self::SetupUnread => "nightbank.setup.unread",
            Self::Theme => "nightbank.theme",
            Self::Lang => "nightbank.lang",
            Self::Probe => "nightbank.probe",
        }
    }
}

/// Why something is not kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StorageFault {
    /// The browser forbids storage.
    Blocked,
    /// Storage is there, but writing failed; most often it is full.
    NotWritten,
}

/// What was found of the setup.
#[derive(Clone, Debug, PartialEq)]
pub enum Stored {
    /// Nothing stored yet.
    Nothing,
    /// A setup, and how many values had to be pulled into bounds.
    Found(Box<Setup>, usize),
    /// Something unreadable; it was set aside under [`Key::SetupUnread`].
    Unread,
    /// The browser forbids storage.
    Blocked,
}

thread_local! {
    static USABLE: Cell<Option<bool>> = const { Cell::new(None) };
}

/// The browser's store, if it may be used. `LocalStorage` of gloo panics where it may not.
fn usable_storage() -> Option<web_sys::Storage> {
    let storage = web_sys::window()?.local_storage().ok()??;
    let usable = USABLE.with(|known| {
        known.get().unwrap_or_else(|| {
            let probe = Key::Probe.name();
            let works = storage.set_item(probe, "1").is_ok() && storage.remove_item(probe).is_ok();
            // A full store refuses the probe but can still be read.
            let readable = works || storage.length().is_ok_and(|entries| entries > 0);
            known.set(Some(readable));
            readable
        })
    });
    usable.then_some(storage)
}

/// The stored setup.
#[must_use]
pub fn load_setup() -> Stored {
    let Some(storage) = usable_storage() else { return Stored::Blocked };
    let Ok(Some(raw)) = storage.get_item(Key::Setup.name()) else { return Stored::Nothing };
    match LocalStorage::get::<Setup>(Key::Setup.name()) {
        Ok(setup) => {
            let (setup, changed) = setup.sanitised();
            Stored::Found(Box::new(setup), changed)
        }
        Err(_) => {
            // If even this cannot be written, the original stays until the first save.
            let _ = storage.set_item(Key::SetupUnread.name(), &raw);
            Stored::Unread
        }
    }
}

/// Keeps the setup.
///
/// # Errors
///
/// [`StorageFault`] when the browser does not keep it.
pub fn save_setup(setup: &Setup) -> Result<(), StorageFault> {
    usable_storage().ok_or(StorageFault::Blocked)?;
    LocalStorage::set(Key::Setup.name(), setup).map_err(|_| StorageFault::NotWritten)
}

/// A preference as stored.
#[must_use]
pub fn load_text(key: Key) -> Option<String> {
    usable_storage()?.get_item(key.name()).ok()?
}

/// Keeps a preference; one that cannot be kept lasts until the page is closed.
pub fn save_text(key: Key, value: &str) {
    if let Some(storage) = usable_storage() {
        let _ = storage.set_item(key.name(), value);
    }
}
