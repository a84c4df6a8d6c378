//! Words for what was refused.

use model::local_time::Day;

use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;
use crate::state::parse::ParseError;
use crate::state::refused::{Field, Refused, Wrong};

/// What is said beside the field. `today` tells near days from far ones.
pub fn refusal(strings: &Strings, formats: &Formats, refused: Refused, today: Day) -> String {
    let words = &strings.refusals;
    match refused.wrong {
        Wrong::NotANumber => words.not_a_number.to_owned(),
        Wrong::Empty => words.empty.to_owned(),
        Wrong::TooLong { n_most } => (words.too_long)(n_most),
        Wrong::TooLow { least } => (words.too_low)(&bound(formats, refused.field, least)),
        Wrong::TooHigh { most } => (words.too_high)(&bound(formats, refused.field, most)),
        Wrong::SunExceedsDay { possible_h } => {
            (words.sun_exceeds_day)(&formats.sun_hours(possible_h))
        }
        Wrong::PotTooSmall { holds_l } => (words.pot_too_small)(&formats.litres(holds_l)),
        Wrong::FinsTooClose => words.fins_too_close.to_owned(),
        Wrong::InFuture => words.in_future.to_owned(),
        Wrong::Before { earliest } => (words.before)(&formats.instant(earliest, today)),
        Wrong::After { latest } => (words.after)(&formats.instant(latest, today)),
        Wrong::NightWarmerThanDay => words.night_warmer.to_owned(),
        Wrong::Gone => words.gone.to_owned(),
        Wrong::MealRunning => words.meal_running.to_owned(),
        Wrong::NotAMeal => words.not_a_meal.to_owned(),
        Wrong::LastCooker => words.last_cooker.to_owned(),
        Wrong::TooMany { n_most } => (words.too_many)(n_most),
    }
}

/// What is said beside a field whose text is no number.
pub fn parse_refusal(strings: &Strings, error: ParseError) -> &'static str {
    match error {
        ParseError::Empty => strings.refusals.empty,
        ParseError::NotANumber => strings.refusals.not_a_number,
        ParseError::NotWhole => strings.refusals.not_whole,
    }
}

/// A bound in the field's unit, as the field shows it.
fn bound(formats: &Formats, field: Field, value: f64) -> String {
    match field {
        Field::AirC | Field::ReadingC | Field::StartC | Field::CutoutC | Field::PotC => {
            formats.temperature(value, Sure::Known)
        }
        Field::SunHours => formats.sun_hours(value),
        Field::TopUpW | Field::HeaterW => formats.watts(value),
        Field::ForS => formats.duration(value, Sure::Known),
        // The field is in kilograms.
        Field::FoodKg if value <= 0.0 => (formats.units.kilograms)(&formats.number(value, 0)),
        Field::FoodKg | Field::ChargeKg => formats.mass(value),
        Field::WaterKg | Field::LeftKg => formats.litres(value),
        Field::AltitudeM => formats.metres(value),
        Field::DepthM | Field::JacketSizeM | Field::LayerM => formats.centimetres(value),
        Field::ModuleW => formats.watts(value),
        Field::Ohm => formats.ohms(value),
        Field::TrackerEfficiency | Field::Share | Field::CapacityShare | Field::PotLossShare => {
            formats.percent(value)
        }
        Field::UtcOffsetMin => formats.number(value / 60.0, 0),
        Field::LatitudeDeg | Field::LongitudeDeg | Field::TiltDeg | Field::AzimuthDeg => {
            format!("{}°", formats.field(value, 1))
        }
        Field::Name
        | Field::People
        | Field::Day
        | Field::At
        | Field::PutIn
        | Field::EatAt
        | Field::OutAt
        | Field::BoiledAt
        | Field::NotBoiledBy
        | Field::DoneAt
        | Field::NotDoneBy
        | Field::Cooker
        | Field::Entry
        | Field::Modules
        | Field::Datasheet
        | Field::ElementAlpha
        | Field::Charges
        | Field::Elements
        | Field::ApertureM2
        | Field::Layers
        | Field::Emissivity
        | Field::Rods
        | Field::LossWK
        | Field::CapacityJK
        | Field::ContactWM2k
        | Field::WindMS
        | Field::Notes
        | Field::Price
        | Field::Run
        | Field::Readings => formats.field(value, 3),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::i18n::format::LocaleFormat;
    use crate::state::settings::Degrees;

    fn say(language: Language, field: Field, wrong: Wrong) -> String {
        let strings = language.strings();
        let formats = Formats {
            locale: LocaleFormat::default(),
            degrees: Degrees::Celsius,
            units: &strings.common.units,
        };
        refusal(strings, &formats, field.refuse(wrong), Day(0)).replace('\u{A0}', " ")
    }

    #[test]
    fn a_bound_is_said_in_the_fields_own_unit() {
        let english = |field, wrong| say(Language::English, field, wrong);
        assert_eq!(
            english(Field::ReadingC, Wrong::TooHigh { most: 650.0 }),
            "At most 650 °C."
        );
        assert_eq!(
            english(Field::WaterKg, Wrong::TooLow { least: 0.1 }),
            "At least 0.1 L."
        );
        let none = Wrong::TooLow { least: 0.0 };
        assert_eq!(english(Field::WaterKg, none), "At least 0 L.");
        assert_eq!(english(Field::FoodKg, none), "At least 0 kg.");
        assert_eq!(
            english(Field::People, Wrong::TooLow { least: 1.0 }),
            "At least 1."
        );
        assert_eq!(
            english(Field::SunHours, Wrong::SunExceedsDay { possible_h: 11.24 }),
            "The sun is up for 11.2 h on this day: it can’t have shone for longer."
        );
        assert_eq!(
            say(
                Language::Spanish,
                Field::LatitudeDeg,
                Wrong::TooHigh { most: 90.0 }
            ),
            "90° como máximo."
        );
    }

    #[test]
    fn every_refusal_has_words_in_every_language() {
        let at = Day(0).start();
        let wrongs = [
            Wrong::NotANumber,
            Wrong::Empty,
            Wrong::TooLong { n_most: 40 },
            Wrong::TooLow { least: 1.0 },
            Wrong::TooHigh { most: 1.0 },
            Wrong::SunExceedsDay { possible_h: 11.0 },
            Wrong::PotTooSmall { holds_l: 4.0 },
            Wrong::FinsTooClose,
            Wrong::InFuture,
            Wrong::Before { earliest: at },
            Wrong::After { latest: at },
            Wrong::NightWarmerThanDay,
            Wrong::Gone,
            Wrong::MealRunning,
            Wrong::NotAMeal,
            Wrong::LastCooker,
            Wrong::TooMany { n_most: 20 },
        ];
        for language in Language::ALL {
            for wrong in wrongs {
                let said = say(language, Field::WaterKg, wrong);
                assert!(
                    said.ends_with('.') && 8 < said.len(),
                    "{language:?} {wrong:?}: {said}"
                );
            }
        }
    }
}
