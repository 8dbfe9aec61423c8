//! Setups in words, and what links and files do.

use crate::i18n::Arg;
use crate::link::LinkError;
use crate::model::{Load, Setup};
use crate::store::file::MAX_BYTES;
use crate::store::{FileError, Misfit};
use crate::units::Watts;
use crate::view::lang::{amp_hours, number, t, t_args, watts};
use crate::view::words::names::{load_name, name_or_nameless};

/// What tells setups apart at a glance: appliances, battery, panels, place.
#[must_use]
pub fn setup_outline(setup: &Setup) -> String {
    let count = i32::try_from(setup.enabled_loads().count()).unwrap_or(i32::MAX);
    let capacity = amp_hours(setup.bank.rated_capacity());
    let mut parts = vec![t_args(
        "setup-outline",
        &[("n", Arg::Count(count)), ("capacity", Arg::Text(&capacity))],
    )];
    let peak = setup.solar_peak();
    if peak > Watts::ZERO {
        parts.push(t_args("setup-outline-sun", &[("peak", Arg::Text(&watts(peak)))]));
    }
    if !setup.trip.place.name.is_empty() {
        parts.push(setup.trip.place.name.clone());
    }
    parts.join(" · ")
}

/// How many values were pulled into bounds.
#[must_use]
pub fn adjusted(count: usize) -> String {
    t_args("adjusted", &[("n", Arg::Count(i32::try_from(count).unwrap_or(i32::MAX)))])
}

/// Most places that are told; who wants to know all has the text that was set aside, or the file.
const MOST_PLACES: usize = 8;

/// Which fields did not fit.
#[must_use]
pub fn misfits(misfits: &[Misfit]) -> String {
    let several = misfits.iter().any(|misfit| misfit.setup != misfits[0].setup);
    let mut places: Vec<String> = misfits
        .iter()
        .take(MOST_PLACES)
        .map(|misfit| {
            let place = misfit_place(misfit);
            if several && misfit.part != "setup" {
                format!("{} · {place}", name_or_nameless(&misfit.setup))
            } else {
                place
            }
        })
        .collect();
    if misfits.len() > MOST_PLACES {
        places.push("…".to_owned());
    }
    let n = Arg::Count(i32::try_from(misfits.len()).unwrap_or(i32::MAX));
    t_args("misfits", &[("n", n), ("where", Arg::Text(&places.join("; ")))])
}

/// The part, the row and the field as a file names it: `Fridge (draw)`, `Battery (capacity_20h)`.
fn misfit_place(misfit: &Misfit) -> String {
    let part = || t_args("misfit-part", &[("part", Arg::Text(&misfit.part))]);
    let place = match &misfit.row {
        Some(row) if misfit.part == "loads" => {
            let load = Load { name: row.name.clone(), appliance: row.appliance, ..Load::default() };
            load_name(&load)
        }
        Some(row) if row.name.trim().is_empty() => format!("{} {}", part(), row.number),
        Some(row) => format!("{} · {}", part(), row.name),
        None => part(),
    };
    if misfit.field.is_empty() { place } else { format!("{place} ({})", misfit.field) }
}

/// Why a link does not open, and what to do.
#[must_use]
pub fn link_fault(error: &LinkError) -> String {
    match error {
        LinkError::Empty => t("link-empty"),
        LinkError::Truncated => t("link-truncated"),
        LinkError::Newer { .. } => t("link-newer"),
        LinkError::Corrupt => t("link-corrupt"),
    }
}

/// Why a file does not open, and what to do.
#[must_use]
pub fn file_fault(error: &FileError) -> String {
    let count = |n: usize| Arg::Count(i32::try_from(n).unwrap_or(i32::MAX));
    match error {
        FileError::Empty => t("file-empty"),
        FileError::TooLarge { bytes } => {
            let mebibytes = |bytes: usize| number(bytes as f64 / f64::from(1 << 20), 1);
            let (size, limit) = (mebibytes(*bytes), mebibytes(MAX_BYTES));
            t_args("file-too-large", &[("size", Arg::Text(&size)), ("limit", Arg::Text(&limit))])
        }
        FileError::NotJson { line, column } => {
            t_args("file-not-json", &[("line", count(*line)), ("column", count(*column))])
        }
        FileError::OtherFormat => t("file-other-format"),
        FileError::Newer { .. } => t("file-newer"),
        FileError::NoSetups => t("file-no-setups"),
        FileError::TooManySetups { count: n } => t_args("file-too-many", &[("n", count(*n))]),
    }
}
