//! How long the network takes to run: one idle night, one boil, one day in half hours.
//!
//! `cargo run --release -p model --example bench_network` prints microseconds of one run, in the
//! fastest of many batches: what else the machine does only ever adds.

use model::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use model::error::ModelError;
use model::network::{Layer, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, Span, State, run};
use std::hint::black_box;
use std::io::Write;
use std::time::Instant;

const BATCHES: u32 = 40;
const RUNS: u32 = 50;

const SALT: MediumCurve = MediumCurve {
    cp_a_j_kgk: 1430.0,
    cp_b_j_kgk2: 0.6,
    melt: Some(Melt {
        t_solidus_c: 222.0,
        t_liquidus_c: 238.0,
        latent_j_kg: 105_000.0,
        cp_liquid_j_kgk: 1520.0,
    }),
};

const POT: Pot = Pot {
    c_dry_j_k: 300.0,
    water_kg: 2.0,
    t_c: 22.0,
    g_air_w_k: 0.6,
    thickness: 1.0,
    surface: None,
    cook: None,
};

fn parts(row: NodeRow, layer: Option<Layer>) -> NetworkParts {
    NetworkParts {
        row,
        g_loss_w_k: 0.45,
        c_jacket_j_k: 2500.0,
        seat: Seat {
            g_contact_w_k: 9.0,
            layer,
        },
        g_lid_w_k: 0.0,
        cutout_c: Some(300.0),
        altitude_m: 1500.0,
    }
}

fn night(net: &Network<'_>) -> Result<f64, ModelError> {
    let mut state = State::new(net, 0.0, 280.0, 150.0)?;
    let span = Span {
        duration_s: 43_200.0,
        heater_w: 0.0,
        air_c: 22.0,
    };
    run(net, &mut state, &span, &mut Ledger::default(), &mut ())?;
    Ok(state.store_c(net))
}

fn boil(net: &Network<'_>) -> Result<f64, ModelError> {
    let mut state = State::new(net, 0.0, 280.0, 150.0)?;
    state.put_pot_in(POT)?;
    let span = Span {
        duration_s: 7200.0,
        heater_w: 0.0,
        air_c: 22.0,
    };
    run(net, &mut state, &span, &mut Ledger::default(), &mut ())?;
    Ok(state.store_c(net))
}

/// From midnight: sun from 7 to 17 h, a pot from 18 to 21 h.
fn day(net: &Network<'_>) -> Result<f64, ModelError> {
    let mut state = State::new(net, 0.0, 110.0, 70.0)?;
    let mut ledger = Ledger::default();
    for half_hour in 0..48 {
        let hour = f64::from(half_hour) / 2.0;
        let height = libm::sin(std::f64::consts::PI * (hour - 6.75) / 10.5);
        let light = (7.0..17.0).contains(&hour);
        if half_hour == 36 {
            state.put_pot_in(POT)?;
        } else if half_hour == 42 {
            state.take_pot_out();
        }
        let span = Span {
            duration_s: 1800.0,
            heater_w: if light { 150.0 * height * height } else { 0.0 },
            air_c: 20.0 + 5.0 * height,
        };
        run(net, &mut state, &span, &mut ledger, &mut ())?;
    }
    Ok(state.store_c(net))
}

fn timed(
    out: &mut impl Write,
    name: &str,
    net: &Network<'_>,
    job: fn(&Network<'_>) -> Result<f64, ModelError>,
) -> Result<(), Box<dyn std::error::Error>> {
    let mut last_c = 0.0;
    let mut each_us = f64::INFINITY;
    for _ in 0..BATCHES {
        let start = Instant::now();
        for _ in 0..RUNS {
            last_c = black_box(job(black_box(net)))?;
        }
        each_us = each_us.min(start.elapsed().as_secs_f64() * 1e6 / f64::from(RUNS));
    }
    writeln!(out, "{name:32} {each_us:7.1} us   ends at {last_c:.1} degC")?;
    Ok(())
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut out = std::io::stdout();
    let block = EnthalpyCurve::new(&[(7.0, MediumCurve::solid(885.0, 0.48))])?;
    let metal = Network::new(&block, parts(NodeRow::SINGLE, None))?;
    let melt = EnthalpyCurve::new(&[(6.0, SALT), (1.5, MediumCurve::solid(450.0, 0.3))])?;
    let layer = Layer {
        medium: 0,
        depth_m: 0.02,
        k_solid_w_mk: 0.7,
        area_m2: 0.05,
        elsewhere: 0.0,
    };
    let salt = Network::new(&melt, parts(NodeRow::SINGLE, Some(layer)))?;
    let stone = EnthalpyCurve::new(&[(14.0, MediumCurve::solid(800.0, 0.9))])?;
    let sixth = [1.0 / 6.0; 6];
    let row = NodeRow {
        count: 6,
        mass_share: sixth,
        link_w_k: [20.0; 6],
        heater_share: [0.0, 0.0, 1.0, 0.0, 0.0, 0.0],
        jacket_share: sixth,
        thermostat_node: 2,
    };
    let sand = Network::new(&stone, parts(row, None))?;
    for (store, net) in [
        ("metal", &metal),
        ("salt", &salt),
        ("stone, 6 nodes", &sand),
    ] {
        timed(&mut out, &format!("{store}: idle night"), net, night)?;
        timed(&mut out, &format!("{store}: boil of two hours"), net, boil)?;
        timed(&mut out, &format!("{store}: day in 48 spans"), net, day)?;
    }
    Ok(())
}
