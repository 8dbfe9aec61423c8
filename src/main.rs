//! Starts the page: the app takes the place of the static outline that `index.html` shows until then.

use wasm_bindgen::JsCast;

fn main() {
    nightbank::view::recovery::install();
    let Some(document) = web_sys::window().and_then(|window| window.document()) else {
        return;
    };
    let host = document
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok())
        .or_else(|| document.body());
    let Some(host) = host else { return };
    if let Some(outline) = document.get_element_by_id("shell") {
        outline.remove();
    }
    // The app lives as long as the page does.
    leptos::mount::mount_to(host.clone(), nightbank::view::App).forget();
    // Tells style sheets, `boot.js` and measurements that the page answers from here on. It can fail only for an
    // invalid attribute name.
    let _ = host.set_attribute("data-ready", "");
}
