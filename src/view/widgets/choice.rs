//! Choice fields: select boxes, radio buttons, switches.

use super::fresh_id;
use crate::view::icons::{Icon, icon};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use leptos::ev::Event;
use leptos::prelude::*;
use std::rc::Rc;

/// One of a few, all in sight: a row of radio buttons.
#[must_use]
pub fn choice_row(
    app: AppState,
    legend: String,
    options: Vec<String>,
    lens: Lens<usize>,
) -> AnyView {
    row_boxed(app, legend, options.into_iter().map(|text| (None, text)).collect(), lens)
}

fn row_boxed(
    app: AppState,
    legend: String,
    options: Vec<(Option<Icon>, String)>,
    lens: Lens<usize>,
) -> AnyView {
    let chosen = {
        let lens = lens.clone();
        Memo::new(move |_| lens.read(app))
    };
    radios_boxed(legend, options, chosen.into(), Rc::new(move |index| lens.write(app, index)))
}

/// The same for a choice that is not part of the setup.
pub fn radios(
    legend: String,
    options: Vec<String>,
    chosen: Signal<Option<usize>>,
    choose: impl Fn(usize) + 'static,
) -> AnyView {
    let options = options.into_iter().map(|text| (None, text)).collect();
    radios_boxed(legend, options, chosen, Rc::new(choose))
}

/// A row of radio buttons with a picture each.
#[must_use]
pub fn pictured_row(
    app: AppState,
    legend: String,
    options: Vec<(Icon, String)>,
    lens: Lens<usize>,
) -> AnyView {
    let options = options.into_iter().map(|(picture, text)| (Some(picture), text)).collect();
    row_boxed(app, legend, options, lens)
}

/// The same for a choice that is not part of the setup.
pub fn pictured_radios(
    legend: String,
    options: Vec<(Icon, String)>,
    chosen: Signal<Option<usize>>,
    choose: impl Fn(usize) + 'static,
) -> AnyView {
    let options = options.into_iter().map(|(picture, text)| (Some(picture), text)).collect();
    radios_boxed(legend, options, chosen, Rc::new(choose))
}

/// One function for all rows of choices, whatever choosing does.
fn radios_boxed(
    legend: String,
    options: Vec<(Option<Icon>, String)>,
    chosen: Signal<Option<usize>>,
    choose: Rc<dyn Fn(usize)>,
) -> AnyView {
    let name = fresh_id("r");
    // With pictures they are tiles of one size, three or four beside each other.
    let class = match options.first() {
        Some((Some(_), _)) if options.len().is_multiple_of(4) => "field choices tiles tiles-4",
        Some((Some(_), _)) => "field choices tiles",
        _ => "field choices",
    };
    let options: Vec<AnyView> = options
        .into_iter()
        .enumerate()
        .map(|(index, (picture, text))| {
            let choose = Rc::clone(&choose);
            let picture = picture.map(icon);
            view! {
                <label class="choice">
                    <input
                        type="radio"
                        name=name.clone()
                        prop:checked=move || chosen.get() == Some(index)
                        on:change=move |_| choose(index)
                    />
                    <span>{picture}{text}</span>
                </label>
            }
            .into_any()
        })
        .collect();
    view! {
        <fieldset class=class>
            <legend>{legend}</legend>
            <div class="choice-row">{options}</div>
        </fieldset>
    }
    .into_any()
}

/// One of many: a drop-down list.
#[must_use]
pub fn select_field(
    app: AppState,
    label: String,
    options: Vec<String>,
    lens: Lens<usize>,
) -> AnyView {
    let id = fresh_id("s");
    let chosen = {
        let lens = lens.clone();
        Memo::new(move |_| lens.read(app).unwrap_or(0))
    };
    let options: Vec<AnyView> = options
        .into_iter()
        .enumerate()
        .map(|(index, text)| {
            view! {
                <option value=index.to_string() prop:selected=move || chosen.get() == index>
                    {text}
                </option>
            }
            .into_any()
        })
        .collect();
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{label}</label></div>
            <div class="field-box">
                <select
                    id=id
                    on:change=move |event: Event| {
                        if let Ok(index) = event_target_value(&event).parse() {
                            lens.write(app, index);
                        }
                    }
                >
                    {options}
                </select>
            </div>
        </div>
    }
    .into_any()
}

/// Yes or no.
#[must_use]
pub fn toggle(app: AppState, label: String, hint: Option<String>, lens: Lens<bool>) -> AnyView {
    let on = {
        let lens = lens.clone();
        Memo::new(move |_| lens.read(app).unwrap_or(false))
    };
    let hint_id = fresh_id("t");
    let described = hint.is_some().then(|| hint_id.clone());
    let hint = hint.map(|hint| view! { <p class="field-hint" id=hint_id>{hint}</p> });
    view! {
        <div class="field toggle-field">
            <label class="toggle">
                <input
                    type="checkbox"
                    role="switch"
                    aria-describedby=described
                    prop:checked=move || on.get()
                    on:change=move |event: Event| lens.write(app, event_target_checked(&event))
                />
                <span class="toggle-track" aria-hidden="true"></span>
                <span>{label}</span>
            </label>
            {hint}
        </div>
    }
    .into_any()
}
