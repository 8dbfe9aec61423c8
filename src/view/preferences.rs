//! Language, appearance, certainty and units, stored in this browser and not part of a setup.
//!
//! Stored as words, look, language, certainty and units, with a space between: so little that the start of the
//! page reads it without what reads setups.

use super::storage::{self, StoredText};
use crate::store::Key;

/// The reader's choices; empty words stand for none made.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Preferences {
    /// Word of the look.
    pub theme: String,
    /// Code of the language.
    pub lang: String,
    /// Word of the certainty.
    pub certainty: String,
    /// Word of the units.
    pub units: String,
}

impl Preferences {
    /// As stored; none made where there is nothing, or nothing readable.
    #[must_use]
    pub fn load() -> Self {
        match storage::text(Key::Preferences) {
            StoredText::Text(text) => {
                let mut words = text.split(' ').map(str::to_owned);
                let mut next = || words.next().unwrap_or_default();
                Self { theme: next(), lang: next(), certainty: next(), units: next() }
            }
            StoredText::Nothing | StoredText::Blocked => Self::default(),
        }
    }

    /// Changes and keeps them. What cannot be kept lasts until the page is closed.
    pub fn change(change: impl FnOnce(&mut Self)) {
        let before = Self::load();
        let mut preferences = before.clone();
        change(&mut preferences);
        if preferences != before {
            let Self { theme, lang, certainty, units } = preferences;
            // The page tells of storage that keeps nothing where setups are concerned.
            let _ = storage::set_text(
                Key::Preferences,
                format!("{theme} {lang} {certainty} {units}").trim_end(),
            );
        }
    }
}
