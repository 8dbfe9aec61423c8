//! Safety notes, shown beside the work that can hurt someone.

use crate::view::icons::{Icon, icon};
use crate::view::lang::{key, t};
use leptos::prelude::*;

/// What can hurt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Danger {
    /// Charging LiFePO4 below freezing.
    LithiumCold,
    /// Hydrogen of lead-acid batteries.
    Hydrogen,
    /// Fuse at the battery, short circuit.
    Fuse,
    /// Work on the roof, panels live in light.
    Roof,
    /// Mains voltage out of the inverter.
    Mains,
    /// Gas, exhaust and carbon monoxide.
    CarbonMonoxide,
    /// Devices someone's health hangs on.
    Medical,
    /// Charging hard from the alternator.
    Alternator,
    /// Heavy current through cables.
    CableHeat,
    /// Different batteries together.
    MixedBatteries,
    /// An ammeter across a battery.
    Meter,
    /// Food that gets warm.
    Food,
    /// Alarms that must stay on.
    SafetyDevices,
}

impl Danger {
    fn keys(self) -> (&'static str, &'static str) {
        match self {
            Self::LithiumCold => (key!("caution-cold"), key!("caution-cold-text")),
            Self::Hydrogen => (key!("caution-hydrogen"), key!("caution-hydrogen-text")),
            Self::Fuse => (key!("caution-fuse"), key!("caution-fuse-text")),
            Self::Roof => (key!("caution-roof"), key!("caution-roof-text")),
            Self::Mains => (key!("caution-mains"), key!("caution-mains-text")),
            Self::CarbonMonoxide => (key!("caution-co"), key!("caution-co-text")),
            Self::Medical => (key!("caution-medical"), key!("caution-medical-text")),
            Self::Alternator => (key!("caution-alternator"), key!("caution-alternator-text")),
            Self::CableHeat => (key!("caution-cable"), key!("caution-cable-text")),
            Self::MixedBatteries => (key!("caution-mixed"), key!("caution-mixed-text")),
            Self::Meter => (key!("caution-meter"), key!("caution-meter-text")),
            Self::Food => (key!("caution-food"), key!("caution-food-text")),
            Self::SafetyDevices => (key!("caution-safety"), key!("caution-safety-text")),
        }
    }
}

/// Several cautions at one act, side by side where they fit, each once.
#[must_use]
pub fn cautions(about: Vec<Danger>) -> AnyView {
    let all: Vec<AnyView> = about.into_iter().map(caution).collect();
    view! { <div class="cautions">{all}</div> }.into_any()
}

/// The caution: one line in sight at the act it belongs to, which opens on tap.
#[must_use]
pub fn caution(about: Danger) -> AnyView {
    let (title, text) = about.keys();
    view! {
        <aside class="caution" role="note">
            <details>
                <summary>{icon(Icon::Caution)}<strong>{t(title)}</strong></summary>
                <p>{t(text)}</p>
            </details>
        </aside>
    }
    .into_any()
}
