//! Reads a setup of which single fields do not fit: of the wrong kind, unknown, incomplete.
//!
//! Serde stops at the first such field. So where a setup does not read, its fields are tried one by one, from the
//! outside in, each alone in a setup that is otherwise as usual: what fits stays, what does not gives way.
//!
//! | what does not fit | what takes its place |
//! |---|---|
//! | a field | its usual value; in a load of the catalogue, the catalogue's |
//! | a figure of a choice, e.g. the minutes of `daily` | the usual choice: its figures belong together |
//! | a whole number with a fraction, or out of reach | the nearest within bounds |
//! | the id of a load | one that no load has |
//! | a day of the trip | a day that follows the plan: days are told by their place in the list |
//! | any figure of a cable or a reading | nothing, the row is left out: nobody shall be told that a fuse fits a guess |
//! | a row of another list | nothing, its neighbours stay |
//!
//! The same reader is asked again and again, for `serde_path_to_error` would bring all of it into the page a second time.

use crate::model::catalogue::appliance;
use crate::model::{Load, Setup, SystemVoltage};
use serde::Deserialize;
use serde_json::{Map, Value, json};

/// A field that did not fit, and where.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Misfit {
    /// Name of the setup.
    pub setup: String,
    /// Its field, e.g. `bank`, `loads`; `setup` for one that is no setup at all.
    pub part: String,
    /// The row, where the part is a list or holds one.
    pub row: Option<MisfitRow>,
    /// The field in it with its way, as in a file: `capacity_20h`, `place.latitude`. Empty where the whole did not fit.
    pub field: String,
}

/// A row of a list, as it was written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct MisfitRow {
    /// Its place in the list, from 1.
    pub number: usize,
    /// Its name; empty where it has none.
    pub name: String,
    /// Number in the catalogue, of a load.
    pub appliance: Option<u16>,
}

/// Lists whose rows stand for themselves; in any other, such as the sun of twelve months, each row needs the others.
const LISTS: [&str; 6] = ["loads", "solar", "other", "readings", "cables", "days"];

/// Rows of a list that are tried one by one; more than any list of a setup may have.
const MOST_ROWS: usize = 256;

/// The deepest field of a setup, e.g. `loads[0].usage.duty.cycle.fixed.frac`, has seven steps.
const DEEPEST: usize = 8;

#[derive(Debug)]
enum Step {
    Field(String),
    Row,
}

/// Takes out of a setup what does not fit.
#[derive(Default)]
pub(super) struct Mender {
    path: Vec<Step>,
    row: Option<MisfitRow>,
    system: SystemVoltage,
    /// What did not fit; the names of the setup are still empty.
    pub(super) misfits: Vec<Misfit>,
    /// Numbers that were brought to the nearest that fits, and rows that no list has room for.
    pub(super) adjusted: usize,
}

impl Mender {
    /// Leaves in `setup`, an object, what fits.
    pub(super) fn mend(&mut self, setup: &mut Value) {
        self.system = SystemVoltage::deserialize(&setup["bank"]["system"]).unwrap_or_default();
        self.fits_mended(setup);
    }

    /// Whether `value` fits where the path leads, after what does not was taken out of it.
    fn fits_mended(&mut self, value: &mut Value) -> bool {
        if self.read(value).is_some() {
            return true;
        }
        if let Some(nearest) = self.nearest(value) {
            *value = nearest;
            self.adjusted += 1;
            return true;
        }
        if self.path.len() >= DEEPEST {
            return false;
        }
        let (misfits, adjusted) = (self.misfits.len(), self.adjusted);
        match value {
            Value::Object(fields) => self.mend_fields(fields),
            Value::Array(rows) if LISTS.contains(&self.last_field()) => self.mend_rows(rows),
            _ => return false,
        }
        let fits = self.read(value).is_some();
        if !fits {
            // The whole gives way: it counts once.
            self.misfits.truncate(misfits);
            self.adjusted = adjusted;
        }
        fits
    }

    fn mend_fields(&mut self, fields: &mut Map<String, Value>) {
        let usual = self.usual_load(fields);
        fields.retain(|name, value| {
            self.path.push(Step::Field(name.clone()));
            let fits = self.fits_mended(value);
            if !fits {
                self.note();
            }
            self.path.pop();
            match usual.get(name) {
                Some(usual) if !fits => {
                    *value = usual.clone();
                    true
                }
                _ => fits,
            }
        });
    }

    fn mend_rows(&mut self, rows: &mut Vec<Value>) {
        self.adjusted += rows.len().saturating_sub(MOST_ROWS);
        rows.truncate(MOST_ROWS);
        let list = self.last_field().to_owned();
        let ids = rows.iter().filter_map(|row| u32::deserialize(row.get("id")?).ok());
        let mut fresh = ids.max().unwrap_or(0);
        let mut number = 0;
        rows.retain_mut(|row| {
            number += 1;
            self.row = Some(MisfitRow::of(number, row));
            if list == "loads" && row.get("id").is_some_and(|id| u32::deserialize(id).is_err()) {
                fresh = fresh.wrapping_add(1);
                self.note_field("id");
                row["id"] = fresh.into();
            }
            self.path.push(Step::Row);
            let fits = match list.as_str() {
                "cables" | "readings" => self.read(row).is_some(),
                _ => self.fits_mended(row),
            };
            if !fits {
                self.note();
            }
            self.path.pop();
            self.row = None;
            if !fits && list == "days" {
                *row = json!({});
                return true;
            }
            fits
        });
    }

    /// The setup with nothing but `value` at the end of the path; `None` where it does not fit there.
    fn read(&self, value: &Value) -> Option<Setup> {
        let whole = self.path.iter().rev().fold(value.clone(), |inner, step| match step {
            Step::Field(name) => json!({ name.as_str(): inner }),
            Step::Row => Value::Array(vec![inner]),
        });
        Setup::deserialize(&whole).ok()
    }

    /// The nearest number within bounds, where a whole number is asked for. What names something has none.
    fn nearest(&self, value: &Value) -> Option<Value> {
        let number = value.as_f64()?;
        if ["id", "appliance"].contains(&self.last_field()) {
            return None;
        }
        let way: String = self
            .path
            .iter()
            .map(|step| match step {
                Step::Field(name) => format!("/{name}"),
                Step::Row => "/0".to_owned(),
            })
            .collect();
        // Of each kind of whole numbers that fields have; the bounds are narrower.
        let widths = [f64::INFINITY, 32_767.0, 255.0];
        let signed = widths.map(|most| number.clamp(-most, most));
        let unsigned = widths.map(|most| number.clamp(0.0, most));
        signed
            .into_iter()
            .chain(unsigned)
            .find_map(|number| self.read(&Value::from(number.round() as i64)))
            .and_then(|setup| {
                let kept = serde_json::to_value(setup.sanitised().0).ok()?;
                kept.pointer(&way).cloned()
            })
    }

    /// The row of the catalogue with the number that a load has; nothing where these are no fields of a load.
    fn usual_load(&self, fields: &Map<String, Value>) -> Map<String, Value> {
        let load =
            matches!(self.path.as_slice(), [Step::Field(list), Step::Row] if list == "loads");
        let number = fields.get("appliance").and_then(|number| u16::deserialize(number).ok());
        let usual = number.filter(|_| load).and_then(appliance);
        let usual: Option<Load> = usual.map(|appliance| appliance.to_load(0, self.system));
        match usual.map(serde_json::to_value) {
            Some(Ok(Value::Object(fields))) => fields,
            _ => Map::new(),
        }
    }

    fn last_field(&self) -> &str {
        match self.path.last() {
            Some(Step::Field(name)) => name,
            _ => "",
        }
    }

    fn note(&mut self) {
        let mut fields = self.path.iter().filter_map(|step| match step {
            Step::Field(name) => Some(name.as_str()),
            Step::Row => None,
        });
        let part = fields.next().unwrap_or_default().to_owned();
        let field = fields.collect::<Vec<_>>().join(".");
        let row = self.row.clone();
        self.misfits.push(Misfit { setup: String::new(), part, row, field });
    }

    fn note_field(&mut self, name: &str) {
        self.path.push(Step::Field(name.to_owned()));
        self.note();
        self.path.pop();
    }
}

impl MisfitRow {
    fn of(number: usize, row: &Value) -> Self {
        let name = row.get("name").and_then(Value::as_str).unwrap_or_default();
        // Its bounds are those of any name.
        let name = Setup { name: name.to_owned(), ..Setup::default() }.sanitised().0.name;
        let appliance = row.get("appliance").and_then(|number| u16::deserialize(number).ok());
        Self { number, name, appliance }
    }
}
