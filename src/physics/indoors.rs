//! How warm it is inside a vehicle, what keeps it so, and how warm that keeps a battery.
//!
//! ```text
//! unheated   T_u = T_o + 3
//! inside     T_i = max(T_u, T_k)                     heated to T_k; T_u where it is not heated
//! heat       q   = U max(0, T_k - T_u)
//! battery    T_b >= T_k - 2                          in the living space, which lies low
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `T_o`, `T_u`, `T_i` | air outside; inside without heating; inside | degrees Celsius |
//! | `T_k` | what the vehicle is heated to, day and night on average | degrees Celsius |
//! | `T_b` | battery | degrees Celsius |
//! | `U` | heat loss of the vehicle ([`Vehicle::heat_loss_w_per_k`]) | W/K |
//! | `q` | heat needed | W |
//!
//! The 3 K are sun on the body, people and appliances, as a mean over the day; they and the 2 K are common
//! practice, no source. The inside follows outside without delay: walls of a few centimetres hold little.

use crate::model::{BatteryPlace, Vehicle};
use crate::units::{Celsius, Watts};

/// Inside over outside without heating [K].
const FREE_WARMTH_K: f64 = 3.0;
/// A battery in the living space is at most so much colder than what is kept there [K].
const BATTERY_BELOW_ROOM_K: f64 = 2.0;

/// Air inside without heating.
#[must_use]
pub fn unheated_inside(outside: Celsius) -> Celsius {
    Celsius(outside.0 + FREE_WARMTH_K)
}

/// Air inside; `heated_to`: `None` where it is not heated.
#[must_use]
pub fn air_inside(outside: Celsius, heated_to: Option<Celsius>) -> Celsius {
    let unheated = unheated_inside(outside);
    heated_to.map_or(unheated, |kept| unheated.max(kept))
}

/// Heat that keeps a vehicle at `heated_to`.
#[must_use]
pub fn heat_needed(vehicle: Vehicle, outside: Celsius, heated_to: Option<Celsius>) -> Watts {
    let short_k = heated_to.map_or(0.0, |kept| kept.0 - unheated_inside(outside).0);
    Watts(vehicle.heat_loss_w_per_k() * short_k.max(0.0))
}

/// What the heating of the vehicle keeps a battery at; `None` where it does not.
#[must_use]
pub fn battery_kept_at(place: BatteryPlace, heated_to: Option<Celsius>) -> Option<Celsius> {
    match place {
        BatteryPlace::Inside => heated_to.map(|kept| Celsius(kept.0 - BATTERY_BELOW_ROOM_K)),
        BatteryPlace::Locker | BatteryPlace::Outside => None,
    }
}
