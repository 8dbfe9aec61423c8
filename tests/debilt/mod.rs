//! Twenty measured years of daily sun at De Bilt (52.10 N, 5.18 E), and the climate they make.
//!
//! Data: KNMI, daily data of station 260 De Bilt, the even years 1980-2018, global irradiation
//! (`tests/data/debilt/debilt_daily_ghi_even_years.csv`), CC BY 4.0, credit KNMI.
//!
//! Clearness needs the irradiation outside the atmosphere. It is written out here a second time
//! from the Astronomical Almanac's low-precision sun (as in Michalsky 1988, constants from memory),
//! so that these checks do not lean on the code they check.

#![allow(dead_code, reason = "each test file uses its own part")]

pub mod survival;

use nightbank::forecast::weather::{
    ForecastDay, MonthlyClearness, Persistence, Sequence, WeatherSequences,
};

pub const LATITUDE_DEG: f64 = 52.10;
/// Solar constant, W/m2 (Kopp & Lean 2011: 1360.8).
const SOLAR_CONSTANT: f64 = 1361.1;

/// One measured day.
#[derive(Debug, Clone, Copy)]
pub struct MeasuredDay {
    pub year: i32,
    /// 1 to 12.
    pub month: usize,
    /// 1 = 1 January.
    pub day_of_year: u32,
    pub ghi_wh_m2: f64,
    pub clearness_frac: f64,
}

/// The measured years, day after day; years are two apart.
pub struct DeBilt {
    pub days: Vec<MeasuredDay>,
    pub climate: MonthlyClearness,
}

impl DeBilt {
    pub fn load() -> Self {
        let text = include_str!("../data/debilt/debilt_daily_ghi_even_years.csv");
        let mut days: Vec<MeasuredDay> = Vec::new();
        for line in text.lines().skip(1) {
            let (date, ghi) = line.split_once(',').expect("two columns");
            let date: i32 = date.parse().expect("a date as yyyymmdd");
            let (year, month) = (date / 10_000, (date / 100 % 100) as usize);
            let day_of_year = match days.last() {
                Some(last) if last.year == year => last.day_of_year + 1,
                _ => 1,
            };
            let ghi_wh_m2: f64 = ghi.trim().parse().expect("irradiation");
            let clearness_frac = ghi_wh_m2 / extraterrestrial_wh_m2(year, day_of_year);
            days.push(MeasuredDay { year, month, day_of_year, ghi_wh_m2, clearness_frac });
        }
        let climate = MonthlyClearness::new(monthly_means(&days)).expect("finite means");
        Self { days, climate }
    }

    /// The years `keep` says, forecast from the climate of the years it does not.
    pub fn forecast_from_other_years(self, keep: impl Fn(i32) -> bool) -> Self {
        let (days, others): (Vec<_>, Vec<_>) = self.days.into_iter().partition(|d| keep(d.year));
        let climate = MonthlyClearness::new(monthly_means(&others)).expect("finite means");
        Self { days, climate }
    }

    /// The same measured days, forecast from another climate.
    pub fn with_climate(self, mean_frac: [f64; 12]) -> Self {
        let climate = MonthlyClearness::new(mean_frac).expect("finite means");
        Self { climate, ..self }
    }

    /// Mean measured irradiation of a month, Wh/m2 a day.
    pub fn month_mean_wh_m2(&self, month: usize) -> f64 {
        let of_month = || self.days.iter().filter(|day| day.month == month);
        of_month().map(|day| day.ghi_wh_m2).sum::<f64>() / of_month().count() as f64
    }

    /// Runs of `length` measured days, all within a year, that start in `month`.
    pub fn runs(&self, month: usize, length: usize) -> impl Iterator<Item = &[MeasuredDay]> {
        self.days
            .windows(length)
            .filter(move |run| run[0].month == month && run[0].year == run[length - 1].year)
    }

    /// Drawn runs of `length` days that start in `month`, on the days of year the measured ones can
    /// start on; `each` gets the first day of the year and the daily clearness.
    pub fn drawn_runs(
        &self,
        month: usize,
        length: usize,
        per_start: usize,
        persistence: Persistence,
        mut each: impl FnMut(u32, &[f64]),
    ) {
        let mut starts: Vec<u32> = self.runs(month, length).map(|run| run[0].day_of_year).collect();
        starts.sort_unstable();
        starts.dedup();
        let mut drawn = Sequence::default();
        for start in starts.into_iter().step_by(3) {
            let days = self.climate.distributions(start, length).expect("finite");
            let days = days.into_iter().map(ForecastDay::unknown).collect();
            let mut source =
                WeatherSequences::with_persistence(days, u64::from(start), persistence)
                    .expect("valid");
            for _ in 0..per_start {
                source.fill(&mut drawn);
                each(start, &drawn.k_frac);
            }
        }
    }
}

fn monthly_means(days: &[MeasuredDay]) -> [f64; 12] {
    let mut means = [0.0; 12];
    for (month, mean) in (1..).zip(&mut means) {
        let of_month = || days.iter().filter(|day| day.month == month);
        *mean = of_month().map(|day| day.clearness_frac).sum::<f64>() / of_month().count() as f64;
    }
    means
}

/// Daily irradiation on the horizontal outside the atmosphere at De Bilt, Wh/m2.
pub fn extraterrestrial_wh_m2(year: i32, day_of_year: u32) -> f64 {
    extraterrestrial_at_wh_m2(LATITUDE_DEG, year, day_of_year)
}

/// The same at another latitude.
pub fn extraterrestrial_at_wh_m2(latitude_deg: f64, year: i32, day_of_year: u32) -> f64 {
    // Days from noon on 1 January 2000 to noon of the day.
    let leap_days = (year - 1997).div_euclid(4);
    let n = f64::from((year - 2000) * 365 + leap_days) + f64::from(day_of_year) - 1.0;
    let anomaly = (357.528 + 0.985_600_3 * n).to_radians();
    let longitude =
        (280.460 + 0.985_647_4 * n + 1.915 * anomaly.sin() + 0.020 * (2.0 * anomaly).sin())
            .to_radians();
    let obliquity = (23.439_f64 - 4.0e-7 * n).to_radians();
    let declination = (obliquity.sin() * longitude.sin()).asin();
    let distance = 1.000_14 - 0.016_71 * anomaly.cos() - 0.000_14 * (2.0 * anomaly).cos();
    let latitude = latitude_deg.to_radians();
    let sunset = (-latitude.tan() * declination.tan()).clamp(-1.0, 1.0).acos();
    24.0 / std::f64::consts::PI * SOLAR_CONSTANT / (distance * distance)
        * (latitude.cos() * declination.cos() * sunset.sin()
            + sunset * latitude.sin() * declination.sin())
}

/// The figure that a share `p` of `figures` stays below (linear between neighbours). Sorts them.
pub fn quantile(figures: &mut [f64], p: f64) -> f64 {
    figures.sort_unstable_by(f64::total_cmp);
    let at = p * (figures.len() - 1) as f64;
    let low = figures[at.floor() as usize];
    low + at.fract() * (figures[at.ceil() as usize] - low)
}
