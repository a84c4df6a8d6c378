//! Reading the fields of a JSON object, each refusal with the field's path.

use serde_json::{Map, Value};

/// An object and its path in the case.
#[derive(Clone, Copy)]
pub(crate) struct Fields<'j> {
    map: &'j Map<String, Value>,
    path: &'j str,
}

impl<'j> Fields<'j> {
    /// The object at a path; the path of the case itself is empty.
    pub(crate) fn new(value: &'j Value, path: &'j str) -> Result<Self, String> {
        match value.as_object() {
            Some(map) => Ok(Self { map, path }),
            None => Err(refused(path, "must be an object")),
        }
    }

    /// The path of a field.
    pub(crate) fn path(&self, key: &str) -> String {
        if self.path.is_empty() {
            key.into()
        } else {
            format!("{}.{key}", self.path)
        }
    }

    /// Refuses keys that are not known, where a misspelt optional key would pass for an absent one.
    pub(crate) fn only(&self, known: &[&str]) -> Result<(), String> {
        match self.map.keys().find(|key| !known.contains(&key.as_str())) {
            Some(key) => Err(refused(&self.path(key), "is not a known field")),
            None => Ok(()),
        }
    }

    /// Whether a field is there and not null.
    pub(crate) fn has(&self, key: &str) -> bool {
        self.map.get(key).is_some_and(|value| !value.is_null())
    }

    /// A field that must be there, null or not.
    pub(crate) fn get(&self, key: &str) -> Result<&'j Value, String> {
        self.map
            .get(key)
            .ok_or_else(|| refused(&self.path(key), "is missing"))
    }

    /// A list.
    pub(crate) fn list(&self, key: &str) -> Result<&'j Vec<Value>, String> {
        self.get(key)?
            .as_array()
            .ok_or_else(|| refused(&self.path(key), "must be a list"))
    }

    /// A text.
    pub(crate) fn text(&self, key: &str) -> Result<&'j str, String> {
        self.get(key)?
            .as_str()
            .ok_or_else(|| refused(&self.path(key), "must be a text"))
    }

    /// A finite number.
    pub(crate) fn number(&self, key: &str) -> Result<f64, String> {
        number(self.get(key)?, &self.path(key))
    }

    /// A finite number, or null.
    pub(crate) fn number_or_null(&self, key: &str) -> Result<Option<f64>, String> {
        match self.get(key)? {
            Value::Null => Ok(None),
            value => number(value, &self.path(key)).map(Some),
        }
    }

    /// A number that is zero or more.
    pub(crate) fn not_negative(&self, key: &str) -> Result<f64, String> {
        let value = self.number(key)?;
        if value < 0.0 {
            return Err(refused(&self.path(key), "must not be negative"));
        }
        Ok(value)
    }

    /// A number greater than zero.
    pub(crate) fn positive(&self, key: &str) -> Result<f64, String> {
        let value = self.number(key)?;
        if value <= 0.0 {
            return Err(refused(&self.path(key), "must be greater than 0"));
        }
        Ok(value)
    }

    /// A temperature above absolute zero, degC.
    pub(crate) fn temperature(&self, key: &str) -> Result<f64, String> {
        let value = self.number(key)?;
        if value <= -273.15 {
            return Err(refused(&self.path(key), "lies below absolute zero"));
        }
        Ok(value)
    }
}

/// A finite number.
pub(crate) fn number(value: &Value, path: &str) -> Result<f64, String> {
    value
        .as_f64()
        .filter(|value| value.is_finite())
        .ok_or_else(|| refused(path, "must be a finite number"))
}

/// A refusal with its field.
pub(crate) fn refused(path: &str, why: &str) -> String {
    if path.is_empty() {
        why.into()
    } else {
        format!("{path}: {why}")
    }
}
