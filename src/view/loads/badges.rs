//! What goes wrong with an appliance, at the appliance: an inverter or a battery that it asks too much
//! of, a voltage too low for it.

use crate::advice::workshop::inverter_check::{self, Clash, InverterFinding};
use crate::forecast::course::CutOutEvent;
use crate::forecast::{Outlook, TripPlan};
use crate::i18n::Arg;
use crate::model::{Feed, Load, Setup};
use crate::physics::ampacity::Surroundings;
use crate::units::{Amps, Volts, Watts};
use crate::view::chart;
use crate::view::icons::{Icon, icon};
use crate::view::lang::{amps, key, percent, t, t_args, volts, watts};
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::words::names::load_name_by_id;
use leptos::prelude::*;

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
enum Trouble {
    /// It needs an inverter, and there is none.
    NoInverter,
    /// It takes more than the inverter gives for long.
    TooMuch { most: Watts },
    /// It takes more than the inverter gives while it starts.
    TooMuchAtStart { most: Watts },
    /// It is the bigger of two that the inverter cannot run together, and their times meet.
    NotTogether { with: u32, running: Watts, starting: Watts },
    /// It is the biggest of what asks more of the battery than that should give.
    BatteryOverloaded { current: Amps, most: Amps },
    /// It switches itself off, or is the biggest of those whose inverter does.
    CutsOut { inverter: bool, when: String, volts: Volts, soc_frac: f64 },
}

/// What is wrong, by appliance; the gravest first.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Badges(Vec<(u32, Trouble)>);

/// What is wrong now, following every edit.
pub(super) fn follow(app: AppState, calculation: Calculation) -> Memo<Badges> {
    Memo::new(move |_| {
        let (plan, outlook) = (calculation.plan.get(), calculation.outlook.get());
        app.lang.track();
        app.setup.with(|setup| {
            let mut found = of_inverter(setup);
            if let (Some(plan), Some(outlook)) = (plan, outlook) {
                found.extend(of_voltage(setup, &plan.0, &outlook.0));
            }
            found.sort_by_key(|(_, trouble)| trouble.rank());
            Badges(found)
        })
    })
}

fn of_inverter(setup: &Setup) -> Vec<(u32, Trouble)> {
    let behind = || setup.enabled_loads().filter(|load| load.feed == Feed::Inverter);
    if !setup.inverter.fitted {
        return behind().map(|load| (load.id, Trouble::NoInverter)).collect();
    }
    let inverter = &setup.inverter;
    let verdict = inverter_check::check(setup, Surroundings::default());
    let mut found = Vec::new();
    for set in &verdict.forbidden {
        match (set.ids.as_slice(), set.clash) {
            ([id], Clash::Continuous) => {
                found.push((*id, Trouble::TooMuch { most: inverter.continuous }));
            }
            ([id], Clash::Surge) => {
                let most = inverter.surge.max(inverter.continuous);
                found.push((*id, Trouble::TooMuchAtStart { most }));
            }
            ([a, b], _) if set.planned => {
                let power = |id: &u32| {
                    let own = verdict.loads.iter().find(|load| load.id == *id);
                    own.map_or(Watts::ZERO, |load| load.running)
                };
                let (bigger, with) = if power(a) < power(b) { (*b, *a) } else { (*a, *b) };
                let trouble =
                    Trouble::NotTogether { with, running: set.running, starting: set.starting };
                found.push((bigger, trouble));
            }
            _ => {}
        }
    }
    for finding in &verdict.findings {
        if let InverterFinding::BatteryOverloaded { current, most } = *finding {
            found.extend(
                biggest(setup).map(|load| (load.id, Trouble::BatteryOverloaded { current, most })),
            );
        }
    }
    found
}

/// The appliance behind the inverter that takes most while it runs.
fn biggest(setup: &Setup) -> Option<&Load> {
    let power = |load: &Load| load.draw.watts().0 * f64::from(load.quantity);
    setup
        .enabled_loads()
        .filter(|load| load.feed == Feed::Inverter)
        .max_by(|a, b| power(a).total_cmp(&power(b)))
}

fn of_voltage(setup: &Setup, plan: &TripPlan, outlook: &Outlook) -> Vec<(u32, Trouble)> {
    let moment = |hours: usize| match (plan.sun.dates.first(), plan.hours.first()) {
        (Some(day), Some(first)) => chart::moment(*day, first.hour_of_day as f64, hours as f64),
        _ => String::new(),
    };
    let told = |event: &CutOutEvent| {
        let id = event.load_id.or_else(|| biggest(setup).map(|load| load.id))?;
        let trouble = Trouble::CutsOut {
            inverter: event.load_id.is_none(),
            when: moment(event.first_hour),
            volts: event.volts,
            soc_frac: event.soc_frac,
        };
        Some((id, trouble))
    };
    outlook.cut_outs.iter().filter_map(told).collect()
}

impl Badges {
    fn of(&self, id: u32) -> impl Iterator<Item = &Trouble> {
        self.0.iter().filter(move |(load, _)| *load == id).map(|(_, trouble)| trouble)
    }

    /// The gravest in a word or two with its sign, for the row of the load with this id.
    pub(super) fn short(&self, app: AppState, id: u32) -> Option<AnyView> {
        let trouble = self.of(id).next()?;
        let words = app.setup.with_untracked(|setup| trouble.short(setup));
        let badge = view! {
            " "
            <span class="badge" data-testid="badge">{icon(Icon::Caution)}{words}</span>
        };
        Some(badge.into_any())
    }

    /// All of them in sentences.
    pub(super) fn told(&self, app: AppState, id: u32) -> Vec<AnyView> {
        let told = |trouble: &Trouble| {
            let words = app.setup.with_untracked(|setup| trouble.told(setup, id));
            view! { <p class="notice badge-told">{icon(Icon::Caution)}<span>{words}</span></p> }
                .into_any()
        };
        // That there is no inverter is told with the way to enter one.
        self.of(id).filter(|trouble| **trouble != Trouble::NoInverter).map(told).collect()
    }
}

impl Trouble {
    /// The gravest first.
    fn rank(&self) -> u8 {
        match self {
            Self::NoInverter | Self::TooMuch { .. } | Self::TooMuchAtStart { .. } => 0,
            Self::BatteryOverloaded { .. } => 1,
            Self::CutsOut { .. } => 2,
            Self::NotTogether { .. } => 3,
        }
    }

    fn short(&self, setup: &Setup) -> String {
        match self {
            Self::NoInverter => t("badge-no-inverter"),
            Self::TooMuch { .. } => t("badge-too-much"),
            Self::TooMuchAtStart { .. } => t("badge-start"),
            Self::NotTogether { with, .. } => {
                let name = load_name_by_id(setup, *with);
                t_args("badge-not-with", &[("name", Arg::Text(&name))])
            }
            Self::BatteryOverloaded { .. } => t("badge-battery"),
            Self::CutsOut { inverter: true, .. } => t("badge-inverter-off"),
            Self::CutsOut { inverter: false, .. } => t("badge-off"),
        }
    }

    fn told(&self, setup: &Setup, id: u32) -> String {
        let limit = |key: &'static str, most: &str| t_args(key, &[("limit", Arg::Text(most))]);
        match self {
            Self::NoInverter => t("badge-no-inverter"),
            Self::TooMuch { most } => limit(key!("ac-too-much"), &watts(*most)),
            Self::TooMuchAtStart { most } => limit(key!("ac-too-much-at-start"), &watts(*most)),
            Self::NotTogether { with, running, starting } => {
                let name = load_name_by_id(setup, *with);
                let (running, starting) = (watts(*running), watts(*starting));
                t_args(
                    "badge-not-with-told",
                    &[
                        ("name", Arg::Text(&name)),
                        ("running", Arg::Text(&running)),
                        ("starting", Arg::Text(&starting)),
                    ],
                )
            }
            Self::BatteryOverloaded { current, most } => {
                let (current, limit) = (amps(*current), amps(*most));
                t_args(
                    "ac-overloaded",
                    &[("current", Arg::Text(&current)), ("limit", Arg::Text(&limit))],
                )
            }
            Self::CutsOut { inverter, when, volts: at, soc_frac } => {
                let name =
                    if *inverter { t("drawer-inverter") } else { load_name_by_id(setup, id) };
                t_args(
                    "note-cut-out",
                    &[
                        ("name", Arg::Text(&name)),
                        ("when", Arg::Text(when)),
                        ("volts", Arg::Text(&volts(*at))),
                        ("soc", Arg::Text(&percent(*soc_frac))),
                    ],
                )
            }
        }
    }
}
