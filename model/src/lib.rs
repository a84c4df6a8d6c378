//! The heat of a solar-electric cooker with a store.

pub mod air;
pub mod conduction;
pub mod dish;
pub mod insulation;
pub mod jacket;
pub mod media;
pub mod out_of_range;
pub mod pot;
pub mod provenance;
pub mod safety;
pub mod seat;
