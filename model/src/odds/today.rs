//! A belief kept in the middle of today, so that the next minute, or a report of now, is not worked
//! out from midnight on.

use super::ahead::MARK_S;
use super::belief::{Mark, Replay};
use super::digest::Digest;
use super::road::{Past, Road};
use crate::journal::What;
use crate::local_time::{Day, LocalTime};
use crate::tonight::TonightError;

impl Road<'_> {
    /// The last time before now at which a belief is kept: no stretch reaches across it.
    fn kept_at(&self) -> LocalTime {
        self.now.plus_s(-self.now.0.rem_euclid(MARK_S))
    }

    /// The fingerprint of all before that time, from the one of all before today. None on a day on
    /// which more counts than what was told of the time before it: what is told of a pot can be heard
    /// later.
    pub(super) fn print_of_today(&self, before: Digest, first: Day) -> Option<Digest> {
        let (today, kept_at) = (self.now.day(), self.kept_at());
        let begins = today.start();
        let has_changed = |at: LocalTime| begins <= at && at <= self.now;
        if (self.journal.formerly.iter()).any(|former| has_changed(former.until)) {
            return None;
        }
        let epoch = Self::epoch_at(self.journal, begins);
        let mut digest = before
            .time(kept_at)
            .word(self.epochs.get(epoch).map_or(0, |epoch| epoch.fingerprint))
            .sky(self.journal.skies.get(&today));
        if let Some((read_at, _)) = self.begins_with(first) {
            if kept_at < read_at {
                return None;
            }
            digest = digest.time(read_at);
        }
        let events = &self.journal.events;
        let from = events.partition_point(|event| event.at < begins);
        for event in events.iter().skip(from) {
            if kept_at <= event.at {
                break;
            }
            if matches!(event.what, What::Meal(_)) {
                return None;
            }
            digest = digest.event(event);
        }
        Some(digest)
    }
}

impl Replay {
    /// What was kept, where it is what follows from all before it.
    pub(super) fn taken_up(&self, print: Option<Digest>) -> Option<Past> {
        let kept = self.today.as_ref()?;
        (Some(kept.fingerprint) == print).then(|| kept.past.clone())
    }

    /// Walks to where a belief is kept, and keeps it.
    pub(super) fn keep_today(
        &mut self,
        road: &mut Road<'_>,
        past: &mut Past,
        print: Option<Digest>,
    ) -> Result<(), TonightError> {
        let kept_at = road.kept_at();
        let Some(fingerprint) = print.filter(|_| past.pot.is_none() && past.ensemble.at < kept_at)
        else {
            return Ok(());
        };
        road.walk(past, kept_at)?;
        self.today = Some(Mark {
            fingerprint,
            past: past.clone(),
        });
        Ok(())
    }
}
