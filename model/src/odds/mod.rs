//! The odds of an evening: what is known, how well, and what each report adds.
//!
//! An ensemble of members, each a cooker that may be, is carried through the household's diary with
//! the equations of [`crate::network`]. Members differ in what is not known: multipliers on loss,
//! contact, charging, capacity, pot and cooking times, drawn as wide as the tables say; the sky and
//! the air of each day; water, start and lid of each pot. What the household reports weighs them. Of
//! a day's sky nothing is kept; of the cooker all, until the part changes that it hangs on.
//!
//! [`Replay`] walks a diary, [`Belief`] answers: [`Belief::store`], [`Belief::ask`],
//! [`Belief::learned`], [`Belief::doubts`]. The same diary gives the same answer: chance is looked up
//! by what it is for and when, never consumed.

mod ask;
mod band;
mod belief;
mod build;
mod chance;
mod course;
mod digest;
mod doubt;
mod drift;
mod edges;
mod ensemble;
mod epoch;
mod filter;
mod keep;
mod load;
mod melt;
mod member;
mod noise;
mod prior;
mod report;
mod road;
mod search;
mod sky;
mod solve;
mod step;
mod thermometer;
mod untold;
#[cfg(test)]
mod walk_tests;
mod worth;

pub use ask::Odds;
pub use band::Band;
pub use belief::{Belief, Learned, Replay, StoreBands};
pub use chance::{Chance, OddsWord};
pub use course::CourseBand;
pub use doubt::{Believed, Doubt, Report};
pub use prior::Multiplier;
pub use report::{Sits, Thermometer};
pub use search::{Improvement, KINDS_OF_HELP};
pub use worth::ReadingWorth;

use crate::local_time::LocalTime;
use ensemble::Ensemble;

/// How an estimate is made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settings {
    /// How many cookers that may be are followed; at least 1.
    pub members: usize,
    /// Where chance begins: another seed is another sample of the same doubts.
    pub seed: u64,
    /// The household's thermometer.
    pub thermometer: Thermometer,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            members: 512,
            seed: 0x00D5_C907,
            thermometer: Thermometer::KITCHEN,
        }
    }
}

/// Local time as members count it. \[s\]
#[expect(clippy::cast_precision_loss, reason = "exact for 285 million years")]
fn seconds(at: LocalTime) -> f64 {
    at.0 as f64
}

/// A member's time to the nearest second; `None` where it never comes.
fn local(time_s: f64) -> Option<LocalTime> {
    #[expect(clippy::cast_possible_truncation, reason = "a time of this era")]
    time_s.is_finite().then(|| LocalTime(time_s.round() as i64))
}

/// What the members say of one thing.
fn band_of(ensemble: &Ensemble, value: impl Fn(&Ensemble, usize) -> f64) -> Band<f64> {
    let members = ensemble.weight.iter().enumerate();
    Band::of(members.map(|(member, weight)| (value(ensemble, member), *weight)))
}

#[cfg(test)]
mod tests;
