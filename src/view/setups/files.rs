//! Saves setups to files and opens them.

use super::Setups;
use crate::i18n::Arg;
use crate::import::log::is_log;
use crate::import::table::read_table;
use crate::model::Setup;
use crate::store::file::{MAX_BYTES, MAX_SETUPS};
use crate::store::{FileContent, FileError, Loaded, read_file, read_library, write_file};
use crate::view::lang::{t, t_args};
use crate::view::state::{Screen, Tab, Waiting};
use crate::view::text_file::{TextFileError, read_text};
use crate::view::words::names::setup_name;
use crate::view::words::setups::{adjusted, file_fault, misfits};
use js_sys::Array;
use leptos::prelude::*;
use std::time::Duration;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::spawn_local;
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

/// Kind of a JSON file.
const JSON: &str = "application/json";

/// How long a file's address is kept for the browser to read it [ms].
const ADDRESS_KEPT_MS: u64 = 60_000;

/// Hands a text to the browser as a file to save.
///
/// # Errors
///
/// Tells that the browser made no file of it.
pub fn download_text(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let parts = Array::of1(&JsValue::from_str(text));
    download(name, &Blob::new_with_str_sequence_and_options(&parts, &options)?)
}

/// Hands a blob to the browser as a file to save.
///
/// # Errors
///
/// Tells that the browser made no file of it.
pub fn download(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    set_timeout(
        move || {
            // An address that is gone already needs no giving back.
            let _ = Url::revoke_object_url(&address);
        },
        Duration::from_millis(ADDRESS_KEPT_MS),
    );
    Ok(())
}

/// Name of a file about a setup: its name in letters, digits and hyphens.
#[must_use]
pub fn file_name(setup: &Setup, about: &str, ending: &str) -> String {
    let mut name = String::from("nightbank");
    for part in [setup.name.as_str(), about] {
        let words = part.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
        for word in words {
            name.push('-');
            name.extend(word.chars().flat_map(char::to_lowercase));
        }
    }
    format!("{name}.{ending}")
}

fn told_if_failed(setups: Setups, saved: Result<(), JsValue>) {
    if saved.is_err() {
        setups.file_told.try_set(Some(t("file-not-saved")));
    }
}

/// Saves the setup on screen.
pub fn download_setup(setups: Setups) {
    let Some(setup) = setups.app.setup.try_get_untracked() else { return };
    if let Ok(text) = write_file(std::slice::from_ref(&setup)) {
        told_if_failed(setups, download_text(&file_name(&setup, "", "json"), JSON, &text));
    }
}

/// Saves all setups of the user.
pub fn download_all(setups: Setups) {
    setups.save_now();
    let Some(library) = setups.library.try_get_untracked() else { return };
    let all: Vec<Setup> = library.entries().iter().map(|entry| entry.setup.clone()).collect();
    if let Ok(text) = write_file(&all) {
        told_if_failed(setups, download_text("nightbank-setups.json", JSON, &text));
    }
}

/// Saves what could not be read, as it was; several texts under one another.
pub fn download_aside(setups: Setups) {
    let Some(aside) = setups.aside.try_get_untracked() else { return };
    let text = aside.join("\n\n");
    told_if_failed(setups, download_text("nightbank-set-aside.txt", "text/plain", &text));
}

/// What a text holds: a file, or a whole library as the browser stored it.
fn read(text: &str) -> Result<FileContent, FileError> {
    match read_file(text) {
        Err(FileError::NoSetups) => match read_library(text) {
            Loaded::Ready { library, notes } if !library.entries().is_empty() => Ok(FileContent {
                setups: library.entries().iter().map(|entry| entry.setup.clone()).collect(),
                adjusted: notes.adjusted,
                ignored: notes.ignored,
                misfits: notes.misfits,
            }),
            _ => Err(FileError::NoSetups),
        },
        read => read,
    }
}

/// Adds the setups of a file to the user's own, or opens the list of appliances or the log of readings in it; what came of it is told.
pub fn take_in(setups: Setups, file: File) {
    spawn_local(async move {
        let text = match read_text(&file).await {
            Ok(text) => text,
            Err(fault) => {
                let told = match fault {
                    TextFileError::TooLarge { bytes } => file_fault(&FileError::TooLarge { bytes }),
                    TextFileError::Unread => t("file-unread"),
                };
                setups.file_told.try_set(Some(told));
                return;
            }
        };
        let setups_file = is_of_setups(&file.name(), &text);
        if !setups_file && is_log(&text) {
            setups.app.dropped_log.try_set(Some(text));
            setups.app.open(Screen::Log);
            return;
        }
        if !setups_file && read_table(&text).is_ok() {
            setups.app.pasted.try_set(text);
            setups.app.waiting.try_set(Some(Waiting::Table));
            setups.app.go(Tab::Loads);
            return;
        }
        let content = if text.len() > MAX_BYTES {
            Err(FileError::TooLarge { bytes: text.len() })
        } else {
            read(&text)
        };
        let told = match content {
            Err(error) => file_fault(&error),
            Ok(content) => add(setups, content),
        };
        setups.file_told.try_set(Some(told));
    });
}

/// Whether a file is, or was before it was damaged, one of setups.
fn is_of_setups(name: &str, text: &str) -> bool {
    let start = text.trim_start_matches('\u{feff}').trim_start();
    name.to_lowercase().ends_with(".json") || start.starts_with(['{', '['])
}

fn add(setups: Setups, content: FileContent) -> String {
    let whole = |n: usize| Arg::Count(i32::try_from(n).unwrap_or(i32::MAX));
    let names: Vec<String> = content.setups.iter().map(setup_name).collect();
    let count = content.setups.len();
    let added = setups.add_all(content.setups);
    let names = names.get(..added).unwrap_or_default().join(", ");
    let mut told = Vec::new();
    if added > 0 {
        told.push(t_args("file-added", &[("n", whole(added)), ("names", Arg::Text(&names))]));
    }
    if added < count {
        let args = [("n", whole(count - added)), ("limit", whole(MAX_SETUPS))];
        told.push(t_args("file-no-room", &args));
    }
    if content.adjusted > 0 {
        told.push(adjusted(content.adjusted));
    }
    if !content.misfits.is_empty() {
        told.push(misfits(&content.misfits));
    }
    if !content.ignored.is_empty() {
        let fields = content.ignored.join(", ");
        let args = [("n", whole(content.ignored.len())), ("fields", Arg::Text(&fields))];
        told.push(t_args("file-ignored", &args));
    }
    told.join(" ")
}

/// Takes files that are dropped anywhere on the page.
pub(super) fn follow_drops(setups: Setups) {
    let carries_files = |event: &web_sys::DragEvent| {
        let types = event.data_transfer().map(|data| data.types());
        types.is_some_and(|types| types.iter().any(|kind| kind == "Files"))
    };
    let over = window_event_listener(leptos::ev::dragover, move |event| {
        if carries_files(&event) {
            // Or the browser opens the file in place of the page.
            event.prevent_default();
        }
    });
    let drop = window_event_listener(leptos::ev::drop, move |event| {
        if !carries_files(&event) {
            return;
        }
        event.prevent_default();
        let files = event.data_transfer().and_then(|data| data.files());
        let files = files.iter().flat_map(|files| (0..files.length()).map(|at| files.get(at)));
        for file in files.flatten() {
            take_in(setups, file);
        }
    });
    on_cleanup(move || {
        over.remove();
        drop.remove();
    });
}
