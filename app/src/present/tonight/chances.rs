//! How sure an evening is: the odds, what the pot may hold, what a reading would be worth.

use model::local_time::LocalTime;
use model::odds::{Chance, Odds, ReadingWorth};

use super::Voice;
use super::verdict::{Question, is_done_at_the_boil, is_good_enough};
use crate::components::{Fact, Icon};
use crate::i18n::format::Sure;
use crate::present::odds::{figure, odds as in_words};

/// A reading that settles less than this of what is open tells little.
const LEAST_SETTLED: f64 = 0.15;

/// What is worked out after the answer; none where it is not known yet.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Further {
    /// The latest time for nine chances in ten; none in it where there is none.
    pub latest: Option<Option<LocalTime>>,
    /// What the pot may hold for nine chances in ten, as a multiple of what is planned; none in it
    /// where not even a little.
    pub most: Option<Option<f64>>,
    /// What a look at the thermometer would be worth.
    pub reading: Option<ReadingWorth>,
    /// Water for breakfast.
    pub breakfast: Option<Breakfast>,
}

/// Water that is to boil for breakfast, after tonight's pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Breakfast {
    /// How much. \[L\]
    pub litres: f64,
    /// When it goes in.
    pub put_in: LocalTime,
    /// When it must boil.
    pub by: LocalTime,
    /// Whether it does.
    pub chance: Chance,
}

/// How sure it is, as figures with their names.
pub fn chances(
    voice: &Voice<'_>,
    question: &Question,
    odds: &Odds,
    further: &Further,
) -> Vec<Fact> {
    let words = &voice.strings.tonight.chances;
    let say = |chance| in_words(voice.strings, voice.formats, chance);
    let fact = |label: &str, value: String, detail: String, icon| Fact {
        label: label.to_owned(),
        value,
        detail,
        icon: Some(icon),
    };
    let eaten = voice.time(question.meal.eat_at, Sure::Known);
    let boils = (!is_done_at_the_boil(question)).then(|| {
        let value = say(odds.boils());
        fact(words.boils, value, String::new(), Icon::PotBoils)
    });
    let done = fact(
        &(words.done)(&eaten),
        say(odds.ready()),
        String::new(),
        Icon::Bowl,
    );
    let nine = figure(
        voice.strings,
        voice.formats,
        Chance::new(Chance::NINE_IN_TEN),
    );
    let litres = question.meal.food_kg + question.meal.water_kg;
    let most = {
        // What is planned holds where it is told with such odds itself.
        let planned = is_good_enough(odds).then_some(1.0);
        let most = further.most.map(|most| match (most, planned) {
            (Some(times), Some(planned)) => Some(times.max(planned)),
            (most, planned) => most.or(planned),
        });
        let value = most.map(|most| match most {
            Some(times) => (words.up_to)(&voice.formats.litres(floor_tenth(times * litres))),
            None => words.nothing.to_owned(),
        });
        let detail = (words.for_odds)(&nine);
        fact(words.most, or_dots(value), detail, Icon::Weight)
    };
    let reading = further.reading.map(|worth| {
        let settles = worth.decides - worth.decided_now;
        if LEAST_SETTLED <= settles {
            let chance = Chance::new(worth.decides);
            (words.reading_settles)(&figure(voice.strings, voice.formats, chance))
        } else {
            words.reading_little.to_owned()
        }
    });
    let reading = fact(
        words.reading,
        or_dots(reading),
        String::new(),
        Icon::Thermometer,
    );
    let water = further.breakfast.map(|breakfast| {
        (words.breakfast_water)(
            &voice.formats.litres(breakfast.litres),
            &voice.time(breakfast.put_in, Sure::Known),
            // The day stands beside the first of the two.
            &voice.formats.clock(breakfast.by, Sure::Known),
        )
    });
    let breakfast = further.breakfast.map(|breakfast| say(breakfast.chance));
    let breakfast = fact(
        words.breakfast,
        or_dots(breakfast),
        water.unwrap_or_default(),
        Icon::Water,
    );
    let figures = [done, most, reading, breakfast];
    boils.into_iter().chain(figures).collect()
}

/// What is not known yet keeps its place.
fn or_dots(value: Option<String>) -> String {
    value.unwrap_or_else(|| "…".to_owned())
}

/// Never more than it is. \[L\]
fn floor_tenth(litres: f64) -> f64 {
    (litres * 10.0).floor() / 10.0
}

#[cfg(test)]
mod tests {
    use model::dish::Dish;
    use model::local_time::Day;
    use model::odds::Band;

    use super::*;
    use crate::present::tests::english;
    use crate::state::plan::Plan;
    use crate::state::sample::pot;

    const DAY: Day = Day(20_000);

    fn at(hour: i64, minute: i64) -> LocalTime {
        DAY.at_s(3600 * hour + 60 * minute)
    }

    fn band<T: Copy>(value: T) -> Band<T> {
        Band {
            p05: value,
            p10: value,
            p25: value,
            p50: value,
            p75: value,
            p90: value,
            p95: value,
        }
    }

    fn lines(dish: Dish, further: &Further) -> Vec<String> {
        lines_at(0.88, dish, further)
    }

    fn lines_at(p_done: f64, dish: Dish, further: &Further) -> Vec<String> {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: at(17, 0),
        };
        let plan = Plan {
            dish,
            ..Plan::start(2, at(17, 0))
        };
        let mut meal = plan.meal(pot(), 18.0, at(17, 0));
        (meal.food_kg, meal.water_kg, meal.eat_at) = (0.4, 0.8, at(19, 30));
        let question = Question {
            meal,
            put_in: at(17, 30),
            is_in: false,
            boiling_c: 95.0,
            store_sure: Sure::Near,
            sky_is_logged: true,
            lacks_sun: false,
        };
        let odds = Odds {
            p_boil: 0.97,
            p_done,
            boils_at: band(Some(at(18, 0))),
            ready_at: band(Some(at(19, 0))),
            boiled_away_kg: band(0.1),
            p_dry: 0.0,
            store_before_c: band(180.0),
            store_after_c: band(120.0),
        };
        let line = |fact: Fact| format!("{}: {}", fact.label, fact.value).replace('\u{A0}', " ");
        chances(&voice, &question, &odds, further)
            .into_iter()
            .map(line)
            .collect()
    }

    #[test]
    fn what_is_not_worked_out_yet_keeps_its_place() {
        let expected = [
            "It boils: nearly sure, over 9 in 10",
            "It is ready by 19:30: very likely, 9 in 10",
            "The pot may hold: …",
            "A thermometer reading now: …",
            "Water for breakfast: …",
        ];
        assert_eq!(lines(Dish::WhiteRice, &Further::default()), expected);
        // Water is ready when it boils: one line says it.
        let tea = lines(Dish::TeaWater, &Further::default());
        assert_eq!(tea.len(), 4);
    }

    #[test]
    fn how_much_is_rounded_down_and_odds_are_never_certain() {
        let further = Further {
            latest: None,
            most: Some(Some(1.3)),
            reading: Some(ReadingWorth {
                p_now: 0.6,
                p_after: band(0.6),
                decides: 0.71,
                decided_now: 0.0,
                doubt_left: 0.2,
            }),
            breakfast: Some(Breakfast {
                litres: 1.0,
                put_in: DAY.plus(1).at_s(6 * 3600),
                by: DAY.plus(1).at_s(7 * 3600),
                chance: Chance::new(0.0),
            }),
        };
        let expected = [
            "The pot may hold: up to 1.5 L",
            "A thermometer reading now: would make it a near yes or a near no, 7 in 10 times",
            "Water for breakfast: hardly a chance, under 1 in 10",
        ];
        assert_eq!(lines(Dish::WhiteRice, &further)[2..], expected);
        let further = Further {
            most: Some(None),
            ..further
        };
        let said = |p_done| lines_at(p_done, Dish::WhiteRice, &further)[2].clone();
        assert_eq!(said(0.8), "The pot may hold: nothing yet");
        // What is planned for nine in ten is not told to be too much.
        assert_eq!(said(0.88), "The pot may hold: up to 1.2 L");
    }
}
