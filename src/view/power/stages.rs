//! What a charger with stages does: bulk, absorption, float, and what its hours reach.

use crate::forecast::{ChargeSession, Charger, charge_session};
use crate::i18n::Arg;
use crate::physics::battery::ChargeStage;
use crate::units::Hours;
use crate::view::lang::{amps, duration, key, percent, t_args, temperature};
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use leptos::prelude::*;

/// A line under the fields of a charger; follows what is typed.
pub(super) fn told(app: AppState, charger: Charger) -> AnyView {
    let calculation = use_context::<Calculation>();
    let words = Memo::new(move |_| {
        let plan = calculation?.plan.get()?;
        let session = app.setup.with(|setup| charge_session(setup, &plan.0, charger))?;
        Some(words(&session))
    });
    view! { <p class="field-hint charge-stages" data-testid="charge-stages">{move || words.get()}</p> }.into_any()
}

/// To five minutes: more is not known.
fn about(time: Hours) -> String {
    duration(Hours((time.0 * 12.0).round() / 12.0))
}

fn words(session: &ChargeSession) -> String {
    let (at, drawn) = (temperature(session.temperature), amps(session.drawn));
    let (from, current) = (percent(session.from_frac), amps(session.current));
    let time = duration(session.time);
    let Some(stages) = session.stages else {
        let args = [("at", Arg::Text(&at)), ("drawn", Arg::Text(&drawn))];
        let starved = session.drawn >= session.current;
        return t_args(if starved { key!("stages-starved") } else { key!("stages-cold") }, &args);
    };
    let (full, bulk) = (about(stages.full), about(stages.bulk));
    let absorption = about(stages.full - stages.bulk);
    let bulk_to = percent(stages.absorption_from_frac);
    let reached = percent(stages.reached_frac);
    let args = [
        ("at", Arg::Text(&at)),
        ("amps", Arg::Text(&current)),
        ("drawn", Arg::Text(&drawn)),
        ("from", Arg::Text(&from)),
        ("full", Arg::Text(&full)),
        ("bulk", Arg::Text(&bulk)),
        ("to", Arg::Text(&bulk_to)),
        ("absorption", Arg::Text(&absorption)),
        ("time", Arg::Text(&time)),
        ("reached", Arg::Text(&reached)),
    ];
    let whole = if stages.full.is_finite() { key!("stages-full") } else { key!("stages-long") };
    let within = match stages.reached {
        ChargeStage::Bulk => key!("stages-reach-bulk"),
        ChargeStage::Absorption => key!("stages-reach-absorption"),
        ChargeStage::Float => key!("stages-reach-float"),
    };
    format!("{} {}", t_args(whole, &args), t_args(within, &args))
}
