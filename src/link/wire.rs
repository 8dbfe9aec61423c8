//! Reads, writes and rounds the fields of a link by one description of the format.
//!
//! The format is described once, as functions that hand every field to a [`Wire`]. The writer turns
//! the field into bits, the reader fills it from bits, and the rounder only brings it to the
//! resolution a link carries. Writer and reader therefore cannot disagree on order or width.

use super::bits::{BitReader, BitWriter};
use crate::model::limits::Range;

/// Why reading stopped. Writing and rounding never stop.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fault {
    /// The bits ended inside a field.
    Ended,
    /// A value that no writer writes.
    Invalid,
    /// The number of a choice that is not known here: a newer page wrote it.
    UnknownChoice,
    /// The number of an extension that is not known here: a newer page wrote it.
    UnknownExtension(u32),
}

/// How a number becomes a whole number of steps.
#[derive(Clone, Copy, Debug)]
pub(super) struct Scale {
    /// What a setup may hold; steps are rounded to stay inside.
    pub(super) range: Range,
    /// Steps in one unit: 100 for 0.01.
    pub(super) per_unit: u32,
    /// Coarser strides in steps, widest first, the last one 1; a number takes the widest it is a
    /// multiple of. Typed numbers are mostly round, so this saves bits.
    pub(super) strides: &'static [u32],
    /// Order of the exponential Golomb code of the number of strides.
    pub(super) order: u32,
    /// Negative numbers occur.
    pub(super) signed: bool,
}

impl Scale {
    /// Steps of numbers that are never negative.
    pub(super) const fn unsigned(
        range: Range,
        per_unit: u32,
        strides: &'static [u32],
        order: u32,
    ) -> Self {
        Self { range, per_unit, strides, order, signed: false }
    }

    /// Steps of numbers that may be negative.
    pub(super) const fn signed(
        range: Range,
        per_unit: u32,
        strides: &'static [u32],
        order: u32,
    ) -> Self {
        Self { range, per_unit, strides, order, signed: true }
    }

    /// The nearest step inside the range.
    fn steps(&self, value: f64) -> i64 {
        let per = f64::from(self.per_unit);
        // A bound such as 0.95 may land a hair beside its step.
        let (low, high) = (self.range.min * per - 1e-6, self.range.max * per + 1e-6);
        (value * per).round().clamp(low.ceil(), high.floor().max(low.ceil())) as i64
    }

    /// Dividing a whole number by a whole number gives the very number a decimal literal gives.
    fn value(&self, steps: i64) -> f64 {
        steps as f64 / f64::from(self.per_unit)
    }
}

/// Something that fields are handed to.
pub(super) trait Wire {
    /// A whole number of `width` bits.
    fn bits(&mut self, value: &mut u32, width: u32) -> Result<(), Fault>;

    /// A whole number that is mostly below 2^order.
    fn whole(&mut self, value: &mut u32, order: u32) -> Result<(), Fault>;

    /// A number at the resolution of `scale`.
    fn number(&mut self, value: &mut f64, scale: &Scale) -> Result<(), Fault>;

    /// Text of at most `max_chars` characters.
    fn text(&mut self, text: &mut String, max_chars: usize) -> Result<(), Fault>;
}

/// Writes bits.
#[derive(Debug, Default)]
pub(super) struct Writer {
    /// What was written.
    pub(super) out: BitWriter,
}

impl Wire for Writer {
    fn bits(&mut self, value: &mut u32, width: u32) -> Result<(), Fault> {
        self.out.put(u64::from(*value), width);
        Ok(())
    }

    fn whole(&mut self, value: &mut u32, order: u32) -> Result<(), Fault> {
        self.out.put_whole(u64::from(*value), order);
        Ok(())
    }

    fn number(&mut self, value: &mut f64, scale: &Scale) -> Result<(), Fault> {
        let steps = scale.steps(*value);
        let last = scale.strides.len().saturating_sub(1);
        let pick = scale.strides.iter().position(|&stride| steps % i64::from(stride) == 0);
        let pick = pick.unwrap_or(last);
        for _ in 0..pick {
            self.out.put(1, 1);
        }
        if pick < last {
            self.out.put(0, 1);
        }
        let stride = scale.strides.get(pick).copied().unwrap_or(1);
        let count = steps / i64::from(stride);
        let count = if scale.signed { zigzag(count) } else { count.unsigned_abs() };
        self.out.put_whole(count, scale.order);
        Ok(())
    }

    /// One bit says plain ASCII, then the length, then 7 bits a character; otherwise the length of
    /// the UTF-8 in bytes, then its bytes.
    fn text(&mut self, text: &mut String, _max_chars: usize) -> Result<(), Fault> {
        let (wide, width) = if text.is_ascii() { (0, 7) } else { (1, 8) };
        self.out.put(wide, 1);
        self.out.put_whole(text.len() as u64, 3);
        for byte in text.bytes() {
            self.out.put(u64::from(byte), width);
        }
        Ok(())
    }
}

/// Reads bits.
#[derive(Debug)]
pub(super) struct Reader<'a> {
    /// What is left to read.
    pub(super) bits: BitReader<'a>,
}

impl Reader<'_> {
    fn take(&mut self, width: u32) -> Result<u64, Fault> {
        self.bits.take(width).ok_or(Fault::Ended)
    }

    fn take_whole(&mut self, order: u32) -> Result<u64, Fault> {
        self.bits.take_whole(order).ok_or(Fault::Ended)
    }
}

impl Wire for Reader<'_> {
    fn bits(&mut self, value: &mut u32, width: u32) -> Result<(), Fault> {
        *value = u32::try_from(self.take(width)?).map_err(|_| Fault::Invalid)?;
        Ok(())
    }

    fn whole(&mut self, value: &mut u32, order: u32) -> Result<(), Fault> {
        *value = u32::try_from(self.take_whole(order)?).map_err(|_| Fault::Invalid)?;
        Ok(())
    }

    fn number(&mut self, value: &mut f64, scale: &Scale) -> Result<(), Fault> {
        let last = scale.strides.len().saturating_sub(1);
        let mut pick = 0;
        while pick < last && self.take(1)? == 1 {
            pick += 1;
        }
        let stride = i64::from(scale.strides.get(pick).copied().unwrap_or(1));
        let count = self.take_whole(scale.order)?;
        let count = if scale.signed {
            unzigzag(count)
        } else {
            i64::try_from(count).map_err(|_| Fault::Invalid)?
        };
        *value = scale.value(count.checked_mul(stride).ok_or(Fault::Invalid)?);
        Ok(())
    }

    fn text(&mut self, text: &mut String, max_chars: usize) -> Result<(), Fault> {
        let wide = self.take(1)? == 1;
        let len = usize::try_from(self.take_whole(3)?).map_err(|_| Fault::Invalid)?;
        let (width, longest) = if wide { (8, max_chars * 4) } else { (7, max_chars) };
        if len > longest {
            return Err(Fault::Invalid);
        }
        let mut bytes = Vec::with_capacity(len);
        for _ in 0..len {
            bytes.push(u8::try_from(self.take(width)?).map_err(|_| Fault::Invalid)?);
        }
        *text = String::from_utf8(bytes).map_err(|_| Fault::Invalid)?;
        Ok(())
    }
}

/// Brings numbers to the resolution of a link, in place.
#[derive(Debug, Default)]
pub(super) struct Rounder;

impl Wire for Rounder {
    fn bits(&mut self, _value: &mut u32, _width: u32) -> Result<(), Fault> {
        Ok(())
    }

    fn whole(&mut self, _value: &mut u32, _order: u32) -> Result<(), Fault> {
        Ok(())
    }

    fn number(&mut self, value: &mut f64, scale: &Scale) -> Result<(), Fault> {
        *value = scale.value(scale.steps(*value));
        Ok(())
    }

    fn text(&mut self, _text: &mut String, _max_chars: usize) -> Result<(), Fault> {
        Ok(())
    }
}

/// 0, -1, 1, -2, 2 ... become 0, 1, 2, 3, 4 ...
fn zigzag(value: i64) -> u64 {
    ((value << 1) ^ (value >> 63)) as u64
}

fn unzigzag(code: u64) -> i64 {
    ((code >> 1) as i64) ^ -((code & 1) as i64)
}

/// A yes or no in one bit.
pub(super) fn flag(w: &mut dyn Wire, value: &mut bool) -> Result<(), Fault> {
    let mut bit = u32::from(*value);
    w.bits(&mut bit, 1)?;
    *value = bit == 1;
    Ok(())
}

/// One bit says whether the value differs from `base`; `body` follows only where it does.
pub(super) fn differing<T: PartialEq + Clone>(
    w: &mut dyn Wire,
    value: &mut T,
    base: &T,
    body: impl FnOnce(&mut dyn Wire, &mut T) -> Result<(), Fault>,
) -> Result<(), Fault> {
    let mut differs = value != base;
    flag(w, &mut differs)?;
    if differs {
        body(w, value)
    } else {
        value.clone_from(base);
        Ok(())
    }
}

/// A number that is mostly what `base` says.
pub(super) fn differing_number(
    w: &mut dyn Wire,
    value: &mut f64,
    base: f64,
    scale: &Scale,
) -> Result<(), Fault> {
    differing(w, value, &base, |w, value| w.number(value, scale))
}

/// One bit says whether there is a value; `blank` is what the reader fills.
pub(super) fn optional<T>(
    w: &mut dyn Wire,
    value: &mut Option<T>,
    blank: impl FnOnce() -> T,
    body: impl FnOnce(&mut dyn Wire, &mut T) -> Result<(), Fault>,
) -> Result<(), Fault> {
    let mut there = value.is_some();
    flag(w, &mut there)?;
    if there {
        body(w, value.get_or_insert_with(blank))
    } else {
        *value = None;
        Ok(())
    }
}

/// The number of items, then each; more than `max` is refused before anything is set aside.
pub(super) fn list<T>(
    w: &mut dyn Wire,
    items: &mut Vec<T>,
    max: usize,
    order: u32,
    blank: impl Fn() -> T,
    mut each: impl FnMut(&mut dyn Wire, usize, &mut T) -> Result<(), Fault>,
) -> Result<(), Fault> {
    let mut count = u32::try_from(items.len()).unwrap_or(u32::MAX);
    w.whole(&mut count, order)?;
    let count = count as usize;
    if count > max {
        return Err(Fault::Invalid);
    }
    items.resize_with(count, blank);
    for (index, item) in items.iter_mut().enumerate() {
        each(w, index, item)?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    const TENTHS: Scale = Scale {
        range: Range { min: -5.0, max: 5.0 },
        per_unit: 10,
        strides: &[10, 1],
        order: 2,
        signed: true,
    };

    #[test]
    fn typed_decimals_come_back_exactly() {
        for tenth in -50..=50 {
            let typed: f64 = format!("{}", f64::from(tenth) / 10.0).parse().expect("a number");
            let mut writer = Writer::default();
            writer.number(&mut typed.clone(), &TENTHS).expect("writes");
            let bits = BitReader::new(writer.out.bytes(), writer.out.len());
            let mut back = f64::NAN;
            Reader { bits }.number(&mut back, &TENTHS).expect("reads");
            assert_eq!(back, typed);
        }
    }

    #[test]
    fn rounding_stays_inside_the_range() {
        let odd = Scale { range: Range { min: -4.97, max: 4.97 }, ..TENTHS };
        for (value, rounded) in [(4.97, 4.9), (-4.97, -4.9), (0.05, 0.1), (0.04, 0.0)] {
            let mut there = value;
            Rounder.number(&mut there, &odd).expect("rounds");
            assert_eq!(there, rounded);
        }
    }

    #[test]
    fn round_numbers_are_shorter() {
        let width = |value: f64| {
            let mut writer = Writer::default();
            writer.number(&mut value.clone(), &TENTHS).expect("writes");
            writer.out.len()
        };
        assert!(width(3.0) < width(2.9));
    }

    #[test]
    fn signs_fold() {
        for value in [-3, -2, -1, 0, 1, 2, i64::from(i32::MAX), i64::from(i32::MIN)] {
            assert_eq!(unzigzag(zigzag(value)), value);
        }
        assert_eq!(zigzag(-1), 1);
    }

    #[test]
    fn a_list_longer_than_allowed_is_refused_before_it_is_filled() {
        let mut writer = Writer::default();
        writer.whole(&mut 4_000_000_000, 3).expect("writes");
        let bits = BitReader::new(writer.out.bytes(), writer.out.len());
        let mut items: Vec<u8> = Vec::new();
        let read = list(&mut Reader { bits }, &mut items, 64, 3, || 0, |_, _, _| Ok(()));
        assert_eq!(read, Err(Fault::Invalid));
        assert_eq!(items.capacity(), 0);
    }
}
