use super::*;
use crate::link::wire::{Scale, differing_number};
use crate::model::limits::MAX_NAME_CHARS;
use crate::model::{Draw, Usage};
use crate::units::Watts;
use proptest::prelude::*;

fn sealed(body: &BitWriter) -> String {
    seal(body).split_off(VERSION.len_utf8())
}

fn body_of(bytes: &[u8], len: usize) -> BitWriter {
    let mut body = BitWriter::default();
    let mut reader = BitReader::new(bytes, len);
    while let Some(bit) = reader.take(1) {
        body.put(bit, 1);
    }
    body
}

fn newer(version: &str) -> Refusal {
    Refusal::Newer(version.to_owned())
}

#[test]
fn the_frozen_defaults_are_carried_in_a_handful_of_characters() {
    let text = pack(&rounded(plain_setup()));
    assert!(text.len() <= 16, "{text}");
    assert_eq!(unpack(&text[1..]), Ok(plain_setup()));
}

#[test]
fn the_steps_of_a_link_carry_the_frozen_defaults_exactly() {
    let mut full = plain_setup();
    full.loads = load::plain_usages().map(|usage| Load { usage, ..load::plain_load() }).to_vec();
    full.solar = vec![power::plain_array()];
    full.other = vec![power::plain_other()];
    full.cables = vec![extras::plain_cable()];
    full.driving.charger = power::plain_relay();
    let arrived = rounded(full.clone());
    for (index, load) in full.loads.iter_mut().enumerate() {
        load.id = row_id(index);
    }
    assert_eq!(arrived, full);
}

#[test]
fn a_newer_edition_is_told_apart() {
    let mut writer = Writer::default();
    writer.whole(&mut (editions::LATEST + 1), 1).expect("writes");
    assert_eq!(unpack(&sealed(&writer.out)), Err(newer(&format!("1.{}", editions::LATEST + 1))));
}

#[test]
fn bits_left_over_are_refused() {
    let setup = plain_setup();
    let mut writer = Writer::default();
    writer.whole(&mut 0, 1).expect("writes");
    self::super::setup(&mut writer, &mut setup.clone(), &|_| None).expect("writes");
    assert_eq!(unpack(&sealed(&writer.out)), Ok(setup));
    for extra in [(0, 12), (1, 1)] {
        let mut longer = writer.out.clone();
        longer.put(extra.0, extra.1);
        assert_eq!(unpack(&sealed(&longer)), Err(Refusal::Corrupt));
    }
}

/// Invented extensions: finer steps for two fields, and an amount for each load compared with the
/// catalogue's, kept where the setup has room for it.
const KNOWN: [Extension; 2] = [
    Extension {
        number: 3,
        fields: |w, setup, _| {
            differing_number(w, &mut setup.bank.soc_start_frac, 1.0, &FINE)?;
            differing(w, &mut setup.trip.place.name, &String::new(), |w, name| {
                w.text(name, MAX_NAME_CHARS)
            })
        },
    },
    Extension {
        number: 40,
        fields: |w, setup, base| {
            for load in &mut setup.loads {
                let base = load.appliance.and_then(base).unwrap_or_else(load::plain_load);
                differing_number(w, &mut load.surge_factor, base.surge_factor, &FINE)?;
            }
            Ok(())
        },
    },
];

/// A millionth.
const FINE: Scale = Scale::unsigned(crate::model::limits::SURGE_FACTOR, 1_000_000, &[1], 8);

/// A setup with values that only [`KNOWN`] carries.
fn fine(loads: &[(Option<u16>, f64)], soc_start_frac: f64) -> Setup {
    let mut setup = plain_setup();
    setup.bank.soc_start_frac = soc_start_frac;
    setup.loads = loads
        .iter()
        .enumerate()
        .map(|(index, &(appliance, surge_factor))| {
            let known = appliance.and_then(|id| base(editions::LATEST, id));
            Load { id: row_id(index), surge_factor, ..known.unwrap_or_else(load::plain_load) }
        })
        .collect();
    setup
}

/// A link with an extension written bit by bit.
fn with_extension(setup: &Setup, number: u64, length: u64, content: &[bool]) -> String {
    let mut writer = Writer::default();
    write(&mut writer, &mut setup.clone(), &[]).expect("writes");
    put_extension(&mut writer.out, number, length, content);
    sealed(&writer.out)
}

fn put_extension(out: &mut BitWriter, number: u64, length: u64, content: &[bool]) {
    out.put(1, 1);
    out.put_whole(number, 2);
    out.put_whole(length, 4);
    for bit in content {
        out.put(u64::from(*bit), 1);
    }
}

#[test]
fn numbers_of_extensions_are_given_once() {
    let numbers: Vec<u32> = extensions().iter().map(|extension| extension.number).collect();
    assert!(numbers.windows(2).all(|pair| pair[0] < pair[1]), "{numbers:?}");
}

#[test]
fn usual_values_write_no_extension() {
    let setup = fine(&[(Some(1), base(editions::LATEST, 1).expect("known").surge_factor)], 1.0);
    assert_eq!(pack_with(&setup, &KNOWN), pack_with(&setup, &[]));
}

#[test]
fn a_link_from_before_an_extension_opens_with_what_it_meant() {
    let setup = fine(&[(Some(1), 2.0), (None, 1.0)], 0.5);
    let old = pack_with(&setup, &[]);
    let opened = unpack_with(&old[1..], &KNOWN).expect("opens");
    let usual = base(editions::LATEST, 1).expect("known").surge_factor;
    assert_eq!(opened.loads.iter().map(|l| l.surge_factor).collect::<Vec<_>>(), [usual, 1.0]);
    assert_eq!(opened.bank.soc_start_frac, 1.0);
}

#[test]
fn extensions_out_of_order_or_twice_are_refused() {
    let setup = plain_setup();
    for (first, second, opens) in [(3, 40, true), (40, 3, false), (3, 3, false)] {
        let mut writer = Writer::default();
        write(&mut writer, &mut setup.clone(), &[]).expect("writes");
        for number in [first, second] {
            let bits: u64 = if number == 3 { 2 } else { 0 };
            put_extension(&mut writer.out, number, bits, &[false; 2][..bits as usize]);
        }
        let opened = unpack_with(&sealed(&writer.out), &KNOWN);
        assert_eq!(opened, if opens { Ok(setup.clone()) } else { Err(Refusal::Corrupt) });
    }
}

#[test]
fn a_row_of_an_edition_comes_back() {
    let load = Load {
        appliance: Some(300),
        draw: Draw::Power { watts: Watts(45.0) },
        usage: Usage::Uses { per_day: 3.0, seconds: 20.0 },
        ..load::plain_load()
    };
    assert_eq!(unpack_row(&pack_row(&load)), Some(load));
}

#[test]
fn a_choice_of_a_newer_page_is_told_as_newer() {
    let mut setup = plain_setup();
    setup.bank.heated = true;
    let mut writer = Writer::default();
    write(&mut writer, &mut setup, &[]).expect("writes");
    let plain = writer.out.clone();
    let mut newer_links = 0;
    for at in 0..plain.len() {
        let mut bytes = plain.bytes().to_vec();
        bytes[at / 8] ^= 0x80 >> (at % 8);
        let opened = unpack(&sealed(&body_of(&bytes, plain.len())));
        newer_links += usize::from(opened == Err(newer("1+")));
    }
    // A bit of the chemistry, one of the voltage, one of the place.
    assert!(newer_links >= 3, "{newer_links}");
}

proptest! {
    #[test]
    fn an_extension_that_is_not_known_is_newer(
        number in 0u64..1_000_000,
        content in prop::collection::vec(any::<bool>(), 0..300),
    ) {
        let text = with_extension(&plain_setup(), number, content.len() as u64, &content);
        prop_assert_eq!(unpack_with(&text, &[]), Err(newer(&format!("1+{number}"))));
        let known = KNOWN.iter().any(|known| u64::from(known.number) == number);
        let opened = unpack_with(&text, &KNOWN);
        let newer = Err(newer(&format!("1+{number}")));
        prop_assert!(known || opened == newer);
    }

    #[test]
    fn an_extension_that_ends_early_is_refused(
        number in 0u64..1_000,
        content in prop::collection::vec(any::<bool>(), 0..40),
        missing in 6u64..10_000,
    ) {
        let length = content.len() as u64 + missing;
        let text = with_extension(&plain_setup(), number, length, &content);
        prop_assert_eq!(unpack_with(&text, &KNOWN), Err(Refusal::Corrupt));
    }

    #[test]
    fn bits_after_the_last_extension_are_refused(
        millionths in 1u32..1_000_000,
        extra in 6u32..60,
    ) {
        let mut setup = fine(&[], f64::from(millionths) / 1_000_000.0 + 1.0);
        let mut writer = Writer::default();
        write(&mut writer, &mut setup, &KNOWN).expect("writes");
        writer.out.put(0, extra);
        prop_assert_eq!(unpack_with(&sealed(&writer.out), &KNOWN), Err(Refusal::Corrupt));
    }

    #[test]
    fn known_extensions_come_back_and_truncated_ones_are_told(
        loads in prop::collection::vec((prop::option::of(1u16..40), 1_000_000u32..=10_000_000), 0..20),
        soc_start in 1_000_000u32..=2_000_000,
        cut in any::<prop::sample::Index>(),
    ) {
        let loads: Vec<(Option<u16>, f64)> =
            loads.into_iter().map(|(id, millionths)| (id, f64::from(millionths) / 1e6)).collect();
        let setup = fine(&loads, f64::from(soc_start) / 1e6);
        let text = pack_with(&setup, &KNOWN);
        let payload = &text[VERSION.len_utf8()..];
        prop_assert_eq!(unpack_with(payload, &KNOWN), Ok(setup.clone()));
        let kept = &payload[..cut.index(payload.len())];
        prop_assert_eq!(unpack_with(kept, &KNOWN), Err(Refusal::Short));
        if pack_with(&setup, &[]) != text {
            let Err(Refusal::Newer(version)) = unpack_with(payload, &[]) else {
                return Err(TestCaseError::fail("an old page opened it"));
            };
            prop_assert!(["1+3", "1+40"].contains(&version.as_str()));
        }
    }

    /// The CRC keeps most foreign bits out; behind it the reader must hold on its own.
    #[test]
    fn any_bits_behind_a_right_crc_open_in_bounds_or_are_refused(
        bytes in prop::collection::vec(any::<u8>(), 0..400),
        cut in 0usize..8,
    ) {
        let body = body_of(&bytes, (bytes.len() * 8).saturating_sub(cut));
        if let Ok(setup) = unpack(&sealed(&body)) {
            let (kept, _) = setup.sanitised();
            prop_assert!(kept.loads.len() <= MAX_LOADS);
            let short = |load: &Load| load.name.chars().count() <= MAX_NAME_CHARS;
            prop_assert!(kept.loads.iter().all(short));
            prop_assert_eq!(kept.clone().sanitised(), (kept, 0));
        }
    }

    /// A body that starts right and then goes wrong gets further in than noise.
    #[test]
    fn a_flipped_bit_behind_a_right_crc_opens_in_bounds_or_is_refused(
        flip in 0usize..4000,
        loads in 1usize..20,
    ) {
        let mut setup = plain_setup();
        let usages = load::plain_usages().into_iter().cycle();
        setup.loads = (0..loads)
            .zip(usages)
            .map(|(i, usage)| Load { usage, appliance: Some(i as u16), ..load::plain_load() })
            .collect();
        setup.solar = vec![power::plain_array(); 2];
        setup.cables = vec![extras::plain_cable(); 3];
        let mut writer = Writer::default();
        writer.whole(&mut 0, 1).expect("writes");
        self::super::setup(&mut writer, &mut setup, &|_| None).expect("writes");
        let mut bytes = writer.out.bytes().to_vec();
        let at = flip % writer.out.len();
        bytes[at / 8] ^= 0x80 >> (at % 8);
        if let Ok(setup) = unpack(&sealed(&body_of(&bytes, writer.out.len()))) {
            let (kept, _) = setup.sanitised();
            prop_assert_eq!(kept.clone().sanitised(), (kept, 0));
        }
    }
}
