//! Rows of a table as appliances.
//!
//! Each row becomes a [`Load`], or tells why it cannot. A name that the catalogue knows brings what the
//! table does not say: window, litres, charges, group, cut-out. What the table says always counts; where its
//! figures contradict each other that is noted. A row this page wrote itself carries a [`Kind::Code`], the
//! appliance as a link has it, and comes back as it was.

use super::columns::{Columns, Kind, Unit, unit};
use super::matcher::Matcher;
use super::number::{DecimalMark, read_number, split_unit};
use super::recognise::read_feed;
use super::table::{Row, Table};
use crate::link;
use crate::model::catalogue::{self, Appliance};
use crate::model::limits::{self, MAX_NAME_CHARS, Range};
use crate::model::typed_words::fold;
use crate::model::{Draw, DrawSource, DutyCycle, Feed, Load, Setup, SystemVoltage, Usage};
use crate::units::{Amps, Hours, MINUTES_PER_DAY, Volts, WattHours, Watts};
use std::collections::BTreeMap;

/// In the place of a code, for what takes power and is no appliance of the list.
pub const NO_APPLIANCE: &str = "none";

/// Rows of a table that are read at most; far more than a setup holds.
pub const MAX_ROWS: usize = 1_000;

/// Energy and figures may differ by rounding.
const AGREES_FRAC: f64 = 0.1;

/// Minutes of use where nothing is said, as for an appliance added by hand.
const ASSUMED_MIN: f64 = 60.0;

/// Why a row is no appliance.
#[derive(Clone, Debug, PartialEq)]
pub enum RowFault {
    /// There is no name in it.
    NoName,
    /// It sums up others.
    Sum,
    /// Written by this page for what is no appliance.
    NotAnAppliance,
    /// No figures, and the catalogue does not know the name.
    NothingKnown,
    /// A cell that should hold a number.
    NotANumber {
        /// What it should hold.
        kind: Kind,
        /// The cell.
        text: String,
    },
    /// A unit in the cell that does not fit its column.
    WrongUnit {
        /// What it should hold.
        kind: Kind,
        /// The cell.
        text: String,
    },
    /// A number no appliance has.
    OutOfRange {
        /// What it is.
        kind: Kind,
        /// The cell.
        text: String,
        /// Smallest and largest allowed, in the unit of the kind.
        range: Range,
    },
    /// Neither the battery nor the inverter, as far as words go.
    UnknownFeed {
        /// The cell.
        text: String,
    },
    /// More than 24 hours a day.
    MoreThanADay,
    /// More energy a day than its draw takes in 24 hours.
    EnergyAboveDraw,
    /// Amperes through the inverter without the volts they were read at.
    AmpsWithoutVolts,
    /// Uses a day without the length of one.
    NoLengthOfUse,
    /// The code is damaged.
    DamagedCode,
}

/// What the owner should know of a row that is taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Note {
    /// Nothing says how long it runs: one hour a day is taken.
    AssumedHour,
    /// Nothing says what it draws: the usual draw is taken.
    UsualDraw,
    /// The energy a day of one in the table is not what draw and time give; those count.
    Disagrees {
        /// As the table has it.
        told: WattHours,
        /// From draw and time.
        worked_out: WattHours,
    },
    /// Its amperes are taken at this voltage.
    AmpsAt(Volts),
    /// The name was too long.
    NameShortened,
    /// None of them: it is in the list, and switched off.
    SwitchedOff,
}

/// What came of a row.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// Its line in the text, from 1.
    pub line: usize,
    /// Its name as written.
    pub name: String,
    /// Entries of the catalogue that fit the name, best first.
    pub candidates: Vec<u16>,
    /// The appliance; its id is 0.
    pub load: Result<Load, RowFault>,
    /// What the owner should know.
    pub notes: Vec<Note>,
}

/// How a table is read.
pub struct Reading<'a> {
    /// The table.
    pub table: &'a Table,
    /// What its columns hold.
    pub columns: &'a Columns,
    /// Its decimal mark.
    pub mark: DecimalMark,
    /// Nominal voltage of the battery system.
    pub system: SystemVoltage,
    /// How the owner knows the figures.
    pub source: DrawSource,
    /// The name shown for a key of the catalogue, in the language of the page.
    pub names: &'a dyn Fn(&'static str) -> String,
}

/// All rows, at most [`MAX_ROWS`]. `chosen` holds what the owner chose for a line: an entry of the catalogue,
/// or none.
#[must_use]
pub fn read_appliances(reading: &Reading<'_>, chosen: &BTreeMap<usize, Option<u16>>) -> Vec<Draft> {
    let matcher = Matcher::new(reading.names);
    let rows = reading.columns.body(reading.table).iter().take(MAX_ROWS);
    rows.map(|row| RowReader { reading, row, notes: Vec::new() }.draft(&matcher, chosen)).collect()
}

/// The code of a load for a table; empty where it is too long for one.
#[must_use]
pub fn code_of(load: &Load) -> String {
    link::encode(&Setup { loads: vec![load.clone()], ..Setup::default() }).unwrap_or_default()
}

/// Whether a name is that of a sum.
fn is_sum(name: &str) -> bool {
    if !name.starts_with(char::is_alphabetic) {
        return false;
    }
    let folded = fold(name);
    let first = folded.split(' ').next().unwrap_or_default();
    matches!(
        first,
        "total"
            | "totals"
            | "sum"
            | "subtotal"
            | "summe"
            | "gesamt"
            | "gesamtsumme"
            | "gesamtverbrauch"
            | "zwischensumme"
            | "somme"
            | "totaux"
            | "totaal"
            | "som"
            | "subtotaal"
    ) || folded == "sous total"
        || folded.starts_with("grand total")
}

/// Reads one row.
struct RowReader<'a> {
    reading: &'a Reading<'a>,
    row: &'a Row,
    notes: Vec<Note>,
}

/// What the figures of a row say, each in its base unit.
#[derive(Default)]
struct Figures {
    quantity: Option<f64>,
    watts: Option<f64>,
    amps: Option<f64>,
    volts: Option<f64>,
    energy_of_one: Option<f64>,
    minutes: Option<f64>,
    seconds: Option<f64>,
    times: Option<f64>,
    duty_frac: Option<f64>,
    standby: Option<f64>,
    feed: Option<Feed>,
}

impl RowReader<'_> {
    fn draft(mut self, matcher: &Matcher, chosen: &BTreeMap<usize, Option<u16>>) -> Draft {
        let line = self.row.line;
        let name = self.text(Kind::Name).to_owned();
        let code = self.text(Kind::Code).to_owned();
        let (candidates, certain) =
            if code.is_empty() { matcher.find(&name) } else { (Vec::new(), false) };
        let likely = || candidates.first().copied().filter(|_| certain || candidates.len() == 1);
        let known =
            chosen.get(&line).copied().unwrap_or_else(likely).and_then(catalogue::appliance);
        let load = self.load(&name, &code, known);
        Draft { line, name, candidates, load, notes: self.notes }
    }

    fn load(
        &mut self,
        name: &str,
        code: &str,
        known: Option<&Appliance>,
    ) -> Result<Load, RowFault> {
        if code == NO_APPLIANCE {
            return Err(RowFault::NotAnAppliance);
        }
        if name.is_empty() {
            return Err(RowFault::NoName);
        }
        if is_sum(name) {
            return Err(RowFault::Sum);
        }
        if !code.is_empty() {
            return self.written_here(name, code);
        }
        let figures = self.figures()?;
        let mut load = match known {
            Some(known) => known.to_load(0, self.reading.system),
            None => Load::default(),
        };
        load.draw_source = self.reading.source;
        self.set_name(&mut load, name);
        if let Some(feed) = figures.feed {
            load.feed = feed;
        }
        let draw = self.draw(&figures, load.feed)?;
        let energy = figures.energy_of_one;
        if draw.is_none() && energy.is_none() && known.is_none() {
            return Err(RowFault::NothingKnown);
        }
        if let Some(draw) = draw {
            load.draw = draw;
        } else if energy.is_none() {
            load.draw_source = DrawSource::Estimate;
            self.notes.push(Note::UsualDraw);
        }
        load.usage = self.usage(&figures, &load, draw, known)?;
        if let Some(standby) = figures.standby {
            load.standby = Watts(standby);
        } else if self.reading.columns.of(Kind::Standby).is_some() {
            load.standby = Watts::ZERO;
        }
        self.set_quantity(&mut load, figures.quantity);
        Ok(with_plain_name(load))
    }

    /// A row with a code: as it was, but for cells that were changed since.
    fn written_here(&mut self, name: &str, code: &str) -> Result<Load, RowFault> {
        let setup = link::decode(code).map_err(|_| RowFault::DamagedCode)?;
        let mut load = setup.loads.into_iter().next().ok_or(RowFault::DamagedCode)?;
        load.id = 0;
        let known = load.appliance.and_then(catalogue::appliance);
        let own_name =
            known.filter(|_| load.name.is_empty()).map(|known| (self.reading.names)(known.key));
        if own_name.as_deref().unwrap_or(&load.name) != name {
            self.set_name(&mut load, name);
        }
        let watts = self.number(Kind::Watts, limits::DRAW_W)?;
        // The table has two decimals.
        if let Some(watts) = watts.filter(|watts| (watts - load.draw.watts().0).abs() > 0.0051) {
            load.draw = Draw::Power { watts: Watts(watts) };
        }
        if let Some(feed) = self.feed()? {
            load.feed = feed;
        }
        let quantity = self.number(Kind::Quantity, QUANTITY_OR_NONE)?;
        if quantity != Some(f64::from(load.quantity)) {
            self.set_quantity(&mut load, quantity);
        }
        Ok(with_plain_name(load))
    }

    fn set_name(&mut self, load: &mut Load, name: &str) {
        let known = load.appliance.and_then(catalogue::appliance);
        if known.is_some_and(|known| (self.reading.names)(known.key) == name) {
            load.name.clear();
            return;
        }
        let plain: String = name.split_whitespace().collect::<Vec<_>>().join(" ");
        if plain.chars().count() > MAX_NAME_CHARS {
            self.notes.push(Note::NameShortened);
        }
        load.name = plain.chars().take(MAX_NAME_CHARS).collect();
    }

    fn set_quantity(&mut self, load: &mut Load, quantity: Option<f64>) {
        match quantity {
            Some(0.0) => {
                load.enabled = false;
                self.notes.push(Note::SwitchedOff);
            }
            // Checked to be whole and within 1..99.
            Some(quantity) => load.quantity = quantity as u16,
            None => {}
        }
    }

    fn text(&self, kind: Kind) -> &str {
        self.reading.columns.of(kind).map_or("", |(column, _)| self.row.cell(column))
    }

    fn figures(&self) -> Result<Figures, RowFault> {
        let quantity = self.number(Kind::Quantity, QUANTITY_OR_NONE)?;
        if let Some(quantity) = quantity.filter(|quantity| quantity.fract() != 0.0) {
            return Err(RowFault::OutOfRange {
                kind: Kind::Quantity,
                text: quantity.to_string(),
                range: limits::QUANTITY,
            });
        }
        let volts = self.number(Kind::Volts, limits::STATED_V)?;
        let pieces = quantity.filter(|pieces| *pieces > 0.0).unwrap_or(1.0);
        let at = volts.unwrap_or(self.reading.system.nominal().0);
        let energy = [
            self.number(Kind::EnergyOfOne, limits::ENERGY_WH_A_DAY)?,
            self.number(Kind::EnergyOfAll, limits::ENERGY_WH_A_DAY)?.map(|all| all / pieces),
            self.number(Kind::ChargeOfOne, limits::ENERGY_WH_A_DAY)?.map(|one| one * at),
            self.number(Kind::ChargeOfAll, limits::ENERGY_WH_A_DAY)?.map(|all| all / pieces * at),
        ];
        let energy_of_one = energy.into_iter().flatten().next();
        if let Some(energy) = energy_of_one.filter(|wh| !limits::ENERGY_WH_A_DAY.holds(*wh)) {
            return Err(RowFault::OutOfRange {
                kind: Kind::EnergyOfOne,
                text: energy.to_string(),
                range: limits::ENERGY_WH_A_DAY,
            });
        }
        let hours = self.time(Kind::Hours)?;
        let minutes = self.time(Kind::Minutes)?;
        let feed = match self.feed()? {
            Some(feed) => Some(feed),
            // Mains voltage comes from the inverter only.
            None => volts.map(|volts| if volts >= 60.0 { Feed::Inverter } else { Feed::Dc }),
        };
        Ok(Figures {
            quantity,
            watts: self.number(Kind::Watts, limits::DRAW_W)?,
            amps: self.number(Kind::Amps, limits::DRAW_A)?,
            volts,
            energy_of_one,
            minutes: match (hours, minutes) {
                (None, None) => None,
                (hours, minutes) => Some(hours.unwrap_or(0.0) + minutes.unwrap_or(0.0)),
            },
            seconds: self.number(Kind::Seconds, limits::SECONDS_A_USE)?,
            times: self.number(Kind::TimesADay, limits::USES_A_DAY)?,
            duty_frac: self.duty()?,
            standby: self.number(Kind::Standby, limits::STANDBY_W)?,
            feed,
        })
    }

    /// A draw as the row has it, if it has one.
    fn draw(&mut self, figures: &Figures, feed: Feed) -> Result<Option<Draw>, RowFault> {
        if let Some(watts) = figures.watts {
            return Ok(Some(Draw::Power { watts: Watts(watts) }));
        }
        let Some(amps) = figures.amps else { return Ok(None) };
        let volts = match (figures.volts, feed) {
            (Some(volts), _) => Volts(volts),
            (None, Feed::Dc) => {
                let nominal = self.reading.system.nominal();
                self.notes.push(Note::AmpsAt(nominal));
                nominal
            }
            (None, Feed::Inverter) => return Err(RowFault::AmpsWithoutVolts),
        };
        Ok(Some(Draw::Current { amps: Amps(amps), volts }))
    }

    /// How it is used: by the row as far as it says, else by the catalogue.
    fn usage(
        &mut self,
        figures: &Figures,
        load: &Load,
        draw: Option<Draw>,
        known: Option<&Appliance>,
    ) -> Result<Usage, RowFault> {
        let thermostat = known.is_some_and(|known| matches!(known.usage, Usage::Duty { .. }));
        let of_day = |minutes: f64| {
            let frac = minutes / MINUTES_PER_DAY;
            match frac {
                // A thermostat spreads its time over the day.
                frac if thermostat => Usage::Duty { cycle: DutyCycle::Fixed { frac } },
                1.0 => Usage::AlwaysOn,
                _ => Usage::Daily { minutes },
            }
        };
        let usage = if let Some(per_day) = figures.times {
            let seconds = match (figures.seconds, figures.minutes, known.map(|known| known.usage)) {
                (None, None, Some(Usage::Charges { cell, cell_volts, charger_frac, .. }))
                    if per_day > 0.0 =>
                {
                    let every_days = 1.0 / per_day;
                    if !limits::CHARGE_EVERY_DAYS.holds(every_days) {
                        return Err(RowFault::OutOfRange {
                            kind: Kind::TimesADay,
                            text: self.text(Kind::TimesADay).to_owned(),
                            range: charges_a_day(),
                        });
                    }
                    return Ok(Usage::Charges { every_days, cell, cell_volts, charger_frac });
                }
                (None, None, Some(Usage::Uses { seconds, .. })) => seconds,
                (None, None, _) => return Err(RowFault::NoLengthOfUse),
                (seconds, minutes, _) => seconds.unwrap_or(0.0) + minutes.unwrap_or(0.0) * 60.0,
            };
            if per_day.max(1.0) * seconds > MINUTES_PER_DAY * 60.0 {
                return Err(RowFault::MoreThanADay);
            }
            Usage::Uses { per_day, seconds }
        } else if let Some(frac) = figures.duty_frac {
            Usage::Duty { cycle: DutyCycle::Fixed { frac } }
        } else if figures.minutes.is_some() || figures.seconds.is_some() {
            let minutes = figures.minutes.unwrap_or(0.0) + figures.seconds.unwrap_or(0.0) / 60.0;
            if minutes > MINUTES_PER_DAY {
                return Err(RowFault::MoreThanADay);
            }
            of_day(minutes)
        } else if let Some(energy) = figures.energy_of_one {
            match draw.map(|draw| draw.watts().0).filter(|watts| *watts > 0.0) {
                None => Usage::Energy { per_day: WattHours(energy) },
                Some(watts) => {
                    let minutes = energy / watts * 60.0;
                    // Rounded figures may come out at a little more than a day.
                    if minutes > MINUTES_PER_DAY * (1.0 + AGREES_FRAC) {
                        return Err(RowFault::EnergyAboveDraw);
                    }
                    of_day(minutes.min(MINUTES_PER_DAY))
                }
            }
        } else if let Some(known) = known {
            known.usage
        } else {
            self.notes.push(Note::AssumedHour);
            Usage::Daily { minutes: ASSUMED_MIN }
        };
        self.compare_energy(figures, load, usage);
        Ok(usage)
    }

    /// Notes where energy, draw and time of a row contradict each other.
    fn compare_energy(&mut self, figures: &Figures, load: &Load, usage: Usage) {
        let Some(told) = figures.energy_of_one else { return };
        let frac = match usage {
            Usage::Daily { minutes } => minutes / MINUTES_PER_DAY,
            Usage::AlwaysOn => 1.0,
            Usage::Duty { cycle: DutyCycle::Fixed { frac } } => frac,
            Usage::Uses { per_day, seconds } => per_day * seconds / (MINUTES_PER_DAY * 60.0),
            _ => return,
        };
        let worked_out = load.draw.watts() * Hours(24.0 * frac);
        if (worked_out.0 - told).abs() > AGREES_FRAC * told.max(worked_out.0) + 1.0 {
            self.notes.push(Note::Disagrees { told: WattHours(told), worked_out });
        }
    }

    fn feed(&self) -> Result<Option<Feed>, RowFault> {
        let text = self.text(Kind::Feed);
        if text.is_empty() {
            return Ok(None);
        }
        match read_feed(text) {
            Some(feed) => Ok(Some(feed)),
            None => Err(RowFault::UnknownFeed { text: text.to_owned() }),
        }
    }

    /// Share of the time; `33 %` and `0.33` are the same.
    fn duty(&self) -> Result<Option<f64>, RowFault> {
        let text = self.text(Kind::Duty);
        if text.is_empty() {
            return Ok(None);
        }
        let (number, unit_text) = split_unit(text);
        let value = read_number(number, self.reading.mark)
            .ok_or_else(|| RowFault::NotANumber { kind: Kind::Duty, text: text.to_owned() })?;
        let frac = match unit(unit_text) {
            Some((Unit::Percent, _)) => value / 100.0,
            None if unit_text.is_empty() => {
                if value > 1.0 {
                    value / 100.0
                } else {
                    value
                }
            }
            _ => return Err(RowFault::WrongUnit { kind: Kind::Duty, text: text.to_owned() }),
        };
        if limits::FRAC.holds(frac) {
            Ok(Some(frac))
        } else {
            let range = Range { min: 0.0, max: 100.0 };
            Err(RowFault::OutOfRange { kind: Kind::Duty, text: text.to_owned(), range })
        }
    }

    /// A time [min]: as a number in the unit of its column or cell, or `h:mm`.
    fn time(&self, kind: Kind) -> Result<Option<f64>, RowFault> {
        let text = self.text(kind);
        if text.is_empty() {
            return Ok(None);
        }
        let minutes = if let Some(minutes) = clock(text) {
            minutes
        } else {
            let per_unit = if kind == Kind::Hours { 60.0 } else { 1.0 };
            match self.number(kind, Range { min: 0.0, max: f64::MAX })? {
                Some(value) => value * per_unit,
                None => return Ok(None),
            }
        };
        Ok(Some(minutes))
    }

    /// A number in the base unit of its kind.
    fn number(&self, kind: Kind, range: Range) -> Result<Option<f64>, RowFault> {
        let Some((column, factor)) = self.reading.columns.of(kind) else { return Ok(None) };
        let text = self.row.cell(column);
        if text.is_empty() || matches!(text, "-" | "–" | "—") {
            return Ok(None);
        }
        let (number, unit_text) = split_unit(text);
        let value = read_number(number, self.reading.mark)
            .ok_or_else(|| RowFault::NotANumber { kind, text: text.to_owned() })?;
        let factor = match (unit_text.is_empty(), unit(unit_text)) {
            (true, _) => factor,
            (false, Some((own, own_factor))) => {
                own_factor
                    * scale(own, kind)
                        .ok_or_else(|| RowFault::WrongUnit { kind, text: text.to_owned() })?
            }
            // Pieces may be counted in any words: "2 x", "3 pcs".
            (false, None) if kind == Kind::Quantity || kind == Kind::TimesADay => 1.0,
            (false, None) => return Err(RowFault::WrongUnit { kind, text: text.to_owned() }),
        };
        let value = value * factor;
        if range.holds(value) {
            Ok(Some(value))
        } else {
            Err(RowFault::OutOfRange { kind, text: text.to_owned(), range })
        }
    }
}

/// Characters that no name may hold are taken out of it; all figures lie within their bounds already.
fn with_plain_name(load: Load) -> Load {
    let (setup, _) = Setup { loads: vec![load.clone()], ..Setup::default() }.sanitised();
    let name = setup.loads.first().map(|load| load.name.clone()).unwrap_or_default();
    debug_assert!(
        setup
            .loads
            .iter()
            .all(|kept| { *kept == Load { name: name.clone(), id: kept.id, ..load.clone() } })
    );
    Load { name, ..load }
}

/// Charges a day a cell may have.
fn charges_a_day() -> Range {
    let days = limits::CHARGE_EVERY_DAYS;
    Range { min: 1.0 / days.max, max: 1.0 / days.min }
}

/// How many; none of them is allowed and means switched off.
const QUANTITY_OR_NONE: Range = Range { min: 0.0, max: limits::QUANTITY.max };

/// A unit in a cell over the base unit of its column, where both measure the same.
fn scale(unit: Unit, kind: Kind) -> Option<f64> {
    match (unit, kind) {
        (Unit::Watt, Kind::Watts | Kind::Standby)
        | (Unit::Amp, Kind::Amps)
        | (Unit::Volt, Kind::Volts)
        | (Unit::WattHour, Kind::EnergyOfOne | Kind::EnergyOfAll)
        | (Unit::AmpHour, Kind::ChargeOfOne | Kind::ChargeOfAll)
        | (Unit::Hour, Kind::Hours)
        | (Unit::Minute, Kind::Minutes)
        | (Unit::Second, Kind::Seconds) => Some(1.0),
        (Unit::Minute, Kind::Hours) => Some(1.0 / 60.0),
        (Unit::Second, Kind::Hours) => Some(1.0 / 3600.0),
        (Unit::Hour, Kind::Minutes) => Some(60.0),
        (Unit::Second, Kind::Minutes) => Some(1.0 / 60.0),
        (Unit::Hour, Kind::Seconds) => Some(3600.0),
        (Unit::Minute, Kind::Seconds) => Some(60.0),
        _ => None,
    }
}

/// Minutes of a time as `1:30` or `1:30:00`.
fn clock(text: &str) -> Option<f64> {
    let mut parts = text.split(':');
    let (hours, minutes) = (parts.next()?, parts.next()?);
    let seconds = parts.next().unwrap_or("0");
    let whole = |text: &str| {
        let digits =
            !text.is_empty() && text.len() <= 3 && text.bytes().all(|b| b.is_ascii_digit());
        text.parse::<f64>().ok().filter(|_| digits)
    };
    let (hours, minutes, seconds) = (whole(hours)?, whole(minutes)?, whole(seconds)?);
    let fits = parts.next().is_none() && minutes < 60.0 && seconds < 60.0;
    fits.then_some(hours * 60.0 + minutes + seconds / 60.0)
}
