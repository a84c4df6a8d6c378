//! A day's radiation from its hours of sunshine, as the FAO computes it for crops.

use std::f64::consts::{PI, TAU};

use crate::sun::SunError;
use crate::sun::error::within;

/// How far logged hours of sunshine may exceed the day before they are refused. People log to
/// the nearest half hour. Such a log counts as sunshine from sunrise to sunset. \[h\]
pub const ROUNDING_H: f64 = 0.25;

/// Solar constant of FAO-56, eq. 21. \[MJ/m2 min\]
const FAO_SOLAR_CONSTANT_MJ_M2_MIN: f64 = 0.0820;

/// What the heavens alone decide about a day at a latitude.
///
/// # Sources
///
/// R. G. Allen, L. S. Pereira, D. Raes and M. Smith, *Crop evapotranspiration*, FAO Irrigation
/// and Drainage Paper 56 (1998), eqs. 21 to 25, 34 and 35.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolarDay {
    /// Radiation on level ground without air, Ra. \[MJ/m2\]
    pub extraterrestrial_mj_m2: f64,
    /// Hours from sunrise to sunset, N, of the sun's centre without refraction. \[h\]
    pub daylight_h: f64,
}

impl SolarDay {
    /// Extraterrestrial radiation and day length.
    ///
    /// Within the polar circles the day length is 0 in polar night and 24 in polar day.
    ///
    /// # Arguments
    ///
    /// * `latitude_deg`: north positive, -90 to 90. \[deg\]
    /// * `day_of_year`: 1 to 366.
    ///
    /// # Errors
    ///
    /// [`SunError::Latitude`] or [`SunError::DayOfYear`] with the value.
    ///
    /// # Example
    ///
    /// FAO-56, examples 8 and 9: 3 September at 20 deg south.
    ///
    /// ```
    /// use model::sun::SolarDay;
    ///
    /// let day = SolarDay::new(-20.0, 246)?;
    /// assert_eq!(format!("{:.1}", day.extraterrestrial_mj_m2), "32.2");
    /// assert_eq!(format!("{:.1}", day.daylight_h), "11.7");
    /// # Ok::<(), model::sun::SunError>(())
    /// ```
    pub fn new(latitude_deg: f64, day_of_year: u32) -> Result<Self, SunError> {
        within(latitude_deg, -90.0, 90.0, SunError::Latitude)?;
        if !(1..=366).contains(&day_of_year) {
            return Err(SunError::DayOfYear(day_of_year));
        }
        Ok(Self::at(latitude_deg, f64::from(day_of_year)))
    }

    /// The same for a moment within the year, so that day length changes smoothly.
    pub(crate) fn at(latitude_deg: f64, day_of_year: f64) -> Self {
        let latitude = latitude_deg.to_radians();
        let season = TAU * day_of_year / 365.0;
        let inverse_distance = 1.0 + 0.033 * libm::cos(season);
        let declination = 0.409 * libm::sin(season - 1.39);
        // Beyond the polar circles the sun does not cross the horizon: the clamp gives 0 or 24 h.
        let hour_angle = -libm::tan(latitude) * libm::tan(declination);
        let sunset = libm::acos(hour_angle.clamp(-1.0, 1.0));
        let extraterrestrial_mj_m2 = 24.0 * 60.0 / PI
            * FAO_SOLAR_CONSTANT_MJ_M2_MIN
            * inverse_distance
            * (sunset * libm::sin(latitude) * libm::sin(declination)
                + libm::cos(latitude) * libm::cos(declination) * libm::sin(sunset));
        Self {
            extraterrestrial_mj_m2: extraterrestrial_mj_m2.max(0.0),
            daylight_h: 24.0 / PI * sunset,
        }
    }

    /// Share of the possible sunshine, n/N.
    ///
    /// Hours beyond the day's by at most [`ROUNDING_H`] count as all of them.
    ///
    /// # Arguments
    ///
    /// * `sun_hours`: hours with sharp shadows, n. \[h\]
    ///
    /// # Returns
    ///
    /// 0 to 1.
    ///
    /// # Errors
    ///
    /// [`SunError::SunHours`] when negative or not a number,
    /// [`SunError::SunHoursExceedDay`] with N when the day is not that long.
    pub fn sunshine_share(&self, sun_hours: f64) -> Result<f64, SunError> {
        within(sun_hours, 0.0, f64::MAX, SunError::SunHours)?;
        if self.daylight_h + ROUNDING_H < sun_hours {
            return Err(SunError::SunHoursExceedDay {
                logged_h: sun_hours,
                possible_h: self.daylight_h,
            });
        }
        if self.daylight_h <= sun_hours {
            return Ok(1.0);
        }
        Ok(sun_hours / self.daylight_h)
    }

    /// Radiation on level ground, Rs, by Angstrom and Prescott with the FAO's coefficients for a
    /// place where none were fitted: (0.25 + 0.50 n/N) Ra.
    ///
    /// A day's value is within about 10 to 15 % (from memory); haze, altitude and climate are
    /// not in it.
    ///
    /// # Arguments
    ///
    /// * `sun_hours`: hours with sharp shadows, n. \[h\]
    ///
    /// # Returns
    ///
    /// The day's radiation. \[MJ/m2\]
    ///
    /// # Errors
    ///
    /// As [`SolarDay::sunshine_share`].
    pub fn radiation_mj_m2(&self, sun_hours: f64) -> Result<f64, SunError> {
        Ok((0.25 + 0.50 * self.sunshine_share(sun_hours)?) * self.extraterrestrial_mj_m2)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fao_example_10_as_printed() {
        // FAO-56, example 10: Rio de Janeiro, 22 deg 54' S, 15 May (J = 135), n = 7.1 h.
        let day = SolarDay::new(-(22.0 + 54.0 / 60.0), 135).unwrap();
        assert_eq!(format!("{:.1}", day.extraterrestrial_mj_m2), "25.1");
        assert_eq!(format!("{:.1}", day.daylight_h), "10.9");
        assert_eq!(format!("{:.1}", day.radiation_mj_m2(7.1).unwrap()), "14.5");
    }

    #[test]
    fn more_sun_than_day_is_refused_with_the_day() {
        let day = SolarDay::new(-20.0, 246).unwrap();
        match day.radiation_mj_m2(13.0) {
            Err(SunError::SunHoursExceedDay {
                logged_h,
                possible_h,
            }) => {
                assert!((logged_h - 13.0).abs() < 1e-12);
                assert_eq!(format!("{possible_h:.1}"), "11.7");
            }
            other => panic!("{other:?}"),
        }
        // 11.75 h is what a person logs who rounds 11.67 h to the quarter.
        assert!((day.sunshine_share(11.75).unwrap() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn hours_that_are_no_hours_are_refused() {
        let day = SolarDay::new(10.0, 1).unwrap();
        assert_eq!(day.sunshine_share(-0.5), Err(SunError::SunHours(-0.5)));
        assert!(matches!(
            day.sunshine_share(f64::NAN),
            Err(SunError::SunHours(_))
        ));
        assert!(matches!(
            day.sunshine_share(f64::INFINITY),
            Err(SunError::SunHours(_))
        ));
    }

    #[test]
    fn day_length_at_the_edges() {
        // At 66 deg, June: nearly polar day. At the equator: 12 h always. Geometry.
        let long = SolarDay::new(66.0, 172).unwrap().daylight_h;
        let short = SolarDay::new(-66.0, 172).unwrap().daylight_h;
        assert!(22.0 < long && long < 24.0, "{long}");
        assert!((long + short - 24.0).abs() < 1e-9);
        for day in 1..=366 {
            assert!((SolarDay::new(0.0, day).unwrap().daylight_h - 12.0).abs() < 1e-9);
        }
        let night = SolarDay::new(80.0, 355).unwrap();
        assert!(night.daylight_h.abs() < 1e-9 && night.extraterrestrial_mj_m2.abs() < 1e-9);
        assert!((night.sunshine_share(0.0).unwrap() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn latitude_and_day_at_the_door() {
        assert_eq!(SolarDay::new(90.5, 1), Err(SunError::Latitude(90.5)));
        assert_eq!(SolarDay::new(0.0, 0), Err(SunError::DayOfYear(0)));
        assert_eq!(SolarDay::new(0.0, 367), Err(SunError::DayOfYear(367)));
    }
}
