//! What becomes of a case.

use crate::case::Case;
use model::error::ModelError;
use model::network::{Event, Ledger, Network, NetworkParts, NodeRow, Pot, Span, State, Watch, run};
use serde::Serialize;

/// The answer to one case.
#[derive(Serialize)]
pub(crate) struct Outcome {
    name: String,
    boiling_point_c: f64,
    t_boil_s: Option<f64>,
    water_boiled_away_kg: f64,
    energy: Energy,
    samples: Vec<Sample>,
}

#[derive(Serialize)]
struct Energy {
    heater_j: f64,
    pot_j: f64,
    air_jacket_j: f64,
    air_pot_j: f64,
    steam_j: f64,
}

#[derive(Serialize)]
struct Sample {
    t_s: f64,
    t_store_c: f64,
    t_jacket_c: f64,
    t_pot_c: Option<f64>,
    water_kg: f64,
}

/// Takes the samples and the first boil.
struct Recorder<'c> {
    wanted_s: &'c [f64],
    /// Water of the pot while it is not in.
    water_kg: f64,
    samples: Vec<Sample>,
    boiled_at_s: Option<f64>,
}

impl Watch for Recorder<'_> {
    fn next_sample_s(&self) -> Option<f64> {
        self.wanted_s.get(self.samples.len()).copied()
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        self.samples.push(Sample {
            t_s: state.time_s(),
            t_store_c: state.store_c(net),
            t_jacket_c: state.jacket_c(),
            t_pot_c: state.pot().map(|pot| pot.t_c()),
            water_kg: state.pot().map_or(self.water_kg, |pot| pot.water_kg()),
        });
    }

    fn event(&mut self, event: Event, _: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.boiled_at_s.get_or_insert(state.time_s());
        }
    }
}

/// Runs a case from 0 to its end.
pub(crate) fn of(case: &Case) -> Result<Outcome, ModelError> {
    let net = Network::new(
        &case.curve,
        NetworkParts {
            row: NodeRow::SINGLE,
            g_loss_w_k: case.g_loss_w_k,
            c_jacket_j_k: case.c_jacket_j_k,
            seat: case.seat,
            g_lid_w_k: 0.0,
            cutout_c: Some(case.cutout_c),
            altitude_m: case.altitude_m,
        },
    )?;
    let mut state = State::new(&net, 0.0, case.store_c, case.jacket_c)?;
    let mut ledger = Ledger::default();
    let mut recorder = Recorder {
        wanted_s: &case.sample_s,
        water_kg: case.water_kg,
        samples: Vec::new(),
        boiled_at_s: None,
    };

    let mut from_s = 0.0;
    for to_s in breaks(case) {
        if case.pot_in_s.is_some_and(|in_s| same(in_s, from_s)) {
            state.put_pot_in(Pot {
                c_dry_j_k: case.c_dry_j_k,
                water_kg: case.water_kg,
                t_c: case.pot_c,
                g_air_w_k: case.g_pot_w_k,
                thickness: 1.0,
                surface: None,
                cook: None,
            })?;
        }
        if case.pot_out_s.is_some_and(|out_s| same(out_s, from_s))
            && let Some(pot) = state.take_pot_out()
        {
            recorder.water_kg = pot.water_kg();
        }
        let span = Span {
            duration_s: to_s - from_s,
            heater_w: power_w(case, from_s),
            air_c: case.air_c,
        };
        run(&net, &mut state, &span, &mut ledger, &mut recorder)?;
        from_s = to_s;
    }

    let water_kg = state.pot().map_or(recorder.water_kg, |pot| pot.water_kg());
    // The runs add up their lengths; the list of samples says the times themselves.
    for (sample, wanted_s) in recorder.samples.iter_mut().zip(&case.sample_s) {
        sample.t_s = *wanted_s;
    }
    Ok(Outcome {
        name: case.name.clone(),
        boiling_point_c: net.boiling_point_c(),
        t_boil_s: recorder.boiled_at_s,
        water_boiled_away_kg: case.water_kg - water_kg,
        energy: Energy {
            heater_j: ledger.heater_j,
            pot_j: ledger.pot_j,
            air_jacket_j: ledger.jacket_air_j,
            air_pot_j: ledger.pot_air_j,
            steam_j: ledger.steam_j,
        },
        samples: recorder.samples,
    })
}

/// The times at which something changes from outside, after 0 and up to the end.
fn breaks(case: &Case) -> Vec<f64> {
    let mut times: Vec<f64> = case
        .power
        .iter()
        .flat_map(|step| [step.from_s, step.to_s])
        .chain(case.pot_in_s)
        .chain(case.pot_out_s)
        .chain([case.end_s])
        .filter(|time_s| *time_s > 0.0 && *time_s <= case.end_s)
        .collect();
    times.sort_by(f64::total_cmp);
    times.dedup();
    times
}

/// Whether two times are the same number: both were copied from the case.
fn same(one_s: f64, other_s: f64) -> bool {
    one_s.total_cmp(&other_s).is_eq()
}

fn power_w(case: &Case, time_s: f64) -> f64 {
    case.power
        .iter()
        .find(|step| (step.from_s..step.to_s).contains(&time_s))
        .map_or(0.0, |step| step.power_w)
}
