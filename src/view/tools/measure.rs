//! The measuring bench: readings become a load's draw with its uncertainty.

mod fields;
mod readings;
mod result;
mod unknown;

pub use readings::Readings;
pub use unknown::in_the_outlook;

use crate::view::focus;
use crate::view::lang::{key, t};
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::radios;
use leptos::prelude::*;

/// How to find what something draws.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Method {
    /// An ammeter in series, or a clamp.
    #[default]
    Current,
    /// A power meter in series.
    Power,
    /// Energy counted over a time.
    Energy,
    /// The solar controller's current with the device on and off.
    Controller,
    /// A battery monitor before and after.
    Monitor,
    /// A mains meter between inverter and device.
    Socket,
    /// Run times of a fridge.
    Fridge,
}

impl Method {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 7] = [
        Self::Current,
        Self::Power,
        Self::Energy,
        Self::Controller,
        Self::Monitor,
        Self::Socket,
        Self::Fridge,
    ];

    fn title(self) -> String {
        t(match self {
            Self::Current => key!("method-current"),
            Self::Power => key!("method-power"),
            Self::Energy => key!("method-energy"),
            Self::Controller => key!("method-controller"),
            Self::Monitor => key!("method-monitor"),
            Self::Socket => key!("method-socket"),
            Self::Fridge => key!("method-fridge"),
        })
    }

    fn told(self) -> String {
        t(match self {
            Self::Current => key!("method-current-told"),
            Self::Power => key!("method-power-told"),
            Self::Energy => key!("method-energy-told"),
            Self::Controller => key!("method-controller-told"),
            Self::Monitor => key!("method-monitor-told"),
            Self::Socket => key!("method-socket-told"),
            Self::Fridge => key!("method-fridge-told"),
        })
    }
}

/// What is being measured; kept while other parts of the page are shown.
#[derive(Clone, Copy)]
pub struct Bench {
    method: RwSignal<Method>,
    readings: RwSignal<Readings>,
    /// The load it is for, by id; `None` for a new one.
    target: RwSignal<Option<u32>>,
    unknown: unknown::Kept,
}

impl Default for Bench {
    fn default() -> Self {
        Self {
            method: RwSignal::new(Method::default()),
            readings: RwSignal::new(Readings::default()),
            target: RwSignal::new(None),
            unknown: RwSignal::new(None),
        }
    }
}

impl Bench {
    /// Gets ready for this load.
    pub fn for_load(self, id: u32) {
        self.target.try_set(Some(id));
    }
}

/// The tool.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, bench: Bench) -> AnyView {
    let titles = Method::ALL.into_iter().map(Method::title).collect();
    let chosen =
        Signal::derive(move || Method::ALL.iter().position(|method| *method == bench.method.get()));
    let choose = move |index: usize| {
        if let Some(method) = Method::ALL.get(index) {
            bench.method.try_set(*method);
        }
    };
    view! {
        <p>{t("measure-told")}</p>
        {unknown::view(app, calculation, bench)}
        {radios(t("measure-method"), titles, chosen, choose)}
        {move || {
            let method = bench.method.get();
            view! {
                <section class="card" aria-labelledby="method-title">
                    <h2 id="method-title" tabindex="-1">{method.title()}</h2>
                    <p>{method.told()}</p>
                    {fields::cautions(method)}
                    {fields::view(app, bench.readings, method)}
                </section>
            }
        }}
        <section class="card" aria-labelledby="measured-title">
            <h2 id="measured-title" tabindex="-1">{t("measured-title")}</h2>
            {result::view(app, bench)}
            <p><small>{t("measured-kept")}</small></p>
        </section>
    }
    .into_any()
}

fn to_result() {
    focus::to("measured-title");
}
