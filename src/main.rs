//! Starts the page: the app takes the place of the static outline that `index.html` shows until then.

use nightbank::view::recovery;
use nightbank::view::setups::storage_module::{StorageModule, something_to_read};
use nightbank::view::tasks::run_as_tasks;
use wasm_bindgen::JsCast;
use web_sys::{Document, HtmlElement};

fn main() {
    recovery::install();
    // As tasks: to have the program started is work enough for one.
    run_as_tasks(vec![Box::new(recovery::prepare), Box::new(start)]);
}

fn start() {
    let Some(host) = document().and_then(|document| host(&document)) else { return };
    if something_to_read() {
        // The outline stands until it is here. Without it the page starts all the same and says so.
        wasm_bindgen_futures::spawn_local(async move {
            mount(host, nightbank::view::parts::fetch_storage_module().await.ok());
        });
    } else {
        mount(host, None);
    }
}

fn mount(host: HtmlElement, module: Option<&'static StorageModule>) {
    // The app lives as long as the page does.
    leptos::mount::mount_to(host, move || nightbank::view::app(module, shown, ready)).forget();
}

/// The outline gives way to the answer.
fn shown() {
    if let Some(outline) = document().and_then(|document| document.get_element_by_id("shell")) {
        outline.remove();
    }
}

/// Tells style sheets, `boot.js` and measurements that the page stands from here on.
fn ready() {
    if let Some(host) = document().and_then(|document| host(&document)) {
        // It can fail only for an invalid attribute name.
        let _ = host.set_attribute("data-ready", "");
    }
}

fn document() -> Option<Document> {
    web_sys::window()?.document()
}

fn host(document: &Document) -> Option<HtmlElement> {
    document
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<HtmlElement>().ok())
        .or_else(|| document.body())
}
