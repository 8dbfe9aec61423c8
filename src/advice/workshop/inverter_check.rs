//! What may run together on the inverter, and whether battery and cable can feed it.
//!
//! - Running together: the sum of the running powers must not pass the continuous rating; while
//!   one starts, the others running plus its starting power must not pass the surge rating.
//! - Loads whose times of day never meet cannot run together; the others can.
//! - Current at the battery: the loss curve of [`crate::physics::inverter`] at 11 V per 12 V
//!   nominal (or the cut-out where higher).
//! - Battery: current over rated capacity (C-rate) against what the chemistry stands, see
//!   [`battery_limits`].
//! - Ratings are volt-amperes: motors and cheap chargers reach them at fewer watts than shown.

use super::wiring::{self, CurrentFrom, Severity};
use crate::model::{Bank, Chemistry, Feed, Inverter, InverterSwitching, Load, Setup, TimesOfDay};
use crate::physics::ampacity::{self, Surroundings};
use crate::physics::battery::cell_data;
use crate::physics::battery::chemistry::POINTS;
use crate::physics::inverter::{self, InverterCurve};
use crate::physics::short_circuit;
use crate::units::{Amps, HOURS_PER_DAY, Hours, Volts, WattHours, Watts};

/// Most sets of loads reported.
pub const MAX_SETS: usize = 60;

/// A load as the inverter sees it, all of its quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnInverter {
    /// Load id.
    pub id: u32,
    /// Running, mains side.
    pub running: Watts,
    /// While one of them starts, mains side.
    pub starting: Watts,
    /// When it may run.
    pub times: TimesOfDay,
}

/// Why loads may not run together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Clash {
    /// The running powers together pass the continuous rating.
    Continuous,
    /// They may run, but not while one of them starts.
    Surge,
}

/// The smallest sets of loads that must not run together: no part of a set is itself too much.
#[derive(Clone, Debug, PartialEq)]
pub struct Forbidden {
    /// Ids of the loads, one to three.
    pub ids: Vec<u32>,
    /// Why.
    pub clash: Clash,
    /// Running together.
    pub running: Watts,
    /// Worst moment of a start.
    pub starting: Watts,
    /// Their times meet, so it can happen as planned.
    pub planned: bool,
}

/// The highest sum of loads whose times hold the same minute.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Coincidence {
    /// Minute after midnight at which it is first reached.
    pub at_min: u16,
    /// Ids of the loads.
    pub ids: Vec<u32>,
    /// Running together, mains side.
    pub running: Watts,
}

/// Findings about an inverter.
#[derive(Clone, Debug, PartialEq)]
pub enum InverterFinding {
    /// Loads hang on an inverter that is not fitted.
    NotFitted,
    /// Idle draw and full-load efficiency cannot both be true.
    FiguresContradict,
    /// The surge rating is below the continuous rating.
    SurgeBelowContinuous {
        /// Surge rating.
        surge: Watts,
        /// Continuous rating.
        continuous: Watts,
    },
    /// Everything that may run at one time passes the continuous rating.
    TogetherTooMuch {
        /// Together.
        running: Watts,
        /// Continuous rating.
        continuous: Watts,
    },
    /// The battery is asked for more current than it gives comfortably.
    BatteryStrained {
        /// Current.
        current: Amps,
        /// Comfortable limit.
        comfortable: Amps,
    },
    /// The battery is asked for more than it should ever give: lithium protection may switch
    /// everything off at once, lead-acid voltage collapses.
    BatteryOverloaded {
        /// Current.
        current: Amps,
        /// Limit.
        most: Amps,
    },
    /// The rating, if ever used in full, would pass the battery's limit; the loads do not.
    RatingAboveBattery {
        /// Current at the continuous rating.
        current: Amps,
        /// Limit.
        most: Amps,
    },
    /// A cable run that feeds the inverter carries less than the loads can ask for.
    CableTooThin {
        /// Current.
        current: Amps,
        /// What the cable carries.
        ampacity: Amps,
    },
    /// Under the largest load the voltage at the inverter falls to its cut-out although the
    /// battery is half full.
    MayCutOut {
        /// Voltage at the inverter.
        at_inverter: Volts,
        /// Its cut-out.
        cut_out: Volts,
    },
    /// Left on all day it takes this much with nothing connected.
    IdleAllDay {
        /// Energy a day.
        per_day: WattHours,
    },
}

impl InverterFinding {
    /// How much it matters.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self {
            Self::BatteryOverloaded { .. } | Self::CableTooThin { .. } => Severity::Danger,
            Self::NotFitted
            | Self::SurgeBelowContinuous { .. }
            | Self::TogetherTooMuch { .. }
            | Self::BatteryStrained { .. }
            | Self::FiguresContradict
            | Self::MayCutOut { .. } => Severity::Warning,
            Self::RatingAboveBattery { .. } | Self::IdleAllDay { .. } => Severity::Note,
        }
    }
}

/// Current a battery gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BatteryLimits {
    /// For as long as it lasts, without strain.
    pub comfortable: Amps,
    /// The most for minutes.
    pub most: Amps,
}

/// Currents a bank stands, as multiples of its rated capacity per hour: with ease, the limit of
/// [`crate::physics::battery::CellData`]; at most, flooded and gel 0.5, AGM and LiFePO4 1 (common
/// practice, no source; the maker's figures, above all the protection electronics of lithium, come
/// first).
#[must_use]
pub fn battery_limits(bank: &Bank) -> BatteryLimits {
    let most = match bank.chemistry {
        Chemistry::Flooded | Chemistry::Gel => 0.5,
        Chemistry::Agm | Chemistry::LiFePo4 => 1.0,
    };
    let comfortable = cell_data(bank.chemistry).discharge_limit_c.min(most);
    let one_hour = bank.rated_capacity() / Hours(1.0);
    BatteryLimits { comfortable: one_hour * comfortable, most: one_hour * most }
}

/// Result of the check.
#[derive(Clone, Debug, PartialEq)]
pub struct InverterVerdict {
    /// Loads on it, in their order.
    pub loads: Vec<OnInverter>,
    /// Smallest sets that must not run together, the smallest first, at most [`MAX_SETS`].
    pub forbidden: Vec<Forbidden>,
    /// The worst coincidence.
    pub together: Coincidence,
    /// Current at the battery at the continuous rating.
    pub rating_current: Amps,
    /// Current at the battery in the worst coincidence the inverter can deliver.
    pub worst_current: Amps,
    /// The same over rated capacity [1/h].
    pub worst_c_rate_per_hour: f64,
    /// What the battery stands.
    pub battery: BatteryLimits,
    /// What was found, the gravest first.
    pub findings: Vec<InverterFinding>,
}

/// The loads behind the inverter that draw anything.
#[must_use]
pub fn loads_on(setup: &Setup) -> Vec<OnInverter> {
    let seen = |load: &Load| {
        let one = load.draw.watts();
        let running = one * f64::from(load.quantity);
        let starting = running + one * (load.surge_factor - 1.0).max(0.0);
        OnInverter { id: load.id, running, starting, times: load.times_of_day() }
    };
    setup
        .enabled_loads()
        .filter(|load| load.feed == Feed::Inverter && load.draw.watts().0 > 0.0)
        .map(seen)
        .collect()
}

/// Running power of a set, and the worst moment of a start in it.
#[must_use]
pub fn demand(set: &[OnInverter]) -> (Watts, Watts) {
    let running: Watts = set.iter().map(|load| load.running).sum();
    let extra = set.iter().map(|load| load.starting.0 - load.running.0).fold(0.0, f64::max);
    (running, running + Watts(extra))
}

/// Whether a set may run together on an inverter; `None` if it may.
#[must_use]
pub fn clash(set: &[OnInverter], inverter: &Inverter) -> Option<Clash> {
    let (running, starting) = demand(set);
    if running > inverter.continuous {
        Some(Clash::Continuous)
    } else if starting > inverter.surge.max(inverter.continuous) {
        Some(Clash::Surge)
    } else {
        None
    }
}

/// Whether all have a minute of the day in common.
fn meet(set: &[OnInverter]) -> bool {
    TimesOfDay::meet(set.iter().map(|load| load.times))
}

/// The highest sum at one minute of the day: times begin somewhere, so one of the beginnings has it.
#[must_use]
pub fn worst_coincidence(loads: &[OnInverter]) -> Coincidence {
    let mut worst = Coincidence::default();
    let starts = loads.iter().flat_map(|load| load.times.windows());
    for at_min in starts.map(|window| window.from_min) {
        let there = || loads.iter().filter(|load| load.times.holds(at_min));
        let running: Watts = there().map(|load| load.running).sum();
        if running > worst.running {
            worst = Coincidence { at_min, ids: there().map(|load| load.id).collect(), running };
        }
    }
    worst
}

/// All smallest sets of up to three loads that must not run together.
#[must_use]
pub fn forbidden_sets(loads: &[OnInverter], inverter: &Inverter) -> Vec<Forbidden> {
    let mut found: Vec<Forbidden> = Vec::new();
    let mut consider = |set: &[OnInverter]| {
        let ids: Vec<u32> = set.iter().map(|load| load.id).collect();
        let within = |smaller: &Forbidden| smaller.ids.iter().all(|id| ids.contains(id));
        if found.len() >= MAX_SETS || found.iter().any(within) {
            return;
        }
        if let Some(clash) = clash(set, inverter) {
            let (running, starting) = demand(set);
            found.push(Forbidden { ids, clash, running, starting, planned: meet(set) });
        }
    };
    for a in loads {
        consider(&[*a]);
    }
    for (i, a) in loads.iter().enumerate() {
        for b in loads.iter().skip(i + 1) {
            consider(&[*a, *b]);
        }
    }
    for (i, a) in loads.iter().enumerate() {
        for (j, b) in loads.iter().enumerate().skip(i + 1) {
            for c in loads.iter().skip(j + 1) {
                consider(&[*a, *b, *c]);
            }
        }
    }
    found
}

/// Checks the inverter of a setup; `place` is where its cable lies.
#[must_use]
pub fn check(setup: &Setup, place: Surroundings) -> InverterVerdict {
    let (inverter, bank) = (&setup.inverter, &setup.bank);
    let loads = loads_on(setup);
    let together = worst_coincidence(&loads);
    let curve = InverterCurve::of(inverter);
    let sizing = wiring::INVERTER_SIZING_VOLTS.max(inverter.cut_out) * bank.system.series_12v();
    let worst = together.running.min(inverter.continuous);
    let worst_current = if worst.0 > 0.0 { curve.dc_current(worst, sizing) } else { Amps::ZERO };
    let capacity_per_hour = bank.rated_capacity() / Hours(1.0);
    let mut verdict = InverterVerdict {
        forbidden: forbidden_sets(&loads, inverter),
        rating_current: wiring::inverter_current(inverter, bank.system).continuous,
        worst_current,
        worst_c_rate_per_hour: if capacity_per_hour.0 > 0.0 {
            worst_current / capacity_per_hour
        } else {
            0.0
        },
        battery: battery_limits(bank),
        loads,
        together,
        findings: Vec::new(),
    };
    verdict.findings = findings(setup, &verdict, place);
    verdict
}

fn findings(setup: &Setup, verdict: &InverterVerdict, place: Surroundings) -> Vec<InverterFinding> {
    let (unit, bank) = (&setup.inverter, &setup.bank);
    if !unit.fitted {
        let needed = setup.enabled_loads().any(|load| load.feed == Feed::Inverter);
        return if needed { vec![InverterFinding::NotFitted] } else { Vec::new() };
    }
    let mut found = Vec::new();
    if !inverter::is_consistent(unit) {
        found.push(InverterFinding::FiguresContradict);
    }
    let (surge, continuous) = (unit.surge, unit.continuous);
    if surge < continuous {
        found.push(InverterFinding::SurgeBelowContinuous { surge, continuous });
    }
    if verdict.together.running > continuous {
        let running = verdict.together.running;
        found.push(InverterFinding::TogetherTooMuch { running, continuous });
    }
    let (current, BatteryLimits { comfortable, most }) = (verdict.worst_current, verdict.battery);
    if current > most {
        found.push(InverterFinding::BatteryOverloaded { current, most });
    } else if current > comfortable {
        found.push(InverterFinding::BatteryStrained { current, comfortable });
    }
    if current <= most && verdict.rating_current > most {
        found.push(InverterFinding::RatingAboveBattery { current: verdict.rating_current, most });
    }
    for run in &setup.cables {
        let ampacity = ampacity::ampacity(run.size, place);
        if wiring::run_current(run, setup).from == CurrentFrom::Inverter && current > ampacity {
            found.push(InverterFinding::CableTooThin { current, ampacity });
        }
    }
    let (at_inverter, cut_out) = (voltage_under(setup, verdict.together.running), unit.cut_out);
    let cut_out = cut_out * bank.system.series_12v();
    if at_inverter < cut_out {
        found.push(InverterFinding::MayCutOut { at_inverter, cut_out });
    }
    if unit.switching == InverterSwitching::AllDay && unit.idle.0 > 0.0 {
        found.push(InverterFinding::IdleAllDay { per_day: unit.idle * Hours(HOURS_PER_DAY) });
    }
    found.sort_by_key(|finding| std::cmp::Reverse(finding.severity()));
    found
}

/// Voltage at the inverter under `ac`, at most its continuous rating: rest voltage of the battery
/// half full, less what bank and cable drop after minutes.
#[must_use]
pub fn voltage_under(setup: &Setup, ac: Watts) -> Volts {
    let bank = &setup.bank;
    let half_full = cell_data(bank.chemistry).ocv_v[POINTS / 2];
    let rest = Volts(half_full * bank.system.series_12v());
    if ac.0 <= 0.0 {
        return rest;
    }
    let power = inverter::dc_power(&setup.inverter, ac.min(setup.inverter.continuous));
    let resistance = short_circuit::loaded_resistance(bank) + bank.cable;
    // U = U0 - R P / U: the larger root; where none is real the voltage collapses to half of U0.
    let square = rest.0 * rest.0 - 4.0 * resistance.0 * power.0;
    Volts(0.5 * (rest.0 + square.max(0.0).sqrt()))
}
