//! Members that go on as copies of others.

use super::build::small;
use super::ensemble::{Ensemble, column};
use super::systematic::systematic;

impl Ensemble {
    /// Each member becomes a copy of the one named, all of one weight. The names rise.
    pub(super) fn become_copies(&mut self, of: &[usize]) {
        let mut moved = vec![0.0; self.members()];
        for column in 0..column::COUNT {
            if !self.is_handed_on(column) {
                continue;
            }
            let values = self.column_mut(column);
            for (to, from) in moved.iter_mut().zip(of) {
                *to = values.get(*from).copied().unwrap_or(0.0);
            }
            values.copy_from_slice(&moved);
        }
        self.phase = of
            .iter()
            .map(|from| self.phase.get(*from).copied().unwrap_or_default())
            .collect();
        let even = 1.0 / small(self.members());
        self.weight.fill(even);
    }

    /// So many members drawn in proportion to their weights, all of one weight: fewer to ask.
    pub(super) fn thinned(&self, members: usize, start: f64) -> Self {
        let of = systematic(&self.weight, members, start);
        let mut thin = Self::new(members, self.at);
        thin.indoors = self.indoors;
        thin.cooked = self.cooked;
        for column in 0..column::COUNT {
            for (to, from) in of.iter().enumerate() {
                thin.set(column, to, self.get(column, *from));
            }
        }
        for (to, from) in of.iter().enumerate() {
            thin.phase[to] = self.phase[*from];
        }
        thin
    }
}
