//! Messages at the foot of the page, with "undo" where it applies.

use super::buttons::{icon_button, quiet_button};
use crate::view::icons::Icon;
use crate::view::lang::t;
use crate::view::share::Setups;
use crate::view::state::AppState;
use leptos::prelude::*;

/// The place where messages appear; also read out.
#[must_use]
pub fn toasts(app: AppState) -> AnyView {
    let setups = use_context::<Setups>();
    view! {
        <div class="toasts" role="status">
            {move || {
                app.toast
                    .get()
                    .map(|toast| {
                        let undo = toast.undo.map(|what| {
                            let keeper = setups.and_then(|setups| {
                                setups.keeper.get_untracked().map(|keeper| (setups, keeper))
                            });
                            let back = move || match keeper {
                                Some((setups, keeper)) => (keeper.take_back)(setups, what),
                                None => app.undo(),
                            };
                            quiet_button(Some(Icon::Undo), t("undo"), back)
                        });
                        view! {
                            <div class="toast">
                                <p>{toast.text}</p>
                                {undo}
                                {icon_button(
                                    Icon::Close,
                                    t("toast-close"),
                                    move || {
                                        app.toast.try_set(None);
                                    },
                                )}
                            </div>
                        }
                    })
            }}
        </div>
    }
    .into_any()
}
