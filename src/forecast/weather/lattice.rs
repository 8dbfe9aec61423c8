//! Sequences spread evenly over what matters most, so that few of them tell as much as many plain ones.
//!
//! What a stay comes to hangs above all on a few figures: how far the climate and the use are off, and the
//! means of sky and air over a fortnight, its halves, its quarters and so on. Those are taken from the
//! points of a lattice, all else from plain random figures:
//!
//! ```text
//! x_ij = frac(phi(i) g_j + s_j)             phi: the bits of i mirrored at the point, g: generator, s: shift
//! q_ij = Phi^-1(x_ij)
//! n'   = n + sum over j of u_j (q_j - u_j n)     u: orthonormal directions
//! ```
//!
//! A rank-1 lattice in the order of van der Corput: whatever number of points is taken, they lie evenly, and
//! a power of two best (Cools, Kuo & Nuyens, "Constructing embedded lattice rules for multivariate
//! integration", SIAM J. Sci. Comput. 28, 2006; first generators of their vector for up to 2^20 points,
//! from memory). `n'` is as normal and as independent as plain figures `n`, and its part along each `u`
//! is the lattice's. The shift comes from the seed. Directions are Haar's, which halve and halve again,
//! as in the Brownian bridge (Moskowitz & Caflisch 1996); they reach over windows of 16 days, so that the
//! first days do not hang on how long the stay is.

use super::day_air::NEXT_DAY_CORR_FRAC;
use super::persistence::Chains;

/// Days of a window.
pub(super) const WINDOW: usize = 16;
/// Figures drawn for a day: fast and slow part of the sky, air.
pub(super) const DAILY: usize = 3;
/// Directions of the sky in the first window, and in those after it.
const SKY: [usize; 2] = [8, 2];
/// Directions of the air.
const AIR: [usize; 2] = [3, 1];
/// Windows with directions.
const WINDOWS: usize = 4;
/// Figures of the lattice beside those of the days: the climate's error and that of the use.
const OF_THE_STAY: usize = 2;

/// First generators of the lattice.
const GENERATORS: [u64; OF_THE_STAY + SKY[0] + AIR[0] + (WINDOWS - 1) * (SKY[1] + AIR[1])] = [
    1, 182_667, 469_891, 498_753, 110_745, 446_247, 250_185, 118_627, 245_333, 283_199, 408_519,
    391_023, 246_327, 126_539, 399_185, 461_527, 300_343, 69_681, 516_695, 436_179, 106_383,
    238_523,
];

/// Figures drawn for one window.
pub(super) type Noise = [f64; WINDOW * DAILY];

/// Directions of the noise of windows that the lattice rules.
#[derive(Debug, Clone)]
pub(super) struct Lattice {
    shifts: [u64; GENERATORS.len()],
    /// Of the first window and of each one after it.
    directions: [Vec<Noise>; 2],
}

impl Lattice {
    /// For the chains of a place; `shift` gives a figure of its own for each number.
    pub(super) fn new(chains: Chains, shift: impl Fn(u64) -> u64) -> Self {
        let directions = [0, 1].map(|later| {
            let sky = haar(SKY[later]).map(|means| along(chains, later == 1, Part::Sky, &means));
            let air = haar(AIR[later]).map(|means| along(chains, later == 1, Part::Air, &means));
            let mut found: Vec<Noise> = Vec::new();
            for mut direction in sky.chain(air) {
                for before in &found {
                    let shared = dot(&direction, before);
                    add(&mut direction, before, -shared);
                }
                let length = dot(&direction, &direction).sqrt();
                direction.iter_mut().for_each(|x| *x /= length);
                found.push(direction);
            }
            found
        });
        Self { shifts: std::array::from_fn(|j| shift(j as u64)), directions }
    }

    /// Standard normal figures of sequence `i`: climate error and use.
    pub(super) fn of_the_stay(&self, i: u64) -> [f64; OF_THE_STAY] {
        std::array::from_fn(|j| self.normal(i, j))
    }

    /// Turns plain standard normal figures of window `window` of sequence `i` so that they lie on the
    /// lattice; figures of later windows stay as they are.
    pub(super) fn turn(&self, i: u64, window: usize, noise: &mut Noise) {
        let directions = &self.directions[window.min(1)];
        let from = match window {
            0 => OF_THE_STAY,
            _ => OF_THE_STAY + SKY[0] + AIR[0] + (window - 1) * (SKY[1] + AIR[1]),
        };
        if window >= WINDOWS {
            return;
        }
        // Directions do not feel each other: what each lacks is known before any is turned.
        let mut missing = [0.0; SKY[0] + AIR[0]];
        for (j, (missing, direction)) in missing.iter_mut().zip(directions).enumerate() {
            *missing = self.normal(i, from + j) - dot(noise, direction);
        }
        for (missing, direction) in missing.iter().zip(directions) {
            add(noise, direction, *missing);
        }
    }

    fn normal(&self, i: u64, j: usize) -> f64 {
        let point = i.reverse_bits().wrapping_mul(GENERATORS[j]).wrapping_add(self.shifts[j]);
        normal_quantile(((point >> 11) as f64 + 0.5) * (1.0 / (1_u64 << 53) as f64))
    }
}

/// What is ruled by a direction.
#[derive(Clone, Copy, PartialEq)]
enum Part {
    Sky,
    Air,
}

/// The first `count` weights of Haar over the days of a window: all alike, one half against the other, one
/// quarter against its neighbour and so on.
fn haar(count: usize) -> impl Iterator<Item = [f64; WINDOW]> {
    (0..count).map(|index| {
        if index == 0 {
            return [1.0; WINDOW];
        }
        let parts = 1 << index.ilog2();
        let (length, part) = (WINDOW / parts, index - parts);
        std::array::from_fn(|day| match day.checked_sub(part * length) {
            Some(within) if within < length / 2 => 1.0,
            Some(within) if within < length => -1.0,
            _ => 0.0,
        })
    })
}

/// Direction in which the noise of a window moves the mean of its days, weighted by `means`, the most.
fn along(chains: Chains, later: bool, part: Part, means: &[f64; WINDOW]) -> Noise {
    let persistence = [chains.fast, chains.slow, NEXT_DAY_CORR_FRAC];
    let weight = match part {
        Part::Sky => [(1.0 - chains.share).sqrt(), chains.share.sqrt(), 0.0],
        Part::Air => [0.0, 0.0, 1.0],
    };
    let mut direction = [0.0; WINDOW * DAILY];
    for which in 0..DAILY {
        // From the last day back: what a day's noise does to the days after it fades.
        let mut felt = 0.0;
        for day in (0..WINDOW).rev() {
            felt = means[day] + persistence[which] * felt;
            let first = day == 0 && !later;
            let size = if first { 1.0 } else { (1.0 - persistence[which].powi(2)).sqrt() };
            direction[day * DAILY + which] = weight[which] * size * felt;
        }
    }
    direction
}

fn dot(a: &Noise, b: &Noise) -> f64 {
    // Several sums side by side, so that none waits for the one before.
    let mut sums = [0.0; 8];
    for (a, b) in a.chunks_exact(8).zip(b.chunks_exact(8)) {
        for (sum, (a, b)) in sums.iter_mut().zip(a.iter().zip(b)) {
            *sum += a * b;
        }
    }
    sums.iter().sum()
}

fn add(to: &mut Noise, direction: &Noise, times: f64) {
    for (to, direction) in to.iter_mut().zip(direction) {
        *to += direction * times;
    }
}

/// The standard normal figure that a share `p` (0..1) of all stay below, to 2e-9 of itself: Acklam's
/// rational approximation (2003, coefficients from memory; held to `erfc` by a test).
fn normal_quantile(p: f64) -> f64 {
    const A: [f64; 6] = [
        -39.696_830_286_653_76,
        220.946_098_424_520_5,
        -275.928_510_446_968_7,
        138.357_751_867_269,
        -30.664_798_066_147_16,
        2.506_628_277_459_239,
    ];
    const B: [f64; 6] = [
        -54.476_098_798_224_06,
        161.585_836_858_040_9,
        -155.698_979_859_886_6,
        66.801_311_887_719_72,
        -13.280_681_552_885_72,
        1.0,
    ];
    const C: [f64; 6] = [
        -0.007_784_894_002_430_293,
        -0.322_396_458_041_136_5,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 5] = [
        0.007_784_695_709_041_462,
        0.322_467_129_070_039_8,
        2.445_134_137_142_996,
        3.754_408_661_907_416,
        1.0,
    ];
    const TAIL: f64 = 0.02425;
    let of = |coefficients: &[f64], x: f64| coefficients.iter().fold(0.0, |sum, c| sum * x + c);
    let tail = |p: f64| {
        let x = (-2.0 * libm::log(p)).sqrt();
        of(&C, x) / of(&D, x)
    };
    if p < TAIL {
        tail(p)
    } else if p > 1.0 - TAIL {
        -tail(1.0 - p)
    } else {
        let x = p - 0.5;
        x * of(&A, x * x) / of(&B, x * x)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::weather::Persistence;

    fn lattice() -> Lattice {
        let chains = Persistence::MEASURED.chains().expect("valid");
        Lattice::new(chains, |j| j.wrapping_mul(0x9E37_79B9_7F4A_7C15))
    }

    #[test]
    fn quantiles_are_those_of_the_error_function() {
        for i in 1..20_000 {
            let p = f64::from(i) / 20_000.0;
            let back = 0.5 * libm::erfc(-normal_quantile(p) / std::f64::consts::SQRT_2);
            assert!((back - p).abs() < 2e-9, "{p} {back}");
        }
        assert!((normal_quantile(0.975) - 1.959_963_984_540_054).abs() < 1e-8);
        assert!((normal_quantile(1e-9) + 5.997_807_015).abs() < 1e-7);
    }

    /// Haar's weights of 16 days: the mean, the first half against the second, and each half's own halves.
    #[test]
    fn weights_set_parts_of_the_window_against_each_other() {
        let by_quarters: Vec<[f64; 4]> =
            haar(4).map(|days| [days[0], days[4], days[8], days[12]]).collect();
        let expected = [
            [1.0, 1.0, 1.0, 1.0],
            [1.0, 1.0, -1.0, -1.0],
            [1.0, -1.0, 0.0, 0.0],
            [0.0, 0.0, 1.0, -1.0],
        ];
        assert_eq!(by_quarters, expected);
        for days in haar(8).skip(1) {
            assert_eq!(days.iter().sum::<f64>(), 0.0);
        }
    }

    #[test]
    fn directions_are_orthonormal() {
        for directions in lattice().directions {
            for (i, a) in directions.iter().enumerate() {
                for (j, b) in directions.iter().enumerate() {
                    let expected = if i == j { 1.0 } else { 0.0 };
                    assert!((dot(a, b) - expected).abs() < 1e-12, "{i} {j} {}", dot(a, b));
                }
            }
        }
    }

    /// Each figure takes each of `n` equal parts of its range once among `n` points, a power of two, and
    /// each two of them fill a square evenly: the star discrepancy of 512 points on it is well below that of
    /// plain ones, about 0.06 (Hua & Wang give `log n / n` for good lattices).
    #[test]
    fn points_lie_evenly() {
        const N: usize = 512;
        let lattice = lattice();
        let x = |i: u64, j: usize| {
            i.reverse_bits().wrapping_mul(GENERATORS[j]).wrapping_add(lattice.shifts[j]) >> 40
        };
        let unit = (1_u64 << 24) as f64;
        let point = |i: usize, j: usize| x(i as u64, j) as f64 / unit;
        for j in 0..GENERATORS.len() {
            let mut seen = [false; N];
            (0..N).for_each(|i| seen[(point(i, j) * N as f64) as usize] = true);
            assert!(seen.iter().all(|seen| *seen), "figure {j}");
        }
        for a in 0..13 {
            for b in 0..a {
                let mut worst: f64 = 0.0;
                for (u, v) in (1..16).flat_map(|u| (1..16).map(move |v| (u, v))) {
                    let (u, v) = (f64::from(u) / 16.0, f64::from(v) / 16.0);
                    let inside = (0..N).filter(|i| point(*i, a) < u && point(*i, b) < v).count();
                    worst = worst.max((inside as f64 / N as f64 - u * v).abs());
                }
                assert!(worst < 0.03, "{a} {b} {worst}");
            }
        }
    }
}
