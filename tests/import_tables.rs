//! Tables of appliances from spreadsheets, by the readers the page calls.

use encoding_rs::Encoding;
use nightbank::export::csv::{Dialect, LoadHeaders, LoadRow, loads_csv};
use nightbank::export::forum_table::{ForumTable, forum_table};
use nightbank::export::forum_text::Markup;
use nightbank::import::appliances::{
    Draft, NO_APPLIANCE, Note, Reading, RowFault, code_of, read_appliances,
};
use nightbank::import::columns::{Columns, Kind, Meaning, Question};
use nightbank::import::number::{DecimalMark, MarkFound, find_mark};
use nightbank::import::recognise::find_columns;
use nightbank::import::table::{Table, encoding_label, read_table};
use nightbank::model::{Draw, DrawSource, DutyCycle, Feed, Load, SystemVoltage, Usage};
use nightbank::units::{Amps, Volts, WattHours, Watts};
use proptest::prelude::*;
use std::collections::{BTreeMap, HashMap};
use std::sync::LazyLock;

/// The English name for a key of the catalogue, as the page shows it.
pub fn shown(key: &'static str) -> String {
    static NAMES: LazyLock<HashMap<&str, &str>> = LazyLock::new(|| {
        let text = concat!(
            include_str!("../src/i18n/en/catalogue.ftl"),
            include_str!("../src/i18n/en/example.ftl")
        );
        text.lines().filter_map(|line| line.split_once(" = ")).collect()
    });
    NAMES.get(key).map_or_else(|| panic!("no name for {key}"), |name| (*name).to_owned())
}

/// Reads a table as the page does before anybody has chosen anything.
fn read(text: &str) -> (Table, Columns, Vec<Draft>) {
    let table = read_table(text).expect("a table");
    let columns = find_columns(&table);
    let drafts = drafts(&table, &columns, DecimalMark::Point);
    (table, columns, drafts)
}

fn drafts(table: &Table, columns: &Columns, mark: DecimalMark) -> Vec<Draft> {
    let cells = columns.body(table).iter().flat_map(|row| row.cells.iter().map(String::as_str));
    let mark = match find_mark(cells) {
        MarkFound::Known(known) => known,
        MarkFound::Unknown => mark,
    };
    let reading = Reading {
        table,
        columns,
        mark,
        system: SystemVoltage::V12,
        source: DrawSource::Meter,
        names: &shown,
    };
    read_appliances(&reading, &BTreeMap::new())
}

fn loads(text: &str) -> Vec<Load> {
    let (_, columns, drafts) = read(text);
    assert!(!columns.asks(), "{columns:?}");
    drafts.into_iter().map(|draft| draft.load.expect("an appliance")).collect()
}

fn fault(text: &str) -> RowFault {
    let (_, _, drafts) = read(text);
    drafts.into_iter().find_map(|draft| draft.load.err()).expect("a fault")
}

#[test]
fn figures_of_every_kind() {
    let read = loads(
        "Appliance;Qty;W;A;V;Hours;Minutes;Times a day;Supply;Standby (W)\n\
         Thing one;2;45;;;1,5;;;;\n\
         Thing two;;;3,5;;2;30;;12 V;0,4\n\
         Thing three;1;1200;;;;3;2;inverter;\n\
         Thing four;1;;0,4;230;1:30;;;;\n\
         Thing five;1;0,5 kW;;;90 min;;;AC;\n",
    );
    let [one, two, three, four, five] = &read[..] else { panic!("five rows") };
    assert_eq!((one.quantity, one.draw.watts(), one.feed), (2, Watts(45.0), Feed::Dc));
    assert_eq!(one.usage, Usage::Daily { minutes: 90.0 });
    assert_eq!(two.draw, Draw::Current { amps: Amps(3.5), volts: Volts(12.0) });
    assert_eq!((two.usage, two.standby), (Usage::Daily { minutes: 150.0 }, Watts(0.4)));
    assert_eq!(three.usage, Usage::Uses { per_day: 2.0, seconds: 180.0 });
    assert_eq!((three.feed, three.draw.watts()), (Feed::Inverter, Watts(1200.0)));
    assert_eq!(four.draw, Draw::Current { amps: Amps(0.4), volts: Volts(230.0) });
    assert_eq!((four.feed, four.usage), (Feed::Inverter, Usage::Daily { minutes: 90.0 }));
    assert_eq!((five.draw.watts(), five.usage), (Watts(500.0), Usage::Daily { minutes: 90.0 }));
    assert!(read.iter().all(|load| load.draw_source == DrawSource::Meter));
}

#[test]
fn energy_and_charge_a_day() {
    let read = loads(
        "Name;Qty;W;Total Wh/day;Total Ah/day\n\
         Thing one;3;;90;\n\
         Thing two;1;20;50;\n\
         Thing three;2;;;5\n",
    );
    assert_eq!(read[0].usage, Usage::Energy { per_day: WattHours(30.0) });
    assert_eq!(read[1].usage, Usage::Daily { minutes: 150.0 });
    assert_eq!(read[2].usage, Usage::Energy { per_day: WattHours(30.0) }, "5 Ah at 12 V of two");
}

#[test]
fn watts_a_day_are_asked_and_not_guessed() {
    let (table, mut columns, _) = read("Name;Watts a day\nThing one;90\nThing two;12");
    assert!(matches!(columns.meanings[1], Meaning::Asked { question: Question::WattsADay, .. }));
    columns.set(1, Meaning::of(Kind::EnergyOfOne));
    let as_energy = drafts(&table, &columns, DecimalMark::Point);
    assert_eq!(
        as_energy[0].load.as_ref().map(|load| load.usage),
        Ok(Usage::Energy { per_day: WattHours(90.0) })
    );
    columns.set(1, Meaning::of(Kind::Watts));
    let as_power = drafts(&table, &columns, DecimalMark::Point);
    assert_eq!(as_power[0].load.as_ref().map(|load| load.draw.watts()), Ok(Watts(90.0)));
    assert_eq!(as_power[0].notes, [Note::AssumedHour]);
}

#[test]
fn the_catalogue_brings_what_the_table_does_not_say() {
    let read = loads("Gerät;W;h\nWater pump;;\nCompressor fridge;50;8\n");
    let pump = &read[0];
    assert!(matches!(pump.usage, Usage::Litres { .. }), "{pump:?}");
    assert!(pump.appliance.is_some() && pump.draw.watts() > Watts(0.0));
    assert_eq!(pump.draw_source, DrawSource::Estimate, "what is usual is not measured");
    let fridge = &read[1];
    assert!(fridge.cut_out.is_some(), "{fridge:?}");
    // Eight hours of running are spread over the day, as a thermostat does.
    assert_eq!(fridge.usage, Usage::Duty { cycle: DutyCycle::Fixed { frac: 8.0 / 24.0 } });
    assert_eq!(fridge.draw.watts(), Watts(50.0));
}

#[test]
fn a_makers_name_is_matched_by_its_known_words_and_only_offered() {
    let (_, _, drafts) = read("Name;W;h\nZorblax XJ-40 kettle;900;0,1\nQuuxframe;5;1");
    assert!(!drafts[0].candidates.is_empty());
    assert!(drafts[1].candidates.is_empty());
    let load = drafts[0].load.as_ref().expect("an appliance");
    assert_eq!(load.name, "Zorblax XJ-40 kettle");
}

#[test]
fn rows_without_sense_say_why() {
    let head = "Name;Qty;W;Hours;Times a day;Supply;Wh/day total;A";
    for (row, told) in [
        (";1;5;1", RowFault::NoName),
        ("Total;;500;", RowFault::Sum),
        ("Summe;;500;", RowFault::Sum),
        ("Thingummy;;;", RowFault::NothingKnown),
        (
            "Thing;;about ten;1",
            RowFault::NotANumber { kind: Kind::Watts, text: "about ten".into() },
        ),
        ("Thing;;5 V;1", RowFault::WrongUnit { kind: Kind::Watts, text: "5 V".into() }),
        ("Thing;;5;25", RowFault::MoreThanADay),
        ("Thing;;5;;2", RowFault::NoLengthOfUse),
        ("Thing;;5;1;;teapot", RowFault::UnknownFeed { text: "teapot".into() }),
        ("Thing;1;5;;;;500", RowFault::EnergyAboveDraw),
        ("Thing;;;1;;inverter;;3", RowFault::AmpsWithoutVolts),
    ] {
        assert_eq!(fault(&format!("{head}\n{row}\nGood;1;5;1")), told, "{row}");
    }
    assert!(matches!(
        fault(&format!("{head}\nThing;100;5;1")),
        RowFault::OutOfRange { kind: Kind::Quantity, .. }
    ));
    assert!(matches!(
        fault(&format!("{head}\nThing;1,5;5;1")),
        RowFault::OutOfRange { kind: Kind::Quantity, .. }
    ));
    assert!(matches!(
        fault(&format!("{head}\nThing;1;-5;1")),
        RowFault::OutOfRange { kind: Kind::Watts, .. }
    ));
}

#[test]
fn figures_that_contradict_each_other_are_noted() {
    let (_, _, drafts) = read("Name;W;Hours;Total Wh/day\nThing;10;2;50\nOther;10;2;20");
    assert_eq!(
        drafts[0].notes,
        [Note::Disagrees { told: WattHours(50.0), worked_out: WattHours(20.0) }]
    );
    assert!(drafts[1].notes.is_empty());
}

#[test]
fn an_own_row_comes_back_as_it_was_and_edited_cells_count() {
    let catalogue = nightbank::model::catalogue::ALL.iter();
    for known in catalogue {
        let mut load = known.to_load(0, SystemVoltage::V24);
        load.quantity = 3;
        load.enabled = known.id % 2 == 0;
        let row = |watts: f64, name: &str| {
            format!("Name;Qty;W;Supply;Nightbank\n{name};3;{watts:.2};;{}\n", code_of(&load))
        };
        let name = shown(known.key);
        let (_, _, same) = read(&row(load.draw.watts().0, &name));
        assert_eq!(same[0].load, Ok(load.clone()), "{name}");
        let (_, _, edited) = read(&row(load.draw.watts().0 + 1.0, "My own"));
        let edited = edited[0].load.clone().expect("an appliance");
        assert_eq!(edited.draw.watts(), load.draw.watts() + Watts(1.0));
        assert_eq!((edited.name.as_str(), edited.usage), ("My own", load.usage));
    }
    let other = format!("Name;W;Nightbank\nInverter;5;{NO_APPLIANCE}");
    assert_eq!(fault(&other), RowFault::NotAnAppliance);
    assert_eq!(fault("Name;W;Nightbank\nLamp;5;1abc"), RowFault::DamagedCode);
}

#[test]
fn formulas_stay_text() {
    for name in ["=1+1", "+cmd", "@SUM(A1)", "-2", "=HYPERLINK(\"x\")"] {
        let quoted = format!(
            "Name;W;h\n\"'{}\";5;1\n\"{}\";5;1\n",
            name.replace('"', "\"\""),
            name.replace('"', "\"\"")
        );
        for load in loads(&quoted) {
            assert_eq!(load.name, name);
        }
    }
    assert!(matches!(fault("Name;W;h\nLamp;=2*3;1"), RowFault::NotANumber { .. }));
}

proptest! {
    /// Every row of the body is a draft, whatever it holds; none vanishes, nothing panics.
    #[test]
    fn no_row_is_lost(rows in proptest::collection::vec(proptest::collection::vec("[ -~äé€\u{a0}\u{2212}]{0,12}", 1..8), 1..12)) {
        let mut text = String::from("Name\tQty\tW\tHours\tWh/day\tSupply\tA\tV\n");
        for row in &rows {
            let cells: Vec<String> = row.iter().map(|cell| cell.replace('"', "'")).collect();
            text += &cells.join("\t");
            text.push('\n');
        }
        let table = read_table(&text).expect("it has a heading");
        let columns = find_columns(&table);
        let drafts = drafts(&table, &columns, DecimalMark::Comma);
        let blank = |cell: &String| cell.trim().chars().all(|c| matches!(c, '\t' | ';' | '|' | ',') || c.is_whitespace());
        let filled = rows.iter().filter(|row| !row.iter().all(&blank)).count();
        // An apostrophe that guards a formula is the only thing taken off a cell.
        prop_assert!(drafts.len() <= filled && filled <= drafts.len() + 1, "{} of {}", drafts.len(), filled);
    }

    /// A mangled table is read or told, never a panic, and what is taken lies within every bound.
    #[test]
    fn mangled_tables(bytes in proptest::collection::vec(any::<u8>(), 0..400), at in 0_usize..200, cut in 0_usize..300) {
        let mut table = b"Name;Qty;W;A;V;Hours;Wh/day\nFridge;1;45;;12;8;360\n\"Lamp; left\";4;\"3,5\";;;4,5;\nKettle;1;1,200;;230;0:10;\n".to_vec();
        let at = at.min(table.len());
        table.splice(at..at, bytes);
        table.truncate(cut.max(1));
        let text = String::from_utf8_lossy(&table);
        if let Ok(table) = read_table(&text) {
            let columns = find_columns(&table);
            for draft in drafts(&table, &columns, DecimalMark::Point) {
                if let Ok(load) = draft.load {
                    let setup = nightbank::model::Setup { loads: vec![load], ..Default::default() };
                    let (_, adjusted) = setup.sanitised();
                    prop_assert_eq!(adjusted, 0);
                }
            }
        }
    }
}

/// A million hostile bytes: quotes, delimiters, digits and marks in any order.
#[test]
fn a_million_hostile_bytes() {
    use rand::{Rng, SeedableRng};
    let mut random = rand_pcg::Pcg64Mcg::seed_from_u64(19);
    let alphabet: Vec<char> =
        "\";,\t|\n\r 0123456789.:-+='WAhé\u{feff}\u{2212}%(".chars().collect();
    for _ in 0..10 {
        let text: String =
            (0..100_000).map(|_| alphabet[random.random_range(0..alphabet.len())]).collect();
        if let Ok(table) = read_table(&text) {
            let columns = find_columns(&table);
            let read = drafts(&table, &columns, DecimalMark::Point);
            assert!(read.len() <= 1_000);
        }
    }
}

/// Written by LibreOffice 7.4 under four locales: commas in UTF-8, semicolons in UTF-8, semicolons in
/// Windows-1252, tabs in UTF-16. Decoded by `encoding_rs`, which follows the Encoding Standard as browsers do.
#[test]
fn tables_that_libreoffice_wrote_in_four_locales() {
    let files: [(&str, &[u8], &str); 4] = [
        ("en", include_bytes!("data/tables/en.csv"), "Laptop \"old\""),
        ("de", include_bytes!("data/tables/de.csv"), "Laptop \"alt\""),
        ("fr", include_bytes!("data/tables/fr.csv"), "Portable « ancien »"),
        ("nl", include_bytes!("data/tables/nl.tsv"), "Laptop \"oud\""),
    ];
    for (language, bytes, laptop) in files {
        let encoding = Encoding::for_label(encoding_label(bytes).as_bytes()).expect("known");
        let text = encoding.decode(bytes).0;
        let (table, columns, drafts) = read(&text);
        assert!(!columns.asks(), "{language}: {columns:?}");
        let kinds: Vec<Option<Kind>> = columns.meanings.iter().map(|one| one.kind()).collect();
        let want = [
            Kind::Name,
            Kind::Quantity,
            Kind::Watts,
            Kind::Amps,
            Kind::Hours,
            Kind::Feed,
            Kind::EnergyOfAll,
        ];
        assert_eq!(kinds[..7], want.map(Some), "{language}");
        assert_eq!(table.rows.len(), 7);
        let [fridge, pump, lamp, computer, kettle, sum] = &drafts[..] else { panic!("six rows") };
        assert_eq!(sum.load, Err(RowFault::Sum), "{language}");
        let load = |draft: &Draft| draft.load.clone().expect("an appliance");
        assert_eq!(load(fridge).draw.watts(), Watts(45.5), "{language}");
        assert_eq!(load(pump).draw, Draw::Current { amps: Amps(3.5), volts: Volts(12.0) });
        assert_eq!(load(pump).usage, Usage::Daily { minutes: 30.0 }, "{language}");
        assert_eq!((load(lamp).quantity, load(lamp).draw.watts()), (4, Watts(2.5)));
        assert_eq!(load(lamp).usage, Usage::Daily { minutes: 90.0 }, "{language}");
        assert_eq!((load(computer).name.as_str(), load(computer).feed), (laptop, Feed::Inverter));
        assert_eq!(load(computer).usage, Usage::Daily { minutes: 165.0 }, "{language}");
        assert_eq!(load(kettle).draw.watts(), Watts(1200.0), "{language}");
        for draft in &drafts[..5] {
            let fine = |note: &Note| matches!(note, Note::AmpsAt(_));
            assert!(draft.notes.iter().all(fine), "{language}: {:?}", draft.notes);
        }
    }
}

/// Headings of the table this page writes, in the order of its columns.
fn own_headings(language: &str) -> LoadHeaders {
    let path = format!("{}/src/i18n/{language}/share.ftl", env!("CARGO_MANIFEST_DIR"));
    let texts = std::fs::read_to_string(path).expect("the texts");
    let keys = [
        "name", "group", "quantity", "draw", "current", "feed", "usage", "per-day", "standby",
        "of-need", "enabled", "code",
    ];
    keys.map(|key| {
        let start = format!("csv-{key} = ");
        texts.lines().find_map(|line| line.strip_prefix(&start)).expect("a heading").to_owned()
    })
}

#[test]
fn the_table_this_page_writes_comes_back_unchanged() {
    let own: Vec<Load> = nightbank::model::catalogue::ALL
        .iter()
        .take(40)
        .map(|known| Load { name: "=Mine".to_owned(), ..known.to_load(0, SystemVoltage::V12) })
        .collect();
    let row = |load: &Load| LoadRow {
        name: load.name.clone(),
        group: "Group".to_owned(),
        quantity: load.quantity,
        draw: load.draw.watts(),
        current: load.draw.watts() / Volts(12.0),
        feed: String::new(),
        usage: "as usual".to_owned(),
        per_day: WattHours(100.0),
        standby_per_day: WattHours(10.0),
        of_need_frac: 0.1,
        enabled: load.enabled,
        code: code_of(load),
    };
    let mut rows: Vec<LoadRow> = own.iter().map(row).collect();
    let other = LoadRow { code: NO_APPLIANCE.to_owned(), ..rows[0].clone() };
    rows.push(other);
    for language in ["en", "de", "fr", "nl"] {
        for dialect in [Dialect::Point, Dialect::Comma] {
            let text = loads_csv(&own_headings(language), &rows, dialect).expect("writes");
            let (_, columns, drafts) = read(&text);
            assert!(!columns.asks(), "{language}: {columns:?}");
            let back: Vec<Load> =
                drafts.iter().filter_map(|draft| draft.load.clone().ok()).collect();
            assert_eq!(back, own, "{language} {dialect:?}");
            assert_eq!(drafts.last().map(|last| &last.load), Some(&Err(RowFault::NotAnAppliance)));
        }
    }
}

#[test]
fn a_posted_table_comes_back_with_its_names() {
    let names =
        ["Fan | big", "Lamp (left) #2", "www.place.example", "a*b_c", "Back\\slash", "1. one"];
    let row = |name: &&str| [*name, "20", "1.5"].map(str::to_owned).to_vec();
    let table = ForumTable {
        headings: ["Name", "W", "Hours"].map(str::to_owned).to_vec(),
        rows: names.iter().map(row).collect(),
        between: ": ".to_owned(),
        ..ForumTable::default()
    };
    for markup in [Markup::Plain, Markup::Markdown] {
        let back: Vec<Load> = loads(&forum_table(&table, markup));
        let back: Vec<&str> = back.iter().map(|load| load.name.as_str()).collect();
        assert_eq!(back, names, "{markup:?}");
    }
}
