//! Strategies for the values of single fields.

use nightbank::model::EveryNth;
use nightbank::model::limits::Range;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::strategy::Union;

/// Whether values keep the bounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Manners {
    /// In bounds.
    Tame,
    /// Anything the types can hold.
    Wild,
}
use Manners::{Tame, Wild};

pub fn num(m: Manners, range: Range) -> BoxedStrategy<f64> {
    let (min, max) = (range.min, range.max);
    let typed = (min..=max).prop_map(move |x| ((x * 10.0).round() / 10.0).clamp(min, max));
    let small =
        (0.0..1.0f64).prop_map(move |x| (min + ((max - min) * x * x * x).round()).clamp(min, max));
    let mut parts =
        vec![(min..=max).boxed(), typed.boxed(), small.boxed(), select(vec![min, max]).boxed()];
    if m == Wild {
        parts.push(any::<f64>().boxed());
        parts.push(
            select(vec![f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, -1.0, 1e12]).boxed(),
        );
    }
    Union::new(parts).boxed()
}

pub fn text(m: Manners, max: usize) -> BoxedStrategy<String> {
    let plain = format!("[a-zA-Z0-9 äöüéß°€'.,()+*_#<>\\[\\]|/=@-]{{0,{max}}}");
    let plain: BoxedStrategy<String> =
        prop_oneof![Just(String::new()), proptest::string::string_regex(&plain).expect("a regex")]
            .boxed();
    match m {
        Tame => plain,
        Wild => prop_oneof![plain, any::<String>(), Just("\u{202e}\0<b>".repeat(40))].boxed(),
    }
}

pub fn at_most(m: Manners, max: usize) -> std::ops::RangeInclusive<usize> {
    match m {
        Tame => 0..=max,
        Wild => 0..=max + 20,
    }
}

pub fn minute(m: Manners) -> BoxedStrategy<u16> {
    let usual = (0u16..48).prop_map(|half_hours| half_hours * 30);
    match m {
        Tame => prop_oneof![usual, 0u16..1440].boxed(),
        Wild => prop_oneof![usual, any::<u16>()].boxed(),
    }
}

pub fn every(m: Manners) -> impl Strategy<Value = EveryNth> {
    if m == Wild { (0..=255u8).prop_map(EveryNth) } else { (0..=60u8).prop_map(EveryNth) }
}
