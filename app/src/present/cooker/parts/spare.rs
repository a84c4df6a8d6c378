//! Parts that a cooker had until they were switched off, so that switching them on brings them back.

use model::cooker::Cooker;
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use model::panel::{Datasheet, Drive};
use model::presets::WIDE_FLASK;

/// The latest of each part that can be switched off.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Spare {
    sheet: Option<Datasheet>,
    efficiency: Option<f64>,
    layers: Option<LayeredJacket>,
    measured: Option<(f64, f64)>,
    flask: Option<Jacket>,
    contact_w_m2k: Option<f64>,
    cylinder: Option<JacketShape>,
    boxed: Option<JacketShape>,
}

/// A good tracker. Common practice, no source.
const EFFICIENCY: f64 = 0.95;
/// A measured jacket before it is measured: a usual one. Common practice, no source. \[W/K, J/K\]
const MEASURED: (f64, f64) = (0.3, 2000.0);
/// A contact before it is measured: an ordinary pot on a plate. \[W/(m² K)\]
const CONTACT_W_M2K: f64 = 200.0;

impl Spare {
    /// Remembers the parts that this cooker has.
    pub fn remember(&mut self, cooker: &Cooker) {
        if let Some(sheet) = cooker.panels.sheet {
            self.sheet = Some(sheet);
        }
        if let Drive::Tracker { efficiency } = cooker.heater.drive {
            self.efficiency = Some(efficiency);
        }
        match &cooker.jacket {
            Jacket::Layers(layers) => {
                match layers.shape {
                    JacketShape::Cylinder { .. } => self.cylinder = Some(layers.shape),
                    JacketShape::Box { .. } => self.boxed = Some(layers.shape),
                }
                self.layers = Some(layers.clone());
            }
            Jacket::Measured {
                loss_w_k,
                capacity_j_k,
            } => self.measured = Some((*loss_w_k, *capacity_j_k)),
            Jacket::Flask { .. } => self.flask = Some(cooker.jacket.clone()),
        }
        if let Some(contact_w_m2k) = cooker.contact.measured_w_m2k {
            self.contact_w_m2k = Some(contact_w_m2k);
        }
    }

    /// The last data sheet, or a typical one; `None` for watts that no panel has.
    pub(super) fn sheet(&self, module_w: f64) -> Option<Datasheet> {
        self.sheet.or_else(|| Datasheet::typical(module_w).ok())
    }

    pub(super) fn efficiency(&self) -> f64 {
        self.efficiency.unwrap_or(EFFICIENCY)
    }

    pub(super) fn contact_w_m2k(&self) -> f64 {
        self.contact_w_m2k.unwrap_or(CONTACT_W_M2K)
    }

    /// The last measured jacket, or the present one as worked out for a store this hot.
    pub(super) fn measured(&self, present: &Jacket, cutout_c: f64) -> Jacket {
        let (loss_w_k, capacity_j_k) = self.measured.unwrap_or_else(|| {
            present
                .thermal(cutout_c, 20.0)
                .map_or(MEASURED, |thermal| (thermal.loss_w_k, thermal.capacity_j_k))
        });
        Jacket::Measured {
            loss_w_k,
            capacity_j_k,
        }
    }

    /// The last flask, or a wide one of steel.
    pub(super) fn flask(&self) -> Jacket {
        self.flask.clone().unwrap_or(Jacket::Flask {
            flask: WIDE_FLASK,
            wall_j_k: 400.0,
        })
    }

    /// The last described jacket, or a usual one of mineral wool.
    pub(super) fn layers(&self) -> LayeredJacket {
        self.layers.clone().unwrap_or_else(|| LayeredJacket {
            shape: JacketShape::Cylinder {
                inner_radius_m: 0.12,
                inner_height_m: 0.2,
            },
            layers: vec![JacketLayer {
                kind: LayerKind::Insulation {
                    material: Insulation::RockWool,
                },
                thickness_m: 0.1,
            }],
            lid: LidFit::Ordinary,
            through_rods: 0,
        })
    }

    /// The last round room, or one as wide as this and as high.
    pub(super) fn cylinder(&self, present: JacketShape) -> JacketShape {
        self.cylinder.unwrap_or(match present {
            JacketShape::Cylinder { .. } => present,
            JacketShape::Box {
                inner_width_m,
                inner_height_m,
                ..
            } => JacketShape::Cylinder {
                inner_radius_m: 0.5 * inner_width_m,
                inner_height_m,
            },
        })
    }

    /// The last square room, or one as wide as this and as high.
    pub(super) fn boxed(&self, present: JacketShape) -> JacketShape {
        self.boxed.unwrap_or(match present {
            JacketShape::Box { .. } => present,
            JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => JacketShape::Box {
                inner_length_m: 2.0 * inner_radius_m,
                inner_width_m: 2.0 * inner_radius_m,
                inner_height_m,
            },
        })
    }
}
