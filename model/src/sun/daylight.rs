//! When the sun comes up and goes down.

use crate::local_time::{DAY_S, Day, LocalTime};
use crate::place::Place;
use crate::sun::{SunError, sun_position};

/// Zenith distance of the sun's centre when its upper edge is on the horizon, 34' of refraction
/// and 16' of its radius below it: the definition of sunrise and sunset in the Astronomical
/// Almanac. \[deg\]
const HORIZON_DEG: f64 = 90.0 + 50.0 / 60.0;
/// Step in which the crossing of the horizon is sought. \[s\]
const STEP_S: i64 = 600;

/// The sun above the horizon on one day of the household's clock.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Daylight {
    /// It rises and sets.
    Between {
        /// When it comes up.
        rises: LocalTime,
        /// When it is down again.
        sets: LocalTime,
    },
    /// It stays up.
    AllDay,
    /// It stays down.
    NotAtAll,
}

impl Daylight {
    /// The daylight of a day over a level horizon, good to about a minute.
    ///
    /// Where the day of the clock begins or ends in sunlight, as on a clock far from the sun's, the
    /// sun counts as up from or until midnight.
    ///
    /// # Errors
    ///
    /// [`SunError`] for a place that is not on earth.
    pub fn of(place: &Place, day: Day) -> Result<Self, SunError> {
        let place = place.checked()?;
        let start = day.start();
        let up = |since_s: i64| is_up(&place, start.plus_s(since_s));
        // Bisects between the two, of which just one has the sun up.
        let crossing = |mut before_s: i64, mut after_s: i64| {
            let was_up = up(before_s);
            while 1 < after_s - before_s {
                let middle_s = i64::midpoint(before_s, after_s);
                if up(middle_s) == was_up {
                    before_s = middle_s;
                } else {
                    after_s = middle_s;
                }
            }
            start.plus_s(after_s)
        };
        let (mut rises, mut sets) = (None, None);
        let mut since_s = 0;
        while since_s < DAY_S {
            match (up(since_s), up(since_s + STEP_S)) {
                (false, true) => {
                    rises.get_or_insert(crossing(since_s, since_s + STEP_S));
                }
                (true, false) => sets = Some(crossing(since_s, since_s + STEP_S)),
                (true, true) | (false, false) => {}
            }
            since_s += STEP_S;
        }
        Ok(match (rises, sets) {
            (None, None) if up(DAY_S / 2) => Self::AllDay,
            (None, None) => Self::NotAtAll,
            (rises, sets) => Self::Between {
                rises: rises.unwrap_or(start),
                sets: sets.unwrap_or(start.plus_s(DAY_S)),
            },
        })
    }
}

fn is_up(place: &Place, at: LocalTime) -> bool {
    let utc = at.plus_s(-60 * i64::from(place.utc_offset_min));
    #[expect(clippy::cast_precision_loss, reason = "exact for 285 million years")]
    let utc_s = utc.0 as f64;
    sun_position(utc_s, place.latitude_deg, place.longitude_deg).zenith_deg < HORIZON_DEG
}

#[cfg(test)]
mod tests {
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

    /// On the equator at the March equinox the sun is up for half a day and the seven minutes that
    /// refraction and its radius give: 12 h 07 (from memory).
    #[test]
    fn the_equinox_on_the_equator() {
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let Daylight::Between { rises, sets } = Daylight::of(&place(0.0, 0.0, 0), day).unwrap()
        else {
            panic!("it rises")
        };
        assert!((sets.since_s(rises) - 43_620).abs() < 90);
        // Noon is at 12:07:30 then, by the equation of time (from memory).
        let noon_s = (rises.second_of_day() + sets.second_of_day()) / 2;
        assert!((noon_s - 43_650).abs() < 60, "{noon_s}");
    }

    /// FAO-56, example 9: 11.7 h on 3 September at 20 deg south, of the sun's centre without
    /// refraction; the almanac's day is some seven minutes longer.
    #[test]
    fn a_little_longer_than_the_day_of_the_suns_centre() {
        let day = Day::from_ymd(2026, 9, 3).unwrap();
        let daylight = Daylight::of(&place(-20.0, -68.0, -240), day).unwrap();
        let Daylight::Between { rises, sets } = daylight else {
            panic!("it rises")
        };
        let daylight_h = SolarDay::new(-20.0, 246).unwrap().daylight_h;
        #[expect(clippy::cast_precision_loss, reason = "less than a day")]
        let longer_min = sets.since_s(rises) as f64 / 60.0 - 60.0 * daylight_h;
        assert!((3.0..11.0).contains(&longer_min), "{longer_min}");
    }

    #[test]
    fn polar_night_and_day() {
        let far_north = place(72.0, 20.0, 60);
        let in_month = |month| Daylight::of(&far_north, Day::from_ymd(2026, month, 21).unwrap());
        assert_eq!(in_month(12), Ok(Daylight::NotAtAll));
        assert_eq!(in_month(6), Ok(Daylight::AllDay));
    }
}
