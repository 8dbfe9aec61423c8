//! State of the measuring bench: method, readings and the load they are for.

use super::method::Method;
use super::readings::Readings;
use leptos::prelude::*;

/// What is being measured; kept while other parts of the page are shown.
#[derive(Clone, Copy)]
pub struct Bench {
    pub(super) method: RwSignal<Method>,
    pub(super) readings: RwSignal<Readings>,
    /// The load it is for, by id; `None` for a new one.
    pub(super) target: RwSignal<Option<u32>>,
}

impl Default for Bench {
    fn default() -> Self {
        Self {
            method: RwSignal::new(Method::default()),
            readings: RwSignal::new(Readings::default()),
            target: RwSignal::new(None),
        }
    }
}
