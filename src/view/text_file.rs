//! Files of text, however they are encoded.

use crate::import::table::{MAX_TEXT_BYTES, encoding_label};
use js_sys::Uint8Array;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, TextDecoder};

/// Why there is no text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextFileError {
    /// More than [`MAX_TEXT_BYTES`].
    TooLarge {
        /// Size [bytes].
        bytes: usize,
    },
    /// The browser cannot read it.
    Unread,
}

/// The text in a file.
///
/// # Errors
///
/// [`TextFileError`]; a file that is too large is not read at all.
pub async fn read_text(file: &Blob) -> Result<String, TextFileError> {
    if file.size() > MAX_TEXT_BYTES as f64 {
        return Err(TextFileError::TooLarge { bytes: file.size() as usize });
    }
    decoded(file).await.ok_or(TextFileError::Unread)
}

async fn decoded(file: &Blob) -> Option<String> {
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    let bytes = Uint8Array::new(&buffer).to_vec();
    // Its byte order mark goes, as browsers do it.
    TextDecoder::new_with_label(encoding_label(&bytes)).ok()?.decode_with_u8_array(&bytes).ok()
}
