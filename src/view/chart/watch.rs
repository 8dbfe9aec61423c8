//! Signals when a canvas must be redrawn: its size, the colour scheme or the pixel ratio changed.

use js_sys::{Array, Function, Object, Reflect};
use leptos::prelude::*;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, MediaQueryList, MutationObserver, MutationObserverInit, ResizeObserver};

/// Looks that the device may ask for by itself.
const LOOKS: [&str; 3] =
    ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "(forced-colors: active)"];

/// Watches until dropped.
pub struct Watch {
    resize: Option<ResizeObserver>,
    theme: Option<MutationObserver>,
    looks: Vec<MediaQueryList>,
    ratio: Option<MediaQueryList>,
    notice: Closure<dyn FnMut()>,
}

impl Watch {
    /// Adds one to `stale` whenever what stands in `room` must be drawn again.
    #[must_use]
    pub fn new(room: &Element, stale: RwSignal<u32>) -> Self {
        let notice = Closure::<dyn FnMut()>::new(move || {
            // The picture may be gone already.
            let _ = stale.try_update(|count| *count = count.wrapping_add(1));
        });
        let call = notice.as_ref().unchecked_ref();
        let resize = ResizeObserver::new(call).ok();
        if let Some(resize) = &resize
            && observe_device_pixels(resize, room).is_none()
        {
            resize.observe(room);
        }
        let theme = MutationObserver::new(call).ok();
        let root = web_sys::window()
            .and_then(|window| window.document())
            .and_then(|document| document.document_element());
        if let (Some(theme), Some(root)) = (&theme, root) {
            let options = MutationObserverInit::new();
            options.set_attributes(true);
            options.set_attribute_filter(
                &[JsValue::from_str("data-theme")].into_iter().collect::<Array>(),
            );
            // Only fails for options that watch nothing.
            let _ = theme.observe_with_options(&root, &options);
        }
        let looks: Vec<MediaQueryList> = LOOKS.iter().filter_map(|query| media(query)).collect();
        for look in &looks {
            listen(look, &notice);
        }
        let mut watch = Self { resize, theme, looks, ratio: None, notice };
        watch.follow_ratio();
        watch
    }

    /// Watches for another pixel ratio than the one now in force; to be called after each change.
    pub fn follow_ratio(&mut self) {
        let Some(window) = web_sys::window() else { return };
        let query = format!("(resolution: {}dppx)", window.device_pixel_ratio());
        if let Some(before) = self.ratio.take() {
            unlisten(&before, &self.notice);
        }
        self.ratio = media(&query);
        if let Some(ratio) = &self.ratio {
            listen(ratio, &self.notice);
        }
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        if let Some(resize) = &self.resize {
            resize.disconnect();
        }
        if let Some(theme) = &self.theme {
            theme.disconnect();
        }
        for query in self.looks.iter().chain(&self.ratio) {
            unlisten(query, &self.notice);
        }
    }
}

/// Watches the size of `room` in device pixels, which changes with the pixel ratio too. `None`
/// where the browser cannot: it then throws, which only a call by hand can catch.
fn observe_device_pixels(resize: &ResizeObserver, room: &Element) -> Option<()> {
    let options = Object::new();
    Reflect::set(&options, &"box".into(), &"device-pixel-content-box".into()).ok()?;
    let observe: Function = Reflect::get(resize, &"observe".into()).ok()?.dyn_into().ok()?;
    observe.call2(resize, room, &options).ok()?;
    Some(())
}

fn media(query: &str) -> Option<MediaQueryList> {
    web_sys::window()?.match_media(query).ok().flatten()
}

fn listen(query: &MediaQueryList, notice: &Closure<dyn FnMut()>) {
    // Old browsers lack it; the next change of size then redraws.
    let _ = query.add_event_listener_with_callback("change", notice.as_ref().unchecked_ref());
}

fn unlisten(query: &MediaQueryList, notice: &Closure<dyn FnMut()>) {
    let _ = query.remove_event_listener_with_callback("change", notice.as_ref().unchecked_ref());
}
