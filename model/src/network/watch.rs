//! What a run tells its caller.

use super::parts::Network;
use super::state::State;

/// Something that happens at one instant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Event {
    /// The water reaches a full boil.
    Boils,
    /// It goes off the boil.
    StopsBoiling,
    /// The last water is gone; the pot heats on.
    BoilsDry,
    /// The dish is done.
    Done,
    /// The thermostat cuts the heater out.
    CutsOut,
    /// The thermostat lets the heater on again.
    LetsIn,
    /// A supercooled melt freezes: its temperature jumps up.
    Freezes,
}

/// A listener to a run. `()` listens to nothing.
pub trait Watch {
    /// The next time at which a sample is wanted, s. After each sample it must name a later one.
    fn next_sample_s(&self) -> Option<f64> {
        None
    }

    /// The state at a time asked for, or at the start of the run for a time already past.
    ///
    /// A sample at the end of one span and the start of the next comes from the first.
    fn sample(&mut self, net: &Network<'_>, state: &State) {
        let _ = (net, state);
    }

    /// An event, with the state just after it.
    fn event(&mut self, event: Event, net: &Network<'_>, state: &State) {
        let _ = (event, net, state);
    }
}

impl Watch for () {}

/// Where the heat went, J: sums over all runs it was handed to.
///
/// For a cooker without pots coming or going,
/// `heater = growth of stored + jacket_air + lid_air + pot_air + steam + carried`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ledger {
    /// From the heater into the store.
    pub heater_j: f64,
    /// From the store into the pot.
    pub pot_j: f64,
    /// From the jacket to the air.
    pub jacket_air_j: f64,
    /// From the store to the air with the cooker open.
    pub lid_air_j: f64,
    /// From the pot's walls to the air.
    pub pot_air_j: f64,
    /// Heat of vaporisation of the water that left.
    pub steam_j: f64,
    /// Heat above 0 degC that the water which left had as a liquid.
    pub carried_j: f64,
}

impl Ledger {
    /// All that left for the air, J.
    pub fn lost_j(&self) -> f64 {
        self.jacket_air_j + self.lid_air_j + self.pot_air_j + self.steam_j + self.carried_j
    }
}
