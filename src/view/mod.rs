//! The page.
pub mod offline;

use leptos::prelude::*;

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    provide_context(offline::Offline::register());
    view! { <main><h1>"Nightbank"</h1></main> }
}
