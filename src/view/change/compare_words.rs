//! What setups differ in, in words.

use crate::advice::compare::battery_reasons::BatteryReason;
use crate::advice::compare::differences::{Field, Value};
use crate::i18n::Arg;
use crate::model::catalogue::name_key;
use crate::model::{BatteryPlace, Controller, InverterSwitching, Mounting};
use crate::view::lang::{
    amp_hours, amps, day_month, duration, key, number, peak_watts, percent, t, t_args, temperature,
    volts, watt_hours_a_day, watts,
};
use crate::view::words::loads::times_words;
use crate::view::words::names::chemistry_name;
use time::{Date, Month};

/// What the line is about.
#[must_use]
pub fn field_words(field: &Field) -> String {
    let load_words = |entry: &Option<u16>, name: &String| {
        if name.is_empty() {
            t(entry.and_then(name_key).unwrap_or(key!("load-unnamed")))
        } else {
            name.clone()
        }
    };
    t(match field {
        Field::Load { appliance, name } => return load_words(appliance, name),
        Field::LoadTimes { appliance, name } => {
            let name = load_words(appliance, name);
            return t_args("differ-times", &[("name", Arg::Text(&name))]);
        }
        Field::AllLoads => key!("differ-all-loads"),
        Field::Chemistry => key!("differ-chemistry"),
        Field::Capacity => key!("differ-capacity"),
        Field::Health => key!("differ-health"),
        Field::SocMin => key!("differ-soc-min"),
        Field::SocStart => key!("differ-soc-start"),
        Field::SystemVoltage => key!("differ-system"),
        Field::BatteryPlace => key!("differ-battery-place"),
        Field::Heated => key!("differ-heated"),
        Field::Inverter => key!("differ-inverter"),
        Field::InverterIdle => key!("differ-inverter-idle"),
        Field::InverterSwitching => key!("differ-switching"),
        Field::SolarPeak => key!("differ-solar"),
        Field::SolarTilt => key!("differ-tilt"),
        Field::SolarFacing => key!("differ-facing"),
        Field::SolarMounting => key!("differ-mounting"),
        Field::SolarController => key!("differ-controller"),
        Field::SolarShade => key!("differ-shade"),
        Field::DrivingCharger => key!("differ-driving-charger"),
        Field::DrivingEvery => key!("differ-driving-every"),
        Field::DrivingTime => key!("differ-driving-time"),
        Field::HookUpCharger => key!("differ-hook-up-charger"),
        Field::HookUpEvery => key!("differ-hook-up-every"),
        Field::OtherSources => key!("differ-other"),
        Field::Place => key!("differ-place"),
        Field::Arrival => key!("differ-arrival"),
        Field::Nights => key!("differ-nights"),
        Field::OwnAir => key!("differ-air"),
        Field::HeatedTo => key!("differ-heated-to"),
        Field::UseFactor => key!("differ-use-factor"),
        Field::SunFactor => key!("differ-sun-factor"),
        Field::Battery(reason) => reason_key(*reason),
    })
}

fn reason_key(reason: BatteryReason) -> &'static str {
    match reason {
        BatteryReason::UsableShare => key!("reason-usable"),
        BatteryReason::ColdReach => key!("reason-cold"),
        BatteryReason::FastDischarge => key!("reason-fast"),
        BatteryReason::StoredAbove80 => key!("reason-stored"),
        BatteryReason::TakenAt90 => key!("reason-taken"),
        BatteryReason::TimeToFull => key!("reason-full"),
        BatteryReason::LostADay => key!("reason-lost"),
        BatteryReason::LowestVoltage => key!("reason-sag"),
        BatteryReason::CutOut => key!("reason-cut-out"),
        BatteryReason::NoChargeBelow => key!("reason-no-charge"),
        BatteryReason::ColdLocked => key!("reason-locked"),
        BatteryReason::Management => key!("reason-management"),
        BatteryReason::StandingLoss => key!("reason-standing"),
    }
}

fn date_words(year: u16, month: u8, day: u8) -> String {
    Month::try_from(month)
        .ok()
        .and_then(|month| Date::from_calendar_date(i32::from(year), month, day).ok())
        .map_or_else(
            || format!("{year}-{month:02}-{day:02}"),
            |date| format!("{} {year}", day_month(date)),
        )
}

/// A value of the line.
#[must_use]
pub fn value_words(field: &Field, value: &Value) -> String {
    match value {
        Value::Absent => t("value-absent"),
        Value::Yes => t("value-yes"),
        Value::Energy(energy) => watt_hours_a_day(*energy),
        Value::Power(power) if matches!(field, Field::SolarPeak) => peak_watts(*power),
        Value::Power(power) => watts(*power),
        Value::Charge(charge) => amp_hours(*charge),
        Value::Current(current) => amps(*current),
        Value::Voltage(voltage) => volts(*voltage),
        Value::Share(factor) if matches!(field, Field::UseFactor | Field::SunFactor) => {
            format!("×{}", number(*factor, 2))
        }
        Value::Share(share) => percent(*share),
        Value::Angle(angle) => format!("{}°", number(angle.0, 0)),
        Value::Temperature(kept) => temperature(*kept),
        Value::Time(time) => duration(*time),
        Value::EveryDays(days) => t_args("value-every", &[("n", Arg::Count(i32::from(*days)))]),
        Value::Times(windows) => times_words(windows),
        Value::Count(count) => number(*count as f64, 0),
        Value::Chemistry(chemistry) => chemistry_name(*chemistry),
        Value::BatteryPlace(place) => t(match place {
            BatteryPlace::Inside => key!("bank-inside"),
            BatteryPlace::Locker => key!("bank-locker"),
            BatteryPlace::Outside => key!("bank-outside"),
        }),
        Value::Switching(switching) => t(match switching {
            InverterSwitching::WhenUsed => key!("inverter-when-used"),
            InverterSwitching::AllDay => key!("inverter-all-day"),
            InverterSwitching::PowerSave { .. } => key!("inverter-power-save"),
        }),
        Value::Mounting(mounting) => t(match mounting {
            Mounting::Glued => key!("mounting-glued"),
            Mounting::SmallGap => key!("mounting-gap"),
            Mounting::OpenRack => key!("mounting-rack"),
        }),
        Value::Controller(controller) => match controller {
            Controller::Mppt => "MPPT".to_owned(),
            Controller::Pwm => "PWM".to_owned(),
        },
        Value::Relay(limit) => t_args("value-relay", &[("limit", Arg::Text(&amps(*limit)))]),
        Value::Text(text) => text.clone(),
        Value::Date(year, month, day) => date_words(*year, *month, *day),
    }
}
