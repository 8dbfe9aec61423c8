//! Loads in words: how many, how much, how used.

use crate::i18n::Arg;
use crate::model::{DutyCycle, Feed, Load, StayEnd, Usage, Window};
use crate::units::{Hours, WattHours};
use crate::view::lang::{
    Shown, clock, duration, key, number, percent, quantity, t, t_args, volume, watt_hours, watts,
};

/// One line: how many, how much, how used.
#[must_use]
pub fn load_summary(load: &Load) -> String {
    load_summary_with(load, WattHours::ZERO)
}

/// The same with what the inverter takes a day on account of the load, where it takes something.
#[must_use]
pub fn load_summary_with(load: &Load, by_inverter: WattHours) -> String {
    let mut parts = Vec::new();
    let draws = !matches!(load.usage, Usage::Energy { .. } | Usage::Charges { .. });
    if draws {
        parts.push(watts(load.draw.watts()));
    }
    parts.push(usage_words(&load.usage));
    if load.feed == Feed::Inverter {
        parts.push(if by_inverter > WattHours::ZERO {
            let amount = watt_hours(by_inverter);
            t_args("summary-inverter-takes", &[("amount", Arg::Text(&amount))])
        } else {
            t("summary-inverter")
        });
    }
    let line = parts.join(" · ");
    if load.quantity > 1 { format!("{} × {line}", load.quantity) } else { line }
}

/// How often and how long, in a few words.
#[must_use]
pub fn usage_words(usage: &Usage) -> String {
    match *usage {
        Usage::Daily { minutes } => {
            let time = duration(Hours::from_minutes(minutes));
            t_args("unit-a-day", &[("amount", Arg::Text(&time))])
        }
        Usage::AlwaysOn => t("summary-always"),
        Usage::Duty { cycle: DutyCycle::Fixed { frac } } => share_of_time(frac),
        Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } } => {
            share_of_time(frac_at_25c)
        }
        Usage::Duty { cycle: DutyCycle::Heating { .. } } => t("summary-heating"),
        Usage::Duty { cycle: DutyCycle::Cooling { .. } } => t("summary-cooling"),
        Usage::WhileDriving => t("summary-driving"),
        Usage::Once { at, minutes } => {
            let time = duration(Hours::from_minutes(minutes));
            let key = match at {
                StayEnd::Arrival => key!("summary-arrival"),
                StayEnd::Leaving => key!("summary-leaving"),
            };
            t_args(key, &[("time", Arg::Text(&time))])
        }
        Usage::Charges { every_days, cell, .. } => {
            let charge = quantity(cell.0, 0, "mAh");
            if (every_days - 1.0).abs() < 1e-9 {
                return t_args("unit-a-day", &[("amount", Arg::Text(&charge))]);
            }
            let days = Shown::new(every_days, 1);
            t_args("summary-charges", &[("charge", Arg::Text(&charge)), ("days", days.arg())])
        }
        Usage::Litres { litres_per_day, .. } => {
            let water = volume(litres_per_day);
            t_args("unit-a-day", &[("amount", Arg::Text(&water))])
        }
        Usage::Uses { per_day, seconds } => {
            let (times, each) = (number(per_day, 1), duration_of_seconds(seconds));
            t_args("summary-uses", &[("times", Arg::Text(&times)), ("each", Arg::Text(&each))])
        }
        Usage::Energy { per_day } => {
            t_args("unit-a-day", &[("amount", Arg::Text(&watt_hours(per_day)))])
        }
    }
}

/// Times of day, one after the other.
#[must_use]
pub fn times_words(windows: &[Window]) -> String {
    let span = |window: &Window| {
        let (from, to) = (clock(window.from_min), clock(window.to_min));
        t_args("window-span", &[("from", Arg::Text(&from)), ("to", Arg::Text(&to))])
    };
    windows.iter().map(span).collect::<Vec<_>>().join(", ")
}

/// How long a load that follows the air runs in the air of the trip, where it takes `running` a day
/// while it runs; `None` for all others.
#[must_use]
pub fn time_in_this_air(load: &Load, running: WattHours) -> Option<String> {
    let by_air = matches!(
        load.usage,
        Usage::Duty {
            cycle: DutyCycle::AirTemperature { .. }
                | DutyCycle::Heating { .. }
                | DutyCycle::Cooling { .. }
        }
    );
    let whole_day = load.draw.watts() * f64::from(load.quantity) * Hours(24.0);
    let told = by_air && load.feed == Feed::Dc && whole_day > WattHours::ZERO;
    let share = told.then(|| percent(running / whole_day))?;
    Some(t_args("from-load-air", &[("share", Arg::Text(&share))]))
}

fn share_of_time(frac: f64) -> String {
    t_args("summary-duty", &[("share", Arg::Text(&percent(frac)))])
}

fn duration_of_seconds(seconds: f64) -> String {
    if seconds < 90.0 { quantity(seconds, 0, "s") } else { duration(Hours::from_seconds(seconds)) }
}
