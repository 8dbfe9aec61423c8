//! "Every so many days", typed as a number and said in words.

use crate::i18n::Arg;
use crate::model::limits::EVERY_DAYS;
use crate::model::{EveryNth, Setup};
use crate::view::lang::t_args;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::NumberField;
use leptos::prelude::*;

/// How often, in words.
fn every_words(every: EveryNth) -> String {
    t_args("every-words", &[("n", Arg::Count(i32::from(every.0)))])
}

/// The number, with what it means under it.
pub(super) fn every_field(
    app: AppState,
    label: String,
    get: impl Fn(&Setup) -> Option<EveryNth> + Send + Sync + Clone + 'static,
    set: impl Fn(&mut Setup, EveryNth) + Send + Sync + 'static,
) -> AnyView {
    let read = get.clone();
    let lens = Lens::new(
        move |setup: &Setup| get(setup).map(|every| f64::from(every.0)),
        move |setup: &mut Setup, days: f64| set(setup, EveryNth(days.round() as u8)),
    );
    let words = Signal::derive(move || {
        app.setup.with(|setup| read(setup).map(every_words).unwrap_or_default())
    });
    NumberField::new(label, "", EVERY_DAYS, lens).step(1.0).live_hint(words).view(app)
}
