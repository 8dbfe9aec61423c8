//! Units as the reader knows them. Everything is worked out and stored in one unit for each kind of quantity
//! (degrees Celsius, litres, metres, kilograms, mm2); what is shown or typed is converted here.
//!
//! Sources: the international foot and pound (1959) and the US liquid gallon of 231 cubic inches are exact
//! (NIST Handbook 44, appendix C); wire gauges are those of ASTM B258, d = 0.127 mm * 92^((36 - n) / 39).

/// Metres in a foot, exact.
const M_PER_FT: f64 = 0.3048;
/// Kilometres in a statute mile, exact.
const KM_PER_MILE: f64 = 1.609_344;
/// Litres in a US liquid gallon, exact.
const L_PER_GAL: f64 = 3.785_411_784;
/// Kilograms in an avoirdupois pound, exact.
const KG_PER_LB: f64 = 0.453_592_37;
/// Square centimetres in a square inch, exact.
const CM2_PER_IN2: f64 = 6.451_6;
/// Degrees Fahrenheit to a kelvin.
const F_PER_K: f64 = 1.8;

/// The units of daily life.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum UnitSystem {
    /// Degrees Celsius, litres, metres, kilograms, mm2.
    #[default]
    Metric,
    /// Degrees Fahrenheit, gallons, feet, pounds, AWG.
    Us,
}

/// Regions whose daily units are those of the United States: CLDR's territories of the measurement system `US`
/// (from memory), and the territories of the United States themselves.
const US_REGIONS: [&str; 8] = ["US", "LR", "MM", "PR", "GU", "VI", "AS", "MP"];

impl UnitSystem {
    /// Usual in a region, by its code of two letters (ISO 3166-1); metric where it is not known.
    #[must_use]
    pub fn of_region(region: &str) -> Self {
        if US_REGIONS.iter().any(|known| known.eq_ignore_ascii_case(region)) {
            Self::Us
        } else {
            Self::Metric
        }
    }
}

/// What is measured, where the unit depends on the reader. Values are in the metric unit named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// Temperature [degrees Celsius].
    Temperature,
    /// Difference of temperatures [K].
    TemperatureDifference,
    /// Length of cables, height above the sea [m].
    Length,
    /// Distance on the map [km].
    Distance,
    /// Water and fuel [L].
    Volume,
    /// Flow of water [L/min].
    Flow,
    /// Fuel burnt [L/h].
    FuelRate,
    /// Weight [kg].
    Weight,
    /// Opening for air [cm2].
    Opening,
    /// Air moved [m3/h].
    AirFlow,
    /// Section of a conductor [mm2]; as a wire gauge the number falls while the section grows.
    Section,
}

impl Measure {
    /// All of them.
    pub const ALL: [Self; 11] = [
        Self::Temperature,
        Self::TemperatureDifference,
        Self::Length,
        Self::Distance,
        Self::Volume,
        Self::Flow,
        Self::FuelRate,
        Self::Weight,
        Self::Opening,
        Self::AirFlow,
        Self::Section,
    ];

    /// Symbol of the unit, as written after a number.
    #[must_use]
    pub fn unit(self, system: UnitSystem) -> &'static str {
        match (self, system) {
            (Self::Temperature | Self::TemperatureDifference, UnitSystem::Metric) => "°C",
            (Self::Temperature | Self::TemperatureDifference, UnitSystem::Us) => "°F",
            (Self::Length, UnitSystem::Metric) => "m",
            (Self::Length, UnitSystem::Us) => "ft",
            (Self::Distance, UnitSystem::Metric) => "km",
            (Self::Distance, UnitSystem::Us) => "mi",
            (Self::Volume, UnitSystem::Metric) => "L",
            (Self::Volume, UnitSystem::Us) => "gal",
            (Self::Flow, UnitSystem::Metric) => "L/min",
            (Self::Flow, UnitSystem::Us) => "gal/min",
            (Self::FuelRate, UnitSystem::Metric) => "L/h",
            (Self::FuelRate, UnitSystem::Us) => "gal/h",
            (Self::Weight, UnitSystem::Metric) => "kg",
            (Self::Weight, UnitSystem::Us) => "lb",
            (Self::Opening, UnitSystem::Metric) => "cm²",
            (Self::Opening, UnitSystem::Us) => "in²",
            (Self::AirFlow, UnitSystem::Metric) => "m³",
            (Self::AirFlow, UnitSystem::Us) => "ft³",
            (Self::Section, UnitSystem::Metric) => "mm²",
            (Self::Section, UnitSystem::Us) => "AWG",
        }
    }

    /// Metric units to one of the reader's.
    fn factor(self) -> f64 {
        match self {
            Self::Temperature | Self::TemperatureDifference => F_PER_K.recip(),
            Self::Length => M_PER_FT,
            Self::Distance => KM_PER_MILE,
            Self::Volume | Self::Flow | Self::FuelRate => L_PER_GAL,
            Self::Weight => KG_PER_LB,
            Self::Opening => CM2_PER_IN2,
            Self::AirFlow => M_PER_FT * M_PER_FT * M_PER_FT,
            Self::Section => 1.0,
        }
    }

    /// `metric`, in the metric unit of this measure, in the reader's unit.
    #[must_use]
    pub fn shown(self, system: UnitSystem, metric: f64) -> f64 {
        match (self, system) {
            (_, UnitSystem::Metric) => metric,
            (Self::Temperature, UnitSystem::Us) => metric * F_PER_K + 32.0,
            (Self::Section, UnitSystem::Us) => gauge_of(metric),
            (_, UnitSystem::Us) => metric / self.factor(),
        }
    }

    /// `shown`, in the reader's unit, in the metric unit of this measure.
    #[must_use]
    pub fn metric(self, system: UnitSystem, shown: f64) -> f64 {
        match (self, system) {
            (_, UnitSystem::Metric) => shown,
            (Self::Temperature, UnitSystem::Us) => (shown - 32.0) / F_PER_K,
            (Self::Section, UnitSystem::Us) => section_of(shown),
            (_, UnitSystem::Us) => shown * self.factor(),
        }
    }

    /// Decimals of a value typed in the reader's unit that are worth keeping on screen: what was typed comes back as
    /// it was, although the metric value beside it, or a link, is rounded otherwise.
    #[must_use]
    pub fn field_decimals(self, system: UnitSystem) -> u8 {
        match (self, system) {
            (_, UnitSystem::Metric) => 4,
            (Self::FuelRate, UnitSystem::Us) => 3,
            (Self::Volume | Self::Flow, UnitSystem::Us) => 2,
            (_, UnitSystem::Us) => 1,
        }
    }
}

/// The wire gauge [AWG] of a section [mm2] above 0: 0 is 1/0, -3 is 4/0.
#[must_use]
pub fn gauge_of(section_mm2: f64) -> f64 {
    let diameter_mm = (4.0 * section_mm2 / std::f64::consts::PI).sqrt();
    36.0 - 39.0 * (diameter_mm / 0.127).ln() / 92f64.ln()
}

/// The section [mm2] of a wire gauge [AWG].
#[must_use]
pub fn section_of(gauge: f64) -> f64 {
    let diameter_mm = 0.127 * 92f64.powf((36.0 - gauge) / 39.0);
    std::f64::consts::PI / 4.0 * diameter_mm * diameter_mm
}

/// A wire gauge written as `2/0`, if `text` is one: the gauge as a number, 1/0 as 0.
#[must_use]
pub fn gauge_in_noughts(text: &str) -> Option<f64> {
    let noughts: u8 = text.trim().strip_suffix("/0")?.trim_end().parse().ok()?;
    (1..=6).contains(&noughts).then(|| 1.0 - f64::from(noughts))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(a: f64, b: f64, within: f64) -> bool {
        (a - b).abs() <= within
    }

    /// Exact by definition: NIST Handbook 44 appendix C (from memory); 32 °F and 212 °F are 0 °C and 100 °C,
    /// −40 is the same on both scales.
    #[test]
    fn exact_definitions() {
        let us = UnitSystem::Us;
        for (measure, shown, metric) in [
            (Measure::Temperature, 32.0, 0.0),
            (Measure::Temperature, 212.0, 100.0),
            (Measure::Temperature, -40.0, -40.0),
            (Measure::TemperatureDifference, 9.0, 5.0),
            (Measure::Volume, 1.0, 3.785_411_784),
            (Measure::Flow, 1.0, 3.785_411_784),
            (Measure::FuelRate, 1.0, 3.785_411_784),
            (Measure::Length, 1.0, 0.3048),
            (Measure::Distance, 1.0, 1.609_344),
            (Measure::Distance, 1.0, 5280.0 * 0.3048 / 1000.0),
            (Measure::Weight, 1.0, 0.453_592_37),
            (Measure::Opening, 1.0, 2.54 * 2.54),
            (Measure::AirFlow, 1.0, 0.028_316_846_592),
        ] {
            assert!(near(measure.metric(us, shown), metric, 1e-12), "{measure:?} {shown}");
            assert!(near(measure.shown(us, metric), shown, 1e-12), "{measure:?} {metric}");
        }
    }

    /// ASTM B258: 0000 is 0.4600 in and 36 is 0.0050 in by definition; table values of the section [mm2]
    /// (from memory): 4/0 107.2, 2/0 67.43, 1/0 53.49, 2 33.62, 6 13.30, 10 5.261, 14 2.081, 18 0.823.
    #[test]
    fn gauges_of_astm_b258() {
        for (gauge, section_mm2) in [
            (-3.0, 107.2),
            (-1.0, 67.43),
            (0.0, 53.49),
            (2.0, 33.62),
            (6.0, 13.30),
            (10.0, 5.261),
            (14.0, 2.081),
            (18.0, 0.823),
        ] {
            assert!(
                near(section_of(gauge) / section_mm2, 1.0, 5e-4),
                "{gauge}: {}",
                section_of(gauge)
            );
            assert!(near(gauge_of(section_of(gauge)), gauge, 1e-9), "{gauge}");
        }
        assert_eq!(gauge_in_noughts("4/0"), Some(-3.0));
        assert_eq!(gauge_in_noughts(" 1/0 "), Some(0.0));
        for text in ["0/0", "7/0", "4", "/0", "a/0", "4/1"] {
            assert_eq!(gauge_in_noughts(text), None, "{text}");
        }
    }

    #[test]
    fn metric_readers_see_what_is_stored() {
        for measure in Measure::ALL {
            assert_eq!(measure.shown(UnitSystem::Metric, 7.25), 7.25);
            assert_eq!(measure.metric(UnitSystem::Metric, 7.25), 7.25);
        }
    }

    /// Typed, stored, shown again: the figure that was typed, also where a link rounds to a tenth.
    #[test]
    fn what_is_typed_comes_back() {
        let us = UnitSystem::Us;
        for measure in Measure::ALL {
            let scale = 10f64.powi(i32::from(measure.field_decimals(us)));
            for tenths in 1..2000 {
                let typed = (f64::from(tenths) / 10.0 * scale).round() / scale;
                if measure == Measure::Section && typed > 20.0 {
                    continue;
                }
                let back = measure.shown(us, measure.metric(us, typed));
                assert_eq!((back * scale).round() / scale, typed, "{measure:?}");
            }
        }
        for fahrenheit in -40..=120 {
            let typed = f64::from(fahrenheit);
            let linked = (Measure::Temperature.metric(us, typed) * 10.0).round() / 10.0;
            let back = Measure::Temperature.shown(us, linked);
            assert!(near(back, typed, 0.0901), "{typed} comes back as {back}");
        }
    }

    #[test]
    fn regions() {
        assert_eq!(UnitSystem::of_region("US"), UnitSystem::Us);
        assert_eq!(UnitSystem::of_region("pr"), UnitSystem::Us);
        for region in ["GB", "CA", "AU", "DE", ""] {
            assert_eq!(UnitSystem::of_region(region), UnitSystem::Metric, "{region}");
        }
    }
}
