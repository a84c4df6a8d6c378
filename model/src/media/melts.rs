//! Media that melt in use, and oil.

use super::{Chemistry, Hazard, HeatCapacityLine, MediumProps, MeltProps};
use crate::provenance::{Datum, Source};

/// One figure of the source at 20 degC for the solid. The limit is a cap on the heater's face: it
/// browns and loses latent heat within months of daily use above about 140 degC.
pub(super) const ERYTHRITOL: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(1480.0, 0.01, Source::Zalba),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1380.0,
        cp_b_j_kgk2: 0.0,
        spread_j_kgk: 140.0,
        fit_error_j_kgk: 0.0,
        source: Source::Zalba,
    },
    conductivity_w_mk: Datum::relative(0.733, 0.3, Source::Zalba),
    melt: Some(MeltProps {
        solidus_c: Datum::new(117.0, 1.0, Source::Zalba),
        liquidus_c: Datum::new(119.0, 1.5, Source::Chemicals),
        latent_j_kg: Datum::new(340e3, 12e3, Source::Zalba),
        cp_liquid_j_kgk: Datum::relative(2760.0, 0.05, Source::Zalba),
        conductivity_liquid_w_mk: Datum::relative(0.326, 0.2, Source::Zalba),
        density_liquid_kg_m3: Datum::relative(1300.0, 0.02, Source::Zalba),
    }),
    limit_c: Datum::new(140.0, 5.0, Source::Inferred),
    chemistry: Chemistry::SugarAlcohol,
    hazards: &[
        Hazard::Combustible,
        Hazard::Supercools,
        Hazard::Ages,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Listed so that a household that has it is warned: in air it goes brown and pasty within days.
pub(super) const MANNITOL: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(1490.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1350.0,
        cp_b_j_kgk2: 0.0,
        spread_j_kgk: 135.0,
        fit_error_j_kgk: 50.0,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::relative(0.6, 0.3, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(164.1, 1.5, Source::Tong),
        liquidus_c: Datum::new(164.1, 1.5, Source::Tong),
        latent_j_kg: Datum::new(300e3, 15e3, Source::Tong),
        cp_liquid_j_kgk: Datum::relative(2650.0, 0.08, Source::Memory),
        conductivity_liquid_w_mk: Datum::relative(0.3, 0.33, Source::Memory),
        density_liquid_kg_m3: Datum::relative(1390.0, 0.03, Source::Memory),
    }),
    limit_c: Datum::new(175.0, 5.0, Source::Inferred),
    chemistry: Chemistry::SugarAlcohol,
    hazards: &[
        Hazard::Combustible,
        Hazard::Supercools,
        Hazard::Ages,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Line through 1500 at 20 and 1900 J/kgK at 150 degC; sublimes, so its vapour is a hazard long
/// before the flash point near 196 degC.
pub(super) const ADIPIC_ACID: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(1360.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1438.0,
        cp_b_j_kgk2: 3.077,
        spread_j_kgk: 150.0,
        fit_error_j_kgk: 1.0,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::relative(0.28, 0.3, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(152.0, 0.5, Source::Chemicals),
        liquidus_c: Datum::new(153.0, 0.5, Source::Chemicals),
        latent_j_kg: Datum::new(248e3, 20e3, Source::Chemicals),
        cp_liquid_j_kgk: Datum::relative(2500.0, 0.08, Source::Memory),
        conductivity_liquid_w_mk: Datum::relative(0.16, 0.3, Source::Memory),
        density_liquid_kg_m3: Datum::relative(1090.0, 0.02, Source::Memory),
    }),
    limit_c: Datum::new(170.0, 5.0, Source::Memory),
    chemistry: Chemistry::OrganicAcid,
    hazards: &[
        Hazard::Combustible,
        Hazard::Dust,
        Hazard::Vapour,
        Hazard::Corrosive,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// The solid's figure at 100 degC stands for all temperatures. Vented, it loses its water; above
/// about 180 degC it gives off hydrogen chloride.
pub(super) const MAGNESIUM_CHLORIDE_HEXAHYDRATE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(1569.0, 0.01, Source::Zalba),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 2250.0,
        cp_b_j_kgk2: 0.0,
        spread_j_kgk: 200.0,
        fit_error_j_kgk: 0.0,
        source: Source::Zalba,
    },
    conductivity_w_mk: Datum::relative(0.70, 0.15, Source::Zalba),
    melt: Some(MeltProps {
        solidus_c: Datum::new(115.1, 0.5, Source::Hoehlein),
        liquidus_c: Datum::new(117.0, 1.0, Source::Zalba),
        latent_j_kg: Datum::new(166.9e3, 3e3, Source::Hoehlein),
        cp_liquid_j_kgk: Datum::relative(2610.0, 0.06, Source::Zalba),
        conductivity_liquid_w_mk: Datum::relative(0.58, 0.1, Source::Zalba),
        density_liquid_kg_m3: Datum::relative(1450.0, 0.01, Source::Zalba),
    }),
    limit_c: Datum::new(125.0, 3.0, Source::Memory),
    chemistry: Chemistry::SaltHydrate,
    hazards: &[
        Hazard::Supercools,
        Hazard::Corrosive,
        Hazard::LosesWater,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Line through 1900 at 20 and 2300 J/kgK at 100 degC.
pub(super) const HDPE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(955.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1800.0,
        cp_b_j_kgk2: 5.0,
        spread_j_kgk: 150.0,
        fit_error_j_kgk: 1.0,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::relative(0.47, 0.1, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(125.0, 2.0, Source::Memory),
        liquidus_c: Datum::new(135.0, 2.0, Source::Memory),
        latent_j_kg: Datum::new(205e3, 20e3, Source::Weingrill),
        cp_liquid_j_kgk: Datum::relative(2600.0, 0.05, Source::Memory),
        conductivity_liquid_w_mk: Datum::relative(0.27, 0.1, Source::Memory),
        density_liquid_kg_m3: Datum::relative(780.0, 0.02, Source::Memory),
    }),
    limit_c: Datum::new(160.0, 10.0, Source::Weingrill),
    chemistry: Chemistry::Polymer,
    hazards: &[
        Hazard::Combustible,
        Hazard::Vapour,
        Hazard::Ages,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Line through 1100 at 25 (1082 in the source) and 1800 J/kgK at 300 degC from memory: this
/// includes the change of the crystal that ends near 277 degC, 55 kJ/kg in the source.
pub(super) const SODIUM_NITRATE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2261.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1036.0,
        cp_b_j_kgk2: 2.545,
        spread_j_kgk: 130.0,
        fit_error_j_kgk: 20.0,
        source: Source::Carling,
    },
    conductivity_w_mk: Datum::relative(0.6, 0.2, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(306.5, 0.5, Source::Chemicals),
        liquidus_c: Datum::new(306.5, 0.5, Source::Chemicals),
        latent_j_kg: Datum::new(178e3, 5e3, Source::Chemicals),
        cp_liquid_j_kgk: Datum::relative(1660.0, 0.05, Source::Memory),
        conductivity_liquid_w_mk: Datum::relative(0.51, 0.1, Source::Bauer),
        density_liquid_kg_m3: Datum::relative(1908.0, 0.01, Source::Bauer),
    }),
    limit_c: Datum::new(400.0, 25.0, Source::Memory),
    chemistry: Chemistry::Nitrate,
    hazards: &[
        Hazard::Oxidiser,
        Hazard::Toxic,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// 943 J/kgK cold (source) and 1250 at 330 degC (memory), with the 55 kJ/kg of the change of the
/// crystal near 133 degC spread evenly over 20 to 334 degC (176 J/kgK): the whole heat is right,
/// the heat held below 133 degC is up to 20 kJ/kg too high.
pub(super) const POTASSIUM_NITRATE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2109.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1094.0,
        cp_b_j_kgk2: 1.0,
        spread_j_kgk: 110.0,
        fit_error_j_kgk: 177.0,
        source: Source::Carling,
    },
    conductivity_w_mk: Datum::relative(0.5, 0.2, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(334.0, 1.0, Source::Chemicals),
        liquidus_c: Datum::new(334.0, 1.0, Source::Chemicals),
        latent_j_kg: Datum::new(95e3, 4e3, Source::Chemicals),
        cp_liquid_j_kgk: Datum::relative(1400.0, 0.05, Source::Memory),
        conductivity_liquid_w_mk: Datum::relative(0.44, 0.1, Source::Memory),
        density_liquid_kg_m3: Datum::relative(1870.0, 0.01, Source::Memory),
    }),
    limit_c: Datum::new(400.0, 25.0, Source::Memory),
    chemistry: Chemistry::Nitrate,
    hazards: &[
        Hazard::Oxidiser,
        Hazard::Toxic,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Line through 1230 at 25 and 1465 J/kgK at 220 degC. The liquid's figure is the correlation
/// 1443 + 0.172 T at 300 degC.
pub(super) const SODIUM_POTASSIUM_NITRATE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2150.0, 0.03, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1200.0,
        cp_b_j_kgk2: 1.2,
        spread_j_kgk: 120.0,
        fit_error_j_kgk: 30.0,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::relative(0.65, 0.2, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(222.0, 2.0, Source::Memory),
        liquidus_c: Datum::new(238.0, 2.0, Source::Memory),
        latent_j_kg: Datum::new(110e3, 15e3, Source::Memory),
        cp_liquid_j_kgk: Datum::relative(1495.0, 0.03, Source::Zavoico),
        conductivity_liquid_w_mk: Datum::relative(0.50, 0.05, Source::Zavoico),
        density_liquid_kg_m3: Datum::relative(1937.0, 0.01, Source::Zavoico),
    }),
    limit_c: Datum::new(450.0, 25.0, Source::Memory),
    chemistry: Chemistry::Nitrate,
    hazards: &[
        Hazard::Oxidiser,
        Hazard::Toxic,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// In air the nitrite turns to nitrate over the years, and the melting point creeps up.
pub(super) const TERNARY_NITRATE_NITRITE: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(2050.0, 0.03, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 1340.0,
        cp_b_j_kgk2: 0.0,
        spread_j_kgk: 130.0,
        fit_error_j_kgk: 0.0,
        source: Source::Memory,
    },
    conductivity_w_mk: Datum::relative(0.6, 0.2, Source::Memory),
    melt: Some(MeltProps {
        solidus_c: Datum::new(142.0, 2.0, Source::Memory),
        liquidus_c: Datum::new(142.0, 2.0, Source::Memory),
        latent_j_kg: Datum::new(72e3, 12e3, Source::Memory),
        cp_liquid_j_kgk: Datum::relative(1560.0, 0.05, Source::Zavoico),
        conductivity_liquid_w_mk: Datum::relative(0.40, 0.25, Source::Zavoico),
        density_liquid_kg_m3: Datum::relative(1976.0, 0.01, Source::Zavoico),
    }),
    limit_c: Datum::new(400.0, 50.0, Source::Memory),
    chemistry: Chemistry::Nitrate,
    hazards: &[
        Hazard::Oxidiser,
        Hazard::Toxic,
        Hazard::Ages,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};

/// Mean of the lines for rapeseed, 2086 + 3.00 T, and soybean, 1956 + 2.79 T, 35 to 180 degC. The
/// limit is below the smoke point of refined oil; unrefined oil smokes from 160 degC.
pub(super) const VEGETABLE_OIL: MediumProps = MediumProps {
    density_kg_m3: Datum::relative(920.0, 0.01, Source::Memory),
    cp: HeatCapacityLine {
        cp_a_j_kgk: 2021.0,
        cp_b_j_kgk2: 2.895,
        spread_j_kgk: 80.0,
        fit_error_j_kgk: 84.0,
        source: Source::Fasina,
    },
    conductivity_w_mk: Datum::new(0.15, 0.015, Source::Memory),
    melt: None,
    limit_c: Datum::new(200.0, 15.0, Source::Memory),
    chemistry: Chemistry::Oil,
    hazards: &[
        Hazard::Combustible,
        Hazard::Vapour,
        Hazard::Ages,
        Hazard::ExpandsOnMelting,
        Hazard::HotLiquid,
    ],
};
