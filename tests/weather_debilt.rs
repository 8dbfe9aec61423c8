//! The weather generator against twenty measured years at De Bilt.
//!
//! Data and credit: see `debilt/mod.rs` (KNMI, CC BY 4.0). The limits come from what the generator
//! reached when it was chosen among others; each is written beside its check. Run with
//! `--nocapture` to read the tables.

use crate::debilt;

use debilt::survival::{Cell, Misses, compare, misses, reliability};
use debilt::{DeBilt, extraterrestrial_at_wh_m2, extraterrestrial_wh_m2, quantile};
use nightbank::forecast::weather::{DayDistribution, Persistence};

const SEASONS: [(&str, [usize; 3]); 4] = [
    ("Dec-Feb", [12, 1, 2]),
    ("Mar-May", [3, 4, 5]),
    ("Jun-Aug", [6, 7, 8]),
    ("Sep-Nov", [9, 10, 11]),
];

/// Days that know nothing of each other: dangerously optimistic.
const INDEPENDENT: Persistence =
    Persistence { next_day_corr_frac: 0.0, slow_share_frac: 0.0, slow_days: 1.0 };

/// Means of runs of `length` days, each as a share of what the climate expects of those days:
/// measured and drawn.
fn run_means(years: &DeBilt, months: [usize; 3], length: usize, how: Persistence) -> [Vec<f64>; 2] {
    let expected = |start: u32| -> f64 {
        (0..length as u32)
            .map(|day| {
                years.climate.on_day(start + day) * extraterrestrial_wh_m2(2001, start + day)
            })
            .sum()
    };
    let mut both = [Vec::new(), Vec::new()];
    for month in months {
        for run in years.runs(month, length) {
            let sum: f64 = run.iter().map(|day| day.ghi_wh_m2).sum();
            both[0].push(sum / expected(run[0].day_of_year));
        }
        years.drawn_runs(month, length, 800, how, |start, k| {
            let sum: f64 =
                (start..).zip(k).map(|(day, k)| k * extraterrestrial_wh_m2(2001, day)).sum();
            both[1].push(sum / expected(start));
        });
    }
    both
}

#[test]
fn the_measured_years_are_read_whole() {
    let years = DeBilt::load();
    assert_eq!(years.days.len(), 7310);
    let clearest = years.days.iter().map(|day| day.clearness_frac).fold(0.0, f64::max);
    // No day beats a clear sky by more than the scatter of the daily figures.
    assert!((0.75..0.86).contains(&clearest), "{clearest}");
    // pvlib-python 0.16.1 `spa_python` (NREL SPA): mean over the days of January, June and December
    // 2025 at 50 N.
    for (days, wanted) in [(1..=31, 2587.7), (152..=181, 11_496.2), (335..=365, 2132.9)] {
        let count = days.clone().count() as f64;
        let sum: f64 = days.map(|day| extraterrestrial_at_wh_m2(50.0, 2025, day)).sum();
        assert!((sum / count / wanted - 1.0).abs() < 0.002, "{wanted}");
    }
}

#[test]
fn single_days_and_bad_runs_come_out_as_measured() {
    let years = DeBilt::load();
    println!("Sun of runs of days as a share of what is expected of them, De Bilt, 20 years:");
    println!("measured / drawn / drawn with days that know nothing of each other");
    let (mut bias, mut independent_bias, mut bad_runs) = (0.0, 0.0, 0.0);
    for (name, months) in SEASONS {
        for length in [1, 3, 5, 10] {
            let [mut measured, mut drawn] =
                run_means(&years, months, length, Persistence::MEASURED);
            let [_, mut independent] = run_means(&years, months, length, INDEPENDENT);
            let mut line = format!("{name} {length:2} days");
            for p in [0.02, 0.05, 0.1, 0.5, 0.9] {
                let wanted = quantile(&mut measured, p);
                let found = quantile(&mut drawn, p);
                let naive = quantile(&mut independent, p);
                line += &format!("  p{:02.0} {wanted:.2}/{found:.2}/{naive:.2}", p * 100.0);
                // Largest difference when the generator was fitted: 0.11, clear winter days.
                assert!((found - wanted).abs() < 0.13, "{line}");
                if p <= 0.1 && length > 1 {
                    // What empties batteries must never be drawn much too kindly.
                    assert!(found < wanted + 0.03, "too kind: {line}");
                }
                if p == 0.1 && length > 1 {
                    bias += found - wanted;
                    independent_bias += naive - wanted;
                    bad_runs += 1.0;
                }
            }
            println!("{line}");
        }
    }
    let (bias, independent_bias) = (bias / bad_runs, independent_bias / bad_runs);
    println!("bad case (p10) of 3 to 10 days, drawn less measured: {bias:+.3}");
    println!("the same with independent days: {independent_bias:+.3}");
    assert!(bias.abs() < 0.03);
    // Independent days promise 6 % of the mean too much in the bad case of 3 to 10 days. The figure
    // was found over 7 measured multi-year sites, of which these years are one.
    assert!((0.04..0.09).contains(&independent_bias));
}

#[test]
fn next_day_follows_as_measured() {
    // Correlation from one day to the next of the measured z (normal figure of each day in the
    // drawn distribution) against the 0.36 the generator uses. De Bilt is a little below; winter
    // most.
    let years = DeBilt::load();
    let z: Vec<f64> = years
        .days
        .iter()
        .map(|day| {
            let mean = years.climate.on_day(day.day_of_year);
            let distribution =
                DayDistribution::of_climate(nightbank::forecast::weather::DayClimate::INLAND, mean)
                    .expect("finite");
            distribution.normal_at_k(day.clearness_frac).clamp(-3.0, 3.0)
        })
        .collect();
    let mean = z.iter().sum::<f64>() / z.len() as f64;
    let var = z.iter().map(|z| (z - mean).powi(2)).sum::<f64>() / z.len() as f64;
    let (mut sum, mut pairs) = (0.0, 0.0);
    for (days, z) in years.days.windows(2).zip(z.windows(2)) {
        if days[0].year == days[1].year {
            sum += (z[0] - mean) * (z[1] - mean);
            pairs += 1.0;
        }
    }
    let next_day = sum / pairs / var;
    println!("De Bilt z: mean {mean:.3}, deviation {:.3}, next day {next_day:.3}", var.sqrt());
    assert!(mean.abs() < 0.05 && (var.sqrt() - 1.0).abs() < 0.08);
    assert!((0.30..0.38).contains(&next_day), "{next_day}");
}

/// A bucket: full at the first evening; half the load by night, then the day's sun and the other
/// half, never more than full. Lasts until it runs dry.
fn bucket(cell: &Cell, sun_wh_m2: &[f64]) -> usize {
    let mut left = cell.battery_days;
    for (night, sun) in sun_wh_m2.iter().enumerate() {
        left -= 0.5;
        if left < 0.0 {
            return night;
        }
        left = (left + cell.sun_share * sun / cell.month_mean_wh_m2 - 0.5).min(cell.battery_days);
        if left < 0.0 {
            return night + 1;
        }
    }
    sun_wh_m2.len()
}

const NIGHTS: [usize; 7] = [2, 3, 4, 5, 7, 10, 14];

fn cells(years: &DeBilt) -> Vec<Cell> {
    let mut cells = Vec::new();
    for month in 1..=12 {
        for battery_days in [1.0, 1.5, 2.0, 3.0, 5.0] {
            for sun_share in [0.4, 0.6, 0.8, 1.0, 1.25, 1.6] {
                cells.push(Cell {
                    month,
                    battery_days,
                    sun_share,
                    month_mean_wh_m2: years.month_mean_wh_m2(month),
                });
            }
        }
    }
    cells
}

/// Cases worth forecasting: neither measured nor forecast as all but certain either way. The others
/// would only flatter the mean error.
fn open(measured: f64, forecast: f64) -> bool {
    (0.02..0.98).contains(&measured) || (0.02..0.98).contains(&forecast)
}

fn print_misses(name: &str, misses: Misses) {
    println!(
        "{name:24} {:5} chances, mean absolute error {:4.1}, bias {:+5.1}, nine in ten within {:4.1} points",
        misses.count, misses.mean_points, misses.bias_points, misses.p90_points
    );
}

#[test]
fn chances_of_lasting_come_true() {
    let years = DeBilt::load();
    let outcomes = compare(&years, &cells(&years), Persistence::MEASURED, bucket);

    println!("Chance (%) of lasting N nights, measured years / forecast; battery 2 days of load");
    for outcome in outcomes.iter().filter(|o| o.cell.battery_days == 2.0) {
        let mut line =
            format!("month {:2}, sun {:.2} of load", outcome.cell.month, outcome.cell.sun_share);
        for night in NIGHTS {
            let (measured, forecast) = (outcome.measured[night - 1], outcome.forecast[night - 1]);
            line += &format!("  {night}: {:3.0}/{:3.0}", 100.0 * measured, 100.0 * forecast);
        }
        println!("{line}");
    }

    println!("Open cases (2 to 98 %), forecast against the measured years");
    for night in NIGHTS {
        let found = misses(&outcomes, &[night], open);
        print_misses(&format!("{night} nights"), found);
        assert!(found.mean_points < 6.0);
    }
    for month in 1..=12 {
        let of_month: Vec<_> = outcomes.iter().filter(|o| o.cell.month == month).cloned().collect();
        let found = misses(&of_month, &NIGHTS, open);
        print_misses(&format!("month {month}"), found);
        assert!(found.mean_points < 6.0);
    }
    let all_open = misses(&outcomes, &NIGHTS, open);
    print_misses("all open cases", all_open);
    print_misses("all cases", misses(&outcomes, &NIGHTS, |_, _| true));
    // The aim is 6 points; found 3.5 on the open cases alone.
    assert!(all_open.count > 1000);
    assert!(all_open.mean_points < 4.5 && all_open.bias_points.abs() < 2.0);

    println!("What was forecast, and what came true");
    for (forecast, came_true, count) in reliability(&outcomes, &NIGHTS) {
        println!("{:3.0} %: {:3.0} %  ({count} chances)", 100.0 * forecast, 100.0 * came_true);
        assert!((forecast - came_true).abs() < 0.05);
    }
}

#[test]
fn independent_days_or_another_climate_forecast_worse() {
    let years = DeBilt::load();
    let cells = cells(&years);
    let kept = misses(&compare(&years, &cells, Persistence::MEASURED, bucket), &NIGHTS, open);
    let independent = compare(&years, &cells, INDEPENDENT, bucket);
    let lost = misses(&independent, &NIGHTS, open);
    print_misses("as measured", kept);
    print_misses("independent days", lost);
    for (forecast, came_true, count) in reliability(&independent, &NIGHTS) {
        println!("{:3.0} %: {:3.0} %  ({count} chances)", 100.0 * forecast, 100.0 * came_true);
    }
    assert!(lost.mean_points > kept.mean_points && lost.p90_points > kept.p90_points);

    // Years the climate was not made from: each half of the years from the other half.
    let mut unseen = Vec::new();
    for early in [true, false] {
        let half = DeBilt::load().forecast_from_other_years(|year| (year < 2000) == early);
        unseen.extend(compare(&half, &cells, Persistence::MEASURED, bucket));
    }
    let found = misses(&unseen, &NIGHTS, open);
    print_misses("unseen years", found);
    print_misses("unseen years, all cases", misses(&unseen, &NIGHTS, |_, _| true));
    assert!(found.mean_points < 9.0);

    // Mean clearness 2006-2025 of the cell around 52.5 N 5.5 E from satellite: 11 % over the year,
    // 4 to 21 % by month, above what was measured at De Bilt in these years (brighter years since,
    // another place, another instrument). (c) EUMETSAT CM SAF, CC BY 4.0. This is the error of a
    // climate that is 10 % off, which no weather generator can mend.
    let table =
        [0.323, 0.362, 0.451, 0.510, 0.488, 0.485, 0.482, 0.480, 0.462, 0.393, 0.345, 0.306];
    let elsewhere = years.with_climate(table);
    let found = misses(&compare(&elsewhere, &cells, Persistence::MEASURED, bucket), &NIGHTS, open);
    print_misses("climate table", found);
    assert!(found.mean_points < 12.0);
}
