//! Mains hook-up.

use super::every::every_field;
use super::fitted::fitted_section;
use super::stages;
use crate::forecast::Charger;
use crate::model::limits::{CHARGER_A, HOURS_A_DAY};
use crate::units::{Amps, Hours};
use crate::view::lang::t;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{Danger, NumberField, caution, time_field, toggle};
use leptos::prelude::*;

pub(super) fn view(app: AppState) -> AnyView {
    fitted_section(
        app,
        t("hook-up-title"),
        t("hook-up-fitted"),
        Lens::of(|s| s.hook_up.fitted, |s, v| s.hook_up.fitted = v),
        move |fitted| fitted.then(|| form(app)),
    )
}

fn form(app: AppState) -> AnyView {
    // Said once: where there is an inverter, it stands there.
    let mains = Memo::new(move |_| app.setup.with(|setup| !setup.inverter.fitted));
    view! {
        <div class="fields">
            {NumberField::new(
                    t("hook-up-amps"),
                    "A",
                    CHARGER_A,
                    Lens::of(|s| s.hook_up.amps.0, |s, v| s.hook_up.amps = Amps(v)),
                )
                .hint(t("amps-hint"))
                .view(app)}
            {every_field(
                app,
                t("hook-up-every"),
                |s| Some(s.hook_up.every),
                |s, every| s.hook_up.every = every,
            )}
            {time_field(
                app,
                t("hook-up-from"),
                Lens::of(|s| s.hook_up.from_min, |s, v| s.hook_up.from_min = v),
            )}
            {NumberField::new(
                    t("hook-up-hours"),
                    "h",
                    HOURS_A_DAY,
                    Lens::of(|s| s.hook_up.hours.0, |s, v| s.hook_up.hours = Hours(v)),
                )
                .view(app)}
        </div>
        {stages::told(app, Charger::HookUp)}
        {toggle(
            app,
            t("hook-up-through"),
            Some(t("hook-up-through-hint")),
            Lens::of(|s| s.hook_up.pass_through, |s, v| s.hook_up.pass_through = v),
        )}
        {move || mains.get().then(|| caution(Danger::Mains))}
    }
    .into_any()
}
