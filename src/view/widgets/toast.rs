//! Messages at the foot of the page, with "undo" where it applies.

use super::buttons::{icon_button, quiet_button};
use crate::view::focus;
use crate::view::icons::Icon;
use crate::view::lang::t;
use crate::view::state::AppState;
use leptos::ev;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// The place where messages appear; also read out. Escape puts the message away.
#[must_use]
pub fn toasts(app: AppState) -> AnyView {
    // What had the focus before the message got it.
    let before: StoredValue<Option<HtmlElement>, LocalStorage> = StoredValue::new_local(None);
    let entered = move |event: ev::FocusEvent| {
        let from = event.related_target().and_then(|from| from.dyn_into::<HtmlElement>().ok());
        if let Some(from) = from.filter(|from| matches!(from.closest(".toast"), Ok(None))) {
            before.try_set_value(Some(from));
        }
    };
    let leave = move || {
        let before = before.try_get_value().flatten().filter(|before| before.is_connected());
        if let Some(before) = before.filter(|_| focus::is_inside(".toast")) {
            // Fails only for an element that is gone.
            let _ = before.focus();
        }
    };
    let close = move || {
        leave();
        app.toast.try_set(None);
    };
    let escape = window_event_listener(ev::keydown, move |event| {
        // In a sheet the key closes the sheet.
        if event.key() == "Escape" && focus::first("dialog[open]").is_none() {
            close();
        }
    });
    on_cleanup(move || escape.remove());
    view! {
        <div class="toasts" role="status" on:focusin=entered>
            {move || {
                app.toast
                    .get()
                    .map(|toast| {
                        let offers_undo = toast.undo.is_some();
                        let undo = toast.undo.map(|undo| {
                            let back = move || {
                                leave();
                                undo();
                            };
                            quiet_button(None, t("undo"), back)
                        });
                        view! {
                            <div class="toast" class:toast-undo=offers_undo data-testid="toast">
                                <p>{toast.text}</p>
                                {undo}
                                {icon_button(Icon::Close, t("toast-close"), close)}
                            </div>
                        }
                    })
            }}
        </div>
    }
    .into_any()
}
