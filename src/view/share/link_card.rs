//! The card for links: copy, share, QR code, and opening a pasted link.

use super::share_sheet::{copy, has_share_sheet, open_share_sheet};
use crate::export::qr::{QrMatrix, qr_matrix};
use crate::i18n::Arg;
use crate::link::{REFUSE_CHARS, TooLong, WARN_CHARS, encode};
use crate::view::lang::{t, t_args};
use crate::view::page_address::address_with;
use crate::view::setups::Setups;
use crate::view::setups::files::download_setup;
use crate::view::widgets::{button, fresh_id, quiet_button};
use crate::view::words::names::setup_name;
use leptos::html::{Input, Textarea};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

fn whole(count: usize) -> Arg<'static> {
    Arg::Count(i32::try_from(count).unwrap_or(i32::MAX))
}

/// The link as a whole address; too long for one at times.
pub(super) fn link_of(setups: Setups) -> Memo<Result<String, TooLong>> {
    Memo::new(move |_| setups.app.setup.with(encode).map(|text| address_with(&text)))
}

/// Link, QR code, and the field for a link that came in.
#[must_use]
pub fn link_card(setups: Setups) -> AnyView {
    let link = link_of(setups);
    let fits = Memo::new(move |_| link.with(Result::is_ok));
    view! {
        <section class="card" aria-label=t("link-title")>
            <div class="card-head"><h2>{t("link-title")}</h2></div>
            {move || if fits.get() { link_out(setups, link) } else { too_long(setups, link) }}
            {link_in(setups)}
        </section>
    }
    .into_any()
}

fn link_out(setups: Setups, link: Memo<Result<String, TooLong>>) -> AnyView {
    let id = fresh_id("link");
    let hint = fresh_id("link-hint");
    let node = NodeRef::<Textarea>::new();
    let address = move || link.with(|link| link.clone().unwrap_or_default());
    let length = Memo::new(move |_| address().chars().count());
    let press = move || {
        let field = node.get_untracked().map(|field| field.unchecked_into());
        copy(setups.app, link.with_untracked(|l| l.clone().unwrap_or_default()), field);
    };
    let give = move || {
        let name = setups.app.setup.with_untracked(setup_name);
        open_share_sheet(setups.app, name, link.with_untracked(|l| l.clone().unwrap_or_default()));
    };
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{t("link-out")}</label></div>
            <textarea
                id=id
                class="link-text"
                data-testid="link-text"
                node_ref=node
                readonly=true
                rows="3"
                aria-describedby=hint.clone()
                prop:value=address
                on:focus=move |_| {
                    if let Some(field) = node.get_untracked() {
                        field.select();
                    }
                }
            ></textarea>
            <p class="field-hint" id=hint>
                {move || t_args("link-length", &[("n", whole(length.get()))])}
                {move || (length.get() > WARN_CHARS).then(|| view! { " " {t("link-long")} })}
            </p>
        </div>
        <div class="button-row">
            {button(None, t("link-copy"), press)}
            {has_share_sheet().then(|| quiet_button(None, t("link-hand-on"), give))}
        </div>
        <p class="field-hint">{t("link-privacy")}</p>
        {qr_part(link)}
    }
    .into_any()
}

fn too_long(setups: Setups, link: Memo<Result<String, TooLong>>) -> AnyView {
    view! {
        <p class="notice" role="status">
            {move || {
                let chars = link.with(|link| link.as_ref().err().map_or(0, |long| long.chars));
                t_args("link-too-long", &[("n", whole(chars)), ("limit", whole(REFUSE_CHARS))])
            }}
        </p>
        {button(None, t("file-save"), move || download_setup(setups))}
    }
    .into_any()
}

/// The code, worked out once it is asked for.
fn qr_part(link: Memo<Result<String, TooLong>>) -> AnyView {
    let open = RwSignal::new(false);
    let toggled = move |event: web_sys::Event| {
        let target = event.target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
        open.set(target.is_some_and(|details| details.has_attribute("open")));
    };
    view! {
        <details class="disclosure" on:toggle=toggled>
            <summary><span>{t("qr-title")}</span></summary>
            <div class="disclosure-inside">
                {move || {
                    open.get().then(|| {
                        let code = link.with(|link| qr_matrix(link.as_deref().unwrap_or_default()));
                        match code {
                            Ok(code) => qr_view(&code),
                            Err(_) => view! { <p>{t("qr-none")}</p> }.into_any(),
                        }
                    })
                }}
            </div>
        </details>
    }
    .into_any()
}

/// A QR code on light ground.
#[must_use]
pub fn qr_view(code: &QrMatrix) -> AnyView {
    let dense = (!code.is_easy()).then(|| view! { <p class="field-hint">{t("qr-dense")}</p> });
    view! {
        <svg class="qr" viewBox=code.view_box() role="img" aria-label=t("qr-name")>
            <path d=code.svg_path() shape-rendering="crispEdges"></path>
        </svg>
        {dense}
    }
    .into_any()
}

/// A link, or a text with one in it, pasted by hand.
fn link_in(setups: Setups) -> AnyView {
    let id = fresh_id("paste");
    let node = NodeRef::<Input>::new();
    let open = move || {
        let Some(field) = node.get_untracked() else { return };
        setups.open_link(&field.value());
        if setups.link_fault.get_untracked().is_none() {
            field.set_value("");
        }
        window().scroll_to_with_x_and_y(0.0, 0.0);
    };
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{t("link-in")}</label></div>
            <div class="field-box">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    autocapitalize="off"
                    spellcheck="false"
                    node_ref=node
                    on:keydown=move |event| {
                        if event.key() == "Enter" {
                            open();
                        }
                    }
                />
            </div>
        </div>
        {quiet_button(None, t("link-in-open"), open)}
    }
    .into_any()
}
