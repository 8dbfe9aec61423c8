//! Where the light of a day goes, from an ideal panel to the battery.
//!
//! ```text
//! ideal = Wp sum(G_plane)/1000 h          free horizon, no reflection, standard efficiency
//! ideal = shade + reflection + low light + heat + dirt + mismatch + wiring + controller + delivered
//! ```
//! Each loss is what its step takes from what the steps before have left [Wh], so the parts add
//! up. Heat is negative where cold cells give more. What a PWM controller cannot use of the panel's
//! voltage counts as controller loss, its current told at 13.2 V (26.4 V at 24 V). What the
//! controllers draw themselves is a load and not in here.

use super::day::{ArrayDay, DaySun};
use super::panel::{Panel, STC_IRRADIANCE};
use crate::model::SolarArray;
use crate::units::{Celsius, Hours, WattHours, Watts};
use std::ops::AddAssign;

/// Energy of one day at each step [Wh].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LossFlow {
    /// Nominal power times the light on the plane.
    pub ideal: WattHours,
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
        let light = ArrayDay::new(sun, array, ground_reflectance).light(sun, k_frac);
        for (light, &air) in light.iter().zip(air) {
            let standard = |irradiance| panel.peak() * (irradiance / STC_IRRADIANCE);
            let ideal: Watts = standard(light.poa);
            let shaded = standard(light.after_shade);
            let power = panel.power(light.poa_effective, air);
            flow += Self {
                ideal: ideal * hour,
                shade: (ideal - shaded) * hour,
                reflection: (shaded - power.standard) * hour,
                low_light: (power.standard - power.after_low_light) * hour,
                heat: (power.after_low_light - power.after_heat) * hour,
                dirt: (power.after_heat - power.after_dirt) * hour,
                mismatch: (power.after_dirt - power.after_mismatch) * hour,
                wiring: (power.after_mismatch - power.after_wiring) * hour,
                controller: (power.after_wiring - power.delivered) * hour,
                delivered: power.delivered * hour,
            };
        }
        flow
    }

    /// The losses in order, without `ideal` and `delivered`.
    #[must_use]
    pub fn losses(&self) -> [WattHours; 8] {
        [
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
