//! The judge is judged: against exact solutions, against itself in finer steps, and by its books.

use std::f64::consts::PI;

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::{Meal, Outcome};
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::stefan;
use model::tonight::{Rig, Site};

use super::build::Truth;
use super::heat::{HeatTable, Melting, Stuff};
use super::jacket::round_jacket;
use super::kitchen::{Outdoors, Pace};
use super::random::Random;
use super::row::{OnSeat, Row, Store};
use super::shell::{Conducts, Jacket, Shell, cut, edges_m};

const NO_RANGE: (f64, f64) = (f64::INFINITY, f64::INFINITY);

fn stone(mass_kg: f64) -> Stuff {
    Stuff {
        mass_kg,
        cp_a_j_kgk: 1000.0,
        cp_b_j_kgk2: 0.0,
        melt: None,
    }
}

/// A store of these shells whose outer face is held at the air's temperature.
fn row(shells: Vec<Shell>, stuff: Stuff, conducts: Conducts) -> Row {
    let whole_m3: f64 = shells.iter().map(|shell| shell.volume_m3).sum();
    let share: Vec<f64> = shells
        .iter()
        .map(|shell| shell.volume_m3 / whole_m3)
        .collect();
    let n = shells.len();
    let mut outer = vec![0.0; n];
    outer[n - 1] = 1.0;
    let store = Store {
        mass_kg: share.iter().map(|share| share * stuff.mass_kg).collect(),
        heat_j: vec![0.0; n],
        shells,
        conducts,
        heater_share: share,
        jacket_share: outer,
        leak_w_k: 0.0,
    };
    let jacket = Jacket {
        shells: cut(|_| 1.0, &edges_m(1e-6, 2, 1.0)),
        capacity_j_m3k: 1.0,
        capacity_rise_k: 0.0,
        conductivity: vec![(0.0, 1e3), (100.0, 1e3)],
        film_w_k: 1e9,
    };
    Row::new(store, jacket, HeatTable::new(&[stuff]))
}

/// A long cylinder of stone, 10 cm thick, from 200 °C in a bath of 0 °C. Mean temperature by the
/// series over the zeros of J0, sum of 4/z² exp(-z² Fo): Incropera et al., Fundamentals of Heat and Mass
/// Transfer, 5.6.2; zeros from any table of Bessel functions.
#[test]
fn a_cylinder_cools_as_its_series() {
    let (radius_m, density, w_mk) = (0.05, 2500.0, 2.0);
    let shells = cut(
        |at_m| 2.0 * PI * at_m.max(1e-9),
        &edges_m(radius_m, 40, 1.0),
    );
    let mass_kg = density * PI * radius_m * radius_m;
    let conducts = Conducts {
        solid_w_mk: w_mk,
        melt_w_mk: w_mk,
        range_c: NO_RANGE,
    };
    let mut row = row(shells, stone(mass_kg), conducts);
    row.set(200.0, 0.0);
    let diffusivity = w_mk / (density * 1000.0);
    for second in 1..=1800_i32 {
        row.solve(1.0, 0.0, 0.0, None);
        row.commit();
        if second % 300 == 0 {
            let fo = diffusivity * f64::from(second) / (radius_m * radius_m);
            let zeros = [
                2.404_826, 5.520_078, 8.653_728, 11.791_534, 14.930_918, 18.071_064,
            ];
            let exact: f64 = zeros
                .iter()
                .map(|z: &f64| 4.0 / (z * z) * (-z * z * fo).exp())
                .sum();
            let mean = row.mixed_c() / 200.0;
            assert!((mean - exact).abs() < 0.004, "{second} s: {mean} {exact}");
        }
    }
}

/// A melt at its melting point on a wall 60 K colder: the front by Neumann's solution for one phase,
/// sqrt(t) all the way, here through the shells' heat alone.
#[test]
fn a_front_freezes_as_neumann_says() {
    let (depth_m, density, w_mk, latent) = (0.045, 1500.0, 0.7, 200e3);
    let melting_c = 120.0;
    let stuff = Stuff {
        mass_kg: density * depth_m,
        cp_a_j_kgk: 1400.0,
        cp_b_j_kgk2: 0.0,
        melt: Some(Melting {
            solidus_c: melting_c - 0.15,
            liquidus_c: melting_c + 0.15,
            latent_j_kg: latent,
            cp_liquid_j_kgk: 2500.0,
        }),
    };
    let conducts = Conducts {
        solid_w_mk: w_mk,
        melt_w_mk: w_mk,
        range_c: (melting_c - 0.15, melting_c + 0.15),
    };
    let mut row = row(cut(|_| 1.0, &edges_m(depth_m, 60, 1.02)), stuff, conducts);
    // Nothing crosses the far face.
    row.jacket.film_w_k = 1e-12;
    row.set(melting_c + 0.15, 0.0);
    let full_j: f64 = row.store.heat_j.iter().sum();
    let wall = OnSeat {
        water_c: 60.0,
        wall_c: 60.0,
        water_j_k: 1e15,
        wall_j_k: 1e15,
        film_w_k: 1e-9,
        contact_w_k: 1e9,
        air_w_k: 0.0,
        evaporation: (0.0, 0.0),
        is_in_melt: false,
        held_c: None,
    };
    let number = stefan::stefan_number(1400.0, melting_c, 60.0, latent);
    let diffusivity = w_mk / (density * 1400.0);
    for second in 1..=5400_i32 {
        row.solve(1.0, 0.0, 0.0, Some(&wall));
        row.commit();
        if second % 900 == 0 {
            let time_s = f64::from(second);
            let front_m = stefan::exact_front_m(number, diffusivity, time_s);
            // Heat through the wall: k (dT) / sqrt(pi a t) / erf(lambda), twice its integral.
            let lambda = front_m / (2.0 * (diffusivity * time_s).sqrt());
            let gradient = 60.0 / ((PI * diffusivity * time_s).sqrt() * erf(lambda));
            let exact_j = 2.0 * w_mk * gradient * time_s;
            let lost_j = full_j - row.store.heat_j.iter().sum::<f64>();
            assert!(
                (lost_j / exact_j - 1.0).abs() < 0.02,
                "{second} s: {lost_j} {exact_j}"
            );
            let frozen_m: f64 = row
                .store
                .heat_j
                .iter()
                .zip(&row.store.mass_kg)
                .map(|(heat_j, mass_kg)| {
                    let top = full_j / (density * depth_m);
                    let solid = ((top - heat_j / mass_kg) / latent).clamp(0.0, 1.0);
                    solid * mass_kg / density
                })
                .sum();
            assert!(
                (frozen_m / front_m - 1.0).abs() < 0.03,
                "{second} s: {frozen_m} {front_m}"
            );
        }
    }
}

/// Abramowitz and Stegun, 7.1.26, to 1.5e-7.
fn erf(x: f64) -> f64 {
    let t = 1.0 / (1.0 + 0.327_591_1 * x);
    let poly = t
        * (0.254_829_592
            + t * (-0.284_496_736
                + t * (1.421_413_741 + t * (-1.453_152_027 + t * 1.061_405_429))));
    1.0 - poly * (-x * x).exp()
}

/// The jacket's chain lets out what its shape factor says, and its parts add up for a plain ring.
#[test]
fn a_round_jacket_has_its_shape_factor() {
    let (area_m2, factor_m) = round_jacket(0.11, 0.2, 0.12);
    // 2 pi 0.2 / ln(23/11) + 2 pi 0.11² / 0.12 + 0.54 of two rings of 2 pi 0.134 m, by hand.
    assert!(
        (factor_m - (1.7037 + 0.6336 + 0.9093)).abs() < 2e-3,
        "{factor_m}"
    );
    let shells = cut(area_m2, &edges_m(0.12, 24, 1.04));
    let per_m: f64 = shells
        .iter()
        .map(|shell| shell.inner_per_m + shell.outer_per_m)
        .sum();
    assert!((per_m * factor_m - 1.0).abs() < 2e-3);
    let ring = cut(|at_m| 2.0 * PI * (0.11 + at_m), &edges_m(0.12, 24, 1.04));
    let per_m: f64 = ring
        .iter()
        .map(|shell| shell.inner_per_m + shell.outer_per_m)
        .sum();
    assert!((per_m * 2.0 * PI / (0.23_f64 / 0.11).ln() - 1.0).abs() < 1e-3);
}

struct Steady(f64);

impl Outdoors for Steady {
    fn at(&self, minute: i64) -> (f64, f64) {
        let hour = minute.rem_euclid(1440) / 60;
        let sun = if (8..17).contains(&hour) { self.0 } else { 0.0 };
        // Clouds by the minute.
        (if minute % 7 < 4 { sun } else { 0.2 * sun }, 18.0)
    }
}

fn site() -> Site {
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 1500.0,
        utc_offset_min: 180,
    };
    Site {
        place,
        air: AirYear::guess(11.0, 1500.0).unwrap(),
    }
}

fn truth(preset: Preset, width: f64) -> (Cooker, Truth) {
    let cooker = preset.cooker(200.0, 11.0);
    let start_s = Day(20_700).start().0;
    let climate = ([0.5, 0.3, 0.1, 0.1], width);
    let truth = Truth::draw(&site(), &cooker, climate, Random::new(5, 1), start_s).unwrap();
    (cooker, truth)
}

fn rice(cooker: &Cooker) -> Meal {
    Meal {
        dish: Dish::WhiteRice,
        food_kg: 0.4,
        water_kg: 0.8,
        start_c: 20.0,
        pot: cooker.pot,
        lid: Lid::On,
        out: None,
        eat_at: LocalTime(0),
        outcome: Outcome::default(),
    }
}

/// The truth knows stores on panels: these stand first among the presets.
const STORES_ON_PANELS: usize = 6;

#[test]
fn every_joule_is_booked() {
    for preset in Preset::ALL.into_iter().take(STORES_ON_PANELS) {
        let (cooker, mut truth) = truth(preset, 1.0);
        let before_j = truth.kitchen.held_j();
        let start_s = truth.kitchen.now_s;
        let charge = truth.charge(&rice(&cooker), Lid::On, 0.05);
        let kitchen = &mut truth.kitchen;
        kitchen.run(start_s + 18 * 3600, &Steady(220.0));
        kitchen.put_in(charge);
        kitchen.run(start_s + 21 * 3600, &Steady(220.0));
        kitchen.take_out();
        kitchen.run(start_s + 48 * 3600, &Steady(220.0));
        let gained_j = kitchen.held_j() - before_j;
        let off = (gained_j - kitchen.books.balance_j()) / kitchen.books.heater_j;
        assert!(off.abs() < 1e-6, "{preset:?}: {off:e}");
        assert!(0.0 < kitchen.books.steam_j, "{preset:?}");
    }
}

/// The longer steps of rest and sun against one second throughout, over three days with a pot each.
#[test]
fn the_chosen_pace_is_as_good_as_seconds() {
    for preset in Preset::ALL.into_iter().take(STORES_ON_PANELS) {
        let mut stores = Vec::new();
        for pace in [Pace::Chosen, Pace::Seconds] {
            let (cooker, mut truth) = truth(preset, 1.0);
            let start_s = truth.kitchen.now_s;
            let charge = truth.charge(&rice(&cooker), Lid::On, 0.05);
            truth.kitchen.pace = pace;
            let mut seen = Vec::new();
            for day in 0..3 {
                let noon_s = start_s + day * 86_400 + 18 * 3600;
                let kitchen = &mut truth.kitchen;
                kitchen.run(noon_s, &Steady(180.0));
                seen.push(kitchen.row.mixed_c());
                kitchen.put_in(charge);
                kitchen.run(noon_s + 7200, &Steady(180.0));
                let fate = kitchen.take_out().unwrap();
                seen.push(
                    fate.boiled_s
                        .map_or(0.0, |at_s| (at_s - noon_s) as f64 / 60.0),
                );
            }
            stores.push(seen);
        }
        // Kelvins of the store, minutes to the boil.
        for (chosen, seconds) in stores[0].iter().zip(&stores[1]) {
            assert!((chosen - seconds).abs() < 0.4, "{preset:?}: {stores:?}");
        }
    }
}

/// Water over an isothermal block of nearly endless heat nears it as 1 - exp(-G t / C): Incropera et
/// al., 5.1, here with water and wall one behind the other, so a little later.
#[test]
fn a_pot_warms_by_its_time_constant() {
    let conducts = Conducts {
        solid_w_mk: 1e6,
        melt_w_mk: 1e6,
        range_c: NO_RANGE,
    };
    let mut row = row(cut(|_| 1.0, &edges_m(0.1, 24, 1.1)), stone(1e5), conducts);
    row.jacket.film_w_k = 1e-12;
    row.set(90.0, 90.0);
    let mut seat = OnSeat {
        water_c: 20.0,
        wall_c: 20.0,
        water_j_k: 4186.0,
        wall_j_k: 1.0,
        film_w_k: 20.0,
        contact_w_k: 20.0,
        air_w_k: 0.0,
        evaporation: (0.0, 0.0),
        is_in_melt: false,
        held_c: None,
    };
    for second in 1..=1200_i32 {
        let flow = row.solve(1.0, 0.0, 20.0, Some(&seat));
        row.commit();
        (seat.water_c, seat.wall_c) = (flow.water_c, flow.wall_c);
        if second % 300 == 0 {
            let exact_c = 90.0 - 70.0 * (-10.0 * f64::from(second) / 4186.0).exp();
            assert!(
                (seat.water_c - exact_c).abs() < 0.1,
                "{} {exact_c}",
                seat.water_c
            );
        }
    }
}

#[test]
fn a_true_cooker_works_like_its_preset() {
    // Common practice, no source: a full day of sun brings the store well above the boil.
    for preset in Preset::ALL.into_iter().take(STORES_ON_PANELS) {
        let (_, mut truth) = truth(preset, 0.3);
        let start_s = truth.kitchen.now_s;
        truth.kitchen.run(start_s + 17 * 3600, &Steady(260.0));
        let evening_c = truth.kitchen.row.mixed_c();
        assert!(
            truth.boiling_c + 10.0 < evening_c,
            "{preset:?}: {evening_c}"
        );
    }
}

/// Erythritol, 2760 J/kgK as a liquid: 49 K below its liquidus it has given away 135 kJ/kg of the
/// latent 340 and is frozen by two fifths when it nucleates, back in its melting range.
#[test]
fn a_melt_stays_liquid_until_it_nucleates() {
    let stuff = Stuff {
        melt: Some(Melting {
            solidus_c: 117.0,
            liquidus_c: 119.0,
            latent_j_kg: 340e3,
            cp_liquid_j_kgk: 2760.0,
        }),
        cp_a_j_kgk: 1380.0,
        ..stone(5.0)
    };
    let table = HeatTable::new(&[stuff]).with_supercooling(&[stuff], 70.0);
    let liquid_j_kg = table.heat_j_kg(119.0);
    let cold_j_kg = liquid_j_kg - 49.0 * 2760.0;
    assert!((table.at(cold_j_kg, true).0 - 70.0).abs() < 0.1);
    assert!((table.at(cold_j_kg, false).0 - (119.0 - 2.0 * 135.24 / 340.0)).abs() < 0.05);
    let is_liquid = |was_liquid, coldest_c, heat_j_kg| {
        table.is_liquid(was_liquid, coldest_c, std::iter::once(heat_j_kg))
    };
    assert!(is_liquid(true, 70.5, cold_j_kg) && !is_liquid(true, 69.5, cold_j_kg));
    assert!(is_liquid(false, 120.0, liquid_j_kg + 1e3) && !is_liquid(false, 118.5, cold_j_kg));
    // Once frozen on a cold wall it stays so, however hot the rest.
    assert!(!is_liquid(false, 60.0, liquid_j_kg + 1e3));
}

/// The same in a cooker: it cools past its melting point, freezes 30 K below, and warms up again.
#[test]
fn a_store_of_erythritol_jumps_when_it_freezes() {
    let (cooker, mut truth) = truth(Preset::ErythritolInGlassWool, 0.0);
    let kitchen = &mut truth.kitchen;
    kitchen.row.set(cooker.store.cutout_c, 18.0);
    let before_j = kitchen.held_j();
    let (mut coldest_c, mut jump_k) = (f64::INFINITY, 0.0_f64);
    for _ in 0..72 * 6 {
        let was_c = kitchen.row.mixed_c();
        kitchen.run(kitchen.now_s + 600, &Steady(0.0));
        if jump_k == 0.0 {
            coldest_c = coldest_c.min(was_c);
        }
        jump_k = jump_k.max(kitchen.row.mixed_c() - was_c);
    }
    assert!((coldest_c - (117.0 - 30.0)).abs() < 2.0, "{coldest_c}");
    assert!((25.0..33.0).contains(&jump_k), "{jump_k}");
    let lost_j = before_j - kitchen.held_j() + kitchen.books.balance_j();
    assert!(lost_j.abs() < 1.0, "{lost_j}");
}

#[test]
fn chance_is_even_and_normal() {
    let mut random = Random::new(3, 1);
    let count = 20_000;
    let (mut sum, mut squares, mut unit, mut factor) = (0.0, 0.0, 0.0, 0.0);
    for _ in 0..count {
        let z = random.normal();
        sum += z;
        squares += z * z;
        unit += random.unit();
        factor += random.factor(0.3).ln();
    }
    let n = f64::from(count);
    // Four standard errors each.
    assert!((sum / n).abs() < 0.03 && (squares / n - 1.0).abs() < 0.04);
    assert!((unit / n - 0.5).abs() < 0.009 && (factor / n).abs() < 0.009);
}

/// Without any spread, truth and network differ by what one node or six make of a body, and by a
/// jacket that conducts more where it is hotter: metals and stone come to the boil within a sixth of
/// each other, and are within 6 K after a night (steel in rock wool: 5.3 K colder in the truth).
#[test]
fn without_doubt_it_agrees_with_the_network() {
    for preset in [
        Preset::AluminiumInPerlite,
        Preset::SteelInRockWool,
        Preset::SoapstoneInVermiculite,
    ] {
        let cooker = preset.cooker(200.0, 11.0);
        let rig = Rig::new(&site(), &cooker).unwrap();
        let mut truth = truth(preset, 0.0).1;
        let start_s = truth.kitchen.now_s;
        truth.kitchen.row.set(cooker.store.cutout_c, 18.0);
        let water = Meal {
            dish: Dish::TeaWater,
            food_kg: 0.0,
            water_kg: 1.0,
            ..rice(&cooker)
        };
        let charge = truth.charge(&water, Lid::On, 0.0);
        let mut pot = truth.kitchen.clone();
        pot.put_in(charge);
        pot.run(start_s + 4 * 3600, &Steady(0.0));
        let boiled_s = (pot.fate().unwrap().boiled_s.unwrap() - start_s) as f64;
        let quick_s = rig
            .boil_from_full_s(cooker.pot, 1.0, 18.0)
            .unwrap()
            .unwrap();
        assert!(
            (boiled_s / quick_s - 1.0).abs() < 0.16,
            "{preset:?}: {boiled_s} {quick_s}"
        );
        truth.kitchen.run(start_s + 7 * 3600, &Steady(0.0));
        let mut night = truth.kitchen.row.mixed_c();
        let points = rig.cool_down(18.0).unwrap().points;
        let after = points
            .windows(2)
            .find(|pair| 25_200.0 <= pair[1].0)
            .unwrap();
        let share = (25_200.0 - after[0].0) / (after[1].0 - after[0].0);
        night -= after[0].1 + share * (after[1].1 - after[0].1);
        assert!(night.abs() < 6.0, "{preset:?}: {night}");
    }
}
