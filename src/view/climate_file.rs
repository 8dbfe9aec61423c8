//! The climate of the world: fetched when a place of the user's own first needs it.
//!
//! The example has its climate written out, so a first visit fetches nothing. Until the file is
//! here the regions count; what follows [`climate`] is worked out again when it comes.

use super::fetched;
use crate::forecast::climate_in;
use crate::model::climate::{Climate, World};
use crate::model::{Place, Trip};
use crate::units::Metres;
use leptos::prelude::*;
use std::cell::{Cell, RefCell};
use std::sync::Arc;

/// Name of the file beside the page.
const FILE: &str = "climate.bin";
/// After a failure it is asked for again, at the earliest so much later [ms].
const AGAIN_AFTER_MS: f64 = 10_000.0;

/// How far the file is.
#[derive(Clone)]
pub enum State {
    /// Not here yet.
    Coming,
    /// Here.
    Here(Arc<World>),
    /// Could not be fetched or read.
    Failed,
}

thread_local! {
    static STATE: RefCell<Option<ArcRwSignal<State>>> = const { RefCell::new(None) };
    /// When it may be asked for [ms since 1970]; never again while it is on its way or here.
    static ASK_FROM_MS: Cell<f64> = const { Cell::new(0.0) };
}

fn signal() -> ArcRwSignal<State> {
    STATE.with(|slot| {
        slot.borrow_mut().get_or_insert_with(|| ArcRwSignal::new(State::Coming)).clone()
    })
}

/// How far the file is; followed where it is called.
#[must_use]
pub fn state() -> State {
    signal().get()
}

/// The climate of the world, if it is here; asks for it if not. Followed where it is called.
#[must_use]
pub fn world() -> Option<Arc<World>> {
    if let State::Here(world) = state() {
        return Some(world);
    }
    ask();
    None
}

/// Climate of a trip, of the world's table where it is here. Followed where it is called.
#[must_use]
pub fn climate(trip: &Trip) -> Climate {
    climate_in(world().as_deref(), trip)
}

/// Mean height of the land around a place, if the table is here.
#[must_use]
pub fn height(place: &Place) -> Option<Metres> {
    match signal().get_untracked() {
        State::Here(world) => Some(world.at(place.latitude, place.longitude)?.height),
        _ => None,
    }
}

fn ask() {
    let now = js_sys::Date::now();
    if now < ASK_FROM_MS.get() {
        return;
    }
    ASK_FROM_MS.set(f64::INFINITY);
    wasm_bindgen_futures::spawn_local(async {
        let state = match fetched::bytes(FILE).await.map(|bytes| World::decode(&bytes)) {
            Ok(Ok(world)) => State::Here(Arc::new(world)),
            Ok(Err(error)) => failed(&error.to_string()),
            Err(error) => failed(&error),
        };
        signal().set(state);
    });
}

fn failed(why: &str) -> State {
    ASK_FROM_MS.set(js_sys::Date::now() + AGAIN_AFTER_MS);
    leptos::logging::warn!("{FILE}: {why}");
    State::Failed
}
