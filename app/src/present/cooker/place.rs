//! Place, air and people as fields.

use model::place::AirYear;

use crate::i18n::format::Formats;
use crate::present::cooker::fault::Fault;
use crate::present::cooker::measure::{Measure, Number};
use crate::state::document::Household;
use crate::state::limits;

/// A field of the household.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Key {
    /// Latitude.
    Latitude,
    /// Longitude.
    Longitude,
    /// Height above the sea.
    Altitude,
    /// Clock less universal time.
    Clock,
    /// People who eat.
    People,
    /// Warmest hour of the day, all year.
    Day,
    /// Coolest hour of the night, all year.
    Night,
    /// Warmest hour in one month, January 0.
    MonthDay(usize),
    /// Coolest hour in one month.
    MonthNight(usize),
    /// Button: what is usual at this latitude and height.
    Guess,
    /// Button: every month the mean of the year.
    Same,
}

/// How the field measures; `None` for a button.
pub fn number(key: Key) -> Option<Number> {
    let of = |measure, bounds, step| {
        Some(Number {
            measure,
            bounds,
            step,
        })
    };
    match key {
        Key::Latitude => of(Measure::Angle, limits::LATITUDE_DEG, 1.0),
        Key::Longitude => of(Measure::Angle, limits::LONGITUDE_DEG, 1.0),
        Key::Altitude => of(Measure::Metres, limits::ALTITUDE_M, 50.0),
        Key::Clock => of(Measure::Hours, limits::UTC_OFFSET_MIN, 0.5),
        Key::People => {
            let (least, most) = limits::PEOPLE;
            of(Measure::Count, (f64::from(least), f64::from(most)), 1.0)
        }
        Key::Day | Key::Night | Key::MonthDay(_) | Key::MonthNight(_) => {
            of(Measure::Temperature, limits::AIR_C, 1.0)
        }
        Key::Guess | Key::Same => None,
    }
}

/// The value of a field, in the model's unit; `None` for a button.
pub fn value(household: &Household, key: Key) -> Option<f64> {
    let (place, air) = (household.place, &household.air);
    Some(match key {
        Key::Latitude => place.latitude_deg,
        Key::Longitude => place.longitude_deg,
        Key::Altitude => place.altitude_m,
        Key::Clock => f64::from(place.utc_offset_min),
        Key::People => f64::from(household.people),
        Key::Day => mean(&air.day_c),
        Key::Night => mean(&air.night_c),
        Key::MonthDay(month) => *air.day_c.get(month)?,
        Key::MonthNight(month) => *air.night_c.get(month)?,
        Key::Guess | Key::Same => return None,
    })
}

/// The text of a field.
pub fn text(household: &Household, key: Key, formats: &Formats) -> String {
    match (number(key), value(household, key)) {
        (Some(number), Some(value)) => number.text(value, formats),
        _ => String::new(),
    }
}

/// Whether the text says what the household has.
pub fn says(household: &Household, key: Key, text: &str, formats: &Formats) -> bool {
    match (number(key), value(household, key)) {
        (Some(number), Some(value)) => number.says(text, value, formats),
        _ => true,
    }
}

/// The text after a press of a step button.
pub fn stepped(
    household: &Household,
    key: Key,
    typed: &str,
    direction: i32,
    formats: &Formats,
) -> String {
    match (number(key), value(household, key)) {
        (Some(number), Some(value)) => number.stepped(typed, value, direction, formats),
        _ => typed.to_owned(),
    }
}

/// Whether every month has the same air.
pub fn is_same_all_year(air: &AirYear) -> bool {
    let level = |months: &[f64; 12]| {
        let mean_c = mean(months);
        months.iter().all(|month_c| (month_c - mean_c).abs() < 0.05)
    };
    level(&air.day_c) && level(&air.night_c)
}

/// The household with one field changed.
///
/// # Errors
///
/// [`Fault`] for a text that is no number, or one out of bounds.
pub fn changed(
    household: &Household,
    key: Key,
    text: &str,
    formats: &Formats,
) -> Result<Household, Fault> {
    let mut household = household.clone();
    let read = |key: Key| match number(key) {
        Some(number) => number.read(text, formats),
        None => Ok(0.0),
    };
    let value = read(key)?;
    let (place, air) = (&mut household.place, &mut household.air);
    match key {
        Key::Latitude => place.latitude_deg = value,
        Key::Longitude => place.longitude_deg = value,
        Key::Altitude => place.altitude_m = value,
        Key::Clock => place.utc_offset_min = whole(value),
        Key::People => household.people = u32::try_from(whole(value)).unwrap_or(1),
        Key::Day => air.day_c = [value; 12],
        Key::Night => air.night_c = [value; 12],
        Key::MonthDay(month) => {
            if let Some(month_c) = air.day_c.get_mut(month) {
                *month_c = value;
            }
        }
        Key::MonthNight(month) => {
            if let Some(month_c) = air.night_c.get_mut(month) {
                *month_c = value;
            }
        }
        Key::Same => {
            *air = AirYear {
                day_c: [mean(&air.day_c); 12],
                night_c: [mean(&air.night_c); 12],
            };
        }
        Key::Guess => {
            if let Ok(guess) = AirYear::guess(place.latitude_deg, place.altitude_m) {
                *air = guess;
            }
        }
    }
    Ok(household)
}

fn mean(months: &[f64; 12]) -> f64 {
    months.iter().sum::<f64>() / 12.0
}

/// A value within the bounds of its field, to the nearest whole number.
fn whole(value: f64) -> i32 {
    #[expect(
        clippy::cast_possible_truncation,
        reason = "within the bounds of its field"
    )]
    let whole = value.round() as i32;
    whole
}

#[cfg(test)]
mod tests {
    use model::place::Place;

    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::LocaleFormat;
    use crate::state::settings::Degrees;

    fn formats() -> Formats {
        Formats {
            locale: LocaleFormat::default(),
            degrees: Degrees::Celsius,
            units: &Language::English.strings().common.units,
        }
    }

    fn household() -> Household {
        Household {
            place: Place {
                latitude_deg: 11.0,
                longitude_deg: 38.0,
                altitude_m: 1500.0,
                utc_offset_min: 180,
            },
            air: AirYear::guess(11.0, 1500.0).unwrap(),
            people: 5,
        }
    }

    #[test]
    fn the_clock_is_told_in_hours() {
        let formats = formats();
        assert_eq!(text(&household(), Key::Clock, &formats), "3");
        let changed = changed(&household(), Key::Clock, "5,75", &formats).unwrap();
        assert_eq!(changed.place.utc_offset_min, 345);
    }

    #[test]
    fn one_pair_of_temperatures_serves_the_whole_year() {
        let formats = formats();
        assert!(!is_same_all_year(&household().air));
        let same = changed(&household(), Key::Same, "", &formats).unwrap();
        assert!(is_same_all_year(&same.air));
        let warm = changed(&same, Key::Day, "30", &formats).unwrap();
        assert_eq!(text(&warm, Key::MonthDay(7), &formats), "30");
        let august = changed(&warm, Key::MonthDay(7), "26", &formats).unwrap();
        assert!(!is_same_all_year(&august.air));
        assert_eq!(text(&august, Key::MonthDay(6), &formats), "30");
    }

    #[test]
    fn what_is_usual_follows_the_height() {
        let formats = formats();
        let high = changed(&household(), Key::Altitude, "3500", &formats).unwrap();
        let guessed = changed(&high, Key::Guess, "", &formats).unwrap();
        assert!(guessed.air.day_c[0] + 10.0 < household().air.day_c[0]);
    }

    #[test]
    fn what_cannot_be_is_not_taken() {
        let formats = formats();
        assert_eq!(
            changed(&household(), Key::Latitude, "120", &formats),
            Err(Fault::TooHigh(90.0))
        );
        assert!(changed(&household(), Key::People, "2.5", &formats).is_err());
    }
}
