use super::*;
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

#[test]
fn the_frozen_defaults_are_carried_in_a_handful_of_characters() {
    let text = pack(&rounded(frozen::setup()));
    assert!(text.len() <= 16, "{text}");
    assert_eq!(unpack(&text[1..]), Ok(frozen::setup()));
}

#[test]
fn the_steps_of_a_link_carry_the_frozen_defaults_exactly() {
    let mut full = frozen::setup();
    full.loads = frozen::usages().map(|usage| Load { usage, ..frozen::load() }).to_vec();
    full.solar = vec![frozen::array()];
    full.other = vec![frozen::other()];
    full.cables = vec![frozen::cable()];
    full.driving.charger = frozen::relay();
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
    assert_eq!(unpack(&sealed(&writer.out)), Err(Refusal::Edition(editions::LATEST + 1)));
}

#[test]
fn bits_left_over_are_refused() {
    let setup = frozen::setup();
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

#[test]
fn a_row_of_an_edition_comes_back() {
    let load = Load {
        appliance: Some(300),
        draw: Draw::Power { watts: Watts(45.0) },
        usage: Usage::Uses { per_day: 3.0, seconds: 20.0 },
        ..frozen::load()
    };
    assert_eq!(unpack_row(&pack_row(&load)), Some(load));
}

proptest! {
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
        let mut setup = frozen::setup();
        let usages = frozen::usages().into_iter().cycle();
        setup.loads = (0..loads)
            .zip(usages)
            .map(|(i, usage)| Load { usage, appliance: Some(i as u16), ..frozen::load() })
            .collect();
        setup.solar = vec![frozen::array(); 2];
        setup.cables = vec![frozen::cable(); 3];
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
