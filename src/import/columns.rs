//! What the columns of a table of appliances may hold, and what is known of it.
//!
//! What a heading leaves open is asked ([`Question`]), never guessed: "watts a day" is no quantity there is.

use super::table::{Row, Table};

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Name of the appliance.
    Name,
    /// How many.
    Quantity,
    /// Power of one while it runs [W].
    Watts,
    /// Current of one while it runs [A].
    Amps,
    /// Voltage of the current, or of its supply [V].
    Volts,
    /// Energy a day of one [Wh].
    EnergyOfOne,
    /// Energy a day of all in the row [Wh].
    EnergyOfAll,
    /// Charge a day of one [Ah].
    ChargeOfOne,
    /// Charge a day of all in the row [Ah].
    ChargeOfAll,
    /// Running time a day [h], or of one use where uses a day are told.
    Hours,
    /// Running time a day [min], or of one use where uses a day are told.
    Minutes,
    /// Length of one use [s].
    Seconds,
    /// Uses or charges a day.
    TimesADay,
    /// Share of the time it runs [%].
    Duty,
    /// From the battery or through the inverter.
    Feed,
    /// Draw of one between uses [W].
    Standby,
    /// The row as this page wrote it.
    Code,
}

impl Kind {
    /// All kinds, in the order they are offered.
    pub const ALL: [Self; 17] = [
        Self::Name,
        Self::Quantity,
        Self::Watts,
        Self::Amps,
        Self::Volts,
        Self::EnergyOfOne,
        Self::EnergyOfAll,
        Self::ChargeOfOne,
        Self::ChargeOfAll,
        Self::Hours,
        Self::Minutes,
        Self::Seconds,
        Self::TimesADay,
        Self::Duty,
        Self::Feed,
        Self::Standby,
        Self::Code,
    ];
}

/// What only the owner of the table can tell of a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Question {
    /// "Watts a day": watts while it runs, or watt-hours a day?
    WattsADay,
    /// "Amps a day": amperes while it runs, or ampere-hours a day?
    AmpsADay,
    /// "Consumption": watts, or watt-hours a day?
    Consumption,
    /// Energy a day: of one, or of all in the row?
    EnergyOfHowMany,
    /// Charge a day: of one, or of all in the row?
    ChargeOfHowMany,
}

impl Question {
    /// The answers there are.
    #[must_use]
    pub fn answers(self) -> &'static [Kind] {
        match self {
            Self::WattsADay | Self::Consumption => {
                &[Kind::Watts, Kind::EnergyOfOne, Kind::EnergyOfAll]
            }
            Self::AmpsADay => &[Kind::Amps, Kind::ChargeOfOne, Kind::ChargeOfAll],
            Self::EnergyOfHowMany => &[Kind::EnergyOfOne, Kind::EnergyOfAll],
            Self::ChargeOfHowMany => &[Kind::ChargeOfOne, Kind::ChargeOfAll],
        }
    }
}

/// What is known of a column.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub enum Meaning {
    /// Nothing this page could use; the column is not read.
    #[default]
    Unused,
    /// It holds this, in the usual unit times `factor`: 1000 for kilowatts.
    Known {
        /// What it holds.
        kind: Kind,
        /// Its unit over the usual one.
        factor: f64,
    },
    /// The owner has to say.
    Asked {
        /// What is asked.
        question: Question,
        /// Its unit over the usual one.
        factor: f64,
    },
}

impl Meaning {
    /// A column that holds this in its usual unit.
    #[must_use]
    pub const fn of(kind: Kind) -> Self {
        Self::Known { kind, factor: 1.0 }
    }

    /// What it holds, where that is known.
    #[must_use]
    pub fn kind(self) -> Option<Kind> {
        match self {
            Self::Known { kind, .. } => Some(kind),
            Self::Unused | Self::Asked { .. } => None,
        }
    }
}

/// The columns of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct Columns {
    /// Index of the row with the headings, where there is one; what stands above is a title.
    pub heading: Option<usize>,
    /// What each column holds.
    pub meanings: Vec<Meaning>,
}

impl Columns {
    /// The column that holds `kind`, with its factor.
    #[must_use]
    pub fn of(&self, kind: Kind) -> Option<(usize, f64)> {
        self.meanings.iter().enumerate().find_map(|(column, meaning)| match meaning {
            Meaning::Known { kind: held, factor } if *held == kind => Some((column, *factor)),
            _ => None,
        })
    }

    /// Says what a column holds; another that was said to hold the same is not read any more.
    pub fn set(&mut self, column: usize, meaning: Meaning) {
        if let Some(kind) = meaning.kind() {
            for other in self.meanings.iter_mut().filter(|other| other.kind() == Some(kind)) {
                *other = Meaning::Unused;
            }
        }
        if let Some(own) = self.meanings.get_mut(column) {
            *own = match (*own, meaning) {
                // The answer to a question keeps the unit of the heading.
                (
                    Meaning::Asked { factor, .. } | Meaning::Known { factor, .. },
                    Meaning::Known { kind, .. },
                ) if same_unit(*own, kind) => Meaning::Known { kind, factor },
                _ => meaning,
            };
        }
    }

    /// The rows of appliances.
    #[must_use]
    pub fn body<'a>(&self, table: &'a Table) -> &'a [Row] {
        let from = self.heading.map_or(0, |heading| heading + 1);
        table.rows.get(from..).unwrap_or_default()
    }

    /// Some column waits for an answer.
    #[must_use]
    pub fn asks(&self) -> bool {
        self.meanings.iter().any(|meaning| matches!(meaning, Meaning::Asked { .. }))
    }
}

/// Whether a column of this meaning has its figures in units of `kind`.
fn same_unit(meaning: Meaning, kind: Kind) -> bool {
    match meaning {
        Meaning::Asked { question, .. } => question.answers().contains(&kind),
        Meaning::Known { kind: held, .. } => unit_of(held) == unit_of(kind),
        Meaning::Unused => false,
    }
}

/// The base unit of a kind with one.
fn unit_of(kind: Kind) -> Option<Unit> {
    match kind {
        Kind::Watts | Kind::Standby => Some(Unit::Watt),
        Kind::Amps => Some(Unit::Amp),
        Kind::Volts => Some(Unit::Volt),
        Kind::EnergyOfOne | Kind::EnergyOfAll => Some(Unit::WattHour),
        Kind::ChargeOfOne | Kind::ChargeOfAll => Some(Unit::AmpHour),
        Kind::Hours => Some(Unit::Hour),
        Kind::Minutes => Some(Unit::Minute),
        Kind::Seconds => Some(Unit::Second),
        Kind::Duty => Some(Unit::Percent),
        Kind::Name | Kind::Quantity | Kind::TimesADay | Kind::Feed | Kind::Code => None,
    }
}

/// Base units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Unit {
    Watt,
    WattHour,
    Amp,
    AmpHour,
    Volt,
    Hour,
    Minute,
    Second,
    Percent,
}

/// The unit a text is, with its multiple: `kWh` is (watt-hours, 1000).
pub(super) fn unit(text: &str) -> Option<(Unit, f64)> {
    use Unit::{Amp, AmpHour, Hour, Minute, Percent, Second, Volt, Watt, WattHour};
    // Case tells mega from milli, so these come before folding.
    match text {
        "mW" => return Some((Watt, 1e-3)),
        "mA" => return Some((Amp, 1e-3)),
        "mAh" => return Some((AmpHour, 1e-3)),
        _ => {}
    }
    let folded = text.trim().to_lowercase();
    Some(match folded.trim_end_matches('.') {
        "w" | "watt" | "watts" => (Watt, 1.0),
        "kw" => (Watt, 1e3),
        "wh" | "watt-hours" | "watthours" | "wattstunden" | "wattuur" | "wattheures" => {
            (WattHour, 1.0)
        }
        "kwh" => (WattHour, 1e3),
        "a" | "amp" | "amps" | "ampere" | "amperes" | "ampère" | "ampères" => (Amp, 1.0),
        "ma" => (Amp, 1e-3),
        "ah" | "amp-hours" | "amperestunden" => (AmpHour, 1.0),
        "mah" => (AmpHour, 1e-3),
        "v" | "volt" | "volts" | "vdc" | "vac" => (Volt, 1.0),
        "h" | "hr" | "hrs" | "hour" | "hours" | "std" | "stunde" | "stunden" | "heure"
        | "heures" | "uur" | "uren" | "u" => (Hour, 1.0),
        "min" | "mins" | "minute" | "minutes" | "minuten" | "minuut" => (Minute, 1.0),
        "s" | "sec" | "secs" | "sek" | "second" | "seconds" | "sekunden" | "secondes"
        | "seconden" => (Second, 1.0),
        "%" => (Percent, 1.0),
        _ => return None,
    })
}
