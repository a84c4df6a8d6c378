//! The ways of building that the trade uses, each worked through from its parts.
//!
//! What such builds do is common practice, no source; the widths are what that leaves open. Where an
//! energy can be worked out by hand, it is.

#![allow(
    clippy::unwrap_used,
    reason = "a case that cannot be set up has failed"
)]

mod charged;
mod kit;
mod melts;
mod solids;
mod vessels;
mod whole;
