//! Names of table rows as text: media, dishes, pots and the like.
//!
//! The model promises never to rename them; the test beside this file freezes the list.

use serde::Serialize;
use serde::de::value::{Error, StrDeserializer};
use serde::de::{Deserialize, IntoDeserializer};

use crate::state::saved::DecodeError;

/// The name of a table row.
pub(super) fn name<T: Serialize>(row: T) -> String {
    match serde_json::to_value(row) {
        Ok(serde_json::Value::String(name)) => name,
        // A row without a plain name can't be read back either, and the test sees to it that
        // there is none.
        _ => String::new(),
    }
}

/// The table row of a name.
pub(super) fn row<T: for<'de> Deserialize<'de>>(at: &str, name: &str) -> Result<T, DecodeError> {
    let text: StrDeserializer<'_, Error> = name.into_deserializer();
    T::deserialize(text).map_err(|_| DecodeError::value(at, name))
}
