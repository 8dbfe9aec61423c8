//! What a measurement yields: the result, how far it may be off, what makes it doubtful, or why it
//! cannot be.

use crate::model::{Draw, DrawSource, DutyCycle, Load, Usage};
use crate::units::{Amps, Celsius, Hours, WattHours, Watts};

/// Field of a reading, to say at which one an input is wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// Current.
    Current,
    /// Voltage.
    Voltage,
    /// Power.
    Power,
    /// Energy.
    Energy,
    /// Charge.
    Charge,
    /// Time watched.
    Elapsed,
    /// Time it ran.
    Ran,
    /// Accuracy of the instrument.
    Accuracy,
    /// Air temperature.
    Air,
    /// Other loads running meanwhile.
    Background,
    /// What the sun could deliver.
    Sun,
}

/// Readings that cannot be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MeasureError {
    /// Not a number, or beyond any sense.
    OutOfRange(Field),
    /// Must be more than nothing.
    NotPositive(Field),
    /// After must be more than before.
    NoDifference {
        /// After less before, in the unit of the reading.
        difference: f64,
    },
    /// It cannot run longer than it was watched.
    RanLongerThanWatched {
        /// Time it ran.
        ran: Hours,
        /// Time watched.
        watched: Hours,
    },
    /// The other loads alone explain the reading.
    BackgroundExplainsAll {
        /// Energy of the other loads.
        background: WattHours,
        /// Energy read.
        read: WattHours,
    },
    /// Too cold for a fridge to tell what it needs at 25 degrees Celsius.
    AirTooCold {
        /// Air.
        air: Celsius,
    },
}

/// Conditions that make a result doubtful.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MeasureWarning {
    /// The last digit is more than a tenth of the reading.
    CoarseReading {
        /// Half of the last digit over the reading.
        share_frac: f64,
    },
    /// More current than a multimeter's input carries: use a clamp or a shunt.
    AboveMultimeter {
        /// Current read.
        current: Amps,
    },
    /// The battery was still taking all the sun: the controller then shows the same with and
    /// without the device.
    BatteryNotFull,
    /// The charge current was still falling by itself.
    StillAbsorbing,
    /// The controller was at what the sun could deliver: part came from the battery.
    SunTooWeak {
        /// Controller with the device on.
        on: Amps,
        /// What the sun could deliver.
        could: Amps,
    },
    /// Nothing tells how much the sun could deliver.
    SunUnknown,
    /// The sun, or other loads, changed meanwhile.
    Drifted {
        /// Change over the result.
        share_frac: f64,
    },
    /// Something charged meanwhile: the monitor shows the difference only.
    ChargedMeanwhile,
    /// Below what a battery monitor counts.
    BelowMonitorThreshold {
        /// Current found.
        current: Amps,
    },
    /// Watched for less than a day: habits of the rest of the day are missing.
    LessThanADay {
        /// Time watched.
        watched: Hours,
    },
    /// Fewer than three cycles of the thermostat.
    FewCycles {
        /// Cycles seen.
        cycles: u32,
    },
    /// It never stopped: still cooling down, or it cannot keep cold.
    NeverStopped,
    /// Meters for sine voltage read an inverter of another waveform wrongly.
    NotASine,
}

/// What was learned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Quantity {
    /// Draw while running.
    Draw(Draw),
    /// Energy a day, at the socket.
    PerDay(WattHours),
    /// Share of the time running.
    Duty {
        /// As seen, 0..1.
        seen_frac: f64,
        /// At 25 degrees Celsius, 0..1.
        frac_at_25c: f64,
    },
}

/// Result of a measurement.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// What was learned, of one appliance.
    pub found: Quantity,
    /// The same on the battery side of the inverter, where it was read on the mains side.
    pub battery_side: Option<Watts>,
    /// Likely error as a share of the result, 0..1; 1 means it tells next to nothing.
    pub plus_minus_frac: f64,
    /// What makes it doubtful.
    pub warnings: Vec<MeasureWarning>,
    /// How a load that takes it over knows its draw.
    pub draw_source: DrawSource,
}

impl Measured {
    pub(super) fn new(
        found: Quantity,
        plus_minus_frac: f64,
        warnings: Vec<MeasureWarning>,
    ) -> Self {
        let plus_minus_frac =
            if plus_minus_frac.is_finite() { plus_minus_frac.min(1.0) } else { 1.0 };
        Self {
            found,
            battery_side: None,
            plus_minus_frac,
            warnings,
            draw_source: DrawSource::Meter,
        }
    }

    /// The load with what was learned in it. A duty found keeps the draw; an energy a day takes
    /// the place of the rule of use.
    #[must_use]
    pub fn applied_to(&self, load: &Load) -> Load {
        let mut load = load.clone();
        match self.found {
            Quantity::Draw(draw) => load.draw = draw,
            Quantity::PerDay(per_day) => load.usage = Usage::Energy { per_day },
            Quantity::Duty { frac_at_25c, .. } => {
                load.usage = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } };
            }
        }
        load.draw_source = self.draw_source;
        load.spread_frac = Some(self.plus_minus_frac);
        load
    }
}
