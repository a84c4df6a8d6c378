//! Melts among metal against fine 1-D conduction with their melting.

use super::*;

/// A melting range and its heat per volume.
#[derive(Debug, Clone, Copy)]
pub(super) struct Melts {
    pub(super) from_c: f64,
    pub(super) to_c: f64,
    pub(super) latent_j_m3: f64,
}

/// Time to boil, s: explicit, heat as the state, each step well within what is stable.
pub(super) fn fine_melt_s(case: Case) -> Option<f64> {
    const CELLS: usize = 60;
    let melts = case.melts?;
    let Cells {
        volume_m3: volume,
        to_pot,
        link,
    } = Cells::new(case, CELLS, 1.4);
    let c = case.volumetric_j_m3k;
    let range_k = melts.to_c - melts.from_c;
    // Per volume, above the solidus; the melt's own heat is spread over the range.
    let through_j_m3 = melts.latent_j_m3 + c * range_k;
    let store_c = |j_m3: f64| {
        if j_m3 < 0.0 {
            melts.from_c + j_m3 / c
        } else if j_m3 < through_j_m3 {
            melts.from_c + range_k * j_m3 / through_j_m3
        } else {
            melts.to_c + (j_m3 - through_j_m3) / c
        }
    };
    let start_j_m3 = if melts.to_c < case.store_c {
        through_j_m3 + c * (case.store_c - melts.to_c)
    } else if melts.from_c < case.store_c {
        through_j_m3 * (case.store_c - melts.from_c) / range_k
    } else {
        c * (case.store_c - melts.from_c)
    };
    let mut held_j_m3 = [start_j_m3; CELLS];
    let stable_s = (0..CELLS)
        .map(|idx| {
            let inner = if idx == 0 { to_pot } else { link[idx - 1] };
            let outer = link.get(idx).copied().unwrap_or(0.0);
            c * volume[idx] / (inner + outer)
        })
        .fold(f64::INFINITY, f64::min);
    let dt_s = 0.4 * stable_s;
    let (mut pot_c, mut time_s) = (POT_C, 0.0);
    while time_s < LONGEST_S {
        let cells_c = held_j_m3.map(store_c);
        let into_pot_w = to_pot * (cells_c[0] - pot_c);
        held_j_m3[0] -= dt_s * into_pot_w / volume[0];
        for idx in 0..CELLS - 1 {
            let inward_w = link[idx] * (cells_c[idx + 1] - cells_c[idx]);
            held_j_m3[idx] += dt_s * inward_w / volume[idx];
            held_j_m3[idx + 1] -= dt_s * inward_w / volume[idx + 1];
        }
        let rise_k = dt_s * into_pot_w / case.pot_j_k();
        if BOILING_C <= pot_c + rise_k {
            return Some(time_s + dt_s * (BOILING_C - pot_c) / rise_k);
        }
        pot_c += rise_k;
        time_s += dt_s;
    }
    None
}

/// Melts among metal, superheated, just molten and half frozen: what freezes nearest to the seat is in
/// the way while the rest is hot. Figures of a nitrate and of a sugar alcohol, per volume.
#[test]
fn melts_among_metal() {
    let nitrate = Melts {
        from_c: 222.0,
        to_c: 238.0,
        latent_j_m3: 1.9e8,
    };
    let alcohol = Melts {
        from_c: 117.0,
        to_c: 119.0,
        latent_j_m3: 4.8e8,
    };
    let disc = Way::Disc {
        depth_m: 0.08,
        face_m2: 0.05,
        seat_m2: 0.0314,
    };
    let mut seen = 0;
    for (melts, temperatures_c) in [
        (nitrate, [320.0, 270.0, 239.0, 229.0]),
        (alcohol, [150.0, 135.0, 120.0, 118.5]),
    ] {
        for (way, conductivity_w_mk) in [
            (Way::cup(0.004, 0.1, 0.06), 8.0),
            (disc, 20.0),
            (disc, 8.0),
            (Way::cup(0.004, 0.1, 0.06), 3.0),
        ] {
            for (contact_w_m2k, water_kg) in [(200.0, 1.0), (200.0, 2.0), (450.0, 1.5)] {
                for store_c in temperatures_c {
                    let case = Case {
                        way,
                        conductivity_w_mk,
                        volumetric_j_m3k: 2.6e6,
                        contact_w_m2k,
                        store_c,
                        water_kg,
                        melts: Some(melts),
                    };
                    if fine_melt_s(case).is_some_and(|fine_s| 120.0 < fine_s) {
                        agree(case);
                        seen += 1;
                    }
                }
            }
        }
    }
    assert!(60 <= seen, "{seen}");
}
