//! Single bits, most significant first, and whole numbers of any size in few of them.

/// Longest run of zeros before a whole number; longer ones are no number of ours.
const MAX_PREFIX: u32 = 40;

/// Collects bits.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct BitWriter {
    bytes: Vec<u8>,
    len: usize,
}

impl BitWriter {
    /// The lowest `width` bits of `value`, highest first. `width` is at most 64.
    pub(super) fn put(&mut self, value: u64, width: u32) {
        for shift in (0..width).rev() {
            if self.len.is_multiple_of(8) {
                self.bytes.push(0);
            }
            if (value >> shift) & 1 == 1
                && let Some(byte) = self.bytes.last_mut()
            {
                *byte |= 0x80 >> (self.len % 8);
            }
            self.len += 1;
        }
    }

    /// A whole number in an exponential Golomb code of order `order`: numbers below 2^order take
    /// order + 1 bits, every doubling beyond takes two more.
    pub(super) fn put_whole(&mut self, value: u64, order: u32) {
        let shifted = value.saturating_add(1 << order);
        let width = 64 - shifted.leading_zeros();
        self.put(0, width - 1 - order);
        self.put(shifted, width);
    }

    /// All bits of `more`.
    pub(super) fn append(&mut self, more: &Self) {
        let mut bits = BitReader::new(&more.bytes, more.len);
        while let Some(bit) = bits.take(1) {
            self.put(bit, 1);
        }
    }

    /// The bits, the last byte filled up with zeros.
    pub(super) fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// Bits written.
    pub(super) fn len(&self) -> usize {
        self.len
    }
}

/// Hands bits out again.
#[derive(Clone, Debug)]
pub(super) struct BitReader<'a> {
    bytes: &'a [u8],
    at: usize,
    end: usize,
}

impl<'a> BitReader<'a> {
    /// The first `len` bits of `bytes`, or all of them where there are fewer.
    pub(super) fn new(bytes: &'a [u8], len: usize) -> Self {
        Self { bytes, at: 0, end: len.min(bytes.len() * 8) }
    }

    /// Bits not read yet.
    pub(super) fn remaining(&self) -> usize {
        self.end - self.at
    }

    /// The next `len` bits as a reader of their own; `None` where fewer are left.
    pub(super) fn split(&mut self, len: usize) -> Option<Self> {
        if self.remaining() < len {
            return None;
        }
        let part = Self { bytes: self.bytes, at: self.at, end: self.at + len };
        self.at += len;
        Some(part)
    }

    /// The next `width` bits, at most 64; `None` where fewer are left.
    pub(super) fn take(&mut self, width: u32) -> Option<u64> {
        if self.remaining() < width as usize {
            return None;
        }
        let mut value = 0;
        for _ in 0..width {
            let byte = self.bytes.get(self.at / 8)?;
            value = value << 1 | u64::from(byte >> (7 - self.at % 8) & 1);
            self.at += 1;
        }
        Some(value)
    }

    /// The next whole number of order `order`; `None` at the end or where it is no number of ours.
    pub(super) fn take_whole(&mut self, order: u32) -> Option<u64> {
        let mut prefix = 0;
        while self.take(1)? == 0 {
            prefix += 1;
            if prefix > MAX_PREFIX {
                return None;
            }
        }
        let rest = self.take(prefix + order)?;
        Some((1 << (prefix + order)) + rest - (1 << order))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn whole_numbers_come_back_in_the_stated_width() {
        for order in 0..9 {
            for value in (0..700).chain([65_535, 1 << 20, 100_000_000, (2 << MAX_PREFIX) - 2]) {
                let mut bits = BitWriter::default();
                bits.put_whole(value, order);
                let mut width = order + 1;
                while value >= (1 << order) * ((1 << ((width - order).div_ceil(2))) - 1) {
                    width += 2;
                }
                assert_eq!(bits.len() as u32, width, "{value} in order {order}");
                let mut reader = BitReader::new(bits.bytes(), bits.len());
                assert_eq!(reader.take_whole(order), Some(value));
                assert_eq!(reader.remaining(), 0);
            }
        }
    }

    #[test]
    fn the_end_is_an_end() {
        let mut reader = BitReader::new(&[0xff], 3);
        assert_eq!(reader.take(4), None);
        assert_eq!(reader.take(3), Some(7));
        assert_eq!(reader.take(1), None);
        assert_eq!(BitReader::new(&[0; 64], 512).take_whole(0), None);
        // 41 zeros, one more than any number of ours has.
        let long = [0, 0, 0, 0, 0, 0x7f, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff];
        assert_eq!(BitReader::new(&long, 96).take_whole(0), None);
    }
}
