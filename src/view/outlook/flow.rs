//! The forecast as an energy river: an average day of the stay from the sun on the panels to the
//! appliances, with everything lost on the way.

use super::facts::{Facts, days_of};
use crate::physics::solar::LossFlow;
use crate::units::WattHours;
use crate::view::chart::{FlowChart, FlowKind, FlowPart};
use crate::view::lang::t;

/// The river of an average day of the stay.
#[must_use]
pub fn average_day(facts: &Facts<'_>) -> FlowChart {
    let ledger = &facts.outlook.course.ledger;
    let days = days_of(facts);
    let sun = sun_losses(facts, (ledger.sun + ledger.unused_sun) / days);
    let mut parts = Vec::new();
    let mut part = |kind: FlowKind, label: String, energy: WattHours| {
        if energy.0 > 0.05 {
            parts.push(FlowPart { label, energy, kind });
        }
    };
    part(FlowKind::Source, t("flow-panels"), sun.ideal);
    part(FlowKind::Source, t("balance-driving"), (ledger.driving + ledger.charging_cable) / days);
    part(FlowKind::Source, t("balance-hook-up"), ledger.hook_up / days);
    part(FlowKind::Source, t("balance-other"), ledger.other / days);
    part(FlowKind::Source, t("flow-from-battery"), -ledger.stored / days);
    part(FlowKind::Loss, t("flow-snow"), sun.snow);
    part(FlowKind::Loss, t("flow-shade-glass"), sun.shade + sun.reflection);
    // Cold cells give more than their rating: what they gain makes up for weak light first.
    part(FlowKind::Loss, t("flow-heat-low-light"), sun.low_light + sun.heat);
    part(FlowKind::Loss, t("flow-dirt-wires"), sun.dirt + sun.mismatch + sun.wiring);
    part(FlowKind::Loss, t("flow-controller"), sun.controller);
    part(FlowKind::Unused, t("balance-unused-sun"), ledger.unused_sun / days);
    part(FlowKind::Loss, t("flow-charging-cable"), ledger.charging_cable / days);
    part(FlowKind::Loss, t("flow-charging"), ledger.charge_loss / days);
    part(FlowKind::Loss, t("flow-resistance"), ledger.resistance_loss / days);
    part(FlowKind::Loss, t("flow-cables"), ledger.cable_loss / days);
    part(FlowKind::Loss, t("flow-self-discharge"), ledger.self_discharge / days);
    part(FlowKind::Loss, t("flow-conversion"), ledger.conversion / days);
    part(FlowKind::Loss, t("drawer-inverter-idle"), ledger.inverter_idle / days);
    part(FlowKind::Loss, t("drawer-electronics"), ledger.electronics / days);
    part(FlowKind::Loss, t("flow-battery-heating"), ledger.battery_heating / days);
    part(FlowKind::Load, t("flow-direct-loads"), ledger.direct_loads / days);
    part(FlowKind::Load, t("flow-mains-loads"), ledger.mains_loads / days);
    part(FlowKind::Kept, t("flow-into-battery"), ledger.stored / days);
    FlowChart { title: t("flow-title"), parts }
}

/// Losses between the light on the panels and the battery circuit, of the middle day of the stay,
/// brought to what is delivered on an average day.
pub(super) fn sun_losses(facts: &Facts<'_>, delivered: WattHours) -> LossFlow {
    let middle = facts.plan.nights_wanted / 2;
    let k = facts
        .plan
        .sun
        .days
        .get(middle)
        .map_or(0.4, |day| day.given_clearness_frac.unwrap_or_else(|| day.distribution.mean()));
    let day = facts.plan.sun.table.losses(middle, k);
    if day.delivered.0 <= 0.0 {
        return LossFlow::default();
    }
    let scale = delivered / day.delivered;
    LossFlow {
        ideal: day.ideal * scale,
        snow: day.snow * scale,
        shade: day.shade * scale,
        reflection: day.reflection * scale,
        low_light: day.low_light * scale,
        heat: day.heat * scale,
        dirt: day.dirt * scale,
        mismatch: day.mismatch * scale,
        wiring: day.wiring * scale,
        controller: day.controller * scale,
        delivered,
    }
}
