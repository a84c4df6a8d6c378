use super::flows::{Flows, Q, X};
use super::*;
use crate::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use crate::numerics::rosenbrock::System;
use crate::seat::Gap;
use crate::water::CP_J_KGK;

const SUGAR_ALCOHOL: MediumCurve = MediumCurve {
    cp_a_j_kgk: 1300.0,
    cp_b_j_kgk2: 2.0,
    melt: Some(Melt {
        t_solidus_c: 116.5,
        t_liquidus_c: 118.5,
        latent_j_kg: 330_000.0,
        cp_liquid_j_kgk: 2760.0,
    }),
};

const OPEN: OpenSurface = OpenSurface {
    area_m2: 0.0314,
    open_share: 1.0,
    air_vapour_pa: 1500.0,
};

const BEANS: CookRate = CookRate::ZValue {
    t_ref_s: 3600.0,
    z_k: 20.0,
    t_min_c: 75.0,
};

const POT: Pot = Pot {
    c_dry_j_k: 400.0,
    water_kg: 1.0,
    t_c: 20.0,
    g_air_w_k: 0.6,
    thickness: 1.0,
    surface: None,
    cook: Some(BEANS),
};

fn parts() -> NetworkParts {
    NetworkParts {
        row: NodeRow::SINGLE,
        g_loss_w_k: 0.4,
        c_jacket_j_k: 2500.0,
        seat: Seat {
            g_contact_w_k: 8.0,
            layer: None,
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    }
}

fn three_nodes(link_w_k: f64) -> NodeRow {
    NodeRow {
        count: 3,
        mass_share: [0.2, 0.3, 0.5, 0.0, 0.0, 0.0],
        link_w_k: [link_w_k; 6],
        heater_share: [0.0, 1.0, 0.0, 0.0, 0.0, 0.0],
        jacket_share: [0.1, 0.2, 0.7, 0.0, 0.0, 0.0],
        thermostat_node: 1,
    }
}

fn block(mass_kg: f64) -> EnthalpyCurve {
    EnthalpyCurve::new(&[(mass_kg, MediumCurve::solid(900.0, 0.0))]).unwrap()
}

#[derive(Default)]
struct Heard(Vec<(Event, f64)>);

impl Watch for Heard {
    fn event(&mut self, event: Event, _: &Network<'_>, state: &State) {
        self.0.push((event, state.time_s()));
    }
}

fn near(actual: f64, expected: f64, tolerance: f64) {
    assert!(
        (actual - expected).abs() <= tolerance,
        "{actual} is not {expected} within {tolerance:e}"
    );
}

fn go(net: &Network<'_>, state: &mut State, duration_s: f64, heater_w: f64) -> (Ledger, Heard) {
    let mut ledger = Ledger::default();
    let mut heard = Heard::default();
    let span = Span {
        duration_s,
        heater_w,
        air_c: 20.0,
    };
    run(net, state, &span, &mut ledger, &mut heard).unwrap();
    (ledger, heard)
}

#[test]
fn jacobian_is_the_slope_of_the_rates() {
    let curve = EnthalpyCurve::new(&[(4.0, SUGAR_ALCOHOL), (1.0, MediumCurve::solid(885.0, 0.5))]);
    let curve = curve.unwrap();
    let mut with_layer = parts();
    with_layer.row = three_nodes(15.0);
    with_layer.g_lid_w_k = 0.7;
    with_layer.seat.layer = Some(Layer {
        medium: 0,
        depth_m: 0.03,
        k_solid_w_mk: 0.73,
        area_m2: 0.045,
        elsewhere: 0.0,
    });
    let plain = Network::new(&curve, with_layer).unwrap();
    // The same by its parts, over air, without metal in the melt and with it.
    let gap = Gap::of(crate::seat::Seat::DryOrdinary, 0.2, 0.0).unwrap();
    let by_parts = |has_metal: bool| {
        let path = SeatPath {
            face_k_w: 0.02,
            joint: SeatJoint::Gap(gap),
            joint_k_w: 0.16,
            film_k_w: 0.035,
            melt: Some(MeltWay {
                liquidus_c: 119.0,
                k_w: 0.2,
                has_metal,
            }),
        };
        plain.with_seat_path(path).unwrap()
    };
    let nets = [plain, by_parts(false), by_parts(true)];
    let cases = [
        (117.2, PotPhase::Simple, Some(OPEN)),
        (117.2, PotPhase::Boiling, Some(OPEN)),
        (117.2, PotPhase::Simple, None),
        (180.0, PotPhase::Simple, None),
        (180.0, PotPhase::Boiling, None),
        (60.0, PotPhase::Dry, None),
    ];
    for (net, (store_c, phase, surface)) in nets
        .iter()
        .flat_map(|net| cases.iter().map(move |case| (net, *case)))
    {
        let mut state = State::new(net, 0.0, store_c, 60.0).unwrap();
        let pot = Pot {
            t_c: 85.0,
            surface,
            ..POT
        };
        state.put_pot_in(pot).unwrap();
        state.pot.as_mut().unwrap().phase = phase;
        let flows = Flows::new(net, &state, 100.0, 20.0);
        let x = flows.pack(&state);
        let (mut df, mut dg) = ([[0.0; X]; X], [[0.0; X]; Q]);
        flows.jacobian(&x, &mut df, &mut dg);
        for column in 0..flows.dim() {
            let step = 1e-5 * x[column].abs();
            let rates = |sign: f64| {
                let mut moved = x;
                moved[column] += sign * step;
                let (mut f, mut g) = ([0.0; X], [0.0; Q]);
                flows.rates(&moved, &mut f, &mut g);
                (f, g)
            };
            let ((f_up, g_up), (f_down, g_down)) = (rates(1.0), rates(-1.0));
            let slope = |up: f64, down: f64| (up - down) / (2.0 * step);
            for row in 0..flows.dim() {
                let measured = slope(f_up[row], f_down[row]);
                near(df[row][column], measured, 1e-5 * measured.abs() + 1e-9);
            }
            for row in 0..Q {
                let measured = slope(g_up[row], g_down[row]);
                near(dg[row][column], measured, 1e-5 * measured.abs() + 1e-9);
            }
        }
    }
}

/// Two bodies without loss meet at the mean temperature, weighted by heat capacity, exponentially.
#[test]
fn two_bodies_meet_as_the_formula_says() {
    let curve = block(2.0);
    let tight = NetworkParts {
        g_loss_w_k: 0.0,
        ..parts()
    };
    let net = Network::new(&curve, tight).unwrap();
    let mut state = State::new(&net, 0.0, 150.0, 20.0).unwrap();
    let pot = Pot {
        g_air_w_k: 0.0,
        thickness: 1.0,
        ..POT
    };
    state.put_pot_in(pot).unwrap();
    let (store, load) = (1800.0, 400.0 + CP_J_KGK);
    let mean_c = (store * 150.0 + load * 20.0) / (store + load);
    go(&net, &mut state, 900.0, 0.0);
    let left = (-8.0 * 900.0 * (1.0 / store + 1.0 / load)).exp();
    let apart_k = state.store_c(&net) - state.pot().unwrap().t_c();
    near(apart_k, 130.0 * left, 1e-3);
    go(&net, &mut state, 36_000.0, 0.0);
    near(state.store_c(&net), mean_c, 1e-3);
    near(state.pot().unwrap().t_c(), mean_c, 1e-3);
}

#[test]
fn well_joined_nodes_are_one_store() {
    let curve = block(5.0);
    let one = Network::new(&curve, parts()).unwrap();
    let joined = NetworkParts {
        row: three_nodes(1e6),
        ..parts()
    };
    let three = Network::new(&curve, joined).unwrap();
    let ends = [&one, &three].map(|net| {
        let mut state = State::new(net, 0.0, 250.0, 120.0).unwrap();
        state.put_pot_in(POT).unwrap();
        let (ledger, heard) = go(net, &mut state, 10_000.0, 50.0);
        assert_eq!(heard.0[0].0, Event::Boils);
        (state.mixed_store_c(net), ledger.steam_j, heard.0[0].1)
    });
    near(ends[0].0, ends[1].0, 5e-3);
    near(ends[0].1, ends[1].1, 50.0);
    near(ends[0].2, ends[1].2, 0.1);
}

/// In the steady state heat from the middle node crosses known resistances.
#[test]
fn a_row_of_nodes_settles_on_its_resistances() {
    let curve = block(5.0);
    let mut row = three_nodes(10.0);
    row.jacket_share = [0.0, 0.0, 1.0, 0.0, 0.0, 0.0];
    let net = Network::new(&curve, NetworkParts { row, ..parts() }).unwrap();
    let mut state = State::new(&net, 0.0, 100.0, 60.0).unwrap();
    go(&net, &mut state, 1e6, 40.0);
    near(state.node_c(&net, 2), 20.0 + 40.0 / 0.4, 0.01);
    near(state.node_c(&net, 1) - state.node_c(&net, 2), 4.0, 0.01);
    near(state.node_c(&net, 0) - state.node_c(&net, 1), 0.0, 0.01);
}

/// A tilt moves the ends by its measure and the middle of the mass by nothing; a thermometer between two
/// nodes shows what lies between them.
#[test]
fn a_tilted_store_shows_its_middle_where_it_was() {
    let curve = block(5.0);
    let row = NodeRow {
        mass_share: [0.25, 0.5, 0.25, 0.0, 0.0, 0.0],
        ..three_nodes(10.0)
    };
    let net = Network::new(&curve, NetworkParts { row, ..parts() }).unwrap();
    let mut state = State::new(&net, 0.0, 200.0, 60.0).unwrap();
    state.tilt(&net, 40.0);
    // The middles lie at 1/8, 4/8 and 7/8 of the mass.
    near(state.node_c(&net, 0), 170.0, 1e-6);
    near(state.node_c(&net, 1), 200.0, 1e-6);
    near(state.node_c(&net, 2), 230.0, 1e-6);
    near(state.at_share_c(&net, 0.5), 200.0, 1e-6);
    near(state.at_share_c(&net, 0.3125), 185.0, 1e-6);
    near(state.at_share_c(&net, 0.05), 170.0, 1e-6);
    near(state.at_share_c(&net, 0.99), 230.0, 1e-6);
    let whole = Network::new(&curve, parts()).unwrap();
    let state = State::new(&whole, 0.0, 200.0, 60.0).unwrap();
    near(state.at_share_c(&whole, 0.5), 200.0, 1e-6);
}

#[test]
fn a_dish_at_a_steady_boil_is_done_in_its_time() {
    let curve = block(5.0);
    let net = Network::new(&curve, parts()).unwrap();
    let mut state = State::new(&net, 0.0, 150.0, 80.0).unwrap();
    let pot = Pot {
        t_c: net.boiling_point_c(),
        ..POT
    };
    state.put_pot_in(pot).unwrap();
    let (_, heard) = go(&net, &mut state, 5000.0, 250.0);
    let events: Vec<Event> = heard.0.iter().map(|(event, _)| *event).collect();
    assert_eq!(events, [Event::Boils, Event::Done]);
    near(heard.0[0].1, 0.0, 1e-3);
    let rate = BEANS.rate_per_s(net.boiling_point_c());
    near(heard.0[1].1, 1.0 / rate, 0.5);
    near(state.pot().unwrap().boil_s(), 5000.0, 1e-2);
    near(state.pot().unwrap().doneness(), 5000.0 * rate, 1e-4);
}

#[test]
fn a_pot_boils_dry_and_heats_on() {
    let curve = block(5.0);
    let net = Network::new(&curve, parts()).unwrap();
    let mut state = State::new(&net, 0.0, 200.0, 100.0).unwrap();
    let pot = Pot {
        water_kg: 0.1,
        ..POT
    };
    state.put_pot_in(pot).unwrap();
    let (ledger, heard) = go(&net, &mut state, 7200.0, 300.0);
    assert_eq!(heard.0.last().unwrap().0, Event::BoilsDry);
    let pot = state.pot().unwrap();
    assert_eq!(pot.phase(), PotPhase::Dry);
    assert!(pot.t_c() > 150.0);
    near(pot.water_kg(), 0.0, 1e-12);
    near(ledger.steam_j, 0.1 * net.heat_of_vaporisation_j_kg(), 1.0);
}

/// Common practice, no source: 100 W never boil a pot without its lid; with one they do.
#[test]
fn a_lid_decides_whether_a_small_heater_boils() {
    let curve = block(5.0);
    let tight = NetworkParts {
        g_loss_w_k: 0.0,
        ..parts()
    };
    let net = Network::new(&curve, tight).unwrap();
    let hottest = |surface| {
        let mut state = State::new(&net, 0.0, 20.0, 20.0).unwrap();
        let pot = Pot {
            surface,
            water_kg: 3.0,
            ..POT
        };
        state.put_pot_in(pot).unwrap();
        let (ledger, _) = go(&net, &mut state, 43_200.0, 100.0);
        let evaporated_kg = ledger.steam_j / net.heat_of_vaporisation_j_kg();
        near(3.0 - state.pot().unwrap().water_kg(), evaporated_kg, 1e-9);
        state.pot().unwrap().t_c()
    };
    let open_c = hottest(Some(OPEN));
    assert!((55.0..75.0).contains(&open_c), "{open_c}");
    near(hottest(None), net.boiling_point_c(), 1e-9);
}

#[test]
fn water_above_the_boil_flashes() {
    let curve = block(5.0);
    let high = NetworkParts {
        altitude_m: 4000.0,
        ..parts()
    };
    let net = Network::new(&curve, high).unwrap();
    let mut state = State::new(&net, 0.0, 20.0, 20.0).unwrap();
    state.put_pot_in(Pot { t_c: 95.0, ..POT }).unwrap();
    let before_j = state.stored_j(&net);
    let (ledger, heard) = go(&net, &mut state, 1.0, 0.0);
    let flashed_j = (400.0 + CP_J_KGK) * (95.0 - net.boiling_point_c());
    near(ledger.steam_j, flashed_j, 1e-6 * flashed_j);
    near(state.stored_j(&net) - before_j, -ledger.lost_j(), 1e-6);
    assert!(heard.0.is_empty());
}

#[test]
fn the_thermostat_switches_at_its_two_temperatures() {
    let curve = block(3.0);
    let guarded = NetworkParts {
        cutout_c: Some(200.0),
        ..parts()
    };
    let net = Network::new(&curve, guarded).unwrap();
    let mut state = State::new(&net, 0.0, 199.0, 110.0).unwrap();
    let mut temperatures = Vec::new();
    struct At<'t>(&'t mut Vec<(Event, f64)>);
    impl Watch for At<'_> {
        fn event(&mut self, event: Event, net: &Network<'_>, state: &State) {
            self.0.push((event, state.store_c(net)));
        }
    }
    let span = Span {
        duration_s: 2000.0,
        heater_w: 300.0,
        air_c: 20.0,
    };
    let mut ledger = Ledger::default();
    run(
        &net,
        &mut state,
        &span,
        &mut ledger,
        &mut At(&mut temperatures),
    )
    .unwrap();
    assert!(temperatures.len() > 4);
    for (index, (event, t_c)) in temperatures.iter().enumerate() {
        let expected = [(Event::CutsOut, 200.0), (Event::LetsIn, 195.0)][index % 2];
        assert_eq!(*event, expected.0);
        near(*t_c, expected.1, 1e-9);
    }
}

/// A jacket of a milligram, a seat like a weld, a store that melts at a point: still few steps.
#[test]
fn no_stiffness_makes_it_slow() {
    let mut salt = SUGAR_ALCOHOL;
    salt.melt = salt.melt.map(|melt| Melt {
        t_solidus_c: melt.t_liquidus_c,
        ..melt
    });
    let curve = EnthalpyCurve::new(&[(4.0, salt)]).unwrap();
    let stiff = NetworkParts {
        c_jacket_j_k: 1e-3,
        seat: Seat {
            g_contact_w_k: 1e5,
            layer: None,
        },
        row: three_nodes(1e5),
        ..parts()
    };
    let net = Network::new(&curve, stiff).unwrap();
    let mut state = State::new(&net, 0.0, 140.0, 20.0).unwrap();
    state.put_pot_in(POT).unwrap();
    let before_j = state.stored_j(&net);
    let (ledger, _) = go(&net, &mut state, 1e6, 0.0);
    near(state.stored_j(&net), before_j - ledger.lost_j(), 1e-2);
    near(state.store_c(&net), 20.0, 0.5);
}

#[test]
fn what_has_no_sense_is_refused() {
    let curve = block(3.0);
    let refused = |edit: fn(&mut NetworkParts)| {
        let mut wrong = parts();
        edit(&mut wrong);
        Network::new(&curve, wrong).is_err()
    };
    assert!(refused(|p| p.g_loss_w_k = -1.0));
    assert!(refused(|p| p.c_jacket_j_k = 0.0));
    assert!(refused(|p| p.altitude_m = f64::NAN));
    assert!(refused(|p| p.row.count = 7));
    assert!(refused(|p| p.row.mass_share[0] = 0.9));
    assert!(refused(|p| p.seat.layer = Some(Layer {
        medium: 1,
        depth_m: 0.01,
        k_solid_w_mk: 0.5,
        area_m2: 0.04,
        elsewhere: 0.0,
    })));
    let net = Network::new(&curve, parts()).unwrap();
    let mut state = State::new(&net, 0.0, 100.0, 50.0).unwrap();
    assert!(
        state
            .put_pot_in(Pot {
                water_kg: -1.0,
                ..POT
            })
            .is_err()
    );
    let mut empty = POT;
    (empty.water_kg, empty.c_dry_j_k) = (0.0, 0.0);
    assert!(state.put_pot_in(empty).is_err());
    let backwards = Span {
        duration_s: -1.0,
        heater_w: 0.0,
        air_c: 20.0,
    };
    assert!(
        run(
            &net,
            &mut state,
            &backwards,
            &mut Ledger::default(),
            &mut ()
        )
        .is_err()
    );
}
