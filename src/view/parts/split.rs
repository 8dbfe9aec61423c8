//! The functions at which the build splits the program, one for each part: what only they reach,
//! texts and tables included, travels in files of its own.
//!
//! That takes the feature `split`, which release builds have. Without it the page is one program,
//! built in seconds, and every part is there from the start.

// The glue that `wasm_split` makes of a marked function declares imports and exports.
#![cfg_attr(feature = "split", allow(unsafe_code))]

use crate::i18n::texts::{ENGLISH_OUTLOOK, ENGLISH_REST, ENGLISH_STORAGE};
use crate::view::change::ChangeScreens;
use crate::view::lang;
use crate::view::outlook::{Calculation, detail, hours, play};
use crate::view::setups::Setups;
use crate::view::setups::storage_module::{StorageModule, storage_module};
use crate::view::share::{self, Outcome};
use crate::view::state::AppState;
use crate::view::tools::measure;
use crate::view::widgets::Sheet;
use crate::view::{change, loads, more, power, start, trip};
use leptos::prelude::*;
use std::sync::Arc;
use wasm_split_helpers::SplitLoaderError;
#[cfg(feature = "split")]
use wasm_split_helpers::wasm_split;

#[cfg(not(feature = "split"))]
pub(super) use whole::{fetch_change, fetch_forms, fetch_more, fetch_outlook, fetch_storage};

type Split = Result<AnyView, SplitLoaderError>;

// One function for each part, as each keeps for itself whether its files are here.

#[cfg_attr(feature = "split", wasm_split(storage, fallible, preload(fetch_storage)))]
pub(super) fn split_storage() -> Result<&'static StorageModule, SplitLoaderError> {
    lang::add_english(ENGLISH_STORAGE);
    Ok(storage_module())
}

/// The functions that save setups, once their chunk is here.
///
/// # Errors
///
/// [`SplitLoaderError`]: the files of the part did not come.
pub async fn fetch_storage_module() -> Result<&'static StorageModule, SplitLoaderError> {
    fetch_storage().await?;
    #[cfg(feature = "split")]
    return split_storage().await;
    #[cfg(not(feature = "split"))]
    split_storage()
}

/// What another part shows within this one.
pub(super) type Inside = Arc<dyn Fn() -> AnyView + Send + Sync>;

pub(super) enum Outlook {
    Odds(Calculation),
    Course(AppState, Calculation, Inside),
    Details(AppState, Calculation, Inside),
}

#[cfg_attr(feature = "split", wasm_split(outlook, fallible, preload(fetch_outlook)))]
pub(super) fn split_outlook(what: Outlook) -> Split {
    lang::add_english(ENGLISH_OUTLOOK);
    lang::add_fixed_figures();
    Ok(match what {
        Outlook::Odds(calculation) => {
            play::follow(calculation);
            ().into_any()
        }
        Outlook::Course(app, calculation, next_step) => {
            detail::course(app, calculation, next_step())
        }
        Outlook::Details(app, calculation, below) => detail::view(app, calculation, below),
    })
}

#[derive(Clone, Copy)]
pub(super) enum Forms {
    Loads,
    Power,
    Trip,
    Start(Sheet),
}

#[cfg_attr(feature = "split", wasm_split(forms, fallible, preload(fetch_forms)))]
pub(super) fn split_forms(what: Forms, app: AppState, calculation: Calculation) -> Split {
    lang::add_english(ENGLISH_OUTLOOK);
    lang::add_fixed_figures();
    lang::add_english(ENGLISH_REST);
    Ok(match what {
        Forms::Loads => loads::view(app, calculation),
        Forms::Power => power::view(app),
        Forms::Trip => trip::view(app, calculation),
        Forms::Start(sheet) => start::questions(app, sheet),
    })
}

pub(super) enum Change {
    Screens(AppState),
    NextStep(AppState, Calculation),
    BelowTheAnswer(AppState, Calculation),
}

#[cfg_attr(feature = "split", wasm_split(change, fallible, preload(fetch_change)))]
pub(super) fn split_change(what: Change, page: StoredValue<Owner>) -> Split {
    lang::add_english(ENGLISH_OUTLOOK);
    lang::add_fixed_figures();
    lang::add_english(ENGLISH_REST);
    if let Some(page) = page.try_get_value() {
        page.with(ChangeScreens::provide);
    }
    Ok(match what {
        Change::Screens(app) => change::view(app),
        Change::NextStep(app, calculation) => match use_context::<ChangeScreens>() {
            Some(screens) => screens.in_the_answer(app, calculation),
            // Only where the page is gone.
            None => ().into_any(),
        },
        Change::BelowTheAnswer(app, calculation) => view! {
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

#[cfg_attr(feature = "split", wasm_split(more, fallible, preload(fetch_more)))]
pub(super) fn split_more(what: More) -> Split {
    lang::add_english(ENGLISH_OUTLOOK);
    lang::add_fixed_figures();
    lang::add_english(ENGLISH_REST);
    Ok(match what.paper {
        None => more::view(what.setups),
        Some(outcome) => share::paper(what.setups, outcome),
    })
}

/// What a part that is here shows. Its files have come, so the first poll is the last.
#[cfg(feature = "split")]
pub(super) fn now(view: impl Future<Output = Split>) -> AnyView {
    use std::task::{Context, Poll, Waker};
    match std::pin::pin!(view).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(Ok(view)) => view,
        // Only asked for once the part is here.
        Poll::Ready(Err(_)) | Poll::Pending => ().into_any(),
    }
}

/// What a part shows.
#[cfg(not(feature = "split"))]
pub(super) fn now(view: Split) -> AnyView {
    // An error would be a file that did not come, and there is none.
    view.unwrap_or_else(|_| ().into_any())
}

/// The functions that fetch a part, where all of them are here.
#[cfg(not(feature = "split"))]
mod whole {
    use super::SplitLoaderError;

    macro_rules! here {
        ($($fetch:ident),*) => {
            $(pub async fn $fetch() -> Result<(), SplitLoaderError> {
                Ok(())
            })*
        };
    }
    here!(fetch_storage, fetch_outlook, fetch_forms, fetch_change, fetch_more);
}
