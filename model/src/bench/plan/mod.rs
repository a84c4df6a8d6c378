//! A run made ready to be gone through again and again: stretches of constant power and air, the
//! pots, and the readings to be met.

mod freezing;
mod prepare;

use crate::bench::body::Body;
use crate::bench::fit::Values;
use crate::bench::readings::Row;
use crate::bench::run::{PotIn, Run};
use crate::enthalpy::EnthalpyCurve;
use crate::error::ModelError;
use crate::network::{Ledger, Network, PotPhase, PotState, Span, State, Watch, run};
use crate::sun::faiman_cell_c;
use crate::tonight::{Leaning, WIND_M_S, water};
use freezing::{Freezing, freezing};
use prepare::{Series, first_store_c, start_of, stretches, thinned};

/// Longest stretch with one power, air, loss and contact. \[s\]
const STRETCH_S: f64 = 300.0;
/// The same with a pot in, whose film and contact change as it warms. \[s\]
const POT_STRETCH_S: f64 = 60.0;
/// Times closer than this are the same. \[s\]
const SAME_TIME_S: f64 = 1e-3;

/// Store and pot at one time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Since the run's first row. \[s\]
    pub time_s: f64,
    /// Store. [°C]
    pub store_c: Option<f64>,
    /// Pot. [°C]
    pub pot_c: Option<f64>,
}

/// Where the thermometer sits, as a share of the store's mass from the seat on: in its middle.
pub(crate) const THERMOMETER_AT: f64 = 0.5;

/// Constant power and air.
#[derive(Debug, Clone, Copy)]
struct Stretch {
    from_s: f64,
    to_s: f64,
    heater_w: f64,
    air_c: f64,
}

/// What no description tells of one run.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Start {
    /// Store. [°C]
    pub(crate) store_c: f64,
    /// Its far end over its middle, where it is not at one temperature. \[K\]
    pub(crate) tilt_k: f64,
    /// Jacket. [°C]
    pub(crate) jacket_c: f64,
    /// Each pot as it goes in. [°C]
    pub(crate) pots_c: Vec<f64>,
    /// What the metal of each takes over what its table says.
    pub(crate) pots_metal: Vec<f64>,
    /// The store is found so much hotter as the last pot goes in. \[K\]
    pub(crate) lift_k: f64,
}

/// A run, ready.
#[derive(Debug, Clone)]
pub(crate) struct Plan {
    pub(crate) samples: Vec<Sample>,
    stretches: Vec<Stretch>,
    pub(crate) pots: Vec<PotIn>,
    pub(crate) start: Start,
    /// One standard deviation of the jacket's start. \[K\]
    pub(crate) jacket_sd_k: f64,
    /// Mean of the air. [°C]
    pub(crate) air_c: f64,
    /// Whether the power was measured at the heater, and not worked out from the light.
    pub(crate) power_measured: bool,
    /// Whether the heater was on at all.
    pub(crate) heated: bool,
    /// How a melt that stayed liquid below its melting point froze.
    freezing: Option<Freezing>,
}

impl Plan {
    /// Makes a checked run ready.
    pub(crate) fn new(body: &Body, of: &Run) -> Self {
        let end_s = of.rows.last().map_or(0.0, |row| row.time_s);
        let air = Series::new(
            of.rows
                .iter()
                .filter_map(|row| Some((row.time_s, row.air_c?))),
        )
        .unwrap_or_else(|| Series::constant(of.air_c.unwrap_or(20.0)));
        let measured = Series::new(
            of.rows
                .iter()
                .filter_map(|row| Some((row.time_s, row.heater_w?.max(0.0)))),
        )
        .or_else(|| of.heater_w.map(Series::constant));
        let from_light = || {
            let heat_w = |row: &Row| {
                let light = row.irradiance_w_m2?.max(0.0);
                let air_c = row.air_c.or(of.air_c).unwrap_or(20.0);
                let cell_c = faiman_cell_c(light, air_c, WIND_M_S);
                Some((row.time_s, body.rig().heat.heat_w(light, cell_c)))
            };
            Series::new(of.rows.iter().filter_map(heat_w))
        };
        let power_measured = measured.is_some();
        let power = measured
            .or_else(from_light)
            .unwrap_or_else(|| Series::constant(0.0));
        let mut stretches = stretches(of, end_s, &power, &air);
        let samples = thinned(of);
        let air_c = air.mean(0.0, end_s.max(1.0));
        let store_c = first_store_c(&samples).unwrap_or(air_c);
        let over_k = store_c - air_c;
        let freezing = body
            .rig()
            .melting_c()
            .and_then(|melting_c| freezing(&samples, &stretches, &of.pots, melting_c));
        cut(&mut stretches, freezing.and_then(|freezing| freezing.at_s));
        Self {
            freezing,
            heated: stretches.iter().any(|stretch| stretch.heater_w > 1.0),
            samples,
            stretches,
            start: Start {
                store_c,
                tilt_k: 0.0,
                jacket_c: air_c + 0.5 * over_k,
                pots_metal: vec![1.0; of.pots.len()],
                pots_c: of.pots.iter().map(|pot| start_of(pot, of, air_c)).collect(),
                lift_k: 0.0,
            },
            // A store that has long been hot has its jacket half-way; one just heated has it colder,
            // one just emptied hotter.
            jacket_sd_k: 2.0 + 0.12 * over_k.abs(),
            pots: of.pots.clone(),
            air_c,
            power_measured,
        }
    }

    /// The store's curve as this run went down it.
    ///
    /// # Errors
    ///
    /// [`ModelError`] for values that give no rising curve.
    pub(crate) fn curve(&self, body: &Body, values: &Values) -> Result<EnthalpyCurve, ModelError> {
        body.curve(values, self.freezing.map(|freezing| freezing.liquid_to_c))
    }

    /// Goes through the run with these values; what is seen goes to `watch`.
    ///
    /// # Errors
    ///
    /// [`ModelError`] for values the network refuses.
    pub(crate) fn follow(
        &self,
        body: &Body,
        net: &Network<'_>,
        values: &Values,
        start: &Start,
        watch: &mut impl Watch,
    ) -> Result<Followed, ModelError> {
        let mut state = State::new(net, 0.0, start.store_c, start.jacket_c)?;
        if start.tilt_k.abs() > 0.0 {
            state.tilt(net, start.tilt_k);
        }
        let mut followed = Followed::default();
        let mut ledger = Ledger::default();
        let mut before = None;
        let mut next_pot = 0;
        let mut out_s = f64::INFINITY;
        let froze_s = self.freezing.and_then(|freezing| freezing.at_s);
        let mut freezes_s = froze_s.unwrap_or(f64::INFINITY);
        // The pot's own pace tells how warm it is in the middle of the next stretch.
        let mut pace_k_s = 0.0;
        for stretch in &self.stretches {
            if out_s <= stretch.from_s + SAME_TIME_S {
                followed.end_stay(before.take(), &state, ledger);
                ledger = Ledger::default();
                state.take_pot_out();
                out_s = f64::INFINITY;
            }
            if let Some(pot) = self.pots.get(next_pot)
                && pot.in_s <= stretch.from_s + SAME_TIME_S
            {
                let t_c = start.pots_c.get(next_pot).copied().unwrap_or(self.air_c);
                if start.lift_k > 0.0 && next_pot + 1 == self.pots.len() {
                    let lifted_c = state.mixed_store_c(net) + start.lift_k;
                    let jacket_c = state.jacket_c() + 0.5 * start.lift_k;
                    state.set_store(net, net.curve().enthalpy_j(lifted_c), jacket_c);
                }
                let mut load = pot_with(body, pot, values, t_c, stretch.air_c);
                load.c_dry_j_k *= start.pots_metal.get(next_pot).copied().unwrap_or(1.0);
                state.put_pot_in(load)?;
                followed.charged_j += ledger.heater_j;
                (before, ledger) = (Some(state), Ledger::default());
                out_s = pot.out_s.unwrap_or(f64::INFINITY);
                next_pot += 1;
                pace_k_s = 0.0;
            }
            if freezes_s <= stretch.from_s + SAME_TIME_S {
                state.seed_crystal(net);
                freezes_s = f64::INFINITY;
            }
            let duration_s = stretch.to_s - stretch.from_s;
            let shaped = shaped(body, net, values, &state, pace_k_s * 0.5 * duration_s)?;
            let pot_c = state.pot().map(PotState::t_c);
            let span = Span {
                duration_s,
                heater_w: stretch.heater_w * values.heater,
                air_c: stretch.air_c,
            };
            run(&shaped, &mut state, &span, &mut ledger, watch)?;
            pace_k_s = match (pot_c, state.pot()) {
                (Some(pot_c), Some(pot)) => (pot.t_c() - pot_c) / duration_s,
                _ => 0.0,
            };
        }
        followed.end_stay(before, &state, ledger);
        Ok(followed)
    }

    /// The same run with its last pot left in and nothing on, up to a time.
    pub(crate) fn left_until(mut self, end_s: f64) -> Self {
        let from_s = self.stretches.last().map_or(0.0, |stretch| stretch.to_s);
        if let Some(pot) = self.pots.last_mut() {
            pot.out_s = None;
        }
        let mut at_s = from_s;
        while at_s < end_s {
            let to_s = (at_s + POT_STRETCH_S).min(end_s);
            self.stretches.push(Stretch {
                from_s: at_s,
                to_s,
                heater_w: 0.0,
                air_c: self.air_c,
            });
            at_s = to_s;
        }
        self
    }

    /// Radiation and power are what they were; the time the heater was on before the last pot.
    pub(crate) fn heated_before(&self, at_s: f64) -> bool {
        self.stretches
            .iter()
            .any(|stretch| stretch.from_s < at_s && stretch.heater_w > 1.0)
    }
}

/// A pot in the cooker, from its going in to its coming out.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stay {
    pub(crate) before: State,
    pub(crate) after: State,
    pub(crate) ledger: Ledger,
}

/// What came of a run.
#[derive(Debug, Clone, Default)]
pub(crate) struct Followed {
    pub(crate) stays: Vec<Stay>,
    /// Heat from the heater while no pot was in. \[J\]
    pub(crate) charged_j: f64,
}

impl Followed {
    fn end_stay(&mut self, before: Option<State>, state: &State, ledger: Ledger) {
        match before {
            Some(before) => self.stays.push(Stay {
                before,
                after: *state,
                ledger,
            }),
            None => self.charged_j += ledger.heater_j,
        }
    }
}

/// Ends a stretch at a time.
fn cut(stretches: &mut Vec<Stretch>, at_s: Option<f64>) {
    let Some(at_s) = at_s else {
        return;
    };
    let is_within = |stretch: &Stretch| {
        stretch.from_s + SAME_TIME_S < at_s && at_s < stretch.to_s - SAME_TIME_S
    };
    if let Some(place) = stretches.iter().position(is_within) {
        let mut later = stretches[place];
        stretches[place].to_s = at_s;
        later.from_s = at_s;
        stretches.insert(place + 1, later);
    }
}

/// The network with loss and contact as they are at the state's temperatures, the pot so much warmer
/// than in the state.
fn shaped<'a>(
    body: &Body,
    net: &Network<'a>,
    values: &Values,
    state: &State,
    warmer_k: f64,
) -> Result<Network<'a>, ModelError> {
    let store_c = state.store_c(net);
    let seat = state.pot().map_or(1.0, |pot| {
        let boils = pot.phase() == PotPhase::Boiling;
        body.seat_shape(values, store_c, (pot.t_c() + warmer_k, boils))
    });
    net.scaled(body.loss_shape(state.mixed_store_c(net)), seat)
}

/// A pot of water for the network.
fn pot_with(
    body: &Body,
    pot: &PotIn,
    values: &Values,
    t_c: f64,
    air_c: f64,
) -> crate::network::Pot {
    let mut meal = water(pot.pot, pot.water_kg);
    meal.lid = pot.lid;
    meal.start_c = t_c;
    let mut load = body.rig().load(&meal, &Leaning::AS_TOLD, air_c);
    load.g_air_w_k *= values.pot_loss;
    load
}

/// Keeps store and pot at the times of the samples.
pub(crate) struct Trace<'a> {
    samples: &'a [Sample],
    pub(crate) seen: Vec<(f64, f64)>,
}

impl<'a> Trace<'a> {
    pub(crate) fn new(samples: &'a [Sample]) -> Self {
        Self {
            samples,
            seen: Vec::with_capacity(samples.len()),
        }
    }
}

impl Watch for Trace<'_> {
    fn next_sample_s(&self) -> Option<f64> {
        self.samples
            .get(self.seen.len())
            .map(|sample| sample.time_s)
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        let pot_c = state.pot().map_or(f64::NAN, PotState::t_c);
        self.seen
            .push((state.at_share_c(net, THERMOMETER_AT), pot_c));
    }
}
