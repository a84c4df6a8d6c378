//! Whether the numbers of a cooker can be meant. What burns or can't work is the model's to say.

use model::cooker::{Charging, Cooker, Metal, Panels, Store};
use model::jacket::{Jacket, JacketShape, LayerKind, LayeredJacket};
use model::panel::{Datasheet, Drive, Heater};

use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

/// # Errors
///
/// [`Refused`] with the first field that can't be meant.
pub(super) fn check(cooker: &Cooker) -> Result<(), Refused> {
    check_panels(&cooker.panels)?;
    check_heater(&cooker.heater)?;
    check_store(&cooker.store)?;
    match &cooker.jacket {
        Jacket::Layers(layered) => check_layers(layered)?,
        Jacket::Measured {
            loss_w_k,
            capacity_j_k,
        } => {
            Field::LossWK.within(*loss_w_k, limits::LOSS_W_K)?;
            Field::CapacityJK.within(*capacity_j_k, limits::CAPACITY_J_K)?;
        }
        Jacket::Flask { flask, wall_j_k } => {
            for size_m in [2.0 * flask.inner_radius_m, flask.inner_height_m] {
                Field::JacketSizeM.within(size_m, limits::JACKET_SIZE_M)?;
            }
            Field::LayerM.within(flask.gap_m, limits::FLASK_GAP_M)?;
            Field::CapacityJK.within(*wall_j_k, limits::CAPACITY_J_K)?;
        }
    }
    check_charging(&cooker.charging)?;
    if let Some(carried) = &cooker.carried {
        Field::ForS.within(carried.way_s, limits::WAY_S)?;
        Field::LayerM.within(carried.can.wrap_m, limits::WRAP_M)?;
    }
    Field::PotLossShare.within(cooker.pot_loss_share, limits::POT_LOSS_SHARE)?;
    if let Some(measured_w_m2k) = cooker.contact.measured_w_m2k {
        Field::ContactWM2k.within(measured_w_m2k, limits::CONTACT_W_M2K)?;
    }
    Ok(())
}

fn check_panels(panels: &Panels) -> Result<(), Refused> {
    Field::ModuleW.within(panels.module_w, limits::MODULE_W)?;
    Field::Modules.count(panels.in_series, limits::MODULES)?;
    Field::Modules.count(panels.in_parallel, limits::MODULES)?;
    Field::TiltDeg.within(panels.tilt_deg, limits::TILT_DEG)?;
    Field::AzimuthDeg.within(panels.azimuth_deg, limits::AZIMUTH_DEG)?;
    panels.sheet.as_ref().map_or(Ok(()), check_sheet)
}

fn check_sheet(sheet: &Datasheet) -> Result<(), Refused> {
    for rating in [sheet.v_mp_v, sheet.i_mp_a, sheet.v_oc_v, sheet.i_sc_a] {
        Field::Datasheet.within(rating, limits::RATING)?;
    }
    for per_k in [sheet.alpha_sc_a_k, sheet.beta_voc_v_k] {
        Field::Datasheet.within(per_k, limits::RATING_PER_K)?;
    }
    // Between maximum power and the two ends of the curve the order is a law.
    Field::Datasheet.within(sheet.v_mp_v, (limits::RATING.0, sheet.v_oc_v))?;
    Field::Datasheet.within(sheet.i_mp_a, (limits::RATING.0, sheet.i_sc_a))?;
    Field::Datasheet.count(sheet.cells, limits::CELLS)
}

fn check_heater(heater: &Heater) -> Result<(), Refused> {
    Field::Ohm.within(heater.resistance_ohm, limits::HEATER_OHM)?;
    Field::Ohm.within(heater.wire_ohm, limits::WIRE_OHM)?;
    Field::ElementAlpha.within(heater.alpha_per_k, limits::ELEMENT_ALPHA)?;
    match heater.drive {
        Drive::Direct => Ok(()),
        Drive::Tracker { efficiency } => Field::TrackerEfficiency
            .within(efficiency, limits::TRACKER_EFFICIENCY)
            .map(|_| ()),
    }
}

fn check_store(store: &Store) -> Result<(), Refused> {
    length(Field::Charges, store.charges.len(), limits::CHARGES)?;
    for charge in &store.charges {
        Field::ChargeKg.within(charge.mass_kg, limits::CHARGE_KG)?;
    }
    Field::CapacityShare.within(store.capacity_share, limits::CAPACITY_SHARE)?;
    Field::DepthM.within(store.depth_m, limits::DEPTH_M)?;
    Field::CutoutC.within(store.cutout_c, limits::CUTOUT_C)?;
    store.metal.map_or(Ok(()), check_metal)
}

fn check_charging(charging: &Charging) -> Result<(), Refused> {
    let elements_ohm = &charging.more_elements_ohm;
    length(
        Field::Elements,
        elements_ohm.len(),
        (0, limits::MORE_ELEMENTS),
    )?;
    for ohm in elements_ohm {
        Field::Ohm.within(*ohm, limits::HEATER_OHM)?;
    }
    if let Some(dish) = &charging.concentrator {
        Field::ApertureM2.within(dish.aperture_m2, limits::APERTURE_M2)?;
        Field::Share.within(dish.optical_efficiency, limits::SHARE)?;
    }
    if let Some(second) = &charging.second {
        Field::TopUpW.within(second.power_w, limits::TOP_UP_W)?;
        Field::Share.within(second.share, limits::SHARE)?;
    }
    Ok(())
}

fn check_metal(metal: Metal) -> Result<(), Refused> {
    match metal {
        Metal::Fins {
            thickness_m,
            pitch_m,
            ..
        } => {
            Field::LayerM.within(thickness_m, limits::FIN_M)?;
            Field::LayerM.within(pitch_m, (thickness_m, limits::PITCH_M.1))?;
            if limits::MOST_FINS < metal.share() {
                return Err(Field::LayerM.refuse(Wrong::FinsTooClose));
            }
        }
        Metal::Foam { share, .. } => {
            Field::Share.within(share, limits::FOAM_SHARE)?;
        }
    }
    Ok(())
}

fn check_layers(jacket: &LayeredJacket) -> Result<(), Refused> {
    let sizes_m = match jacket.shape {
        JacketShape::Cylinder {
            inner_radius_m,
            inner_height_m,
        } => {
            vec![inner_radius_m, inner_height_m]
        }
        JacketShape::Box {
            inner_length_m,
            inner_width_m,
            inner_height_m,
        } => {
            vec![inner_length_m, inner_width_m, inner_height_m]
        }
    };
    for size_m in sizes_m {
        Field::JacketSizeM.within(size_m, limits::JACKET_SIZE_M)?;
    }
    length(Field::Layers, jacket.layers.len(), limits::LAYERS)?;
    for layer in &jacket.layers {
        Field::LayerM.within(layer.thickness_m, limits::LAYER_M)?;
        if let LayerKind::StillAir {
            hot_emissivity,
            cold_emissivity,
        } = layer.kind
        {
            Field::Emissivity.within(hot_emissivity, limits::EMISSIVITY)?;
            Field::Emissivity.within(cold_emissivity, limits::EMISSIVITY)?;
        }
    }
    Field::Rods.count(jacket.through_rods, limits::RODS)
}

fn length(field: Field, n: usize, (least, most): (usize, usize)) -> Result<(), Refused> {
    if n < least {
        Err(field.refuse(Wrong::Empty))
    } else if most < n {
        Err(field.refuse(Wrong::TooMany { n_most: most }))
    } else {
        Ok(())
    }
}
