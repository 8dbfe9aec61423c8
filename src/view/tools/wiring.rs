//! Wiring check: the user's own runs and the ones worth checking, each with what it carries,
//! drops and needs for a fuse.

mod run;
mod verdict;

use crate::advice::workshop::wiring_runs::{RunPurpose, SuggestedRun, suggested_runs};
use crate::i18n::Arg;
use crate::model::limits::{AIR_C, MAX_CABLES, Range};
use crate::model::{CableRun, Setup};
use crate::physics::ampacity::{Insulation, Surroundings};
use crate::units::{Celsius, Measure};
use crate::view::icons::Icon;
use crate::view::lang::{amps, key, measured, number, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, button, caution, choice_row, disclosure, quiet_button,
};
use crate::view::words::names::{array_name, load_name_by_id};
use leptos::prelude::*;
pub(super) use verdict::found;
use verdict::size_words;

/// Conductors that can lie together.
const BUNDLED: Range = Range { min: 1.0, max: 60.0 };
const INSULATIONS: [Insulation; 2] = [Insulation::C70, Insulation::C105];

/// The tool.
#[must_use]
pub fn view(app: AppState, surroundings: RwSignal<Surroundings>) -> AnyView {
    let rows = Memo::new(move |_| app.setup.with(|setup| setup.cables.len()));
    let add = move || {
        app.edit(|setup| {
            if setup.cables.len() < MAX_CABLES {
                setup.cables.push(CableRun::default());
            }
        });
    };
    view! {
        <p>{t("wiring-told")}</p>
        <p><strong>{t("wiring-defer")}</strong></p>
        {caution(Danger::Fuse)}
        {caution(Danger::CableHeat)}
        {place(app, surroundings)}
        <section class="card" aria-labelledby="runs-title">
            <h2 id="runs-title" tabindex="-1">{t("wiring-own")}</h2>
            {move || (rows.get() == 0).then(|| view! { <p>{t("wiring-own-none")}</p> })}
            <ol class="runs">
                <For each=move || 0..rows.get() key=|row| *row children=move |row| run::view(app, surroundings, row) />
            </ol>
            {move || {
                if rows.get() < MAX_CABLES {
                    button(Some(Icon::Add), t("wiring-add"), add)
                } else {
                    let most = Arg::Count(MAX_CABLES as i32);
                    view! { <p>{t_args("wiring-full", &[("most", most)])}</p> }.into_any()
                }
            }}
        </section>
        <section class="card" aria-labelledby="proposed-title">
            <h2 id="proposed-title">{t("wiring-proposed")}</h2>
            <p>{t("wiring-proposed-told")}</p>
            <ul class="runs">{move || proposals(app, surroundings)}</ul>
        </section>
    }
    .into_any()
}

fn place(app: AppState, surroundings: RwSignal<Surroundings>) -> AnyView {
    let insulation =
        part(surroundings, |place| place.insulation, |place, value| place.insulation = value);
    let ambient =
        part(surroundings, |place| place.ambient.0, |place, value| place.ambient = Celsius(value));
    let bundled = part(
        surroundings,
        |place| f64::from(place.bundled),
        |place, value: f64| place.bundled = value.round() as u8,
    );
    let kinds = vec![t("wiring-c70"), t("wiring-c105")];
    disclosure(
        t("wiring-place"),
        false,
        view! {
            {choice_row(app, t("wiring-insulation"), kinds, insulation.choice(&INSULATIONS))}
            <div class="fields">
                {NumberField::of(Measure::Temperature, t("wiring-ambient"), AIR_C, ambient)
                    .hint(t("wiring-ambient-hint"))
                    .view(app)}
                {NumberField::new(t("wiring-bundled"), "", BUNDLED, bundled)
                    .hint(t("wiring-bundled-hint"))
                    .step(1.0)
                    .view(app)}
            </div>
        }
        .into_any(),
    )
}

fn part<T: 'static>(
    surroundings: RwSignal<Surroundings>,
    get: fn(&Surroundings) -> T,
    set: fn(&mut Surroundings, T),
) -> Lens<T> {
    Lens::new(
        move |_| surroundings.try_with(get),
        move |_, value| {
            surroundings.try_update(|place| set(place, value));
        },
    )
}

/// What a run is for.
fn purpose_words(setup: &Setup, purpose: RunPurpose) -> String {
    match purpose {
        RunPurpose::Load(id) => load_name_by_id(setup, id),
        RunPurpose::Inverter => t(key!("run-inverter")),
        RunPurpose::DcDcCharger => t(key!("run-dc-dc")),
        RunPurpose::ChargingRelay => t(key!("run-relay")),
        RunPurpose::MainsCharger => t(key!("run-mains")),
        RunPurpose::Solar(index) => {
            let name = array_name(setup, index);
            t_args("run-solar", &[("name", Arg::Text(&name))])
        }
        RunPurpose::Other(index) => {
            let number = number((index + 1) as f64, 0);
            t_args("run-other", &[("number", Arg::Text(&number))])
        }
    }
}

fn proposals(app: AppState, surroundings: RwSignal<Surroundings>) -> Vec<AnyView> {
    let place = surroundings.get();
    app.setup.with(|setup| {
        let mut rows = Vec::new();
        for SuggestedRun { purpose, run } in suggested_runs(setup, place) {
            let name = purpose_words(setup, purpose);
            // What is checked already is not proposed again.
            let known = setup.cables.iter().any(|own| own.name == name);
            if !known {
                rows.push(proposal(app, setup, name, run));
            }
        }
        if rows.is_empty() {
            rows.push(view! { <li>{t("wiring-proposed-none")}</li> }.into_any());
        }
        rows
    })
}

fn proposal(app: AppState, setup: &Setup, name: String, run: CableRun) -> AnyView {
    let (current, length) = (amps(run.amps), measured(Measure::Length, run.length.0, 1));
    let size = size_words(run.size);
    let fuse = amps(run.fuse);
    let key =
        if run.fuse.0 > 0.0 { key!("wiring-proposal") } else { key!("wiring-proposal-no-fuse") };
    let facts = t_args(
        key,
        &[
            ("current", Arg::Text(&current)),
            ("length", Arg::Text(&length)),
            ("size", Arg::Text(&size)),
            ("fuse", Arg::Text(&fuse)),
        ],
    );
    let full = setup.cables.len() >= MAX_CABLES;
    let label = t_args("wiring-take-name", &[("name", Arg::Text(&name))]);
    let own = CableRun { name: name.clone(), ..run };
    let told = t_args("toast-run-added", &[("name", Arg::Text(&name))]);
    let take = move || {
        let own = own.clone();
        app.edit_with_undo(told.clone(), |setup| setup.cables.push(own));
        crate::view::focus::to("runs-title");
    };
    view! {
        <li class="run-proposed" data-testid="proposed-run">
            <h3>{name}</h3>
            <p class="help-facts">{facts}</p>
            {(!full)
                .then(|| {
                    view! {
                        <div role="group" aria-label=label>
                            {quiet_button(Some(Icon::Add), t("wiring-take"), take)}
                        </div>
                    }
                })}
        </li>
    }
    .into_any()
}
