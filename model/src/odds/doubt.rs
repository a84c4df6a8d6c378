//! Reports that nothing that is believed can explain.

use super::band::Band;
use super::ensemble::{Ensemble, column};
use super::{band_of, local};
use crate::journal::Felt;
use crate::local_time::LocalTime;

/// A report that the model finds all but impossible. It is kept, it hardly moves the estimate, and
/// it is worth asking about: a slip of the clock, another pot, a cooker that has changed.
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt {
    /// When it was reported for.
    pub at: LocalTime,
    /// What was reported.
    pub report: Report,
    /// What was believed instead.
    pub believed: Believed,
}

/// A report.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Report {
    /// A thermometer showed this. [°C]
    Reading {
        /// The temperature read. [°C]
        store_c: f64,
    },
    /// A hand felt the store.
    Felt(Felt),
    /// The pot boiled.
    BoiledAt(LocalTime),
    /// It did not boil yet.
    NotBoiledBy(LocalTime),
    /// The food was done.
    DoneAt(LocalTime),
    /// It was not done yet.
    NotDoneBy(LocalTime),
}

/// What was believed before a report.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Believed {
    /// The store's temperature. [°C]
    StoreC(Band<f64>),
    /// When it would come about; `None` where it would not.
    Time(Band<Option<LocalTime>>),
}

impl Believed {
    pub(super) fn time(ensemble: &Ensemble, time_s: impl Fn(&Ensemble, usize) -> f64) -> Self {
        Self::Time(band_of(ensemble, time_s).map(local))
    }
}

impl Report {
    /// When something was seen of a pot.
    pub(super) fn at(self) -> Option<LocalTime> {
        match self {
            Self::BoiledAt(at) | Self::NotBoiledBy(at) | Self::DoneAt(at) | Self::NotDoneBy(at) => {
                Some(at)
            }
            Self::Reading { .. } | Self::Felt(_) => None,
        }
    }

    /// A number of its kind.
    pub(super) fn number(self) -> i64 {
        match self {
            Self::Reading { .. } => 0,
            Self::Felt(_) => 1,
            Self::BoiledAt(_) => 2,
            Self::NotBoiledBy(_) => 3,
            Self::DoneAt(_) => 4,
            Self::NotDoneBy(_) => 5,
        }
    }

    /// The members' time that it is about.
    pub(super) fn column(self) -> usize {
        match self {
            Self::DoneAt(_) | Self::NotDoneBy(_) => column::SEEN_DONE,
            _ => column::SEEN_BOIL,
        }
    }
}
