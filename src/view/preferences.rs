//! How the reader wants the page: kept in this browser, not part of a setup.

use super::storage;
use crate::store::Key;
use serde::{Deserialize, Serialize};

/// The reader's choices; empty words stand for none made.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Preferences {
    /// Word of the look.
    pub theme: String,
    /// Code of the language.
    pub lang: String,
}

impl Preferences {
    /// As stored; none made where there is nothing, or nothing readable.
    #[must_use]
    pub fn load() -> Self {
        storage::get(Key::Preferences).unwrap_or_default()
    }

    /// Changes and keeps them. What cannot be kept lasts until the page is closed.
    pub fn change(change: impl FnOnce(&mut Self)) {
        let before = Self::load();
        let mut preferences = before.clone();
        change(&mut preferences);
        if preferences != before {
            // The page tells of storage that keeps nothing where setups are concerned.
            let _ = storage::set(Key::Preferences, &preferences);
        }
    }
}
