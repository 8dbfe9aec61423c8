//! One of the user's own runs: what it is and what the check says of it.

use super::verdict::{self, SIZES, size_words};
use crate::advice::workshop::wiring::check;
use crate::i18n::Arg;
use crate::model::limits::{CABLE_M, CONDUCTOR_C, DRAW_A, FUSE_A};
use crate::model::{CableRun, ConductorSize, Feed};
use crate::physics::ampacity::Surroundings;
use crate::units::{Amps, Celsius, Measure, Metres};
use crate::view::icons::Icon;
use crate::view::lang::{number, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, quiet_button, select_field, text_field, toggle};
use crate::view::words::names::load_name;
use leptos::prelude::*;

fn cable<T: 'static>(row: usize, get: fn(&CableRun) -> T, set: fn(&mut CableRun, T)) -> Lens<T> {
    Lens::new(
        move |setup| setup.cables.get(row).map(get),
        move |setup, value| {
            if let Some(run) = setup.cables.get_mut(row) {
                set(run, value);
            }
        },
    )
}

/// What hangs on the run: a typed current, or one of the loads.
fn feeds(app: AppState, row: usize) -> AnyView {
    let loads: Vec<(u32, String)> = app.setup.with_untracked(|setup| {
        let name = |load: &crate::model::Load| match load.feed {
            Feed::Dc => load_name(load),
            Feed::Inverter => {
                let name = load_name(load);
                t_args("wiring-through-inverter", &[("name", Arg::Text(&name))])
            }
        };
        setup.loads.iter().map(|load| (load.id, name(load))).collect()
    });
    let mut options = vec![t("wiring-typed")];
    options.extend(loads.iter().map(|(_, name)| name.clone()));
    let ids: Vec<u32> = loads.into_iter().map(|(id, _)| id).collect();
    let known = ids.clone();
    let lens = Lens::new(
        move |setup| {
            setup.cables.get(row).map(|run| {
                let at = run.load_id.and_then(|id| known.iter().position(|known| *known == id));
                at.map_or(0, |at| at + 1)
            })
        },
        move |setup, index: usize| {
            if let Some(run) = setup.cables.get_mut(row) {
                run.load_id = index.checked_sub(1).and_then(|at| ids.get(at).copied());
            }
        },
    );
    select_field(app, t("wiring-feeds"), options, lens)
}

/// The size as its place in [`SIZES`]: the nearest of its kind.
fn size_lens(row: usize) -> Lens<usize> {
    Lens::new(
        move |setup| setup.cables.get(row).map(|run| verdict::nearest(run.size)),
        move |setup, index: usize| {
            if let (Some(run), Some(size)) = (setup.cables.get_mut(row), SIZES.get(index)) {
                run.size = *size;
            }
        },
    )
}

/// The card.
pub(super) fn view(app: AppState, surroundings: RwSignal<Surroundings>, row: usize) -> AnyView {
    let number = number((row + 1) as f64, 0);
    let title = t_args("wiring-run", &[("number", Arg::Text(&number))]);
    let heading = {
        let title = title.clone();
        move || {
            let name = app
                .setup
                .with(|setup| setup.cables.get(row).map(|run| run.name.clone()))
                .unwrap_or_default();
            if name.is_empty() { title.clone() } else { name }
        }
    };
    let typed = Memo::new(move |_| {
        app.setup.with(|setup| setup.cables.get(row).is_some_and(|run| run.load_id.is_none()))
    });
    let current = move || {
        typed.get().then(|| {
            let lens = cable(row, |run| run.amps.0, |run, value| run.amps = Amps(value));
            NumberField::new(t("wiring-amps"), Amps::UNIT, DRAW_A, lens).view(app)
        })
    };
    let length = cable(row, |run| run.length.0, |run, value| run.length = Metres(value));
    let working = cable(row, |run| run.working.0, |run, value| run.working = Celsius(value));
    let fuse = cable(row, |run| run.fuse.0, |run, value| run.fuse = Amps(value));
    let critical = cable(row, |run| run.critical, |run, value| run.critical = value);
    let name = cable(row, |run| run.name.clone(), |run, value| run.name = value);
    let sizes = SIZES.iter().map(|size: &ConductorSize| size_words(*size)).collect();
    let delete = move || {
        app.edit_with_undo(t("toast-run-deleted"), |setup| {
            if row < setup.cables.len() {
                setup.cables.remove(row);
            }
        });
        crate::view::focus::to("runs-title");
    };
    let said = move || {
        let place = surroundings.get();
        app.setup.with(|setup| {
            setup.cables.get(row).map(|run| verdict::view(&check(run, setup, place), setup, run))
        })
    };
    view! {
        <li class="run" data-testid="cable-run">
            <h3>{heading}</h3>
            <div class="fields">
                {text_field(app, t("wiring-name"), title, name)}
                {feeds(app, row)}
                {current}
                {NumberField::of(Measure::Length, t("wiring-length"), CABLE_M, length)
                    .hint(t("wiring-length-hint"))
                    .view(app)}
                {select_field(app, t("wiring-size"), sizes, size_lens(row))}
                {NumberField::new(t("wiring-fuse"), Amps::UNIT, FUSE_A, fuse)
                    .hint(t("wiring-fuse-hint"))
                    .view(app)}
                {NumberField::of(Measure::Temperature, t("wiring-working"), CONDUCTOR_C, working)
                    .hint(t("wiring-working-hint"))
                    .view(app)}
                {toggle(app, t("wiring-critical"), Some(t("wiring-critical-hint")), critical)}
            </div>
            <div class="verdict" data-testid="run-verdict" aria-live="polite">{said}</div>
            {quiet_button(Some(Icon::Delete), t("wiring-delete"), delete)}
        </li>
    }
    .into_any()
}
