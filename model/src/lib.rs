//! The heat of a solar-electric cooker with a store.

pub mod place;
pub mod sun;
