//! One appliance in the list.

use super::editor::{self, button_id};
use crate::forecast::demand::LoadEnergy;
use crate::i18n::Arg;
use crate::view::lang::{t_args, watt_hours};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::fresh_id;
use crate::view::words::loads::load_summary;
use crate::view::words::names::load_name;
use leptos::prelude::*;

/// What the closed row shows.
#[derive(Clone, PartialEq)]
struct Face {
    name: String,
    summary: String,
    enabled: bool,
}

/// The row of the load with this id; `open` holds the id of the row being edited.
pub(super) fn view(
    app: AppState,
    needs: Memo<LoadEnergy>,
    open: RwSignal<Option<u32>>,
    id: u32,
) -> AnyView {
    let face = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.load(id).map(|load| Face {
                name: load_name(load),
                summary: load_summary(load),
                enabled: load.enabled,
            })
        })
    });
    let is_open = Memo::new(move |_| open.get() == Some(id));
    let name = move || face.with(|face| face.as_ref().map(|face| face.name.clone()));
    let words = move || face.with(|face| face.as_ref().map(|face| face.summary.clone()));
    let enabled = Memo::new(move |_| face.with(|face| face.as_ref().is_some_and(|f| f.enabled)));
    let switch = Lens::<bool>::load(id, |load| Some(load.enabled), |load, on| load.enabled = on);
    let editor_id = fresh_id("load");
    let controls = editor_id.clone();
    let switch_name =
        move || t_args("load-count-it", &[("name", Arg::Text(&name().unwrap_or_default()))]);
    let press = move |_| {
        open.try_set(if is_open.get_untracked() { None } else { Some(id) });
    };
    view! {
        <li
            class="load"
            data-testid="load"
            class:load-off=move || !enabled.get()
            class:load-open=move || is_open.get()
        >
            <div class="load-face">
                <button
                    type="button"
                    class="load-button"
                    data-testid="load-button"
                    id=button_id(id)
                    aria-expanded=move || if is_open.get() { "true" } else { "false" }
                    aria-controls=controls
                    on:click=press
                >
                    <span class="load-name">{name}</span>
                    <span class="load-energy" data-testid="load-energy">
                        {move || watt_hours(needs.with(|needs| needs.of_load(id)))}
                    </span>
                    <span class="load-summary">{words}</span>
                </button>
                <label class="toggle toggle-bare">
                    <input
                        type="checkbox"
                        role="switch"
                        aria-label=switch_name
                        prop:checked=move || enabled.get()
                        on:change=move |event| switch.write(app, event_target_checked(&event))
                    />
                    <span class="toggle-track" aria-hidden="true"></span>
                </label>
            </div>
            <div id=editor_id>{move || is_open.get().then(|| editor::view(app, needs, open, id))}</div>
        </li>
    }
    .into_any()
}
