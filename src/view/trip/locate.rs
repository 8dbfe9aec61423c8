//! Where the device is, asked for only on request and kept only coarsely.

use crate::units::Degrees;
use crate::view::lang::t;
use leptos::prelude::*;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::prelude::*;

/// Steps per degree to which a position is rounded: a tenth, about 10 km, enough for sun and air.
const STEPS_PER_DEGREE: f64 = 10.0;
/// Codes of a refusal and of too long a wait in the browser's answer.
const REFUSED: u16 = 1;
const TIMED_OUT: u16 = 3;

type Answer = Result<(Degrees, Degrees), String>;

/// Asks the browser for the position and hands the rounded one, or words for why not, to `then`.
pub(super) fn ask(then: impl FnOnce(Answer) + 'static) {
    let then = Rc::new(RefCell::new(Some(then)));
    let answer = {
        let then = Rc::clone(&then);
        move |given: Answer| {
            if let Some(then) = then.borrow_mut().take() {
                then(given);
            }
        }
    };
    let Ok(geolocation) = window().navigator().geolocation() else {
        answer(Err(t("locate-missing")));
        return;
    };
    let failed = answer.clone();
    let missing = answer.clone();
    let found = Closure::once_into_js(move |position: JsValue| {
        // The browser's own object: its class has no public name to check against.
        let coords = position.unchecked_into::<web_sys::Position>().coords();
        let round = |value: f64| (value * STEPS_PER_DEGREE).round() / STEPS_PER_DEGREE;
        let (latitude, longitude) = (round(coords.latitude()), round(coords.longitude()));
        if latitude.is_finite() && longitude.is_finite() {
            answer(Ok((Degrees(latitude), Degrees(longitude))));
        } else {
            answer(Err(t("locate-failed")));
        }
    });
    let refused = Closure::once_into_js(move |error: JsValue| {
        let code = error.unchecked_into::<web_sys::PositionError>().code();
        failed(Err(match code {
            REFUSED => t("locate-refused"),
            TIMED_OUT => t("locate-timed-out"),
            _ => t("locate-failed"),
        }));
    });
    let options = web_sys::PositionOptions::new();
    options.set_timeout(15_000);
    options.set_maximum_age(600_000);
    let asked = geolocation.get_current_position_with_error_callback_and_options(
        found.unchecked_ref(),
        Some(refused.unchecked_ref()),
        &options,
    );
    if asked.is_err() {
        missing(Err(t("locate-missing")));
    }
}
