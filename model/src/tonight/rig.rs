//! A household's cooker put together for the network.

use crate::cooker::Cooker;
use crate::enthalpy::EnthalpyCurve;
use crate::journal::Meal;
use crate::network::{Network, NetworkParts, Pot};
use crate::panel::HeatTable;
use crate::place::{AirYear, Place};
use crate::sun::Setting;
use crate::tonight::TonightError;
use crate::water::CP_J_KGK;

/// Where the household lives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// On earth, with the household's clock.
    pub place: Place,
    /// The air through the year.
    pub air: AirYear,
}

/// How far the answer leans: each factor multiplies what the tables and the cooker's description
/// give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leaning {
    /// On the jacket's loss.
    pub loss: f64,
    /// On the contact conductance.
    pub contact: f64,
    /// On what the heater gets from the sun.
    pub charging: f64,
    /// On the time the dish takes.
    pub cooking_time: f64,
    /// Added to a thermometer's reading. [K]
    pub reading_k: f64,
}
