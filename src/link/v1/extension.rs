//! Fields that came after the setup of version 1 was frozen.
//!
//! After the setup each extension that says something is a 1 bit, its number, the number of its
//! bits and its content, numbers rising:
//!
//! | bits | what |
//! |---|---|
//! | 1 | an extension follows |
//! | whole number of order 2 | its number |
//! | whole number of order 4 | bits of its content |
//! | as many | its content |
//!
//! Content of zero bits alone means the usual values and is left out, so a field in an extension is
//! described by [`differing`](crate::link::wire::differing) or
//! [`flag`](crate::link::wire::flag): a zero bit is what a link without the extension says. A page
//! that does not know a number answers that the link is newer.

use crate::link::bits::{BitReader, BitWriter};
use crate::link::wire::{Fault, Reader, Rounder, Scale, Wire, Writer};
use crate::model::{Load, Setup};

/// Order of the code of the number.
const NUMBER_ORDER: u32 = 2;
/// Order of the code of the number of bits.
const LENGTH_ORDER: u32 = 4;

/// The load that an entry of the catalogue starts from, as of the edition of the link.
pub(super) type Base<'a> = &'a dyn Fn(u16) -> Option<Load>;

/// One or more fields under a number. A number once given away is never given to other fields.
#[derive(Clone, Copy)]
pub(super) struct Extension {
    /// Its number.
    pub(super) number: u32,
    /// Hands the fields over.
    pub(super) fields: fn(&mut dyn Wire, &mut Setup, Base<'_>) -> Result<(), Fault>,
}

/// Writes what of the setup goes into extensions; `extensions` have rising numbers.
pub(super) fn write(
    out: &mut BitWriter,
    setup: &mut Setup,
    base: Base<'_>,
    extensions: &[Extension],
) -> Result<(), Fault> {
    for extension in extensions {
        let mut content = Writer::default();
        (extension.fields)(&mut content, setup, base)?;
        if content.out.bytes().iter().any(|byte| *byte != 0) {
            out.put(1, 1);
            out.put_whole(u64::from(extension.number), NUMBER_ORDER);
            out.put_whole(content.out.len() as u64, LENGTH_ORDER);
            out.append(&content.out);
        }
    }
    Ok(())
}

/// What a link without an extension says of its fields: zero bits.
struct Zeros;

impl Wire for Zeros {
    fn bits(&mut self, value: &mut u32, _width: u32) -> Result<(), Fault> {
        *value = 0;
        Ok(())
    }

    fn whole(&mut self, value: &mut u32, _order: u32) -> Result<(), Fault> {
        *value = 0;
        Ok(())
    }

    fn number(&mut self, value: &mut f64, _scale: &Scale) -> Result<(), Fault> {
        *value = 0.0;
        Ok(())
    }

    fn text(&mut self, text: &mut String, _max_chars: usize) -> Result<(), Fault> {
        text.clear();
        Ok(())
    }
}

/// Reads the extensions that follow the setup, up to the first zero bit or the end. Fields of those
/// that are not there get their usual values.
pub(super) fn read(
    bits: &mut BitReader<'_>,
    setup: &mut Setup,
    base: Base<'_>,
    extensions: &[Extension],
) -> Result<(), Fault> {
    for known in extensions {
        (known.fields)(&mut Zeros, setup, base)?;
    }
    let mut before = None;
    loop {
        let mut ahead = bits.clone();
        if ahead.take(1) != Some(1) {
            return Ok(());
        }
        let number = ahead.take_whole(NUMBER_ORDER).ok_or(Fault::Ended)?;
        let number = u32::try_from(number).map_err(|_| Fault::Invalid)?;
        let length = ahead.take_whole(LENGTH_ORDER).ok_or(Fault::Ended)?;
        let length = usize::try_from(length).map_err(|_| Fault::Invalid)?;
        let content = ahead.split(length).ok_or(Fault::Ended)?;
        if before.is_some_and(|before| number <= before) {
            return Err(Fault::Invalid);
        }
        let known = extensions.iter().find(|known| known.number == number);
        let known = known.ok_or(Fault::UnknownExtension(number))?;
        let mut reader = Reader { bits: content };
        (known.fields)(&mut reader, setup, base)?;
        if reader.bits.remaining() > 0 {
            return Err(Fault::Invalid);
        }
        before = Some(number);
        *bits = ahead;
    }
}

/// Brings what goes into extensions to the resolution of a link.
pub(super) fn round(
    setup: &mut Setup,
    base: Base<'_>,
    extensions: &[Extension],
) -> Result<(), Fault> {
    extensions.iter().try_for_each(|known| (known.fields)(&mut Rounder, setup, base))
}
