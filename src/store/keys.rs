//! Keys in the browser's storage.
//!
//! The origin may be shared with foreign pages, so every key has our prefix, and only keys listed
//! here are ever read, written or removed.

/// A key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Key {
    /// All setups: [`write_library`](super::write_library).
    Library,
    /// What could not be read, kept as it was for download: a list of texts.
    SetAside,
    /// Copies set beside for comparing: [`copies_json`](super::copies_json).
    Compared,
    /// Language, units of temperature, looks.
    Preferences,
    /// What was explained once and need not be explained again.
    Told,
    /// Id of the own setup a tab shows; the only key that stands in the tab's storage.
    Shown,
    /// Written and removed to see whether storage works.
    Probe,
}

impl Key {
    /// All of them.
    pub const ALL: [Self; 7] = [
        Self::Library,
        Self::SetAside,
        Self::Compared,
        Self::Preferences,
        Self::Told,
        Self::Shown,
        Self::Probe,
    ];

    /// The key as stored. Never changed once released.
    #[must_use]
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Library => "nightbank.library",
            Self::SetAside => "nightbank.set-aside",
            Self::Compared => "nightbank.compared",
            Self::Preferences => "nightbank.preferences",
            Self::Told => "nightbank.told",
            Self::Shown => "nightbank.shown",
            Self::Probe => "nightbank.probe",
        }
    }

    /// The key behind a stored name, e.g. of a storage event; `None` for a foreign one.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|key| key.as_str() == name)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn keys_are_ours_and_told_apart() {
        for key in Key::ALL {
            assert!(
                key.as_str().len() > "nightbank.".len() && key.as_str().starts_with("nightbank.")
            );
            assert_eq!(Key::from_name(key.as_str()), Some(key));
        }
        assert_eq!(Key::from_name("nightbank."), None);
        assert_eq!(Key::from_name("library"), None);
    }
}
