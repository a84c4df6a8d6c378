//! Members carried ahead of now, kept between questions.
//!
//! How the members come to the time that a pot goes in is the same whatever goes into it, and the
//! longest part of a question about tomorrow.

use std::collections::BTreeMap;
use std::sync::{Mutex, OnceLock, PoisonError};

use super::Belief;
use super::ensemble::Ensemble;
use crate::local_time::LocalTime;

/// Members are kept at so many seconds of the day and each multiple. No stretch of
/// [`Ensemble::carry`] reaches across one, so who sets out from there comes to the same, to the last
/// bit, as who comes all the way.
pub(super) const MARK_S: i64 = 2 * 3600;

/// What was carried so far. It is no part of a belief: a copy begins without, and the answers are
/// the same without.
#[derive(Debug, Default)]
pub(super) struct Ahead {
    kept: Mutex<Kept>,
    /// Some of the members, for searches and plots.
    few: OnceLock<Box<Belief>>,
    /// And fewer, for a first answer.
    fewest: OnceLock<Box<Belief>>,
}

impl Clone for Ahead {
    fn clone(&self) -> Self {
        Self::default()
    }
}

#[derive(Debug, Default)]
struct Kept {
    marks: BTreeMap<LocalTime, Ensemble>,
    /// Where the last question led, which need not be a mark.
    last: Option<Ensemble>,
}

impl Kept {
    fn before(&self, to: LocalTime) -> Option<&Ensemble> {
        let last = self.last.as_ref().filter(|last| last.at == to);
        let mut marks = self.marks.range(..=to);
        last.or_else(|| marks.next_back().map(|(_, kept)| kept))
    }
}

impl Belief {
    /// Members at an instant to come; a pot that is in stays in.
    pub(super) fn at_later(&self, to: LocalTime) -> Ensemble {
        let running = self.pot.as_ref().map(|pot| &*pot.load);
        let kept = &mut *(self.ahead.kept.lock()).unwrap_or_else(PoisonError::into_inner);
        let mut ensemble = kept.before(to).unwrap_or(&self.ensemble).clone();
        while ensemble.at < to {
            let from = ensemble.at;
            let mark = from.plus_s(1).ceil_to_s(MARK_S);
            self.carry(&mut ensemble, running, false, mark.min(to));
            if ensemble.at == mark {
                kept.marks.insert(mark, ensemble.clone());
            }
            // Beyond the days that are known there is nowhere to come to.
            if ensemble.at == from {
                break;
            }
        }
        if kept.last.as_ref().is_none_or(|last| last.at != to) {
            kept.last = Some(ensemble.clone());
        }
        ensemble
    }

    /// The same belief with few members, for searches and plots.
    pub(super) fn few(&self) -> &Self {
        self.ahead.few.get_or_init(|| Box::new(self.thinned(FEW)))
    }

    /// The same belief with fewer members still, for a first answer.
    pub(super) fn fewest(&self) -> &Self {
        let fewest = || Box::new(self.thinned(FEWEST));
        self.ahead.fewest.get_or_init(fewest)
    }
}

/// Members that searches ask: enough for a band that is drawn.
const FEW: usize = 128;
/// Members of a first answer, which all of them put right within a second.
const FEWEST: usize = 64;
