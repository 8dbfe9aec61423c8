//! Starts the page: the app takes the place of the static outline that `index.html` shows until then.

use nightbank::view::Keeper;
use wasm_bindgen::JsCast;
use web_sys::{Document, HtmlElement};

fn main() {
    nightbank::view::recovery::install();
    let Some(document) = web_sys::window().and_then(|window| window.document()) else {
        return;
    };
    let host = document
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<HtmlElement>().ok())
        .or_else(|| document.body());
    let Some(host) = host else { return };
    if nightbank::view::something_to_read() {
        // The outline stands until it is here. Without it the page starts all the same and says so.
        wasm_bindgen_futures::spawn_local(async move {
            let keeper = nightbank::view::parts::keeper().await.ok();
            mount(&document, host, keeper);
        });
    } else {
        mount(&document, host, None);
    }
}

fn mount(document: &Document, host: HtmlElement, keeper: Option<&'static Keeper>) {
    if let Some(outline) = document.get_element_by_id("shell") {
        outline.remove();
    }
    // The app lives as long as the page does.
    leptos::mount::mount_to(host.clone(), move || nightbank::view::app(keeper)).forget();
    // Tells style sheets, `boot.js` and measurements that the page answers from here on. It can fail only for an
    // invalid attribute name.
    let _ = host.set_attribute("data-ready", "");
}
