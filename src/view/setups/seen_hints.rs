//! One-time hints already shown, and the request for persistent storage.

use crate::store::Key;
use crate::view::storage;
use js_sys::{Function, Promise, Reflect};
use std::cell::RefCell;
use std::collections::BTreeSet;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// A hint that is shown once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SeenHint {
    /// The browser was asked to keep the setups for good.
    Persist,
    /// How long browsers of iOS keep things.
    IosStorage,
    /// The list of one's own setups is there, and empty.
    NoneOfOwn,
}

impl SeenHint {
    fn word(self) -> &'static str {
        match self {
            Self::Persist => "persist",
            Self::IosStorage => "ios-storage",
            Self::NoneOfOwn => "none-of-own",
        }
    }

    /// Whether it was told, on this visit or an earlier one.
    #[must_use]
    pub fn before(self) -> bool {
        words().contains(self.word())
    }

    /// Remembers that it was told; where storage keeps nothing, for this visit.
    pub fn remember(self) {
        let mut words = words();
        if words.insert(self.word().to_owned()) {
            // What cannot be kept lasts until the page is closed.
            let _ = storage::set(Key::Told, &words);
            THIS_VISIT.with_borrow_mut(|visit| *visit = words);
        }
    }

    /// Tells it again when it is due.
    pub fn forget(self) {
        let mut words = words();
        if words.remove(self.word()) {
            // Where it cannot be taken out it stays told.
            let _ = storage::set(Key::Told, &words);
            THIS_VISIT.with_borrow_mut(|visit| *visit = words);
        }
    }
}

thread_local! {
    static THIS_VISIT: RefCell<BTreeSet<String>> = const { RefCell::new(BTreeSet::new()) };
}

fn words() -> BTreeSet<String> {
    let mut words: BTreeSet<String> = storage::get(Key::Told).unwrap_or_default();
    THIS_VISIT.with_borrow(|visit| words.extend(visit.iter().cloned()));
    words
}

/// Asks the browser, once, not to clear this page's storage of its own accord. It decides by itself
/// or asks the user; the page works the same either way.
pub(super) fn ask_to_persist() {
    if SeenHint::Persist.before() {
        return;
    }
    SeenHint::Persist.remember();
    let Some(promise) = persist() else { return };
    spawn_local(async move {
        // A refusal changes nothing here.
        let _ = JsFuture::from(promise).await;
    });
}

/// `navigator.storage.persist()` where there is one; it is missing without https.
fn persist() -> Option<Promise> {
    let navigator = web_sys::window()?.navigator();
    let storage = Reflect::get(&navigator, &JsValue::from_str("storage")).ok()?;
    let persist: Function =
        Reflect::get(&storage, &JsValue::from_str("persist")).ok()?.dyn_into().ok()?;
    persist.call0(&storage).ok()?.dyn_into().ok()
}

/// Whether this is a browser of iOS or iPadOS: all of them drop what a page stored after seven days
/// of use without a visit, and give a page on the home screen a storage of its own.
#[must_use]
pub fn is_ios_like() -> bool {
    let Some(navigator) = web_sys::window().map(|window| window.navigator()) else { return false };
    let agent = navigator.user_agent().unwrap_or_default();
    let names = ["iPhone", "iPad", "iPod"];
    // iPadOS calls itself a Mac, but Macs have no touch screen.
    let touch = Reflect::get(&navigator, &JsValue::from_str("maxTouchPoints"));
    let touch = touch.ok().and_then(|points| points.as_f64()).unwrap_or(0.0);
    names.iter().any(|name| agent.contains(name)) || (agent.contains("Macintosh") && touch > 1.0)
}
