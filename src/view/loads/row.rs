//! One appliance in the list.

use super::list::{LoadList, Shown};
use super::pictures::Picture;
use crate::i18n::Arg;
use crate::units::WattHours;
use crate::view::lang::{percent, t_args, watt_hours};
use crate::view::lens::Lens;
use crate::view::words::loads::load_summary_with;
use crate::view::words::names::load_name;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Id in the page of the button that opens the row of a load.
pub(super) fn button_id(id: u32) -> String {
    format!("row-{id}")
}

/// Id of what the focus goes to when the row of this load goes: the row after it, else the one before.
pub(super) fn beside(id: u32) -> String {
    let Ok(rows) = document().query_selector_all(".load-button") else {
        return String::new();
    };
    let ids: Vec<String> = (0..rows.length())
        .filter_map(|at| rows.get(at)?.dyn_into::<web_sys::Element>().ok())
        .map(|row| row.id())
        .collect();
    let at = ids.iter().position(|row| *row == button_id(id)).unwrap_or(0);
    let before = at.checked_sub(1).and_then(|before| ids.get(before));
    ids.get(at + 1).or(before).cloned().unwrap_or_default()
}

/// A share of the day's use, 0..1, as a bar.
pub(super) fn bar(share: f64) -> AnyView {
    let width = format!("{:.1}%", share * 100.0);
    view! { <span class="load-bar" aria-hidden="true"><span style:width=width></span></span> }
        .into_any()
}

/// What the row shows.
#[derive(Clone, PartialEq)]
struct Face {
    name: String,
    summary: String,
    picture: Picture,
    enabled: bool,
}

/// The row of the load with this id.
pub(super) fn view(list: LoadList, id: u32) -> AnyView {
    let LoadList { app, day, badges, .. } = list;
    let by_inverter = Memo::new(move |_| day.with(|day| day.of_inverter(id)));
    let face = Memo::new(move |_| {
        let by_inverter = by_inverter.get();
        app.setup.with(|setup| {
            setup.load(id).map(|load| Face {
                name: load_name(load),
                summary: load_summary_with(load, by_inverter),
                picture: Picture::of(load),
                enabled: load.enabled,
            })
        })
    });
    let energy = Memo::new(move |_| day.with(|day| day.of_load(id)));
    let enabled = Memo::new(move |_| face.with(|face| face.as_ref().is_some_and(|f| f.enabled)));
    let share = Memo::new(move |_| {
        let counted = if enabled.get() { energy.get() } else { WattHours::ZERO };
        day.with(|day| day.share(counted))
    });
    let picture = Memo::new(move |_| face.with(|face| face.as_ref().map(|face| face.picture)));
    let name = move || face.with(|face| face.as_ref().map(|face| face.name.clone()));
    let words = move || face.with(|face| face.as_ref().map(|face| face.summary.clone()));
    let switch = Lens::<bool>::load(id, |load| Some(load.enabled), |load, on| load.enabled = on);
    let switch_name =
        move || t_args("load-count-it", &[("name", Arg::Text(&name().unwrap_or_default()))]);
    view! {
        <li class="load" data-testid="load" class:load-off=move || !enabled.get()>
            <button
                type="button"
                class="load-button"
                data-testid="load-button"
                id=button_id(id)
                aria-haspopup="dialog"
                on:click=move |_| list.open(Shown::Load { id, added: false })
            >
                {move || picture.get().map(Picture::view)}
                <span class="load-name">{name}</span>
                <span class="load-summary">
                    {words}
                    {move || badges.with(|badges| badges.short(app, id))}
                </span>
                <span class="load-energy" data-testid="load-energy">
                    {move || watt_hours(energy.get())}
                </span>
                <span class="unseen">{move || enabled.get().then(|| percent(share.get()))}</span>
                {move || bar(share.get())}
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
        </li>
    }
    .into_any()
}
