//! Whole results: everything the page calculates of invented setups, logs and tables, as text kept in
//! `tests/results/`.
//!
//! The texts are not truth: other tests hold that. They show what a change moves. Where one differs, the test
//! tells the lines. If that is meant, accept it and look at the diff before it is committed:
//!
//! ```text
//! NIGHTBANK_ACCEPT=1 cargo test --test all whole_results
//! ```
//!
//! All goes through the code that the page calls, and is small enough to be played in less than a second, so that
//! a fault is found fast. Words are compared as they are, numbers to a millionth. Setups are in `cases.rs`.

mod bench;
mod cases;
mod kept;
mod logs;
mod report;
mod stored;
mod tables;
mod typed;

use crate::common::sample;
use nightbank::model::example::example_setup;
use nightbank::model::{BatteryPlace, Chemistry, Setup, SolarArray};
use nightbank::units::{AmpHours, Watts};
use report::Case;

/// A test for each report, kept under the test's name.
macro_rules! held {
    ($($name:ident: $report:expr;)+) => {
        $(#[test]
        fn $name() {
            $report.hold(stringify!($name));
        })+
    };
}

/// The same van with another battery and panel, somewhere else, later.
fn lake_with_lithium() -> Case {
    let mut setup = cases::lake_in_may();
    setup.bank.exchange(Chemistry::LiFePo4);
    setup.bank.capacity_20h = AmpHours(100.0);
    setup.bank.place = BatteryPlace::Locker;
    setup.bank.soc_start_frac = 0.9;
    setup.solar[0].peak = Watts(200.0);
    setup.solar.push(SolarArray { peak: Watts(60.0), ..SolarArray::default() });
    setup.loads[1].quantity = 8;
    setup.loads[4].window.from_min = 600;
    (setup.trip.month, setup.trip.nights) = (10, 4);
    Case::with_world(setup)
}

held! {
    answer_lake: report::answer(&Case::with_world(cases::lake_in_may()));
    answer_snow: report::answer(&Case::with_world(cases::snow_in_the_mountains()));
    answer_frost: report::answer(&Case::built_in(cases::frost_and_a_generator()));
    answer_warmed_battery: report::answer(&Case::with_world(cases::warmed_battery()));
    answer_heat: report::answer(&Case::built_in(cases::southern_heat()));
    answer_highland: report::answer(&Case::built_in(cases::tropical_highland()));
    answer_work: report::answer(&Case::with_world(cases::work_on_the_road()));
    answer_readings: report::answer(&Case::with_world(cases::readings_taken_over()));
    answer_night_device: report::answer(&Case::with_world(cases::night_device()));
    answer_on_the_move: report::answer(&Case::built_in(cases::on_the_move()));
    answer_everything: report::answer(&Case::built_in(sample::everything().sanitised().0));
    answer_weak_hook_up: report::answer(&Case::with_world(cases::weak_hook_up()));
    answer_example: report::answer(&Case::built_in(example_setup()));

    changes_lake: report::changes(&Case::with_world(cases::lake_in_may()));
    changes_snow: report::changes(&Case::with_world(cases::snow_in_the_mountains()));
    changes_frost: report::changes(&Case::built_in(cases::frost_and_a_generator()));
    changes_warmed_battery: report::changes(&Case::with_world(cases::warmed_battery()));
    changes_heat: report::changes(&Case::built_in(cases::southern_heat()));
    changes_work: report::changes(&Case::with_world(cases::work_on_the_road()));
    changes_readings: report::changes(&Case::with_world(cases::readings_taken_over()));
    changes_night_device: report::changes(&Case::with_world(cases::night_device()));
    changes_on_the_move: report::changes(&Case::built_in(cases::on_the_move()));

    ways_lake: report::ways(&Case::with_world(cases::lake_in_may()), 9);
    ways_snow: report::ways(&Case::with_world(cases::snow_in_the_mountains()), 4);
    ways_frost: report::ways(&Case::built_in(cases::frost_and_a_generator()), 5);
    ways_night_device: report::ways(&Case::with_world(cases::night_device()), 5);
    ways_work: report::ways(&Case::with_world(cases::work_on_the_road()), 8);

    sizes_of_a_stay: report::sizes(&Case::with_world(cases::lake_in_may()), 6, Vec::new());
    sizes_of_a_season: report::sizes(&Case::with_world(cases::warmed_battery()), 3, vec![9, 10, 11]);

    beside_lake: report::beside(&[
        Case::with_world(cases::lake_in_may()),
        lake_with_lithium(),
        Case::built_in(cases::southern_heat()),
    ]);
    beside_frost: report::beside(&[
        Case::built_in(cases::frost_and_a_generator()),
        Case::with_world(cases::snow_in_the_mountains()),
        Case::with_world(cases::warmed_battery()),
        Case::with_world(cases::work_on_the_road()),
    ]);
    year_lake: report::year(&Case::with_world(cases::lake_in_may()));
    year_highland: report::year(&Case::built_in(cases::on_the_move()));

    workshop: report::workshop(&[
        sample::everything().sanitised().0,
        cases::work_on_the_road(),
        cases::southern_heat(),
        cases::night_device(),
        cases::frost_and_a_generator(),
    ]);
    fuses: report::fuses();
    on_site: report::on_site(&Case::with_world(cases::readings_on_site()));
    bench: bench::readings();

    stored: stored::kept(&whole_setups());
    stored_doubts: stored::doubts(&cases::lake_in_may());

    log_of_a_monitor: logs::monitor();
    log_of_a_controller: logs::controller();
    log_of_two_batteries: logs::two_batteries();
    log_without_states: logs::without_states();
    tables: tables::sheets();
    tables_doubts: tables::doubts();
    tables_cells: tables::cells();
    typed_places: typed::places();
    typed_words: typed::words(&cases::lake_in_may());
}

fn whole_setups() -> Vec<Setup> {
    vec![
        sample::everything().sanitised().0,
        cases::work_on_the_road(),
        cases::readings_taken_over(),
        cases::on_the_move(),
    ]
}
