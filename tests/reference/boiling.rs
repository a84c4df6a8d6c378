//! Boiling point and heat of vaporisation against altitude.

use crate::data;
use model::water;

/// Source: iapws 1.5.5, IAPWS-IF97, at the pressure of the International Standard Atmosphere 1976.
#[test]
fn boils_as_the_steam_formulation_says() {
    let table = data(include_str!("data/boiling.json"));
    let rows = table["rows"].as_array().unwrap();
    assert_eq!(rows.len(), 11);
    for row in rows {
        let value = |key: &str| row[key].as_f64().unwrap();
        let altitude_m = value("altitude_m");
        let pressure_pa = water::air_pressure_pa(altitude_m).unwrap();
        let boiling_c = water::boiling_point_c(altitude_m).unwrap();
        let h_fg_j_kg = water::heat_of_vaporisation_j_kg(boiling_c);
        assert!(
            (pressure_pa - value("pressure_pa")).abs() < 1e-6,
            "{row}: {pressure_pa} Pa"
        );
        // Asked: 0.05 K and 0.1 %. The saturation line is the same formula, the heat a fit good to 0.004 %.
        assert!(
            (boiling_c - value("boiling_c")).abs() < 1e-6,
            "{row}: {boiling_c} degC"
        );
        assert!(
            (h_fg_j_kg / value("h_fg_j_kg") - 1.0).abs() < 5e-5,
            "{row}: {h_fg_j_kg} J/kg"
        );
    }
}
