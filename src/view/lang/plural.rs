//! Plural categories by the browser, which carries the rules of CLDR.

use crate::i18n::Lang;
use js_sys::{Array, Intl, Object};
use std::cell::RefCell;
use wasm_bindgen::JsValue;

thread_local! {
    /// The browser's rules, as far as they were asked for.
    static PLURALS: RefCell<Vec<(Lang, Intl::PluralRules)>> = const { RefCell::new(Vec::new()) };
}

/// The category of `number`, such as `one` or `other`.
pub(super) fn plural_category(lang: Lang, number: f64) -> String {
    PLURALS.with_borrow_mut(|known| {
        let at = known.iter().position(|(of, _)| *of == lang).unwrap_or_else(|| {
            let locales = Array::of1(&JsValue::from_str(lang.code()));
            known.push((lang, Intl::PluralRules::new(&locales, &Object::new())));
            known.len() - 1
        });
        known.get(at).map(|(_, rules)| String::from(rules.select(number))).unwrap_or_default()
    })
}
