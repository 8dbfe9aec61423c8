//! The card for files: save, open, and download quarantined data.

use crate::view::lang::t;
use crate::view::setups::Setups;
use crate::view::setups::files::{download_all, download_aside, download_setup, take_in};
use crate::view::widgets::{button, disclosure, fresh_id, quiet_button};
use leptos::html::Input;
use leptos::prelude::*;

/// Saving and opening files.
#[must_use]
pub fn file_card(setups: Setups) -> AnyView {
    let id = fresh_id("file");
    let node = NodeRef::<Input>::new();
    let opened = move |_| {
        let Some(input) = node.get_untracked() else { return };
        let files = input.files();
        let files = files.iter().flat_map(|files| (0..files.length()).map(|at| files.get(at)));
        for file in files.flatten() {
            take_in(setups, file);
        }
        // The same file may be chosen again.
        input.set_value("");
    };
    view! {
        <section class="card" aria-label=t("file-title")>
            <div class="card-head"><h2>{t("file-title")}</h2></div>
            <p>{t("file-about")}</p>
            <div class="button-row">
                {button(None, t("file-save"), move || download_setup(setups))}
                {move || {
                    let many = setups.library.with(|library| library.entries().len() > 1);
                    many.then(|| quiet_button(None, t("file-save-all"), move || download_all(setups)))
                }}
            </div>
            <div class="field">
                <div class="field-head"><label for=id.clone()>{t("file-open")}</label></div>
                <input
                    id=id
                    class="file-input"
                    type="file"
                    accept=".json,.csv,.tsv,.txt,application/json,text/*"
                    multiple=true
                    node_ref=node
                    on:change=opened
                />
                <p class="field-hint">{t("file-drop")}</p>
            </div>
            {aside(setups)}
        </section>
    }
    .into_any()
}

/// What could not be read, for download; taking it out asks for a second tap.
fn aside(setups: Setups) -> AnyView {
    view! {
        {move || {
            setups.aside.with(|aside| !aside.is_empty()).then(|| {
                let drop = view! {
                    <p>{t("aside-drop-about")}</p>
                    {quiet_button(None, t("aside-drop"), move || setups.drop_aside())}
                }
                .into_any();
                view! {
                    <p>{t("aside-there")}</p>
                    {quiet_button(None, t("aside-download"), move || download_aside(setups))}
                    {disclosure(t("aside-drop-title"), false, drop)}
                }
            })
        }}
    }
    .into_any()
}
