//! One appliance: how much it draws, how that is known, and how it is used.

use super::sanitise::{DRAW_A, FRAC, MAX_NAME_CHARS, MINUTE_OF_DAY, MINUTES_A_DAY, Sanitiser};
use crate::units::{
    Amps, Hours, Litres, LitresPerMinute, MINUTES_PER_DAY, MilliAmpHours, Volts, WattHours, Watts,
};
use bounds::{
    CELL_MAH, CELL_V, CHARGE_EVERY_DAYS, CONVERTER_FRAC, CUT_OUT_V, DRAW_W, ENERGY_WH_A_DAY,
    FLOW_L_MIN, HEAT_W, LITRES_A_DAY, QUANTITY, SECONDS_A_USE, STANDBY_W, START_WH, STATED_V,
    SURGE_FACTOR, USES_A_DAY,
};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Power of one load [W].
    pub const DRAW_W: Range = Range::new(0.0, 10_000.0);
    /// Voltage a current was read at [V].
    pub const STATED_V: Range = Range::new(1.0, 400.0);
    /// How many of a load.
    pub const QUANTITY: Range = Range::new(1.0, 99.0);
    /// Days between charges.
    pub const CHARGE_EVERY_DAYS: Range = Range::new(0.1, 365.0);
    /// Charge of a small cell [mAh].
    pub const CELL_MAH: Range = Range::new(1.0, 1_000_000.0);
    /// Voltage of a small cell or pack [V].
    pub const CELL_V: Range = Range::new(1.0, 100.0);
    /// Efficiency of a charger or converter.
    pub const CONVERTER_FRAC: Range = Range::new(0.3, 1.0);
    /// Water a day [L].
    pub const LITRES_A_DAY: Range = Range::new(0.0, 1_000.0);
    /// Flow of a pump [L/min].
    pub const FLOW_L_MIN: Range = Range::new(0.5, 100.0);
    /// Uses a day.
    pub const USES_A_DAY: Range = Range::new(0.0, 1_000.0);
    /// Seconds a use.
    pub const SECONDS_A_USE: Range = Range::new(0.0, 86_400.0);
    /// Energy a day of one load [Wh].
    pub const ENERGY_WH_A_DAY: Range = Range::new(0.0, 100_000.0);
    /// Heat of a heater [W].
    pub const HEAT_W: Range = Range::new(100.0, 20_000.0);
    /// Energy of one start of a heater [Wh].
    pub const START_WH: Range = Range::new(0.0, 50.0);
    /// Standby draw of one load [W].
    pub const STANDBY_W: Range = Range::new(0.0, 500.0);
    /// Starting over running draw.
    pub const SURGE_FACTOR: Range = Range::new(1.0, 10.0);
    /// Cut-out voltages [V].
    pub const CUT_OUT_V: Range = Range::new(5.0, 32.0);
}

/// Part of life a load belongs to; only sorts and sums, changes no figure.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize,
)]
#[serde(rename_all = "snake_case")]
pub enum Group {
    /// Refrigeration.
    Cold,
    /// Heating and its fans.
    Heat,
    /// Fans and air conditioning.
    Air,
    /// Pumps and tanks.
    Water,
    /// Lamps.
    Light,
    /// Screens, computers, phones, sound.
    Screens,
    /// Routers, satellite terminals.
    Net,
    /// Medical devices.
    Health,
    /// Cooking.
    Kitchen,
    /// Hair, teeth, laundry.
    Body,
    /// Tools and rechargeable vehicles.
    Tools,
    /// Movers, steps, levelling.
    Vehicle,
    /// What draws when everything seems off.
    Standby,
    /// Anything else.
    #[default]
    Other,
}

impl Group {
    /// All groups, in the order they are listed.
    pub const ALL: [Self; 14] = [
        Self::Cold,
        Self::Heat,
        Self::Air,
        Self::Water,
        Self::Light,
        Self::Screens,
        Self::Net,
        Self::Health,
        Self::Kitchen,
        Self::Body,
        Self::Tools,
        Self::Vehicle,
        Self::Standby,
        Self::Other,
    ];
}

/// How the draw is known; decides how far the answer may be off.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DrawSource {
    /// Measured on this appliance.
    Meter,
    /// From the maker's specification: consumption in use.
    SpecSheet,
    /// From the rating plate: the most it may draw, usually more than it does.
    Label,
    /// Guessed from what is usual.
    #[default]
    Estimate,
}

/// How much it draws while it runs. Either way of typing is kept; the other follows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Draw {
    /// Power while running [W]. For a load behind the inverter: on the mains side.
    Power {
        /// Power [W].
        watts: Watts,
    },
    /// Current while running [A] at a stated voltage [V].
    Current {
        /// Current [A].
        amps: Amps,
        /// Voltage the current was read at [V].
        volts: Volts,
    },
}

impl Default for Draw {
    fn default() -> Self {
        Self::Power { watts: Watts::ZERO }
    }
}

impl Draw {
    /// Power while running [W]: as typed, or current times its stated voltage.
    #[must_use]
    pub fn watts(self) -> Watts {
        match self {
            Self::Power { watts } => watts,
            Self::Current { amps, volts } => amps * volts,
        }
    }

    /// Current while running [A] at `volts`.
    ///
    /// A current typed at one voltage is carried to another by equal power, since most appliances
    /// with electronics draw constant power.
    #[must_use]
    pub fn amps_at(self, volts: Volts) -> Amps {
        if volts.0 > 0.0 { self.watts() / volts } else { Amps::ZERO }
    }
}

/// Where its power comes from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Feed {
    /// Straight from the battery circuit.
    #[default]
    Dc,
    /// Mains voltage made by the inverter.
    Inverter,
}

/// Whose air it stands in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum LoadPlace {
    /// In the living space: as warm as it is inside.
    #[default]
    Inside,
    /// Outside, in an awning or under the bonnet: as warm as the air.
    Outside,
}

impl LoadPlace {
    /// All places, in the order they are listed.
    pub const ALL: [Self; 2] = [Self::Inside, Self::Outside];
}

/// Share of the time a thermostat lets it run.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DutyCycle {
    /// The same all day: share of the time running, 0..1.
    Fixed {
        /// Share of the time running, 0..1.
        frac: f64,
    },
    /// Follows the air temperature where it stands, as a compressor fridge does.
    AirTemperature {
        /// Share of the time running at 25 degrees Celsius, 0..1.
        frac_at_25c: f64,
    },
    /// Heats the vehicle: follows what the vehicle loses between inside and outside.
    Heating {
        /// Heat given at its full draw [W].
        heat: Watts,
        /// Energy of one start, glow plug or igniter [Wh].
        start: WattHours,
    },
    /// Cools or airs: follows the heat outside.
    Cooling {
        /// Share of the time running at 25 degrees Celsius outside, 0..1.
        frac_at_25c: f64,
    },
}

/// How it is used. Each rule turns into energy a day and a draw by hour.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Usage {
    /// So long a day.
    Daily {
        /// Running time a day [min], 0..1440.
        minutes: f64,
    },
    /// Never off.
    AlwaysOn,
    /// Runs a share of the time, by thermostat.
    Duty {
        /// The share.
        cycle: DutyCycle,
    },
    /// Charges a device with a cell of its own.
    Charges {
        /// One full charge every so many days, at least 0.1.
        every_days: f64,
        /// Rated charge of the cell [mAh].
        cell: MilliAmpHours,
        /// The cell's own voltage [V], 3.6 to 3.85 for one lithium cell.
        cell_volts: Volts,
        /// Energy into the cell over energy drawn from the socket, 0..1.
        charger_frac: f64,
    },
    /// Pumps water.
    Litres {
        /// Water used a day [L].
        litres_per_day: Litres,
        /// What the pump moves [L/min].
        flow: LitresPerMinute,
        /// The same water is pumped aboard first and out of the tap later.
        pumped_twice: bool,
    },
    /// Short uses.
    Uses {
        /// Uses a day.
        per_day: f64,
        /// Length of one use [s].
        seconds: f64,
    },
    /// Energy a day is known outright [Wh].
    Energy {
        /// Energy a day [Wh], at the socket.
        per_day: WattHours,
    },
    /// For as long as the vehicle is driven.
    WhileDriving,
    /// Once in the stay.
    Once {
        /// At which end of it.
        at: StayEnd,
        /// Running time [min], 0..1440: right after arrival, or right before leaving.
        minutes: f64,
    },
}

/// An end of the stay.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum StayEnd {
    /// The hour of arrival, and what follows it.
    #[default]
    Arrival,
    /// The end of the stay, and what leads up to it.
    Leaving,
}

impl StayEnd {
    /// Both, in the order they are listed.
    pub const ALL: [Self; 2] = [Self::Arrival, Self::Leaving];
}

impl Default for Usage {
    fn default() -> Self {
        Self::Daily { minutes: 60.0 }
    }
}

impl Usage {
    /// Every figure within its bounds.
    fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        match self {
            Self::Daily { minutes } => sanitiser.number(minutes, MINUTES_A_DAY, 0.0),
            Self::Once { at: _, minutes } => sanitiser.number(minutes, MINUTES_A_DAY, 0.0),
            Self::AlwaysOn | Self::WhileDriving => {}
            Self::Duty { cycle: DutyCycle::Fixed { frac } } => sanitiser.number(frac, FRAC, 0.3),
            Self::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c } } => {
                sanitiser.number(frac_at_25c, FRAC, 0.32);
            }
            Self::Duty { cycle: DutyCycle::Heating { heat, start } } => {
                sanitiser.number(&mut heat.0, HEAT_W, 2000.0);
                sanitiser.number(&mut start.0, START_WH, 0.0);
            }
            Self::Duty { cycle: DutyCycle::Cooling { frac_at_25c } } => {
                sanitiser.number(frac_at_25c, FRAC, 0.3);
            }
            Self::Charges { every_days, cell, cell_volts, charger_frac } => {
                sanitiser.number(every_days, CHARGE_EVERY_DAYS, 1.0);
                sanitiser.number(&mut cell.0, CELL_MAH, 5000.0);
                sanitiser.number(&mut cell_volts.0, CELL_V, 3.85);
                sanitiser.number(charger_frac, CONVERTER_FRAC, 0.8);
            }
            Self::Litres { litres_per_day, flow, pumped_twice: _ } => {
                sanitiser.number(&mut litres_per_day.0, LITRES_A_DAY, 0.0);
                sanitiser.number(&mut flow.0, FLOW_L_MIN, 10.0);
            }
            Self::Uses { per_day, seconds } => {
                sanitiser.number(per_day, USES_A_DAY, 0.0);
                sanitiser.number(seconds, SECONDS_A_USE, 0.0);
            }
            Self::Energy { per_day } => sanitiser.number(&mut per_day.0, ENERGY_WH_A_DAY, 0.0),
        }
    }
}

/// Time of day it runs, in minutes after midnight, camp time; wraps past midnight when `to <= from`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Window {
    /// Start [min after midnight], 0..1440.
    pub from_min: u16,
    /// End [min after midnight], 0..1440; the same as the start means all day.
    pub to_min: u16,
}

impl Window {
    /// Any time of the day.
    pub const ALL_DAY: Self = Self { from_min: 0, to_min: 0 };
    /// 18:00 to 23:00.
    pub const EVENING: Self = Self { from_min: 18 * 60, to_min: 23 * 60 };
    /// 22:00 to 07:00.
    pub const NIGHT: Self = Self { from_min: 22 * 60, to_min: 7 * 60 };
    /// 08:00 to 20:00.
    pub const DAYTIME: Self = Self { from_min: 8 * 60, to_min: 20 * 60 };
    /// 06:00 to 09:00.
    pub const MORNING: Self = Self { from_min: 6 * 60, to_min: 9 * 60 };

    /// Length of the window [h], 24 for all day.
    #[must_use]
    pub fn length(self) -> Hours {
        let (from, to) = (f64::from(self.from_min), f64::from(self.to_min));
        let minutes = if to > from { to - from } else { to - from + MINUTES_PER_DAY };
        Hours::from_minutes(minutes)
    }

    /// Share of the hour of day `hour` (0..24) that lies inside the window, 0..1.
    #[must_use]
    pub fn share_of_hour(self, hour: usize) -> f64 {
        let start = (hour % 24) as f64 * 60.0;
        let (from, to) = (f64::from(self.from_min), f64::from(self.to_min));
        let overlap = |a: f64, b: f64| ((start + 60.0).min(b) - start.max(a)).max(0.0);
        let minutes = if to > from {
            overlap(from, to)
        } else {
            overlap(from, MINUTES_PER_DAY) + overlap(0.0, to)
        };
        minutes / 60.0
    }
}

impl Default for Window {
    fn default() -> Self {
        Self::ALL_DAY
    }
}

/// Voltage at which an appliance switches itself off, and on again.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct CutOut {
    /// Off below this [V] at its terminals, per 12 V nominal.
    pub off: Volts,
    /// On again above this [V], per 12 V nominal.
    pub on: Volts,
}

/// One appliance.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Load {
    /// Stable within a setup; never reused while the row exists.
    pub id: u32,
    /// Entry of the catalogue it came from; the number is stable for ever.
    pub appliance: Option<u16>,
    /// The user's own name; empty means the catalogue's.
    pub name: String,
    /// Group it is summed under.
    pub group: Group,
    /// How many of them, 1..99.
    pub quantity: u16,
    /// How the draw is known.
    pub draw_source: DrawSource,
    /// Draw of one of them while it runs.
    pub draw: Draw,
    /// Likely error of the draw as a share of it, 0..1; `None` takes what is usual for `draw_source`.
    pub spread_frac: Option<f64>,
    /// From the battery or through the inverter.
    pub feed: Feed,
    /// Whose air it stands in.
    pub place: LoadPlace,
    /// How it is used.
    pub usage: Usage,
    /// Draw of one of them while not in use but left connected [W]; 0 for none.
    pub standby: Watts,
    /// Time of day it is used.
    pub window: Window,
    /// Starting draw over running draw, 1 for none.
    pub surge_factor: f64,
    /// Its own low-voltage cut-out, where it has one.
    pub cut_out: Option<CutOut>,
    /// Counts in the sums; switched off keeps the row.
    pub enabled: bool,
}

impl Default for Load {
    fn default() -> Self {
        Self {
            id: 0,
            appliance: None,
            name: String::new(),
            group: Group::Other,
            quantity: 1,
            draw_source: DrawSource::Estimate,
            draw: Draw::default(),
            spread_frac: None,
            feed: Feed::Dc,
            place: LoadPlace::Inside,
            usage: Usage::default(),
            standby: Watts::ZERO,
            window: Window::ALL_DAY,
            surge_factor: 1.0,
            cut_out: None,
            enabled: true,
        }
    }
}

impl Load {
    /// Likely error of the draw as a share of it: as stated, or usual for how it was learned
    /// (common practice, no source: meter 5 %, specification 15 %, rating plate 40 %,
    /// estimate 40 %).
    #[must_use]
    pub fn likely_error_frac(&self) -> f64 {
        self.spread_frac.unwrap_or(match self.draw_source {
            DrawSource::Meter => 0.05,
            DrawSource::SpecSheet => 0.15,
            DrawSource::Label | DrawSource::Estimate => 0.40,
        })
    }

    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self {
            id: _,
            appliance: _,
            name,
            group: _,
            quantity,
            draw_source: _,
            draw,
            spread_frac,
            feed: _,
            place: _,
            usage,
            standby,
            window,
            surge_factor,
            cut_out,
            enabled: _,
        } = self;
        sanitiser.text(name, MAX_NAME_CHARS);
        sanitiser.whole(quantity, QUANTITY);
        match draw {
            Draw::Power { watts } => sanitiser.number(&mut watts.0, DRAW_W, 0.0),
            Draw::Current { amps, volts } => {
                sanitiser.number(&mut amps.0, DRAW_A, 0.0);
                sanitiser.number(&mut volts.0, STATED_V, 12.0);
            }
        }
        if let Some(spread) = spread_frac {
            sanitiser.number(spread, FRAC, 0.4);
        }
        usage.sanitise(sanitiser);
        sanitiser.number(&mut standby.0, STANDBY_W, 0.0);
        sanitiser.whole(&mut window.from_min, MINUTE_OF_DAY);
        sanitiser.whole(&mut window.to_min, MINUTE_OF_DAY);
        sanitiser.number(surge_factor, SURGE_FACTOR, 1.0);
        if let Some(CutOut { off, on }) = cut_out {
            sanitiser.number(&mut off.0, CUT_OUT_V, 10.5);
            sanitiser.number(&mut on.0, CUT_OUT_V, 11.7);
            if on.0 < off.0 {
                sanitiser.changed += 1;
                *on = *off;
            }
        }
    }
}
