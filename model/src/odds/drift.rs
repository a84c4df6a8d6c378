//! How what was learned grows old overnight.

use super::ensemble::{Ensemble, column};
use super::noise::{Noise, Purpose};
use super::prior::{DRIFT_A_DAY, DRIFTING, MULTIPLIERS, OFFSET_A_DAY, Offset};
use crate::local_time::Day;

impl Ensemble {
    /// What was learned grows a day older: it goes back towards what was known at first, whose spread
    /// it never exceeds by that.
    pub(super) fn drift(&mut self, log_sd: &[f64; MULTIPLIERS], day: Day, seed: u64) {
        let noise = Noise::new(seed, Purpose::Drift).at(i64::from(day.0));
        let keeps = (1.0 - DRIFT_A_DAY * DRIFT_A_DAY).sqrt();
        for multiplier in DRIFTING {
            let place = multiplier.index();
            let sd = DRIFT_A_DAY * log_sd.get(place).copied().unwrap_or(0.0);
            let noise = noise.at(multiplier as i64);
            for member in 0..self.members() {
                let log = keeps * self.get(column::LOG + place, member) + sd * noise.normal(member);
                self.set(column::LOG + place, member, log);
                self.set(column::FACTOR + place, member, libm::exp(log));
            }
        }
    }

    /// A thermometer is put into another spot: what it is off by there is another, and so is where it
    /// sits in a store that is not at one temperature.
    pub(super) fn move_thermometer(&mut self, sd_k: f64, day: Day, seed: u64) {
        let noise = Noise::new(seed, Purpose::Thermometer).at(i64::from(day.0));
        let keeps = (1.0 - OFFSET_A_DAY * OFFSET_A_DAY).sqrt();
        // The first draws are the offset's.
        for (offset, sd, noise) in [
            (Offset::Thermometer, sd_k, noise),
            (Offset::Place, 1.0, noise.at(1)),
        ] {
            let place = column::OFFSET + offset.index();
            for member in 0..self.members() {
                let moved = OFFSET_A_DAY * sd * noise.normal(member);
                self.set(place, member, keeps * self.get(place, member) + moved);
            }
        }
    }
}
