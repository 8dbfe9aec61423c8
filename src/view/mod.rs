//! The page.
use leptos::prelude::*;

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    view! { <main><h1>"Nightbank"</h1></main> }
}
