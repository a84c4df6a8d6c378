//! When the way of a store changes besides the sun: stood open, switched off, topped up.

use crate::journal::{Journal, What};
use crate::local_time::{Day, LocalTime};

/// An interval of local time, its end not in it.
type Interval = (LocalTime, LocalTime);

/// When the cooker stood open, when its heater was off, and when it was topped up.
#[derive(Debug, Clone, Default)]
pub(super) struct Edges {
    pub(super) open: Vec<Interval>,
    pub(super) off: Vec<Interval>,
    /// With the heat that reaches the store. \[W\]
    top_ups: Vec<(Interval, f64)>,
}

impl Edges {
    /// Those that touch the days from `first` to `last`.
    pub(super) fn new(journal: &Journal, first: Day, last: Day) -> Self {
        let mut edges = Self::default();
        let (from, to) = (first.start(), last.plus(1).start());
        for event in &journal.events {
            let for_s = match event.what {
                What::LidOpen { for_s } | What::HeaterOff { for_s } | What::TopUp { for_s, .. } => {
                    for_s
                }
                What::Reading { .. } | What::Felt(_) | What::Meal(_) => continue,
            };
            let interval = (event.at, event.at.plus_s(for_s));
            if to <= event.at || interval.1 <= from {
                continue;
            }
            match event.what {
                What::LidOpen { .. } => edges.open.push(interval),
                What::TopUp { heat_w, .. } => edges.top_ups.push((interval, heat_w)),
                _ => edges.off.push(interval),
            }
        }
        edges
    }

    /// Adds a second charge that is yet to come.
    pub(super) fn top_up(&mut self, from: LocalTime, to: LocalTime, heat_w: f64) {
        self.top_ups.push(((from, to), heat_w));
    }

    /// Heat from elsewhere. \[W\]
    pub(super) fn top_up_w(&self, at: LocalTime) -> f64 {
        let on = self
            .top_ups
            .iter()
            .filter(|(interval, _)| contains(interval, at));
        on.map(|(_, heat_w)| heat_w).sum()
    }

    pub(super) fn next(&self, after: LocalTime, most: LocalTime) -> LocalTime {
        self.open
            .iter()
            .chain(&self.off)
            .chain(self.top_ups.iter().map(|(interval, _)| interval))
            .flat_map(|&(from, to)| [from, to])
            .filter(|&edge| after < edge)
            .fold(most, Ord::min)
    }
}

fn contains(&(from, to): &Interval, at: LocalTime) -> bool {
    from <= at && at < to
}

pub(super) fn inside(intervals: &[Interval], at: LocalTime) -> bool {
    intervals.iter().any(|interval| contains(interval, at))
}
