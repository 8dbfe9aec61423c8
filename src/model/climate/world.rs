//! Sun and air of the inhabited world by month, on a grid of 1 degree, packed in `climate.bin`.
//!
//! Credit: NASA MERRA-2 (GMAO); WMO climatological normals 1991-2020, national meteorological
//! services, via NOAA NCEI; (c) State of Queensland, SILO, CC BY 4.0; (c) EUMETSAT CM SAF, CC BY 4.0;
//! KNMI, CC BY 4.0; Copyright Met Eireann, CC BY 4.0. Brought together with the regions of
//! [`crate::model::regions`] by `make_climate.py` beside this file, which says how.
//!
//! # The file
//!
//! `NBC2`, the length of the mask (four bytes, low first), the mask, then planes of one byte for
//! each known cell. The mask is the lengths of runs of unknown and known cells in turn (low seven
//! bits first, the eighth says that more follow), row by row from 57 S 180 W, 360 cells in each of
//! 130 rows. A byte of a plane is the zigzag of the step from what the neighbours west, south and
//! south-west let expect.
//!
//! | planes | what | step |
//! |---|---|---|
//! | 7 | clearness index: mean, cos, sin, cos 2, sin 2, cos 3, sin 3 of the month's angle | 0.01 |
//! | 5 | mean air temperature brought to sea level, the same up to sin 2 | 0.5 K |
//! | 3 | mean difference of warmest and coldest hour of a day, up to sin | 1 K |
//! | 1 | mean height of the cell | 100 m |
//! | 1 | error of a month's mean sun, one standard deviation, as a share | 0.01 |
//! | 1 | 1 land, 0 sea by the coast | |

use super::LAPSE_K_PER_KM;
use crate::units::{Celsius, Degrees, Metres};
use std::f64::consts::PI;
use std::fmt;

const MAGIC: &[u8; 4] = b"NBC2";
const SOUTH_DEG: f64 = -57.0;
const WEST_DEG: f64 = -180.0;
const ROWS: usize = 130;
const COLUMNS: usize = 360;
const NO_CELL: u16 = u16::MAX;

const SUN_PLANES: usize = 7;
const AIR_PLANES: usize = 5;
const RANGE_PLANES: usize = 3;
const PLANES: usize = SUN_PLANES + AIR_PLANES + RANGE_PLANES + 3;
const AIR_FROM: usize = SUN_PLANES;
const RANGE_FROM: usize = AIR_FROM + AIR_PLANES;
const HEIGHT: usize = RANGE_FROM + RANGE_PLANES;
const ERROR: usize = HEIGHT + 1;
const LAND: usize = ERROR + 1;

const SUN_STEP_FRAC: f64 = 0.01;
const AIR_STEP_K: f64 = 0.5;
const RANGE_STEP_K: f64 = 1.0;
const HEIGHT_STEP_M: f64 = 100.0;
const ERROR_STEP_FRAC: f64 = 0.01;

/// A cell of sea counts for so much beside one of land.
const SEA_WEIGHT: f64 = 0.2;
/// Where the cells around a place count for less together, there is no climate of it.
const ENOUGH_WEIGHT: f64 = 0.15;

/// Why bytes are no climate of the world.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WorldError {
    /// They do not begin as such a file does.
    NotClimate,
    /// They end too early, or go on after the end.
    Length,
    /// The mask does not fill the grid.
    Mask,
}

impl fmt::Display for WorldError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::NotClimate => "not a file of the climate",
            Self::Length => "the climate is cut short or too long",
            Self::Mask => "the climate's cells do not fill the grid",
        })
    }
}

impl std::error::Error for WorldError {}

/// Sun and air of the world.
#[derive(Clone, Debug, PartialEq)]
pub struct World {
    /// Number of the known cell, or [`NO_CELL`], row by row.
    cells: Vec<u16>,
    planes: Vec<Vec<i16>>,
}

/// What the world's climate says of a place, January first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WorldAt {
    /// Mean clearness index, 0..1.
    pub clearness_frac: [f64; 12],
    /// Mean air temperature at sea level.
    pub air_at_sea: [Celsius; 12],
    /// Half the mean difference of the warmest and the coldest hour of a day [K].
    pub half_range_k: [f64; 12],
    /// Mean height of the land around.
    pub height: Metres,
    /// Error of a month's mean sun, one standard deviation, as a share of it.
    pub error_frac: f64,
}

impl WorldAt {
    /// Mean air temperature at an altitude: [`LAPSE_K_PER_KM`] cooler with height.
    #[must_use]
    pub fn air(&self, altitude: Metres) -> [Celsius; 12] {
        self.air_at_sea.map(|air| Celsius(air.0 - altitude.0 / 1000.0 * LAPSE_K_PER_KM))
    }
}

impl World {
    /// Reads the packed file.
    ///
    /// # Errors
    /// [`WorldError`] for bytes that are no such file.
    pub fn decode(bytes: &[u8]) -> Result<Self, WorldError> {
        let rest = bytes.strip_prefix(MAGIC).ok_or(WorldError::NotClimate)?;
        let (length, rest) = rest.split_first_chunk::<4>().ok_or(WorldError::Length)?;
        let length = usize::try_from(u32::from_le_bytes(*length)).unwrap_or(usize::MAX);
        let (mask, rest) = rest.split_at_checked(length).ok_or(WorldError::Length)?;
        let cells = cells_of(mask)?;
        let count = cells.iter().filter(|cell| **cell != NO_CELL).count();
        if count == 0 {
            return Err(WorldError::Mask);
        }
        if rest.len() != count * PLANES {
            return Err(WorldError::Length);
        }
        let planes = rest.chunks_exact(count).map(|steps| plane_of(&cells, steps)).collect();
        Ok(Self { cells, planes })
    }

    /// What it says of a place: straight between the middles of cells, land before sea. `None`
    /// where it has no cells.
    #[must_use]
    pub fn at(&self, latitude: Degrees, longitude: Degrees) -> Option<WorldAt> {
        let rows = latitude.0 - SOUTH_DEG - 0.5;
        let columns = (longitude.0 - WEST_DEG - 0.5).rem_euclid(360.0);
        if !rows.is_finite() || !columns.is_finite() {
            return None;
        }
        let (row, column) = (rows.floor(), columns.floor());
        let (up, right) = (rows - row, columns - column);
        let mut sums = [0.0; PLANES];
        let mut weight = 0.0;
        for (row, vertical) in [(row, 1.0 - up), (row + 1.0, up)] {
            for (column, horizontal) in [(column, 1.0 - right), (column + 1.0, right)] {
                let Some(cell) = self.cell(row, column) else { continue };
                let land = self.step(LAND, cell) > 0.0;
                let share = vertical * horizontal * if land { 1.0 } else { SEA_WEIGHT };
                weight += share;
                for (plane, sum) in sums.iter_mut().enumerate() {
                    *sum += share * self.step(plane, cell);
                }
            }
        }
        (weight >= ENOUGH_WEIGHT).then(|| of_steps(&sums.map(|sum| sum / weight)))
    }

    fn cell(&self, row: f64, column: f64) -> Option<usize> {
        if !(0.0..ROWS as f64).contains(&row) {
            return None;
        }
        let at = row as usize * COLUMNS + column as usize % COLUMNS;
        self.cells.get(at).filter(|cell| **cell != NO_CELL).map(|cell| usize::from(*cell))
    }

    fn step(&self, plane: usize, cell: usize) -> f64 {
        self.planes.get(plane).and_then(|plane| plane.get(cell)).map_or(0.0, |step| (*step).into())
    }
}

fn cells_of(mask: &[u8]) -> Result<Vec<u16>, WorldError> {
    let mut cells = Vec::with_capacity(ROWS * COLUMNS);
    let mut known = false;
    let mut count: u16 = 0;
    let mut bytes = mask.iter();
    while cells.len() < ROWS * COLUMNS {
        let mut run = 0usize;
        let mut shift = 0;
        loop {
            let byte = bytes.next().ok_or(WorldError::Mask)?;
            run |= usize::from(byte & 127) << shift;
            shift += 7;
            if byte & 128 == 0 {
                break;
            }
            if shift > 21 {
                return Err(WorldError::Mask);
            }
        }
        if cells.len() + run > ROWS * COLUMNS {
            return Err(WorldError::Mask);
        }
        for _ in 0..run {
            cells.push(if known { count } else { NO_CELL });
            count += u16::from(known);
        }
        known = !known;
    }
    if bytes.next().is_some() { Err(WorldError::Mask) } else { Ok(cells) }
}

fn plane_of(cells: &[u16], steps: &[u8]) -> Vec<i16> {
    let mut plane: Vec<i16> = Vec::with_capacity(steps.len());
    let mut steps = steps.iter();
    for (at, cell) in cells.iter().enumerate() {
        if *cell == NO_CELL {
            continue;
        }
        let value = |at: Option<usize>| {
            let cell = *cells.get(at?)?;
            plane.get(usize::from(cell)).copied()
        };
        let west_at = if at % COLUMNS > 0 { at.checked_sub(1) } else { None };
        let (west, south) = (value(west_at), value(at.checked_sub(COLUMNS)));
        let corner = value(west_at.and_then(|at| at.checked_sub(COLUMNS)));
        let expected = match (west, south, corner) {
            (Some(west), Some(south), Some(corner)) => west
                .wrapping_add(south)
                .wrapping_sub(corner)
                .clamp(west.min(south), west.max(south)),
            _ => west.or(south).or(corner).unwrap_or(0),
        };
        let code = i16::from(steps.next().copied().unwrap_or(0));
        let step = if code % 2 == 0 { code / 2 } else { -(code + 1) / 2 };
        plane.push(expected.wrapping_add(step));
    }
    plane
}

fn of_steps(steps: &[f64; PLANES]) -> WorldAt {
    let months = |from: usize, count: usize, step: f64, month: usize| {
        let harmonics = steps.get(from..from + count).unwrap_or_default();
        let angle = 2.0 * PI * month as f64 / 12.0;
        let sum: f64 = harmonics
            .iter()
            .enumerate()
            .map(|(index, size)| {
                let turn = angle * index.div_ceil(2) as f64;
                size * if index % 2 == 1 || index == 0 { turn.cos() } else { turn.sin() }
            })
            .sum();
        sum * step
    };
    let sun = |month| months(0, SUN_PLANES, SUN_STEP_FRAC, month).clamp(0.1, 0.8);
    let air = |month| Celsius(months(AIR_FROM, AIR_PLANES, AIR_STEP_K, month).clamp(-60.0, 50.0));
    let range = |month| months(RANGE_FROM, RANGE_PLANES, RANGE_STEP_K, month).clamp(2.0, 24.0);
    WorldAt {
        clearness_frac: std::array::from_fn(sun),
        air_at_sea: std::array::from_fn(air),
        half_range_k: std::array::from_fn(|month| range(month) / 2.0),
        height: Metres((steps[HEIGHT] * HEIGHT_STEP_M).clamp(-500.0, 9000.0)),
        error_frac: (steps[ERROR] * ERROR_STEP_FRAC).clamp(0.02, 0.3),
    }
}
