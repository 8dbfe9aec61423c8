//! One change to a setup: what it does, what it asks for, and what to beware of. Data without
//! words; a change makes a new setup and leaves the old one as it was, so it is undone by going
//! back to that.

pub mod candidates;
pub mod cost;
mod edits;
pub mod improvement;
pub mod improvements;
pub mod ways;
pub mod wish;

use crate::model::limits;
use crate::model::{
    BatteryPlace, Controller, DrivingCharger, EveryNth, Feed, InverterSwitching, Setup, Shade,
    Usage,
};
use crate::units::{AmpHours, Amps, Degrees, Watts};
use edits::{midday, on_array, on_load, within};

/// Duty of a fridge set about 2 K warmer, over its duty before (common practice, no source: about
/// five hundredths a kelvin).
const WARMER_FRIDGE_FACTOR: f64 = 0.9;
/// Dirt left on a panel that was just cleaned, as a share of the light.
const CLEAN_FRAC: f64 = 0.0;

/// A drive that is suggested [min].
pub(super) const DRIVE_MINUTES: f64 = 60.0;

/// A change to one setup. Loads are named by id, arrays by place in the list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Change {
    /// Switch a load off altogether while it is not used.
    SwitchOff {
        /// The load.
        load: u32,
    },
    /// Do without a heavy electric load.
    DoWithout {
        /// The load.
        load: u32,
    },
    /// Cook or heat with gas instead of a heavy electric load.
    GasInstead {
        /// The load.
        load: u32,
    },
    /// Switch off from 23:00 to 7:00 what is always on.
    OffAtNight {
        /// The load.
        load: u32,
    },
    /// Part it from the supply between uses: no standby.
    Unplug {
        /// The load.
        load: u32,
    },
    /// Use it less long each day.
    ShorterUse {
        /// The load.
        load: u32,
        /// Minutes a day less.
        minutes_less: f64,
    },
    /// Use it fewer times each day.
    FewerUses {
        /// The load.
        load: u32,
        /// Uses a day less.
        uses_less: f64,
    },
    /// Use it only so much of what was planned.
    UseShare {
        /// The load.
        load: u32,
        /// Share of the planned use that stays, 0..1.
        share_frac: f64,
    },
    /// Set a fridge about two kelvin warmer.
    WarmerFridge {
        /// The load.
        load: u32,
    },
    /// Run it from the battery circuit with a dc adapter instead of through the inverter.
    DcInstead {
        /// The load.
        load: u32,
    },
    /// Move its use to the hours of strongest sun.
    ToMidday {
        /// The load.
        load: u32,
    },
    /// Switch the inverter on only while something on it runs.
    InverterWhenUsed,
    /// Let the inverter sleep while nothing runs on it.
    InverterPowerSave {
        /// Draw while asleep.
        asleep: Watts,
    },
    /// Tilt a panel and turn it to the noon sun.
    Tilt {
        /// The array.
        array: usize,
        /// Tilt from the horizontal.
        tilt: Degrees,
        /// Facing, clockwise from north.
        facing: Degrees,
        /// It lies on the roof: needs a tilting bracket.
        roof: bool,
    },
    /// Clean a panel.
    Clean {
        /// The array.
        array: usize,
    },
    /// Stand so that a panel is out of the shade.
    OutOfShade {
        /// The array.
        array: usize,
    },
    /// Maximum power point tracking instead of pulse-width modulation.
    MpptController {
        /// The array.
        array: usize,
    },
    /// Put up a loose panel.
    PortablePanel {
        /// Its nominal power.
        peak: Watts,
        /// Tilt it is put up at.
        tilt: Degrees,
        /// Facing it is turned to.
        facing: Degrees,
    },
    /// Drive on one day, so much longer than planned.
    Drive {
        /// Day of the trip, 0 is the day of arrival.
        day: usize,
        /// Minutes more.
        minutes: f64,
    },
    /// Take a place with hook-up every so many nights.
    HookUp {
        /// Every so many nights.
        every: u8,
    },
    /// Arrive with a full battery.
    ArriveFull,
    /// Stand the battery in a warmer place.
    WarmerPlace {
        /// Where.
        place: BatteryPlace,
    },
    /// Battery with its own heating, so that it can charge in frost.
    HeatedBattery,
    /// More battery of the same kind.
    MoreBattery {
        /// Capacity more, at the 20 h rate and the system voltage.
        capacity: AmpHours,
    },
    /// LiFePO4 in place of a battery of lead.
    Lithium {
        /// Its capacity at the 20 h rate and the system voltage.
        capacity: AmpHours,
    },
    /// More solar, beside and like the panels there are: each kind of them grows by the same share.
    MoreSolar {
        /// Nominal power more.
        peak: Watts,
    },
    /// Fit a dc-dc charger.
    DcDcCharger {
        /// Its output current.
        amps: Amps,
        /// Drive an hour every so many days where no driving is planned yet.
        drive_every: Option<u8>,
    },
}

/// Changes of one family exclude each other: only the best of them is worth telling.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Family {
    /// On one load.
    Load(u32),
    /// How the inverter is switched.
    Inverter,
    /// Angle of one array.
    Tilt(usize),
    /// Day to drive on.
    DrivingDay,
    /// How often hook-up.
    HookUp,
    /// Angle of a loose panel.
    Portable,
}

impl Change {
    /// The setup with the change made. Numbers stay within [`limits`]; a change that names a load
    /// or array the setup does not have changes nothing.
    #[must_use]
    pub fn apply(&self, setup: &Setup) -> Setup {
        let mut setup = setup.clone();
        match *self {
            Self::SwitchOff { load } | Self::DoWithout { load } | Self::GasInstead { load } => {
                on_load(&mut setup, load, |load| load.enabled = false);
            }
            Self::OffAtNight { load } => on_load(&mut setup, load, edits::off_at_night),
            Self::Unplug { load } => on_load(&mut setup, load, |load| load.standby = Watts::ZERO),
            Self::ShorterUse { load, minutes_less } => on_load(&mut setup, load, |load| {
                if let Usage::Daily { minutes } = &mut load.usage {
                    *minutes = within(*minutes - minutes_less.max(0.0), limits::MINUTES_A_DAY);
                }
            }),
            Self::FewerUses { load, uses_less } => on_load(&mut setup, load, |load| {
                if let Usage::Uses { per_day, .. } = &mut load.usage {
                    *per_day = within(*per_day - uses_less.max(0.0), limits::USES_A_DAY);
                }
            }),
            Self::UseShare { load, share_frac } => {
                on_load(&mut setup, load, |load| {
                    edits::use_share(load, within(share_frac, limits::FRAC));
                });
            }
            Self::WarmerFridge { load } => {
                on_load(&mut setup, load, |load| edits::use_share(load, WARMER_FRIDGE_FACTOR));
            }
            Self::DcInstead { load } => on_load(&mut setup, load, |load| load.feed = Feed::Dc),
            Self::ToMidday { load } => {
                let window = midday(&setup);
                on_load(&mut setup, load, |load| load.use_only_in(window));
            }
            Self::InverterWhenUsed => setup.inverter.switching = InverterSwitching::WhenUsed,
            Self::InverterPowerSave { asleep } => {
                let asleep = Watts(within(asleep.0, limits::INVERTER_IDLE_W));
                setup.inverter.switching = InverterSwitching::PowerSave { asleep };
            }
            Self::Tilt { array, tilt, facing, .. } => on_array(&mut setup, array, |array| {
                array.tilt = Degrees(within(tilt.0, limits::TILT_DEG));
                array.facing = Degrees(within(facing.0, limits::FACING_DEG));
            }),
            Self::Clean { array } => {
                on_array(&mut setup, array, |array| array.dirt_frac = CLEAN_FRAC);
            }
            Self::OutOfShade { array } => {
                on_array(&mut setup, array, |array| array.shade = Shade::default());
            }
            Self::MpptController { array } => {
                on_array(&mut setup, array, |array| array.controller = Controller::Mppt);
            }
            Self::PortablePanel { peak, tilt, facing } => {
                edits::put_up(&mut setup, peak, tilt, facing);
            }
            Self::Drive { day, minutes } => edits::drive(&mut setup, day, minutes),
            Self::HookUp { every } => {
                setup.hook_up.every = EveryNth(within(f64::from(every), limits::EVERY_DAYS) as u8);
            }
            Self::ArriveFull => setup.bank.soc_start_frac = 1.0,
            Self::WarmerPlace { place } => setup.bank.place = place,
            Self::HeatedBattery => setup.bank.heated = true,
            Self::MoreBattery { capacity } => edits::more_battery(&mut setup, capacity),
            Self::Lithium { capacity } => edits::lithium(&mut setup, capacity),
            Self::MoreSolar { peak } => edits::more_solar(&mut setup, peak),
            Self::DcDcCharger { amps, drive_every } => {
                setup.driving.fitted = true;
                let amps = Amps(within(amps.0, limits::CHARGER_A));
                setup.driving.charger = DrivingCharger::DcDc { amps };
                if let Some(every) = drive_every {
                    setup.driving.every = EveryNth(every);
                    setup.driving.minutes = setup.driving.minutes.max(DRIVE_MINUTES);
                }
            }
        }
        setup
    }

    /// Switches something off for the night, or for good.
    #[must_use]
    pub fn is_off_at_night(&self) -> bool {
        matches!(self, Self::SwitchOff { .. } | Self::OffAtNight { .. } | Self::InverterWhenUsed)
    }

    /// Whether the sun of the trip has to be worked out again.
    #[must_use]
    pub fn touches_sun(&self) -> bool {
        matches!(
            self,
            Self::Tilt { .. }
                | Self::Clean { .. }
                | Self::OutOfShade { .. }
                | Self::MpptController { .. }
                | Self::PortablePanel { .. }
                | Self::MoreSolar { .. }
        )
    }

    /// The load it is about.
    #[must_use]
    pub fn load(&self) -> Option<u32> {
        match *self {
            Self::SwitchOff { load }
            | Self::DoWithout { load }
            | Self::GasInstead { load }
            | Self::OffAtNight { load }
            | Self::Unplug { load }
            | Self::ShorterUse { load, .. }
            | Self::FewerUses { load, .. }
            | Self::UseShare { load, .. }
            | Self::WarmerFridge { load }
            | Self::DcInstead { load }
            | Self::ToMidday { load } => Some(load),
            _ => None,
        }
    }

    /// The family of which only the best is told; `None` where it stands for itself.
    #[must_use]
    pub fn family(&self) -> Option<Family> {
        match *self {
            Self::InverterWhenUsed | Self::InverterPowerSave { .. } => Some(Family::Inverter),
            Self::Tilt { array, .. } => Some(Family::Tilt(array)),
            Self::Drive { .. } => Some(Family::DrivingDay),
            Self::HookUp { .. } => Some(Family::HookUp),
            Self::PortablePanel { .. } => Some(Family::Portable),
            _ => None,
        }
    }
}
