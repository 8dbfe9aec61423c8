//! The climate of the trip's place, for what does not follow the dates of the trip.

use crate::forecast::MonthlyClimate;
use crate::forecast::climate::climate_of;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use leptos::prelude::*;

/// The climate that the answer is worked out with; until it is there, that of the tables carried along.
pub(super) fn climate_here(app: AppState) -> Memo<MonthlyClimate> {
    let calculation = use_context::<Calculation>();
    Memo::new(move |_| {
        let known = calculation.and_then(|calculation| calculation.climate.get());
        let climate = known.unwrap_or_else(|| app.setup.with(|setup| climate_of(&setup.trip)));
        MonthlyClimate::from(&climate)
    })
}
