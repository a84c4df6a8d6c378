//! The rows of the table of dishes.

use super::{Basis, DishProps, DoneWhen, FullBoil, Hold, Slowing, Soak};
use crate::provenance::{Datum, Source};

/// Beans of the genus Phaseolus: 10 min is the least published (UK), 30 min what the United States
/// advise. Heating to 80 degC and no further can make them five times worse.
const BEAN_BOIL: Option<FullBoil> = Some(FullBoil {
    least_min: Datum::new(10.0, 0.0, Source::Phls),
    advised_min: Datum::new(30.0, 0.0, Source::BadBug),
});

/// Milled rice. The activation energy holds below about 105 degC.
pub(super) const WHITE_RICE: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.08, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(1.8, 0.2, Source::CommonPractice),
    cp_j_kgk: Datum::new(1970.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(18.0, 3.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(71e3, 8e3, Source::Rice)),
    least_c: Datum::new(78.0, 4.0, Source::Rice),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::HotNeverOvernight,
    done_when: DoneWhen::Cooked,
};

/// Brown rice: the bran slows the water.
pub(super) const BROWN_RICE: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.08, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(2.3, 0.2, Source::CommonPractice),
    cp_j_kgk: Datum::new(1990.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(40.0, 5.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(71e3, 10e3, Source::Inferred)),
    least_c: Datum::new(85.0, 4.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::HotNeverOvernight,
    done_when: DoneWhen::Cooked,
};

/// Soaked common beans: 60 to 120 min in guides, 52 to 85 min measured. Old beans take two or
/// three times as long.
pub(super) const COMMON_BEANS_SOAKED: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.09, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(2.5, 0.3, Source::PulseGuide),
    cp_j_kgk: Datum::new(2050.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(75.0, 20.0, Source::Deshpande),
    slowing: Slowing::Z(Datum::new(19.0, 2.0, Source::Quast)),
    least_c: Datum::new(90.0, 3.0, Source::Inferred),
    full_boil: BEAN_BOIL,
    core_c: None,
    soak: Soak::Hours(5),
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Common beans from dry. Soaking is shorter, and takes out part of what is poisonous.
pub(super) const COMMON_BEANS_UNSOAKED: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.09, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(3.8, 0.4, Source::CommonPractice),
    cp_j_kgk: Datum::new(2050.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(150.0, 35.0, Source::Memory),
    slowing: Slowing::Z(Datum::new(19.0, 2.0, Source::Quast)),
    least_c: Datum::new(92.0, 3.0, Source::Inferred),
    full_boil: BEAN_BOIL,
    core_c: None,
    soak: Soak::Hours(5),
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Red kidney beans, the most poisonous when raw or merely hot. They count as cooking only near
/// the boil.
pub(super) const RED_KIDNEY_BEANS_SOAKED: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.09, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(3.0, 0.3, Source::CommonPractice),
    cp_j_kgk: Datum::new(2100.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(75.0, 15.0, Source::Memory),
    slowing: Slowing::Z(Datum::new(19.0, 2.0, Source::Quast)),
    least_c: Datum::new(92.0, 3.0, Source::Inferred),
    full_boil: BEAN_BOIL,
    core_c: None,
    soak: Soak::Hours(5),
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Black beans: as poisonous raw as red kidney beans in one extension text.
pub(super) const BLACK_BEANS_SOAKED: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.09, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(3.0, 0.3, Source::CommonPractice),
    cp_j_kgk: Datum::new(2050.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(75.0, 15.0, Source::Memory),
    slowing: Slowing::Z(Datum::new(19.0, 1.5, Source::Quast)),
    least_c: Datum::new(92.0, 3.0, Source::Inferred),
    full_boil: BEAN_BOIL,
    core_c: None,
    soak: Soak::Hours(5),
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Chickpeas; z inferred from other pulses.
pub(super) const CHICKPEAS_SOAKED: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.09, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(3.5, 0.4, Source::PulseGuide),
    cp_j_kgk: Datum::new(1970.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(105.0, 15.0, Source::PulseGuide),
    slowing: Slowing::Z(Datum::new(19.0, 3.0, Source::Inferred)),
    least_c: Datum::new(90.0, 3.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::Hours(8),
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Whole lentils, not soaked; split red ones take 5 to 10 min. z inferred.
pub(super) const LENTILS: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.08, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(3.1, 0.3, Source::PulseGuide),
    cp_j_kgk: Datum::new(1980.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(30.0, 7.0, Source::PulseGuide),
    slowing: Slowing::Z(Datum::new(17.5, 2.5, Source::Inferred)),
    least_c: Datum::new(88.0, 3.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Split peas, with the z of dry peas.
pub(super) const SPLIT_PEAS: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.08, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(2.4, 0.3, Source::PulseGuide),
    cp_j_kgk: Datum::new(2020.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(38.0, 5.0, Source::PulseGuide),
    slowing: Slowing::Z(Datum::new(16.0, 2.0, Source::Quast)),
    least_c: Datum::new(88.0, 3.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Maize meal. Stirred; once thick it takes heat badly from the wall.
pub(super) const MAIZE_PORRIDGE: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.1, 0.03, Source::CommonPractice),
    water_per_food: Datum::new(4.0, 0.7, Source::CommonPractice),
    cp_j_kgk: Datum::new(1980.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(30.0, 8.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(71e3, 15e3, Source::Inferred)),
    least_c: Datum::new(80.0, 4.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Pieces of 3 to 4 cm, water to cover. Kept near 60 degC first, they grow firm and stay so.
pub(super) const POTATOES: DishProps = DishProps {
    basis: Basis::Fresh,
    portion_kg: Datum::new(0.3, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.8, 0.2, Source::CommonPractice),
    cp_j_kgk: Datum::new(3640.0, 100.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(25.0, 4.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(63e3, 18e3, Source::Potato)),
    least_c: Datum::new(83.0, 4.0, Source::Memory),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Peeled pieces, water to cover; bitter kinds hold cyanide.
pub(super) const CASSAVA: DishProps = DishProps {
    basis: Basis::Fresh,
    portion_kg: Datum::new(0.3, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.8, 0.2, Source::CommonPractice),
    cp_j_kgk: Datum::new(3150.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(30.0, 7.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(63e3, 20e3, Source::Inferred)),
    least_c: Datum::new(85.0, 4.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::Detoxify,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Dried pasta; can be cooked in less water than is usual.
pub(super) const PASTA: DishProps = DishProps {
    basis: Basis::Dry,
    portion_kg: Datum::new(0.1, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(6.0, 1.0, Source::CommonPractice),
    cp_j_kgk: Datum::new(1960.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(10.0, 2.0, Source::Memory),
    slowing: Slowing::Arrhenius(Datum::new(70e3, 12e3, Source::Inferred)),
    least_c: Datum::new(80.0, 4.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::HotNeverOvernight,
    done_when: DoneWhen::Cooked,
};

/// Meat or poultry in pieces with vegetables. The time is for tenderness of young meat; what kills
/// is the core temperature.
pub(super) const MEAT_STEW: DishProps = DishProps {
    basis: Basis::Fresh,
    portion_kg: Datum::new(0.3, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.7, 0.2, Source::CommonPractice),
    cp_j_kgk: Datum::new(3430.0, 120.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(45.0, 10.0, Source::Memory),
    slowing: Slowing::Z(Datum::new(25.0, 5.0, Source::Inferred)),
    least_c: Datum::new(80.0, 4.0, Source::Inferred),
    full_boil: None,
    core_c: Some(Datum::new(74.0, 0.0, Source::FoodCode)),
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Vegetables. Pectin gives way from about 84 degC.
pub(super) const VEGETABLE_STEW: DishProps = DishProps {
    basis: Basis::Fresh,
    portion_kg: Datum::new(0.35, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.3, 0.15, Source::CommonPractice),
    cp_j_kgk: Datum::new(3910.0, 80.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(22.0, 5.0, Source::Memory),
    slowing: Slowing::Z(Datum::new(27.0, 3.0, Source::VanLoey)),
    least_c: Datum::new(85.0, 3.0, Source::Inferred),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Hard, from the shell, water to cover: the white sets from 62 degC, the yolk from 65 (from
/// memory).
pub(super) const EGGS: DishProps = DishProps {
    basis: Basis::Fresh,
    portion_kg: Datum::new(0.12, 0.02, Source::CommonPractice),
    water_per_food: Datum::new(1.2, 0.3, Source::CommonPractice),
    cp_j_kgk: Datum::new(3640.0, 150.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(11.0, 1.5, Source::Memory),
    slowing: Slowing::Z(Datum::new(30.0, 8.0, Source::Inferred)),
    least_c: Datum::new(74.0, 3.0, Source::Memory),
    full_boil: None,
    core_c: Some(Datum::new(74.0, 0.0, Source::FoodCode)),
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Cooked,
};

/// Brought to the boil once.
pub(super) const MILK: DishProps = DishProps {
    basis: Basis::Liquid,
    portion_kg: Datum::new(0.25, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.0, 0.0, Source::CommonPractice),
    cp_j_kgk: Datum::new(3870.0, 60.0, Source::ChoiOkos),
    minutes_at_100_c: Datum::new(0.25, 0.1, Source::Memory),
    slowing: Slowing::Z(Datum::new(7.5, 1.0, Source::Inferred)),
    least_c: Datum::new(72.0, 1.0, Source::Memory),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Hot,
    done_when: DoneWhen::Boils,
};

/// Water, brought to the boil once.
pub(super) const TEA_WATER: DishProps = DishProps {
    basis: Basis::Liquid,
    portion_kg: Datum::new(0.3, 0.08, Source::CommonPractice),
    water_per_food: Datum::new(0.0, 0.0, Source::CommonPractice),
    cp_j_kgk: Datum::new(4190.0, 10.0, Source::Memory),
    minutes_at_100_c: Datum::new(1.0, 0.5, Source::CommonPractice),
    slowing: Slowing::Z(Datum::new(7.5, 1.0, Source::Inferred)),
    least_c: Datum::new(70.0, 1.0, Source::CommonPractice),
    full_boil: None,
    core_c: None,
    soak: Soak::None,
    hold: Hold::Free,
    done_when: DoneWhen::Boils,
};
