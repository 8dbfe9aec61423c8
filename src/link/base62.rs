//! Bits as letters and digits.
//!
//! Autolinkers and forums leave letters and digits alone; everything else is cut, escaped or
//! turned into emphasis by some of them. Ten characters of 62 hold 62^10 > 2^59 values, so bits go
//! in blocks of 59 to ten characters (5.9 bits a character, 0.9 % above the ideal 5.954); a last,
//! shorter block takes as few characters as hold it. Blocks fit a `u64`, the work grows linearly,
//! and the start of a text can be read without its end, which a single big number would not allow.

use super::bits::{BitReader, BitWriter};

const ALPHABET: &[u8; 62] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";

/// Characters of a full block.
const BLOCK_CHARS: usize = 10;

/// Bits that fit in 0..=10 characters: floor(n log2 62).
const BITS_IN_CHARS: [u32; BLOCK_CHARS + 1] = [0, 5, 11, 17, 23, 29, 35, 41, 47, 53, 59];

/// Bits of a full block.
const BLOCK_BITS: u32 = BITS_IN_CHARS[BLOCK_CHARS];

/// Value of one character, 0..62.
pub(super) fn digit(c: char) -> Option<u32> {
    match c {
        '0'..='9' => Some(c as u32 - '0' as u32),
        'A'..='Z' => Some(c as u32 - 'A' as u32 + 10),
        'a'..='z' => Some(c as u32 - 'a' as u32 + 36),
        _ => None,
    }
}

/// Character of a value; values past 61 wrap.
pub(super) fn character(digit: u64) -> char {
    char::from(ALPHABET[(digit % 62) as usize])
}

/// Bits that `chars` characters carry.
pub(super) fn capacity_bits(chars: usize) -> usize {
    let last = BITS_IN_CHARS[chars % BLOCK_CHARS];
    chars / BLOCK_CHARS * BLOCK_BITS as usize + last as usize
}

/// All bits written so far as text; the last block is filled up with zero bits.
pub(super) fn to_text(bits: &BitWriter) -> String {
    let mut reader = BitReader::new(bits.bytes(), bits.len());
    let mut text = String::new();
    while reader.remaining() > 0 {
        let left = u32::try_from(reader.remaining()).unwrap_or(u32::MAX).min(BLOCK_BITS);
        let chars = BITS_IN_CHARS.iter().position(|&fits| fits >= left).unwrap_or(BLOCK_CHARS);
        let mut block = reader.take(left).unwrap_or(0) << (BITS_IN_CHARS[chars] - left);
        let mut digits = ['0'; BLOCK_CHARS];
        for digit in digits[..chars].iter_mut().rev() {
            *digit = character(block);
            block /= 62;
        }
        text.extend(&digits[..chars]);
    }
    text
}

/// The bits behind a text of letters and digits; `None` where a character is neither or a block
/// holds more than its bits.
pub(super) fn from_text(text: &str) -> Option<BitWriter> {
    let digits: Vec<u32> = text.chars().map(digit).collect::<Option<_>>()?;
    let mut bits = BitWriter::default();
    for block in digits.chunks(BLOCK_CHARS) {
        let value = block.iter().fold(0u64, |value, &digit| value * 62 + u64::from(digit));
        let width = BITS_IN_CHARS[block.len()];
        if value >> width != 0 {
            return None;
        }
        bits.put(value, width);
    }
    Some(bits)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_block_holds_its_bits_and_not_one_more() {
        for (chars, &bits) in BITS_IN_CHARS.iter().enumerate().skip(1) {
            let values = 62f64.powi(i32::try_from(chars).unwrap_or(0));
            assert!(values >= 2f64.powi(bits as i32) && values < 2f64.powi(bits as i32 + 1));
        }
    }

    #[test]
    fn every_length_comes_back_with_fewer_than_six_bits_of_filling() {
        for len in 0..200u32 {
            let mut bits = BitWriter::default();
            for i in 0..len {
                bits.put(u64::from(i % 3 != 1), 1);
            }
            let text = to_text(&bits);
            let back = from_text(&text).expect("own text reads");
            assert_eq!(back.len(), capacity_bits(text.len()));
            let filling = back.len() - bits.len();
            assert!(filling < 6, "{filling} bits of filling after {len}");
            let mut reader = BitReader::new(back.bytes(), back.len());
            for i in 0..len {
                assert_eq!(reader.take(1), Some(u64::from(i % 3 != 1)));
            }
        }
    }

    #[test]
    fn a_block_past_its_bits_is_refused() {
        assert!(from_text("zzzzzzzzzz").is_none());
        assert!(from_text("z").is_none());
        assert!(from_text("V").is_some(), "31 fits five bits");
        assert!(from_text("a-b").is_none());
    }
}
