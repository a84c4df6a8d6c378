//! A meal that is in the cooker: how long it takes yet, and how it went.

use model::dish::DoneWhen;
use model::journal::Meal;
use model::local_time::LocalTime;
use model::odds::{Chance, Odds};
use model::tonight::{Answer, Forecast};

use super::care::{CareView, unsafe_beans};
use super::verdict::{Awaited, OutBy, Question, awaited, out_by};
use super::{Voice, ended, plan, seconds};
use crate::components::{ClockView, Icon};
use crate::i18n::format::Sure;
use crate::present::cooker::list::capital;
use crate::present::odds::odds as in_words;

/// A meal that nobody took out is over so long after its hour. \[s\]
const FORGOTTEN_S: i64 = 2 * 3600;

/// What is less likely to be ready is not told to stay in.
const LIKELY: f64 = 0.6;

/// How a running meal stands.
#[derive(Debug, Clone, PartialEq)]
pub struct RunningView {
    /// What is in the cooker.
    pub heading: String,
    /// What is in it, and since when.
    pub since: String,
    /// What is waited for; none where nothing can be worked out.
    pub clock: Option<ClockView>,
    /// How long it stays in, and what was told, a sentence each.
    pub lines: Vec<String>,
    /// How sure it is, a sentence each.
    pub sure: Vec<String>,
    /// What can make ill as things stand.
    pub danger: Option<CareView>,
    /// Which questions are open.
    pub open: Open,
}

/// Which questions about a meal are not answered yet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Open {
    /// When it boiled.
    pub boiled: bool,
    /// When it was done.
    pub done: bool,
    /// When it came out.
    pub out: bool,
}

/// Whether the meal is over, so that only its answers are missing.
pub fn is_over(meal: &Meal, now: LocalTime) -> bool {
    meal.out.is_some() || meal.eat_at.plus_s(FORGOTTEN_S) <= now
}

impl Open {
    /// Whether there is more to tell of a pot that is in than what the main button asks.
    pub fn has_more(self) -> bool {
        self.boiled || self.done
    }

    /// Whether anything is left to tell of a meal that is over.
    pub fn is_any(self) -> bool {
        self.boiled || self.done || self.out
    }
}

/// The questions that are not answered yet.
pub fn open(meal: &Meal) -> Open {
    let seen = meal.outcome;
    Open {
        boiled: seen.boiled_at.is_none(),
        done: seen.done_at.is_none() && meal.dish.props().done_when == DoneWhen::Cooked,
        out: meal.out.is_none(),
    }
}

/// What was answered so far, a sentence each.
pub fn answered(voice: &Voice<'_>, meal: &Meal) -> Vec<String> {
    let words = &voice.strings.tonight.running;
    let seen = meal.outcome;
    let not_boiled_by = seen.not_boiled_by.filter(|_| seen.boiled_at.is_none());
    let not_done_by = seen.not_done_by.filter(|_| seen.done_at.is_none());
    [
        (not_boiled_by, words.not_boiled_by),
        (seen.boiled_at, words.boiled_at),
        (not_done_by, words.not_done_then),
        (seen.done_at, words.done_at),
        (meal.out, words.out_at),
    ]
    .into_iter()
    .filter_map(|(at, say)| at.map(|at| ended(say(&voice.time(at, Sure::Known)))))
    .collect()
}

/// How a meal stands that went in at `question.put_in`; `answer` is the model's, `odds` are what
/// all that was reported makes of it.
pub fn running(
    voice: &Voice<'_>,
    question: &Question,
    answer: Option<&Answer>,
    odds: Option<&Odds>,
) -> RunningView {
    let words = &voice.strings.tonight.running;
    let meal = &question.meal;
    let amounts = plan::amounts(voice, meal.dish, (meal.food_kg, meal.water_kg));
    let put_in = voice.time(question.put_in, Sure::Known);
    let (mut lines, mut sure) = (Vec::new(), Vec::new());
    if let Some(answer) = answer {
        sure.extend(span(voice, question, answer, odds));
        if let Some(odds) = odds {
            sure.extend(chances(voice, meal, odds));
        }
        lines.extend(comes_out(voice, meal, answer, odds));
    }
    lines.extend(answered(voice, meal));
    let [lines, sure] = [lines, sure].map(|said| said.into_iter().map(ended).collect());
    RunningView {
        heading: (words.heading)((voice.strings.tables.dish)(meal.dish)),
        since: ended(if question.put_in < voice.now.plus_s(60) {
            (words.went_in)(&amounts, &put_in)
        } else {
            (words.goes_in)(&amounts, &put_in)
        }),
        clock: answer.map(|answer| clock(voice, question, answer, odds)),
        danger: answer
            .is_none_or(|answer| !is_ready(meal, answer, odds, Chance::NINE_IN_TEN))
            .then(|| unsafe_beans(voice, meal))
            .flatten(),
        lines,
        sure,
        open: open(meal),
    }
}

/// Head of the questions after the meal, and of the answers once there is nothing to ask.
pub fn after_heading(voice: &Voice<'_>, meal: &Meal) -> String {
    let name = (voice.strings.tables.dish)(meal.dish);
    let words = &voice.strings.tonight.running;
    let heading = if open(meal).is_any() {
        (words.after_heading)(name)
    } else {
        (words.after_told)(name)
    };
    capital(&heading)
}

/// What can make ill of a meal that is over.
pub fn after_danger(voice: &Voice<'_>, meal: &Meal) -> Option<CareView> {
    let boiled_s = meal
        .outcome
        .boiled_at
        .map_or(0.0, |boiled_at| seconds(meal.leaves_at(), boiled_at));
    let full_boil = meal.dish.props().full_boil?;
    (boiled_s < 60.0 * full_boil.advised_min.value)
        .then(|| unsafe_beans(voice, meal))
        .flatten()
}

/// When it boils and is done, by the model and by what was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Expected {
    boils_at: Option<LocalTime>,
    ready_at: Option<LocalTime>,
}

/// What was seen to boil is in every forecast. As long as it was not, the first that is not denied
/// by what was seen.
fn expected(meal: &Meal, answer: &Answer) -> Expected {
    let not_boiled_by = meal.outcome.not_boiled_by;
    let fits = |forecast: &&Forecast| {
        meal.outcome.boiled_at.is_some()
            || not_boiled_by.is_none_or(|by| forecast.boils_at.is_none_or(|boils_at| by < boils_at))
    };
    let forecast = [&answer.as_told, &answer.against, &answer.in_favour]
        .into_iter()
        .find(fits)
        .unwrap_or(&answer.as_told);
    Expected {
        boils_at: forecast.boils_at,
        ready_at: forecast.ready_at,
    }
}

/// Whether the food is ready in time by more than so many odds; without odds, whether it is by the
/// forecast.
fn is_ready(meal: &Meal, answer: &Answer, odds: Option<&Odds>, least: f64) -> bool {
    match odds {
        Some(odds) => least <= odds.p_done,
        None => expected(meal, answer).ready_at.is_some(),
    }
}

/// Nothing is waited for any more: it was seen to be ready.
fn is_seen_ready(meal: &Meal) -> bool {
    let is_done_at_the_boil = meal.dish.props().done_when == DoneWhen::Boils;
    meal.outcome.done_at.is_some() || meal.outcome.boiled_at.is_some() && is_done_at_the_boil
}

fn clock(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    odds: Option<&Odds>,
) -> ClockView {
    let words = &voice.strings.tonight.running;
    let meal = &question.meal;
    // What is not done in time has the meal's hour for its end.
    let gone = seconds(voice.now, question.put_in) / seconds(meal.eat_at, question.put_in).max(1.0);
    let still = |headline: String, left: String, done, icon| ClockView {
        headline,
        left,
        done,
        icon,
    };
    if is_seen_ready(meal) {
        return still(words.is_done.to_owned(), String::new(), 1.0, Icon::Bowl);
    }
    if let Some(odds) = odds {
        let Awaited {
            is_boil,
            is_good,
            headline,
            odds,
            when,
        } = awaited(voice, meal, odds);
        let icon = match (is_boil, is_good) {
            (true, true) => Icon::PotSteams,
            (true, false) => Icon::PotCold,
            (false, true) => Icon::Bowl,
            (false, false) => Icon::PotSimmers,
        };
        return match when.p50.filter(|_| is_good) {
            Some(until) if voice.now < until => {
                let (left, done) = wait(voice, question, until);
                let until = voice.about_in(until, Sure::Near, question.stay());
                let left = (words.at_in)(&until, &left);
                still(headline.to_owned(), left, done, icon)
            }
            Some(_) => {
                let late = if is_boil {
                    words.should_boil_now
                } else {
                    words.should_be_done
                };
                still(late.to_owned(), words.about_now.to_owned(), 1.0, icon)
            }
            None => still(headline.to_owned(), odds, gone, icon),
        };
    }
    let Expected { boils_at, ready_at } = expected(meal, answer);
    let has_boiled = meal.outcome.boiled_at.is_some();
    let wait = |until: LocalTime, headline: fn(&str) -> String, late: &str, icon| {
        if until <= voice.now {
            return still(late.to_owned(), words.about_now.to_owned(), 1.0, icon);
        }
        let (left, done) = wait(voice, question, until);
        let headline = headline(&voice.about_in(until, Sure::Near, question.stay()));
        still(headline, (words.in_time)(&left), done, icon)
    };
    match (has_boiled, boils_at, ready_at) {
        (false, Some(boils_at), _) => wait(
            boils_at,
            words.boils,
            words.should_boil_now,
            Icon::PotSteams,
        ),
        (_, _, Some(ready_at)) => wait(ready_at, words.done, words.should_be_done, Icon::Bowl),
        (true, _, None) => still(
            (words.not_done_by)(&voice.time(meal.eat_at, Sure::Known)),
            String::new(),
            gone,
            Icon::PotSimmers,
        ),
        (false, None, None) => {
            let hopes = [&answer.as_told, &answer.in_favour];
            let may = hopes.iter().any(|forecast| forecast.boils_at.is_some());
            let hottest = voice.hottest(answer.as_told.hottest_c, question.boiling_c);
            let headline = if may {
                words.may_not_boil.to_owned()
            } else {
                (words.will_not_boil)(&hottest)
            };
            still(headline, String::new(), gone, Icon::PotCold)
        }
    }
}

/// How long it is yet, and the share of the wait that is over.
fn wait(voice: &Voice<'_>, question: &Question, until: LocalTime) -> (String, f64) {
    let left_s = seconds(until, voice.now);
    let left = voice.formats.duration(left_s, left_sure(until, voice.now));
    let all_s = seconds(until, question.put_in).max(1.0);
    (left, seconds(voice.now, question.put_in) / all_s)
}

/// A short wait is told to the minute, so that it is seen to go by.
fn left_sure(until: LocalTime, now: LocalTime) -> Sure {
    if until.since_s(now) < 15 * 60 {
        Sure::Known
    } else {
        Sure::Near
    }
}

/// Between which times it happens, as long as nobody has said that it did.
fn span(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    odds: Option<&Odds>,
) -> Option<String> {
    let words = &voice.strings.tonight.running;
    let (meal, stay) = (&question.meal, question.stay());
    if let Some(odds) = odds {
        if is_seen_ready(meal) {
            return None;
        }
        let band = awaited(voice, meal, odds).when;
        let early = band.p10?;
        let not_before = || (words.not_before)(&voice.near(early, stay));
        let Some(middle) = band.p50 else {
            return Some(not_before());
        };
        let span = voice.estimate(middle, band.p10.zip(band.p90), stay);
        return match span.span {
            Some((from, to)) => Some((words.between)(&from, &to)),
            None => band.p90.is_none().then(not_before),
        };
    }
    let is_open = meal.outcome.boiled_at.is_none() && meal.outcome.not_boiled_by.is_none();
    let told = answer.as_told.boils_at.filter(|_| is_open)?;
    let ends = answer.against.boils_at.zip(answer.in_favour.boils_at)?;
    let (from, to) = voice.estimate(told, Some(ends), stay).span?;
    Some((words.between)(&from, &to))
}

/// How likely it boils and is ready in time, as long as nobody has said that it is and there is
/// time left.
fn chances(voice: &Voice<'_>, meal: &Meal, odds: &Odds) -> Vec<String> {
    if is_seen_ready(meal) || meal.eat_at <= voice.now {
        return Vec::new();
    }
    let words = &voice.strings.tonight.chances;
    let eaten = voice.time(meal.eat_at, Sure::Known);
    let say = |chance| in_words(voice.strings, voice.formats, chance);
    let is_boil_apart =
        meal.dish.props().done_when == DoneWhen::Cooked && awaited(voice, meal, odds).is_boil;
    let boils = is_boil_apart.then(|| (words.boils_by)(&eaten, &say(odds.boils())));
    let ready = (words.ready_by)(&eaten, &say(odds.ready()));
    boils.into_iter().chain([ready]).collect()
}

fn comes_out(
    voice: &Voice<'_>,
    meal: &Meal,
    answer: &Answer,
    odds: Option<&Odds>,
) -> Option<String> {
    let words = &voice.strings.tonight.running;
    let time = |at| voice.time(at, Sure::Known);
    Some(match out_by(answer, meal.eat_at) {
        Some(OutBy::Burns(at)) => (words.out_by)(&time(at)),
        Some(OutBy::LacksWater(at)) => (words.lacks_water)(&time(at)),
        Some(OutBy::Spoils(at)) => (words.spoils_by)(&time(at)),
        None if meal.eat_at < voice.now => (words.was_to_be_eaten)(&time(meal.eat_at)),
        // What is not done by then is not told to stay.
        None if !is_ready(meal, answer, odds, LIKELY) => return None,
        None => (words.stays_until)(&time(meal.eat_at)),
    })
}
