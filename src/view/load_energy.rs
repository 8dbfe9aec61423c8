//! What each load takes in a day, for the list that is being edited.

use super::outlook::Calculation;
use super::state::AppState;
use crate::forecast::demand::{LoadDay, at_battery};
use crate::model::Setup;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, Hours, WattHours};
use leptos::prelude::*;

/// Energy a day by load, at the battery, on the first whole day of the trip.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Needs {
    /// By load id; rows that are switched off count as if they were on.
    by_load: Vec<(u32, WattHours)>,
    /// All that are switched on.
    pub total: WattHours,
}

impl Needs {
    /// Energy a day of the load with this id, nothing for one that is not there.
    #[must_use]
    pub fn of(&self, id: u32) -> WattHours {
        self.by_load
            .iter()
            .find(|(load, _)| *load == id)
            .map_or(WattHours::ZERO, |(_, energy)| *energy)
    }
}

/// The needs, following every edit.
#[must_use]
pub fn follow(app: AppState, calculation: Calculation) -> Memo<Needs> {
    let air = Memo::new(move |_| {
        let sun = calculation.sun.get();
        // The same day the answer speaks of: the first whole one.
        let day = sun.and_then(|sun| sun.0.air.get(1).or(sun.0.air.first()).copied());
        day.map_or([Celsius(15.0); 24], |air| air.by_hour())
    });
    Memo::new(move |_| {
        let air = air.get();
        app.setup.with(|setup| needs(setup, &air))
    })
}

fn needs(setup: &Setup, air: &[Celsius; 24]) -> Needs {
    let curve = InverterCurve::of(&setup.inverter);
    let by_load: Vec<(u32, WattHours)> = setup
        .loads
        .iter()
        .map(|load| {
            let day = LoadDay::of(load, air);
            let energy =
                day.hours.iter().map(|hour| at_battery(load, *hour, &curve) * Hours(1.0)).sum();
            (load.id, energy)
        })
        .collect();
    let total = setup
        .loads
        .iter()
        .zip(&by_load)
        .filter(|(load, _)| load.enabled)
        .map(|(_, (_, energy))| *energy)
        .sum();
    Needs { by_load, total }
}
