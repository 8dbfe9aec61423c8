//! Where the figures below the answer come from, in words.

use super::facts::{Facts, days_of, largest_shares};
use super::flow::sun_losses;
use crate::forecast::Ledger;
use crate::forecast::outlook::{Drawer, LoadShare};
use crate::i18n::Arg;
use crate::model::climate::{Climate, ClimateSource};
use crate::model::{Chemistry, Feed, Load};
use crate::units::{Hours, Measure, WattHours};
use crate::view::lang::{Shown, key, measured, peak_watts, percent, t, t_args, watt_hours, watts};
use crate::view::widgets::{ExplainedFigure, FigureBar};
use crate::view::words::loads::{load_summary, time_in_this_air};
use crate::view::words::names::draw_source_name;
use crate::view::words::names::drawer_name;

/// Below this a part of a sum is not told [Wh].
const WORTH_TELLING: WattHours = WattHours(0.05);

/// A row of the balance of an average day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Row {
    Sun,
    Driving,
    HookUp,
    Other,
    Loads,
    Inverter,
    Electronics,
    BatteryLosses,
    Stored,
    UnusedSun,
    Unmet,
}

impl Row {
    /// All of them, in the order of the balance.
    pub(super) const ALL: [Self; 11] = [
        Self::Sun,
        Self::Driving,
        Self::HookUp,
        Self::Other,
        Self::Loads,
        Self::Inverter,
        Self::Electronics,
        Self::BatteryLosses,
        Self::Stored,
        Self::UnusedSun,
        Self::Unmet,
    ];

    const fn key(self) -> &'static str {
        match self {
            Self::Sun => key!("balance-sun"),
            Self::Driving => key!("balance-driving"),
            Self::HookUp => key!("balance-hook-up"),
            Self::Other => key!("balance-other"),
            Self::Loads => key!("balance-loads"),
            Self::Inverter => key!("balance-inverter"),
            Self::Electronics => key!("balance-electronics"),
            Self::BatteryLosses => key!("balance-battery-losses"),
            Self::Stored => key!("balance-stored"),
            Self::UnusedSun => key!("balance-unused-sun"),
            Self::Unmet => key!("balance-unmet"),
        }
    }

    /// What it is.
    pub(super) fn label(self) -> String {
        t(self.key())
    }

    /// What it comes to over the stay; use is negative.
    pub(super) fn sum(self, ledger: &Ledger) -> WattHours {
        match self {
            Self::Sun => ledger.sun,
            Self::Driving => ledger.driving,
            Self::HookUp => ledger.hook_up,
            Self::Other => ledger.other,
            Self::Loads => -(ledger.direct_loads + ledger.mains_loads),
            Self::Inverter => -(ledger.conversion + ledger.inverter_idle),
            Self::Electronics => -(ledger.electronics + ledger.battery_heating),
            Self::BatteryLosses => {
                -(ledger.charge_loss
                    + ledger.resistance_loss
                    + ledger.cable_loss
                    + ledger.self_discharge)
            }
            Self::Stored => ledger.stored,
            Self::UnusedSun => ledger.unused_sun,
            Self::Unmet => ledger.unmet,
        }
    }

    /// Where it comes from.
    fn from(self, facts: &Facts<'_>) -> Vec<String> {
        let ledger = &facts.outlook.course.ledger;
        let days = days_of(facts);
        let shown_days = Shown::new(days, 1);
        let sum = watt_hours(self.sum(ledger));
        let shared_out =
            |key: &str| vec![t_args(key, &[("sum", Arg::Text(&sum)), ("days", shown_days.arg())])];
        match self {
            Self::Sun => from_sun(facts),
            Self::Driving => shared_out(key!("from-driving")),
            Self::HookUp => shared_out(key!("from-hook-up")),
            Self::Other => shared_out(key!("from-other")),
            Self::Loads => {
                let direct = (key!("from-loads-direct"), ledger.direct_loads);
                let mains = (key!("from-loads-mains"), ledger.mains_loads);
                let mut told = vec![t("from-loads")];
                told.extend(parts([direct, mains], days));
                told
            }
            Self::Inverter => parts(
                [
                    (key!("from-inverter-idle"), ledger.inverter_idle),
                    (key!("from-inverter-conversion"), ledger.conversion),
                ],
                days,
            ),
            Self::Electronics => {
                let power = watts(ledger.electronics / Hours(24.0 * days));
                let mut told = vec![t_args("from-electronics", &[("power", Arg::Text(&power))])];
                told.extend(parts([(key!("from-heating"), ledger.battery_heating)], days));
                told
            }
            Self::BatteryLosses => {
                let mut told = parts(
                    [
                        (key!("from-charging"), ledger.charge_loss),
                        (key!("from-resistance"), ledger.resistance_loss),
                        (key!("from-cables"), ledger.cable_loss),
                        (key!("from-self-discharge"), ledger.self_discharge),
                    ],
                    days,
                );
                if facts.setup.bank.chemistry == Chemistry::Flooded && ledger.charge_loss.0 > 0.0 {
                    told.push(t("from-charging-flooded"));
                }
                told
            }
            Self::Stored => {
                let last = facts.plan.stay_hours().saturating_sub(1);
                let at_end = facts.outlook.course.hours.get(last).map_or(0.0, |hour| hour.soc_frac);
                let (from, to) = (percent(facts.plan.start_soc_frac), percent(at_end));
                let (from, to) = (("from", Arg::Text(&from)), ("to", Arg::Text(&to)));
                let sum = ("sum", Arg::Text(&sum));
                vec![t_args("from-stored", &[from, to, sum, ("days", shown_days.arg())])]
            }
            Self::UnusedSun => vec![t("from-unused-sun")],
            Self::Unmet => vec![t("from-unmet")],
        }
    }
}

/// The rows of the balance worth showing, in Wh a day.
pub(super) fn balance_rows(facts: &Facts<'_>) -> impl Iterator<Item = (Row, WattHours)> {
    let ledger = &facts.outlook.course.ledger;
    let days = days_of(facts);
    Row::ALL
        .into_iter()
        .map(move |row| (row, row.sum(ledger) / days))
        .filter(|(_, a_day)| a_day.0.abs() >= 0.5)
}

/// What comes and goes on an average day, and why.
pub(super) fn balance(facts: &Facts<'_>) -> Vec<ExplainedFigure> {
    balance_rows(facts)
        .map(|(row, a_day)| ExplainedFigure {
            key: row.key().to_owned(),
            name: row.label(),
            value: watt_hours(a_day),
            from: row.from(facts),
            bar: None,
            total: false,
        })
        .collect()
}

/// What takes most, largest first, and why.
pub(super) fn drains(facts: &Facts<'_>) -> Vec<ExplainedFigure> {
    let shares: Vec<&LoadShare> = largest_shares(facts).collect();
    let longest = shares.iter().map(|share| share.per_day.0).fold(0.0, f64::max);
    shares
        .into_iter()
        .map(|share| {
            let of_usable = percent(share.of_usable_frac);
            ExplainedFigure {
                key: format!("{:?}", share.drawer),
                name: drawer_name(facts.setup, share.drawer),
                value: watt_hours(share.per_day),
                from: from_share(facts, share),
                bar: Some(FigureBar {
                    length_frac: share.per_day.0 / longest,
                    note: t_args("answer-usable-share", &[("share", Arg::Text(&of_usable))]),
                }),
                total: false,
            }
        })
        .collect()
}

/// Where the climate comes from and how good it is.
#[must_use]
pub fn climate_source(climate: &Climate) -> String {
    // Two standard deviations: nineteen of twenty lie within.
    let accuracy = percent(2.0 * climate.accuracy_frac);
    let accuracy = ("accuracy", Arg::Text(&accuracy));
    match climate.source {
        ClimateSource::OwnSun { .. } => t_args("sure-own", &[accuracy]),
        ClimateSource::World => t_args(
            "sure-world",
            &[accuracy, ("credit", Arg::Text(crate::model::climate::WORLD_CREDIT))],
        ),
        ClimateSource::Region { distance_km, .. } => {
            let distance = measured(Measure::Distance, distance_km, 0);
            t_args("sure-region", &[accuracy, ("distance", Arg::Text(&distance))])
        }
        ClimateSource::Latitude => t_args("sure-latitude", &[accuracy]),
    }
}

/// Parts of a sum over the stay as amounts a day, those worth telling.
fn parts<const N: usize>(parts: [(&str, WattHours); N], days: f64) -> Vec<String> {
    parts
        .into_iter()
        .map(|(key, sum)| (key, sum / days))
        .filter(|(_, a_day)| *a_day > WORTH_TELLING)
        .map(|(key, a_day)| t_args(key, &[("amount", Arg::Text(&watt_hours(a_day)))]))
        .collect()
}

fn from_sun(facts: &Facts<'_>) -> Vec<String> {
    let ledger = &facts.outlook.course.ledger;
    let days = days_of(facts);
    let unused = ledger.unused_sun / days;
    let losses = sun_losses(facts, ledger.sun / days + unused);
    let peak = facts.setup.solar_peak();
    let (peak, light) = (peak_watts(peak), watt_hours(losses.ideal));
    let (lost, unused) = (watt_hours(losses.ideal - losses.delivered), watt_hours(unused));
    let told = t_args(
        "from-sun",
        &[
            ("peak", Arg::Text(&peak)),
            ("light", Arg::Text(&light)),
            ("lost", Arg::Text(&lost)),
            ("unused", Arg::Text(&unused)),
        ],
    );
    let snow = (losses.snow.0 >= 0.5)
        .then(|| t_args("from-sun-snow", &[("amount", Arg::Text(&watt_hours(losses.snow)))]));
    [Some(told), snow, Some(climate_source(facts.climate))].into_iter().flatten().collect()
}

fn from_share(facts: &Facts<'_>, share: &LoadShare) -> Vec<String> {
    match share.drawer {
        Drawer::InverterIdle => vec![t("from-idle")],
        Drawer::Electronics => {
            let power = watts(share.per_day / Hours(24.0));
            vec![t_args("from-electronics", &[("power", Arg::Text(&power))])]
        }
        Drawer::Load(id) => {
            facts.setup.load(id).map_or_else(Vec::new, |load| from_load(facts, share, load))
        }
    }
}

fn from_load(facts: &Facts<'_>, share: &LoadShare, load: &Load) -> Vec<String> {
    let factor = facts.setup.correction.use_factor;
    let (how, known) = (load_summary(load), draw_source_name(load.draw_source));
    let mut told =
        vec![t_args("from-load", &[("how", Arg::Text(&how)), ("known", Arg::Text(&known))])];
    told.extend(time_in_this_air(load, (share.per_day - share.standby) / factor));
    if load.feed == Feed::Inverter {
        told.push(t("from-load-inverter"));
    }
    if share.standby > WORTH_TELLING && share.standby < share.per_day {
        let standby = watt_hours(share.standby);
        told.push(t_args("from-load-standby", &[("amount", Arg::Text(&standby))]));
    }
    if (factor - 1.0).abs() > 0.005 {
        told.push(t_args("from-load-corrected", &[("share", Arg::Text(&percent(factor)))]));
    }
    told.push(t("from-load-where"));
    told
}
