//! What each load takes in a day, for the list that is being edited.

use super::outlook::Calculation;
use super::state::AppState;
use crate::forecast::demand::LoadEnergy;
use crate::units::Celsius;
use leptos::prelude::*;

/// What the loads take, following every edit.
#[must_use]
pub fn follow(app: AppState, calculation: Calculation) -> Memo<LoadEnergy> {
    let air = Memo::new(move |_| {
        // The same day the answer speaks of.
        let sun = calculation.sun.get();
        sun.map_or([Celsius(15.0); 24], |sun| sun.0.first_whole_day_air())
    });
    Memo::new(move |_| {
        let air = air.get();
        app.setup.with(|setup| LoadEnergy::of(setup, &air))
    })
}
