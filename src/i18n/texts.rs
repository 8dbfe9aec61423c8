//! The text behind a key, by Fluent.

use super::Lang;
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use unic_langid::LanguageIdentifier;

macro_rules! files {
    ($($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("en/", $name)))),+]
    };
}

/// The English the page starts with: the answer, and what may be told at any time.
pub const ENGLISH_START: &[(&str, &str)] =
    files!["page.ftl", "widgets.ftl", "answer.ftl", "example.ftl"];

/// The English of the picture of the course and of what stands below the answer.
pub const ENGLISH_LOOK: &[(&str, &str)] = files!["chart.ftl", "detail.ftl"];

/// The English of what keeps the setups: links, files and storage, and the names of all appliances
/// a setup may hold.
pub const ENGLISH_KEEP: &[(&str, &str)] = files!["notices.ftl", "catalogue.ftl"];

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
    "share.ftl",
];

/// A value put into a text.
#[derive(Clone, Debug, PartialEq)]
pub enum Arg<'a> {
    /// Text as it stands; numbers are formatted by the caller.
    Text(&'a str),
    /// A count that may choose between plural forms.
    Count(i32),
    /// A number as it is shown, and its value: the text asks for both, for `{ $x }` with the first
    /// and for `{ $x_n -> ... }` with the second, which chooses between plural forms.
    Shown(&'a str, f64),
}

/// The texts of one language, with English behind them.
pub struct Texts {
    lang: Lang,
    own: Option<FluentBundle<FluentResource>>,
    english: FluentBundle<FluentResource>,
    faults: Vec<String>,
}

impl Texts {
    /// The English the page starts with.
    #[must_use]
    pub fn english() -> Self {
        let mut faults = Vec::new();
        let mut english = empty(Lang::En);
        ENGLISH_START.iter().for_each(|(_, text)| add(&mut english, text, &mut faults));
        Self { lang: Lang::En, own: None, english, faults }
    }

    /// Adds English texts, such as [`ENGLISH_REST`].
    pub fn add_english(&mut self, files: &[(&str, &str)]) {
        files.iter().for_each(|(_, text)| add(&mut self.english, text, &mut self.faults));
    }

    /// Texts of `lang` from Fluent `sources`, English behind them. Lines that are not Fluent are
    /// left out and listed in [`Self::faults`].
    #[must_use]
    pub fn new(lang: Lang, sources: &[&str]) -> Self {
        let mut texts = Self::english();
        if lang != Lang::En {
            let own = texts.own.insert(empty(lang));
            sources.iter().for_each(|source| add(own, source, &mut texts.faults));
            texts.lang = lang;
        }
        texts
    }

    /// The language of these texts.
    #[must_use]
    pub fn lang(&self) -> Lang {
        self.lang
    }

    /// What was wrong in the sources, for tests and the console.
    #[must_use]
    pub fn faults(&self) -> &[String] {
        &self.faults
    }

    /// The text of `key` with `args` filled in: in this language, else in English, else the key.
    #[must_use]
    pub fn text(&self, key: &str, args: &[(&str, Arg<'_>)]) -> String {
        self.own
            .as_ref()
            .and_then(|own| find(own, key, args))
            .or_else(|| find(&self.english, key, args))
            .unwrap_or_else(|| key.to_owned())
    }

    /// Whether the language itself (not English behind it) has `key`.
    #[must_use]
    pub fn has_own(&self, key: &str) -> bool {
        self.own.as_ref().unwrap_or(&self.english).has_message(key)
    }
}

fn empty(lang: Lang) -> FluentBundle<FluentResource> {
    let id: LanguageIdentifier = lang.code().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new(vec![id]);
    // Marks around every value would end up in titles, file names and copied text.
    bundle.set_use_isolating(false);
    bundle
}

fn add(bundle: &mut FluentBundle<FluentResource>, source: &str, faults: &mut Vec<String>) {
    let resource = match FluentResource::try_new(source.to_owned()) {
        Ok(resource) => resource,
        Err((resource, errors)) => {
            faults.extend(errors.iter().map(ToString::to_string));
            resource
        }
    };
    if let Err(errors) = bundle.add_resource(resource) {
        faults.extend(errors.iter().map(ToString::to_string));
    }
}

fn find(
    bundle: &FluentBundle<FluentResource>,
    key: &str,
    args: &[(&str, Arg<'_>)],
) -> Option<String> {
    let pattern = bundle.get_message(key)?.value()?;
    let mut values = FluentArgs::with_capacity(args.len());
    for (name, arg) in args {
        let value = match arg {
            Arg::Text(text) => FluentValue::from(*text),
            Arg::Count(count) => FluentValue::from(*count),
            Arg::Shown(text, value) => {
                values.set(format!("{name}_n"), FluentValue::from(*value));
                FluentValue::from(*text)
            }
        };
        values.set(*name, value);
    }
    let mut errors = Vec::new();
    let text = bundle.format_pattern(pattern, Some(&values), &mut errors);
    // A translation that asks for a value it is not given must not show through as "{$name}".
    errors.is_empty().then(|| text.into_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn english_is_sound() {
        let mut texts = Texts::english();
        [ENGLISH_KEEP, ENGLISH_LOOK, ENGLISH_REST]
            .iter()
            .for_each(|files| texts.add_english(files));
        assert_eq!(texts.faults(), &[] as &[String]);
        assert_ne!(texts.text("loads-title", &[]), "loads-title");
    }

    #[test]
    fn own_language_then_english_then_key() {
        let texts = Texts::new(Lang::De, &["page-title = Lichterkette"]);
        assert_eq!(texts.text("page-title", &[]), "Lichterkette");
        assert_eq!(texts.text("tab-trip", &[]), Texts::english().text("tab-trip", &[]));
        assert_ne!(texts.text("tab-trip", &[]), "tab-trip");
        assert_eq!(texts.text("no-such-key", &[]), "no-such-key");
    }

    #[test]
    fn plural_follows_the_language() {
        let source = "n = { $n ->\n    [one] une nuit\n   *[other] { $n } nuits\n}";
        let texts = Texts::new(Lang::Fr, &[source]);
        // French counts 0 as singular (CLDR plural rules).
        assert_eq!(texts.text("n", &[("n", Arg::Count(0))]), "une nuit");
        assert_eq!(texts.text("n", &[("n", Arg::Count(2))]), "2 nuits");
    }

    #[test]
    fn a_shown_number_chooses_the_plural_and_stays_as_shown() {
        let source = "n = { $n_n ->\n    [one] { $n } nuit\n   *[other] { $n } nuits\n}";
        let said = |lang, text, value| {
            Texts::new(lang, &[source]).text("n", &[("n", Arg::Shown(text, value))])
        };
        // Singular below two in French, for one alone in German (CLDR plural rules).
        assert_eq!(said(Lang::Fr, "1,9", 1.9), "1,9 nuit");
        assert_eq!(said(Lang::Fr, "30+", 30.0), "30+ nuits");
        assert_eq!(said(Lang::De, "1", 1.0), "1 nuit");
        assert_eq!(said(Lang::De, "1,5", 1.5), "1,5 nuits");
        assert_eq!(said(Lang::De, "0", 0.0), "0 nuits");
    }

    #[test]
    fn a_translation_that_lacks_a_value_gives_way_to_english() {
        let texts = Texts::new(Lang::Nl, &["tab-trip = { $nobody }"]);
        assert_eq!(texts.text("tab-trip", &[]), Texts::english().text("tab-trip", &[]));
    }

    #[test]
    fn a_broken_file_is_told_and_the_rest_still_speaks() {
        let texts = Texts::new(Lang::De, &["= broken\npage-title = Da"]);
        assert!(!texts.faults().is_empty());
        assert_eq!(texts.text("page-title", &[]), "Da");
    }
}
