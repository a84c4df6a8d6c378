//! Households drawn by chance: where they live, what they cook on, and how they keep a diary.

use std::error::Error;

use model::cooker::Cooker;
use model::dish::Dish;
use model::jacket::{Jacket, LidFit};
use model::panel::Drive;
use model::place::{AirYear, Place};
use model::pot::{PotKind, PotSize, Wrap};
use model::presets::Preset;
use model::seat::Seat;
use model::tonight::Site;

use crate::truth::build::Truth;
use crate::truth::random::Random;

/// 1 January 2026. \[days since 1970-01-01\]
const NEW_YEAR_2026: i32 = 20_454;

/// One household and the truth behind it.
pub(crate) struct Household {
    /// As it was entered: what an estimate is told.
    pub(crate) site: Site,
    pub(crate) cooker: Cooker,
    pub(crate) preset: Preset,
    pub(crate) habits: Habits,
    pub(crate) truth: Truth,
    pub(crate) first_day: i32,
    /// Whether the store was warm when the diary began.
    pub(crate) begins_warm: bool,
}

/// How the sky is written down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum SkyHabit {
    /// A word for most hours.
    Hours,
    /// A word for morning, noon and afternoon each.
    Blocks,
    /// Hours of sunshine of the whole day.
    SunHours,
}

/// How a household keeps its diary.
#[derive(Debug, Clone)]
pub(crate) struct Habits {
    pub(crate) sky: SkyHabit,
    pub(crate) forgets_day: f64,
    pub(crate) forgets_hour: f64,
    /// Takes a sky for its neighbour, and is an hour off for a whole day.
    pub(crate) wrong_word: f64,
    pub(crate) wrong_hour: f64,
    pub(crate) forgets_meal: f64,
    /// Says when it boiled, or was soft.
    pub(crate) tells_boil: f64,
    pub(crate) tells_done: f64,
    /// Mean time by which it notices late. \[min\]
    pub(crate) late_min: f64,
    /// How far measures of food and water are off.
    pub(crate) measure_share: f64,
    /// Leaves the lid ajar and logs it as on.
    pub(crate) lid_ajar: f64,
    pub(crate) takes_out_early: f64,
    pub(crate) breakfasts: f64,
    pub(crate) persons: f64,
    pub(crate) dishes: Vec<Dish>,
    /// Thermometer: where it sits as a share of the mass from the seat, its error, its marks. \[K\]
    pub(crate) thermometer_place: f64,
    pub(crate) thermometer_off_k: f64,
    pub(crate) thermometer_marks_k: f64,
}

/// Evening dishes by how often they are cooked. Common practice, no source.
const DISHES: [(Dish, f64); 12] = [
    (Dish::WhiteRice, 3.0),
    (Dish::Lentils, 2.0),
    (Dish::CommonBeansSoaked, 1.5),
    (Dish::RedKidneyBeansSoaked, 0.7),
    (Dish::Potatoes, 2.0),
    (Dish::MaizePorridge, 1.0),
    (Dish::VegetableStew, 2.0),
    (Dish::Pasta, 1.0),
    (Dish::TeaWater, 2.0),
    (Dish::MeatStew, 1.0),
    (Dish::ChickpeasSoaked, 0.5),
    (Dish::SplitPeas, 1.0),
];

impl Household {
    /// Draws household number `idx` of a seed; `width` as for [`Truth::draw`].
    pub(crate) fn draw(seed: u64, idx: u64, width: f64) -> Result<Self, Box<dyn Error>> {
        let mut random = Random::new(seed, 3 * idx);
        let site = site(&mut random)?;
        let (preset, mut cooker) = cooker(&mut random, site.place.latitude_deg);
        let habits = habits(&mut random);
        let first_day = NEW_YEAR_2026 + random.between(0.0, 365.0) as i32;
        let climate = [
            random.between(0.2, 0.6),
            random.between(0.2, 0.5),
            random.between(0.05, 0.3),
            random.between(0.02, 0.2),
        ];
        let begins_warm = random.chance(0.4);
        let start_s = i64::from(first_day - if begins_warm { 2 } else { 0 }) * 86_400;
        let truth = Truth::draw(
            &site,
            &cooker,
            (climate, width),
            Random::new(seed, 3 * idx + 1),
            start_s,
        )?;
        let (loss_w_k, contact_w_m2k) = truth.measurable(cooker.store.cutout_c);
        if random.chance(0.15) {
            let capacity_j_k = cooker.jacket.thermal(150.0, 20.0)?.capacity_j_k;
            cooker.jacket = Jacket::Measured {
                loss_w_k: loss_w_k * random.factor(0.07 * width),
                capacity_j_k: capacity_j_k * random.factor(0.2 * width),
            };
        }
        if random.chance(0.12) {
            let measured = contact_w_m2k * random.factor(0.07 * width);
            cooker.contact.measured_w_m2k = Some(measured);
        }
        Ok(Self {
            site,
            cooker,
            preset,
            habits,
            truth,
            first_day,
            begins_warm,
        })
    }
}

fn site(random: &mut Random) -> Result<Site, Box<dyn Error>> {
    let latitude_deg = random.between(-33.0, 42.0);
    let longitude_deg = random.between(-100.0, 120.0);
    let altitude_m = if random.chance(0.5) {
        random.between(0.0, 600.0)
    } else {
        random.between(600.0, 2800.0)
    };
    let place = Place {
        latitude_deg,
        longitude_deg,
        altitude_m: altitude_m.round(),
        utc_offset_min: 60 * (longitude_deg / 15.0).round() as i32,
    };
    Ok(Site {
        place,
        air: AirYear::guess(latitude_deg, altitude_m)?,
    })
}

fn cooker(random: &mut Random, latitude_deg: f64) -> (Preset, Cooker) {
    let preset = random
        .pick(&[
            (Preset::AluminiumInPerlite, 0.25),
            (Preset::SteelInRockWool, 0.2),
            (Preset::SoapstoneInVermiculite, 0.15),
            (Preset::SandInPerlite, 0.12),
            (Preset::ErythritolInGlassWool, 0.14),
            (Preset::NitrateInCeramicFibre, 0.14),
        ])
        .unwrap_or(Preset::AluminiumInPerlite);
    let panels_w = 10.0 * random.between(14.0, 36.0).round();
    let mut cooker = preset.cooker(panels_w, latitude_deg);
    let heavier = random.between(0.7, 1.4);
    for charge in &mut cooker.store.charges {
        charge.mass_kg *= heavier;
    }
    if let Jacket::Layers(layered) = &mut cooker.jacket {
        let thicker = random.between(0.7, 1.4);
        for layer in &mut layered.layers {
            layer.thickness_m *= thicker;
        }
        layered.lid = random
            .pick(&[
                (LidFit::Plug, 0.25),
                (LidFit::Ordinary, 0.55),
                (LidFit::Leaky, 0.2),
            ])
            .unwrap_or(LidFit::Ordinary);
    }
    let melts = matches!(
        preset,
        Preset::ErythritolInGlassWool | Preset::NitrateInCeramicFibre
    );
    if melts && random.chance(0.12) {
        cooker.store.metal = None;
    }
    if !matches!(cooker.contact.seat, Seat::Sleeve | Seat::SunkInMelt) {
        let oil = if preset == Preset::NitrateInCeramicFibre {
            0.0
        } else {
            0.1
        };
        cooker.contact.seat = random
            .pick(&[
                (Seat::DryFlat, 0.4),
                (Seat::DryOrdinary, 0.33),
                (Seat::DryWarped, 0.07),
                (Seat::OilFilm, oil),
                (Seat::MachinedClamped, 0.1),
            ])
            .unwrap_or(Seat::DryFlat);
    }
    if random.chance(0.12) {
        cooker.heater.drive = Drive::Tracker { efficiency: 0.93 };
    }
    let any = |random: &mut Random, things: &[PotKind]| {
        let equal: Vec<(PotKind, f64)> = things.iter().map(|kind| (*kind, 1.0)).collect();
        random.pick(&equal)
    };
    if let Some(kind) = any(
        random,
        &[
            PotKind::ThinAluminium,
            PotKind::ThickAluminium,
            PotKind::StainlessSteel,
            PotKind::EnamelledSteel,
        ],
    ) {
        cooker.pot.kind = kind;
    }
    cooker.pot.size = random
        .pick(&[
            (PotSize::Litres2_5, 0.5),
            (PotSize::Litres4, 0.4),
            (PotSize::Litres1_5, 0.1),
        ])
        .unwrap_or(PotSize::Litres2_5);
    cooker.pot.wrap = random
        .pick(&[
            (Wrap::SunkInCooker, 0.7),
            (Wrap::Wrapped, 0.2),
            (Wrap::Bare, 0.1),
        ])
        .unwrap_or(Wrap::SunkInCooker);
    (preset, cooker)
}

fn habits(random: &mut Random) -> Habits {
    let sky = random
        .pick(&[
            (SkyHabit::Hours, 0.35),
            (SkyHabit::Blocks, 0.25),
            (SkyHabit::SunHours, 0.4),
        ])
        .unwrap_or(SkyHabit::SunHours);
    let mut dishes = Vec::new();
    while dishes.len() < 4 {
        if let Some(dish) = random.pick(&DISHES)
            && !dishes.contains(&dish)
        {
            dishes.push(dish);
        }
    }
    Habits {
        sky,
        forgets_day: random.between(0.03, 0.25),
        forgets_hour: random.between(0.05, 0.4),
        wrong_word: random.between(0.03, 0.2),
        wrong_hour: random.between(0.02, 0.15),
        forgets_meal: random.between(0.0, 0.1),
        tells_boil: random.between(0.4, 0.95),
        tells_done: random.between(0.3, 0.9),
        late_min: random.between(2.0, 10.0),
        measure_share: random.between(0.03, 0.1),
        lid_ajar: random.between(0.0, 0.15),
        takes_out_early: random.between(0.1, 0.7),
        breakfasts: random.between(0.0, 0.4),
        persons: random.between(1.5, 5.0),
        dishes,
        thermometer_place: random.between(0.3, 0.9),
        thermometer_off_k: 2.5 * random.normal(),
        thermometer_marks_k: if random.chance(0.4) { 5.0 } else { 1.0 },
    }
}
