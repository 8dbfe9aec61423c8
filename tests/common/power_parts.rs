//! Strategies for the battery, the inverter and what charges.

use super::values::Manners::{self, Wild};
use super::values::{every, minute, num, text};
use nightbank::model::limits::Range;
use nightbank::model::*;
use nightbank::units::*;
use proptest::prelude::*;
use proptest::sample::select;

/// A bank with every field off its usual value.
pub fn full_bank() -> Bank {
    Bank {
        chemistry: Chemistry::Gel,
        capacity_20h: AmpHours(81.5),
        parallel: 3,
        system: SystemVoltage::V24,
        block_volts: Volts(6.0),
        health_frac: 0.815,
        soc_min_frac: 0.45,
        soc_start_frac: 0.999,
        place: BatteryPlace::Outside,
        heated: true,
        cold_charge_allowed: true,
        cable: Ohms(0.00255),
    }
}

pub fn bank(m: Manners) -> impl Strategy<Value = Bank> {
    let parallel = if m == Wild { (0..=255u8).boxed() } else { (1..=16u8).boxed() };
    let block = prop_oneof![select(vec![6.0, 12.0, 24.0]), num(m, Range { min: 6.0, max: 24.0 })];
    let size = (num(m, limits::CAPACITY_AH), parallel, block, num(m, limits::CABLE_OHM));
    let soc = (num(m, limits::HEALTH_FRAC), num(m, limits::SOC_MIN_FRAC), num(m, limits::FRAC));
    let kind = (
        select(Chemistry::ALL.to_vec()),
        select(vec![SystemVoltage::V12, SystemVoltage::V24]),
        select(vec![BatteryPlace::Inside, BatteryPlace::Locker, BatteryPlace::Outside]),
        any::<(bool, bool)>(),
    );
    (size, soc, kind).prop_map(|(size, soc, kind)| Bank {
        chemistry: kind.0,
        capacity_20h: AmpHours(size.0),
        parallel: size.1,
        system: kind.1,
        block_volts: Volts(size.2),
        health_frac: soc.0,
        soc_min_frac: soc.1,
        soc_start_frac: soc.2,
        place: kind.2,
        heated: kind.3.0,
        cold_charge_allowed: kind.3.1,
        cable: Ohms(size.3),
    })
}

pub fn inverter(m: Manners) -> impl Strategy<Value = Inverter> {
    let switching = prop_oneof![
        Just(InverterSwitching::AllDay),
        Just(InverterSwitching::WhenUsed),
        num(m, limits::INVERTER_IDLE_W)
            .prop_map(|w| InverterSwitching::PowerSave { asleep: Watts(w) }),
    ];
    (
        any::<bool>(),
        num(m, limits::INVERTER_W),
        num(m, limits::INVERTER_SURGE_W),
        num(m, limits::INVERTER_IDLE_W),
        num(m, limits::INVERTER_FRAC),
        switching,
        num(m, limits::INVERTER_CUT_OUT_V),
    )
        .prop_map(|(fitted, continuous, surge, idle, full_load_frac, switching, cut_out)| {
            Inverter {
                fitted,
                continuous: Watts(continuous),
                surge: Watts(surge),
                idle: Watts(idle),
                full_load_frac,
                switching,
                cut_out: Volts(cut_out),
            }
        })
}

pub fn array(m: Manners) -> impl Strategy<Value = SolarArray> {
    let frac = || num(m, limits::FRAC);
    let shade = prop_oneof![
        Just(Shade::default()),
        (frac(), frac(), frac(), frac()).prop_map(
            |(morning_frac, midday_frac, afternoon_frac, sky_frac)| Shade {
                morning_frac,
                midday_frac,
                afternoon_frac,
                sky_frac
            }
        )
    ];
    let size = (num(m, limits::SOLAR_W), num(m, limits::TILT_DEG), num(m, limits::FACING_DEG));
    let kind = (
        any::<bool>(),
        text(m, 40),
        select(vec![Mounting::Glued, Mounting::SmallGap, Mounting::OpenRack]),
        select(vec![Controller::Mppt, Controller::Pwm]),
        shade,
    );
    let losses = (
        num(m, limits::CONTROLLER_FRAC),
        num(m, limits::SELF_USE_W),
        num(m, limits::DIRT_FRAC),
        num(m, limits::SMALL_LOSS_FRAC),
        num(m, limits::SMALL_LOSS_FRAC),
        num(m, limits::TEMP_COEFF_PER_K),
        num(m, limits::SMALL_LOSS_FRAC),
        proptest::option::of(num(m, limits::PANEL_V)),
    );
    (size, kind, losses).prop_map(|(size, kind, losses)| SolarArray {
        enabled: kind.0,
        name: kind.1,
        peak: Watts(size.0),
        tilt: Degrees(size.1),
        facing: Degrees(size.2),
        mounting: kind.2,
        controller: kind.3,
        controller_frac: losses.0,
        self_use: Watts(losses.1),
        shade: kind.4,
        low_light_frac: losses.6,
        dirt_frac: losses.2,
        wiring_frac: losses.3,
        mismatch_frac: losses.4,
        temp_coeff_per_k: losses.5,
        vmp: losses.7.map(Volts),
    })
}

pub fn driving(m: Manners) -> impl Strategy<Value = Driving> {
    let charger = prop_oneof![
        num(m, limits::CHARGER_A).prop_map(|a| DrivingCharger::DcDc { amps: Amps(a) }),
        (
            num(m, limits::ALTERNATOR_V),
            num(m, limits::CABLE_M),
            num(m, limits::CABLE_MM2),
            num(m, limits::CHARGER_A),
            any::<bool>()
        )
            .prop_map(|(volts, length, size, limit, smart_alternator)| {
                DrivingCharger::Relay {
                    alternator: Volts(volts),
                    cable_length: Metres(length),
                    cable_size: SquareMillimetres(size),
                    limit: Amps(limit),
                    smart_alternator,
                }
            }),
    ];
    (any::<bool>(), charger, num(m, limits::MINUTES_A_DAY), every(m), minute(m)).prop_map(
        |(fitted, charger, minutes, every, from_min)| Driving {
            fitted,
            charger,
            minutes,
            every,
            from_min,
        },
    )
}

pub fn hook_up(m: Manners) -> impl Strategy<Value = HookUp> {
    let numbers = (num(m, limits::CHARGER_A), num(m, limits::HOURS_A_DAY));
    (any::<(bool, bool)>(), numbers, every(m), minute(m)).prop_map(
        |((fitted, pass_through), (amps, hours), every, from_min)| HookUp {
            fitted,
            amps: Amps(amps),
            every,
            from_min,
            hours: Hours(hours),
            pass_through,
        },
    )
}

pub fn other(m: Manners) -> impl Strategy<Value = OtherSource> {
    let kinds = vec![OtherSourceKind::Generator, OtherSourceKind::FuelCell, OtherSourceKind::Wind];
    let numbers =
        (num(m, limits::CHARGER_A), num(m, limits::HOURS_A_DAY), num(m, limits::FUEL_L_H));
    (any::<bool>(), select(kinds), numbers, every(m), minute(m)).prop_map(
        |(enabled, kind, (amps, hours, fuel), every, from_min)| OtherSource {
            enabled,
            kind,
            amps: Amps(amps),
            from_min,
            hours: Hours(hours),
            every,
            fuel_per_hour: Litres(fuel),
        },
    )
}
