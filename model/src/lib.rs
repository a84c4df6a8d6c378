//! The heat of a solar-electric cooker with a store.

pub mod enthalpy;
pub mod error;
pub mod network;
mod numerics;
pub mod water;
