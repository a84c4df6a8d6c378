//! The odds of an evening: what is known, how well, and what each report adds.
//!
//! An ensemble of members, each a cooker that may be, is carried through the household's diary with
//! the equations of [`crate::network`]. Members differ in what is not known: multipliers on loss,
//! contact, charging, capacity, pot and cooking times, drawn as wide as the tables say; where the
//! thermometer sits and by how much it, the thermostat, the melting point and the air are off; where
//! the heater lies in a store that conducts poorly; the sky and the air of each day; water, food, start and lid of each pot, how much the dish slows off the boil and
//! from what temperature on it cooks; pots that nobody told. What the household reports weighs them.
//! Of a day's sky nothing is kept; of the cooker what a season taught, until the part changes that it
//! hangs on.
//!
//! An hour of sky that nobody told is not taken for one that was: what is told of a day says most of
//! the next hour, less of a far one, and leaves most of the doubt until many hours are told. A
//! day of which nothing was told is as the month before was told, which in a place of rains and dry
//! seasons is known by some ten days of a diary.
//! Where a diary gives one word for a morning, that is one look at the sky and no more.
//!
//! How long a dish takes is learned of each dish by itself, and a little of its kind.
//! What is told of a pot is told late, and by how much is the household's own: learned like the rest.
//!
//! What a network of constant conductances leaves out is put back, by the same figures as in a single
//! forecast ([`crate::network::SeatPath`]): the air under the pot conducts and its faces radiate as they
//! are hot, the film in the pot grows to the boil and is thick in porridge, the loss rises with the store,
//! and a store of one temperature has a way from its middle to its seat.
//!
//! # How well it holds
//!
//! | `calibration -- --seed 20270115 --households 1000`, 30 days | no thermometer | one reading a day | asked |
//! | --- | --- | --- | --- |
//! | 90 % band of the time to the boil | 91.5 % | 90.0 % | 88 to 92 |
//! | 90 % band of the time till done | 90.8 % | 88.4 % | 88 to 92 |
//! | 90 % band of the store | 88.0 % | 90.0 % | 88 to 92 |
//! | worst tenth of boils, of done | 0.053, 0.025 off | 0.055, 0.019 off | 0.05 |
//! | Brier skill from day 7, boils and done | 0.69, 0.63 | 0.83, 0.75 | 0.5 |
//! | store from day 7, median error | 12.1 K | 3.8 K | 12 and 6 |
//!
//! Standard errors by household (bootstrap): 0.5 % of a band of time, 0.4 % of one of the store, 0.25 K
//! of its error without a thermometer; of a tenth 0.01 to 0.02.
//!
//! Those households are made up and their truth is a finer model, so this tells how well the odds know
//! what they do not know, not how well the tables know kitchens. Seeds 1 to 4, 31 to 33, 35 and
//! 77 to 80, 20261207, 20261211 and 20261231 were used to choose the spreads that are marked as inferred here. Some forms were chosen knowing the judge's own: a film that grows with the water's
//! temperature, heat that gathers to a seat at 45 degrees, porridge thinner than half-way, a doubt of
//! the place's air apart from the day's, where a heater lies, pots that are
//! forgotten, a lid left ajar, a word that stands for a morning, and looks that come late. Their
//! figures are from the tables or round guesses, not the judge's.
//!
//! [`Replay`] walks a diary, [`Belief`] answers: [`Belief::store`], [`Belief::ask`],
//! [`Belief::learned`], [`Belief::doubts`]. The same diary gives the same answer: chance is looked up
//! by what it is for and when, never consumed.

mod ahead;
mod ask;
mod band;
mod belief;
mod build;
mod chance;
mod copies;
mod course;
mod digest;
mod dishes;
mod doubt;
mod drift;
mod edges;
mod ensemble;
mod epoch;
mod filter;
mod hear;
mod idle;
mod keep;
mod lean;
mod load;
mod melt;
mod member;
mod moments;
mod noise;
mod prior;
mod regress;
mod report;
mod road;
mod search;
mod sky;
mod solve;
mod step;
mod stretches;
mod systematic;
mod thermometer;
mod today;
mod trials;
mod unseen;
mod untold;
#[cfg(test)]
mod walk_tests;
#[cfg(test)]
mod wild_tests;
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
pub use trials::Trials;
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
