//! What a table holds and what is wrong with it, in words.

use crate::i18n::Arg;
use crate::import::appliances::{Note, RowFault};
use crate::import::columns::Kind;
use crate::import::table::{MAX_COLUMNS, TableError};
use crate::view::lang::{key, number, t, t_args, volts, watt_hours};
use crate::view::words::names::count;

/// What a column holds.
pub(super) fn kind_name(kind: Kind) -> String {
    t(match kind {
        Kind::Name => key!("table-kind-name"),
        Kind::Quantity => key!("table-kind-quantity"),
        Kind::Watts => key!("table-kind-watts"),
        Kind::Amps => key!("table-kind-amps"),
        Kind::Volts => key!("table-kind-volts"),
        Kind::EnergyOfOne => key!("table-kind-energy-one"),
        Kind::EnergyOfAll => key!("table-kind-energy-all"),
        Kind::ChargeOfOne => key!("table-kind-charge-one"),
        Kind::ChargeOfAll => key!("table-kind-charge-all"),
        Kind::Hours => key!("table-kind-hours"),
        Kind::Minutes => key!("table-kind-minutes"),
        Kind::Seconds => key!("table-kind-seconds"),
        Kind::TimesADay => key!("table-kind-times"),
        Kind::Duty => key!("table-kind-duty"),
        Kind::Feed => key!("table-kind-feed"),
        Kind::Standby => key!("table-kind-standby"),
        Kind::Code => key!("table-kind-code"),
    })
}

/// Why a text is no table.
pub(super) fn table_fault(error: TableError) -> String {
    match error {
        TableError::Empty => t("table-empty"),
        TableError::TooLarge => t("table-too-large"),
        TableError::NotText => t("table-not-text"),
        TableError::TooWide { line } => {
            let args =
                [("line", Arg::Count(count(line))), ("most", Arg::Count(count(MAX_COLUMNS)))];
            t_args("table-too-wide", &args)
        }
    }
}

/// Why a row is no appliance.
pub(super) fn row_fault(fault: &RowFault) -> String {
    match fault {
        RowFault::NoName => t("table-fault-no-name"),
        RowFault::Sum => t("table-fault-sum"),
        RowFault::NotAnAppliance => t("table-fault-none"),
        RowFault::NothingKnown => t("table-fault-unknown"),
        RowFault::NotANumber { kind, text } => about_cell(key!("table-fault-number"), *kind, text),
        RowFault::WrongUnit { kind, text } => about_cell(key!("table-fault-unit"), *kind, text),
        RowFault::OutOfRange { kind, text, range } => {
            let (min, max) = (number(range.min, 2), number(range.max, 2));
            let kind = kind_name(*kind);
            let args = [
                ("kind", Arg::Text(&kind)),
                ("text", Arg::Text(text)),
                ("min", Arg::Text(&min)),
                ("max", Arg::Text(&max)),
            ];
            t_args("table-fault-range", &args)
        }
        RowFault::UnknownFeed { text } => t_args("table-fault-feed", &[("text", Arg::Text(text))]),
        RowFault::MoreThanADay => t("table-fault-day"),
        RowFault::EnergyAboveDraw => t("table-fault-above"),
        RowFault::AmpsWithoutVolts => t("table-fault-amps"),
        RowFault::NoLengthOfUse => t("table-fault-length"),
        RowFault::DamagedCode => t("table-fault-code"),
    }
}

fn about_cell(key: &str, kind: Kind, text: &str) -> String {
    t_args(key, &[("kind", Arg::Text(&kind_name(kind))), ("text", Arg::Text(text))])
}

/// What the owner should know of a row.
pub(super) fn note(note: Note) -> String {
    match note {
        Note::AssumedHour => t("table-note-hour"),
        Note::UsualDraw => t("table-note-usual"),
        Note::Disagrees { told, worked_out } => {
            let (told, worked_out) = (watt_hours(told), watt_hours(worked_out));
            let args = [("told", Arg::Text(&told)), ("worked", Arg::Text(&worked_out))];
            t_args("table-note-disagrees", &args)
        }
        Note::AmpsAt(at) => t_args("table-note-amps", &[("volts", Arg::Text(&volts(at)))]),
        Note::NameShortened => t("table-note-short"),
        Note::SwitchedOff => t("table-note-off"),
    }
}
