//! The bench: a cooker measured with a thermometer and a clock, and found out.
//!
//! [`readings`] understands what was written down.

pub mod readings;
