//! Charts.
use leptos::prelude::*;
/// The course of the battery, ready to draw.
#[derive(Clone, Debug, PartialEq)]
pub struct SocChart {}
/// The course of the battery.
#[must_use]
pub fn soc_chart(_data: Signal<Option<SocChart>>) -> AnyView {
    ().into_any()
}
