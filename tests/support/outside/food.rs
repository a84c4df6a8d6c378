//! Food: its heat, its cooking, its safety.

use model::dish::heat_capacity::{Composition, choi_okos_j_kgk, siebel_j_kgk};
use model::dish::lethality::{NEEDED_MIN, minutes_at_70_c_per_minute};
use model::network::CookRate;
use model::water::boiling_point_c;

use super::{Check, relative};

const POTATO: Composition = Composition {
    water: 0.793,
    protein: 0.021,
    fat: 0.001,
    carbohydrate: 0.153,
    fibre: 0.021,
    ash: 0.011,
};

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    for (t_c, expect) in [(25.0, 3616.0), (60.0, 3637.0)] {
        checks.push(relative(
            format!("specific heat of potato at {t_c} degC"),
            "Choi and Okos (1986) as in CoolProp 8.0.0, INCOMP",
            "J/kgK",
            (expect, choi_okos_j_kgk(POTATO, t_c)),
            1e-3,
        ));
    }
    checks.push(relative(
        "specific heat of potato, Choi-Okos at 60 degC, against Siebel",
        "Siebel (1892)",
        "J/kgK",
        (siebel_j_kgk(0.793, 0.001), choi_okos_j_kgk(POTATO, 60.0)),
        0.05,
    ));
    let water = Composition {
        water: 1.0,
        protein: 0.0,
        fat: 0.0,
        carbohydrate: 0.0,
        fibre: 0.0,
        ash: 0.0,
    };
    checks.push(relative(
        "specific heat of the water in food at 20 degC",
        "IAPWS-95 (CoolProp 8.0.0)",
        "J/kgK",
        (4184.0, choi_okos_j_kgk(water, 20.0)),
        0.02,
    ));
    for (t_c, minutes) in [(60.0, 45.0), (65.0, 10.0), (75.0, 0.5), (80.0, 0.1)] {
        checks.push(relative(
            format!("minutes at {t_c} degC that make a dish safe"),
            "UK Food Standards Agency, core temperatures and times",
            "min",
            (minutes, NEEDED_MIN.value / minutes_at_70_c_per_minute(t_c)),
            0.16,
        ));
    }
    // Van Loey et al. publish both for the same beans; z = 2.303 R T2/Ea ties them at their
    // temperature, about 110 degC. At the boil the two laws part.
    let beans = CookRate::Arrhenius {
        t_ref_s: 3600.0,
        activation_j_mol: 130.8e3,
        t_min_c: 60.0,
    };
    checks.push(relative(
        "time at 90 degC over that at 100, white beans, Ea 130.8 kJ/mol against z 21.3 K",
        "Van Loey et al., J. Food Eng. 24 (1995) 361",
        "",
        (10.0_f64.powf(10.0 / 21.3), slower(beans, 90.0)),
        0.1,
    ));
    let rice = CookRate::Arrhenius {
        t_ref_s: 1200.0,
        activation_j_mol: 71e3,
        t_min_c: 60.0,
    };
    checks.push(relative(
        "rate of cooking rice, 90 against 80 degC: doubles in 10 K",
        "Suzuki et al., kinetics of cooking of milled rice (about 17 kcal/mol)",
        "",
        (2.0, slower(rice, 80.0) / slower(rice, 90.0)),
        0.05,
    ));
    let doubling = CookRate::Arrhenius {
        t_ref_s: 1200.0,
        activation_j_mol: 53.6e3,
        t_min_c: 0.0,
    };
    checks.push(relative(
        "rate at 310 K over that at 300 K, 53.6 kJ/mol",
        "Atkins, Physical Chemistry: doubling in ten kelvin",
        "",
        (2.0, slower(doubling, 26.85) / slower(doubling, 36.85)),
        2e-3,
    ));
    // Altitude makes beans slow: at 1500 m 1.8 times, at 3000 m 3.4 times.
    for (altitude_m, boiling_c, z_k) in [(1500.0, 94.983, 19.0), (3000.0, 89.972, 19.0)] {
        checks.push(relative(
            format!("beans at {altitude_m} m over those at 100 degC"),
            "z of Quast and da Silva at the boiling point of IAPWS-IF97",
            "",
            (
                10.0_f64.powf((100.0 - boiling_c) / z_k),
                slower(z(z_k), boiling_point_c(altitude_m).unwrap()),
            ),
            2e-3,
        ));
    }
    checks
}

const fn z(z_k: f64) -> CookRate {
    CookRate::ZValue {
        t_ref_s: 3600.0,
        z_k,
        t_min_c: 60.0,
    }
}

fn slower(rate: CookRate, t_c: f64) -> f64 {
    rate.time_at_s(t_c).unwrap() / rate.time_at_s(100.0).unwrap()
}
