//! The figures under the answer.

use model::local_time::LocalTime;
use model::tonight::{Answer, Forecast, Verdict};

use super::{Course, Question, Voice, is_done_at_the_boil};
use crate::components::{Fact, Icon};
use crate::i18n::format::Sure;

/// A pot that burns so long after the meal is no matter of this evening. \[s\]
const BURNS_SOON_S: i64 = 2 * 3600;

/// By when the pot must be out of the cooker.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in super::super) enum OutBy {
    /// Then its water is gone, and it burns.
    Burns(LocalTime),
    /// Then its water may be gone before it is done: more must be poured on.
    LacksWater(LocalTime),
    /// Then it has stood too long too cold, and must be thrown away.
    Spoils(LocalTime),
}

impl OutBy {
    fn at(self) -> LocalTime {
        match self {
            Self::Burns(at) | Self::LacksWater(at) | Self::Spoils(at) => at,
        }
    }
}

pub(super) fn facts(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
    latest: Option<LocalTime>,
) -> Vec<Fact> {
    let words = &voice.strings.tonight.verdict.facts;
    let boils = match course {
        Course::Cooks | Course::CooksLate(_) | Course::Cold
            if answer.as_told.boils_at.is_none() =>
        {
            earliest(voice, question, answer, course, |forecast| {
                forecast.boils_at
            })
        }
        _ => happens(voice, question, answer, |forecast| forecast.boils_at),
    };
    let done = match answer.as_told.ready_at {
        _ if is_done_at_the_boil(question) => None,
        Some(_) => happens(voice, question, answer, |forecast| forecast.ready_at),
        None => earliest(voice, question, answer, course, |forecast| {
            forecast.ready_at
        }),
    };
    let fact = |label: &str, icon, (value, detail)| Fact {
        label: label.to_owned(),
        value,
        detail,
        icon: Some(icon),
    };
    let out_by = out_by(answer, question.meal.eat_at);
    let comes_out = match (course, out_by) {
        (Course::Boils | Course::Cooks | Course::Spoils(_), _)
        | (Course::BoilsOnly, Some(OutBy::Burns(_))) => Some(comes_out(voice, question, out_by)),
        // What is not done is not told to come out.
        _ => None,
    };
    [
        Some(put_in(voice, question, answer, course, (latest, out_by))),
        boils.map(|when| fact(words.boils, Icon::PotBoils, when)),
        done.map(|when| fact(words.done, Icon::Bowl, when)),
        comes_out,
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn put_in(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
    (latest, out_by): (Option<LocalTime>, Option<OutBy>),
) -> Fact {
    let words = &voice.strings.tonight.verdict.facts;
    let put_in = question.put_in;
    let value = if put_in == voice.now {
        words.now.to_owned()
    } else {
        (words.at)(&voice.time(put_in, Sure::Known))
    };
    // What does not work is not told to be done.
    let is_advice = answer.verdict != Verdict::No && !matches!(course, Course::Spoils(_));
    let latest = latest
        .map(|latest| Sure::Near.floor(latest))
        .filter(|latest| is_advice && put_in < *latest)
        .filter(|latest| out_by.is_none_or(|out_by| *latest < out_by.at()));
    let label = if is_advice {
        words.put_in
    } else {
        words.goes_in
    };
    Fact {
        label: label.to_owned(),
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
    let told = when(&answer.as_told)?;
    let (against, in_favour) = (when(&answer.against), when(&answer.in_favour));
    let estimate = voice.estimate(told, against.zip(in_favour), question.stay());
    let detail = match (estimate.span, in_favour) {
        (Some((from, to)), _) => (words.between)(&from, &to),
        (None, Some(early)) if against.is_none() && early < told => {
            (words.at_the_earliest)(&voice.near(early, question.stay()))
        }
        (None, _) => String::new(),
    };
    Some((estimate.at, detail))
}

/// When something happens that is only hoped for: where the answer is doubtful because it may as
/// well not.
fn earliest(
    voice: &Voice<'_>,
    question: &Question,
    answer: &Answer,
    course: Course,
    when: impl Fn(&Forecast) -> Option<LocalTime>,
) -> Option<(String, String)> {
    let is_hoped_for = answer.verdict == Verdict::Doubtful && course != Course::Cooks;
    let at = when(&answer.in_favour).filter(|_| is_hoped_for)?;
    let words = &voice.strings.tonight.verdict.facts;
    let earliest = (words.at_the_earliest)(&voice.near(at, question.stay()));
    Some((earliest, String::new()))
}

pub(super) fn comes_out(voice: &Voice<'_>, question: &Question, out_by: Option<OutBy>) -> Fact {
    let words = &voice.strings.tonight.verdict.facts;
    let time = |at| voice.time(at, Sure::Known);
    let (label, value, icon) = match out_by {
        Some(OutBy::Burns(at)) => (words.take_out, (words.or_it_burns)(&time(at)), Icon::Alight),
        Some(OutBy::LacksWater(at)) => {
            (words.look_in, (words.or_it_is_dry)(&time(at)), Icon::Alight)
        }
        Some(OutBy::Spoils(at)) => (words.take_out, (words.or_it_spoils)(&time(at)), Icon::Moon),
        None => (
            words.leave_in,
            (words.until_eaten)(&time(question.meal.eat_at)),
            Icon::KeepHot,
        ),
    };
    Fact {
        label: label.to_owned(),
        value,
        detail: String::new(),
        icon: Some(icon),
    }
}

/// When the pot must be out, to be on the safe side, where it would burn soon after the meal or
/// spoil before it.
pub(in super::super) fn out_by(answer: &Answer, eat_at: LocalTime) -> Option<OutBy> {
    let ready_at = answer.as_told.ready_at;
    let burns = burns_at(answer, eat_at).map(|at| match ready_at {
        // Taken out, it would not be done.
        Some(ready_at) if at <= ready_at => OutBy::LacksWater(at),
        _ => OutBy::Burns(at),
    });
    let spoils = answer
        .as_told
        .spoils_at
        .filter(|at| *at <= eat_at)
        .map(|at| OutBy::Spoils(Sure::Rough.floor(at)));
    [burns, spoils]
        .into_iter()
        .flatten()
        .min_by_key(|out| out.at())
}

fn burns_at(answer: &Answer, eat_at: LocalTime) -> Option<LocalTime> {
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
