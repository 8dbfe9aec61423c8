//! From the label of the battery to what can be used, and what the cold of this trip leaves.

use crate::i18n::Arg;
use crate::model::{Bank, Climate, Trip};
use crate::physics::battery::UsableEnergy;
use crate::physics::battery::temperature::battery_temperature;
use crate::physics::battery::ventilation::ventilation_of;
use crate::units::{Celsius, Measure, UnitSystem, WattHours};
use crate::view::lang::{amp_hours, measured, percent, t, t_args, temperature, volts, watt_hours};
use crate::view::outlook::Calculation;
use crate::view::reader;
use crate::view::state::AppState;
use crate::view::widgets::{ExplainedFigure, OpenDetails, explained_list, made_when_open};
use leptos::prelude::*;

/// At this temperature batteries are rated [degrees Celsius].
const RATED_AT: Celsius = Celsius(25.0);

/// The bill from label to usable energy, and the same on a cold night of the trip.
pub(super) fn view(app: AppState) -> AnyView {
    let bank = Memo::new(move |_| app.setup.with(|s| s.bank.clone()));
    let coldest = coldest_hour(app);
    let opened = OpenDetails::default();
    let title = Signal::derive(move || {
        let energy = bank.with(|bank| UsableEnergy::at(bank, RATED_AT));
        let usable = t_args("bank-usable", &[("at", Arg::Text(&temperature(RATED_AT)))]);
        format!("{usable}: {}", watt_hours(energy.usable))
    });
    let lead = Memo::new(move |_| bank.with(|bank| bank.chemistry.is_lead()));
    let inside = move || {
        view! {
            <div class="figures" aria-live="off">
                {move || bank.with(|bank| explained_list(bill(bank), opened))}
                {move || bank.with(|bank| on_the_trip(bank, coldest.get()))}
                {move || lead.get().then(|| fresh_air(app))}
            </div>
        }
        .into_any()
    };
    made_when_open(title, inside)
}

fn bill(bank: &Bank) -> Vec<ExplainedFigure> {
    let energy = UsableEnergy::at(bank, RATED_AT);
    let capacity = amp_hours(bank.rated_capacity());
    let system = volts(bank.system.nominal());
    let lowest = percent(bank.soc_min_frac);
    let health = percent(bank.health_frac);
    let mean = volts((energy.label + energy.real_voltage) / bank.rated_capacity());
    let at = temperature(RATED_AT);
    let ah = ("ah", Arg::Text(&capacity));
    let system = ("volts", Arg::Text(&system));
    let lowest = ("lowest", Arg::Text(&lowest));
    let row = |key: &str, name: String, value: String, from: String| ExplainedFigure {
        key: key.to_owned(),
        name,
        value,
        from: vec![from],
        bar: None,
        total: false,
    };
    let mut rows = vec![
        row(
            "label",
            t_args("bank-label", &[ah.clone(), system.clone()]),
            watt_hours(energy.label),
            t_args("from-label", &[ah, system.clone()]),
        ),
        row(
            "voltage",
            t("bank-real-voltage"),
            signed(energy.real_voltage),
            t_args("from-real-voltage", &[("mean", Arg::Text(&mean)), system]),
        ),
    ];
    if energy.aged > WattHours(0.5) {
        let from = t_args("from-aged", &[("health", Arg::Text(&health))]);
        rows.push(row("aged", t("bank-aged"), signed(-energy.aged), from));
    }
    let kept_back = t_args("bank-kept-back", std::slice::from_ref(&lowest));
    let from = t_args("from-kept-back", &[lowest]);
    rows.push(row("kept", kept_back, signed(-energy.kept_back), from));
    let usable = t_args("bank-usable", &[("at", Arg::Text(&at))]);
    let usable = row("usable", usable, watt_hours(energy.usable), t("from-usable"));
    rows.push(ExplainedFigure { total: true, ..usable });
    rows
}

fn on_the_trip(bank: &Bank, at: Celsius) -> AnyView {
    let energy = UsableEnergy::at(bank, at);
    let (at, usable) = (temperature(at), watt_hours(energy.usable));
    let text = t_args("bank-usable-trip", &[("at", Arg::Text(&at)), ("wh", Arg::Text(&usable))]);
    let fast = bank.chemistry.is_lead().then(|| t("bank-usable-fast"));
    view! { <p class="field-hint">{text}" "{fast}</p> }.into_any()
}

/// What a charging lead-acid bank asks of the air around it.
fn fresh_air(app: AppState) -> AnyView {
    let asked = Memo::new(move |_| app.setup.with(|setup| ventilation_of(&setup.bank)));
    let told = move || {
        let asked = asked.get()?;
        let air = measured(Measure::AirFlow, asked.air_m3_per_h, 1);
        let area = measured(Measure::Opening, asked.opening_cm2, area_decimals());
        Some(t_args("bank-ventilation", &[("air", Arg::Text(&air)), ("area", Arg::Text(&area))]))
    };
    view! { <p class="field-hint">{told}</p> }.into_any()
}

/// A square inch is too coarse for a small opening.
fn area_decimals() -> u8 {
    u8::from(reader::system() == UnitSystem::Us)
}

fn signed(energy: WattHours) -> String {
    let sign = if energy.0 < 0.0 { '−' } else { '+' };
    format!("{sign}{}", watt_hours(energy.abs()))
}

/// Battery temperature in the coldest hour of a usual day in the month of arrival.
pub(super) fn coldest_hour(app: AppState) -> Memo<Celsius> {
    let calculation = use_context::<Calculation>();
    Memo::new(move |_| {
        let climate = calculation.and_then(|calculation| calculation.climate.get());
        app.setup.with(|setup| {
            let (mean, half_range_k) = air_of_arrival(climate.as_ref(), &setup.trip);
            (0..24)
                .map(|hour| f64::from(hour) + 0.5)
                .map(|hour| {
                    let kept = setup.trip.heated_to;
                    battery_temperature(setup.bank.place, mean, half_range_k, kept, hour)
                })
                .fold(Celsius(f64::INFINITY), Celsius::min)
        })
    })
}

/// Mean air and half the day-night range [K] of the month of arrival, the user's own mean first.
fn air_of_arrival(climate: Option<&Climate>, trip: &Trip) -> (Celsius, f64) {
    let month = usize::from(u8::from(trip.start().month()) - 1);
    let usual = climate.and_then(|climate| climate.air.get(month).copied());
    let half_range_k = climate.and_then(|climate| climate.half_range_k.get(month).copied());
    (trip.own_air.or(usual).unwrap_or(Celsius(15.0)), half_range_k.unwrap_or(0.0))
}
