//! Where the light of a day goes, from an ideal panel to the battery.
//!
//! ```text
//! ideal = Wp sum(G_plane)/1000 h          free horizon, no reflection, standard efficiency
//! ideal = snow + shade + reflection + low light + heat + dirt + mismatch + wiring + controller + delivered
//! ```
//! Each loss is what its step takes from what the steps before have left [Wh], so the parts add
//! up. Snow covers the panels for its share of the day ([`super::snow`]) and takes all of that. Heat is negative where cold cells give more. What a PWM controller cannot use of the panel's
//! voltage counts as controller loss, its current told at 13.2 V (26.4 V at 24 V). What the
//! controllers draw themselves is a load and not in here.

use super::day::{ArrayDay, DaySun};
use super::panel::{Panel, STC_IRRADIANCE};
use super::snow::{day_mean, snow_loss_frac};
use crate::model::SolarArray;
use crate::units::{Celsius, Hours, WattHours, Watts};
use std::ops::AddAssign;

/// Energy of one day at each step [Wh].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LossFlow {
    /// Nominal power times the light on the plane.
    pub ideal: WattHours,
    /// Lost to snow on the panels.
    pub snow: WattHours,
    /// Lost to shade.
    pub shade: WattHours,
    /// Lost to reflection at the glass.
    pub reflection: WattHours,
    /// Lost to weak light.
    pub low_light: WattHours,
    /// Lost to heat; negative when cold brings more.
    pub heat: WattHours,
    /// Lost to dirt.
    pub dirt: WattHours,
    /// Lost to mismatch and tolerance.
    pub mismatch: WattHours,
    /// Lost in the wires.
    pub wiring: WattHours,
    /// Lost in the controller.
    pub controller: WattHours,
    /// Offered to the battery.
    pub delivered: WattHours,
}

impl LossFlow {
    /// One array on one day at a clearness. `panel` is made from `array`; `air` by hour.
    #[must_use]
    pub fn of_array(
        sun: &DaySun,
        air: &[Celsius; 24],
        array: &SolarArray,
        panel: &Panel,
        ground_reflectance: f64,
        k_frac: f64,
    ) -> Self {
        let hour = Hours(1.0);
        let mut flow = Self::default();
        let snow_frac = snow_loss_frac(day_mean(air), array.tilt);
        // Of what each step takes or leaves, the part of the day without snow.
        let hour_clear = hour * (1.0 - snow_frac);
        let light = ArrayDay::new(sun, array, ground_reflectance).light(sun, k_frac);
        for (light, &air) in light.iter().zip(air) {
            let standard = |irradiance| panel.peak() * (irradiance / STC_IRRADIANCE);
            let ideal: Watts = standard(light.poa);
            let shaded = standard(light.after_shade);
            let power = panel.power(light.poa_effective, air);
            flow += Self {
                ideal: ideal * hour,
                snow: ideal * hour * snow_frac,
                shade: (ideal - shaded) * hour_clear,
                reflection: (shaded - power.standard) * hour_clear,
                low_light: (power.standard - power.after_low_light) * hour_clear,
                heat: (power.after_low_light - power.after_heat) * hour_clear,
                dirt: (power.after_heat - power.after_dirt) * hour_clear,
                mismatch: (power.after_dirt - power.after_mismatch) * hour_clear,
                wiring: (power.after_mismatch - power.after_wiring) * hour_clear,
                controller: (power.after_wiring - power.delivered) * hour_clear,
                delivered: power.delivered * hour_clear,
            };
        }
        flow
    }

    /// The losses in order, without `ideal` and `delivered`.
    #[must_use]
    pub fn losses(&self) -> [WattHours; 9] {
        [
            self.snow,
            self.shade,
            self.reflection,
            self.low_light,
            self.heat,
            self.dirt,
            self.mismatch,
            self.wiring,
            self.controller,
        ]
    }
}

impl AddAssign for LossFlow {
    fn add_assign(&mut self, other: Self) {
        self.ideal += other.ideal;
        self.snow += other.snow;
        self.shade += other.shade;
        self.reflection += other.reflection;
        self.low_light += other.low_light;
        self.heat += other.heat;
        self.dirt += other.dirt;
        self.mismatch += other.mismatch;
        self.wiring += other.wiring;
        self.controller += other.controller;
        self.delivered += other.delivered;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two arrays alike lose twice as much at every step.
    #[test]
    fn arrays_add_up_step_by_step() {
        let wh = |n: i32| WattHours(2_f64.powi(n));
        let one = LossFlow {
            ideal: wh(0),
            snow: wh(1),
            shade: wh(2),
            reflection: wh(3),
            low_light: wh(4),
            heat: wh(5),
            dirt: wh(6),
            mismatch: wh(7),
            wiring: wh(8),
            controller: wh(9),
            delivered: wh(10),
        };
        let mut both = one;
        both += one;
        assert_eq!(both.losses(), std::array::from_fn(|i| wh(i as i32 + 2)));
        assert_eq!((both.ideal, both.delivered), (wh(1), wh(11)));
    }
}
