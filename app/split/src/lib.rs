//! Cuts a WebAssembly program in two: the part that the first screens need, and the rest.
//!
//! The rest is loaded when the first screens stand. It is chosen by the names of the functions: those
//! of some rooms of the app, and those that only these call. Both parts share one memory and one
//! table of functions. Wherever the first part would call into the rest, by name or through the
//! table, it calls a door, a function that JavaScript provides; once the rest is there it has
//! replaced the doors of the table with its own functions.

mod choose;
mod cut;
mod glue;

#[cfg(test)]
mod tests;

pub use choose::Rooms;
pub use cut::{Parts, cut};
pub use glue::with_rest;

/// Why a program could not be cut.
#[derive(Debug)]
pub enum SplitError {
    /// It is no program that this can read.
    Unreadable(String),
    /// It has something that this can't share between two parts.
    Unknown(&'static str),
}

impl std::fmt::Display for SplitError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Unreadable(why) => write!(f, "the program can't be read: {why}"),
            Self::Unknown(what) => write!(f, "the program can't be cut: {what}"),
        }
    }
}

impl std::error::Error for SplitError {}
