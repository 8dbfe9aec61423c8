//! Layout of the energy river: a stream that widens with every source and narrows with every
//! loss and every use, row by row.

/// What a part of the flow is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FlowKind {
    /// Comes in: sun, driving, hook-up, or what the battery gives.
    Source,
    /// Was there for the taking but had no place to go.
    Unused,
    /// Lost on the way: cable, controller, charging, inverter.
    Loss,
    /// Does what it is wanted for.
    Load,
    /// Stays in the battery.
    Kept,
}

/// One row of the river, as shares (0..1) of its greatest width.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiverRow {
    /// The piece that joins (source) or leaves: left and right bank.
    pub piece: (f64, f64),
    /// Width of the stream above this row.
    pub before: f64,
    /// Width of the stream below this row.
    pub after: f64,
}

/// The rows of `parts` (kind and energy, any unit). Sources come from the left bank outwards, what
/// leaves does so at the right bank. Negative energies and such that are no number count as zero;
/// when more leaves than came, the stream ends dry.
#[must_use]
pub fn river(parts: &[(FlowKind, f64)]) -> Vec<RiverRow> {
    let amount = |energy: f64| if energy.is_finite() { energy.max(0.0) } else { 0.0 };
    let mut level: f64 = 0.0;
    let mut greatest: f64 = 0.0;
    let mut rows: Vec<RiverRow> = parts
        .iter()
        .map(|(kind, energy)| {
            let before = level;
            if *kind == FlowKind::Source {
                level += amount(*energy);
                greatest = greatest.max(level);
                RiverRow { piece: (before, level), before, after: level }
            } else {
                let piece = amount(*energy);
                level = (level - piece).max(0.0);
                greatest = greatest.max(level + piece);
                RiverRow { piece: (level, level + piece), before, after: level }
            }
        })
        .collect();
    let unit = if greatest > 0.0 { 1.0 / greatest } else { 0.0 };
    for row in &mut rows {
        row.piece = (row.piece.0 * unit, row.piece.1 * unit);
        row.before *= unit;
        row.after *= unit;
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::*;
    use FlowKind::{Kept, Load, Loss, Source, Unused};

    #[test]
    fn the_stream_closes_when_the_books_do() {
        let rows = river(&[
            (Source, 600.0),
            (Source, 200.0),
            (Unused, 100.0),
            (Loss, 50.0),
            (Load, 630.0),
            (Kept, 20.0),
        ]);
        assert_eq!(rows[0].piece, (0.0, 0.75));
        assert_eq!(rows[1].piece, (0.75, 1.0));
        assert_eq!(rows[2].piece, (0.875, 1.0));
        assert!(rows.last().is_some_and(|row| row.after.abs() < 1e-12));
        for pair in rows.windows(2) {
            assert_eq!(pair[0].after, pair[1].before);
        }
    }

    #[test]
    fn odd_figures_do_no_harm() {
        let rows = river(&[(Source, f64::NAN), (Loss, -5.0), (Load, 10.0), (Kept, 0.0)]);
        assert_eq!(rows[2].piece, (0.0, 1.0));
        for row in &rows {
            for share in [row.piece.0, row.piece.1, row.before, row.after] {
                assert!((0.0..=1.0).contains(&share));
            }
        }
        assert!(river(&[(Source, 0.0)]).iter().all(|row| row.after == 0.0));
        assert!(river(&[]).is_empty());
    }
}
