//! The card that exports the answer: text to paste, pictures, tables, print.

use super::link_card::link_of;
use super::outcome::{Outcome, forum_answer, posted_ranking, ranking_of};
use super::pictures::{outlook_picture, svg_as_png};
use super::print::print;
use super::share_sheet::copy;
use super::tables::{days_table, is_measured, loads_table, posted_loads};
use crate::export::csv::CsvError;
use crate::export::forum_table::forum_table;
use crate::export::forum_text::{Markup, forum_text};
use crate::export::outlook_picture::outlook_svg;
use crate::export::ranking::ranking_svg;
use crate::view::change::ChangeScreens;
use crate::view::lang::t;
use crate::view::setups::Setups;
use crate::view::setups::files::{download, download_text, file_name};
use crate::view::widgets::{button, disclosure, fresh_id, quiet_button, radios};
use leptos::html::Textarea;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::Blob;

/// Everything that gives the answer on.
#[must_use]
pub fn forum_card(setups: Setups, outcome: Outcome) -> AnyView {
    view! {
        <section class="card" aria-label=t("post-card")>
            <div class="card-head"><h2>{t("post-card")}</h2></div>
            {disclosure(t("post-text"), false, post_text(setups, outcome))}
            {disclosure(t("post-loads-title"), false, post_loads(setups, outcome))}
            {disclosure(t("post-pictures"), false, pictures(setups, outcome))}
            {disclosure(t("post-tables"), false, tables(setups, outcome))}
            <div class="button-row">{quiet_button(None, t("print-button"), move || print(setups))}</div>
        </section>
    }
    .into_any()
}

fn post_text(setups: Setups, outcome: Outcome) -> AnyView {
    let link = link_of(setups);
    let text = move |markup| {
        let link = link.with(|link| link.clone().unwrap_or_default());
        let whole = outcome.whole();
        let course = outcome.course();
        let outlook = course.as_ref().map(|(_, outlook)| &*outlook.0);
        setups.app.setup.with(|setup| {
            // They come with the part that searches.
            let helps =
                use_context::<ChangeScreens>().and_then(|screens| screens.helps_most(setup));
            forum_text(&forum_answer(setup, outlook, whole.as_ref(), helps, link), markup)
        })
    };
    text_to_post(setups, t("post-field"), text)
}

/// The appliances with how each figure was learned, for others to take from.
fn post_loads(setups: Setups, outcome: Outcome) -> AnyView {
    let link = link_of(setups);
    let measured = setups.app.setup.with_untracked(|setup| setup.loads.iter().any(is_measured));
    let measured_only = RwSignal::new(measured);
    let text = move |markup| {
        let link = link.with(|link| link.clone().unwrap_or_default());
        let course = outcome.course();
        let outlook = course.as_ref().map(|(_, outlook)| &*outlook.0);
        let only = measured_only.get();
        let table = setups.app.setup.with(|setup| posted_loads(setup, outlook, only, link));
        forum_table(&table, markup)
    };
    let which = measured.then(|| {
        let chosen = Signal::derive(move || Some(usize::from(!measured_only.get())));
        let names = vec![t("post-measured"), t("post-all")];
        radios(t("post-which"), names, chosen, move |at| _ = measured_only.try_set(at == 0))
    });
    let ranking = move || {
        let (_, outlook) = untrack(|| outcome.course())?;
        let only = measured_only.get_untracked();
        let ranking =
            setups.app.setup.with_untracked(|setup| posted_ranking(setup, &outlook.0, only));
        Some(ranking_svg(&ranking))
    };
    view! {
        {which}
        {text_to_post(setups, t("post-loads-field"), text)}
        {picture_buttons(setups, t("post-loads-picture"), t("csv-loads-file"), ranking)}
    }
    .into_any()
}

/// A text in the markup that is chosen, to copy.
fn text_to_post(
    setups: Setups,
    label: String,
    text: impl Fn(Markup) -> String + Send + Sync + 'static,
) -> AnyView {
    let id = fresh_id("post");
    let node = NodeRef::<Textarea>::new();
    let markup = RwSignal::new(0_usize);
    let chosen = move || Markup::ALL.get(markup.get()).copied().unwrap_or(Markup::Plain);
    let text = Memo::new(move |_| text(chosen()));
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
            <div class="field-head"><label for=id.clone()>{label}</label></div>
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
        let whole = untrack(|| outcome.whole())?;
        let picture = setups.app.setup.with_untracked(|setup| outlook_picture(setup, &whole));
        Some(outlook_svg(&picture))
    };
    let ranking = move || {
        let whole = untrack(|| outcome.whole())?;
        let drains = &whole.detail.drains;
        let ranking = setups.app.setup.with_untracked(|setup| ranking_of(setup, drains));
        Some(ranking_svg(&ranking))
    };
    view! {
        {picture_buttons(setups, t("picture-outlook"), t("picture-outlook-file"), outlook)}
        {picture_buttons(setups, t("picture-ranking"), t("picture-ranking-file"), ranking)}
        <p class="field-hint">{t("picture-about")}</p>
    }
    .into_any()
}

fn nothing_yet(setups: Setups) {
    setups.app.tell(t("answer-none"), false);
}

fn save_picture(setups: Setups, name: &str, blob: Option<Blob>) {
    let saved = blob.is_some_and(|blob| download(name, &blob).is_ok());
    if !saved {
        setups.file_told.try_set(Some(t("file-not-saved")));
    }
}

/// A picture to save: PNG for forums, SVG to print or draw on.
fn picture_buttons(
    setups: Setups,
    label: String,
    about: String,
    picture: impl Fn() -> Option<String> + Copy + 'static,
) -> AnyView {
    let named = {
        let about = StoredValue::new(about);
        move |ending: &str| {
            let about = about.get_value();
            setups.app.setup.with_untracked(|setup| file_name(setup, &about, ending))
        }
    };
    let png = move || {
        let Some(picture) = picture() else { return nothing_yet(setups) };
        let name = named("png");
        svg_as_png(&picture, move |blob| save_picture(setups, &name, blob));
    };
    let svg = move || {
        let Some(picture) = picture() else { return nothing_yet(setups) };
        if download_text(&named("svg"), "image/svg+xml", &picture).is_err() {
            setups.file_told.try_set(Some(t("file-not-saved")));
        }
    };
    view! {
        <div class="button-row">
            {quiet_button(None, format!("{label} (PNG)"), png)}
            {quiet_button(None, format!("{label} (SVG)"), svg)}
        </div>
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
