//! The functions at which the build splits the program, one for each part: what only they reach,
//! texts and tables included, travels in files of its own.

// The glue that `wasm_split` makes of a marked function declares imports and exports.
#![allow(unsafe_code)]

use crate::i18n::texts::{ENGLISH_KEEP, ENGLISH_LOOK, ENGLISH_REST};
use crate::view::lang;
use crate::view::outlook::{Calculation, detail, hours, play};
use crate::view::setups::Setups;
use crate::view::setups::storage_module::{StorageModule, storage_module};
use crate::view::share::{self, Outcome};
use crate::view::state::AppState;
use crate::view::tools::measure;
use crate::view::widgets::Sheet;
use crate::view::{change, load_energy, loads, more, power, start, trip};
use leptos::prelude::*;
use std::future::Future;
use std::pin::pin;
use std::task::{Context, Poll, Waker};
use wasm_split_helpers::{SplitLoaderError, wasm_split};

type Split = Result<AnyView, SplitLoaderError>;

// One function for each part, as each keeps for itself whether its files are here.

#[wasm_split(keep, fallible, preload(fetch_keep))]
pub(super) fn split_keep() -> Result<&'static StorageModule, SplitLoaderError> {
    lang::add_english(ENGLISH_KEEP);
    Ok(storage_module())
}

/// The functions that save setups, once their chunk is here.
///
/// # Errors
///
/// [`SplitLoaderError`]: the files of the part did not come.
pub async fn fetch_storage_module() -> Result<&'static StorageModule, SplitLoaderError> {
    fetch_keep().await?;
    split_keep().await
}

pub(super) enum Look {
    Odds(Calculation),
    Course(AppState, Calculation),
    Details(AppState, Calculation),
}

#[wasm_split(look, fallible, preload(fetch_look))]
pub(super) fn split_look(what: Look) -> Split {
    lang::add_english(ENGLISH_LOOK);
    Ok(match what {
        Look::Odds(calculation) => {
            play::follow(calculation);
            ().into_any()
        }
        Look::Course(app, calculation) => detail::course(app, calculation),
        Look::Details(app, calculation) => detail::view(app, calculation),
    })
}

#[derive(Clone, Copy)]
pub(super) enum Edit {
    Loads,
    Power,
    Trip,
    Start(Sheet),
}

#[wasm_split(edit, fallible, preload(fetch_edit))]
pub(super) fn split_edit(what: Edit, app: AppState, calculation: Calculation) -> Split {
    lang::add_english(ENGLISH_LOOK);
    lang::add_english(ENGLISH_REST);
    Ok(match what {
        Edit::Loads => loads::view(app, load_energy::follow(app, calculation)),
        Edit::Power => power::view(app),
        Edit::Trip => trip::view(app, calculation),
        Edit::Start(sheet) => start::questions(app, sheet),
    })
}

pub(super) enum Decide {
    Change(AppState),
    BelowTheAnswer(AppState, Calculation),
}

#[wasm_split(decide, fallible, preload(fetch_decide))]
pub(super) fn split_decide(what: Decide) -> Split {
    lang::add_english(ENGLISH_LOOK);
    lang::add_english(ENGLISH_REST);
    Ok(match what {
        Decide::Change(app) => change::view(app),
        Decide::BelowTheAnswer(app, calculation) => view! {
            {hours::view(calculation)}
            {measure::in_the_outlook(app, calculation)}
        }
        .into_any(),
    })
}

/// Everything under "More", or the page to print where there is an outcome.
pub(super) struct More {
    pub(super) setups: Setups,
    pub(super) paper: Option<Outcome>,
}

#[wasm_split(more, fallible, preload(fetch_more))]
pub(super) fn split_more(what: More) -> Split {
    lang::add_english(ENGLISH_LOOK);
    lang::add_english(ENGLISH_REST);
    Ok(match what.paper {
        None => more::view(what.setups),
        Some(outcome) => share::paper(what.setups, outcome),
    })
}

/// What a part that is here shows. Its files have come, so the first poll is the last.
pub(super) fn now(view: impl Future<Output = Split>) -> AnyView {
    match pin!(view).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(Ok(view)) => view,
        // Only asked for once the part is here.
        Poll::Ready(Err(_)) | Poll::Pending => ().into_any(),
    }
}
