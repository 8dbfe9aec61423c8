//! Proptest strategies for any setup, for properties that must hold of all of them.
//!
//! [`setup`] keeps the bounds of every field, [`wild_setup`] does not: it also has infinities, not
//! a number, impossible dates, hostile text and lists past their bounds.

use super::load_rows::{catalogue_load, load};
use super::power_parts::{array, bank, driving, hook_up, inverter, other};
use super::values::Manners::{self, Tame, Wild};
use super::values::{at_most, num, text};
use nightbank::model::*;
use nightbank::units::*;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

/// A setup inside every bound: [`Setup::sanitised`] changes nothing.
pub fn setup() -> impl Strategy<Value = Setup> {
    whole(Tame).prop_map(|setup| setup.sanitised().0)
}

/// A setup with anything the types can hold.
pub fn wild_setup() -> impl Strategy<Value = Setup> {
    whole(Wild)
}

fn day(m: Manners) -> impl Strategy<Value = DayPlan> {
    let weather = prop_oneof![
        select(vec![
            Weather::Unknown,
            Weather::Typical,
            Weather::Clear,
            Weather::Mixed,
            Weather::Dull
        ]),
        num(m, limits::SUN_WH_M2)
            .prop_map(|x| Weather::Sun { per_day: WattHoursPerSquareMetre(x) }),
    ];
    (weather, option::of(num(m, limits::MINUTES_A_DAY)), option::of(any::<bool>()))
        .prop_map(|(weather, drive_minutes, hook_up)| DayPlan { weather, drive_minutes, hook_up })
}

fn trip(m: Manners) -> impl Strategy<Value = Trip> {
    let place = (
        text(m, 40),
        num(m, limits::LATITUDE_DEG),
        num(m, limits::LONGITUDE_DEG),
        num(m, limits::ALTITUDE_M),
    )
        .prop_map(|(name, latitude, longitude, altitude)| Place {
            name,
            latitude: Degrees(latitude),
            longitude: Degrees(longitude),
            altitude: Metres(altitude),
        });
    let when = if m == Wild {
        any::<(i16, u16, u8, u8, u8, u8)>().boxed()
    } else {
        (-720..=840i16, 2000..=2099u16, 1..=12u8, 1..=31u8, 0..=23u8, 1..=60u8).boxed()
    };
    let sun = proptest::array::uniform12(num(m, limits::SUN_WH_M2));
    let sun = sun.prop_map(|months| MonthlySun(months.map(WattHoursPerSquareMetre)));
    let air = num(m, limits::AIR_C).prop_map(Celsius);
    let kept = option::of(num(m, limits::INSIDE_C).prop_map(Celsius));
    let rest = (option::of(sun), option::of(air), num(m, limits::FRAC), kept);
    (place, when, vec(day(m), at_most(m, 61)), rest).prop_map(|(place, when, days, rest)| Trip {
        place,
        utc_offset_min: when.0,
        year: when.1,
        month: when.2,
        day: when.3,
        arrival_hour: when.4,
        nights: when.5,
        days,
        own_sun: rest.0,
        own_air: rest.1,
        heated_to: rest.3,
        ground_albedo_frac: rest.2,
    })
}

fn prices(m: Manners) -> impl Strategy<Value = Prices> {
    let price = || num(m, limits::PRICE);
    let weight = || num(m, limits::WEIGHT_KG);
    (text(m, 4), (price(), price(), price(), price()), (weight(), weight(), weight())).prop_map(
        |(currency, prices, weights)| Prices {
            currency,
            solar_per_100w: Money(prices.0),
            solar_kg_per_100w: Kilograms(weights.0),
            lead_per_100ah: Money(prices.1),
            lead_kg_per_100ah: Kilograms(weights.1),
            lithium_per_100ah: Money(prices.2),
            lithium_kg_per_100ah: Kilograms(weights.2),
            dcdc: Money(prices.3),
        },
    )
}

fn reading(m: Manners) -> impl Strategy<Value = Reading> {
    let kind = prop_oneof![
        num(m, limits::FRAC).prop_map(|soc_frac| ReadingKind::StateOfCharge { soc_frac }),
        (num(m, limits::BANK_V), num(m, limits::SINCE_ARRIVAL_H))
            .prop_map(|(v, h)| ReadingKind::Voltage { volts: Volts(v), rested: Hours(h) }),
        num(m, limits::USED_AH).prop_map(|ah| ReadingKind::Used { amp_hours: AmpHours(ah) }),
    ];
    (num(m, limits::SINCE_ARRIVAL_H), kind).prop_map(|(at, kind)| Reading { at: Hours(at), kind })
}

fn correction(m: Manners) -> impl Strategy<Value = Correction> {
    let restart = (num(m, limits::SINCE_ARRIVAL_H), num(m, limits::FRAC));
    let restart = option::of(restart.prop_map(|(at, soc_frac)| (Hours(at), soc_frac)));
    (num(m, limits::USE_FACTOR), num(m, limits::SUN_FACTOR), restart).prop_map(
        |(use_factor, sun_factor, restart)| Correction { use_factor, sun_factor, restart },
    )
}

fn cable(m: Manners) -> impl Strategy<Value = CableRun> {
    let gauge = if m == Wild { any::<i8>().boxed() } else { (-3..=22i8).boxed() };
    let size = prop_oneof![
        num(m, limits::CABLE_MM2)
            .prop_map(|area| ConductorSize::Metric { area: SquareMillimetres(area) }),
        gauge.prop_map(|gauge| ConductorSize::Awg { gauge }),
    ];
    let numbers = (
        num(m, limits::DRAW_A),
        num(m, limits::CABLE_M),
        num(m, limits::CONDUCTOR_C),
        num(m, limits::FUSE_A),
    );
    (text(m, 40), option::of(0..20u32), numbers, size, any::<bool>()).prop_map(
        |(name, load_id, (amps, length, working, fuse), size, critical)| CableRun {
            name,
            load_id,
            amps: Amps(amps),
            length: Metres(length),
            size,
            working: Celsius(working),
            fuse: Amps(fuse),
            critical,
        },
    )
}

fn whole(m: Manners) -> impl Strategy<Value = Setup> {
    let loads = prop_oneof![
        vec(load(m), 0..=6),
        vec(catalogue_load(), 0..=30),
        vec(load(m), at_most(m, limits::MAX_LOADS))
    ];
    let lists = (
        loads,
        vec(array(m), at_most(m, limits::MAX_ARRAYS)),
        vec(other(m), at_most(m, limits::MAX_OTHER)),
        prop_oneof![Just(Vec::new()), vec(reading(m), at_most(m, limits::MAX_READINGS))],
        prop_oneof![Just(Vec::new()), vec(cable(m), at_most(m, limits::MAX_CABLES))],
    );
    let trip = prop_oneof![Just(Trip::default()), trip(m)];
    let prices = prop_oneof![Just(Prices::default()), prices(m)];
    let correction = prop_oneof![Just(Correction::default()), correction(m)];
    let power = (bank(m), inverter(m), driving(m), hook_up(m));
    let who = (any::<bool>(), select(Vehicle::ALL.to_vec()));
    (text(m, 40), who, lists, power, trip, prices, correction).prop_map(
        |(name, (example, vehicle), lists, power, trip, prices, correction)| Setup {
            name,
            example,
            vehicle,
            loads: lists.0,
            bank: power.0,
            inverter: power.1,
            solar: lists.1,
            driving: power.2,
            hook_up: power.3,
            other: lists.2,
            trip,
            prices,
            readings: lists.3,
            correction,
            cables: lists.4,
        },
    )
}
