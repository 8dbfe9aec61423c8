//! Whether what the page calls likely comes true: the chances of lasting N nights, made as the page
//! makes them (place, climate of the world, plan, weather sequences, battery), against measured days
//! played through the same battery.
//!
//! Measured daily global irradiation: De Bilt (KNMI), Dublin (Met Eireann), Hamilton in Australia
//! (SILO, from satellite); see `data/README.md`. Rigs and loads are invented. All three have a say in
//! the climate; `make_climate.py` prints what it is without each of them.
//!
//! Series of one's own, which need not be free, are played by `other_series_come_true`.

use crate::climate_world::world;
use crate::debilt::extraterrestrial_at_wh_m2;
use crate::survival_engine::fortnight;
use nightbank::forecast::climate::climate_in;
use nightbank::forecast::weather::{
    AirSpread, DayClimate, ForecastDay, MonthlyClearness, Sequence, WeatherSequences,
};
use nightbank::forecast::{Course, MonthlyClimate, OddsRun, TripPlan, plan::TripSun};
use nightbank::model::climate::ClimateSource;
use nightbank::model::{Chemistry, Place, Setup};
use nightbank::units::{Degrees, Metres};
use std::sync::Arc;

/// Nights whose chances are compared.
const NIGHTS: [usize; 7] = [1, 2, 3, 5, 7, 10, 14];
/// Sequences behind a forecast: chances are exact to 2.2 points at worst.
const SEQUENCES: usize = 500;
/// Stays begin this many days around the middle of a month.
const STARTS_WITHIN_DAYS: u32 = 7;

/// Measured days at a place.
struct Station {
    name: String,
    place: Place,
    days: Vec<Day>,
}

struct Day {
    /// Days since 1 January of year 0, so that gaps are seen.
    number: i32,
    year: i32,
    month: u8,
    day_of_month: u8,
    clearness_frac: f64,
}

impl Station {
    /// From lines of `yyyymmdd,Wh/m2` under a heading.
    fn read(name: &str, latitude: f64, longitude: f64, altitude: f64, text: &str) -> Self {
        let mut days = Vec::new();
        for line in text.lines().skip(1).filter(|line| !line.trim().is_empty()) {
            let (date, ghi) = line.split_once(',').expect(line);
            let date: i32 = date.trim().parse().expect(line);
            let ghi: f64 = ghi.trim().parse().expect(line);
            let month = u8::try_from(date / 100 % 100).expect(line);
            let of_month = u8::try_from(date % 100).expect(line);
            let date = time::Date::from_calendar_date(
                date / 10_000,
                time::Month::try_from(month).expect(line),
                of_month,
            )
            .expect(line);
            let above = extraterrestrial_at_wh_m2(latitude, date.year(), u32::from(date.ordinal()));
            days.push(Day {
                number: date.to_julian_day(),
                year: date.year(),
                month,
                day_of_month: of_month,
                // Polar night: no sun either way.
                clearness_frac: if above > 1.0 { ghi / above } else { 0.4 },
            });
        }
        let place = Place {
            name: name.to_owned(),
            latitude: Degrees(latitude),
            longitude: Degrees(longitude),
            altitude: Metres(altitude),
        };
        Self { name: name.to_owned(), place, days }
    }

    /// Runs of `length` days without a gap that begin about the middle of `month`.
    fn runs(&self, month: u8, length: usize) -> impl Iterator<Item = &[Day]> {
        self.days.windows(length).filter(move |run| {
            let whole = run[length - 1].number - run[0].number == length as i32 - 1;
            let near = run[0].month == month
                && u32::from(run[0].day_of_month).abs_diff(15) <= STARTS_WITHIN_DAYS;
            whole && near
        })
    }

    /// Mean measured clearness of the months.
    fn own_climate(&self) -> [f64; 12] {
        std::array::from_fn(|month| {
            let ks: Vec<f64> = self
                .days
                .iter()
                .filter(|day| usize::from(day.month) == month + 1)
                .map(|day| day.clearness_frac)
                .collect();
            ks.iter().sum::<f64>() / ks.len() as f64
        })
    }

    fn years(&self) -> usize {
        let mut years: Vec<i32> = self.days.iter().map(|day| day.year).collect();
        years.dedup();
        years.len()
    }
}

fn de_bilt() -> Station {
    let text = include_str!("data/debilt/debilt_daily_ghi_even_years.csv");
    Station::read("De Bilt", 52.10, 5.18, 2.0, text)
}

fn dublin() -> Station {
    Station::read("Dublin", 53.43, -6.24, 71.0, include_str!("data/daily/dublin_ie.csv"))
}

fn hamilton() -> Station {
    Station::read("Hamilton", -37.65, 142.06, 241.0, include_str!("data/daily/hamilton_au.csv"))
}

/// Chemistry, Ah, load a day [Wh], panel [W].
const RIGS: [(Chemistry, f64, f64, f64); 6] = [
    (Chemistry::Agm, 100.0, 350.0, 100.0),
    (Chemistry::Agm, 200.0, 500.0, 200.0),
    (Chemistry::LiFePo4, 100.0, 500.0, 200.0),
    (Chemistry::LiFePo4, 200.0, 700.0, 300.0),
    (Chemistry::Flooded, 100.0, 250.0, 80.0),
    (Chemistry::LiFePo4, 100.0, 300.0, 100.0),
];

fn setup(place: &Place, month: u8, rig: (Chemistry, f64, f64, f64)) -> Setup {
    let (chemistry, ah, need_wh, peak) = rig;
    let mut setup = fortnight(month, chemistry, ah, need_wh, peak);
    setup.trip.place = place.clone();
    setup
}

/// A chance and what came of it.
#[derive(Clone, Copy)]
struct Case {
    forecast: f64,
    measured: f64,
    /// What came of it in as many years of drawn weather: what even a perfect forecast misses by.
    drawn: f64,
}

/// Where the climate of a forecast comes from.
#[derive(Clone, Copy, PartialEq)]
enum Known {
    /// As on the page.
    Product,
    /// The station's own means, without an error: what is left is not the climate's fault.
    Own,
}

fn cases(station: &Station, known: Known) -> Vec<Case> {
    let mut cases = Vec::new();
    for month in 1..=12_u8 {
        for rig in RIGS {
            let setup = setup(&station.place, month, rig);
            let found = climate_in(Some(world()), &setup.trip);
            assert_eq!(found.source, ClimateSource::World, "{}", station.name);
            let mut climate = MonthlyClimate::from(&found);
            if known == Known::Own {
                climate.clearness_frac = station.own_climate();
                climate.error_frac = 0.0;
            }
            let mut sun = TripSun::build(&setup, &climate).expect("valid climate");
            // The measured skies come without their air: both sides play the usual one.
            sun.days.iter_mut().for_each(|day| day.air = AirSpread::default());
            let plan = Arc::new(TripPlan::build(&setup, Arc::new(sun)));
            let mut run = OddsRun::nights_only(plan.clone(), SEQUENCES).expect("valid weather");
            while run.advance(SEQUENCES) {}
            let odds = run.odds();
            let length = plan.sun.days.len();
            let nights = |k: &[f64]| plan.nights_before(Course::play(&plan, k).first_low);
            let mut measured = Tally::default();
            for days in station.runs(month, length) {
                let k: Vec<f64> = days.iter().map(|day| day.clearness_frac).collect();
                measured.add(nights(&k));
            }
            let mut drawn = Tally::default();
            for k in drawn_years(&setup, &climate, station.years(), length) {
                drawn.add(nights(&k));
            }
            cases.extend(NIGHTS.into_iter().map(|n| Case {
                forecast: odds.chance_of(n),
                measured: measured.share(n),
                drawn: drawn.share(n),
            }));
        }
    }
    cases
}

/// How many stays lasted each night.
#[derive(Default)]
struct Tally {
    stays: u32,
    lasted: [u32; 15],
}

impl Tally {
    fn add(&mut self, nights: usize) {
        self.stays += 1;
        self.lasted.iter_mut().take(nights + 1).for_each(|count| *count += 1);
    }

    fn share(&self, nights: usize) -> f64 {
        f64::from(self.lasted[nights]) / f64::from(self.stays)
    }
}

/// Stays in drawn years, beginning on the same days as the measured ones.
fn drawn_years(
    setup: &Setup,
    climate: &MonthlyClimate,
    years: usize,
    length: usize,
) -> Vec<Vec<f64>> {
    let starts = 2 * STARTS_WITHIN_DAYS as usize + 1;
    let first = u32::from(setup.trip.start().ordinal()) - STARTS_WITHIN_DAYS;
    let day_climate = DayClimate::of(setup.trip.place.latitude, &climate.air.map(|air| air.0));
    let clearness =
        MonthlyClearness::new(climate.clearness_frac).expect("finite").of_climate(day_climate);
    let days = clearness.distributions(first, starts + length).expect("finite");
    let days: Vec<ForecastDay> = days.into_iter().map(ForecastDay::unknown).collect();
    let seed = 17 * u64::from(setup.trip.month);
    let mut weather =
        WeatherSequences::with_persistence(days, seed, day_climate.persistence()).expect("valid");
    let mut drawn = Sequence::default();
    let mut out = Vec::new();
    for _ in 0..years {
        weather.fill(&mut drawn);
        out.extend(drawn.k_frac.windows(length).take(starts).map(<[f64]>::to_vec));
    }
    out
}

/// Neither forecast nor found all but certain either way: the others would only flatter.
fn is_open(case: &Case) -> bool {
    (0.02..0.98).contains(&case.forecast) || (0.02..0.98).contains(&case.measured)
}

/// Open chances, their mean absolute error, mean of forecast less found, and what a perfect forecast
/// misses by; points.
struct Misses {
    count: usize,
    absolute: f64,
    bias: f64,
    perfect: f64,
}

fn misses<'a>(cases: impl IntoIterator<Item = &'a Case>) -> Misses {
    let open: Vec<&Case> = cases.into_iter().filter(|case| is_open(case)).collect();
    let mean = |of: &dyn Fn(&Case) -> f64| {
        100.0 * open.iter().map(|case| of(case)).sum::<f64>() / open.len().max(1) as f64
    };
    Misses {
        count: open.len(),
        absolute: mean(&|case| (case.forecast - case.measured).abs()),
        bias: mean(&|case| case.forecast - case.measured),
        perfect: mean(&|case| (case.forecast - case.drawn).abs()),
    }
}

fn print_misses(name: &str, found: &Misses) {
    println!(
        "{name:28} {:4} open chances, off by {:4.1} points, bias {:+5.1}, a perfect forecast {:4.1}",
        found.count, found.absolute, found.bias, found.perfect
    );
}

/// By what was said, in steps of ten points: mean said, mean come true, how many.
fn said_and_true(cases: &[Case]) -> Vec<(f64, f64, usize)> {
    (0..10)
        .map(|bin| {
            let (low, high) = (f64::from(bin) / 10.0, f64::from(bin + 1) / 10.0);
            let inside: Vec<&Case> = cases
                .iter()
                .filter(|case| (low.max(0.02)..high.min(0.98)).contains(&case.forecast))
                .collect();
            let mean = |of: fn(&Case) -> f64| {
                100.0 * inside.iter().map(|case| of(case)).sum::<f64>() / inside.len().max(1) as f64
            };
            (mean(|case| case.forecast), mean(|case| case.measured), inside.len())
        })
        .collect()
}

/// Cases of several stations, each on a processor of its own.
fn all_cases(stations: &[Station], known: Known) -> Vec<Vec<Case>> {
    std::thread::scope(|scope| {
        let runs: Vec<_> =
            stations.iter().map(|station| scope.spawn(move || cases(station, known))).collect();
        runs.into_iter().map(|run| run.join().expect("no panic")).collect()
    })
}

#[test]
fn what_the_page_says_comes_true() {
    let stations = [de_bilt(), dublin(), hamilton()];
    let by_station = all_cases(&stations, Known::Product);
    for ((station, cases), within) in stations.iter().zip(&by_station).zip([6.0, 6.0, 9.5]) {
        let found = misses(cases);
        print_misses(&station.name, &found);
        // Found 5.2, 4.7 and 8.7; six years alone leave even a perfect forecast 4.5 off in Hamilton.
        assert!(found.count > 100, "the rigs leave enough to chance");
        assert!(found.absolute < within, "{}", station.name);
    }
    let all: Vec<Case> = by_station.into_iter().flatten().collect();
    let found = misses(&all);
    print_misses("all", &found);
    assert!(found.absolute < 6.5 && found.bias.abs() < 2.0);
    for (said, came, count) in said_and_true(&all) {
        println!("said {said:4.1} %, came true {came:4.1} %, {count} chances");
        assert!(count < 100 || (said - came).abs() < 5.0, "said {said:.1}, came {came:.1}");
    }
}

/// What is left when the climate is the station's own: not a claim, but where to look.
#[test]
#[ignore = "takes a while and asserts nothing"]
fn with_the_means_of_the_station() {
    let stations = [de_bilt(), dublin(), hamilton()];
    for (station, cases) in stations.iter().zip(all_cases(&stations, Known::Own)) {
        print_misses(&format!("{}, its own means", station.name), &misses(&cases));
    }
}

/// Further series, which need not be free: files `name_latitude_longitude_altitude.csv` with lines of
/// `yyyymmdd,Wh/m2` under a heading, in the folder that NIGHTBANK_SERIES names. Stations that had no
/// part in the climate may be off by 7 points on average and stray by 4 to one side.
#[test]
#[ignore = "needs daily series: NIGHTBANK_SERIES=folder cargo test --test all other_series -- --ignored --nocapture"]
fn other_series_come_true() {
    let folder = std::env::var("NIGHTBANK_SERIES")
        .expect("NIGHTBANK_SERIES names a folder of files name_latitude_longitude_altitude.csv");
    let mut stations = Vec::new();
    for entry in std::fs::read_dir(&folder).expect(&folder) {
        let path = entry.expect(&folder).path();
        let stem = path.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default().to_owned();
        let parts: Vec<&str> = stem.rsplitn(4, '_').collect();
        let [altitude, longitude, latitude, name] = parts[..] else { continue };
        let number = |text: &str| text.parse::<f64>().expect(&stem);
        let text = std::fs::read_to_string(&path).expect(&stem);
        stations.push(Station::read(
            name,
            number(latitude),
            number(longitude),
            number(altitude),
            &text,
        ));
    }
    assert!(!stations.is_empty(), "no series in {folder}");
    let by_station = all_cases(&stations, Known::Product);
    let found: Vec<Misses> = by_station.iter().map(misses).collect();
    for (station, found) in stations.iter().zip(&found) {
        print_misses(&station.name, found);
    }
    let mean = |of: fn(&Misses) -> f64| found.iter().map(of).sum::<f64>() / found.len() as f64;
    for (said, came, count) in said_and_true(&by_station.concat()) {
        println!("said {said:4.1} %, came true {came:4.1} %, {count} chances");
    }
    let (absolute, bias) = (mean(|found| found.absolute), mean(|found| found.bias.abs()));
    println!("mean of the stations: off by {absolute:.1} points, size of bias {bias:.1}");
    assert!(absolute < 7.0 && bias < 4.0);
}
