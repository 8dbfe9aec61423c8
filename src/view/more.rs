//! The part "More": setups, sharing, appearance, language, glossary, about.

use super::certainty::Certainty;
use super::lang::{often, t};
use super::reader::UnitChoice;
use super::setups::Setups;
use super::share;
use super::state::Theme;
use super::tools;
use super::widgets::{Term, disclosure, radios};
use crate::i18n::Lang;
use leptos::prelude::*;

/// The part "More".
#[must_use]
pub fn view(setups: Setups) -> AnyView {
    let app = setups.app;
    let looks = vec![t("look-auto"), t("look-light"), t("look-dark"), t("look-dim")];
    let look =
        Signal::derive(move || Theme::ALL.iter().position(|theme| *theme == app.theme.get()));
    let choose_look = move |index: usize| {
        if let Some(theme) = Theme::ALL.get(index) {
            app.theme.set(*theme);
        }
    };
    let langs = Lang::ALL.iter().map(|lang| lang.own_name().to_owned()).collect();
    let lang =
        Signal::derive(move || Lang::ALL.iter().position(|lang| *lang == app.lang_asked.get()));
    let choose_lang = move |index: usize| {
        if let Some(lang) = Lang::ALL.get(index) {
            app.choose_lang(*lang);
        }
    };
    let certainties = Certainty::ALL.iter().map(|certainty| often(*certainty)).collect();
    let in_force = Certainty::ALL.iter().position(|known| *known == Certainty::in_force());
    let certainty = Signal::stored(in_force);
    let choose_certainty = move |index: usize| {
        if let Some(certainty) = Certainty::ALL.get(index) {
            app.choose_certainty(*certainty);
        }
    };
    let units = vec![t("units-device"), t("units-metric"), t("units-us")];
    let in_force = UnitChoice::ALL.iter().position(|known| *known == UnitChoice::in_force());
    let unit_choice = Signal::stored(in_force);
    let choose_units = move |index: usize| {
        if let Some(units) = UnitChoice::ALL.get(index) {
            app.choose_units(*units);
        }
    };
    let glossary: Vec<AnyView> = Term::ALL
        .into_iter()
        .map(|term| view! { <div><dt>{term.word()}</dt><dd>{term.meaning()}</dd></div> }.into_any())
        .collect();
    view! {
        <h1>{t("more-title")}</h1>
        {share::view(setups)}
        {tools::links(setups.app)}
        <section class="card">
            {radios(t("look-legend"), looks, look, choose_look)}
            {radios(t("lang-legend"), langs, lang, choose_lang)}
            {radios(t("units-legend"), units, unit_choice, choose_units)}
            {radios(t("certainty-legend"), certainties, certainty, choose_certainty)}
        </section>
        {disclosure(
            t("glossary-title"),
            false,
            view! { <dl class="glossary">{glossary}</dl> }.into_any(),
        )}
        {disclosure(t("about-title"), false, view! { <p>{t("about-text")}</p> }.into_any())}
    }
    .into_any()
}
