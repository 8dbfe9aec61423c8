//! Buttons: with words, quiet ones, and ones with an icon only.

use crate::view::icons::{Icon, icon};
use leptos::prelude::*;

/// What a press does; boxed, so that there is one kind of button in the program and not one for
/// each place where a button stands.
type Press = Box<dyn Fn()>;

fn build(class: &'static str, with: Option<Icon>, text: String, press: Press) -> AnyView {
    let picture = with.map(icon);
    view! {
        <button type="button" class=class on:click=move |_| press()>{picture}<span>{text}</span></button>
    }
    .into_any()
}

/// The main thing to do here.
pub fn button(with: Option<Icon>, text: String, press: impl Fn() + 'static) -> AnyView {
    build("button", with, text, Box::new(press))
}

/// Something else to do here.
pub fn quiet_button(with: Option<Icon>, text: String, press: impl Fn() + 'static) -> AnyView {
    build("button button-quiet", with, text, Box::new(press))
}

/// An icon alone; `name` is what a screen reader says and a pointer shows.
pub fn icon_button(with: Icon, name: String, press: impl Fn() + 'static) -> AnyView {
    build_icon(with, name, Box::new(press))
}

fn build_icon(with: Icon, name: String, press: Press) -> AnyView {
    view! {
        <button
            type="button"
            class="icon-button"
            aria-label=name.clone()
            title=name
            on:click=move |_| press()
        >
            {icon(with)}
        </button>
    }
    .into_any()
}
