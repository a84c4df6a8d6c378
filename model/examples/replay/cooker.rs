//! A cooker of a copy.

use model::cooker::{Carried, Charge, Charging, Contact, Cooker, Metal, Panels, Spreads, Store};
use model::flask::Flask;
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use model::local_time::Day;
use model::media::Medium;
use model::panel::{Datasheet, Drive, Heater};
use model::pot::Pot;
use model::seat::Seat;
use serde::Deserialize;

use super::when::maybe_day;

#[derive(Deserialize)]
pub(crate) struct SavedCooker {
    panels: SavedPanels,
    heater: SavedHeater,
    store: SavedStore,
    jacket: SavedJacket,
    contact: SavedContact,
    pot: Pot,
    #[serde(default)]
    charging: Charging,
    carried: Option<Carried>,
    pot_loss_share: Option<f64>,
    #[serde(default)]
    spreads: Spreads,
}

#[derive(Deserialize)]
struct SavedPanels {
    module_w: f64,
    sheet: Option<SavedSheet>,
    in_series: u32,
    in_parallel: u32,
    tilt_deg: f64,
    azimuth_deg: f64,
}

#[derive(Deserialize)]
struct SavedSheet {
    v_mp_v: f64,
    i_mp_a: f64,
    v_oc_v: f64,
    i_sc_a: f64,
    alpha_sc_a_k: f64,
    beta_voc_v_k: f64,
    cells: u32,
}

#[derive(Deserialize)]
struct SavedHeater {
    tracker_efficiency: Option<f64>,
    resistance_ohm: f64,
    wire_ohm: f64,
    alpha_per_k: f64,
}

#[derive(Deserialize)]
struct SavedStore {
    charges: Vec<SavedCharge>,
    finned: bool,
    metal: Option<Metal>,
    depth_m: f64,
    cutout_c: f64,
    #[serde(default, deserialize_with = "maybe_day")]
    filled_on: Option<Day>,
    #[serde(default)]
    converted: f64,
    capacity_share: Option<f64>,
}

#[derive(Deserialize)]
struct SavedCharge {
    medium: Medium,
    mass_kg: f64,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case", tag = "known_by")]
enum SavedJacket {
    Layers {
        shape: SavedShape,
        layers: Vec<SavedLayer>,
        lid: LidFit,
        through_rods: u32,
    },
    Measured {
        loss_w_k: f64,
        capacity_j_k: f64,
    },
    Flask {
        flask: Flask,
        wall_j_k: f64,
    },
}

#[derive(Deserialize)]
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

#[derive(Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
enum SavedLayer {
    Insulation {
        material: Insulation,
        thickness_m: f64,
    },
    StillAir {
        hot_emissivity: f64,
        cold_emissivity: f64,
        thickness_m: f64,
    },
}

#[derive(Deserialize)]
struct SavedContact {
    seat: Seat,
    measured_w_m2k: Option<f64>,
}

impl SavedCooker {
    pub(crate) fn cooker(self) -> Cooker {
        let (panels, heater, store) = (self.panels, self.heater, self.store);
        Cooker {
            panels: Panels {
                module_w: panels.module_w,
                sheet: panels.sheet.map(|sheet| Datasheet {
                    v_mp_v: sheet.v_mp_v,
                    i_mp_a: sheet.i_mp_a,
                    v_oc_v: sheet.v_oc_v,
                    i_sc_a: sheet.i_sc_a,
                    alpha_sc_a_k: sheet.alpha_sc_a_k,
                    beta_voc_v_k: sheet.beta_voc_v_k,
                    cells: sheet.cells,
                }),
                in_series: panels.in_series,
                in_parallel: panels.in_parallel,
                tilt_deg: panels.tilt_deg,
                azimuth_deg: panels.azimuth_deg,
            },
            heater: Heater {
                drive: heater
                    .tracker_efficiency
                    .map_or(Drive::Direct, |efficiency| Drive::Tracker { efficiency }),
                resistance_ohm: heater.resistance_ohm,
                wire_ohm: heater.wire_ohm,
                alpha_per_k: heater.alpha_per_k,
            },
            store: Store {
                charges: store
                    .charges
                    .into_iter()
                    .map(|charge| Charge {
                        medium: charge.medium,
                        mass_kg: charge.mass_kg,
                    })
                    .collect(),
                metal: store
                    .finned
                    .then(|| store.metal.unwrap_or(Metal::USUAL_FINS)),
                depth_m: store.depth_m,
                cutout_c: store.cutout_c,
                filled_on: store.filled_on,
                converted: store.converted,
                capacity_share: store.capacity_share.unwrap_or(1.0),
            },
            jacket: self.jacket.jacket(),
            contact: Contact {
                seat: self.contact.seat,
                measured_w_m2k: self.contact.measured_w_m2k,
            },
            pot: self.pot,
            charging: self.charging,
            carried: self.carried,
            pot_loss_share: self.pot_loss_share.unwrap_or(1.0),
            spreads: self.spreads,
        }
    }
}

impl SavedJacket {
    fn jacket(self) -> Jacket {
        match self {
            Self::Flask { flask, wall_j_k } => Jacket::Flask { flask, wall_j_k },
            Self::Measured {
                loss_w_k,
                capacity_j_k,
            } => Jacket::Measured {
                loss_w_k,
                capacity_j_k,
            },
            Self::Layers {
                shape,
                layers,
                lid,
                through_rods,
            } => Jacket::Layers(LayeredJacket {
                shape: match shape {
                    SavedShape::Cylinder {
                        inner_radius_m,
                        inner_height_m,
                    } => JacketShape::Cylinder {
                        inner_radius_m,
                        inner_height_m,
                    },
                    SavedShape::Box {
                        inner_length_m,
                        inner_width_m,
                        inner_height_m,
                    } => JacketShape::Box {
                        inner_length_m,
                        inner_width_m,
                        inner_height_m,
                    },
                },
                layers: layers.into_iter().map(SavedLayer::layer).collect(),
                lid,
                through_rods,
            }),
        }
    }
}

impl SavedLayer {
    fn layer(self) -> JacketLayer {
        match self {
            Self::Insulation {
                material,
                thickness_m,
            } => JacketLayer {
                kind: LayerKind::Insulation { material },
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
        }
    }
}
