//! Stones, sand, concrete and brick.

use super::{Chemistry, Hazard, HeatCapacityLine, MediumProps};
use crate::provenance::{Datum, Source};

/// 980 J/kgK at room temperature from the source; a rise of 12 % to 300 degC from memory.
pub(super) const SOAPSTONE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2980.0, 0.02, Source::Soapstone),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 970.0,
        cp_b_j_kgk2: 0.45,
        spread_j_kgk: 50.0,
        fit_error_j_kgk: 1.0,
        source: Source::Soapstone,
    },
    // 6.4 along the grain, 2.5 to 3.5 across it (from memory).
    conductivity_w_mk: Datum::new(4.5, 1.5, Source::Soapstone),
    melt: None,
    limit_c: Datum::new(800.0, 100.0, Source::Memory),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet, Hazard::Dust],
};

/// Middle of the range of the source: 770 to 860 J/kgK cold, 940 to 1090 at 250 degC.
pub(super) const GRANITE: MediumProps = MediumProps {
    density_kg_m3: Datum::new(2600.0, 60.0, Source::En12524),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 797.2,
        cp_b_j_kgk2: 0.8696,
        spread_j_kgk: 50.0,
        fit_error_j_kgk: 1.0,
        source: Source::Rocks,
    },
    conductivity_w_mk: Datum::new(2.2, 0.4, Source::En12524),
    melt: None,
    limit_c: Datum::new(300.0, 50.0, Source::Memory),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet],
};

/// The source's range covers basalt and granite alike.
pub(super) const BASALT: MediumProps = MediumProps {
    density_kg_m3: Datum::new(2900.0, 70.0, Source::En12524),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 797.2,
        cp_b_j_kgk2: 0.8696,
        spread_j_kgk: 50.0,
        fit_error_j_kgk: 1.0,
        source: Source::Rocks,
    },
    conductivity_w_mk: Datum::new(2.0, 0.5, Source::Memory),
    melt: None,
    limit_c: Datum::new(500.0, 100.0, Source::Memory),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet],
};

/// Line through 800, 880, 990 and 1060 J/kgK at 25, 100, 200 and 300 degC.
pub(super) const DRY_SAND: MediumProps = MediumProps {
    density_kg_m3: Datum::new(1600.0, 100.0, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 782.7,
        cp_b_j_kgk2: 0.9585,
        spread_j_kgk: 30.0,
        fit_error_j_kgk: 15.7,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::new(0.30, 0.08, Source::Memory),
    melt: None,
    limit_c: Datum::new(500.0, 100.0, Source::Memory),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet, Hazard::Dust],
};

/// Least squares on the dry curve of the standard, 20 to 350 degC. The peak at 100 to 115 degC that
/// drives off moisture is left out: it comes once.
pub(super) const CONCRETE: MediumProps = MediumProps {
    density_kg_m3: Datum::new(2300.0, 70.0, Source::ConcreteFire),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 860.2,
        cp_b_j_kgk2: 0.6352,
        spread_j_kgk: 40.0,
        fit_error_j_kgk: 27.2,
        source: Source::ConcreteFire,
    },
    // Between the lower and the upper curve of the standard at 150 degC.
    conductivity_w_mk: Datum::new(1.4, 0.25, Source::ConcreteFire),
    melt: None,
    limit_c: Datum::new(300.0, 50.0, Source::ConcreteFire),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet],
};

/// 956 J/kgK at 400 degC from the source, 825 cold from memory.
pub(super) const FIREBRICK: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2150.0, 0.05, Source::Vdi),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 816.3,
        cp_b_j_kgk2: 0.3493,
        spread_j_kgk: 40.0,
        fit_error_j_kgk: 1.0,
        source: Source::Vdi,
    },
    conductivity_w_mk: Datum::new(1.05, 0.15, Source::Vdi),
    melt: None,
    limit_c: Datum::new(1000.0, 100.0, Source::Memory),
    chemistry: Chemistry::Mineral,
    hazards: &[Hazard::SpallsWhenWet],
};
