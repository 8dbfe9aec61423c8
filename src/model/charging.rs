//! What charges the battery: panels, driving, hook-up, generators and other sources.

use super::sanitise::{
    CABLE_M, CABLE_MM2, EVERY_DAYS, FRAC, HOURS_A_DAY, MAX_NAME_CHARS, MINUTE_OF_DAY,
    MINUTES_A_DAY, Sanitiser,
};
use crate::units::{Amps, Degrees, Hours, Litres, Metres, SquareMillimetres, Volts, Watts};
use bounds::{
    ALTERNATOR_V, CHARGER_A, CONTROLLER_FRAC, DIRT_FRAC, FACING_DEG, FUEL_L_H, PANEL_V, SELF_USE_W,
    SMALL_LOSS_FRAC, SOLAR_W, TEMP_COEFF_PER_K, TILT_DEG,
};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

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
    /// Voltage of an array at its best power [V].
    pub const PANEL_V: Range = Range::new(5.0, 250.0);
    /// Charging current [A].
    pub const CHARGER_A: Range = Range::new(0.0, 300.0);
    /// Alternator voltage per 12 V nominal [V].
    pub const ALTERNATOR_V: Range = Range::new(12.0, 15.5);
    /// Fuel an hour [L].
    pub const FUEL_L_H: Range = Range::new(0.0, 20.0);
}

/// How a panel is fixed; decides how hot it gets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mounting {
    /// Glued flat on the roof, no air behind.
    Glued,
    /// On brackets with a gap of a few centimetres.
    #[default]
    SmallGap,
    /// Free-standing, air all around.
    OpenRack,
}

/// Solar charge controller.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Controller {
    /// Maximum power point tracking: power is kept, voltage converted.
    #[default]
    Mppt,
    /// Pulse-width modulation: the panel's current at battery voltage, the rest is lost.
    Pwm,
}

/// What stands in the way of the light, as shares lost, 0..1.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Shade {
    /// Direct light lost in the morning (before 10:00 solar time), 0..1.
    pub morning_frac: f64,
    /// Direct light lost around midday (10:00 to 14:00 solar time), 0..1.
    pub midday_frac: f64,
    /// Direct light lost in the afternoon (after 14:00 solar time), 0..1.
    pub afternoon_frac: f64,
    /// Sky hidden from view: diffuse light lost, 0..1.
    pub sky_frac: f64,
}

/// One or more panels of one tilt and facing on one controller.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct SolarArray {
    /// Counts in the sums; switched off keeps the row.
    pub enabled: bool,
    /// The user's own name, may be empty.
    pub name: String,
    /// Nominal power under standard test conditions [W], "watt peak".
    pub peak: Watts,
    /// Tilt from the horizontal [deg], 0 flat, 90 upright.
    pub tilt: Degrees,
    /// Facing, clockwise from north [deg]: 180 south.
    pub facing: Degrees,
    /// Fixing.
    pub mounting: Mounting,
    /// Controller.
    pub controller: Controller,
    /// Energy out over energy in of an MPPT controller, 0.5..1.
    pub controller_frac: f64,
    /// What the controller itself draws, day and night [W].
    pub self_use: Watts,
    /// Shade.
    pub shade: Shade,
    /// Share of efficiency lost in weak light, told at 200 W/m2, 0..0.3.
    pub low_light_frac: f64,
    /// Lost to dirt on the glass, 0..0.5.
    pub dirt_frac: f64,
    /// Lost in the wires from panel to battery, 0..0.3.
    pub wiring_frac: f64,
    /// Lost to mismatch and tolerance, 0..0.3.
    pub mismatch_frac: f64,
    /// Change of power per kelvin of cell temperature above 25 degrees Celsius, negative [1/K].
    pub temp_coeff_per_k: f64,
    /// Voltage at its best power under standard test conditions [V], of the array as it is joined to
    /// the controller; `None` takes 18.2 V for each 12 V of the system, the usual panel of 36 cells.
    /// Counts for a PWM controller.
    pub vmp: Option<Volts>,
}

impl Default for SolarArray {
    fn default() -> Self {
        Self {
            enabled: true,
            name: String::new(),
            peak: Watts(100.0),
            tilt: Degrees(0.0),
            facing: Degrees(180.0),
            mounting: Mounting::SmallGap,
            controller: Controller::Mppt,
            controller_frac: 0.96,
            self_use: Watts(0.3),
            shade: Shade::default(),
            low_light_frac: 0.04,
            dirt_frac: 0.03,
            wiring_frac: 0.03,
            mismatch_frac: 0.02,
            temp_coeff_per_k: -0.0035,
            vmp: None,
        }
    }
}

/// Every how many days something happens: 0 never, 1 daily, 2 every other day.
///
/// Counted from the day of arrival, the first time `every - 1` days after it, so that "every
/// second day" does not fall on the day of arrival.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct EveryNth(pub u8);

impl EveryNth {
    /// Whether it falls on the day `day` (0 is the day of arrival).
    #[must_use]
    pub fn falls_on(self, day: usize) -> bool {
        let every = usize::from(self.0);
        every != 0 && (day + 1).is_multiple_of(every)
    }
}

/// How the alternator reaches the leisure battery.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DrivingCharger {
    /// Battery-to-battery charger (dc-dc) with its own charge stages.
    DcDc {
        /// Output current [A].
        amps: Amps,
    },
    /// Split-charge relay: alternator voltage less what the cable drops.
    Relay {
        /// Alternator voltage [V], per 12 V nominal.
        alternator: Volts,
        /// Length of the charging cable one way [m].
        cable_length: Metres,
        /// Its cross-section [mm2].
        cable_size: SquareMillimetres,
        /// What the circuit can carry, fuse or relay [A].
        limit: Amps,
        /// A smart alternator that lowers its voltage at times.
        smart_alternator: bool,
    },
}

impl Default for DrivingCharger {
    fn default() -> Self {
        Self::DcDc { amps: Amps(30.0) }
    }
}

/// Charging while driving.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Driving {
    /// There is a charging circuit from the engine.
    pub fitted: bool,
    /// How it charges.
    pub charger: DrivingCharger,
    /// Driving time on a driving day [min], unless the day says otherwise.
    pub minutes: f64,
    /// Which days are driving days.
    pub every: EveryNth,
    /// When driving starts [min after midnight].
    pub from_min: u16,
}

impl Default for Driving {
    fn default() -> Self {
        Self {
            fitted: false,
            charger: DrivingCharger::default(),
            minutes: 60.0,
            every: EveryNth(0),
            from_min: 10 * 60,
        }
    }
}

/// Mains hook-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct HookUp {
    /// There is a mains charger aboard.
    pub fitted: bool,
    /// Charger output [A].
    pub amps: Amps,
    /// Which nights are on hook-up, unless the day says otherwise.
    pub every: EveryNth,
    /// Plugged in from [min after midnight] on such a day.
    pub from_min: u16,
    /// For so long [h].
    pub hours: Hours,
    /// Mains appliances run straight from the hook-up while it is plugged in.
    pub pass_through: bool,
}

impl Default for HookUp {
    fn default() -> Self {
        Self {
            fitted: false,
            amps: Amps(20.0),
            every: EveryNth(0),
            from_min: 18 * 60,
            hours: Hours(15.0),
            pass_through: true,
        }
    }
}

/// Other machines that charge.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OtherSourceKind {
    /// Petrol, diesel or gas generator through the mains charger.
    #[default]
    Generator,
    /// Methanol or gas fuel cell.
    FuelCell,
    /// Small wind turbine; hours and current are the user's own average.
    Wind,
}

/// A generator, fuel cell or wind turbine.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct OtherSource {
    /// Counts in the sums; switched off keeps the row.
    pub enabled: bool,
    /// What it is.
    pub kind: OtherSourceKind,
    /// Charging current into the battery circuit [A].
    pub amps: Amps,
    /// It runs from [min after midnight].
    pub from_min: u16,
    /// For so long a day [h].
    pub hours: Hours,
    /// On which days.
    pub every: EveryNth,
    /// Fuel burnt an hour [L]; 0 for wind.
    pub fuel_per_hour: Litres,
}

impl Default for OtherSource {
    fn default() -> Self {
        Self {
            enabled: true,
            kind: OtherSourceKind::Generator,
            amps: Amps(20.0),
            from_min: 10 * 60,
            hours: Hours(2.0),
            every: EveryNth(1),
            fuel_per_hour: Litres(0.4),
        }
    }
}

impl SolarArray {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self {
            enabled: _,
            name,
            peak,
            tilt,
            facing,
            mounting: _,
            controller: _,
            controller_frac,
            self_use,
            shade,
            low_light_frac,
            dirt_frac,
            wiring_frac,
            mismatch_frac,
            temp_coeff_per_k,
            vmp,
        } = self;
        sanitiser.text(name, MAX_NAME_CHARS);
        sanitiser.number(&mut peak.0, SOLAR_W, 0.0);
        sanitiser.number(&mut tilt.0, TILT_DEG, 0.0);
        sanitiser.number(&mut facing.0, FACING_DEG, 180.0);
        sanitiser.number(controller_frac, CONTROLLER_FRAC, 0.96);
        sanitiser.number(&mut self_use.0, SELF_USE_W, 0.3);
        let Shade { morning_frac, midday_frac, afternoon_frac, sky_frac } = shade;
        for share in [morning_frac, midday_frac, afternoon_frac, sky_frac] {
            sanitiser.number(share, FRAC, 0.0);
        }
        sanitiser.number(low_light_frac, SMALL_LOSS_FRAC, 0.04);
        sanitiser.number(dirt_frac, DIRT_FRAC, 0.03);
        sanitiser.number(wiring_frac, SMALL_LOSS_FRAC, 0.03);
        sanitiser.number(mismatch_frac, SMALL_LOSS_FRAC, 0.02);
        sanitiser.number(temp_coeff_per_k, TEMP_COEFF_PER_K, -0.0035);
        if let Some(volts) = vmp {
            sanitiser.number(&mut volts.0, PANEL_V, 18.2);
        }
    }
}

impl Driving {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { fitted: _, charger, minutes, every, from_min } = self;
        match charger {
            DrivingCharger::DcDc { amps } => sanitiser.number(&mut amps.0, CHARGER_A, 30.0),
            DrivingCharger::Relay {
                alternator,
                cable_length,
                cable_size,
                limit,
                smart_alternator: _,
            } => {
                sanitiser.number(&mut alternator.0, ALTERNATOR_V, 14.2);
                sanitiser.number(&mut cable_length.0, CABLE_M, 6.0);
                sanitiser.number(&mut cable_size.0, CABLE_MM2, 6.0);
                sanitiser.number(&mut limit.0, CHARGER_A, 30.0);
            }
        }
        sanitiser.number(minutes, MINUTES_A_DAY, 0.0);
        sanitiser.whole(&mut every.0, EVERY_DAYS);
        sanitiser.whole(from_min, MINUTE_OF_DAY);
    }
}

impl HookUp {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { fitted: _, amps, every, from_min, hours, pass_through: _ } = self;
        sanitiser.number(&mut amps.0, CHARGER_A, 0.0);
        sanitiser.whole(&mut every.0, EVERY_DAYS);
        sanitiser.whole(from_min, MINUTE_OF_DAY);
        sanitiser.number(&mut hours.0, HOURS_A_DAY, 0.0);
    }
}

impl OtherSource {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { enabled: _, kind: _, amps, from_min, hours, every, fuel_per_hour } = self;
        sanitiser.number(&mut amps.0, CHARGER_A, 0.0);
        sanitiser.whole(from_min, MINUTE_OF_DAY);
        sanitiser.number(&mut hours.0, HOURS_A_DAY, 0.0);
        sanitiser.whole(&mut every.0, EVERY_DAYS);
        sanitiser.number(&mut fuel_per_hour.0, FUEL_L_H, 0.0);
    }
}
