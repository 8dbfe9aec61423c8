//! The battery bank.

use super::bank_figures;
use crate::i18n::Arg;
use crate::model::limits::{
    CABLE_M, CABLE_MM2, CABLE_OHM, CAPACITY_AH, FRAC, HEALTH_FRAC, PARALLEL, SOC_MIN_FRAC,
};
use crate::model::{BatteryPlace, Chemistry, Setup, SystemVoltage};
use crate::physics::cable::copper_loop;
use crate::units::{AmpHours, Measure, Metres, Ohms, SquareMillimetres, Volts};
use crate::view::icons::Icon;
use crate::view::lang::{percent, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, Term, cautions, choice_row, disclosure, pictured_row, quiet_button,
    select_field, toggle,
};
use crate::view::words::names::chemistries;
use leptos::prelude::*;

const SYSTEMS: [SystemVoltage; 2] = [SystemVoltage::V12, SystemVoltage::V24];
const BLOCKS: [Volts; 3] = [Volts(6.0), Volts(12.0), Volts(24.0)];
const PLACES: [BatteryPlace; 3] =
    [BatteryPlace::Inside, BatteryPlace::Locker, BatteryPlace::Outside];

/// Blocks of 24 V make no 12 V system.
fn set_system(setup: &mut Setup, system: SystemVoltage) {
    setup.bank.system = system;
    if setup.bank.block_volts > system.nominal() {
        setup.bank.block_volts = system.nominal();
    }
}

fn set_block(setup: &mut Setup, volts: Volts) {
    setup.bank.block_volts = volts.min(setup.bank.system.nominal());
}

pub(super) fn view(app: AppState) -> AnyView {
    let chemistry = Memo::new(move |_| app.setup.with(|setup| setup.bank.chemistry));
    let several = Memo::new(move |_| {
        app.setup.with(|setup| setup.bank.parallel > 1 || setup.bank.series() > 1)
    });
    let usual = Signal::derive(move || {
        let lowest = percent(chemistry.get().usual_soc_min_frac());
        t_args("bank-lowest-usual", &[("lowest", Arg::Text(&lowest))])
    });
    let places = vec![
        (Icon::Inside, t("bank-inside")),
        (Icon::Locker, t("bank-locker")),
        (Icon::Outside, t("bank-outside")),
    ];
    view! {
        {pictured_row(
            app,
            t("bank-chemistry"),
            chemistries(),
            Lens::of(|s| s.bank.chemistry, |s, kind| s.bank.set_chemistry(kind)).choice(&Chemistry::ALL),
        )}
        <div class="fields">
            {NumberField::new(
                    t("bank-capacity"),
                    "Ah",
                    CAPACITY_AH,
                    Lens::of(|s| s.bank.capacity_20h.0, |s, v| s.bank.capacity_20h = AmpHours(v)),
                )
                .term(Term::TwentyHourRate)
                .view(app)}
            {NumberField::new(
                    t("bank-parallel"),
                    "",
                    PARALLEL,
                    Lens::of(
                        |s| f64::from(s.bank.parallel),
                        |s, v| s.bank.parallel = v.round() as u8,
                    ),
                )
                .step(1.0)
                .view(app)}
        </div>
        <div class="fields">
            {NumberField::percent(
                    t("bank-lowest"),
                    SOC_MIN_FRAC,
                    Lens::of(|s| s.bank.soc_min_frac, |s, v| s.bank.soc_min_frac = v),
                )
                .term(Term::DepthOfDischarge)
                .live_hint(usual)
                .view(app)}
            {NumberField::percent(
                    t("bank-start"),
                    FRAC,
                    Lens::of(|s| s.bank.soc_start_frac, |s, v| s.bank.soc_start_frac = v),
                )
                .term(Term::StateOfCharge)
                .view(app)}
        </div>
        {pictured_row(
            app,
            t("bank-place"),
            places,
            Lens::of(|s| s.bank.place, |s, v| s.bank.place = v).choice(&PLACES),
        )}
        {bank_figures::view(app)}
        {disclosure(t("load-more"), false, more(app))}
        {move || {
            let gas_or_cold =
                if chemistry.get().is_lead() { Danger::Hydrogen } else { Danger::LithiumCold };
            let mixed = several.get().then_some(Danger::MixedBatteries);
            cautions([gas_or_cold, Danger::Fuse].into_iter().chain(mixed).collect())
        }}
    }
    .into_any()
}

/// What decides whether LiFePO4 takes a charge in the cold.
fn cold(app: AppState) -> AnyView {
    view! {
        {toggle(
            app,
            t("bank-heated"),
            Some(t("bank-heated-hint")),
            Lens::of(|s| s.bank.heated, |s, v| s.bank.heated = v),
        )}
        {toggle(
            app,
            t("bank-cold-allowed"),
            Some(t("bank-cold-allowed-hint")),
            Lens::of(|s| s.bank.cold_charge_allowed, |s, v| s.bank.cold_charge_allowed = v),
        )}
    }
    .into_any()
}

fn more(app: AppState) -> AnyView {
    let cable = Lens::<f64>::of(|s| s.bank.cable.0, |s, v| s.bank.cable = Ohms(v));
    let cable = NumberField::new(t("bank-cable"), "mΩ", CABLE_OHM, cable);
    let is_24v = Memo::new(move |_| app.setup.with(|s| s.bank.system == SystemVoltage::V24));
    let block = move || {
        let count = if is_24v.get() { 3 } else { 2 };
        let names = vec![t("block-6"), t("block-12"), t("block-24")];
        select_field(
            app,
            t("bank-block"),
            names.into_iter().take(count).collect(),
            Lens::of(|s| s.bank.block_volts, set_block).choice(&BLOCKS),
        )
    };
    let lithium = Memo::new(move |_| app.setup.with(|s| !s.bank.chemistry.is_lead()));
    view! {
        {choice_row(
            app,
            t("bank-system"),
            vec![t("system-12"), t("system-24")],
            Lens::of(|s| s.bank.system, set_system).choice(&SYSTEMS),
        )}
        {move || lithium.get().then(|| cold(app))}
        <div class="fields">
            {NumberField::percent(
                    t("bank-health"),
                    HEALTH_FRAC,
                    Lens::of(|s| s.bank.health_frac, |s, v| s.bank.health_frac = v),
                )
                .term(Term::Health)
                .view(app)}
            {block} {NumberField { scale: 1000.0, ..cable }.hint(t("bank-cable-hint")).view(app)}
        </div>
        {cable_from_size(app)}
    }
    .into_any()
}

/// Works the resistance of the cables out from their length and size.
fn cable_from_size(app: AppState) -> AnyView {
    let (length, size) = (RwSignal::new(2.0), RwSignal::new(25.0));
    let take = move || {
        let ohms =
            copper_loop(Metres(length.get_untracked()), SquareMillimetres(size.get_untracked()));
        app.edit_apart(|s| s.bank.cable = ohms.min(Ohms(CABLE_OHM.max)));
    };
    view! {
        <div class="fields">
            {NumberField::of(Measure::Length, t("bank-cable-length"), CABLE_M, Lens::signal(length)).view(app)}
            {NumberField::of(Measure::Section, t("bank-cable-size"), CABLE_MM2, Lens::signal(size)).view(app)}
        </div>
        <div class="button-row">{quiet_button(None, t("bank-cable-take"), take)}</div>
    }
    .into_any()
}
