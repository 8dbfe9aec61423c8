//! A card with a switch in its head.

use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::toggle;
use leptos::prelude::*;

/// A card of what may be fitted or not: the switch stands beside the heading, the rest below it while it is on.
pub(super) fn fitted_section(
    app: AppState,
    title: String,
    label: String,
    fitted: Lens<bool>,
    inside: impl Fn(bool) -> Option<AnyView> + Send + 'static,
) -> AnyView {
    let on = {
        let fitted = fitted.clone();
        Memo::new(move |_| fitted.read(app).unwrap_or(false))
    };
    view! {
        <section class="card">
            <div class="card-head">
                <h2>{title}</h2>
                {toggle(app, label, None, fitted)}
            </div>
            {move || inside(on.get())}
        </section>
    }
    .into_any()
}
