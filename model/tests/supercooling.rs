//! A melt that stays liquid below its melting point, in the network.

#![allow(
    clippy::unwrap_used,
    reason = "a test stops at what it does not expect"
)]

use model::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use model::network::{
    Event, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, Span, State, Watch, run,
};

const SUGAR_ALCOHOL: MediumCurve = MediumCurve {
    cp_a_j_kgk: 1380.0,
    cp_b_j_kgk2: 0.0,
    melt: Some(Melt {
        t_solidus_c: 117.0,
        t_liquidus_c: 119.0,
        latent_j_kg: 340e3,
        cp_liquid_j_kgk: 2760.0,
    }),
};
const PARTS: NetworkParts = NetworkParts {
    row: NodeRow::SINGLE,
    g_loss_w_k: 0.4,
    c_jacket_j_k: 1500.0,
    seat: Seat {
        g_contact_w_k: 15.0,
        layer: None,
    },
    g_lid_w_k: 0.0,
    cutout_c: None,
    altitude_m: 0.0,
};

fn plain() -> EnthalpyCurve {
    EnthalpyCurve::new(&[(5.0, SUGAR_ALCOHOL), (1.0, MediumCurve::solid(903.0, 0.41))]).unwrap()
}

/// The hottest and coldest of the store, and what happened.
#[derive(Default)]
struct Course {
    next_s: f64,
    store_c: Vec<f64>,
    events: Vec<(Event, f64)>,
}

impl Watch for Course {
    fn next_sample_s(&self) -> Option<f64> {
        Some(self.next_s)
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        self.store_c.push(state.store_c(net));
        self.next_s += 60.0;
    }

    fn event(&mut self, event: Event, net: &Network<'_>, state: &State) {
        self.events.push((event, state.store_c(net)));
    }
}

fn cool(net: &Network<'_>, state: &mut State, hours: f64) -> (Course, f64) {
    let mut course = Course::default();
    let mut ledger = Ledger::default();
    let before_j = state.stored_j(net);
    let span = Span {
        duration_s: hours * 3600.0,
        heater_w: 0.0,
        air_c: 20.0,
    };
    run(net, state, &span, &mut ledger, &mut course).unwrap();
    let gap_j = state.stored_j(net) - before_j + ledger.lost_j();
    (course, gap_j)
}

#[test]
fn it_stays_liquid_then_warms_up_and_no_heat_is_lost() {
    let curve = plain().with_supercooling(0, 75.0).unwrap();
    let net = Network::new(&curve, PARTS).unwrap();
    let mut state = State::new(&net, 0.0, 130.0, 70.0).unwrap();
    let (course, gap_j) = cool(&net, &mut state, 12.0);
    assert!(gap_j.abs() < 1e-3, "{gap_j} J");
    let coldest = course.store_c.iter().copied().fold(f64::MAX, f64::min);
    assert!((74.9..77.0).contains(&coldest), "{coldest}");
    // One event; after it the store is back in its melting range.
    assert_eq!(course.events.len(), 1, "{:?}", course.events);
    assert_eq!(course.events[0].0, Event::Freezes);
    assert!(
        (116.0..119.0).contains(&course.events[0].1),
        "{:?}",
        course.events
    );
    assert!(!state.is_supercooled(&net));
}

#[test]
fn heated_again_before_it_freezes_it_is_an_ordinary_melt() {
    let curve = plain().with_supercooling(0, 60.0).unwrap();
    let net = Network::new(&curve, PARTS).unwrap();
    let mut state = State::supercooled(&net, 0.0, 90.0, 50.0).unwrap();
    assert!(state.is_supercooled(&net));
    assert!((state.mixed_store_c(&net) - 90.0).abs() < 1e-6);
    assert!(state.solid_fraction(&net, 0).abs() < 1e-12);
    let span = Span {
        duration_s: 3600.0,
        heater_w: 400.0,
        air_c: 20.0,
    };
    run(&net, &mut state, &span, &mut Ledger::default(), &mut ()).unwrap();
    assert!(!state.is_supercooled(&net));
    // 400 W for an hour into 14.8 kJ/K, less the loss: no plateau on the way.
    assert!(150.0 < state.store_c(&net), "{}", state.store_c(&net));
}

/// The heat is there and the pot does not get it: at 90 degC no water boils, though the same heat
/// frozen would hold 117 degC.
#[test]
fn a_pot_on_a_supercooled_store_waits_for_the_crystals() {
    let curve = plain().with_supercooling(0, 60.0).unwrap();
    let net = Network::new(&curve, PARTS).unwrap();
    let pot = Pot {
        c_dry_j_k: 400.0,
        water_kg: 1.0,
        t_c: 20.0,
        g_air_w_k: 0.15,
        thickness: 1.0,
        surface: None,
        cook: None,
    };
    let boils = |seeded: bool| {
        let mut state = State::supercooled(&net, 0.0, 100.0, 60.0).unwrap();
        if seeded {
            state.seed_crystal(&net);
        }
        state.put_pot_in(pot).unwrap();
        let (course, gap_j) = cool(&net, &mut state, 0.7);
        assert!(gap_j.abs() < 1e3, "{gap_j}");
        course
            .events
            .iter()
            .any(|(event, _)| *event == Event::Boils)
    };
    assert!(boils(true));
    assert!(!boils(false));
}

/// One crystal is enough for a melt that hangs together: where its coldest part freezes, the rest does.
#[test]
fn several_nodes_freeze_together() {
    let curve = plain().with_supercooling(0, 80.0).unwrap();
    let row = NodeRow {
        count: 3,
        mass_share: [0.3, 0.3, 0.4, 0.0, 0.0, 0.0],
        link_w_k: [3.0, 3.0, 0.0, 0.0, 0.0, 0.0],
        heater_share: [0.0, 0.0, 1.0, 0.0, 0.0, 0.0],
        jacket_share: [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
        thermostat_node: 0,
    };
    let net = Network::new(&curve, NetworkParts { row, ..PARTS }).unwrap();
    let mut state = State::new(&net, 0.0, 125.0, 70.0).unwrap();
    let (course, gap_j) = cool(&net, &mut state, 20.0);
    assert!(gap_j.abs() < 1e-3, "{gap_j} J");
    let freezes = course
        .events
        .iter()
        .filter(|(event, _)| *event == Event::Freezes);
    assert_eq!(freezes.count(), 1, "{:?}", course.events);

    // What is still hot then does not stay liquid either.
    let links = [0.3, 0.3, 0.0, 0.0, 0.0, 0.0];
    let apart = NodeRow {
        link_w_k: links,
        ..row
    };
    let net = Network::new(
        &curve,
        NetworkParts {
            row: apart,
            ..PARTS
        },
    )
    .unwrap();
    let mut state = State::new(&net, 0.0, 125.0, 70.0).unwrap();
    let mut frozen = false;
    for _ in 0..80 {
        cool(&net, &mut state, 0.25);
        frozen |= state.solid_fraction(&net, 0) > 0.0;
        assert!(!frozen || !state.is_supercooled(&net));
    }
    assert!(frozen);
}

/// Turned over, the far end is at the seat with its heat.
#[test]
fn a_store_of_nodes_is_turned_over() {
    let curve = plain();
    let row = NodeRow {
        count: 3,
        mass_share: [0.1, 0.3, 0.6, 0.0, 0.0, 0.0],
        link_w_k: [1.0, 1.0, 0.0, 0.0, 0.0, 0.0],
        heater_share: [0.0, 0.0, 1.0, 0.0, 0.0, 0.0],
        jacket_share: [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
        thermostat_node: 0,
    };
    let net = Network::new(&curve, NetworkParts { row, ..PARTS }).unwrap();
    let mut state = State::new(&net, 0.0, 60.0, 40.0).unwrap();
    let span = Span {
        duration_s: 1800.0,
        heater_w: 300.0,
        air_c: 20.0,
    };
    run(&net, &mut state, &span, &mut Ledger::default(), &mut ()).unwrap();
    let (near_c, far_c) = (state.node_c(&net, 0), state.node_c(&net, 2));
    assert!(near_c + 5.0 < far_c, "{near_c} {far_c}");
    let before_j = state.store_j();
    state.turn_over(&net);
    assert!((state.store_j() / before_j - 1.0).abs() < 1e-12);
    assert!((state.node_c(&net, 0) - far_c).abs() < 1e-9);
    assert!(state.node_c(&net, 2) < far_c);
}

#[test]
fn without_it_nothing_changes_and_a_measurement_keeps_the_branch() {
    let (plain, curve) = (plain(), plain().with_supercooling(0, 70.0).unwrap());
    let with = Network::new(&curve, PARTS).unwrap();
    let without = Network::new(&plain, PARTS).unwrap();
    // Above the melting point and while it warms up, the two are the same to the last bit.
    let warm = |net: &Network<'_>| {
        let mut state = State::new(net, 0.0, 30.0, 20.0).unwrap();
        let span = Span {
            duration_s: 5.0 * 3600.0,
            heater_w: 250.0,
            air_c: 20.0,
        };
        run(net, &mut state, &span, &mut Ledger::default(), &mut ()).unwrap();
        (state.store_j().to_bits(), state.store_c(net).to_bits())
    };
    assert_eq!(warm(&with), warm(&without));

    let mut state = State::supercooled(&with, 0.0, 90.0, 50.0).unwrap();
    state.set_store(&with, curve.supercooled_enthalpy_j(85.0).unwrap(), 50.0);
    assert!(state.is_supercooled(&with));
    assert!((state.store_c(&with) - 85.0).abs() < 1e-6);
    state.set_store(&with, curve.enthalpy_j(60.0), 50.0);
    assert!(!state.is_supercooled(&with));
    assert!(State::supercooled(&with, 0.0, 60.0, 20.0).is_err());
    assert!(State::supercooled(&without, 0.0, 90.0, 20.0).is_err());
}
