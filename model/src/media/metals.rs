//! Metals.

use super::{Chemistry, Hazard, HeatCapacityLine, MediumProps};
use crate::provenance::{Datum, Source};

/// The heat capacity is the formula of the standard, a line already.
pub(super) const ALUMINIUM: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2700.0, 0.01, Source::Cibse),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 903.0,
        cp_b_j_kgk2: 0.41,
        spread_j_kgk: 20.0,
        fit_error_j_kgk: 0.0,
        source: Source::AluminiumFire,
    },
    conductivity_w_mk: Datum::new(200.0, 25.0, Source::AluminiumFire),
    melt: None,
    // 6xxx alloys lose their temper from about 150 degC and every alloy is soft long before the
    // solidus at 580 to 650 degC.
    limit_c: Datum::new(350.0, 25.0, Source::Memory),
    chemistry: Chemistry::Metal,
    hazards: &[],
};

/// One figure of the source, 20 degC, stands for all temperatures: handbooks spread from 460 to
/// 550 J/kgK.
pub(super) const CAST_IRON: MediumProps = MediumProps {
    density_kg_m3: Datum::new(7350.0, 150.0, Source::Cibse),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 530.0,
        cp_b_j_kgk2: 0.0,
        spread_j_kgk: 40.0,
        fit_error_j_kgk: 0.0,
        source: Source::Cibse,
    },
    conductivity_w_mk: Datum::new(50.0, 6.0, Source::Cibse),
    melt: None,
    limit_c: Datum::new(500.0, 50.0, Source::Memory),
    chemistry: Chemistry::Metal,
    hazards: &[Hazard::ThermalShock],
};

/// Least squares on the cubic of the standard, 20 to 350 degC.
pub(super) const MILD_STEEL: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(7850.0, 0.005, Source::SteelFire),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 443.8,
        cp_b_j_kgk2: 0.4121,
        spread_j_kgk: 12.0,
        fit_error_j_kgk: 12.3,
        source: Source::SteelFire,
    },
    conductivity_w_mk: Datum::new(48.0, 4.0, Source::SteelFire),
    melt: None,
    limit_c: Datum::new(450.0, 50.0, Source::Memory),
    chemistry: Chemistry::Metal,
    hazards: &[],
};

/// Line through 385, 397 and 417 J/kgK at 27, 127 and 327 degC.
pub(super) const COPPER: MediumProps = MediumProps {
    density_kg_m3: Datum::new(8900.0, 50.0, Source::Cibse),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 382.6,
        cp_b_j_kgk2: 0.106,
        spread_j_kgk: 6.0,
        fit_error_j_kgk: 1.0,
        source: Source::Incropera,
    },
    conductivity_w_mk: Datum::new(388.0, 8.0, Source::Cibse),
    melt: None,
    // Above this it scales in air within weeks.
    limit_c: Datum::new(225.0, 25.0, Source::Memory),
    chemistry: Chemistry::Metal,
    hazards: &[Hazard::Toxic],
};
