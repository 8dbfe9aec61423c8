//! The glossary, where the words stand: a question mark that explains a word on tap.

use crate::i18n::Arg;
use crate::view::lang::{key, t, t_args};
use leptos::prelude::*;

/// A word of the trade that is explained.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Term {
    /// Watt against watt-hour.
    WattAndWattHour,
    /// Ampere-hour.
    AmpHour,
    /// Usable capacity.
    UsableCapacity,
    /// Depth of discharge.
    DepthOfDischarge,
    /// State of charge.
    StateOfCharge,
    /// Peak sun hours.
    PeakSunHours,
    /// Watt peak.
    WattPeak,
    /// Duty cycle.
    DutyCycle,
    /// Standby draw.
    Standby,
    /// Starting surge.
    Surge,
    /// The 20 h rate.
    TwentyHourRate,
    /// Health of a battery.
    Health,
    /// No-load draw of an inverter.
    NoLoadDraw,
    /// Cut-out voltage.
    CutOut,
    /// MPPT and PWM controllers.
    Controller,
    /// Dc-dc charger and relay.
    DrivingCharger,
    /// Light thrown back by the ground.
    Albedo,
    /// Chance of lasting a night.
    Chance,
}

impl Term {
    /// All words, in the order of the glossary.
    pub const ALL: [Self; 18] = [
        Self::WattAndWattHour,
        Self::AmpHour,
        Self::UsableCapacity,
        Self::DepthOfDischarge,
        Self::StateOfCharge,
        Self::TwentyHourRate,
        Self::Health,
        Self::DutyCycle,
        Self::Standby,
        Self::Surge,
        Self::NoLoadDraw,
        Self::CutOut,
        Self::WattPeak,
        Self::PeakSunHours,
        Self::Controller,
        Self::DrivingCharger,
        Self::Albedo,
        Self::Chance,
    ];

    fn keys(self) -> (&'static str, &'static str) {
        match self {
            Self::WattAndWattHour => (key!("term-watt"), key!("term-watt-text")),
            Self::AmpHour => (key!("term-amp-hour"), key!("term-amp-hour-text")),
            Self::UsableCapacity => (key!("term-usable"), key!("term-usable-text")),
            Self::DepthOfDischarge => (key!("term-dod"), key!("term-dod-text")),
            Self::StateOfCharge => (key!("term-soc"), key!("term-soc-text")),
            Self::PeakSunHours => (key!("term-sun-hours"), key!("term-sun-hours-text")),
            Self::WattPeak => (key!("term-watt-peak"), key!("term-watt-peak-text")),
            Self::DutyCycle => (key!("term-duty"), key!("term-duty-text")),
            Self::Standby => (key!("term-standby"), key!("term-standby-text")),
            Self::Surge => (key!("term-surge"), key!("term-surge-text")),
            Self::TwentyHourRate => (key!("term-rate"), key!("term-rate-text")),
            Self::Health => (key!("term-health"), key!("term-health-text")),
            Self::NoLoadDraw => (key!("term-no-load"), key!("term-no-load-text")),
            Self::CutOut => (key!("term-cut-out"), key!("term-cut-out-text")),
            Self::Controller => (key!("term-controller"), key!("term-controller-text")),
            Self::DrivingCharger => (key!("term-dc-dc"), key!("term-dc-dc-text")),
            Self::Albedo => (key!("term-albedo"), key!("term-albedo-text")),
            Self::Chance => (key!("term-chance"), key!("term-chance-text")),
        }
    }

    /// The word.
    #[must_use]
    pub fn word(self) -> String {
        t(self.keys().0)
    }

    /// What it means.
    #[must_use]
    pub fn meaning(self) -> String {
        t(self.keys().1)
    }
}

/// A question mark that opens the meaning of `term` below it.
#[must_use]
pub fn tip(term: Term) -> AnyView {
    tip_with(term, String::new())
}

/// The same with something to add that holds at this place.
#[must_use]
pub fn tip_with(term: Term, more: String) -> AnyView {
    let word = term.word();
    let name = t_args("tip-name", &[("word", Arg::Text(word.trim_end_matches('.')))]);
    mark(name, word, format!("{} {more}", term.meaning()))
}

/// A question mark that opens where a figure comes from.
#[must_use]
pub fn origin(text: String) -> AnyView {
    mark(t("origin-name"), String::new(), text)
}

fn mark(name: String, word: String, text: String) -> AnyView {
    view! {
        <details class="tip">
            <summary aria-label=name.clone() title=name></summary>
            <p><strong>{word}</strong>" "{text}</p>
        </details>
    }
    .into_any()
}
