//! A lens: getter and setter of one field of the setup, which form fields are bound to.

use super::state::AppState;
use crate::model::{Load, OtherSource, Setup, SolarArray};
use leptos::prelude::*;
use std::sync::Arc;

/// Reads one value.
type Reader<T> = Arc<dyn Fn(&Setup) -> Option<T> + Send + Sync>;
/// Writes one value.
type Writer<T> = Arc<dyn Fn(&mut Setup, T) + Send + Sync>;

/// Reads and writes one value of the setup.
///
/// Reading gives `None` where there is no such value, for instance after its row was deleted.
pub struct Lens<T: 'static> {
    get: Reader<T>,
    set: Writer<T>,
}

impl<T: 'static> Clone for Lens<T> {
    fn clone(&self) -> Self {
        Self { get: Arc::clone(&self.get), set: Arc::clone(&self.set) }
    }
}

impl<T: 'static> Lens<T> {
    /// From any two closures.
    pub fn new(
        get: impl Fn(&Setup) -> Option<T> + Send + Sync + 'static,
        set: impl Fn(&mut Setup, T) + Send + Sync + 'static,
    ) -> Self {
        Self { get: Arc::new(get), set: Arc::new(set) }
    }

    /// A value that is always there.
    pub fn of(get: fn(&Setup) -> T, set: fn(&mut Setup, T)) -> Self {
        Self::new(move |setup| Some(get(setup)), set)
    }

    /// A value of the load with this id.
    pub fn load(id: u32, get: fn(&Load) -> Option<T>, set: fn(&mut Load, T)) -> Self {
        Self::new(
            move |setup| setup.load(id).and_then(get),
            move |setup, value| {
                if let Some(load) = setup.load_mut(id) {
                    set(load, value);
                }
            },
        )
    }

    /// A value of the solar array in this row.
    pub fn array(row: usize, get: fn(&SolarArray) -> T, set: fn(&mut SolarArray, T)) -> Self {
        Self::new(
            move |setup| setup.solar.get(row).map(get),
            move |setup, value| {
                if let Some(array) = setup.solar.get_mut(row) {
                    set(array, value);
                }
            },
        )
    }

    /// A value of the other source in this row.
    pub fn other(row: usize, get: fn(&OtherSource) -> T, set: fn(&mut OtherSource, T)) -> Self {
        Self::new(
            move |setup| setup.other.get(row).map(get),
            move |setup, value| {
                if let Some(source) = setup.other.get_mut(row) {
                    set(source, value);
                }
            },
        )
    }

    /// A value beside the setup, for fields of what is not kept with it.
    pub fn signal(signal: RwSignal<T>) -> Self
    where
        T: Clone + Send + Sync,
    {
        Self::new(
            move |_| signal.try_get(),
            move |_, value| {
                signal.try_set(value);
            },
        )
    }

    /// The value now, following changes when called in an effect.
    pub fn read(&self, app: AppState) -> Option<T> {
        app.setup.try_with(|setup| (self.get)(setup)).flatten()
    }

    /// The value now, without following changes.
    pub fn peek(&self, app: AppState) -> Option<T> {
        // The value may come from beside the setup, so the look at it is untracked as a whole.
        untrack(|| app.setup.try_with(|setup| (self.get)(setup)).flatten())
    }

    /// Writes the value as one edit.
    pub fn write(&self, app: AppState, value: T) {
        app.edit(|setup| (self.set)(setup, value));
    }

    /// The same place seen as another type.
    pub fn map<U: 'static>(self, there: fn(T) -> U, back: fn(U) -> T) -> Lens<U> {
        let Self { get, set } = self;
        Lens::new(
            move |setup| get(setup).map(there),
            move |setup, value: U| set(setup, back(value)),
        )
    }
}

impl<E: Copy + PartialEq + Send + Sync + 'static> Lens<E> {
    /// The place as the position of its value in `all`, for a list of choices.
    pub fn choice(self, all: &'static [E]) -> Lens<usize> {
        let Self { get, set } = self;
        Lens::new(
            move |setup| get(setup).map(|value| all.iter().position(|e| *e == value).unwrap_or(0)),
            move |setup, index: usize| {
                if let Some(value) = all.get(index) {
                    set(setup, *value);
                }
            },
        )
    }
}
