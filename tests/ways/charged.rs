//! Other ways to charge: a tracked concentrator, and a top-up beside the sun.

use model::concentrator::{Concentrator, Receiver};
use model::media::Medium;
use model::network::{Network, NetworkParts, State};
use model::panel::{Array, Datasheet, Drive, Heater};
use model::sun::Sky;
use model::top_up::{TopUp, together_w};

use crate::kit::{AIR_C, day, minutes, parts, pot, store};

/// A dish of 1.5 m² that follows the sun charges 10 kg of salt to 330 °C on a clear day; under a grey
/// sky there is no beam, and it stays cold.
#[test]
fn a_dish_charges_salt_on_a_clear_day() {
    let dish = Concentrator {
        aperture_m2: 1.5,
        optical_efficiency: 0.6,
        receiver: Receiver {
            area_m2: 0.03,
            emissivity: 0.9,
            convection_w_m2k: 12.0,
        },
    }
    .checked()
    .unwrap();
    let salt = store(&[(10.0, Medium::SodiumPotassiumNitrate)]);
    let build = NetworkParts {
        cutout_c: Some(340.0),
        ..parts(0.3, 500.0)
    };
    let net = Network::new(&salt, build).unwrap();
    let evening_c = |sky: Sky| {
        let light = day(sky);
        let mut state = State::new(&net, 0.0, 40.0, 30.0).unwrap();
        for (step, heat_w) in light.steps.iter().zip(dish.day_w(&light, 230.0)) {
            if step.start_s < 17 * 3600 {
                minutes(&net, &mut state, 30.0, heat_w);
            }
        }
        state.store_c(&net)
    };
    assert!(320.0 < evening_c(Sky::Clear), "{}", evening_c(Sky::Clear));
    assert!(evening_c(Sky::Grey) < 60.0, "{}", evening_c(Sky::Grey));
    // By hand: 1.5 m² x 0.6 x 750 W/m² for 8 h is 5.4 kWh; 10 kg from 40 to 330 °C take 1.5 kWh.
    let takes_kwh = (salt.enthalpy_j(330.0) - salt.enthalpy_j(40.0)) / 3.6e6;
    assert!((1.2..1.7).contains(&takes_kwh), "{takes_kwh}");
}

/// A grey day on 200 W leaves the block too cold; half an hour of the grid on top brings the litre.
#[test]
fn two_charges_at_once() {
    let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 2).unwrap();
    let heater = Heater {
        drive: Drive::Direct,
        resistance_ohm: 1.9,
        wire_ohm: 0.05,
        alpha_per_k: 0.0,
    };
    let block = store(&[(5.0, Medium::Aluminium)]);
    let build = NetworkParts {
        cutout_c: Some(330.0),
        ..parts(0.3, 500.0)
    };
    let net = Network::new(&block, build).unwrap();
    let grid = TopUp {
        start_s: 17.0 * 3600.0,
        end_s: 17.5 * 3600.0,
        power_w: 500.0,
        share: 0.95,
    }
    .checked()
    .unwrap();
    let light = day(Sky::Grey);
    let evening = |top_ups: &[TopUp]| {
        let mut state = State::new(&net, 0.0, AIR_C, AIR_C).unwrap();
        for step in light.steps.iter().filter(|step| step.start_s < 18 * 3600) {
            let from_s = f64::from(step.start_s);
            let sun_w = heater.mean_heat_w(&array, &step.states);
            let both_w = together_w(sun_w, top_ups, from_s, from_s + 1800.0);
            minutes(&net, &mut state, 30.0, both_w);
        }
        let store_j = state.store_j();
        state.put_pot_in(pot(1.0)).unwrap();
        (store_j, minutes(&net, &mut state, 60.0, 0.0))
    };
    let (sun_j, sun_boils) = evening(&[]);
    let (both_j, both_boils) = evening(&[grid]);
    assert_eq!(sun_boils, None);
    assert!(both_boils.is_some());
    // 855 kJ less what the hotter block loses in its hour, and what warms its jacket: 2500 J/K by half
    // of 165 K.
    let gained_j = both_j - sun_j;
    assert!((0.7 * 855e3..855e3).contains(&gained_j), "{gained_j}");
}
