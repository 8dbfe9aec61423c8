//! Text, numbers and dates in the reader's language.
//!
//! The texts live in the thread, not in a signal: when the language changes the whole page is
//! built again (see [`crate::view::app`]), so a call of [`t`] is a plain look-up.

mod plural;

use super::certainty::Certainty;
use super::reader::{self, browser_tags};
use crate::i18n::{Arg, Lang, Texts, region, without_signed_zero};
use crate::units::{
    AmpHours, Amps, Celsius, Hours, Litres, Measure, UnitSystem, Volts, WattHours, Watts,
};
use js_sys::{Array, Function, Intl, Object, Reflect};
use plural::plural_category;
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;
use time::Date;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// Between a number and its unit: a narrow space that never breaks.
const UNIT_SPACE: char = '\u{202f}';

/// Before a number below zero: as wide as a figure, and not taken for a hyphen.
const MINUS: &str = "\u{2212}";

/// Names and texts of Fluent files that travel in the program.
type Files = &'static [(&'static str, &'static str)];

/// Figures by the name that texts give them.
type Figures = Vec<(&'static str, String)>;

struct Words {
    texts: Texts,
    /// English that came with the parts of the page.
    came: Vec<Files>,
    locale: String,
    /// The certainty in words, as it was put in force last.
    often: Option<(Certainty, String)>,
    /// Figures that stand fixed in texts, in the reader's units, as they were put in force last.
    fixed: Option<(UnitSystem, Figures)>,
    /// Makes them; comes with the first part whose texts name them.
    make_fixed: Option<fn() -> Figures>,
    formats: HashMap<Format, Function>,
}

#[derive(Clone, Copy, PartialEq, Eq, Hash)]
enum Format {
    Number { decimals: u8, grouped: bool, fixed: bool },
    Weekday,
    LongWeekday,
    DayMonth,
    FullDate,
    Month,
    Clock,
}

thread_local! {
    static WORDS: RefCell<Option<Rc<RefCell<Words>>>> = const { RefCell::new(None) };
}

fn words() -> Rc<RefCell<Words>> {
    WORDS.with(|slot| {
        Rc::clone(slot.borrow_mut().get_or_insert_with(|| {
            Rc::new(RefCell::new(Words {
                texts: Texts::english(plural_category),
                came: Vec::new(),
                locale: locale_for(Lang::En),
                often: None,
                fixed: None,
                make_fixed: None,
                formats: HashMap::new(),
            }))
        }))
    })
}

/// Marks a key that is looked up elsewhere, so that the test of texts finds it.
macro_rules! key {
    ($key:literal) => {
        $key
    };
}
pub(crate) use key;

/// The text of `key`.
#[must_use]
pub fn t(key: &str) -> String {
    t_args(key, &[])
}

/// Figures that texts name as they stand, by the name a text gives them: what, and how much in metric units.
const FIXED: [(&str, Measure, f64); 14] = [
    ("temp_0", Measure::Temperature, 0.0),
    ("temp_4", Measure::Temperature, 4.0),
    ("temp_5", Measure::Temperature, 5.0),
    ("temp_10", Measure::Temperature, 10.0),
    ("temp_15", Measure::Temperature, 15.0),
    ("temp_25", Measure::Temperature, 25.0),
    ("temp_50", Measure::Temperature, 50.0),
    ("temp_70", Measure::Temperature, 70.0),
    ("temp_105", Measure::Temperature, 105.0),
    ("warmer_2", Measure::TemperatureDifference, 2.0),
    ("warmer_3", Measure::TemperatureDifference, 3.0),
    ("warmer_5", Measure::TemperatureDifference, 5.0),
    ("km_6", Measure::Distance, 6.0),
    ("km_10", Measure::Distance, 10.0),
];

/// Notes the fixed figures in the units in force.
fn note_fixed_figures() {
    let system = reader::system();
    let words = words();
    let Some(make) = words.borrow().make_fixed else { return };
    let noted = words.borrow().fixed.as_ref().is_some_and(|(of, _)| *of == system);
    if !noted {
        let figures = make();
        words.borrow_mut().fixed = Some((system, figures));
    }
}

/// Lets texts name the figures of `FIXED`: said by each part that brings such texts, as the start does without.
pub fn add_fixed_figures() {
    words().borrow_mut().make_fixed = Some(fixed_figures);
}

fn fixed_figures() -> Figures {
    FIXED.map(|(name, measure, metric)| (name, measured(measure, metric, 0))).to_vec()
}

/// The text of `key` with values filled in. Every text may say `often`, how surely a night should last, and name the
/// figures of `FIXED`.
#[must_use]
pub fn t_args(key: &str, args: &[(&str, Arg<'_>)]) -> String {
    note_fixed_figures();
    let words = words();
    let mut words = words.borrow_mut();
    let Words { texts, often, fixed, .. } = &mut *words;
    let certainty = Certainty::in_force();
    if often.as_ref().is_none_or(|(of, _)| *of != certainty) {
        *often = Some((certainty, texts.text(often_key(certainty), &[])));
    }
    let often = often.as_ref().map_or("", |(_, words)| words);
    let fixed = fixed.as_ref().map_or(&[][..], |(_, figures)| figures);
    let mut all = Vec::with_capacity(args.len() + fixed.len() + 1);
    all.extend_from_slice(args);
    all.extend(fixed.iter().map(|(name, figure)| (*name, Arg::Text(figure))));
    all.push(("often", Arg::Text(often)));
    texts.text(key, &all)
}

fn often_key(certainty: Certainty) -> &'static str {
    match certainty {
        Certainty::Eight => key!("often-eight"),
        Certainty::Nine => key!("often-nine"),
        Certainty::Nineteen => key!("often-nineteen"),
    }
}

/// A certainty in words, such as "9 times out of 10".
#[must_use]
pub fn often(certainty: Certainty) -> String {
    t(often_key(certainty))
}

/// Adds the English that comes with a part of the page; where several parts bring the same, the
/// first to come does.
pub fn add_english(files: Files) {
    let words = words();
    let mut words = words.borrow_mut();
    if !words.came.iter().any(|came| std::ptr::eq(*came, files)) {
        words.came.push(files);
        words.texts.add_english(files);
    }
}

/// The language in force.
#[must_use]
pub fn lang() -> Lang {
    words().borrow().texts.lang()
}

/// The language the browser asks for, if the page speaks it, else English.
#[must_use]
pub fn browser_lang() -> Lang {
    browser_tags().iter().find_map(|tag| Lang::from_tag(tag)).unwrap_or_default()
}

/// The browser's own variant of the language (de-CH writes 1’234.5), else the language itself.
fn locale_for(lang: Lang) -> String {
    browser_tags()
        .into_iter()
        .find(|tag| Lang::from_tag(tag) == Some(lang))
        .unwrap_or_else(|| lang.code().to_owned())
}

/// Fetches the texts of `lang` and puts them in force; English needs no fetching.
///
/// # Errors
///
/// Tells in a word what failed; the texts in force stay.
pub async fn switch_to(lang: Lang) -> Result<(), String> {
    let source = match lang {
        Lang::En => String::new(),
        _ => fetch_text(&format!("i18n/{}.ftl", lang.code())).await?,
    };
    let mut texts = Texts::new(lang, source, plural_category);
    let words = words();
    let mut words = words.borrow_mut();
    words.came.iter().for_each(|files| texts.add_english(files));
    words.texts = texts;
    words.often = None;
    words.fixed = None;
    words.locale = locale_for(lang);
    words.formats.clear();
    if let Some(root) = web_sys::window()
        .and_then(|window| window.document())
        .and_then(|document| document.document_element())
    {
        // Only fails for an invalid attribute name.
        let _ = root.set_attribute("lang", lang.code());
    }
    Ok(())
}

async fn fetch_text(path: &str) -> Result<String, String> {
    let said = |error: JsValue| {
        error.dyn_ref::<js_sys::Error>().map_or_else(String::new, |e| String::from(e.message()))
    };
    let window = web_sys::window().ok_or_else(String::new)?;
    let response = JsFuture::from(window.fetch_with_str(path)).await.map_err(said)?;
    let response: web_sys::Response = response.dyn_into().map_err(said)?;
    if !response.ok() {
        return Err(format!("{} {path}", response.status()));
    }
    let text = JsFuture::from(response.text().map_err(said)?).await.map_err(said)?;
    // Some hosts answer every address with a page of theirs; no file of texts begins like one.
    text.as_string()
        .filter(|text| !text.trim_start().starts_with('<'))
        .ok_or_else(|| format!("{path}: a page in its place"))
}

fn format(format: Format, value: &JsValue) -> Option<String> {
    let words = words();
    let mut words = words.borrow_mut();
    let locale = words.locale.clone();
    let function = words.formats.entry(format).or_insert_with(|| formatter(format, &locale));
    function.call1(&JsValue::NULL, value).ok()?.as_string()
}

/// Whether the clock of the locale has twelve hours.
fn half_days(locale: &str) -> bool {
    let options = Object::new();
    // Only fails for a frozen object.
    let _ = Reflect::set(&options, &"hour".into(), &"numeric".into());
    let format = Intl::DateTimeFormat::new(&Array::of1(&locale.into()), &options);
    let cycle = Reflect::get(&format.resolved_options(), &"hourCycle".into());
    cycle
        .ok()
        .and_then(|cycle| cycle.as_string())
        .is_some_and(|cycle| cycle == "h12" || cycle == "h11")
}

fn formatter(format: Format, locale: &str) -> Function {
    let locales = Array::of1(&JsValue::from_str(locale));
    let options = Object::new();
    let set = |name: &str, value: JsValue| {
        // Setting a property of a fresh plain object cannot fail.
        let _ = Reflect::set(&options, &JsValue::from_str(name), &value);
    };
    match format {
        Format::Number { decimals, grouped, fixed } => {
            set("maximumFractionDigits", decimals.into());
            if fixed {
                set("minimumFractionDigits", decimals.into());
            }
            set("useGrouping", grouped.into());
            return Intl::NumberFormat::new(&locales, &options).format();
        }
        Format::Weekday => set("weekday", "short".into()),
        Format::LongWeekday => set("weekday", "long".into()),
        Format::DayMonth => {
            set("day", "numeric".into());
            set("month", "short".into());
        }
        Format::FullDate => {
            set("weekday", "long".into());
            set("day", "numeric".into());
            set("month", "long".into());
            set("year", "numeric".into());
        }
        Format::Month => set("month", "short".into()),
        Format::Clock => {
            set("minute", "2-digit".into());
            if half_days(locale) {
                set("hour", "numeric".into());
            } else {
                // Midnight is 00:00.
                set("hour", "2-digit".into());
                set("hourCycle", "h23".into());
            }
        }
    }
    set("timeZone", "UTC".into());
    Intl::DateTimeFormat::new(&locales, &options).format()
}

/// `value` with at most `decimals` decimals and groups of thousands.
#[must_use]
pub fn number(value: f64, decimals: u8) -> String {
    in_figures(value, decimals, true, false).replace('-', MINUS)
}

/// A number as it is shown, with the value that chooses between plural forms.
#[derive(Clone, Debug, PartialEq)]
pub struct Shown {
    /// As it is shown.
    pub text: String,
    count: f64,
}

impl Shown {
    /// `value` with at most `decimals` decimals.
    #[must_use]
    pub fn new(value: f64, decimals: u8) -> Self {
        // The plural goes by what is shown: 1.04 shows as 1.
        let scale = 10_f64.powi(i32::from(decimals));
        Self { text: number(value, decimals), count: (value * scale).round() / scale }
    }

    /// To be put into a text.
    #[must_use]
    pub fn arg(&self) -> Arg<'_> {
        Arg::Shown(&self.text, self.count)
    }
}

/// `value` with exactly `decimals` decimals, for columns.
#[must_use]
pub fn number_fixed(value: f64, decimals: u8) -> String {
    in_figures(value, decimals, true, true).replace('-', MINUS)
}

/// `value` as it stands in a field: the decimal mark of the language, no groups, the sign as typed.
#[must_use]
pub fn field_number(value: f64) -> String {
    in_figures(value, 4, false, false)
}

fn in_figures(value: f64, decimals: u8, grouped: bool, fixed: bool) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let value = without_signed_zero(value, decimals);
    let figures = Format::Number { decimals, grouped, fixed };
    format(figures, &JsValue::from_f64(value)).unwrap_or_else(|| value.to_string())
}

/// A number with its unit, kept together on the line.
#[must_use]
pub fn quantity(value: f64, decimals: u8, unit: &str) -> String {
    let figures = number(value, decimals);
    // English and Dutch set no space before the per cent sign.
    if unit == "%" && matches!(lang(), Lang::En | Lang::Nl) {
        return format!("{figures}%");
    }
    quantity_text(&figures, unit)
}

fn quantity_text(figures: &str, unit: &str) -> String {
    format!("{figures}{UNIT_SPACE}{unit}")
}

/// A share 0..1 in percent, without decimals.
#[must_use]
pub fn percent(frac: f64) -> String {
    quantity(frac * 100.0, 0, "%")
}

/// One decimal below ten, none above: three figures are more than the data are worth.
fn decimals_for(value: f64) -> u8 {
    u8::from(value.abs() < 9.95)
}

/// Power [W].
#[must_use]
pub fn watts(power: Watts) -> String {
    quantity(power.0, decimals_for(power.0), Watts::UNIT)
}

/// Rated power of panels, in the unit that the language has for it (W, Wp, Wc).
#[must_use]
pub fn peak_watts(power: Watts) -> String {
    quantity(power.0, decimals_for(power.0), &t("unit-peak"))
}

/// Energy [Wh].
#[must_use]
pub fn watt_hours(energy: WattHours) -> String {
    quantity(energy.0, decimals_for(energy.0), WattHours::UNIT)
}

/// Energy [Wh] a day.
#[must_use]
pub fn watt_hours_a_day(energy: WattHours) -> String {
    t_args("unit-a-day", &[("amount", Arg::Text(&watt_hours(energy)))])
}

/// Charge [Ah].
#[must_use]
pub fn amp_hours(charge: AmpHours) -> String {
    quantity(charge.0, decimals_for(charge.0), AmpHours::UNIT)
}

/// Current [A].
#[must_use]
pub fn amps(current: Amps) -> String {
    let decimals = if current.0.abs() < 0.995 { 2 } else { decimals_for(current.0) };
    quantity(current.0, decimals, Amps::UNIT)
}

/// Voltage [V].
#[must_use]
pub fn volts(voltage: Volts) -> String {
    quantity(voltage.0, 1, Volts::UNIT)
}

/// A figure given in the metric unit of its measure, in the reader's unit.
#[must_use]
pub fn measured(measure: Measure, metric: f64, decimals: u8) -> String {
    let system = reader::system();
    let shown = measure.shown(system, metric);
    if measure == Measure::Section && system == UnitSystem::Us {
        // Of gauges the thicker one.
        return quantity_text(&gauge_text((shown + 1e-6).floor()), measure.unit(system));
    }
    quantity(shown, decimals, measure.unit(system))
}

/// A wire gauge as it is written: 0 is 1/0, -3 is 4/0.
#[must_use]
pub fn gauge_text(gauge: f64) -> String {
    if gauge <= 0.0 && gauge.fract() == 0.0 {
        format!("{}/0", field_number(1.0 - gauge))
    } else {
        field_number(gauge)
    }
}

/// Temperature.
#[must_use]
pub fn temperature(temperature: Celsius) -> String {
    measured(Measure::Temperature, temperature.0, 0)
}

/// Amount of a liquid.
#[must_use]
pub fn volume(volume: Litres) -> String {
    measured(Measure::Volume, volume.0, 1)
}

/// An amount of money, given in figures, with its currency, as the language writes it.
#[must_use]
pub fn money(figures: &str, currency: &str) -> String {
    region::money(lang(), figures, currency)
}

/// A duration in hours and minutes, such as `2 h 15 min`.
#[must_use]
pub fn duration(time: Hours) -> String {
    let minutes = time.minutes().round();
    if !minutes.is_finite() {
        return "–".to_owned();
    }
    let (hours, rest) = ((minutes / 60.0).trunc(), minutes % 60.0);
    match (hours > 0.0, rest > 0.0) {
        (true, true) => format!("{}\u{a0}{}", quantity(hours, 0, "h"), quantity(rest, 0, "min")),
        (true, false) => quantity(hours, 0, "h"),
        _ => quantity(rest, 0, "min"),
    }
}

/// Time of day from minutes after midnight, on the clock of the locale, of 12 or 24 hours.
#[must_use]
pub fn clock(minutes: u16) -> String {
    let time = JsValue::from_f64(f64::from(minutes % 1440) * 60_000.0);
    format(Format::Clock, &time).unwrap_or_default()
}

fn js_date(date: Date) -> JsValue {
    let days = f64::from(date.to_julian_day() - 2_440_588);
    JsValue::from_f64(days * 86_400_000.0)
}

/// Weekday, short.
#[must_use]
pub fn weekday(date: Date) -> String {
    format(Format::Weekday, &js_date(date)).unwrap_or_default()
}

/// Weekday in full.
#[must_use]
pub fn long_weekday(date: Date) -> String {
    format(Format::LongWeekday, &js_date(date)).unwrap_or_default()
}

/// Day and month, short.
#[must_use]
pub fn day_month(date: Date) -> String {
    format(Format::DayMonth, &js_date(date)).unwrap_or_default()
}

/// Weekday, day and month, short.
#[must_use]
pub fn short_date(date: Date) -> String {
    format!("{} {}", weekday(date), day_month(date))
}

/// Day and time from minutes after midnight, short, such as `Tue 14 Jul, 15:00`.
#[must_use]
pub fn moment(date: Date, minutes: u16) -> String {
    t_args(
        "moment",
        &[
            ("weekday", Arg::Text(&weekday(date))),
            ("date", Arg::Text(&day_month(date))),
            ("time", Arg::Text(&clock(minutes))),
        ],
    )
}

/// What something is called and what is said of it, such as `Cut out: fridge`.
#[must_use]
pub fn pair(label: &str, value: &str) -> String {
    t_args("pair", &[("label", Arg::Text(label)), ("value", Arg::Text(value))])
}

/// The whole date in words.
#[must_use]
pub fn full_date(date: Date) -> String {
    format(Format::FullDate, &js_date(date)).unwrap_or_default()
}

/// Short name of a month, 1..12.
#[must_use]
pub fn month_name(month: u8) -> String {
    time::Month::try_from(month)
        .ok()
        .and_then(|month| Date::from_calendar_date(2026, month, 1).ok())
        .and_then(|date| format(Format::Month, &js_date(date)))
        .unwrap_or_default()
}
