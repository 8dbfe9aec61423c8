//! Keeps keyboard focus when the focused element is removed.

use js_sys::Array;
use leptos::ev;
use leptos::prelude::*;
use std::borrow::Cow;
use wasm_bindgen::JsCast;
use web_sys::{Element, FocusOptions, HtmlElement, ScrollIntoViewOptions, ScrollLogicalPosition};

/// Moves the focus to the element with this id, where what had it is about to go.
pub fn to(id: &str) {
    let element = document().get_element_by_id(id);
    if let Some(element) = element.and_then(|found| found.dyn_into::<HtmlElement>().ok()) {
        // Fails only for an element that cannot take the focus; then it stays where it is.
        let _ = element.focus();
        // What goes away may move it out of sight.
        request_animation_frame(move || in_sight(&element));
    }
}

fn in_sight(element: &HtmlElement) {
    if document().active_element().is_some_and(|at| at.is_same_node(Some(element))) {
        let options = ScrollIntoViewOptions::new();
        options.set_block(ScrollLogicalPosition::Nearest);
        element.scroll_into_view_with_scroll_into_view_options(&options);
    }
}

/// The same for an element that is yet to be made.
pub fn to_new(id: impl Into<Cow<'static, str>>) {
    let id = id.into();
    request_animation_frame(move || to(&id));
}

/// Watches every press by keyboard, for the life of the page: where the press did away with what had the
/// focus, what stood around it gets it, so that the next step goes on from there.
pub fn keep() {
    let _ = window_event_listener(ev::click, |event| {
        // A press by pointer counts its clicks.
        if event.detail() == 0 {
            let path = event.composed_path();
            request_animation_frame(move || catch(&path));
        }
    });
}

fn catch(path: &Array) {
    if document().active_element().is_some_and(|at| at.tag_name() != "BODY") {
        return;
    }
    let around = path
        .iter()
        .filter_map(|node| node.dyn_into::<HtmlElement>().ok())
        .take_while(|element| !element.class_list().contains("frame"))
        .find(|element| element.is_connected() && element.offset_height() > 0);
    if let Some(element) = around.or_else(|| first("main")) {
        if !element.has_attribute("tabindex") {
            // Only fails for an invalid attribute name.
            let _ = element.set_attribute("tabindex", "-1");
        }
        let options = FocusOptions::new();
        options.set_prevent_scroll(true);
        // Fails only for an element that is gone.
        let _ = element.focus_with_options(&options);
    }
}

/// The first element that a selector meets.
#[must_use]
pub fn first(selector: &str) -> Option<HtmlElement> {
    document().query_selector(selector).ok().flatten().and_then(|found| found.dyn_into().ok())
}

/// Whether the focus is inside an element that this selector meets.
#[must_use]
pub fn is_inside(selector: &str) -> bool {
    let closest = |at: Element| at.closest(selector).ok().flatten();
    document().active_element().and_then(closest).is_some()
}
