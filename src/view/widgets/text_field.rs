//! A field for a short text.

use super::fresh_id;
use crate::model::limits::MAX_NAME_CHARS;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use leptos::ev::Event;
use leptos::prelude::*;

/// A short text; `placeholder` shows what an empty field stands for.
#[must_use]
pub fn text_field(
    app: AppState,
    label: String,
    placeholder: String,
    lens: Lens<String>,
) -> AnyView {
    let id = fresh_id("x");
    let text = {
        let lens = lens.clone();
        Memo::new(move |_| lens.read(app).unwrap_or_default())
    };
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{label}</label></div>
            <div class="field-box">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    maxlength=MAX_NAME_CHARS.to_string()
                    placeholder=placeholder
                    prop:value=move || text.get()
                    on:input=move |event: Event| lens.write(app, event_target_value(&event))
                />
            </div>
        </div>
    }
    .into_any()
}
