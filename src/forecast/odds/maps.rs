//! What an hour makes of the charge, worked out once by the exact step and read many thousand times.
//!
//! Thousands of sequences meet the same battery at much the same powers and temperatures. So the hour is
//! played by the steps of [`BankPhysics::advance`] at the corners of a grid over charge, power and
//! temperature, and read between them on straight lines:
//!
//! ```text
//! q(t + 1 h) = q + g(q, P, T)                        g: gain, P: power into the battery, below 0 out of it
//! P = Pw + A (V(q) + l(q, Pw + A V(q), T))           l: lift, V: rested voltage
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `q` | state of charge | - |
//! | `Pw` | power offered less power drawn | W |
//! | `A` | current offered by sources that give a current, whatever the voltage | A |
//! | `l` | mean rise of the voltage over its rest at the start of the hour, while it is charged | V |
//! | `T` | temperature of the battery | degrees Celsius |
//!
//! A map knows neither floor nor frost: that no more comes out than is in reach, and that cold lithium
//! takes nothing, is for whoever reads it. The second well does not move the charge and is left out.
//! Corners are worked out when they are first read.

use crate::physics::battery::{BankPhysics, BankState, Conditions};
use crate::units::{Celsius, Volts, Watts};
use std::sync::{Arc, Mutex};

/// Intervals of charge: every third one ends at a point of the tables of rested voltage.
const CHARGES: usize = 60;
/// Points of a line over the charge; the last one stands for the place after a full battery.
const POINTS: usize = CHARGES + 2;
/// Temperatures, from the coldest, in steps, so many.
const COLDEST_C: f64 = -50.0;
const STEP_K: f64 = 10.0;
const LEVELS: usize = 13;
/// Powers stand closer the smaller they are: `PARTS` of each doubling of `1 + |P| / smallest`.
const PARTS_LOG2: u32 = 3;
const PARTS: usize = 1 << PARTS_LOG2;
/// Smallest power, as the share of the energy of a full battery it moves in an hour.
const SMALLEST_PER_H: f64 = 0.03;
/// Points on each side of no power: up to 1.9 full batteries in an hour.
const SIDE: usize = 6 * PARTS + 1;
const POWERS: usize = 2 * SIDE;

/// Figures at the four corners of charge and temperature around a place: less and more charge, of each the
/// colder and the warmer.
type Cell = [f32; 4];
/// A map read between two temperatures: cells by power, then charge; not a number where none has been
/// read, empty if none has at all.
type Sheet = Vec<Cell>;
/// Cells of one power.
const CELLS: usize = CHARGES + 1;

/// Where a figure stands on a grid: its first corner, and how far from there to the next, 0..1.
#[derive(Clone, Copy, Debug, Default)]
struct Place {
    first: usize,
    part: f64,
}

/// A battery temperature as the maps are read by it.
#[derive(Clone, Copy, Debug, Default)]
pub struct Level(Place);

impl Level {
    /// Of a temperature; beyond the grid its end.
    #[must_use]
    pub fn of(at: Celsius) -> Self {
        let x = ((at.0 - COLDEST_C) / STEP_K).clamp(0.0, (LEVELS - 1) as f64);
        let first = (x as usize).min(LEVELS - 2);
        Self(Place { first, part: x - first as f64 })
    }
}

/// A state of charge as the maps are read by it.
#[derive(Clone, Copy, Debug, Default)]
pub struct Charge(Place);

impl Charge {
    /// Of a state of charge, 0..1.
    #[inline]
    #[must_use]
    pub fn of(soc_frac: f64) -> Self {
        // Whole numbers up to 2^52 are exact when they are added to this: the sum ends in the number.
        const WHOLE: f64 = 1.5 * (1_u64 << 52) as f64;
        let x = soc_frac * CHARGES as f64;
        let sum = (x - 0.5) + WHOLE;
        let first = (sum.to_bits() as usize & 0xff).min(CHARGES);
        Self(Place { first, part: x - (sum - WHOLE) })
    }
}

/// Maps of a battery, shared by all runs that have it.
pub type SharedMaps = Arc<Mutex<HourMaps>>;

/// The maps of one battery.
#[derive(Clone, Debug)]
pub struct HourMaps {
    /// The battery, stepped as in the plan.
    bank: BankPhysics,
    steps_per_hour: usize,
    per_smallest: f64,
    gains: Map,
    lifts: Map,
}

/// A figure over charge, power and temperature.
#[derive(Clone, Debug, Default)]
struct Map {
    sheets: Vec<Sheet>,
    /// Lines over the charge, by temperature and power, as far as they are known.
    lines: Vec<Option<Box<[f32; POINTS]>>>,
}

impl HourMaps {
    /// For a bank that is stepped `steps_per_hour` times an hour; nothing is worked out yet.
    #[must_use]
    pub fn new(bank: &BankPhysics, steps_per_hour: usize) -> Self {
        let full = bank.curve.volts(0.5) * bank.capacity;
        Self {
            bank: bank.clone(),
            steps_per_hour,
            per_smallest: 1.0 / (SMALLEST_PER_H * full.0),
            gains: Map::new(),
            lifts: Map::new(),
        }
    }

    /// Whether they are those of this bank too.
    #[must_use]
    pub fn are_of(&self, bank: &BankPhysics, steps_per_hour: usize) -> bool {
        self.steps_per_hour == steps_per_hour && self.bank.steps_like(bank)
    }

    /// Change of the state of charge in an hour at `power` into the battery (negative: out of it), with
    /// what it loses by itself, -1..1.
    #[inline]
    #[must_use]
    pub fn gain_frac(&mut self, charge: Charge, power: Watts, at: Level) -> f64 {
        let power = self.place(power);
        let gain = self.gains.read(charge.0, power, at.0);
        if gain.is_nan() {
            self.read_new(|maps| &mut maps.gains, Self::gain_line, (charge, power, at))
        } else {
            gain
        }
    }

    /// Mean voltage over the hour above the rested one at its start, while `surplus`, told at that
    /// rested voltage, charges; about 0 while it does not.
    #[inline]
    #[must_use]
    pub fn lift(&mut self, charge: Charge, surplus: Watts, at: Level) -> Volts {
        let power = self.place(surplus);
        let lift = self.lifts.read(charge.0, power, at.0);
        Volts(if lift.is_nan() {
            self.read_new(|maps| &mut maps.lifts, Self::lift_line, (charge, power, at))
        } else {
            lift
        })
    }

    /// Makes what is read for the first time of one of the maps, by its lines, and reads it.
    #[cold]
    fn read_new(
        &mut self,
        map: fn(&mut Self) -> &mut Map,
        line: fn(&Self, usize, Watts) -> [f32; POINTS],
        (charge, power, at): (Charge, Place, Level),
    ) -> f64 {
        let mut made = std::mem::take(map(self));
        made.make(power, at.0, |level, power| line(self, level, self.power_at(power)));
        let read = made.read(charge.0, power, at.0);
        *map(self) = made;
        read
    }

    /// The place of a power: exponent and leading bits of `1 + |P| / smallest` count the intervals, the
    /// bits after them are the part.
    #[inline]
    fn place(&self, power: Watts) -> Place {
        const REST: u32 = f64::MANTISSA_DIGITS - 1 - PARTS_LOG2;
        let bits = (1.0 + (power.0 * self.per_smallest).abs()).to_bits();
        let interval = (bits >> REST) as usize - (1023 << PARTS_LOG2);
        let part = (bits & ((1 << REST) - 1)) as i64 as f64 * (1.0 / (1_u64 << REST) as f64);
        let side = if power.0 < 0.0 { 0 } else { SIDE };
        if interval < SIDE - 1 {
            Place { first: side + interval, part }
        } else {
            Place { first: side + SIDE - 2, part: 1.0 }
        }
    }

    /// Power at a place, the inverse of [`Self::place`].
    fn power_at(&self, index: usize) -> Watts {
        let (sign, index) = if index < SIDE { (-1.0, index) } else { (1.0, index - SIDE) };
        let parts = 1.0 + (index % PARTS) as f64 / PARTS as f64;
        let doublings = f64::from(1_u32 << (index / PARTS));
        Watts(sign * (parts * doublings - 1.0) / self.per_smallest)
    }

    /// What the battery meets at a level, without floor and frost.
    fn conditions(&self, level: usize) -> Conditions {
        let at = self.bank.conditions(Celsius(COLDEST_C + level as f64 * STEP_K));
        Conditions { empty_frac: -1.0, may_charge: true, ..at }
    }

    fn gain_line(&self, level: usize, power: Watts) -> [f32; POINTS] {
        let conditions = self.conditions(level);
        let mut line = [-1.0_f32; POINTS];
        let mut above = -1.0;
        for i in (0..POINTS).rev() {
            let before = (i.min(CHARGES)) as f64 / CHARGES as f64;
            let mut state = BankState::rested(before);
            for _ in 0..self.steps_per_hour {
                self.bank.advance(&mut state, &conditions, power);
            }
            // What is drained within the hour is drained as fast as a little more would be.
            if state.soc_frac > 0.0 || power.0 >= 0.0 {
                above = state.soc_frac - before;
            }
            line[i] = above as f32;
        }
        line
    }

    fn lift_line(&self, level: usize, surplus: Watts) -> [f32; POINTS] {
        let conditions = self.conditions(level);
        let mut line = [0.0_f32; POINTS];
        for (i, lift) in line.iter_mut().enumerate() {
            let mut state = BankState::rested((i.min(CHARGES)) as f64 / CHARGES as f64);
            let rest = self.bank.curve.volts(state.soc_frac);
            let current = surplus / rest;
            for _ in 0..self.steps_per_hour {
                let volts = if surplus.0 > 0.0 {
                    self.bank.charging_volts(&state, &conditions, current)
                } else {
                    self.bank.curve.volts(state.soc_frac)
                };
                *lift += ((volts - rest).0 / self.steps_per_hour as f64) as f32;
                self.bank.advance(&mut state, &conditions, current * volts);
            }
        }
        line
    }
}

impl Map {
    fn new() -> Self {
        Self { sheets: vec![Sheet::new(); LEVELS - 1], lines: Vec::new() }
    }

    /// On straight lines between the eight corners; not a number where one has not been made.
    #[inline]
    fn read(&self, charge: Place, power: Place, level: Place) -> f64 {
        let first = power.first * CELLS + charge.first;
        let sheet = self.sheets.get(level.first).map_or(&[][..], Vec::as_slice);
        let (Some(low), Some(high)) = (sheet.get(first), sheet.get(first + CELLS)) else {
            return f64::NAN;
        };
        let (more, warmer, power) = (charge.part as f32, level.part as f32, power.part as f32);
        let mut cell = *low;
        for (corner, high) in cell.iter_mut().zip(high) {
            *corner = mix(*corner, *high, power);
        }
        f64::from(mix(mix(cell[0], cell[1], warmer), mix(cell[2], cell[3], warmer), more))
    }

    /// Makes the corners around a power and a temperature, for every charge.
    fn make(&mut self, power: Place, level: Place, line: impl Fn(usize, usize) -> [f32; POINTS]) {
        let Some(sheet) = self.sheets.get_mut(level.first) else { return };
        sheet.resize(POWERS * CELLS, [f32::NAN; 4]);
        self.lines.resize(LEVELS * POWERS, None);
        for power in [power.first, power.first + 1] {
            let [colder, warmer] = [level.first, level.first + 1].map(|level| {
                let known = self.lines.get_mut(level * POWERS + power);
                known.map(|known| **known.get_or_insert_with(|| Box::new(line(level, power))))
            });
            let (Some(colder), Some(warmer)) = (colder, warmer) else { return };
            for (i, cell) in sheet.iter_mut().skip(power * CELLS).take(CELLS).enumerate() {
                *cell = [colder[i], warmer[i], colder[i + 1], warmer[i + 1]];
            }
        }
    }
}

#[inline]
fn mix(first: f32, second: f32, part: f32) -> f32 {
    first + (second - first) * part
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{Bank, Chemistry};
    use crate::units::{AmpHours, Hours};

    const STEPS_PER_HOUR: usize = 2;

    fn bank(chemistry: Chemistry) -> BankPhysics {
        let bank = Bank { chemistry, capacity_20h: AmpHours(100.0), ..Bank::default() };
        BankPhysics::new(&bank, Hours(1.0 / STEPS_PER_HOUR as f64))
    }

    /// The hour as the maps hold it: neither floor nor frost.
    fn free(bank: &BankPhysics, celsius: f64) -> Conditions {
        let at = bank.conditions(Celsius(celsius));
        Conditions { empty_frac: -1.0, may_charge: true, ..at }
    }

    fn stepped(bank: &BankPhysics, soc_frac: f64, power: f64, celsius: f64) -> f64 {
        let mut state = BankState::rested(soc_frac);
        for _ in 0..STEPS_PER_HOUR {
            bank.advance(&mut state, &free(bank, celsius), Watts(power));
        }
        state.soc_frac - soc_frac
    }

    /// Of any charge, power and temperature the maps tell what the steps do, within a tenth of a percent of the
    /// charge.
    #[test]
    fn an_hour_is_told_as_it_is_stepped() {
        for chemistry in [Chemistry::Agm, Chemistry::LiFePo4] {
            let bank = bank(chemistry);
            let mut maps = HourMaps::new(&bank, STEPS_PER_HOUR);
            for soc_frac in [0.25, 0.5, 0.55, 0.62, 0.8] {
                for power in [-200.0, -33.0, -5.0, 0.0, 4.0, 60.0, 150.0] {
                    for celsius in [-10.0, 17.0, 20.0] {
                        let (charge, at) = (Charge::of(soc_frac), Level::of(Celsius(celsius)));
                        let told = maps.gain_frac(charge, Watts(power), at);
                        let expected = stepped(&bank, soc_frac, power, celsius);
                        assert!(
                            (told - expected).abs() < 1e-3,
                            "{chemistry:?} {soc_frac} {power} {celsius}: {told} {expected}"
                        );
                    }
                }
            }
        }
    }

    /// A place says where a power stands: at the corner of a place the power is that of the corner, and part of
    /// the way to the next one part of the way. Beyond the grid its end holds, on either side.
    #[test]
    fn powers_stand_between_their_corners() {
        let maps = HourMaps::new(&bank(Chemistry::Agm), STEPS_PER_HOUR);
        for watts in [-2000.0, -800.0, -36.0, -1.0, 0.0, 0.5, 1.0, 20.0, 36.0, 111.0, 900.0] {
            let place = maps.place(Watts(watts));
            let [from, to] = [place.first, place.first + 1].map(|index| maps.power_at(index).0);
            let back = from + (to - from) * place.part;
            assert!((back - watts).abs() < 1e-9 * watts.abs().max(1.0), "{watts}: {back}");
            assert!((0.0..1.0).contains(&place.part), "{watts}");
        }
        for (watts, index) in [(-1e6, SIDE - 1), (1e6, 2 * SIDE - 1)] {
            let place = maps.place(Watts(watts));
            assert_eq!((place.first + 1, place.part), (index, 1.0));
            // 1.9 full batteries of 100 Ah.
            assert!((maps.power_at(index).0.abs() / 1250.0 - 1.9).abs() < 0.1);
        }
        // The smallest interval is an eighth of 3 % of a full battery.
        let full = bank(Chemistry::Agm).curve.volts(0.5).0 * bank(Chemistry::Agm).capacity.0;
        assert!((maps.power_at(SIDE + 1).0 - 0.03 * full / 8.0).abs() < 1e-9);
    }

    /// While 10 A charge, the voltage lies above rest by what the steps make of it; resting or drawing lifts
    /// nothing at first.
    #[test]
    fn charging_lifts_the_voltage() {
        for chemistry in [Chemistry::Agm, Chemistry::LiFePo4] {
            let bank = bank(chemistry);
            let mut maps = HourMaps::new(&bank, STEPS_PER_HOUR);
            for (soc_frac, celsius) in [(0.5, 20.0), (0.75, 20.0), (0.5, 0.0)] {
                let rest = bank.curve.volts(soc_frac);
                let mut state = BankState::rested(soc_frac);
                let mut mean = 0.0;
                for _ in 0..STEPS_PER_HOUR {
                    let c = free(&bank, celsius);
                    let volts = bank.charging_volts(&state, &c, crate::units::Amps(10.0));
                    mean += (volts - rest).0 / STEPS_PER_HOUR as f64;
                    bank.advance(&mut state, &c, volts * crate::units::Amps(10.0));
                }
                let (charge, at) = (Charge::of(soc_frac), Level::of(Celsius(celsius)));
                let told = maps.lift(charge, rest * crate::units::Amps(10.0), at).0;
                assert!((told - mean).abs() < 0.01 && told > 0.02, "{chemistry:?} {told} {mean}");
                assert!(maps.lift(charge, Watts(0.0), at).0.abs() < 1e-4);
                let drawn = maps.lift(charge, Watts(-120.0), at).0;
                assert!((-0.1..0.0).contains(&drawn), "{chemistry:?} {drawn}");
            }
        }
    }

    /// Temperatures stand ten degrees apart from -50 to 70, charges a sixtieth.
    #[test]
    fn temperatures_and_charges_stand_on_their_grids() {
        for (celsius, first, part) in [
            (-50.0, 0, 0.0),
            (-47.5, 0, 0.25),
            (20.0, 7, 0.0),
            (70.0, 11, 1.0),
            (90.0, 11, 1.0),
            (-80.0, 0, 0.0),
        ] {
            let Level(place) = Level::of(Celsius(celsius));
            assert_eq!((place.first, place.part), (first, part), "{celsius}");
        }
        for (soc_frac, x) in [(0.0, 0.0), (0.25, 15.0), (0.26, 15.6), (0.999, 59.94), (1.0, 60.0)] {
            let Charge(place) = Charge::of(soc_frac);
            assert!((place.first as f64 + place.part - x).abs() < 1e-9, "{soc_frac}");
            assert!((-1e-9..=1.0 + 1e-9).contains(&place.part), "{soc_frac}");
        }
    }

    /// Maps are shared by runs of the same battery, stepped the same.
    #[test]
    fn maps_belong_to_a_battery_and_its_steps() {
        let maps = HourMaps::new(&bank(Chemistry::Agm), STEPS_PER_HOUR);
        assert!(maps.are_of(&bank(Chemistry::Agm), STEPS_PER_HOUR));
        assert!(!maps.are_of(&bank(Chemistry::Gel), STEPS_PER_HOUR));
        assert!(!maps.are_of(&bank(Chemistry::Agm), 4));
    }
}
