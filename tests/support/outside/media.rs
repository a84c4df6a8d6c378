//! The lines and figures of the tables against sources they were not copied from digit by digit.

use model::insulation::Insulation;
use model::media::Medium;

use super::{Check, relative, temperature};

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    let cp = |medium: Medium, t_c: f64| medium.props().cp.at(t_c);
    let steel = |t: f64| 425.0 + 0.773 * t - 1.69e-3 * t * t + 2.22e-6 * t * t * t;
    for t_c in [25.0, 100.0, 200.0, 300.0] {
        checks.push(relative(
            format!("specific heat of steel at {t_c} degC"),
            "EN 1993-1-2:2005, 3.4.1.2",
            "J/kgK",
            (steel(t_c), cp(Medium::MildSteel, t_c)),
            0.03,
        ));
    }
    for (t_c, expect) in [
        (25.0, 900.0),
        (100.0, 900.0),
        (200.0, 1000.0),
        (300.0, 1050.0),
    ] {
        checks.push(relative(
            format!("specific heat of dry concrete at {t_c} degC"),
            "EN 1992-1-2, 3.3.2 (from memory)",
            "J/kgK",
            (expect, cp(Medium::Concrete, t_c)),
            0.04,
        ));
    }
    for (name, t_c, expect) in [("rapeseed", 100.0, 2386.0), ("soybean", 100.0, 2235.0)] {
        checks.push(relative(
            format!("specific heat of {name} oil at {t_c} degC"),
            "Fasina and Colley, Int. J. Food Prop. 11 (2008) 738",
            "J/kgK",
            (expect, cp(Medium::VegetableOil, t_c)),
            0.05,
        ));
    }
    checks.push(relative(
        "conductivity of aluminium at 20 degC",
        "CIBSE Guide A, table 3.36",
        "W/mK",
        (230.0, Medium::Aluminium.props().conductivity_w_mk.value),
        0.15,
    ));
    checks.push(relative(
        "specific heat of aluminium at 20 degC",
        "CIBSE Guide A, table 3.36",
        "J/kgK",
        (880.0, cp(Medium::Aluminium, 20.0)),
        0.04,
    ));
    let melt = |medium: Medium| medium.props().melt.unwrap();
    checks.push(temperature(
        "melting point of erythritol",
        "CRC Handbook of Chemistry and Physics, 394.9 K",
        (121.75, melt(Medium::Erythritol).liquidus_c.value),
        3.0,
    ));
    checks.push(temperature(
        "melting point of mannitol",
        "CRC Handbook of Chemistry and Physics",
        (167.5, melt(Medium::Mannitol).liquidus_c.value),
        4.0,
    ));
    checks.push(temperature(
        "melting point of sodium nitrate",
        "Bauer et al., Effstock 2009",
        (306.0, melt(Medium::SodiumNitrate).liquidus_c.value),
        1.0,
    ));
    checks.push(relative(
        "heat of fusion of sodium nitrate",
        "CRC Handbook of Chemistry and Physics, 15.5 kJ/mol",
        "kJ/kg",
        (182.4, melt(Medium::SodiumNitrate).latent_j_kg.value / 1e3),
        0.04,
    ));
    checks.push(relative(
        "conductivity of rock wool of 98 kg/m3 at 24 degC",
        "ASHRAE Handbook, Fundamentals, insulating materials",
        "W/mK",
        (0.035, Insulation::RockWool.props().conductivity_w_mk(24.0)),
        0.15,
    ));
    checks.push(relative(
        "conductivity of loose perlite of 50 to 150 kg/m3 at 24 degC, the mean",
        "ASHRAE Handbook, Fundamentals, insulating materials",
        "W/mK",
        (0.049, Insulation::Perlite.props().conductivity_w_mk(24.0)),
        0.05,
    ));
    checks
}
