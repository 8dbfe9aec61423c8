//! The answer with its inputs, as text, picture, table and print need it.

use super::tables::is_measured;
use crate::export::forum_text::{ForumAnswer, Line};
use crate::export::ranking::{RankedRow, Ranking};
use crate::forecast::outlook::Drawer;
use crate::forecast::{Outlook, TripPlan};
use crate::i18n::Arg;
use crate::model::{Load, Setup};
use crate::units::{WattHours, Watts};
use crate::view::answer::{AnswerDetail, AnswerView, Drain};
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::chart::SocChart;
use crate::view::lang::{
    amp_hours, full_date, number, pair, peak_watts, percent, t, t_args, watt_hours_a_day, watts,
};
use crate::view::outlook::Calculation;
use crate::view::outlook::picture::course_chart;
use crate::view::outlook::verdict::verdict;
use crate::view::outlook::words::{answer_detail, answer_view};
use crate::view::state::AppState;
use crate::view::words::names::{chemistry_name, draw_source_name, load_name, setup_name};
use leptos::prelude::*;

/// What is given on; copies share it.
#[derive(Clone, Copy)]
pub struct Outcome {
    /// The page.
    pub app: AppState,
    /// The calculation behind it.
    pub calculation: Calculation,
}

impl Outcome {
    /// The answer now with all that belongs to it, followed in effects.
    #[must_use]
    pub fn whole(self) -> Option<WholeAnswer> {
        self.calculation.of_whole_stay(self.app, |facts| WholeAnswer {
            answer: answer_view(facts),
            verdict: verdict(facts),
            detail: answer_detail(facts),
            course: course_chart(facts),
        })
    }

    /// Plan and average course now, followed in effects.
    #[must_use]
    pub fn course(self) -> Option<(ArcPtrEq<TripPlan>, ArcPtrEq<Outlook>)> {
        self.calculation.plan.get().zip(self.calculation.outlook.get())
    }
}

/// The answer with all that belongs to it.
#[derive(Clone, Debug)]
pub struct WholeAnswer {
    /// The answer itself.
    pub answer: AnswerView,
    /// The same in a sentence or two, once the odds are there.
    pub verdict: Option<String>,
    /// What stands below it.
    pub detail: AnswerDetail,
    /// Course of the battery.
    pub course: Option<SocChart>,
}

fn line(label: String, value: String) -> Line {
    Line { label, value }
}

fn nights(count: u16) -> Arg<'static> {
    Arg::Count(i32::from(count))
}

/// The answer in figures, largest question first.
fn answer_lines(answer: &AnswerView) -> Vec<Line> {
    // Each line is of the odds: the average course says nothing of nine times in ten.
    let Some(chance) = answer.chance_frac else {
        return vec![line(t("post-nights"), t("answer-working"))];
    };
    let sure = [("n", nights(answer.sure_nights)), ("asked", nights(answer.asked_nights))];
    let sure = if answer.open_ended {
        t_args("post-nights-open", &sure)
    } else {
        t_args("post-nights-value", &sure)
    };
    let mut lines = vec![line(t("post-nights"), sure), line(t("post-chance"), percent(chance))];
    if let Some(when) = &answer.first_low {
        lines.push(line(t("post-first-low"), when.clone()));
    }
    lines.push(line(t("post-lowest"), percent(answer.lowest_soc_frac)));
    lines
}

/// What the answer is of: where, when, with what.
#[must_use]
pub fn setup_lines(setup: &Setup, outlook: Option<&Outlook>) -> Vec<Line> {
    let trip = &setup.trip;
    let when = t_args(
        "post-when-value",
        &[("date", Arg::Text(&full_date(trip.start()))), ("n", Arg::Count(i32::from(trip.nights)))],
    );
    let place = trip.place.name.trim();
    let mut lines = Vec::new();
    if !place.is_empty() {
        lines.push(line(t("post-where"), place.to_owned()));
    }
    lines.push(line(t("post-when"), when));
    let count = setup.enabled_loads().count();
    let count = ("n", Arg::Count(i32::try_from(count).unwrap_or(i32::MAX)));
    lines.push(line(
        t("post-loads"),
        match outlook {
            Some(outlook) => {
                let need = watt_hours_a_day(outlook.need_per_day);
                t_args("post-loads-need", &[count, ("need", Arg::Text(&need))])
            }
            None => t_args("post-loads-count", &[count]),
        },
    ));
    let bank = &setup.bank;
    let capacity = amp_hours(bank.rated_capacity());
    let volts = number(bank.system.nominal().0, 0);
    lines.push(line(
        t("post-battery"),
        t_args(
            "post-battery-value",
            &[
                ("capacity", Arg::Text(&capacity)),
                ("volts", Arg::Text(&volts)),
                ("kind", Arg::Text(&chemistry_name(bank.chemistry))),
                ("from", Arg::Text(&percent(bank.soc_start_frac))),
                ("to", Arg::Text(&percent(bank.soc_min_frac))),
            ],
        ),
    ));
    let peak = setup.solar_peak();
    if peak > Watts::ZERO {
        lines.push(line(t("post-solar"), peak_watts(peak)));
    }
    lines
}

/// Setup and answer, to be pasted somewhere.
#[must_use]
pub fn forum_answer(
    setup: &Setup,
    outlook: Option<&Outlook>,
    whole: Option<&WholeAnswer>,
    helps: Option<String>,
    link: String,
) -> ForumAnswer {
    let mut lines = whole.map(|whole| answer_lines(&whole.answer)).unwrap_or_default();
    lines.extend(setup_lines(setup, outlook));
    let drains = whole.map(|whole| whole.detail.drains.as_slice()).unwrap_or_default();
    let drains =
        drains.iter().map(|drain| line(drain.name.clone(), watt_hours_a_day(drain.per_day)));
    let helps = helps.map(|helps| pair(&t("post-helps"), &helps));
    ForumAnswer {
        verdict: whole.and_then(|whole| whole.verdict.clone()).unwrap_or_default(),
        title: t_args("post-title", &[("name", Arg::Text(&setup_name(setup)))]),
        between: pair("", ""),
        lines,
        drains_title: t("answer-drains"),
        drains: drains.collect(),
        notes: helps.into_iter().chain([t("post-note")]).collect(),
        link_label: t("post-link"),
        link,
    }
}

/// What takes most, as a picture has it.
#[must_use]
pub fn ranking_of(setup: &Setup, drains: &[Drain]) -> Ranking {
    let longest = drains.iter().map(|drain| drain.per_day.0).fold(0.0, f64::max);
    let rows = drains.iter().map(|drain| RankedRow {
        label: drain.name.clone(),
        value: watt_hours_a_day(drain.per_day),
        length_frac: if longest > 0.0 { drain.per_day.0 / longest } else { 0.0 },
    });
    Ranking {
        title: t("answer-drains"),
        subtitle: what_and_when(setup),
        rows: rows.collect(),
        footer: t("post-note"),
    }
}

/// The loads that count by what they take, with how each draw is known, as a picture has it.
#[must_use]
pub fn posted_ranking(setup: &Setup, outlook: &Outlook, measured_only: bool) -> Ranking {
    let loads = outlook.shares.iter().filter_map(|share| match share.drawer {
        Drawer::Load(id) => setup.load(id).map(|load| (load, share.per_day)),
        Drawer::InverterIdle | Drawer::Electronics => None,
    });
    let loads: Vec<(&Load, WattHours)> =
        loads.filter(|(load, _)| !measured_only || is_measured(load)).collect();
    let longest = loads.iter().map(|(_, per_day)| per_day.0).fold(0.0, f64::max);
    let rows = loads.into_iter().map(|(load, per_day)| RankedRow {
        label: [load_name(load), watts(load.draw.watts()), draw_source_name(load.draw_source)]
            .join(" · "),
        value: watt_hours_a_day(per_day),
        length_frac: if longest > 0.0 { per_day.0 / longest } else { 0.0 },
    });
    Ranking {
        title: t("post-loads-title"),
        subtitle: what_and_when(setup),
        rows: rows.collect(),
        footer: t("post-note"),
    }
}

/// Name, place and date of a setup.
fn what_and_when(setup: &Setup) -> String {
    let trip = &setup.trip;
    let when = full_date(trip.start());
    [setup_name(setup).as_str(), trip.place.name.as_str(), when.as_str()]
        .into_iter()
        .filter(|part| !part.trim().is_empty())
        .collect::<Vec<_>>()
        .join(" · ")
}
