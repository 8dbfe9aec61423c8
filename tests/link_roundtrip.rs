//! What goes into a link comes out of it, for any setup.

use crate::common;

use common::{sample, setups};
use nightbank::link::{REFUSE_CHARS, TooLong, WARN_CHARS, decode, encode, open, quantised};
use nightbank::model::*;
use nightbank::units::*;
use proptest::prelude::*;
use proptest::strategy::ValueTree;

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..Default::default() })]

    #[test]
    fn what_goes_in_comes_out(setup in setups::setup()) {
        match encode(&setup) {
            Ok(text) => {
                prop_assert!(text.chars().all(|c| c.is_ascii_alphanumeric()));
                prop_assert!(text.len() <= REFUSE_CHARS && text.starts_with('1'));
                let opened = open(&text).expect("own link opens");
                prop_assert_eq!(opened.adjusted, 0);
                prop_assert_eq!(opened.setup, quantised(&setup));
            }
            Err(TooLong { chars }) => prop_assert!(chars > REFUSE_CHARS),
        }
    }

    /// Even what no field would accept arrives as the sanitiser leaves it.
    #[test]
    fn what_goes_in_wild_comes_out_tame(setup in setups::wild_setup()) {
        let kept = quantised(&setup);
        let (same, changed) = kept.clone().sanitised();
        prop_assert_eq!(changed, 0);
        prop_assert_eq!(&same, &kept);
        if let Ok(text) = encode(&setup) {
            prop_assert_eq!(decode(&text), Ok(kept));
        }
    }

    #[test]
    fn rounding_twice_changes_nothing(setup in setups::setup()) {
        let once = quantised(&setup);
        prop_assert_eq!(quantised(&once), once);
    }

    /// Checked against the setup itself, not against the rounding code.
    #[test]
    fn rounding_moves_nothing_far(setup in setups::setup()) {
        let kept = quantised(&setup);
        prop_assert_eq!(kept.loads.len(), setup.loads.len());
        let near = |a: f64, b: f64, half_step: f64| (a - b).abs() <= half_step + 1e-9;
        for (load, there) in setup.loads.iter().zip(&kept.loads) {
            prop_assert_eq!(&load.name, &there.name);
            prop_assert_eq!(load.quantity, there.quantity);
            prop_assert_eq!(load.window, there.window);
            prop_assert_eq!(&load.more_windows, &there.more_windows);
            prop_assert!(near(load.standby.0, there.standby.0, 0.005));
            match (load.draw, there.draw) {
                (Draw::Power { watts: a }, Draw::Power { watts: b }) => {
                    prop_assert!(near(a.0, b.0, 0.005));
                }
                (Draw::Current { amps: a, volts: v }, Draw::Current { amps: b, volts: w }) => {
                    prop_assert!(near(a.0, b.0, 0.0005) && near(v.0, w.0, 0.005));
                }
                _ => prop_assert!(false, "another kind of draw"),
            }
            if let (Usage::Daily { minutes: a }, Usage::Daily { minutes: b }) =
                (load.usage, there.usage)
            {
                prop_assert!(near(a, b, 0.05));
            }
        }
        prop_assert!(near(setup.bank.capacity_20h.0, kept.bank.capacity_20h.0, 0.05));
        prop_assert!(near(setup.bank.soc_start_frac, kept.bank.soc_start_frac, 0.0005));
        prop_assert!(near(setup.trip.place.latitude.0, kept.trip.place.latitude.0, 0.05));
        prop_assert!(near(setup.trip.place.altitude.0, kept.trip.place.altitude.0, 50.0));
        prop_assert_eq!(setup.trip.start(), kept.trip.start());
        prop_assert_eq!(setup.readings.len(), kept.readings.len());
        prop_assert_eq!(setup.cables.len(), kept.cables.len());
    }
}

#[test]
fn a_typed_setup_arrives_exactly() {
    let setup = sample::typical(25);
    let text = encode(&setup).expect("short enough");
    assert_eq!(decode(&text), Ok(setup));
}

/// Lengths of typical setups; `cargo test link_lengths -- --nocapture` shows them.
#[test]
fn link_lengths_keep_the_budget() {
    println!("loads  characters  characters of JSON");
    for (loads, budget) in [(0, 120), (12, 220), (25, 300), (40, WARN_CHARS)] {
        let setup = sample::typical(loads);
        let chars = encode(&setup).expect("short enough").len();
        let json = serde_json::to_string(&setup).expect("plain data").len();
        println!("{loads:5}  {chars:10}  {json:18}");
        assert!(chars <= budget, "{loads} loads took {chars} characters");
    }
}

/// A second window costs a few characters, and nothing where there is none.
#[test]
fn further_windows_are_carried_and_cost_little() {
    let mut setup = sample::typical(25);
    let one = encode(&setup).expect("short enough").len();
    setup.loads[1].more_windows = vec![Window { from_min: 360, to_min: 480 }];
    let text = encode(&setup).expect("short enough");
    assert!(text.len() <= one + 12, "{} {one}", text.len());
    assert_eq!(decode(&text), Ok(setup));
}

#[test]
fn the_place_is_blurred() {
    let mut setup = Setup::default();
    setup.trip.place.latitude = Degrees(47.123_456);
    setup.trip.place.longitude = Degrees(-8.987_654);
    setup.trip.place.altitude = Metres(437.0);
    let there = decode(&encode(&setup).expect("short")).expect("opens").trip.place;
    assert_eq!(there.latitude, Degrees(47.1));
    assert_eq!(there.longitude, Degrees(-9.0));
    assert_eq!(there.altitude, Metres(450.0));
}

#[test]
fn cables_follow_their_load_and_a_lost_load_is_let_go() {
    let mut setup = Setup {
        loads: [70, 7].map(|id| Load { id, ..Load::default() }).to_vec(),
        ..Setup::default()
    };
    setup.cables = [Some(7), Some(9), None]
        .map(|load_id| CableRun { load_id, ..CableRun::default() })
        .to_vec();
    let there = decode(&encode(&setup).expect("short")).expect("opens");
    assert_eq!(there.loads.iter().map(|load| load.id).collect::<Vec<_>>(), [1, 2]);
    assert_eq!(
        there.cables.iter().map(|run| run.load_id).collect::<Vec<_>>(),
        [Some(2), None, None]
    );
}

#[test]
fn too_long_is_said_with_the_length() {
    let name = |i: u32| format!("{i:02} a long name with umlauts äöüäöüäöü äöü");
    let setup = Setup {
        loads: (1..=64).map(|id| Load { id, name: name(id), ..Load::default() }).collect(),
        ..Setup::default()
    };
    let refused = encode(&setup).expect_err("too long");
    assert!(refused.chars > REFUSE_CHARS, "{refused}");
    assert!(refused.to_string().contains(&refused.chars.to_string()));
}

/// A setup too long for a link tests nothing above.
#[test]
fn enough_of_the_setups_tried_fit_a_link() {
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let strategy = setups::setup();
    let fits = (0..200)
        .filter_map(|_| strategy.new_tree(&mut runner).ok())
        .filter(|tree| encode(&tree.current()).is_ok())
        .count();
    println!("{fits} of 200 setups fit");
    assert!(fits >= 80);
}
