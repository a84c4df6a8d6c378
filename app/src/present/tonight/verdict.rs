//! The answer: in a word, how sure, and when.
//!
//! One judgement, `Course`, stands behind headline, sentence and figures, so that none says what
//! another denies.

mod facts;
mod odds;

use model::dish::{DoneWhen, HOLD_HOT_C};
use model::journal::Meal;
use model::local_time::LocalTime;
use model::tonight::{Answer, Forecast, Verdict};

use super::{Stay, Voice, ended};
use crate::components::{VerdictTone, VerdictView};
use crate::i18n::format::Sure;
use crate::i18n::refusal::refusal;
use crate::state::refused::{Field, Refused, Wrong};

pub(super) use facts::{OutBy, out_by};
pub(super) use odds::{Awaited, awaited};
pub use odds::{is_good, is_good_enough, is_told_by_odds, is_worth_starting, verdict_by_odds};

/// What was asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The meal.
    pub meal: Meal,
    /// When its pot goes in.
    pub put_in: LocalTime,
    /// Whether it is in already.
    pub is_in: bool,
    /// Where water boils. [°C]
    pub boiling_c: f64,
    /// How well the store's temperature is known.
    pub store_sure: Sure,
    /// Whether the sky of that day was logged.
    pub sky_is_logged: bool,
    /// Whether today's sun is up, or was, and nobody logged it.
    pub lacks_sun: bool,
}

impl Question {
    pub(super) fn stay(&self) -> Stay {
        Stay {
            put_in: self.put_in,
            eat_at: self.meal.eat_at,
        }
    }
}

/// What becomes of the pot with the figures as they stand.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Course {
    /// It boils and is done in time.
    Boils,
    /// It is done in time without boiling.
    Cooks,
    /// It stands too long too cold before it is eaten.
    Spoils(LocalTime),
    /// It is done only after the meal's hour, without boiling.
    CooksLate(LocalTime),
    /// It boils in time, but is not done then.
    BoilsOnly,
    /// It boils only after the meal's hour.
    BoilsLate(LocalTime),
    /// It boils dry first.
    Burns(LocalTime),
    /// It never boils, and is not done without.
    Cold,
}

/// The answer to a question; `latest` is the latest time to put the pot in, where it is known.
pub fn verdict(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    latest: Option<LocalTime>,
) -> VerdictView {
    let course = course(&answer.as_told, question.meal.eat_at);
    let said = sentence(voice, question, answer, course);
    let mut sentences = vec![said];
    if question.lacks_sun {
        let sun_unknown = voice.strings.tonight.verdict.sentences.sun_unknown;
        sentences.insert(0, sun_unknown.to_owned());
    }
    sentences.extend(hope(voice, question, answer, course).map(str::to_owned));
    VerdictView {
        tone: tone(answer.verdict, course),
        headline: headline(voice, question, answer, course).to_owned(),
        figure: sureness(voice, question, answer, course).to_owned(),
        sentence: sentences
            .into_iter()
            .map(ended)
            .collect::<Vec<_>>()
            .join(" "),
        facts: facts::facts(voice, question, answer, course, latest),
    }
}

/// The answer for a meal that can't be put into the pot, and why.
pub fn refused(voice: &Voice<'_>, why: Refused) -> VerdictView {
    let words = &voice.strings.tonight.verdict.headlines;
    let headline = match (why.field, why.wrong) {
        (Field::WaterKg, Wrong::TooLow { .. }) => words.too_little_water,
        _ => words.does_not_fit,
    };
    VerdictView {
        tone: VerdictTone::No,
        headline: headline.to_owned(),
        figure: String::new(),
        sentence: refusal(voice.strings, voice.formats, why, voice.now.day()),
        facts: Vec::new(),
    }
}

fn course(told: &Forecast, eat_at: LocalTime) -> Course {
    let boils_in_time = told.boils_at.is_some_and(|boils_at| boils_at <= eat_at);
    // What has stood too long is thrown away, done or not.
    if let Some(spoils_at) = told.spoils_at.filter(|at| *at <= eat_at) {
        return Course::Spoils(spoils_at);
    }
    if told.is_ready_by(eat_at) {
        return if boils_in_time {
            Course::Boils
        } else {
            Course::Cooks
        };
    }
    match (told.dry_at, told.boils_at, told.ready_at) {
        (Some(dry_at), ..) if dry_at <= eat_at => Course::Burns(dry_at),
        (_, Some(_), _) if boils_in_time => Course::BoilsOnly,
        (_, Some(boils_at), _) => Course::BoilsLate(boils_at),
        (_, None, Some(ready_at)) => Course::CooksLate(ready_at),
        (_, None, None) => Course::Cold,
    }
}

fn tone(verdict: Verdict, course: Course) -> VerdictTone {
    match (verdict, course) {
        (_, Course::Spoils(_)) => VerdictTone::No,
        (Verdict::Yes, _) => VerdictTone::Sure,
        (Verdict::Likely, _) => VerdictTone::Likely,
        (Verdict::Doubtful, _) => VerdictTone::Doubtful,
        (Verdict::No, _) => VerdictTone::No,
    }
}

fn boils_in_favour(question: &Question, answer: &Answer) -> bool {
    let boils_at = answer.in_favour.boils_at;
    boils_at.is_some_and(|boils_at| boils_at <= question.meal.eat_at)
}

fn headline(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
) -> &'static str {
    let words = &voice.strings.tonight.verdict.headlines;
    match (answer.verdict, course) {
        (_, Course::Spoils(_)) => words.do_not_leave,
        (Verdict::Yes, Course::Cooks) => words.will_be_done,
        (Verdict::Yes, _) => words.will_boil,
        (Verdict::Likely, Course::Cooks) => words.should_be_done,
        (Verdict::Likely, _) => words.should_boil,
        (Verdict::Doubtful, Course::Burns(_)) => words.may_boil_dry,
        (Verdict::Doubtful, Course::BoilsLate(_) | Course::CooksLate(_) | Course::Cold)
            if boils_in_favour(question, answer) =>
        {
            words.may_boil
        }
        (Verdict::Doubtful, _) => words.may_be_done,
        (Verdict::No, Course::Burns(_)) => words.boils_dry,
        (Verdict::No, Course::BoilsLate(_)) => words.too_late,
        (Verdict::No, Course::Cold) => words.will_not_boil,
        (Verdict::No, _) => words.not_done,
    }
}

fn sureness(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
) -> &'static str {
    let words = &voice.strings.tonight.verdict.sureness;
    let logged = question.sky_is_logged;
    let as_told = if logged {
        words.as_logged
    } else {
        words.as_assumed
    };
    match (answer.verdict, course) {
        // More heat would only burn it sooner, or none the less spoil it.
        (_, Course::Burns(_) | Course::Spoils(_)) => "",
        (Verdict::Yes, _) if logged => words.even_weaker,
        (Verdict::Yes, _) => words.even_grey,
        (Verdict::Likely, _) => as_told,
        (Verdict::Doubtful, _) if logged => words.if_all_goes_well,
        (Verdict::Doubtful, _) => words.if_clear,
        // With more heat it might boil, too late.
        (Verdict::No, Course::Cold) if answer.in_favour.boils_at.is_some() => as_told,
        (Verdict::No, _) if logged => words.not_even_then,
        (Verdict::No, _) => words.not_even_clear,
    }
}

fn sentence(voice: &Voice<'_>, question: &Question, answer: &Answer, course: Course) -> String {
    let words = &voice.strings.tonight.verdict.sentences;
    let told = &answer.as_told;
    let eat_at = question.meal.eat_at;
    let eaten = voice.time(eat_at, Sure::Known);
    let hottest = voice.hottest(told.hottest_c, question.boiling_c);
    // As the figures below tell it.
    let about = |at, when: fn(&Forecast) -> Option<LocalTime>| {
        let ends = when(&answer.against).zip(when(&answer.in_favour));
        voice.estimate(at, ends, question.stay()).at
    };
    let ready = |at| about(at, |forecast| forecast.ready_at);
    let boils = |at| about(at, |forecast| forecast.boils_at);
    match course {
        Course::Boils if is_done_at_the_boil(question) => (words.boils)(&eaten),
        Course::Boils => (words.boils_and_done)(&eaten),
        Course::Cooks => (words.done_without_boil)(&hottest, &eaten),
        Course::Spoils(spoils_at) => {
            let hot = voice.formats.temperature(HOLD_HOT_C.value, Sure::Known);
            (words.spoils)(
                &hot,
                &voice.about_in(spoils_at, Sure::Rough, question.stay()),
            )
        }
        Course::CooksLate(ready_at) => (words.done_late)(&hottest, &eaten, &ready(ready_at)),
        Course::BoilsOnly => match told.ready_at {
            Some(ready_at) => (words.done_later)(&eaten, &ready(ready_at)),
            None => (words.not_done)(&eaten),
        },
        Course::BoilsLate(boils_at) => (words.boils_later)(&eaten, &boils(boils_at)),
        Course::Burns(dry_at) => (words.boils_dry)(&voice.about(dry_at, Sure::Rough)),
        Course::Cold => (words.never_boils)(
            &hottest,
            &voice.formats.temperature(question.boiling_c, Sure::Known),
        ),
    }
}

/// What a doubtful answer still hopes for.
fn hope(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
) -> Option<&'static str> {
    let words = &voice.strings.tonight.verdict.sentences;
    let is_cold = matches!(course, Course::Cold | Course::CooksLate(_));
    (answer.verdict == Verdict::Doubtful && is_cold).then(|| {
        if boils_in_favour(question, answer) {
            words.hope_boils
        } else {
            words.hope_done
        }
    })
}

pub(super) fn is_done_at_the_boil(question: &Question) -> bool {
    question.meal.dish.props().done_when == DoneWhen::Boils
}
