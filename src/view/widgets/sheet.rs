//! A sheet over the page: the browser's own dialog.

use super::buttons::icon_button;
use super::fresh_id;
use crate::view::icons::Icon;
use crate::view::lang::t;
use crate::view::state::AppState;
use leptos::html::Dialog;
use leptos::prelude::*;

/// Opens and closes a sheet; copies share it.
#[derive(Clone, Copy)]
pub struct Sheet {
    open: RwSignal<bool>,
}

impl Default for Sheet {
    fn default() -> Self {
        Self { open: RwSignal::new(false) }
    }
}

impl Sheet {
    /// Shows the sheet.
    pub fn show(self) {
        self.open.try_set(true);
    }

    /// Puts it away.
    pub fn close(self) {
        self.open.try_set(false);
    }

    /// Whether it is shown; followed when called in an effect.
    #[must_use]
    pub fn is_open(self) -> bool {
        self.open.try_get().unwrap_or(false)
    }
}

/// The sheet's place in the page. `inside` is built each time the sheet is shown.
pub fn sheet(
    sheet: Sheet,
    title: impl Into<Signal<String>>,
    inside: impl Fn() -> AnyView + Send + Sync + 'static,
) -> AnyView {
    boxed(sheet, title.into(), Box::new(inside))
}

/// One function for all sheets, whatever they hold.
fn boxed(
    sheet: Sheet,
    title: Signal<String>,
    inside: Box<dyn Fn() -> AnyView + Send + Sync>,
) -> AnyView {
    let node: NodeRef<Dialog> = NodeRef::new();
    let title_id = fresh_id("sheet");
    let labelled = title_id.clone();
    let app = use_context::<AppState>();
    Effect::new(move |_| {
        let open = sheet.is_open();
        let Some(dialog) = node.get() else { return };
        if open && !dialog.open() {
            // Fails only for a dialog that is not in the page; then there is nothing to show.
            let _ = dialog.show_modal();
        } else if !open && dialog.open() {
            dialog.close();
        }
    });
    let on_backdrop = move |event: leptos::ev::MouseEvent| {
        let on_dialog = event.target().zip(node.get_untracked()).is_some_and(|(target, dialog)| {
            target == *AsRef::<web_sys::EventTarget>::as_ref(&dialog)
        });
        if on_dialog {
            sheet.close();
        }
    };
    view! {
        <dialog
            class="sheet"
            node_ref=node
            aria-labelledby=labelled
            on:close=move |_| sheet.close()
            on:click=on_backdrop
        >
            <div class="sheet-page">
                <header class="sheet-head">
                    <h2 id=title_id>{move || title.get()}</h2>
                    {icon_button(Icon::Close, t("sheet-close"), move || sheet.close())}
                </header>
                {app.map(|app| told_here(app, sheet))}
                {move || sheet.is_open().then(&inside)}
            </div>
        </dialog>
    }
    .into_any()
}

/// Messages, read out: the place where they appear lies behind the sheet, where nothing is.
fn told_here(app: AppState, sheet: Sheet) -> AnyView {
    let words = move || app.toast.get().filter(|_| sheet.is_open()).map(|toast| toast.text);
    view! { <p class="unseen" role="status">{words}</p> }.into_any()
}
