//! What the columns of a log are: told by their headings in four languages, else by their figures.

use super::stamp::DateOrder;
use crate::import::headings::has_word;
use crate::import::number::DecimalMark;
use crate::model::typed_words::fold;

/// What a column holds.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Role {
    /// Nothing that is used.
    #[default]
    Unused,
    /// Date and time, or the time where the date has a column of its own.
    Time,
    /// The date alone.
    Date,
    /// State of charge.
    Soc,
    /// Voltage of the battery.
    Volts,
    /// Current of the battery.
    Amps,
    /// Power of the battery.
    Watts,
    /// Power coming in.
    Charging,
    /// Power of the appliances.
    Used,
}

impl Role {
    /// All, in the order they are offered.
    pub const ALL: [Self; 9] = [
        Self::Unused,
        Self::Time,
        Self::Date,
        Self::Soc,
        Self::Volts,
        Self::Amps,
        Self::Watts,
        Self::Charging,
        Self::Used,
    ];

    /// Holds a time.
    #[must_use]
    pub fn is_time(self) -> bool {
        matches!(self, Self::Time | Self::Date)
    }
}

/// How the role of a column was told.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Told {
    /// Not at all.
    #[default]
    Not,
    /// By its heading.
    Heading,
    /// By its figures alone.
    Figures,
}

/// Clock of times without an offset.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Clock {
    /// The camp's.
    #[default]
    Camp,
    /// Universal time.
    Utc,
}

/// What a positive current or power of the battery means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlusIs {
    /// It is charged.
    Charging,
    /// It gives.
    Using,
}

/// How a log is read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Choices {
    /// By column.
    pub roles: Vec<Role>,
    /// Order of dates that do not say it themselves.
    pub date_order: Option<DateOrder>,
    /// Decimal mark of numbers that can be read either way.
    pub mark: Option<DecimalMark>,
    /// What a positive current or power means; `None`: as the log shows.
    pub plus_is: Option<PlusIs>,
    /// Clock of times without offset.
    pub clock: Clock,
}

impl Choices {
    /// The column with a role.
    #[must_use]
    pub fn column(&self, role: Role) -> Option<usize> {
        self.roles.iter().position(|has| *has == role)
    }

    /// Gives a column a role; another that had it has none then.
    pub fn assign(&mut self, column: usize, role: Role) {
        if role != Role::Unused {
            for other in self.roles.iter_mut().filter(|other| **other == role) {
                *other = Role::Unused;
            }
        }
        if let Some(slot) = self.roles.get_mut(column) {
            *slot = role;
        }
    }
}

// Words of headings as [`has_word`] takes them.

const TIME: &str = "time timestamp zeit uhrzeit zeitpunkt zeitstempel heure horodatage tijd tijdstip tijdstempel utc epoch unix";
const DATE: &str = "date datum day tag jour dag";
const SOC: &str = "soc ladezustand ladestand fullstand laadtostand laadstatus laadniveau";
const SOC_PHRASES: &[&str] = &["state of charge", "etat de charge", "niveau de charge"];
const CHARGING: &str = "solar- pv sun sonne solaire zon zonne- photovolta- panel- panneau- paneel charger ladegerat chargeur lader charging mppt alternator generator";
const USED: &str =
    "load loads consum- verbrauch- last lasten consomm- verbruik- belasting used usage";
const VOLTS: &str = "v mv volt volts voltage -spannung tension -spanning";
const AMPS: &str = "a ma amp amps ampere amperes current -strom courant -stroom intensite";
const WATTS: &str = "w kw watt watts power -leistung puissance -vermogen";
/// Counters of energy or charge, and what is measured of other things.
const NOT_USED: &str =
    "wh kwh mwh ah mah energy energie temp temperatur- temperature starter setpoint limit min max";
const HOUSE: &str = "batt- akku accu bank house leisure service";

/// What a heading says, and the size of its unit.
#[must_use]
pub fn by_heading(heading: &str) -> (Role, f64) {
    let words = fold(heading);
    let scale = if has_word(&words, "kw") {
        1000.0
    } else if has_word(&words, "mv ma") {
        0.001
    } else {
        1.0
    };
    let soc = has_word(&words, SOC)
        || SOC_PHRASES.iter().any(|phrase| words.contains(phrase))
        || heading.contains('%') && has_word(&words, HOUSE);
    let role = if soc {
        Role::Soc
    } else if has_word(&words, NOT_USED) {
        Role::Unused
    } else if has_word(&words, TIME) {
        Role::Time
    } else if has_word(&words, DATE) {
        Role::Date
    } else if has_word(&words, CHARGING) {
        if has_word(&words, VOLTS) || has_word(&words, AMPS) {
            Role::Unused
        } else {
            Role::Charging
        }
    } else if has_word(&words, USED) {
        if has_word(&words, VOLTS) || has_word(&words, AMPS) { Role::Unused } else { Role::Used }
    } else if has_word(&words, VOLTS) {
        Role::Volts
    } else if has_word(&words, AMPS) {
        Role::Amps
    } else if has_word(&words, WATTS) {
        Role::Watts
    } else {
        Role::Unused
    };
    (role, scale)
}

/// The heading names the house battery: of two columns of a kind this one is meant.
#[must_use]
pub fn of_house(heading: &str) -> bool {
    has_word(&fold(heading), HOUSE)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::import::headings::assert_folded;

    #[test]
    fn headings_of_four_languages_are_known() {
        for (heading, role) in [
            ("Time", Role::Time),
            ("Zeitstempel", Role::Time),
            ("Heure", Role::Time),
            ("Tijd", Role::Time),
            ("Datum", Role::Date),
            ("State of charge (%)", Role::Soc),
            ("Ladezustand [%]", Role::Soc),
            ("État de charge", Role::Soc),
            ("Laadtoestand", Role::Soc),
            ("Battery %", Role::Soc),
            ("Voltage (V)", Role::Volts),
            ("Batteriespannung", Role::Volts),
            ("Accustroom", Role::Amps),
            ("Tension batterie", Role::Volts),
            ("Spanning [V]", Role::Volts),
            ("Current (A)", Role::Amps),
            ("Strom/A", Role::Amps),
            ("Courant", Role::Amps),
            ("Stroom", Role::Amps),
            ("Power (W)", Role::Watts),
            ("Leistung", Role::Watts),
            ("Puissance", Role::Watts),
            ("Vermogen", Role::Watts),
            ("Solar power W", Role::Charging),
            ("Puissance solaire", Role::Charging),
            ("Zonne-energie W", Role::Unused),
            ("Verbrauch W", Role::Used),
            ("Verbruik", Role::Used),
            ("Consommation", Role::Used),
            ("Consumed Ah", Role::Unused),
            ("Battery temperature", Role::Unused),
            ("PV voltage", Role::Unused),
            ("", Role::Unused),
        ] {
            let found = by_heading(heading).0;
            assert_eq!(found, role, "{heading}");
        }
        assert_eq!(by_heading("Power kW"), (Role::Watts, 1000.0));
        assert_eq!(by_heading("Current [mA]"), (Role::Amps, 0.001));
    }

    #[test]
    fn the_words_are_folded() {
        assert_folded(&[TIME, DATE, SOC, CHARGING, USED, VOLTS, AMPS, WATTS, NOT_USED, HOUSE]);
    }
}
