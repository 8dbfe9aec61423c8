//! What the reader has to know about setups, links and storage, above everything else.

use super::files;
use super::seen_hints::{SeenHint, is_ios_like};
use super::{SaveState, Setups};
use crate::i18n::Arg;
use crate::store::Key;
use crate::view::lang::{key, t, t_args};
use crate::view::offline::Offline;
use crate::view::state::{Tab, Waiting};
use crate::view::storage::{self, StorageFault, StoredText};
use crate::view::words::names::setup_name;
use crate::view::words::setups::{adjusted, link_fault, misfits};
use leptos::prelude::*;

fn in_text(text: String, press: impl Fn() + 'static) -> AnyView {
    view! { <button type="button" class="in-text" on:click=move |_| press()>{text}</button> }
        .into_any()
}

fn notice(text: String, then: Vec<AnyView>) -> AnyView {
    let then: Vec<AnyView> =
        then.into_iter().map(|button| view! { " " {button} }.into_any()).collect();
    view! { <p class="notice" role="status">{text}{then}</p> }.into_any()
}

/// The notices.
#[must_use]
pub fn notices(setups: Setups, offline: Offline) -> AnyView {
    view! {
        {move || setups.preview.get().map(|preview| preview_notice(setups, preview.adjusted))}
        {move || setups.link_fault.get().map(|error| {
            let close = in_text(t("notice-close"), move || { setups.link_fault.try_set(None); });
            notice(link_fault(&error), vec![close])
        })}
        {move || setups.file_told.get().map(|told| {
            let close = in_text(t("notice-close"), move || { setups.file_told.try_set(None); });
            notice(told, vec![close])
        })}
        {move || match setups.save_state.get() {
            SaveState::Saved => None,
            SaveState::NotSaved(fault) => Some(kept_notice(setups, fault)),
        }}
        {move || setups.aside_told.get().then(|| aside_notice(setups))}
        {move || {
            let count = setups.adjusted.get();
            (count > 0).then(|| {
                let close = in_text(t("notice-close"), move || { setups.adjusted.try_set(0); });
                notice(adjusted(count), vec![close])
            })
        }}
        {move || setups.misfits.with(|told| {
            (!told.is_empty()).then(|| {
                let close = in_text(t("notice-close"), move || {
                    setups.misfits.try_set(Vec::new());
                });
                notice(misfits(told), vec![close])
            })
        })}
        {none_of_own(setups)}
        {move || {
            let names = setups.beside.get();
            (!names.is_empty()).then(|| {
                let names = names.join(", ");
                let close =
                    in_text(t("notice-close"), move || { setups.beside.try_set(Vec::new()); });
                notice(t_args("kept-beside", &[("names", Arg::Text(&names))]), vec![close])
            })
        }}
        {ios_storage(setups)}
        {move || offline.update_waiting.get().then(|| update_notice(setups, offline))}
    }
    .into_any()
}

fn update_notice(setups: Setups, offline: Offline) -> AnyView {
    let renew = move || {
        setups.save_now();
        offline.apply_update();
    };
    notice(t("update-ready"), vec![in_text(t("update-load"), renew)])
}

fn preview_notice(setups: Setups, count: usize) -> AnyView {
    let name = Memo::new(move |_| setups.app.setup.with(setup_name));
    let own = setups.has_own.get_untracked();
    let take = own.then(|| {
        let press = move |_| {
            setups.app.waiting.try_set(Some(Waiting::Take));
            setups.app.go(Tab::Loads);
        };
        view! {
            <button type="button" class="button button-quiet" on:click=press>
                <span>{t("preview-take")}</span>
            </button>
        }
    });
    let back = if own { t("preview-back") } else { t("preview-back-example") };
    view! {
        <div class="notice notice-preview" data-testid="preview-notice" role="status">
            <p>
                {move || t_args("preview-told", &[("name", Arg::Text(&name.get()))])} " "
                {t("preview-safe")} {(count > 0).then(|| view! { " " {adjusted(count)} })}
            </p>
            <div class="button-row">
                <button type="button" class="button" on:click=move |_| setups.keep_preview()>
                    <span>{t("preview-keep")}</span>
                </button>
                {take}
                <button
                    type="button"
                    class="button button-quiet"
                    on:click=move |_| setups.leave_for_own()
                >
                    <span>{back}</span>
                </button>
            </div>
        </div>
    }
    .into_any()
}

fn kept_notice(setups: Setups, fault: StorageFault) -> AnyView {
    let text = match fault {
        StorageFault::Blocked => key!("kept-blocked"),
        StorageFault::NotWritten => key!("kept-not-written"),
        StorageFault::Newer => key!("kept-newer"),
    };
    let more = in_text(t("kept-take-along"), move || setups.app.go(Tab::More));
    notice(t(text), vec![more])
}

fn aside_notice(setups: Setups) -> AnyView {
    let save = in_text(t("aside-download"), move || files::download_aside(setups));
    let close = in_text(t("notice-close"), move || {
        setups.aside_told.try_set(false);
    });
    notice(t("aside-told"), vec![save, close])
}

/// Storage holds a list of setups without any that could be read: the example in their place is no accident.
fn none_of_own(setups: Setups) -> AnyView {
    let listed =
        matches!(storage::text(Key::Library), StoredText::Text(text) if !text.trim().is_empty());
    let newer = SaveState::NotSaved(StorageFault::Newer);
    let due = RwSignal::new(
        listed
            && !setups.has_own.get_untracked()
            && setups.save_state.get_untracked() != newer
            && !SeenHint::NoneOfOwn.before(),
    );
    view! {
        {move || {
            (due.get() && !setups.has_own.get()).then(|| {
                let close = in_text(t("notice-close"), move || {
                    SeenHint::NoneOfOwn.remember();
                    due.try_set(false);
                });
                notice(t("kept-none"), vec![close])
            })
        }}
    }
    .into_any()
}

/// How long iOS keeps things, told once there is something to keep.
fn ios_storage(setups: Setups) -> AnyView {
    let due = RwSignal::new(is_ios_like() && !SeenHint::IosStorage.before());
    view! {
        {move || {
            (due.get() && setups.has_own.get()).then(|| {
                let close = in_text(t("notice-understood"), move || {
                    SeenHint::IosStorage.remember();
                    due.try_set(false);
                });
                notice(t("ios-storage"), vec![close])
            })
        }}
    }
    .into_any()
}
