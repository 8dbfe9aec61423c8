//! Copies text to the clipboard or hands it to the device's share sheet.

use crate::view::lang::t;
use crate::view::state::AppState;
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::HtmlTextAreaElement;

fn navigator() -> Option<web_sys::Navigator> {
    web_sys::window().map(|window| window.navigator())
}

/// `navigator.clipboard.writeText(text)` where there is one; it is missing without https.
fn write_text(text: &str) -> Option<Promise> {
    let navigator = navigator()?;
    let clipboard = Reflect::get(&navigator, &JsValue::from_str("clipboard")).ok()?;
    let write: Function =
        Reflect::get(&clipboard, &JsValue::from_str("writeText")).ok()?.dyn_into().ok()?;
    write.call1(&clipboard, &JsValue::from_str(text)).ok()?.dyn_into().ok()
}

/// Copies a text. Where the browser forbids that, the text in `field` is selected, to be copied by
/// hand; either way it is told.
pub fn copy(app: AppState, text: String, field: Option<HtmlTextAreaElement>) {
    spawn_local(async move {
        let copied = match write_text(&text) {
            Some(promise) => JsFuture::from(promise).await.is_ok(),
            None => false,
        };
        if copied {
            app.tell(t("copied"), false);
            return;
        }
        if let Some(field) = field {
            // A field that cannot take the focus still shows its text selected.
            let _ = field.focus();
            field.select();
        }
        app.tell(t("copy-by-hand"), false);
    });
}

/// Whether this browser has a share sheet.
#[must_use]
pub fn has_share_sheet() -> bool {
    let share = navigator()
        .and_then(|navigator| Reflect::get(&navigator, &JsValue::from_str("share")).ok());
    share.is_some_and(|share| share.is_function())
}

/// Opens the share sheet of the device with a link.
pub fn open_share_sheet(app: AppState, title: String, address: String) {
    let Some(navigator) = navigator() else { return };
    let data = web_sys::ShareData::new();
    data.set_title(&title);
    data.set_url(&address);
    let promise = navigator.share_with_data(&data);
    spawn_local(async move {
        if let Err(error) = JsFuture::from(promise).await {
            let name = Reflect::get(&error, &JsValue::from_str("name")).ok();
            let put_away = name.and_then(|name| name.as_string()).as_deref() == Some("AbortError");
            // Putting the sheet away is no failure.
            if !put_away {
                app.tell(t("hand-on-failed"), false);
            }
        }
    });
}
