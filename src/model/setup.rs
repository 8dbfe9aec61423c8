//! [`Setup`]: loads, battery, inverter, chargers, trip, prices, readings and cables of one user.

use super::sanitise::{MAX_NAME_CHARS, Sanitiser};
use super::{
    Bank, CableRun, Correction, Driving, HookUp, Inverter, Load, OtherSource, Place, Prices,
    Reading, SolarArray, Trip, Vehicle,
};
use crate::units::Watts;
use bounds::{MAX_ARRAYS, MAX_CABLES, MAX_LOADS, MAX_OTHER, MAX_READINGS};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    /// Most loads in a setup.
    pub const MAX_LOADS: usize = 64;
    /// Most solar arrays.
    pub const MAX_ARRAYS: usize = 4;
    /// Most other sources.
    pub const MAX_OTHER: usize = 3;
    /// Most readings kept.
    pub const MAX_READINGS: usize = 60;
    /// Most cables.
    pub const MAX_CABLES: usize = 24;
}

/// One whole setup: what a link, a file and the storage carry.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Setup {
    /// Name for people.
    pub name: String,
    /// This is the invented example, not the user's own.
    pub example: bool,
    /// What somebody travels in.
    pub vehicle: Vehicle,
    /// Appliances.
    pub loads: Vec<Load>,
    /// Battery.
    pub bank: Bank,
    /// Inverter.
    pub inverter: Inverter,
    /// Solar.
    pub solar: Vec<SolarArray>,
    /// Engine.
    pub driving: Driving,
    /// Mains.
    pub hook_up: HookUp,
    /// Generator, fuel cell, wind.
    pub other: Vec<OtherSource>,
    /// Where and when.
    pub trip: Trip,
    /// Prices and weights.
    pub prices: Prices,
    /// Readings on site.
    pub readings: Vec<Reading>,
    /// What they taught.
    pub correction: Correction,
    /// Cables to check.
    pub cables: Vec<CableRun>,
}

impl Setup {
    /// Panels that face the noon sun go on to do so at `place`, on the other side of the equator too; what was
    /// turned another way stays.
    pub fn turn_panels(&mut self, place: &Place) {
        let (before, now) = (self.trip.place.noon_facing(), place.noon_facing());
        if before != now {
            for array in self.solar.iter_mut().filter(|array| array.facing == before) {
                array.facing = now;
            }
        }
    }

    /// An id no load of this setup has.
    #[must_use]
    pub fn fresh_load_id(&self) -> u32 {
        self.loads.iter().map(|load| load.id).max().map_or(1, |max| max.wrapping_add(1).max(1))
    }

    /// The load with this id.
    #[must_use]
    pub fn load(&self, id: u32) -> Option<&Load> {
        self.loads.iter().find(|load| load.id == id)
    }

    /// The load with this id, to be changed.
    pub fn load_mut(&mut self, id: u32) -> Option<&mut Load> {
        self.loads.iter_mut().find(|load| load.id == id)
    }

    /// Nominal power of the panels in use.
    #[must_use]
    pub fn solar_peak(&self) -> Watts {
        self.solar.iter().filter(|array| array.enabled).map(|array| array.peak).sum()
    }

    /// Loads that count.
    pub fn enabled_loads(&self) -> impl Iterator<Item = &Load> {
        self.loads.iter().filter(|load| load.enabled)
    }

    /// The same setup with every number inside its bounds ([`super::limits`]), every text plain and
    /// short, every list bounded, and load ids unique; and how many things had to change.
    ///
    /// A setup that already keeps the bounds comes back unchanged, with 0.
    #[must_use]
    pub fn sanitised(mut self) -> (Self, usize) {
        let mut sanitiser = Sanitiser::default();
        let Self {
            name,
            example: _,
            vehicle: _,
            loads,
            bank,
            inverter,
            solar,
            driving,
            hook_up,
            other,
            trip,
            prices,
            readings,
            correction,
            cables,
        } = &mut self;
        sanitiser.text(name, MAX_NAME_CHARS);
        sanitiser.length(loads, MAX_LOADS);
        loads.iter_mut().for_each(|load| load.sanitise(&mut sanitiser));
        bank.sanitise(&mut sanitiser);
        inverter.sanitise(&mut sanitiser);
        sanitiser.length(solar, MAX_ARRAYS);
        solar.iter_mut().for_each(|array| array.sanitise(&mut sanitiser));
        driving.sanitise(&mut sanitiser);
        hook_up.sanitise(&mut sanitiser);
        sanitiser.length(other, MAX_OTHER);
        other.iter_mut().for_each(|source| source.sanitise(&mut sanitiser));
        trip.sanitise(&mut sanitiser);
        prices.sanitise(&mut sanitiser);
        sanitiser.length(readings, MAX_READINGS);
        readings.iter_mut().for_each(|reading| reading.sanitise(&mut sanitiser));
        correction.sanitise(&mut sanitiser);
        sanitiser.length(cables, MAX_CABLES);
        cables.iter_mut().for_each(|run| run.sanitise(&mut sanitiser));
        self.unique_load_ids(&mut sanitiser);
        (self, sanitiser.changed)
    }

    fn unique_load_ids(&mut self, sanitiser: &mut Sanitiser) {
        let mut seen = std::collections::HashSet::new();
        let mut next = self.fresh_load_id();
        for load in &mut self.loads {
            if !seen.insert(load.id) {
                while !seen.insert(next) {
                    next = next.wrapping_add(1);
                }
                load.id = next;
                sanitiser.changed += 1;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{CutOut, Draw};
    use crate::units::{AmpHours, Volts, Watts};

    #[test]
    fn a_default_setup_needs_no_change() {
        let setup = Setup { loads: vec![Load::default()], ..Setup::default() };
        let (same, changed) = setup.clone().sanitised();
        assert_eq!(changed, 0);
        assert_eq!(same, setup);
    }

    #[test]
    fn foreign_numbers_are_pulled_into_bounds() {
        let mut setup = Setup::default();
        setup.bank.capacity_20h = AmpHours(f64::NAN);
        setup.trip.nights = 255;
        setup.trip.month = 2;
        setup.trip.day = 31;
        for _ in 0..200 {
            let draw = Draw::Power { watts: Watts(f64::INFINITY) };
            setup.loads.push(Load {
                id: 7,
                draw,
                name: "a\u{202e}b".repeat(60),
                ..Load::default()
            });
        }
        let (kept, changed) = setup.sanitised();
        assert!(changed > 200);
        assert_eq!(kept.bank.capacity_20h, AmpHours(100.0));
        assert_eq!(kept.trip.nights, 60);
        assert_eq!((kept.trip.month, kept.trip.day), (2, 28));
        assert_eq!(kept.loads.len(), MAX_LOADS);
        let ids: std::collections::HashSet<u32> = kept.loads.iter().map(|load| load.id).collect();
        assert_eq!(ids.len(), MAX_LOADS);
        assert!(kept.loads.iter().all(|load| load.name.chars().count() == MAX_NAME_CHARS));
        assert!(!kept.loads[0].name.contains('\u{202e}'));
        let (again, changed) = kept.clone().sanitised();
        assert_eq!((again, changed), (kept, 0));
    }

    #[test]
    fn a_cut_out_comes_back_on_no_lower_than_it_goes_off() {
        let cut_out = |off, on| CutOut { off: Volts(off), on: Volts(on) };
        let load = Load { cut_out: Some(cut_out(11.7, 10.4)), ..Load::default() };
        let fine = Load { id: 2, cut_out: Some(cut_out(10.4, 11.7)), ..Load::default() };
        let setup = Setup { loads: vec![load, fine.clone()], ..Setup::default() };
        let (kept, changed) = setup.sanitised();
        assert_eq!((kept.loads[0].cut_out, changed), (Some(cut_out(11.7, 11.7)), 1));
        assert_eq!(kept.loads[1], fine);
    }

    #[test]
    fn a_block_of_24_volts_stays_in_a_24_volt_system_only() {
        let mut setup = Setup::default();
        setup.bank.block_volts = Volts(24.0);
        let (kept, changed) = setup.sanitised();
        assert_eq!((kept.bank.block_volts, changed), (Volts(12.0), 1));
    }
}
