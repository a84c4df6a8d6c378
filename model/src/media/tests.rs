use proptest::prelude::*;

use super::*;

/// Heat of one kilogram of solid between two temperatures, J.
fn solid_heat_j_kg(medium: Medium, from_c: f64, to_c: f64) -> f64 {
    medium.props().cp.at(0.5 * (from_c + to_c)) * (to_c - from_c)
}

fn worst_fit(medium: Medium, from_c: i32, to_c: i32, reference: impl Fn(f64) -> f64) -> f64 {
    (from_c..=to_c)
        .map(|t_c| (medium.props().cp.at(f64::from(t_c)) - reference(f64::from(t_c))).abs())
        .fold(0.0, f64::max)
}

/// EN 1993-1-2:2005, 3.4.1.2: 425 + 0.773 T - 1.69e-3 T2 + 2.22e-6 T3.
#[test]
fn steel_line_keeps_its_stated_distance() {
    let curve = |t: f64| 425.0 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t.powi(3);
    let worst = worst_fit(Medium::MildSteel, 20, 350, curve);
    assert!(
        worst <= Medium::MildSteel.props().cp.fit_error_j_kgk,
        "{worst}"
    );
    assert!((curve(200.0) - 530.0).abs() < 1.0);
}

/// EN 1992-1-2, 3.3.2: 900 to 100 degC, then + (T - 100), then 1000 + (T - 200) / 2.
#[test]
fn concrete_line_keeps_its_stated_distance() {
    let curve = |t: f64| {
        if t <= 100.0 {
            900.0
        } else if t <= 200.0 {
            800.0 + t
        } else {
            900.0 + 0.5 * t
        }
    };
    let worst = worst_fit(Medium::Concrete, 20, 350, curve);
    assert!(
        worst <= Medium::Concrete.props().cp.fit_error_j_kgk,
        "{worst}"
    );
}

/// Fasina and Colley: both oils lie within the stated distance of the mean line.
#[test]
fn oil_line_lies_between_two_oils() {
    for (a, b) in [(2086.0, 3.00), (1956.0, 2.79)] {
        let worst = worst_fit(Medium::VegetableOil, 35, 180, |t| a + b * t);
        assert!(
            worst <= Medium::VegetableOil.props().cp.fit_error_j_kgk,
            "{worst}"
        );
    }
}

/// Tabulated points: sand from memory; granite Seyitini et al.; copper Incropera, table A.1.
#[test]
fn lines_pass_their_points() {
    let cases: [(Medium, &[(f64, f64)]); 3] = [
        (
            Medium::DrySand,
            &[
                (25.0, 800.0),
                (100.0, 880.0),
                (200.0, 990.0),
                (300.0, 1060.0),
            ],
        ),
        (Medium::Granite, &[(20.0, 815.0), (250.0, 1015.0)]),
        (
            Medium::Copper,
            &[(26.85, 385.0), (126.85, 397.0), (326.85, 417.0)],
        ),
    ];
    for (medium, points) in cases {
        let cp = medium.props().cp;
        for &(t_c, expect) in points {
            assert!(
                (cp.at(t_c) - expect).abs() <= cp.fit_error_j_kgk,
                "{medium:?} {t_c}"
            );
        }
    }
}

/// 7 kg of aluminium from 300 to 25 degC by the formula of EN 1999-1-2: 0.51848 kWh.
#[test]
fn aluminium_holds_half_a_kilowatt_hour() {
    let heat_kwh = 7.0 * solid_heat_j_kg(Medium::Aluminium, 25.0, 300.0) / 3.6e6;
    assert!((heat_kwh / 0.51848 - 1.0).abs() < 0.001, "{heat_kwh}");
}

/// Molar heats of fusion against the latent heats: CRC Handbook; Tong et al. (2010).
#[test]
fn latent_heats_against_molar_values() {
    let cases = [
        (Medium::SodiumNitrate, 15.5e3, 84.99e-3),
        (Medium::PotassiumNitrate, 9.6e3, 101.10e-3),
        (Medium::Mannitol, 54.69e3, 182.17e-3),
        (Medium::AdipicAcid, 36.3e3, 146.14e-3),
    ];
    for (medium, molar_j, molar_kg) in cases {
        let latent = medium.props().melt.expect("it melts").latent_j_kg;
        assert!(
            (latent.value - molar_j / molar_kg).abs() <= latent.spread,
            "{medium:?}"
        );
    }
}

/// Carling (1983): heat capacities at 298 K, and the entropies of the change of the crystal at 406
/// and 550 K, which the lines hold within them.
#[test]
fn nitrate_lines_hold_the_change_of_the_crystal() {
    let cases = [
        (
            Medium::PotassiumNitrate,
            95.39 / 0.101_10,
            13.8 * 406.0 / 0.101_10,
            1.0,
            334.0,
        ),
        (
            Medium::SodiumNitrate,
            91.94 / 0.084_99,
            8.43 * 550.0 / 0.084_99,
            1.6,
            306.5,
        ),
    ];
    for (medium, cp_25, change_j_kg, slope, melting_c) in cases {
        // The slope of the bare crystal is from memory.
        let span_k = melting_c - 20.0;
        let bare = cp_25 + slope * (0.5 * (melting_c + 20.0) - 25.0);
        let expect = bare * span_k + change_j_kg;
        let actual = solid_heat_j_kg(medium, 20.0, melting_c);
        let spread = medium.props().cp.spread_j_kgk * span_k;
        assert!(
            (actual - expect).abs() < 0.5 * spread,
            "{medium:?} {actual} {expect}"
        );
    }
}

/// Zavoico (2001): the constant liquid figures against the correlations where a store works.
#[test]
fn molten_nitrate_against_the_correlations() {
    let melt = Medium::SodiumPotassiumNitrate
        .props()
        .melt
        .expect("it melts");
    for t_c in [260.0, 300.0, 400.0] {
        let cp = 1443.0 + 0.172 * t_c;
        assert!((melt.cp_liquid_j_kgk.value / cp - 1.0).abs() < 0.02);
        let conductivity = 0.443 + 1.9e-4 * t_c;
        assert!((melt.conductivity_liquid_w_mk.value / conductivity - 1.0).abs() < 0.05);
    }
    let density = 2090.0 - 0.636 * 238.0;
    assert!((melt.density_liquid_kg_m3.value / density - 1.0).abs() < 0.005);
}

#[test]
fn every_row_is_physical() {
    for medium in Medium::ALL {
        let props = medium.props();
        assert!(500.0 < props.density_kg_m3.value && props.density_kg_m3.value < 9000.0);
        assert!(0.05 < props.conductivity_w_mk.value);
        if let Some(melt) = props.melt {
            assert!(melt.solidus_c.value <= melt.liquidus_c.value, "{medium:?}");
            assert!(melt.liquidus_c.value < props.limit_c.value, "{medium:?}");
            assert!(50e3 < melt.latent_j_kg.value);
            assert!(
                props.hazards.contains(&Hazard::ExpandsOnMelting),
                "{medium:?}"
            );
            assert!(melt.density_liquid_kg_m3.value < props.density_kg_m3.value);
        }
        assert_eq!(
            props.hazards.contains(&Hazard::Oxidiser),
            props.chemistry.is_oxidiser()
        );
        assert_eq!(
            props.hazards.contains(&Hazard::Combustible),
            props.chemistry.is_organic()
        );
    }
}

/// Saved data spell the media so; a changed name loses somebody's cooker.
#[test]
fn saved_names_are_stable() {
    let names: Vec<String> = Medium::ALL
        .iter()
        .map(|medium| serde_json::to_string(medium).expect("an enum is writable"))
        .collect();
    assert_eq!(
        names.join(" "),
        r#""aluminium" "cast_iron" "mild_steel" "copper" "soapstone" "granite" "basalt" "dry_sand" "concrete" "firebrick" "erythritol" "mannitol" "adipic_acid" "magnesium_chloride_hexahydrate" "hdpe" "sodium_nitrate" "potassium_nitrate" "sodium_potassium_nitrate" "ternary_nitrate_nitrite" "vegetable_oil""#
    );
}

proptest! {
    #[test]
    fn heat_capacity_is_positive(medium_idx in 0..Medium::ALL.len(), t_c in -20.0..500.0_f64) {
        prop_assert!(300.0 < Medium::ALL[medium_idx].props().cp.at(t_c));
    }
}
