//! What is allowed in every field: one table for typing, links, files and storage.
//!
//! The page checks a typed number against the same [`Range`] that [`Setup::sanitised`] uses to
//! pull foreign data into bounds, so nothing can enter by one door that another refuses.

use super::{
    CableRun, ConductorSize, CutOut, DayPlan, Draw, DrivingCharger, DutyCycle, InverterSwitching,
    Load, OtherSource, Reading, ReadingKind, Setup, SolarArray, Usage, Weather,
};

/// Smallest and largest value a field may hold, in the unit of the field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// Smallest.
    pub min: f64,
    /// Largest.
    pub max: f64,
}

impl Range {
    const fn new(min: f64, max: f64) -> Self {
        Self { min, max }
    }

    /// Whether `value` is a number within the range.
    #[must_use]
    pub fn holds(self, value: f64) -> bool {
        value >= self.min && value <= self.max
    }
}

/// Share of something, 0..1.
pub const FRAC: Range = Range::new(0.0, 1.0);
/// Power of one load [W].
pub const DRAW_W: Range = Range::new(0.0, 10_000.0);
/// Current of one load [A].
pub const DRAW_A: Range = Range::new(0.0, 1_000.0);
/// Voltage a current was read at [V].
pub const STATED_V: Range = Range::new(1.0, 400.0);
/// How many of a load.
pub const QUANTITY: Range = Range::new(1.0, 99.0);
/// Minutes a day.
pub const MINUTES_A_DAY: Range = Range::new(0.0, 1440.0);
/// Days between charges.
pub const CHARGE_EVERY_DAYS: Range = Range::new(0.1, 365.0);
/// Charge of a small cell [mAh].
pub const CELL_MAH: Range = Range::new(1.0, 1_000_000.0);
/// Voltage of a small cell or pack [V].
pub const CELL_V: Range = Range::new(1.0, 100.0);
/// Efficiency of a charger or converter.
pub const CONVERTER_FRAC: Range = Range::new(0.3, 1.0);
/// Water a day [L].
pub const LITRES_A_DAY: Range = Range::new(0.0, 1_000.0);
/// Flow of a pump [L/min].
pub const FLOW_L_MIN: Range = Range::new(0.5, 100.0);
/// Uses a day.
pub const USES_A_DAY: Range = Range::new(0.0, 1_000.0);
/// Seconds a use.
pub const SECONDS_A_USE: Range = Range::new(0.0, 86_400.0);
/// Energy a day of one load [Wh].
pub const ENERGY_WH_A_DAY: Range = Range::new(0.0, 100_000.0);
/// Standby draw of one load [W].
pub const STANDBY_W: Range = Range::new(0.0, 500.0);
/// Starting over running draw.
pub const SURGE_FACTOR: Range = Range::new(1.0, 10.0);
/// Cut-out voltages [V].
pub const CUT_OUT_V: Range = Range::new(5.0, 32.0);
/// Minute of the day.
pub const MINUTE_OF_DAY: Range = Range::new(0.0, 1439.0);
/// Capacity of one string [Ah].
pub const CAPACITY_AH: Range = Range::new(1.0, 5_000.0);
/// Strings in parallel.
pub const PARALLEL: Range = Range::new(1.0, 16.0);
/// Remaining capacity with age.
pub const HEALTH_FRAC: Range = Range::new(0.3, 1.0);
/// Lowest state of charge allowed.
pub const SOC_MIN_FRAC: Range = Range::new(0.0, 0.95);
/// Cable resistance of the bank [Ohm].
pub const CABLE_OHM: Range = Range::new(0.0, 0.1);
/// Inverter rating [W].
pub const INVERTER_W: Range = Range::new(50.0, 10_000.0);
/// Inverter surge rating [W].
pub const INVERTER_SURGE_W: Range = Range::new(50.0, 30_000.0);
/// Inverter no-load draw [W].
pub const INVERTER_IDLE_W: Range = Range::new(0.0, 200.0);
/// Inverter efficiency at full load.
pub const INVERTER_FRAC: Range = Range::new(0.5, 0.98);
/// Inverter cut-out, per 12 V nominal [V].
pub const INVERTER_CUT_OUT_V: Range = Range::new(9.0, 13.0);
/// Solar peak power of one array [W].
pub const SOLAR_W: Range = Range::new(0.0, 5_000.0);
/// Tilt [deg].
pub const TILT_DEG: Range = Range::new(0.0, 90.0);
/// Facing [deg].
pub const FACING_DEG: Range = Range::new(0.0, 360.0);
/// Controller efficiency.
pub const CONTROLLER_FRAC: Range = Range::new(0.5, 1.0);
/// Controller self-use [W].
pub const SELF_USE_W: Range = Range::new(0.0, 20.0);
/// Dirt.
pub const DIRT_FRAC: Range = Range::new(0.0, 0.5);
/// Wiring and mismatch losses.
pub const SMALL_LOSS_FRAC: Range = Range::new(0.0, 0.3);
/// Temperature coefficient [1/K].
pub const TEMP_COEFF_PER_K: Range = Range::new(-0.01, 0.0);
/// Charging current [A].
pub const CHARGER_A: Range = Range::new(0.0, 300.0);
/// Alternator voltage per 12 V nominal [V].
pub const ALTERNATOR_V: Range = Range::new(12.0, 15.5);
/// Length of a cable one way [m].
pub const CABLE_M: Range = Range::new(0.1, 50.0);
/// Cross-section of a cable [mm2].
pub const CABLE_MM2: Range = Range::new(0.5, 240.0);
/// Wire gauge: -3 is 4/0.
pub const CABLE_AWG: Range = Range::new(-3.0, 22.0);
/// Hours of a day.
pub const HOURS_A_DAY: Range = Range::new(0.0, 24.0);
/// Every how many days.
pub const EVERY_DAYS: Range = Range::new(0.0, 60.0);
/// Fuel an hour [L].
pub const FUEL_L_H: Range = Range::new(0.0, 20.0);
/// Latitude [deg].
pub const LATITUDE_DEG: Range = Range::new(-90.0, 90.0);
/// Longitude [deg].
pub const LONGITUDE_DEG: Range = Range::new(-180.0, 180.0);
/// Altitude [m].
pub const ALTITUDE_M: Range = Range::new(-430.0, 6_000.0);
/// Camp clock against UTC [min].
pub const UTC_OFFSET_MIN: Range = Range::new(-720.0, 840.0);
/// Year.
pub const YEAR: Range = Range::new(2000.0, 2099.0);
/// Nights.
pub const NIGHTS: Range = Range::new(1.0, 60.0);
/// Sun on the horizontal [Wh/m2 a day].
pub const SUN_WH_M2: Range = Range::new(0.0, 12_000.0);
/// Air temperature [degrees Celsius].
pub const AIR_C: Range = Range::new(-40.0, 50.0);
/// Conductor temperature [degrees Celsius].
pub const CONDUCTOR_C: Range = Range::new(-20.0, 105.0);
/// Fuse [A].
pub const FUSE_A: Range = Range::new(0.0, 600.0);
/// Consumption, real over planned.
pub const USE_FACTOR: Range = Range::new(0.2, 5.0);
/// Solar yield, real over planned.
pub const SUN_FACTOR: Range = Range::new(0.0, 3.0);
/// Time since arrival [h].
pub const SINCE_ARRIVAL_H: Range = Range::new(0.0, 1464.0);
/// Voltage of a bank [V].
pub const BANK_V: Range = Range::new(5.0, 32.0);
/// Charge used since full [Ah].
pub const USED_AH: Range = Range::new(0.0, 80_000.0);
/// Prices.
pub const PRICE: Range = Range::new(0.0, 1_000_000.0);
/// Weights [kg].
pub const WEIGHT_KG: Range = Range::new(0.0, 1_000.0);

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
/// Most characters of a name.
pub const MAX_NAME_CHARS: usize = 40;

/// Counts what had to be pulled into bounds.
#[derive(Debug, Default)]
struct Sieve {
    changed: usize,
}

impl Sieve {
    fn number(&mut self, value: &mut f64, range: Range, instead: f64) {
        let kept = if value.is_finite() { value.clamp(range.min, range.max) } else { instead };
        if kept != *value {
            self.changed += 1;
            *value = kept;
        }
    }

    fn whole<T>(&mut self, value: &mut T, range: Range)
    where
        T: Copy + Into<f64> + TryFrom<i64> + PartialEq,
    {
        let kept = T::try_from((*value).into().clamp(range.min, range.max) as i64);
        if let Ok(kept) = kept
            && kept != *value
        {
            self.changed += 1;
            *value = kept;
        }
    }

    /// Plain printable text of bounded length: control and direction-override characters go.
    fn text(&mut self, text: &mut String, max_chars: usize) {
        let hidden = |c: &char| {
            c.is_control()
                || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
        };
        let kept: String = text.chars().filter(|c| !hidden(c)).take(max_chars).collect();
        if kept != *text {
            self.changed += 1;
            *text = kept;
        }
    }

    fn length<T>(&mut self, items: &mut Vec<T>, max: usize) {
        if items.len() > max {
            self.changed += items.len() - max;
            items.truncate(max);
        }
    }

    fn load(&mut self, load: &mut Load) {
        self.text(&mut load.name, MAX_NAME_CHARS);
        self.whole(&mut load.quantity, QUANTITY);
        match &mut load.draw {
            Draw::Power { watts } => self.number(&mut watts.0, DRAW_W, 0.0),
            Draw::Current { amps, volts } => {
                self.number(&mut amps.0, DRAW_A, 0.0);
                self.number(&mut volts.0, STATED_V, 12.0);
            }
        }
        if let Some(spread) = &mut load.spread_frac {
            self.number(spread, FRAC, 0.4);
        }
        match &mut load.usage {
            Usage::Daily { minutes } => self.number(minutes, MINUTES_A_DAY, 0.0),
            Usage::AlwaysOn => {}
            Usage::Duty { cycle: DutyCycle::Fixed { frac } } => self.number(frac, FRAC, 0.3),
            Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } } => {
                self.number(frac_at_25c, FRAC, 0.32);
            }
            Usage::Charges { every_days, cell, cell_volts, charger_frac } => {
                self.number(every_days, CHARGE_EVERY_DAYS, 1.0);
                self.number(&mut cell.0, CELL_MAH, 5000.0);
                self.number(&mut cell_volts.0, CELL_V, 3.85);
                self.number(charger_frac, CONVERTER_FRAC, 0.8);
            }
            Usage::Litres { litres_per_day, flow, .. } => {
                self.number(&mut litres_per_day.0, LITRES_A_DAY, 0.0);
                self.number(&mut flow.0, FLOW_L_MIN, 10.0);
            }
            Usage::Uses { per_day, seconds } => {
                self.number(per_day, USES_A_DAY, 0.0);
                self.number(seconds, SECONDS_A_USE, 0.0);
            }
            Usage::Energy { per_day } => self.number(&mut per_day.0, ENERGY_WH_A_DAY, 0.0),
        }
        self.number(&mut load.standby.0, STANDBY_W, 0.0);
        self.whole(&mut load.window.from_min, MINUTE_OF_DAY);
        self.whole(&mut load.window.to_min, MINUTE_OF_DAY);
        self.number(&mut load.surge_factor, SURGE_FACTOR, 1.0);
        if let Some(CutOut { off, on }) = &mut load.cut_out {
            self.number(&mut off.0, CUT_OUT_V, 10.5);
            self.number(&mut on.0, CUT_OUT_V, 11.7);
            if on.0 < off.0 {
                self.changed += 1;
                *on = *off;
            }
        }
    }

    fn array(&mut self, array: &mut SolarArray) {
        self.text(&mut array.name, MAX_NAME_CHARS);
        self.number(&mut array.peak.0, SOLAR_W, 0.0);
        self.number(&mut array.tilt.0, TILT_DEG, 0.0);
        self.number(&mut array.facing.0, FACING_DEG, 180.0);
        self.number(&mut array.controller_frac, CONTROLLER_FRAC, 0.96);
        self.number(&mut array.self_use.0, SELF_USE_W, 0.3);
        let shade = &mut array.shade;
        for share in [
            &mut shade.morning_frac,
            &mut shade.midday_frac,
            &mut shade.afternoon_frac,
            &mut shade.sky_frac,
        ] {
            self.number(share, FRAC, 0.0);
        }
        self.number(&mut array.low_light_frac, SMALL_LOSS_FRAC, 0.04);
        self.number(&mut array.dirt_frac, DIRT_FRAC, 0.03);
        self.number(&mut array.wiring_frac, SMALL_LOSS_FRAC, 0.03);
        self.number(&mut array.mismatch_frac, SMALL_LOSS_FRAC, 0.02);
        self.number(&mut array.temp_coeff_per_k, TEMP_COEFF_PER_K, -0.0035);
    }

    fn other(&mut self, source: &mut OtherSource) {
        self.number(&mut source.amps.0, CHARGER_A, 0.0);
        self.whole(&mut source.from_min, MINUTE_OF_DAY);
        self.number(&mut source.hours.0, HOURS_A_DAY, 0.0);
        self.whole(&mut source.every.0, EVERY_DAYS);
        self.number(&mut source.fuel_per_hour.0, FUEL_L_H, 0.0);
    }

    fn day(&mut self, day: &mut DayPlan) {
        if let Weather::Sun { per_day } = &mut day.weather {
            self.number(&mut per_day.0, SUN_WH_M2, 0.0);
        }
        if let Some(minutes) = &mut day.drive_minutes {
            self.number(minutes, MINUTES_A_DAY, 0.0);
        }
    }

    fn reading(&mut self, reading: &mut Reading) {
        self.number(&mut reading.at.0, SINCE_ARRIVAL_H, 0.0);
        match &mut reading.kind {
            ReadingKind::StateOfCharge { soc_frac } => self.number(soc_frac, FRAC, 0.5),
            ReadingKind::Voltage { volts, rested } => {
                self.number(&mut volts.0, BANK_V, 12.5);
                self.number(&mut rested.0, SINCE_ARRIVAL_H, 0.0);
            }
            ReadingKind::Used { amp_hours } => self.number(&mut amp_hours.0, USED_AH, 0.0),
        }
    }

    fn cable(&mut self, run: &mut CableRun) {
        self.text(&mut run.name, MAX_NAME_CHARS);
        self.number(&mut run.amps.0, DRAW_A, 0.0);
        self.number(&mut run.length.0, CABLE_M, 1.0);
        match &mut run.size {
            ConductorSize::Metric { area } => self.number(&mut area.0, CABLE_MM2, 6.0),
            ConductorSize::Awg { gauge } => self.whole(gauge, CABLE_AWG),
        }
        self.number(&mut run.working.0, CONDUCTOR_C, 50.0);
        self.number(&mut run.fuse.0, FUSE_A, 0.0);
    }
}

impl Setup {
    /// The same setup with every number inside its [`Range`], every text plain and short, every
    /// list bounded, and load ids unique; and how many things had to change.
    ///
    /// A setup that already keeps the bounds comes back unchanged, with 0.
    #[must_use]
    pub fn sanitised(mut self) -> (Self, usize) {
        let mut sieve = Sieve::default();
        sieve.text(&mut self.name, MAX_NAME_CHARS);
        sieve.length(&mut self.loads, MAX_LOADS);
        for load in &mut self.loads {
            sieve.load(load);
        }
        self.unique_load_ids(&mut sieve);
        self.sanitise_bank(&mut sieve);
        self.sanitise_inverter(&mut sieve);
        sieve.length(&mut self.solar, MAX_ARRAYS);
        for array in &mut self.solar {
            sieve.array(array);
        }
        self.sanitise_driving_and_hook_up(&mut sieve);
        sieve.length(&mut self.other, MAX_OTHER);
        for source in &mut self.other {
            sieve.other(source);
        }
        self.sanitise_trip(&mut sieve);
        self.sanitise_prices(&mut sieve);
        sieve.length(&mut self.readings, MAX_READINGS);
        for reading in &mut self.readings {
            sieve.reading(reading);
        }
        sieve.number(&mut self.correction.use_factor, USE_FACTOR, 1.0);
        sieve.number(&mut self.correction.sun_factor, SUN_FACTOR, 1.0);
        if let Some((at, soc_frac)) = &mut self.correction.restart {
            sieve.number(&mut at.0, SINCE_ARRIVAL_H, 0.0);
            sieve.number(soc_frac, FRAC, 0.5);
        }
        sieve.length(&mut self.cables, MAX_CABLES);
        for run in &mut self.cables {
            sieve.cable(run);
        }
        (self, sieve.changed)
    }

    fn unique_load_ids(&mut self, sieve: &mut Sieve) {
        let mut seen = std::collections::HashSet::new();
        let mut next = self.fresh_load_id();
        for load in &mut self.loads {
            if !seen.insert(load.id) {
                while !seen.insert(next) {
                    next = next.wrapping_add(1);
                }
                load.id = next;
                sieve.changed += 1;
            }
        }
    }

    fn sanitise_bank(&mut self, sieve: &mut Sieve) {
        let bank = &mut self.bank;
        sieve.number(&mut bank.capacity_20h.0, CAPACITY_AH, 100.0);
        sieve.whole(&mut bank.parallel, PARALLEL);
        let nearest = if bank.block_volts.0 >= 18.0 && bank.system.twelves() > 1.5 {
            24.0
        } else if bank.block_volts.0 < 9.0 {
            6.0
        } else {
            12.0
        };
        if bank.block_volts.0 != nearest {
            bank.block_volts.0 = nearest;
            sieve.changed += 1;
        }
        sieve.number(&mut bank.health_frac, HEALTH_FRAC, 1.0);
        sieve.number(&mut bank.soc_min_frac, SOC_MIN_FRAC, 0.5);
        sieve.number(&mut bank.soc_start_frac, FRAC, 1.0);
        sieve.number(&mut bank.cable.0, CABLE_OHM, 0.004);
    }

    fn sanitise_inverter(&mut self, sieve: &mut Sieve) {
        let inverter = &mut self.inverter;
        sieve.number(&mut inverter.continuous.0, INVERTER_W, 1000.0);
        sieve.number(&mut inverter.surge.0, INVERTER_SURGE_W, 2000.0);
        sieve.number(&mut inverter.idle.0, INVERTER_IDLE_W, 12.0);
        sieve.number(&mut inverter.full_load_frac, INVERTER_FRAC, 0.88);
        if let InverterSwitching::PowerSave { asleep } = &mut inverter.switching {
            sieve.number(&mut asleep.0, INVERTER_IDLE_W, 2.0);
        }
        sieve.number(&mut inverter.cut_out.0, INVERTER_CUT_OUT_V, 10.5);
    }

    fn sanitise_driving_and_hook_up(&mut self, sieve: &mut Sieve) {
        let driving = &mut self.driving;
        match &mut driving.charger {
            DrivingCharger::DcDc { amps } => sieve.number(&mut amps.0, CHARGER_A, 30.0),
            DrivingCharger::Relay { alternator, cable_length, cable_size, limit, .. } => {
                sieve.number(&mut alternator.0, ALTERNATOR_V, 14.2);
                sieve.number(&mut cable_length.0, CABLE_M, 6.0);
                sieve.number(&mut cable_size.0, CABLE_MM2, 6.0);
                sieve.number(&mut limit.0, CHARGER_A, 30.0);
            }
        }
        sieve.number(&mut driving.minutes, MINUTES_A_DAY, 0.0);
        sieve.whole(&mut driving.every.0, EVERY_DAYS);
        sieve.whole(&mut driving.from_min, MINUTE_OF_DAY);
        let hook_up = &mut self.hook_up;
        sieve.number(&mut hook_up.amps.0, CHARGER_A, 0.0);
        sieve.whole(&mut hook_up.every.0, EVERY_DAYS);
        sieve.whole(&mut hook_up.from_min, MINUTE_OF_DAY);
        sieve.number(&mut hook_up.hours.0, HOURS_A_DAY, 0.0);
    }

    fn sanitise_trip(&mut self, sieve: &mut Sieve) {
        let trip = &mut self.trip;
        sieve.text(&mut trip.place.name, MAX_NAME_CHARS);
        sieve.number(&mut trip.place.latitude.0, LATITUDE_DEG, 50.0);
        sieve.number(&mut trip.place.longitude.0, LONGITUDE_DEG, 0.0);
        sieve.number(&mut trip.place.altitude.0, ALTITUDE_M, 100.0);
        sieve.whole(&mut trip.utc_offset_min, UTC_OFFSET_MIN);
        sieve.whole(&mut trip.year, YEAR);
        let start = trip.start();
        let (month, day) = (u8::from(start.month()), start.day());
        if (trip.month, trip.day) != (month, day) {
            (trip.month, trip.day) = (month, day);
            sieve.changed += 1;
        }
        sieve.whole(&mut trip.arrival_hour, Range::new(0.0, 23.0));
        sieve.whole(&mut trip.nights, NIGHTS);
        sieve.length(&mut trip.days, NIGHTS.max as usize + 1);
        for day in &mut trip.days {
            sieve.day(day);
        }
        if let Some(sun) = &mut trip.own_sun {
            for month in &mut sun.0 {
                sieve.number(&mut month.0, SUN_WH_M2, 0.0);
            }
        }
        if let Some(air) = &mut trip.own_air {
            sieve.number(&mut air.0, AIR_C, 15.0);
        }
        sieve.number(&mut trip.ground_albedo_frac, FRAC, 0.2);
    }

    fn sanitise_prices(&mut self, sieve: &mut Sieve) {
        let prices = &mut self.prices;
        sieve.text(&mut prices.currency, 4);
        for price in [
            &mut prices.solar_per_100w,
            &mut prices.lead_per_100ah,
            &mut prices.lithium_per_100ah,
            &mut prices.dcdc,
        ] {
            sieve.number(&mut price.0, PRICE, 0.0);
        }
        for weight in [
            &mut prices.solar_kg_per_100w,
            &mut prices.lead_kg_per_100ah,
            &mut prices.lithium_kg_per_100ah,
        ] {
            sieve.number(&mut weight.0, WEIGHT_KG, 0.0);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
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
    fn a_block_of_24_volts_stays_in_a_24_volt_system_only() {
        let mut setup = Setup::default();
        setup.bank.block_volts = Volts(24.0);
        let (kept, changed) = setup.sanitised();
        assert_eq!((kept.bank.block_volts, changed), (Volts(12.0), 1));
    }
}
