//! Version 1 of the link.
//!
//! After the version character `1` come two characters with the number of characters that follow
//! (base 62), then the payload as [`base62`](super::base62) blocks of bits:
//!
//! | bits | what |
//! |---|---|
//! | 32 | CRC-32/ISO-HDLC of the version character and all bits after the CRC, padded with zeros to whole bytes |
//! | whole number | edition of the catalogue the loads refer to |
//! | rest | the setup: one bit for each part that differs from the frozen defaults, its fields after it |
//! | 0 to 5 | zero bits up to the end of the last character |
//!
//! Whole numbers are exponential Golomb codes, other numbers whole numbers of fixed steps
//! ([`scales`]), choices have fixed numbers ([`codes`]), and what a link leaves out has a frozen
//! value ([`frozen`], [`editions`](super::editions)). None of the three may change: a change means
//! version 2, beside which version 1 stays readable.

mod codes;
mod extras;
mod frozen;
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
use crate::model::{Load, Setup};
use crc::{CRC_32_ISO_HDLC, Crc};

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
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Refusal {
    /// Fewer characters than the length says.
    Short,
    /// The loads refer to an edition of the catalogue that is not known here.
    Edition(u32),
    /// Anything else.
    Corrupt,
}

/// The whole setup, field by field.
fn setup(
    w: &mut dyn Wire,
    setup: &mut Setup,
    base: &dyn Fn(u16) -> Option<Load>,
) -> Result<(), Fault> {
    let left_out = frozen::setup();
    differing(w, &mut setup.name, &left_out.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    flag(w, &mut setup.example)?;
    list(w, &mut setup.loads, MAX_LOADS, 4, frozen::load, |w, index, load| {
        load.id = row_id(index);
        load::load(w, load, base)
    })?;
    differing(w, &mut setup.bank, &left_out.bank, power::bank)?;
    differing(w, &mut setup.inverter, &left_out.inverter, power::inverter)?;
    list(w, &mut setup.solar, MAX_ARRAYS, 0, frozen::array, |w, _, array| power::array(w, array))?;
    differing(w, &mut setup.driving, &left_out.driving, power::driving)?;
    differing(w, &mut setup.hook_up, &left_out.hook_up, power::hook_up)?;
    list(w, &mut setup.other, MAX_OTHER, 0, frozen::other, |w, _, source| power::other(w, source))?;
    differing(w, &mut setup.trip, &left_out.trip, trip::trip)?;
    differing(w, &mut setup.prices, &left_out.prices, extras::prices)?;
    list(w, &mut setup.readings, MAX_READINGS, 0, extras::blank_reading, |w, _, reading| {
        extras::reading(w, reading)
    })?;
    differing(w, &mut setup.correction, &left_out.correction, extras::correction)?;
    list(w, &mut setup.cables, MAX_CABLES, 0, frozen::cable, |w, _, run| extras::cable(w, run))
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
    let done = self::setup(&mut Rounder, &mut kept, &|id| base(latest, id));
    debug_assert_eq!(done, Ok(()), "a sanitised setup can be rounded");
    kept
}

fn base(edition: u32, id: u16) -> Option<Load> {
    editions::row(edition, id).and_then(unpack_row)
}

/// The text of a setup that is [`rounded`].
pub(super) fn pack(setup: &Setup) -> String {
    let mut writer = Writer::default();
    let mut edition = editions::LATEST;
    let done = writer
        .whole(&mut edition, 1)
        .and_then(|()| self::setup(&mut writer, &mut setup.clone(), &|id| base(edition, id)));
    debug_assert_eq!(done, Ok(()), "a rounded setup can be written");
    seal(&writer.out)
}

/// Length and CRC around a body of bits.
fn seal(body: &BitWriter) -> String {
    let mut bits = BitWriter::default();
    bits.put(0, CRC_BITS);
    let mut body_bits = BitReader::new(body.bytes(), body.len());
    while let Some(bit) = body_bits.take(1) {
        bits.put(bit, 1);
    }
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
    open_body(reader)
}

fn open_body(bits: BitReader<'_>) -> Result<Setup, Refusal> {
    let mut reader = Reader { bits };
    let mut edition = 0;
    reader.whole(&mut edition, 1).map_err(|_| Refusal::Corrupt)?;
    if edition > editions::LATEST {
        return Err(Refusal::Edition(edition));
    }
    let mut opened = frozen::setup();
    self::setup(&mut reader, &mut opened, &|id| base(edition, id)).map_err(|_| Refusal::Corrupt)?;
    let filling = u32::try_from(reader.bits.remaining()).unwrap_or(u32::MAX);
    if filling > 5 || reader.bits.take(filling) != Some(0) {
        return Err(Refusal::Corrupt);
    }
    number_rows(&mut opened);
    Ok(opened)
}

/// One row of an edition of the catalogue: a load compared with the frozen plain load alone.
pub(super) fn unpack_row(text: &str) -> Option<Load> {
    let bits = base62::from_text(text)?;
    let mut reader = Reader { bits: BitReader::new(bits.bytes(), bits.len()) };
    let mut row = frozen::load();
    load::load(&mut reader, &mut row, &|_| None).ok()?;
    Some(row)
}

/// The row of a load of the catalogue.
#[cfg(test)]
pub(super) fn pack_row(load: &Load) -> String {
    let mut writer = Writer::default();
    load::load(&mut writer, &mut load.clone(), &|_| None).expect("a load of the catalogue");
    base62::to_text(&writer.out)
}

#[cfg(test)]
mod tests;
