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
    /// Languages whose texts exist, in the order they are offered. A language joins when its folder
    /// beside `en` is complete.
    pub const OFFERED: &'static [Self] = &Self::ALL;

    /// All languages the page is made for.
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
        Self::known_tag(tag).filter(|lang| Self::OFFERED.contains(lang))
    }

    fn known_tag(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next().unwrap_or("");
        Self::ALL.into_iter().find(|lang| primary.eq_ignore_ascii_case(lang.code()))
    }
}

#[cfg(test)]
mod tests {
    use super::Lang;

    #[test]
    fn tags_find_their_language() {
        assert_eq!(Lang::known_tag("de-AT"), Some(Lang::De));
        assert_eq!(Lang::known_tag("FR"), Some(Lang::Fr));
        assert_eq!(Lang::known_tag("nl_BE"), Some(Lang::Nl));
        assert_eq!(Lang::known_tag("pt-BR"), None);
        assert_eq!(Lang::known_tag(""), None);
        assert_eq!(Lang::from_tag("en-GB"), Some(Lang::En));
    }

    #[test]
    fn offered_is_what_has_texts() {
        for lang in Lang::ALL {
            let folder = format!("{}/src/i18n/{}", env!("CARGO_MANIFEST_DIR"), lang.code());
            let exists = std::path::Path::new(&folder).is_dir();
            assert_eq!(Lang::OFFERED.contains(&lang), exists, "{}", lang.code());
        }
    }
}
