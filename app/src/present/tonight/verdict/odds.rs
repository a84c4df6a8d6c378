//! The answer by the odds.
//!
//! One judgement, [`Judged`], stands behind headline, figure, sentence and times.

use model::journal::Meal;
use model::local_time::LocalTime;
use model::odds::{Band, Chance, Odds, OddsWord};
use model::tonight::Answer;

use super::facts::comes_out;
use super::{Course, Question, Voice, course, ended, is_done_at_the_boil, out_by};
use crate::components::{Fact, Icon, VerdictTone, VerdictView};
use crate::i18n::format::Sure;
use crate::present::odds::{figure, odds as in_words};

/// What is said of a pot, all from its odds.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Judged {
    chance: Chance,
    tone: VerdictTone,
    /// Whether what goes well goes well by boiling.
    boils: bool,
    /// What goes wrong, where it does.
    wrong: Wrong,
}

/// What goes wrong most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Wrong {
    /// It stays below the boil.
    Cold,
    /// It boils too late.
    Late,
    /// It is not done in time.
    NotDone,
    /// The water is gone first.
    Dry,
}

/// What is waited for of a pot that is in, all from its odds.
#[derive(Debug, Clone, PartialEq)]
pub(in super::super) struct Awaited {
    /// Whether it is the boil, and not the food.
    pub(in super::super) is_boil: bool,
    /// Whether it is good enough to be told with its time.
    pub(in super::super) is_good: bool,
    /// The same words as in the verdict.
    pub(in super::super) headline: &'static str,
    /// Word and figure.
    pub(in super::super) odds: String,
    /// When, in the middle of what may be, and in 8 of 10 cases.
    pub(in super::super) when: Band<Option<LocalTime>>,
}

/// What is waited for of a pot that is in: the boil, unless it was seen or the food is as likely
/// done without.
pub(in super::super) fn awaited(voice: &Voice<'_>, meal: &Meal, odds: &Odds) -> Awaited {
    let of_food = Judged::of(odds);
    let is_likely = OddsWord::Likely <= odds.boils().word();
    let is_boil = (of_food.boils || is_likely) && meal.outcome.boiled_at.is_none();
    let judged = if is_boil {
        Judged::of_boil(odds)
    } else {
        // Who saw it boil is not told that it will not.
        let wrong = match of_food.wrong {
            Wrong::Cold | Wrong::Late if meal.outcome.boiled_at.is_some() => Wrong::NotDone,
            wrong => wrong,
        };
        Judged {
            boils: false,
            wrong,
            ..of_food
        }
    };
    Awaited {
        is_boil,
        is_good: judged.is_good(),
        headline: headline(voice, judged),
        odds: in_words(voice.strings, voice.formats, judged.chance),
        when: if is_boil {
            odds.boils_at
        } else {
            odds.ready_at
        },
    }
}

fn tone(chance: Chance) -> VerdictTone {
    match chance.word() {
        OddsWord::NearlySure => VerdictTone::Sure,
        OddsWord::VeryLikely | OddsWord::Likely => VerdictTone::Likely,
        OddsWord::Even | OddsWord::Unlikely => VerdictTone::Doubtful,
        OddsWord::VeryUnlikely | OddsWord::NearlyNever => VerdictTone::No,
    }
}

impl Judged {
    /// Of the boil alone.
    fn of_boil(odds: &Odds) -> Self {
        let chance = odds.boils();
        let wrong = if odds.boils_at.p50.is_some() {
            Wrong::Late
        } else {
            Wrong::Cold
        };
        Self {
            chance,
            tone: tone(chance),
            boils: true,
            wrong,
        }
    }

    fn of(odds: &Odds) -> Self {
        let chance = odds.ready();
        let fails = 1.0 - odds.p_done;
        let stays_below = 1.0 - odds.p_boil;
        let wrong = if fails <= 2.0 * stays_below.min(fails) {
            if odds.boils_at.p50.is_some() {
                Wrong::Late
            } else {
                Wrong::Cold
            }
        } else if fails <= 2.0 * odds.p_dry {
            Wrong::Dry
        } else {
            Wrong::NotDone
        };
        Self {
            chance,
            tone: tone(chance),
            // What is likelier done than it boils is not told to boil.
            boils: chance.word() <= odds.boils().word(),
            wrong,
        }
    }

    fn is_good(&self) -> bool {
        matches!(self.tone, VerdictTone::Sure | VerdictTone::Likely)
    }

    /// Whether it may go either way.
    fn is_open(&self) -> bool {
        OddsWord::Even <= self.chance.word()
    }
}

/// Whether the odds are told as good enough to plan on, so that no help is needed.
pub fn is_good_enough(odds: &Odds) -> bool {
    is_good(odds.ready())
}

/// Whether a chance is told as nine in ten or more.
pub fn is_good(chance: Chance) -> bool {
    let (n, m) = chance.n_in_m();
    let (least_n, least_m) = Chance::new(Chance::NINE_IN_TEN).n_in_m();
    least_n * m <= n * least_m
}

/// Whether the pot may go in by these odds: what will hardly be ready is no main thing to do.
pub fn is_worth_starting(odds: &Odds) -> bool {
    Judged::of(odds).tone != VerdictTone::No
}

/// Whether the odds tell it. What would stand too long too cold must not be left in, however sure
/// it is to be ready.
pub fn is_told_by_odds(question: &Question, answer: &Answer) -> bool {
    let course = course(&answer.as_told, question.meal.eat_at);
    !matches!(course, Course::Spoils(_))
}

/// The answer by the odds; `latest` is the latest time for nine chances in ten, once it is known, and
/// none in it where there is none.
pub fn verdict_by_odds(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    odds: &Odds,
    latest: Option<Option<LocalTime>>,
) -> VerdictView {
    let judged = Judged::of(odds);
    let mut said = sentence(voice, question, odds, judged);
    if question.lacks_sun {
        let sun_unknown = voice.strings.tonight.verdict.sentences.sun_unknown;
        said = format!("{sun_unknown} {said}");
    }
    VerdictView {
        tone: judged.tone,
        headline: headline(voice, judged).to_owned(),
        figure: sureness(voice, question, judged),
        sentence: ended(said),
        facts: facts(voice, question, answer, odds, judged, latest),
    }
}

/// The odds under the headline. Where that says no, of what they are the odds is said as well.
fn sureness(voice: &Voice<'_>, question: &Question, judged: Judged) -> String {
    let odds = in_words(voice.strings, voice.formats, judged.chance);
    if judged.is_good() {
        return odds;
    }
    let eaten = voice.time(question.meal.eat_at, Sure::Known);
    (voice.strings.tonight.chances.ready_by)(&eaten, &odds)
}

fn headline(voice: &Voice<'_>, judged: Judged) -> &'static str {
    let words = &voice.strings.tonight.verdict.headlines;
    match (judged.tone, judged.wrong) {
        (VerdictTone::Sure, _) if judged.boils => words.will_boil,
        (VerdictTone::Sure, _) => words.will_be_done,
        (VerdictTone::Likely, _) if judged.boils => words.should_boil,
        (VerdictTone::Likely, _) => words.should_be_done,
        (VerdictTone::Doubtful, Wrong::Dry) => words.may_boil_dry,
        // The figure beside it is the chance to be done: of boiling only where that is the same. What
        // that calls unlikely is not said to be open.
        (VerdictTone::Doubtful, Wrong::Cold | Wrong::Late) if judged.boils => {
            if judged.is_open() {
                words.may_boil
            } else {
                words.unlikely_to_boil
            }
        }
        (VerdictTone::Doubtful, _) if judged.is_open() => words.may_be_done,
        (VerdictTone::Doubtful, _) => words.unlikely_to_be_done,
        (VerdictTone::No, Wrong::Dry) => words.boils_dry,
        (VerdictTone::No, Wrong::Late) => words.too_late,
        (VerdictTone::No, Wrong::Cold) => words.will_not_boil,
        (VerdictTone::No, Wrong::NotDone) => words.not_done,
    }
}

fn sentence(voice: &Voice<'_>, question: &Question, odds: &Odds, judged: Judged) -> String {
    let words = &voice.strings.tonight.chances;
    let eat_at = question.meal.eat_at;
    let eaten = voice.time(eat_at, Sure::Known);
    // As the figures below tell it.
    let about = |at, band: Band<Option<LocalTime>>| {
        let ends = band.p10.zip(band.p90);
        voice.estimate(at, ends, question.stay()).at
    };
    let is_by = |band: Band<Option<LocalTime>>| band.p50.is_some_and(|at| at <= eat_at);
    match (judged.tone, judged.wrong) {
        _ if judged.is_good() && is_done_at_the_boil(question) => (words.expect_boil)(&eaten),
        _ if judged.is_good() && judged.boils => (words.expect_done)(&eaten),
        _ if is_done_below(odds, judged) => (words.expect_below)(&eaten),
        _ if judged.is_good() => (words.expect_either)(&eaten),
        (VerdictTone::Doubtful, Wrong::Cold) => words.may_stay_cold.to_owned(),
        // Its time stands below: what is told with one before the meal is not said to come after.
        (VerdictTone::Doubtful, Wrong::Late) if is_by(odds.boils_at) => (words.close_boil)(&eaten),
        (VerdictTone::Doubtful, Wrong::Late) => (words.may_be_late)(&eaten),
        (VerdictTone::Doubtful, Wrong::NotDone) if is_by(odds.ready_at) => {
            (words.close_done)(&eaten)
        }
        (VerdictTone::Doubtful, Wrong::NotDone) => (words.may_not_be_done)(&eaten),
        (VerdictTone::Doubtful, Wrong::Dry) => words.may_boil_dry.to_owned(),
        (_, Wrong::Cold) => {
            let boiling = voice.formats.temperature(question.boiling_c, Sure::Known);
            (words.stays_cold)(&boiling)
        }
        (_, Wrong::Late) => match odds.boils_at.p50 {
            Some(boils_at) if eat_at < boils_at => {
                (words.boils_late)(&eaten, &about(boils_at, odds.boils_at))
            }
            _ => (words.not_done)(&eaten),
        },
        (_, Wrong::NotDone) => match odds.ready_at.p50 {
            Some(ready_at) if eat_at < ready_at => {
                (words.done_late)(&eaten, &about(ready_at, odds.ready_at))
            }
            _ => (words.not_done)(&eaten),
        },
        (_, Wrong::Dry) => words.boils_dry.to_owned(),
    }
}

/// Whether it is done without boiling: where it rather boils than not, that is not said.
fn is_done_below(odds: &Odds, judged: Judged) -> bool {
    judged.is_good() && !judged.boils && odds.boils_at.p50.is_none()
}

fn facts(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    odds: &Odds,
    judged: Judged,
    latest: Option<Option<LocalTime>>,
) -> Vec<Fact> {
    let words = &voice.strings.tonight.verdict.facts;
    let is_hopeless = judged.tone == VerdictTone::No;
    let fact = |label: &str, icon, (value, detail)| Fact {
        label: label.to_owned(),
        value,
        detail,
        icon: Some(icon),
    };
    let boils = happens(voice, question, odds.boils_at, is_hopeless);
    let done = happens(voice, question, odds.ready_at, is_hopeless);
    let put_in = question.put_in;
    let when = if put_in == voice.now {
        words.now.to_owned()
    } else {
        (words.at)(&voice.time(put_in, Sure::Known))
    };
    let latest = latest.map(|latest| by_when(voice, put_in, odds, latest));
    let label = if is_hopeless {
        words.goes_in
    } else {
        words.put_in
    };
    [
        Some(fact(label, Icon::Clock, (when, latest.unwrap_or_default()))),
        boils
            .filter(|_| !is_done_below(odds, judged))
            .map(|when| fact(words.boils, Icon::PotBoils, when)),
        done.filter(|_| !is_done_at_the_boil(question))
            .map(|when| fact(words.done, Icon::Bowl, when)),
        judged
            .is_good()
            .then(|| comes_out(voice, question, out_by(answer, question.meal.eat_at))),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// By when it must go in for nine chances in ten. What is told with such odds is not told to be too late.
fn by_when(voice: &Voice<'_>, put_in: LocalTime, odds: &Odds, latest: Option<LocalTime>) -> String {
    let words = &voice.strings.tonight.chances;
    let nine = Chance::new(Chance::NINE_IN_TEN);
    let figure = figure(voice.strings, voice.formats, nine);
    // Rounded down, but not to a time that is past.
    let latest = latest.map(|latest| Sure::Near.floor(latest).max(latest.min(voice.now)));
    match latest {
        Some(latest) if put_in < latest => {
            (words.latest)(&voice.time(latest, Sure::Known), &figure)
        }
        Some(latest) if !is_good_enough(odds) => {
            (words.sooner)(&voice.time(latest, Sure::Known), &figure)
        }
        None if !is_good_enough(odds) => (words.no_time)(&figure),
        _ => (words.no_later)(&figure),
    }
}

/// When something happens in the middle of what may be, and in 8 of 10 cases; what is only hoped
/// for has a beginning.
fn happens(
    voice: &Voice<'_>,
    question: &Question,
    band: Band<Option<LocalTime>>,
    is_hopeless: bool,
) -> Option<(String, String)> {
    let words = &voice.strings.tonight.verdict.facts;
    let early = band.p10?;
    let stay = question.stay();
    let earliest = || (words.at_the_earliest)(&voice.near(early, stay));
    let Some(middle) = band.p50 else {
        return (!is_hopeless).then(|| (earliest(), String::new()));
    };
    let ends = band.p10.zip(band.p90);
    let estimate = voice.estimate(middle, ends, stay);
    // Rounded, what is told may lie before the earliest, which then says no more.
    let (told, sure) = Voice::told_by(middle, ends, stay);
    let (first, first_sure) = Voice::told(early, Sure::Near, stay);
    let detail = match estimate.span {
        Some((from, to)) => (words.between)(&from, &to),
        None if band.p90.is_none() && first_sure.round(first) <= sure.round(told) => earliest(),
        None => String::new(),
    };
    Some((estimate.at, detail))
}

#[cfg(test)]
mod tests;
