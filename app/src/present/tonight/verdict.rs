//! The answer: in a word, how sure, and when.

use model::dish::DoneWhen;
use model::journal::Meal;
use model::local_time::LocalTime;
use model::tonight::{Answer, Forecast, Verdict};

use super::{Voice, ended};
use crate::components::{Fact, Icon, VerdictTone, VerdictView};
use crate::i18n::format::Sure;
use crate::i18n::refusal::refusal;
use crate::state::refused::Refused;

/// A pot that burns so long after the meal is no matter of this evening. \[s\]
const BURNS_SOON_S: i64 = 2 * 3600;

/// What was asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Question {
    /// The meal.
    pub meal: Meal,
    /// When its pot goes in.
    pub put_in: LocalTime,
    /// Where water boils. [°C]
    pub boiling_c: f64,
    /// How well the store's temperature is known.
    pub store_sure: Sure,
    /// Whether the sky of that day was logged.
    pub sky_is_logged: bool,
}

/// What becomes of the pot with the figures as they stand.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Course {
    /// It boils and is done in time.
    Boils,
    /// It is done in time without boiling.
    Cooks,
    /// It boils in time, but is not done then.
    BoilsOnly,
    /// It boils only after the meal's hour.
    BoilsLate(LocalTime),
    /// It boils dry first.
    Burns(LocalTime),
    /// It never boils.
    Cold,
}

/// The answer to a question.
pub fn verdict(voice: &Voice<'_>, question: &Question, answer: &Answer) -> VerdictView {
    let course = course(&answer.as_told, question.meal.eat_at);
    VerdictView {
        tone: tone(answer.verdict),
        headline: headline(voice, answer, course).to_owned(),
        figure: sureness(voice, question, answer.verdict, course).to_owned(),
        sentence: ended(sentence(voice, question, answer, course)),
        facts: facts(voice, question, answer, course),
    }
}

/// The answer for a meal that can't be put into the pot, and why.
pub fn refused(voice: &Voice<'_>, why: Refused) -> VerdictView {
    VerdictView {
        tone: VerdictTone::No,
        headline: voice
            .strings
            .tonight
            .verdict
            .headlines
            .does_not_fit
            .to_owned(),
        figure: String::new(),
        sentence: refusal(voice.strings, voice.formats, why, voice.now.day()),
        facts: Vec::new(),
    }
}

fn course(told: &Forecast, eat_at: LocalTime) -> Course {
    let boils_in_time = told.boils_at.is_some_and(|boils_at| boils_at <= eat_at);
    if told.is_ready_by(eat_at) {
        return if boils_in_time {
            Course::Boils
        } else {
            Course::Cooks
        };
    }
    match (told.dry_at, told.boils_at) {
        (Some(dry_at), _) if dry_at <= eat_at => Course::Burns(dry_at),
        (_, Some(_)) if boils_in_time => Course::BoilsOnly,
        (_, Some(boils_at)) => Course::BoilsLate(boils_at),
        (_, None) => Course::Cold,
    }
}

fn tone(verdict: Verdict) -> VerdictTone {
    match verdict {
        Verdict::Yes => VerdictTone::Sure,
        Verdict::Likely => VerdictTone::Likely,
        Verdict::Doubtful => VerdictTone::Doubtful,
        Verdict::No => VerdictTone::No,
    }
}

fn headline(voice: &Voice<'_>, answer: &Answer, course: Course) -> &'static str {
    let words = &voice.strings.tonight.verdict.headlines;
    let may_boil = answer.in_favour.boils_at.is_some();
    match (answer.verdict, course) {
        (Verdict::Yes, Course::Cooks) => words.will_be_done,
        (Verdict::Yes, _) => words.will_boil,
        (Verdict::Likely, Course::Cooks) => words.should_be_done,
        (Verdict::Likely, _) => words.should_boil,
        (Verdict::Doubtful, Course::Burns(_)) => words.may_boil_dry,
        (Verdict::Doubtful, Course::BoilsOnly | Course::Boils | Course::Cooks) => {
            words.may_not_be_done
        }
        (Verdict::Doubtful, Course::BoilsLate(_) | Course::Cold) => words.may_not_boil,
        (Verdict::No, Course::Burns(_)) => words.boils_dry,
        (Verdict::No, Course::BoilsOnly | Course::Boils | Course::Cooks) => words.not_done,
        (Verdict::No, Course::BoilsLate(_)) => words.too_late,
        (Verdict::No, Course::Cold) if may_boil => words.not_done,
        (Verdict::No, Course::Cold) => words.will_not_boil,
    }
}

fn sureness(
    voice: &Voice<'_>,
    question: &Question,
    verdict: Verdict,
    course: Course,
) -> &'static str {
    let words = &voice.strings.tonight.verdict.sureness;
    match (verdict, course) {
        // More heat would only burn it sooner.
        (_, Course::Burns(_)) => "",
        (Verdict::Yes, _) => words.even_weaker,
        (Verdict::Likely, _) if question.sky_is_logged => words.as_logged,
        (Verdict::Likely, _) => words.as_assumed,
        (Verdict::Doubtful, _) => words.if_all_goes_well,
        (Verdict::No, _) => words.not_even_then,
    }
}

fn sentence(voice: &Voice<'_>, question: &Question, answer: &Answer, course: Course) -> String {
    let words = &voice.strings.tonight.verdict.sentences;
    let told = &answer.as_told;
    let eaten = voice.time(question.meal.eat_at, Sure::Known);
    let hottest = voice.hottest(told.hottest_c, question.boiling_c);
    match course {
        Course::Boils if is_done_at_the_boil(question) => (words.boils)(&eaten),
        Course::Boils => (words.boils_and_done)(&eaten),
        Course::Cooks => (words.done_without_boil)(&hottest, &eaten),
        Course::BoilsOnly => match told.ready_at {
            Some(ready_at) => (words.done_later)(
                &eaten,
                &voice.about(
                    ready_at,
                    Voice::beside(ready_at, Sure::Rough, question.meal.eat_at),
                ),
            ),
            None => (words.not_done)(&eaten),
        },
        Course::BoilsLate(boils_at) => {
            let sure = Voice::beside(boils_at, Sure::Rough, question.meal.eat_at);
            (words.boils_later)(&eaten, &voice.about(boils_at, sure))
        }
        Course::Burns(dry_at) => (words.boils_dry)(&voice.about(dry_at, Sure::Rough)),
        Course::Cold => (words.never_boils)(
            &hottest,
            &voice.formats.temperature(question.boiling_c, Sure::Known),
        ),
    }
}

fn is_done_at_the_boil(question: &Question) -> bool {
    question.meal.dish.props().done_when == DoneWhen::Boils
}

fn facts(voice: &Voice<'_>, question: &Question, answer: &Answer, course: Course) -> Vec<Fact> {
    let mut facts = vec![put_in(voice, question, answer)];
    facts.extend(
        happens(voice, question, answer, |forecast| forecast.boils_at).map(|(value, detail)| {
            Fact {
                label: voice.strings.tonight.verdict.facts.boils.to_owned(),
                value,
                detail,
                icon: Some(Icon::PotBoils),
            }
        }),
    );
    if !is_done_at_the_boil(question) {
        facts.extend(
            happens(voice, question, answer, |forecast| forecast.ready_at).map(
                |(value, detail)| Fact {
                    label: voice.strings.tonight.verdict.facts.done.to_owned(),
                    value,
                    detail,
                    icon: Some(Icon::Bowl),
                },
            ),
        );
    }
    let burns_at = burns_at(answer, question.meal.eat_at);
    match (course, burns_at) {
        (Course::Boils | Course::Cooks, _) | (Course::BoilsOnly, Some(_)) => {
            facts.push(comes_out(voice, question, burns_at));
        }
        // What is not done is not told to come out.
        (Course::BoilsOnly | Course::BoilsLate(_) | Course::Burns(_) | Course::Cold, _) => {}
    }
    facts
}

fn put_in(voice: &Voice<'_>, question: &Question, answer: &Answer) -> Fact {
    let words = &voice.strings.tonight.verdict.facts;
    let put_in = question.put_in;
    let value = if put_in == voice.now {
        words.now.to_owned()
    } else if put_in.day() == voice.now.day() {
        (words.at)(&voice.time(put_in, Sure::Known))
    } else {
        voice.formats.instant(put_in, voice.now.day())
    };
    let latest = answer
        .latest_put_in
        .or(answer.latest_put_in_as_told)
        .map(|latest| Sure::Near.floor(latest))
        .filter(|latest| put_in < *latest);
    Fact {
        label: words.put_in.to_owned(),
        value,
        detail: latest
            .map(|latest| (words.at_the_latest)(&voice.time(latest, Sure::Known)))
            .unwrap_or_default(),
        icon: Some(Icon::Clock),
    }
}

/// When something happens, and between which times; none where it never does.
fn happens(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    when: impl Fn(&Forecast) -> Option<LocalTime>,
) -> Option<(String, String)> {
    let words = &voice.strings.tonight.verdict.facts;
    let at_the_earliest = |at: LocalTime| (words.at_the_earliest)(&voice.time(at, Sure::Near));
    let (against, in_favour) = (when(&answer.against), when(&answer.in_favour));
    let Some(told) = when(&answer.as_told) else {
        return in_favour.map(|at| (at_the_earliest(at), String::new()));
    };
    let estimate = voice.estimate(told, against.zip(in_favour), question.meal.eat_at);
    let detail = match (estimate.span, in_favour) {
        (Some((from, to)), _) => (words.between)(&from, &to),
        (None, Some(early)) if against.is_none() && early < told => at_the_earliest(early),
        (None, _) => String::new(),
    };
    Some((estimate.at, detail))
}

fn comes_out(voice: &Voice<'_>, question: &Question, burns_at: Option<LocalTime>) -> Fact {
    let words = &voice.strings.tonight.verdict.facts;
    let eat_at = question.meal.eat_at;
    match burns_at {
        Some(dry_at) => Fact {
            label: words.take_out.to_owned(),
            value: (words.or_it_burns)(&voice.time(dry_at, Sure::Known)),
            detail: String::new(),
            icon: Some(Icon::Alight),
        },
        None => Fact {
            label: words.leave_in.to_owned(),
            value: (words.until_eaten)(&voice.time(eat_at, Sure::Known)),
            detail: String::new(),
            icon: Some(Icon::KeepHot),
        },
    }
}

/// When the pot must be out, to be on the safe side, where it would burn soon after the meal.
pub(super) fn burns_at(answer: &Answer, eat_at: LocalTime) -> Option<LocalTime> {
    let dry_at = [&answer.as_told, &answer.in_favour, &answer.against]
        .into_iter()
        .filter_map(|forecast| forecast.dry_at)
        .min()?;
    let out_by = Sure::Rough.floor(dry_at);
    let is_after_done = answer.as_told.ready_at.is_none_or(|ready| ready < out_by);
    let out_by = if is_after_done {
        out_by
    } else {
        Sure::Near.floor(dry_at)
    };
    (out_by < eat_at.plus_s(BURNS_SOON_S)).then_some(out_by)
}
