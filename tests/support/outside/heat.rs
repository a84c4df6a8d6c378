//! Conduction, radiation, thin gas, and what a pot loses.

use std::f64::consts::PI;

use model::air;
use model::conduction::{cylinder_side_w_k, in_series, sphere_w_k, wall_w_k};
use model::filling::{Filling, fin_efficiency};
use model::flask::free_molecular_w_m2k;
use model::pot::loss;
use model::seat::{Gap, Seat, gap_w_m2k};
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
    seats(&mut checks);
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
    still_pools(&mut checks, air_pa);
    checks
}

/// Evaporation by a correlation that the tank table had no part in, into air of 25 degC and 50 %: vapour
/// pressures and heats of vaporisation of the steam tables. Over eleven sets of measurements to 94 degC it
/// was 18.2 % off in the mean, by its abstract.
fn still_pools(checks: &mut Vec<Check>, air_pa: f64) {
    let dry_kg_m3 = |vapour_kpa: f64, t_c: f64| (101.325 - vapour_kpa) / (0.287 * (t_c + 273.15));
    let humidity = |vapour_kpa: f64| 0.622 * vapour_kpa / (101.325 - vapour_kpa);
    for (t_c, vapour_kpa, h_fg_kj_kg) in [
        (60.0, 19.946, 2357.7),
        (80.0, 47.414, 2308.1),
        (90.0, 70.182, 2282.6),
    ] {
        let over_kg_m3 = dry_kg_m3(vapour_kpa, t_c);
        let lift = (dry_kg_m3(1.585, 25.0) - over_kg_m3).cbrt();
        let kg_m2h = 35.0 * over_kg_m3 * lift * (humidity(vapour_kpa) - humidity(1.585));
        checks.push(relative(
            format!("evaporation of a still pool at {t_c} degC"),
            "Shah, HVAC&R Research 8 (2002) 125 (formula from memory)",
            "W/m2",
            (
                kg_m2h * h_fg_kj_kg / 3.6,
                loss::evaporation_w(1.0, vapour_pressure_pa(t_c), air_pa),
            ),
            0.182,
        ));
    }
}

/// What a dry seat lets through, as the network has it between faces of these temperatures.
fn seats(checks: &mut Vec<Check>) {
    let through = |seat: Seat, hot_c: f64, cold_c: f64| {
        let gap = Gap::of(seat, 0.2, 0.0).unwrap();
        gap.through(hot_c, cold_c).w_k / seat.area_m2(0.2, 0.0)
    };
    // Stefan's constant of 5.6704e-8 W/m2K4; 1/0.3 + 1/0.2 - 1 = 7.333, 2/0.9 - 1 = 1.222.
    let worn = 5.6704e-8 * (473.15_f64.powi(4) - 373.15_f64.powi(4)) / 7.333 / 100.0;
    let dark = 5.6704e-8 * (523.15_f64.powi(4) - 373.15_f64.powi(4)) / 1.222 / 150.0;
    checks.push(relative(
        "usual dry seat of 0.18 mm between 200 and 100 degC",
        "conductivity of air by CoolProp 8.0.0; radiation by hand after Stefan and Boltzmann",
        "W/m2K",
        (
            0.035 / 0.18e-3 + worn,
            through(Seat::DryOrdinary, 200.0, 100.0),
        ),
        0.02,
    ));
    checks.push(relative(
        "dark gap of 8 mm that stands still between 250 and 100 degC",
        "conductivity of air by CoolProp 8.0.0; radiation by hand after Stefan and Boltzmann",
        "W/m2K",
        (
            0.0366 / 8e-3 + dark,
            through(Seat::RadiantGap, 250.0, 100.0),
        ),
        0.02,
    ));
    checks.push(relative(
        "flat dry seat, a mean of 300 degC over one of 100",
        "conductivity of air by CoolProp 8.0.0",
        "",
        (
            0.0444 / 0.0316,
            through(Seat::DryFlat, 350.0, 250.0) / through(Seat::DryFlat, 150.0, 50.0),
        ),
        0.02,
    ));
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
