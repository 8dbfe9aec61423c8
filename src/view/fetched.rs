//! Files beside the page that are fetched when they are first needed.

use super::lang::t;
use js_sys::{Array, ArrayBuffer, Function, Reflect, Uint8Array};
use leptos::prelude::*;
use std::cell::{Cell, OnceCell};
use std::rc::Rc;
use std::sync::Arc;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// After a failure a file is asked for again, at the earliest so much later [ms].
const AGAIN_AFTER_MS: f64 = 10_000.0;

/// How far a file is.
#[derive(Debug)]
pub enum FileState<T> {
    /// Not here yet.
    Coming,
    /// Here.
    Here(Arc<T>),
    /// Could not be fetched or read.
    Failed,
}

impl<T> FileState<T> {
    /// Why it is not here, in the words of one of two keys; `None` once it is.
    #[must_use]
    pub fn lacking(&self, coming: &'static str, failed: &'static str) -> Option<String> {
        match self {
            Self::Coming => Some(t(coming)),
            Self::Failed => Some(t(failed)),
            Self::Here(_) => None,
        }
    }
}

impl<T> Clone for FileState<T> {
    fn clone(&self) -> Self {
        match self {
            Self::Coming => Self::Coming,
            Self::Here(data) => Self::Here(Arc::clone(data)),
            Self::Failed => Self::Failed,
        }
    }
}

/// A file beside the page and what is read from it; one for each file, in a `thread_local!`.
pub struct DataFile<T: Send + Sync + 'static> {
    name: &'static str,
    read: fn(Vec<u8>) -> Result<T, String>,
    state: OnceCell<ArcRwSignal<FileState<T>>>,
    /// When it may be asked for [ms since 1970]; never again while it is on its way or here.
    ask_from_ms: Rc<Cell<f64>>,
}

impl<T: Send + Sync + 'static> DataFile<T> {
    /// Nothing is fetched yet.
    pub fn new(name: &'static str, read: fn(Vec<u8>) -> Result<T, String>) -> Self {
        Self { name, read, state: OnceCell::new(), ask_from_ms: Rc::default() }
    }

    fn signal(&self) -> ArcRwSignal<FileState<T>> {
        self.state.get_or_init(|| ArcRwSignal::new(FileState::Coming)).clone()
    }

    /// How far it is; followed where it is called.
    pub fn state(&self) -> FileState<T> {
        self.signal().get()
    }

    /// What is read from it, if it is here.
    pub fn here(&self) -> Option<Arc<T>> {
        match self.signal().get_untracked() {
            FileState::Here(data) => Some(data),
            FileState::Coming | FileState::Failed => None,
        }
    }

    /// What is read from it, if it is here; asks for it if not. Followed where it is called.
    pub fn wanted(&self) -> Option<Arc<T>> {
        if let FileState::Here(data) = self.state() {
            return Some(data);
        }
        self.ask();
        None
    }

    fn ask(&self) {
        if js_sys::Date::now() < self.ask_from_ms.get() {
            return;
        }
        self.ask_from_ms.set(f64::INFINITY);
        let (name, read, signal) = (self.name, self.read, self.signal());
        let ask_from_ms = Rc::clone(&self.ask_from_ms);
        wasm_bindgen_futures::spawn_local(async move {
            let state = match bytes(name).await.and_then(read) {
                Ok(data) => FileState::Here(Arc::new(data)),
                Err(why) => {
                    ask_from_ms.set(js_sys::Date::now() + AGAIN_AFTER_MS);
                    leptos::logging::warn!("{name}: {why}");
                    FileState::Failed
                }
            };
            signal.set(state);
        });
    }
}

/// The bytes of a file that the build has packed with gzip, unpacked by the browser; or, where it cannot unpack (Safari
/// before 16.4, Firefox before 113), of the plain one beside it.
///
/// # Errors
///
/// Tells in a word what failed: no network, no such file, or one that is not packed.
pub async fn bytes(path: &str) -> Result<Vec<u8>, String> {
    // The streams are reached by name: their types would make web-sys larger for this one call.
    let get = |of: &JsValue, name: &str| Reflect::get(of, &name.into()).map_err(said);
    let Ok(unpacker) = get(&js_sys::global(), "DecompressionStream")?.dyn_into::<Function>() else {
        return whole(&fetched(&format!("plain-{path}")).await?).await;
    };
    let response = fetched(path).await?;
    let body = get(&response, "body")?;
    let unpack = Reflect::construct(&unpacker, &Array::of1(&"gzip".into())).map_err(said)?;
    let pipe: Function = get(&body, "pipeThrough")?.dyn_into().map_err(said)?;
    let stream = pipe.call1(&body, &unpack).map_err(said)?;
    let class: Function = get(&js_sys::global(), "Response")?.dyn_into().map_err(said)?;
    let unpacked = Reflect::construct(&class, &Array::of1(&stream)).map_err(said)?;
    whole(&unpacked.dyn_into().map_err(said)?).await
}

async fn fetched(path: &str) -> Result<Response, String> {
    let window = web_sys::window().ok_or_else(String::new)?;
    let response = JsFuture::from(window.fetch_with_str(path)).await.map_err(said)?;
    let response: Response = response.dyn_into().map_err(said)?;
    if response.ok() { Ok(response) } else { Err(format!("{} {path}", response.status())) }
}

async fn whole(response: &Response) -> Result<Vec<u8>, String> {
    let buffer = JsFuture::from(response.array_buffer().map_err(said)?).await.map_err(said)?;
    let buffer: ArrayBuffer = buffer.dyn_into().map_err(said)?;
    Ok(Uint8Array::new(&buffer).to_vec())
}

fn said(error: JsValue) -> String {
    error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |error| error.message().into())
}
