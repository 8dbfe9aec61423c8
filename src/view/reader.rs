//! The units and the money of the reader: one setting for every screen, kept in this browser, never in a setup.
//!
//! Like the texts it lives in the thread, not in a signal: when it changes the whole page is built again.

use crate::i18n::region::{currency_of_region, region_of_tag};
use crate::model::{Prices, Setup};
use crate::units::UnitSystem;
use js_sys::{Array, Function, Reflect};
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};

/// Which units the reader asked for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum UnitChoice {
    /// Those of the region that the browser's language names.
    #[default]
    Device,
    /// Metric.
    Metric,
    /// Those of the United States.
    Us,
}

impl UnitChoice {
    /// All, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::Device, Self::Metric, Self::Us];

    /// Word in storage.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Device => "",
            Self::Metric => "metric",
            Self::Us => "us",
        }
    }

    /// Puts it in force; what stands on the page has to be made again.
    pub fn put_in_force(self) {
        let region = browser_region();
        let system = match self {
            Self::Device => UnitSystem::of_region(&region),
            Self::Metric => UnitSystem::Metric,
            Self::Us => UnitSystem::Us,
        };
        READER.replace(Reader { choice: self, system, region });
    }

    /// That in force.
    #[must_use]
    pub fn in_force() -> Self {
        READER.with_borrow(|reader| reader.choice)
    }
}

struct Reader {
    choice: UnitChoice,
    system: UnitSystem,
    region: String,
}

thread_local! {
    static READER: RefCell<Reader> = const {
        RefCell::new(Reader {
            choice: UnitChoice::Device,
            system: UnitSystem::Metric,
            region: String::new(),
        })
    };
}

/// What the browser prefers, the most first. Embedded browsers give none, or tags such as "en_US", at which `Intl`
/// would throw: those are passed over.
#[must_use]
pub fn browser_tags() -> Vec<String> {
    let Some(window) = web_sys::window() else { return Vec::new() };
    let given = Reflect::get(&window.navigator(), &JsValue::from_str("languages"));
    let tags = given.ok().and_then(|tags| tags.dyn_into::<Array>().ok()).unwrap_or_default();
    tags.iter().filter_map(|tag| tag.as_string()).filter(|tag| is_known(tag)).collect()
}

/// `Intl` takes the tag.
fn is_known(tag: &str) -> bool {
    let read = || {
        let intl = Reflect::get(&js_sys::global(), &JsValue::from_str("Intl"))?;
        let names = Reflect::get(&intl, &JsValue::from_str("getCanonicalLocales"))?;
        names.dyn_into::<Function>()?.call1(&intl, &JsValue::from_str(tag))
    };
    read().is_ok()
}

/// The region of the first of the browser's languages that names one.
fn browser_region() -> String {
    browser_tags()
        .iter()
        .find_map(|tag| region_of_tag(tag))
        .map(str::to_ascii_uppercase)
        .unwrap_or_default()
}

/// The units in force.
#[must_use]
pub fn system() -> UnitSystem {
    READER.with_borrow(|reader| reader.system)
}

/// Typed where another currency than the euro is the reader's, so that it is not taken for "not stated".
const EURO: (&str, &str) = ("EUR", "€");

fn own_currency() -> &'static str {
    READER.with_borrow(|reader| currency_of_region(&reader.region))
}

/// Sign of the currency of a setup's prices. One that was never changed is the reader's own: prices are not
/// converted, they are what the reader pays.
#[must_use]
pub fn currency(setup: &Setup) -> String {
    let stored = setup.prices.currency.as_str();
    if stored == Prices::default().currency {
        own_currency().to_owned()
    } else if stored == EURO.0 {
        EURO.1.to_owned()
    } else {
        stored.to_owned()
    }
}

/// What is stored for a currency typed by the reader.
#[must_use]
pub fn stored_currency(typed: &str) -> String {
    if typed == own_currency() {
        Prices::default().currency
    } else if typed == EURO.1 {
        EURO.0.to_owned()
    } else {
        typed.to_owned()
    }
}
