//! What the panel makes of the light, and how much of it becomes heat in the resistor.
//!
//! A data sheet ([`Datasheet`]) becomes the five parameters of a single-diode model
//! ([`DeSoto`]); light and cell temperature turn these into a curve of current against voltage
//! ([`SingleDiode`]); panels wired together are an [`Array`]; a [`Heater`] sits on that curve
//! where its own line crosses it, or takes the maximum power through a tracker.
//! [`HeatTable`] holds the heat of one such pair ready for quick reading, and [`best_resistance`]
//! finds the element that suits the panel and the sky; [`Taps`] are elements that are switched.
//!
//! Everything here is a pure function. This module knows nothing of the store that is heated:
//! a thermostat that cuts the heater out is the caller's.

mod array;
mod datasheet;
mod diode;
mod element;
mod error;
mod fit;
mod heater;
mod matching;
mod table;
mod taps;

pub use array::Array;
pub use datasheet::Datasheet;
pub use diode::{OperatingPoint, SingleDiode};
pub use element::Element;
pub use error::PanelError;
pub use fit::{BAND_GAP_EV, BAND_GAP_SLOPE_K, DeSoto, REFERENCE_CELL_C, REFERENCE_W_M2};
pub use heater::{Drive, Heater};
pub use matching::{BestResistance, best_resistance, match_share};
pub use table::HeatTable;
pub use taps::{Joined, MAX_ELEMENTS, Tap, Taps, Threshold};

#[cfg(test)]
mod laws;
