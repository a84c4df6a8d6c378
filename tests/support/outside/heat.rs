//! Conduction, radiation, thin gas, and what a pot loses.

use std::f64::consts::PI;

use model::air;
use model::conduction::{cylinder_side_w_k, in_series, sphere_w_k, wall_w_k};
use model::filling::{Filling, fin_efficiency};
use model::flask::free_molecular_w_m2k;
use model::pot::loss;
use model::seat::gap_w_m2k;
use model::water::vapour_pressure_pa;

use super::{Check, relative, temperature};

const CENGEL: &str = "Cengel, Heat and Mass Transfer";
const INCROPERA: &str = "Incropera et al., Fundamentals of Heat and Mass Transfer";
const TANK: &str =
    "handbook table of heat losses from open tanks, still air (engineeringtoolbox.com)";

pub(super) fn checks() -> Vec<Check> {
    let mut checks = walls();
    for (t_c, expect) in [
        (25.0, 0.0263),
        (100.0, 0.0316),
        (200.0, 0.0383),
        (300.0, 0.0444),
    ] {
        checks.push(relative(
            format!("conductivity of air at {t_c} degC"),
            "CoolProp 8.0.0, dry air",
            "W/mK",
            (expect, air::conductivity_w_mk(t_c)),
            0.015,
        ));
    }
    let plates = 300.0 * air::radiation_w_m2k(526.85, 226.85, 0.2, 0.7);
    checks.push(relative(
        "radiation between plates of 800 K (0.2) and 500 K (0.7)",
        CENGEL,
        "W/m2",
        (3625.6, plates),
        1e-3,
    ));
    let gap =
        gap_w_m2k(0.2e-3, 250.0, 100.0, 0.2, 0.3) - air::radiation_w_m2k(250.0, 100.0, 0.2, 0.3);
    checks.push(relative(
        "air in a gap of 0.2 mm between 250 and 100 degC",
        "conductivity by CoolProp 8.0.0; gap model of Song et al., J. Heat Transfer 115 (1993) 533",
        "W/m2K",
        (183.0, gap),
        0.025,
    ));
    checks.push(relative(
        "thin air at 300 K, per pascal",
        "Barron, Cryogenic Systems (Kennard's formula)",
        "W/m2KPa",
        (1.1666, free_molecular_w_m2k(1.0, 26.85, 1.0)),
        5e-3,
    ));
    checks.push(relative(
        "efficiency of a straight fin with m L = 1",
        INCROPERA,
        "",
        (0.762, fin_efficiency(100.0, 200.0, 1e-3, (1e-3_f64).sqrt())),
        1e-3,
    ));
    let measured = 0.0265 + 0.181 * 0.08_f64.powf(0.763) * 218.0;
    checks.push(relative(
        "open aluminium foam, 8 % of metal, in air",
        "Calmidi and Mahajan, J. Heat Transfer 121 (1999) 466 (fit to measurements, from memory)",
        "W/mK",
        (
            measured,
            Filling::new(218.0, 0.0265, 0.08).unwrap().foam_w_mk(),
        ),
        0.1,
    ));
    // Air of 25 degC and 50 %, as for the table.
    let air_pa = 0.5 * vapour_pressure_pa(25.0);
    for (t_c, expect, share) in [
        (48.9, 1140.0, 0.12),
        (60.0, 2080.0, 0.12),
        (71.1, 3470.0, 0.12),
        (82.2, 5490.0, 0.12),
        (87.8, 6810.0, 0.12),
        (98.9, 10_220.0, 0.12),
    ] {
        checks.push(relative(
            format!("evaporation of open water at {t_c} degC"),
            TANK,
            "W/m2",
            (
                expect,
                loss::evaporation_w(1.0, vapour_pressure_pa(t_c), air_pa),
            ),
            share,
        ));
    }
    checks
}

fn walls() -> Vec<Check> {
    let wire_c = |outer_m: f64| {
        let film = 12.0 * 2.0 * PI * outer_m * 5.0;
        30.0 + 80.0 / in_series(&[cylinder_side_w_k(0.15, 5.0, 0.0015, outer_m), film])
    };
    let pipe_w = 315.0
        * in_series(&[
            60.0 * 2.0 * PI * 0.025,
            cylinder_side_w_k(80.0, 1.0, 0.025, 0.0275),
            cylinder_side_w_k(0.05, 1.0, 0.0275, 0.0575),
            18.0 * 2.0 * PI * 0.0575,
        ]);
    let sphere_w = 223.0
        * in_series(&[
            sphere_w_k(0.0017, 0.25, 0.275),
            20.0 * 4.0 * PI * 0.275 * 0.275,
        ]);
    let plate = wall_w_k(50.0, 1.0, 0.025);
    let enamel = wall_w_k(1.05, 1.0, 0.0008);
    let hot_plate = "Eastop and McConkey, Applied Thermodynamics, hot plate under an enamelled pan \
                     (edition not confirmed)";
    vec![
        temperature(
            "wire under 2 mm of plastic",
            CENGEL,
            (105.0, wire_c(0.0035)),
            0.2,
        ),
        temperature(
            "wire under 4 mm of plastic",
            CENGEL,
            (90.6, wire_c(0.0055)),
            0.2,
        ),
        relative(
            "insulated steam pipe, a metre",
            CENGEL,
            "W",
            (120.8, pipe_w),
            3e-3,
        ),
        relative(
            "sphere of liquid nitrogen",
            INCROPERA,
            "W",
            (13.06, sphere_w),
            3e-3,
        ),
        relative(
            "hot plate, pan flat on it",
            hot_plate,
            "W/m2",
            (176_600.0, 255.0 * in_series(&[plate, enamel, 5500.0])),
            1e-3,
        ),
        relative(
            "hot plate, pan lifted by an air film",
            hot_plate,
            "W/m2",
            (
                7000.0,
                255.0 * in_series(&[plate, enamel, 5500.0, 1.0 / 0.035]),
            ),
            2e-3,
        ),
    ]
}
