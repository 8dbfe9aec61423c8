//! Checks one cable run: current, drop, heat and fuse, with the sizes that would do.
//!
//! - Appliances with electronics draw constant power, so the current is taken at the low end of
//!   the voltage: 95 % of nominal (the rule of IEEE 1013 for running currents), or the
//!   appliance's own cut-out where that is lower. An inverter is taken at its continuous rating
//!   over its efficiency at 11 V per 12 V nominal, or at its cut-out where that is higher.
//! - Allowed drop: 3 % of nominal for main feeds and safety equipment, else 10 % (ISO 10133,
//!   ABYC E-11).
//! - Fuse: at least 1.25 times the current, at most what the cable carries where it lies.
//!
//! Findings carry numbers, never words. A verdict is an estimate: a competent person and the
//! local code decide.

mod finding;

pub use finding::{CableFinding, Severity};

use crate::model::{CableRun, ConductorSize, Feed, Inverter, Load, Setup, SystemVoltage};
use crate::physics::ampacity::{self, Surroundings};
use crate::physics::cable;
use crate::physics::fuse::{self, FuseChoice, FuseKind, FuseWindow};
use crate::physics::inverter::InverterCurve;
use crate::physics::short_circuit;
use crate::units::{Amps, Celsius, Metres, Ohms, SquareMillimetres, Volts, Watts};

/// Low end of the voltage over nominal, for constant-power loads.
pub const LOW_VOLTAGE_FRAC: f64 = 0.95;
/// Voltage an inverter's cable is sized at, per 12 V nominal.
pub const INVERTER_SIZING_VOLTS: Volts = Volts(11.0);
/// Drop allowed for main feeds and safety equipment, share of nominal.
pub const CRITICAL_DROP_FRAC: f64 = 0.03;
/// Drop allowed for all else, share of nominal.
pub const ORDINARY_DROP_FRAC: f64 = 0.10;

/// Where the current of a verdict comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CurrentFrom {
    /// Typed with the run.
    Typed,
    /// The load of this id, fed straight from the battery.
    Load(u32),
    /// The inverter's continuous rating.
    Inverter,
}

/// Currents of a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RunCurrent {
    /// At nominal voltage [A].
    pub nominal: Amps,
    /// At the low end of the voltage [A]: what the cable is checked for.
    pub continuous: Amps,
    /// For a moment at the start [A], not below continuous.
    pub start: Amps,
    /// Where it comes from.
    pub from: CurrentFrom,
}

/// Thinnest sizes that drop little enough, stay cool enough and leave room for a fuse.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct CableSizes {
    /// Metric; `None` if not even the thickest does.
    pub metric: Option<SquareMillimetres>,
    /// American wire gauge; `None` if not even the thickest does.
    pub gauge: Option<i8>,
}

/// Result of checking one run.
#[derive(Clone, Debug, PartialEq)]
pub struct RunVerdict {
    /// Currents.
    pub current: RunCurrent,
    /// Cross-section of the conductor.
    pub area: SquareMillimetres,
    /// Resistance out and back at working temperature.
    pub resistance: Ohms,
    /// Voltage lost at the continuous current.
    pub drop: Volts,
    /// The same as a share of nominal, 0..
    pub drop_frac: f64,
    /// Share allowed, 0..1.
    pub allowed_frac: f64,
    /// Voltage lost at the start.
    pub start_drop: Volts,
    /// Heat made in the cable at the continuous current.
    pub lost: Watts,
    /// What the cable carries where it lies.
    pub ampacity: Amps,
    /// Estimated temperature of the conductor at the continuous current.
    pub conductor: Celsius,
    /// Sizes for 3 %.
    pub for_3_percent: CableSizes,
    /// Sizes for 10 %.
    pub for_10_percent: CableSizes,
    /// Span for the fuse with the cable as it is.
    pub fuse_window: FuseWindow,
    /// Fuse for the cable as it is; `None` if none fits.
    pub fuse: Option<FuseChoice>,
    /// Fuse for the metric size suggested for this run's own limit.
    pub suggested_fuse: Option<FuseChoice>,
    /// Current of a short at the battery.
    pub prospective: Amps,
    /// What was found, the gravest first.
    pub findings: Vec<CableFinding>,
}

impl RunVerdict {
    /// Sizes for the limit of this run: 3 % if critical, else 10 %.
    #[must_use]
    pub fn suggested(&self) -> CableSizes {
        if self.allowed_frac <= CRITICAL_DROP_FRAC {
            self.for_3_percent
        } else {
            self.for_10_percent
        }
    }

    /// The gravest severity; `None` if nothing was found.
    #[must_use]
    pub fn severity(&self) -> Option<Severity> {
        self.findings.iter().map(CableFinding::severity).max()
    }
}

/// Currents of a load fed straight from the battery, all of its quantity running, one starting.
#[must_use]
pub fn load_current(load: &Load, system: SystemVoltage) -> RunCurrent {
    let nominal_volts = system.nominal();
    let low = match load.cut_out {
        Some(cut_out) if cut_out.off.0 > 0.0 => {
            (cut_out.off * system.series_12v()).min(nominal_volts * LOW_VOLTAGE_FRAC)
        }
        _ => nominal_volts * LOW_VOLTAGE_FRAC,
    };
    let one = load.draw.watts().max(load.standby);
    let running = one * f64::from(load.quantity);
    let starting = running + one * (load.surge_factor - 1.0).max(0.0);
    RunCurrent {
        nominal: running / nominal_volts,
        continuous: running / low,
        start: starting / low,
        from: CurrentFrom::Load(load.id),
    }
}

/// Currents of an inverter's battery cable: continuous rating, and surge rating at the start.
#[must_use]
pub fn inverter_current(inverter: &Inverter, system: SystemVoltage) -> RunCurrent {
    let curve = InverterCurve::of(inverter);
    let low = INVERTER_SIZING_VOLTS.max(inverter.cut_out) * system.series_12v();
    let continuous = curve.dc_current(inverter.continuous, low);
    RunCurrent {
        nominal: curve.dc_current(inverter.continuous, system.nominal()),
        continuous,
        start: curve.dc_current(inverter.surge, low).max(continuous),
        from: CurrentFrom::Inverter,
    }
}

/// Currents of a run: of the load it names, of the inverter if that load hangs on it, or as typed.
#[must_use]
pub fn run_current(run: &CableRun, setup: &Setup) -> RunCurrent {
    let named = run.load_id.and_then(|id| setup.load(id));
    match named {
        Some(load) if load.feed == Feed::Inverter => {
            inverter_current(&setup.inverter, setup.bank.system)
        }
        Some(load) => load_current(load, setup.bank.system),
        None => {
            let amps = run.amps.max(Amps::ZERO);
            RunCurrent { nominal: amps, continuous: amps, start: amps, from: CurrentFrom::Typed }
        }
    }
}

/// Thinnest sizes for a run whose drop may be `allowed_frac` of nominal.
fn sizes(
    current: RunCurrent,
    length: Metres,
    working: Celsius,
    allowed: Volts,
    prospective: Amps,
    place: Surroundings,
) -> CableSizes {
    let does = |size: ConductorSize| {
        let carries = ampacity::ampacity(size, place);
        cable::area(size) >= ampacity::MIN_AREA
            && cable::voltage_drop(size, length, current.continuous, working) <= allowed
            && fuse::choose(current.continuous, current.start, carries, prospective).is_some()
    };
    CableSizes {
        metric: cable::IEC_60228_CLASS_5
            .iter()
            .map(|(area, _)| *area)
            .find(|&area| does(ConductorSize::Metric { area })),
        gauge: cable::GAUGES.into_iter().find(|&gauge| does(ConductorSize::Awg { gauge })),
    }
}

/// Checks one run of a setup where it lies.
#[must_use]
pub fn check(run: &CableRun, setup: &Setup, place: Surroundings) -> RunVerdict {
    let current = run_current(run, setup);
    let nominal = setup.bank.system.nominal();
    let allowed_frac = if run.critical { CRITICAL_DROP_FRAC } else { ORDINARY_DROP_FRAC };
    let prospective = short_circuit::of_bank(&setup.bank);
    let resistance = cable::loop_resistance(run.size, run.length, run.working);
    let drop = resistance * current.continuous;
    let carries = ampacity::ampacity(run.size, place);
    let sizes_for =
        |frac: f64| sizes(current, run.length, run.working, nominal * frac, prospective, place);
    let mut verdict = RunVerdict {
        current,
        area: cable::area(run.size),
        resistance,
        drop,
        drop_frac: drop / nominal,
        allowed_frac,
        start_drop: resistance * current.start,
        lost: drop * current.continuous,
        ampacity: carries,
        conductor: ampacity::conductor_temperature(run.size, current.continuous, place),
        for_3_percent: sizes_for(CRITICAL_DROP_FRAC),
        for_10_percent: sizes_for(ORDINARY_DROP_FRAC),
        fuse_window: FuseWindow::of(current.continuous, carries),
        fuse: fuse::choose(current.continuous, current.start, carries, prospective),
        suggested_fuse: None,
        prospective,
        findings: Vec::new(),
    };
    verdict.suggested_fuse = verdict.suggested().metric.and_then(|area| {
        let carries = ampacity::ampacity(ConductorSize::Metric { area }, place);
        fuse::choose(current.continuous, current.start, carries, prospective)
    });
    verdict.findings = findings(run, setup, &verdict);
    verdict
}

fn findings(run: &CableRun, setup: &Setup, verdict: &RunVerdict) -> Vec<CableFinding> {
    let current = verdict.current;
    let mut found = Vec::new();
    let mut push_if = |applies: bool, finding: CableFinding| {
        if applies {
            found.push(finding);
        }
    };
    let named = run.load_id.and_then(|id| setup.load(id));
    if let (Some(load_id), None) = (run.load_id, named) {
        push_if(true, CableFinding::LoadMissing { load_id });
    }
    let (area, least) = (verdict.area, ampacity::MIN_AREA);
    push_if(area < least, CableFinding::BelowMinimumSize { area, least });
    let (fuse, ampacity) = (run.fuse, verdict.ampacity);
    push_if(fuse.0 <= 0.0, CableFinding::NoFuse);
    push_if(fuse > ampacity, CableFinding::FuseAboveCable { fuse, ampacity });
    let (prospective, blade) = (verdict.prospective, FuseKind::Blade.interrupting());
    push_if(prospective > blade, CableFinding::HighInterruptNeeded { prospective, blade });
    if current.continuous.0 <= 0.0 {
        push_if(true, CableFinding::CurrentUnknown);
    } else {
        let (drop, drop_frac, allowed_frac) =
            (verdict.drop, verdict.drop_frac, verdict.allowed_frac);
        let too_high = drop_frac > allowed_frac;
        push_if(too_high, CableFinding::DropTooHigh { drop, drop_frac, allowed_frac });
        let too_thin = current.continuous > ampacity;
        push_if(too_thin, CableFinding::CableTooThin { current: current.continuous, ampacity });
        let FuseWindow { from, to } = verdict.fuse_window;
        push_if(!too_thin && verdict.fuse.is_none(), CableFinding::NoFuseFits { from, to });
        push_if(fuse.0 > 0.0 && fuse < from, CableFinding::FuseBelowLoad { fuse, needed: from });
        let start = current.start;
        let at_start = fuse >= from && start > fuse * fuse::START_LIMIT;
        push_if(at_start, CableFinding::FuseMayBlowAtStart { fuse, start });
        let (conductor, assumed) = (verdict.conductor, run.working);
        push_if(
            conductor.0 > assumed.0 + 5.0,
            CableFinding::WarmerThanAssumed { conductor, assumed },
        );
        if let Some(cut_out) = named.filter(|load| load.feed == Feed::Dc).and_then(|l| l.cut_out) {
            let low = setup.bank.system.nominal() * LOW_VOLTAGE_FRAC;
            let at_load = low - verdict.start_drop;
            let cut_out = cut_out.off * setup.bank.system.series_12v();
            push_if(at_load < cut_out, CableFinding::MayCutOut { at_load, cut_out });
        }
        if let ConductorSize::Awg { gauge } = run.size
            && let Some(thinner) = cable::sae_area(gauge)
        {
            let drop_frac = drop_frac * (area.0 / thinner.0);
            let fails = !too_high && drop_frac > allowed_frac;
            push_if(fails, CableFinding::FailsAsSaeGauge { gauge, drop_frac });
        }
    }
    found.sort_by_key(|finding| std::cmp::Reverse(finding.severity()));
    found
}
