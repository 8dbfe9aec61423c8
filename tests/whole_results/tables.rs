//! Tables of appliances as people bring them.

use super::kept::Report;
use crate::import_tables::shown;
use nightbank::import::appliances::{Reading, code_of, read_appliances};
use nightbank::import::columns::{Columns, Meaning};
use nightbank::import::log::Stamp;
use nightbank::import::log::columns::by_heading;
use nightbank::import::number::{DecimalMark, MarkFound, find_mark, read_number, split_unit};
use nightbank::import::recognise::{find_columns, read_heading};
use nightbank::import::table::{Table, encoding_label, read_table};
use nightbank::model::{DrawSource, SystemVoltage};
use std::collections::BTreeMap;

/// From a spreadsheet, with a title above, all kinds of figures, sums below.
const SHEET: &str = "\
Energy plan of the van;;;;;;;;;;;\n\
;;;;;;;;;;;\n\
Appliance;Qty;Power (W);A;V;Hours/day;min;Times a day;Duty %;Supply;Standby W;Total Wh/day\n\
Compressor fridge;1;45;;12;9,6;;;;12 V;;432\n\
Water pump;1;;5,5;;;12;;;dc;0,1;\n\
LED lamp;6;2,5;;;4;30;;;;;\n\
Laptop;1;0,065 kW;;;3:30;;;;inverter;1,5;230\n\
Kettle;1;2.000;;;;1,5;3;;AC;;150\n\
Second kettle;1;1.200;;;;2;2;;AC;;400\n\
Router;1;6;;;24;;;;;;144\n\
Heater fan;1;20 W;;;;;;40%;12V;;\n\
Telephone;2;10;;;;;1;;;;\n\
Telephone;1;10;;;;;2;;;;\n\
Radio;1;;1;24;90 min;;;;;;\n\
Freezer;1;60;;;;;;0,5;;;900\n\
Thing of mine;1;12;;;2;;;;;;80\n\
Spare lamp;0;5;;;1;;;;;;\n\
Drill;2;60;;230;0,5;;;;;;60\n\
Camera;1;;;;;;;;;;15\n\
A very long name that goes on and on and on far beyond what any list of appliances can show in a row, really;1;5;;;1;;;;;;\n\
Total;16;;;;;;;;;;2.500\n";

/// Rows that make no sense, each in its own way.
const FAULTS: &str = "\
Name,Qty,Watts,Amps,Hours,Times a day,Seconds,Supply,Wh/day total,Duty\n\
,1,5,,1,,,,,\n\
Sum,,500,,,,,,,\n\
Thingummy,,,,,,,,,\n\
Lamp one,1,about ten,,1,,,,,\n\
Lamp two,1,5 V,,1,,,,,\n\
Lamp three,1,5,,25,,,,,\n\
Lamp four,1,5,,,2,,,,\n\
Lamp five,1,5,,1,,,teapot,,\n\
Lamp six,1,5,,,,,,500,\n\
Lamp seven,1,,3,1,,,inverter,,\n\
Lamp eight,100,5,,1,,,,,\n\
Lamp nine,1.5,5,,1,,,,,\n\
Lamp ten,1,-5,,1,,,,,\n\
Lamp eleven,1,5,,,,,,,140\n\
Lamp twelve,1,5,,,,,,,3 h\n\
Lamp thirteen,1,5,,,50,3600,,,\n\
Phone,1,10,,,20,,,,\n\
Lamp fourteen,1,20000,,1,,,,,\n\
Lamp fifteen,1,5,,1:75,,,,,\n\
Lamp sixteen,2 pcs,5,,45 min,,,12 V,,\n\
Lamp seventeen,1,5,,,4,90 s,,,\n\
Lamp eighteen,1,5,,,4,2 min,,,\n\
Lamp nineteen,1,5,,–,,,,,30\n\
Lamp twenty,1,5,,,,,,,45 %\n\
Lamp twenty-one,1,5,,,,,,,0.2\n";

/// From a forum: bars, German.
const POSTED: &str = "\
| Gerät | Anzahl | Watt | Stunden am Tag | Wh am Tag |\n\
|---|---|---|---|---|\n\
| Kühlschrank | 1 | 45 | 8 | 360 |\n\
| Wasserpumpe | 1 | 60 | 0,2 | 12 |\n\
| LED-Strahler | 5 | 2 | 4 | 40 |\n\
| Fernseher | 1 | 25 | 3 | 75 |\n\
| Standheizung | 1 | 18 | 6 | 108 |\n";

/// Dutch, tabs, current and charge; and one whose heading asks.
const CHARGES: &str = "\
Apparaat\tAantal\tStroom (A)\tUren\tAh per dag\n\
Koelkast\t1\t3,8\t9\t34\n\
Waterpomp\t1\t5\t0,3\t\n\
Lampen\t4\t0,2\t5\t4\n\
Laptop\t1\t\t\t18\n";

const ASKING: &str =
    "Name;Watts a day;Consumption\nThing one;90;45\nThing two;12;6\nThing three;7,5;3\n";

const HEADINGS: [&str; 48] = [
    "Battery (%)",
    "Efficiency [%]",
    "Share of time (%)",
    "Power (kW), all",
    "Appliance",
    "Gerät",
    "Qty",
    "Anzahl pro Tag",
    "W",
    "Watts",
    "kW",
    "Standby (W)",
    "Watt am Tag",
    "Total W",
    "Wh",
    "Wh/day",
    "Total Wh per day",
    "kWh gesamt",
    "Ah",
    "Ah per dag",
    "Ah total/day",
    "mAh",
    "Amps",
    "A/day",
    "mA",
    "Total A",
    "V",
    "Spannung",
    "Hours",
    "h/Tag",
    "min",
    "Seconds",
    "s",
    "Times a day",
    "Fois par jour",
    "Duty %",
    "%",
    "Supply",
    "12 V / 230 V",
    "Consommation",
    "Verbruik per dag",
    "Energy",
    "Energie totale",
    "Puissance",
    "Dauer",
    "Nightbank",
    "Notes",
    "",
];

const NUMBERS: [&str; 30] = [
    "5",
    "5.5",
    "5,5",
    "1.234",
    "1,234",
    "1.234,5",
    "1,234.5",
    "1 234,5",
    "1'234.5",
    "12.345.678",
    "1.23.4",
    "0.065 kW",
    "45W",
    "3,5 A",
    "90 min",
    "40%",
    "~12",
    "+7",
    "-7",
    "\u{2212}7",
    ".5",
    "5.",
    "1e3",
    "1/2",
    "2 x",
    "",
    "W",
    "10-20",
    "1\u{a0}000",
    "0,001",
];

const TIMES: [&str; 36] = [
    "2026-7-1",
    "2026/7/1 8:05",
    "2026-07-14",
    "2026-07-14 16:05",
    "2026-07-14T16:05:30",
    "2026-07-14T16:05:30.25Z",
    "2026-07-14T16:05:30+02:00",
    "2026-07-14 16:05 +0530",
    "14.07.2026 16:05",
    "14. 7. 2026",
    "14.7.26 4:05",
    "14.7.6 4:05",
    "7/14/2026 4:05 PM",
    "7/14/26 12:00 AM",
    "12:30 pm",
    "13:30 PM",
    "16:05",
    "16:05:09,5",
    "24:00",
    "16:60",
    "1784073600",
    "1784073600.5",
    "1784073600123",
    "99",
    "2026/07/14",
    "2026-13-01",
    "31.02.2026 10:00",
    "202-07-14",
    "14-7-202",
    "14/07-2026",
    "2026-07-14 16",
    "2026-07-14, 16:05",
    "yesterday",
    "",
    "14.07.2026 16:05 Uhr",
    "0:00:00",
];

fn drafts(report: &mut Report, table: &Table, columns: &Columns, system: SystemVoltage) {
    let cells = columns.body(table).iter().flat_map(|row| row.cells.iter().map(String::as_str));
    let found = find_mark(cells);
    let mark = match found {
        MarkFound::Known(known) => known,
        MarkFound::Unknown => DecimalMark::Comma,
    };
    report.say("mark", &found);
    let reading =
        Reading { table, columns, mark, system, source: DrawSource::SpecSheet, names: &shown };
    let untouched = read_appliances(&reading, &BTreeMap::new());
    report.each("row", &untouched);
    // The second of those that may be meant, and none of them.
    let chosen: BTreeMap<usize, Option<u16>> = untouched
        .iter()
        .enumerate()
        .filter(|(_, draft)| draft.candidates.len() > 1)
        .map(|(at, draft)| (draft.line, (at % 2 == 0).then(|| draft.candidates[1])))
        .collect();
    let changed = read_appliances(&reading, &chosen).into_iter().zip(untouched);
    let differing = changed.filter(|(now, before)| now != before);
    report.each("chosen", differing.map(|(now, _)| (now.line, now.load, now.notes)));
}

fn table(report: &mut Report, name: &str, text: &str, system: SystemVoltage) {
    report.part(name);
    let table = read_table(text).expect("a table");
    let mut columns = find_columns(&table);
    report.say("delimiter", &(table.delimiter, table.rows.len(), table.columns()));
    report.say("heading", &columns.heading);
    report.each("column", &columns.meanings);
    let asked: Vec<(usize, Meaning)> = columns
        .meanings
        .iter()
        .enumerate()
        .filter_map(|(at, meaning)| match meaning {
            Meaning::Asked { question, .. } => {
                Some((at, Meaning::of(*question.answers().first().expect("an answer"))))
            }
            Meaning::Unused | Meaning::Known { .. } => None,
        })
        .collect();
    report.say("asks", &columns.asks());
    drafts(report, &table, &columns, system);
    for (at, meaning) in asked {
        columns.set(at, meaning);
        report.say("    answered", &columns.meanings);
        drafts(report, &table, &columns, system);
    }
}

/// Tables of a spreadsheet and of a forum, in both voltages.
pub fn sheets() -> Report {
    let mut report = Report::default();
    table(&mut report, "A spreadsheet", SHEET, SystemVoltage::V12);
    table(&mut report, "From a forum", POSTED, SystemVoltage::V12);
    table(&mut report, "Currents and charge at 24 V", CHARGES, SystemVoltage::V24);
    let read = read_table(POSTED).expect("a table");
    let columns = find_columns(&read);
    let reading = Reading {
        table: &read,
        columns: &columns,
        mark: DecimalMark::Comma,
        system: SystemVoltage::V12,
        source: DrawSource::Label,
        names: &shown,
    };
    for draft in read_appliances(&reading, &BTreeMap::new()) {
        report.text("code", &draft.load.map_or_else(|fault| format!("{fault:?}"), |l| code_of(&l)));
    }
    report
}

/// Headings, numbers and times, cell by cell.
pub fn cells() -> Report {
    let mut report = Report::default();
    report.part("Headings");
    for heading in HEADINGS {
        report.say(&format!("{heading:?}"), &(read_heading(heading), by_heading(heading)));
    }
    report.part("Numbers");
    for cell in NUMBERS {
        let (number, unit) = split_unit(cell);
        let read = [DecimalMark::Point, DecimalMark::Comma].map(|mark| read_number(number, mark));
        report.say(&format!("{cell:?}"), &(read, unit, find_mark([cell].into_iter())));
    }
    report.part("Times");
    for cell in TIMES {
        report.say(&format!("{cell:?}"), &Stamp::read(cell));
    }
    report
}

/// What a table leaves open, and rows that make no sense.
pub fn doubts() -> Report {
    let mut report = Report::default();
    table(&mut report, "Headings that ask", ASKING, SystemVoltage::V12);
    table(&mut report, "Rows without sense", FAULTS, SystemVoltage::V12);
    report.part("No tables");
    for text in ["", " \n \n", "one\u{0}two", "sep=,\nName,W\nLamp,5\n", "Name\tW\nLamp\t5"] {
        report.say(&format!("{text:?}"), &read_table(text));
    }
    report.say("too wide", &read_table(&";".repeat(70)).map(|table| table.columns()));
    for bytes in
        [&b"\xef\xbb\xbfName"[..], b"\xff\xfeN\0", b"\xfe\xff\0N", b"Name", b"K\xfchl", b""]
    {
        report.say(&format!("{bytes:?}"), &encoding_label(bytes));
    }
    report
}
