//! A field added to a setup is carried, described and compared: each test here fails until it is.
//!
//! That it has bounds is asked for by the compiler (`sanitise` of each part names every field), that
//! a link carries it by `link_roundtrip`, with the setups of `common`, which name every field too.

use crate::common;

use common::sample;
use nightbank::advice::compare::differences::differences;
use nightbank::forecast::demand::LoadEnergy;
use nightbank::model::{CableRun, DayPlan, Load, OtherSource, Setup, SolarArray};
use nightbank::units::Celsius;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// One row in each list, all as usual.
fn usual() -> Setup {
    let mut setup = Setup {
        loads: vec![Load::default()],
        solar: vec![SolarArray::default()],
        other: vec![OtherSource::default()],
        cables: vec![CableRun::default()],
        ..Setup::default()
    };
    setup.trip.days = vec![DayPlan::default()];
    setup
}

/// A choice with figures is an object with a single field; it is one value here.
fn is_struct(value: &Value) -> bool {
    value.as_object().is_some_and(|fields| fields.len() > 1)
}

/// The values of each field, lists without their indices: `bank.chemistry`, `solar[].peak`.
fn fields(value: &Value, path: &str, found: &mut BTreeMap<String, BTreeSet<String>>) {
    match value {
        Value::Object(own) if is_struct(value) || path.is_empty() => {
            for (name, value) in own {
                let path = if path.is_empty() { name.clone() } else { format!("{path}.{name}") };
                fields(value, &path, found);
            }
        }
        Value::Array(rows) if rows.iter().any(is_struct) => {
            for row in rows {
                fields(row, &format!("{path}[]"), found);
            }
        }
        leaf => {
            found.entry(path.to_owned()).or_default().insert(leaf.to_string());
        }
    }
}

fn fields_of(setup: &Setup) -> BTreeMap<String, BTreeSet<String>> {
    let mut found = BTreeMap::new();
    fields(&serde_json::to_value(setup).expect("plain data"), "", &mut found);
    found
}

#[test]
fn the_sample_of_everything_takes_each_field_off_its_usual_value() {
    let (usual, full) = (fields_of(&usual()), fields_of(&sample::everything()));
    assert!(usual.len() > 90, "{}", usual.len());
    let mut as_usual = Vec::new();
    for (field, values) in usual.iter().filter(|(field, _)| *field != "readings") {
        let inside = format!("{field}.");
        let taken = full.get(field).is_some_and(|taken| !taken.is_subset(values));
        // Or a value that has fields of its own where it is there at all, as a cut-out.
        if !taken && !full.keys().any(|other| other.starts_with(&inside)) {
            as_usual.push(field);
        }
    }
    assert!(as_usual.is_empty(), "{as_usual:?}");
}

/// Every name of a field and of a choice in a value.
fn names(value: &Value, found: &mut BTreeSet<String>) {
    match value {
        Value::Object(own) => {
            for (name, value) in own {
                found.insert(name.clone());
                names(value, found);
            }
        }
        Value::Array(rows) => rows.iter().for_each(|row| names(row, found)),
        _ => {}
    }
}

#[test]
fn the_file_format_names_every_field() {
    let format = include_str!("../src/store/FORMAT.md");
    let mut found = BTreeSet::new();
    for setup in [usual(), sample::everything()] {
        names(&serde_json::to_value(setup).expect("plain data"), &mut found);
    }
    assert!(found.len() > 100, "{}", found.len());
    let missing: Vec<&String> = found
        .iter()
        .filter(|name| {
            !format.contains(&format!("`{name}`")) && !format.contains(&format!("`\"{name}\"`"))
        })
        .collect();
    assert!(missing.is_empty(), "not in store/FORMAT.md: {missing:?}");
}

/// Fields that no line of its own tells when setups are compared, and why.
const NOT_COMPARED: [(&str, &str); 19] = [
    ("name", "heads the column"),
    ("example", "says where the setup is from"),
    ("vehicle", "told as energy of what heats it"),
    ("bank.block_volts", "changes nothing that is worked out"),
    ("bank.cold_charge_allowed", "told among the reasons of the battery"),
    ("bank.cable", "told among the reasons of the battery, as lowest voltage"),
    ("inverter.surge", "changes nothing of the nights"),
    ("inverter.full_load_frac", "told as energy of the appliances behind it"),
    ("inverter.cut_out", "told among the reasons of the battery, as time cut out"),
    ("driving.from_min", "a time of day"),
    ("hook_up.from_min", "a time of day"),
    ("hook_up.hours", "a time of day"),
    ("hook_up.pass_through", "told as nights"),
    ("trip.arrival_hour", "a time of day"),
    ("trip.utc_offset_min", "a time of day"),
    ("trip.place.altitude", "goes with the place"),
    ("trip.own_sun", "told as nights"),
    ("trip.ground_albedo_frac", "told as nights"),
    ("correction.restart", "told as level on arrival"),
];

#[test]
fn comparing_tells_each_field_or_has_a_reason_not_to() {
    let mut one = Setup::default();
    one.inverter.fitted = true;
    one.driving.fitted = true;
    one.driving.every.0 = 2;
    one.hook_up.fitted = true;
    one.hook_up.every.0 = 7;
    let full = serde_json::to_value(sample::everything()).expect("plain data");
    let plain = serde_json::to_value(&one).expect("plain data");
    let mut silent = BTreeSet::new();
    let mut tried = 0;
    let parts = ["bank", "inverter", "driving", "hook_up", "trip", "correction"];
    let mut paths: Vec<String> = ["/name", "/example", "/vehicle"].map(str::to_owned).to_vec();
    for part in parts {
        let own = plain[part].as_object().expect("a part");
        for (name, value) in own {
            match value.as_object().filter(|_| is_struct(value)) {
                Some(nested) => {
                    paths.extend(nested.keys().map(|inner| format!("/{part}/{name}/{inner}")));
                }
                None => paths.push(format!("/{part}/{name}")),
            }
        }
    }
    for path in paths {
        let mut changed = plain.clone();
        let mut value = full.pointer(&path).expect("in the sample").clone();
        let field = changed.pointer_mut(&path).expect("a field");
        if *field == value && value.is_boolean() {
            value = Value::Bool(false);
        }
        if path == "/trip/days" || *field == value {
            continue;
        }
        *field = value;
        tried += 1;
        let two: Setup = serde_json::from_value(changed).expect("a setup");
        let told = [&one, &two].map(|setup| (setup, LoadEnergy::of(setup, &[Celsius(15.0); 24])));
        if differences(&told).is_empty() {
            silent.insert(path[1..].replace('/', "."));
        }
    }
    assert!(tried > 40, "{tried}");
    let listed: BTreeSet<String> =
        NOT_COMPARED.iter().map(|(field, _)| (*field).to_owned()).collect();
    assert_eq!(silent, listed);
}
