//! Lays the trip out hour by hour before it is simulated: what is drawn, what may charge, how warm
//! the battery is, and what the sun would give in any weather.
//!
//! Hours are camp time. Hour 0 begins on arrival. A night counts as lasted when the lowest state
//! of charge allowed has not been passed by the morning after it ([`MORNING_HOUR`]).
//!
//! The plan looks further than the stay that was asked for ([`MIN_HORIZON_NIGHTS`]), so that "how
//! many nights could it be" has an answer for a weekend too.

use super::air_response::{AirResponse, use_error_frac};
use super::demand::{Demands, HourDemand};
use super::supply::{HourSupply, day_supply};
use super::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use super::weather::{
    AirSpread, DayClimate, DrawnWeather, ForecastDay, MonthlyClearness, Persistence, WeatherError,
    WeatherSequences,
};
use crate::model::{Setup, Trip};
use crate::physics::battery::temperature::{air_temperature, unheated_temperature, warmed};
use crate::physics::battery::{BankPhysics, Conditions};
use crate::physics::solar::panel::HourYield;
use crate::physics::solar::yield_table::{SolarTable, TripSky};
use crate::units::{Amps, Celsius, Hours, WattHours, Watts};
use std::sync::Arc;
use time::{Date, Duration};

/// Steps in an hour; halving the step changes a state of charge by less than 0.5 %.
pub const STEPS_PER_HOUR: usize = 2;
/// A night is over at this hour, camp time.
pub const MORNING_HOUR: usize = 8;
/// Hours played on after the last morning.
const AFTER_LAST_MORNING: usize = 2;
/// The plan looks at least so many nights ahead.
pub const MIN_HORIZON_NIGHTS: usize = 14;

/// Climate of the place, month by month.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MonthlyClimate {
    /// Mean daily clearness index, 0..1.
    pub clearness_frac: [f64; 12],
    /// Mean air temperature.
    pub air: [Celsius; 12],
    /// Half the usual range from day to night [K].
    pub half_range_k: [f64; 12],
    /// Likely error of the mean clearness of a month, one standard deviation as a share of it.
    pub error_frac: f64,
}

/// Air of one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayAir {
    /// Mean.
    pub mean: Celsius,
    /// Half the range from day to night [K].
    pub half_range_k: f64,
}

impl DayAir {
    /// Air of a date of the trip: the user's own mean, or that of the place.
    #[must_use]
    pub fn of(trip: &Trip, climate: &MonthlyClimate, date: Date) -> Self {
        let usual = Self::usual(climate, date);
        Self { mean: trip.own_air.unwrap_or(usual.mean), ..usual }
    }

    /// Usual air of a date at the place of a climate.
    #[must_use]
    pub fn usual(climate: &MonthlyClimate, date: Date) -> Self {
        Self {
            mean: Celsius(mid_month_line(&climate.air.map(|c| c.0), date)),
            half_range_k: mid_month_line(&climate.half_range_k, date).max(0.0),
        }
    }

    /// Air of the first whole day, the day that every energy a day is stated for.
    #[must_use]
    pub fn of_first_whole_day(trip: &Trip, climate: &MonthlyClimate) -> Self {
        Self::of(trip, climate, trip.start().saturating_add(Duration::days(FIRST_WHOLE_DAY as i64)))
    }

    /// Temperature at each hour (its middle).
    #[must_use]
    pub fn by_hour(&self) -> [Celsius; 24] {
        std::array::from_fn(|hour| air_temperature(self.mean, self.half_range_k, hour as f64 + 0.5))
    }
}

/// What the sky can do during the trip: does not change with appliances or battery.
#[derive(Clone, Debug)]
pub struct TripSun {
    /// Yield by day, hour and clearness.
    pub table: SolarTable,
    /// How clear each day may be.
    pub days: Vec<ForecastDay>,
    /// How strongly one day follows the other here.
    pub persistence: Persistence,
    /// Air of each day.
    pub air: Vec<DayAir>,
    /// Date of each day.
    pub dates: Vec<Date>,
    /// Yield by hour in average weather, see `AVERAGE_SKIES`.
    pub average: Vec<[HourYield; 24]>,
    /// Likely error of the climate's mean clearness, one standard deviation as a share of it.
    pub climate_error_frac: f64,
    horizon_nights: usize,
}

/// Average weather is the mean yield of so many equally likely days, not the yield of the average
/// day: tilted panels gain most from the clear days (in December at 60 degrees of tilt the
/// average day alone would come out 40 % low).
const AVERAGE_SKIES: usize = 8;

impl TripSun {
    /// Air by hour of the first whole day, see [`DayAir::of_first_whole_day`].
    #[must_use]
    pub fn first_whole_day_air(&self) -> [Celsius; 24] {
        let day = self.air.get(FIRST_WHOLE_DAY).or(self.air.first());
        day.map_or([Celsius(15.0); 24], DayAir::by_hour)
    }

    /// Works out sun and air for the trip of a setup.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or the weather given for a day is not a number in range.
    pub fn build(setup: &Setup, climate: &MonthlyClimate) -> Result<Self, WeatherError> {
        let trip = &setup.trip;
        let horizon_nights = usize::from(trip.nights).max(MIN_HORIZON_NIGHTS);
        let hours = horizon_hours(trip, horizon_nights);
        let day_count = (usize::from(trip.arrival_hour) + hours).div_ceil(24);
        let start = trip.start();
        let dates: Vec<Date> = (0..day_count)
            .map(|day| start.saturating_add(Duration::days(i64::try_from(day).unwrap_or(0))))
            .collect();
        let air: Vec<DayAir> = dates.iter().map(|date| DayAir::of(trip, climate, *date)).collect();
        let by_hour: Vec<[Celsius; 24]> = air.iter().map(DayAir::by_hour).collect();
        let place = trip.place.coarse();
        let sky = TripSky {
            system: setup.bank.system,
            ground_reflectance: trip.ground_albedo_frac,
            ..TripSky::new(&place, start, day_count, trip.utc_offset_min)
        };
        let table = SolarTable::build(&sky, &setup.solar, |day, hour| {
            by_hour.get(day).and_then(|day| day.get(hour)).copied().unwrap_or(Celsius(15.0))
        });
        let months_c = climate.air.map(|month| month.0);
        let spreads: Vec<AirSpread> = dates
            .iter()
            .map(|date| AirSpread::of(&months_c, mid_month_line(&months_c, *date)))
            .collect();
        let day_climate = DayClimate::of(place.latitude, &months_c);
        let clearness = MonthlyClearness::new(climate.clearness_frac)?.of_climate(day_climate);
        let first = u32::from(start.ordinal());
        let days: Vec<ForecastDay> = clearness
            .distributions(first, day_count)?
            .into_iter()
            .enumerate()
            .map(|(day_index, distribution)| {
                let weather = trip.day_plan(day_index).weather;
                let h0 = table.h0(day_index);
                let mut day = ForecastDay::for_weather(distribution, weather, h0);
                // More sun than there can be is taken as the clearest sky there is.
                day.given_clearness_frac = day.given_clearness_frac.map(|k| k.clamp(0.0, 0.9));
                day.air = spreads.get(day_index).copied().unwrap_or_default();
                day
            })
            .collect();
        let average =
            days.iter().enumerate().map(|(day, of)| average_row(&table, day, of)).collect();
        let climate_error_frac = climate.error_frac.clamp(0.0, 0.5);
        Ok(Self {
            table,
            days,
            persistence: day_climate.persistence(),
            air,
            dates,
            average,
            climate_error_frac,
            horizon_nights,
        })
    }

    /// The weather of the trip as it may come, sequence by sequence, the error of its climate among it.
    ///
    /// # Errors
    /// [`WeatherError`] as of [`WeatherSequences::with_persistence`].
    pub fn sequences(&self, seed: u64) -> Result<WeatherSequences, WeatherError> {
        let plain = WeatherSequences::with_persistence(self.days.clone(), seed, self.persistence)?;
        Ok(plain.with_climate_error(self.climate_error_frac))
    }

    /// Whether `drawn` is the weather of this trip.
    #[must_use]
    pub fn has_weather(&self, drawn: &DrawnWeather) -> bool {
        drawn.is_of(&self.days, self.persistence, self.climate_error_frac)
    }

    /// The same trip with the panels of `setup`, whose trip and system voltage are those it was worked out
    /// for: sky and air stay.
    #[must_use]
    pub fn with_panels(&self, setup: &Setup) -> Self {
        let table = self.table.with_arrays(&setup.solar, setup.bank.system);
        let days = self.days.iter().enumerate();
        let average = days.map(|(day, of)| average_row(&table, day, of)).collect();
        Self { average, table, ..self.clone() }
    }

    /// Whether the weather can make a difference: some panel and some day that is not given.
    #[must_use]
    pub fn is_uncertain(&self) -> bool {
        self.days.iter().any(|day| day.given_clearness_frac.is_none())
            && (0..self.days.len()).any(|day| self.table.day_energy(day, 0.6) > WattHours(0.0))
    }
}

/// Yield by hour of a day: as given, or the mean over [`AVERAGE_SKIES`] equally likely days.
fn average_row(table: &SolarTable, day: usize, of: &ForecastDay) -> [HourYield; 24] {
    if let Some(k) = of.given_clearness_frac {
        return table.day_row(day, k);
    }
    let mut mean = [HourYield::default(); 24];
    for sky in 0..AVERAGE_SKIES {
        let share = (sky as f64 + 0.5) / AVERAGE_SKIES as f64;
        let row = table.day_row(day, of.distribution.quantile(share));
        for (sum, hour) in mean.iter_mut().zip(row) {
            sum.mppt += hour.mppt / AVERAGE_SKIES as f64;
            sum.pwm += hour.pwm / AVERAGE_SKIES as f64;
        }
    }
    mean
}

/// One hour of the plan.
#[derive(Clone, Copy, Debug)]
pub struct PlanHour {
    /// Day of the trip, 0 is the day of arrival.
    pub day: usize,
    /// Hour of the day, camp time.
    pub hour_of_day: usize,
    /// Air temperature.
    pub air: Celsius,
    /// Temperature the battery would have by the air alone.
    pub unheated: Celsius,
    /// State of the battery's surroundings.
    pub conditions: Conditions,
    /// What the appliances draw.
    pub demand: HourDemand,
    /// What solar controllers and the battery's management draw.
    pub electronics: Watts,
    /// What may charge.
    pub supply: HourSupply,
    /// Lost in the battery's resistance because appliances come and go.
    pub peak_loss: Watts,
    /// Lost in its cables for the same reason.
    pub peak_cable_loss: Watts,
    /// Everything drawn, these losses included.
    pub load: Watts,
    /// Current offered by dc-dc charger, mains charger and other machines.
    pub offered: Amps,
}

/// The trip ready to be played.
#[derive(Clone, Debug)]
pub struct TripPlan {
    /// Battery.
    pub bank: BankPhysics,
    /// Hours from arrival.
    pub hours: Vec<PlanHour>,
    /// Sun and air.
    pub sun: Arc<TripSun>,
    /// State of charge on arrival, 0..1.
    pub start_soc_frac: f64,
    /// The forecast starts again at this hour with this state of charge.
    pub restart: Option<(usize, f64)>,
    /// Real solar yield over planned.
    pub sun_factor: f64,
    /// What warmer and colder days change.
    pub air_response: Arc<AirResponse>,
    /// Likely error of the use, all loads together, one standard deviation as a share of it.
    pub use_error_frac: f64,
    /// Hour at which each night is over; `mornings[0]` ends the first night.
    pub mornings: Vec<usize>,
    /// Nights asked for.
    pub nights_wanted: usize,
    /// Steps in an hour.
    pub steps_per_hour: usize,
}

impl TripPlan {
    /// Lays the trip out with the sun worked out before.
    #[must_use]
    pub fn build(setup: &Setup, sun: Arc<TripSun>) -> Self {
        Self::with_steps(setup, sun, STEPS_PER_HOUR)
    }

    /// As [`Self::build`]; what is the same in `like`, the plan of another setup, is taken from it.
    #[must_use]
    pub fn build_like(setup: &Setup, sun: Arc<TripSun>, like: Option<&Self>) -> Self {
        Self::laid_out(setup, sun, STEPS_PER_HOUR, like)
    }

    /// As [`Self::build`] with another number of steps in an hour, at least 1.
    #[must_use]
    pub fn with_steps(setup: &Setup, sun: Arc<TripSun>, steps_per_hour: usize) -> Self {
        Self::laid_out(setup, sun, steps_per_hour, None)
    }

    fn laid_out(
        setup: &Setup,
        sun: Arc<TripSun>,
        steps_per_hour: usize,
        like: Option<&Self>,
    ) -> Self {
        let steps_per_hour = steps_per_hour.max(1);
        let bank = BankPhysics::new(&setup.bank, Hours(1.0 / steps_per_hour as f64));
        let trip = &setup.trip;
        let arrival = usize::from(trip.arrival_hour.min(23));
        let electronics = sun.table.self_use() + bank.management();
        let supplies: Vec<[HourSupply; 24]> =
            (0..sun.air.len()).map(|day| day_supply(setup, day)).collect();
        let stay_h = horizon_hours(trip, usize::from(trip.nights)) as f64;
        let any_day = Surroundings::at_rest(setup, sun.first_whole_day_air());
        let of_days = Demands::new(setup, &any_day, setup.correction.use_factor);
        let demands: Vec<[HourDemand; 24]> = sun
            .air
            .iter()
            .zip(&supplies)
            .enumerate()
            .map(|(day, (air, supply))| {
                let into_stay_h = (24 * day) as f64 - arrival as f64;
                let around = Surroundings::supplied(setup, supply, air.by_hour());
                of_days.on(&around.in_stay(into_stay_h, stay_h - into_stay_h))
            })
            .collect();
        let drawn = demands.iter().flatten().map(HourDemand::total).sum::<Watts>()
            / (24 * demands.len().max(1)) as f64;
        let bank = bank.drawn_at(drawn + electronics);
        let count = horizon_hours(trip, sun.horizon_nights);
        let hours = (0..count)
            .filter_map(|index| {
                let since_midnight = arrival + index;
                let (day, hour_of_day) = (since_midnight / 24, since_midnight % 24);
                let air = sun.air.get(day)?;
                let middle = hour_of_day as f64 + 0.5;
                let supply = *supplies.get(day)?.get(hour_of_day)?;
                let demand = demands
                    .get(day)?
                    .get(hour_of_day)?
                    .with_sockets_on_hook_up(supply.sockets_on_hook_up);
                let place = setup.bank.place;
                let unheated = unheated_temperature(place, air.mean, air.half_range_k, middle);
                let conditions = bank.conditions(warmed(place, unheated, trip.heated_to));
                let variance_w2 = demand.direct_variance_w2 + demand.mains_variance_w2;
                let (peak_loss, peak_cable_loss) = bank.peak_losses(&conditions, variance_w2);
                Some(PlanHour {
                    day,
                    hour_of_day,
                    air: air_temperature(air.mean, air.half_range_k, middle),
                    unheated,
                    conditions,
                    demand,
                    electronics,
                    supply,
                    peak_loss,
                    peak_cable_loss,
                    load: demand.total() + electronics + peak_loss + peak_cable_loss,
                    offered: supply.dcdc + supply.hook_up + supply.other,
                })
            })
            .collect();
        let restart =
            setup.correction.restart.map(|(at, soc_frac)| (at.0.max(0.0) as usize, soc_frac));
        let first_whole_day =
            Surroundings::on_day(setup, FIRST_WHOLE_DAY, sun.first_whole_day_air());
        let use_error_frac = use_error_frac(setup, &first_whole_day);
        let like = like.map(|like| &*like.air_response);
        Self {
            air_response: Arc::new(AirResponse::like(setup, &bank, like)),
            use_error_frac,
            bank,
            hours,
            start_soc_frac: setup.bank.soc_start_frac,
            restart,
            sun_factor: setup.correction.sun_factor,
            mornings: (1..=sun.horizon_nights).map(|night| morning_of(trip, night)).collect(),
            nights_wanted: usize::from(trip.nights),
            steps_per_hour,
            sun,
        }
    }

    /// Nights over before the hour in which the limit is passed; all of them if it never is.
    #[must_use]
    pub fn nights_before(&self, first_low: Option<usize>) -> usize {
        first_low.map_or(self.mornings.len(), |hour| {
            self.mornings.iter().filter(|morning| **morning <= hour).count()
        })
    }

    /// Hours that belong to the stay asked for, up to the morning it ends and a little more.
    #[must_use]
    pub fn stay_hours(&self) -> usize {
        self.nights_wanted
            .checked_sub(1)
            .and_then(|last| self.mornings.get(last))
            .map_or(self.hours.len(), |morning| morning + AFTER_LAST_MORNING)
            .min(self.hours.len())
    }
}

/// Hour, counted from arrival, at which night number `night` (from 1) is over.
fn morning_of(trip: &Trip, night: usize) -> usize {
    let arrival = usize::from(trip.arrival_hour.min(23));
    let first = if arrival < MORNING_HOUR { MORNING_HOUR } else { MORNING_HOUR + 24 } - arrival;
    first + 24 * (night - 1)
}

fn horizon_hours(trip: &Trip, nights: usize) -> usize {
    morning_of(trip, nights.max(1)) + AFTER_LAST_MORNING
}

/// Value on a date on straight lines between mid-month figures.
fn mid_month_line(months: &[f64; 12], date: Date) -> f64 {
    let length = f64::from(date.month().length(date.year()));
    let from_middle = (f64::from(date.day()) - 0.5) / length - 0.5;
    let here = usize::from(u8::from(date.month())) - 1;
    let other = if from_middle < 0.0 { here + 11 } else { here + 1 } % 12;
    months[here] + from_middle.abs() * (months[other] - months[here])
}
