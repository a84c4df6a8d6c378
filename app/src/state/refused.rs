//! Why an action was not carried out: which field, and what is wrong with it.

use model::local_time::LocalTime;

/// An action that was not carried out. Nothing was changed.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{field:?}: {wrong:?}")]
pub struct Refused {
    /// The field that holds what is wrong.
    pub field: Field,
    /// What is wrong with it.
    pub wrong: Wrong,
}

/// What is wrong with a field.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Wrong {
    /// It is no number, or not a finite one.
    NotANumber,
    /// It is empty.
    Empty,
    /// It has too many letters.
    TooLong {
        /// The most it can have.
        n_most: usize,
    },
    /// Below the least it can be.
    TooLow {
        /// The least, in the field's own unit.
        least: f64,
    },
    /// Above the most it can be.
    TooHigh {
        /// The most, in the field's own unit.
        most: f64,
    },
    /// More hours of sun than the day has.
    SunExceedsDay {
        /// The hours it has. [h]
        possible_h: f64,
    },
    /// More than the pot holds.
    PotTooSmall {
        /// What it holds. [L]
        holds_l: f64,
    },
    /// A time that has not come yet.
    InFuture,
    /// A time before something that must come first.
    Before {
        /// The earliest it can be.
        earliest: LocalTime,
    },
    /// A time after something that must come later.
    After {
        /// The latest it can be.
        latest: LocalTime,
    },
    /// The night is given as warmer than the day.
    NightWarmerThanDay,
    /// What was to be changed is not there any more.
    Gone,
    /// A pot is in the cooker already.
    MealRunning,
    /// The entry is no meal.
    NotAMeal,
    /// The only cooker can't be erased.
    LastCooker,
    /// More of these than are kept.
    TooMany {
        /// The most that are kept.
        n_most: usize,
    },
}

impl Field {
    /// A refusal of this field.
    pub fn refuse(self, wrong: Wrong) -> Refused {
        Refused { field: self, wrong }
    }

    /// The number, if it is finite and within `least..=most`.
    ///
    /// # Errors
    ///
    /// [`Refused`] with this field and the bound that was passed.
    pub fn within(self, value: f64, (least, most): (f64, f64)) -> Result<f64, Refused> {
        if !value.is_finite() {
            Err(self.refuse(Wrong::NotANumber))
        } else if value < least {
            Err(self.refuse(Wrong::TooLow { least }))
        } else if most < value {
            Err(self.refuse(Wrong::TooHigh { most }))
        } else {
            Ok(value)
        }
    }

    /// The time, if it is not before `earliest`.
    ///
    /// # Errors
    ///
    /// [`Wrong::Before`].
    pub fn not_before(self, at: LocalTime, earliest: LocalTime) -> Result<LocalTime, Refused> {
        if at < earliest { Err(self.refuse(Wrong::Before { earliest })) } else { Ok(at) }
    }

    /// The time, if it is not after `latest`.
    ///
    /// # Errors
    ///
    /// [`Wrong::After`].
    pub fn not_after(self, at: LocalTime, latest: LocalTime) -> Result<LocalTime, Refused> {
        if latest < at { Err(self.refuse(Wrong::After { latest })) } else { Ok(at) }
    }
}
