//! The small signs on the charts, drawn for this page as strokes in a box of 16 by 16.
//!
//! One description serves the canvas and the legend (an SVG path), so both always show the same.

/// Side of the box the strokes are given in.
pub const BOX: f64 = 16.0;

/// What happens at a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EventKind {
    /// The engine charges.
    Driving,
    /// Connected to the mains.
    HookUp,
    /// A day given or expected as clear.
    ClearDay,
    /// A day given as mixed.
    MixedDay,
    /// A day given as dull.
    DullDay,
    /// The battery is too cold to take charge.
    ColdLock,
    /// Something switches itself off for low voltage.
    CutOut,
}

impl EventKind {
    /// All kinds, in the order of the legend.
    pub const ALL: [Self; 7] = [
        Self::Driving,
        Self::HookUp,
        Self::ClearDay,
        Self::MixedDay,
        Self::DullDay,
        Self::ColdLock,
        Self::CutOut,
    ];

    /// Weather stands in a row of its own below what people do.
    #[must_use]
    pub fn is_weather(self) -> bool {
        matches!(self, Self::ClearDay | Self::MixedDay | Self::DullDay)
    }

    /// Strokes of its sign: points of each line.
    #[must_use]
    pub fn strokes(self) -> Vec<Vec<(f64, f64)>> {
        match self {
            Self::Driving => {
                let mut strokes = vec![arc((8.0, 8.0), 6.0, 0.0, 360.0)];
                strokes.push(arc((8.0, 8.0), 1.6, 0.0, 360.0));
                strokes.extend([90.0, 210.0, 330.0].map(|degrees| spoke(degrees, 1.6, 6.0)));
                strokes
            }
            Self::HookUp => vec![
                vec![(6.0, 1.5), (6.0, 5.0)],
                vec![(10.0, 1.5), (10.0, 5.0)],
                [vec![(4.0, 5.0), (12.0, 5.0)], arc((8.0, 7.0), 4.0, 0.0, 180.0), vec![(4.0, 5.0)]]
                    .concat(),
                vec![(8.0, 11.0), (8.0, 14.5)],
            ],
            Self::ClearDay => {
                let rays = (0..8).map(|n| spoke(f64::from(n) * 45.0, 5.0, 7.0));
                let mut strokes = vec![arc((8.0, 8.0), 3.0, 0.0, 360.0)];
                strokes.extend(rays);
                strokes
            }
            Self::MixedDay => {
                let mut strokes = vec![arc((6.0, 6.5), 2.6, 130.0, 350.0)];
                strokes.extend([180.0, 225.0, 270.0, 315.0].map(|degrees| {
                    spoke(degrees, 4.2, 5.8).into_iter().map(|(x, y)| (x - 2.0, y - 1.5)).collect()
                }));
                strokes.push(cloud(0.72, (4.2, 5.2)));
                strokes
            }
            Self::DullDay => vec![cloud(1.0, (0.0, 0.5))],
            Self::ColdLock => {
                let mut strokes: Vec<Vec<(f64, f64)>> =
                    [30.0, 90.0, 150.0].map(|degrees| across(degrees, 6.5)).into();
                strokes.extend((0..6).map(|n| barb(f64::from(n) * 60.0 + 30.0)));
                strokes
            }
            Self::CutOut => vec![arc((8.0, 8.5), 5.5, -50.0, 230.0), vec![(8.0, 1.5), (8.0, 7.5)]],
        }
    }

    /// The sign as the `d` of an SVG path in a view box of 16 by 16.
    #[must_use]
    pub fn svg_path(self) -> String {
        let mut path = String::new();
        for stroke in self.strokes() {
            for (index, (x, y)) in stroke.into_iter().enumerate() {
                let letter = if index == 0 { 'M' } else { 'L' };
                path.push_str(&format!("{letter}{x:.1} {y:.1}"));
            }
        }
        path
    }
}

/// Points around a centre, degrees clockwise from the right.
fn arc(centre: (f64, f64), radius: f64, from_deg: f64, to_deg: f64) -> Vec<(f64, f64)> {
    const STEPS: i32 = 16;
    (0..=STEPS)
        .map(|step| {
            let degrees = from_deg + (to_deg - from_deg) * f64::from(step) / f64::from(STEPS);
            at(centre, radius, degrees)
        })
        .collect()
}

fn at((x, y): (f64, f64), radius: f64, degrees: f64) -> (f64, f64) {
    let angle = degrees.to_radians();
    (x + radius * angle.cos(), y + radius * angle.sin())
}

fn spoke(degrees: f64, from: f64, to: f64) -> Vec<(f64, f64)> {
    vec![at((8.0, 8.0), from, degrees), at((8.0, 8.0), to, degrees)]
}

fn across(degrees: f64, radius: f64) -> Vec<(f64, f64)> {
    vec![at((8.0, 8.0), radius, degrees), at((8.0, 8.0), radius, degrees + 180.0)]
}

/// The fork at the end of an arm of the ice crystal.
fn barb(degrees: f64) -> Vec<(f64, f64)> {
    let root = at((8.0, 8.0), 4.0, degrees);
    vec![at(root, 2.4, degrees - 50.0), root, at(root, 2.4, degrees + 50.0)]
}

fn cloud(size: f64, (right, down): (f64, f64)) -> Vec<(f64, f64)> {
    [
        arc((4.6, 9.4), 2.6, 90.0, 260.0),
        arc((8.2, 6.6), 3.6, 200.0, 340.0),
        arc((11.8, 9.4), 2.6, -80.0, 90.0),
        vec![(4.6, 12.0)],
    ]
    .concat()
    .into_iter()
    .map(|(x, y)| (x * size + right, y * size + down))
    .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn signs_stay_in_their_box() {
        for kind in EventKind::ALL {
            let strokes = kind.strokes();
            assert!(!strokes.is_empty());
            for (x, y) in strokes.into_iter().flatten() {
                assert!((0.0..=BOX).contains(&x) && (0.0..=BOX).contains(&y), "{kind:?} {x} {y}");
            }
        }
    }

    #[test]
    fn no_two_signs_are_alike() {
        for (index, one) in EventKind::ALL.into_iter().enumerate() {
            for other in EventKind::ALL.into_iter().skip(index + 1) {
                assert_ne!(one.svg_path(), other.svg_path());
            }
        }
    }

    #[test]
    fn the_path_begins_every_stroke_anew() {
        let path = EventKind::HookUp.svg_path();
        assert!(path.starts_with("M6.0 1.5L6.0 5.0M"));
        assert_eq!(path.matches('M').count(), EventKind::HookUp.strokes().len());
    }
}
