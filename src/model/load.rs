//! One appliance: how much it draws, how that is known, and how it is used.

use super::sanitise::{DRAW_A, FRAC, MAX_NAME_CHARS, MINUTE_OF_DAY, MINUTES_A_DAY, Sanitiser};
use crate::units::{
    Amps, Hours, Litres, LitresPerMinute, MINUTES_PER_DAY, MilliAmpHours, Volts, WattHours, Watts,
};
use bounds::{
    CELL_MAH, CELL_V, CHARGE_EVERY_DAYS, CONVERTER_FRAC, CUT_OUT_V, DRAW_W, ENERGY_WH_A_DAY,
    FLOW_L_MIN, HEAT_W, LITRES_A_DAY, MAX_MORE_WINDOWS, QUANTITY, SECONDS_A_USE, STANDBY_W,
    START_WH, STATED_V, SURGE_FACTOR, USES_A_DAY,
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
    /// Most windows of a load after its first.
    pub const MAX_MORE_WINDOWS: usize = 2;
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
    /// Whether it runs at times of day of its own: not what is never off or runs a share of the whole day,
    /// nor what goes by the driving or the stay.
    #[must_use]
    pub fn has_time_of_day(&self) -> bool {
        match self {
            Self::AlwaysOn | Self::WhileDriving | Self::Once { .. } => false,
            Self::Duty { cycle } => {
                matches!(cycle, DutyCycle::Heating { .. } | DutyCycle::Cooling { .. })
            }
            Self::Daily { .. }
            | Self::Charges { .. }
            | Self::Litres { .. }
            | Self::Uses { .. }
            | Self::Energy { .. } => true,
        }
    }

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

    /// Minutes of the hour of day `hour` (0..24) inside the window, a bit for each.
    fn minutes_of_hour(self, hour: usize) -> u64 {
        let start = (hour % 24) as i32 * 60;
        let before = |minute: u16| (1_u64 << (i32::from(minute) - start).clamp(0, 60)) - 1;
        let (from, to) = (before(self.from_min), before(self.to_min));
        if self.to_min > self.from_min { to & !from } else { to | (WHOLE_HOUR & !from) }
    }
}

/// An hour's sixty minutes, a bit for each.
const WHOLE_HOUR: u64 = (1 << 60) - 1;

impl Default for Window {
    fn default() -> Self {
        Self::ALL_DAY
    }
}

/// All minutes of the day in which a load is used: its windows together, where they overlap once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TimesOfDay {
    /// By hour of the day, a bit for each minute.
    minutes: [u64; 24],
}

impl TimesOfDay {
    /// Of windows, of which there is at least one.
    #[must_use]
    pub fn of(first: Window, more: &[Window]) -> Self {
        let mut minutes = [0; 24];
        for (hour, out) in minutes.iter_mut().enumerate() {
            *out = first.minutes_of_hour(hour);
            for window in more {
                *out |= window.minutes_of_hour(hour);
            }
        }
        Self { minutes }
    }

    /// Length of all of it together [h], 24 for all day.
    #[must_use]
    pub fn length(&self) -> Hours {
        Hours::from_minutes(f64::from(
            self.minutes.iter().map(|hour| hour.count_ones()).sum::<u32>(),
        ))
    }

    /// Share of the hour of day `hour` (0..24) inside it, 0..1.
    #[must_use]
    pub fn share_of_hour(&self, hour: usize) -> f64 {
        self.minutes.get(hour).map_or(0.0, |hour| f64::from(hour.count_ones()) / 60.0)
    }

    /// Whether it holds a minute of the day, 0..1440.
    #[must_use]
    pub fn holds(&self, minute: u16) -> bool {
        self.minutes
            .get(usize::from(minute / 60))
            .is_some_and(|hour| hour >> (minute % 60) & 1 == 1)
    }

    /// Whether all of them have a minute in common; not so for none.
    #[must_use]
    pub fn meet(all: impl IntoIterator<Item = Self>) -> bool {
        let both = |a: Self, b: Self| Self {
            minutes: std::array::from_fn(|hour| a.minutes[hour] & b.minutes[hour]),
        };
        all.into_iter().reduce(both).is_some_and(|common| common.minutes != [0; 24])
    }

    /// The same as the fewest windows, by their starts; midnight to midnight for all day.
    #[must_use]
    pub fn windows(&self) -> Vec<Window> {
        let after = |minute: u16, by: u16| (minute + by) % MINUTES_IN_DAY;
        let starts =
            |minute: &u16| self.holds(*minute) && !self.holds(after(*minute, MINUTES_IN_DAY - 1));
        let to =
            |from: u16| (1..MINUTES_IN_DAY).map(|by| after(from, by)).find(|end| !self.holds(*end));
        let windows: Vec<Window> = (0..MINUTES_IN_DAY)
            .filter(starts)
            .filter_map(|from_min| Some(Window { from_min, to_min: to(from_min)? }))
            .collect();
        if windows.is_empty() && self.holds(0) { vec![Window::ALL_DAY] } else { windows }
    }
}

const MINUTES_IN_DAY: u16 = MINUTES_PER_DAY as u16;

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
    /// Time of day it is used; the first where there are several.
    pub window: Window,
    /// Further times of day, at most [`bounds::MAX_MORE_WINDOWS`]; usually none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub more_windows: Vec<Window>,
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
            more_windows: Vec::new(),
            surge_factor: 1.0,
            cut_out: None,
            enabled: true,
        }
    }
}

impl Load {
    /// When it is used, all its windows together.
    #[must_use]
    pub fn times_of_day(&self) -> TimesOfDay {
        TimesOfDay::of(self.window, &self.more_windows)
    }

    /// Is used in this window alone.
    pub fn use_only_in(&mut self, window: Window) {
        self.window = window;
        self.more_windows.clear();
    }

    /// Is used at these times instead, of which there is at least one and at most
    /// `MAX_MORE_WINDOWS + 1`.
    pub fn set_times_of_day(&mut self, times: &TimesOfDay) {
        let mut windows = times.windows();
        windows.truncate(MAX_MORE_WINDOWS + 1);
        if !windows.is_empty() {
            self.window = windows.remove(0);
            self.more_windows = windows;
        }
    }

    /// Makes one window of those that overlap or touch.
    pub fn join_windows(&mut self) {
        let times = self.times_of_day();
        if !self.more_windows.is_empty() && times.windows().len() <= self.more_windows.len() {
            self.set_times_of_day(&times);
        }
    }

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
            more_windows,
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
        sanitiser.length(more_windows, MAX_MORE_WINDOWS);
        for window in more_windows.iter_mut().chain([window]) {
            sanitiser.whole(&mut window.from_min, MINUTE_OF_DAY);
            sanitiser.whole(&mut window.to_min, MINUTE_OF_DAY);
        }
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

#[cfg(test)]
mod tests {
    use super::*;

    fn window(from: u16, to: u16) -> Window {
        Window { from_min: from, to_min: to }
    }

    /// By hand: 06:00 to 08:00 and 18:15 to 22:00 are two hours and three and three quarters.
    #[test]
    fn several_windows_are_the_minutes_of_each() {
        let times = TimesOfDay::of(window(360, 480), &[window(1095, 1320)]);
        assert_eq!(times.length(), Hours(5.75));
        let shares: Vec<f64> = (0..24).map(|hour| times.share_of_hour(hour)).collect();
        let mut expected = [0.0; 24];
        for (hour, share) in [(6, 1.0), (7, 1.0), (18, 0.75), (19, 1.0), (20, 1.0), (21, 1.0)] {
            expected[hour] = share;
        }
        assert_eq!(shares, expected);
        assert!(times.holds(360) && times.holds(479) && times.holds(1095));
        assert!(!times.holds(359) && !times.holds(480) && !times.holds(1094) && !times.holds(1320));
        assert_eq!(times.windows(), [window(360, 480), window(1095, 1320)]);
    }

    #[test]
    fn what_overlaps_counts_once_and_what_touches_is_one() {
        let joined = |first, more: &[Window]| TimesOfDay::of(first, more).windows();
        assert_eq!(joined(window(360, 600), &[window(540, 720)]), [window(360, 720)]);
        assert_eq!(joined(window(360, 600), &[window(600, 720)]), [window(360, 720)]);
        assert_eq!(joined(window(360, 600), &[window(400, 500)]), [window(360, 600)]);
        // Past midnight, and both ways round to the whole day.
        assert_eq!(joined(window(1200, 60), &[window(30, 120)]), [window(1200, 120)]);
        assert_eq!(joined(window(1320, 420), &[window(0, 60)]), [window(1320, 420)]);
        assert_eq!(joined(window(0, 720), &[window(720, 0)]), [Window::ALL_DAY]);
        assert_eq!(joined(window(360, 1200), &[window(1080, 480)]), [Window::ALL_DAY]);
        assert_eq!(joined(window(480, 480), &[window(1, 2)]), [Window::ALL_DAY]);
        let three = joined(window(1, 2), &[window(1438, 1439), window(3, 4)]);
        assert_eq!(three, [window(1, 2), window(3, 4), window(1438, 1439)]);
    }

    #[test]
    fn times_meet_in_a_minute_all_of_them_have() {
        let one = |from, to| TimesOfDay::of(window(from, to), &[]);
        let two = TimesOfDay::of(window(360, 480), &[window(1095, 1320)]);
        assert!(
            TimesOfDay::meet([two, one(479, 1095)]) && TimesOfDay::meet([one(1319, 1400), two])
        );
        assert!(!TimesOfDay::meet([two, one(480, 1095)]));
        // Each two of them meet, but never all three.
        assert!(!TimesOfDay::meet([two, one(400, 1000), one(900, 1200)]));
        assert!(!TimesOfDay::meet([]));
    }

    #[test]
    fn windows_are_joined_only_where_that_makes_them_fewer() {
        let mut load = Load { window: window(1080, 1320), ..Load::default() };
        load.more_windows = vec![window(360, 480)];
        let before = load.clone();
        load.join_windows();
        assert_eq!(load, before, "apart, in the order they were entered");
        load.more_windows.push(window(1300, 1380));
        load.join_windows();
        assert_eq!(
            (load.window, &load.more_windows[..]),
            (window(360, 480), &[window(1080, 1380)][..])
        );
        load.more_windows.push(window(480, 1080));
        load.join_windows();
        assert_eq!((load.window, load.more_windows.len()), (window(360, 1380), 0));
    }

    proptest::proptest! {
        /// Counted minute by minute, another way than by the bits of an hour.
        #[test]
        fn minutes_are_those_in_any_window(ends in proptest::collection::vec((0..1440_u16, 0..1440_u16), 1..4)) {
            let windows: Vec<Window> = ends.iter().map(|&(from, to)| window(from, to)).collect();
            let times = TimesOfDay::of(windows[0], &windows[1..]);
            let inside = |minute: u16| ends.iter().any(|&(from, to)| {
                let length = if to > from { to - from } else { 1440 - from + to };
                (minute + 1440 - from) % 1440 < length
            });
            for hour in 0..24_u16 {
                let held: Vec<bool> = (hour * 60..hour * 60 + 60).map(inside).collect();
                proptest::prop_assert_eq!(&held, &(hour * 60..hour * 60 + 60).map(|minute| times.holds(minute)).collect::<Vec<_>>());
                let count = held.iter().filter(|held| **held).count() as f64;
                proptest::prop_assert_eq!(times.share_of_hour(usize::from(hour)), count / 60.0);
            }
            let whole = (0..1440).filter(|minute| inside(*minute)).count() as f64;
            proptest::prop_assert!((times.length().0 - whole / 60.0).abs() < 1e-12);
            let again = times.windows();
            proptest::prop_assert!(again.len() <= windows.len());
            proptest::prop_assert_eq!(TimesOfDay::of(again[0], &again[1..]), times);
        }
    }
}
