//! Store, jacket, seat and pot as a network of heat capacities and conductances, run through time.
//!
//! Nodes: the store S (one node, or a row of them from the seat outwards), the jacket J, the pot with
//! its load P, and the air A:
//!
//! ```text
//! dH_S/dt = P_heater - G_SJ (T_S - T_J) - G_SP (T_S - T_P) - G_lid (T_S - T_A)
//! C_J dT_J/dt = G_SJ (T_S - T_J) - G_JA (T_J - T_A)
//! dH_P/dt = G_SP (T_S - T_P) - G_P (T_P - T_A) - (steam) h_fg
//! ```
//!
//! with `G_SJ = G_JA = 2 G_loss`, so that the steady loss is `G_loss (T_S - T_A)`, and
//! `1/G_SP = 1/G_contact + R_layer`, where `R_layer` is that of the layer frozen on the seat. At the
//! local boiling point the pot keeps its temperature and the surplus turns to steam.
//!
//! A thick jacket may be two nodes instead ([`JacketPair`]), in a row from the store to the air. A seat
//! that is known by its parts follows the temperatures of its faces instead of being one conductance
//! ([`SeatPath`]), and the loss may grow with the store ([`LossRise`]), step by step.
//!
//! A [`Network`] holds the parameters and borrows the store's enthalpy curve; a [`State`] holds what
//! changes. Both are small and free of the heap, so an ensemble shares one curve and copies the rest.
//! [`run()`] carries a state through one [`Span`] of constant power and air.

mod cooking;
mod events;
mod flows;
mod parts;
mod pot;
mod run;
mod seat_path;
mod state;
mod watch;

pub use cooking::CookRate;
pub(crate) use parts::SeatAt;
pub use parts::{
    JacketNode, JacketPair, Layer, LossRise, MAX_NODES, Network, NetworkParts, NodeRow, Seat,
    THERMOSTAT_HYSTERESIS_K,
};
pub use pot::{OpenSurface, Pot, PotPhase, PotState};
pub use run::{Span, run};
pub(crate) use seat_path::OnPath;
pub use seat_path::{MeltWay, SeatJoint, SeatPath};
pub use state::State;
pub use watch::{Event, Ledger, Watch};

#[cfg(test)]
mod freezing_tests;
#[cfg(test)]
mod pair_tests;
#[cfg(test)]
mod tests;
