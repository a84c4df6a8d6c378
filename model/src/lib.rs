//! The heat of a solar-electric cooker with a store.

#![cfg_attr(
    test,
    allow(
        clippy::disallowed_methods,
        reason = "tests compare within a tolerance, on one machine"
    )
)]

pub mod ageing;
pub mod air;
pub mod bench;
pub mod carry;
pub mod concentrator;
pub mod conduction;
pub mod cooker;
pub mod dish;
pub mod enthalpy;
pub mod error;
pub mod filling;
pub mod flask;
pub mod inside;
pub mod insulation;
pub mod jacket;
pub mod journal;
pub mod local_time;
pub mod media;
pub mod network;
mod numerics;
pub mod odds;
pub mod out_of_range;
pub mod panel;
pub mod place;
pub mod pot;
pub mod presets;
pub mod provenance;
pub mod safety;
pub mod seat;
pub mod stefan;
pub mod sun;
pub mod tonight;
pub mod top_up;
pub mod water;
