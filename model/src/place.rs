//! Where the cooker stands, and how warm the air is there.
//!
//! The air is what a household can say or look up: a warm and a cool temperature for each month.
//! Weather is not in it; a single day may be 5 K off.

use std::f64::consts::PI;

use crate::sun::{SolarDay, SunError, day_of_year};

/// A place on earth and the household's clock.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// North positive, -90 to 90. \[deg\]
    pub latitude_deg: f64,
    /// East positive, -180 to 180. \[deg\]
    pub longitude_deg: f64,
    /// Above mean sea level, -500 to 9000. \[m\]
    pub altitude_m: f64,
    /// The household's clock less UTC: local time is UTC plus this. \[min\]
    pub utc_offset_min: i32,
}

impl Place {
    /// The place itself, if it is on earth.
    ///
    /// # Errors
    ///
    /// [`SunError::Latitude`], [`SunError::Longitude`], [`SunError::Altitude`] or
    /// [`SunError::UtcOffset`] with the value.
    pub fn checked(self) -> Result<Self, SunError> {
        if !(-90.0..=90.0).contains(&self.latitude_deg) {
            return Err(SunError::Latitude(self.latitude_deg));
        }
        if !(-180.0..=180.0).contains(&self.longitude_deg) {
            return Err(SunError::Longitude(self.longitude_deg));
        }
        if !(-500.0..=9_000.0).contains(&self.altitude_m) {
            return Err(SunError::Altitude(self.altitude_m));
        }
        if !(-840..=840).contains(&self.utc_offset_min) {
            return Err(SunError::UtcOffset(self.utc_offset_min));
        }
        Ok(self)
    }

    /// What the sun's clock shows when the household's clock shows `hour`, without the equation
    /// of time (at most 17 min): 12 is when the sun is highest. May lie outside 0 to 24. \[h\]
    fn solar_hour(&self, hour: f64) -> f64 {
        hour - f64::from(self.utc_offset_min) / 60.0 + self.longitude_deg / 15.0
    }
}

/// Solar hour at which the air is warmest. Common practice, no source. \[h\]
const WARMEST_H: f64 = 15.0;
/// Fall of temperature with height in the standard atmosphere, ISO 2533:1975. \[K/m\]
const LAPSE_K_M: f64 = 0.0065;
/// How far the warmest and the coolest hour are from the day's mean, inland. From memory. \[K\]
const HALF_DAILY_RANGE_K: f64 = 5.5;
/// Day of the year on which the air of the northern temperate belt is coldest, in the mean:
/// a month after the solstice. From memory.
const COLDEST_DAY: f64 = 20.0;

/// Zonal mean temperature of the air at sea level in January and July, from 70 deg south to
/// 70 deg north by 10 deg. From memory: the classic climatological means. \[degC\]
const ZONAL_JANUARY_JULY_C: [(f64, f64); 15] = [
    (-1.5, -20.0),
    (2.1, -9.1),
    (8.1, 3.4),
    (15.6, 9.0),
    (21.9, 14.7),
    (25.4, 20.0),
    (26.3, 23.9),
    (26.4, 25.6),
    (25.8, 26.9),
    (21.8, 28.0),
    (14.5, 27.3),
    (5.0, 24.0),
    (-7.1, 18.1),
    (-16.1, 14.1),
    (-26.3, 7.3),
];

/// The air of a typical year, by month.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AirYear {
    /// Typical temperature in the warmest hour of the day, January first. \[degC\]
    pub day_c: [f64; 12],
    /// Typical temperature in the coolest hour, about sunrise, January first. \[degC\]
    pub night_c: [f64; 12],
}

impl AirYear {
    /// A guess for a household that enters nothing: the mean of all places at that latitude,
    /// brought to its altitude. Within about 4 K; deserts, coasts and monsoons differ by more.
    ///
    /// # Arguments
    ///
    /// * `latitude_deg`: -90 to 90; beyond 70 the value at 70 is taken. \[deg\]
    /// * `altitude_m`: -500 to 9000. \[m\]
    ///
    /// # Errors
    ///
    /// [`SunError::Latitude`] or [`SunError::Altitude`] with the value.
    pub fn guess(latitude_deg: f64, altitude_m: f64) -> Result<Self, SunError> {
        Place {
            latitude_deg,
            longitude_deg: 0.0,
            altitude_m,
            utc_offset_min: 0,
        }
        .checked()?;
        let (january_c, july_c) = zonal(latitude_deg);
        let mean_c = 0.5 * (january_c + july_c) - LAPSE_K_M * altitude_m;
        let swing_k = 0.5 * (january_c - july_c);
        let mut year = Self {
            day_c: [0.0; 12],
            night_c: [0.0; 12],
        };
        let mut middle_day = 15.0;
        for (day_c, night_c) in year.day_c.iter_mut().zip(&mut year.night_c) {
            let month_c =
                mean_c + swing_k * libm::cos(2.0 * PI * (middle_day - COLDEST_DAY) / 365.0);
            *day_c = month_c + HALF_DAILY_RANGE_K;
            *night_c = month_c - HALF_DAILY_RANGE_K;
            middle_day += 365.0 / 12.0;
        }
        Ok(year)
    }

    /// The year itself, if its temperatures make sense.
    ///
    /// # Errors
    ///
    /// [`SunError::Air`] for a value that is not from -60 to 60 degC,
    /// [`SunError::NightWarmerThanDay`] for a month whose two values are swapped.
    pub fn checked(self) -> Result<Self, SunError> {
        for (&day_c, &night_c) in self.day_c.iter().zip(&self.night_c) {
            for value in [day_c, night_c] {
                if !(-60.0..=60.0).contains(&value) {
                    return Err(SunError::Air(value));
                }
            }
            if day_c < night_c {
                return Err(SunError::NightWarmerThanDay { day_c, night_c });
            }
        }
        Ok(self)
    }

    /// Air temperature at a moment: coolest at sunrise, warmest at 15 h by the sun, half a
    /// cosine between; months run into each other without a step.
    ///
    /// Outside the years 1950 to 2100 the middle of the year is taken.
    ///
    /// # Arguments
    ///
    /// * `place`: where, for its sunrise and its clock.
    /// * `local_day`: on the household's clock. \[days since 1970-01-01\]
    /// * `second_of_day`: after midnight of the household's clock. \[s\]
    ///
    /// # Returns
    ///
    /// Between the night's and the day's temperature of the season. \[degC\]
    pub fn air_c(&self, place: &Place, local_day: i32, second_of_day: f64) -> f64 {
        let year_day = even_year_day(local_day, second_of_day);
        let warm_c = by_month(&self.day_c, year_day);
        let cool_c = by_month(&self.night_c, year_day);

        let daylight_h = SolarDay::at(place.latitude_deg, year_day).daylight_h;
        // In polar night and day the curve keeps its shape with a sunrise that is not too near
        // the warmest hour, nor before the middle of the night.
        let sunrise_h = (12.0 - 0.5 * daylight_h).clamp(2.0, 10.0);
        let hour = place.solar_hour(second_of_day / 3_600.0);
        let since_sunrise_h = (hour - sunrise_h).rem_euclid(24.0);
        let rise_h = WARMEST_H - sunrise_h;
        let warmth = if since_sunrise_h < rise_h {
            0.5 - 0.5 * libm::cos(PI * since_sunrise_h / rise_h)
        } else {
            0.5 + 0.5 * libm::cos(PI * (since_sunrise_h - rise_h) / (24.0 - rise_h))
        };
        cool_c + (warm_c - cool_c) * warmth
    }
}

/// Day of the year, 1 at its start, in a year stretched or shrunk to 365.25 days: the turn of a leap
/// year is then no step. The middle of the year outside the years 1950 to 2100.
fn even_year_day(local_day: i32, second_of_day: f64) -> f64 {
    let Ok(day) = day_of_year(local_day) else {
        return 182.0 + second_of_day / 86_400.0;
    };
    // 365 days after New Year's Day lies the last of a leap year, or the next New Year's Day.
    let is_leap = i32::try_from(day)
        .ok()
        .and_then(|day| day_of_year(local_day - day + 366).ok())
        .is_some_and(|after| after == 366);
    let days = if is_leap { 366.0 } else { 365.0 };
    1.0 + (f64::from(day) - 1.0 + second_of_day / 86_400.0) * 365.25 / days
}

/// January's and July's temperature at a latitude, between the rows of the table.
fn zonal(latitude_deg: f64) -> (f64, f64) {
    let from_south = ((latitude_deg + 70.0) / 10.0).clamp(0.0, 14.0);
    let at = |pick: fn(&(f64, f64)) -> f64| {
        between(from_south, |idx| {
            ZONAL_JANUARY_JULY_C.get(idx.min(14)).map_or(0.0, pick)
        })
    };
    (at(|row| row.0), at(|row| row.1))
}

/// Value of a monthly row at a day of the year, straight between the middles of the months.
fn by_month(months: &[f64; 12], year_day: f64) -> f64 {
    let phase = ((year_day - 15.5) / (365.25 / 12.0)).rem_euclid(12.0);
    between(phase, |idx| months.get(idx % 12).copied().unwrap_or(0.0))
}

/// Straight line between the values at the whole numbers either side of `x`, 0 or more.
fn between(x: f64, value: impl Fn(usize) -> f64) -> f64 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "0 to 14"
    )]
    let idx = x.floor() as usize;
    let share = x - x.floor();
    (1.0 - share) * value(idx) + share * value(idx + 1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const HILL: Place = Place {
        latitude_deg: 12.0,
        longitude_deg: 38.0,
        altitude_m: 2000.0,
        utc_offset_min: 180,
    };

    #[test]
    fn guess_is_near_known_climates() {
        // Annual means and July means from memory, within the 4 K that are claimed: the equator
        // at sea level 26; 2000 m at 10 deg north 14; 45 deg north July 21.
        let mean = |year: &AirYear| year.day_c.iter().chain(&year.night_c).sum::<f64>() / 24.0;
        assert!((mean(&AirYear::guess(0.0, 0.0).unwrap()) - 26.0).abs() < 1.0);
        assert!((mean(&AirYear::guess(10.0, 2000.0).unwrap()) - 14.0).abs() < 2.0);
        let temperate = AirYear::guess(45.0, 0.0).unwrap();
        assert!((0.5 * (temperate.day_c[6] + temperate.night_c[6]) - 21.0).abs() < 2.0);
        assert!(temperate.day_c[0] < temperate.day_c[6]);
        let south = AirYear::guess(-45.0, 0.0).unwrap();
        assert!(south.day_c[6] < south.day_c[0]);
    }

    #[test]
    fn coolest_at_sunrise_warmest_at_fifteen_by_the_sun() {
        let year = AirYear::guess(HILL.latitude_deg, HILL.altitude_m).unwrap();
        let at = |h: f64| year.air_c(&HILL, 20_533, h * 3_600.0);
        // 38 deg east on a clock of UTC+3: the sun is 28 min behind the clock.
        let lag = 3.0 - 38.0 / 15.0;
        assert!((at(15.0 + lag) - at(6.0 + lag) - 2.0 * HALF_DAILY_RANGE_K).abs() < 0.1);
        assert!(at(14.0 + lag) < at(15.0 + lag) && at(16.0 + lag) < at(15.0 + lag));
        assert!(at(6.0 + lag) < at(5.0 + lag) && at(6.0 + lag) < at(7.0 + lag));
    }

    #[test]
    fn nonsense_is_refused() {
        assert_eq!(AirYear::guess(91.0, 0.0), Err(SunError::Latitude(91.0)));
        assert_eq!(
            AirYear::guess(0.0, 9_500.0),
            Err(SunError::Altitude(9_500.0))
        );
        let mut year = AirYear::guess(0.0, 0.0).unwrap();
        year.day_c[4] = 10.0;
        assert!(matches!(
            year.checked(),
            Err(SunError::NightWarmerThanDay { .. })
        ));
        year.day_c[4] = f64::NAN;
        assert!(matches!(year.checked(), Err(SunError::Air(_))));
        assert_eq!(
            Place {
                utc_offset_min: 900,
                ..HILL
            }
            .checked(),
            Err(SunError::UtcOffset(900))
        );
    }

    /// 31 December 2024, with the coldest month half over: a leap year's extra day once made a step
    /// of 0.05 K here.
    #[test]
    fn the_turn_of_a_leap_year_is_no_step() {
        let place = Place {
            latitude_deg: 46.378,
            longitude_deg: 143.316,
            altitude_m: 0.0,
            utc_offset_min: 112,
        };
        let year = AirYear::guess(place.latitude_deg, 0.0).unwrap();
        let step = year.air_c(&place, 20_088, 86_399.0) - year.air_c(&place, 20_089, 0.0);
        assert!(step.abs() < 0.02, "{step}");
    }

    proptest! {
        /// No jump over midnight, over the new year or over the date line's clocks.
        #[test]
        fn air_has_no_steps(
            latitude_deg in -66.0..66.0_f64, longitude_deg in -180.0..180.0_f64,
            utc_offset_min in -840..=840_i32, day in 20_000..21_000_i32,
        ) {
            let place = Place { latitude_deg, longitude_deg, altitude_m: 0.0, utc_offset_min };
            let year = AirYear::guess(latitude_deg, 0.0).unwrap();
            let before = year.air_c(&place, day, 86_399.0);
            let after = year.air_c(&place, day + 1, 0.0);
            prop_assert!((before - after).abs() < 0.05, "{before} {after}");
            let in_day = year.air_c(&place, day, 40_000.0) - year.air_c(&place, day, 40_060.0);
            prop_assert!(in_day.abs() < 0.1);
        }
    }
}
