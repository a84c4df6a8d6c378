//! How sure an evening is: the odds, what the pot may hold, what a reading would be worth.

use model::local_time::LocalTime;
use model::odds::{Chance, Odds, ReadingWorth};

use super::Voice;
use super::verdict::{Question, is_done_at_the_boil};
use crate::components::{Fact, Icon};
use crate::i18n::format::Sure;
use crate::present::odds::{figure, odds as in_words};

/// A reading that settles less than this of what is open tells little.
const LEAST_SETTLED: f64 = 0.15;

/// What is worked out after the answer; none where it is not known yet.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Further {
    /// The latest time for nine chances in ten; none too where there is none.
    pub latest: Option<LocalTime>,
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
    let most = further.most.map(|most| {
        let value = match most {
            Some(times) => (words.up_to)(&voice.formats.litres(floor_tenth(times * litres))),
            None => words.nothing.to_owned(),
        };
        fact(words.most, value, (words.for_odds)(&nine), Icon::Weight)
    });
    let reading = further.reading.map(|worth| {
        let settles = worth.decides - worth.decided_now;
        let value = if LEAST_SETTLED <= settles {
            let chance = Chance::new(worth.decides);
            (words.reading_settles)(&figure(voice.strings, voice.formats, chance))
        } else {
            words.reading_little.to_owned()
        };
        fact(words.reading, value, String::new(), Icon::Thermometer)
    });
    let breakfast = further.breakfast.map(|breakfast| {
        let detail = (words.breakfast_water)(
            &voice.formats.litres(breakfast.litres),
            &voice.time(breakfast.put_in, Sure::Known),
            &voice.time(breakfast.by, Sure::Known),
        );
        let value = say(breakfast.chance);
        fact(words.breakfast, value, detail, Icon::Water)
    });
    [boils, Some(done), most, reading, breakfast]
        .into_iter()
        .flatten()
        .collect()
}

/// Never more than it is. \[L\]
fn floor_tenth(litres: f64) -> f64 {
    (litres * 10.0).floor() / 10.0
}
