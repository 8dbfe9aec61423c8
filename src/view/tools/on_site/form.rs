//! The form for a new reading on site.

use crate::advice::on_site::ReadPoint;
use crate::i18n::Arg;
use crate::model::limits::{self, MAX_READINGS, Range};
use crate::model::{Reading, ReadingKind, Setup, Trip};
use crate::physics::battery::open_circuit::RESTED;
use crate::units::{AmpHours, Hours, Volts};
use crate::view::icons::Icon;
use crate::view::lang::{self, duration, percent, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::today::{camp_now, since_arrival};
use crate::view::widgets::{
    Danger, NumberField, Term, button, caution, date_field, radios, time_field,
};
use leptos::prelude::*;
use time::{Date, Duration};

/// What can be read, in the order it is offered.
const SOC: usize = 0;
const VOLTAGE: usize = 1;
const USED: usize = 2;

/// Longest rest that can be typed [h].
const REST_H: Range = Range { min: 0.0, max: 72.0 };

/// A reading being typed; kept while other parts of the page are shown.
#[derive(Clone, Copy)]
pub struct Draft {
    kind: RwSignal<usize>,
    date: RwSignal<Option<Date>>,
    minute: RwSignal<u16>,
    soc_frac: RwSignal<Option<f64>>,
    volts: RwSignal<Option<f64>>,
    rested_h: RwSignal<f64>,
    used_ah: RwSignal<Option<f64>>,
}

impl Default for Draft {
    fn default() -> Self {
        Self {
            kind: RwSignal::new(SOC),
            date: RwSignal::new(None),
            minute: RwSignal::new(0),
            soc_frac: RwSignal::new(None),
            volts: RwSignal::new(None),
            rested_h: RwSignal::new(0.0),
            used_ah: RwSignal::new(None),
        }
    }
}

/// Why a reading cannot be added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Fault {
    /// Nothing typed.
    Empty,
    /// Before arrival.
    TooEarly,
    /// Further on than any stay.
    TooLate,
    /// The log is full.
    Full,
}

/// A moment of the stay in words.
#[must_use]
pub fn moment(trip: &Trip, at: Hours) -> String {
    let minutes = (f64::from(trip.arrival_hour) * 60.0 + at.0 * 60.0).round();
    let days = (minutes / 1440.0).floor();
    let Some(date) = trip.start().checked_add(Duration::days(days as i64)) else {
        return String::new();
    };
    lang::moment(date, (minutes - days * 1440.0) as u16)
}

impl Draft {
    /// Now if that lies within the stay, else the first morning of it.
    fn set_time(self, setup: &Setup) {
        let trip = &setup.trip;
        let stay = f64::from(trip.nights) * 24.0 + 48.0;
        let now = camp_now(trip)
            .filter(|(date, minute)| (0.0..=stay).contains(&since_arrival(trip, *date, *minute).0));
        let (date, minute) =
            now.unwrap_or_else(|| (trip.start().next_day().unwrap_or(Date::MAX), 480));
        self.date.try_set(Some(date));
        self.minute.try_set(minute);
    }

    fn kind(self) -> Option<ReadingKind> {
        match self.kind.get() {
            VOLTAGE => self.volts.get().map(|volts| ReadingKind::Voltage {
                volts: Volts(volts),
                rested: Hours(self.rested_h.get()),
            }),
            USED => self.used_ah.get().map(|used| ReadingKind::Used { amp_hours: AmpHours(used) }),
            _ => self.soc_frac.get().map(|soc_frac| ReadingKind::StateOfCharge { soc_frac }),
        }
    }

    fn reading(self, setup: &Setup) -> Result<Reading, Fault> {
        let kind = self.kind().ok_or(Fault::Empty)?;
        let date = self.date.get().ok_or(Fault::Empty)?;
        let at = since_arrival(&setup.trip, date, self.minute.get());
        if at.0 < 0.0 {
            Err(Fault::TooEarly)
        } else if at.0 > limits::SINCE_ARRIVAL_H.max {
            Err(Fault::TooLate)
        } else if setup.readings.len() >= MAX_READINGS {
            Err(Fault::Full)
        } else {
            Ok(Reading { at, kind })
        }
    }

    fn clear(self) {
        self.soc_frac.try_set(None);
        self.volts.try_set(None);
        self.used_ah.try_set(None);
    }
}

fn fault_words(setup: &Setup, fault: Fault) -> String {
    match fault {
        Fault::Empty => t("site-fault-empty"),
        Fault::TooEarly => {
            let arrival = moment(&setup.trip, Hours(0.0));
            t_args("site-fault-early", &[("arrival", Arg::Text(&arrival))])
        }
        Fault::TooLate => t("site-fault-late"),
        Fault::Full => t_args("site-fault-full", &[("most", Arg::Count(MAX_READINGS as i32))]),
    }
}

/// What a reading says of the state of charge.
#[must_use]
pub fn band_words(point: &ReadPoint) -> String {
    let (low, high) = (percent(point.low_frac), percent(point.high_frac));
    let likely = percent(point.likely_frac);
    t_args(
        "site-band",
        &[("low", Arg::Text(&low)), ("high", Arg::Text(&high)), ("likely", Arg::Text(&likely))],
    )
}

/// The form.
pub(super) fn view(app: AppState, draft: Draft) -> AnyView {
    app.setup.with_untracked(|setup| draft.set_time(setup));
    let fault = RwSignal::new(None);
    let kinds = vec![t("site-kind-soc"), t("site-kind-voltage"), t("site-kind-used")];
    let kind = Signal::derive(move || Some(draft.kind.get()));
    let date =
        Lens::signal(draft.date).map(|date| date.unwrap_or(Date::MIN), |date: Date| Some(date));
    let preview = move || {
        let kind = draft.kind()?;
        app.setup.with(|setup| {
            let reading = Reading { at: Hours(0.0), kind };
            let point = ReadPoint::of(setup, 0, &reading);
            let rest = (point.rested == Some(false)).then(|| {
                let needed = duration(RESTED);
                t_args("site-not-rested", &[("needed", Arg::Text(&needed))])
            });
            Some(view! {
                <p class="site-preview" data-testid="reading-preview">{band_words(&point)}</p>
                {rest.map(|rest| view! { <p class="notice">{rest}</p> })}
            })
        })
    };
    let add = move || {
        let reading = app.setup.with_untracked(|setup| draft.reading(setup));
        match reading {
            Ok(reading) => {
                fault.try_set(None);
                let at = app.setup.with_untracked(|setup| moment(&setup.trip, reading.at));
                let told = t_args("toast-reading-added", &[("moment", Arg::Text(&at))]);
                app.edit_with_undo(told, |setup| {
                    setup.readings.push(reading);
                    setup.readings.sort_by(|a, b| a.at.0.total_cmp(&b.at.0));
                });
                draft.clear();
            }
            Err(why) => {
                fault.try_set(Some(why));
            }
        }
    };
    view! {
        <section class="card" aria-labelledby="site-add-title">
            <h2 id="site-add-title">{t("site-add-title")}</h2>
            {radios(t("site-kind"), kinds, kind, move |index| {
                draft.kind.try_set(index);
                fault.try_set(None);
            })}
            <div class="fields">
                {move || value_fields(app, draft)}
            </div>
            <div class="fields fields-wide">
                {date_field(app, t("site-date"), date)}
                {time_field(app, t("site-time"), Lens::signal(draft.minute))}
            </div>
            <div aria-live="polite">{preview}</div>
            <p class="field-fault" role="alert">
                {move || {
                    fault.get().map(|why| app.setup.with(|setup| fault_words(setup, why)))
                }}
            </p>
            {button(Some(Icon::Add), t("site-add"), add)}
        </section>
    }
    .into_any()
}

fn value_fields(app: AppState, draft: Draft) -> AnyView {
    match draft.kind.get() {
        VOLTAGE => {
            let volts = Lens::signal(draft.volts);
            let rested = Lens::signal(draft.rested_h);
            view! {
                {NumberField::optional(t("site-volts"), "V", limits::BANK_V, volts)
                    .hint(t("site-volts-hint"))
                    .view(app)}
                {NumberField::new(t("site-rested"), "h", REST_H, rested)
                    .hint(t("site-rested-hint"))
                    .step(1.0)
                    .view(app)}
                {caution(Danger::Fuse)}
            }
            .into_any()
        }
        USED => {
            let used = Lens::signal(draft.used_ah);
            NumberField::optional(t("site-used"), "Ah", limits::USED_AH, used)
                .hint(t("site-used-hint"))
                .term(Term::AmpHour)
                .view(app)
        }
        _ => {
            let soc = Lens::signal(draft.soc_frac);
            let field = NumberField::optional(t("site-soc"), "%", limits::FRAC, soc);
            NumberField { scale: 100.0, ..field }.term(Term::StateOfCharge).view(app)
        }
    }
}
