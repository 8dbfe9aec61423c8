//! Directions to the sun by their angles, as tables and handbooks tell them.

use nightbank::physics::solar::{JulianDate, Sun, SunDirection};
use nightbank::units::Degrees;

/// The sun at an instant and place: what `DaySun::new` asks for each quarter of an hour.
pub fn sun_at(at: JulianDate, latitude: Degrees, longitude: Degrees) -> SunDirection {
    Sun::at(at).seen_from(latitude, longitude)
}

/// A direction from its elevation and its azimuth clockwise from north.
pub fn direction(elevation: Degrees, azimuth: Degrees) -> SunDirection {
    let (sin_el, cos_el) = elevation.radians().sin_cos();
    let (sin_az, cos_az) = azimuth.radians().sin_cos();
    SunDirection { east: cos_el * sin_az, north: cos_el * cos_az, up: sin_el }
}

/// Azimuth clockwise from north, 0 to 360.
pub fn azimuth(sun: SunDirection) -> Degrees {
    Degrees(sun.east.atan2(sun.north).to_degrees().rem_euclid(360.0))
}

/// Angle from the zenith, without refraction.
pub fn zenith(sun: SunDirection) -> Degrees {
    Degrees(90.0 - sun.elevation().0)
}
