//! Sizing methods for stand-alone solar systems, as small steps, to set beside the hourly answer.
//!
//! Steps and coefficients are from memory and not quoted as the words of any standard:
//! - IEEE 1013 (lead-acid): running current of constant-power loads at 95 % of nominal voltage;
//!   days of autonomy times daily load; over the largest of depth-of-discharge and end-of-life
//!   limits; times temperature factor and design margin.
//! - IEEE 1562 (array): array-to-load ratio times daily load, over peak sun hours less losses.
//! - AS/NZS 4509.2: dc load plus ac load over inverter efficiency; capacity for the days of
//!   autonomy; array derated for cell temperature T_cell = T_air,day + 25.
//! - Sandia handbook (SAND87-7023): worksheet with wire 0.98 and battery 0.90.
//!
//! All of them balance one average day and carry the spread of the weather as days of autonomy. The
//! hourly simulation draws the weather instead and tells the chance. Where both speak of the same,
//! they agree; where not, the difference has a cause (`tests/sizing_side_by_side.rs`, lead-acid to
//! half, 0 to 25 degrees Celsius, 2 to 7 days):
//!
//! | the rule | the hourly answer | because |
//! |---|---|---|
//! | AS/NZS days of autonomy | 1 to 6 % longer without charging | 12 V reckoned, 12.3 to 12.6 V there |
//! | IEEE 1013 days of autonomy | 5 to 12 % longer | current taken at 95 % of 12 V |
//! | Sandia days of autonomy | 14 to 20 % longer | the battery's loss falls on charging, none of which is met |
//! | ratio A:L below 1, D / (1 - A:L) days | 15 % less to 10 % more | loss of what goes through the battery; voltage |
//! | ratio A:L of 1.2, average day lasts for ever | below 1 in 10 for a month of December with 1 day, 7 to 9 in 10 with 5, 17 to 19 in 20 with 7 | dull days come in runs |
//! | ratio for a house that stays | 1 - D/N and up for a stay of N nights | the battery alone carries D of them |
//!
//! Neither wire loss, margin nor end of life is in these comparisons: enter the battery's health and
//! the cable as they are, and the hourly answer has them.

use nightbank::units::{AmpHours, Amps, Celsius, Hours, Volts, WattHours, Watts};

/// Peak sun hours [h]: a day's irradiation over 1000 W/m2.
pub type PeakSunHours = Hours;

/// IEEE 1013: running current of a constant-power load.
#[must_use]
pub fn ieee_1013_running_current(power: Watts, nominal: Volts) -> Amps {
    power / (nominal * 0.95)
}

/// Steps of IEEE 1013.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ieee1013 {
    /// Charge a day.
    pub daily: AmpHours,
    /// Days without sun.
    pub autonomy_days: f64,
    /// Deepest discharge over the autonomy, 0..1.
    pub max_discharge_frac: f64,
    /// Deepest discharge in one day, 0..1.
    pub max_daily_discharge_frac: f64,
    /// Capacity left at the end of life, 0..1.
    pub end_of_life_frac: f64,
    /// Temperature factor, 1 and more in the cold.
    pub temperature_factor: f64,
    /// Design margin, 1.1 to 1.25.
    pub margin: f64,
}

impl Ieee1013 {
    /// Charge for the days of autonomy.
    #[must_use]
    pub fn unadjusted(&self) -> AmpHours {
        self.daily * self.autonomy_days
    }

    /// Rated capacity needed: the largest of the three limits, not their product.
    #[must_use]
    pub fn capacity(&self) -> AmpHours {
        let unadjusted = self.unadjusted();
        (unadjusted / self.max_discharge_frac)
            .max(self.daily / self.max_daily_discharge_frac)
            .max(unadjusted / self.end_of_life_frac)
            * self.temperature_factor
            * self.margin
    }
}

/// IEEE 1562: array current at its maximum power point, from daily load, array-to-load ratio,
/// peak sun hours of the design month and system loss.
#[must_use]
pub fn ieee_1562_array_current(
    daily: AmpHours,
    array_to_load: f64,
    sun: PeakSunHours,
    loss_frac: f64,
) -> Amps {
    daily * array_to_load / (sun * (1.0 - loss_frac))
}

/// AS/NZS 4509.2: energy a day on the battery side.
#[must_use]
pub fn asnzs_4509_daily_energy(dc: WattHours, ac: WattHours, inverter_frac: f64) -> WattHours {
    dc + ac / inverter_frac
}

/// AS/NZS 4509.2: rated capacity for so many days; `temperature_frac` is the share of capacity
/// left at the battery's temperature.
#[must_use]
pub fn asnzs_4509_capacity(
    daily: WattHours,
    autonomy_days: f64,
    nominal: Volts,
    max_discharge_frac: f64,
    temperature_frac: f64,
) -> AmpHours {
    daily * autonomy_days / nominal / (max_discharge_frac * temperature_frac)
}

/// AS/NZS 4509.2: factor of the array's power for mean daytime air temperature and the module's
/// temperature coefficient (negative) [1/K].
#[must_use]
pub fn asnzs_4509_temperature_factor(daytime_air: Celsius, coefficient_per_k: f64) -> f64 {
    let cell = daytime_air.0 + 25.0;
    1.0 + coefficient_per_k * (cell - 25.0)
}

/// Steps of the Sandia worksheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SandiaWorksheet {
    /// Direct-current energy a day.
    pub dc: WattHours,
    /// Mains energy a day.
    pub ac: WattHours,
    /// Efficiency of the inverter, 0..1.
    pub inverter_frac: f64,
    /// Nominal voltage.
    pub nominal: Volts,
}

impl SandiaWorksheet {
    /// Share that the wires let through.
    pub const WIRE_FRAC: f64 = 0.98;
    /// Share that the battery gives back.
    pub const BATTERY_FRAC: f64 = 0.90;
    /// Share of their rating that modules deliver.
    pub const MODULE_FRAC: f64 = 0.90;

    /// Charge a day at the loads.
    #[must_use]
    pub fn load(&self) -> AmpHours {
        (self.dc + self.ac / self.inverter_frac) / self.nominal
    }

    /// Charge a day to be brought in.
    #[must_use]
    pub fn corrected(&self) -> AmpHours {
        self.load() / Self::WIRE_FRAC / Self::BATTERY_FRAC
    }

    /// Rated capacity for so many days at a depth of discharge and a temperature derating, 0..1.
    #[must_use]
    pub fn capacity(&self, days: f64, max_discharge_frac: f64, temperature_frac: f64) -> AmpHours {
        self.corrected() * days / (max_discharge_frac * temperature_frac)
    }

    /// Rated array current for so many peak sun hours.
    #[must_use]
    pub fn array_current(&self, sun: PeakSunHours) -> Amps {
        self.corrected() / sun / Self::MODULE_FRAC
    }
}
