//! Prices, readings on site and cable runs in version 1 of a link.

use super::extension::Extension;
use super::scales;
use crate::link::wire::{Fault, Scale, Wire, differing, differing_number, flag, optional};
use crate::model::limits::{self, MAX_NAME_CHARS};
use crate::model::{CableRun, ConductorSize, Correction, Prices, Reading, ReadingKind};
use crate::units::{
    AmpHours, Amps, Celsius, Hours, Kilograms, Metres, Money, SquareMillimetres, Volts,
};

/// Fields that came later.
pub(super) const EXTENSIONS: &[Extension] = &[];

/// Price: 0.01.
const PRICE: Scale = Scale::unsigned(limits::PRICE, 100, &[1000, 100, 1], 4);
/// Weight: 0.01 kg.
const WEIGHT_KG: Scale = Scale::unsigned(limits::WEIGHT_KG, 100, &[100, 10, 1], 4);
/// Time since arrival: 1 min.
const SINCE_ARRIVAL: Scale = Scale::unsigned(limits::SINCE_ARRIVAL_H, 60, &[60, 1], 5);
/// Voltage of the bank: 0.01 V.
const BANK_V: Scale = Scale::unsigned(limits::BANK_V, 100, &[10, 1], 7);
/// Rest before a reading: 0.01 h.
const RESTED: Scale = Scale::unsigned(limits::SINCE_ARRIVAL_H, 100, &[100, 50, 1], 2);
/// Charge used since full: 0.1 Ah.
const USED_AH: Scale = Scale::unsigned(limits::USED_AH, 10, &[10, 1], 6);
/// Consumption, real over planned: 0.001.
const USE_FACTOR: Scale = Scale::unsigned(limits::USE_FACTOR, 1000, &[50, 10, 1], 5);
/// Solar yield, real over planned: 0.001.
const SUN_FACTOR: Scale = Scale::unsigned(limits::SUN_FACTOR, 1000, &[50, 10, 1], 5);
/// Conductor temperature: 0.1 degrees Celsius.
const CONDUCTOR_C: Scale = Scale::signed(limits::CONDUCTOR_C, 10, &[100, 10, 1], 3);
/// Fuse: 0.1 A.
const FUSE_A: Scale = Scale::unsigned(limits::FUSE_A, 10, &[50, 10, 1], 3);

/// Most characters of the currency.
const CURRENCY_CHARS: usize = 4;

/// What a link that does not carry it means.
pub(super) fn plain_prices() -> Prices {
    Prices {
        currency: "€".to_owned(),
        solar_per_100w: Money(120.0),
        solar_kg_per_100w: Kilograms(7.0),
        lead_per_100ah: Money(180.0),
        lead_kg_per_100ah: Kilograms(28.0),
        lithium_per_100ah: Money(450.0),
        lithium_kg_per_100ah: Kilograms(12.0),
        dcdc: Money(250.0),
    }
}

pub(super) fn prices(w: &mut dyn Wire, prices: &mut Prices) -> Result<(), Fault> {
    let base = plain_prices();
    differing(w, &mut prices.currency, &base.currency, |w, text| w.text(text, CURRENCY_CHARS))?;
    let solar = &mut prices.solar_per_100w.0;
    differing_number(w, solar, base.solar_per_100w.0, &PRICE)?;
    let solar_kg = &mut prices.solar_kg_per_100w.0;
    differing_number(w, solar_kg, base.solar_kg_per_100w.0, &WEIGHT_KG)?;
    let lead = &mut prices.lead_per_100ah.0;
    differing_number(w, lead, base.lead_per_100ah.0, &PRICE)?;
    let lead_kg = &mut prices.lead_kg_per_100ah.0;
    differing_number(w, lead_kg, base.lead_kg_per_100ah.0, &WEIGHT_KG)?;
    let lithium = &mut prices.lithium_per_100ah.0;
    differing_number(w, lithium, base.lithium_per_100ah.0, &PRICE)?;
    let lithium_kg = &mut prices.lithium_kg_per_100ah.0;
    differing_number(w, lithium_kg, base.lithium_kg_per_100ah.0, &WEIGHT_KG)?;
    differing_number(w, &mut prices.dcdc.0, base.dcdc.0, &PRICE)
}

/// What the reader fills.
pub(super) fn blank_reading() -> Reading {
    Reading { at: Hours(0.0), kind: ReadingKind::StateOfCharge { soc_frac: 0.0 } }
}

pub(super) fn reading(w: &mut dyn Wire, reading: &mut Reading) -> Result<(), Fault> {
    w.number(&mut reading.at.0, &SINCE_ARRIVAL)?;
    let kind = &mut reading.kind;
    let mut number = kind_number(kind);
    w.bits(&mut number, 2)?;
    if number != kind_number(kind) {
        *kind = match number {
            0 => ReadingKind::StateOfCharge { soc_frac: 0.0 },
            1 => ReadingKind::Voltage { volts: Volts(0.0), rested: Hours(0.0) },
            2 => ReadingKind::Used { amp_hours: AmpHours(0.0) },
            _ => return Err(Fault::UnknownChoice),
        };
    }
    match kind {
        ReadingKind::StateOfCharge { soc_frac } => w.number(soc_frac, &scales::FRAC),
        ReadingKind::Voltage { volts, rested } => {
            w.number(&mut volts.0, &BANK_V)?;
            w.number(&mut rested.0, &RESTED)
        }
        ReadingKind::Used { amp_hours } => w.number(&mut amp_hours.0, &USED_AH),
    }
}

fn kind_number(kind: &ReadingKind) -> u32 {
    match kind {
        ReadingKind::StateOfCharge { .. } => 0,
        ReadingKind::Voltage { .. } => 1,
        ReadingKind::Used { .. } => 2,
    }
}

/// What a link that does not carry it means.
pub(super) fn plain_correction() -> Correction {
    Correction { use_factor: 1.0, sun_factor: 1.0, restart: None }
}

pub(super) fn correction(w: &mut dyn Wire, correction: &mut Correction) -> Result<(), Fault> {
    let base = plain_correction();
    differing_number(w, &mut correction.use_factor, base.use_factor, &USE_FACTOR)?;
    differing_number(w, &mut correction.sun_factor, base.sun_factor, &SUN_FACTOR)?;
    optional(
        w,
        &mut correction.restart,
        || (Hours(0.0), 0.0),
        |w, (at, soc_frac)| {
            w.number(&mut at.0, &SINCE_ARRIVAL)?;
            w.number(soc_frac, &scales::FRAC)
        },
    )
}

/// Wire gauges count from 4/0 = -3.
const LOWEST_GAUGE: i32 = -3;

/// What a link that does not carry it means.
pub(super) fn plain_cable() -> CableRun {
    CableRun {
        name: String::new(),
        load_id: None,
        amps: Amps(10.0),
        length: Metres(5.0),
        size: ConductorSize::Metric { area: SquareMillimetres(6.0) },
        working: Celsius(50.0),
        fuse: Amps(0.0),
        critical: false,
    }
}

pub(super) fn cable(w: &mut dyn Wire, run: &mut CableRun) -> Result<(), Fault> {
    let base = plain_cable();
    differing(w, &mut run.name, &base.name, |w, name| w.text(name, MAX_NAME_CHARS))?;
    optional(w, &mut run.load_id, || 0, |w, id| w.whole(id, 4))?;
    differing_number(w, &mut run.amps.0, base.amps.0, &scales::DRAW_A)?;
    differing_number(w, &mut run.length.0, base.length.0, &scales::CABLE_M)?;
    differing(w, &mut run.size, &base.size, size)?;
    differing_number(w, &mut run.working.0, base.working.0, &CONDUCTOR_C)?;
    differing_number(w, &mut run.fuse.0, base.fuse.0, &FUSE_A)?;
    flag(w, &mut run.critical)
}

fn size(w: &mut dyn Wire, size: &mut ConductorSize) -> Result<(), Fault> {
    let mut by_gauge = matches!(size, ConductorSize::Awg { .. });
    flag(w, &mut by_gauge)?;
    if by_gauge != matches!(size, ConductorSize::Awg { .. }) {
        *size = if by_gauge {
            ConductorSize::Awg { gauge: 0 }
        } else {
            ConductorSize::Metric { area: SquareMillimetres(0.0) }
        };
    }
    match size {
        ConductorSize::Metric { area } => w.number(&mut area.0, &scales::CABLE_MM2),
        ConductorSize::Awg { gauge } => {
            let mut above = u32::try_from(i32::from(*gauge) - LOWEST_GAUGE).unwrap_or(0);
            w.bits(&mut above, 5)?;
            let gauge_number = i32::try_from(above).map_err(|_| Fault::Invalid)? + LOWEST_GAUGE;
            *gauge = i8::try_from(gauge_number).map_err(|_| Fault::Invalid)?;
            Ok(())
        }
    }
}
