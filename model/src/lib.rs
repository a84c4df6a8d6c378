//! The heat of a solar-electric cooker with a store.

pub mod panel;
pub mod place;
pub mod sun;
