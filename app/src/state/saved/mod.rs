//! What is written to the device and to a copy, and read back.
//!
//! Everything stands in an envelope that names the format and its version. The names in a save are
//! written out beside the document's own, one module a version: a change of a name elsewhere can't
//! make a household's diary unreadable. Only `v1` exists; a later version comes with a step that
//! brings the tree of an earlier save up to it before it is read.
//!
//! The reading and writing is our own, over serde_json's parser and its writing of numbers and
//! texts: what serde derives for the same shapes is five times the code, and a phone downloads it.

pub(crate) mod reader;
pub(crate) mod shape;
mod time;
mod tree;
mod v1;
pub(crate) mod writer;

#[cfg(test)]
mod tests;

use model::local_time::LocalTime;

use crate::state::bench::Text;
use crate::state::document::Document;
use crate::state::saved::reader::{Node, Read};
use crate::state::saved::writer::{Record, Write, Writer};

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
    /// It is one of ours, but its shape is broken.
    #[error("{at}")]
    Shape {
        /// The place in it, such as `entries[3].at`, and what was expected there.
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
    /// Readings of files that came along in a copy.
    pub texts: Vec<Text>,
}

/// How a save is laid out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Layout {
    /// As small as can be, for the device's store.
    Compact,
    /// With line ends, for a file that a person may look into.
    Readable,
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
    encode_with(document, saved_at, layout, &Vec::new())
}

/// Writes a household with the readings of files that lie beside it.
///
/// # Errors
///
/// As [`encode`].
pub fn encode_with(
    document: &Document,
    saved_at: LocalTime,
    layout: Layout,
    texts: &Vec<Text>,
) -> Result<String, DecodeError> {
    let mut out = Writer::new(layout);
    let mut fields: Vec<(&str, &dyn Write)> = vec![
        ("format", &FORMAT),
        ("version", &VERSION),
        ("saved_at", &saved_at),
        ("body", document),
    ];
    if !texts.is_empty() {
        fields.push(("texts", texts));
    }
    Record(&fields).write(&mut out);
    out.finish().map_err(|error| DecodeError::Shape {
        at: error.to_string(),
    })
}

/// Reads a household of any known version.
///
/// # Errors
///
/// [`DecodeError`]; the text is as good as it was, whatever the error.
pub fn decode(text: &str) -> Result<Decoded, DecodeError> {
    let tree = serde_json::from_str(text).map_err(|error| unreadable(text, &error))?;
    let envelope = Node::start(&tree);
    let version = version(&envelope).ok_or(DecodeError::NotOurs)?;
    if VERSION < version {
        return Err(DecodeError::Newer { version });
    }
    let saved_at = envelope.get("saved_at").map_err(|error| *error)?;
    let texts = envelope.get::<Option<_>>("texts").map_err(|error| *error)?;
    let body = envelope.field("body").map_err(|error| *error)?.restart();
    Ok(Decoded {
        document: v1::read(&body)?,
        saved_at,
        texts: texts.unwrap_or_default(),
    })
}

/// Writes one value, without an envelope: a message to another part of the app.
pub(crate) fn message(value: &dyn Write) -> Option<String> {
    let mut out = Writer::new(Layout::Compact);
    value.write(&mut out);
    out.finish().ok()
}

/// Reads such a message.
pub(crate) fn read_message<T: Read>(text: &str) -> Option<T> {
    let tree = serde_json::from_str(text).ok()?;
    T::read(&Node::start(&tree)).ok()
}

/// What a text is that is no JSON.
fn unreadable(text: &str, error: &serde_json::Error) -> DecodeError {
    if text.contains(FORMAT) {
        DecodeError::Shape {
            at: error.to_string(),
        }
    } else {
        DecodeError::NotOurs
    }
}

/// The version of an envelope, if it is one of ours.
fn version(envelope: &Node<'_>) -> Option<u32> {
    let format: String = envelope.get("format").ok()?;
    let version = envelope.get("version").ok()?;
    (format == FORMAT && version != 0).then_some(version)
}

impl DecodeError {
    fn value(at: &str, value: impl std::fmt::Display) -> Self {
        Self::Value {
            at: at.to_owned(),
            value: value.to_string(),
        }
    }
}
