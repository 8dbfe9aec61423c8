//! What explains the readings, offered to be taken over.

use super::form::moment;
use crate::advice::on_site::fit::{Factor, Fit, Wanted, fit};
use crate::i18n::Arg;
use crate::model::{Correction, Setup};
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::icons::Icon;
use crate::view::jobs::Generations;
use crate::view::lang::{key, number, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::{button, quiet_button};
use crate::view::working::Working;
use leptos::prelude::*;
use std::time::Duration;

/// Pause after the last edit before the readings are fitted [ms].
const PAUSE_MS: u64 = 200;
/// Nine in ten of a normal spread lie within so many standard deviations.
const NINE_IN_TEN_SD: f64 = 1.645;
/// A factor nearer to 1 than this is "as planned".
const AS_PLANNED: f64 = 0.015;

/// What the readings say, kept while other screens are shown.
type FitState = RwSignal<Option<ArcPtrEq<Fit>>>;

/// Keeps the fit in step with the readings.
fn follow(app: AppState, calculation: Calculation, state: FitState) {
    let generations = Generations::default();
    Effect::new(move |_| {
        let setup = app.setup.get();
        let sun = calculation.sun.get();
        let generation = generations.begin();
        let (Some(sun), false) = (sun, setup.readings.is_empty()) else {
            state.try_set(None);
            return;
        };
        let working = Working::begin();
        set_timeout(
            move || {
                let _working = working;
                if !generation.is_over() {
                    state.try_set(fit(&setup, sun.0).map(ArcPtrEq::new));
                }
            },
            Duration::from_millis(PAUSE_MS),
        );
    });
}

/// What was learned, and what is in force.
pub(super) fn view(app: AppState, calculation: Calculation, state: FitState) -> AnyView {
    follow(app, calculation, state);
    let in_force = Memo::new(move |_| app.setup.with(|setup| setup.correction.clone()));
    view! {
        {move || {
            state.get()
                .map(|fit| app.setup.with_untracked(|setup| offer(app, setup, &fit.0, &in_force.get())))
        }}
        {move || {
            let correction = in_force.get();
            (correction != Correction::default())
                .then(|| app.setup.with_untracked(|setup| force(app, setup, &correction)))
        }}
    }
    .into_any()
}

/// More or less than planned, in words.
fn factor_words(factor: &Factor, more: &str, less: &str, same: &str, unknown: &str) -> String {
    if !factor.known {
        return t(unknown);
    }
    let off = factor.value - 1.0;
    let spread = percent(NINE_IN_TEN_SD * factor.sd);
    let spread = ("spread", Arg::Text(spread.as_str()));
    let amount = percent(off.abs());
    let amount = ("amount", Arg::Text(amount.as_str()));
    if off.abs() < AS_PLANNED {
        t_args(same, &[spread])
    } else if off > 0.0 {
        t_args(more, &[amount, spread])
    } else {
        t_args(less, &[amount, spread])
    }
}

/// What a fit says of use and of sun, and that it does not fit, where it does not.
pub(in crate::view::tools) fn fit_words(fit: &Fit) -> (String, String, Option<AnyView>) {
    let using = factor_words(
        &fit.use_factor,
        key!("learned-use-more"),
        key!("learned-use-less"),
        key!("learned-use-same"),
        key!("learned-use-unknown"),
    );
    let sun = factor_words(
        &fit.sun_factor,
        key!("learned-sun-more"),
        key!("learned-sun-less"),
        key!("learned-sun-same"),
        key!("learned-sun-unknown"),
    );
    let misfit = (!fit.is_consistent())
        .then(|| view! { <p class="notice" role="status">{t("learned-misfit")}</p> }.into_any());
    (using, sun, misfit)
}

fn offer(app: AppState, setup: &Setup, fit: &Fit, in_force: &Correction) -> AnyView {
    let (using, sun, misfit) = fit_words(fit);
    let wanted: Vec<AnyView> = fit
        .wanted
        .iter()
        .map(|wanted| {
            let text = t(match wanted {
                Wanted::OverNight => key!("learned-wanted-night"),
                Wanted::OverDay => key!("learned-wanted-day"),
            });
            view! { <li>{text}</li> }.into_any()
        })
        .collect();
    let wanted = (!wanted.is_empty()).then(|| {
        view! {
            <p>{t("learned-wanted")}</p>
            <ul class="answer-facts">{wanted}</ul>
        }
    });
    let restart = fit.correction.restart.map(|(at, soc_frac)| {
        let (at, soc) = (moment(&setup.trip, at), percent(soc_frac));
        t_args("learned-restart", &[("moment", Arg::Text(&at)), ("soc", Arg::Text(&soc))])
    });
    let changes = fit.correction.use_factor != 1.0 || fit.correction.sun_factor != 1.0;
    let whole = fit.correction.clone();
    let only_restart = Correction { restart: whole.restart, ..in_force.clone() };
    let take = move || {
        let whole = whole.clone();
        app.edit_with_undo(t("toast-learned"), |setup| setup.correction = whole);
    };
    let restart_only = {
        let only_restart = only_restart.clone();
        move || {
            let only_restart = only_restart.clone();
            app.edit_with_undo(t("toast-restarted"), |setup| setup.correction = only_restart);
        }
    };
    let taken = *in_force == fit.correction;
    let buttons = if taken {
        view! { <p class="quiet">{t("learned-taken")}</p> }.into_any()
    } else {
        let both = changes.then(|| button(Some(Icon::Done), t("learned-take"), take));
        let restart_only = (*in_force != only_restart)
            .then(|| quiet_button(Some(Icon::Done), t("learned-restart-only"), restart_only));
        view! { <div class="button-row">{both}{restart_only}</div> }.into_any()
    };
    view! {
        <section class="card" aria-labelledby="learned-title">
            <h2 id="learned-title">{t("learned-title")}</h2>
            <p class="learned">{using}</p>
            <p class="learned">{sun}</p>
            {misfit}
            {wanted}
            {restart.map(|restart| view! { <p>{restart}</p> })}
            {buttons}
            <p><small>{t("learned-how")}</small></p>
        </section>
    }
    .into_any()
}

fn force(app: AppState, setup: &Setup, correction: &Correction) -> AnyView {
    let factor = |value: f64| format!("×{}", number(value, 2));
    let (using, sun) = (factor(correction.use_factor), factor(correction.sun_factor));
    let factors =
        t_args("force-factors", &[("using", Arg::Text(&using)), ("sun", Arg::Text(&sun))]);
    let restart = correction.restart.map(|(at, soc_frac)| {
        let (at, soc) = (moment(&setup.trip, at), percent(soc_frac));
        t_args("force-restart", &[("moment", Arg::Text(&at)), ("soc", Arg::Text(&soc))])
    });
    let forget = move || {
        app.edit_with_undo(t("toast-forgotten"), |setup| {
            setup.correction = Correction::default();
        });
    };
    view! {
        <section class="card" aria-labelledby="force-title">
            <h2 id="force-title">{t("force-title")}</h2>
            <p>{factors}</p>
            {restart.map(|restart| view! { <p>{restart}</p> })}
            {quiet_button(Some(Icon::Undo), t("force-forget"), forget)}
        </section>
    }
    .into_any()
}
