//! Resolution of every number in a version 1 link. Frozen: links already given away are read with
//! these steps, so a finer one means a new version.

use crate::link::wire::Scale;
use crate::model::limits::{self, Range};

const fn scale(range: Range, per_unit: u32, strides: &'static [u32], order: u32) -> Scale {
    Scale { range, per_unit, strides, order, signed: false }
}

const fn signed(range: Range, per_unit: u32, strides: &'static [u32], order: u32) -> Scale {
    Scale { range, per_unit, strides, order, signed: true }
}

/// Shares: 0.001.
pub(super) const FRAC: Scale = scale(limits::FRAC, 1000, &[50, 10, 1], 4);
/// Draw of a load: 0.01 W.
pub(super) const DRAW_W: Scale = scale(limits::DRAW_W, 100, &[500, 100, 10, 1], 4);
/// Standby draw: 0.01 W.
pub(super) const STANDBY_W: Scale = scale(limits::STANDBY_W, 100, &[100, 10, 1], 2);
/// Current of a load: 0.001 A.
pub(super) const DRAW_A: Scale = scale(limits::DRAW_A, 1000, &[1000, 100, 10, 1], 3);
/// Voltage a current was read at: 0.01 V.
pub(super) const STATED_V: Scale = scale(limits::STATED_V, 100, &[100, 10, 1], 3);
/// Minutes a day: 0.1 min.
pub(super) const MINUTES: Scale = scale(limits::MINUTES_A_DAY, 10, &[300, 50, 10, 1], 3);
/// Days between charges: 0.01.
pub(super) const CHARGE_EVERY: Scale = scale(limits::CHARGE_EVERY_DAYS, 100, &[100, 10, 1], 1);
/// Charge of a small cell: 1 mAh.
pub(super) const CELL_MAH: Scale = scale(limits::CELL_MAH, 1, &[1000, 100, 1], 4);
/// Voltage of a small cell: 0.01 V.
pub(super) const CELL_V: Scale = scale(limits::CELL_V, 100, &[100, 10, 1], 5);
/// Water a day: 0.1 L.
pub(super) const LITRES: Scale = scale(limits::LITRES_A_DAY, 10, &[50, 10, 1], 3);
/// Flow of a pump: 0.01 L/min.
pub(super) const FLOW: Scale = scale(limits::FLOW_L_MIN, 100, &[100, 10, 1], 4);
/// Uses a day: 0.01.
pub(super) const USES: Scale = scale(limits::USES_A_DAY, 100, &[100, 10, 1], 3);
/// Seconds a use: 0.1 s.
pub(super) const SECONDS: Scale = scale(limits::SECONDS_A_USE, 10, &[300, 50, 10, 1], 3);
/// Energy a day of one load: 0.1 Wh.
pub(super) const ENERGY_WH: Scale = scale(limits::ENERGY_WH_A_DAY, 10, &[500, 100, 10, 1], 4);
/// Starting over running draw: 0.01.
pub(super) const SURGE_FACTOR: Scale = scale(limits::SURGE_FACTOR, 100, &[100, 10, 1], 2);
/// Cut-out of a load: 0.01 V.
pub(super) const CUT_OUT_V: Scale = scale(limits::CUT_OUT_V, 100, &[50, 10, 1], 5);

/// Capacity of a string: 0.1 Ah.
pub(super) const CAPACITY_AH: Scale = scale(limits::CAPACITY_AH, 10, &[100, 50, 10, 1], 4);
/// Cable resistance of the bank: 0.01 mOhm.
pub(super) const CABLE_OHM: Scale = scale(limits::CABLE_OHM, 100_000, &[100, 10, 1], 3);
/// Inverter rating: 0.1 W.
pub(super) const INVERTER_W: Scale = scale(limits::INVERTER_W, 10, &[1000, 100, 10, 1], 4);
/// Inverter surge rating: 0.1 W.
pub(super) const INVERTER_SURGE_W: Scale =
    scale(limits::INVERTER_SURGE_W, 10, &[1000, 100, 10, 1], 4);
/// Inverter no-load draw: 0.01 W.
pub(super) const INVERTER_IDLE_W: Scale = scale(limits::INVERTER_IDLE_W, 100, &[100, 10, 1], 4);
/// Inverter efficiency at full load: 0.001.
pub(super) const INVERTER_FRAC: Scale = scale(limits::INVERTER_FRAC, 1000, &[50, 10, 1], 5);
/// Inverter cut-out: 0.01 V.
pub(super) const INVERTER_CUT_OUT_V: Scale =
    scale(limits::INVERTER_CUT_OUT_V, 100, &[50, 10, 1], 5);
/// Peak power of an array: 0.1 W.
pub(super) const SOLAR_W: Scale = scale(limits::SOLAR_W, 10, &[100, 50, 10, 1], 4);
/// Tilt: 0.1 deg.
pub(super) const TILT: Scale = scale(limits::TILT_DEG, 10, &[50, 10, 1], 3);
/// Facing: 0.1 deg.
pub(super) const FACING: Scale = scale(limits::FACING_DEG, 10, &[450, 50, 10, 1], 3);
/// Controller self-use: 0.01 W.
pub(super) const SELF_USE_W: Scale = scale(limits::SELF_USE_W, 100, &[10, 1], 3);
/// Temperature coefficient: 0.001 %/K.
pub(super) const TEMP_COEFF: Scale = signed(limits::TEMP_COEFF_PER_K, 100_000, &[10, 1], 6);
/// Charging current: 0.01 A.
pub(super) const CHARGER_A: Scale = scale(limits::CHARGER_A, 100, &[500, 100, 10, 1], 3);
/// Alternator voltage: 0.01 V.
pub(super) const ALTERNATOR_V: Scale = scale(limits::ALTERNATOR_V, 100, &[10, 1], 7);
/// Length of a cable: 0.01 m.
pub(super) const CABLE_M: Scale = scale(limits::CABLE_M, 100, &[100, 50, 10, 1], 3);
/// Cross-section: 0.01 mm2.
pub(super) const CABLE_MM2: Scale = scale(limits::CABLE_MM2, 100, &[100, 50, 1], 4);
/// Hours a day: 0.01 h.
pub(super) const HOURS: Scale = scale(limits::HOURS_A_DAY, 100, &[100, 50, 25, 1], 3);
/// Fuel an hour: 0.01 L.
pub(super) const FUEL_L_H: Scale = scale(limits::FUEL_L_H, 100, &[100, 10, 1], 2);

/// Latitude: 0.1 deg, some 11 km; a link does not tell the pitch.
pub(super) const LATITUDE: Scale = signed(limits::LATITUDE_DEG, 10, &[1], 9);
/// Longitude: 0.1 deg.
pub(super) const LONGITUDE: Scale = signed(limits::LONGITUDE_DEG, 10, &[1], 9);
/// Altitudes are carried in steps of so many metres: a contour line through a cell of 0.1 deg would
/// tell more of the place than the forecast needs.
pub(super) const ALTITUDE_STEP_M: f64 = 50.0;
/// Altitude in [`ALTITUDE_STEP_M`].
pub(super) const ALTITUDE: Scale = signed(
    Range {
        min: limits::ALTITUDE_M.min / ALTITUDE_STEP_M,
        max: limits::ALTITUDE_M.max / ALTITUDE_STEP_M,
    },
    1,
    &[1],
    3,
);
/// Sun on the horizontal: 1 Wh/m2.
pub(super) const SUN_WH_M2: Scale = scale(limits::SUN_WH_M2, 1, &[100, 10, 1], 5);
/// Air temperature: 0.1 degrees Celsius.
pub(super) const AIR_C: Scale = signed(limits::AIR_C, 10, &[10, 1], 5);

/// Price: 0.01.
pub(super) const PRICE: Scale = scale(limits::PRICE, 100, &[1000, 100, 1], 4);
/// Weight: 0.01 kg.
pub(super) const WEIGHT_KG: Scale = scale(limits::WEIGHT_KG, 100, &[100, 10, 1], 4);
/// Time since arrival: 1 min.
pub(super) const SINCE_ARRIVAL: Scale = scale(limits::SINCE_ARRIVAL_H, 60, &[60, 1], 5);
/// Voltage of the bank: 0.01 V.
pub(super) const BANK_V: Scale = scale(limits::BANK_V, 100, &[10, 1], 7);
/// Rest before a reading: 0.01 h.
pub(super) const RESTED: Scale = scale(limits::SINCE_ARRIVAL_H, 100, &[100, 50, 1], 2);
/// Charge used since full: 0.1 Ah.
pub(super) const USED_AH: Scale = scale(limits::USED_AH, 10, &[10, 1], 6);
/// Consumption, real over planned: 0.001.
pub(super) const USE_FACTOR: Scale = scale(limits::USE_FACTOR, 1000, &[50, 10, 1], 5);
/// Solar yield, real over planned: 0.001.
pub(super) const SUN_FACTOR: Scale = scale(limits::SUN_FACTOR, 1000, &[50, 10, 1], 5);
/// Conductor temperature: 0.1 degrees Celsius.
pub(super) const CONDUCTOR_C: Scale = signed(limits::CONDUCTOR_C, 10, &[100, 10, 1], 3);
/// Fuse: 0.1 A.
pub(super) const FUSE_A: Scale = scale(limits::FUSE_A, 10, &[50, 10, 1], 3);
