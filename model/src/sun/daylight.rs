//! When the sun is up, on the household's clock.

use crate::place::Place;
use crate::sun::{SunError, day_of_year, sun_position};

/// Distance of the instants at which the sun is looked at. [s]
const STEP_S: u32 = 300;
const DAY_S: u32 = 86_400;

/// A day from sunrise to sunset: of the sun's centre over a level horizon, without refraction,
/// as the day length of [`SolarDay`](crate::sun::SolarDay).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Daylight {
    /// Share of each hour of the household's clock in which the sun is up: 0 to 1.
    pub hour_share: [f64; 24],
    /// When it rises, after midnight; none where it does not that day. [s]
    pub rise_s: Option<f64>,
    /// When it sets, after midnight; none where it does not that day. [s]
    pub set_s: Option<f64>,
}

impl Daylight {
    /// The daylight of a day, to a minute or so away from the polar circles.
    ///
    /// # Arguments
    ///
    /// * `place`: where, with the household's clock.
    /// * `local_day`: on that clock, 1950 to 2100. [days since 1970-01-01]
    ///
    /// # Errors
    ///
    /// [`SunError`] for a senseless place or day.
    ///
    /// # Example
    ///
    /// ```
    /// use model::place::Place;
    /// use model::sun::Daylight;
    ///
    /// let place =
    ///     Place { latitude_deg: -1.3, longitude_deg: 36.8, altitude_m: 1700.0, utc_offset_min: 180 };
    /// let day = Daylight::new(&place, 20_533)?;
    /// // The equator has twelve hours of daylight all year.
    /// assert!((day.hour_share.iter().sum::<f64>() - 12.0).abs() < 0.1);
    /// # Ok::<(), model::sun::SunError>(())
    /// ```
    pub fn new(place: &Place, local_day: i32) -> Result<Self, SunError> {
        let place = place.checked()?;
        day_of_year(local_day)?;
        let midnight_utc_s =
            f64::from(local_day) * f64::from(DAY_S) - f64::from(place.utc_offset_min) * 60.0;
        let height = |second: u32| {
            let utc_s = midnight_utc_s + f64::from(second);
            sun_position(utc_s, place.latitude_deg, place.longitude_deg).cos_zenith()
        };
        let mut day = Self {
            hour_share: [0.0; 24],
            rise_s: None,
            set_s: None,
        };
        let mut before = height(0);
        for start_s in (0..DAY_S / STEP_S).map(|step| step * STEP_S) {
            let after = height(start_s + STEP_S);
            let crossing = f64::from(start_s) + f64::from(STEP_S) * before / (before - after);
            let up = match (0.0 < before, 0.0 < after) {
                (false, false) => 0.0,
                (true, true) => 1.0,
                (false, true) => {
                    day.rise_s = Some(crossing);
                    after / (after - before)
                }
                (true, false) => {
                    day.set_s = Some(crossing);
                    before / (before - after)
                }
            };
            let hour = usize::try_from(start_s / 3600).unwrap_or(usize::MAX);
            if let Some(share) = day.hour_share.get_mut(hour) {
                *share += up * f64::from(STEP_S) / 3600.0;
            }
            before = after;
        }
        Ok(day)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::sun::SolarDay;

    fn place(latitude_deg: f64, longitude_deg: f64, utc_offset_min: i32) -> Place {
        Place {
            latitude_deg,
            longitude_deg,
            altitude_m: 0.0,
            utc_offset_min,
        }
    }

    #[test]
    fn equinox_at_the_equator_runs_from_six_to_six_by_the_sun() {
        // 20 March 2026. On the meridian of Greenwich the sun is 7.5 min behind the clock then
        // (equation of time, from memory).
        let day = Daylight::new(&place(0.0, 0.0, 0), 20_532).unwrap();
        let minutes = |s: Option<f64>| s.unwrap() / 60.0;
        assert!((minutes(day.rise_s) - 367.5).abs() < 1.0, "{day:?}");
        assert!((minutes(day.set_s) - 1087.5).abs() < 1.0, "{day:?}");
        assert!(day.hour_share[5] < 1e-9 && (day.hour_share[12] - 1.0).abs() < 1e-9);
    }

    #[test]
    fn polar_night_and_polar_day_have_no_sunrise() {
        // 21 December and 21 June 2026.
        let night = Daylight::new(&place(80.0, 20.0, 60), 20_808).unwrap();
        assert_eq!((night.rise_s, night.set_s), (None, None));
        assert!(night.hour_share.iter().sum::<f64>() < 1e-9);
        let light = Daylight::new(&place(80.0, 20.0, 60), 20_625).unwrap();
        assert_eq!((light.rise_s, light.set_s), (None, None));
        assert!((light.hour_share.iter().sum::<f64>() - 24.0).abs() < 1e-9);
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(
            Daylight::new(&place(91.0, 0.0, 0), 20_532),
            Err(SunError::Latitude(91.0))
        );
        assert_eq!(
            Daylight::new(&place(0.0, 0.0, 0), i32::MAX),
            Err(SunError::Day(i32::MAX))
        );
    }

    proptest! {
        /// Hour by hour it is as long as the FAO's day, whose declination is off by some tenths
        /// of a degree: six minutes at 45 degrees and more towards the circles.
        #[test]
        fn hours_add_up_to_the_days_length(
            latitude in -45.0..45.0_f64, longitude in -180.0..180.0_f64, day in 19_000..22_000_i32,
            off_min in -120..=120_i32,
        ) {
            #[expect(clippy::cast_possible_truncation, reason = "at most 720")]
            let offset = ((longitude * 4.0) as i32 + off_min).clamp(-720, 840);
            let light = Daylight::new(&place(latitude, longitude, offset), day).unwrap();
            let sum: f64 = light.hour_share.iter().sum();
            let expected = SolarDay::new(latitude, day_of_year(day).unwrap()).unwrap().daylight_h;
            prop_assert!((sum - expected).abs() < 0.2, "{sum} {expected}");
            prop_assert!(light.hour_share.iter().all(|share| (0.0..=1.0 + 1e-9).contains(share)));
        }
    }
}
