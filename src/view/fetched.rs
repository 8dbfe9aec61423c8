//! Files beside the page that are fetched when they are first needed.

use js_sys::{Array, ArrayBuffer, Function, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// The bytes of a file that the build has packed with gzip, unpacked by the browser.
///
/// # Errors
///
/// Tells in a word what failed: no network, no such file, or a browser that cannot unpack.
pub async fn bytes(path: &str) -> Result<Vec<u8>, String> {
    let window = web_sys::window().ok_or_else(String::new)?;
    let response = JsFuture::from(window.fetch_with_str(path)).await.map_err(said)?;
    let response: Response = response.dyn_into().map_err(said)?;
    if !response.ok() {
        return Err(format!("{} {path}", response.status()));
    }
    // The streams are reached by name: their types would make web-sys larger for this one call.
    let get = |of: &JsValue, name: &str| Reflect::get(of, &name.into()).map_err(said);
    let body = get(&response, "body")?;
    let class: Function = get(&js_sys::global(), "DecompressionStream")?
        .dyn_into()
        .map_err(|_| "the browser cannot unpack gzip".to_owned())?;
    let unpack = Reflect::construct(&class, &Array::of1(&"gzip".into())).map_err(said)?;
    let pipe: Function = get(&body, "pipeThrough")?.dyn_into().map_err(said)?;
    let stream = pipe.call1(&body, &unpack).map_err(said)?;
    let class: Function = get(&js_sys::global(), "Response")?.dyn_into().map_err(said)?;
    let unpacked: Response =
        Reflect::construct(&class, &Array::of1(&stream)).map_err(said)?.dyn_into().map_err(said)?;
    let buffer = JsFuture::from(unpacked.array_buffer().map_err(said)?).await.map_err(said)?;
    let buffer: ArrayBuffer = buffer.dyn_into().map_err(said)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

fn said(error: JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |error| error.message().into())
}
