//! Where setups differ, field by field, as values without words.

use crate::forecast::demand::LoadEnergy;
use crate::model::{
    BatteryPlace, Chemistry, Controller, DrivingCharger, InverterSwitching, Load, Mounting, Setup,
    SolarArray, TimesOfDay, Window,
};
use crate::units::{AmpHours, Amps, Celsius, Degrees, Hours, Volts, WattHours, Watts};

/// What a line of the comparison is about.
#[derive(Clone, Debug, PartialEq)]
pub enum Field {
    /// Energy a day of one appliance, at the battery, in the air of the trip's first whole day.
    Load {
        /// Entry of the catalogue.
        appliance: Option<u16>,
        /// The user's own name; may be empty.
        name: String,
    },
    /// When one appliance is used, where every setup has as many of it.
    LoadTimes {
        /// Entry of the catalogue.
        appliance: Option<u16>,
        /// The user's own name; may be empty.
        name: String,
    },
    /// Energy a day of all appliances, in the same way.
    AllLoads,
    /// Chemistry of the battery.
    Chemistry,
    /// Capacity of the whole bank at the 20 h rate, new.
    Capacity,
    /// What is left of it with age.
    Health,
    /// Lowest state of charge allowed.
    SocMin,
    /// State of charge on arrival.
    SocStart,
    /// Nominal voltage.
    SystemVoltage,
    /// Where the battery stands.
    BatteryPlace,
    /// Battery heating.
    Heated,
    /// Inverter, its continuous rating.
    Inverter,
    /// No-load draw of the inverter.
    InverterIdle,
    /// When the inverter is on.
    InverterSwitching,
    /// Panels in all.
    SolarPeak,
    /// Tilt of the panels, weighted by power.
    SolarTilt,
    /// Facing of the largest array.
    SolarFacing,
    /// Fixing of the largest array.
    SolarMounting,
    /// Controller of the largest array.
    SolarController,
    /// Direct light lost to shade around midday, weighted by power.
    SolarShade,
    /// Charger on the engine and its current.
    DrivingCharger,
    /// Driving every so many days.
    DrivingEvery,
    /// Time of a driving day.
    DrivingTime,
    /// Mains charger.
    HookUpCharger,
    /// Hook-up every so many nights.
    HookUpEvery,
    /// Other machines that charge, current in all.
    OtherSources,
    /// Place.
    Place,
    /// First day: year, month, day.
    Arrival,
    /// Nights to stay.
    Nights,
    /// The user's own mean temperature.
    OwnAir,
    /// What the vehicle is heated to.
    HeatedTo,
    /// Consumption factor from readings.
    UseFactor,
    /// Sun factor from readings.
    SunFactor,
    /// How the battery behaves on the trip.
    Battery(BatteryReason),
}

/// What a battery differs in on a trip.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BatteryReason {
    /// Energy that can be used at the trip's mean battery temperature, over the label's.
    UsableShare,
    /// Share of the capacity that the coldest hour of the stay leaves within reach.
    ColdReach,
    /// Charge given when emptied in 5 h, over the rated one in 20 h.
    FastDischarge,
    /// Charge stored of what is put in between 80 % and full.
    StoredAbove80,
    /// Current taken at 90 %, at the trip's mean battery temperature.
    TakenAt90,
    /// Time from the lowest level allowed to full with the strongest charger aboard.
    TimeToFull,
    /// Lost in the battery on an average day of the stay: charge efficiency, resistance.
    LostADay,
    /// Lowest voltage at the battery while above the level allowed, the largest appliance running.
    LowestVoltage,
    /// Time for which something has cut out for low voltage while above the level allowed.
    CutOut,
    /// Takes no charge below this cell temperature.
    NoChargeBelow,
    /// Time of the stay in which charge was offered to a battery too cold for it.
    ColdLocked,
    /// Draw of its management system.
    Management,
    /// Lost in thirty days of standing, own loss and management, over the capacity.
    StandingLoss,
}

/// A value of a line in one setup.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// Not there.
    Absent,
    /// There, or yes.
    Yes,
    /// Energy.
    Energy(WattHours),
    /// Power.
    Power(Watts),
    /// Charge.
    Charge(AmpHours),
    /// Current.
    Current(Amps),
    /// Voltage.
    Voltage(Volts),
    /// Share, 0..1, or a factor.
    Share(f64),
    /// Angle.
    Angle(Degrees),
    /// Temperature.
    Temperature(Celsius),
    /// Duration.
    Time(Hours),
    /// Every so many days.
    EveryDays(u8),
    /// Times of day, by their starts.
    Times(Vec<Window>),
    /// A count.
    Count(usize),
    /// Chemistry.
    Chemistry(Chemistry),
    /// Where the battery stands.
    BatteryPlace(BatteryPlace),
    /// When the inverter is on.
    Switching(InverterSwitching),
    /// Fixing of a panel.
    Mounting(Mounting),
    /// Controller.
    Controller(Controller),
    /// Split-charge relay, what it carries at most.
    Relay(Amps),
    /// The user's own words; for a place without a name its latitude and longitude.
    Text(String),
    /// Year, month, day.
    Date(u16, u8, u8),
}

/// One line of the comparison: a value for each setup.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// What it is about.
    pub field: Field,
    /// Value in each setup, in their order.
    pub values: Vec<Value>,
}

/// Lines in which the setups are not all the same, general ones first, then single appliances. Each
/// setup with what its loads take in a day.
#[must_use]
pub fn differences(setups: &[(&Setup, LoadEnergy)]) -> Vec<Difference> {
    let mut lines: Vec<Difference> = GENERAL
        .iter()
        .map(|(field, value)| Difference {
            field: field.clone(),
            values: setups.iter().map(|(setup, energy)| value(setup, energy)).collect(),
        })
        .collect();
    lines.extend(load_lines(setups));
    lines.retain(|line| line.values.windows(2).any(|pair| !same(&pair[0], &pair[1])));
    lines
}

type Reader = fn(&Setup, &LoadEnergy) -> Value;

const GENERAL: [(Field, Reader); 31] = [
    (Field::Place, |s, _| place(s)),
    (Field::Arrival, |s, _| Value::Date(s.trip.year, s.trip.month, s.trip.day)),
    (Field::Nights, |s, _| Value::Count(usize::from(s.trip.nights))),
    (Field::OwnAir, |s, _| s.trip.own_air.map_or(Value::Absent, Value::Temperature)),
    (Field::HeatedTo, |s, _| s.trip.heated_to.map_or(Value::Absent, Value::Temperature)),
    (Field::AllLoads, |_, energy| Value::Energy(energy.total)),
    (Field::Chemistry, |s, _| Value::Chemistry(s.bank.chemistry)),
    (Field::Capacity, |s, _| Value::Charge(s.bank.rated_capacity())),
    (Field::Health, |s, _| Value::Share(s.bank.health_frac)),
    (Field::SocMin, |s, _| Value::Share(s.bank.soc_min_frac)),
    (Field::SocStart, |s, _| Value::Share(s.bank.soc_start_frac)),
    (Field::SystemVoltage, |s, _| Value::Voltage(s.bank.system.nominal())),
    (Field::BatteryPlace, |s, _| Value::BatteryPlace(s.bank.place)),
    (Field::Heated, |s, _| if s.bank.heated { Value::Yes } else { Value::Absent }),
    (Field::Inverter, |s, _| with_inverter(s, Value::Power(s.inverter.continuous))),
    (Field::InverterIdle, |s, _| with_inverter(s, Value::Power(s.inverter.idle))),
    (Field::InverterSwitching, |s, _| with_inverter(s, Value::Switching(s.inverter.switching))),
    (Field::SolarPeak, |s, _| if peak(s).0 > 0.0 { Value::Power(peak(s)) } else { Value::Absent }),
    (Field::SolarTilt, |s, _| {
        weighted(s, |a| a.tilt.0).map_or(Value::Absent, |d| Value::Angle(Degrees(d)))
    }),
    (Field::SolarFacing, |s, _| largest(s).map_or(Value::Absent, |a| Value::Angle(a.facing))),
    (Field::SolarMounting, |s, _| {
        largest(s).map_or(Value::Absent, |a| Value::Mounting(a.mounting))
    }),
    (Field::SolarController, |s, _| {
        largest(s).map_or(Value::Absent, |a| Value::Controller(a.controller))
    }),
    (Field::SolarShade, |s, _| {
        weighted(s, |a| a.shade.midday_frac).map_or(Value::Absent, Value::Share)
    }),
    (Field::DrivingCharger, |s, _| driving(s)),
    (Field::DrivingEvery, |s, _| every(s.driving.fitted, s.driving.every.0)),
    (Field::DrivingTime, |s, _| {
        let drives = s.driving.fitted && s.driving.every.0 > 0;
        if drives { Value::Time(Hours::from_minutes(s.driving.minutes)) } else { Value::Absent }
    }),
    (Field::HookUpCharger, |s, _| {
        if s.hook_up.fitted { Value::Current(s.hook_up.amps) } else { Value::Absent }
    }),
    (Field::HookUpEvery, |s, _| every(s.hook_up.fitted, s.hook_up.every.0)),
    (Field::OtherSources, |s, _| other(s)),
    (Field::UseFactor, |s, _| Value::Share(s.correction.use_factor)),
    (Field::SunFactor, |s, _| Value::Share(s.correction.sun_factor)),
];

fn place(setup: &Setup) -> Value {
    let place = &setup.trip.place;
    Value::Text(if place.name.is_empty() {
        format!("{:.1}, {:.1}", place.latitude.0, place.longitude.0)
    } else {
        place.name.clone()
    })
}

fn with_inverter(setup: &Setup, value: Value) -> Value {
    if setup.inverter.fitted { value } else { Value::Absent }
}

fn every(fitted: bool, days: u8) -> Value {
    if fitted && days > 0 { Value::EveryDays(days) } else { Value::Absent }
}

fn driving(setup: &Setup) -> Value {
    if !setup.driving.fitted {
        return Value::Absent;
    }
    match setup.driving.charger {
        DrivingCharger::DcDc { amps } => Value::Current(amps),
        DrivingCharger::Relay { limit, .. } => Value::Relay(limit),
    }
}

fn other(setup: &Setup) -> Value {
    let amps: Amps = setup.other.iter().filter(|o| o.enabled).map(|o| o.amps).sum();
    if amps.0 > 0.0 { Value::Current(amps) } else { Value::Absent }
}

fn panels(setup: &Setup) -> impl Iterator<Item = &SolarArray> {
    setup.solar.iter().filter(|array| array.enabled && array.peak.0 > 0.0)
}

fn peak(setup: &Setup) -> Watts {
    panels(setup).map(|array| array.peak).sum()
}

fn largest(setup: &Setup) -> Option<&SolarArray> {
    panels(setup).max_by(|a, b| a.peak.0.total_cmp(&b.peak.0))
}

fn weighted(setup: &Setup, of: fn(&SolarArray) -> f64) -> Option<f64> {
    let total = peak(setup);
    (total.0 > 0.0).then(|| panels(setup).map(|array| of(array) * (array.peak / total)).sum())
}

/// Two lines for each appliance of any setup, its energy and its times of day; the same catalogue entry
/// and name are the same one.
fn load_lines(setups: &[(&Setup, LoadEnergy)]) -> Vec<Difference> {
    let mut keys: Vec<(Option<u16>, &str)> = Vec::new();
    for load in setups.iter().flat_map(|(setup, _)| setup.enabled_loads()) {
        let key = (load.appliance, load.name.as_str());
        if !keys.contains(&key) {
            keys.push(key);
        }
    }
    let mut lines = Vec::new();
    for (appliance, name) in keys {
        let of = |setup: &Setup| -> Vec<Load> {
            let same = |load: &&Load| load.appliance == appliance && load.name == name;
            setup.enabled_loads().filter(same).cloned().collect()
        };
        let energy = |(setup, energy): &(&Setup, LoadEnergy)| {
            let same = of(setup);
            if same.is_empty() {
                Value::Absent
            } else {
                Value::Energy(same.iter().map(|load| energy.of_load(load.id)).sum())
            }
        };
        let name = || name.to_owned();
        lines.push(Difference {
            field: Field::Load { appliance, name: name() },
            values: setups.iter().map(energy).collect(),
        });
        let timed = setups.iter().map(|(setup, _)| {
            let mut same = of(setup);
            same.retain(|load| load.usage.has_time_of_day());
            same
        });
        let timed: Vec<Vec<Load>> = timed.collect();
        let alike = timed.windows(2).all(|pair| pair[0].len() == pair[1].len());
        let times: Vec<Value> = timed.iter().filter_map(|loads| times_of_day(loads)).collect();
        if alike && times.len() == setups.len() {
            let field = Field::LoadTimes { appliance, name: name() };
            lines.push(Difference { field, values: times });
        }
    }
    lines
}

/// Whether two values are no difference: energies up to what the order of a sum makes of them.
fn same(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Energy(one), Value::Energy(other)) => (*one - *other).0.abs() < 1e-3,
        _ => one == other,
    }
}

/// When loads are used, all together; `None` for no load.
fn times_of_day(loads: &[Load]) -> Option<Value> {
    let windows = loads.iter().flat_map(|load| load.more_windows.iter().chain([&load.window]));
    let all: Vec<Window> = windows.copied().collect();
    let (first, more) = all.split_first()?;
    Some(Value::Times(TimesOfDay::of(*first, more).windows()))
}
