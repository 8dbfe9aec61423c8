//! Version 1 of the link.
//!
//! After the version character `1` come two characters with the number of characters that follow
//! (base 62), then the payload as [`base62`](super::base62) blocks of bits:
//!
//! | bits | what |
//! |---|---|
//! | 32 | CRC-32/ISO-HDLC of the version character and all bits after the CRC, padded with zeros to whole bytes |
//! | whole number | edition of the catalogue the loads refer to |
//! | some | the setup: one bit for each part that differs from the frozen defaults, its fields after it |
//! | some | extensions: fields that came later ([`extension`]) |
//! | 0 to 5 | zero bits up to the end of the last character |
//!
//! Whole numbers are exponential Golomb codes, other numbers whole numbers of fixed steps
//! ([`Scale`](super::wire::Scale)), choices have fixed numbers ([`choice`]), and what a link leaves
//! out has a frozen value (the functions named `plain_...`, [`editions`](super::editions)). None of
//! the three may change: links that were given away are read with them. Every field is spelt out in
//! the frozen values, so a field added to the model does not compile here until someone says what it
//! meant in the links before it. A new field goes into an extension, a new choice takes a free
//! number; a page that knows neither answers that the link is newer.
//!
//! Steps, numbers, frozen values, order and extensions of a part of the setup stand in one file:
//! [`load`], [`power`], [`trip`], [`extras`].

mod choice;
mod extension;
mod extras;
mod load;
mod power;
mod scales;
mod trip;

use super::base62;
use super::bits::{BitReader, BitWriter};
use super::editions;
use super::wire::{Fault, Reader, Rounder, Wire, Writer, differing, flag, list};
use crate::model::limits::{
    MAX_ARRAYS, MAX_CABLES, MAX_LOADS, MAX_NAME_CHARS, MAX_OTHER, MAX_READINGS,
};
use crate::model::{Load, Setup, Vehicle};
use crc::{CRC_32_ISO_HDLC, Crc};
use extension::{Base, Extension};

/// First character of a version 1 link.
pub(super) const VERSION: char = '1';

/// Characters that tell the length.
const LENGTH_CHARS: usize = 2;

/// Most characters the length can tell.
const MAX_PAYLOAD_CHARS: usize = 62 * 62 - 1;

/// Bits of the CRC.
const CRC_BITS: u32 = 32;

const CRC: Crc<u32> = Crc::<u32>::new(&CRC_32_ISO_HDLC);

/// Why a version 1 payload did not open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Refusal {
    /// Fewer characters than the length says.
    Short,
    /// Written by a newer page, which may write this version: `1.3` with edition 3 of the
    /// catalogue, `1+7` with extension 7, `1+` with a choice that is not known here.
    Newer(String),
    /// Anything else.
    Corrupt,
}

/// What reading stopped at; the CRC already held.
impl From<Fault> for Refusal {
    fn from(fault: Fault) -> Self {
        match fault {
            Fault::UnknownChoice => Self::Newer(format!("{VERSION}+")),
            Fault::UnknownExtension(number) => Self::Newer(format!("{VERSION}+{number}")),
            Fault::Ended | Fault::Invalid => Self::Corrupt,
        }
    }
}

/// All extensions by rising number.
fn extensions() -> Vec<Extension> {
    let parts = [load::EXTENSIONS, power::EXTENSIONS, trip::EXTENSIONS, extras::EXTENSIONS];
    let mut all = parts.concat();
    all.sort_by_key(|extension| extension.number);
    all
}

/// What a link that carries nothing means.
fn plain_setup() -> Setup {
    Setup {
        name: String::new(),
        example: false,
        vehicle: Vehicle::Van,
        loads: Vec::new(),
        bank: power::plain_bank(),
        inverter: power::plain_inverter(),
        solar: Vec::new(),
        driving: power::plain_driving(),
        hook_up: power::plain_hook_up(),
        other: Vec::new(),
        trip: trip::plain_trip(),
        prices: extras::plain_prices(),
        readings: Vec::new(),
        correction: extras::plain_correction(),
        cables: Vec::new(),
    }
}

/// The whole setup, field by field.
fn setup(w: &mut dyn Wire, setup: &mut Setup, base: Base<'_>) -> Result<(), Fault> {
    let left_out = plain_setup();
    differing(w, &mut setup.name, &left_out.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    flag(w, &mut setup.example)?;
    list(w, &mut setup.loads, MAX_LOADS, 4, load::plain_load, |w, index, load| {
        load.id = row_id(index);
        load::load(w, load, base)
    })?;
    differing(w, &mut setup.bank, &left_out.bank, power::bank)?;
    differing(w, &mut setup.inverter, &left_out.inverter, power::inverter)?;
    list(w, &mut setup.solar, MAX_ARRAYS, 0, power::plain_array, |w, _, array| {
        power::array(w, array)
    })?;
    differing(w, &mut setup.driving, &left_out.driving, power::driving)?;
    differing(w, &mut setup.hook_up, &left_out.hook_up, power::hook_up)?;
    list(w, &mut setup.other, MAX_OTHER, 0, power::plain_other, |w, _, source| {
        power::other(w, source)
    })?;
    differing(w, &mut setup.trip, &left_out.trip, trip::trip)?;
    differing(w, &mut setup.prices, &left_out.prices, extras::prices)?;
    list(w, &mut setup.readings, MAX_READINGS, 0, extras::blank_reading, |w, _, reading| {
        extras::reading(w, reading)
    })?;
    differing(w, &mut setup.correction, &left_out.correction, extras::correction)?;
    list(w, &mut setup.cables, MAX_CABLES, 0, extras::plain_cable, |w, _, run| {
        extras::cable(w, run)
    })
}

/// Ids are not carried: rows are numbered from 1.
fn row_id(index: usize) -> u32 {
    u32::try_from(index).unwrap_or(u32::MAX - 1) + 1
}

/// Numbers the loads by row and lets the cables follow; a cable of no load names none.
fn number_rows(setup: &mut Setup) {
    let old: Vec<u32> = setup.loads.iter().map(|load| load.id).collect();
    for (index, load) in setup.loads.iter_mut().enumerate() {
        load.id = row_id(index);
    }
    for run in &mut setup.cables {
        run.load_id = run.load_id.and_then(|id| old.iter().position(|&o| o == id)).map(row_id);
    }
}

/// The setup as a link carries it.
pub(super) fn rounded(setup: Setup) -> Setup {
    let (mut kept, _) = setup.sanitised();
    number_rows(&mut kept);
    let latest = editions::LATEST;
    let base = |id| base(latest, id);
    let done = self::setup(&mut Rounder, &mut kept, &base)
        .and_then(|()| extension::round(&mut kept, &base, &extensions()));
    debug_assert_eq!(done, Ok(()), "a sanitised setup can be rounded");
    kept
}

fn base(edition: u32, id: u16) -> Option<Load> {
    editions::row(edition, id).and_then(unpack_row)
}

/// The text of a setup that is [`rounded`].
pub(super) fn pack(setup: &Setup) -> String {
    pack_with(setup, &extensions())
}

fn pack_with(setup: &Setup, extensions: &[Extension]) -> String {
    let mut writer = Writer::default();
    let done = write(&mut writer, &mut setup.clone(), extensions);
    debug_assert_eq!(done, Ok(()), "a rounded setup can be written");
    seal(&writer.out)
}

fn write(writer: &mut Writer, setup: &mut Setup, extensions: &[Extension]) -> Result<(), Fault> {
    let mut edition = editions::LATEST;
    writer.whole(&mut edition, 1)?;
    let base = |id| base(edition, id);
    self::setup(writer, setup, &base)?;
    extension::write(&mut writer.out, setup, &base, extensions)
}

/// Length and CRC around a body of bits.
fn seal(body: &BitWriter) -> String {
    let mut bits = BitWriter::default();
    bits.put(0, CRC_BITS);
    bits.append(body);
    let chars = base62::to_text(&bits).chars().count();
    bits.put(0, u32::try_from(base62::capacity_bits(chars) - bits.len()).unwrap_or(0));
    let mut sealed = BitWriter::default();
    sealed.put(u64::from(checksum(&bits)), CRC_BITS);
    let mut rest = BitReader::new(bits.bytes(), bits.len());
    rest.take(CRC_BITS);
    while let Some(bit) = rest.take(1) {
        sealed.put(bit, 1);
    }
    let payload = base62::to_text(&sealed);
    let length = payload.len().min(MAX_PAYLOAD_CHARS) as u64;
    let mut text = String::from(VERSION);
    text.push(base62::character(length / 62));
    text.push(base62::character(length));
    text.push_str(&payload);
    text
}

/// CRC of the version and of all bits after the place of the CRC.
fn checksum(bits: &BitWriter) -> u32 {
    let mut digest = CRC.digest();
    digest.update(&[VERSION as u8]);
    digest.update(bits.bytes().get(CRC_BITS as usize / 8..).unwrap_or_default());
    digest.finalize()
}

/// The setup behind the characters after [`VERSION`]; what follows the stated length is ignored.
pub(super) fn unpack(text: &str) -> Result<Setup, Refusal> {
    unpack_with(text, &extensions())
}

fn unpack_with(text: &str, extensions: &[Extension]) -> Result<Setup, Refusal> {
    let length = text.get(..LENGTH_CHARS).ok_or(Refusal::Short)?;
    let length = length.chars().try_fold(0, |sum, c| Some(sum * 62 + base62::digit(c)?));
    let length = length.ok_or(Refusal::Corrupt)? as usize;
    let payload = text.get(LENGTH_CHARS..LENGTH_CHARS + length).ok_or(Refusal::Short)?;
    let bits = base62::from_text(payload).ok_or(Refusal::Corrupt)?;
    let mut reader = BitReader::new(bits.bytes(), bits.len());
    let crc = reader.take(CRC_BITS).ok_or(Refusal::Corrupt)?;
    if crc != u64::from(checksum(&bits)) {
        return Err(Refusal::Corrupt);
    }
    open_body(reader, extensions)
}

fn open_body(bits: BitReader<'_>, extensions: &[Extension]) -> Result<Setup, Refusal> {
    let mut reader = Reader { bits };
    let mut edition = 0;
    reader.whole(&mut edition, 1).map_err(|_| Refusal::Corrupt)?;
    if edition > editions::LATEST {
        return Err(Refusal::Newer(format!("{VERSION}.{edition}")));
    }
    let mut opened = plain_setup();
    let base = |id| base(edition, id);
    self::setup(&mut reader, &mut opened, &base)?;
    extension::read(&mut reader.bits, &mut opened, &base, extensions)?;
    let filling = u32::try_from(reader.bits.remaining()).unwrap_or(u32::MAX);
    if filling > 5 || reader.bits.take(filling) != Some(0) {
        return Err(Refusal::Corrupt);
    }
    number_rows(&mut opened);
    Ok(opened)
}

/// One row of an edition of the catalogue: a load compared with the frozen plain load alone, and its
/// fields that came later.
pub(super) fn unpack_row(text: &str) -> Option<Load> {
    let bits = base62::from_text(text)?;
    let mut reader = Reader { bits: BitReader::new(bits.bytes(), bits.len()) };
    let mut row = Setup { loads: vec![load::plain_load()], ..plain_setup() };
    load::load(&mut reader, row.loads.first_mut()?, &|_| None).ok()?;
    extension::read(&mut reader.bits, &mut row, &|_| None, &extensions()).ok()?;
    row.loads.pop()
}

/// The row of a load of the catalogue.
#[cfg(test)]
pub(super) fn pack_row(load: &Load) -> String {
    let mut writer = Writer::default();
    let mut row = Setup { loads: vec![load.clone()], ..plain_setup() };
    load::load(&mut writer, &mut row.loads[0], &|_| None).expect("a load of the catalogue");
    extension::write(&mut writer.out, &mut row, &|_| None, &extensions()).expect("its fields");
    base62::to_text(&writer.out)
}

#[cfg(test)]
mod tests;
