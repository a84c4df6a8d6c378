//! The rows of the table of insulations.
//!
//! Cold figures are published; most figures above 100 degC are from memory and good to 15 %.

use super::{ConductivityPoint, InsulationHazard, InsulationProps};
use crate::provenance::{Datum, Source};

const fn point(
    mean_c: f64,
    conductivity_w_mk: f64,
    share: f64,
    source: Source,
) -> ConductivityPoint {
    ConductivityPoint {
        mean_c,
        conductivity_w_mk: Datum::relative(conductivity_w_mk, share, source),
    }
}

/// Glass wool with little binder.
pub(super) const GLASS_WOOL: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(40.0, 0.3, Source::Ashrae),
    cp_j_kgk: Datum::relative(840.0, 0.1, Source::Memory),
    conductivity: &[
        point(25.0, 0.038, 0.05, Source::Ashrae),
        point(100.0, 0.05, 0.10, Source::Memory),
        point(200.0, 0.075, 0.15, Source::Memory),
        point(300.0, 0.11, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(230.0, 20.0, Source::Memory),
    hazards: &[
        InsulationHazard::BinderFumes,
        InsulationHazard::Dust,
        InsulationHazard::Damp,
    ],
};

/// Rock wool, 80 to 120 kg/m3.
pub(super) const ROCK_WOOL: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(100.0, 0.15, Source::Ashrae),
    cp_j_kgk: Datum::relative(840.0, 0.1, Source::Memory),
    conductivity: &[
        point(25.0, 0.0375, 0.06, Source::Ashrae),
        point(100.0, 0.0465, 0.10, Source::Memory),
        point(200.0, 0.0675, 0.15, Source::Memory),
        point(300.0, 0.095, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(600.0, 50.0, Source::En14303),
    hazards: &[
        InsulationHazard::BinderFumes,
        InsulationHazard::Dust,
        InsulationHazard::Damp,
    ],
};

/// Loose perlite at 100 kg/m3; lighter and heavier grades run 0.042 and 0.0565 at 25 degC.
pub(super) const PERLITE: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(100.0, 0.3, Source::Ashrae),
    cp_j_kgk: Datum::relative(840.0, 0.1, Source::Memory),
    conductivity: &[
        point(25.0, 0.0485, 0.10, Source::Ashrae),
        point(100.0, 0.06, 0.12, Source::Memory),
        point(200.0, 0.085, 0.15, Source::Memory),
        point(300.0, 0.11, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(800.0, 50.0, Source::Memory),
    hazards: &[
        InsulationHazard::Dust,
        InsulationHazard::Damp,
        InsulationHazard::Settles,
    ],
};

/// Exfoliated vermiculite, 80 to 120 kg/m3.
pub(super) const VERMICULITE: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(100.0, 0.2, Source::Ashrae),
    cp_j_kgk: Datum::relative(960.0, 0.12, Source::Memory),
    conductivity: &[
        point(25.0, 0.0655, 0.06, Source::Ashrae),
        point(100.0, 0.085, 0.12, Source::Memory),
        point(200.0, 0.12, 0.15, Source::Memory),
        point(300.0, 0.15, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(1000.0, 50.0, Source::Memory),
    hazards: &[
        InsulationHazard::Dust,
        InsulationHazard::Damp,
        InsulationHazard::Settles,
        InsulationHazard::AsbestosInOldStock,
    ],
};

/// Calcium silicate block, Type I of the standard.
pub(super) const CALCIUM_SILICATE: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(250.0, 0.08, Source::AstmC533),
    cp_j_kgk: Datum::relative(960.0, 0.12, Source::Memory),
    conductivity: &[
        point(25.0, 0.055, 0.10, Source::Memory),
        point(93.0, 0.065, 0.08, Source::AstmC533),
        point(204.0, 0.079, 0.08, Source::AstmC533),
        point(300.0, 0.093, 0.08, Source::AstmC533),
    ],
    limit_c: Datum::new(649.0, 10.0, Source::AstmC533),
    hazards: &[InsulationHazard::Dust, InsulationHazard::Damp],
};

/// Blanket of 96 to 128 kg/m3; the older refractory fibre is a suspected carcinogen, the bio-
/// soluble kind is not.
pub(super) const CERAMIC_FIBRE: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(112.0, 0.15, Source::Memory),
    cp_j_kgk: Datum::relative(1000.0, 0.12, Source::Memory),
    conductivity: &[
        point(25.0, 0.035, 0.10, Source::Memory),
        point(100.0, 0.045, 0.12, Source::Memory),
        point(200.0, 0.062, 0.15, Source::Memory),
        point(300.0, 0.08, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(1000.0, 100.0, Source::AstmC892),
    hazards: &[InsulationHazard::Dust],
};

/// Rice husk, dry. The limit is a face temperature that we infer: husk char heats itself from 173
/// degC in less than a litre of it, and thicker layers take fire at lower temperatures.
pub(super) const RICE_HUSK: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(125.0, 0.2, Source::RiceHulls),
    cp_j_kgk: Datum::relative(1600.0, 0.15, Source::Memory),
    conductivity: &[
        point(25.0, 0.052, 0.10, Source::RiceHulls),
        point(100.0, 0.07, 0.15, Source::Memory),
    ],
    limit_c: Datum::new(100.0, 10.0, Source::Inferred),
    hazards: &[
        InsulationHazard::Combustible,
        InsulationHazard::Dust,
        InsulationHazard::Damp,
        InsulationHazard::Settles,
        InsulationHazard::Pests,
    ],
};

/// Dry straw or hay, packed by hand. The limit is inferred: thin samples take fire on a hot plate
/// from 380 degC, thick ones smoulder much sooner.
pub(super) const STRAW: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(90.0, 0.3, Source::Memory),
    cp_j_kgk: Datum::relative(1600.0, 0.15, Source::Memory),
    conductivity: &[
        point(25.0, 0.055, 0.15, Source::Ashrae),
        point(100.0, 0.08, 0.20, Source::Memory),
    ],
    limit_c: Datum::new(100.0, 10.0, Source::Inferred),
    hazards: &[
        InsulationHazard::Combustible,
        InsulationHazard::Dust,
        InsulationHazard::Damp,
        InsulationHazard::Pests,
    ],
};

/// Sheep's wool, loose or felted. It scorches from about 130 degC (from memory).
pub(super) const WOOL: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(20.0, 0.4, Source::Wool),
    cp_j_kgk: Datum::relative(1700.0, 0.12, Source::Memory),
    conductivity: &[
        point(25.0, 0.0385, 0.12, Source::Wool),
        point(100.0, 0.055, 0.20, Source::Memory),
    ],
    limit_c: Datum::new(100.0, 10.0, Source::Memory),
    hazards: &[InsulationHazard::Combustible, InsulationHazard::Pests],
};

/// Silica aerogel in a fibre blanket.
pub(super) const AEROGEL_BLANKET: InsulationProps = InsulationProps {
    density_kg_m3: Datum::relative(175.0, 0.12, Source::Memory),
    cp_j_kgk: Datum::relative(1000.0, 0.12, Source::Memory),
    conductivity: &[
        point(25.0, 0.0205, 0.06, Source::Memory),
        point(100.0, 0.023, 0.08, Source::Memory),
        point(200.0, 0.029, 0.10, Source::Memory),
        point(300.0, 0.037, 0.12, Source::Memory),
    ],
    limit_c: Datum::new(650.0, 20.0, Source::Memory),
    hazards: &[InsulationHazard::Dust, InsulationHazard::SelfHeats],
};
