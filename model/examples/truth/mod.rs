//! A finer model of a cooker, to judge the quick one by.
//!
//! It shares no equation of motion with the crate's network. The store is a row of shells from the
//! seat outwards, each with its own enthalpy (so a freezing front is an outcome, not an assumption), and
//! a sugar alcohol that has melted throughout stays liquid until its coldest place nucleates;
//! the jacket is a row of shells from the store to the air whose conductivity changes with
//! temperature; pot wall and water are cells of their own; the lid's gap leaks past the jacket;
//! clouds pass by the minute; the thermostat is where it is and as wrong as it is. Every second the
//! whole row is solved at once, implicitly ([`row`]).
//!
//! What it does share is checked against outside references elsewhere: where the sun stands, the
//! curve of a panel, the tables of materials, the boiling point.
//!
//! - [`random`]: numbers by chance from a seed.
//! - [`heat`]: enthalpy of a store by a fine table.
//! - [`shell`], [`jacket`]: a body cut into shells, and the jacket of a round cooker.
//! - [`row`]: the shells in one row, and one implicit step through them.
//! - [`kitchen`]: a cooker with pot, heater and thermostat, carried through time.
//! - [`build`]: a true cooker, drawn round what its household wrote down.
//! - [`sky`]: clouds by the minute.

#![allow(
    clippy::disallowed_methods,
    reason = "what judges need not be the same to the last digit on every platform"
)]

pub(crate) mod build;
pub(crate) mod heat;
pub(crate) mod jacket;
pub(crate) mod kitchen;
pub(crate) mod random;
pub(crate) mod row;
pub(crate) mod shell;
pub(crate) mod sky;

#[cfg(test)]
mod tests;
