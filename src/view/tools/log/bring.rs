//! Bringing a log: a file chosen or dropped, or rows pasted.

use super::state::{LogState, table_fault};
use crate::import::table::TableError;
use crate::view::lang::t;
use crate::view::text_file::{TextFileError, read_text};
use crate::view::widgets::{button, fresh_id, quiet_button};
use leptos::html::Input;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::spawn_local;
use web_sys::{DragEvent, File};

fn take_file(state: LogState, file: File) {
    spawn_local(async move {
        let fault = match read_text(&file).await {
            Ok(text) => return state.take_in(text),
            Err(TextFileError::TooLarge { .. }) => table_fault(&TableError::TooLarge),
            Err(TextFileError::Unread) => t("file-unread"),
        };
        state.fault.try_set(Some(fault));
    });
}

/// The card.
pub(super) fn view(state: LogState) -> AnyView {
    let (file_id, paste_id) = (fresh_id("log-file"), fresh_id("log-paste"));
    let node = NodeRef::<Input>::new();
    let chosen = move |_| {
        let Some(input) = node.get_untracked() else { return };
        if let Some(file) = input.files().and_then(|files| files.get(0)) {
            take_file(state, file);
        }
        // The same file may be chosen again.
        input.set_value("");
    };
    let dropped = move |event: DragEvent| {
        let files = event.data_transfer().and_then(|data| data.files());
        if let Some(file) = files.and_then(|files| files.get(0)) {
            event.prevent_default();
            // Or the page takes it for a setup.
            event.stop_propagation();
            take_file(state, file);
        }
    };
    let paste = move || {
        let text = state.pasted.get_untracked();
        state.take_in(text);
    };
    view! {
        <section class="card" aria-labelledby="log-bring-title" on:drop=dropped data-testid="log-bring">
            <h2 id="log-bring-title" tabindex="-1">{t("log-bring")}</h2>
            <div class="field">
                <div class="field-head"><label for=file_id.clone()>{t("log-file")}</label></div>
                <input
                    id=file_id
                    class="file-input"
                    type="file"
                    accept=".csv,.tsv,.txt,text/csv,text/plain"
                    node_ref=node
                    on:change=chosen
                />
                <p class="field-hint">{t("log-drop")}</p>
            </div>
            <div class="field">
                <div class="field-head"><label for=paste_id.clone()>{t("log-paste")}</label></div>
                <textarea
                    id=paste_id
                    class="link-text"
                    rows="4"
                    autocomplete="off"
                    spellcheck="false"
                    prop:value=move || state.pasted.get()
                    on:input=move |event| {
                        let area = event.target().and_then(|t| t.dyn_into::<web_sys::HtmlTextAreaElement>().ok());
                        if let Some(area) = area {
                            state.pasted.try_set(area.value());
                        }
                    }
                ></textarea>
            </div>
            <div class="button-row">
                {button(None, t("log-read"), paste)}
                {move || {
                    state.table.with(Option::is_some)
                        .then(|| quiet_button(None, t("log-clear"), move || state.clear()))
                }}
            </div>
            {move || {
                state.fault.get().map(|fault| view! { <p class="field-fault" role="alert">{fault}</p> })
            }}
            {move || {
                state.working.get().then(|| view! { <p class="working">{t("log-working")}</p> })
            }}
        </section>
    }
    .into_any()
}
