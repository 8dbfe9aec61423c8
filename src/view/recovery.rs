//! The panel shown after a panic, with the setups to save as a link or file.
//!
//! A panic leaves the app in no state to be trusted, so nothing here touches it: the panel is built
//! from text nodes, its links work without any code of ours, and the setups come from a copy left
//! behind at every save ([`remember`]), words included. It works where storage is blocked too.

use super::lang::t;
use super::page_address::address_with;
use super::storage::{self, StoredText};
use crate::link;
use crate::model::Setup;
use crate::store::{Key, Library, write_file};
use js_sys::Reflect;
use std::cell::{Cell, RefCell};
use wasm_bindgen::prelude::*;
use web_sys::{Blob, BlobPropertyBag, Document, Element, Url};

/// Name of the file that is offered.
const FILE_NAME: &str = "nightbank-setups.json";

/// Id of the panel; `boot.js` is quiet where it stands.
const PANEL: &str = "recovery";

#[derive(Default)]
struct Copy {
    /// Link to the setup on screen, as after `#`.
    link: Option<String>,
    /// Link to a setup with nothing in it.
    empty: Option<String>,
    /// All setups as a file.
    file: Option<String>,
    words: Words,
}

#[derive(Default)]
struct Words {
    title: String,
    text: String,
    reload: String,
    file: String,
    link: String,
    empty: String,
}

impl Words {
    fn now() -> Self {
        Self {
            title: t("recovery-title"),
            text: t("recovery-text"),
            reload: t("recovery-reload"),
            file: t("recovery-file"),
            link: t("recovery-link"),
            empty: t("recovery-empty"),
        }
    }
}

thread_local! {
    static COPY: RefCell<Copy> = RefCell::default();
    static SHOWN: Cell<bool> = const { Cell::new(false) };
}

/// Leaves a copy of what is stored and the words for the panel. To be called once, before any setup is
/// touched; until then `boot.js` tells what went wrong.
pub fn prepare() {
    let copy = Copy {
        link: None,
        // The part that makes links is not here yet, and without it nothing of the user's is.
        empty: None,
        // Not yet read, and perhaps what cannot be read.
        file: match storage::text(Key::Library) {
            StoredText::Text(text) => Some(text),
            _ => None,
        },
        words: Words::now(),
    };
    COPY.replace(copy);
}

/// Has the panel shown when the program panics or is stopped by the browser. To be called once,
/// before anything else.
pub fn install() {
    std::panic::set_hook(Box::new(|info| {
        let said = info.to_string();
        leptos::logging::error!("{said}");
        show(&said);
    }));
    // A program built for size stops at a panic without a word (`.ci/setup.sh` tells), and so does one
    // with too deep a recursion or without memory.
    let stopped = Closure::<dyn FnMut(JsValue)>::new(|event: JsValue| {
        let of = |name: &str| Reflect::get(&event, &JsValue::from_str(name)).ok();
        let error = of("error").into_iter().chain(of("reason")).find(is_runtime_error);
        if let Some(error) = error {
            show(&told_by(&error));
        }
    });
    let Some(window) = web_sys::window() else { return };
    let listening = ["error", "unhandledrejection"].map(|kind| {
        window.add_event_listener_with_callback(kind, stopped.as_ref().unchecked_ref()).is_ok()
    });
    if listening.contains(&true) {
        stopped.forget();
    }
}

/// Has the panel offer a start with nothing in it, for a setup that stops the page at once.
pub fn offer_empty() {
    let empty = link::encode(&Setup::default()).ok();
    COPY.with(|copy| {
        if let Ok(mut copy) = copy.try_borrow_mut() {
            copy.empty = empty;
        }
    });
}

/// Leaves a copy of the setups for the panel.
pub fn remember(library: &Library, on_screen: Option<&Setup>) {
    let mut setups: Vec<Setup> =
        library.entries().iter().map(|entry| entry.setup.clone()).collect();
    let link = on_screen.and_then(|setup| link::encode(setup).ok());
    if setups.is_empty() {
        setups.extend(on_screen.cloned());
    }
    let file = write_file(&setups).ok();
    COPY.with(|copy| {
        if let Ok(mut copy) = copy.try_borrow_mut() {
            copy.link = link;
            // What could not be read on the way in is better than nothing.
            copy.file = file.or(copy.file.take());
            copy.words = Words::now();
        }
    });
}

fn is_runtime_error(error: &JsValue) -> bool {
    property(error, "name").as_deref() == Some("RuntimeError")
}

fn property(of: &JsValue, name: &str) -> Option<String> {
    of.is_object().then(|| Reflect::get(of, &JsValue::from_str(name)).ok()?.as_string()).flatten()
}

/// Innermost places in the program that are told.
const PLACES_TOLD: usize = 4;

/// What stopped the program and where, as far as the browser tells: `wasm-function[12]:0x345` is
/// function and offset in this very build.
fn told_by(error: &JsValue) -> String {
    let message = property(error, "message").unwrap_or_default();
    let stack = property(error, "stack").unwrap_or_default();
    let places = stack.split("wasm-function").skip(1).take(PLACES_TOLD);
    places.fold(format!("RuntimeError: {message}"), |told, place| {
        let end = place.find(|c: char| c == ')' || c.is_whitespace()).unwrap_or(place.len());
        told + " " + &place[..end]
    })
}

/// Shows the panel in place of the app.
pub fn show(said: &str) {
    let prepared =
        COPY.with(|copy| copy.try_borrow().is_ok_and(|copy| !copy.words.title.is_empty()));
    if !prepared || SHOWN.replace(true) {
        return;
    }
    let Some(document) = web_sys::window().and_then(|window| window.document()) else { return };
    let built = COPY.with(|copy| {
        let copy = copy.try_borrow().ok()?;
        build(&document, &copy, said).ok()
    });
    // Where not even an element can be made there is nothing left to show.
    let (Some(panel), Some(body)) = (built, document.body()) else { return };
    if let Some(app) = document.get_element_by_id("app") {
        // Fails only for an invalid attribute name.
        let _ = app.set_attribute("hidden", "");
    }
    // The body takes any element.
    let _ = body.append_child(&panel);
}

fn element(document: &Document, tag: &str, text: &str) -> Result<Element, JsValue> {
    let element = document.create_element(tag)?;
    element.set_text_content(Some(text));
    Ok(element)
}

fn link_to(document: &Document, href: &str, text: &str) -> Result<Element, JsValue> {
    let link = element(document, "a", text)?;
    link.set_attribute("href", href)?;
    link.set_attribute("class", "button button-quiet")?;
    Ok(link)
}

fn build(document: &Document, copy: &Copy, said: &str) -> Result<Element, JsValue> {
    let Copy { link, empty, file, words } = copy;
    let panel = document.create_element("section")?;
    panel.set_id(PANEL);
    panel.set_attribute("class", "recovery")?;
    panel.set_attribute("role", "alert")?;
    panel.append_child(&*element(document, "h1", &words.title)?)?;
    panel.append_child(&*element(document, "p", &words.text)?)?;
    // Another query makes the browser load the page, where another fragment alone would not.
    let again = format!("?again={:.0}", js_sys::Date::now());
    let buttons = document.create_element("p")?;
    buttons.set_attribute("class", "button-row")?;
    buttons.append_child(&*link_to(document, &again, &words.reload)?)?;
    if let Some(file) = file {
        let save = link_to(document, &file_address(file)?, &words.file)?;
        save.set_attribute("download", FILE_NAME)?;
        buttons.append_child(&save)?;
    }
    if let Some(empty) = empty {
        let href = format!("{again}#{empty}");
        buttons.append_child(&*link_to(document, &href, &words.empty)?)?;
    }
    panel.append_child(&buttons)?;
    if let Some(link) = link {
        let label = element(document, "label", &words.link)?;
        let field = document.create_element("textarea")?;
        field.set_text_content(Some(&address_with(link)));
        field.set_attribute("readonly", "")?;
        field.set_attribute("rows", "4")?;
        label.append_child(&field)?;
        panel.append_child(&label)?;
    }
    panel.append_child(&*element(document, "small", said)?)?;
    Ok(panel)
}

/// An address under which the browser finds this text as a file.
fn file_address(text: &str) -> Result<String, JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type("application/json");
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options)?;
    Url::create_object_url_with_blob(&blob)
}
