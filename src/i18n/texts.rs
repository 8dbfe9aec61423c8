//! The text behind a key: in the reader's language, else in English.

use super::Lang;
pub use super::message::{Arg, PluralCategory};
use super::message::{Filling, Source, faults_of};
use std::borrow::Cow;

macro_rules! files {
    ($($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("en/", $name)))),+]
    };
}

/// The English the page starts with: the answer, and what may be told at any time.
pub const ENGLISH_START: &[(&str, &str)] =
    files!["page.ftl", "widgets.ftl", "answer.ftl", "example.ftl"];

/// The English of the picture of the course and of what stands below the answer.
pub const ENGLISH_OUTLOOK: &[(&str, &str)] = files!["chart.ftl", "detail.ftl", "origins.ftl"];

/// The English of what keeps the setups: links, files and storage, and the names of all appliances
/// a setup may hold.
pub const ENGLISH_STORAGE: &[(&str, &str)] = files!["notices.ftl", "catalogue.ftl"];

/// The English of the parts that are fetched when needed. Every key the page uses is in one of the
/// four; other languages have the same keys.
pub const ENGLISH_REST: &[(&str, &str)] = files![
    "terms.ftl",
    "loads.ftl",
    "power.ftl",
    "trip.ftl",
    "safety.ftl",
    "change.ftl",
    "tools.ftl",
    "log.ftl",
    "share.ftl",
];

/// The texts of one language, with English behind them.
pub struct Texts {
    lang: Lang,
    category: PluralCategory,
    own: Vec<Source>,
    english: Vec<Source>,
}

impl Texts {
    /// The English the page starts with.
    #[must_use]
    pub fn english(category: PluralCategory) -> Self {
        let mut texts = Self { lang: Lang::En, category, own: Vec::new(), english: Vec::new() };
        texts.add_english(ENGLISH_START);
        texts
    }

    /// Adds English texts, such as [`ENGLISH_REST`].
    pub fn add_english(&mut self, files: &[(&str, &'static str)]) {
        self.english.extend(files.iter().map(|(_, text)| Source::new(Cow::Borrowed(text))));
    }

    /// Texts of `lang` from a Fluent `source`, English behind them. Lines that are not Fluent are
    /// left out and listed in [`Self::faults`].
    #[must_use]
    pub fn new(lang: Lang, source: String, category: PluralCategory) -> Self {
        let mut texts = Self::english(category);
        texts.lang = lang;
        if lang != Lang::En {
            texts.own.push(Source::new(Cow::Owned(source)));
        }
        texts
    }

    /// The language of these texts.
    #[must_use]
    pub fn lang(&self) -> Lang {
        self.lang
    }

    /// What is wrong in the sources, for tests: lines that are not Fluent, keys that stand twice,
    /// and messages with something this module does not know.
    #[must_use]
    pub fn faults(&self) -> Vec<String> {
        [&self.own, &self.english].into_iter().flat_map(|sources| faults_of(sources)).collect()
    }

    /// The text of `key` with `args` filled in: in this language, else in English, else the key.
    #[must_use]
    pub fn text(&self, key: &str, args: &[(&str, Arg<'_>)]) -> String {
        self.find(&self.own, self.lang, key, args)
            .or_else(|| self.find(&self.english, Lang::En, key, args))
            .unwrap_or_else(|| key.to_owned())
    }

    /// Whether the language itself (not English behind it) has `key`.
    #[must_use]
    pub fn has_own(&self, key: &str) -> bool {
        let own = if self.lang == Lang::En { &self.english } else { &self.own };
        own.iter().any(|source| source.message(key).is_some())
    }

    /// A message that asks for a value it is not given must not show through as "{$name}": it counts
    /// as missing.
    fn find(
        &self,
        sources: &[Source],
        lang: Lang,
        key: &str,
        args: &[(&str, Arg<'_>)],
    ) -> Option<String> {
        let text = sources.iter().find_map(|source| source.message(key))?;
        let mut said = String::new();
        Filling { args, lang, category: self.category }.fill(text, &mut said)?;
        Some(said)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use intl_pluralrules::{PluralRuleType, PluralRules};

    /// By the tables of CLDR in `intl_pluralrules`.
    fn category(lang: Lang, number: f64) -> String {
        let id: unic_langid::LanguageIdentifier = lang.code().parse().expect("a code");
        let rules = PluralRules::create(id, PluralRuleType::CARDINAL).expect("a known language");
        format!("{:?}", rules.select(number).expect("a number")).to_lowercase()
    }

    fn english() -> Texts {
        Texts::english(category)
    }

    fn in_lang(lang: Lang, source: &str) -> Texts {
        Texts::new(lang, source.to_owned(), category)
    }

    #[test]
    fn english_is_sound() {
        let mut texts = english();
        [ENGLISH_STORAGE, ENGLISH_OUTLOOK, ENGLISH_REST]
            .iter()
            .for_each(|files| texts.add_english(files));
        assert_eq!(texts.faults(), &[] as &[String]);
        assert_ne!(texts.text("loads-title", &[]), "loads-title");
    }

    #[test]
    fn own_language_then_english_then_key() {
        let texts = in_lang(Lang::De, "page-title = Lichterkette");
        assert_eq!(texts.text("page-title", &[]), "Lichterkette");
        assert_eq!(texts.text("tab-trip", &[]), english().text("tab-trip", &[]));
        assert_ne!(texts.text("tab-trip", &[]), "tab-trip");
        assert_eq!(texts.text("no-such-key", &[]), "no-such-key");
        assert_eq!((texts.has_own("page-title"), texts.has_own("tab-trip")), (true, false));
    }

    #[test]
    fn plural_follows_the_language() {
        let source = "n = { $n ->\n    [0] aucune\n    [one] une nuit\n   *[other] { $n } nuits\n}";
        let texts = in_lang(Lang::Fr, source);
        assert_eq!(texts.text("n", &[("n", Arg::Count(0))]), "aucune");
        assert_eq!(texts.text("n", &[("n", Arg::Count(1))]), "une nuit");
        assert_eq!(texts.text("n", &[("n", Arg::Count(2))]), "2 nuits");
        let texts = in_lang(Lang::Fr, &source.replace("    [0] aucune\n", ""));
        // French counts 0 as singular (CLDR plural rules).
        assert_eq!(texts.text("n", &[("n", Arg::Count(0))]), "une nuit");
    }

    #[test]
    fn a_shown_number_chooses_the_plural_and_stays_as_shown() {
        let source = "n = { $n_n ->\n    [one] { $n } nuit\n   *[other] { $n } nuits\n}";
        let said =
            |lang, text, value| in_lang(lang, source).text("n", &[("n", Arg::Shown(text, value))]);
        // Singular below two in French, for one alone in German (CLDR plural rules).
        assert_eq!(said(Lang::Fr, "1,9", 1.9), "1,9 nuit");
        assert_eq!(said(Lang::Fr, "30+", 30.0), "30+ nuits");
        assert_eq!(said(Lang::De, "1", 1.0), "1 nuit");
        assert_eq!(said(Lang::De, "1,5", 1.5), "1,5 nuits");
        assert_eq!(said(Lang::De, "0", 0.0), "0 nuits");
    }

    #[test]
    fn a_message_that_cannot_be_filled_in_gives_way_to_english() {
        let trip = english().text("tab-trip", &[]);
        for said in ["{ $nobody }", "{ $nobody ->\n   *[other] x\n}", "{ -term }", "{ page-title }"]
        {
            let texts = in_lang(Lang::Nl, &format!("tab-trip = {said}"));
            assert_eq!(texts.text("tab-trip", &[]), trip, "{said}");
        }
        let told = in_lang(Lang::Nl, "tab-trip = { NUMBER($n) }").faults();
        assert_eq!(told, ["tab-trip is not a message this page can fill in"]);
    }

    #[test]
    fn a_broken_file_is_told_and_the_rest_still_speaks() {
        let texts = in_lang(Lang::De, "= broken\npage-title = Da\n# a note\ntab-trip = { broken\n");
        assert!(!texts.faults().is_empty());
        assert_eq!(texts.text("page-title", &[]), "Da");
        assert_eq!(texts.text("tab-trip", &[]), english().text("tab-trip", &[]));
        let twice = in_lang(Lang::De, "page-title = Da\npage-title = Dort").faults();
        assert_eq!(twice, ["page-title stands twice"]);
    }

    #[test]
    fn text_on_several_lines_quotes_and_comments() {
        let source = "a =\n    one\n    two { \"{\" }\n\n# told to translators\nb = three\n";
        let texts = in_lang(Lang::De, source);
        assert_eq!(texts.text("a", &[]), "one\ntwo {");
        assert_eq!(texts.text("b", &[]), "three");
    }
}
