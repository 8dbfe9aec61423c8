//! The card that exports the answer: text to paste, pictures, tables, print.

use super::link_card::link_of;
use super::outcome::{Outcome, forum_answer, ranking_of};
use super::pictures::outlook_picture;
use super::print::print;
use super::share_sheet::copy;
use super::tables::{days_table, loads_table};
use crate::export::csv::CsvError;
use crate::export::forum_text::{Markup, forum_text};
use crate::export::ranking::ranking_svg;
use crate::view::lang::t;
use crate::view::setups::Setups;
use crate::view::setups::files::{download, download_text, file_name};
use crate::view::widgets::{button, disclosure, fresh_id, quiet_button, radios};
use leptos::html::Textarea;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Everything that gives the answer on.
#[must_use]
pub fn forum_card(setups: Setups, outcome: Outcome) -> AnyView {
    view! {
        <section class="card" aria-label=t("post-card")>
            <div class="card-head"><h2>{t("post-card")}</h2></div>
            {disclosure(t("post-text"), false, post_text(setups, outcome))}
            {disclosure(t("post-pictures"), false, pictures(setups, outcome))}
            {disclosure(t("post-tables"), false, tables(setups, outcome))}
            <div class="button-row">{quiet_button(None, t("print-button"), move || print(setups))}</div>
        </section>
    }
    .into_any()
}

fn post_text(setups: Setups, outcome: Outcome) -> AnyView {
    let id = fresh_id("post");
    let node = NodeRef::<Textarea>::new();
    let markup = RwSignal::new(0_usize);
    let chosen = move || Markup::ALL.get(markup.get()).copied().unwrap_or(Markup::Plain);
    let link = link_of(setups);
    let text = Memo::new(move |_| {
        let link = link.with(|link| link.clone().unwrap_or_default());
        let whole = outcome.whole();
        let course = outcome.course();
        let outlook = course.as_ref().map(|(_, outlook)| &*outlook.0);
        setups
            .app
            .setup
            .with(|setup| forum_text(&forum_answer(setup, outlook, whole.as_ref(), link), chosen()))
    });
    let names = vec![t("post-plain"), t("post-markdown"), t("post-bbcode")];
    let press = move || {
        let field = node.get_untracked().map(|field| field.unchecked_into());
        copy(setups.app, text.get_untracked(), field);
    };
    view! {
        {radios(t("post-markup"), names, Signal::derive(move || Some(markup.get())), move |index| {
            markup.try_set(index);
        })}
        <div class="field">
            <div class="field-head"><label for=id.clone()>{t("post-field")}</label></div>
            <textarea
                id=id
                class="link-text post-text"
                node_ref=node
                readonly=true
                rows="12"
                prop:value=move || text.get()
            ></textarea>
        </div>
        <div class="button-row">{button(None, t("post-copy"), press)}</div>
    }
    .into_any()
}

fn pictures(setups: Setups, outcome: Outcome) -> AnyView {
    let outlook = move || {
        let whole = untrack(|| outcome.whole());
        let setup = setups.app.setup.get_untracked();
        let Some(whole) = whole else { return setups.app.tell(t("answer-none"), false) };
        let name = file_name(&setup, &t("picture-outlook-file"), "png");
        outlook_picture(&setup, &whole, move |blob| {
            let saved = blob.is_some_and(|blob| download(&name, &blob).is_ok());
            if !saved {
                setups.file_told.try_set(Some(t("file-not-saved")));
            }
        });
    };
    let ranking = move || {
        let whole = untrack(|| outcome.whole());
        let setup = setups.app.setup.get_untracked();
        let Some(whole) = whole else { return setups.app.tell(t("answer-none"), false) };
        let name = file_name(&setup, &t("picture-ranking-file"), "svg");
        let svg = ranking_svg(&ranking_of(&setup, &whole.detail.drains));
        if download_text(&name, "image/svg+xml", &svg).is_err() {
            setups.file_told.try_set(Some(t("file-not-saved")));
        }
    };
    view! {
        <div class="button-row">
            {quiet_button(None, t("picture-outlook"), outlook)}
            {quiet_button(None, t("picture-ranking"), ranking)}
        </div>
        <p class="field-hint">{t("picture-about")}</p>
    }
    .into_any()
}

fn tables(setups: Setups, outcome: Outcome) -> AnyView {
    let save = move |table: Option<Result<String, CsvError>>, about: String| {
        let Some(table) = table else { return setups.app.tell(t("answer-none"), false) };
        let name = setups.app.setup.with_untracked(|setup| file_name(setup, &about, "csv"));
        let saved = table.is_ok_and(|text| download_text(&name, "text/csv", &text).is_ok());
        if !saved {
            setups.file_told.try_set(Some(t("file-not-saved")));
        }
    };
    let loads = move || {
        let table = untrack(|| outcome.course()).map(|(_, outlook)| {
            setups.app.setup.with_untracked(|setup| loads_table(setup, &outlook.0))
        });
        save(table, t("csv-loads-file"));
    };
    let days = move || {
        let table = untrack(|| outcome.course()).map(|(plan, outlook)| {
            setups.app.setup.with_untracked(|setup| days_table(setup, &plan.0, &outlook.0))
        });
        save(table, t("csv-days-file"));
    };
    view! {
        <div class="button-row">
            {quiet_button(None, t("csv-loads"), loads)}
            {quiet_button(None, t("csv-days"), days)}
        </div>
        <p class="field-hint">{t("csv-about")}</p>
    }
    .into_any()
}
