//! Steps that numbers of several kinds share. Frozen, as everything of version 1: links already
//! given away are read with them, so a finer step is an extension.

use crate::link::wire::Scale;
use crate::model::limits;

/// Shares: 0.001.
pub(super) const FRAC: Scale = Scale::unsigned(limits::FRAC, 1000, &[50, 10, 1], 4);
/// Current of a load: 0.001 A.
pub(super) const DRAW_A: Scale = Scale::unsigned(limits::DRAW_A, 1000, &[1000, 100, 10, 1], 3);
/// Minutes a day: 0.1 min.
pub(super) const MINUTES: Scale = Scale::unsigned(limits::MINUTES_A_DAY, 10, &[300, 50, 10, 1], 3);
/// Length of a cable: 0.01 m.
pub(super) const CABLE_M: Scale = Scale::unsigned(limits::CABLE_M, 100, &[100, 50, 10, 1], 3);
/// Cross-section: 0.01 mm2.
pub(super) const CABLE_MM2: Scale = Scale::unsigned(limits::CABLE_MM2, 100, &[100, 50, 1], 4);
