//! What each load takes in a day, for the list that is being edited.

use super::outlook::Calculation;
use super::state::AppState;
use crate::forecast::demand::{LoadDay, at_battery};
use crate::model::{Climate, Setup};
use crate::physics::battery::temperature::air_temperature;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, Hours, WattHours};
use leptos::prelude::*;

/// Energy a day by load, at the battery, in the month of arrival.
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
        let climate = calculation.climate.get();
        app.setup.with(|setup| air_of_arrival(setup, climate.as_ref()))
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

/// Air temperature by hour in the month of arrival: as the user gave it, or the climate's.
fn air_of_arrival(setup: &Setup, climate: Option<&Climate>) -> [Celsius; 24] {
    let trip = &setup.trip;
    let month = usize::from(trip.month.clamp(1, 12)) - 1;
    let usual = climate.and_then(|climate| climate.air.get(month)).copied();
    let mean = trip.own_air.or(usual).unwrap_or(Celsius(15.0));
    let half_range_k = climate.and_then(|climate| climate.half_range_k.get(month)).copied();
    std::array::from_fn(|hour| {
        air_temperature(mean, half_range_k.unwrap_or(0.0), hour as f64 + 0.5)
    })
}
