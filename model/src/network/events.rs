//! What switches within a step, and when.

use super::flows::{DONENESS, Flows, NODES, Q, STEAM, X};
use super::parts::Network;
use super::pot::{PotPhase, PotState};
use super::run::TOLERANCE_K;
use super::state::State;
use crate::numerics::cubic::Cubic;
use crate::numerics::rosenbrock::Step;
use crate::water::CP_J_KGK;

/// A pot is at the boil when it is this far above the boiling point, K: less than any rounding error of
/// its neighbours, more than its own, so that a pot that has just gone off the boil is not on it.
const ABOVE_BOIL_K: f64 = 1e-9;

/// How far past the end of its stretch, or below the least cooking temperature, a state goes before it
/// switches, K of sensible heat.
///
/// Within a step the solver's polynomial is only as good as its error estimate, and can dip by that much where
/// the true solution rises. Without this margin, twice as wide as the dip, a state on a break point
/// could switch to and fro without moving on. The formulas go on smoothly past the ends, so the price is
/// an error of the size already allowed.
const MARGIN_K: f64 = TOLERANCE_K;

/// A change of one discrete part of the state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Change {
    /// A node comes to another stretch of the enthalpy curve.
    Segment { node: usize, to: usize },
    /// The thermostat.
    Heater(bool),
    /// The pot reaches the boil, leaves it, or loses its last water.
    Phase(PotPhase),
    /// The dish crosses the least temperature at which it cooks.
    Cooking(bool),
    /// Doneness passes 1.
    Done,
}

/// The earliest change so far.
struct Earliest(Option<(f64, Change)>);

impl Earliest {
    fn offer(&mut self, fraction: Option<f64>, change: Change) {
        if let Some(fraction) = fraction
            && self.0.is_none_or(|(first, _)| fraction < first)
        {
            self.0 = Some((fraction, change));
        }
    }
}

/// The first change within a step, with the fraction of the step at which it comes.
pub(crate) fn first_change(
    net: &Network<'_>,
    state: &State,
    flows: &Flows<'_>,
    step: &Step<X, Q>,
) -> Option<(f64, Change)> {
    let mut earliest = Earliest(None);
    store_changes(net, state, step, &mut earliest);
    if let Some(pot) = &state.pot {
        pot_changes(net, pot, flows, step, &mut earliest);
    }
    earliest.0
}

fn store_changes(net: &Network<'_>, state: &State, step: &Step<X, Q>, earliest: &mut Earliest) {
    let row = &net.parts.row;
    for node in 0..row.count {
        let share = row.mass_share[node];
        let heat = step.x_poly(NODES + node);
        let above = |limit_j: f64| heat.plus(-share, &Cubic::constant(limit_j)).first_rise();
        let below = |limit_j: f64| {
            Cubic::constant(share * limit_j)
                .plus(-1.0, &heat)
                .first_rise()
        };
        let index = state.segment[node];
        let segment = net.curve.segment(index);
        let margin_j = MARGIN_K * net.curve.sensible_j_k();
        if segment.high_j.is_finite() {
            let to = net.curve.segment_above(index);
            earliest.offer(
                above(segment.high_j + margin_j),
                Change::Segment { node, to },
            );
        }
        if segment.low_j.is_finite() {
            let to = if state.has_crystals(net) && net.curve.supercooled_segment() != Some(index) {
                index.saturating_sub(1)
            } else {
                net.curve.segment_below(index)
            };
            earliest.offer(
                below(segment.low_j - margin_j),
                Change::Segment { node, to },
            );
        }
        if let (Some((out_j, in_j)), true) = (net.thermostat_j, node == row.thermostat_node) {
            if state.heater_on {
                earliest.offer(above(out_j), Change::Heater(false));
            } else {
                earliest.offer(below(in_j), Change::Heater(true));
            }
        }
    }
}

fn pot_changes(
    net: &Network<'_>,
    pot: &PotState,
    flows: &Flows<'_>,
    step: &Step<X, Q>,
    earliest: &mut Earliest,
) {
    if pot.pot.cook.is_some() && pot.done_at_s.is_none() {
        let doneness = step
            .q_poly(DONENESS)
            .plus(1.0, &Cubic::constant(pot.doneness - 1.0));
        earliest.offer(doneness.first_rise(), Change::Done);
    }

    let water = flows.water_place().map_or_else(
        || Cubic::constant(pot.water_kg).plus(-1.0 / net.h_fg_j_kg, &step.q_poly(STEAM)),
        |place| step.x_poly(place),
    );
    if pot.phase != PotPhase::Dry {
        let gone = Cubic::constant(pot.least_water_kg()).plus(-1.0, &water);
        earliest.offer(gone.first_rise(), Change::Phase(PotPhase::Dry));
    }

    if pot.phase == PotPhase::Boiling {
        earliest.offer(surplus_gone(flows, step), Change::Phase(PotPhase::Simple));
        return;
    }
    let Some(place) = flows.pot_place() else {
        return;
    };
    let heat = step.x_poly(place);
    let capacity = Cubic::constant(pot.pot.c_dry_j_k).plus(CP_J_KGK, &water);
    if pot.phase == PotPhase::Simple {
        let above = heat.plus(-(net.boiling_c + ABOVE_BOIL_K), &capacity);
        let boils = above
            .first_rise()
            .and_then(|touched| boil_begins(flows, step, &above, touched));
        earliest.offer(boils, Change::Phase(PotPhase::Boiling));
    }
    if let (Some(cook), PotPhase::Simple) = (pot.pot.cook, pot.phase) {
        let above = heat.plus(-cook.t_min_c(), &capacity);
        if pot.cooking {
            let below = Cubic::default()
                .plus(-1.0, &above)
                .plus(-MARGIN_K, &capacity);
            earliest.offer(below.first_rise(), Change::Cooking(false));
        } else {
            earliest.offer(above.first_rise(), Change::Cooking(true));
        }
    }
}

/// When a pot that touches the boil begins to boil.
///
/// The polynomial may touch the boil by its own error alone; what boils has heat to spare. So the pot
/// waits for the surplus, which comes in the same step or in a later one.
fn boil_begins(flows: &Flows<'_>, step: &Step<X, Q>, above: &Cubic, touched: f64) -> Option<f64> {
    let boils =
        |fraction: f64| above.at(fraction) >= 0.0 && flows.surplus_w(&step.x_at(fraction)) > 0.0;
    if boils(touched) {
        return Some(touched);
    }
    first_true(boils, touched)
}

/// When the surplus of a boiling pot falls below zero.
///
/// The surplus is not a polynomial, so it is looked at in four places: it moves with the store, which
/// turns at most once within a step.
fn surplus_gone(flows: &Flows<'_>, step: &Step<X, Q>) -> Option<f64> {
    first_true(|fraction| flows.surplus_w(&step.x_at(fraction)) < 0.0, 0.0)
}

/// Where a condition that is false at `from` first holds, looked at in four places up to 1.
fn first_true(holds: impl Fn(f64) -> bool, from: f64) -> Option<f64> {
    let mut low = from;
    for quarter in [0.25, 0.5, 0.75, 1.0] {
        let mut high = from + (1.0 - from) * quarter;
        if holds(high) {
            for _ in 0..50 {
                let middle = 0.5 * (low + high);
                if holds(middle) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return Some(high);
        }
        low = high;
    }
    None
}
