//! A vacuum flask as jacket, sound or with its vacuum lost.

use model::flask::{Flask, LOST_PA, Neck, SILVERED_EMISSIVITY, SOUND_PA};
use model::media::Medium;
use model::network::{Network, NetworkParts, State};

use crate::kit::{AIR_C, minutes, parts, pot, store};

fn flask(pressure_pa: f64) -> Flask {
    Flask {
        inner_radius_m: 0.1,
        inner_height_m: 0.2,
        gap_m: 0.008,
        emissivity: SILVERED_EMISSIVITY.value,
        pressure_pa,
        neck: Neck {
            wall_w_mk: 16.0,
            wall_m: 0.5e-3,
            radius_m: 0.1,
            length_m: 0.06,
            stopper_w_mk: 0.06,
        },
    }
}

/// 8 kg of aluminium at 260 °C in a wide silvered flask of steel: after six hours the sound one still
/// boils a litre, the one that has lost its vacuum does not.
#[test]
fn a_flask_keeps_a_block_overnight_while_its_vacuum_lasts() {
    let block = store(&[(8.0, Medium::Aluminium)]);
    let morning = |pressure_pa: f64| {
        let jacket = flask(pressure_pa).thermal(180.0, AIR_C, 400.0).unwrap();
        let build = NetworkParts {
            g_loss_w_k: jacket.loss_w_k,
            c_jacket_j_k: jacket.capacity_j_k,
            ..parts(0.0, 500.0)
        };
        let net = Network::new(&block, build).unwrap();
        let mut state = State::new(&net, 0.0, 260.0, AIR_C).unwrap();
        minutes(&net, &mut state, 360.0, 0.0);
        let store_c = state.store_c(&net);
        state.put_pot_in(pot(1.0)).unwrap();
        (store_c, minutes(&net, &mut state, 90.0, 0.0))
    };
    let (sound_c, sound_boils) = morning(SOUND_PA.value);
    let (lost_c, lost_boils) = morning(LOST_PA);
    assert!(lost_c + 30.0 < sound_c, "{sound_c} {lost_c}");
    assert!(sound_boils.is_some(), "{sound_c}");
    assert!(lost_boils.is_none(), "{lost_c}");
}

/// Outgassing: the loss grows from the first pascal and is half-way to the worst near a kilopascal.
#[test]
fn a_flask_that_was_heated_too_often() {
    let loss = |pressure_pa: f64| flask(pressure_pa).loss(180.0, AIR_C).unwrap().whole_w_k;
    let (sound, lost) = (loss(SOUND_PA.value), loss(LOST_PA));
    assert!(sound < loss(1.0) && loss(1.0) < loss(100.0) && loss(100.0) < lost);
    assert!(1.5 * sound < lost, "{sound} {lost}");
    assert!(0.5 * (sound + lost) < loss(1000.0));
}
