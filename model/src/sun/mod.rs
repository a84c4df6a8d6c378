//! How much light falls on the panel, from a place, a day and what the household logged.
//!
//! The chain is: where the sun stands ([`sun_position`]), what a clear sky would give
//! ([`haurwitz_ghi_w_m2`], [`altitude_gain`]), what the logged sky lets through ([`DayLog`]), how that divides
//! into beam and diffuse ([`erbs_split`]), what reaches the tilted panel ([`Plane`]) and how
//! warm its cells become ([`faiman_cell_c`]). [`IrradianceSeries`] runs the chain for a day.
//!
//! Everything here is a pure function. Instants are UTC seconds since 1970-01-01 00:00, days
//! are counted from 1970-01-01 on the household's own clock. This module knows nothing of what
//! a panel makes of the light.

mod calendar;
mod clear_sky;
mod daily;
mod daylight;
mod error;
mod log;
mod plane;
mod position;
mod series;
mod sky;

pub use calendar::{FIRST_DAY, LAST_DAY, day_of_year};
pub use clear_sky::{
    SOLAR_CONSTANT_W_M2, Split, altitude_gain, erbs_split, extraterrestrial_normal_w_m2,
    haurwitz_ghi_w_m2,
};
pub use daily::{ROUNDING_H, SolarDay};
pub use daylight::Daylight;
pub use error::SunError;
pub(crate) use log::{ANGSTROM_RELATIVE_SD, HOURS_IN_COMMON, SHADOWLESS_INDEX};
pub use log::{DayLog, Unlogged};
pub use plane::{Plane, faiman_cell_c};
pub use position::{SunPosition, sun_position};
pub use series::{IrradianceSeries, PlaneState, SeriesStep, Setting, typical_year};
pub use sky::{HourSky, Sky, SkyState};
