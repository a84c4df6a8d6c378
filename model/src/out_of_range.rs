//! The one way in which the description of a cooker can be wrong: a quantity outside its range.

use serde::{Deserialize, Serialize};
use thiserror::Error;

/// The quantity that a person has to look at again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// Inner radius of the jacket, m.
    InnerRadius,
    /// Inner length of the jacket, m.
    InnerLength,
    /// Inner width of the jacket, m.
    InnerWidth,
    /// Inner height of the jacket, m.
    InnerHeight,
    /// Thickness of one layer of the jacket, m.
    LayerThickness,
    /// Number of layers of the jacket.
    LayerCount,
    /// Emissivity of a face of an air layer.
    Emissivity,
    /// Measured heat loss, W/K.
    MeasuredLoss,
    /// Measured heat capacity of the jacket, J/K.
    MeasuredCapacity,
    /// Temperature of the store, degC.
    StoreTemperature,
    /// Temperature of the air, degC.
    AirTemperature,
    /// Volume of the pot, L.
    PotVolume,
    /// Pressure of the gas between two walls, Pa.
    Pressure,
    /// Conductivity of a part, W/mK.
    Conductivity,
}

/// A quantity outside the range for which the model holds.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[error("{quantity:?} is {value}, outside {least} to {most}")]
pub struct OutOfRange {
    /// Which quantity.
    pub quantity: Quantity,
    /// What was given; may be not a number.
    pub value: f64,
    /// Least value allowed.
    pub least: f64,
    /// Greatest value allowed.
    pub most: f64,
}

/// Gives the value back if it lies in the range, ends included.
///
/// # Errors
///
/// [`OutOfRange`] with the value when it lies outside or is not a number.
pub fn in_range(quantity: Quantity, value: f64, least: f64, most: f64) -> Result<f64, OutOfRange> {
    if (least..=most).contains(&value) {
        Ok(value)
    } else {
        Err(OutOfRange {
            quantity,
            value,
            least,
            most,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ends_are_allowed_and_nan_is_not() {
        assert!(in_range(Quantity::InnerRadius, 0.1, 0.1, 1.0).is_ok());
        assert!(in_range(Quantity::InnerRadius, 1.0, 0.1, 1.0).is_ok());
        assert!(in_range(Quantity::InnerRadius, 1.1, 0.1, 1.0).is_err());
        assert!(in_range(Quantity::InnerRadius, f64::NAN, 0.1, 1.0).is_err());
    }
}
