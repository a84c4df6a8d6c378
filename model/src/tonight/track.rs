//! Watches a run for the plot, and for what happens to the pot.

use crate::local_time::LocalTime;
use crate::network::{Event, Network, State, Watch};
use crate::tonight::course::{local, seconds};

/// Store and pot at an instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// When.
    pub at: LocalTime,
    /// The store under the seat. [°C]
    pub store_c: f64,
    /// The pot, while one is in. [°C]
    pub pot_c: Option<f64>,
}

/// Keeps points at even steps, or none.
#[derive(Debug, Clone, Default)]
pub(super) struct Track {
    next_s: Option<f64>,
    step_s: f64,
    pub(super) points: Vec<Point>,
}

impl Track {
    pub(super) fn every(step_s: f64, from: LocalTime) -> Self {
        Self {
            next_s: Some(seconds(from)),
            step_s,
            points: Vec::new(),
        }
    }

    /// Keeps no more points.
    pub(super) fn stop(&mut self) {
        self.next_s = None;
    }
}

impl Watch for Track {
    fn next_sample_s(&self) -> Option<f64> {
        self.next_s
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        self.points.push(Point {
            at: local(state.time_s()),
            store_c: state.store_c(net),
            pot_c: state.pot().map(crate::network::PotState::t_c),
        });
        self.next_s = self.next_s.map(|next_s| next_s + self.step_s);
    }
}

/// Keeps what happens to one pot, and its points where wanted.
#[derive(Debug, Clone, Default)]
pub(super) struct PotWatch {
    pub(super) track: Track,
    /// Full boil asked for before the food is safe. \[s\]
    pub(super) full_boil_s: f64,
    pub(super) boils_s: Option<f64>,
    pub(super) done_s: Option<f64>,
    pub(super) safe_s: Option<f64>,
    pub(super) dry_s: Option<f64>,
    boiling: Option<(f64, f64)>,
}

impl PotWatch {
    pub(super) fn new(track: Track, full_boil_s: f64) -> Self {
        Self {
            track,
            full_boil_s,
            ..Self::default()
        }
    }

    /// The pot was seen to boil for the first time, whatever was reckoned.
    pub(super) fn see_boiling(&mut self, state: &State) {
        let Some(pot) = state.pot() else { return };
        self.boils_s = Some(state.time_s());
        self.boiling = Some((state.time_s(), 0.0));
        self.safe_s = None;
        if pot.doneness() < 1.0 {
            self.done_s = None;
        }
    }

    /// Brings the account of the running boil up to the state's time.
    pub(super) fn settle(&mut self, state: &State) {
        self.settle_safety(state.time_s());
    }

    fn settle_safety(&mut self, now_s: f64) {
        if let (None, Some((since_s, before_s))) = (self.safe_s, self.boiling) {
            let safe_s = since_s + (self.full_boil_s - before_s).max(0.0);
            if safe_s <= now_s {
                self.safe_s = Some(safe_s);
            }
        }
    }
}

impl Watch for PotWatch {
    fn next_sample_s(&self) -> Option<f64> {
        self.track.next_sample_s()
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        self.track.sample(net, state);
    }

    fn event(&mut self, event: Event, _net: &Network<'_>, state: &State) {
        let now_s = state.time_s();
        match event {
            Event::Boils => {
                self.boils_s.get_or_insert(now_s);
                let before_s = state.pot().map_or(0.0, crate::network::PotState::boil_s);
                self.boiling = Some((now_s, before_s));
            }
            Event::StopsBoiling | Event::BoilsDry => {
                self.settle_safety(now_s);
                self.boiling = None;
                if event == Event::BoilsDry {
                    self.dry_s.get_or_insert(now_s);
                }
            }
            Event::Done => {
                self.done_s.get_or_insert(now_s);
            }
            _ => {}
        }
    }
}
