//! What the check of a run says, in words and figures.

use crate::advice::workshop::wiring::{
    CableFinding, CableSizes, CurrentFrom, RunVerdict, Severity,
};
use crate::i18n::Arg;
use crate::model::{CableRun, ConductorSize, Setup};
use crate::physics::cable::{self, GAUGES, IEC_60228_CLASS_5};
use crate::physics::fuse::{FuseChoice, FuseKind};
use crate::units::{Measure, SquareMillimetres, UnitSystem};
use crate::view::icons::{Icon, icon};
use crate::view::lang::{amps, key, measured, number, quantity, t, t_args, temperature, watts};
use crate::view::reader;
use crate::view::words::names::load_name_by_id;
use leptos::prelude::*;
use std::sync::LazyLock;

/// All sizes that can be chosen: metric, then wire gauges.
pub(super) static SIZES: LazyLock<Vec<ConductorSize>> = LazyLock::new(|| {
    let metric = IEC_60228_CLASS_5.iter().map(|(area, _)| ConductorSize::Metric { area: *area });
    let gauges = GAUGES.iter().map(|gauge| ConductorSize::Awg { gauge: *gauge });
    metric.chain(gauges).collect()
});

/// Place in [`SIZES`] of the size nearest to this one, of its kind.
pub(super) fn nearest(size: ConductorSize) -> usize {
    let is_metric = |size: &ConductorSize| matches!(size, ConductorSize::Metric { .. });
    let off = |other: &ConductorSize| (cable::area(*other).0 / cable::area(size).0).ln().abs();
    SIZES
        .iter()
        .enumerate()
        .filter(|(_, other)| is_metric(other) == is_metric(&size))
        .min_by(|a, b| off(a.1).total_cmp(&off(b.1)))
        .map_or(0, |(index, _)| index)
}

/// A metric size as it is sold.
fn square_millimetres(area: SquareMillimetres) -> String {
    let decimals = if area.0 < 1.0 { 2 } else { u8::from(area.0 < 9.95) };
    quantity(area.0, decimals, Measure::Section.unit(UnitSystem::Metric))
}

/// Name of a wire gauge: 0 is 1/0, -3 is 4/0.
fn gauge_name(gauge: i8) -> String {
    if gauge <= 0 {
        format!("{}/0", number(f64::from(1 - gauge), 0))
    } else {
        number(f64::from(gauge), 0)
    }
}

/// A size as it is sold.
pub(super) fn size_words(size: ConductorSize) -> String {
    match size {
        ConductorSize::Metric { area } => square_millimetres(area),
        ConductorSize::Awg { .. } if reader::system() == UnitSystem::Us => {
            measured(Measure::Section, cable::area(size).0, 0)
        }
        ConductorSize::Awg { gauge } => {
            let (gauge, area) = (gauge_name(gauge), square_millimetres(cable::area(size)));
            t_args("wiring-awg", &[("gauge", Arg::Text(&gauge)), ("area", Arg::Text(&area))])
        }
    }
}

fn sizes_words(sizes: CableSizes) -> String {
    let metric = sizes.metric.map(square_millimetres);
    let gauge = sizes.gauge.map(|gauge| size_words(ConductorSize::Awg { gauge }));
    match (metric, gauge) {
        (Some(_), Some(gauge)) if reader::system() == UnitSystem::Us => gauge,
        (Some(metric), Some(gauge)) => {
            let metric = ("metric", Arg::Text(metric.as_str()));
            t_args("wiring-sizes", &[metric, ("gauge", Arg::Text(&gauge))])
        }
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => t("wiring-size-none"),
    }
}

fn fuse_words(choice: Option<FuseChoice>, verdict: &RunVerdict) -> String {
    let Some(choice) = choice else { return t("wiring-fuse-none") };
    let kind = match choice.kind {
        FuseKind::Blade => key!("fuse-blade"),
        FuseKind::LargeBlade => key!("fuse-large-blade"),
        FuseKind::Bolted => key!("fuse-bolted"),
        FuseKind::ClassT => key!("fuse-class-t"),
    };
    let rating = amps(choice.rating);
    let words = t_args(kind, &[("rating", Arg::Text(&rating))]);
    if choice.needs_main_fuse {
        let prospective = amps(verdict.prospective);
        t_args(
            "fuse-behind-main",
            &[("fuse", Arg::Text(&words)), ("prospective", Arg::Text(&prospective))],
        )
    } else {
        words
    }
}

/// Two decimals: a drop is tenths of a volt.
fn drop_volts(volts: crate::units::Volts) -> String {
    quantity(volts.0, 2, "V")
}

/// One decimal: limits are 3 and 10 percent.
fn drop_percent(frac: f64) -> String {
    quantity(frac * 100.0, 1, "%")
}

fn finding_words(finding: &CableFinding) -> String {
    let two = |key: &str, a: (&str, String), b: (&str, String)| {
        t_args(key, &[(a.0, Arg::Text(&a.1)), (b.0, Arg::Text(&b.1))])
    };
    match *finding {
        CableFinding::DropTooHigh { drop, drop_frac, allowed_frac } => {
            let drop = format!("{} ({})", drop_volts(drop), drop_percent(drop_frac));
            two(
                key!("found-drop"),
                ("drop", drop),
                ("allowed", quantity(allowed_frac * 100.0, 0, "%")),
            )
        }
        CableFinding::MayCutOut { at_load, cut_out } => two(
            key!("found-cut-out"),
            ("volts", drop_volts(at_load)),
            ("limit", drop_volts(cut_out)),
        ),
        CableFinding::CableTooThin { current, ampacity } => {
            two(key!("found-too-thin"), ("current", amps(current)), ("ampacity", amps(ampacity)))
        }
        CableFinding::BelowMinimumSize { least, .. } => t_args(
            "found-minimum",
            &[("least", Arg::Text(&measured(Measure::Section, least.0, 1)))],
        ),
        CableFinding::NoFuse => t("found-no-fuse"),
        CableFinding::FuseAboveCable { fuse, ampacity } => {
            two(key!("found-fuse-above"), ("fuse", amps(fuse)), ("ampacity", amps(ampacity)))
        }
        CableFinding::FuseBelowLoad { fuse, needed } => {
            two(key!("found-fuse-below"), ("fuse", amps(fuse)), ("needed", amps(needed)))
        }
        CableFinding::FuseMayBlowAtStart { fuse, start } => {
            two(key!("found-fuse-start"), ("fuse", amps(fuse)), ("start", amps(start)))
        }
        CableFinding::NoFuseFits { from, to } => {
            two(key!("found-no-fuse-fits"), ("from", amps(from)), ("to", amps(to)))
        }
        CableFinding::HighInterruptNeeded { prospective, blade } => {
            two(key!("found-interrupt"), ("prospective", amps(prospective)), ("blade", amps(blade)))
        }
        CableFinding::FailsAsSaeGauge { gauge, drop_frac } => {
            two(key!("found-sae"), ("gauge", gauge_name(gauge)), ("drop", drop_percent(drop_frac)))
        }
        CableFinding::WarmerThanAssumed { conductor, assumed } => two(
            key!("found-warmer"),
            ("conductor", temperature(conductor)),
            ("assumed", temperature(assumed)),
        ),
        CableFinding::LoadMissing { .. } => t("found-load-missing"),
        CableFinding::CurrentUnknown => t("found-current-unknown"),
    }
}

/// How much something found matters, in a word.
pub(in crate::view::tools) fn severity_word(severity: Severity) -> String {
    t(match severity {
        Severity::Danger => key!("severity-danger"),
        Severity::Warning => key!("severity-warning"),
        Severity::Note => key!("severity-note"),
    })
}

/// Something found, with its severity as a word and a mark.
pub(in crate::view::tools) fn found(severity: Severity, words: String) -> AnyView {
    let class = match severity {
        Severity::Danger => "found found-danger",
        Severity::Warning => "found found-warning",
        Severity::Note => "found",
    };
    let mark = (severity != Severity::Note).then(|| icon(Icon::Caution));
    view! { <li class=class>{mark}<span><strong>{severity_word(severity)}</strong> " " {words}</span></li> }
        .into_any()
}

/// The verdict.
pub(super) fn view(verdict: &RunVerdict, setup: &Setup, run: &CableRun) -> AnyView {
    let mut findings: Vec<AnyView> = verdict
        .findings
        .iter()
        .map(|finding| found(finding.severity(), finding_words(finding)))
        .collect();
    if findings.is_empty() {
        findings.push(
            view! { <li class="found">{icon(Icon::Done)}<span>{t("found-nothing")}</span></li> }
                .into_any(),
        );
    }
    let from = match verdict.current.from {
        CurrentFrom::Typed => t("current-typed"),
        CurrentFrom::Inverter => t("current-inverter"),
        CurrentFrom::Load(id) => {
            t_args("current-load", &[("name", Arg::Text(&load_name_by_id(setup, id)))])
        }
    };
    let current = verdict.current;
    let mut currents = amps(current.continuous);
    if current.start > current.continuous {
        let start = amps(current.start);
        let text = t_args("verdict-start", &[("start", Arg::Text(&start))]);
        currents = format!("{currents}, {text}");
    }
    let drop = format!("{} = {}", drop_volts(verdict.drop), drop_percent(verdict.drop_frac));
    let window = {
        let (from, to) = (amps(verdict.fuse_window.from), amps(verdict.fuse_window.to));
        t_args("verdict-window", &[("from", Arg::Text(&from)), ("to", Arg::Text(&to))])
    };
    let suggested = verdict.suggested().metric.map(square_millimetres);
    let suggested_fuse = suggested.map(|size| {
        let size = ("size", Arg::Text(size.as_str()));
        if verdict.suggested_fuse.is_none() {
            return t_args("verdict-suggested-none", &[size]);
        }
        let fuse = fuse_words(verdict.suggested_fuse, verdict);
        t_args("verdict-suggested", &[size, ("fuse", Arg::Text(&fuse))])
    });
    let allowed = quantity(verdict.allowed_frac * 100.0, 0, "%");
    let rows = [
        (t("verdict-current"), currents),
        (t_args("verdict-drop", &[("allowed", Arg::Text(&allowed))]), drop),
        (t("verdict-ampacity"), amps(verdict.ampacity)),
        (t("verdict-conductor"), temperature(verdict.conductor)),
        (t("verdict-lost"), watts(verdict.lost)),
        (t("verdict-3"), sizes_words(verdict.for_3_percent)),
        (t("verdict-10"), sizes_words(verdict.for_10_percent)),
        (t("verdict-fuse-window"), window),
        (
            t_args("verdict-fuse", &[("size", Arg::Text(&size_words(run.size)))]),
            fuse_words(verdict.fuse, verdict),
        ),
        (t("verdict-short"), amps(verdict.prospective)),
    ];
    let rows: Vec<AnyView> = rows
        .into_iter()
        .map(|(label, value)| {
            view! { <div class="ledger-row"><dt>{label}</dt><dd>{value}</dd></div> }.into_any()
        })
        .collect();
    view! {
        <ul class="founds">{findings}</ul>
        <p><small>{from}</small></p>
        <dl class="ledger ledger-wide">{rows}</dl>
        {suggested_fuse.map(|text| view! { <p>{text}</p> })}
    }
    .into_any()
}
