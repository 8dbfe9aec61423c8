//! One bad field costs no more than itself: every field of a full setup is replaced by what does not belong there.

use crate::common;

use common::sample;
use nightbank::model::catalogue::appliance;
use nightbank::model::{
    Chemistry, DayPlan, Load, OtherSource, Setup, SolarArray, SystemVoltage, Usage,
};
use nightbank::store::{
    FileError, Library, Loaded, Notes, TabMemory, read_copies, read_file, read_library,
};
use serde_json::{Value, json};

fn file(setup: &Value) -> String {
    json!({ "format": "nightbank", "schema": 1, "setups": [setup] }).to_string()
}

/// The way to every value of a setup, as JSON pointers, from the outside in.
fn ways(value: &Value, way: &str, found: &mut Vec<String>) {
    if !way.is_empty() {
        found.push(way.to_owned());
    }
    match value {
        Value::Object(fields) => {
            fields.iter().for_each(|(name, value)| ways(value, &format!("{way}/{name}"), found));
        }
        Value::Array(rows) => {
            let rows = rows.iter().enumerate();
            rows.for_each(|(index, value)| ways(value, &format!("{way}/{index}"), found));
        }
        _ => {}
    }
}

/// What gives way where the value at the end of `way` does not fit, by hand: a row of a list as a whole where it stands
/// for something, else the field; what lies deeper belongs to a choice.
fn unit(way: &str) -> String {
    let steps: Vec<&str> = way[1..].split('/').collect();
    let most = match steps[..] {
        ["cables" | "readings", ..] => 2,
        ["solar", _, "shade", ..] | ["trip", "days", ..] => 4,
        ["loads" | "solar" | "other", ..] | ["trip", "place", ..] => 3,
        _ => 2,
    };
    format!("/{}", steps[..steps.len().min(most)].join("/"))
}

/// The usual value of a field of a row or a part.
fn usual(full: &Value, unit: &str) -> Option<Value> {
    let steps: Vec<&str> = unit[1..].split('/').collect();
    let json = |setup: Setup| serde_json::to_value(setup).expect("plain data");
    match steps[..] {
        ["loads", row, field] => {
            let number = full.pointer(&format!("/loads/{row}/appliance")).and_then(Value::as_u64);
            let number = number.filter(|_| field != "appliance").map(|number| number as u16);
            let system = full["bank"]["system"] == "v24";
            let system = if system { SystemVoltage::V24 } else { SystemVoltage::V12 };
            let listed = number.map(|n| appliance(n).expect("listed").to_load(0, system));
            let load = listed.unwrap_or_default();
            serde_json::to_value(load).ok()?.get(field).cloned()
        }
        ["solar", _, ref rest @ ..] if !rest.is_empty() => {
            let setup = Setup { solar: vec![SolarArray::default()], ..Setup::default() };
            json(setup).pointer(&format!("/solar/0/{}", rest.join("/"))).cloned()
        }
        ["other", _, field] => {
            let setup = Setup { other: vec![OtherSource::default()], ..Setup::default() };
            json(setup).pointer(&format!("/other/0/{field}")).cloned()
        }
        ["trip", "days", _, ref rest @ ..] => {
            let day = serde_json::to_value(DayPlan::default()).ok()?;
            if rest.is_empty() { Some(day) } else { day.get(rest[0]).cloned() }
        }
        ["loads" | "solar" | "other" | "cables" | "readings", _] => None,
        _ => json(Setup::default()).pointer(unit).cloned(),
    }
}

/// Takes the value at the end of `way` out.
fn take_out(setup: &mut Value, way: &str) {
    let (outer, last) = way.rsplit_once('/').expect("a way");
    match setup.pointer_mut(outer) {
        Some(Value::Object(fields)) => _ = fields.remove(last),
        Some(Value::Array(rows)) => _ = rows.remove(last.parse().expect("a row")),
        _ => panic!("{way}"),
    }
}

#[test]
fn every_field_may_be_wrong_and_all_others_stay() {
    let (full, changed) = sample::everything().sanitised();
    assert_eq!(changed, 0);
    let full = serde_json::to_value(full).expect("plain data");
    let mut all = Vec::new();
    ways(&full, "", &mut all);
    // Of most loads the way they are used is what differs.
    let whole = ["/loads/0/", "/loads/3/", "/loads/8/"];
    all.retain(|way| {
        !way.starts_with("/loads/")
            || way.contains("/usage")
            || whole.iter().any(|row| way.starts_with(row))
    });
    let wrong = [
        json!(null),
        json!("much"),
        json!(true),
        json!(7.5),
        json!(-1e9),
        json!(1e300),
        json!([]),
        json!([true]),
        json!({}),
        json!({ "much": [{}] }),
    ];
    let (mut gave_way, mut nearest, mut fitted) = (0, 0, 0);
    for way in &all {
        for wrong in &wrong {
            if way == "/trip/days" && wrong.is_array() {
                // A day that is none stays as one that follows the plan: the next test.
                continue;
            }
            let case = || format!("{way} = {wrong}");
            let mut changed = full.clone();
            *changed.pointer_mut(way).expect("a way") = wrong.clone();
            let content = read_file(&file(&changed)).unwrap_or_else(|e| panic!("{}: {e}", case()));
            assert_eq!(content.setups.len(), 1, "{}", case());
            let read = &content.setups[0];
            assert_eq!(read.clone().sanitised(), (read.clone(), 0), "{}", case());
            if let Ok(setup) = serde_json::from_value::<Setup>(changed.clone()) {
                let (setup, adjusted) = setup.sanitised();
                assert_eq!((read, content.adjusted), (&setup, adjusted), "{}", case());
                assert_eq!(content.misfits, [], "{}", case());
                fitted += 1;
                continue;
            }
            // All but what had to give way is as it was.
            let unit = unit(way);
            let json = serde_json::to_value(read).expect("plain data");
            let mut expected = full.clone();
            let id = unit.starts_with("/loads/") && unit.ends_with("/id");
            match usual(&full, &unit) {
                _ if content.misfits.is_empty() => {
                    let before = full.pointer(way).expect("a way");
                    assert!(
                        wrong.is_number() && (before.is_i64() || before.is_u64()),
                        "{}",
                        case()
                    );
                    assert_eq!((&unit, content.adjusted), (way, 1), "{}", case());
                    *expected.pointer_mut(way).expect("a way") =
                        json.pointer(way).expect("a way").clone();
                    nearest += 1;
                }
                Some(_) if id => {
                    let fresh = json.pointer(&unit).expect("an id");
                    let loads = json["loads"].as_array().expect("loads");
                    let same = loads.iter().filter(|load| load["id"] == *fresh).count();
                    assert_eq!(same, 1, "{}", case());
                    *expected.pointer_mut(&unit).expect("a unit") = fresh.clone();
                    gave_way += 1;
                }
                Some(usual) => {
                    *expected.pointer_mut(&unit).expect("a unit") = usual;
                    gave_way += 1;
                }
                None => {
                    take_out(&mut expected, &unit);
                    gave_way += 1;
                }
            }
            let expected: Setup = serde_json::from_value(expected).expect("a setup");
            let (expected, pulled_in) = expected.sanitised();
            assert_eq!(*read, expected, "{}", case());
            if !content.misfits.is_empty() {
                assert_eq!((content.misfits.len(), content.adjusted), (1, pulled_in), "{}", case());
                let told = &content.misfits[0];
                let part = way[1..].split('/').next().expect("a part");
                assert_eq!((told.part.as_str(), &told.setup), (part, &read.name), "{}", case());
                let last = unit.rsplit('/').next().expect("a step");
                let field = if unit == format!("/{part}") || last.parse::<usize>().is_ok() {
                    told.field.is_empty() || told.field == "days"
                } else {
                    told.field.ends_with(last)
                };
                assert!(field, "{}: {told:?}", case());
            }
        }
    }
    println!("{gave_way} gave way, {nearest} brought to the nearest, {fitted} fitted");
    assert!(gave_way > 1500 && nearest > 30 && fitted > 300, "{gave_way} {nearest} {fitted}");
}

/// Of several faults each is told, with the row it stands in.
#[test]
fn several_faults_are_told_each_by_its_place() {
    let mut full = serde_json::to_value(sample::typical(3)).expect("plain data");
    full["bank"]["chemistry"] = json!("stone");
    full["loads"][1]["usage"] = json!({ "every_evening": {} });
    full["loads"][2]["name"] = json!(["no name"]);
    full["trip"]["nights"] = json!(2.5);
    full["trip"]["days"][1] = json!("rain");
    full["cables"][0]["amps"] = json!("thirty");
    let content = read_file(&file(&full)).expect("reads");
    let told: Vec<(&str, usize, &str)> = content
        .misfits
        .iter()
        .map(|m| (m.part.as_str(), m.row.as_ref().map_or(0, |row| row.number), m.field.as_str()))
        .collect();
    assert_eq!(
        told,
        [
            ("bank", 0, "chemistry"),
            ("cables", 1, ""),
            ("loads", 2, "usage"),
            ("loads", 3, "name"),
            ("trip", 2, "days"),
        ]
    );
    assert_eq!(content.misfits[1].row.as_ref().map(|row| row.name.as_str()), Some("Fridge"));
    let load = content.misfits[2].row.as_ref().expect("a row");
    assert_eq!(load.appliance, sample::typical(3).loads[1].appliance);
    let setup = &content.setups[0];
    assert_eq!((content.adjusted, setup.trip.nights), (1, 3));
    assert_eq!(setup.bank.chemistry, Chemistry::default());
    assert_eq!(setup.trip.days.len(), sample::typical(3).trip.days.len());
    assert_eq!(setup.trip.days[1], DayPlan::default());
    assert_eq!(setup.cables, []);
}

/// A load that is not in the catalogue has nothing better than the usual of any load.
#[test]
fn a_load_takes_the_figures_of_the_catalogue_where_its_own_do_not_fit() {
    let of_its_own = json!({ "name": "Cold box", "draw": { "power": {} }, "usage": 7 });
    let mut fridge = of_its_own.clone();
    fridge["appliance"] = json!(1);
    let setup = json!({ "loads": [of_its_own, fridge] });
    let read = read_file(&file(&setup)).expect("reads").setups.remove(0);
    let listed = appliance(1).expect("the fridge").to_load(0, SystemVoltage::V12);
    assert_eq!((read.loads[1].draw, read.loads[1].usage), (listed.draw, listed.usage));
    assert_ne!(listed.usage, Usage::default());
    assert_eq!((read.loads[0].draw, read.loads[0].usage), (Load::default().draw, Usage::default()));
}

/// What stands in the list and is no setup is left out and told; with nothing left there is none.
#[test]
fn what_is_no_setup_is_left_out_of_a_file() {
    let text =
        |setups: Value| json!({ "format": "nightbank", "schema": 1, "setups": setups }).to_string();
    let content = read_file(&text(json!([{ "name": "Van" }, null, []]))).expect("reads");
    assert_eq!(content.setups.len(), 1);
    let told: Vec<_> = content
        .misfits
        .iter()
        .map(|m| (m.part.as_str(), m.row.as_ref().map(|r| r.number)))
        .collect();
    assert_eq!(told, [("setup", Some(2)), ("setup", Some(3))]);
    assert_eq!(read_file(&text(json!([null, "Van"]))), Err(FileError::NoSetups));
    let copies = read_copies(&text(json!([null, { "name": "Van" }]))).expect("reads");
    assert_eq!((copies.setups.len(), copies.misfits.len()), (1, 1));
}

/// The stored list: the entry stays, what it was is handed back, and the others are not touched.
#[test]
fn a_stored_setup_with_a_bad_figure_stays_and_is_handed_back_as_it_was() {
    let entry = |id: u64, setup: Value| json!({ "id": id, "changed_at_ms": 5, "setup": setup });
    let bad = entry(7, json!({ "name": "Van", "bank": { "capacity_20h": "95", "parallel": 2 } }));
    let entries = [bad.clone(), entry(9, json!({ "name": "Caravan" }))];
    let library = json!({ "format": "nightbank", "schema": 1, "current": 7, "entries": entries });
    let Loaded::Ready { library, notes } = read_library(&library.to_string()) else {
        panic!("not read")
    };
    let names: Vec<&str> = library.entries().iter().map(|e| e.setup.name.as_str()).collect();
    assert_eq!(names, ["Van", "Caravan"]);
    let van = library.current().expect("on screen");
    assert_eq!((van.id.0, van.changed_at_ms, van.setup.bank.parallel), (7, 5, 2));
    assert_eq!(van.setup.bank.capacity_20h, Setup::default().bank.capacity_20h);
    assert_eq!((notes.quarantined, notes.misfits.len()), (vec![bad.to_string()], 1));
}

/// Another tab's text that did not read whole is written anew, once: or both would find the same for ever.
#[test]
fn what_another_tab_stored_and_did_not_fit_is_written_anew_once() {
    let entry = json!({ "id": 7, "changed_at_ms": 5, "setup": { "name": "Van", "bank": 7 } });
    let text = json!({ "format": "nightbank", "schema": 1, "entries": [entry] }).to_string();
    let mut memory = TabMemory::new(1, Library::default(), None, false);
    let taken = memory.take_in(text.clone(), &Library::default());
    assert_eq!((taken.misfits.len(), taken.unread), (1, vec![entry.to_string()]));
    let ours = taken.library.expect("reads");
    assert_eq!(ours.entries()[0].setup.name, "Van");
    assert!(memory.knows(&text) && memory.lacks(&ours) && memory.has_news(&ours));
    let refused = memory.write(&ours, |_| Err("full"));
    assert!(refused.is_err() && memory.lacks(&ours));
    let mut kept = String::new();
    memory
        .write(&ours, |json| -> Result<(), ()> {
            kept = json.to_string();
            Ok(())
        })
        .expect("room");
    assert!(!memory.lacks(&ours) && !memory.has_news(&ours));
    let Loaded::Ready { library, notes } = read_library(&kept) else { panic!("{kept}") };
    assert_eq!((library.entries(), notes), (ours.entries(), Notes::default()));
}

/// The work grows with the text, not with its square: a file as large as may be, in which nothing fits.
#[test]
fn a_file_full_of_faults_reads_in_bounded_work() {
    let row =
        json!({ "usage": { "daily": { "minutes": [[[[[[[[7]]]]]]]] } }, "draw": 7, "name": 7 });
    let rows = vec![row; 10_000];
    let whole =
        json!({ "loads": rows, "solar": vec![7; 10_000], "trip": { "days": vec![7; 10_000] } });
    let content = read_file(&file(&whole)).expect("reads");
    assert_eq!(content.setups[0].loads.len(), 64);
    assert!(content.misfits.len() <= 3 * 256 + 2 * 256, "{}", content.misfits.len());
    assert!(content.adjusted >= 3 * (10_000 - 256), "{}", content.adjusted);
}
