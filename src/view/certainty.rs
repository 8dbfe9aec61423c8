//! How surely a night should last to count: one setting for every screen.
//!
//! Like the texts it lives in the thread, not in a signal: when it changes the whole page is built again.

use crate::forecast::odds::SURE_FRAC;
use std::cell::Cell;

/// How surely.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Certainty {
    /// 8 times out of 10.
    Eight,
    /// 9 times out of 10.
    #[default]
    Nine,
    /// 19 times out of 20.
    Nineteen,
}

thread_local! {
    static CERTAINTY: Cell<Certainty> = const { Cell::new(Certainty::Nine) };
}

impl Certainty {
    /// All, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::Eight, Self::Nine, Self::Nineteen];

    /// That in force.
    #[must_use]
    pub fn in_force() -> Self {
        CERTAINTY.get()
    }

    /// Puts it in force; what stands on the page has to be made again.
    pub fn put_in_force(self) {
        CERTAINTY.set(self);
    }

    /// As a chance, 0..1.
    #[must_use]
    pub fn frac(self) -> f64 {
        match self {
            Self::Eight => 0.8,
            Self::Nine => SURE_FRAC,
            Self::Nineteen => 0.95,
        }
    }

    /// Word in storage.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Eight => "8",
            Self::Nine => "",
            Self::Nineteen => "19",
        }
    }
}

/// The chance, 0..1, from which on a night counts as safe.
#[must_use]
pub fn sure_frac() -> f64 {
    Certainty::in_force().frac()
}
