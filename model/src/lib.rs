//! The heat of a solar-electric cooker with a store.

pub mod air;
pub mod conduction;
pub mod cooker;
pub mod dish;
pub mod enthalpy;
pub mod error;
pub mod insulation;
pub mod jacket;
pub mod journal;
pub mod local_time;
pub mod media;
pub mod network;
mod numerics;
pub mod out_of_range;
pub mod panel;
pub mod place;
pub mod pot;
pub mod presets;
pub mod provenance;
pub mod safety;
pub mod seat;
pub mod sun;
pub mod tonight;
pub mod water;
