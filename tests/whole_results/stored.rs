//! What becomes of setups in links, files and storage.

use super::kept::Report;
use nightbank::link;
use nightbank::model::Setup;
use nightbank::model::taking::Parts;
use nightbank::store::{
    Library, Loaded, TabMemory, copies_json, read_copies, read_file, read_library, write_file,
    write_library,
};
use nightbank::units::Degrees;
use serde_json::Value;
use std::collections::BTreeSet;

/// A link, a file, a stored library and copies of the setups, and what is read back.
pub fn kept(setups: &[Setup]) -> Report {
    let mut report = Report::default();
    for setup in setups {
        report.part(&setup.name);
        let text = link::encode(setup).expect("short enough");
        report.text("link", &text);
        let opened = link::open(&text).expect("opens");
        report.say("out of the link", &(opened.adjusted, opened.setup == *setup));
        assert_eq!(opened.setup, link::quantised(setup), "{}", setup.name);
    }
    report.part("A file");
    let file = write_file(setups).expect("some setups");
    report.json("file", &serde_json::from_str(&file).expect("JSON"));
    assert_eq!(read_file(&file).expect("reads").setups, setups);
    let copies = copies_json(setups).to_string();
    assert_eq!(read_copies(&copies).expect("reads").setups, setups);
    report.part("Storage");
    let mut library = Library::default();
    for (index, setup) in setups.iter().enumerate() {
        let id = library.add(setup.clone(), 1_000 * (index as u64 + 1)).expect("room");
        let _ = library.duplicate(id, 7_000 + index as u64).expect("room");
    }
    let gone = library.entries()[1].id;
    let deleted = library.delete(gone).expect("there");
    report.text("deleted", deleted.name());
    let text = write_library(&library);
    let mut stored: Value = serde_json::from_str(&text).expect("JSON");
    // The setups stand above.
    for entry in stored["entries"].as_array_mut().expect("entries") {
        let name = entry["setup"]["name"].take();
        entry["setup"] = name;
    }
    report.json("stored", &stored);
    let Loaded::Ready { library: again, notes } = read_library(&text) else { panic!("reads") };
    assert_eq!(again.entries(), library.entries());
    report.say("notes", &notes);
    report
}

/// Stored texts in which something does not fit, and two tabs that met.
pub fn doubts(setup: &Setup) -> Report {
    let mut report = Report::default();
    let mut value = serde_json::to_value(setup).expect("JSON");
    value["bank"]["chemistry"] = Value::from("unobtainium");
    value["bank"]["capacity_20h"] = Value::from(-40.0);
    value["trip"]["nights"] = Value::from("seven");
    value["trip"]["days"] = serde_json::json!([{ "weather": "hail" }, { "drive_minutes": 9999.0 }]);
    value["loads"][0]["usage"] = serde_json::json!({ "daily": { "hours": 3.0 } });
    value["loads"][1]["quantity"] = Value::from(0);
    value["loads"][2] = Value::from(12);
    value["solar"][0]["tilt"] = Value::from(120.0);
    value["solar"][0]["colour"] = Value::from("blue");
    value["weather_station"] = Value::from(true);
    let file = serde_json::json!({ "format": "nightbank", "schema": 1, "setups": [value, 7] });
    report.part("A file with doubts");
    let read = read_file(&file.to_string()).expect("a setup");
    report.say("adjusted, ignored", &(read.adjusted, &read.ignored));
    report.each("misfit", &read.misfits);
    for setup in &read.setups {
        report.say("battery", &setup.bank);
        report.say("trip", &setup.trip);
        report.each("load", setup.loads.iter().take(4));
        report.say("panels", &setup.solar);
    }
    let stored = serde_json::json!({
        "format": "nightbank", "schema": 1, "revision": 4, "current": 9, "last_id": 3,
        "entries": [
            { "id": 2, "changed_at_ms": 50, "setup": value },
            { "id": 2, "changed_at_ms": 60, "setup": setup },
            { "id": 5, "setup": setup },
            { "id": 6, "changed_at_ms": 1 },
            "nothing",
        ],
    });
    report.part("Storage with doubts");
    let Loaded::Ready { library, notes } = read_library(&stored.to_string()) else {
        panic!("reads")
    };
    report.say("current", &(library.current().map(|entry| entry.id), library.revision()));
    report.each(
        "entry",
        library.entries().iter().map(|it| (it.id, it.changed_at_ms, &it.setup.name)),
    );
    report.say("adjusted, ignored", &(notes.adjusted, &notes.ignored, &notes.migrated));
    report.each("misfit", &notes.misfits);
    report.each("set aside", notes.quarantined.iter().map(String::len));
    for text in
        ["", "  ", "{", "[1]", "{\"format\":\"other\"}", "{\"format\":\"nightbank\",\"schema\":9}"]
    {
        report.say(
            &format!("{text:?} as a file"),
            &read_file(text).map(|content| content.setups.len()),
        );
        let told = match read_library(text) {
            Loaded::Ready { library, notes } => format!("{} {notes:?}", library.entries().len()),
            Loaded::Newer { schema } => format!("newer {schema}"),
            Loaded::Corrupt { why, .. } => format!("corrupt: {why}"),
        };
        report.text("    in storage", &told);
    }
    two_tabs(&mut report, setup);
    taken(&mut report, setup);
    report
}

/// Parts of another setup, for a place south of the equator.
fn taken(report: &mut Report, theirs: &Setup) {
    report.part("Taken from another");
    let mut own = Setup::default();
    own.trip.place.latitude = Degrees(-20.0);
    let some = Parts { loads: BTreeSet::from([2, 5, 99]), panels: true, battery: false };
    report.say("nothing", &(Parts::default().is_empty(), some.is_empty(), own.room_for_loads()));
    own.take(theirs, &some);
    own.take(theirs, &Parts { loads: BTreeSet::from([2]), battery: true, ..Parts::default() });
    report.each("load", own.loads.iter().map(|load| (load.id, load.appliance, load.quantity)));
    report.say("panels, battery", &(&own.solar, &own.bank));
}

fn two_tabs(report: &mut Report, setup: &Setup) {
    report.part("Two tabs");
    let named = |name: &str| Setup { name: name.to_owned(), ..Setup::default() };
    let mut ours = Library::default();
    let first = ours.add(setup.clone(), 10).expect("room");
    let second = ours.add(named("Second"), 20).expect("room");
    let mut stored = String::new();
    let mut a = TabMemory::new(1, ours.clone(), None, false);
    a.write(&ours, |json| {
        stored = json.to_string();
        Ok::<(), ()>(())
    })
    .expect("writes");
    let Loaded::Ready { library: mut theirs, .. } = read_library(&stored) else { panic!("reads") };
    let mut b = TabMemory::new(2, theirs.clone(), Some(stored.clone()), false);
    theirs.update(first, named("Changed there"), 40).expect("there");
    let _ = theirs.add(named("Only there"), 45).expect("room");
    b.write(&theirs, |json| {
        stored = json.to_string();
        Ok::<(), ()>(())
    })
    .expect("writes");
    ours.update(first, named("Changed here"), 50).expect("there");
    let _ = ours.delete(second).expect("there");
    report.say("before", &(a.lacks(&ours), a.has_news(&ours), a.knows(&stored)));
    let taken = a.take_in(stored.clone(), &ours);
    let names = |library: &Library| -> Vec<String> {
        library
            .entries()
            .iter()
            .map(|entry| format!("{:?} {} {}", entry.id, entry.setup.name, entry.changed_at_ms))
            .collect()
    };
    report.say("beside", &(&taken.beside, &taken.unread, &taken.misfits));
    let library = taken.library.expect("both together");
    report.each("setup", names(&library));
    report.say("current", &library.current().map(|entry| entry.id));
    report.say(
        "after",
        &(a.lacks(&library), a.has_news(&library), a.knows(&stored), library.revision()),
    );
    report.say("another of that name", &library.free_name("Changed here"));
}
