//! What is not known of a cooker before anything was reported, and of each day and pot.

use crate::cooker::{Cooker, Spreads};
use crate::dish::{Dish, Slowing};
use crate::flask::{BRIGHT_STEEL_EMISSIVITY, Flask, SILVERED_EMISSIVITY};
use crate::insulation::Insulation;
use crate::jacket::{Jacket, LayerKind, OUTER_FILM_W_M2K};
use crate::pot::{Lid, Pot};
use crate::provenance::Datum;
use crate::seat::INNER_FILM_W_M2K;
use crate::tonight::Rig;

/// What a household's reports can teach about its cooker: each multiplies what the tables and the
/// description give.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[repr(usize)]
pub enum Multiplier {
    /// Loss through the jacket.
    Loss = 0,
    /// Conductance of the seat.
    Contact = 1,
    /// Heat from the sun: panel, dust, wiring, resistor.
    Charging = 2,
    /// Heat that the store holds: its mass and specific heat.
    Capacity = 3,
    /// Loss of the pot to the air.
    PotLoss = 4,
    /// Cooking time of grain, porridge and pasta.
    GrainTime = 5,
    /// Cooking time of beans of the genus Phaseolus.
    BeanTime = 6,
    /// Cooking time of the other pulses.
    PulseTime = 7,
    /// Cooking time of everything else.
    OtherTime = 8,
}

/// How many multipliers there are.
pub(super) const MULTIPLIERS: usize = 9;

/// What is off by so many kelvins, on this household's cooker alone: learned like the multipliers.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(usize)]
pub(super) enum Offset {
    /// The thermometer, always to the same side.
    Thermometer = 0,
    /// The thermostat: its own error, and where in the store it sits.
    CutOut = 1,
    /// The melting point of what melts.
    Melt = 2,
    /// Where the thermometer sits in a store that is not at one temperature, in standard deviations
    /// from its middle.
    Place = 3,
    /// The air of this place beside that of the tables.
    Air = 4,
    /// How much more of the heater's heat the far side of a store of several nodes gets than the seat's,
    /// in standard deviations.
    Heater = 5,
    /// How late this household notices what it sees of a pot: the logarithm of what multiplies the
    /// usual lag.
    Late = 6,
}

/// How many offsets there are, and how many figures of a cooker that stay.
pub(super) const OFFSETS: usize = 7;
pub(super) const STATICS: usize = MULTIPLIERS + OFFSETS;

impl Offset {
    /// Every one, with its standard deviation before anything was reported. \[K\]
    ///
    /// `has_nodes`: the store is not at one temperature.
    pub(super) fn all(
        (thermometer_sd_k, melt_sd_k): (f64, f64),
        has_nodes: bool,
    ) -> [(Self, f64); OFFSETS] {
        [
            (Self::Thermometer, thermometer_sd_k),
            (Self::CutOut, CUT_OUT_SD_K),
            (Self::Melt, melt_sd_k),
            (Self::Place, 1.0),
            (Self::Air, AIR_SD_K),
            (Self::Heater, if has_nodes { HEATER_TILT_SD } else { 0.0 }),
            (Self::Late, LATE_LOG_SD),
        ]
    }

    /// Its place among the offsets.
    pub(super) fn index(self) -> usize {
        self as usize
    }
}

/// Doubt of where a household's thermostat cuts out. Common practice, no source. \[K\]
const CUT_OUT_SD_K: f64 = 5.0;

/// Doubt of where a household's thermometer sits, as a share of the store's mass from the seat on.
/// Inferred.
pub(super) const PLACE: (f64, f64) = (0.5, 0.3);
/// The nearest to the seat and the farthest from it that it may be.
pub(super) const PLACES: (f64, f64) = (0.05, 0.95);
/// Doubt of where in a store that conducts poorly its heater lies: elements are laid where there is
/// room, and the middle of their heat is within a seventh of the depth of the middle of the mass,
/// nineteen times of twenty. As the heat at the far end beside the mean. Inferred.
const HEATER_TILT_SD: f64 = 0.4;
/// The farthest end of it gets so much more or less at most.
pub(super) const MOST_TILT: f64 = 0.9;
/// Some watch the pot and some pass by now and then: nine households of ten notice between a bit under
/// half as late as the usual one and a bit over twice. Common practice, no source.
const LATE_LOG_SD: f64 = 0.5;
/// How much of its first doubt a thermometer gets back each day, of its error and of where it sits: it
/// is not always put into the same spot. Inferred.
pub(super) const OFFSET_A_DAY: f64 = 0.3;
/// Of the days of a diary without a pot, those on which one was cooked and not told, and how full it
/// was beside the brim. Inferred.
pub(super) const UNTOLD: f64 = 0.3;
pub(super) const UNTOLD_FULL: f64 = 0.5;

/// Doubt of a day's heat at the heater: dust, the panel's rating, the matching of the resistor.
/// From memory.
const CHARGING_SD: f64 = 0.11;
/// Of which dust alone, on panels whose heat was measured once. From memory.
const DUST_SD: f64 = 0.05;
/// Doubt of a loss or a contact that was measured on the cooker. Common practice, no source.
const MEASURED_SD: f64 = 0.07;
/// Doubt of a store's mass, with what of can, plate and fins shares its heat. Common practice, no
/// source.
const MASS_SD: f64 = 0.05;
/// Doubt of a jacket as it was built: voids, crushing, damp, the model's one node. Inferred.
const BUILT_SD: f64 = 0.1;
/// Of the variance of a dish's cooking time, what all dishes of its kind have in common in a
/// household: its taste and its water; and what each of its dishes has by itself from pot to pot: the
/// bag of beans, the size of the pieces. The rest is a pot's. Inferred.
const COOKING_IN_COMMON: f64 = 0.2;
const COOKING_OF_DISH: f64 = 0.65;
/// One batch from another. Inferred.
const COOKING_BATCH_SD: f64 = 0.07;

/// What was learned grows old: each day these multipliers wander by this share of what was not known
/// of them at first. Dust settles, a lid wears, and the model is not the cooker. Inferred.
pub(super) const DRIFT_A_DAY: f64 = 0.13;
pub(super) const DRIFTING: [Multiplier; 4] = [
    Multiplier::Loss,
    Multiplier::Contact,
    Multiplier::Charging,
    Multiplier::PotLoss,
];

/// A jacket differs from day to day by this: wind, a lid that sits better or worse. Inferred.
pub(super) const LOSS_DAY_SD: f64 = 0.11;
/// A day's air differs from the month's by this, and a place's from its region's. From memory. \[K\]
pub(super) const AIR_DAY_SD_K: f64 = 2.2;
const AIR_SD_K: f64 = 2.0;
/// What a household fills in melts beside the pure stuff of the tables. Inferred. \[K\]
const GRADE_SD_K: f64 = 1.0;
/// A cup more or less: water poured by eye or by cup. Common practice, no source.
pub(super) const WATER_SD: f64 = 0.07;
/// Temperature of what goes in. Common practice, no source. \[K\]
pub(super) const START_SD_K: f64 = 3.0;
/// A pot sits a little otherwise each time: two boils of one pot on one plate differ by 5 to 10 %
/// (common practice, no source).
pub(super) const CONTACT_POT_SD: f64 = 0.09;
/// How much of a seat's conductance porridge leaves: stirred or not, thick or thin. Inferred.
pub(super) const THICK_POT_SD: f64 = 0.2;
/// Food by the cup or by eye, in a pot of the table's mass. Common practice, no source.
pub(super) const DRY_SD: f64 = 0.12;
/// What built fins, foam or wire carry beside what they could: lengths, gaps, welds. Inferred.
const BUILT_METAL_SD: f64 = 0.25;

impl Multiplier {
    /// Every multiplier.
    pub const ALL: [Self; MULTIPLIERS] = [
        Self::Loss,
        Self::Contact,
        Self::Charging,
        Self::Capacity,
        Self::PotLoss,
        Self::GrainTime,
        Self::BeanTime,
        Self::PulseTime,
        Self::OtherTime,
    ];

    /// The multiplier of a dish's cooking time.
    pub fn of_cooking(dish: Dish) -> Self {
        match dish {
            Dish::WhiteRice | Dish::BrownRice | Dish::MaizePorridge | Dish::Pasta => {
                Self::GrainTime
            }
            Dish::CommonBeansSoaked
            | Dish::CommonBeansUnsoaked
            | Dish::RedKidneyBeansSoaked
            | Dish::BlackBeansSoaked => Self::BeanTime,
            Dish::ChickpeasSoaked | Dish::Lentils | Dish::SplitPeas => Self::PulseTime,
            Dish::Potatoes
            | Dish::Cassava
            | Dish::MeatStew
            | Dish::VegetableStew
            | Dish::Eggs
            | Dish::Milk
            | Dish::TeaWater => Self::OtherTime,
        }
    }

    pub(super) fn index(self) -> usize {
        self as usize
    }

    /// One standard deviation of the multiplier's logarithm before anything was reported.
    ///
    /// Of cooking times, in standard deviations of a dish's own spread: see [`cook_log_sd`].
    pub(crate) fn log_sd(self, cooker: &Cooker, rig: &Rig) -> f64 {
        let spreads = cooker.spreads;
        match self {
            Self::Loss => log_of(spreads.loss.unwrap_or_else(|| loss_sd(&cooker.jacket))),
            Self::Contact => log_of(contact_sd(cooker, rig)),
            // What was measured of a tracker says nothing of the day's dust and match.
            Self::Charging => {
                let measured = spreads.charging.map(|spread| libm::hypot(spread, DUST_SD));
                log_of(measured.unwrap_or(CHARGING_SD))
            }
            Self::Capacity => log_of(spreads.capacity.unwrap_or_else(|| capacity_sd(cooker))),
            Self::PotLoss => log_of(spreads.pot_loss.unwrap_or_else(|| pot_loss_sd(cooker.pot))),
            Self::GrainTime | Self::BeanTime | Self::PulseTime | Self::OtherTime => 1.0,
        }
    }

    /// Whether what the prior hangs on is the same of both: then what was learned is kept.
    pub(super) fn is_kept(self, old: &Cooker, new: &Cooker) -> bool {
        let same = |of: fn(&Spreads) -> Option<f64>| of(&old.spreads) == of(&new.spreads);
        match self {
            Self::Loss => old.jacket == new.jacket && same(|spreads| spreads.loss),
            Self::Contact => old.contact == new.contact && same(|spreads| spreads.contact),
            Self::Charging => {
                let parts = old.panels == new.panels && old.heater == new.heater;
                parts && same(|spreads| spreads.charging)
            }
            Self::Capacity => old.store == new.store && same(|spreads| spreads.capacity),
            Self::PotLoss => {
                let share = old.pot_loss_share.to_bits() == new.pot_loss_share.to_bits();
                share && same(|spreads| spreads.pot_loss)
            }
            Self::GrainTime | Self::BeanTime | Self::PulseTime | Self::OtherTime => true,
        }
    }
}

/// The logarithm's standard deviation for a relative one.
fn log_of(relative_sd: f64) -> f64 {
    libm::log(1.0 + relative_sd * relative_sd).sqrt()
}

/// Standard deviations of the logarithm of a dish's cooking time: what a household's pots of its kind
/// have in common, what those of the dish have besides, and what is each pot's own.
pub(super) fn cook_log_sd(dish: Dish) -> [f64; 3] {
    let whole = log_of(dish.props().minutes_at_100_c.spread_share());
    let of_pot = 1.0 - COOKING_IN_COMMON - COOKING_OF_DISH;
    [
        whole * COOKING_IN_COMMON.sqrt(),
        whole * COOKING_OF_DISH.sqrt(),
        libm::hypot(whole * of_pot.sqrt(), COOKING_BATCH_SD),
    ]
}

/// Doubts of how a dish cooks below the boil: the standard deviations of the logarithm of how much it
/// slows, and of the least temperature, as the tables have them. \[1, K\]
pub(super) fn slowing_sd(dish: Dish) -> (f64, f64) {
    let props = dish.props();
    let (Slowing::Z(slowing) | Slowing::Arrhenius(slowing)) = props.slowing;
    (log_of(slowing.spread_share()), props.least_c.spread)
}

/// Of the pots that are told as covered, those whose lid stands ajar: lifted to look, put back askew.
/// Inferred.
pub(super) const LEFT_AJAR: f64 = 0.08;

/// The same for what steams off below the boil through this lid.
pub(super) fn steam_log_sd(lid: Lid) -> f64 {
    log_of(lid.evaporation_share().spread_share())
}

fn loss_sd(jacket: &Jacket) -> f64 {
    let layered = match jacket {
        Jacket::Layers(layered) => layered,
        Jacket::Flask { flask, .. } => return flask_sd(flask),
        Jacket::Measured { .. } => return MEASURED_SD,
    };
    let material = |material: Insulation| {
        let points = material.props().conductivity;
        points
            .iter()
            .map(|point| point.conductivity_w_mk.spread_share())
            .fold(0.0, f64::max)
    };
    // The layers share the resistance; the doubt of the worst counts for all.
    let layers = layered
        .layers
        .iter()
        .map(|layer| match layer.kind {
            LayerKind::Insulation { material: of } => material(of),
            LayerKind::StillAir { .. } => OUTER_FILM_W_M2K.spread_share(),
        })
        .fold(0.0, f64::max);
    hypot3(layers, layered.lid.loss_factor().spread_share(), BUILT_SD)
}

/// Radiation between the walls of a sound flask, or what gas is left in one that is not.
fn flask_sd(flask: &Flask) -> f64 {
    let radiation = if flask.emissivity < 0.06 {
        SILVERED_EMISSIVITY
    } else {
        BRIGHT_STEEL_EMISSIVITY
    };
    libm::hypot(radiation.spread_share(), BUILT_SD)
}

/// Contact and inner film one behind the other: each counts with its share of the resistance.
fn contact_sd(cooker: &Cooker, rig: &Rig) -> f64 {
    let is_measured = cooker.contact.measured_w_m2k.is_some();
    if is_measured && cooker.spreads.contact.is_none() {
        return MEASURED_SD;
    }
    let diameter_m = cooker.pot.size.props().diameter_m.value;
    let area_m2 = cooker
        .contact
        .seat
        .area_m2(diameter_m, cooker.store.depth_m);
    let share = |k_w: f64| (k_w * rig.seat_w_k()).clamp(0.0, 1.0);
    let film_share = share(1.0 / (INNER_FILM_W_M2K.value * area_m2));
    // A poor conductor's own way to the seat weighs more than all the rest.
    let body_share = rig.body_k_w() / (rig.body_k_w() + 1.0 / rig.seat_w_k().max(1e-9));
    // A contact is measured with film and store as described, so that together they are right
    // whatever these are.
    if let Some(spread) = cooker.spreads.contact.filter(|_| is_measured) {
        return (1.0 - film_share) * (1.0 - body_share) * spread;
    }
    let film = film_share * INNER_FILM_W_M2K.spread_share();
    let contact = (1.0 - film_share) * cooker.contact.seat.spread_share();
    libm::hypot(
        libm::hypot(film, contact) * (1.0 - body_share),
        body_sd(cooker) * body_share,
    )
}

/// Doubt of the way through the store itself: its conductivity, or its metal's workmanship.
fn body_sd(cooker: &Cooker) -> f64 {
    let charges = cooker.store.charges.iter();
    let heaviest = charges.max_by(|a, b| a.mass_kg.total_cmp(&b.mass_kg));
    match (cooker.store.metal, heaviest) {
        (Some(_), _) => BUILT_METAL_SD,
        (None, Some(charge)) => charge.medium.props().conductivity_w_mk.spread_share(),
        (None, None) => 0.0,
    }
}

fn capacity_sd(cooker: &Cooker) -> f64 {
    let spread = |datum: Datum| datum.spread_share();
    let heats = cooker.store.charges.iter().map(|charge| {
        let props = charge.medium.props();
        let solid = props.cp.spread_j_kgk / props.cp.at(150.0).max(1.0);
        props.melt.map_or(solid, |melt| {
            solid
                .max(spread(melt.cp_liquid_j_kgk))
                .max(spread(melt.latent_j_kg))
        })
    });
    libm::hypot(MASS_SD, heats.fold(0.0, f64::max))
}

/// Doubt of where the heaviest of the melts melts. \[K\]
pub(super) fn melt_sd_k(cooker: &Cooker) -> f64 {
    let charges = cooker.store.charges.iter();
    let melts = charges.filter_map(|charge| Some((charge.mass_kg, charge.medium.props().melt?)));
    melts
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map_or(0.0, |(_, melt)| {
            libm::hypot(melt.solidus_c.spread, GRADE_SD_K)
        })
}

fn pot_loss_sd(pot: Pot) -> f64 {
    let loss_w_k = pot.loss_w_k(Lid::On);
    if 0.0 < loss_w_k {
        pot.loss_spread_w_k(Lid::On) / loss_w_k
    } else {
        0.0
    }
}

fn hypot3(a: f64, b: f64, c: f64) -> f64 {
    (a * a + b * b + c * c).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::jacket::LayeredJacket;
    use crate::place::{AirYear, Place};
    use crate::presets::Preset;
    use crate::tonight::Site;

    fn rig(cooker: &Cooker) -> Rig {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        let air = AirYear::guess(11.0, 1500.0).unwrap();
        Rig::new(&Site { place, air }, cooker).unwrap()
    }

    #[test]
    fn what_was_measured_is_narrow() {
        for preset in Preset::ALL {
            let told = preset.cooker(200.0, 11.0);
            let mut measured = told.clone();
            measured.jacket = Jacket::Measured {
                loss_w_k: 0.4,
                capacity_j_k: 2000.0,
            };
            measured.contact.measured_w_m2k = Some(300.0);
            for multiplier in [Multiplier::Loss, Multiplier::Contact] {
                let wide = multiplier.log_sd(&told, &rig(&told));
                let narrow = multiplier.log_sd(&measured, &rig(&measured));
                assert!(
                    1.5 * narrow < wide,
                    "{preset:?} {multiplier:?}: {narrow} {wide}"
                );
                assert!(wide < 0.6);
            }
        }
    }

    #[test]
    fn a_measured_spread_is_the_doubt() {
        let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        cooker.contact.measured_w_m2k = Some(300.0);
        cooker.spreads = Spreads {
            loss: Some(0.04),
            contact: Some(0.05),
            capacity: Some(0.03),
            charging: None,
            pot_loss: Some(0.06),
        };
        let log_sd = |multiplier: Multiplier| multiplier.log_sd(&cooker, &rig(&cooker));
        assert!((log_sd(Multiplier::Loss) - log_of(0.04)).abs() < 1e-12);
        assert!((log_sd(Multiplier::Capacity) - log_of(0.03)).abs() < 1e-12);
        assert!((log_sd(Multiplier::PotLoss) - log_of(0.06)).abs() < 1e-12);
        // The film behind the contact has its share of the way.
        let contact = log_sd(Multiplier::Contact);
        assert!((0.02..0.05).contains(&contact), "{contact}");
        let mut other = cooker.clone();
        other.spreads.loss = None;
        assert!(!Multiplier::Loss.is_kept(&cooker, &other));
        assert!(Multiplier::Contact.is_kept(&cooker, &other));
        assert!(Multiplier::PotLoss.is_kept(&cooker, &other));
        other.pot_loss_share = 1.4;
        assert!(!Multiplier::PotLoss.is_kept(&cooker, &other));
    }

    #[test]
    fn a_new_jacket_touches_the_loss_alone() {
        let old = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let mut new = old.clone();
        if let Jacket::Layers(LayeredJacket { layers, .. }) = &mut new.jacket {
            layers[0].thickness_m += 0.05;
        }
        for multiplier in Multiplier::ALL {
            let same = multiplier.is_kept(&old, &new);
            assert_eq!(same, multiplier != Multiplier::Loss, "{multiplier:?}");
        }
    }

    #[test]
    fn multipliers_stand_where_their_numbers_say() {
        for (idx, multiplier) in Multiplier::ALL.into_iter().enumerate() {
            assert_eq!(multiplier.index(), idx);
        }
    }
}
