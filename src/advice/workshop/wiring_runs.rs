//! Suggests cable runs worth checking: heavy loads, the inverter, everything that charges.
//!
//! Lengths are assumptions for the user to replace. Every proposal already has the thinnest metric
//! size that passes [`super::wiring::check`] for its length, and the fuse that goes with it.

use super::wiring::{self, LOW_VOLTAGE_FRAC, check};
use crate::model::{CableRun, ConductorSize, DrivingCharger, Feed, Load, Setup};
use crate::physics::ampacity::Surroundings;
use crate::units::{Amps, Metres};

/// Current from which a load is heavy enough to propose its cable.
pub const HEAVY: Amps = Amps(5.0);

/// What a proposed run is for; the page finds the words.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RunPurpose {
    /// The load of this id.
    Load(u32),
    /// Battery to inverter.
    Inverter,
    /// Battery-to-battery charger to the leisure battery.
    DcDcCharger,
    /// Starter battery to leisure battery through the relay.
    ChargingRelay,
    /// Mains charger to battery.
    MainsCharger,
    /// Solar controller to battery, by position among the arrays.
    Solar(usize),
    /// Generator, fuel cell or wind, by position among the other sources.
    Other(usize),
}

/// A proposal.
#[derive(Clone, Debug, PartialEq)]
pub struct SuggestedRun {
    /// What it is for.
    pub purpose: RunPurpose,
    /// The run; its name is left empty.
    pub run: CableRun,
}

/// Runs worth checking that no run of the setup names yet, the strongest current first.
#[must_use]
pub fn suggested_runs(setup: &Setup, place: Surroundings) -> Vec<SuggestedRun> {
    let mut proposals: Vec<SuggestedRun> = heavy_loads(setup)
        .chain(inverter(setup))
        .chain(engine(setup))
        .chain(chargers(setup))
        .map(|(purpose, run)| SuggestedRun { purpose, run: fitted(run, setup, place) })
        .collect();
    proposals.sort_by(|a, b| b.run.amps.0.total_cmp(&a.run.amps.0));
    proposals
}

fn heavy_loads(setup: &Setup) -> impl Iterator<Item = (RunPurpose, CableRun)> + '_ {
    let named = |load: &&Load| setup.cables.iter().all(|run| run.load_id != Some(load.id));
    setup.enabled_loads().filter(|load| load.feed == Feed::Dc).filter(named).filter_map(|load| {
        let amps = wiring::load_current(load, setup.bank.system).continuous;
        let run = CableRun {
            load_id: Some(load.id),
            amps,
            length: Metres(5.0),
            critical: false,
            ..CableRun::default()
        };
        (amps >= HEAVY).then_some((RunPurpose::Load(load.id), run))
    })
}

fn inverter(setup: &Setup) -> Option<(RunPurpose, CableRun)> {
    let behind =
        |id: u32| setup.loads.iter().any(|load| load.id == id && load.feed == Feed::Inverter);
    let drawn = setup.cables.iter().any(|run| run.load_id.is_some_and(behind));
    let amps = wiring::inverter_current(&setup.inverter, setup.bank.system).continuous;
    (setup.inverter.fitted && !drawn).then(|| (RunPurpose::Inverter, feed(amps, 1.5)))
}

fn engine(setup: &Setup) -> Option<(RunPurpose, CableRun)> {
    setup.driving.fitted.then(|| match setup.driving.charger {
        DrivingCharger::DcDc { amps } => (RunPurpose::DcDcCharger, feed(amps, 2.0)),
        DrivingCharger::Relay { cable_length, limit, .. } => {
            (RunPurpose::ChargingRelay, feed(limit, cable_length.0))
        }
    })
}

fn chargers(setup: &Setup) -> impl Iterator<Item = (RunPurpose, CableRun)> + '_ {
    let low = setup.bank.system.nominal() * LOW_VOLTAGE_FRAC;
    let mains =
        setup.hook_up.fitted.then(|| (RunPurpose::MainsCharger, feed(setup.hook_up.amps, 2.0)));
    let solar = setup
        .solar
        .iter()
        .enumerate()
        .filter(|(_, array)| array.enabled)
        .map(move |(at, array)| (RunPurpose::Solar(at), feed(array.peak / low, 3.0)));
    let other = setup
        .other
        .iter()
        .enumerate()
        .filter(|(_, source)| source.enabled)
        .map(|(at, source)| (RunPurpose::Other(at), feed(source.amps, 3.0)));
    mains.into_iter().chain(solar).chain(other).filter(|(_, run)| run.amps.0 > 0.0)
}

/// A main feed of this current and assumed length [m].
fn feed(amps: Amps, length_m: f64) -> CableRun {
    CableRun { amps, length: Metres(length_m), critical: true, ..CableRun::default() }
}

/// The run with the size and the fuse that suit it; without a fuse where no size on the table does.
fn fitted(run: CableRun, setup: &Setup, place: Surroundings) -> CableRun {
    let verdict = check(&run, setup, place);
    match verdict.suggested().metric {
        Some(area) => CableRun {
            size: ConductorSize::Metric { area },
            fuse: verdict.suggested_fuse.map_or(Amps::ZERO, |choice| choice.rating),
            ..run
        },
        None => run,
    }
}
