//! How an appliance is used: one small form for each rule.

use crate::model::limits::{
    CELL_MAH, CELL_V, CHARGE_EVERY_DAYS, CONVERTER_FRAC, ENERGY_WH_A_DAY, FLOW_L_MIN, FRAC, HEAT_W,
    HOURS_A_DAY, LITRES_A_DAY, MINUTES_A_DAY, SECONDS_A_USE, START_WH, USES_A_DAY,
};
use crate::model::{DutyCycle, LoadPlace, StayEnd, Usage};
use crate::units::{Litres, LitresPerMinute, Measure, MilliAmpHours, Volts, WattHours, Watts};
use crate::view::lang::{key, t};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, choice_row, select_field, toggle};
use leptos::prelude::*;

/// A rule, without its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Rule {
    Daily,
    AlwaysOn,
    DutyByAir,
    DutyFixed,
    Charges,
    Litres,
    Uses,
    Energy,
    Heating,
    Cooling,
    WhileDriving,
    Once,
}

impl Rule {
    const ALL: [Self; 12] = [
        Self::Daily,
        Self::AlwaysOn,
        Self::DutyByAir,
        Self::DutyFixed,
        Self::Charges,
        Self::Litres,
        Self::Uses,
        Self::Energy,
        Self::Heating,
        Self::Cooling,
        Self::WhileDriving,
        Self::Once,
    ];

    fn of(usage: &Usage) -> Self {
        match usage {
            Usage::Daily { .. } => Self::Daily,
            Usage::AlwaysOn => Self::AlwaysOn,
            Usage::Duty { cycle: DutyCycle::AirTemperature { .. } } => Self::DutyByAir,
            Usage::Duty { cycle: DutyCycle::Fixed { .. } } => Self::DutyFixed,
            Usage::Charges { .. } => Self::Charges,
            Usage::Litres { .. } => Self::Litres,
            Usage::Uses { .. } => Self::Uses,
            Usage::Energy { .. } => Self::Energy,
            Usage::Duty { cycle: DutyCycle::Heating { .. } } => Self::Heating,
            Usage::Duty { cycle: DutyCycle::Cooling { .. } } => Self::Cooling,
            Usage::WhileDriving => Self::WhileDriving,
            Usage::Once { .. } => Self::Once,
        }
    }

    fn name(self) -> String {
        t(match self {
            Self::Daily => key!("use-daily"),
            Self::AlwaysOn => key!("use-always"),
            Self::DutyByAir => key!("use-duty-air"),
            Self::DutyFixed => key!("use-duty"),
            Self::Charges => key!("use-charges"),
            Self::Litres => key!("use-litres"),
            Self::Uses => key!("use-uses"),
            Self::Energy => key!("use-energy"),
            Self::Heating => key!("use-heating"),
            Self::Cooling => key!("use-cooling"),
            Self::WhileDriving => key!("use-driving"),
            Self::Once => key!("use-once"),
        })
    }

    /// What stands in the place of a figure where none says how much it is used.
    fn told(self) -> Option<String> {
        match self {
            Self::AlwaysOn => Some(t("use-always-told")),
            Self::Heating => Some(t("use-heating-told")),
            Self::WhileDriving => Some(t("use-driving-hint")),
            Self::Daily
            | Self::DutyByAir
            | Self::DutyFixed
            | Self::Charges
            | Self::Litres
            | Self::Uses
            | Self::Energy
            | Self::Cooling
            | Self::Once => None,
        }
    }

    /// What to know of the rule, beside its figures.
    fn hint(self) -> Option<String> {
        match self {
            Self::DutyByAir => Some(t("use-duty-at-25-hint")),
            Self::Cooling => Some(t("use-cooling-hint")),
            Self::Charges => Some(t("use-cell-hint")),
            Self::Energy => Some(t("use-energy-hint")),
            Self::Once => Some(t("use-once-hint")),
            Self::Daily
            | Self::AlwaysOn
            | Self::DutyFixed
            | Self::Litres
            | Self::Uses
            | Self::Heating
            | Self::WhileDriving => None,
        }
    }

    /// The rule with figures to start from, those of `before` where they mean the same.
    fn start(self, before: &Usage) -> Usage {
        let frac = match before {
            Usage::Duty { cycle: DutyCycle::Fixed { frac } } => *frac,
            Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } }
            | Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c } } => *frac_at_25c,
            _ => 0.32,
        };
        match self {
            Self::Daily => Usage::Daily { minutes: 60.0 },
            Self::AlwaysOn => Usage::AlwaysOn,
            Self::DutyByAir => {
                Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: frac } }
            }
            Self::DutyFixed => Usage::Duty { cycle: DutyCycle::Fixed { frac } },
            Self::Charges => Usage::Charges {
                every_days: 1.0,
                cell: MilliAmpHours(5000.0),
                cell_volts: Volts(3.85),
                charger_frac: 0.8,
            },
            Self::Litres => Usage::Litres {
                litres_per_day: Litres(20.0),
                flow: LitresPerMinute(10.0),
                pumped_twice: false,
            },
            Self::Uses => Usage::Uses { per_day: 4.0, seconds: 30.0 },
            Self::Energy => Usage::Energy { per_day: WattHours(100.0) },
            Self::Heating => Usage::Duty {
                cycle: DutyCycle::Heating { heat: Watts(2000.0), start: WattHours::ZERO },
            },
            Self::Cooling => Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: frac } },
            Self::WhileDriving => Usage::WhileDriving,
            Self::Once => Usage::Once { at: StayEnd::Arrival, minutes: 10.0 },
        }
    }
}

/// Up to so many minutes a day a time is entered in minutes, beyond it in hours.
const IN_MINUTES_BELOW: f64 = 90.0;

/// The rule of the load with this id now.
fn rule_of(app: AppState, id: u32) -> Memo<Option<Rule>> {
    Memo::new(move |_| app.setup.with(|setup| setup.load(id).map(|load| Rule::of(&load.usage))))
}

/// How long, how often, how much: one line for each figure that says how the appliance is used.
pub(super) fn lines(app: AppState, id: u32) -> AnyView {
    let rule = rule_of(app, id);
    let lines = move || {
        let fields = rule.get().map(|rule| main_figures(app, id, rule)).unwrap_or_default();
        let ends = (rule.get() == Some(Rule::Once)).then(|| stay_end(app, id));
        view! { {ends} {fields.into_iter().map(|field| field.view(app)).collect_view()} }
    };
    view! {
        {lines}
        {move || rule.get().and_then(Rule::told).map(|told| view! { <p class="field-hint">{told}</p> })}
    }
    .into_any()
}

/// The rule of the load with this id, and the figures that are seldom changed.
pub(super) fn view(app: AppState, id: u32) -> AnyView {
    let rule = Lens::<Rule>::load(
        id,
        |load| Some(Rule::of(&load.usage)),
        |load, rule| {
            if rule != Rule::of(&load.usage) {
                load.usage = rule.start(&load.usage);
            }
        },
    );
    let now = rule_of(app, id);
    let names = Rule::ALL.into_iter().map(Rule::name).collect();
    view! {
        <fieldset class="group">
            <legend>{t("use-title")}</legend>
            {select_field(app, t("use-rule"), names, rule.choice(&Rule::ALL))}
            {move || now.get().map(|rule| other_figures(app, id, rule))}
        </fieldset>
    }
    .into_any()
}

/// A figure of the load's rule: nothing to read or write where another rule holds.
fn figure(id: u32, get: fn(&Usage) -> Option<f64>, set: fn(&mut Usage, f64)) -> Lens<f64> {
    Lens::new(
        move |setup| setup.load(id).and_then(|load| get(&load.usage)),
        move |setup, value| {
            if let Some(load) = setup.load_mut(id) {
                set(&mut load.usage, value);
            }
        },
    )
}

/// The figure bound to `$x` in a pattern of [`Usage`].
macro_rules! figure {
    ($id:expr, $x:ident in $pattern:pat) => {
        figure(
            $id,
            |usage| if let $pattern = usage { Some(*$x) } else { None },
            |usage, value| {
                if let $pattern = usage {
                    *$x = value;
                }
            },
        )
    };
}

/// The figures that say how much it is used.
fn main_figures(app: AppState, id: u32, rule: Rule) -> Vec<NumberField> {
    match rule {
        Rule::AlwaysOn | Rule::WhileDriving | Rule::Heating => Vec::new(),
        Rule::Daily => {
            let minutes = figure!(id, x in Usage::Daily { minutes: x });
            // Chosen once: the unit does not change while a figure is typed.
            let short = minutes.peek(app).is_some_and(|now| now < IN_MINUTES_BELOW);
            vec![if short {
                NumberField::new(t("use-how-long"), "min", MINUTES_A_DAY, minutes).step(5.0)
            } else {
                let hours = minutes.map(|minutes| minutes / 60.0, |hours| hours * 60.0);
                NumberField::new(t("use-how-long"), "h", HOURS_A_DAY, hours).step(0.5)
            }]
        }
        Rule::DutyByAir => {
            let frac = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: x } }
            );
            vec![NumberField::percent(t("use-duty-at-25"), FRAC, frac).step(5.0)]
        }
        Rule::Cooling => {
            let frac = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: x } }
            );
            vec![NumberField::percent(t("use-cooling-at-25"), FRAC, frac).step(5.0)]
        }
        Rule::DutyFixed => {
            let frac = figure!(id, x in Usage::Duty { cycle: DutyCycle::Fixed { frac: x } });
            vec![NumberField::percent(t("use-duty-share"), FRAC, frac).step(5.0)]
        }
        Rule::Charges => {
            let days = figure!(id, x in Usage::Charges { every_days: x, .. });
            let cell = figure!(id, x in Usage::Charges { cell: MilliAmpHours(x), .. });
            vec![
                NumberField::new(t("use-every-days"), "", CHARGE_EVERY_DAYS, days)
                    .in_days()
                    .step(1.0),
                NumberField::new(t("use-cell"), "mAh", CELL_MAH, cell),
            ]
        }
        Rule::Litres => {
            let litres = figure!(id, x in Usage::Litres { litres_per_day: Litres(x), .. });
            vec![NumberField::of(Measure::Volume, t("use-water"), LITRES_A_DAY, litres).step(5.0)]
        }
        Rule::Uses => {
            let per_day = figure!(id, x in Usage::Uses { per_day: x, .. });
            let seconds = figure!(id, x in Usage::Uses { seconds: x, .. });
            vec![
                NumberField::new(t("use-times"), "", USES_A_DAY, per_day).step(1.0),
                NumberField::new(t("use-seconds"), "s", SECONDS_A_USE, seconds).step(10.0),
            ]
        }
        Rule::Once => {
            let minutes = figure!(id, x in Usage::Once { minutes: x, .. });
            vec![NumberField::new(t("use-once-long"), "min", MINUTES_A_DAY, minutes).step(5.0)]
        }
        Rule::Energy => {
            let energy = figure!(id, x in Usage::Energy { per_day: WattHours(x) });
            let field = NumberField::new(t("use-energy-a-day"), "Wh", ENERGY_WH_A_DAY, energy);
            vec![field.step(10.0)]
        }
    }
}

/// The figures that come with the appliance, and what there is to know of the rule.
fn other_figures(app: AppState, id: u32, rule: Rule) -> AnyView {
    let fields = match rule {
        Rule::Heating => {
            let heat = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::Heating { heat: Watts(x), .. } }
            );
            let start = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::Heating { start: WattHours(x), .. } }
            );
            vec![
                NumberField::new(t("use-heat"), "W", HEAT_W, heat).hint(t("use-heat-hint")),
                NumberField::new(t("use-start"), "Wh", START_WH, start),
            ]
        }
        Rule::Charges => {
            let volts = figure!(id, x in Usage::Charges { cell_volts: Volts(x), .. });
            let charger = figure!(id, x in Usage::Charges { charger_frac: x, .. });
            vec![
                NumberField::new(t("use-cell-volts"), "V", CELL_V, volts)
                    .hint(t("use-cell-volts-hint")),
                NumberField::percent(t("use-charger"), CONVERTER_FRAC, charger),
            ]
        }
        Rule::Litres => {
            let flow = figure!(id, x in Usage::Litres { flow: LitresPerMinute(x), .. });
            vec![NumberField::of(Measure::Flow, t("use-flow"), FLOW_L_MIN, flow)]
        }
        Rule::Daily
        | Rule::AlwaysOn
        | Rule::DutyByAir
        | Rule::DutyFixed
        | Rule::Uses
        | Rule::Energy
        | Rule::Cooling
        | Rule::WhileDriving
        | Rule::Once => Vec::new(),
    };
    let fields: Vec<AnyView> = fields.into_iter().map(|field| field.view(app)).collect();
    let twice = (rule == Rule::Litres).then(|| pumped_twice(app, id));
    let place = (rule == Rule::DutyByAir).then(|| {
        let place =
            Lens::<LoadPlace>::load(id, |load| Some(load.place), |load, to| load.place = to);
        let names = vec![t("load-inside"), t("load-outside")];
        choice_row(app, t("load-place"), names, place.choice(&LoadPlace::ALL))
    });
    view! {
        {rule.hint().map(|hint| view! { <p class="field-hint">{hint}</p> })}
        <div class="fields">{fields}{twice}</div>
        {place}
    }
    .into_any()
}

/// At which end of the stay.
fn stay_end(app: AppState, id: u32) -> AnyView {
    let lens = Lens::<StayEnd>::load(
        id,
        |load| match load.usage {
            Usage::Once { at, .. } => Some(at),
            _ => None,
        },
        |load, end| {
            if let Usage::Once { at, .. } = &mut load.usage {
                *at = end;
            }
        },
    );
    let names = vec![t("use-once-arrival"), t("use-once-leaving")];
    choice_row(app, t("use-once-when"), names, lens.choice(&StayEnd::ALL))
}

fn pumped_twice(app: AppState, id: u32) -> AnyView {
    let lens = Lens::<bool>::load(
        id,
        |load| match load.usage {
            Usage::Litres { pumped_twice, .. } => Some(pumped_twice),
            _ => None,
        },
        |load, twice| {
            if let Usage::Litres { pumped_twice, .. } = &mut load.usage {
                *pumped_twice = twice;
            }
        },
    );
    toggle(app, t("use-twice"), Some(t("use-twice-hint")), lens)
}
