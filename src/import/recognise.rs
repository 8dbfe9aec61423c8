//! Finds what the columns of a table of appliances hold, by their headings and by the units in their cells.
//! Headings are read in English, German, French and Dutch.

use super::columns::{Columns, Kind, Meaning, Question, Unit, unit};
use super::headings::has_word;
use super::number::split_unit;
use super::table::{Row, Table};
use crate::model::Feed;
use crate::model::typed_words::fold;

// Words of headings as [`has_word`] takes them.

/// Words that stand for a day.
const DAY: &str =
    "day daily days tag taglich tage jour jours journalier quotidien dag dagelijks 24h d 24 pd";
const STANDBY: &str = "standby bereitschaft ruhestrom ruheverbrauch leerlauf veille ruststroom sluipverbruik stand idle phantom quiescent";
const ALL: &str =
    "all total totals gesamt summe insgesamt alle totaal ensemble tous toutes tout totale";
const QUANTITY: &str = "qty quantity quantities number count pieces pcs many anzahl stuck stk menge nombre quantite qte aantal stuks no nr nb x";
const TIMES: &str = "times uses use cycles charges mal einsatze nutzungen ladungen fois utilisations keer maal beurten";
const NAME: &str = "name appliance appliances device devices item items load loads equipment consumer consumers description what gerat gerate verbraucher bezeichnung appareil appareils nom equipement consommateur apparaat apparaten naam tostel tostellen verbruiker verbruikers omschrijving";
const FEED: &str = "inverter wechselrichter onduleur convertisseur omvormer supply source feed supplied versorgt versorgung alimentation alimente voding gevod acdc dcac";
const POWER: &str = "power wattage leistung puissance vermogen draw aufnahme leistungsaufnahme";
const CURRENT: &str = "current amperage strom stromstarke courant intensite stroom";
const VOLTAGE: &str = "voltage spannung tension spanning";
const ENERGY: &str = "energy energie";
const CHARGE: &str = "charge ladung";
const USE: &str = "consumption usage verbrauch stromverbrauch consommation conso verbruik";
const TIME: &str = "hours time runtime duration laufzeit betriebsdaur betriebszeit daur zeit duree temps tijd duur gebruiksduur looptijd";
const DUTY: &str = "duty einschaltdaur";
const CODE: &str = "nightbank";

/// What a heading says of its column.
#[must_use]
pub fn read_heading(text: &str) -> Meaning {
    let folded = fold(text);
    let words: Vec<&str> = folded.split(' ').filter(|word| !word.is_empty()).collect();
    if text.trim() == "#" {
        return Meaning::of(Kind::Quantity);
    }
    if words.is_empty() || words.len() > 10 {
        return Meaning::Unused;
    }
    let daily = has_word(&folded, DAY) || has_daily_mark(text);
    let standby = has_word(&folded, STANDBY);
    let all = has_word(&folded, ALL);
    let known = |kind, factor| Meaning::Known { kind, factor };
    let asked = |question, factor| Meaning::Asked { question, factor };
    if has_word(&folded, CODE) {
        return known(Kind::Code, 1.0);
    }
    match unit_in(text) {
        Some((Unit::WattHour, _)) if standby => Meaning::Unused,
        Some((Unit::WattHour, factor)) if all => known(Kind::EnergyOfAll, factor),
        Some((Unit::WattHour, factor)) => asked(Question::EnergyOfHowMany, factor),
        Some((Unit::AmpHour, _)) if standby || !daily && is_cell(text) => Meaning::Unused,
        Some((Unit::AmpHour, factor)) if all => known(Kind::ChargeOfAll, factor),
        Some((Unit::AmpHour, factor)) => asked(Question::ChargeOfHowMany, factor),
        Some((Unit::Watt, factor)) if standby => known(Kind::Standby, factor),
        Some((Unit::Watt, factor)) if daily => asked(Question::WattsADay, factor),
        Some((Unit::Watt, _)) if all => Meaning::Unused,
        Some((Unit::Watt, factor)) => known(Kind::Watts, factor),
        Some((Unit::Amp, factor)) if daily => asked(Question::AmpsADay, factor),
        Some((Unit::Amp, _)) if standby || all => Meaning::Unused,
        Some((Unit::Amp, factor)) => known(Kind::Amps, factor),
        Some((Unit::Volt, factor)) => known(Kind::Volts, factor),
        Some((Unit::Hour, factor)) => known(Kind::Hours, factor),
        Some((Unit::Minute, factor)) => known(Kind::Minutes, factor),
        Some((Unit::Second, factor)) => known(Kind::Seconds, factor),
        Some((Unit::Percent, factor)) if has_word(&folded, DUTY) => known(Kind::Duty, factor),
        Some((Unit::Percent, _)) => Meaning::Unused,
        None if has_word(&folded, TIMES) && daily => known(Kind::TimesADay, 1.0),
        None if has_word(&folded, QUANTITY) && daily => known(Kind::TimesADay, 1.0),
        None if has_word(&folded, DUTY) => known(Kind::Duty, 1.0),
        None if standby => Meaning::Unused,
        None if has_word(&folded, ENERGY) && all => known(Kind::EnergyOfAll, 1.0),
        None if has_word(&folded, ENERGY) => asked(Question::EnergyOfHowMany, 1.0),
        None if has_word(&folded, POWER) && daily => asked(Question::WattsADay, 1.0),
        None if has_word(&folded, CURRENT) && daily => asked(Question::AmpsADay, 1.0),
        None if has_word(&folded, USE) => asked(Question::Consumption, 1.0),
        None if all => Meaning::Unused,
        None if has_word(&folded, POWER) => known(Kind::Watts, 1.0),
        None if has_word(&folded, CURRENT) => known(Kind::Amps, 1.0),
        None if has_word(&folded, VOLTAGE) => known(Kind::Volts, 1.0),
        None if has_word(&folded, CHARGE) && daily => asked(Question::ChargeOfHowMany, 1.0),
        None if has_word(&folded, FEED) => known(Kind::Feed, 1.0),
        None if has_word(&folded, TIME) => known(Kind::Hours, 1.0),
        None if has_word(&folded, TIMES) => known(Kind::TimesADay, 1.0),
        None if has_word(&folded, NAME) => known(Kind::Name, 1.0),
        None if has_word(&folded, QUANTITY) => known(Kind::Quantity, 1.0),
        None => Meaning::Unused,
    }
}

/// The unit a heading names, best the one in brackets. Energy comes before power and power before time, so
/// that "W for 3 h" or "Wh (12 V)" say what the figures are.
fn unit_in(text: &str) -> Option<(Unit, f64)> {
    let of = |text: &str| {
        let parts = text.split(|c: char| !c.is_alphanumeric() && c != '%' && c != '-');
        // "Times a day", "one's": within a text these are words.
        let is_word = |part: &&str| matches!(*part, "a" | "s" | "u") && text.trim() != *part;
        parts.filter(|part| !is_word(part)).filter_map(unit).min_by_key(|(unit, _)| match unit {
            Unit::WattHour | Unit::AmpHour => 0,
            Unit::Watt | Unit::Amp => 1,
            Unit::Volt => 2,
            Unit::Percent => 3,
            Unit::Minute | Unit::Second => 4,
            Unit::Hour => 5,
        })
    };
    let bracketed = text
        .split_once(['(', '['])
        .map(|(_, rest)| rest.split([')', ']']).next().unwrap_or(rest))
        .and_then(of);
    bracketed.or_else(|| of(text))
}

/// "W/d", "Wh/24h", "W/j" mean a day by a mark.
fn has_daily_mark(text: &str) -> bool {
    let text: String = text.to_lowercase().chars().filter(|c| !c.is_whitespace()).collect();
    ["/d", "/t", "/j", "/24h", "p.d.", "pertag", "p.t."].iter().any(|mark| {
        text.find(mark).is_some_and(|at| {
            let rest = &text[at + mark.len()..];
            mark.ends_with('.') || !rest.starts_with(|c: char| c.is_alphabetic())
        })
    })
}

/// Charge in milliampere-hours without a day is the size of a battery in a device.
fn is_cell(text: &str) -> bool {
    text.to_lowercase().contains("mah")
}

/// What a cell says of the supply: through the inverter or from the battery.
pub(super) fn read_feed(cell: &str) -> Option<Feed> {
    let lower = cell.to_lowercase();
    let mut feed = None;
    for word in lower.split(|c: char| !c.is_alphanumeric()) {
        let found = match word {
            "inverter" | "wechselrichter" | "onduleur" | "convertisseur" | "omvormer" | "ac"
            | "mains" | "netz" | "230" | "230v" | "220" | "220v" | "240" | "240v" | "110"
            | "110v" | "115v" | "120" | "120v" | "yes" | "y" | "ja" | "j" | "oui" | "x"
            | "true" | "1" => Feed::Inverter,
            "battery" | "batterie" | "batterij" | "accu" | "dc" | "usb" | "12" | "12v" | "24"
            | "24v" | "5v" | "no" | "n" | "nein" | "non" | "nee" | "false" | "0" | "direct"
            | "direkt" => Feed::Dc,
            _ => continue,
        };
        // "12 V through inverter" says inverter.
        feed = Some(if feed == Some(Feed::Inverter) { Feed::Inverter } else { found });
    }
    feed
}

/// Finds heading and columns of a table.
#[must_use]
pub fn find_columns(table: &Table) -> Columns {
    let count = table.columns();
    let known = |row: &Row| {
        let meanings = row.cells.iter().map(|cell| read_heading(cell));
        meanings.filter(|meaning| *meaning != Meaning::Unused).count()
    };
    let has_numbers = |row: &Row| {
        row.cells.iter().any(|cell| {
            let (number, unit_text) = split_unit(cell);
            !number.is_empty() && (unit_text.is_empty() || unit(unit_text).is_some())
        })
    };
    // Titles may stand above the headings, never many lines.
    let heading = (0..table.rows.len().min(10))
        .map(|index| (index, known(&table.rows[index])))
        .filter(|&(index, known)| known >= count.min(2) && !has_numbers(&table.rows[index]))
        .max_by_key(|&(index, known)| (known, usize::MAX - index))
        .map(|(index, _)| index);
    let mut columns = Columns { heading, meanings: vec![Meaning::Unused; count] };
    if let Some(heading) = heading {
        for (column, cell) in table.rows[heading].cells.iter().enumerate() {
            let meaning = read_heading(cell);
            let taken = meaning.kind().is_some_and(|kind| columns.of(kind).is_some());
            if !taken {
                columns.meanings[column] = meaning;
            }
        }
    }
    for column in 0..count {
        if columns.meanings[column] == Meaning::Unused {
            columns.meanings[column] = by_content(table, &columns, column);
        }
    }
    if columns.of(Kind::Code).is_some() {
        // The page's own table: each row knows itself, there is nothing to ask.
        for meaning in &mut columns.meanings {
            if matches!(meaning, Meaning::Asked { .. }) {
                *meaning = Meaning::Unused;
            }
        }
    }
    settle_totals(table, &mut columns);
    columns
}

/// Where all rows stand for one piece, energy of one and of all are the same, and nothing is asked.
fn settle_totals(table: &Table, columns: &mut Columns) {
    let single = match columns.of(Kind::Quantity) {
        None => true,
        Some((column, _)) => columns
            .body(table)
            .iter()
            .all(|row| matches!(row.cell(column), "" | "1" | "1.0" | "1,0" | "1.00" | "1,00")),
    };
    if !single {
        return;
    }
    for meaning in &mut columns.meanings {
        *meaning = match *meaning {
            Meaning::Asked { question: Question::EnergyOfHowMany, factor } => {
                Meaning::Known { kind: Kind::EnergyOfOne, factor }
            }
            Meaning::Asked { question: Question::ChargeOfHowMany, factor } => {
                Meaning::Known { kind: Kind::ChargeOfOne, factor }
            }
            other => other,
        };
    }
}

/// What the cells of a column show by themselves: names, supplies, or figures with a unit.
fn by_content(table: &Table, columns: &Columns, column: usize) -> Meaning {
    let cells: Vec<&str> = columns
        .body(table)
        .iter()
        .map(|row| row.cell(column))
        .filter(|cell| !cell.is_empty())
        .collect();
    if cells.is_empty() {
        return Meaning::Unused;
    }
    let most = |count: usize| count * 4 >= cells.len() * 3;
    let free = |kind: Kind| columns.of(kind).is_none();
    let units: Vec<(Unit, f64)> =
        cells.iter().filter_map(|cell| unit(split_unit(cell).1)).collect();
    let same = units.windows(2).all(|pair| pair[0].0 == pair[1].0);
    if most(units.len()) && same {
        // The cells carry their own multiples.
        let known = |kind| if free(kind) { Meaning::of(kind) } else { Meaning::Unused };
        let asked = |question| Meaning::Asked { question, factor: 1.0 };
        return match units.first().map(|(unit, _)| *unit) {
            Some(Unit::Watt) => known(Kind::Watts),
            Some(Unit::Amp) => known(Kind::Amps),
            Some(Unit::Volt) => known(Kind::Volts),
            Some(Unit::WattHour) => asked(Question::EnergyOfHowMany),
            Some(Unit::AmpHour) => asked(Question::ChargeOfHowMany),
            Some(Unit::Hour) => known(Kind::Hours),
            Some(Unit::Minute) => known(Kind::Minutes),
            Some(Unit::Second) => known(Kind::Seconds),
            Some(Unit::Percent) | None => Meaning::Unused,
        };
    }
    let headed = columns.heading.is_some_and(|row| !table.rows[row].cell(column).is_empty());
    let feeds = cells.iter().filter(|cell| read_feed(cell).is_some()).count();
    if most(feeds) && free(Kind::Feed) && !headed {
        return Meaning::of(Kind::Feed);
    }
    let words = cells.iter().filter(|cell| cell.chars().filter(|c| c.is_alphabetic()).count() >= 2);
    if most(words.count()) && free(Kind::Name) {
        return Meaning::of(Kind::Name);
    }
    Meaning::Unused
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::import::headings::assert_folded;
    use crate::import::table::read_table;

    #[test]
    fn headings_in_four_languages() {
        use Kind as K;
        for (headings, kind) in [
            (
                &["Appliance", "Device name", "Gerät", "Verbraucher", "Appareil", "Apparaat"][..],
                K::Name,
            ),
            (
                &["Qty", "How many", "Anzahl", "Stück", "Nombre", "Quantité", "Aantal", "#"],
                K::Quantity,
            ),
            (
                &[
                    "W",
                    "Power (W)",
                    "Watts",
                    "Leistung [W]",
                    "Puissance (W)",
                    "Vermogen (W)",
                    "Leistung",
                    "Leistung je Gerät (W)",
                ],
                K::Watts,
            ),
            (&["A", "Current", "Strom (A)", "Courant (A)", "Stroom (A)"], K::Amps),
            (&["V", "Voltage", "Spannung", "Tension (V)", "Spanning"], K::Volts),
            (
                &[
                    "Hours",
                    "h/day",
                    "Hours per day",
                    "Stunden/Tag",
                    "Std. pro Tag",
                    "Heures par jour",
                    "Uur per dag",
                    "Laufzeit",
                ],
                K::Hours,
            ),
            (&["Minutes", "Min/day", "Minuten pro Tag", "Minutes par jour"], K::Minutes),
            (
                &[
                    "Times a day",
                    "Uses per day",
                    "Mal am Tag",
                    "Fois par jour",
                    "Keer per dag",
                    "Anzahl pro Tag",
                ],
                K::TimesADay,
            ),
            (&["Standby (W)", "Standby W", "Veille (W)", "Ruststroom (W)"], K::Standby),
            (&["Inverter", "Versorgt aus", "Wechselrichter", "Onduleur", "Omvormer"], K::Feed),
            (
                &["Total Wh/day", "Gesamt Wh pro Tag", "Total Wh par jour", "Totaal Wh per dag"],
                K::EnergyOfAll,
            ),
            (&["Total Ah/day"], K::ChargeOfAll),
            (&["Duty cycle", "Duty (%)", "Einschaltdauer %"], K::Duty),
        ] {
            for heading in headings {
                assert_eq!(read_heading(heading).kind(), Some(kind), "{heading}");
            }
        }
    }

    #[test]
    fn what_a_heading_leaves_open_is_asked() {
        for (heading, question) in [
            ("Watts a day", Question::WattsADay),
            ("W/day", Question::WattsADay),
            ("Watt pro Tag", Question::WattsADay),
            ("W/d", Question::WattsADay),
            ("Watts par jour", Question::WattsADay),
            ("Watt per dag", Question::WattsADay),
            ("Amps per day", Question::AmpsADay),
            ("Verbrauch", Question::Consumption),
            ("Consumption", Question::Consumption),
            ("Conso", Question::Consumption),
            ("Wh/day", Question::EnergyOfHowMany),
            ("kWh pro Tag", Question::EnergyOfHowMany),
            ("Ah/day", Question::ChargeOfHowMany),
        ] {
            let Meaning::Asked { question: asked, .. } = read_heading(heading) else {
                panic!("{heading} is taken for {:?}", read_heading(heading))
            };
            assert_eq!(asked, question, "{heading}");
        }
    }

    #[test]
    fn multiples_are_kept() {
        for (heading, factor) in
            [("kW", 1000.0), ("mA", 0.001), ("Total kWh/day", 1000.0), ("Current (mA)", 0.001)]
        {
            let (Meaning::Known { factor: read, .. } | Meaning::Asked { factor: read, .. }) =
                read_heading(heading)
            else {
                panic!("{heading} is not read")
            };
            assert_eq!(read, factor, "{heading}");
        }
        let mut columns = Columns { heading: None, meanings: vec![read_heading("kWh a day")] };
        columns.set(0, Meaning::of(Kind::EnergyOfAll));
        assert_eq!(columns.of(Kind::EnergyOfAll), Some((0, 1000.0)), "an answer keeps the unit");
        columns.set(0, Meaning::of(Kind::Hours));
        assert_eq!(columns.of(Kind::Hours), Some((0, 1.0)), "another quantity does not");
    }

    #[test]
    fn a_title_above_the_headings_is_no_heading() {
        let table = read_table("My van;;\nAppliance;W;Hours\nLamp;3;4\nFan;20;2").expect("a table");
        let columns = find_columns(&table);
        assert_eq!(columns.heading, Some(1));
        assert_eq!(columns.body(&table).len(), 2);
    }

    #[test]
    fn without_headings_the_cells_tell() {
        let table = read_table("Lamp\t3 W\t4 h\tbattery\nKettle\t2 kW\t5 min\tinverter\n")
            .expect("a table");
        let columns = find_columns(&table);
        let kinds: Vec<Option<Kind>> =
            columns.meanings.iter().map(|meaning| meaning.kind()).collect();
        assert_eq!(columns.heading, None);
        // Hours and minutes in one column: no one unit, so it is left to the owner.
        assert_eq!(kinds, [Some(Kind::Name), Some(Kind::Watts), None, Some(Kind::Feed)]);
        let bare = find_columns(&read_table("Lamp;3;4\nFan;20;2").expect("a table"));
        assert_eq!(
            bare.meanings[1..],
            [Meaning::Unused, Meaning::Unused],
            "bare numbers are not guessed"
        );
    }

    #[test]
    fn the_energy_of_single_pieces_is_not_asked() {
        let one =
            find_columns(&read_table("Name;Qty;Wh/day\nLamp;1;12\nFan;;50").expect("a table"));
        assert_eq!(one.meanings[2].kind(), Some(Kind::EnergyOfOne));
        let two =
            find_columns(&read_table("Name;Qty;Wh/day\nLamp;2;12\nFan;1;50").expect("a table"));
        assert!(two.asks());
    }

    #[test]
    fn a_column_holds_one_thing_and_one_thing_one_column() {
        let mut columns = find_columns(&read_table("Name;W;h\nLamp;3;4").expect("a table"));
        columns.set(2, Meaning::of(Kind::Watts));
        assert_eq!(columns.meanings[1], Meaning::Unused);
        assert_eq!(columns.of(Kind::Watts), Some((2, 1.0)));
    }

    #[test]
    fn the_words_are_folded() {
        assert_folded(&[
            DAY, STANDBY, ALL, QUANTITY, TIMES, NAME, FEED, POWER, CURRENT, VOLTAGE, ENERGY,
            CHARGE, USE, TIME, DUTY, CODE,
        ]);
    }
}
