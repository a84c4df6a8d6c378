//! A true cooker, drawn round what its household wrote down of it.

use std::collections::BTreeMap;
use std::error::Error;
use std::f64::consts::PI;

use model::cooker::{Cooker, Metal};
use model::dish::{Basis, Dish, DoneWhen, Slowing};
use model::jacket::Jacket as Described;
use model::journal::Meal;
use model::media::Chemistry;
use model::panel::{HeatTable as PanelTable, Heater};
use model::place::AirYear;
use model::pot::Lid;
use model::pot::loss::{EVAPORATION_FACTOR, POOL_W_M2PA};
use model::provenance::Datum;
use model::seat::{
    self, BOILING_FILM_W_M2K, INNER_FILM_W_M2K, SLEEVE_BASE_GAP_M, SLEEVE_SIDE_GAP_M, Seat,
};
use model::sun::Plane;
use model::tonight::Site;
use model::water::{boiling_point_c, heat_of_vaporisation_j_kg};

use super::heat::{HeatTable, Melting, Stuff};
use super::jacket::jacket;
use super::kitchen::{Charge, Contact, Cooks, Joint, Kitchen, Slows};
use super::random::Random;
use super::row::{Row, Store};
use super::shell::{Conducts, Shell, cut, edges_m};
use super::sky::Outside;

/// Shells of the store.
const STORE_SHELLS: usize = 24;
/// They grow from the seat.
const STORE_GROWTH: f64 = 1.1;
/// A melt that turns over carries so many times its still conductivity. From memory.
const TURNS_OVER: f64 = 4.0;
/// Share of what fins could carry that built ones do: lengths, gaps, welds. From memory.
const FIN_SHARE: (f64, f64) = (0.5, 1.0);
/// The same of foam beside a third of its metal: thin struts, lumps at the nodes. From memory.
const FOAM_SHARE: (f64, f64) = (0.6, 1.1);
/// Narrowest melting range that is reckoned with. \[K\]
const LEAST_RANGE_K: f64 = 0.3;

/// The least supercooling of a melt that supercools. From memory. \[K\]
const LEAST_SUPERCOOLING_K: f64 = 2.0;

/// A true cooker and what its pots truly are.
pub(crate) struct Truth {
    pub(crate) kitchen: Kitchen,
    pub(crate) outside: Outside,
    pub(crate) boiling_c: f64,
    pots: Pots,
    random: Random,
    width: f64,
}

/// True figures of pots, as factors on the tables'.
struct Pots {
    metal: f64,
    air: f64,
    evaporation: f64,
    film_w_m2k: (f64, f64),
    /// This household's own dishes: time, slowing, least temperature.
    dishes: BTreeMap<Dish, (f64, f64, f64)>,
}

/// A figure drawn by its own spread, never below a tenth of itself.
pub(crate) fn drawn(random: &mut Random, datum: Datum, width: f64) -> f64 {
    let value = datum.value + width * datum.spread * random.normal();
    value.max(0.1 * datum.value)
}

impl Truth {
    /// Draws the truth behind a description.
    ///
    /// # Arguments
    ///
    /// * `site`, `cooker`: as the household wrote them down; the jacket by its layers.
    /// * `width`: 1 draws with the spreads of the tables, 2 with twice those.
    /// * `now_s`: local time at which it starts, in air.
    pub(crate) fn draw(
        site: &Site,
        cooker: &Cooker,
        (climate, width): ([f64; 4], f64),
        mut random: Random,
        now_s: i64,
    ) -> Result<Self, Box<dyn Error>> {
        let Described::Layers(layered) = &cooker.jacket else {
            return Err("a truth is drawn from a jacket of layers".into());
        };
        let diameter_m = cooker.pot.size.props().diameter_m.value * random.factor(0.04 * width);
        let (store, table) = store(cooker, diameter_m, width, &mut random)?;
        let (jacket, conducts_m) = jacket(layered, width, &mut random)?;
        let mut row = Row::new(store, jacket, table);
        let middle_c = 0.5 * (0.5 * (100.0 + cooker.store.cutout_c) + 20.0);
        let lid = drawn(&mut random, layered.lid.loss_factor(), width).max(1.0);
        row.store.leak_w_k = (lid - 1.0) * conducts_m * row.jacket.conductivity_w_mk(middle_c);

        let contact = Contact {
            joint: joint(cooker, diameter_m, width, &mut random),
            area_m2: cooker
                .contact
                .seat
                .area_m2(diameter_m, cooker.store.depth_m),
            is_in_melt: cooker.contact.seat == Seat::SunkInMelt,
        };
        let thermostat = (
            random.between(0.5, 0.9),
            cooker.store.cutout_c + 4.0 * width * random.normal(),
        );
        let outside = outside(site, cooker, climate, width, &mut random)?;
        let air_c = outside
            .air
            .air_c(&site.place, now_s.div_euclid(86_400) as i32, 0.0);
        row.set(air_c, air_c);
        let boiling_c = boiling_point_c(site.place.altitude_m)? + 0.3 * random.normal();
        let mut dishes = BTreeMap::new();
        for dish in Dish::ALL {
            let props = dish.props();
            let (Slowing::Z(slowing) | Slowing::Arrhenius(slowing)) = props.slowing;
            let time = random.factor(width * props.minutes_at_100_c.spread_share());
            let slows = random.factor(width * slowing.spread_share());
            let least_k = width * props.least_c.spread * random.normal();
            dishes.insert(dish, (time, slows, least_k));
        }
        let pots = Pots {
            metal: random.factor(0.25 * width),
            air: cooker.pot_loss_share
                * random.factor(
                    width * cooker.pot.loss_spread_w_k(Lid::On) / cooker.pot.loss_w_k(Lid::On),
                ),
            evaporation: drawn(&mut random, EVAPORATION_FACTOR, width) * random.factor(0.1 * width),
            film_w_m2k: (
                INNER_FILM_W_M2K.value * random.factor(width * INNER_FILM_W_M2K.spread_share()),
                BOILING_FILM_W_M2K.value * random.factor(width * BOILING_FILM_W_M2K.spread_share()),
            ),
            dishes,
        };
        Ok(Self {
            kitchen: Kitchen::new(row, contact, thermostat, now_s),
            outside,
            boiling_c,
            pots,
            random,
            width,
        })
    }

    /// The true pot behind a logged meal: quantities are as wrong as kitchen measures are.
    pub(crate) fn charge(&mut self, meal: &Meal, lid: Lid, measure_share: f64) -> Charge {
        let random = &mut self.random;
        let props = meal.dish.props();
        let food_kg = meal.food_kg * random.factor(measure_share);
        let water_kg = meal.water_kg * random.factor(measure_share);
        let food_j_k = food_kg * (props.cp_j_kgk.value + props.cp_j_kgk.spread * random.normal());
        let is_liquid = props.basis == Basis::Liquid;
        let (time, slows, least_k) = self
            .pots
            .dishes
            .get(&meal.dish)
            .copied()
            .unwrap_or((1.0, 1.0, 0.0));
        // One batch from another.
        let batch = random.factor(0.07);
        let slowing = match props.slowing {
            Slowing::Z(z_k) => Slows::Z(z_k.value * slows),
            Slowing::Arrhenius(j_mol) => Slows::Arrhenius(j_mol.value * slows),
        };
        let cooks = (props.done_when == DoneWhen::Cooked).then_some(Cooks {
            time_s: 60.0 * props.minutes_at_100_c.value * time * batch,
            slowing,
            least_c: props.least_c.value + least_k,
        });
        let share = lid.evaporation_share();
        let open =
            (share.value + 0.5 * self.width * share.spread * random.normal()).clamp(0.02, 1.0);
        let boiling_c = self.boiling_c + 0.2 * random.normal();
        // Porridge that is stirred now and then.
        let thick = if meal.dish == Dish::MaizePorridge {
            0.4
        } else {
            1.0
        };
        let (film, boiling_film) = self.pots.film_w_m2k;
        Charge {
            water_kg: water_kg + if is_liquid { food_j_k / 4186.0 } else { 0.0 },
            food_j_k: if is_liquid { 0.0 } else { food_j_k },
            metal_j_k: meal.pot.capacity_j_k() * self.pots.metal,
            start_c: meal.start_c + 2.0 * random.normal(),
            air_w_k: meal.pot.loss_w_k(lid) * self.pots.air,
            evaporates_w_pa: POOL_W_M2PA.value
                * self.pots.evaporation
                * open
                * meal.pot.size.water_surface_m2(),
            film_w_m2k: (film * thick, boiling_film * thick),
            boiling_c,
            h_fg_j_kg: heat_of_vaporisation_j_kg(boiling_c),
            cooks,
            full_boil_s: props
                .full_boil
                .map_or(0.0, |boil| 60.0 * boil.advised_min.value),
        }
    }

    /// What a person would measure of it: steady loss and contact conductance half-way between
    /// the boil and the cut-out. \[W/K, W/m2K\]
    pub(crate) fn measurable(&self, cutout_c: f64) -> (f64, f64) {
        let hot_c = 0.5 * (self.boiling_c + cutout_c.max(self.boiling_c));
        let loss_w_k = self.kitchen.row.jacket.steady_w(hot_c, 20.0) / (hot_c - 20.0)
            + self.kitchen.row.store.leak_w_k;
        (loss_w_k, self.kitchen.contact.joint.w_m2k(hot_c, 80.0))
    }
}

/// The store's shells from the seat outwards: discs that widen from a flat seat to the whole face,
/// or cups round a pot that is let in.
fn store(
    cooker: &Cooker,
    diameter_m: f64,
    width: f64,
    random: &mut Random,
) -> Result<(Store, HeatTable), Box<dyn Error>> {
    let mut stuffs = Vec::new();
    let mut volume_m3 = 0.0;
    let mut main: Option<(f64, Conducts)> = None;
    for charge in &cooker.store.charges {
        let props = charge.medium.props();
        let mass_kg = charge.mass_kg * random.factor(0.03 * width);
        let cp = random.factor(width * props.cp.spread_j_kgk / props.cp.at(150.0));
        let melt = props.melt.map(|melt| {
            let solidus_c = drawn(random, melt.solidus_c, width);
            let range_k = melt.liquidus_c.value - melt.solidus_c.value;
            Melting {
                solidus_c,
                liquidus_c: solidus_c + range_k.max(LEAST_RANGE_K),
                latent_j_kg: drawn(random, melt.latent_j_kg, width),
                cp_liquid_j_kgk: drawn(random, melt.cp_liquid_j_kgk, width),
            }
        });
        let conductivity = props.conductivity_w_mk;
        let solid_w_mk = conductivity.value * random.factor(width * conductivity.spread_share());
        let conducts = Conducts {
            solid_w_mk,
            melt_w_mk: props.melt.map_or(solid_w_mk, |melt| {
                TURNS_OVER * melt.conductivity_liquid_w_mk.value
            }),
            range_c: melt.map_or((f64::INFINITY, f64::INFINITY), |melt| {
                (melt.solidus_c, melt.liquidus_c)
            }),
        };
        volume_m3 += mass_kg / drawn(random, props.density_kg_m3, width);
        if main.as_ref().is_none_or(|(most_kg, _)| *most_kg < mass_kg) {
            main = Some((mass_kg, conducts));
        }
        stuffs.push(Stuff {
            mass_kg,
            cp_a_j_kgk: props.cp.cp_a_j_kgk * cp,
            cp_b_j_kgk2: props.cp.cp_b_j_kgk2 * cp,
            melt,
        });
    }
    let (_, mut conducts) = main.ok_or("a store of nothing")?;
    if let Some(metal) = cooker.store.metal {
        let carries_w_mk = metal_w_mk(metal, width, random);
        conducts.solid_w_mk += carries_w_mk;
        conducts.melt_w_mk += carries_w_mk;
    }
    let mass_kg: f64 = stuffs.iter().map(|stuff| stuff.mass_kg).sum();
    let depth_m = cooker.store.depth_m * random.factor(0.05 * width);
    let radius_m = 0.5 * diameter_m;
    let is_well = cooker.contact.seat.area_m2(1.0, 1.0) > 1.0;
    let (shells, volumes_m3, faces_m2) = if is_well {
        cups(volume_m3, depth_m, radius_m)
    } else {
        discs(volume_m3, depth_m, radius_m)
    };
    let whole_m3: f64 = volumes_m3.iter().sum();
    let share: Vec<f64> = volumes_m3.iter().map(|m3| m3 / whole_m3).collect();
    // More or less of the heater near the pot than the mass has there.
    let tilt = (0.35 * width * random.normal()).clamp(-0.8, 0.8);
    let mut before = 0.0;
    let heater: Vec<f64> = share
        .iter()
        .map(|own| {
            let place = before + 0.5 * own;
            before += own;
            own * (1.0 + tilt * (2.0 * place - 1.0))
        })
        .collect();
    let normed = |shares: &[f64]| -> Vec<f64> {
        let sum: f64 = shares.iter().sum();
        shares.iter().map(|share| share / sum).collect()
    };
    let table = HeatTable::new(&stuffs);
    let table = match nucleation_c(cooker, &stuffs, width, random) {
        Some(nucleation_c) => table.with_supercooling(&stuffs, nucleation_c),
        None => table,
    };
    Ok((
        Store {
            mass_kg: share.iter().map(|share| share * mass_kg).collect(),
            heat_j: vec![0.0; shells.len()],
            shells,
            conducts,
            heater_share: normed(&heater),
            jacket_share: normed(&faces_m2),
            leak_w_k: 0.0,
        },
        table,
    ))
}

/// Where this household's melt freezes by itself, if it stays liquid for long: a sugar alcohol alone.
/// \[°C\]
fn nucleation_c(cooker: &Cooker, stuffs: &[Stuff], width: f64, random: &mut Random) -> Option<f64> {
    let mut both = cooker.store.charges.iter().zip(stuffs);
    let (charge, stuff) =
        both.find(|(charge, _)| charge.medium.props().chemistry == Chemistry::SugarAlcohol)?;
    let below = charge.medium.supercooling_k()?;
    let below_k = below.value + width * below.spread * random.normal();
    let solidus_c = stuff.melt?.solidus_c;
    Some(solidus_c - below_k.max(LEAST_SUPERCOOLING_K))
}

/// What the metal within a medium adds to its conductivity, as it was truly built. \[W/mK\]
fn metal_w_mk(metal: Metal, width: f64, random: &mut Random) -> f64 {
    let (of, share, (least, most)) = match metal {
        Metal::Fins {
            of,
            thickness_m,
            pitch_m,
        } => (of, thickness_m / pitch_m, FIN_SHARE),
        Metal::Foam { of, share } => (of, share / 3.0, FOAM_SHARE),
    };
    let conductivity = of.props().conductivity_w_mk;
    let own_w_mk = conductivity.value * random.factor(width * conductivity.spread_share());
    share * own_w_mk * random.between(least, most)
}

/// Shells, their volumes and the faces they turn to the jacket.
type Cut = (Vec<Shell>, Vec<f64>, Vec<f64>);

/// Discs under a flat seat. The heat gathers to the seat over as much depth as the face is wider.
fn discs(volume_m3: f64, depth_m: f64, seat_radius_m: f64) -> Cut {
    let face_m2 = volume_m3 / depth_m;
    let face_radius_m = (face_m2 / PI).sqrt();
    let wider_m = (face_radius_m - seat_radius_m).max(0.0);
    let narrow = |at_m: f64| {
        let radius_m = (seat_radius_m + at_m).min(face_radius_m);
        PI * radius_m * radius_m
    };
    let edges = edges_m(depth_m, STORE_SHELLS, STORE_GROWTH);
    let shells = cut(
        |at_m| if wider_m > 0.0 { narrow(at_m) } else { face_m2 },
        &edges,
    );
    let widths: Vec<f64> = edges.windows(2).map(|edge| edge[1] - edge[0]).collect();
    let volumes = widths.iter().map(|width_m| face_m2 * width_m).collect();
    let mut faces: Vec<f64> = widths
        .iter()
        .map(|width_m| 2.0 * PI * face_radius_m * width_m)
        .collect();
    if let Some(first) = faces.first_mut() {
        *first += (face_m2 - PI * seat_radius_m * seat_radius_m).max(0.0);
    }
    if let Some(last) = faces.last_mut() {
        *last += face_m2;
    }
    (shells, volumes, faces)
}

/// Cups round a pot: surfaces parallel to its base and to as much of its side as is let in.
fn cups(volume_m3: f64, deep_m: f64, radius_m: f64) -> Cut {
    let area_m2 = |at_m: f64| {
        let base = PI * radius_m * radius_m;
        let side = 2.0 * PI * (radius_m + at_m) * deep_m;
        let edge = PI * PI * radius_m * at_m + 2.0 * PI * at_m * at_m;
        base + side + edge
    };
    let mut thickness_m = (1e-3, 1.0);
    for _ in 0..60 {
        let middle_m = 0.5 * (thickness_m.0 + thickness_m.1);
        let held: f64 = cut(area_m2, &[0.0, middle_m])
            .iter()
            .map(|shell| shell.volume_m3)
            .sum();
        if held < volume_m3 {
            thickness_m.0 = middle_m;
        } else {
            thickness_m.1 = middle_m;
        }
    }
    let edges = edges_m(thickness_m.0, STORE_SHELLS, STORE_GROWTH);
    let shells = cut(area_m2, &edges);
    let volumes = shells.iter().map(|shell| shell.volume_m3).collect();
    let mut faces: Vec<f64> = edges
        .windows(2)
        .map(|edge| PI * ((radius_m + edge[1]).powi(2) - (radius_m + edge[0]).powi(2)))
        .collect();
    if let Some(last) = faces.last_mut() {
        *last += area_m2(thickness_m.0);
    }
    (shells, volumes, faces)
}

fn joint(cooker: &Cooker, diameter_m: f64, width: f64, random: &mut Random) -> Joint {
    let seat = cooker.contact.seat;
    let mut truly = |gap: Datum| gap.value / random.factor(width * gap.spread_share());
    if seat == Seat::Sleeve {
        return Joint::Well {
            base_gap_m: truly(SLEEVE_BASE_GAP_M),
            side_gap_m: truly(SLEEVE_SIDE_GAP_M),
            base_share: 1.0 / (1.0 + 4.0 * cooker.store.depth_m / diameter_m),
        };
    }
    match seat.joint() {
        seat::Joint::Gap { mean_gap_m: gap_m } | seat::Joint::Open { gap_m } => {
            Joint::Gap(truly(gap_m))
        }
        seat::Joint::Film { conductance_w_m2k } => {
            let share = width * conductance_w_m2k.spread_share();
            Joint::Film(conductance_w_m2k.value * random.factor(share))
        }
    }
}

fn outside(
    site: &Site,
    cooker: &Cooker,
    climate: [f64; 4],
    width: f64,
    random: &mut Random,
) -> Result<Outside, Box<dyn Error>> {
    let mut air: AirYear = site.air;
    let off_k = 2.0 * width * random.normal();
    for month_c in air.day_c.iter_mut().chain(&mut air.night_c) {
        *month_c += off_k;
    }
    let heater = Heater {
        resistance_ohm: cooker.heater.resistance_ohm * random.factor(0.03 * width),
        wire_ohm: cooker.heater.wire_ohm * random.factor(0.3 * width),
        ..cooker.heater
    };
    let altitude = (0.03e-3 * site.place.altitude_m).clamp(0.0, 0.08);
    let haze = 1.0 + 0.04 * width * random.normal();
    let dust = 1.0 - random.between(0.0, 0.08 * width);
    let rating = 1.0 + 0.03 * width * random.normal();
    let plane = Plane {
        tilt_deg: (cooker.panels.tilt_deg + 3.0 * width * random.normal()).clamp(0.0, 89.0),
        azimuth_deg: cooker.panels.azimuth_deg + 8.0 * width * random.normal(),
        albedo: random.between(0.12, 0.3),
    };
    Ok(Outside::new(
        site.place,
        (air, 2.0),
        plane,
        random.between(0.5, 2.5),
        PanelTable::new(&cooker.panels.array()?, &heater)?,
        (
            (1.0 + altitude) * haze * dust * rating,
            random.factor(0.08 * width),
        ),
        climate,
        Random::new(u64::from((random.unit() * 4e9) as u32), 77),
    ))
}
