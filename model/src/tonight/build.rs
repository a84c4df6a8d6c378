//! From the parts of a cooker to what the network and the enthalpy curve need of them.

use crate::ageing::Ageing;
use crate::conduction::in_series;
use crate::cooker::{Charge, Cooker, Metal, Store};
use crate::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use crate::error::ModelError;
use crate::filling::Filling;
use crate::inside::{Inside, Way};
use crate::jacket::{Jacket, JacketThermal};
use crate::media::{Chemistry, Medium};
use crate::network::{JacketNode, JacketPair, Layer, LossRise, MeltWay, SeatJoint, SeatPath};
use crate::out_of_range::OutOfRange;
use crate::seat::{Gap, INNER_FILM_W_M2K, SLEEVE_BASE_GAP_M, SLEEVE_SIDE_GAP_M, Seat, well_w_k};
use crate::stefan;
use crate::tonight::rig::{FRESH_WATER_C, MELT_FILM_W_M2K, POT_IN_SEAT_C};

/// What the element heats where there is no store: a plate under the pot. Common practice, no
/// source. \[kg\]
const PLATE_KG: f64 = 0.3;

/// The loss of a cool store is taken at this temperature. [°C]
const COOL_STORE_C: f64 = 50.0;
/// Share of the loss that follows the conductivity of the insulation; the lid's gap does not.
/// Inferred.
const FOLLOWS_STORE: f64 = 0.75;
/// Of a melt, what a usual pot freezes; the layer on its seat is right for that. Inferred.
const FROZEN_SHARE: f64 = 0.5;
/// Rise of a measured loss with the store: that of mineral insulation. From memory. \[1/K\]
const MEASURED_RISE_K: f64 = 0.0012;

/// The media that are heated: the store's, or a plate where there is none.
pub(super) fn charges(store: &Store) -> Vec<Charge> {
    if store.charges.is_empty() {
        vec![Charge {
            medium: Medium::Aluminium,
            mass_kg: PLATE_KG,
        }]
    } else {
        store.charges.clone()
    }
}

/// A melt of the store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Melting {
    /// Its place among the media.
    pub(super) idx: usize,
    /// Which it is.
    pub(super) medium: Medium,
    /// How much of it. \[kg\]
    mass_kg: f64,
    /// How it melts, as aged as it is.
    pub(super) melt: Melt,
}

/// How a medium melts after so much of it was converted; `None` for what does not melt.
pub(super) fn melt_of(medium: Medium, converted: f64) -> Option<Melt> {
    let fresh = Melt::from(medium.props().melt?);
    Some(match Ageing::of(medium) {
        Some(ageing) => ageing.aged(fresh, converted),
        None => fresh,
    })
}

/// The heaviest of the media that melt.
pub(super) fn melting(store: &Store) -> Option<Melting> {
    store
        .charges
        .iter()
        .enumerate()
        .filter_map(|(idx, charge)| {
            Some(Melting {
                idx,
                medium: charge.medium,
                mass_kg: charge.mass_kg,
                melt: melt_of(charge.medium, store.converted)?,
            })
        })
        .max_by(|a, b| a.mass_kg.total_cmp(&b.mass_kg))
}

/// Enthalpy of the store; that of a sugar alcohol's melt follows down to where it freezes, in the
/// mean and with so many standard deviations more or less.
pub(super) fn curve(store: &Store, deeper_by_sd: f64) -> Result<EnthalpyCurve, ModelError> {
    let media: Vec<(f64, MediumCurve)> = charges(store)
        .iter()
        .map(|charge| {
            let fresh = MediumCurve::from(charge.medium);
            let melt = melt_of(charge.medium, store.converted);
            (
                store.capacity_share * charge.mass_kg,
                MediumCurve { melt, ..fresh },
            )
        })
        .collect();
    let curve = EnthalpyCurve::new(&media)?;
    let Some(melting) = melting(store) else {
        return Ok(curve);
    };
    let is_alcohol = melting.medium.props().chemistry == Chemistry::SugarAlcohol;
    let Some(supercooling_k) = melting.medium.supercooling_k().filter(|_| is_alcohol) else {
        return Ok(curve);
    };
    let below_k = (supercooling_k.value + deeper_by_sd * supercooling_k.spread).max(1.0);
    let nucleation_c = melting.melt.t_solidus_c - below_k;
    // Another melt between the two would be a seed itself.
    Ok(curve
        .clone()
        .with_supercooling(melting.idx, nucleation_c)
        .unwrap_or(curve))
}

/// The jacket as the network needs it. Without a store the element's plate has the floor under it
/// only; the rest is round the pot, whose own loss counts it.
pub(super) fn jacket(cooker: &Cooker, working_c: f64) -> Result<JacketThermal, OutOfRange> {
    let jacket = cooker.jacket.thermal(working_c, FRESH_WATER_C)?;
    if !cooker.store.charges.is_empty() {
        return Ok(jacket);
    }
    let share = cooker.jacket.floor_share();
    Ok(JacketThermal {
        loss_w_k: share * jacket.loss_w_k,
        capacity_j_k: share * jacket.capacity_j_k,
        pair: jacket.pair.map(|JacketPair { inner, outer }| {
            let [inner, outer] = [inner, outer].map(|node| JacketNode {
                capacity_j_k: share * node.capacity_j_k,
                ..node
            });
            JacketPair { inner, outer }
        }),
        ..jacket
    })
}

/// The seat as the network needs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct SeatOf {
    /// Through which the pot takes heat. \[m²\]
    pub(super) area_m2: f64,
    /// Contact alone, over that area. \[W/(m² K)\]
    pub(super) contact_w_m2k: f64,
    /// From the store's face to the food. \[W/K\]
    pub(super) to_food_w_k: f64,
    /// Radius of a pot that is let into the store. \[m\]
    pub(super) let_in_radius_m: Option<f64>,
    /// The pot stands in the melt itself.
    pub(super) is_in_melt: bool,
}

/// The seat under a warming pot, of a store half-way between the boil and the cut-out: the state by
/// which one figure is told for it.
pub(super) fn seat(cooker: &Cooker, working_c: f64) -> SeatOf {
    let diameter_m = cooker.pot.size.props().diameter_m.value;
    let depth_m = cooker.store.depth_m;
    let kind = cooker.contact.seat;
    let area_m2 = kind.area_m2(diameter_m, depth_m);
    let contact_w_m2k = match (cooker.contact.measured_w_m2k, kind) {
        (Some(measured_w_m2k), _) => measured_w_m2k,
        (None, Seat::Sleeve) => {
            let gaps_m = (SLEEVE_BASE_GAP_M.value, SLEEVE_SIDE_GAP_M.value);
            well_w_k((diameter_m, depth_m), gaps_m, (working_c, POT_IN_SEAT_C)) / area_m2
        }
        (None, _) => kind.contact_w_m2k(working_c, POT_IN_SEAT_C),
    };
    SeatOf {
        area_m2,
        contact_w_m2k,
        to_food_w_k: area_m2 * in_series(&[contact_w_m2k, INNER_FILM_W_M2K.value]),
        let_in_radius_m: matches!(kind, Seat::Sleeve | Seat::SunkInMelt)
            .then_some(0.5 * diameter_m),
        is_in_melt: kind == Seat::SunkInMelt,
    }
}

/// The same seat with each part of the way as its temperatures have it: what of the way lies within
/// the store, the air under the pot, the water in it. What was measured of the contact stays as it is.
pub(super) fn seat_path(
    cooker: &Cooker,
    seat: &SeatOf,
    (inside, body_k_w): (&Inside, f64),
    melting: Option<Melting>,
) -> SeatPath {
    let contact_w_k = seat.area_m2 * seat.contact_w_m2k;
    let gap = match cooker.contact.measured_w_m2k {
        Some(_) => None,
        None => {
            let diameter_m = cooker.pot.size.props().diameter_m.value;
            Gap::of(cooker.contact.seat, diameter_m, cooker.store.depth_m)
        }
    };
    // What passes for one temperature is hotter in its middle than at the seat.
    let is_lumped = inside.row.count == 1;
    let is_lumped_solid = is_lumped && melting.is_none();
    SeatPath {
        face_k_w: 1.0 / inside.face_w_k + if is_lumped_solid { body_k_w } else { 0.0 },
        joint: gap.map_or(SeatJoint::Even(contact_w_k), SeatJoint::Gap),
        joint_k_w: 1.0 / contact_w_k,
        film_k_w: 1.0 / (INNER_FILM_W_M2K.value * seat.area_m2),
        melt: melting.filter(|_| is_lumped).map(|melting| MeltWay {
            liquidus_c: melting.melt.t_liquidus_c,
            k_w: body_k_w,
            has_metal: cooker.store.metal.is_some(),
        }),
    }
}

/// How the loss grows with the store, beside the one that is told for a store half-way to its cut-out:
/// as this cooker's jacket does; a measured one is taken to be told of such a store too.
pub(super) fn loss_rise(cooker: &Cooker, working_c: f64) -> Result<LossRise, OutOfRange> {
    let per_k = match &cooker.jacket {
        Jacket::Measured { .. } => MEASURED_RISE_K,
        Jacket::Layers(_) | Jacket::Flask { .. } => {
            let loss_w_k = |store_c| Ok(cooker.jacket.thermal(store_c, FRESH_WATER_C)?.loss_w_k);
            let cooler = 1.0 - loss_w_k(COOL_STORE_C)? / loss_w_k(working_c)?;
            FOLLOWS_STORE * cooler / (working_c - COOL_STORE_C)
        }
    };
    Ok(LossRise {
        per_k,
        told_c: working_c,
    })
}

/// What freezes on the seat, of a melt that is one node; where it is several, they are what freezes.
///
/// It can't be thicker than the medium there is, spread over the seat; where the store widens from the
/// seat on, a thinner one is as much in the way. A melt that takes up less
/// than half of the store lies in pockets of what does not melt, which carries the heat past it: at
/// the least as Maxwell's spheres would.
pub(super) fn frozen_layer(
    store: &Store,
    seat: &SeatOf,
    inside: &Inside,
    boiling_c: f64,
) -> Result<Option<Layer>, ModelError> {
    let Some(melting) = melting(store).filter(|_| inside.row.count == 1) else {
        return Ok(None);
    };
    let props = melting.medium.props();
    let melt_m3 = melting.mass_kg / props.density_kg_m3.value;
    let share = melt_m3 / volume_m3(store);
    let bare_w_mk = props.conductivity_w_mk.value;
    let seat_m2 = seat.area_m2;
    let front_k_w = way(store, seat, FROZEN_SHARE).through_k_w();
    let depth_m = (seat_m2 * front_k_w / FROZEN_SHARE).min(melt_m3 / seat_m2);
    let through_w_mk = match store.metal {
        Some(metal) => metal.layer_w_mk(bare_w_mk, depth_m, seat_m2)?,
        None if share < 0.5 => {
            let solid_w_mk = solid_w_mk(store).max(bare_w_mk);
            Filling::new(solid_w_mk, bare_w_mk, 1.0 - share)?.beads_w_mk()
        }
        None => bare_w_mk,
    };
    let Melt {
        t_solidus_c,
        latent_j_kg,
        ..
    } = melting.melt;
    let stefan_number = stefan::stefan_number(
        props.cp.at(t_solidus_c),
        t_solidus_c,
        boiling_c,
        latent_j_kg,
    );
    Ok(Some(Layer {
        medium: melting.idx,
        depth_m,
        k_solid_w_mk: stefan::layer_conductivity_w_mk(through_w_mk, stefan_number),
        area_m2: seat_m2,
        elsewhere: 0.0,
    }))
}

/// Which way the heat comes to the pot from the share of the store that is nearest to it.
fn way(store: &Store, seat: &SeatOf, share: f64) -> Way {
    let volume_m3 = volume_m3(store);
    match seat.let_in_radius_m {
        Some(radius_m) => Way::cup(share * volume_m3, radius_m, store.depth_m),
        None => Way::Disc {
            depth_m: share * store.depth_m,
            face_m2: volume_m3 / store.depth_m,
            seat_m2: seat.area_m2,
        },
    }
}

/// One node for metal and for a bare melt, which turns over; several where stone or sand keeps its
/// heat to itself, or where the metal in a melt carries less than the pot could take: the melt
/// freezes nearest to the seat while the rest is still hot.
pub(super) fn inside(store: &Store, seat: &SeatOf) -> Result<Inside, ModelError> {
    let Some(conducts_w_mk) = conducts_w_mk(store, seat)? else {
        return Ok(Inside::LUMPED);
    };
    let cut = if melting(store).is_some() {
        Inside::of_melt
    } else {
        Inside::new
    };
    Ok(cut(
        way(store, seat, 1.0),
        conducts_w_mk,
        seat.contact_w_m2k,
    ))
}

/// Conductivity of what the store is mostly made of, with the metal in it; `None` for a melt that
/// turns over, and without a store. \[W/mK\]
fn conducts_w_mk(store: &Store, seat: &SeatOf) -> Result<Option<f64>, ModelError> {
    let Some(main) = heaviest(store, |_| true) else {
        return Ok(None);
    };
    let props = main.medium.props();
    let bare_w_mk = props.conductivity_w_mk.value;
    Ok(match (store.metal, props.melt) {
        (Some(metal), Some(_)) => Some(metal.layer_w_mk(bare_w_mk, store.depth_m, seat.area_m2)?),
        (Some(metal), None) => Some(metal.through_w_mk(bare_w_mk)?),
        (None, Some(_)) => None,
        (None, None) => Some(bare_w_mk),
    })
}

/// From the mean of a store that is taken to be at one temperature to the face that the pot meets, in
/// steady cooling: a third of the way through it. In a melt without metal the film on the wall, which
/// it turns over along. \[K/W\]
pub(super) fn body_k_w(store: &Store, seat: &SeatOf) -> Result<f64, ModelError> {
    if store.charges.is_empty() {
        return Ok(0.0);
    }
    Ok(match conducts_w_mk(store, seat)? {
        Some(conducts_w_mk) => way(store, seat, 1.0).through_k_w() / (3.0 * conducts_w_mk),
        None => 1.0 / (MELT_FILM_W_M2K * seat.area_m2),
    })
}

/// Conductivity of the heaviest medium that does not melt; 0 without one. \[W/mK\]
fn solid_w_mk(store: &Store) -> f64 {
    heaviest(store, |medium| medium.props().melt.is_none())
        .map_or(0.0, |charge| charge.medium.props().conductivity_w_mk.value)
}

fn heaviest(store: &Store, wanted: impl Fn(Medium) -> bool) -> Option<&Charge> {
    store
        .charges
        .iter()
        .filter(|charge| wanted(charge.medium))
        .max_by(|a, b| a.mass_kg.total_cmp(&b.mass_kg))
}

/// Volume of all media, solid. \[m³\]
fn volume_m3(store: &Store) -> f64 {
    store
        .charges
        .iter()
        .map(|charge| charge.mass_kg / charge.medium.props().density_kg_m3.value)
        .sum()
}

/// Whether the metal, if there is any, can be what it says.
pub(super) fn check(store: &Store) -> Result<(), ModelError> {
    crate::error::within("converted", store.converted, 0.0, 1.0)?;
    store
        .metal
        .map_or(Ok(()), |metal| Metal::checked(metal).map(|_| ()))
}
