//! What can be wrong with the numbers given to the model.

use thiserror::Error;

/// A quantity the model refuses, or a run it could not finish.
///
/// `quantity` names the parameter with its unit, as the field of the public struct is called.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
#[non_exhaustive]
pub enum ModelError {
    /// The value is infinite or not a number.
    #[error("{quantity} is not a finite number")]
    NotFinite {
        /// The parameter.
        quantity: &'static str,
    },
    /// The value must be greater than zero.
    #[error("{quantity} must be greater than 0, not {value}")]
    NotPositive {
        /// The parameter.
        quantity: &'static str,
        /// What was given.
        value: f64,
    },
    /// The value must not be below zero.
    #[error("{quantity} must not be negative, not {value}")]
    Negative {
        /// The parameter.
        quantity: &'static str,
        /// What was given.
        value: f64,
    },
    /// The value lies outside the range in which the model holds.
    #[error("{quantity} must lie between {low} and {high}, not {value}")]
    OutOfRange {
        /// The parameter.
        quantity: &'static str,
        /// What was given.
        value: f64,
        /// Smallest value allowed.
        low: f64,
        /// Largest value allowed.
        high: f64,
    },
    /// The parts are fine one by one but do not fit together.
    #[error("{quantity}: {why}")]
    Inconsistent {
        /// The parameter.
        quantity: &'static str,
        /// What does not fit.
        why: &'static str,
    },
    /// The integrator gave up: the parameters make the network switch or swing without end.
    #[error("no solution within {steps} steps, {time_s} s into the run")]
    StepBudget {
        /// Steps tried.
        steps: u32,
        /// Time reached in the run, s.
        time_s: f64,
    },
}

/// Passes a finite number on.
pub(crate) fn finite(quantity: &'static str, value: f64) -> Result<f64, ModelError> {
    if value.is_finite() {
        Ok(value)
    } else {
        Err(ModelError::NotFinite { quantity })
    }
}

/// Passes a finite number greater than zero on.
pub(crate) fn positive(quantity: &'static str, value: f64) -> Result<f64, ModelError> {
    if finite(quantity, value)? > 0.0 {
        Ok(value)
    } else {
        Err(ModelError::NotPositive { quantity, value })
    }
}

/// Passes a finite number that is zero or more on.
pub(crate) fn not_negative(quantity: &'static str, value: f64) -> Result<f64, ModelError> {
    if finite(quantity, value)? >= 0.0 {
        Ok(value)
    } else {
        Err(ModelError::Negative { quantity, value })
    }
}

/// Passes a finite number between two bounds, themselves allowed, on.
pub(crate) fn within(
    quantity: &'static str,
    value: f64,
    low: f64,
    high: f64,
) -> Result<f64, ModelError> {
    if (low..=high).contains(&finite(quantity, value)?) {
        Ok(value)
    } else {
        Err(ModelError::OutOfRange {
            quantity,
            value,
            low,
            high,
        })
    }
}
