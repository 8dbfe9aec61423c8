//! The fields of each method, and the cautions at it.

use super::method::{Method, to_result};
use super::readings::{Readings, SUN_FRAC};
use crate::advice::on_site::measure::{ChargeStage, Instrument};
use crate::i18n::Arg;
use crate::model::limits::{AIR_C, DRAW_A, DRAW_W, ENERGY_WH_A_DAY, Range, USED_AH};
use crate::units::{AmpHours, Amps, Measure, Volts, WattHours, Watts};
use crate::view::lang::{percent, quantity, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, Term, caution, choice_row, disclosure, quiet_button, toggle,
};
use leptos::prelude::*;

const VOLTS: Range = Range { min: 5.0, max: 60.0 };
const HOURS: Range = Range { min: 0.01, max: 1_000.0 };
const MINUTES: Range = Range { min: 0.1, max: 60_000.0 };
const RUNS: Range = Range { min: 1.0, max: 10_000.0 };
const GAIN_FRAC: Range = Range { min: 0.0, max: 0.5 };
const DIGIT: Range = Range { min: 0.0, max: 100.0 };
const STAGES: [ChargeStage; 3] = [ChargeStage::Float, ChargeStage::Absorption, ChargeStage::Bulk];
/// In the order of the two choices.
const NO_YES: [bool; 2] = [false, true];

/// Cautions, at the method they belong to.
pub(super) fn cautions(method: Method) -> Vec<AnyView> {
    let about: &[Danger] = match method {
        Method::Current | Method::Power => &[Danger::Meter, Danger::Fuse],
        Method::Energy => &[Danger::Meter, Danger::Mains],
        Method::Socket => &[Danger::Mains],
        Method::Controller => &[Danger::Roof],
        Method::Monitor | Method::Fridge => &[],
    };
    about.iter().copied().map(caution).collect()
}

fn place<T: 'static>(
    readings: RwSignal<Readings>,
    get: fn(&Readings) -> T,
    set: fn(&mut Readings, T),
) -> Lens<T> {
    Lens::new(
        move |_| readings.try_with(get),
        move |_, value| {
            readings.try_update(|readings| set(readings, value));
        },
    )
}

/// The fields of a method.
pub(super) fn view(app: AppState, readings: RwSignal<Readings>, method: Method) -> AnyView {
    let form = Form { app, readings };
    let fields = match method {
        Method::Current => view! {
            {form.instrument()}
            <div class="fields">{form.current()} {form.voltage()}</div>
        }
        .into_any(),
        Method::Power => view! { <div class="fields">{form.power(t("read-power"))}</div> }.into_any(),
        Method::Energy => view! {
            {form.side()}
            {form.running()}
            <div class="fields">{form.energy()} {form.hours()}</div>
        }
        .into_any(),
        Method::Controller => form.controller(),
        Method::Monitor => form.monitor(),
        Method::Socket => view! {
            <div class="fields">
                {form.power(t("read-socket-power"))}
                {form.yes_no(t("read-sine"), Some(t("read-sine-hint")), |r| r.sine, |r, on| r.sine = on)}
            </div>
        }
        .into_any(),
        Method::Fridge => form.fridge(),
    };
    let accuracy = readings
        .with_untracked(|readings| readings.instrument(method))
        .map(|instrument| form.accuracy(instrument, method));
    view! {
        {fields}
        {accuracy}
        {quiet_button(None, t("measure-to-result"), to_result)}
    }
    .into_any()
}

#[derive(Clone, Copy)]
struct Form {
    app: AppState,
    readings: RwSignal<Readings>,
}

impl Form {
    fn number(
        self,
        label: String,
        unit: &'static str,
        range: Range,
        get: fn(&Readings) -> Option<f64>,
        set: fn(&mut Readings, Option<f64>),
    ) -> NumberField {
        NumberField::optional(label, unit, range, place(self.readings, get, set))
    }

    fn yes_no(
        self,
        label: String,
        hint: Option<String>,
        get: fn(&Readings) -> bool,
        set: fn(&mut Readings, bool),
    ) -> AnyView {
        toggle(self.app, label, hint, place(self.readings, get, set))
    }

    fn either(
        self,
        legend: String,
        options: [String; 2],
        get: fn(&Readings) -> bool,
        set: fn(&mut Readings, bool),
    ) -> AnyView {
        let lens = place(self.readings, get, set).choice(&NO_YES);
        choice_row(self.app, legend, options.to_vec(), lens)
    }

    fn instrument(self) -> AnyView {
        let options = [t("read-in-series"), t("read-clamp")];
        self.either(t("read-with"), options, |r| r.clamp, |r, on| r.clamp = on)
    }

    fn side(self) -> AnyView {
        let options = [t("read-battery-side"), t("read-socket-side")];
        self.either(t("read-side"), options, |r| r.at_socket, |r, on| r.at_socket = on)
    }

    fn running(self) -> AnyView {
        let options = [t("read-as-usual"), t("read-throughout")];
        self.either(t("read-running"), options, |r| r.throughout, |r, on| r.throughout = on)
    }

    fn current(self) -> AnyView {
        let field = self.number(
            t("read-current"),
            Amps::UNIT,
            DRAW_A,
            |r| r.current_a,
            |r, v| r.current_a = v,
        );
        field.view(self.app)
    }

    fn voltage(self) -> AnyView {
        let field = self.number(
            t("read-voltage"),
            Volts::UNIT,
            VOLTS,
            |r| r.voltage_v,
            |r, v| r.voltage_v = v,
        );
        field.hint(t("read-voltage-hint")).view(self.app)
    }

    fn power(self, label: String) -> AnyView {
        let field = self.number(label, Watts::UNIT, DRAW_W, |r| r.power_w, |r, v| r.power_w = v);
        field.term(Term::WattAndWattHour).view(self.app)
    }

    fn energy(self) -> AnyView {
        let field = self.number(
            t("read-energy"),
            WattHours::UNIT,
            ENERGY_WH_A_DAY,
            |r| r.energy_wh,
            |r, v| r.energy_wh = v,
        );
        field.term(Term::WattAndWattHour).view(self.app)
    }

    fn hours(self) -> AnyView {
        let field = self.number(t("read-hours"), "h", HOURS, |r| r.hours, |r, v| r.hours = v);
        field.view(self.app)
    }

    fn controller(self) -> AnyView {
        let amps =
            |label, get, set| self.number(label, Amps::UNIT, DRAW_A, get, set).view(self.app);
        let stages = vec![t("stage-float"), t("stage-absorption"), t("stage-bulk")];
        let stage = place(self.readings, |r| r.stage, |r, stage| r.stage = stage).choice(&STAGES);
        let mut suns = vec![t("sun-unknown")];
        suns.extend([t("sun-full"), t("sun-veiled"), t("sun-overcast")]);
        suns.truncate(SUN_FRAC.len());
        let sun = place(self.readings, |r| r.sun, |r, sun| r.sun = sun);
        view! {
            {choice_row(self.app, t("read-stage"), stages, stage)}
            {choice_row(self.app, t("read-sun"), suns, sun)}
            <div class="fields">
                {amps(t("read-off-before"), |r| r.off_before_a, |r, v| r.off_before_a = v)}
                {amps(t("read-on"), |r| r.on_a, |r, v| r.on_a = v)}
                {amps(t("read-off-after"), |r| r.off_after_a, |r, v| r.off_after_a = v)}
                {self.voltage()}
            </div>
        }
        .into_any()
    }

    fn monitor(self) -> AnyView {
        let before = self.number(
            t("read-before"),
            AmpHours::UNIT,
            USED_AH,
            |r| r.before_ah,
            |r, v| r.before_ah = v,
        );
        let after = self.number(
            t("read-after"),
            AmpHours::UNIT,
            USED_AH,
            |r| r.after_ah,
            |r, v| r.after_ah = v,
        );
        let background = self.number(
            t("read-background"),
            Amps::UNIT,
            DRAW_A,
            |r| r.background_a,
            |r, v| r.background_a = v,
        );
        view! {
            {self.running()}
            <div class="fields">
                {before.hint(t("read-used-hint")).view(self.app)} {after.view(self.app)}
                {self.hours()} {self.voltage()}
                {background.hint(t("read-background-hint")).view(self.app)}
                {self.yes_no(t("read-charged"), None, |r| r.charged, |r, on| r.charged = on)}
            </div>
        }
        .into_any()
    }

    fn fridge(self) -> AnyView {
        let ran = self.number(t("read-ran"), "min", MINUTES, |r| r.ran_min, |r, v| r.ran_min = v);
        let runs = self.number(t("read-cycles"), "", RUNS, |r| r.cycles, |r, v| r.cycles = v);
        let air = place(self.readings, |r| r.air_c, |r, v| r.air_c = v);
        let air = NumberField::optional_of(Measure::Temperature, t("read-air"), AIR_C, air);
        view! {
            <div class="fields">
                {ran.hint(t("read-ran-hint")).view(self.app)} {self.hours()}
                {runs.view(self.app)} {air.view(self.app)}
            </div>
        }
        .into_any()
    }

    /// How good the meter is, where its maker says.
    fn accuracy(self, instrument: Instrument, method: Method) -> AnyView {
        let usual = instrument.usual();
        let unit = match method {
            Method::Power | Method::Socket => Watts::UNIT,
            Method::Energy => WattHours::UNIT,
            Method::Monitor => AmpHours::UNIT,
            Method::Current | Method::Controller | Method::Fridge => Amps::UNIT,
        };
        let (gain, digit) = (percent_fine(usual.gain_frac), quantity(usual.resolution, 2, unit));
        let gain_hint = t_args("read-usual", &[("usual", Arg::Text(&gain))]);
        let digit_hint = t_args("read-usual", &[("usual", Arg::Text(&digit))]);
        let gain =
            self.number(t("read-gain"), "%", GAIN_FRAC, |r| r.gain_frac, |r, v| r.gain_frac = v);
        let gain = NumberField { scale: 100.0, ..gain };
        let digit =
            self.number(t("read-digit"), unit, DIGIT, |r| r.resolution, |r, v| r.resolution = v);
        disclosure(
            t("read-accuracy"),
            false,
            view! {
                <div class="fields">
                    {gain.hint(gain_hint).view(self.app)} {digit.hint(digit_hint).view(self.app)}
                </div>
            }
            .into_any(),
        )
    }
}

/// Percent with a decimal where it has one.
fn percent_fine(frac: f64) -> String {
    if (frac * 100.0).fract().abs() < 1e-9 { percent(frac) } else { quantity(frac * 100.0, 1, "%") }
}
