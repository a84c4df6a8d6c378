//! One element or several on a switch.

use crate::panel::{Array, Drive, Heater, OperatingPoint, PanelError, Taps, match_share};
use crate::sun::{IrradianceSeries, PlaneState};

/// What the panels heat.
#[derive(Debug, Clone, PartialEq)]
pub enum Element {
    /// One heating element.
    One(Heater),
    /// Two or three on a switch, always at the position that takes most.
    Switched(Taps),
}

impl Element {
    /// The same at a working temperature, as [`Heater::at_element_c`].
    ///
    /// # Errors
    ///
    /// As there.
    pub fn at_element_c(&self, element_c: f64) -> Result<Self, PanelError> {
        Ok(match self {
            Self::One(heater) => Self::One(heater.at_element_c(element_c)?),
            Self::Switched(taps) => Self::Switched(taps.at_element_c(element_c)?),
        })
    }

    /// Heat in steady light, as [`Heater::heat_w`]. \[W\]
    pub fn heat_w(&self, array: &Array, irradiance_w_m2: f64, cell_c: f64) -> f64 {
        match self {
            Self::One(heater) => heater.heat_w(array, irradiance_w_m2, cell_c),
            Self::Switched(taps) => taps
                .best(array, irradiance_w_m2, cell_c)
                .map_or(0.0, |(_, heat_w)| heat_w),
        }
    }

    /// Mean heat over the states of the light within a step, as [`Heater::mean_heat_w`]. \[W\]
    pub fn mean_heat_w(&self, array: &Array, states: &[PlaneState]) -> f64 {
        match self {
            Self::One(heater) => heater.mean_heat_w(array, states),
            Self::Switched(taps) => taps.mean_heat_w(array, states),
        }
    }

    /// Share of the energy at maximum power over some days that becomes heat, as [`match_share`].
    pub fn match_share(&self, array: &Array, days: &[IrradianceSeries]) -> Option<f64> {
        match self {
            Self::One(heater) => match_share(array, heater, days),
            Self::Switched(taps) => taps.match_share(array, days),
        }
    }

    /// Where the panels work in steady light.
    pub fn works_at(&self, array: &Array, irradiance_w_m2: f64, cell_c: f64) -> OperatingPoint {
        let heater = match self {
            Self::One(heater) => Some(*heater),
            Self::Switched(taps) => taps
                .best(array, irradiance_w_m2, cell_c)
                .map(|(tap, _)| taps.heater_of(&tap)),
        };
        match heater {
            Some(Heater {
                drive: Drive::Direct,
                resistance_ohm,
                wire_ohm,
                ..
            }) => array.on_load(irradiance_w_m2, cell_c, resistance_ohm + wire_ohm),
            _ => array.max_power(irradiance_w_m2, cell_c),
        }
    }

    /// Resistance of the wires. \[ohm\]
    pub fn wire_ohm(&self) -> f64 {
        match self {
            Self::One(heater) => heater.wire_ohm,
            Self::Switched(taps) => taps.wire_ohm(),
        }
    }
}
