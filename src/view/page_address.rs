//! The address the page is read at.

use leptos::prelude::window;

/// The page's address without query and fragment.
#[must_use]
pub fn bare_path() -> String {
    window().location().pathname().unwrap_or_default()
}

/// The address of the page with this link behind it.
#[must_use]
pub fn address_with(fragment: &str) -> String {
    let origin = window().location().origin().unwrap_or_default();
    let path = bare_path();
    let path = path.strip_suffix("index.html").unwrap_or(&path);
    format!("{origin}{path}#{fragment}")
}
