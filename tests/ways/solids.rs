//! Metal, stone, concrete, sand; a heater cast in mortar; and no store at all.

use model::air::layer_from_below_w_m2k;
use model::conduction::in_series;
use model::inside::{Inside, Way};
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use model::media::Medium;
use model::network::{Network, NetworkParts, Seat, State};
use model::panel::{Array, Datasheet, Drive, Heater};
use model::seat;
use model::sun::Sky;

use crate::kit::{AIR_C, BASE_M2, boils_min, day, minutes, parts, pot, store};

/// 7 kg of aluminium at 280 °C, a good flat seat: two litres within the hour.
#[test]
fn a_block_of_aluminium() {
    let block = store(&[(7.0, Medium::Aluminium)]);
    let contact = seat::Seat::DryFlat.contact_w_m2k(200.0, 80.0);
    let net = Network::new(&block, parts(0.3, contact)).unwrap();
    let time_min = boils_min(&net, 280.0, 2.0).unwrap();
    assert!((5.0..45.0).contains(&time_min), "{time_min} min");
    // Above 110 °C it holds 7 kg times 167 kJ (0.41 T + 903): two litres and their pot take 697 kJ.
    let spare_j = block.enthalpy_j(280.0) - block.enthalpy_j(110.0);
    assert!((spare_j / 7.0 - 167.1e3).abs() < 300.0, "{spare_j}");
    assert!(boils_min(&net, 280.0, 4.0).is_none());
}

/// A slab under the pot, cut into nodes.
fn slab(medium: Medium, depth_m: f64, contact_w_m2k: f64) -> NetworkParts {
    let shut = parts(0.3, contact_w_m2k);
    let way = Way::Slab {
        depth_m,
        face_m2: 0.05,
        seat_m2: BASE_M2,
    };
    let conductivity = medium.props().conductivity_w_mk.value;
    let inside = Inside::new(way, conductivity, contact_w_m2k);
    NetworkParts {
        row: inside.row,
        seat: Seat {
            g_contact_w_k: in_series(&[shut.seat.g_contact_w_k, inside.face_w_k]),
            ..shut.seat
        },
        ..shut
    }
}

/// The same mass, heat and seat: soapstone gives its heat up, concrete slowly, sand hardly.
#[test]
fn stone_concrete_and_sand_are_not_alike() {
    let time_min = |medium: Medium| {
        let mass_kg = 14.0;
        let depth_m = mass_kg / medium.props().density_kg_m3.value / 0.05;
        let curve = store(&[(mass_kg, medium)]);
        let net = Network::new(&curve, slab(medium, depth_m, 200.0)).unwrap();
        boils_min(&net, 280.0, 1.0)
    };
    let soapstone = time_min(Medium::Soapstone).unwrap();
    let concrete = time_min(Medium::Concrete);
    let sand = time_min(Medium::DrySand);
    assert!((8.0..40.0).contains(&soapstone), "{soapstone} min");
    assert!(
        concrete.is_some_and(|concrete| 1.3 * soapstone < concrete),
        "{concrete:?}"
    );
    assert!(
        sand.is_none_or(|sand| 2.0 * concrete.unwrap() < sand),
        "{sand:?}"
    );
    // One node for all of it would call the sand as good as the stone.
    let curve = store(&[(14.0, Medium::DrySand)]);
    let hopeful = Network::new(&curve, parts(0.3, 200.0)).unwrap();
    let hopeful = boils_min(&hopeful, 280.0, 1.0).unwrap();
    assert!(hopeful < 1.2 * soapstone, "{hopeful} min");
}

/// A bucket of loose fill: a heater cast in 8 kg of mortar under the pot, 8 mm of air between, black
/// faces. Radiation carries most; with bright faces the pot waits twice as long.
#[test]
fn a_heater_in_mortar_under_an_air_gap() {
    let bucket = Jacket::Layers(LayeredJacket {
        shape: JacketShape::Cylinder {
            inner_radius_m: 0.13,
            inner_height_m: 0.22,
        },
        layers: vec![JacketLayer {
            kind: LayerKind::Insulation {
                material: Insulation::Perlite,
            },
            thickness_m: 0.12,
        }],
        lid: LidFit::Ordinary,
        through_rods: 0,
    });
    let jacket = bucket.thermal(250.0, AIR_C).unwrap();
    let mortar = store(&[(8.0, Medium::Concrete)]);
    let across =
        |emissivity: f64| layer_from_below_w_m2k(0.008, 280.0, 70.0, emissivity, emissivity);
    let net = |emissivity: f64| {
        let shut = parts(jacket.loss_w_k, across(emissivity));
        NetworkParts {
            c_jacket_j_k: jacket.capacity_j_k,
            ..shut
        }
    };
    let (black, bright) = (net(0.9), net(0.2));
    let black = Network::new(&mortar, black).unwrap();
    let bright = Network::new(&mortar, bright).unwrap();
    // All day on 150 W it gets hot; then the pot goes in and the sun still shines.
    let evening = |net: &Network<'_>| {
        let mut state = State::new(net, 0.0, AIR_C, AIR_C).unwrap();
        minutes(net, &mut state, 300.0, 150.0);
        assert!(
            (150.0..400.0).contains(&state.store_c(net)),
            "{}",
            state.store_c(net)
        );
        state.put_pot_in(pot(1.0)).unwrap();
        minutes(net, &mut state, 240.0, 150.0)
    };
    let black_min = evening(&black).unwrap();
    let bright_min = evening(&bright).unwrap_or(240.0);
    assert!((20.0..100.0).contains(&black_min), "{black_min} min");
    assert!(1.6 * black_min < bright_min, "{black_min} {bright_min} min");
    // Radiation between black faces at 280 and 70 °C: 0.818 sigma (553^4 - 343^4)/210 = 17.6 W/m²K.
    let radiation = across(0.9) - across(1e-6);
    assert!((radiation - 17.6).abs() < 0.2, "{radiation}");
}

/// The panel straight to a plate under the pot, no store: food heated over the day. 100 W bring three
/// litres to the boil on a clear day, and no grey day does.
#[test]
fn straight_to_the_pot_with_no_store() {
    let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
    let heater = Heater {
        drive: Drive::Direct,
        resistance_ohm: 3.7,
        wire_ohm: 0.1,
        alpha_per_k: 0.0,
    };
    let plate = store(&[(0.3, Medium::Aluminium)]);
    let net = Network::new(&plate, parts(0.05, 800.0)).unwrap();
    let boils_at_h = |sky: Sky, water_kg: f64| {
        let light = day(sky);
        let mut state = State::new(&net, 0.0, AIR_C, AIR_C).unwrap();
        state.put_pot_in(pot(water_kg)).unwrap();
        light.steps.iter().find_map(|step| {
            let heat_w = heater.mean_heat_w(&array, &step.states);
            let boils = minutes(&net, &mut state, 30.0, heat_w)?;
            Some(f64::from(step.start_s) / 3600.0 + boils / 60.0)
        })
    };
    let three = boils_at_h(Sky::Clear, 3.0).unwrap();
    assert!((11.0..16.0).contains(&three), "{three} h");
    assert!(boils_at_h(Sky::Clear, 1.0).unwrap() < three);
    assert_eq!(boils_at_h(Sky::Grey, 3.0), None);
}
