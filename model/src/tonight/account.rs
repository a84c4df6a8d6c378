//! Where the heat went while the pot was in.

use crate::network::{Ledger, Network, State};
use crate::water::CP_J_KGK;

/// Heat above kitchen air, from the pot going in to its coming out. All in J.
///
/// What was there and what came in equals what is left and what went:
/// `store_before + pot_before + from_sun = store_after + pot_after + jacket + pot_loss + open + steam`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HeatAccount {
    /// In the store and its jacket when the pot went in. \[J\]
    pub store_before_j: f64,
    /// In the pot and its load when it went in. \[J\]
    pub pot_before_j: f64,
    /// From the heater meanwhile. \[J\]
    pub from_sun_j: f64,
    /// Still in the store and its jacket. \[J\]
    pub store_after_j: f64,
    /// In the pot and the food. \[J\]
    pub pot_after_j: f64,
    /// Out through the jacket. \[J\]
    pub jacket_j: f64,
    /// Off the pot's walls and lid. \[J\]
    pub pot_loss_j: f64,
    /// Out of the cooker while it stood open. \[J\]
    pub open_j: f64,
    /// With the steam. \[J\]
    pub steam_j: f64,
}

impl HeatAccount {
    /// The account between two states with what was booked between them; `air_c` is where heat
    /// counts from.
    pub(crate) fn between(
        net: &Network<'_>,
        before: &State,
        after: &State,
        ledger: &Ledger,
        air_c: f64,
    ) -> Self {
        let store_j = |state: &State| {
            state.store_j() - net.curve().enthalpy_j(air_c) + state.jacket_j(net, air_c)
        };
        let pot_j = |state: &State| {
            state
                .pot()
                .map_or(0.0, |pot| pot.heat_j() - pot.capacity_j_k() * air_c)
        };
        let water_kg = |state: &State| state.pot().map_or(0.0, crate::network::PotState::water_kg);
        let left_kg = water_kg(before) - water_kg(after);
        Self {
            store_before_j: store_j(before),
            pot_before_j: pot_j(before),
            from_sun_j: ledger.heater_j,
            store_after_j: store_j(after),
            pot_after_j: pot_j(after),
            jacket_j: ledger.jacket_air_j,
            pot_loss_j: ledger.pot_air_j,
            open_j: ledger.lid_air_j,
            steam_j: ledger.steam_j + ledger.carried_j - left_kg * CP_J_KGK * air_c,
        }
    }

    /// What was there and what came in. \[J\]
    pub fn came_j(&self) -> f64 {
        self.store_before_j + self.pot_before_j + self.from_sun_j
    }

    /// What is left and what went. \[J\]
    pub fn went_j(&self) -> f64 {
        self.store_after_j
            + self.pot_after_j
            + self.jacket_j
            + self.pot_loss_j
            + self.open_j
            + self.steam_j
    }
}
