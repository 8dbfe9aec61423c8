//! Changes, what they cost and what to beware of, in words.

use crate::advice::changes::Change;
use crate::advice::changes::cost::{Bill, Cost, Hazard};
use crate::i18n::Arg;
use crate::model::{BatteryPlace, Setup};
use crate::units::{Degrees, Hours};
use crate::view::lang::{
    Shown, amp_hours, amps, duration, key, number, peak_watts, percent, quantity, t, t_args, watts,
};
use crate::view::widgets::{Danger, caution};
use crate::view::words::names::{array_name, count, kilograms, load_name_by_id, money, trip_day};
use leptos::prelude::*;

/// The change as an instruction, such as "Turn off the fridge".
#[must_use]
pub fn change_words(setup: &Setup, change: &Change) -> String {
    let named =
        |key: &str, id: u32| t_args(key, &[("name", Arg::Text(&load_name_by_id(setup, id)))]);
    let named_with = |key: &str, id: u32, value: &str| {
        t_args(
            key,
            &[("name", Arg::Text(&load_name_by_id(setup, id))), ("amount", Arg::Text(value))],
        )
    };
    let with = |key: &str, value: &str| t_args(key, &[("amount", Arg::Text(value))]);
    let panel =
        |key: &str, index: usize| t_args(key, &[("name", Arg::Text(&array_name(setup, index)))]);
    match *change {
        Change::SwitchOff { load } => named(key!("change-switch-off"), load),
        Change::DoWithout { load } => named(key!("change-do-without"), load),
        Change::GasInstead { load } => named(key!("change-gas"), load),
        Change::OffAtNight { load } => named(key!("change-off-at-night"), load),
        Change::Unplug { load } => named(key!("change-unplug"), load),
        Change::ShorterUse { load, minutes_less } => {
            let time = duration(Hours::from_minutes(minutes_less));
            named_with(key!("change-shorter"), load, &time)
        }
        Change::FewerUses { load, uses_less } => {
            named_with(key!("change-fewer"), load, &number(uses_less, 1))
        }
        Change::UseShare { load, share_frac } => {
            named_with(key!("change-share"), load, &percent(share_frac))
        }
        Change::WarmerFridge { load } => named(key!("change-warmer-fridge"), load),
        Change::DcInstead { load } => {
            let volts = quantity(setup.bank.system.nominal().0, 0, "V");
            named_with(key!("change-dc"), load, &volts)
        }
        Change::ToMidday { load } => named(key!("change-midday"), load),
        Change::InverterWhenUsed => t("change-inverter-when-used"),
        Change::InverterPowerSave { asleep } => with(key!("change-inverter-sleep"), &watts(asleep)),
        Change::Tilt { array, tilt, facing, roof } => {
            let key = if roof { key!("change-tilt-roof") } else { key!("change-tilt") };
            let (name, tilt, facing) = (array_name(setup, array), degrees(tilt), towards(facing));
            let name = ("name", Arg::Text(&name));
            t_args(key, &[name, ("tilt", Arg::Text(&tilt)), ("facing", Arg::Text(&facing))])
        }
        Change::Clean { array } => panel(key!("change-clean"), array),
        Change::OutOfShade { array } => panel(key!("change-out-of-shade"), array),
        Change::MpptController { array } => panel(key!("change-mppt"), array),
        Change::PortablePanel { peak, tilt, facing } => {
            let (peak, tilt, facing) = (peak_watts(peak), degrees(tilt), towards(facing));
            let peak = ("amount", Arg::Text(&peak));
            t_args(
                "change-portable",
                &[peak, ("tilt", Arg::Text(&tilt)), ("facing", Arg::Text(&facing))],
            )
        }
        Change::Drive { day, minutes } => {
            let time = duration(Hours::from_minutes(minutes));
            let (number, date) = (number((day + 1) as f64, 0), trip_day(setup, day));
            let day = ("day", Arg::Text(&number));
            t_args("change-drive", &[day, ("date", Arg::Text(&date)), ("amount", Arg::Text(&time))])
        }
        Change::HookUp { every } => {
            t_args("change-hook-up", &[("n", Arg::Count(i32::from(every)))])
        }
        Change::ArriveFull => t("change-arrive-full"),
        Change::WarmerPlace { place } => t(match place {
            BatteryPlace::Inside => key!("change-battery-inside"),
            BatteryPlace::Locker | BatteryPlace::Outside => key!("change-battery-locker"),
        }),
        Change::HeatedBattery => t("change-heated"),
        Change::MoreBattery { capacity } => with(key!("change-battery"), &amp_hours(capacity)),
        Change::Lithium { capacity } => with(key!("change-lithium"), &amp_hours(capacity)),
        Change::MoreSolar { peak } => with(key!("change-solar"), &peak_watts(peak)),
        Change::DcDcCharger { amps: current, drive_every } => match drive_every {
            None => with(key!("change-dc-dc"), &amps(current)),
            Some(every) => t_args(
                "change-dc-dc-drive",
                &[("amount", Arg::Text(&amps(current))), ("n", Arg::Count(i32::from(every)))],
            ),
        },
    }
}

/// A tilt in whole degrees.
#[must_use]
pub fn degrees(angle: Degrees) -> String {
    format!("{}°", number(angle.0, 0))
}

/// Towards which side of the compass a panel faces at noon.
#[must_use]
pub fn towards(facing: Degrees) -> String {
    let north = facing.0.to_radians().cos() > 0.0;
    t(if north { key!("change-towards-north") } else { key!("change-towards-south") })
}

/// A number of nights, with a plus at the end of what was looked at.
#[must_use]
pub fn nights(count: usize, horizon: usize) -> Shown {
    let mut nights = Shown::new(count as f64, 0);
    if horizon > 0 && count >= horizon {
        nights.text.push('+');
    }
    nights
}

/// What a change costs, in a few words.
#[must_use]
pub fn cost_words(setup: &Setup, cost: Cost) -> String {
    match cost {
        Cost::Free => t("cost-free"),
        Cost::Effort => t("cost-effort"),
        Cost::Driving { time } => t_args("cost-driving", &[("time", Arg::Text(&duration(time)))]),
        Cost::HookUp { nights } => t_args("cost-hook-up", &[("n", Arg::Count(count(nights)))]),
        Cost::Money { amount, weight, driving } => {
            let key = if weight.0 >= 0.05 {
                key!("cost-money")
            } else if weight.0 <= -0.05 {
                key!("cost-money-lighter")
            } else {
                key!("cost-money-only")
            };
            let (amount, weight) = (money(setup, amount), kilograms(weight.abs()));
            let bought =
                t_args(key, &[("amount", Arg::Text(&amount)), ("weight", Arg::Text(&weight))]);
            if driving.0 > 0.0 {
                format!("{bought}, {}", cost_words(setup, Cost::Driving { time: driving }))
            } else {
                bought
            }
        }
        Cost::Unpriced => t("cost-unpriced"),
    }
}

/// A bill, one line for each kind of price.
#[must_use]
pub fn bill_words(setup: &Setup, bill: &Bill) -> Vec<String> {
    let mut lines = Vec::new();
    if bill.money.0 > 0.0 {
        let cost = Cost::Money { amount: bill.money, weight: bill.weight, driving: Hours(0.0) };
        lines.push(cost_words(setup, cost));
    }
    if bill.unpriced > 0 {
        lines.push(t_args("bill-unpriced", &[("n", Arg::Count(count(bill.unpriced)))]));
    }
    if bill.driving.0 > 0.0 {
        lines.push(cost_words(setup, Cost::Driving { time: bill.driving }));
    }
    if bill.hook_up_nights > 0 {
        lines.push(cost_words(setup, Cost::HookUp { nights: bill.hook_up_nights }));
    }
    if bill.efforts > 0 {
        lines.push(t_args("bill-efforts", &[("n", Arg::Count(count(bill.efforts)))]));
    }
    if bill.free > 0 {
        lines.push(t_args("bill-free", &[("n", Arg::Count(count(bill.free)))]));
    }
    lines
}

/// Title of what to beware of.
fn hazard_title(hazard: Hazard) -> String {
    t(match hazard {
        Hazard::Roof | Hazard::LivePanels => key!("caution-roof"),
        Hazard::ShortCircuit => key!("caution-fuse"),
        Hazard::Hydrogen => key!("caution-hydrogen"),
        Hazard::Lithium => key!("caution-cold"),
        Hazard::Alternator => key!("caution-alternator"),
        Hazard::Medical => key!("caution-medical"),
        Hazard::GasFlame => key!("caution-co"),
        Hazard::Food => key!("caution-food"),
        Hazard::SafetyDevices => key!("caution-safety"),
    })
}

fn hazard_cautions(hazard: Hazard) -> &'static [Danger] {
    match hazard {
        Hazard::Roof | Hazard::LivePanels => &[Danger::Roof],
        Hazard::ShortCircuit => &[Danger::Fuse, Danger::MixedBatteries],
        Hazard::Hydrogen => &[Danger::Hydrogen],
        Hazard::Lithium => &[Danger::LithiumCold],
        Hazard::Alternator => &[Danger::Alternator, Danger::CableHeat],
        Hazard::Medical => &[Danger::Medical],
        Hazard::GasFlame => &[Danger::CarbonMonoxide],
        Hazard::Food => &[Danger::Food],
        Hazard::SafetyDevices => &[Danger::SafetyDevices],
    }
}

/// Cautions in full, each once.
#[must_use]
pub fn cautions(hazards: impl IntoIterator<Item = Hazard>) -> Vec<AnyView> {
    let mut seen = Vec::new();
    for hazard in hazards {
        for about in hazard_cautions(hazard) {
            if !seen.contains(about) {
                seen.push(*about);
            }
        }
    }
    seen.into_iter().map(caution).collect()
}

/// What to beware of by title, the whole text on tap.
#[must_use]
pub fn cautions_on_tap(hazards: &[Hazard]) -> Option<AnyView> {
    if hazards.is_empty() {
        return None;
    }
    let mut titles: Vec<String> = Vec::new();
    for hazard in hazards {
        let title = hazard_title(*hazard);
        if !titles.contains(&title) {
            titles.push(title);
        }
    }
    let boxes = cautions(hazards.iter().copied());
    Some(
        view! {
            <details class="beware">
                <summary>
                    {crate::view::icons::icon(crate::view::icons::Icon::Caution)}
                    <span>{t("change-beware")} " " {titles.join(" ")}</span>
                </summary>
                <div class="beware-inside">{boxes}</div>
            </details>
        }
        .into_any(),
    )
}
