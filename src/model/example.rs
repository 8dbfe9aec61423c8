//! Setups to start from: the invented example, and a sensible first guess for a newcomer.

use super::catalogue::{Appliance, appliance, picked};
use super::climate::{AirSource, Climate, ClimateSource};
use super::{
    Bank, Chemistry, Draw, DrawSource, Driving, EveryNth, Load, Place, Setup, SolarArray, Trip,
    Usage, Vehicle,
};
use crate::units::{AmpHours, Amps, Celsius, Degrees, Metres, Volts, Watts};

/// The few answers a start is made from.
#[derive(Clone, Debug, PartialEq)]
pub struct Start {
    /// What somebody travels in.
    pub vehicle: Vehicle,
    /// What the battery is made of.
    pub chemistry: Chemistry,
    /// Capacity of the whole bank at the 20 h rate [Ah].
    pub capacity: AmpHours,
    /// Solar, nominal power [W]; 0 for none.
    pub solar_peak: Watts,
    /// Where.
    pub place: Place,
    /// Camp clock against UTC [min].
    pub utc_offset_min: i16,
    /// Year of arrival.
    pub year: u16,
    /// Month of arrival, 1..12.
    pub month: u8,
    /// Nights.
    pub nights: u8,
}

/// A start: number in the catalogue, how many.
type Rows = &'static [(u16, u16)];

const MOTOR_MOVER: u16 = 117;

const VAN: Rows = &[(3, 1), (41, 3), (35, 1), (60, 2), (57, 1), (12, 1), (24, 1), (130, 2)];
const CARAVAN: Rows = &[
    (6, 1),
    (41, 5),
    (43, 1),
    (35, 1),
    (36, 1),
    (60, 2),
    (59, 1),
    (52, 1),
    (14, 1),
    (117, 1),
    (126, 1),
    (73, 1),
];
const MOTORHOME: Rows = &[
    (6, 1),
    (41, 6),
    (34, 1),
    (36, 1),
    (60, 2),
    (57, 1),
    (52, 1),
    (14, 1),
    (17, 1),
    (118, 1),
    (126, 1),
    (128, 1),
    (130, 2),
];

/// A sensible setup for a newcomer: usual appliances of the vehicle, a heater that follows
/// the season of the place, the battery and the panel they said. Every figure is a guess to be edited.
///
/// What is out of bounds is pulled in, as for any setup.
#[must_use]
pub fn start_setup(start: &Start) -> Setup {
    let rows = match start.vehicle {
        Vehicle::Van => VAN,
        Vehicle::Caravan => CARAVAN,
        Vehicle::Motorhome => MOTORHOME,
    };
    let mut setup = Setup {
        vehicle: start.vehicle,
        loads: rows_of(
            rows.iter().filter_map(|(number, quantity)| Some((appliance(*number)?, *quantity))),
        ),
        bank: Bank {
            chemistry: start.chemistry,
            capacity_20h: start.capacity,
            soc_min_frac: start.chemistry.usual_soc_min_frac(),
            ..Bank::default()
        },
        solar: if start.solar_peak.0 > 0.0 {
            vec![SolarArray { peak: start.solar_peak, ..SolarArray::default() }]
        } else {
            Vec::new()
        },
        driving: Driving { fitted: start.vehicle != Vehicle::Caravan, ..Driving::default() },
        trip: Trip {
            place: start.place.clone(),
            utc_offset_min: start.utc_offset_min,
            year: start.year,
            month: start.month,
            nights: start.nights,
            ..Trip::default()
        },
        ..Setup::default()
    };
    // On and off the pitch once a stay, not once a day.
    if let Some(mover) = row(&mut setup, MOTOR_MOVER) {
        let per_day = 2.0 / f64::from(start.nights.max(1));
        mover.usage = Usage::Uses { per_day, seconds: 300.0 };
    }
    setup.sanitised().0
}

fn rows_of(rows: impl Iterator<Item = (&'static Appliance, u16)>) -> Vec<Load> {
    let system = Bank::default().system;
    (1..)
        .zip(rows)
        .map(|(id, (row, quantity))| Load { quantity, ..row.to_load(id, system) })
        .collect()
}

fn row(setup: &mut Setup, number: u16) -> Option<&mut Load> {
    setup.loads.iter_mut().find(|load| load.appliance == Some(number))
}

/// Town of the example, as the list of places has it. Written out, so that the start of the page
/// needs no list.
fn example_town() -> Place {
    Place {
        name: "Waren".to_owned(),
        latitude: Degrees(53.52),
        longitude: Degrees(12.68),
        altitude: Metres(65.0),
    }
}

/// What [`Climate::from_world`] gives for the town of the example, written out for the same reason; `None`
/// for a trip elsewhere or with figures of the user's own. A test holds the two together.
#[must_use]
pub fn example_climate(trip: &Trip) -> Option<Climate> {
    if trip.place != example_town() || trip.own_sun.is_some() {
        return None;
    }
    let air = [
        0.2750, 0.9308, 3.7590, 8.0750, 12.7590, 16.5192, 18.2750, 17.5192, 14.4910, 10.0750,
        5.4910, 1.9308,
    ];
    Some(Climate {
        clearness_frac: [
            0.272, 0.33479, 0.41135, 0.478, 0.50325, 0.48721, 0.472, 0.47532, 0.45475, 0.378,
            0.28665, 0.24668,
        ],
        air: air.map(Celsius),
        half_range_k: [
            2.5, 2.95096, 3.68301, 4.5, 5.18301, 5.54904, 5.5, 5.04904, 4.31699, 3.5, 2.81699,
            2.45096,
        ],
        source: ClimateSource::World,
        air_source: AirSource::World,
        accuracy_frac: 0.04,
    })
}

/// The invented example that fills the page on the first visit, marked as such: a camper van with
/// two 95 Ah batteries and one panel, a week in September by a lake.
///
/// Some draws are "measured", typed as current; and a few rows draw day and night without anybody
/// thinking of them.
#[must_use]
pub fn example_setup() -> Setup {
    /// Number in the catalogue.
    const NUMBERS: [u16; 15] = [1, 12, 24, 35, 36, 41, 43, 57, 60, 66, 70, 126, 128, 129, 130];
    /// How many of each.
    const QUANTITIES: [u16; 15] = [1, 1, 1, 1, 1, 4, 1, 1, 2, 1, 1, 1, 1, 1, 3];
    // Picked at build time: the start of the page needs no catalogue.
    static ROWS: [Appliance; 15] = picked(NUMBERS);
    let mut setup = Setup {
        name: String::new(),
        example: true,
        loads: rows_of(ROWS.iter().zip(QUANTITIES)),
        bank: Bank {
            chemistry: Chemistry::Agm,
            capacity_20h: AmpHours(95.0),
            parallel: 2,
            health_frac: 0.9,
            ..Bank::default()
        },
        solar: vec![SolarArray { peak: Watts(120.0), ..SolarArray::default() }],
        driving: Driving { fitted: true, every: EveryNth(0), ..Driving::default() },
        trip: Trip {
            place: example_town(),
            utc_offset_min: 120,
            year: 2026,
            month: 9,
            day: 12,
            nights: 7,
            ..Trip::default()
        },
        ..Setup::default()
    };
    for (number, minutes) in [(24, 60.0), (41, 180.0), (57, 90.0), (66, 120.0)] {
        if let Some(load) = row(&mut setup, number) {
            load.usage = Usage::Daily { minutes };
        }
    }
    // The router is on while somebody is aboard and awake.
    if let Some(router) = row(&mut setup, 70) {
        router.usage = Usage::Daily { minutes: 300.0 };
        router.window = super::Window::EVENING;
    }
    // Measured with a clamp meter: nobody had thought of it.
    if let Some(panel) = row(&mut setup, 126) {
        panel.draw_source = DrawSource::Meter;
        panel.draw = Draw::Current { amps: Amps(0.12), volts: Volts(12.6) };
    }
    if let Some(fridge) = row(&mut setup, 1) {
        fridge.draw_source = DrawSource::SpecSheet;
    }
    setup
}
