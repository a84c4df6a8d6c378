//! What is written to the device and to a copy, and read back.
//!
//! Everything stands in an envelope that names the format and its version. The shapes inside are
//! frozen structs of their own, one module a version: a change of a name elsewhere can't make a
//! household's diary unreadable. Only `v1` exists; a later version is read into its own shapes
//! and an earlier one is brought up to it before it becomes a [`Document`].

mod time;
mod v1;

#[cfg(test)]
mod tests;

use model::local_time::LocalTime;
use serde::{Deserialize, Serialize};

use crate::state::document::Document;

/// What a save calls itself.
pub const FORMAT: &str = "duskpot";

/// The version that is written.
pub const VERSION: u32 = 1;

/// Why a text is not a household.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum DecodeError {
    /// It is something else altogether.
    #[error("not a save of this app")]
    NotOurs,
    /// It was written by a newer version of the app. Nothing is wrong with it.
    #[error("written in format version {version}")]
    Newer {
        /// Its version.
        version: u32,
    },
    /// It is one of ours, but its shape is broken; where, in the reader's words.
    #[error("{at}")]
    Shape {
        /// Line, column and what was expected.
        at: String,
    },
    /// It has the right shape, but holds a value that can't be.
    #[error("{at}: {value}")]
    Value {
        /// The place in it, such as `entries[3].at`.
        at: String,
        /// The value.
        value: String,
    },
}

/// A household read back, with when it was written.
#[derive(Debug, Clone, PartialEq)]
pub struct Decoded {
    /// The household.
    pub document: Document,
    /// When it was written.
    pub saved_at: LocalTime,
}

/// How a save is laid out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layout {
    /// As small as can be, for the device's store.
    Compact,
    /// With line ends, for a file that a person may look into.
    Readable,
}

#[derive(Serialize)]
struct Envelope<B> {
    format: &'static str,
    version: u32,
    saved_at: String,
    body: B,
}

/// The head of an envelope of any version.
#[derive(Deserialize)]
struct Head {
    format: String,
    version: u32,
}

#[derive(Deserialize)]
struct Content<B> {
    saved_at: String,
    body: B,
}

/// Writes a household.
///
/// # Errors
///
/// [`DecodeError::Shape`] when it can't be written, which no household that came about by actions
/// gives cause for.
pub fn encode(
    document: &Document,
    saved_at: LocalTime,
    layout: Layout,
) -> Result<String, DecodeError> {
    let envelope = Envelope {
        format: FORMAT,
        version: VERSION,
        saved_at: time::instant(saved_at),
        body: v1::Body::from_document(document),
    };
    let text = match layout {
        Layout::Compact => serde_json::to_string(&envelope),
        Layout::Readable => serde_json::to_string_pretty(&envelope),
    };
    text.map_err(|error| shape(&error))
}

/// Reads a household of any known version.
///
/// # Errors
///
/// [`DecodeError`]; the text is as good as it was, whatever the error.
pub fn decode(text: &str) -> Result<Decoded, DecodeError> {
    let head: Head = serde_json::from_str(text).map_err(|_| DecodeError::NotOurs)?;
    if head.format != FORMAT || head.version == 0 {
        return Err(DecodeError::NotOurs);
    }
    if VERSION < head.version {
        return Err(DecodeError::Newer {
            version: head.version,
        });
    }
    let content: Content<v1::Body> = serde_json::from_str(text).map_err(|error| shape(&error))?;
    let saved_at = time::read_instant(&content.saved_at)
        .ok_or_else(|| DecodeError::value("saved_at", &content.saved_at))?;
    Ok(Decoded {
        document: content.body.into_document()?,
        saved_at,
    })
}

impl DecodeError {
    fn value(at: &str, value: impl std::fmt::Display) -> Self {
        Self::Value {
            at: at.to_owned(),
            value: value.to_string(),
        }
    }

    /// The same error, one step further out.
    fn within(self, outer: &str) -> Self {
        match self {
            Self::Value { at, value } => Self::Value {
                at: format!("{outer}.{at}"),
                value,
            },
            other => other,
        }
    }
}

fn shape(error: &serde_json::Error) -> DecodeError {
    DecodeError::Shape {
        at: error.to_string(),
    }
}
