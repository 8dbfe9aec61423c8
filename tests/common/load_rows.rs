//! Strategies for loads.

use super::values::Manners::{self, Tame, Wild};
use super::values::{minute, num, text};
use nightbank::model::*;
use nightbank::units::*;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::{collection, option};

fn draw(m: Manners) -> impl Strategy<Value = Draw> {
    prop_oneof![
        num(m, limits::DRAW_W).prop_map(|w| Draw::Power { watts: Watts(w) }),
        (num(m, limits::DRAW_A), num(m, limits::STATED_V))
            .prop_map(|(a, v)| Draw::Current { amps: Amps(a), volts: Volts(v) }),
    ]
}

fn usage(m: Manners) -> impl Strategy<Value = Usage> {
    prop_oneof![
        num(m, limits::MINUTES_A_DAY).prop_map(|minutes| Usage::Daily { minutes }),
        Just(Usage::AlwaysOn),
        num(m, limits::FRAC).prop_map(|frac| Usage::Duty { cycle: DutyCycle::Fixed { frac } }),
        num(m, limits::FRAC).prop_map(|frac_at_25c| Usage::Duty {
            cycle: DutyCycle::AirTemperature { frac_at_25c }
        }),
        (num(m, limits::HEAT_W), num(m, limits::START_WH)).prop_map(|(heat, start)| Usage::Duty {
            cycle: DutyCycle::Heating { heat: Watts(heat), start: WattHours(start) }
        }),
        num(m, limits::FRAC)
            .prop_map(|frac_at_25c| Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c } }),
        Just(Usage::WhileDriving),
        (any::<bool>(), num(m, limits::MINUTES_A_DAY)).prop_map(|(first, minutes)| Usage::Once {
            at: if first { StayEnd::Arrival } else { StayEnd::Leaving },
            minutes
        }),
        (
            num(m, limits::CHARGE_EVERY_DAYS),
            num(m, limits::CELL_MAH),
            num(m, limits::CELL_V),
            num(m, limits::CONVERTER_FRAC)
        )
            .prop_map(|(every_days, cell, volts, charger_frac)| Usage::Charges {
                every_days,
                cell: MilliAmpHours(cell),
                cell_volts: Volts(volts),
                charger_frac
            }),
        (num(m, limits::LITRES_A_DAY), num(m, limits::FLOW_L_MIN), any::<bool>()).prop_map(
            |(litres, flow, pumped_twice)| Usage::Litres {
                litres_per_day: Litres(litres),
                flow: LitresPerMinute(flow),
                pumped_twice
            }
        ),
        (num(m, limits::USES_A_DAY), num(m, limits::SECONDS_A_USE))
            .prop_map(|(per_day, seconds)| Usage::Uses { per_day, seconds }),
        num(m, limits::ENERGY_WH_A_DAY)
            .prop_map(|per_day| Usage::Energy { per_day: WattHours(per_day) }),
    ]
    .prop_map(listed)
}

/// Names every way of use, so that a new one is thought of in the strategy above.
fn listed(usage: Usage) -> Usage {
    match usage {
        Usage::Daily { .. }
        | Usage::AlwaysOn
        | Usage::Duty { cycle: DutyCycle::Fixed { .. } | DutyCycle::AirTemperature { .. } }
        | Usage::Duty { cycle: DutyCycle::Heating { .. } | DutyCycle::Cooling { .. } }
        | Usage::WhileDriving
        | Usage::Once { .. }
        | Usage::Charges { .. }
        | Usage::Litres { .. }
        | Usage::Uses { .. }
        | Usage::Energy { .. } => usage,
    }
}

fn appliance() -> impl Strategy<Value = Option<u16>> {
    let known: Vec<u16> = catalogue::ALL.iter().map(|appliance| appliance.id).collect();
    prop_oneof![2 => Just(None), 4 => select(known).prop_map(Some), 1 => any::<u16>().prop_map(Some)]
}

fn window(m: Manners) -> impl Strategy<Value = Window> {
    prop_oneof![
        select(vec![Window::ALL_DAY, Window::EVENING, Window::NIGHT, Window::DAYTIME]),
        (minute(m), minute(m)).prop_map(|(from_min, to_min)| Window { from_min, to_min }),
    ]
}

/// Seldom any; more than there may be where manners are bad.
fn more_windows(m: Manners) -> impl Strategy<Value = Vec<Window>> {
    let most = if m == Wild { 9 } else { limits::MAX_MORE_WINDOWS };
    prop_oneof![3 => Just(Vec::new()), 1 => collection::vec(window(m), 0..=most)]
}

fn cut_out(m: Manners) -> impl Strategy<Value = Option<CutOut>> {
    let volts = (num(m, limits::CUT_OUT_V), num(m, limits::CUT_OUT_V));
    option::of(volts.prop_map(|(off, on)| CutOut { off: Volts(off), on: Volts(on) }))
}

fn own_load(m: Manners) -> impl Strategy<Value = Load> {
    let who = (any::<u32>(), appliance(), text(m, 40), select(Group::ALL.to_vec()));
    let quantity = if m == Wild { (0..=u16::MAX).boxed() } else { (1..=99u16).boxed() };
    let draw_source =
        vec![DrawSource::Meter, DrawSource::SpecSheet, DrawSource::Label, DrawSource::Estimate];
    let how = (quantity, select(draw_source), draw(m), option::of(num(m, limits::FRAC)));
    let feed = (select(vec![Feed::Dc, Feed::Inverter]), select(LoadPlace::ALL.to_vec()));
    let use_ = (feed, usage(m), num(m, limits::STANDBY_W), window(m));
    let rest = (num(m, limits::SURGE_FACTOR), cut_out(m), any::<bool>());
    (who, how, use_, more_windows(m), rest).prop_map(|(who, how, use_, more_windows, rest)| Load {
        id: who.0,
        appliance: who.1,
        name: who.2,
        group: who.3,
        quantity: how.0,
        draw_source: how.1,
        draw: how.2,
        spread_frac: how.3,
        feed: use_.0.0,
        place: use_.0.1,
        usage: use_.1,
        standby: Watts(use_.2),
        window: use_.3,
        more_windows,
        surge_factor: rest.0,
        cut_out: rest.1,
        enabled: rest.2,
    })
}

/// A row as it is most often: from the catalogue, one thing changed or none.
pub fn catalogue_load() -> impl Strategy<Value = Load> {
    let system = select(vec![SystemVoltage::V12, SystemVoltage::V24]);
    (select(catalogue::ALL.to_vec()), any::<u32>(), system, own_load(Tame), 0..8).prop_map(
        |(appliance, id, system, other, change)| {
            let mut load = appliance.to_load(id, system);
            match change {
                0 => load.quantity = other.quantity,
                1 => load.usage = other.usage,
                2 => load.draw = other.draw,
                3 => load.name = other.name,
                4 => load.enabled = false,
                5 => (load.window, load.more_windows) = (other.window, other.more_windows),
                _ => {}
            }
            load
        },
    )
}

pub fn load(m: Manners) -> impl Strategy<Value = Load> {
    prop_oneof![own_load(m), catalogue_load()]
}
