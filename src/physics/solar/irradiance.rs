//! From the light on level ground to the light on a tilted panel.
//!
//! ```text
//! clear sky   GHI = 1098 cos z exp(-0.059 / cos z)            B. Haurwitz, J. Meteorology 2, 1945
//!             x (0.75 + 2e-5 h) / 0.75   higher ground, h [m]   FAO-56 eq. 37
//! split       kt  = GHI / (G0n cos z)                         D. G. Erbs et al., Solar Energy 28, 1982
//!             DHI/GHI = 1 - 0.09 kt                           kt <= 0.22
//!                     = 0.9511 - 0.1604 kt + 4.388 kt^2
//!                       - 16.638 kt^3 + 12.336 kt^4           0.22 < kt <= 0.8
//!                     = 0.165                                 kt > 0.8
//!             DNI = (GHI - DHI) / cos z
//! plane       beam    = DNI cos i                             i: angle of incidence
//!             A       = DNI / G0n                             J. E. Hay, J. A. Davies 1980
//!             circum  = DHI A cos i / cos z                   light around the sun's disc
//!             sky     = DHI (1 - A) (1 + cos b) / 2           b: tilt
//!             ground  = GHI rho (1 - cos b) / 2               rho: ground reflectance
//! ```
//! All irradiances in W/m2. Limits near the horizon are those of pvlib: kt is formed with
//! cos z >= 0.065, there is no beam beyond z = 87 degrees, cos z >= 0.01745 in cos i / cos z.
//! The sum over a plane is taken in [`super::day`].

use super::sun::SunDirection;
use crate::units::{Degrees, Metres, WattsPerSquareMetre};

/// Least cosine of the zenith angle used to form the clearness index.
const MIN_COS_ZENITH_KT: f64 = 0.065;
/// cos 87 degrees: below this the split leaves no beam.
const COS_MAX_ZENITH: f64 = 0.052_335_956_242_943_835;

/// Reflectance of usual ground: grass, soil, gravel (common practice).
pub const GROUND_REFLECTANCE: f64 = 0.2;

/// Global horizontal irradiance under a clear sky at sea level (Haurwitz). `cos_zenith`: cosine of
/// the sun's true zenith angle; zero when the sun is down. Measured clear days lie within 0.90 to
/// 1.11 of it.
#[must_use]
pub fn clear_sky(cos_zenith: f64) -> WattsPerSquareMetre {
    if cos_zenith > 0.0 {
        WattsPerSquareMetre(1098.0 * cos_zenith * (-0.059 / cos_zenith).exp())
    } else {
        WattsPerSquareMetre(0.0)
    }
}

/// How much stronger clear-sky light is at a height above the sea: 1 at 0 m, 1.08 at 3000 m
/// (FAO-56 eq. 37). Heights are held between -450 m and 6000 m.
#[must_use]
pub fn altitude_gain(height: Metres) -> f64 {
    let metres = if height.0.is_nan() { 0.0 } else { height.0 };
    (0.75 + 2.0e-5 * metres.clamp(-450.0, 6000.0)) / 0.75
}

/// Share of diffuse light in the global at an hourly clearness index, 0.165 to 1 (Erbs).
#[must_use]
pub fn diffuse_share(clearness: f64) -> f64 {
    let kt = clearness;
    if kt <= 0.22 {
        1.0 - 0.09 * kt.max(0.0)
    } else if kt <= 0.8 {
        0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)))
    } else {
        0.165
    }
}

/// Light on level ground, in its two parts.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sky {
    /// All light on level ground (GHI).
    pub global_horizontal: WattsPerSquareMetre,
    /// From the sky without the sun's disc, on level ground (DHI).
    pub diffuse_horizontal: WattsPerSquareMetre,
    /// From the sun's disc, on a surface facing it (DNI).
    pub direct_normal: WattsPerSquareMetre,
}

impl Sky {
    /// Splits the global irradiance (Erbs). `cos_zenith` of the true sun, `extraterrestrial_normal`
    /// as [`super::sun::Sun::extraterrestrial_normal`]. A figure that is not positive gives no light.
    #[must_use]
    pub fn split(
        global_horizontal: WattsPerSquareMetre,
        cos_zenith: f64,
        extraterrestrial_normal: WattsPerSquareMetre,
    ) -> Self {
        let ghi = global_horizontal.0;
        let above_air = extraterrestrial_normal.0 * cos_zenith.max(MIN_COS_ZENITH_KT);
        if !(ghi > 0.0 && above_air > 0.0) {
            return Self::default();
        }
        let clearness = (ghi / above_air).min(1.0);
        if cos_zenith < COS_MAX_ZENITH {
            return Self {
                global_horizontal,
                diffuse_horizontal: global_horizontal,
                direct_normal: WattsPerSquareMetre(0.0),
            };
        }
        let dhi = ghi * diffuse_share(clearness);
        Self {
            global_horizontal,
            diffuse_horizontal: WattsPerSquareMetre(dhi),
            direct_normal: WattsPerSquareMetre((ghi - dhi) / cos_zenith),
        }
    }
}

/// A flat surface on the ground: its tilt and facing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    east: f64,
    north: f64,
    up: f64,
}

impl Plane {
    /// A plane tilted from level (0) to upright (90), facing `azimuth` clockwise from north.
    #[must_use]
    pub fn new(tilt: Degrees, azimuth: Degrees) -> Self {
        let (sin_tilt, cos_tilt) = tilt.radians().sin_cos();
        let (sin_az, cos_az) = azimuth.radians().sin_cos();
        Self { east: sin_tilt * sin_az, north: sin_tilt * cos_az, up: cos_tilt }
    }

    /// Cosine of the angle between the sun and the panel's normal; negative behind the panel.
    #[must_use]
    pub fn cos_incidence(self, sun: SunDirection) -> f64 {
        self.east * sun.east + self.north * sun.north + self.up * sun.up
    }

    /// Part of the sky the plane sees, 0 to 1.
    #[must_use]
    pub fn sky_view(self) -> f64 {
        0.5 * (1.0 + self.up)
    }

    /// Part of the ground the plane sees, 0 to 1.
    #[must_use]
    pub fn ground_view(self) -> f64 {
        0.5 * (1.0 - self.up)
    }
}

/// Share of the diffuse light that comes from around the sun: DNI / G0n, 0 to 1.
#[must_use]
pub fn anisotropy(
    direct_normal: WattsPerSquareMetre,
    extraterrestrial_normal: WattsPerSquareMetre,
) -> f64 {
    if extraterrestrial_normal.0 > 0.0 {
        (direct_normal / extraterrestrial_normal).clamp(0.0, 1.0)
    } else {
        0.0
    }
}
