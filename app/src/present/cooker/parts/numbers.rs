//! The fields that hold a number.

use model::cooker::{Charge, Cooker};
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket};
use model::panel::{Datasheet, Drive};

use super::Key;
use crate::present::cooker::measure::{Measure, Number};
use crate::state::limits;

/// Coefficient of Isc as a share of it: what the fit of a panel takes. \[1/K\]
const ALPHA: (f64, f64) = (-0.005, 0.005);
/// Coefficient of Voc as a share of it, likewise. \[1/K\]
const BETA: (f64, f64) = (-0.01, -0.0005);

pub(super) fn number(key: Key) -> Option<Number> {
    let of = |measure, bounds, step| {
        Some(Number {
            measure,
            bounds,
            step,
        })
    };
    let counted =
        |(least, most): (u32, u32)| of(Measure::Count, (f64::from(least), f64::from(most)), 1.0);
    match key {
        Key::ModuleW => of(Measure::Watts, limits::MODULE_W, 10.0),
        Key::InSeries | Key::InParallel => counted(limits::MODULES),
        Key::Tilt => of(Measure::Angle, limits::TILT_DEG, 5.0),
        Key::SheetVmp | Key::SheetVoc => of(Measure::Volts, limits::RATING, 0.1),
        Key::SheetImp | Key::SheetIsc => of(Measure::Amperes, limits::RATING, 0.1),
        Key::SheetAlpha => of(Measure::PercentPerKelvin, ALPHA, 0.01),
        Key::SheetBeta => of(Measure::PercentPerKelvin, BETA, 0.01),
        Key::SheetCells => counted(limits::CELLS),
        Key::Efficiency => of(Measure::Percent, limits::TRACKER_EFFICIENCY, 1.0),
        Key::HeaterOhm => of(Measure::Ohms, limits::HEATER_OHM, 0.1),
        Key::WireOhm => of(Measure::Ohms, limits::WIRE_OHM, 0.05),
        Key::Cutout => of(Measure::Temperature, limits::CUTOUT_C, 10.0),
        Key::MediumKg(_) => of(Measure::Kilograms, limits::CHARGE_KG, 0.5),
        Key::Held => of(Measure::Percent, limits::CAPACITY_SHARE, 1.0),
        Key::PotLoss => of(Measure::Percent, limits::POT_LOSS_SHARE, 1.0),
        Key::Depth => of(Measure::Centimetres, limits::DEPTH_M, 0.5),
        Key::Across => {
            let (least_m, most_m) = limits::JACKET_SIZE_M;
            of(Measure::Centimetres, (2.0 * least_m, 2.0 * most_m), 1.0)
        }
        Key::Length | Key::Width | Key::Height => {
            of(Measure::Centimetres, limits::JACKET_SIZE_M, 1.0)
        }
        Key::LayerM(_) => of(Measure::Centimetres, limits::LAYER_M, 1.0),
        Key::HotFace(_) | Key::ColdFace(_) => of(Measure::Share, limits::EMISSIVITY, 0.05),
        Key::Rods => counted(limits::RODS),
        Key::Loss => of(Measure::WattsPerKelvin, limits::LOSS_W_K, 0.02),
        Key::Capacity => of(Measure::JoulesPerKelvin, limits::CAPACITY_J_K, 100.0),
        Key::Contact => of(Measure::Contact, limits::CONTACT_W_M2K, 20.0),
        _ => None,
    }
}

fn layered(cooker: &Cooker) -> Option<&LayeredJacket> {
    match &cooker.jacket {
        Jacket::Layers(layered) => Some(layered),
        Jacket::Measured { .. } | Jacket::Flask { .. } => None,
    }
}

fn layer(cooker: &Cooker, idx: usize) -> Option<&JacketLayer> {
    layered(cooker)?.layers.get(idx)
}

/// Emissivities of the faces of a layer of air.
fn faces(cooker: &Cooker, idx: usize) -> Option<(f64, f64)> {
    match layer(cooker, idx)?.kind {
        LayerKind::StillAir {
            hot_emissivity,
            cold_emissivity,
        } => Some((hot_emissivity, cold_emissivity)),
        LayerKind::Insulation { .. } => None,
    }
}

/// Length and width of a square room; the height of any; the diameter of a round one. \[m\]
fn size_m(shape: JacketShape, key: Key) -> Option<f64> {
    match (shape, key) {
        (JacketShape::Cylinder { inner_radius_m, .. }, Key::Across) => Some(2.0 * inner_radius_m),
        (JacketShape::Box { inner_length_m, .. }, Key::Length) => Some(inner_length_m),
        (JacketShape::Box { inner_width_m, .. }, Key::Width) => Some(inner_width_m),
        (
            JacketShape::Cylinder { inner_height_m, .. } | JacketShape::Box { inner_height_m, .. },
            Key::Height,
        ) => Some(inner_height_m),
        _ => None,
    }
}

pub(super) fn value(cooker: &Cooker, key: Key) -> Option<f64> {
    let (panels, heater, store) = (&cooker.panels, &cooker.heater, &cooker.store);
    let sheet = panels.sheet;
    Some(match key {
        Key::ModuleW => panels.module_w,
        Key::InSeries => f64::from(panels.in_series),
        Key::InParallel => f64::from(panels.in_parallel),
        Key::Tilt => panels.tilt_deg,
        Key::SheetVmp => sheet?.v_mp_v,
        Key::SheetImp => sheet?.i_mp_a,
        Key::SheetVoc => sheet?.v_oc_v,
        Key::SheetIsc => sheet?.i_sc_a,
        Key::SheetAlpha => sheet?.alpha_sc_a_k / sheet?.i_sc_a,
        Key::SheetBeta => sheet?.beta_voc_v_k / sheet?.v_oc_v,
        Key::SheetCells => f64::from(sheet?.cells),
        Key::Efficiency => match heater.drive {
            Drive::Tracker { efficiency } => efficiency,
            Drive::Direct => return None,
        },
        Key::HeaterOhm => heater.resistance_ohm,
        Key::WireOhm => heater.wire_ohm,
        Key::Cutout => store.cutout_c,
        Key::MediumKg(idx) => store.charges.get(idx)?.mass_kg,
        Key::Held => store.capacity_share,
        Key::PotLoss => cooker.pot_loss_share,
        Key::Depth => store.depth_m,
        Key::Across | Key::Length | Key::Width | Key::Height => {
            size_m(layered(cooker)?.shape, key)?
        }
        Key::LayerM(idx) => layer(cooker, idx)?.thickness_m,
        Key::HotFace(idx) => faces(cooker, idx)?.0,
        Key::ColdFace(idx) => faces(cooker, idx)?.1,
        Key::Rods => f64::from(layered(cooker)?.through_rods),
        Key::Loss => match cooker.jacket {
            Jacket::Measured { loss_w_k, .. } => loss_w_k,
            Jacket::Layers(_) | Jacket::Flask { .. } => return None,
        },
        Key::Capacity => match cooker.jacket {
            Jacket::Measured { capacity_j_k, .. } => capacity_j_k,
            Jacket::Layers(_) | Jacket::Flask { .. } => return None,
        },
        Key::Contact => cooker.contact.measured_w_m2k?,
        _ => return None,
    })
}

/// A part that the cooker does not have is passed over.
pub(super) fn set(cooker: &mut Cooker, key: Key, value: f64) {
    match key {
        Key::ModuleW => cooker.panels.module_w = value,
        Key::InSeries => cooker.panels.in_series = count(value),
        Key::InParallel => cooker.panels.in_parallel = count(value),
        Key::Tilt => cooker.panels.tilt_deg = value,
        Key::SheetVmp
        | Key::SheetImp
        | Key::SheetVoc
        | Key::SheetIsc
        | Key::SheetAlpha
        | Key::SheetBeta
        | Key::SheetCells => {
            if let Some(sheet) = &mut cooker.panels.sheet {
                set_rating(sheet, key, value);
                let (least_w, most_w) = limits::MODULE_W;
                cooker.panels.module_w = sheet.rated_w().clamp(least_w, most_w);
            }
        }
        Key::Efficiency => cooker.heater.drive = Drive::Tracker { efficiency: value },
        Key::HeaterOhm => cooker.heater.resistance_ohm = value,
        Key::WireOhm => cooker.heater.wire_ohm = value,
        Key::Cutout => cooker.store.cutout_c = value,
        Key::MediumKg(idx) => {
            if let Some(Charge { mass_kg, .. }) = cooker.store.charges.get_mut(idx) {
                *mass_kg = value;
            }
        }
        Key::Held => cooker.store.capacity_share = value,
        Key::PotLoss => cooker.pot_loss_share = value,
        Key::Depth => cooker.store.depth_m = value,
        Key::Contact => cooker.contact.measured_w_m2k = Some(value),
        _ => set_jacket(&mut cooker.jacket, key, value),
    }
}

/// A coefficient stays the share it is when its rating changes.
fn set_rating(sheet: &mut Datasheet, key: Key, value: f64) {
    match key {
        Key::SheetVmp => sheet.v_mp_v = value,
        Key::SheetImp => sheet.i_mp_a = value,
        Key::SheetVoc => {
            sheet.beta_voc_v_k *= value / sheet.v_oc_v;
            sheet.v_oc_v = value;
        }
        Key::SheetIsc => {
            sheet.alpha_sc_a_k *= value / sheet.i_sc_a;
            sheet.i_sc_a = value;
        }
        Key::SheetAlpha => sheet.alpha_sc_a_k = value * sheet.i_sc_a,
        Key::SheetBeta => sheet.beta_voc_v_k = value * sheet.v_oc_v,
        Key::SheetCells => sheet.cells = count(value),
        _ => {}
    }
}

fn set_jacket(jacket: &mut Jacket, key: Key, value: f64) {
    match (jacket, key) {
        (Jacket::Measured { loss_w_k, .. }, Key::Loss) => *loss_w_k = value,
        (Jacket::Measured { capacity_j_k, .. }, Key::Capacity) => *capacity_j_k = value,
        (Jacket::Layers(layered), Key::Rods) => layered.through_rods = count(value),
        (Jacket::Layers(layered), Key::LayerM(idx)) => {
            if let Some(layer) = layered.layers.get_mut(idx) {
                layer.thickness_m = value;
            }
        }
        (Jacket::Layers(layered), Key::HotFace(idx) | Key::ColdFace(idx)) => {
            let kind = layered.layers.get_mut(idx).map(|layer| &mut layer.kind);
            if let Some(LayerKind::StillAir {
                hot_emissivity,
                cold_emissivity,
            }) = kind
            {
                match key {
                    Key::HotFace(_) => *hot_emissivity = value,
                    _ => *cold_emissivity = value,
                }
            }
        }
        (Jacket::Layers(layered), _) => set_size(&mut layered.shape, key, value),
        (Jacket::Measured { .. } | Jacket::Flask { .. }, _) => {}
    }
}

fn set_size(shape: &mut JacketShape, key: Key, value: f64) {
    match (shape, key) {
        (JacketShape::Cylinder { inner_radius_m, .. }, Key::Across) => {
            *inner_radius_m = 0.5 * value;
        }
        (JacketShape::Box { inner_length_m, .. }, Key::Length) => *inner_length_m = value,
        (JacketShape::Box { inner_width_m, .. }, Key::Width) => *inner_width_m = value,
        (
            JacketShape::Cylinder { inner_height_m, .. } | JacketShape::Box { inner_height_m, .. },
            Key::Height,
        ) => *inner_height_m = value,
        _ => {}
    }
}

/// A count that was read as a whole number within its bounds.
fn count(value: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a whole number within the bounds of its field"
    )]
    let count = value.round().max(0.0) as u32;
    count
}
