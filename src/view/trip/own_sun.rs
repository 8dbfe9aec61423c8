//! The user's own sun, month by month, from any source.

use crate::i18n::Arg;
use crate::model::climate::Climate;
use crate::model::limits::{Range, SUN_WH_M2};
use crate::model::{MonthlySun, Setup};
use crate::physics::solar::sun::monthly_extraterrestrial;
use crate::units::WattHoursPerSquareMetre;
use crate::view::climate_file;
use crate::view::lang::{month_name, number, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term, radios, tip};
use leptos::prelude::*;
use time::Month;

/// A month of no sun is a month that was not given, so a figure is above it [Wh/m2 a day].
const GIVEN: Range = Range { min: 1.0, max: SUN_WH_M2.max };

/// Twelve fields; where one is empty the built-in figure counts.
pub(super) fn view(app: AppState) -> AnyView {
    let by_month = RwSignal::new(false);
    let units = vec![t("own-sun-daily"), t("own-sun-monthly")];
    let chosen = Signal::derive(move || Some(usize::from(by_month.get())));
    let choose = move |index: usize| {
        by_month.try_set(index == 1);
    };
    let usual = built_in(app);
    let fields = move || {
        let by_month = by_month.get();
        let year = app.setup.with_untracked(|setup| i32::from(setup.trip.year));
        (1..=12u8).map(|month| field(app, month, by_month, year, usual)).collect::<Vec<_>>()
    };
    view! {
        <div class="with-tip">
            {radios(t("own-sun-unit"), units, chosen, choose)} {tip(Term::PeakSunHours)}
        </div>
        <p class="field-hint">{t("climate-own-sun-hint")}</p>
        <div class="fields fields-tight">{fields}</div>
    }
    .into_any()
}

/// Sun of each month without the user's own figures [Wh/m2 a day].
fn built_in(app: AppState) -> Memo<Vec<WattHoursPerSquareMetre>> {
    let basis = Memo::new(move |_| {
        app.setup.with(|setup| (setup.trip.place.clone(), i32::from(setup.trip.year)))
    });
    Memo::new(move |_| {
        basis.with(|(place, year)| {
            let above = monthly_extraterrestrial(place, *year);
            let world = climate_file::world();
            let climate = Climate::from_world(world.as_deref(), place, None, &above);
            climate.clearness_frac.iter().zip(&above).map(|(k, h0)| *h0 * *k).collect()
        })
    })
}

fn field(
    app: AppState,
    month: u8,
    by_month: bool,
    year: i32,
    usual: Memo<Vec<WattHoursPerSquareMetre>>,
) -> AnyView {
    let index = usize::from(month - 1);
    let days = Month::try_from(month).map_or(30, |month| month.length(year));
    let scale = if by_month { 0.001 * f64::from(days) } else { 0.001 };
    let says = Signal::derive(move || {
        let sun = usual.with(|usual| usual.get(index).copied().unwrap_or_default());
        let sun = number(sun.0 * scale, u8::from(!by_month));
        t_args("climate-usual", &[("amount", Arg::Text(&sun))])
    });
    let lens = Lens::<Option<f64>>::new(
        move |setup: &Setup| {
            let given = setup.trip.own_sun.as_ref().and_then(|sun| sun.0.get(index));
            Some(given.map(|sun| sun.0).filter(|sun| *sun > 0.0))
        },
        move |setup: &mut Setup, value: Option<f64>| {
            let none = MonthlySun([WattHoursPerSquareMetre::ZERO; 12]);
            let mut sun = setup.trip.own_sun.unwrap_or(none);
            if let Some(slot) = sun.0.get_mut(index) {
                slot.0 = value.unwrap_or(0.0);
            }
            setup.trip.own_sun = (sun != none).then_some(sun);
        },
    );
    let field = NumberField::optional(month_name(month), "kWh/m²", GIVEN, lens);
    NumberField { scale, ..field }.live_hint(says).view(app)
}
