//! A field for a number with its unit.
//!
//! What is typed stays as typed beside the value in force: half-typed text is never eaten, a bad
//! number shows its fault under the field, and the last good value stays in the sums.

use super::buttons::icon_button;
use super::fresh_id;
use super::tip::{Term, tip};
use crate::i18n::{Arg, NumberError, parse_number};
use crate::model::limits::Range;
use crate::units::reader::gauge_in_noughts;
use crate::units::{Measure, UnitSystem};
use crate::view::icons::Icon;
use crate::view::lang::{field_number, gauge_text, quantity, t, t_args};
use crate::view::lens::Lens;
use crate::view::reader;
use crate::view::state::AppState;
use leptos::ev::Event;
use leptos::prelude::*;
use std::borrow::Cow;

/// A number field tied to a place of the setup.
pub struct NumberField {
    /// What the number means.
    pub label: String,
    /// Unit shown after it; empty for a plain number.
    pub unit: Cow<'static, str>,
    /// What may be typed, in the unit of the *model*.
    pub range: Range,
    /// Shown value over model value: 100 shows a share in percent.
    pub scale: f64,
    /// What is measured, where the reader's unit may be another than the model's; `scale` is 1 then.
    pub measure: Option<Measure>,
    /// Where it belongs; `None` is an empty field.
    pub lens: Lens<Option<f64>>,
    /// An empty field means "not stated" rather than a mistake.
    pub optional: bool,
    /// Buttons for less and more, by so much of the shown value.
    pub step: Option<f64>,
    /// A line of help under the field; may follow what is typed.
    pub hint: Option<Signal<String>>,
    /// What an empty field stands for, shown in it.
    pub placeholder: String,
    /// A word explained on tap.
    pub term: Option<Term>,
}

impl NumberField {
    /// A field that must hold a number.
    #[must_use]
    pub fn new(label: String, unit: &'static str, range: Range, lens: Lens<f64>) -> Self {
        // Never written with `None`: `Entry::write` sees to that.
        let lens = lens.map(Some, |value: Option<f64>| value.unwrap_or(f64::NAN));
        Self::optional(label, unit, range, lens).required()
    }

    /// A field that may be left empty.
    #[must_use]
    pub fn optional(
        label: String,
        unit: &'static str,
        range: Range,
        lens: Lens<Option<f64>>,
    ) -> Self {
        Self {
            label,
            unit: unit.into(),
            range,
            scale: 1.0,
            measure: None,
            lens,
            optional: true,
            step: None,
            hint: None,
            placeholder: String::new(),
            term: None,
        }
    }

    /// A share 0..1 typed in percent.
    #[must_use]
    pub fn percent(label: String, range: Range, lens: Lens<f64>) -> Self {
        Self { scale: 100.0, ..Self::new(label, "%", range, lens) }
    }

    fn required(self) -> Self {
        Self { optional: false, ..self }
    }

    /// Of a measure: shown and typed in the reader's unit.
    #[must_use]
    pub fn of(measure: Measure, label: String, range: Range, lens: Lens<f64>) -> Self {
        Self {
            measure: Some(measure),
            ..Self::new(label, measure.unit(reader::system()), range, lens)
        }
    }

    /// The same, and it may be left empty.
    #[must_use]
    pub fn optional_of(
        measure: Measure,
        label: String,
        range: Range,
        lens: Lens<Option<f64>>,
    ) -> Self {
        let unit = measure.unit(reader::system());
        Self { measure: Some(measure), ..Self::optional(label, unit, range, lens) }
    }

    /// With buttons for less and more.
    #[must_use]
    pub fn step(self, step: f64) -> Self {
        Self { step: Some(step), ..self }
    }

    /// In days, a word of the language.
    #[must_use]
    pub fn in_days(self) -> Self {
        Self { unit: t("unit-days").into(), ..self }
    }

    /// In rated watts of panels, which some languages write otherwise.
    #[must_use]
    pub fn in_peak_watts(self) -> Self {
        Self { unit: t("unit-peak").into(), ..self }
    }

    /// With a line of help.
    #[must_use]
    pub fn hint(self, hint: String) -> Self {
        self.live_hint(Signal::stored(hint))
    }

    /// With a line of help that changes.
    #[must_use]
    pub fn live_hint(self, hint: Signal<String>) -> Self {
        Self { hint: Some(hint), ..self }
    }

    /// With words for what an empty field stands for.
    #[must_use]
    pub fn placeholder(self, placeholder: String) -> Self {
        Self { placeholder, ..self }
    }

    /// With a word explained on tap.
    #[must_use]
    pub fn term(self, term: Term) -> Self {
        Self { term: Some(term), ..self }
    }

    /// The field on the page.
    #[must_use]
    pub fn view(self, app: AppState) -> AnyView {
        let Self {
            label,
            unit,
            range,
            scale,
            measure,
            lens,
            optional,
            step,
            hint,
            placeholder,
            term,
        } = self;
        let shown_as = ShownAs { scale, measure, system: reader::system() };
        let shown_range = shown_as.range(range);
        let step = step.map(|step| shown_as.step(step));
        let entry = Entry {
            app,
            raw: RwSignal::new(String::new()),
            fault: RwSignal::new(None),
            range: shown_range,
            shown_as,
            optional,
            lens: StoredValue::new(lens),
        };
        entry.follow_model();

        let id = fresh_id("n");
        let (unit_id, hint_id, fault_id) =
            (format!("{id}-u"), format!("{id}-h"), format!("{id}-f"));
        let described = format!(
            "{}{}{fault_id}",
            if unit.is_empty() { String::new() } else { format!("{unit_id} ") },
            if hint.is_some() { format!("{hint_id} ") } else { String::new() },
        );
        let stepper = move |sign: f64, icon: Icon, key: &'static str, label: &str| {
            step.map(|step| {
                let name = t_args(key, &[("field", Arg::Text(label))]);
                icon_button(icon, name, move || entry.nudge(sign * step))
            })
        };
        let less = stepper(-1.0, Icon::Less, crate::view::lang::key!("field-less"), &label);
        let more = stepper(1.0, Icon::Add, crate::view::lang::key!("field-more"), &label);
        let tip = term.map(tip);
        let hint =
            hint.map(|hint| view! { <p class="field-hint" id=hint_id>{move || hint.get()}</p> });
        let has_fault = move || entry.fault.get().is_some();
        view! {
            <div class="field" class:field-faulty=has_fault>
                <div class="field-head"><label for=id.clone()>{label}</label>{tip}</div>
                <div class="field-box">
                    {less}
                    <input
                        id=id
                        type="text"
                        inputmode=if shown_range.min < 0.0 { "text" } else { "decimal" }
                        autocomplete="off"
                        enterkeyhint="done"
                        placeholder=placeholder
                        aria-describedby=described
                        aria-invalid=move || if has_fault() { "true" } else { "false" }
                        prop:value=move || entry.raw.get()
                        on:input=move |event: Event| entry.typed(event_target_value(&event))
                        on:change=move |_| entry.left()
                    />
                    <span class="unit" id=unit_id>{unit.clone()}</span>
                    {more}
                </div>
                {hint}
                <p class="field-fault" id=fault_id aria-live="polite">
                    {move || entry.fault.get().map(|fault| fault_text(fault, &unit))}
                </p>
            </div>
        }
        .into_any()
    }
}

/// How a value of the model stands in the field.
#[derive(Clone, Copy)]
struct ShownAs {
    scale: f64,
    measure: Option<Measure>,
    system: UnitSystem,
}

impl ShownAs {
    fn shown(self, value: f64) -> f64 {
        self.measure.map_or(value * self.scale, |measure| measure.shown(self.system, value))
    }

    fn model(self, shown: f64) -> f64 {
        self.measure.map_or(shown / self.scale, |measure| measure.metric(self.system, shown))
    }

    fn is_converted(self) -> bool {
        self.measure.is_some() && self.system != UnitSystem::Metric
    }

    fn is_gauge(self) -> bool {
        self.measure == Some(Measure::Section) && self.is_converted()
    }

    /// What may be typed. Bounds that come out crooked go inwards to what the message says.
    fn range(self, model: Range) -> Range {
        let (a, b) = (self.shown(model.min), self.shown(model.max));
        let (min, max) = (a.min(b), a.max(b));
        if self.is_converted() {
            let inwards = 100.0;
            return Range {
                min: (min * inwards - 1e-6).ceil() / inwards,
                max: (max * inwards + 1e-6).floor() / inwards,
            };
        }
        Range { min, max }
    }

    /// A step for less and more; converted, it is a whole one.
    fn step(self, step: f64) -> f64 {
        if self.is_converted() {
            (self.shown(step) - self.shown(0.0)).abs().round().max(1.0)
        } else {
            step
        }
    }

    fn text(self, value: f64) -> String {
        let decimals = self.measure.map_or(4, |measure| measure.field_decimals(self.system));
        let scale = 10_f64.powi(i32::from(decimals));
        let shown = (self.shown(value) * scale).round() / scale;
        if self.is_gauge() { gauge_text(shown) } else { field_number(shown) }
    }

    /// The number in a text.
    fn read(self, text: &str, range: Range) -> Result<f64, NumberError> {
        if self.is_gauge()
            && let Some(gauge) = gauge_in_noughts(text)
        {
            return parse_number(&gauge.to_string(), &(range.min..=range.max));
        }
        parse_number(text, &(range.min..=range.max))
    }
}

/// What is typed, and what it stands for.
#[derive(Clone, Copy)]
struct Entry {
    app: AppState,
    raw: RwSignal<String>,
    fault: RwSignal<Option<NumberError>>,
    range: Range,
    shown_as: ShownAs,
    optional: bool,
    lens: StoredValue<Lens<Option<f64>>>,
}

impl Entry {
    fn lens(self) -> Option<Lens<Option<f64>>> {
        self.lens.try_get_value()
    }

    /// What the text stands for; `Ok(None)` is "not stated".
    fn read(self, text: &str) -> Result<Option<f64>, NumberError> {
        match self.shown_as.read(text, self.range) {
            Ok(value) => Ok(Some(self.shown_as.model(value))),
            Err(NumberError::Empty) if self.optional => Ok(None),
            Err(fault) => Err(fault),
        }
    }

    fn shown(self, value: Option<f64>) -> String {
        value.map_or_else(String::new, |value| self.shown_as.text(value))
    }

    /// When the model changes by other means (undo, another setup, a value that follows), the text
    /// follows; while it stands for the same value it stays as typed.
    fn follow_model(self) {
        if let Some(value) = self.lens().and_then(|lens| lens.peek(self.app)) {
            self.raw.set(self.shown(value));
        }
        Effect::new(move |before: Option<Option<Option<f64>>>| {
            let value = self.lens().and_then(|lens| lens.read(self.app));
            if let Some(now) = value
                && before.is_some_and(|before| before != value)
            {
                let typed = self.raw.try_with_untracked(|raw| self.read(raw));
                let same = matches!(typed, Some(Ok(typed)) if close(typed, now));
                if !same {
                    self.raw.try_set(self.shown(now));
                    self.fault.try_set(None);
                }
            }
            value
        });
    }

    fn typed(self, text: String) {
        let read = self.read(&text);
        self.raw.try_set(text);
        match read {
            Ok(value) => {
                self.fault.try_set(None);
                self.write(value);
            }
            Err(fault) => {
                self.fault.try_set(Some(fault));
            }
        }
    }

    /// Tidies the text when the field is left: `1,` becomes `1`.
    fn left(self) {
        let Some(raw) = self.raw.try_get_untracked() else { return };
        if let Ok(value) = self.read(&raw) {
            self.raw.try_set(self.shown(value));
        }
    }

    fn nudge(self, by: f64) {
        let Some(lens) = self.lens() else { return };
        let now = self.shown_as.shown(lens.peek(self.app).flatten().unwrap_or(0.0));
        let next = (now + by).clamp(self.range.min, self.range.max);
        self.fault.try_set(None);
        self.raw.try_set(field_number(next));
        self.write(Some(self.shown_as.model(next)));
    }

    fn write(self, value: Option<f64>) {
        let Some(lens) = self.lens() else { return };
        if value.is_none() && !self.optional {
            return;
        }
        if lens.peek(self.app).is_some_and(|now| now != value) {
            lens.write(self.app, value);
        }
    }
}

/// Equal but for the rounding of percent and back.
fn close(a: Option<f64>, b: Option<f64>) -> bool {
    match (a, b) {
        (Some(a), Some(b)) => (a - b).abs() <= 1e-9 * a.abs().max(b.abs()),
        (None, None) => true,
        _ => false,
    }
}

/// What is wrong, and what would be right.
pub(super) fn fault_text(fault: NumberError, unit: &str) -> String {
    let bound = |value: f64| {
        if unit.is_empty() { crate::view::lang::number(value, 2) } else { quantity(value, 2, unit) }
    };
    match fault {
        NumberError::Empty => t("fault-empty"),
        NumberError::NotANumber => t("fault-not-a-number"),
        NumberError::TooSmall { min } => {
            t_args("fault-too-small", &[("min", Arg::Text(&bound(min)))])
        }
        NumberError::TooLarge { max } => {
            t_args("fault-too-large", &[("max", Arg::Text(&bound(max)))])
        }
    }
}
