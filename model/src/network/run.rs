//! Carrying a state through time.

use super::events::{Change, first_change};
use super::flows::{
    CARRIED, DONENESS, Flows, JACKET, JACKET_AIR, LID_AIR, NODES, POT, POT_AIR, Q, STEAM, X,
};
use super::parts::Network;
use super::pot::{PotPhase, PotState};
use super::state::State;
use super::watch::{Event, Ledger, Watch};
use crate::error::{ModelError, finite, not_negative};
use crate::numerics::rosenbrock::Step;
use crate::water::CP_J_KGK;

/// A stretch of time with constant power and air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Length, s.
    pub duration_s: f64,
    /// Power of the heater while the thermostat lets it, W.
    pub heater_w: f64,
    /// Temperature of the air, degC.
    pub air_c: f64,
}

/// Error of temperature a step may make, by its own estimate, K.
pub(crate) const TOLERANCE_K: f64 = 1e-3;
/// The same for doneness, a share of itself once the dish is done.
const TOLERANCE_DONENESS: f64 = 1e-4;
/// A step is taken at this length whatever its estimate, s: the solver is L-stable, so what is faster
/// than this is at rest by the end of the step.
const SHORTEST_STEP_S: f64 = 1e-3;
/// A layer that grows faster than this lets its heat through and is not looked at closer, s.
const SHORTEST_LAYER_STEP_S: f64 = 1e-6;
/// Longest step, s.
const LONGEST_STEP_S: f64 = 86_400.0;
/// Steps tried in one run before it is given up.
const MOST_STEPS: u32 = 1_000_000;
/// Times closer than this are the same, s.
const SAME_TIME_S: f64 = 1e-9;

/// Runs a cooker through one span.
///
/// The state moves on by the span's length; the heat that flows is added to the ledger; the watch gets
/// the samples it asks for and the events, in order of time. Events are located on the solver's polynomial,
/// and no step reaches across one. Whatever the heat capacities and conductances, the length of a step
/// follows from accuracy alone, and a run ends after at most a million tried steps.
///
/// # Errors
/// A span with a value that is negative or not finite; [`ModelError::StepBudget`] when the network switches or
/// swings without end, as a thermostat does that cuts a huge heater in and out of a tiny store. The
/// state and ledger then hold what was reached.
pub fn run(
    net: &Network<'_>,
    state: &mut State,
    span: &Span,
    ledger: &mut Ledger,
    watch: &mut impl Watch,
) -> Result<(), ModelError> {
    let duration_s = not_negative("duration_s", span.duration_s)?;
    not_negative("heater_w", span.heater_w)?;
    finite("air_c", span.air_c)?;
    let start_s = state.time_s;
    let end_s = start_s + duration_s;

    settle(net, state, span, ledger, watch);
    let mut elapsed_s = 0.0;
    let mut tried = 0;
    while duration_s - elapsed_s > SAME_TIME_S {
        let rest_s = duration_s - elapsed_s;
        let flows = Flows::new(net, state, span.heater_w, span.air_c);
        let (step, h_s) =
            accepted_step(&flows, state, rest_s, &mut tried).ok_or(ModelError::StepBudget {
                steps: tried,
                time_s: elapsed_s,
            })?;
        let (fraction, change) = match first_change(net, state, &flows, &step) {
            Some((fraction, change)) => (fraction, Some(change)),
            None => (1.0, None),
        };
        while let Some(wanted_s) = watch.next_sample_s() {
            let within = ((wanted_s - state.time_s) / h_s).max(0.0);
            if within > fraction {
                break;
            }
            let mut sampled = advanced(net, state, &flows, &step, within, h_s);
            sampled.time_s = wanted_s.max(state.time_s);
            watch.sample(net, &sampled);
        }
        let moved_s = fraction * h_s;
        book(ledger, &step.q_at(fraction), flows.heater_w() * moved_s);
        *state = advanced(net, state, &flows, &step, fraction, h_s);
        elapsed_s = if fraction * h_s >= rest_s {
            duration_s
        } else {
            elapsed_s + moved_s
        };
        state.time_s = start_s + elapsed_s;
        if let Some(change) = change {
            apply(net, state, change, ledger, watch);
        }
    }
    state.time_s = end_s;
    while watch
        .next_sample_s()
        .is_some_and(|wanted_s| wanted_s <= end_s)
    {
        watch.sample(net, state);
    }
    Ok(())
}

/// A step whose error estimate is small enough, and its length; `None` when the budget is spent.
fn accepted_step(
    flows: &Flows<'_>,
    state: &mut State,
    rest_s: f64,
    tried: &mut u32,
) -> Option<(Step<X, Q>, f64)> {
    let x = flows.pack(state);
    let mut h_s = state
        .step_s
        .min(flows.longest_step_s(&x).max(SHORTEST_LAYER_STEP_S))
        .min(rest_s);
    // Two halves cost no more than a long step and a splinter.
    if h_s < rest_s && rest_s < 2.0 * h_s {
        h_s = 0.5 * rest_s;
    }
    while *tried < MOST_STEPS {
        *tried += 1;
        let step = Step::new(flows, &x, h_s);
        let error = weighted_error(flows, state, &step);
        // The estimate is of third order, hence the fourth root.
        let factor = (0.9 * libm::pow(error, -0.25)).clamp(0.2, 6.0);
        if error <= 1.0 || (error.is_finite() && h_s <= SHORTEST_STEP_S) {
            let proposed_s = (h_s * factor).clamp(SHORTEST_STEP_S, LONGEST_STEP_S);
            // A step cut short by the end of the span says nothing against a longer one.
            state.step_s = if h_s < state.step_s && factor > 1.0 {
                proposed_s.max(state.step_s)
            } else {
                proposed_s
            };
            return Some((step, h_s));
        }
        if !error.is_finite() && h_s <= SHORTEST_STEP_S {
            return None;
        }
        h_s *= if error.is_finite() {
            factor.min(0.9)
        } else {
            0.2
        };
        state.step_s = h_s;
    }
    None
}

/// The largest error of a step as a multiple of what is allowed.
fn weighted_error(flows: &Flows<'_>, state: &State, step: &Step<X, Q>) -> f64 {
    let mut worst = 0.0_f64;
    let mut judge = |error: f64, allowed: f64| {
        let ratio = error.abs() / allowed;
        // `max` would drop what is not a number.
        worst = if ratio > worst || ratio.is_nan() {
            ratio
        } else {
            worst
        };
    };
    judge(step.x_error[JACKET], TOLERANCE_K);
    if let Some(place) = flows.inner_place() {
        judge(step.x_error[place], TOLERANCE_K);
    }
    for (node, allowed_j) in flows.node_measures_j_k().enumerate() {
        judge(step.x_error[NODES + node], TOLERANCE_K * allowed_j);
    }
    if let Some(pot) = &state.pot {
        let allowed_j = TOLERANCE_K * pot.capacity_j_k();
        if let Some(place) = flows.pot_place() {
            judge(step.x_error[place], allowed_j);
        }
        judge(step.q_error[STEAM], allowed_j);
        judge(
            step.q_error[DONENESS],
            TOLERANCE_DONENESS * (1.0 + pot.doneness),
        );
    }
    worst
}

/// The state after a fraction of a step.
fn advanced(
    net: &Network<'_>,
    state: &State,
    flows: &Flows<'_>,
    step: &Step<X, Q>,
    fraction: f64,
    h_s: f64,
) -> State {
    let x = step.x_at(fraction);
    let mut next = *state;
    next.time_s += fraction * h_s;
    next.jacket_c = x[JACKET];
    if let Some(place) = flows.inner_place() {
        next.inner_c = x[place];
    }
    let nodes = net.parts.row.count;
    next.node_j[..nodes].copy_from_slice(&x[NODES..NODES + nodes]);
    if let Some(pot) = &mut next.pot {
        let q = step.q_at(fraction);
        pot.doneness += q[DONENESS];
        if let Some(place) = flows.pot_place() {
            pot.heat_j = x[place];
        } else {
            pot.boil_s += fraction * h_s;
            pot.water_kg -= q[STEAM] / net.h_fg_j_kg;
            pot.heat_j = pot.capacity_j_k() * net.boiling_c;
        }
        if let Some(place) = flows.water_place() {
            pot.water_kg = x[place];
        }
    }
    next
}

fn book(ledger: &mut Ledger, q: &[f64; Q], heater_j: f64) {
    ledger.heater_j += heater_j;
    ledger.pot_j += q[POT];
    ledger.jacket_air_j += q[JACKET_AIR];
    ledger.lid_air_j += q[LID_AIR];
    ledger.pot_air_j += q[POT_AIR];
    ledger.steam_j += q[STEAM];
    ledger.carried_j += q[CARRIED];
}

fn apply(
    net: &Network<'_>,
    state: &mut State,
    change: Change,
    ledger: &mut Ledger,
    watch: &mut impl Watch,
) {
    let time_s = state.time_s;
    let event = match (change, &mut state.pot) {
        (Change::Segment { node, to }, _) => {
            let from = state.segment[node];
            let was = net.curve.supercooled_segment() == Some(from);
            state.segment[node] = to;
            if was && net.curve.has_crystals(to) {
                // Crystals grow through the whole of it.
                state.freeze(net);
            }
            (was && to < net.curve.segment_above(from)).then_some(Event::Freezes)
        }
        (Change::Heater(on), _) => {
            state.heater_on = on;
            Some(if on { Event::LetsIn } else { Event::CutsOut })
        }
        (Change::Phase(phase), Some(pot)) => {
            pot.phase = phase;
            match phase {
                PotPhase::Boiling => {
                    flash(net, pot, ledger);
                    pot.boiled_at_s.get_or_insert(time_s);
                    Some(Event::Boils)
                }
                PotPhase::Simple => Some(Event::StopsBoiling),
                PotPhase::Dry => {
                    pot.water_kg = pot.least_water_kg();
                    pot.cooking = false;
                    Some(Event::BoilsDry)
                }
            }
        }
        (Change::Cooking(cooking), Some(pot)) => {
            pot.cooking = cooking;
            None
        }
        (Change::Done, Some(pot)) => {
            pot.done_at_s = Some(time_s);
            Some(Event::Done)
        }
        (Change::Phase(_) | Change::Cooking(_) | Change::Done, None) => None,
    };
    if let Some(event) = event {
        watch.event(event, net, state);
    }
}

/// Heat above the boiling point turns to steam at once.
fn flash(net: &Network<'_>, pot: &mut PotState, ledger: &mut Ledger) {
    let excess_j = pot.heat_j - pot.capacity_j_k() * net.boiling_c;
    if excess_j <= 0.0 {
        return;
    }
    let flashed_kg = (excess_j / net.h_fg_j_kg).min(pot.water_kg - pot.least_water_kg());
    let steam_j = flashed_kg * net.h_fg_j_kg;
    let carried_j = flashed_kg * CP_J_KGK * net.boiling_c;
    pot.water_kg -= flashed_kg;
    pot.heat_j -= steam_j + carried_j;
    ledger.steam_j += steam_j;
    ledger.carried_j += carried_j;
    if pot.water_kg <= pot.least_water_kg() {
        pot.phase = PotPhase::Dry;
    }
}

/// Brings the switches in line with what the caller changed between two spans.
fn settle(
    net: &Network<'_>,
    state: &mut State,
    span: &Span,
    ledger: &mut Ledger,
    watch: &mut impl Watch,
) {
    if let Some((out_j, in_j)) = net.thermostat_j {
        let row = &net.parts.row;
        let heat_j = state.node_j[row.thermostat_node] / row.mass_share[row.thermostat_node];
        if state.heater_on && heat_j >= out_j {
            apply(net, state, Change::Heater(false), ledger, watch);
        } else if !state.heater_on && heat_j <= in_j {
            apply(net, state, Change::Heater(true), ledger, watch);
        }
    }
    if state.elsewhere > 0.0
        && let Some(layer) = net.parts.seat.layer
    {
        // What melted again can't be in the way, nor away from it.
        let solid = state.solid_fraction(net, layer.medium);
        state.elsewhere = state.elsewhere.min(solid);
    }
    if let Some(pot) = &mut state.pot {
        pot.feel_least_temperature();
        // Water put in above the boiling point.
        if pot.phase == PotPhase::Simple {
            flash(net, pot, ledger);
        }
    }
    let boiling = state.pot.is_some_and(|pot| pot.phase == PotPhase::Boiling);
    let flows = Flows::new(net, state, span.heater_w, span.air_c);
    if boiling && flows.surplus_w(&flows.pack(state)) < 0.0 {
        apply(net, state, Change::Phase(PotPhase::Simple), ledger, watch);
    }
}
