//! Nights that a search aims at, with their form field; as surely as the page is set to.

use crate::forecast::Odds;
use crate::model::limits;
use crate::view::certainty::sure_frac;
use crate::view::lang::t;
use crate::view::lens::Lens;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::NumberField;
use leptos::prelude::*;

/// Nights asked for beyond those that last anyway.
const FURTHER: usize = 2;

/// Nights at a chance, as chosen; kept while other parts of the page are shown.
#[derive(Clone, Copy)]
pub struct Stay {
    nights: RwSignal<Option<f64>>,
}

impl Default for Stay {
    fn default() -> Self {
        Self { nights: RwSignal::new(None) }
    }
}

/// Nights to ask for first: those of the trip, or some more where these last anyway.
fn first_nights(app: AppState, calculation: Calculation) -> f64 {
    let asked = app.setup.with_untracked(|setup| usize::from(setup.trip.nights));
    let nights_sure = |odds: &Option<Odds>| odds.as_ref().map(|odds| odds.nights_at(sure_frac()));
    match calculation.odds.with_untracked(nights_sure) {
        Some(sure) if sure >= asked => (sure + FURTHER).min(limits::NIGHTS.max as usize) as f64,
        _ => asked as f64,
    }
}

impl Stay {
    /// Nights wanted.
    #[must_use]
    pub fn nights(self) -> usize {
        self.nights.get().unwrap_or(1.0) as usize
    }

    /// The fields.
    #[must_use]
    pub fn fields(self, app: AppState, calculation: Calculation) -> AnyView {
        if self.nights.get_untracked().is_none() {
            self.nights.set(Some(first_nights(app, calculation)));
        }
        let nights = Lens::signal(self.nights)
            .map(|nights| nights.unwrap_or(1.0), |nights: f64| Some(nights.round()));
        view! {
            <div class="fields">
                {NumberField::new(t("ways-nights"), "", limits::NIGHTS, nights).step(1.0).view(app)}
            </div>
        }
        .into_any()
    }
}
