//! Times that are typed for a run: of one that goes on, and of one that is written down from paper.

use model::bench::Foreseen;
use model::local_time::LocalTime;

use crate::present::bench::live::{every_s, last_read};
use crate::present::typed::Mistake;
use crate::state::bench::TestRun;
use crate::state::parse::ParseError;
use crate::state::plan::TimeOfDay;
use crate::state::refused::{Field, Wrong};

/// A time of day that is typed: the latest such time that has been, and now where the field is empty.
/// Nothing is before `earliest`, where that is given: what would be has not come yet.
///
/// # Errors
///
/// [`Mistake`] of the field.
pub(super) fn time_typed(
    text: &str,
    field: Field,
    now: LocalTime,
    earliest: Option<LocalTime>,
) -> Result<LocalTime, Mistake> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(now);
    }
    let at = of_day(text, field)?.last(now);
    // Of a time of today that is to come, the one of yesterday was not meant.
    let is_to_come = at.day() < now.day() && earliest.is_some_and(|earliest| at < earliest);
    if is_to_come {
        return Err(field.refuse(Wrong::InFuture).into());
    }
    Ok(at)
}

/// The time of day that a field holds.
///
/// # Errors
///
/// [`Mistake`] of the field.
pub(super) fn of_day(text: &str, field: Field) -> Result<TimeOfDay, Mistake> {
    TimeOfDay::from_field(text).ok_or(Mistake::Text(field, ParseError::NotANumber))
}

/// What a time of day can mean in a run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct When {
    now: LocalTime,
    started: LocalTime,
    ended: Option<LocalTime>,
    near: Option<LocalTime>,
}

impl When {
    /// In this run, seen from now.
    pub fn of(run: &TestRun, now: LocalTime) -> Self {
        Self {
            now,
            started: run.started,
            ended: run.ended,
            near: run.ended.map(|_| last_read(run)),
        }
    }

    /// The same where a time was proposed: what is typed instead is near it.
    #[must_use]
    pub fn near(self, proposed: Option<LocalTime>) -> Self {
        Self {
            near: proposed.or(self.near),
            ..self
        }
    }

    /// The instant that is typed: of a run that goes on the latest such time that has been, and now
    /// where the field is empty; of one that is over, and beside a proposal, the nearest such time
    /// within the run.
    ///
    /// # Errors
    ///
    /// [`Mistake`] of the field.
    pub fn typed(&self, text: &str, field: Field) -> Result<LocalTime, Mistake> {
        let text = text.trim();
        if text.is_empty() && self.ended.is_some() {
            return Err(Mistake::Text(field, ParseError::Empty));
        }
        let near = self.near.filter(|_| !text.is_empty());
        let Some(near) = near else {
            return time_typed(text, field, self.now, Some(self.started));
        };
        let time = of_day(text, field)?;
        let days = [-1, 0, 1].map(|days| time.on(near.day().plus(days)));
        let until = self.ended.unwrap_or(self.now);
        let within = days
            .into_iter()
            .filter(|at| (self.started..=until).contains(at));
        let nearest = |at: &LocalTime| at.since_s(near).abs();
        let at = within.min_by_key(nearest);
        // What is not within it is refused for what it is.
        Ok(at
            .or(days.into_iter().min_by_key(nearest))
            .unwrap_or(self.now))
    }
}

/// When a run was over, as typed: the first such time from what was read last on. Empty means now.
///
/// # Errors
///
/// [`Mistake`] where it is no time.
pub fn end_typed(text: &str, run: &TestRun, now: LocalTime) -> Result<LocalTime, Mistake> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(now);
    }
    let last = last_read(run);
    let time = of_day(text, Field::OutAt)?;
    if TimeOfDay::of(last) == time {
        return Ok(last);
    }
    Ok(time.after(last))
}

/// When the next reading was taken of a run that is written down from paper: as long after the last
/// one as that after the one before it, the first as long after as is usual. `None` where readings are
/// taken now, or where there is no room for one before the end.
///
/// `is_told_later` says of a run that goes on that its last reading was told with a time.
pub fn proposed(
    run: &TestRun,
    foreseen: Option<&Foreseen>,
    is_told_later: bool,
    now: LocalTime,
) -> Option<LocalTime> {
    if run.ended.is_none() && !is_told_later {
        return None;
    }
    let last = last_read(run);
    #[expect(
        clippy::cast_possible_truncation,
        reason = "an hour at most, and a cast saturates"
    )]
    let usual_s = || (every_s(run, foreseen).round() as i64).max(60);
    let next = last.plus_s(own_every_s(run).unwrap_or_else(usual_s));
    match run.ended {
        Some(ended) if ended <= last => None,
        Some(ended) => Some(next.min(ended)),
        None => Some(next).filter(|next| *next <= now),
    }
}

/// From the last reading but one to the last, where no pot went in or came out meanwhile or since. \[s\]
fn own_every_s(run: &TestRun) -> Option<i64> {
    let [.., before, last] = run.typed() else {
        return None;
    };
    let pot = run.pots.last();
    let moved = pot.map(|pot| run.at(pot.out_s.unwrap_or(pot.in_s)));
    let is_same = moved.is_none_or(|moved| moved <= before.at);
    is_same.then(|| last.at.since_s(before.at).max(60))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::bench::{Reading, RunReadings};
    use crate::state::sample::{at, test_run};

    /// A night on paper: begun at 18:00, over at 06:00, read so many minutes after the start.
    fn night(minutes: &[i64]) -> TestRun {
        let started = at(18, 0);
        let typed = minutes.iter().map(|minute| Reading {
            store_c: Some(200.0),
            ..Reading::none(started.plus_s(60 * minute))
        });
        TestRun {
            started,
            ended: Some(started.plus_s(12 * 3600)),
            pots: Vec::new(),
            readings: RunReadings::Typed(typed.collect()),
            ..test_run()
        }
    }

    #[test]
    fn the_next_time_follows_the_rhythm_of_the_paper() {
        let next = |minutes: &[i64]| {
            let run = night(minutes);
            let next = proposed(&run, None, false, at(18, 0).plus_s(86_400));
            next.map(|next| run.since_start_s(next) / 60.0)
        };
        assert_eq!(next(&[0]), Some(10.0), "as usual");
        assert_eq!(next(&[0, 30]), Some(60.0));
        assert_eq!(next(&[0, 30, 90]), Some(150.0));
        assert_eq!(next(&[0, 690, 719]), Some(720.0), "not after the end");
        assert_eq!(next(&[0, 720]), None, "the end is read");
    }

    #[test]
    fn a_pot_that_went_in_is_read_more_often_again() {
        let mut run = night(&[0, 30]);
        run.pots = test_run().pots;
        run.pots[0].in_s = 31.0 * 60.0;
        run.pots[0].out_s = None;
        let next = proposed(&run, None, false, at(18, 0).plus_s(86_400));
        assert_eq!(next, Some(at(18, 33)));
    }

    #[test]
    fn readings_that_are_taken_now_get_no_time_proposed() {
        let mut run = night(&[0, 30]);
        run.ended = None;
        let next = |later, now| proposed(&run, None, later, now);
        assert_eq!(next(false, at(22, 0)), None);
        assert_eq!(next(true, at(22, 0)), Some(at(19, 0)));
        // Caught up: the next one is read now.
        assert_eq!(next(true, at(18, 50)), None);
    }

    #[test]
    fn times_on_paper_lie_within_the_run() {
        let (run, now) = (night(&[0, 30]), at(18, 0).plus_s(26 * 3600));
        let when = When::of(&run, now);
        let typed = |text: &str| when.typed(text, Field::At);
        // It is 20:00 of the day after; the paper's 19:00 is not today's.
        assert_eq!(typed("19:00"), Ok(at(19, 0)));
        assert_eq!(typed("05:30"), Ok(at(5, 30).plus_s(86_400)));
        assert!(typed("").unwrap_err().is_empty_field());
        // At noon it was over.
        let noon = typed("12:00").unwrap();
        assert!(noon < run.started || run.ended.unwrap() < noon);
        // From the last hour's proposal back to the first is not on to the next evening.
        let late = when.near(Some(at(5, 50).plus_s(86_400)));
        assert_eq!(late.typed("18:10", Field::At), Ok(at(18, 10)));
    }

    #[test]
    fn a_run_ends_after_what_was_read_last() {
        let now = at(18, 0).plus_s(26 * 3600);
        let mut run = night(&[0, 400]);
        run.ended = None;
        assert_eq!(end_typed("06:00", &run, now), Ok(at(6, 0).plus_s(86_400)));
        assert_eq!(end_typed("00:40", &run, now), Ok(at(18, 0).plus_s(24_000)));
        assert_eq!(end_typed("", &run, now), Ok(now));
        assert_eq!(end_typed("x", &run, now).unwrap_err().field(), Field::OutAt);
    }
}
