use super::*;

fn unknown_days(kt: f64, days: usize) -> Vec<ForecastDay> {
    let distribution = DayDistribution::from_monthly_mean(kt).expect("finite");
    vec![ForecastDay::unknown(distribution); days]
}

fn given(days: &mut [ForecastDay], day: usize, p: f64) {
    days[day].given_clearness_frac = Some(days[day].distribution.quantile(p));
}

/// `z` of every drawn day, sequence by sequence.
fn drawn_z(
    days: &[ForecastDay],
    seed: u64,
    persistence: Persistence,
    runs: usize,
) -> Vec<Vec<f64>> {
    let mut source =
        WeatherSequences::with_persistence(days.to_vec(), seed, persistence).expect("valid");
    let mut drawn = Sequence::default();
    (0..runs)
        .map(|_| {
            source.fill(&mut drawn);
            drawn.k_frac.iter().zip(days).map(|(k, day)| day.distribution.normal_at_k(*k)).collect()
        })
        .collect()
}

fn correlation(z: &[Vec<f64>], a: usize, b: usize) -> f64 {
    let mean = |pick: &dyn Fn(&Vec<f64>) -> f64| z.iter().map(pick).sum::<f64>() / z.len() as f64;
    let (ma, mb) = (mean(&|z| z[a]), mean(&|z| z[b]));
    let cov = mean(&|z| (z[a] - ma) * (z[b] - mb));
    let va = mean(&|z| (z[a] - ma).powi(2));
    let vb = mean(&|z| (z[b] - mb).powi(2));
    cov / (va * vb).sqrt()
}

#[test]
fn each_day_is_standard_normal_and_follows_the_last_by_0_36() {
    let z = drawn_z(&unknown_days(0.42, 40), 1, Persistence::MEASURED, 40_000);
    for day in [0, 1, 7, 20, 39] {
        let mean = z.iter().map(|z| z[day]).sum::<f64>() / z.len() as f64;
        let var = z.iter().map(|z| (z[day] - mean).powi(2)).sum::<f64>() / z.len() as f64;
        assert!(mean.abs() < 0.02, "mean {mean} on day {day}");
        assert!((var - 1.0).abs() < 0.03, "variance {var} on day {day}");
    }
    for day in [0, 10, 38] {
        let r = correlation(&z, day, day + 1);
        assert!((r - 0.36).abs() < 0.015, "next-day correlation {r}");
    }
    // The slow part alone is left after ten days: 0.05 exp(-10 / 20).
    let far = (0..30).map(|day| correlation(&z, day, day + 10)).sum::<f64>() / 30.0;
    assert!((far - 0.0303).abs() < 0.006, "ten days apart {far}");
}

#[test]
fn month_means_spread_as_between_years() {
    // The variance of the 30-day mean of z derived at `Persistence::MEASURED`.
    let z = drawn_z(&unknown_days(0.42, 30), 2, Persistence::MEASURED, 20_000);
    let means: Vec<f64> = z.iter().map(|z| z.iter().sum::<f64>() / 30.0).collect();
    let var = means.iter().map(|m| m * m).sum::<f64>() / means.len() as f64;
    assert!((0.087..0.098).contains(&var), "variance {var}");
}

#[test]
fn a_sequence_does_not_depend_on_what_was_drawn_before_or_how_long_the_stay_is() {
    let mut long = WeatherSequences::new(unknown_days(0.3, 14), 77).expect("valid");
    let mut short = WeatherSequences::new(unknown_days(0.3, 5), 77).expect("valid");
    let mut other_seed = WeatherSequences::new(unknown_days(0.3, 5), 78).expect("valid");
    let (mut a, mut b, mut c) = Default::default();
    for _ in 0..10 {
        long.fill(&mut a);
        short.fill(&mut b);
        other_seed.fill(&mut c);
    }
    assert_eq!(a.k_frac[..5], b.k_frac);
    assert_eq!(a.use_normal, b.use_normal);
    assert_ne!(b, c);
}

/// The weights solve `C w = c`, whatever solves it here; at a given day that is the day itself.
#[test]
fn weights_of_given_days_solve_the_kriging_equations() {
    let chains = Persistence::MEASURED.chains().expect("valid");
    let given = [(1, 0.3), (2, -1.0), (4, 0.8), (8, 0.1)];
    let weights = kriging_weights(10, &given, chains);
    for (day, w) in weights.chunks_exact(given.len()).enumerate() {
        for (at, _) in given {
            let sum: f64 = given
                .iter()
                .zip(w)
                .map(|((other, _), w)| chains.correlation(at.abs_diff(*other)) * w)
                .sum();
            let wanted = chains.correlation(at.abs_diff(day));
            assert!((sum - wanted).abs() < 1e-9, "day {day}: {sum} {wanted}");
        }
    }
}

#[test]
fn given_days_are_held_exactly_and_pull_their_neighbours() {
    let mut days = unknown_days(0.42, 9);
    given(&mut days, 4, 0.9);
    let mut source = WeatherSequences::new(days.clone(), 5).expect("valid");
    let mut drawn = Sequence::default();
    let runs = 40_000;
    let mut z_sum = [0.0; 9];
    let mut z_squares = [0.0; 9];
    for _ in 0..runs {
        source.fill(&mut drawn);
        let k = &drawn.k_frac;
        assert_eq!(k[4], days[4].distribution.quantile(0.9));
        for day in 0..9 {
            let z = days[day].distribution.normal_at_k(k[day]);
            z_sum[day] += z;
            z_squares[day] += z * z;
        }
    }
    let chains = Persistence::MEASURED.chains().expect("valid");
    for day in (0..9).filter(|day| *day != 4) {
        // Conditional normal: mean r z, variance 1 - r^2; z at 90 % is 1.2816.
        let r = chains.correlation(4_usize.abs_diff(day));
        let mean = z_sum[day] / f64::from(runs);
        let var = z_squares[day] / f64::from(runs) - mean * mean;
        assert!((mean - r * 1.2816).abs() < 0.02, "mean {mean} on day {day}");
        assert!((var - (1.0 - r * r)).abs() < 0.03, "variance {var} on {day}");
    }
}

#[test]
fn a_day_between_two_given_ones_follows_both() {
    // Without a slow part the chain is Markov: between two given neighbours the mean is
    // a (z1 + z3) / (1 + a^2) and the variance (1 - a^2) / (1 + a^2); days beyond feel nothing more.
    let plain = Persistence { slow_share_frac: 0.0, ..Persistence::MEASURED };
    let mut days = unknown_days(0.42, 5);
    for day in [0, 1, 3] {
        given(&mut days, day, 0.1);
    }
    let z = drawn_z(&days, 6, plain, 40_000);
    let mean = z.iter().map(|z| z[2]).sum::<f64>() / z.len() as f64;
    let var = z.iter().map(|z| (z[2] - mean).powi(2)).sum::<f64>() / z.len() as f64;
    let a = 0.36_f64;
    assert!((mean + 2.0 * 1.2816 * a / (1.0 + a * a)).abs() < 0.02, "{mean}");
    assert!((var - (1.0 - a * a) / (1.0 + a * a)).abs() < 0.02, "{var}");
}

#[test]
fn extreme_or_full_givens_and_empty_stays_are_safe() {
    let mut all = unknown_days(0.26, 60);
    for (index, day) in all.iter_mut().enumerate() {
        day.given_clearness_frac =
            (index % 7 != 3).then_some(if index % 2 == 0 { 0.0 } else { 1.0 });
    }
    let mut source = WeatherSequences::new(all, 3).expect("valid");
    let mut drawn = Sequence { k_frac: vec![f64::NAN; 7], ..Sequence::default() };
    for _ in 0..200 {
        source.fill(&mut drawn);
        assert_eq!(drawn.k_frac.len(), 60);
        assert!(drawn.k_frac.iter().all(|k| (0.0..=1.0).contains(k)));
    }
    let mut none = WeatherSequences::new(Vec::new(), 3).expect("valid");
    none.fill(&mut drawn);
    assert!(drawn.k_frac.is_empty());
    for bad in [f64::NAN, -0.01, 1.01, f64::INFINITY] {
        let mut days = unknown_days(0.26, 3);
        days[2].given_clearness_frac = Some(bad);
        let error = WeatherSequences::new(days, 0).expect_err("refused");
        assert!(matches!(error, WeatherError::GivenDay { day_index: 2, .. }));
        assert!(error.to_string().contains("day 3"));
    }
    let endless = Persistence { slow_days: f64::INFINITY, ..Persistence::MEASURED };
    assert!(WeatherSequences::with_persistence(Vec::new(), 0, endless).is_err());
}

#[test]
fn the_words_for_a_day_mean_their_place_in_the_distribution() {
    let summer = DayDistribution::from_monthly_mean(0.43).expect("finite");
    let above_air = WattHoursPerSquareMetre(11_500.0);
    let given = |weather, above_air| {
        ForecastDay::for_weather(summer.clone(), weather, above_air).given_clearness_frac
    };
    assert_eq!(given(Weather::Unknown, above_air), None);
    assert_eq!(given(Weather::Typical, above_air), Some(0.43));
    assert_eq!(given(Weather::Clear, above_air), Some(summer.quantile(0.9)));
    assert_eq!(given(Weather::Mixed, above_air), Some(summer.quantile(0.5)));
    assert_eq!(given(Weather::Dull, above_air), Some(summer.quantile(0.1)));
    let sun = Weather::Sun { per_day: WattHoursPerSquareMetre(4_600.0) };
    assert_eq!(given(sun, above_air), Some(0.4));
    // In the polar night there is nothing to share out.
    assert_eq!(given(sun, WattHoursPerSquareMetre(0.0)), None);
    // More sun than falls outside the air is refused when the sequences are made.
    let day = ForecastDay::for_weather(summer, sun, WattHoursPerSquareMetre(4_000.0));
    assert!(WeatherSequences::new(vec![day], 0).is_err());
}

#[test]
fn known_figures_for_a_known_seed() {
    // Guards "same seed, same figures": a change here changes every forecast ever shared.
    let mut source = WeatherSequences::new(unknown_days(0.26, 4), 20_250).expect("valid");
    let mut drawn = Sequence::default();
    source.fill(&mut drawn);
    let k = drawn.k_frac;
    let expected = [
        0.496_092_898_718_128_34,
        0.124_959_857_655_134_16,
        0.166_337_296_642_916_58,
        0.091_957_420_155_421_74,
    ];
    for (drawn, expected) in k.iter().zip(expected) {
        assert!((drawn - expected).abs() < 1e-12, "{k:?}");
    }
}

#[test]
fn a_climate_known_badly_widens_the_month_and_keeps_its_mean() {
    let month_means = |error_frac| {
        let mut source = WeatherSequences::new(unknown_days(0.42, 30), 11)
            .expect("valid")
            .with_climate_error(error_frac);
        let mut drawn = Sequence::default();
        let means: Vec<f64> = (0..6000)
            .map(|_| {
                source.fill(&mut drawn);
                drawn.k_frac.iter().sum::<f64>() / 30.0
            })
            .collect();
        let mean = means.iter().sum::<f64>() / means.len() as f64;
        let var = means.iter().map(|m| (m - mean).powi(2)).sum::<f64>() / means.len() as f64;
        (mean, var.sqrt() / mean)
    };
    let (known, spread) = month_means(0.0);
    let (unsure, wider) = month_means(0.12);
    assert!((unsure / known - 1.0).abs() < 0.01, "{known} {unsure}");
    // Two independent sources of spread add by their squares; clear days cannot get much clearer.
    let expected = (spread * spread + 0.12 * 0.12).sqrt();
    assert!((wider / expected - 1.0).abs() < 0.06, "{wider} {expected}");
}

#[test]
fn the_air_keeps_its_spread_its_persistence_and_its_tie_to_the_sky() {
    let mut days = unknown_days(0.3, 20);
    for day in &mut days {
        day.air = AirSpread { sd_k: 4.0, with_sky: -0.3 };
    }
    let mut source = WeatherSequences::new(days.clone(), 12).expect("valid");
    let mut drawn = Sequence::default();
    let (mut square, mut with_sky, mut next, mut count) = (0.0, 0.0, 0.0, 0.0);
    for _ in 0..8000 {
        source.fill(&mut drawn);
        for (day, of) in days.iter().enumerate().take(19) {
            let air = drawn.air_anomaly_k[day] / 4.0;
            let z = of.distribution.normal_at_k(drawn.k_frac[day]);
            square += air * air;
            with_sky += air * z;
            next += air * drawn.air_anomaly_k[day + 1] / 4.0;
            count += 1.0;
        }
    }
    assert!((square / count - 1.0).abs() < 0.02);
    assert!((with_sky / count + 0.3).abs() < 0.02);
    // 0.09 of the variance follows the sky (0.36 a day), the rest its own chain (0.79).
    assert!((next / count - 0.75).abs() < 0.02);
}

/// Correlation of days: all of it on the day itself, 0.36 on the next, and after ten days little but the slow
/// part, 0.05 exp(-10 / 20).
#[test]
fn correlation_fades_as_the_chains_do() {
    let chains = Persistence::MEASURED.chains().expect("stationary");
    for (days, expected, most) in [
        (0, 1.0, 1e-12),
        (1, 0.36, 1e-12),
        (10, 0.05 * (-0.5_f64).exp(), 1e-4),
        (40, 0.05 * (-2.0_f64).exp(), 1e-9),
    ] {
        assert!((chains.correlation(days) - expected).abs() < most, "{days}");
    }
}
