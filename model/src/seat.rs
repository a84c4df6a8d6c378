//! How a pot meets the store.

use serde::{Deserialize, Serialize};

/// A kind of seat. The serialised names are kept in saved data: never rename one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub enum Seat {
    MachinedClamped,
    DryFlat,
    DryOrdinary,
    DryWarped,
    BadlyWarped,
    OilFilm,
    Sleeve,
    SunkInMelt,
}
