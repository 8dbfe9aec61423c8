//! How much current a cable carries for good, and how warm it gets.
//!
//! - I_z(A): current at which a single conductor in 30 degrees Celsius air reaches the temperature
//!   its insulation stands, ISO 10133 table A.1 (from memory, medium confidence: editions and
//!   column headings differ; a cable maker's own figure comes first).
//! - Ambient: heat leaves in proportion to the temperature difference and is made in proportion to
//!   I^2, so the current falls by sqrt((T_ins - T_amb) / (T_ins - 30)).
//! - Bundles: 1 to 3 conductors 1.0, 4 to 6 0.7, 7 to 24 0.6, 25 and more 0.5 (boat wiring
//!   practice, from memory): the factor k_bundle.
//! - Conductor temperature at I: T_amb + (T_ins - 30) (I / (I_z k_bundle))^2.

use super::cable;
use crate::model::ConductorSize;
use crate::units::{Amps, Celsius, SquareMillimetres};

/// Ambient temperature the table holds for [degrees Celsius].
pub const TABLE_AMBIENT: Celsius = Celsius(30.0);
/// Thinnest single conductor, ISO 10133 (0.75 mm2 in a multicore cable).
pub const MIN_AREA: SquareMillimetres = SquareMillimetres(1.0);

/// Temperature the insulation stands for good.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Insulation {
    /// 70 degrees Celsius, ordinary PVC.
    #[default]
    C70,
    /// 105 degrees Celsius, heat-resistant.
    C105,
}

impl Insulation {
    /// The temperature [degrees Celsius].
    #[must_use]
    pub fn limit(self) -> Celsius {
        match self {
            Self::C70 => Celsius(70.0),
            Self::C105 => Celsius(105.0),
        }
    }
}

/// Where a cable lies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Surroundings {
    /// Insulation.
    pub insulation: Insulation,
    /// Air around it [degrees Celsius].
    pub ambient: Celsius,
    /// Current-carrying conductors lying together, its own return included.
    pub bundled: u8,
}

impl Default for Surroundings {
    fn default() -> Self {
        Self { insulation: Insulation::C70, ambient: TABLE_AMBIENT, bundled: 2 }
    }
}

/// Cross-section [mm2], current with insulation for 70 and for 105 degrees Celsius [A].
pub const ISO_10133_TABLE: [(f64, f64, f64); 12] = [
    (1.0, 14.0, 20.0),
    (1.5, 18.0, 25.0),
    (2.5, 25.0, 35.0),
    (4.0, 35.0, 45.0),
    (6.0, 45.0, 60.0),
    (10.0, 65.0, 90.0),
    (16.0, 90.0, 130.0),
    (25.0, 120.0, 170.0),
    (35.0, 160.0, 210.0),
    (50.0, 210.0, 270.0),
    (70.0, 265.0, 330.0),
    (95.0, 310.0, 390.0),
];

/// Continuous current of one conductor in 30 degrees Celsius air, lying alone.
///
/// Sizes between two of the table (wire gauges) run straight on logarithmic scales. Below 1 mm2
/// the current falls with the area, above 95 mm2 it grows with its square root: own
/// extrapolations, both on the careful side.
#[must_use]
pub fn table_current(area: SquareMillimetres, insulation: Insulation) -> Amps {
    if area.0.is_nan() || area.0 <= 0.0 {
        return Amps::ZERO;
    }
    let mut below: Option<(f64, f64)> = None;
    for &(size, at_70, at_105) in &ISO_10133_TABLE {
        let current = match insulation {
            Insulation::C70 => at_70,
            Insulation::C105 => at_105,
        };
        if area.0 == size {
            return Amps(current);
        }
        if area.0 < size {
            return match below {
                None => Amps(current * area.0 / size),
                Some((thin, less)) => {
                    let share = (area.0 / thin).ln() / (size / thin).ln();
                    Amps(less * (current / less).powf(share))
                }
            };
        }
        below = Some((size, current));
    }
    below.map_or(Amps::ZERO, |(thick, most)| Amps(most * (area.0 / thick).sqrt()))
}

/// Factor for several conductors lying together.
#[must_use]
pub fn bundle_factor(conductors: u8) -> f64 {
    match conductors {
        0..=3 => 1.0,
        4..=6 => 0.7,
        7..=24 => 0.6,
        _ => 0.5,
    }
}

/// Factor for air warmer or colder than 30 degrees Celsius; 0 where the air alone reaches the
/// limit of the insulation. Cold air counts no more than 20 degrees' worth.
#[must_use]
pub fn ambient_factor(limit: Celsius, ambient: Celsius) -> f64 {
    let room = (limit.0 - ambient.0.max(20.0)).max(0.0);
    (room / (limit.0 - TABLE_AMBIENT.0).max(1.0)).sqrt()
}

/// Continuous current of a conductor where it lies, all factors included.
#[must_use]
pub fn ampacity(size: ConductorSize, place: Surroundings) -> Amps {
    table_current(cable::area(size), place.insulation)
        * bundle_factor(place.bundled)
        * ambient_factor(place.insulation.limit(), place.ambient)
}

/// Estimated temperature of the conductor at `current` held for good; above the insulation's
/// limit the cable is too thin.
#[must_use]
pub fn conductor_temperature(size: ConductorSize, current: Amps, place: Surroundings) -> Celsius {
    let alone = table_current(cable::area(size), place.insulation) * bundle_factor(place.bundled);
    let ratio = if alone.0 > 0.0 { current / alone } else { f64::INFINITY };
    let rise = (place.insulation.limit().0 - TABLE_AMBIENT.0) * ratio * ratio;
    Celsius(place.ambient.0 + rise.min(1000.0))
}
