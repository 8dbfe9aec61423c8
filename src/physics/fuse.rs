//! Fuses: which ratings exist, which one protects a cable, and what they can interrupt.
//!
//! - Window: 1.25 I_load <= I_fuse <= I_z of the cable where it lies (common practice and boat
//!   wiring standards, from memory). The fuse protects the cable, so the upper end is never passed.
//! - A fuse needs far more than its rating to open soon: a 10 A blade may carry 13.5 A for ten
//!   minutes (ISO 8820-3, from memory).
//! - Prospective current of a short at the battery: I_k = U / (R_battery + R_cable). A fuse must be
//!   able to interrupt it, or it burns on as an arc.

use crate::units::{Amps, Ohms, Volts};

/// Fuse rating over continuous load.
pub const LOAD_MARGIN: f64 = 1.25;

/// Make of a fuse.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FuseKind {
    /// Blade, ISO 8820-3 type C, 32 V.
    Blade,
    /// Large blade, ISO 8820-3 type E, 32 V.
    LargeBlade,
    /// Bolted strip, ISO 8820-5, 32 V.
    Bolted,
    /// Bolted, current-limiting with high interrupting rating, class T.
    ClassT,
}

impl FuseKind {
    /// All kinds, the simplest first.
    pub const ALL: [Self; 4] = [Self::Blade, Self::LargeBlade, Self::Bolted, Self::ClassT];

    /// Ratings [A], rising. Blades: ISO 8820-3; bolted and class T: as commonly sold (all from
    /// memory).
    #[must_use]
    pub fn ratings(self) -> &'static [f64] {
        match self {
            Self::Blade => {
                &[1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0]
            }
            Self::LargeBlade => &[20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0],
            Self::Bolted => &[
                30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 100.0, 125.0, 150.0, 175.0, 200.0, 225.0,
                250.0, 300.0, 350.0, 400.0, 500.0,
            ],
            Self::ClassT => &[
                35.0, 40.0, 45.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0, 110.0, 125.0, 150.0, 175.0,
                200.0, 225.0, 250.0, 300.0, 350.0, 400.0, 450.0, 500.0, 600.0,
            ],
        }
    }

    /// Current it can usually interrupt at its rated dc voltage [A]: blades 1 kA, bolted strips
    /// 2 kA, class T 20 kA (from memory; the maker's figure comes first).
    #[must_use]
    pub fn interrupting(self) -> Amps {
        match self {
            Self::Blade | Self::LargeBlade => Amps(1_000.0),
            Self::Bolted => Amps(2_000.0),
            Self::ClassT => Amps(20_000.0),
        }
    }
}

/// A fuse to fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FuseChoice {
    /// Make.
    pub kind: FuseKind,
    /// Rating [A].
    pub rating: Amps,
    /// It cannot itself interrupt the prospective current: fit it only behind a main fuse at the
    /// battery that can.
    pub needs_main_fuse: bool,
}

/// Span a fuse rating must lie in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FuseWindow {
    /// Least rating [A]: 1.25 times the continuous load.
    pub from: Amps,
    /// Largest rating [A]: what the cable carries.
    pub to: Amps,
}

impl FuseWindow {
    /// Of a load and the cable's continuous current where it lies.
    #[must_use]
    pub fn of(continuous: Amps, ampacity: Amps) -> Self {
        Self { from: continuous * LOAD_MARGIN, to: ampacity }
    }

    /// Whether a rating lies in it.
    #[must_use]
    pub fn holds(self, rating: Amps) -> bool {
        rating >= self.from && rating <= self.to
    }
}

/// Largest fuse of a circuit behind the main fuse, the end of the small blades; anything larger is
/// taken to stand at the battery (common practice, no source).
pub const CIRCUIT_FUSE: Amps = Amps(40.0);

/// Start over rating up to which a fuse can be trusted to hold a short start: twice the rating is
/// carried for at least 0.15 s (ISO 8820-3, from memory).
pub const START_LIMIT: f64 = 2.0;

/// The fuse for a load of `continuous` and `start` current on a cable that carries `ampacity`,
/// where a short could draw `prospective`.
///
/// The smallest rating in the window that also holds the start; if none holds the start, the largest
/// in the window. A circuit of up to [`CIRCUIT_FUSE`] takes the simplest kind of that rating, which
/// stands behind a main fuse where it cannot interrupt the prospective current. A larger fuse stands
/// at the battery itself: kinds that can interrupt the prospective current go first. `None` if no
/// rating lies in the window: the cable is too thin for the load.
#[must_use]
pub fn choose(
    continuous: Amps,
    start: Amps,
    ampacity: Amps,
    prospective: Amps,
) -> Option<FuseChoice> {
    let window = FuseWindow::of(continuous, ampacity);
    let all: Vec<FuseChoice> = FuseKind::ALL
        .into_iter()
        .flat_map(|kind| kind.ratings().iter().map(move |&amps| (kind, Amps(amps))))
        .filter(|(_, rating)| window.holds(*rating))
        .map(|(kind, rating)| FuseChoice {
            kind,
            rating,
            needs_main_fuse: kind.interrupting() < prospective,
        })
        .collect();
    let smaller = |a: FuseChoice, b: FuseChoice| if b.rating < a.rating { b } else { a };
    let larger = |a: FuseChoice, b: FuseChoice| if b.rating > a.rating { b } else { a };
    let best = |of: &[FuseChoice]| {
        let holding = of.iter().filter(|choice| choice.rating * START_LIMIT >= start).copied();
        holding.reduce(smaller).or_else(|| of.iter().copied().reduce(larger))
    };
    let any = best(&all)?;
    if any.rating <= CIRCUIT_FUSE {
        return Some(any);
    }
    let strong: Vec<FuseChoice> =
        all.iter().filter(|choice| !choice.needs_main_fuse).copied().collect();
    best(&strong).or(Some(any))
}

/// Current of a short circuit [A] behind a battery of open-circuit voltage `open_circuit`:
/// U / (R_battery + R_cable). Infinite for no resistance at all.
#[must_use]
pub fn prospective_current(open_circuit: Volts, battery: Ohms, cable: Ohms) -> Amps {
    let total = battery.0.max(0.0) + cable.0.max(0.0);
    if total > 0.0 { open_circuit / Ohms(total) } else { Amps(f64::INFINITY) }
}
