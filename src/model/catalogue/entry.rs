//! One entry of the catalogue, and the few words its tables are written in.

use crate::model::{
    CutOut, Draw, DrawSource, DutyCycle, Feed, Group, Load, LoadPlace, SystemVoltage, Usage, Window,
};
use crate::units::{Litres, LitresPerMinute, MilliAmpHours, Volts, WattHours, Watts};

/// What to say, there and then, to someone who adds the appliance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Caution {
    /// Health depends on it: keep a second source of power; a forecast is no guarantee.
    Medical,
    /// Meant to run on the engine only; flattens a battery in hours when parked.
    DrivingOnly,
    /// Heats with electricity or cools like an air conditioner: high current through inverter,
    /// cables and fuse, and much energy.
    Heavy,
    /// Burns gas or diesel: flue sealed, vents clear, carbon monoxide alarm fitted.
    Combustion,
    /// Also a field of the inverter or the solar controller; enter it in one place only.
    CountedElsewhere,
}

/// An appliance as the catalogue knows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Appliance {
    /// Number, the same for ever; links carry it.
    pub id: u16,
    /// Message that holds its name.
    pub key: &'static str,
    /// Search words in English, German, French and Dutch, space between.
    pub words: &'static str,
    /// Group.
    pub group: Group,
    /// A frugal one, running [W].
    pub low: Watts,
    /// A usual one, running [W].
    pub typical: Watts,
    /// A hungry one, running [W].
    pub high: Watts,
    /// Feed.
    pub feed: Feed,
    /// Whose air it usually stands in.
    pub place: LoadPlace,
    /// Usual use.
    pub usage: Usage,
    /// Usual time of day.
    pub window: Window,
    /// Draw while connected and not in use [W].
    pub standby: Watts,
    /// Starting draw over running draw, 1 for none.
    pub surge_factor: f64,
    /// It has a low-voltage cut-out of its own.
    pub cuts_out: bool,
    /// It protects or has to run: nobody is told to switch it off or to use it less.
    pub stays_on: bool,
    /// There is no adapter to run it from the battery without an inverter.
    pub mains_only: bool,
    /// Cautions to show.
    pub cautions: &'static [Caution],
}

/// Cut-out of a compressor fridge in a 12 V system: off below 10.4 V, on again above 11.7 V
/// (a maker's default setting; others differ by a few tenths).
pub const FRIDGE_CUT_OUT_12V: CutOut = CutOut { off: Volts(10.4), on: Volts(11.7) };
/// The same controller in a 24 V system: 22.8 V and 24.2 V, here per 12 V nominal.
pub const FRIDGE_CUT_OUT_24V: CutOut = CutOut { off: Volts(11.4), on: Volts(12.1) };

impl Appliance {
    /// A row for it with the usual figures, on a system of this voltage.
    ///
    /// The name stays empty, so the page shows it in the reader's language.
    #[must_use]
    pub fn to_load(&self, id: u32, system: SystemVoltage) -> Load {
        let cut_out = match system {
            SystemVoltage::V12 => FRIDGE_CUT_OUT_12V,
            SystemVoltage::V24 => FRIDGE_CUT_OUT_24V,
        };
        Load {
            id,
            appliance: Some(self.id),
            name: String::new(),
            group: self.group,
            quantity: 1,
            draw_source: DrawSource::Estimate,
            draw: Draw::Power { watts: self.typical },
            spread_frac: None,
            feed: self.feed,
            place: self.place,
            usage: self.usage,
            standby: self.standby,
            window: self.window,
            more_windows: Vec::new(),
            surge_factor: self.surge_factor,
            cut_out: self.cuts_out.then_some(cut_out),
            enabled: true,
        }
    }

    /// Whether `caution` has to be shown.
    #[must_use]
    pub fn has(&self, caution: Caution) -> bool {
        self.cautions.contains(&caution)
    }

    pub(super) const fn at(mut self, window: Window) -> Self {
        self.window = window;
        self
    }

    pub(super) const fn standby(mut self, watts: f64) -> Self {
        self.standby = Watts(watts);
        self
    }

    pub(super) const fn surge(mut self, factor: f64) -> Self {
        self.surge_factor = factor;
        self
    }

    pub(super) const fn cuts_out(mut self) -> Self {
        self.cuts_out = true;
        self
    }

    pub(super) const fn stays_on(mut self) -> Self {
        self.stays_on = true;
        self
    }

    pub(super) const fn mains_only(mut self) -> Self {
        self.mains_only = true;
        self
    }

    pub(super) const fn caution(mut self, cautions: &'static [Caution]) -> Self {
        self.cautions = cautions;
        self
    }
}

/// On the battery circuit: number, key, group, low/typical/high [W], use, search words.
pub(super) const fn dc(
    id: u16,
    key: &'static str,
    group: Group,
    watts: [f64; 3],
    usage: Usage,
    words: &'static str,
) -> Appliance {
    Appliance {
        id,
        key,
        words,
        group,
        low: Watts(watts[0]),
        typical: Watts(watts[1]),
        high: Watts(watts[2]),
        feed: Feed::Dc,
        place: LoadPlace::Inside,
        usage,
        window: Window::ALL_DAY,
        standby: Watts(0.0),
        surge_factor: 1.0,
        cuts_out: false,
        stays_on: false,
        mains_only: false,
        cautions: &[],
    }
}

/// Behind the inverter; as [`dc`].
pub(super) const fn ac(
    id: u16,
    key: &'static str,
    group: Group,
    watts: [f64; 3],
    usage: Usage,
    words: &'static str,
) -> Appliance {
    let mut appliance = dc(id, key, group, watts, usage, words);
    appliance.feed = Feed::Inverter;
    appliance
}

/// So many minutes a day.
pub(super) const fn minutes(minutes: f64) -> Usage {
    Usage::Daily { minutes }
}

/// So many hours a day.
pub(super) const fn hours(hours: f64) -> Usage {
    Usage::Daily { minutes: hours * 60.0 }
}

/// By thermostat, following the air temperature: share of the time at 25 degrees Celsius.
pub(super) const fn air_duty(frac_at_25c: f64) -> Usage {
    Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } }
}

/// Heating: heat at full draw [W], energy of a start [Wh].
pub(super) const fn heating(heat: f64, start: f64) -> Usage {
    Usage::Duty { cycle: DutyCycle::Heating { heat: Watts(heat), start: WattHours(start) } }
}

/// Cooling and airing, following the heat outside: share of its times at 25 degrees Celsius.
pub(super) const fn cooling(frac_at_25c: f64) -> Usage {
    Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c } }
}

/// A fixed share of the time.
pub(super) const fn duty(frac: f64) -> Usage {
    Usage::Duty { cycle: DutyCycle::Fixed { frac } }
}

/// So many uses a day of so many seconds.
pub(super) const fn uses(per_day: f64, seconds: f64) -> Usage {
    Usage::Uses { per_day, seconds }
}

/// One charge every so many days of a cell [mAh, V], charger efficiency.
pub(super) const fn charges(every_days: f64, mah: f64, volts: f64, charger_frac: f64) -> Usage {
    Usage::Charges { every_days, cell: MilliAmpHours(mah), cell_volts: Volts(volts), charger_frac }
}

/// Water [L a day] at a flow [L/min].
pub(super) const fn litres(per_day: f64, flow: f64, pumped_twice: bool) -> Usage {
    Usage::Litres { litres_per_day: Litres(per_day), flow: LitresPerMinute(flow), pumped_twice }
}

/// Energy a day [Wh].
pub(super) const fn energy(watt_hours: f64) -> Usage {
    Usage::Energy { per_day: WattHours(watt_hours) }
}
