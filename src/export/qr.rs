//! A QR code of a link, for the phone next to you.
//!
//! ISO/IEC 18004, made by the `qrcodegen` crate; drawn as one SVG path of runs of dark modules.

use qrcodegen::{QrCode, QrCodeEcc};
use std::fmt;

/// Most bytes a code holds: version 40 at the lowest error correction, byte mode
/// (ISO/IEC 18004, table 7: 2953).
pub const MAX_BYTES: usize = 2953;

/// Light modules around the code that readers need (ISO/IEC 18004: 4).
pub const QUIET_ZONE: u32 = 4;

/// Codes of more modules a side are hard to read from a small screen (common practice, no source).
pub const EASY_MODULES: u32 = 97;

/// The text does not fit a code.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct QrTooLong {
    /// Its length [bytes].
    pub bytes: usize,
}

impl fmt::Display for QrTooLong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} bytes, a QR code holds {MAX_BYTES}", self.bytes)
    }
}

impl std::error::Error for QrTooLong {}

/// Dark and light modules of a code.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct QrMatrix {
    size: u32,
    dark: Vec<bool>,
}

/// The code of a text, usually an address. Error correction is as high as the size allows for free.
///
/// # Errors
///
/// [`QrTooLong`] where the text has more than about [`MAX_BYTES`] bytes.
pub fn qr_matrix(text: &str) -> Result<QrMatrix, QrTooLong> {
    let too_long = QrTooLong { bytes: text.len() };
    // Text of digits alone would fit beyond; nobody needs it.
    if text.len() > MAX_BYTES {
        return Err(too_long);
    }
    let code = QrCode::encode_text(text, QrCodeEcc::Low).map_err(|_| too_long)?;
    let size = code.size();
    let dark = (0..size).flat_map(|y| (0..size).map(move |x| (x, y)));
    let dark = dark.map(|(x, y)| code.get_module(x, y)).collect();
    Ok(QrMatrix { size: u32::try_from(size).unwrap_or(0), dark })
}

impl QrMatrix {
    /// Modules a side, without the quiet zone: 21 to 177.
    #[must_use]
    pub fn size(&self) -> u32 {
        self.size
    }

    /// Whether the module is dark; those outside are light.
    #[must_use]
    pub fn is_dark(&self, x: u32, y: u32) -> bool {
        let inside = x < self.size && y < self.size;
        let at = y as usize * self.size as usize + x as usize;
        inside && self.dark.get(at).copied().unwrap_or(false)
    }

    /// Whether an ordinary phone reads it from an ordinary screen.
    #[must_use]
    pub fn is_easy(&self) -> bool {
        self.size <= EASY_MODULES
    }

    /// `viewBox` of an SVG with the quiet zone; one unit a module. The background must be light
    /// also where the page is dark.
    #[must_use]
    pub fn view_box(&self) -> String {
        let side = self.size + 2 * QUIET_ZONE;
        format!("-{QUIET_ZONE} -{QUIET_ZONE} {side} {side}")
    }

    /// The dark modules as the `d` of an SVG path; set `shape-rendering` to `crispEdges`.
    #[must_use]
    pub fn svg_path(&self) -> String {
        let mut path = String::new();
        for y in 0..self.size {
            let mut x = 0;
            while x < self.size {
                let run = (x..self.size).take_while(|&x| self.is_dark(x, y)).count() as u32;
                if run > 0 {
                    path.push_str(&format!("M{x} {y}h{run}v1h-{run}z"));
                }
                x += run.max(1);
            }
        }
        path
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What the path paints, module by module.
    fn painted(matrix: &QrMatrix) -> Vec<bool> {
        let size = matrix.size as usize;
        let mut dark = vec![false; size * size];
        for run in matrix.svg_path().split('M').skip(1) {
            let (start, rest) = run.split_once('h').expect("a run");
            let (x, y) = start.split_once(' ').expect("a start");
            let (length, rest) = rest.split_once('v').expect("a length");
            assert_eq!(rest, format!("1h-{length}z"));
            let x: usize = x.parse().expect("a number");
            let y: usize = y.parse().expect("a number");
            let length: usize = length.parse().expect("a number");
            dark[y * size + x..y * size + x + length].fill(true);
        }
        dark
    }

    /// Checked with another project's reader: the `rqrr` crate.
    fn read(matrix: &QrMatrix) -> String {
        const SCALE: usize = 4;
        let side = (matrix.size + 2 * QUIET_ZONE) as usize * SCALE;
        let module = |at: usize| (at / SCALE) as u32;
        let grey = |x: usize, y: usize| {
            let (x, y) = (module(x).checked_sub(QUIET_ZONE), module(y).checked_sub(QUIET_ZONE));
            let dark = x.zip(y).is_some_and(|(x, y)| matrix.is_dark(x, y));
            if dark { 0 } else { 255 }
        };
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, grey);
        let grids = image.detect_grids();
        grids.first().expect("a code").decode().expect("readable").1
    }

    #[test]
    fn another_reader_reads_the_code() {
        for chars in [1, 60, 300, 700, 1800] {
            let text = format!("https://camp.example/#{}", "1aZ".repeat(chars / 3));
            let matrix = qr_matrix(&text).expect("fits");
            assert_eq!(read(&matrix), text);
        }
    }

    #[test]
    fn the_path_paints_the_code() {
        let matrix = qr_matrix("https://camp.example/#1abc").expect("fits");
        assert_eq!(painted(&matrix), matrix.dark);
        assert_eq!(matrix.view_box(), format!("-4 -4 {0} {0}", matrix.size() + 8));
        assert!(!matrix.is_dark(matrix.size(), 0) && !matrix.is_dark(0, u32::MAX));
    }

    #[test]
    fn the_limit_is_that_of_the_standard() {
        assert_eq!(qr_matrix(&"a".repeat(MAX_BYTES)).map(|m| m.size()), Ok(177));
        let bytes = MAX_BYTES + 1;
        assert_eq!(qr_matrix(&"a".repeat(bytes)), Err(QrTooLong { bytes }));
    }

    #[test]
    fn a_typical_link_is_easy_to_read() {
        let link = format!("https://somewhere.example/nightbank/#{}", "x".repeat(300));
        assert!(qr_matrix(&link).expect("fits").is_easy());
        assert!(!qr_matrix(&"x".repeat(1800)).expect("fits").is_easy());
    }
}
