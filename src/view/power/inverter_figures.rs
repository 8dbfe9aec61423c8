//! What the figures of the inverter come to, and whether they can be true together.

use crate::i18n::Arg;
use crate::model::{Feed, Inverter, InverterSwitching};
use crate::physics::inverter::{InverterCurve, is_consistent};
use crate::units::{HOURS_PER_DAY, Hours, WattHours};
use crate::view::lang::{amps, percent, t, t_args, watt_hours_a_day, watts};
use crate::view::state::AppState;
use crate::view::widgets::{Fact, facts};
use leptos::prelude::*;

/// Tells of appliances that need an inverter where there is none.
pub(super) fn missing(app: AppState) -> AnyView {
    let needing = Memo::new(move |_| {
        app.setup.with(|setup| {
            let count = setup.enabled_loads().filter(|load| load.feed == Feed::Inverter).count();
            i32::try_from(count).unwrap_or(i32::MAX)
        })
    });
    let told = move || {
        let count = needing.get();
        (count > 0).then(|| {
            let text = t_args("inverter-missing", &[("n", Arg::Count(count))]);
            view! { <p class="notice">{text}</p> }
        })
    };
    view! { {told} }.into_any()
}

/// Current, efficiency at a light load, and what it takes for itself in a day.
pub(super) fn view(app: AppState) -> AnyView {
    let given =
        Memo::new(move |_| app.setup.with(|s| (s.inverter.clone(), s.bank.system.nominal())));
    let rows = move || {
        let (inverter, nominal) = given.get();
        let curve = InverterCurve::of(&inverter);
        let tenth = inverter.continuous * 0.1;
        let at_tenth = watts(tenth);
        let at_tenth = t_args("inverter-at-tenth", &[("watts", Arg::Text(&at_tenth))]);
        facts(vec![
            Fact::new(t("inverter-current"), amps(curve.dc_current(inverter.continuous, nominal))),
            Fact::new(at_tenth, percent(curve.efficiency_frac(tenth))),
            Fact::new(t("inverter-idle-day"), watt_hours_a_day(left_on(&inverter))),
        ])
    };
    view! { <div class="figures">{rows}</div> }.into_any()
}

/// Tells of figures that cannot be true together.
pub(super) fn contradiction(app: AppState) -> AnyView {
    let given = Memo::new(move |_| app.setup.with(|s| s.inverter.clone()));
    let told = move || {
        given.with(|inverter| {
            (!is_consistent(inverter)).then(|| {
                let most = percent(most_efficient_frac(inverter));
                let text = t_args("inverter-contradiction", &[("most", Arg::Text(&most))]);
                view! { <p class="notice" role="status">{text}</p> }
            })
        })
    };
    view! { {told} }.into_any()
}

/// Energy a day of an inverter left on with nothing plugged in.
fn left_on(inverter: &Inverter) -> WattHours {
    let drawn = match inverter.switching {
        InverterSwitching::PowerSave { asleep } => asleep,
        InverterSwitching::AllDay | InverterSwitching::WhenUsed => inverter.idle,
    };
    drawn * Hours(HOURS_PER_DAY)
}

/// The best efficiency at full power that the idle draw leaves possible, 0..1.
fn most_efficient_frac(inverter: &Inverter) -> f64 {
    let drawn = inverter.continuous + inverter.idle;
    if drawn.0 > 0.0 { inverter.continuous / drawn } else { 0.0 }
}
