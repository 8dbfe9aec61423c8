//! A campaign of hostile input against everything that reads foreign text: links, files, storage.
//!
//! Ignored in the ordinary run for its length; run it with
//! `cargo test --release --test all hostile_input -- --ignored --nocapture`. It prints what it tried. A panic, a
//! setup out of bounds or a reading that takes long fails it.

use crate::common;

use common::sample;
use nightbank::link::{self, LinkError};
use nightbank::model::Setup;
use nightbank::store::{self, Loaded};
use rand::{Rng, RngCore, SeedableRng};
use rand_pcg::Pcg64;
use std::time::{Duration, Instant};

/// Inputs tried against links, against files and against storage.
const LINKS: usize = 800_000;
const FILES: usize = 150_000;
const LIBRARIES: usize = 100_000;

/// Far more than any reading takes; a reading that grows with the square of its input passes it.
const LONG: Duration = Duration::from_secs(2);

#[derive(Default)]
struct Tally {
    tried: usize,
    opened: usize,
    empty: usize,
    truncated: usize,
    newer: usize,
    refused: usize,
    slowest: Duration,
}

impl Tally {
    fn print(&self, what: &str) {
        println!(
            "{what}: {} tried, {} opened, {} empty, {} truncated, {} newer, {} refused, slowest {:?}",
            self.tried,
            self.opened,
            self.empty,
            self.truncated,
            self.newer,
            self.refused,
            self.slowest
        );
    }
}

fn check(setup: &Setup) {
    let (same, changed) = setup.clone().sanitised();
    assert_eq!(changed, 0, "out of bounds: {setup:?}");
    assert_eq!(&same, setup);
}

/// One of the texts, changed the way transport or malice does: characters swapped, cut, doubled, inserted.
fn mutated(rng: &mut Pcg64, seeds: &[String], foreign: &[&str]) -> String {
    let mut chars: Vec<char> = seeds[rng.random_range(0..seeds.len())].chars().collect();
    for _ in 0..rng.random_range(1..=4) {
        if chars.is_empty() {
            break;
        }
        let at = rng.random_range(0..chars.len());
        let end = (at + rng.random_range(1..=12)).min(chars.len());
        match rng.random_range(0..7) {
            0 => chars[at] = char::from(rng.random_range(32u8..127)),
            1 => chars.truncate(at),
            2 => drop(chars.drain(at..end)),
            3 => {
                let again: Vec<char> = chars[at..end].to_vec();
                chars.splice(at..at, again);
            }
            4 => {
                let piece = foreign[rng.random_range(0..foreign.len())];
                chars.splice(at..at, piece.chars());
            }
            5 => {
                let piece = foreign[rng.random_range(0..foreign.len())];
                chars.splice(at..end, piece.chars());
            }
            _ => chars.swap(at, end - 1),
        }
    }
    chars.into_iter().collect()
}

/// One of the texts of JSON, a value or two replaced by another, so that most still parse.
fn revalued(rng: &mut Pcg64, seeds: &[String]) -> String {
    let mut text = seeds[rng.random_range(0..seeds.len())].clone();
    for _ in 0..rng.random_range(1..=2) {
        let colons: Vec<usize> = text.match_indices(':').map(|(at, _)| at + 1).collect();
        let Some(&start) = colons.get(rng.random_range(0..colons.len().max(1))) else { break };
        let end = text[start..].find([',', '}', ']']).map_or(text.len(), |length| start + length);
        text.replace_range(start..end, JSON_VALUES[rng.random_range(0..JSON_VALUES.len())]);
    }
    text
}

fn hostile_json(rng: &mut Pcg64, seeds: &[String]) -> String {
    if rng.random() { revalued(rng, seeds) } else { mutated(rng, seeds, &JSON_PIECES) }
}

fn noise(rng: &mut Pcg64, alphabet: &[char]) -> String {
    let length = rng.random_range(0..300);
    (0..length).map(|_| alphabet[rng.random_range(0..alphabet.len())]).collect()
}

fn against_links(rng: &mut Pcg64) -> Tally {
    let seeds: Vec<String> = [sample::typical(3), sample::typical(25), sample::everything()]
        .iter()
        .chain([&Setup::default()])
        .map(|setup| link::encode(setup).expect("short enough"))
        .flat_map(|text| [format!("https://camp.example/#{text}"), text])
        .collect();
    let foreign = [
        "#", "%23", "%", "…", "...", "\u{200b}", "\n> ", "1", "2", "zz", "%25", "é", "\0", "<",
        "##",
    ];
    let alphanumeric: Vec<char> = ('0'..='9').chain('A'..='Z').chain('a'..='z').collect();
    let mut tally = Tally::default();
    for round in 0..LINKS {
        let text = match round % 4 {
            0 => format!("#1{}", noise(rng, &alphanumeric)),
            1 => {
                let mut bytes = vec![0; rng.random_range(0..200)];
                rng.fill_bytes(&mut bytes);
                String::from_utf8_lossy(&bytes).into_owned()
            }
            _ => mutated(rng, &seeds, &foreign),
        };
        let start = Instant::now();
        let opened = link::open(&text);
        tally.slowest = tally.slowest.max(start.elapsed());
        tally.tried += 1;
        match opened {
            Ok(opened) => {
                check(&opened.setup);
                tally.opened += 1;
            }
            Err(LinkError::Empty) => tally.empty += 1,
            Err(LinkError::Truncated) => tally.truncated += 1,
            Err(LinkError::Newer { .. }) => tally.newer += 1,
            Err(LinkError::Corrupt) => tally.refused += 1,
        }
    }
    tally
}

const JSON_PIECES: [&str; 20] = [
    "null",
    "1e999",
    "-1e999",
    "1e308",
    "-0",
    "[]",
    "{}",
    "\"\"",
    "\"\\u202e\"",
    "[[[[[[[[",
    "}",
    "]",
    ",",
    "18446744073709551616",
    "true",
    "\"rule\":\"daily\"",
    "0.1",
    "\"schema\":2",
    "NaN",
    "\u{feff}",
];

const JSON_VALUES: [&str; 18] = [
    "null",
    "-1",
    "0",
    "1e308",
    "-1e308",
    "4294967296",
    "65536",
    "255",
    "256",
    "-129",
    "0.1",
    "12.5",
    "1e-320",
    "[]",
    "{}",
    "\"\\u202e\\u0000<b>\"",
    "true",
    "\"a name\"",
];

fn against_files(rng: &mut Pcg64) -> Tally {
    let seeds = [
        store::write_file(&[sample::everything()]).expect("writes"),
        store::write_file(&[sample::typical(2), Setup::default()]).expect("writes"),
        "{\"format\":\"nightbank\",\"schema\":1,\"setup\":{}}".to_owned(),
    ];
    let mut tally = Tally::default();
    for round in 0..FILES {
        let text = if round % 10 == 0 {
            noise(rng, &['{', '}', '[', ']', '"', ':', ',', '1', 'e', '-', '\\', 'n'])
        } else {
            hostile_json(rng, &seeds)
        };
        let start = Instant::now();
        let read = store::read_file(&text);
        tally.slowest = tally.slowest.max(start.elapsed());
        tally.tried += 1;
        match read {
            Ok(content) => {
                content.setups.iter().for_each(check);
                tally.opened += 1;
            }
            Err(store::FileError::Empty) => tally.empty += 1,
            Err(store::FileError::Newer { .. }) => tally.newer += 1,
            Err(_) => tally.refused += 1,
        }
    }
    tally
}

fn against_storage(rng: &mut Pcg64) -> Tally {
    let mut library = store::Library::default();
    for setup in [sample::typical(4), sample::everything()] {
        library.add(setup, 1_700_000_000_000).expect("room");
    }
    let seeds = [store::write_library(&library), store::write_library(&Default::default())];
    let mut tally = Tally::default();
    for _ in 0..LIBRARIES {
        let text = hostile_json(rng, &seeds);
        let start = Instant::now();
        let loaded = store::read_library(&text);
        tally.slowest = tally.slowest.max(start.elapsed());
        tally.tried += 1;
        match loaded {
            Loaded::Ready { library, .. } => {
                library.entries().iter().for_each(|entry| check(&entry.setup));
                let again = store::read_library(&store::write_library(&library));
                assert!(matches!(again, Loaded::Ready { library: back, .. } if back == library));
                tally.opened += 1;
            }
            Loaded::Newer { .. } => tally.newer += 1,
            Loaded::Corrupt { raw, .. } => {
                assert_eq!(raw, text, "set aside as it was");
                tally.refused += 1;
            }
        }
    }
    tally
}

#[test]
#[ignore = "a long campaign, run once for a release"]
fn a_million_hostile_inputs() {
    let mut rng = Pcg64::seed_from_u64(20_260_615);
    let tallies = [
        ("links", against_links(&mut rng)),
        ("files", against_files(&mut rng)),
        ("storage", against_storage(&mut rng)),
    ];
    for (what, tally) in &tallies {
        tally.print(what);
        assert!(tally.slowest < LONG, "{what} took {:?}", tally.slowest);
    }
    let tried: usize = tallies.iter().map(|(_, tally)| tally.tried).sum();
    println!("{tried} inputs in all");
    assert!(tried >= 1_000_000);
}
