//! Sun and panel against values from outside: pvlib 0.16.1 and the examples of FAO-56.

#![allow(
    clippy::unwrap_used,
    reason = "a data file that cannot be read fails the test"
)]

mod fao;
mod panel;
mod rows;
mod sky;
