//! Files of text, however they are encoded.

use crate::import::table::encoding_label;
use js_sys::Uint8Array;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, TextDecoder};

/// The text in a file; `None` where the browser cannot read it.
pub async fn read_text(file: &Blob) -> Option<String> {
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    let bytes = Uint8Array::new(&buffer).to_vec();
    // Its byte order mark goes, as browsers do it.
    TextDecoder::new_with_label(encoding_label(&bytes)).ok()?.decode_with_u8_array(&bytes).ok()
}
