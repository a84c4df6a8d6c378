//! Pots that were cooked and not told: people forget.

use super::ensemble::{Ensemble, column};
use super::epoch::Epoch;
use super::noise::{Noise, Purpose};
use super::prior::{Multiplier, UNTOLD};
use crate::journal::{Journal, What};
use crate::local_time::Day;

/// A diary that told of a pot in so many days before is kept.
const DIARY_DAYS: i32 = 4;

/// Whether no pot was told of a day in the midst of others with one.
pub(super) fn may_be_untold(journal: &Journal, day: Day) -> bool {
    let has_pot = |from: Day, to: Day| {
        let events = &journal.events;
        let first = events.partition_point(|event| event.at < from.start());
        let those = events.iter().skip(first);
        let mut those = those.take_while(|event| event.at < to.start());
        those.any(|event| matches!(event.what, What::Meal(_)))
    };
    !has_pot(day, day.plus(1)) && has_pot(day.plus(-DIARY_DAYS), day)
}

impl Ensemble {
    /// Some members cooked on a day of which nothing was told: a pot took what it could, up to the
    /// boil.
    pub(super) fn cook_untold(&mut self, epoch: &Epoch, air_c: f64, day: Day, seed: u64) {
        let build = &epoch.build;
        let noise = Noise::new(seed, Purpose::Untold).at(i64::from(day.0));
        for member in 0..self.members() {
            if UNTOLD < noise.uniform(member) {
                continue;
            }
            let warmed_k = self.store_c(build, member).min(build.boiling_c) - air_c;
            let full = noise.at(1).uniform(member) + 0.5;
            let taken_j = full * epoch.untold_j_k * warmed_k.max(0.0);
            let capacity = self.get(column::FACTOR + Multiplier::Capacity.index(), member);
            let spare_j = capacity * (self.store_j(build, member) - build.heat_j(air_c));
            for node in 0..build.row.count {
                // Pot and store end at one temperature at the most.
                let share = build.row.mass_share[node] * spare_j / (spare_j + taken_j).max(1.0);
                let left_j = self.get(column::HEAT + node, member) - share * taken_j;
                self.set(column::HEAT + node, member, left_j);
            }
        }
    }
}
