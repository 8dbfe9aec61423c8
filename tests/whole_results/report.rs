//! All that the page calculates of a setup, written by the code the page calls.

use super::kept::Report;
use crate::climate_world::world;
use nightbank::advice::changes::improvement::Improvement;
use nightbank::advice::changes::improvements::{ImprovementsJob, InFullJob, TOLD};
use nightbank::advice::changes::ways::{Aim, WaysJob};
use nightbank::advice::changes::wish::Advice;
use nightbank::advice::changes::{Change, candidates::candidates};
use nightbank::advice::compare::alternatives::AlternativesJob;
use nightbank::advice::compare::{CompareJob, LifeCost};
use nightbank::advice::on_site::fit::fit;
use nightbank::advice::on_site::points;
use nightbank::advice::on_site::tilt::best_stand;
use nightbank::advice::on_site::unknowns::Unknowns;
use nightbank::advice::season::YearStripJob;
use nightbank::advice::sizing::{Choice, SizingAim, SizingJob};
use nightbank::advice::trial::Outcome;
use nightbank::advice::workshop::inverter_check;
use nightbank::advice::workshop::wiring::check;
use nightbank::advice::workshop::wiring_runs::suggested_runs;
use nightbank::forecast::demand::LoadEnergy;
use nightbank::forecast::demand::inverter_share::InverterEnergy;
use nightbank::forecast::full_charge::days_full_a_week;
use nightbank::forecast::odds::{EVEN_FRAC, SEQUENCES, SURE_FRAC};
use nightbank::forecast::parked::{coldest_air, parked_day};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{
    Charger, Ledger, MonthlyClimate, Odds, OddsRun, Outlook, TripPlan, charge_session, climate_in,
};
use nightbank::model::climate::Climate;
use nightbank::model::{Chemistry, ConductorSize, Setup};
use nightbank::physics::ampacity::{Insulation, Surroundings, ampacity};
use nightbank::physics::battery::storage::{ParkedDay, parked};
use nightbank::physics::battery::ventilation::ventilation_of;
use nightbank::physics::battery::{BankPhysics, UsableEnergy};
use nightbank::physics::cable::{area, ohm_per_km_at_20c, sae_area};
use nightbank::physics::fuse::choose;
use nightbank::physics::solar::panel::cold_voltage_rise_frac;
use nightbank::units::{AmpHours, Amps, Celsius, Hours, SquareMillimetres, Watts};
use std::sync::Arc;
use time::Duration;

/// A setup with the climate the page has for it: of the world's table, or of what the program carries.
pub struct Case {
    pub setup: Setup,
    climate: Climate,
    sky: MonthlyClimate,
}

impl Case {
    pub fn with_world(setup: Setup) -> Self {
        let climate = climate_in(Some(world()), &setup.trip);
        Self { sky: MonthlyClimate::from(&climate), climate, setup }
    }

    pub fn built_in(setup: Setup) -> Self {
        let climate = climate_in(None, &setup.trip);
        Self { sky: MonthlyClimate::from(&climate), climate, setup }
    }

    fn sun(&self) -> Arc<TripSun> {
        Arc::new(TripSun::build(&self.setup, &self.sky).expect("weather in range"))
    }

    fn plan(&self) -> TripPlan {
        TripPlan::build(&self.setup, self.sun())
    }
}

/// Works to the end, in portions as the page does.
fn whole<E: std::fmt::Debug>(mut advance: impl FnMut(usize) -> Result<bool, E>) {
    while advance(7).expect("weather in range") {}
}

fn odds_of(plan: &Arc<TripPlan>) -> Odds {
    let mut run = OddsRun::new(plan.clone(), SEQUENCES).expect("weather in range");
    while run.advance(50) {}
    run.odds()
}

/// The answer: nights, energy, the course hour by hour, the odds, the battery.
pub fn answer(case: &Case) -> Report {
    let setup = &case.setup;
    let plan = Arc::new(case.plan());
    let outlook = Outlook::of(setup, &plan);
    let mut report = Report::default();
    report.part("Climate");
    report.say("place", &case.climate);
    report.part("Average weather");
    report.say("need a day", &outlook.need_per_day);
    report.say("usable", &outlook.usable);
    report.say("nominal", &outlook.nominal);
    report.say("nights", &(outlook.nights, outlook.nights_open, outlook.first_low));
    report.say("first low, first unmet", &(outlook.course.first_low, outlook.course.first_unmet));
    report.say("lowest", &outlook.course.lowest);
    report.each("share", &outlook.shares);
    report.each("group", outlook.by_group());
    report.each("cut-out", &outlook.cut_outs);
    energy(&mut report, case, &plan);
    balance(&mut report, &plan, &outlook);
    let odds = odds_of(&plan);
    chances(&mut report, &plan, &odds);
    hours(&mut report, &plan, &outlook, &odds);
    battery(&mut report, case, &plan);
    report
}

fn energy(report: &mut Report, case: &Case, plan: &TripPlan) {
    let (setup, air) = (&case.setup, plan.sun.first_whole_day_air());
    report.part("Energy of the first whole day");
    report.say("loads", &LoadEnergy::of(setup, &air));
    report.say("inverter", &InverterEnergy::of(setup, &air));
    let unknowns = Unknowns::of(setup, &case.sky);
    report.say("off by", &unknowns.likely_error);
    report.each("to measure", &unknowns.ranking);
}

fn balance(report: &mut Report, plan: &TripPlan, outlook: &Outlook) {
    let ledger = &outlook.course.ledger;
    report.part("Energy of the stay");
    report.say("balance", ledger);
    report.say("in, used", &(ledger.sources(), ledger.consumption()));
    for day in 0..=plan.nights_wanted {
        let mut sum = Ledger::default();
        let hours = outlook.course.hours.iter().take(plan.stay_hours());
        hours.filter(|hour| hour.day == day).for_each(|hour| sum += hour.ledger);
        report.row(
            &format!("day {day}, sun unused driving hook-up other loads mains stored unmet fuel"),
            [
                sum.sun.0,
                sum.unused_sun.0,
                sum.driving.0,
                sum.hook_up.0,
                sum.other.0,
                sum.direct_loads.0,
                sum.mains_loads.0,
                sum.stored.0,
                sum.unmet.0,
                sum.fuel.0,
            ],
        );
    }
    let middle = plan.nights_wanted / 2;
    let day = &plan.sun.days[middle];
    let clearness = day.given_clearness_frac.unwrap_or_else(|| day.distribution.mean());
    report.say("sun of the middle day", &(clearness, plan.sun.table.losses(middle, clearness)));
}

fn chances(report: &mut Report, plan: &TripPlan, odds: &Odds) {
    report.part("Chances");
    report.row("lasting", odds.lasting_frac.iter().copied());
    for chance in [EVEN_FRAC, 0.8, SURE_FRAC, 0.95] {
        report.say(
            &format!("nights, first low and lowest at {chance}"),
            &(odds.nights_at(chance), odds.first_low_at(chance), odds.lowest_at(chance)),
        );
    }
    report.say("the nights wanted", &odds.chance_of(plan.nights_wanted));
    report.row("lowest at or below, by 5 %", odds.lowest_frac.iter().step_by(10).copied());
    report.say("days full a week", &days_full_a_week(plan));
}

fn hours(report: &mut Report, plan: &TripPlan, outlook: &Outlook, odds: &Odds) {
    report.part("Hour by hour");
    report.text(
        "day hour stage",
        "charge, low and empty line, volts, with the largest running, air, battery, driving, hook-up, \
         one, five and nine in ten below, share low by then",
    );
    for (index, hour) in outlook.course.hours.iter().enumerate().take(plan.stay_hours()) {
        let band = odds.band[index];
        let stage = hour.stage.map_or_else(|| "-".to_owned(), |stage| format!("{stage:?}"));
        report.row(
            &format!("{} {:02} {stage}", hour.day, hour.hour_of_day),
            [
                hour.soc_frac,
                hour.low_frac,
                hour.empty_frac,
                hour.volts.0,
                hour.sag_volts.0,
                hour.air.0,
                hour.battery.0,
                hour.driving_share,
                hour.hook_up_share,
                band.p10_frac,
                band.p50_frac,
                band.p90_frac,
                odds.low_by_hour_frac[index],
            ],
        );
    }
}

fn battery(report: &mut Report, case: &Case, plan: &TripPlan) {
    let (setup, sky) = (&case.setup, &case.sky);
    report.part("Battery and panels");
    let coldest = plan.hours.iter().map(|hour| hour.conditions.temperature.0);
    let coldest = Celsius(coldest.fold(f64::INFINITY, f64::min));
    for at in [Celsius(25.0), coldest] {
        report.say("energy", &(at, UsableEnergy::at(&setup.bank, at)));
    }
    report.say("ventilation", &ventilation_of(&setup.bank));
    let others = (0..setup.other.len()).map(Charger::Other);
    for charger in [Charger::Driving, Charger::HookUp].into_iter().chain(others) {
        report.say(&format!("charging by {charger:?}"), &charge_session(setup, plan, charger));
    }
    let from = setup.trip.start().saturating_add(Duration::days(i64::from(setup.trip.nights)));
    let physics = BankPhysics::new(&setup.bank, Hours(1.0));
    let usual = |day: usize| {
        let day = i64::try_from(day).expect("days of some years");
        parked_day(setup.bank.place, sky, from.saturating_add(Duration::days(day)))
    };
    report.say("parked", &parked(&physics, 0.97, Watts(1.2), usual));
    let steady = |_| ParkedDay::steady(Celsius(-12.0));
    report.say("parked at -12", &parked(&physics, 0.8, Watts(4.0), steady));
    let coldest = coldest_air(sky);
    report.say("coldest air, panel voltage", &(coldest, cold_voltage_rise_frac(coldest)));
    report.say("a loose panel stands best", &best_stand(setup, &plan.sun, 1));
}

fn outcome(report: &mut Report, name: &str, outcome: &Outcome) {
    report.say(
        &format!("{name}, average"),
        &(outcome.nights, outcome.nights_open, outcome.first_low, outcome.lowest_frac),
    );
    report.say(
        &format!("{name}, sure even mean"),
        &(outcome.nights_sure, outcome.nights_even, outcome.nights_mean, outcome.sequences),
    );
    report.say(&format!("{name}, day"), &(outcome.need_per_day, outcome.cold_locked));
    report.row(&format!("{name}, lasting"), outcome.lasting_frac.iter().copied());
}

fn improvement(report: &mut Report, help: &Improvement) {
    report.say("change", &help.change);
    report.say("    asks", &(help.cost, help.hazards));
    report.say("    brings", &help.gain);
    outcome(report, "    then", &help.outcome);
}

/// What a change makes of the part it is about.
fn edited(report: &mut Report, after: &Setup, change: Change) {
    if let Some(load) = change.load().and_then(|id| after.load(id)) {
        let times = load.times_of_day().windows();
        report.say("    to", &(load.usage, load.feed, load.standby, load.enabled, times));
        return;
    }
    let panels = after.solar.iter().map(|array| (array.peak, array.tilt, array.facing));
    report.say("    to", &panels.collect::<Vec<_>>());
    let bank = &after.bank;
    report.say(
        "    and",
        &(bank.rated_capacity(), bank.chemistry, bank.health_frac, bank.soc_min_frac, bank.place),
    );
    let driven = after.trip.days.iter().map(|day| day.drive_minutes);
    report.say(
        "    and",
        &(
            after.driving.every,
            after.driving.minutes,
            after.hook_up.every,
            driven.collect::<Vec<_>>(),
        ),
    );
}

/// What helps, the next step, and what everybody asks.
pub fn changes(case: &Case) -> Report {
    let (setup, sky) = (&case.setup, &case.sky);
    let mut report = Report::default();
    let mut job = ImprovementsJob::new(setup, sky, SURE_FRAC).expect("weather in range");
    whole(|units| job.advance(units));
    let found = job.improvements();
    report.part("What helps");
    if let Some(help) = found.first() {
        outcome(&mut report, "as it is", &help.before);
        for change in candidates(setup, &help.before) {
            report.say("could be changed", &change);
            edited(&mut report, &change.apply(setup), change);
        }
    }
    found.iter().for_each(|help| improvement(&mut report, help));
    let nights = usize::from(setup.trip.nights);
    let advice = Advice::of(&found, nights, SURE_FRAC);
    report.part("Next step");
    report.say("nights", &advice.nights);
    report.each("worth a line", advice.improvements.iter().map(|help| help.change));
    report.say("next", &advice.next_step().map(|help| (help.change, help.chances(advice.nights))));
    let rest: Vec<Change> = found.iter().skip(TOLD).take(2).map(|help| help.change).collect();
    let mut job = InFullJob::new(setup, sky, rest);
    whole(|units| job.advance(units));
    report.part("In full");
    job.improvements().iter().for_each(|help| improvement(&mut report, help));
    report.part("What everybody asks");
    let mut job = AlternativesJob::new(setup, sky);
    whole(|units| job.advance(units));
    for (it, played) in job.found() {
        report.say("choice", &(it.choice, it.cost, it.hazards));
        if let Some(played) = played {
            outcome(&mut report, "    then", &played);
        }
    }
    report
}

/// Ways to so many nights.
pub fn ways(case: &Case, nights: usize) -> Report {
    let mut report = Report::default();
    let aim = Aim { nights, chance_frac: SURE_FRAC };
    let mut job = WaysJob::new(&case.setup, &case.sky, aim).expect("weather in range");
    whole(|units| job.advance(units));
    report.say("aim", &(job.aim(), job.is_reached_already()));
    if let Some(baseline) = job.baseline() {
        outcome(&mut report, "as it is", baseline);
    }
    for way in job.ways() {
        report.part("A way");
        report.each("step", &way.steps);
        report.say("bill", &(way.bill, way.price));
        report.say("by", &(&way.kinds, way.reaches));
        outcome(&mut report, "then", &way.outcome);
        let then = way.apply(&case.setup);
        report.say("battery", &(then.bank.rated_capacity(), then.bank.chemistry));
        report.say("panels", &then.solar_peak());
    }
    report
}

/// Sizes of battery and panels for so many nights, in the stay or in each of `months`.
pub fn sizes(case: &Case, nights: usize, months: Vec<u8>) -> Report {
    let setup = &case.setup;
    let series = setup.bank.system.series_12v();
    let usual = SizingAim::usual(setup, nights, SURE_FRAC, months);
    let mut report = Report::default();
    report.say("usual sizes", &usual);
    let aim = SizingAim {
        batteries: [100.0, 300.0].map(|ah| AmpHours(ah / series)).to_vec(),
        solars: [0.0, 200.0, 600.0].map(Watts).to_vec(),
        ..usual
    };
    let mut job = SizingJob::new(setup, &case.sky, aim);
    whole(|units| job.advance(units));
    let sizing = job.sizing();
    report.say("hard months", &sizing.hard_months);
    report.each("curve", &sizing.curves);
    for (name, choice) in [
        ("cheapest", sizing.cheapest),
        ("least to buy", sizing.least_to_buy),
        ("lightest", sizing.lightest),
    ] {
        report.say(name, &choice);
        report.say("    as changes", &choice.map(|choice: Choice| choice.changes(setup)));
    }
    report
}

/// Setups side by side, and what a kilowatt-hour costs.
pub fn beside(cases: &[Case]) -> Report {
    let pairs: Vec<(&Setup, &MonthlyClimate)> =
        cases.iter().map(|case| (&case.setup, &case.sky)).collect();
    let mut job = CompareJob::new(&pairs);
    whole(|units| job.advance(units));
    let mut report = Report::default();
    for column in job.columns() {
        report.part("A setup");
        report.say("price, weight", &(column.money, column.weight));
        report.say("usable", &(column.usable, column.battery_weight_per_kwh));
        report.say("over its life", &column.life_cost);
        outcome(&mut report, "trip", &column.outcome);
    }
    report.part("Differences");
    report.each("line", job.differences());
    report.part("Why the batteries fare differently");
    report.each("reason", job.batteries());
    report.part("A kilowatt-hour");
    for chemistry in Chemistry::ALL {
        report.say("costs", &LifeCost::of(&cases[0].setup, chemistry));
    }
    report
}

/// The year, month by month.
pub fn year(case: &Case) -> Report {
    let mut job = YearStripJob::new(&case.setup, &case.sky);
    whole(|units| job.advance(units));
    let mut report = Report::default();
    for (month, found) in job.months().iter().enumerate() {
        outcome(&mut report, &format!("month {}", month + 1), found);
    }
    report
}

/// Cables, fuses and the inverter, in usual surroundings and in a warm bundle.
pub fn workshop(setups: &[Setup]) -> Report {
    let warm = Surroundings { insulation: Insulation::C105, ambient: Celsius(45.0), bundled: 6 };
    let mut report = Report::default();
    for setup in setups {
        for place in [Surroundings::default(), warm] {
            report.part(&format!("{}, {place:?}", setup.name));
            for run in &setup.cables {
                report.say("own run", run);
                report.say("    found", &check(run, setup, place));
            }
            for found in suggested_runs(setup, place) {
                report.say("worth checking", &found);
                report.say("    found", &check(&found.run, setup, place).findings);
            }
            report.say("inverter", &inverter_check::check(setup, place));
        }
    }
    report
}

/// Fuses for cables of all sizes.
pub fn fuses() -> Report {
    let mut report = Report::default();
    for area in [0.3, 0.5, 0.75, 0.9, 1.0, 2.5, 7.0, 95.0, 120.0, 400.0, 700.0] {
        let size = ConductorSize::Metric { area: SquareMillimetres(area) };
        let place = Surroundings::default();
        report.say(&format!("{area} mm2"), &(ohm_per_km_at_20c(size), ampacity(size, place)));
    }
    for gauge in [-4, -3, 0, 5, 10, 14, 22, 23] {
        let size = ConductorSize::Awg { gauge };
        let found = (area(size), sae_area(gauge), ohm_per_km_at_20c(size));
        report.say(&format!("gauge {gauge}"), &found);
    }
    for continuous in [0.5, 2.0, 8.0, 23.0, 60.0, 145.0, 290.0] {
        for start in [1.0, 2.5, 9.0].map(|times| Amps(continuous * times)) {
            for carries in [1.2, 1.6, 4.0].map(|times| Amps(continuous * times)) {
                let found = [700.0, 1_500.0, 3_500.0, 12_000.0]
                    .map(|prospective| choose(Amps(continuous), start, carries, Amps(prospective)));
                report.each(
                    &format!("{continuous} A, {start:?} at the start, carries {carries:?}"),
                    found,
                );
            }
        }
    }
    report
}

/// What readings on site say.
pub fn on_site(case: &Case) -> Report {
    let setup = &case.setup;
    let mut report = Report::default();
    report.each("point", points(setup));
    let Some(found) = fit(setup, case.sun()) else {
        report.text("fit", "none");
        return report;
    };
    report.say("use, sun", &(found.use_factor, found.sun_factor));
    report.say(
        "start, correlation, misfit",
        &(found.start_soc_frac, found.correlation, found.misfit),
    );
    report.say("take over", &found.correction);
    report.say("read next", &(found.readings, &found.wanted, found.is_consistent()));
    report.row("course", found.course.iter().step_by(3).map(|(_, soc_frac)| *soc_frac));
    report
}
