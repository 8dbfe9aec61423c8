//! From the light in the cells to power at the battery.
//!
//! ```text
//! cell      Tc = Ta + G exp(a + b v) + G/1000 dT       SAPM: D. L. King et al., SAND2004-3535
//!                open rack, polymer back    a -3.56  b -0.0750  dT 3 K
//!                small gap, close mount     a -2.98  b -0.0471  dT 1 K
//!                glued, insulated back      a -2.81  b -0.0455  dT 0 K
//! power     P  = Wp G/1000 e(G) (1 + gamma (Tc - 25))
//! low light e(G) = 1 + l ln(G/1000) / ln 5             l lost at 200 W/m2: 4 % (common practice:
//!                                                      data sheets state 2 to 5 %) or as stated
//! MPPT      Pb = P (1-dirt)(1-mismatch)(1-wiring) eta
//! PWM       Ib = Imp G/1000 (1 + 0.0005 (Tc - 25)) (1-dirt)(1-mismatch),  Imp = Wp / 18.2 V
//!           and never more than the panel's best power at 13.2 V
//! ```
//! G: light that reaches the cells [W/m2], Ta: air [C], v: wind at 10 m [m/s], gamma [1/K].
//! 18.2 V and 13.2 V are for a 12 V system and double at 24 V (common practice, no source): a
//! 100 W panel gives 5.5 A, 73 W at 13.2 V. Wire losses of a PWM controller come out of the
//! panel's spare voltage and cost no current. Weak light lowers the panel's voltage, not its
//! current per W/m2. With nothing connected a cold panel's voltage rises by 0.4 % of that of its plate for each
//! kelvin below 25 degrees, as the table for crystalline silicon of NEC 690.7(A) has it (from memory).

use crate::model::{Controller, Mounting, SolarArray, SystemVoltage};
use crate::units::{Amps, Celsius, Volts, Watts, WattsPerSquareMetre};

/// Irradiance of the standard test conditions.
pub const STC_IRRADIANCE: WattsPerSquareMetre = WattsPerSquareMetre(1000.0);
/// Cell temperature of the standard test conditions.
pub const STC_CELL: Celsius = Celsius(25.0);
/// Voltage at the best operating point of a panel for a 12 V system.
pub const BEST_VOLTS_12: Volts = Volts(18.2);
/// Battery voltage at which a PWM current is told in watts, 12 V system.
pub const CHARGING_VOLTS_12: Volts = Volts(13.2);
/// Wind assumed when none is known [m/s at 10 m].
pub const USUAL_WIND_M_S: f64 = 2.0;
/// Irradiance at which data sheets tell the loss in weak light.
pub const LOW_LIGHT_IRRADIANCE: WattsPerSquareMetre = WattsPerSquareMetre(200.0);
/// Rise of current per kelvin of cell temperature [1/K] (common practice, silicon).
const CURRENT_COEFF_PER_K: f64 = 0.0005;

/// Rise of the open-circuit voltage per kelvin of cold [1/K].
const COLD_VOLTAGE_PER_K: f64 = 0.004;

/// How much higher the open-circuit voltage of a panel is at dawn in this air than on its plate, share of it.
#[must_use]
pub fn cold_voltage_rise_frac(air: Celsius) -> f64 {
    COLD_VOLTAGE_PER_K * (STC_CELL.0 - air.0).max(0.0)
}

/// Kelvin of the cell above the air per W/m2, by how the panel is fixed. Wind at 10 m height, m/s.
fn heating_k_per_irradiance(mounting: Mounting, wind_m_s: f64) -> f64 {
    let (a, b, back_to_cell_k) = match mounting {
        Mounting::OpenRack => (-3.56, -0.0750, 3.0),
        Mounting::SmallGap => (-2.98, -0.0471, 1.0),
        Mounting::Glued => (-2.81, -0.0455, 0.0),
    };
    let wind: f64 = wind_m_s.max(0.0);
    (a + b * wind).exp() + back_to_cell_k / STC_IRRADIANCE.0
}

/// Efficiency in weak light over that at 1000 W/m2: 1 there, less `loss_frac` at 200 W/m2,
/// logarithmic between and beyond, never negative.
#[must_use]
pub fn low_light_efficiency(light: WattsPerSquareMetre, loss_frac: f64) -> f64 {
    if light.0 > 0.0 {
        let slope = loss_frac / (STC_IRRADIANCE / LOW_LIGHT_IRRADIANCE).ln();
        (1.0 + slope * (light / STC_IRRADIANCE).ln()).max(0.0)
    } else {
        0.0
    }
}

/// Power over power at 25 degrees Celsius; never negative.
#[must_use]
pub fn temperature_factor(temp_coeff_per_k: f64, cell: Celsius) -> f64 {
    (1.0 + temp_coeff_per_k * (cell - STC_CELL).0).max(0.0)
}

/// What reaches the battery.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct HourYield {
    /// From MPPT controllers: power, whatever the battery's voltage.
    pub mppt: Watts,
    /// From PWM controllers: current, whatever the battery's voltage.
    pub pwm: Amps,
}

impl HourYield {
    /// Power into a battery at a voltage.
    #[must_use]
    pub fn power_at(self, battery: Volts) -> Watts {
        self.mppt + self.pwm * battery
    }
}

/// Where the power of one array stands after each loss, from cells to battery [W].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PanelPower {
    /// At standard efficiency, from the light in the cells.
    pub standard: Watts,
    /// After weak light.
    pub after_low_light: Watts,
    /// After heat; more than before when the cells are colder than 25 degrees Celsius.
    pub after_heat: Watts,
    /// After dirt.
    pub after_dirt: Watts,
    /// After mismatch and tolerance.
    pub after_mismatch: Watts,
    /// After the wires.
    pub after_wiring: Watts,
    /// What reaches the battery, a PWM current told at [`CHARGING_VOLTS_12`] and its multiples.
    pub delivered: Watts,
    /// The same as the battery sees it.
    pub at_battery: HourYield,
}

/// One array with its constant factors worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Panel {
    peak: f64,
    heating: f64,
    temp_coeff_per_k: f64,
    low_light_frac: f64,
    dirt_kept: f64,
    mismatch_kept: f64,
    wiring_kept: f64,
    controller: Controller,
    controller_frac: f64,
    best_volts: f64,
    charging_volts: f64,
}

impl Panel {
    /// The array on a system of one nominal voltage. Wind at 10 m, m/s. Figures out of range are
    /// held within it; a figure that is no number counts as none.
    #[must_use]
    pub fn new(array: &SolarArray, system: SystemVoltage, wind_m_s: f64) -> Self {
        let series_12v = system.series_12v();
        let kept = |lost: f64| 1.0 - share(lost);
        Self {
            peak: if array.peak.0.is_finite() { array.peak.0.max(0.0) } else { 0.0 },
            heating: heating_k_per_irradiance(array.mounting, wind_m_s),
            temp_coeff_per_k: if array.temp_coeff_per_k.is_finite() {
                array.temp_coeff_per_k.min(0.0)
            } else {
                0.0
            },
            low_light_frac: share(array.low_light_frac),
            dirt_kept: kept(array.dirt_frac),
            mismatch_kept: kept(array.mismatch_frac),
            wiring_kept: kept(array.wiring_frac),
            controller: array.controller,
            controller_frac: share(array.controller_frac),
            best_volts: array.vmp.map_or(BEST_VOLTS_12.0 * series_12v, |vmp| vmp.0),
            charging_volts: CHARGING_VOLTS_12.0 * series_12v,
        }
    }

    /// Nominal power.
    #[must_use]
    pub fn peak(&self) -> Watts {
        Watts(self.peak)
    }

    /// Power step by step. `light`: what reaches the cells, after shade and reflection.
    #[must_use]
    pub fn power(&self, light: WattsPerSquareMetre, air: Celsius) -> PanelPower {
        if !light.is_finite() || light.0 <= 0.0 {
            return PanelPower::default();
        }
        let cell = Celsius(air.0.clamp(-100.0, 100.0) + light.0 * self.heating);
        let standard = self.peak * (light / STC_IRRADIANCE);
        let after_low_light = standard * low_light_efficiency(light, self.low_light_frac);
        let after_heat = after_low_light * temperature_factor(self.temp_coeff_per_k, cell);
        let after_dirt = after_heat * self.dirt_kept;
        let after_mismatch = after_dirt * self.mismatch_kept;
        let after_wiring = after_mismatch * self.wiring_kept;
        let (delivered, at_battery) = match self.controller {
            Controller::Mppt => {
                let power = Watts(after_wiring * self.controller_frac);
                (power, HourYield { mppt: power, pwm: Amps(0.0) })
            }
            Controller::Pwm => {
                let warmed = 1.0 + CURRENT_COEFF_PER_K * (cell - STC_CELL).0;
                let current = standard / self.best_volts
                    * warmed.max(0.0)
                    * self.dirt_kept
                    * self.mismatch_kept;
                let amps = Amps(current.min(after_wiring / self.charging_volts));
                (amps * Volts(self.charging_volts), HourYield { mppt: Watts(0.0), pwm: amps })
            }
        };
        PanelPower {
            standard: Watts(standard),
            after_low_light: Watts(after_low_light),
            after_heat: Watts(after_heat),
            after_dirt: Watts(after_dirt),
            after_mismatch: Watts(after_mismatch),
            after_wiring: Watts(after_wiring),
            delivered,
            at_battery,
        }
    }
}

/// A share held within 0 and 1; no number counts as 0.
pub(super) fn share(fraction: f64) -> f64 {
    if fraction.is_nan() { 0.0 } else { fraction.clamp(0.0, 1.0) }
}
