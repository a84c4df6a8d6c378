//! How a sugar alcohol wears, in words.

use model::dish::Dish;
use model::journal::{Meal, Outcome};
use model::local_time::{Day, LocalTime};
use model::pot::{Lid, Pot};
use model::tonight::{LastBoil, Wear};

use crate::i18n::format::{Formats, Sure, round_to};
use crate::i18n::strings::Strings;

/// A date nearer than this is told with the evening's answer, days: time to find a fresh filling.
const IN_TIME_DAYS: i32 = 60;

/// A pot four fifths full of cold water, two hours before it is wanted.
pub fn usual_pot(pot: Pot, now: LocalTime) -> Meal {
    Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg: 0.8 * pot.size.props().volume_l,
        start_c: 20.0,
        pot,
        lid: Lid::On,
        out: None,
        eat_at: now.plus_s(2 * 3600),
        outcome: Outcome::default(),
    }
}

/// Where the melt stands: its molten hours, and where it melts by now.
pub fn worn(strings: &Strings, formats: &Formats, wear: &Wear) -> String {
    (strings.cooker.ways.worn)(
        (strings.tables.medium)(wear.medium),
        &(formats.units.hours)(&formats.number(round_to(wear.molten_h, 10.0), 0)),
        &formats.temperature(wear.liquidus_c, Sure::Near),
    )
}

/// From when a pot no longer boils on it; none where it always will.
pub fn last_boil(
    strings: &Strings,
    formats: &Formats,
    last: Option<LastBoil>,
    today: Day,
) -> String {
    let words = &strings.cooker.ways;
    match last {
        None => words.never.to_owned(),
        Some(last) if last.day <= today => words.worn_out.to_owned(),
        Some(last) => {
            let latest = last.latest.map(|day| formats.day(day));
            (words.last_boil)(
                &formats.day(last.day),
                &formats.near_day(last.earliest, today),
                latest.as_deref(),
            )
        }
    }
}

/// The same with the evening's answer, where it is near enough to be told in time.
pub fn in_time(
    strings: &Strings,
    formats: &Formats,
    last: Option<LastBoil>,
    today: Day,
) -> Option<String> {
    let last = last.filter(|last| last.earliest <= today.plus(IN_TIME_DAYS))?;
    Some(last_boil(strings, formats, Some(last), today))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::english;

    const TODAY: Day = Day(20_600);

    fn last(day: i32) -> LastBoil {
        LastBoil {
            day: TODAY.plus(day),
            earliest: TODAY.plus(day / 2),
            latest: (day < 200).then(|| TODAY.plus(2 * day)),
        }
    }

    #[test]
    fn the_date_is_told_when_it_is_near() {
        let (strings, formats) = english();
        let say = |last| in_time(strings, &formats, last, TODAY);
        assert_eq!(say(None), None);
        assert_eq!(say(Some(last(300))), None);
        let near = say(Some(last(80))).unwrap();
        for day in [TODAY.plus(80), TODAY.plus(40), TODAY.plus(160)] {
            assert!(near.contains(&formats.day(day)), "{near}");
        }
        assert_eq!(
            say(Some(last(0))).as_deref(),
            Some(strings.cooker.ways.worn_out)
        );
    }

    #[test]
    fn every_language_says_where_it_stands() {
        let wear = Wear {
            medium: model::media::Medium::Erythritol,
            converted: 0.2,
            liquidus_c: 112.3,
            molten_h: 193.0,
            daily: model::ageing::Spell {
                molten_h: 6.0,
                melt_c: 130.0,
            },
            hottest_c: 134.0,
        };
        let (_, formats) = english();
        for language in Language::ALL {
            let strings = language.strings();
            let said = worn(strings, &formats, &wear).replace('\u{A0}', " ");
            assert!(said.contains("112 °C") || said.contains("110 °C"), "{said}");
            assert!(said.contains("190 h"), "{said}");
            let open = last_boil(strings, &formats, Some(last(300)), TODAY);
            assert!(open.contains(&formats.day(TODAY.plus(300))), "{open}");
            assert!(!last_boil(strings, &formats, None, TODAY).is_empty());
        }
    }
}
