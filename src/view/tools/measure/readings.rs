//! The readings typed on the bench, and the measurement worked out from them.

use super::method::Method;
use crate::advice::on_site::measure::{
    Accuracy, ChargeStage, ControllerReading, Field, FridgeRuns, Instrument, MeasureError,
    Measured, MonitorReading, Running, battery_monitor, behind_inverter, could_deliver,
    energy_over_time, fridge_runs, series_current, series_power, solar_controller,
};
use crate::model::Setup;
use crate::units::{AmpHours, Amps, Celsius, Hours, Volts, WattHours, Watts};

/// Brightness of the sun just then, as a share of full sun; the first is "not known" (common
/// practice, no source).
pub(super) const SUN_FRAC: [Option<f64>; 4] = [None, Some(1.0), Some(0.5), Some(0.15)];
/// Error of an air temperature read off or guessed [K].
const AIR_ERROR_K: f64 = 2.0;

/// Everything that can be typed on the bench; each method uses its own.
#[derive(Clone, Debug, PartialEq)]
pub struct Readings {
    /// Current [A].
    pub current_a: Option<f64>,
    /// Voltage meanwhile [V].
    pub voltage_v: Option<f64>,
    /// Power [W].
    pub power_w: Option<f64>,
    /// Energy [Wh].
    pub energy_wh: Option<f64>,
    /// Time watched [h].
    pub hours: Option<f64>,
    /// It ran all the time rather than as usual.
    pub throughout: bool,
    /// Energy was read at the socket of the inverter rather than on the battery side.
    pub at_socket: bool,
    /// A clamp rather than a meter in series.
    pub clamp: bool,
    /// Controller with the device off, before [A].
    pub off_before_a: Option<f64>,
    /// Controller with the device on [A].
    pub on_a: Option<f64>,
    /// Controller with the device off again [A].
    pub off_after_a: Option<f64>,
    /// What the controller says it does.
    pub stage: ChargeStage,
    /// Place in `SUN_FRAC`.
    pub sun: usize,
    /// Used since full, before [Ah].
    pub before_ah: Option<f64>,
    /// Used since full, after [Ah].
    pub after_ah: Option<f64>,
    /// What else drew meanwhile [A].
    pub background_a: Option<f64>,
    /// Something charged meanwhile.
    pub charged: bool,
    /// The inverter makes a pure sine.
    pub sine: bool,
    /// Time the compressor ran [min].
    pub ran_min: Option<f64>,
    /// Runs counted.
    pub cycles: Option<f64>,
    /// Air around the fridge.
    pub air_c: Option<f64>,
    /// Likely error of the meter as a share, where it is known better than usual.
    pub gain_frac: Option<f64>,
    /// Its last digit, in the unit of the reading.
    pub resolution: Option<f64>,
}

impl Default for Readings {
    fn default() -> Self {
        Self {
            current_a: None,
            voltage_v: None,
            power_w: None,
            energy_wh: None,
            hours: None,
            throughout: true,
            at_socket: false,
            clamp: false,
            off_before_a: None,
            on_a: None,
            off_after_a: None,
            stage: ChargeStage::Float,
            sun: 0,
            before_ah: None,
            after_ah: None,
            background_a: None,
            charged: false,
            sine: true,
            ran_min: None,
            cycles: None,
            air_c: None,
            gain_frac: None,
            resolution: None,
        }
    }
}

impl Readings {
    fn accuracy(&self, instrument: Instrument) -> Accuracy {
        let usual = instrument.usual();
        Accuracy {
            gain_frac: self.gain_frac.unwrap_or(usual.gain_frac),
            resolution: self.resolution.unwrap_or(usual.resolution),
        }
    }

    /// The instrument a method is read with.
    #[must_use]
    pub fn instrument(&self, method: Method) -> Option<Instrument> {
        match method {
            Method::Current if self.clamp => Some(Instrument::Clamp),
            Method::Current => Some(Instrument::Multimeter),
            Method::Power | Method::Energy | Method::Socket => Some(Instrument::PowerMeter),
            Method::Controller => Some(Instrument::SolarController),
            Method::Monitor => Some(Instrument::ShuntMonitor),
            Method::Fridge => None,
        }
    }

    /// It was read at the socket, behind the inverter.
    #[must_use]
    pub fn is_at_socket(&self, method: Method) -> bool {
        match method {
            Method::Socket => true,
            Method::Energy => self.at_socket,
            _ => false,
        }
    }

    /// What the readings say; `None` while some are missing.
    #[must_use]
    pub fn measured(
        &self,
        method: Method,
        setup: &Setup,
    ) -> Option<Result<Measured, MeasureError>> {
        let accuracy = self.instrument(method).map(|instrument| self.accuracy(instrument));
        Some(match method {
            Method::Current => {
                let (current, voltage) = (Amps(self.current_a?), Volts(self.voltage_v?));
                let instrument = self.instrument(method)?;
                series_current(current, voltage, instrument, accuracy?)
            }
            Method::Power => series_power(Watts(self.power_w?), accuracy?),
            Method::Energy => energy_over_time(
                WattHours(self.energy_wh?),
                Hours(self.hours?),
                self.running(),
                accuracy?,
            ),
            Method::Controller => {
                let (voltage, accuracy) = (Volts(self.voltage_v?), accuracy?);
                let reading = ControllerReading {
                    off_before: Amps(self.off_before_a?),
                    on: Amps(self.on_a?),
                    off_after: Amps(self.off_after_a?),
                    voltage,
                    stage: self.stage,
                    could: None,
                };
                self.could(setup, voltage).and_then(|could| {
                    solar_controller(ControllerReading { could, ..reading }, accuracy)
                })
            }
            Method::Monitor => battery_monitor(
                MonitorReading {
                    before: AmpHours(self.before_ah?),
                    after: AmpHours(self.after_ah?),
                    voltage: Volts(self.voltage_v?),
                    elapsed: Hours(self.hours?),
                    background: Amps(self.background_a.unwrap_or(0.0)),
                    charged: self.charged,
                    running: self.running(),
                },
                accuracy?,
            ),
            Method::Socket => {
                behind_inverter(Watts(self.power_w?), &setup.inverter, self.sine, accuracy?)
            }
            Method::Fridge => {
                let cycles = self.cycles?;
                if !(0.0..=10_000.0).contains(&cycles) {
                    return Some(Err(MeasureError::OutOfRange(Field::Ran)));
                }
                fridge_runs(FridgeRuns {
                    ran: Hours::from_minutes(self.ran_min?),
                    watched: Hours(self.hours?),
                    cycles: cycles.round() as u32,
                    air: Celsius(self.air_c?),
                    air_error_k: AIR_ERROR_K,
                })
            }
        })
    }

    fn running(&self) -> Running {
        if self.throughout { Running::Throughout } else { Running::AsUsual }
    }

    /// What the panels could deliver just then, where the sky is known.
    fn could(&self, setup: &Setup, voltage: Volts) -> Result<Option<Amps>, MeasureError> {
        let peak = setup.solar_peak();
        match SUN_FRAC.get(self.sun).copied().flatten() {
            Some(sun_frac) if peak.0 > 0.0 => could_deliver(peak, sun_frac, voltage).map(Some),
            _ => Ok(None),
        }
    }
}
