//! A cooker, as saved.

use model::cooker::{Charge, Contact, Cooker, Panels, Store};
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket};
use model::panel::{Datasheet, Drive, Heater};
use model::pot::Pot;
use serde::{Deserialize, Serialize};

use super::{each, leaf};
use crate::state::saved::DecodeError;

#[derive(Serialize, Deserialize)]
pub(super) struct SavedCooker {
    panels: SavedPanels,
    heater: SavedHeater,
    store: SavedStore,
    jacket: SavedJacket,
    contact: SavedContact,
    pot: SavedPot,
}

#[derive(Serialize, Deserialize)]
struct SavedPanels {
    module_w: f64,
    sheet: Option<SavedSheet>,
    in_series: u32,
    in_parallel: u32,
    tilt_deg: f64,
    azimuth_deg: f64,
}

#[derive(Serialize, Deserialize)]
struct SavedSheet {
    v_mp_v: f64,
    i_mp_a: f64,
    v_oc_v: f64,
    i_sc_a: f64,
    alpha_sc_a_k: f64,
    beta_voc_v_k: f64,
    cells: u32,
}

#[derive(Serialize, Deserialize)]
struct SavedHeater {
    /// Of the tracker; none for an element wired straight to the panel.
    tracker_efficiency: Option<f64>,
    resistance_ohm: f64,
    wire_ohm: f64,
    alpha_per_k: f64,
}

#[derive(Serialize, Deserialize)]
struct SavedStore {
    charges: Vec<SavedCharge>,
    finned: bool,
    depth_m: f64,
    cutout_c: f64,
}

#[derive(Serialize, Deserialize)]
struct SavedCharge {
    medium: String,
    mass_kg: f64,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "known_by")]
enum SavedJacket {
    Layers {
        shape: SavedShape,
        layers: Vec<SavedLayer>,
        lid: String,
        through_rods: u32,
    },
    Measured {
        loss_w_k: f64,
        capacity_j_k: f64,
    },
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
enum SavedShape {
    Cylinder {
        inner_radius_m: f64,
        inner_height_m: f64,
    },
    Box {
        inner_length_m: f64,
        inner_width_m: f64,
        inner_height_m: f64,
    },
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
enum SavedLayer {
    Insulation {
        material: String,
        thickness_m: f64,
    },
    StillAir {
        hot_emissivity: f64,
        cold_emissivity: f64,
        thickness_m: f64,
    },
}

#[derive(Serialize, Deserialize)]
struct SavedContact {
    seat: String,
    measured_w_m2k: Option<f64>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct SavedPot {
    kind: String,
    size: String,
    wrap: String,
}

impl SavedCooker {
    pub(super) fn from_cooker(cooker: &Cooker) -> Self {
        Self {
            panels: SavedPanels::from_panels(&cooker.panels),
            heater: SavedHeater::from_heater(&cooker.heater),
            store: SavedStore::from_store(&cooker.store),
            jacket: SavedJacket::from_jacket(&cooker.jacket),
            contact: SavedContact {
                seat: leaf::name(cooker.contact.seat),
                measured_w_m2k: cooker.contact.measured_w_m2k,
            },
            pot: SavedPot::from_pot(&cooker.pot),
        }
    }

    pub(super) fn into_cooker(self) -> Result<Cooker, DecodeError> {
        Ok(Cooker {
            panels: self.panels.into_panels(),
            heater: self.heater.into_heater(),
            store: self
                .store
                .into_store()
                .map_err(|error| error.within("store"))?,
            jacket: self
                .jacket
                .into_jacket()
                .map_err(|error| error.within("jacket"))?,
            contact: Contact {
                seat: leaf::row("contact.seat", &self.contact.seat)?,
                measured_w_m2k: self.contact.measured_w_m2k,
            },
            pot: self.pot.into_pot().map_err(|error| error.within("pot"))?,
        })
    }
}

impl SavedPanels {
    fn from_panels(panels: &Panels) -> Self {
        Self {
            module_w: panels.module_w,
            sheet: panels.sheet.as_ref().map(SavedSheet::from_sheet),
            in_series: panels.in_series,
            in_parallel: panels.in_parallel,
            tilt_deg: panels.tilt_deg,
            azimuth_deg: panels.azimuth_deg,
        }
    }

    fn into_panels(self) -> Panels {
        Panels {
            module_w: self.module_w,
            sheet: self.sheet.map(SavedSheet::into_sheet),
            in_series: self.in_series,
            in_parallel: self.in_parallel,
            tilt_deg: self.tilt_deg,
            azimuth_deg: self.azimuth_deg,
        }
    }
}

impl SavedSheet {
    fn from_sheet(sheet: &Datasheet) -> Self {
        Self {
            v_mp_v: sheet.v_mp_v,
            i_mp_a: sheet.i_mp_a,
            v_oc_v: sheet.v_oc_v,
            i_sc_a: sheet.i_sc_a,
            alpha_sc_a_k: sheet.alpha_sc_a_k,
            beta_voc_v_k: sheet.beta_voc_v_k,
            cells: sheet.cells,
        }
    }

    fn into_sheet(self) -> Datasheet {
        Datasheet {
            v_mp_v: self.v_mp_v,
            i_mp_a: self.i_mp_a,
            v_oc_v: self.v_oc_v,
            i_sc_a: self.i_sc_a,
            alpha_sc_a_k: self.alpha_sc_a_k,
            beta_voc_v_k: self.beta_voc_v_k,
            cells: self.cells,
        }
    }
}

impl SavedHeater {
    fn from_heater(heater: &Heater) -> Self {
        Self {
            tracker_efficiency: match heater.drive {
                Drive::Direct => None,
                Drive::Tracker { efficiency } => Some(efficiency),
            },
            resistance_ohm: heater.resistance_ohm,
            wire_ohm: heater.wire_ohm,
            alpha_per_k: heater.alpha_per_k,
        }
    }

    fn into_heater(self) -> Heater {
        Heater {
            drive: self
                .tracker_efficiency
                .map_or(Drive::Direct, |efficiency| Drive::Tracker { efficiency }),
            resistance_ohm: self.resistance_ohm,
            wire_ohm: self.wire_ohm,
            alpha_per_k: self.alpha_per_k,
        }
    }
}

impl SavedStore {
    fn from_store(store: &Store) -> Self {
        let saved = |charge: &Charge| SavedCharge {
            medium: leaf::name(charge.medium),
            mass_kg: charge.mass_kg,
        };
        Self {
            charges: store.charges.iter().map(saved).collect(),
            finned: store.finned,
            depth_m: store.depth_m,
            cutout_c: store.cutout_c,
        }
    }

    fn into_store(self) -> Result<Store, DecodeError> {
        let read = |charge: SavedCharge| {
            let medium = leaf::row("medium", &charge.medium)?;
            Ok(Charge {
                medium,
                mass_kg: charge.mass_kg,
            })
        };
        Ok(Store {
            charges: each("charges", self.charges, read)?,
            finned: self.finned,
            depth_m: self.depth_m,
            cutout_c: self.cutout_c,
        })
    }
}

impl SavedJacket {
    fn from_jacket(jacket: &Jacket) -> Self {
        match jacket {
            Jacket::Layers(layered) => Self::Layers {
                shape: SavedShape::from_shape(layered.shape),
                layers: layered.layers.iter().map(SavedLayer::from_layer).collect(),
                lid: leaf::name(layered.lid),
                through_rods: layered.through_rods,
            },
            Jacket::Measured {
                loss_w_k,
                capacity_j_k,
            } => Self::Measured {
                loss_w_k: *loss_w_k,
                capacity_j_k: *capacity_j_k,
            },
        }
    }

    fn into_jacket(self) -> Result<Jacket, DecodeError> {
        Ok(match self {
            Self::Layers {
                shape,
                layers,
                lid,
                through_rods,
            } => Jacket::Layers(LayeredJacket {
                shape: shape.into_shape(),
                layers: each("layers", layers, SavedLayer::into_layer)?,
                lid: leaf::row("lid", &lid)?,
                through_rods,
            }),
            Self::Measured {
                loss_w_k,
                capacity_j_k,
            } => Jacket::Measured {
                loss_w_k,
                capacity_j_k,
            },
        })
    }
}

impl SavedShape {
    fn from_shape(shape: JacketShape) -> Self {
        match shape {
            JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => Self::Cylinder {
                inner_radius_m,
                inner_height_m,
            },
            JacketShape::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            } => Self::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            },
        }
    }

    fn into_shape(self) -> JacketShape {
        match self {
            Self::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => JacketShape::Cylinder {
                inner_radius_m,
                inner_height_m,
            },
            Self::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            } => JacketShape::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            },
        }
    }
}

impl SavedLayer {
    fn from_layer(layer: &JacketLayer) -> Self {
        let thickness_m = layer.thickness_m;
        match layer.kind {
            LayerKind::Insulation { material } => Self::Insulation {
                material: leaf::name(material),
                thickness_m,
            },
            LayerKind::StillAir {
                hot_emissivity,
                cold_emissivity,
            } => Self::StillAir {
                hot_emissivity,
                cold_emissivity,
                thickness_m,
            },
        }
    }

    fn into_layer(self) -> Result<JacketLayer, DecodeError> {
        Ok(match self {
            Self::Insulation {
                material,
                thickness_m,
            } => JacketLayer {
                kind: LayerKind::Insulation {
                    material: leaf::row("material", &material)?,
                },
                thickness_m,
            },
            Self::StillAir {
                hot_emissivity,
                cold_emissivity,
                thickness_m,
            } => JacketLayer {
                kind: LayerKind::StillAir {
                    hot_emissivity,
                    cold_emissivity,
                },
                thickness_m,
            },
        })
    }
}

impl SavedPot {
    pub(super) fn from_pot(pot: &Pot) -> Self {
        Self {
            kind: leaf::name(pot.kind),
            size: leaf::name(pot.size),
            wrap: leaf::name(pot.wrap),
        }
    }

    pub(super) fn into_pot(self) -> Result<Pot, DecodeError> {
        Ok(Pot {
            kind: leaf::row("kind", &self.kind)?,
            size: leaf::row("size", &self.size)?,
            wrap: leaf::row("wrap", &self.wrap)?,
        })
    }
}
