//! A day of light on the panel, step by step.

use crate::place::{AirYear, Place};
use crate::sun::log::{checked_share, hourly_skies, sky_of_sun_hours};
use crate::sun::{
    DayLog, HourSky, Plane, SolarDay, SunError, SunPosition, Unlogged, altitude_gain, day_of_year,
    erbs_split, extraterrestrial_normal_w_m2, faiman_cell_c, haurwitz_ghi_w_m2, sun_position,
};

const DAY_S: u32 = 86_400;
/// Beam that counts as sunshine: WMO Guide to Instruments and Methods of Observation, chapter 8.
/// \[W/m2\]
const SUNSHINE_DNI_W_M2: f64 = 120.0;
/// The fifteenth of each month, the FAO's day for a month, counted from 1 January 2026.
const MID_MONTH_DAYS: [i32; 12] = [14, 45, 73, 104, 134, 165, 195, 226, 257, 287, 318, 348];
/// 1 January 2026. \[days since 1970-01-01\]
const NEW_YEAR_2026: i32 = 20_454;

/// Where the panel stands and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Setting {
    /// Where on earth.
    pub place: Place,
    /// The air's warmth through the year.
    pub air: AirYear,
    /// The panel's tilt and direction.
    pub plane: Plane,
    /// Wind at the panel; 1 m/s when nobody knows. \[m/s\]
    pub wind_m_s: f64,
}

/// One state of the light on the panel within a step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlaneState {
    /// Share of the step. The shares of a step add up to 1.
    pub weight: f64,
    /// On the panel's plane. \[W/m2\]
    pub irradiance_w_m2: f64,
    /// Of the panel's cells, as if the state had lasted for some minutes. \[degC\]
    pub cell_c: f64,
}

/// A time step of the day. Its sun is the sun in the middle of the step.
#[derive(Debug, Clone, PartialEq)]
pub struct SeriesStep {
    /// When it begins, after midnight of the household's clock. \[s\]
    pub start_s: u32,
    /// Where the sun stands.
    pub sun: SunPosition,
    /// Air temperature. \[degC\]
    pub air_c: f64,
    /// Mean global horizontal irradiance. \[W/m2\]
    pub ghi_w_m2: f64,
    /// The same under a clear sky at this altitude. \[W/m2\]
    pub clear_ghi_w_m2: f64,
    /// Mean direct normal irradiance: the beam, on a plane that follows the sun. \[W/m2\]
    pub dni_w_m2: f64,
    /// Share of the step with a beam that casts shadows, 120 W/m2 or more (WMO).
    pub sunny_share: f64,
    /// The light on the panel: one state or a few by day, none by night.
    pub states: Vec<PlaneState>,
    /// Standard deviation of the mean irradiance over that mean, for the hour as logged. It is
    /// common to the steps of one hour.
    pub relative_sd: f64,
}

impl SeriesStep {
    /// Mean irradiance on the panel. \[W/m2\]
    pub fn plane_w_m2(&self) -> f64 {
        self.states
            .iter()
            .map(|state| state.weight * state.irradiance_w_m2)
            .sum()
    }
}

/// The light of one day on the household's clock.
#[derive(Debug, Clone, PartialEq)]
pub struct IrradianceSeries {
    /// The day. \[days since 1970-01-01\]
    pub local_day: i32,
    /// Length of each step. \[s\]
    pub step_s: u32,
    /// From midnight to midnight.
    pub steps: Vec<SeriesStep>,
}

impl IrradianceSeries {
    /// The light of a day, from what was logged.
    ///
    /// # Arguments
    ///
    /// * `setting`: the panel's place, air and mounting.
    /// * `local_day`: on the household's clock, 1950 to 2100. \[days since 1970-01-01\]
    /// * `log`: what the household saw.
    /// * `unlogged`: what to take for hours without an entry.
    /// * `step_min`: a divisor of 60; 15 to 30 is fine enough for a day's heat. \[min\]
    ///
    /// # Errors
    ///
    /// [`SunError`] for a senseless setting, day or step; [`SunError::SunHoursExceedDay`] for
    /// more sunshine than the day has; [`SunError::NothingLogged`] as [`Unlogged::MeanOfLogged`]
    /// has nothing to go by.
    ///
    /// # Example
    ///
    /// ```
    /// use model::place::{AirYear, Place};
    /// use model::sun::{DayLog, IrradianceSeries, Plane, Setting, Sky, Unlogged};
    ///
    /// let place =
    ///     Place { latitude_deg: -1.3, longitude_deg: 36.8, altitude_m: 1700.0, utc_offset_min: 180 };
    /// let setting = Setting {
    ///     place,
    ///     air: AirYear::guess(place.latitude_deg, place.altitude_m)?,
    ///     plane: Plane { tilt_deg: 15.0, azimuth_deg: 0.0, albedo: 0.2 },
    ///     wind_m_s: 1.0,
    /// };
    /// let log = DayLog::SunHours(7.5);
    /// let day = IrradianceSeries::new(&setting, 20_533, &log, Unlogged::As(Sky::Patchy), 30)?;
    /// // 7.5 of 12 h: (0.25 + 0.5 * 0.625) of about 37.9 MJ/m2, and 4.5 % more at 1700 m.
    /// assert!((day.horizontal_j_m2() / 1e6 - 22.3).abs() < 0.2);
    /// # Ok::<(), model::sun::SunError>(())
    /// ```
    pub fn new(
        setting: &Setting,
        local_day: i32,
        log: &DayLog,
        unlogged: Unlogged,
        step_min: u32,
    ) -> Result<Self, SunError> {
        let clear = ClearDay::new(setting, local_day, step_min)?;
        let skies = match log {
            DayLog::SunHours(hours) => {
                vec![sky_of_sun_hours(*hours, clear.solar_day()?, clear.at_sea_j_m2())?; 24]
            }
            DayLog::Hourly(logged) => hourly_skies(logged, unlogged, &clear.hours_j_m2())?,
        };
        Ok(clear.under(&skies))
    }

    /// The day's radiation on level ground. \[J/m2\]
    pub fn horizontal_j_m2(&self) -> f64 {
        self.steps
            .iter()
            .map(|step| step.ghi_w_m2 * f64::from(self.step_s))
            .sum()
    }

    /// The day's radiation on the panel. \[J/m2\]
    pub fn plane_j_m2(&self) -> f64 {
        self.steps
            .iter()
            .map(|step| step.plane_w_m2() * f64::from(self.step_s))
            .sum()
    }

    /// The step that holds a moment of the day, if the moment is within the day.
    pub fn step_at(&self, second_of_day: u32) -> Option<&SeriesStep> {
        let idx = usize::try_from(second_of_day / self.step_s).ok()?;
        self.steps.get(idx)
    }
}

/// Twelve days for a year: the middle of each month with the same share of possible sunshine.
///
/// # Arguments
///
/// * `setting`: the panel's place, air and mounting.
/// * `sunshine_share`: sharp shadows over daylight, n/N, a mean of the year; 0 to 1.
/// * `step_min`: a divisor of 60. \[min\]
///
/// # Errors
///
/// [`SunError::SunshineShare`], and as [`IrradianceSeries::new`].
pub fn typical_year(
    setting: &Setting,
    sunshine_share: f64,
    step_min: u32,
) -> Result<Vec<IrradianceSeries>, SunError> {
    let share = checked_share(sunshine_share)?;
    MID_MONTH_DAYS
        .iter()
        .map(|day| {
            let clear = ClearDay::new(setting, NEW_YEAR_2026 + day, step_min)?;
            let solar = clear.solar_day()?;
            let sky = sky_of_sun_hours(share * solar.daylight_h, solar, clear.at_sea_j_m2())?;
            Ok(clear.under(&vec![sky; 24]))
        })
        .collect()
}

/// The sun of a day before any cloud.
struct ClearDay<'a> {
    setting: &'a Setting,
    local_day: i32,
    day_of_year: u32,
    step_s: u32,
    /// Start of each step, the sun in its middle, and the clear-sky irradiance.
    steps: Vec<(u32, SunPosition, f64)>,
}

impl<'a> ClearDay<'a> {
    fn new(setting: &'a Setting, local_day: i32, step_min: u32) -> Result<Self, SunError> {
        setting.place.checked()?;
        setting.air.checked()?;
        setting.plane.checked()?;
        if !(0.0..=60.0).contains(&setting.wind_m_s) {
            return Err(SunError::Wind(setting.wind_m_s));
        }
        if step_min == 0 || !60_u32.is_multiple_of(step_min) {
            return Err(SunError::Step(step_min));
        }
        let day_of_year = day_of_year(local_day)?;
        let step_s = step_min * 60;
        let place = setting.place;
        let gain = altitude_gain(place.altitude_m);
        let midnight_utc_s =
            f64::from(local_day) * f64::from(DAY_S) - f64::from(place.utc_offset_min) * 60.0;
        let steps = (0..DAY_S / step_s)
            .map(|idx| {
                let start_s = idx * step_s;
                let middle_s = midnight_utc_s + f64::from(start_s) + 0.5 * f64::from(step_s);
                let sun = sun_position(middle_s, place.latitude_deg, place.longitude_deg);
                (start_s, sun, gain * haurwitz_ghi_w_m2(sun.zenith_deg))
            })
            .collect();
        Ok(Self {
            setting,
            local_day,
            day_of_year,
            step_s,
            steps,
        })
    }

    fn solar_day(&self) -> Result<SolarDay, SunError> {
        SolarDay::new(self.setting.place.latitude_deg, self.day_of_year)
    }

    /// What this clear day would give at sea level, where the FAO's relation between sunshine and
    /// light was found: the share that it lets through is that of the clear day above as well.
    fn at_sea_j_m2(&self) -> f64 {
        let here_j_m2: f64 = self.hours_j_m2().iter().sum();
        here_j_m2 / altitude_gain(self.setting.place.altitude_m)
    }

    fn hours_j_m2(&self) -> [f64; 24] {
        let mut hours = [0.0; 24];
        for (start_s, _, ghi) in &self.steps {
            if let Some(hour) = hours.get_mut(hour_of(*start_s)) {
                *hour += ghi * f64::from(self.step_s);
            }
        }
        hours
    }

    /// The day under the skies of its 24 hours.
    fn under(&self, skies: &[HourSky]) -> IrradianceSeries {
        let outside = extraterrestrial_normal_w_m2(self.day_of_year);
        let setting = self.setting;
        let steps = self
            .steps
            .iter()
            .map(|&(start_s, sun, clear_ghi)| {
                let middle_s = f64::from(start_s) + 0.5 * f64::from(self.step_s);
                let air_c = setting.air.air_c(&setting.place, self.local_day, middle_s);
                let sky = skies.get(hour_of(start_s)).filter(|_| 0.0 < clear_ghi);
                let (mut dni_w_m2, mut sunny_share) = (0.0, 0.0);
                let states = sky.map_or_else(Vec::new, |sky| {
                    let mut state = |index: f64, weight: f64| {
                        let ghi = index * clear_ghi;
                        let split = erbs_split(ghi, sun.zenith_deg, outside);
                        dni_w_m2 += weight * split.dni_w_m2;
                        if SUNSHINE_DNI_W_M2 <= split.dni_w_m2 {
                            sunny_share += weight;
                        }
                        let irradiance_w_m2 = setting.plane.irradiance_w_m2(sun, ghi, split);
                        let cell_c = faiman_cell_c(irradiance_w_m2, air_c, setting.wind_m_s);
                        PlaneState {
                            weight,
                            irradiance_w_m2,
                            cell_c,
                        }
                    };
                    sky.states
                        .iter()
                        .map(|s| state(s.clear_sky_index, s.weight))
                        .collect()
                });
                SeriesStep {
                    start_s,
                    sun,
                    air_c,
                    ghi_w_m2: sky.map_or(0.0, |sky| sky.mean_index() * clear_ghi),
                    clear_ghi_w_m2: clear_ghi,
                    dni_w_m2,
                    sunny_share,
                    states,
                    relative_sd: sky.map_or(0.0, |sky| sky.relative_sd),
                }
            })
            .collect();
        IrradianceSeries {
            local_day: self.local_day,
            step_s: self.step_s,
            steps,
        }
    }
}

/// Hour of the household's clock in which a step begins.
fn hour_of(start_s: u32) -> usize {
    usize::try_from(start_s / 3_600).unwrap_or(usize::MAX)
}

#[cfg(test)]
#[path = "series_tests.rs"]
mod tests;
