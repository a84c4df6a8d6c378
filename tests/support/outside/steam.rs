//! Water, its boiling point against altitude, and the air it boils in.

use model::water::{
    CP_J_KGK, air_pressure_pa, boiling_point_c, heat_of_vaporisation_j_kg,
    saturation_temperature_c, vapour_pressure_pa,
};

use super::{Check, relative, temperature};

const IF97: &str = "IAPWS-IF97, R7-97(2012), table 36";
const STEAM: &str = "IAPWS-IF97 at the pressure of ISO 2533 (iapws 1.5.5)";
const ASHRAE: &str = "ASHRAE Fundamentals, saturation pressure (psychrolib 2.5.0)";

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    for (pressure_pa, expect_k) in [(0.1e6, 372.755_919), (1e6, 453.035_632), (1e7, 584.149_488)] {
        checks.push(temperature(
            format!("saturation at {} MPa", pressure_pa / 1e6),
            IF97,
            (expect_k - 273.15, saturation_temperature_c(pressure_pa)),
            1e-5,
        ));
    }
    for (altitude_m, kpa, boiling, vaporisation) in [
        (1500.0, 84.556, 94.983, 2269.6),
        (3000.0, 70.109, 89.972, 2282.6),
        (5000.0, 54.020, 83.255, 2299.8),
    ] {
        checks.push(relative(
            format!("air pressure at {altitude_m} m"),
            "ISO 2533:1975, International Standard Atmosphere",
            "kPa",
            (kpa, air_pressure_pa(altitude_m).unwrap() / 1e3),
            1e-4,
        ));
        let ours = boiling_point_c(altitude_m).unwrap();
        let what = format!("water boils at {altitude_m} m");
        checks.push(temperature(what, STEAM, (boiling, ours), 0.05));
        checks.push(relative(
            format!("heat of vaporisation at {altitude_m} m"),
            STEAM,
            "kJ/kg",
            (vaporisation, heat_of_vaporisation_j_kg(ours) / 1e3),
            1e-3,
        ));
    }
    checks.push(temperature(
        "pressure cooker at 100 kPa above the air",
        "CoolProp 8.0.0, IAPWS-95",
        (120.4, saturation_temperature_c(201_325.0)),
        0.1,
    ));
    checks.push(temperature(
        "boiling at 3000 m by 100 - h/300",
        "Water Boiling Test 4.2.3 (2014)",
        (90.0, boiling_point_c(3000.0).unwrap()),
        0.1,
    ));
    let boil_c = boiling_point_c(0.0).unwrap();
    checks.push(relative(
        "a kilogram from 25 degC to the boil",
        "CoolProp 8.0.0, IAPWS-95",
        "kJ",
        (314.14, CP_J_KGK * (boil_c - 25.0) / 1e3),
        2e-3,
    ));
    for (t_c, expect) in [(20.0, 2338.8), (50.0, 12_349.9), (100.0, 101_418.7)] {
        checks.push(relative(
            format!("vapour pressure at {t_c} degC"),
            ASHRAE,
            "Pa",
            (expect, vapour_pressure_pa(t_c)),
            0.012,
        ));
    }
    for (t_c, expect) in [(15.0, 1705.0), (24.5, 3075.0)] {
        checks.push(relative(
            format!("vapour pressure at {t_c} degC"),
            "FAO Irrigation and Drainage Paper 56 (1998), annex 2, table 2.3",
            "Pa",
            (expect, vapour_pressure_pa(t_c)),
            1e-3,
        ));
    }
    checks
}
