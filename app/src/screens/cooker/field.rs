//! The fields of the forms, and what they are about.
//!
//! Plain enums, so that a form is one type and its code is there once.

use model::cooker::Cooker;

use crate::i18n::format::Formats;
use crate::present::cooker::measure::Number;
use crate::present::cooker::{parts, place};
use crate::reactive::*;
use crate::state::document::Household;

/// A field of a form.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Field {
    /// Of a cooker.
    Part(parts::Key),
    /// Of the household.
    Place(place::Key),
}

impl From<parts::Key> for Field {
    fn from(key: parts::Key) -> Self {
        Self::Part(key)
    }
}

impl From<place::Key> for Field {
    fn from(key: place::Key) -> Self {
        Self::Place(key)
    }
}

impl Field {
    /// How the field measures, if it holds a number.
    pub(super) fn number(self) -> Option<Number> {
        match self {
            Self::Part(key) => parts::number(key),
            Self::Place(key) => place::number(key),
        }
    }

    /// Whether it is a button, which holds nothing.
    pub(super) fn is_button(self) -> bool {
        match self {
            Self::Part(key) => {
                matches!(
                    key,
                    parts::Key::AddMedium
                        | parts::Key::RemoveMedium(_)
                        | parts::Key::AddLayer
                        | parts::Key::RemoveLayer(_)
                ) || matches!(key, parts::Key::Way(way) if way.is_button())
            }
            Self::Place(key) => matches!(key, place::Key::Guess | place::Key::Same),
        }
    }
}

/// What a form is about; none while it is gone.
#[derive(Clone, Copy)]
pub(super) enum Subject {
    /// A cooker, with fields of its own.
    Cooker(Memo<Option<Cooker>>),
    /// The household, with fields of its own.
    Household(Memo<Option<Household>>),
}

impl Subject {
    /// What the field shows. Followed.
    pub(super) fn text(self, field: Field, formats: &Formats) -> Option<String> {
        match (self, field) {
            (Self::Cooker(cooker), Field::Part(key)) => {
                cooker.with(|cooker| Some(parts::text(cooker.as_ref()?, key, formats)))
            }
            (Self::Household(household), Field::Place(key)) => {
                household.with(|household| Some(place::text(household.as_ref()?, key, formats)))
            }
            _ => None,
        }
    }

    /// Whether the text says what the field shows. Followed.
    pub(super) fn says(self, field: Field, text: &str, formats: &Formats) -> Option<bool> {
        match (self, field) {
            (Self::Cooker(cooker), Field::Part(key)) => {
                cooker.with(|cooker| Some(parts::says(cooker.as_ref()?, key, text, formats)))
            }
            (Self::Household(household), Field::Place(key)) => household
                .with(|household| Some(place::says(household.as_ref()?, key, text, formats))),
            _ => None,
        }
    }

    /// The text after a press of a step button. Followed.
    pub(super) fn stepped(
        self,
        field: Field,
        typed: &str,
        direction: i32,
        formats: &Formats,
    ) -> Option<String> {
        match (self, field) {
            (Self::Cooker(cooker), Field::Part(key)) => cooker.with(|cooker| {
                let cooker = cooker.as_ref()?;
                Some(parts::stepped(cooker, key, typed, direction, formats))
            }),
            (Self::Household(household), Field::Place(key)) => household.with(|household| {
                let household = household.as_ref()?;
                Some(place::stepped(household, key, typed, direction, formats))
            }),
            _ => None,
        }
    }
}
