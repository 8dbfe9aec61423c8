//! One calendar day of sun at a place: from the day's clearness to the light on every array.
//!
//! ```text
//! k      = H / H0               daily clearness: irradiation on level ground over that above the air
//! GHI(t) = s C(t)               C: clear-sky irradiance at t, s = k H0 / sum C dt, s <= 1.11
//! ```
//! The day is sampled every quarter of an hour, so that hours with the sun near the horizon come
//! out right; Erbs split, Hay-Davies plane and reflection are worked out for each sample and
//! averaged to hours of the camp clock. 1.11: measured clear days stay below 1.11 of Haurwitz'
//! clear sky, so a larger k gives that day. At 52 N some dark-season days, one in 160 of a year, lie
//! above, as the formula is low for a low sun; what is cut off is 0.02 % of a year's light.
//!
//! Shade takes its share of the beam and of the light around the sun in three parts of solar time
//! (before 10 h, to 14 h, after), and of sky and ground light all day.

use super::incidence_angle::{DiffuseModifiers, beam_modifier};
use super::irradiance::{Plane, Sky, altitude_gain, anisotropy, clear_sky};
use super::panel::share;
use super::sun::{JulianDate, Sun, SunDirection};
use crate::model::{Place, Shade, SolarArray};
use crate::units::{Degrees, WattHoursPerSquareMetre, WattsPerSquareMetre};
use time::Date;

/// Samples in an hour.
pub const SAMPLES_PER_HOUR: usize = 4;
/// Most light of a day over the clear-sky formula.
pub const CLEAREST_DAY: f64 = 1.11;
/// Floor of cos z in the ratio cos i / cos z, as pvlib (89 degrees).
const MIN_COS_ZENITH_RATIO: f64 = 0.01745;

/// One quarter of an hour with the sun up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SunSample {
    /// Hour of the clock, 0 to 23.
    pub hour: usize,
    /// Where the sun stands; above the horizon.
    pub sun: SunDirection,
    /// Hour angle, 0 at solar noon, negative before.
    pub hour_angle: Degrees,
    /// Clear-sky irradiance on level ground.
    pub clear_sky: WattsPerSquareMetre,
}

/// The sun over one calendar day of the camp clock.
#[derive(Clone, Debug)]
pub struct DaySun {
    samples: Vec<SunSample>,
    extraterrestrial_normal: WattsPerSquareMetre,
    above_air: WattHoursPerSquareMetre,
    clear: WattHoursPerSquareMetre,
}

/// Light of one hour on an array, and what became of it [W/m2, mean of the hour].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct ArrayLight {
    /// On the plane with a free horizon.
    pub poa: WattsPerSquareMetre,
    /// After shade.
    pub after_shade: WattsPerSquareMetre,
    /// After reflection at the glass: what reaches the cells.
    pub poa_effective: WattsPerSquareMetre,
}

impl DaySun {
    /// The sun on `date` at `place`, by a clock `utc_offset_min` ahead of UTC.
    #[must_use]
    pub fn new(place: &Place, date: Date, utc_offset_min: i16) -> Self {
        let latitude = Degrees(finite(place.latitude.0).clamp(-90.0, 90.0));
        let longitude = Degrees(finite(place.longitude.0).clamp(-360.0, 360.0));
        let gain = altitude_gain(place.altitude);
        let step_h = 1.0 / SAMPLES_PER_HOUR as f64;
        let offset = f64::from(utc_offset_min);
        let noon = Sun::at(JulianDate::from_local(date, 720.0, offset));
        let extraterrestrial_normal = noon.extraterrestrial_normal();
        let samples = (0..24 * SAMPLES_PER_HOUR)
            .filter_map(|index| {
                let minutes = (index as f64 + 0.5) * step_h * 60.0;
                let seen = Sun::at(JulianDate::from_local(date, minutes, offset));
                let sun = seen.seen_from(latitude, longitude);
                (sun.up > 0.0).then(|| SunSample {
                    hour: index / SAMPLES_PER_HOUR,
                    sun,
                    hour_angle: seen.hour_angle(longitude),
                    clear_sky: clear_sky(sun.up) * gain,
                })
            })
            .collect();
        Self::from_samples(samples, extraterrestrial_normal)
    }

    /// A day put together from quarter-hours; those with the sun down are left out.
    #[must_use]
    pub fn from_samples(
        samples: Vec<SunSample>,
        extraterrestrial_normal: WattsPerSquareMetre,
    ) -> Self {
        let step_h = 1.0 / SAMPLES_PER_HOUR as f64;
        let sum_up: f64 = samples.iter().map(|sample| sample.sun.up).sum();
        let sum_clear: f64 = samples.iter().map(|sample| sample.clear_sky.0).sum();
        Self {
            samples,
            extraterrestrial_normal,
            above_air: WattHoursPerSquareMetre(extraterrestrial_normal.0 * sum_up * step_h),
            clear: WattHoursPerSquareMetre(sum_clear * step_h),
        }
    }

    /// Irradiation of level ground above the air over the calendar day, H0; zero in the polar
    /// night.
    #[must_use]
    pub fn h0(&self) -> WattHoursPerSquareMetre {
        self.above_air
    }

    /// Irradiation of level ground under a clear sky (Haurwitz).
    #[must_use]
    pub fn clear_sky(&self) -> WattHoursPerSquareMetre {
        self.clear
    }

    /// Daily clearness of a clear sky (Haurwitz), 0 in the polar night.
    #[must_use]
    pub fn clear_sky_k_frac(&self) -> f64 {
        if self.above_air.0 > 0.0 { self.clear / self.above_air } else { 0.0 }
    }

    /// Daily clearness of the clearest day, 0 in the polar night. A larger k gives the same day.
    #[must_use]
    pub fn k_frac_max(&self) -> f64 {
        CLEAREST_DAY * self.clear_sky_k_frac()
    }

    /// Irradiation of level ground at a clearness, after the limit of the clearest day.
    #[must_use]
    pub fn global(&self, k_frac: f64) -> WattHoursPerSquareMetre {
        self.clear * self.brightness(k_frac)
    }

    /// Factor on the clear sky that brings the day to k; 0 for a k that is not a number.
    fn brightness(&self, k_frac: f64) -> f64 {
        if k_frac > 0.0 && self.clear.0 > 0.0 {
            (k_frac * (self.above_air / self.clear)).min(CLEAREST_DAY)
        } else {
            0.0
        }
    }

    /// Sky of every sample at a clearness, in the order of the samples.
    pub(super) fn skies(&self, k_frac: f64) -> Vec<SampleSky> {
        let brightness = self.brightness(k_frac);
        self.samples
            .iter()
            .map(|sample| {
                let ghi = sample.clear_sky * brightness;
                let sky = Sky::split(ghi, sample.sun.up, self.extraterrestrial_normal);
                let around = anisotropy(sky.direct_normal, self.extraterrestrial_normal);
                let dhi = sky.diffuse_horizontal.0;
                SampleSky {
                    beam: sky.direct_normal.0
                        + dhi * around / sample.sun.up.max(MIN_COS_ZENITH_RATIO),
                    sky: dhi * (1.0 - around),
                    global: ghi.0,
                }
            })
            .collect()
    }
}

/// Light of one sample before it meets a plane [W/m2].
#[derive(Clone, Copy, Debug)]
pub(super) struct SampleSky {
    /// From the sun and around it, on a surface facing it.
    beam: f64,
    /// From the rest of the sky, on level ground.
    sky: f64,
    /// All, on level ground.
    global: f64,
}

/// Shares of the three kinds of light at one sample, at one stage of loss.
#[derive(Clone, Copy, Debug)]
struct Shares {
    beam: f64,
    sky: f64,
    ground: f64,
}

impl Shares {
    fn of(self, light: SampleSky) -> f64 {
        self.beam * light.beam + self.sky * light.sky + self.ground * light.global
    }
}

/// How one array meets the light of one day.
#[derive(Clone, Debug)]
pub struct ArrayDay {
    hours: Vec<usize>,
    poa: Vec<Shares>,
    after_shade: Vec<Shares>,
    poa_effective: Vec<Shares>,
}

impl ArrayDay {
    /// Geometry of `array` on a day. `ground_reflectance` 0 to 1, 0.2 grass, 0.7 snow.
    #[must_use]
    pub fn new(day: &DaySun, array: &SolarArray, ground_reflectance: f64) -> Self {
        let tilt = Degrees(finite(array.tilt.0).clamp(0.0, 90.0));
        let plane = Plane::new(tilt, Degrees(finite(array.facing.0)));
        let diffuse = DiffuseModifiers::for_tilt(tilt);
        let reflectance = share(ground_reflectance);
        let open_sky = 1.0 - share(array.shade.sky_frac);
        let count = day.samples.len();
        let mut this = Self {
            hours: Vec::with_capacity(count),
            poa: Vec::with_capacity(count),
            after_shade: Vec::with_capacity(count),
            poa_effective: Vec::with_capacity(count),
        };
        for sample in &day.samples {
            let facing = plane.cos_incidence(sample.sun).max(0.0);
            let poa = Shares {
                beam: facing,
                sky: plane.sky_view(),
                ground: plane.ground_view() * reflectance,
            };
            let after_shade = Shares {
                beam: poa.beam * open_beam(array.shade, sample.hour_angle),
                sky: poa.sky * open_sky,
                ground: poa.ground * open_sky,
            };
            this.hours.push(sample.hour);
            this.poa.push(poa);
            this.after_shade.push(after_shade);
            this.poa_effective.push(Shares {
                beam: after_shade.beam * beam_modifier(facing),
                sky: after_shade.sky * diffuse.sky,
                ground: after_shade.ground * diffuse.ground,
            });
        }
        this
    }

    /// Light in the cells hour by hour, from the skies of the same day.
    pub(super) fn poa_effective(&self, skies: &[SampleSky]) -> [WattsPerSquareMetre; 24] {
        self.by_hour(&self.poa_effective, skies)
    }

    /// Light hour by hour with its losses, at a clearness. `day` is the one this was made for.
    #[must_use]
    pub fn light(&self, day: &DaySun, k_frac: f64) -> [ArrayLight; 24] {
        let skies = day.skies(k_frac);
        let poa = self.by_hour(&self.poa, &skies);
        let after_shade = self.by_hour(&self.after_shade, &skies);
        let poa_effective = self.by_hour(&self.poa_effective, &skies);
        let mut hours = [ArrayLight::default(); 24];
        for (hour, ((plane, shade), cells)) in
            hours.iter_mut().zip(poa.into_iter().zip(after_shade).zip(poa_effective))
        {
            *hour = ArrayLight { poa: plane, after_shade: shade, poa_effective: cells };
        }
        hours
    }

    fn by_hour(&self, shares: &[Shares], skies: &[SampleSky]) -> [WattsPerSquareMetre; 24] {
        let mut hours = [WattsPerSquareMetre(0.0); 24];
        for ((&hour, share), &sky) in self.hours.iter().zip(shares).zip(skies) {
            if let Some(sum) = hours.get_mut(hour) {
                *sum += WattsPerSquareMetre(share.of(sky));
            }
        }
        hours.map(|sum| sum / SAMPLES_PER_HOUR as f64)
    }
}

/// Share of the beam left by shade: before 10 h, 10 to 14 h, after 14 h of solar time.
fn open_beam(shade: Shade, hour_angle: Degrees) -> f64 {
    1.0 - share(if hour_angle.0 < -30.0 {
        shade.morning_frac
    } else if hour_angle.0 <= 30.0 {
        shade.midday_frac
    } else {
        shade.afternoon_frac
    })
}

/// The figure, or 0 if it is none.
fn finite(figure: f64) -> f64 {
    if figure.is_finite() { figure } else { 0.0 }
}
