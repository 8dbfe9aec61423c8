//! How an appliance is used: one small form for each rule.

use crate::model::limits::{
    CELL_MAH, CELL_V, CHARGE_EVERY_DAYS, CONVERTER_FRAC, ENERGY_WH_A_DAY, FLOW_L_MIN, FRAC, HEAT_W,
    HOURS_A_DAY, LITRES_A_DAY, MINUTES_A_DAY, SECONDS_A_USE, START_WH, USES_A_DAY,
};
use crate::model::{DutyCycle, LoadPlace, Usage};
use crate::units::{Litres, LitresPerMinute, MilliAmpHours, Volts, WattHours, Watts};
use crate::view::lang::{key, t};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term, choice_row, select_field, toggle};
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
}

impl Rule {
    const ALL: [Self; 11] = [
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
        })
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
        }
    }
}

/// The rule of the load with this id, and its figures.
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
    let now = {
        let rule = rule.clone();
        Memo::new(move |_| rule.read(app))
    };
    let names = Rule::ALL.into_iter().map(Rule::name).collect();
    view! {
        <fieldset class="group">
            <legend>{t("use-title")}</legend>
            {select_field(app, t("use-rule"), names, rule.choice(&Rule::ALL))}
            {move || now.get().map(|rule| figures(app, id, rule))}
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

fn figures(app: AppState, id: u32, rule: Rule) -> AnyView {
    let fields = match rule {
        Rule::AlwaysOn => return ().into_any(),
        Rule::WhileDriving => {
            return view! { <p class="field-hint">{t("use-driving-hint")}</p> }.into_any();
        }
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
        Rule::Cooling => {
            let frac = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: x } }
            );
            let field = NumberField::percent(t("use-cooling-at-25"), FRAC, frac);
            vec![field.hint(t("use-cooling-hint"))]
        }
        Rule::Daily => {
            let minutes = figure!(id, x in Usage::Daily { minutes: x });
            let hours = minutes.clone().map(|minutes| minutes / 60.0, |hours| hours * 60.0);
            vec![
                NumberField::new(t("use-hours"), "h", HOURS_A_DAY, hours),
                NumberField::new(t("use-minutes"), "min", MINUTES_A_DAY, minutes),
            ]
        }
        Rule::DutyByAir => {
            let frac = figure!(
                id,
                x in Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: x } }
            );
            let field = NumberField::percent(t("use-duty-at-25"), FRAC, frac);
            vec![field.term(Term::DutyCycle).hint(t("use-duty-at-25-hint"))]
        }
        Rule::DutyFixed => {
            let frac = figure!(id, x in Usage::Duty { cycle: DutyCycle::Fixed { frac: x } });
            vec![NumberField::percent(t("use-duty-share"), FRAC, frac).term(Term::DutyCycle)]
        }
        Rule::Charges => charges(id),
        Rule::Litres => water(id),
        Rule::Uses => {
            let per_day = figure!(id, x in Usage::Uses { per_day: x, .. });
            let seconds = figure!(id, x in Usage::Uses { seconds: x, .. });
            vec![
                NumberField::new(t("use-times"), "", USES_A_DAY, per_day),
                NumberField::new(t("use-seconds"), "s", SECONDS_A_USE, seconds),
            ]
        }
        Rule::Energy => {
            let energy = figure!(id, x in Usage::Energy { per_day: WattHours(x) });
            let field = NumberField::new(t("use-energy-a-day"), "Wh", ENERGY_WH_A_DAY, energy);
            vec![field.term(Term::WattAndWattHour).hint(t("use-energy-hint"))]
        }
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
        <div class="fields">{fields}{twice}</div>
        {place}
    }
    .into_any()
}

/// A device with a cell of its own.
fn charges(id: u32) -> Vec<NumberField> {
    let days = figure!(id, x in Usage::Charges { every_days: x, .. });
    let cell = figure!(id, x in Usage::Charges { cell: MilliAmpHours(x), .. });
    let volts = figure!(id, x in Usage::Charges { cell_volts: Volts(x), .. });
    let charger = figure!(id, x in Usage::Charges { charger_frac: x, .. });
    vec![
        NumberField::new(t("use-every-days"), "", CHARGE_EVERY_DAYS, days).in_days(),
        NumberField::new(t("use-cell"), "mAh", CELL_MAH, cell).hint(t("use-cell-hint")),
        NumberField::new(t("use-cell-volts"), "V", CELL_V, volts).hint(t("use-cell-volts-hint")),
        NumberField::percent(t("use-charger"), CONVERTER_FRAC, charger),
    ]
}

fn water(id: u32) -> Vec<NumberField> {
    let litres = figure!(id, x in Usage::Litres { litres_per_day: Litres(x), .. });
    let flow = figure!(id, x in Usage::Litres { flow: LitresPerMinute(x), .. });
    vec![
        NumberField::new(t("use-water"), "L", LITRES_A_DAY, litres),
        NumberField::new(t("use-flow"), "L/min", FLOW_L_MIN, flow),
    ]
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
