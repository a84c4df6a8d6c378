//! What a member's thermometer shows.

use super::build::Build;
use super::ensemble::{Ensemble, column};
use super::prior::{Multiplier, Offset, PLACE, PLACES};

impl Ensemble {
    /// By how much a member's thermometer reads high. \[K\]
    pub(super) fn thermometer_k(&self, member: usize) -> f64 {
        self.offset(Offset::Thermometer, member)
    }

    /// Temperature where a member's thermometer sits. [°C]
    pub(super) fn sensed_c(&self, build: &Build, member: usize) -> f64 {
        let row = &build.row;
        if row.count == 1 {
            return self.store_c(build, member);
        }
        let (middle, sd) = PLACE;
        let place = middle + sd * self.offset(Offset::Place, member);
        let place = place.clamp(PLACES.0, PLACES.1);
        let capacity = self.get(column::FACTOR + Multiplier::Capacity.index(), member);
        let node_c = |node: usize| {
            let share = row.mass_share[node];
            let whole_j = self.get(column::HEAT + node, member) / (share * capacity);
            self.temperature_c(build, member, whole_j)
        };
        // Straight from the middle of one node's mass to that of the next.
        let (mut before, mut before_at) = (0, 0.5 * row.mass_share[0]);
        let mut begins = row.mass_share[0];
        for node in 1..row.count {
            let at = begins + 0.5 * row.mass_share[node];
            if place <= at {
                let along = ((place - before_at) / (at - before_at)).max(0.0);
                return node_c(before) + along * (node_c(node) - node_c(before));
            }
            begins += row.mass_share[node];
            (before, before_at) = (node, at);
        }
        node_c(before)
    }
}
