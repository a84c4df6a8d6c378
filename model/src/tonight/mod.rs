//! The evening's question: what is in the store now, and will this pot boil on it?
//!
//! [`Evening`] carries the store from the first logged day to now, once for each [`Leaning`]: the
//! figures as they stand, leaning against the cook, and leaning for the cook. [`Evening::ask`]
//! puts a pot in and tells what happens to it, and [`Evening::help`] solves for what would make it
//! boil. Nothing here knows a screen or a clock; `now` is always given.

mod account;
mod answer;
mod bottleneck;
mod build;
mod course;
mod evening;
mod figures;
mod help;
mod hold;
mod leaning;
mod rig;
mod stay;
mod take;
mod track;
mod wear;
mod weather;

#[cfg(test)]
mod tests;

pub use account::HeatAccount;
pub use answer::{Answer, Forecast, LatestPutIn, Verdict};
pub use bottleneck::{Better, Trial};
pub use evening::{Doubt, Evening, StoreNow};
pub use figures::Figures;
pub(crate) use help::{FIRE_W, LEAST_SHARE, MOST_OFFERED, PUT_OFF_S, SUN_WARM_C, WATER_STEPS};
pub use help::{Help, Offers};
pub use hold::CoolDown;
pub(crate) use hold::water;
pub use leaning::Leaning;
pub(crate) use rig::{POT_IN_SEAT_C, WIND_M_S};
pub use rig::{Rig, Site};
pub use take::{DayTake, LightLine, YearTake, day_take, light_lines, year_take};
pub use track::Point;
pub use wear::{LastBoil, Wear, worn};
pub use weather::{ORDINARY_SKY, Weather};

use crate::concentrator::ConcentratorError;
use crate::error::ModelError;
use crate::out_of_range::OutOfRange;
use crate::panel::PanelError;
use crate::sun::SunError;

/// A part of the cooker, the place or the log that no evening can be worked out from.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum TonightError {
    /// The heat network refuses a part.
    #[error(transparent)]
    Network(#[from] ModelError),
    /// A measure is outside its range.
    #[error(transparent)]
    Part(#[from] OutOfRange),
    /// The panel or the heater makes no sense.
    #[error(transparent)]
    Panel(#[from] PanelError),
    /// The concentrator makes no sense.
    #[error(transparent)]
    Concentrator(#[from] ConcentratorError),
    /// The place or the sky log makes no sense.
    #[error(transparent)]
    Sun(#[from] SunError),
    /// There is no cooker to walk with.
    #[error("there is no cooker")]
    NoCooker,
}
