//! A search that is worked out bit by bit.

use std::sync::{Mutex, MutexGuard, PoisonError};

/// What a search has tried so far.
///
/// A search tries one plan after another, and which comes next hangs on nothing but what came of
/// those before. So it can be left off anywhere: the next bit goes through the search from its start,
/// looks up what is known, and tries one plan more.
#[derive(Debug, Default)]
pub struct Trials(Mutex<Tried>);

#[derive(Debug, Default)]
struct Tried {
    known: Vec<f64>,
    /// How many were looked up, or tried, in this bit.
    asked: usize,
    /// How many may be tried yet in this bit.
    left: usize,
    is_cut_short: bool,
}

impl Trials {
    /// A search that is worked out at once.
    pub(super) fn at_once() -> Self {
        Self(Mutex::new(Tried {
            left: usize::MAX,
            ..Tried::default()
        }))
    }

    /// One bit more of a search, always the same one; `None` as long as it is not at its end.
    pub fn bit<T>(&self, search: impl FnOnce(&Self) -> T) -> Option<T> {
        {
            let mut tried = self.tried();
            tried.asked = 0;
            tried.left = 1;
            tried.is_cut_short = false;
        }
        let found = search(self);
        (!self.tried().is_cut_short).then_some(found)
    }

    /// What comes of the next plan that is tried; not a number where that is left for the next bit.
    pub(super) fn next(&self, work: impl FnOnce() -> f64) -> f64 {
        {
            let mut tried = self.tried();
            let place = tried.asked;
            tried.asked += 1;
            if let Some(known) = tried.known.get(place) {
                return *known;
            }
            if tried.left == 0 {
                tried.is_cut_short = true;
                return f64::NAN;
            }
            tried.left -= 1;
        }
        let found = work();
        self.tried().known.push(found);
        found
    }

    fn tried(&self) -> MutexGuard<'_, Tried> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}
