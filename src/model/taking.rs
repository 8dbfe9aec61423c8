//! Taking parts of one setup into another.

use super::setup::bounds::MAX_LOADS;
use super::{Load, Setup};
use std::collections::BTreeSet;

/// Which parts of another setup are taken.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Parts {
    /// Ids of its loads; they are added to what is there.
    pub loads: BTreeSet<u32>,
    /// Its panels, in the place of those that are there.
    pub panels: bool,
    /// Its battery, in the place of the one that is there.
    pub battery: bool,
}

impl Parts {
    /// Nothing is taken.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.loads.is_empty() && !self.panels && !self.battery
    }
}

impl Setup {
    /// Takes parts of `theirs`. Loads keep what they are and get ids of their own; panels that face the noon
    /// sun face it here too. Loads the list has no room for stay out: [`Setup::room_for_loads`] tells how many fit.
    pub fn take(&mut self, theirs: &Self, parts: &Parts) {
        for load in theirs.loads.iter().filter(|load| parts.loads.contains(&load.id)) {
            if self.room_for_loads() == 0 {
                break;
            }
            let id = self.fresh_load_id();
            self.loads.push(Load { id, ..load.clone() });
        }
        if parts.panels {
            let mut turned = theirs.clone();
            turned.turn_panels(&self.trip.place);
            self.solar = turned.solar;
        }
        if parts.battery {
            self.bank = theirs.bank.clone();
        }
    }

    /// How many more loads the list holds.
    #[must_use]
    pub fn room_for_loads(&self) -> usize {
        MAX_LOADS.saturating_sub(self.loads.len())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::SolarArray;
    use crate::units::{AmpHours, Degrees, Watts};

    fn theirs() -> Setup {
        let mut setup = Setup {
            loads: vec![
                Load { id: 1, name: "Lamp".to_owned(), ..Load::default() },
                Load { id: 7, name: "Fan".to_owned(), ..Load::default() },
            ],
            solar: vec![SolarArray { peak: Watts(200.0), ..SolarArray::default() }],
            ..Setup::default()
        };
        setup.bank.capacity_20h = AmpHours(230.0);
        setup
    }

    #[test]
    fn loads_are_added_under_ids_of_their_own() {
        let mut own = Setup { loads: vec![Load { id: 7, ..Load::default() }], ..Setup::default() };
        let before = own.clone();
        let parts = Parts { loads: BTreeSet::from([7]), ..Parts::default() };
        own.take(&theirs(), &parts);
        assert_eq!(own.loads.len(), 2);
        assert_eq!((own.loads[1].id, own.loads[1].name.as_str()), (8, "Fan"));
        own.loads.pop();
        assert_eq!(own, before, "nothing else is touched");
    }

    #[test]
    fn panels_and_battery_take_the_place_of_ones_own() {
        let mut own = Setup::default();
        own.trip.place.latitude = Degrees(-38.0);
        let north = own.trip.place.noon_facing();
        let mut theirs = theirs();
        theirs.trip.place.latitude = Degrees(52.0);
        theirs.solar[0].facing = theirs.trip.place.noon_facing();
        own.take(&theirs, &Parts { panels: true, battery: true, ..Parts::default() });
        assert_eq!(own.bank, theirs.bank);
        assert_eq!((own.solar[0].peak, own.solar[0].facing), (Watts(200.0), north));
        assert_eq!(own.trip.place.latitude, Degrees(-38.0));
    }

    #[test]
    fn a_full_list_takes_no_more() {
        let loads = (1..=MAX_LOADS as u32).map(|id| Load { id, ..Load::default() }).collect();
        let mut own = Setup { loads, ..Setup::default() };
        own.take(&theirs(), &Parts { loads: BTreeSet::from([1, 7]), ..Parts::default() });
        assert_eq!(own.loads.len(), MAX_LOADS);
    }
}
