//! The list of the world's places: fetched when a place is first searched for. Until it is here,
//! and where it cannot be fetched, the towns that the program carries are found.

use super::fetched;
use crate::model::places::gazetteer::Gazetteer;
use leptos::prelude::*;
use std::cell::{Cell, RefCell};
use std::sync::Arc;

/// Name of the file beside the page.
const FILE: &str = "places.txt";
/// After a failure it is asked for again, at the earliest so much later [ms].
const AGAIN_AFTER_MS: f64 = 10_000.0;

thread_local! {
    static LIST: RefCell<Option<ArcRwSignal<Option<Arc<Gazetteer>>>>> = const { RefCell::new(None) };
    /// When it may be asked for [ms since 1970]; never again while it is on its way or here.
    static ASK_FROM_MS: Cell<f64> = const { Cell::new(0.0) };
}

fn signal() -> ArcRwSignal<Option<Arc<Gazetteer>>> {
    LIST.with(|slot| slot.borrow_mut().get_or_insert_with(|| ArcRwSignal::new(None)).clone())
}

/// The list, if it is here; asks for it if not. Followed where it is called.
#[must_use]
pub fn list() -> Option<Arc<Gazetteer>> {
    let list = signal().get();
    if list.is_none() {
        ask();
    }
    list
}

/// The list, if it is here.
#[must_use]
pub fn here() -> Option<Arc<Gazetteer>> {
    signal().get_untracked()
}

fn ask() {
    let now = js_sys::Date::now();
    if now < ASK_FROM_MS.get() {
        return;
    }
    ASK_FROM_MS.set(f64::INFINITY);
    wasm_bindgen_futures::spawn_local(async {
        let read = |bytes: Vec<u8>| {
            let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
            Gazetteer::read(&text).map_err(|error| error.to_string())
        };
        match fetched::bytes(FILE).await.and_then(read) {
            Ok(list) => signal().set(Some(Arc::new(list))),
            Err(why) => {
                ASK_FROM_MS.set(js_sys::Date::now() + AGAIN_AFTER_MS);
                leptos::logging::warn!("{FILE}: {why}");
            }
        }
    });
}
