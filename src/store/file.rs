//! The file: setups as JSON.
//!
//! ```json
//! { "format": "nightbank", "schema": 1, "setups": [ { "name": "Our van", "loads": [] } ] }
//! ```
//!
//! A single setup may stand as `"setup": { ... }` instead. A setup holds the fields of
//! [`Setup`], quantities as plain numbers in the unit their type names; a field left out has its
//! usual value. `FORMAT.md` beside this file describes every field.
//!
//! A number out of bounds is pulled in and counted; a field nobody knows is skipped and named; one that does not fit gives
//! way to its usual value and is named (`misfit`). A file of another format, of a newer schema or without any setup opens
//! nothing.

use super::migration::{self, SCHEMA, STEPS, Step, Unknown};
use super::misfit::{Mender, Misfit, MisfitRow};
use crate::model::Setup;
use serde::Deserialize;
use serde_json::{Map, Value, json};
use std::fmt;

/// Value of `format`.
pub const FORMAT: &str = "nightbank";

/// Largest file that is read [bytes].
pub const MAX_BYTES: usize = 1 << 20;

/// Most setups in one file or library; that many of the largest still fit a file.
pub const MAX_SETUPS: usize = 16;

/// Most unknown fields that are named.
const MAX_IGNORED: usize = 20;

/// What a file held.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FileContent {
    /// The setups, at least one.
    pub setups: Vec<Setup>,
    /// Values that had to be pulled into bounds.
    pub adjusted: usize,
    /// Fields nobody knows, e.g. `setups[0].bank.colour`; the first 20.
    pub ignored: Vec<String>,
    /// Fields that did not fit, and rows that are no setups.
    pub misfits: Vec<Misfit>,
}

/// Why a file does not open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileError {
    /// Nothing in it.
    Empty,
    /// More than [`MAX_BYTES`].
    TooLarge {
        /// Size [bytes].
        bytes: usize,
    },
    /// Not JSON, or cut off.
    NotJson {
        /// Where reading stopped, from 1.
        line: usize,
        /// Where reading stopped, from 1.
        column: usize,
    },
    /// JSON, but not of this page.
    OtherFormat,
    /// Written by a newer version of the page.
    Newer {
        /// Its schema.
        schema: u32,
    },
    /// No setup in it, or none that is one.
    NoSetups,
    /// More than [`MAX_SETUPS`].
    TooManySetups {
        /// How many.
        count: usize,
    },
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(f, "the file is empty"),
            Self::TooLarge { bytes } => write!(f, "{bytes} bytes, {MAX_BYTES} is the limit"),
            Self::NotJson { line, column } => {
                write!(f, "not JSON, or cut off, at line {line} column {column}")
            }
            Self::OtherFormat => write!(f, "not a file of this page"),
            Self::Newer { schema } => write!(f, "of the newer schema {schema}"),
            Self::NoSetups => write!(f, "no setup in the file"),
            Self::TooManySetups { count } => write!(f, "{count} setups, {MAX_SETUPS} is the limit"),
        }
    }
}

impl std::error::Error for FileError {}

/// The setups in the text of a file.
///
/// # Errors
///
/// [`FileError`] says what is wrong with it.
pub fn read_file(text: &str) -> Result<FileContent, FileError> {
    let mut object = object(text)?;
    let steps = steps(&object)?;
    let setups = match (object.remove("setups"), object.remove("setup")) {
        (Some(Value::Array(setups)), None) => setups,
        (None, Some(setup)) => vec![setup],
        _ => return Err(FileError::NoSetups),
    };
    let content = read_setups(setups, &steps)?;
    if content.setups.is_empty() { Err(FileError::NoSetups) } else { Ok(content) }
}

/// The setups of a list, which may be empty, pulled into bounds.
pub(super) fn read_setups(setups: Vec<Value>, steps: &[Step]) -> Result<FileContent, FileError> {
    if setups.len() > MAX_SETUPS {
        return Err(FileError::TooManySetups { count: setups.len() });
    }
    let mut content = FileContent::default();
    for (index, value) in setups.into_iter().enumerate() {
        let Some(read) = read_setup(value, steps, &format!("setups[{index}]")) else {
            let row = MisfitRow { number: index + 1, ..MisfitRow::default() };
            let part = "setup".to_owned();
            content.misfits.push(Misfit { part, row: Some(row), ..Misfit::default() });
            continue;
        };
        content.setups.push(read.setup);
        content.adjusted += read.adjusted;
        content.ignored.extend(read.ignored);
        content.misfits.extend(read.misfits);
    }
    content.ignored.truncate(MAX_IGNORED);
    Ok(content)
}

/// The text of a file with these setups, at most [`MAX_SETUPS`] of them.
///
/// # Errors
///
/// [`FileError::NoSetups`] and [`FileError::TooManySetups`]; such a file would not be read back.
pub fn write_file(setups: &[Setup]) -> Result<String, FileError> {
    if setups.is_empty() {
        return Err(FileError::NoSetups);
    }
    if setups.len() > MAX_SETUPS {
        return Err(FileError::TooManySetups { count: setups.len() });
    }
    Ok(format!("{}\n", setups_json(setups)))
}

/// A file with these setups as a value.
pub(super) fn setups_json(setups: &[Setup]) -> Value {
    let setups: Vec<Setup> = setups.iter().map(|setup| setup.clone().sanitised().0).collect();
    json!({ "format": FORMAT, "schema": SCHEMA, "setups": setups })
}

/// The top of a file or library of ours.
pub(super) fn object(text: &str) -> Result<Map<String, Value>, FileError> {
    if text.len() > MAX_BYTES {
        return Err(FileError::TooLarge { bytes: text.len() });
    }
    let text = text.trim_start_matches('\u{feff}').trim();
    if text.is_empty() {
        return Err(FileError::Empty);
    }
    let value: Value = serde_json::from_str(text)
        .map_err(|error| FileError::NotJson { line: error.line(), column: error.column() })?;
    match value {
        Value::Object(object) if object.get("format").and_then(Value::as_str) == Some(FORMAT) => {
            Ok(object)
        }
        _ => Err(FileError::OtherFormat),
    }
}

/// The way from the schema of a file or library to the present.
pub(super) fn steps(object: &Map<String, Value>) -> Result<Vec<Step>, FileError> {
    let schema = object.get("schema").and_then(Value::as_u64).ok_or(FileError::OtherFormat)?;
    migration::path(schema, STEPS, SCHEMA).map_err(|unknown| match unknown {
        Unknown::Newer(schema) => FileError::Newer { schema },
        Unknown::Never(_) => FileError::OtherFormat,
    })
}

/// One setup as read.
pub(super) struct ReadSetup {
    pub(super) setup: Setup,
    pub(super) adjusted: usize,
    pub(super) ignored: Vec<String>,
    pub(super) misfits: Vec<Misfit>,
}

/// One setup, brought to the present schema and into bounds; `None` for what is no setup.
pub(super) fn read_setup(mut value: Value, steps: &[Step], at: &str) -> Option<ReadSetup> {
    for step in steps {
        (step.apply)(&mut value);
    }
    if !value.is_object() {
        return None;
    }
    let mut mender = Mender::default();
    mender.mend(&mut value);
    let setup = Setup::deserialize(&value).ok()?;
    let understood = serde_json::to_value(&setup).ok()?;
    let mut ignored = Vec::new();
    unknown_fields(&value, &understood, at, &mut ignored);
    let (setup, adjusted) = setup.sanitised();
    let Mender { mut misfits, adjusted: mended, .. } = mender;
    misfits.iter_mut().for_each(|misfit| misfit.setup.clone_from(&setup.name));
    Some(ReadSetup { setup, adjusted: adjusted + mended, ignored, misfits })
}

/// Names the fields of `read` that `understood` has not.
fn unknown_fields(read: &Value, understood: &Value, at: &str, ignored: &mut Vec<String>) {
    if ignored.len() >= MAX_IGNORED {
        return;
    }
    match (read, understood) {
        (Value::Object(read), Value::Object(understood)) => {
            for (name, value) in read {
                let path = format!("{at}.{}", name.chars().take(40).collect::<String>());
                match understood.get(name) {
                    Some(same) => unknown_fields(value, same, &path, ignored),
                    None => ignored.push(path),
                }
            }
        }
        (Value::Array(read), Value::Array(understood)) => {
            for (index, (value, same)) in read.iter().zip(understood).enumerate() {
                unknown_fields(value, same, &format!("{at}[{index}]"), ignored);
            }
        }
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::limits::{
        MAX_ARRAYS, MAX_CABLES, MAX_LOADS, MAX_NAME_CHARS, MAX_OTHER, MAX_READINGS,
    };
    use crate::model::{
        CableRun, DayPlan, Load, MonthlySun, OtherSource, Reading, ReadingKind, SolarArray, Usage,
        Weather,
    };
    use crate::units::{Hours, MilliAmpHours, Volts, WattHoursPerSquareMetre};

    fn wrap(inner: &str) -> String {
        format!("{{\"format\":\"nightbank\",\"schema\":1,{inner}}}")
    }

    #[test]
    fn setups_come_back() {
        let setups = [
            Setup { name: "A \"quoted\" \\ name – ä".to_owned(), ..Setup::default() },
            Setup { loads: vec![Load::default()], ..Setup::default() },
        ];
        let text = write_file(&setups).expect("writes");
        let content = read_file(&text).expect("reads");
        assert_eq!(content.setups, setups);
        assert_eq!((content.adjusted, content.ignored.len()), (0, 0));
        assert_eq!(read_file(&format!("\u{feff}{text}")).expect("reads").setups, setups);
    }

    #[test]
    fn one_setup_may_stand_alone_and_fields_may_be_left_out() {
        let content = read_file(&wrap(r#""setup":{"bank":{"capacity_20h":95}}"#)).expect("reads");
        assert_eq!(content.setups.len(), 1);
        assert_eq!(content.setups[0].bank.capacity_20h.0, 95.0);
    }

    #[test]
    fn each_fault_has_its_name() {
        let wrong = |text: &str| read_file(text).expect_err("refused");
        assert_eq!(wrong(" \n"), FileError::Empty);
        assert_eq!(wrong("{\"format\":"), FileError::NotJson { line: 1, column: 10 });
        assert_eq!(wrong("hello"), FileError::NotJson { line: 1, column: 1 });
        assert_eq!(wrong("{}"), FileError::OtherFormat);
        assert_eq!(wrong("[1]"), FileError::OtherFormat);
        assert_eq!(wrong("{\"format\":\"nightbank\"}"), FileError::OtherFormat);
        assert_eq!(wrong("{\"format\":\"other\",\"schema\":1}"), FileError::OtherFormat);
        let newer = "{\"format\":\"nightbank\",\"schema\":2,\"houses\":[]}";
        assert_eq!(wrong(newer), FileError::Newer { schema: 2 });
        assert_eq!(wrong(&wrap("\"setups\":[]")), FileError::NoSetups);
        assert_eq!(wrong(&wrap("\"setups\":7")), FileError::NoSetups);
        let many = format!("\"setups\":[{}]", vec!["{}"; 17].join(","));
        assert_eq!(wrong(&wrap(&many)), FileError::TooManySetups { count: 17 });
        assert_eq!(wrong(&" ".repeat(MAX_BYTES + 1)), FileError::TooLarge { bytes: MAX_BYTES + 1 });
        for text in [r#""setups":[[]]"#, r#""setups":[null,7]"#, r#""setup":"much""#] {
            assert_eq!(wrong(&wrap(text)), FileError::NoSetups, "{text}");
        }
        let deep = format!("{}{}", "[".repeat(100_000), "]".repeat(100_000));
        assert!(matches!(wrong(&deep), FileError::NotJson { .. }));
    }

    #[test]
    fn numbers_are_pulled_in_and_unknown_fields_named() {
        let text = wrap(
            r#""setups":[{"bank":{"capacity_20h":-5,"colour":"red"},"loads":[{"wheels":4}]}]"#,
        );
        let content = read_file(&text).expect("reads");
        assert_eq!(content.setups[0].bank.capacity_20h.0, 1.0);
        assert_eq!(content.adjusted, 1);
        assert_eq!(content.ignored, ["setups[0].bank.colour", "setups[0].loads[0].wheels"]);
    }

    /// The largest setup there can be, `MAX_SETUPS` times, is a file that is read back.
    #[test]
    fn the_largest_library_fits_a_file() {
        let name = "\u{1f690}".repeat(MAX_NAME_CHARS);
        let long = 0.123_456_789_012_345_67;
        let mut setup = Setup { name: name.clone(), ..Setup::default() };
        let usage = Usage::Charges {
            every_days: 1.0 + long,
            cell: MilliAmpHours(99_999.0 + long),
            cell_volts: Volts(3.0 + long),
            charger_frac: 0.5 + long,
        };
        let load = Load {
            name: name.clone(),
            appliance: Some(60_000),
            usage,
            spread_frac: Some(long),
            surge_factor: 1.0 + long,
            cut_out: Some(crate::model::CutOut { off: Volts(10.0 + long), on: Volts(11.0 + long) }),
            ..Load::default()
        };
        setup.loads =
            (0..MAX_LOADS as u32).map(|id| Load { id: u32::MAX - id, ..load.clone() }).collect();
        setup.solar = vec![SolarArray { name: name.clone(), ..SolarArray::default() }; MAX_ARRAYS];
        setup.other = vec![OtherSource::default(); MAX_OTHER];
        setup.cables = vec![CableRun { name, ..CableRun::default() }; MAX_CABLES];
        let kind = ReadingKind::Voltage { volts: Volts(12.0 + long), rested: Hours(10.0 + long) };
        setup.readings = vec![Reading { at: Hours(100.0 + long), kind }; MAX_READINGS];
        let sun = WattHoursPerSquareMetre(4321.0 + long);
        let weather = Weather::Sun { per_day: sun };
        let day = DayPlan { weather, drive_minutes: Some(100.0 + long), hook_up: Some(false) };
        setup.trip.days = vec![day; 61];
        setup.trip.own_sun = Some(MonthlySun([sun; 12]));
        let text = write_file(&vec![setup.clone(); MAX_SETUPS]).expect("writes");
        assert_eq!(read_file(&text).expect("reads").setups, vec![setup; MAX_SETUPS]);
    }
}
