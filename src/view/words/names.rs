//! Names and units of things: one rule for each.

use crate::forecast::outlook::Drawer;
use crate::i18n::Arg;
use crate::model::catalogue::name_key;
use crate::model::{Chemistry, DrawSource, Group, Load, Setup, Vehicle};
use crate::units::{Kilograms, Measure, Money};
use crate::view::icons::Icon;
use crate::view::lang::{self, key, measured, short_date, t, t_args};
use crate::view::reader;
use crate::view::state::Screen;

/// The load's name: the user's own, else the catalogue's.
#[must_use]
pub fn load_name(load: &Load) -> String {
    if load.name.trim().is_empty() { usual_name(load) } else { load.name.clone() }
}

/// Name of the load with this id.
#[must_use]
pub fn load_name_by_id(setup: &Setup, id: u32) -> String {
    setup.load(id).map_or_else(|| t("load-unnamed"), load_name)
}

/// What the load is called when the user gave no name.
#[must_use]
pub fn usual_name(load: &Load) -> String {
    t(load.appliance.and_then(name_key).unwrap_or(key!("load-unnamed")))
}

/// Name of a group.
#[must_use]
pub fn group_name(group: Group) -> String {
    t(match group {
        Group::Cold => key!("group-cold"),
        Group::Heat => key!("group-heat"),
        Group::Air => key!("group-air"),
        Group::Water => key!("group-water"),
        Group::Light => key!("group-light"),
        Group::Screens => key!("group-screens"),
        Group::Net => key!("group-net"),
        Group::Health => key!("group-health"),
        Group::Kitchen => key!("group-kitchen"),
        Group::Body => key!("group-body"),
        Group::Tools => key!("group-tools"),
        Group::Vehicle => key!("group-vehicle"),
        Group::Standby => key!("group-standby"),
        Group::Other => key!("group-other"),
    })
}

/// How the draw is known, in the order it is offered.
pub const DRAW_SOURCES: [DrawSource; 4] =
    [DrawSource::Meter, DrawSource::SpecSheet, DrawSource::Label, DrawSource::Estimate];

/// How the draw is known.
#[must_use]
pub fn draw_source_name(draw_source: DrawSource) -> String {
    t(match draw_source {
        DrawSource::Meter => key!("learned-meter"),
        DrawSource::SpecSheet => key!("learned-spec"),
        DrawSource::Label => key!("learned-label"),
        DrawSource::Estimate => key!("learned-estimate"),
    })
}

/// Name of whoever draws.
#[must_use]
pub fn drawer_name(setup: &Setup, drawer: Drawer) -> String {
    match drawer {
        Drawer::Load(id) => load_name_by_id(setup, id),
        Drawer::InverterIdle => t("drawer-inverter-idle"),
        Drawer::Electronics => t("drawer-electronics"),
    }
}

/// Name of a chemistry.
#[must_use]
pub fn chemistry_name(chemistry: Chemistry) -> String {
    t(match chemistry {
        Chemistry::Flooded => key!("chemistry-flooded"),
        Chemistry::Agm => key!("chemistry-agm"),
        Chemistry::Gel => key!("chemistry-gel"),
        Chemistry::LiFePo4 => key!("chemistry-lithium"),
    })
}

/// The chemistries to choose from, each with its picture.
#[must_use]
pub fn chemistries() -> Vec<(Icon, String)> {
    let picture = |chemistry| match chemistry {
        Chemistry::Flooded => Icon::BatteryWet,
        Chemistry::Agm => Icon::BatteryMat,
        Chemistry::Gel => Icon::BatteryGel,
        Chemistry::LiFePo4 => Icon::BatteryCells,
    };
    Chemistry::ALL.into_iter().map(|kind| (picture(kind), chemistry_name(kind))).collect()
}

/// A name, or what stands for one.
#[must_use]
pub fn name_or_nameless(name: &str) -> String {
    if name.trim().is_empty() { t("setup-nameless") } else { name.to_owned() }
}

/// Name of a setup; the invented example is called that until it gets a name.
#[must_use]
pub fn setup_name(setup: &Setup) -> String {
    if setup.name.trim().is_empty() && setup.example {
        t("setup-example")
    } else {
        name_or_nameless(&setup.name)
    }
}

/// Name of panels that are entered together: the user's, else its number.
#[must_use]
pub fn array_name(setup: &Setup, index: usize) -> String {
    let own = setup.solar.get(index).map(|array| array.name.as_str()).unwrap_or_default();
    if own.trim().is_empty() {
        t_args("solar-number", &[("n", Arg::Count(count(index + 1)))])
    } else {
        own.to_owned()
    }
}

/// An amount of money in the user's currency.
#[must_use]
pub fn money(setup: &Setup, amount: Money) -> String {
    lang::money(&lang::number(amount.0, 0), &reader::currency(setup))
}

/// A weight.
#[must_use]
pub fn kilograms(weight: Kilograms) -> String {
    measured(Measure::Weight, weight.0, u8::from(weight.0.abs() < 9.95))
}

/// Day of the trip as weekday and date.
#[must_use]
pub fn trip_day(setup: &Setup, day: usize) -> String {
    let days = i64::try_from(day).unwrap_or(0);
    setup.trip.start().checked_add(time::Duration::days(days)).map_or_else(String::new, short_date)
}

/// Name of a screen.
#[must_use]
pub fn screen_title(screen: Screen) -> String {
    t(match screen {
        Screen::Improvements => key!("part-helps"),
        Screen::Ways => key!("part-ways"),
        Screen::Compare => key!("part-compare"),
        Screen::Year => key!("part-year"),
        Screen::OnSite => key!("part-on-site"),
        Screen::Log => key!("part-log"),
        Screen::Measure => key!("part-measure"),
        Screen::Wiring => key!("part-wiring"),
        Screen::Inverter => key!("part-inverter"),
    })
}

/// A count for plural forms.
#[must_use]
pub fn count(number: usize) -> i32 {
    i32::try_from(number).unwrap_or(i32::MAX)
}

/// A whole number to be put into a text, which may choose its plural by it.
#[must_use]
pub fn counted(number: usize) -> Arg<'static> {
    Arg::Count(count(number))
}

/// What somebody can travel in, with pictures, in the order of [`Vehicle::ALL`].
#[must_use]
pub fn vehicles() -> Vec<(Icon, String)> {
    let picture = |vehicle| match vehicle {
        Vehicle::Van => Icon::CamperVan,
        Vehicle::Caravan => Icon::Caravan,
        Vehicle::Motorhome => Icon::Motorhome,
    };
    Vehicle::ALL.into_iter().map(|vehicle| (picture(vehicle), vehicle_name(vehicle))).collect()
}

fn vehicle_name(vehicle: Vehicle) -> String {
    t(match vehicle {
        Vehicle::Van => key!("vehicle-van"),
        Vehicle::Caravan => key!("vehicle-caravan"),
        Vehicle::Motorhome => key!("vehicle-motorhome"),
    })
}
