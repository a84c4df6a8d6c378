//! The heat of a solar-electric cooker with a store.

pub mod local_time;
