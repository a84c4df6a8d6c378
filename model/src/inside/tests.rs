//! The row of nodes against fine 1-D conduction, slab and ring.

use proptest::prelude::*;

use super::*;
use crate::conduction::in_series;
use crate::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use crate::network::{Event, Ledger, Network, NetworkParts, Pot, Seat, Span, State, Watch, run};

mod melts;

use melts::{Melts, fine_melt_s};

const BOILING_C: f64 = 99.974;
const LONGEST_S: f64 = 6.0 * 3600.0;
const POT_C: f64 = 20.0;

#[derive(Debug, Clone, Copy)]
struct Case {
    way: Way,
    conductivity_w_mk: f64,
    volumetric_j_m3k: f64,
    contact_w_m2k: f64,
    store_c: f64,
    water_kg: f64,
    melts: Option<Melts>,
}

impl Case {
    fn seat_m2(self) -> f64 {
        match self.way {
            Way::Slab { seat_m2, .. } | Way::Disc { seat_m2, .. } => seat_m2,
            Way::Cup {
                radius_m, deep_m, ..
            } => cup_m2(radius_m, deep_m, 0.0),
            Way::Ring {
                inner_radius_m,
                height_m,
                ..
            } => 2.0 * PI * inner_radius_m * height_m,
        }
    }

    fn volume_m3(self) -> f64 {
        match self.way {
            Way::Slab {
                depth_m, face_m2, ..
            }
            | Way::Disc {
                depth_m, face_m2, ..
            } => depth_m * face_m2,
            Way::Cup {
                radius_m,
                deep_m,
                thickness_m,
            } => cup_m3(radius_m, deep_m, thickness_m),
            Way::Ring {
                inner_radius_m,
                outer_radius_m,
                height_m,
            } => PI * (outer_radius_m.powi(2) - inner_radius_m.powi(2)) * height_m,
        }
    }

    fn pot_j_k(self) -> f64 {
        450.0 + crate::water::CP_J_KGK * self.water_kg
    }
}

/// Time to boil by the network, s.
fn coarse_s(case: Case) -> Option<f64> {
    struct Boils(Option<f64>);
    impl Watch for Boils {
        fn event(&mut self, event: Event, _: &Network<'_>, state: &State) {
            if event == Event::Boils {
                self.0.get_or_insert(state.time_s());
            }
        }
    }
    let cut = match case.melts {
        None => Inside::new,
        Some(_) => Inside::of_melt,
    };
    let inside = cut(case.way, case.conductivity_w_mk, case.contact_w_m2k);
    // One kilogram per joule and kelvin of the whole, so that nothing is rounded.
    let medium = MediumCurve {
        melt: case.melts.map(|melts| Melt {
            t_solidus_c: melts.from_c,
            t_liquidus_c: melts.to_c,
            latent_j_kg: melts.latent_j_m3,
            cp_liquid_j_kgk: case.volumetric_j_m3k,
        }),
        ..MediumCurve::solid(case.volumetric_j_m3k, 0.0)
    };
    let curve = EnthalpyCurve::new(&[(case.volume_m3(), medium)]).unwrap();
    let contact_w_k = case.contact_w_m2k * case.seat_m2();
    let parts = NetworkParts {
        row: inside.row,
        g_loss_w_k: 0.0,
        c_jacket_j_k: 1.0,
        seat: Seat {
            g_contact_w_k: in_series(&[contact_w_k, inside.face_w_k]),
            layer: None,
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    };
    let net = Network::new(&curve, parts).unwrap();
    let mut state = State::new(&net, 0.0, case.store_c, case.store_c).unwrap();
    let pot = Pot {
        c_dry_j_k: 450.0,
        water_kg: case.water_kg,
        t_c: POT_C,
        g_air_w_k: 0.0,
        thickness: 1.0,
        surface: None,
        cook: None,
    };
    state.put_pot_in(pot).unwrap();
    let span = Span {
        duration_s: LONGEST_S,
        heater_w: 0.0,
        air_c: 20.0,
    };
    let mut boils = Boils(None);
    run(&net, &mut state, &span, &mut Ledger::default(), &mut boils).unwrap();
    boils.0
}

/// A store in many cells from the seat outwards, as a fine solver takes it.
struct Cells {
    volume_m3: Vec<f64>,
    /// From the first to the pot, and from each to the next. \[W/K\]
    to_pot: f64,
    link: Vec<f64>,
}

impl Cells {
    /// Thin at the seat: the depth's share grows with this power of the place.
    fn new(case: Case, count: usize, growth: f64) -> Self {
        let at = |place: usize| (place as f64 / count as f64).powf(growth);
        let shells: Vec<Shell> = (0..count)
            .map(|idx| case.way.shell(at(idx), at(idx + 1)))
            .collect();
        let k = case.conductivity_w_mk;
        let contact_w_k = case.contact_w_m2k * case.seat_m2();
        Self {
            to_pot: in_series(&[contact_w_k, k / shells[0].middle_k_w]),
            link: shells
                .windows(2)
                .map(|pair| k / (pair[1].middle_k_w - pair[0].middle_k_w))
                .collect(),
            volume_m3: shells
                .iter()
                .map(|shell| shell.share * case.volume_m3())
                .collect(),
        }
    }
}

/// Time to boil by explicit finite volumes, s; halving the cells moves it by less than 0.1 %.
fn fine_s(case: Case) -> Option<f64> {
    const CELLS: usize = 120;
    let Cells {
        volume_m3,
        to_pot,
        link,
    } = Cells::new(case, CELLS, 1.6);
    let capacity: Vec<f64> = volume_m3
        .iter()
        .map(|volume_m3| volume_m3 * case.volumetric_j_m3k)
        .collect();
    let mut store_c = vec![case.store_c; CELLS];
    let mut pot_c = POT_C;
    let (mut time_s, dt_s) = (0.0, 4.0);
    // Implicit, by elimination along the row; small steps, for it is of first order.
    let (mut gain, mut given) = (vec![0.0; CELLS], vec![0.0; CELLS]);
    while time_s < LONGEST_S {
        for idx in 0..CELLS {
            let inner = if idx == 0 { to_pot } else { link[idx - 1] };
            let outer = if idx + 1 < CELLS { link[idx] } else { 0.0 };
            let own = capacity[idx] / dt_s;
            let below = if idx == 0 { 0.0 } else { gain[idx - 1] };
            let carried = if idx == 0 { pot_c } else { given[idx - 1] };
            let pivot = own + inner * (1.0 - below) + outer;
            gain[idx] = outer / pivot;
            given[idx] = (own * store_c[idx] + inner * carried) / pivot;
        }
        for idx in (0..CELLS).rev() {
            let next_c = if idx + 1 < CELLS {
                store_c[idx + 1]
            } else {
                0.0
            };
            store_c[idx] = given[idx] + gain[idx] * next_c;
        }
        let before_c = pot_c;
        pot_c += dt_s * to_pot * (store_c[0] - pot_c) / case.pot_j_k();
        time_s += dt_s;
        if BOILING_C <= pot_c {
            return Some(time_s - dt_s * (pot_c - BOILING_C) / (pot_c - before_c));
        }
    }
    None
}

fn agree(case: Case) {
    let fine = match case.melts {
        None => fine_s(case),
        Some(_) => fine_melt_s(case),
    };
    let coarse = coarse_s(case);
    let (Some(fine), Some(coarse)) = (fine, coarse) else {
        panic!("{fine:?} {coarse:?} {case:?}");
    };
    assert!(
        (coarse / fine - 1.0).abs() < 0.03,
        "{coarse} s for {fine} s in {case:?}"
    );
}

/// Asked: time to boil within 3 % of a fine 1-D solution.
#[test]
fn slabs_of_stone_concrete_and_sand() {
    let mut seen = 0;
    for (conductivity_w_mk, volumetric_j_m3k) in
        [(4.5, 3.19e6), (2.2, 2.52e6), (1.4, 2.25e6), (0.3, 1.55e6)]
    {
        for (depth_m, store_c) in [(0.05, 400.0), (0.10, 300.0), (0.12, 350.0)] {
            for contact_w_m2k in [80.0, 200.0, 500.0] {
                let case = Case {
                    way: Way::Slab {
                        depth_m,
                        face_m2: 0.04,
                        seat_m2: 0.04,
                    },
                    conductivity_w_mk,
                    volumetric_j_m3k,
                    contact_w_m2k,
                    store_c,
                    water_kg: 0.5,
                    melts: None,
                };
                if fine_s(case).is_some_and(|fine_s| 120.0 < fine_s) {
                    agree(case);
                    seen += 1;
                }
            }
        }
    }
    assert!(20 <= seen, "{seen}");
}

#[test]
fn rings_round_a_pot() {
    let mut seen = 0;
    for (conductivity_w_mk, volumetric_j_m3k) in [(4.5, 3.19e6), (1.4, 2.25e6), (0.3, 1.55e6)] {
        for outer_radius_m in [0.14, 0.17, 0.22] {
            for contact_w_m2k in [35.0, 100.0, 300.0] {
                let case = Case {
                    way: Way::Ring {
                        inner_radius_m: 0.1,
                        outer_radius_m,
                        height_m: 0.1,
                    },
                    conductivity_w_mk,
                    volumetric_j_m3k,
                    contact_w_m2k,
                    store_c: 350.0,
                    water_kg: 1.0,
                    melts: None,
                };
                if fine_s(case).is_some_and(|fine_s| 120.0 < fine_s) {
                    agree(case);
                    seen += 1;
                }
            }
        }
    }
    assert!(15 <= seen, "{seen}");
}

/// A pot let into stone or sand, and one on a slab that is wider than its base.
#[test]
fn cups_and_wide_discs() {
    let mut seen = 0;
    for (conductivity_w_mk, volumetric_j_m3k) in [(4.5, 3.19e6), (1.4, 2.25e6), (0.3, 1.55e6)] {
        for way in [
            Way::cup(0.01, 0.09, 0.08),
            Way::cup(0.006, 0.08, 0.12),
            Way::Disc {
                depth_m: 0.1,
                face_m2: 0.05,
                seat_m2: 0.025,
            },
            Way::Disc {
                depth_m: 0.06,
                face_m2: 0.08,
                seat_m2: 0.03,
            },
        ] {
            for contact_w_m2k in [60.0, 200.0] {
                let case = Case {
                    way,
                    conductivity_w_mk,
                    volumetric_j_m3k,
                    contact_w_m2k,
                    store_c: 330.0,
                    water_kg: 1.0,
                    melts: None,
                };
                if fine_s(case).is_some_and(|fine_s| 120.0 < fine_s) {
                    agree(case);
                    seen += 1;
                }
            }
        }
    }
    assert!(15 <= seen, "{seen}");
}

/// Where nothing narrows, a disc is a slab; a cup holds what it was made of, its surface and volume
/// those of a disc, a tube and a quarter of a torus (any table of solids).
#[test]
fn cups_and_discs_measure_what_they_should() {
    let (depth_m, face_m2, seat_m2) = (0.1, 0.04, 0.04);
    let disc = Way::Disc {
        depth_m,
        face_m2,
        seat_m2,
    };
    let slab = Way::Slab {
        depth_m,
        face_m2,
        seat_m2,
    };
    let (disc, slab) = (Inside::new(disc, 1.4, 200.0), Inside::new(slab, 1.4, 200.0));
    assert!((disc.face_w_k / slab.face_w_k - 1.0).abs() < 1e-9);
    for (one, other) in disc
        .row
        .link_w_k
        .iter()
        .zip(slab.row.link_w_k)
        .take(MAX_NODES - 1)
    {
        assert!((one / other - 1.0).abs() < 1e-9);
    }
    let Way::Cup { thickness_m, .. } = Way::cup(0.01, 0.09, 0.08) else {
        panic!("a cup is a cup");
    };
    let (r, t) = (0.09_f64, thickness_m);
    let tube = PI * ((r + t).powi(2) - r * r) * 0.08;
    // Pappus: the quarter circle's centre of area lies 4t/3pi from its corner.
    let edge = 0.25 * PI * t * t * 2.0 * PI * (r + 4.0 * t / (3.0 * PI));
    let whole = PI * r * r * t + tube + edge;
    assert!((whole / 0.01 - 1.0).abs() < 1e-9, "{whole}");
}

/// The jacket takes its heat where the store turns a face to it, all of it once.
#[test]
fn faces_are_shared_out() {
    let disc = Way::Disc {
        depth_m: 0.1,
        face_m2: 0.05,
        seat_m2: 0.025,
    };
    for way in [Way::cup(0.01, 0.09, 0.08), disc] {
        let row = Inside::new(way, 0.3, 200.0).row;
        let sum: f64 = row.jacket_share.iter().sum();
        assert!((sum - 1.0).abs() < 1e-12);
        let last = row.jacket_share[MAX_NODES - 1];
        assert!(row.mass_share[MAX_NODES - 1] < last, "{last}");
    }
}

/// A face that is suddenly cooled through a film: Incropera et al., eq. 5.63, semi-infinite solid,
/// h = 200 W/m2K, k = 1.4 W/mK, alpha = 0.62e-6 m2/s. The flow into a pot that stays cold is
/// h dT exp(b2) erfc(b) with b = h sqrt(alpha t)/k.
#[test]
fn early_flow_is_that_of_a_half_space() {
    let way = Way::Slab {
        depth_m: 0.2,
        face_m2: 1.0,
        seat_m2: 1.0,
    };
    let inside = Inside::new(way, 1.4, 200.0);
    let capacity_j_m3k = 1.4 / 0.62e-6;
    let mut store_c = [300.0; MAX_NODES];
    let seat = in_series(&[200.0, inside.face_w_k]);
    let (mut drawn_j, dt_s) = (0.0, 0.05);
    for _ in 0..(1800.0 / dt_s) as usize {
        let mut flow = [0.0; MAX_NODES + 1];
        flow[0] = seat * (store_c[0] - 100.0);
        for idx in 1..MAX_NODES {
            flow[idx] = inside.row.link_w_k[idx - 1] * (store_c[idx] - store_c[idx - 1]);
        }
        for idx in 0..MAX_NODES {
            let capacity = capacity_j_m3k * 0.2 * inside.row.mass_share[idx];
            store_c[idx] += dt_s * (flow[idx + 1] - flow[idx]) / capacity;
        }
        drawn_j += dt_s * flow[0];
    }
    // Integral of the flow: (k dT/(h alpha)) k (exp(b2) erfc(b) - 1 + 2 b/sqrt(pi)), with
    // exp(b2) erfc(b) at b = 4.772: 0.115788 (Abramowitz and Stegun, 7.1.23).
    let b = 200.0 * (0.62e-6_f64 * 1800.0).sqrt() / 1.4;
    let exact_j = 1.4 * 1.4 * 200.0 / (200.0 * 0.62e-6) * (0.115788 - 1.0 + 2.0 * b / PI.sqrt());
    assert!((b - 4.772).abs() < 1e-3);
    assert!(
        (drawn_j / exact_j - 1.0).abs() < 0.02,
        "{drawn_j} {exact_j}"
    );
}

#[test]
fn metal_is_one_node() {
    let way = Way::Slab {
        depth_m: 0.08,
        face_m2: 0.03,
        seat_m2: 0.03,
    };
    assert_eq!(Inside::new(way, 200.0, 500.0), Inside::LUMPED);
    assert_ne!(Inside::new(way, 4.5, 500.0), Inside::LUMPED);
}

/// A seat smaller than the slab has a longer way to it.
#[test]
fn a_small_seat_on_a_large_slab() {
    let face = |seat_m2: f64| {
        let way = Way::Slab {
            depth_m: 0.1,
            face_m2: 0.06,
            seat_m2,
        };
        Inside::new(way, 1.4, 200.0).face_w_k
    };
    assert!((face(0.06) / face(0.03) - 2.0).abs() < 1e-9);
    assert!((face(0.09) / face(0.06) - 1.0).abs() < 1e-9);
}

proptest! {
    #[test]
    fn every_row_is_whole(
        depth_m in 0.02..0.5_f64, radius_m in 0.03..0.3_f64, k in 0.05..5.0_f64,
        contact in 20.0..2000.0_f64,
    ) {
        let ways = [
            Way::Slab { depth_m, face_m2: 0.03, seat_m2: 0.02 },
            Way::Disc { depth_m, face_m2: 0.03, seat_m2: 0.02 },
            Way::Cup { radius_m, deep_m: 0.08, thickness_m: depth_m },
            Way::Ring {
                inner_radius_m: radius_m, outer_radius_m: radius_m + depth_m, height_m: 0.1,
            },
        ];
        for way in ways {
            let inside = Inside::new(way, k, contact);
            let sum: f64 = inside.row.mass_share.iter().sum();
            prop_assert!((sum - 1.0).abs() < 1e-12);
            prop_assert!(0.0 < inside.face_w_k);
            for node in 0..inside.row.count {
                prop_assert!(0.0 < inside.row.mass_share[node]);
                prop_assert!(node + 1 == inside.row.count || 0.0 < inside.row.link_w_k[node]);
            }
        }
    }
}
