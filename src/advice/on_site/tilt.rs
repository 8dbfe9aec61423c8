//! How a loose panel stands best on one day of the stay.

use crate::forecast::plan::TripSun;
use crate::model::{Mounting, Setup};
use crate::units::Degrees;

/// Tilts that are tried [degrees]; between them the yield differs by a few per cent at most.
const TILTS_DEG: [f64; 9] = [0.0, 10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0];

/// Best tilt and facing of the first loose panel on day `day` of the trip (0 is the day of arrival), in the
/// weather expected of it; `None` where no panel can be turned. `sun` must belong to the setup's trip.
#[must_use]
pub fn best_stand(setup: &Setup, sun: &TripSun, day: usize) -> Option<(Degrees, Degrees)> {
    let loose = |array: &&crate::model::SolarArray| {
        array.enabled && array.peak.0 > 0.0 && array.mounting == Mounting::OpenRack
    };
    let array = setup.solar.iter().find(loose)?;
    let facing = setup.trip.place.noon_facing();
    let yield_at = |tilt: f64| {
        let mut alone = setup.clone();
        alone.solar = vec![array.clone()];
        if let Some(array) = alone.solar.first_mut() {
            array.tilt = Degrees(tilt);
            array.facing = facing;
        }
        let turned = sun.with_panels(&alone);
        let hours = turned.average.get(day)?;
        Some(hours.iter().map(|hour| hour.mppt.0 + hour.pwm.0).sum::<f64>())
    };
    let tilts = TILTS_DEG.iter().filter_map(|tilt| Some((*tilt, yield_at(*tilt)?)));
    let (tilt, _) = tilts.max_by(|a, b| a.1.total_cmp(&b.1))?;
    Some((Degrees(tilt), facing))
}
