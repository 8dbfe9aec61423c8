//! The languages the page speaks.

/// A language.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Lang {
    /// English, the source of every text.
    #[default]
    En,
    /// German.
    De,
    /// French.
    Fr,
    /// Dutch.
    Nl,
}

impl Lang {
    /// All languages, in the order they are offered. Each has a folder of texts beside `en`.
    pub const ALL: [Self; 4] = [Self::En, Self::De, Self::Fr, Self::Nl];

    /// Code as in the `lang` attribute (BCP 47).
    #[must_use]
    pub fn code(self) -> &'static str {
        match self {
            Self::En => "en",
            Self::De => "de",
            Self::Fr => "fr",
            Self::Nl => "nl",
        }
    }

    /// The language's own name, the same in every language.
    #[must_use]
    pub fn own_name(self) -> &'static str {
        match self {
            Self::En => "English",
            Self::De => "Deutsch",
            Self::Fr => "Français",
            Self::Nl => "Nederlands",
        }
    }

    /// The language of a tag such as `de-AT`; `None` if the page does not speak it.
    #[must_use]
    pub fn from_tag(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next().unwrap_or("");
        Self::ALL.into_iter().find(|lang| primary.eq_ignore_ascii_case(lang.code()))
    }
}

#[cfg(test)]
mod tests {
    use super::Lang;

    #[test]
    fn tags_find_their_language() {
        assert_eq!(Lang::from_tag("de-AT"), Some(Lang::De));
        assert_eq!(Lang::from_tag("FR"), Some(Lang::Fr));
        assert_eq!(Lang::from_tag("nl_BE"), Some(Lang::Nl));
        assert_eq!(Lang::from_tag("pt-BR"), None);
        assert_eq!(Lang::from_tag(""), None);
        assert_eq!(Lang::from_tag("en-GB"), Some(Lang::En));
    }

    #[test]
    fn each_language_has_a_folder_of_texts_and_each_folder_a_language() {
        let root = format!("{}/src/i18n", env!("CARGO_MANIFEST_DIR"));
        let mut folders: Vec<String> = std::fs::read_dir(root)
            .expect("the folder of texts")
            .map(|entry| entry.expect("an entry of the folder").path())
            .filter(|path| path.is_dir())
            .map(|path| path.file_name().expect("a name").to_string_lossy().into_owned())
            .collect();
        folders.sort();
        let mut codes: Vec<&str> = Lang::ALL.iter().map(|lang| lang.code()).collect();
        codes.sort_unstable();
        assert_eq!(folders, codes);
    }
}
