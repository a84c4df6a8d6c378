//! What one look at the thermometer would be worth.

use super::ask::Until;
use super::noise::{Noise, Purpose};
use super::report;
use super::{Band, Belief, Chance};
use crate::journal::Meal;
use crate::local_time::LocalTime;

/// So many readings are imagined.
const IMAGINED: usize = 128;
/// Odds beyond these are nearly sure either way.
const DECIDED: (f64, f64) = (0.1, Chance::NINE_IN_TEN);

/// What a reading of the thermometer now may do to the odds of a meal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ReadingWorth {
    /// Chance that the meal is ready, as things are.
    pub p_now: f64,
    /// The same after a reading, over the readings that may come.
    pub p_after: Band<f64>,
    /// How often a reading would leave at least nine chances in ten, or at most one.
    pub decides: f64,
    /// The same without a reading: 1 or 0.
    pub decided_now: f64,
    /// Mean of `p (1 - p)` after a reading over the same now: what is left of not knowing. 0 where a
    /// reading tells all, 1 where it tells nothing.
    pub doubt_left: f64,
}

impl Belief {
    /// What a thermometer's reading now would be worth for a meal.
    ///
    /// Each member in turn is taken for the truth and its store read with the thermometer's error;
    /// the others are weighed by that reading.
    pub fn reading_worth(&self, meal: &Meal, put_in: LocalTime) -> ReadingWorth {
        let build = &self.epoch.build;
        let fates = self.fates(meal, put_in, Until::PotsOut);
        let (weight, members) = (&self.ensemble.weight, self.ensemble.members());
        let all = &self.ensemble;
        let shown_c: Vec<f64> = (0..members)
            .map(|member| all.sensed_c(build, member) + all.thermometer_k(member))
            .collect();
        let ready: Vec<bool> = (0..members).map(|member| fates.is_ready(member)).collect();
        let thermometer = self.settings.thermometer;
        let noise = Noise::new(self.settings.seed, Purpose::Reading).at(self.at().0);
        let truths = super::systematic::systematic(weight, IMAGINED, noise.uniform(0));
        let after: Vec<f64> = truths
            .iter()
            .enumerate()
            .filter_map(|(turn, truth)| {
                let error_k = thermometer.own_sd_k() * noise.normal(turn + 1);
                let read_c = shown_c.get(*truth)? + error_k;
                let (mut all, mut good) = (0.0, 0.0);
                for ((shown_c, ready), weight) in shown_c.iter().zip(&ready).zip(weight) {
                    let likely = weight * report::reading(read_c, *shown_c, thermometer);
                    all += likely;
                    good += if *ready { likely } else { 0.0 };
                }
                (0.0 < all).then(|| good / all)
            })
            .collect();

        let p_now = fates.p_done();
        let count = super::build::small(after.len()).max(1.0);
        let is_decided = |p: f64| f64::from(u8::from(p <= DECIDED.0 || DECIDED.1 <= p));
        let doubt = |p: f64| p * (1.0 - p);
        let left = after.iter().map(|p| doubt(*p)).sum::<f64>() / count;
        ReadingWorth {
            p_now,
            p_after: Band::of(after.iter().map(|p| (*p, 1.0))),
            decides: after.iter().map(|p| is_decided(*p)).sum::<f64>() / count,
            decided_now: is_decided(p_now),
            doubt_left: if 0.0 < doubt(p_now) {
                left / doubt(p_now)
            } else {
                0.0
            },
        }
    }
}
