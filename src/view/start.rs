//! The wizard for a setup of one's own: vehicle, battery, solar, place and date.

use super::answer::ANSWER_ID;
use super::focus;
use super::lang::t;
use super::lens::Lens;
use super::loads::LOADS_TITLE_ID;
use super::state::{AppState, Tab};
use super::trip::{date_fields, place};
use super::widgets::{
    NumberField, Sheet, Term, button, pictured_radios, pictured_row, quiet_button,
};
use crate::i18n::Arg;
use crate::model::example::{Start, start_setup};
use crate::model::limits::{CAPACITY_AH, SOLAR_W};
use crate::model::{Chemistry, Place, Setup, SolarArray, Trip, Vehicle};
use crate::units::{AmpHours, Watts};
use crate::view::icons::Icon;
use crate::view::lang::t_args;
use crate::view::words::names::{chemistries, vehicles};
use leptos::prelude::*;

/// The three questions, inside their sheet.
#[must_use]
pub fn questions(app: AppState, sheet: Sheet) -> AnyView {
    let form = app.scratch(Setup {
        solar: vec![SolarArray::default()],
        trip: today(app.setup.with_untracked(|setup| setup.trip.clone())),
        ..Setup::default()
    });
    let vehicle = RwSignal::new(0_usize);
    let go = move || {
        let start = form.setup.with_untracked(|setup| {
            start_of(setup, Vehicle::ALL.get(vehicle.get_untracked()).copied())
        });
        let day = form.setup.with_untracked(|setup| setup.trip.day);
        sheet.close();
        app.go(Tab::Nights);
        app.edit_with_undo(t("start-done"), |setup| {
            *setup = start_setup(&start);
            setup.trip.day = day;
        });
        focus::to_new(ANSWER_ID);
    };
    let blank = move || {
        let trip = form.setup.with_untracked(|setup| setup.trip.clone());
        // Empty is empty: of the example nothing stays, but a place and a date chosen here do.
        let (of_example, place) =
            app.setup.with_untracked(|setup| (setup.example, setup.trip.place.clone()));
        let trip = if of_example {
            let place = if trip.place == place { Place::default() } else { trip.place };
            let Trip { year, month, day, nights, utc_offset_min, .. } = trip;
            Trip { place, year, month, day, nights, utc_offset_min, ..Trip::default() }
        } else {
            trip
        };
        sheet.close();
        app.go(Tab::Loads);
        app.edit_with_undo(t("toast-cleared"), |setup| *setup = Setup { trip, ..Setup::default() });
        focus::to_new(LOADS_TITLE_ID);
    };
    let here = move || {
        let name = form.setup.with(|setup| setup.trip.place.name.clone());
        t_args("start-place", &[("place", Arg::Text(&name))])
    };
    let chosen = Signal::derive(move || Some(vehicle.get()));
    view! {
        <p class="quiet">{t("start-told")}</p>
        <h3>{t("start-vehicle")}</h3>
        {pictured_radios(
            t("start-vehicle-legend"),
            vehicles(),
            chosen,
            move |index| {
                vehicle.try_set(index);
            },
        )}
        <h3>{t("start-battery")}</h3>
        {pictured_row(
            form,
            t("start-chemistry"),
            chemistries(),
            Lens::of(|s| s.bank.chemistry, |s, v| s.bank.chemistry = v).choice(&Chemistry::ALL),
        )}
        <div class="fields">
            {NumberField::new(
                    t("start-capacity"),
                    "Ah",
                    CAPACITY_AH,
                    Lens::of(|s| s.bank.capacity_20h.0, |s, v| s.bank.capacity_20h = AmpHours(v)),
                )
                .term(Term::AmpHour)
                .view(form)}
            {NumberField::new(
                    t("start-solar"),
                    Watts::UNIT,
                    SOLAR_W,
                    Lens::array(0, |a| a.peak.0, |a, v| a.peak = Watts(v)),
                )
                .in_peak_watts()
                    .term(Term::WattPeak)
                .hint(t("start-solar-hint"))
                .view(form)}
        </div>
        <h3>{t("start-trip")}</h3>
        <p>{here}</p>
        {place::finder(form)}
        <div class="fields">{date_fields(form)}</div>
        <div class="button-row">
            {quiet_button(None, t("start-blank"), blank)}
            {button(Some(Icon::Done), t("start-go"), go)}
        </div>
    }
    .into_any()
}

fn start_of(setup: &Setup, vehicle: Option<Vehicle>) -> Start {
    let trip = &setup.trip;
    Start {
        vehicle: vehicle.unwrap_or(Vehicle::Van),
        chemistry: setup.bank.chemistry,
        capacity: setup.bank.capacity_20h,
        solar_peak: setup.solar.first().map_or(Watts::ZERO, |array| array.peak),
        place: trip.place.clone(),
        utc_offset_min: trip.utc_offset_min,
        year: trip.year,
        month: trip.month,
        nights: trip.nights,
    }
}

/// A trip to the same place that begins today by the device's calendar, on its clock.
fn today(trip: Trip) -> Trip {
    let now = js_sys::Date::new_0();
    Trip {
        place: trip.place,
        year: u16::try_from(now.get_full_year()).unwrap_or(trip.year).clamp(2000, 2099),
        month: u8::try_from(now.get_month() + 1).unwrap_or(trip.month),
        day: u8::try_from(now.get_date()).unwrap_or(trip.day),
        utc_offset_min: -(now.get_timezone_offset() as i16),
        ..Trip::default()
    }
}
