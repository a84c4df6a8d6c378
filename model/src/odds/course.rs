//! The way of store and pot through the evening, as it may be.

use super::ensemble::column;
use super::{Band, Belief, band_of};
use crate::journal::Meal;
use crate::local_time::LocalTime;

/// Members that are followed: enough for a band that is drawn.
const FOLLOWED: usize = 128;

/// Store and pot at an instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CourseBand {
    /// When.
    pub at: LocalTime,
    /// The store, mixed. [°C]
    pub store_c: Band<f64>,
    /// What is in the pot, while the one that is asked about is in. [°C]
    pub pot_c: Option<Band<f64>>,
}

impl Belief {
    /// Store and pot of a meal at some instants, the earliest first; none of them before
    /// [`Belief::at`]. The pot stays in until the meal is eaten, or until it came out.
    pub fn course(
        &self,
        meal: &Meal,
        put_in: LocalTime,
        times: impl Iterator<Item = LocalTime>,
    ) -> Vec<CourseBand> {
        let few = self.thinned(FOLLOWED);
        let build = &few.epoch.build;
        let running = few.pot.as_ref().map(|pot| &*pot.load);
        let put_in = put_in.max(few.at());
        let load = few.epoch.load(meal, put_in, few.air_c(put_in));
        let leaves_at = meal.leaves_at().max(put_in);
        let mut ensemble = few.ensemble.clone();
        let (mut is_in, mut is_out) = (false, false);
        let mut course = Vec::new();
        for at in times {
            let at = at.max(ensemble.at);
            if !is_in && put_in <= at {
                few.carry(&mut ensemble, running, false, put_in);
                ensemble.take_out();
                ensemble.bring_in(build, few.air_c(put_in));
                ensemble.put_in(build, &load, meal, few.settings.seed);
                is_in = true;
            }
            if is_in && !is_out && leaves_at < at {
                few.carry(&mut ensemble, Some(&load), false, leaves_at);
                ensemble.take_out();
                is_out = true;
            }
            let in_it = match (is_in, is_out) {
                (false, _) => running,
                (true, false) => Some(&load),
                (true, true) => None,
            };
            few.carry(&mut ensemble, in_it, false, at);
            course.push(CourseBand {
                at,
                store_c: band_of(&ensemble, |all, one| all.store_c(build, one)),
                pot_c: (is_in && !is_out)
                    .then(|| band_of(&ensemble, |all, one| all.get(column::POT_C, one))),
            });
        }
        course
    }
}
