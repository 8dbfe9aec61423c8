//! Light lost by reflection at the panel's cover.
//!
//! ```text
//! beam     K(i)   = (1 - exp(-cos i / a)) / (1 - exp(-1 / a))          a = 0.16
//! sky      K(b)   = 1 - exp(-(c1 + c2 s) s / a),  s = sin b + (pi - b - sin b) / (1 + cos b)
//! ground   K(b)   = 1 - exp(-(c1 + c2 s) s / a),  s = sin b + (b - sin b) / (1 - cos b)
//!          c1 = 4 / (3 pi),  c2 = a / 2 - 0.154
//! ```
//! i: angle of incidence, b: tilt [rad]. K multiplies the light; 1 is straight on.
//! Source: N. Martin, J. M. Ruiz, Solar Energy Materials and Solar Cells 70, 2001, 25-38, and
//! Progress in Photovoltaics 13, 2005, 75-84 (with the corrigendum of 2013), a = 0.16 for air and
//! glass with usual dust.

use crate::units::Degrees;
use std::f64::consts::PI;

/// Angular loss coefficient of a glazed panel with usual dust.
const ANGULAR_LOSS: f64 = 0.16;

/// Share of the beam that enters, 0 to 1; 0 when the sun is behind the panel.
#[must_use]
pub fn beam_modifier(cos_incidence: f64) -> f64 {
    if cos_incidence > 0.0 {
        let full = 1.0 - (-1.0 / ANGULAR_LOSS).exp();
        ((1.0 - (-cos_incidence / ANGULAR_LOSS).exp()) / full).min(1.0)
    } else {
        0.0
    }
}

/// Shares of diffuse light that enter a panel of one tilt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiffuseModifiers {
    /// Of the sky's light, 0 to 1.
    pub sky: f64,
    /// Of the light reflected by the ground, 0 to 1; 0 for a flat panel, which sees no ground.
    pub ground: f64,
}

impl DiffuseModifiers {
    /// For a panel tilted 0 to 180 degrees from level.
    #[must_use]
    pub fn for_tilt(tilt: Degrees) -> Self {
        let b = tilt.0.clamp(0.0, 180.0).to_radians();
        let (sin_b, cos_b) = b.sin_cos();
        let sky_s = if 1.0 + cos_b > 1e-9 { sin_b + (PI - b - sin_b) / (1.0 + cos_b) } else { 0.0 };
        let ground_s = if 1.0 - cos_b > 1e-9 { sin_b + (b - sin_b) / (1.0 - cos_b) } else { 0.0 };
        Self { sky: entering(sky_s), ground: entering(ground_s) }
    }
}

fn entering(s: f64) -> f64 {
    let c1 = 4.0 / (3.0 * PI);
    let c2 = 0.5 * ANGULAR_LOSS - 0.154;
    (1.0 - (-(c1 + c2 * s) * s / ANGULAR_LOSS).exp()).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Ground seen by a panel is sky seen by one turned upside down; upright they are alike, and a panel that lies flat
    /// sees none of the one.
    #[test]
    fn sky_and_ground_are_alike_upside_down() {
        for tilt in [0.0, 20.0, 45.0, 90.0, 120.0, 180.0] {
            let (here, turned) = (
                DiffuseModifiers::for_tilt(Degrees(tilt)),
                DiffuseModifiers::for_tilt(Degrees(180.0 - tilt)),
            );
            assert!((here.sky - turned.ground).abs() < 1e-9, "{tilt}: {here:?} {turned:?}");
            assert!(tilt > 90.0 || (0.9..1.0).contains(&here.sky), "{here:?}");
        }
        assert_eq!(DiffuseModifiers::for_tilt(Degrees(0.0)).ground, 0.0);
        assert_eq!((beam_modifier(0.0), beam_modifier(-0.5), beam_modifier(1.0)), (0.0, 0.0, 1.0));
    }
}
