//! A cooker, as saved.

use model::cooker::{Charge, Charging, Contact, Cooker, Panels, Spreads};
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket};
use model::panel::{Datasheet, Drive, Heater};
use model::pot::Pot;

use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};

/// What came after the first saves is written where there is any.
impl Write for Cooker {
    fn write(&self, out: &mut Writer) {
        let Self {
            panels,
            heater,
            store,
            jacket,
            contact,
            pot,
            charging,
            carried,
            pot_loss_share,
            spreads,
        } = self;
        let mut fields: Vec<(&str, &dyn Write)> = vec![
            ("panels", panels),
            ("heater", heater),
            ("store", store),
            ("jacket", jacket),
            ("contact", contact),
            ("pot", pot),
        ];
        if *charging != Charging::default() {
            fields.push(("charging", charging));
        }
        if carried.is_some() {
            fields.push(("carried", carried));
        }
        if pot_loss_share.to_bits() != 1.0_f64.to_bits() {
            fields.push(("pot_loss_share", pot_loss_share));
        }
        if *spreads != Spreads::default() {
            fields.push(("spreads", spreads));
        }
        Record(&fields).write(out);
    }
}

impl Read for Cooker {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            panels: from.get("panels")?,
            heater: from.get("heater")?,
            store: from.get("store")?,
            jacket: from.get("jacket")?,
            contact: from.get("contact")?,
            pot: from.get("pot")?,
            charging: Option::unwrap_or_default(from.get("charging")?),
            carried: from.get("carried")?,
            pot_loss_share: Option::unwrap_or(from.get("pot_loss_share")?, 1.0),
            spreads: Option::unwrap_or_default(from.get("spreads")?),
        })
    }
}

record!(Spreads {
    loss: "loss",
    contact: "contact",
    capacity: "capacity",
    charging: "charging",
    pot_loss: "pot_loss",
});

record!(Panels {
    module_w: "module_w",
    sheet: "sheet",
    in_series: "in_series",
    in_parallel: "in_parallel",
    tilt_deg: "tilt_deg",
    azimuth_deg: "azimuth_deg",
});

record!(Datasheet {
    v_mp_v: "v_mp_v",
    i_mp_a: "i_mp_a",
    v_oc_v: "v_oc_v",
    i_sc_a: "i_sc_a",
    alpha_sc_a_k: "alpha_sc_a_k",
    beta_voc_v_k: "beta_voc_v_k",
    cells: "cells",
});

record!(Heater {
    drive: "tracker_efficiency",
    resistance_ohm: "resistance_ohm",
    wire_ohm: "wire_ohm",
    alpha_per_k: "alpha_per_k",
});

record!(Charge {
    medium: "medium",
    mass_kg: "mass_kg",
});

record!(Contact {
    seat: "seat",
    measured_w_m2k: "measured_w_m2k",
});

record!(Pot {
    kind: "kind",
    size: "size",
    wrap: "wrap",
});

/// As the efficiency of the tracker; none for an element wired straight to the panel.
impl Write for Drive {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Direct => None,
            Self::Tracker { efficiency } => Some(*efficiency),
        }
        .write(out);
    }
}

impl Read for Drive {
    fn read(from: &Node<'_>) -> Found<Self> {
        let efficiency = Option::read(from)?;
        Ok(efficiency.map_or(Self::Direct, |efficiency| Self::Tracker { efficiency }))
    }
}

impl Write for Jacket {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Layers(LayeredJacket {
                shape,
                layers,
                lid,
                through_rods,
            }) => Record(&[
                ("known_by", &"layers"),
                ("shape", shape),
                ("layers", layers),
                ("lid", lid),
                ("through_rods", through_rods),
            ])
            .write(out),
            Self::Measured {
                loss_w_k,
                capacity_j_k,
            } => Record(&[
                ("known_by", &"measured"),
                ("loss_w_k", loss_w_k),
                ("capacity_j_k", capacity_j_k),
            ])
            .write(out),
            Self::Flask { flask, wall_j_k } => Record(&[
                ("known_by", &"flask"),
                ("flask", flask),
                ("wall_j_k", wall_j_k),
            ])
            .write(out),
        }
    }
}

impl Read for Jacket {
    fn read(from: &Node<'_>) -> Found<Self> {
        let known_by = from.field("known_by")?;
        match known_by.text()? {
            "layers" => Ok(Self::Layers(LayeredJacket {
                shape: from.get("shape")?,
                layers: from.get("layers")?,
                lid: from.get("lid")?,
                through_rods: from.get("through_rods")?,
            })),
            "measured" => Ok(Self::Measured {
                loss_w_k: from.get("loss_w_k")?,
                capacity_j_k: from.get("capacity_j_k")?,
            }),
            "flask" => Ok(Self::Flask {
                flask: from.get("flask")?,
                wall_j_k: from.get("wall_j_k")?,
            }),
            _ => known_by.unknown(),
        }
    }
}

impl Write for JacketShape {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Cylinder {
                inner_radius_m,
                inner_height_m,
            } => Record(&[
                ("kind", &"cylinder"),
                ("inner_radius_m", inner_radius_m),
                ("inner_height_m", inner_height_m),
            ])
            .write(out),
            Self::Box {
                inner_length_m,
                inner_width_m,
                inner_height_m,
            } => Record(&[
                ("kind", &"box"),
                ("inner_length_m", inner_length_m),
                ("inner_width_m", inner_width_m),
                ("inner_height_m", inner_height_m),
            ])
            .write(out),
        }
    }
}

impl Read for JacketShape {
    fn read(from: &Node<'_>) -> Found<Self> {
        let kind = from.field("kind")?;
        match kind.text()? {
            "cylinder" => Ok(Self::Cylinder {
                inner_radius_m: from.get("inner_radius_m")?,
                inner_height_m: from.get("inner_height_m")?,
            }),
            "box" => Ok(Self::Box {
                inner_length_m: from.get("inner_length_m")?,
                inner_width_m: from.get("inner_width_m")?,
                inner_height_m: from.get("inner_height_m")?,
            }),
            _ => kind.unknown(),
        }
    }
}

impl Write for JacketLayer {
    fn write(&self, out: &mut Writer) {
        let Self { kind, thickness_m } = self;
        match kind {
            LayerKind::Insulation { material } => Record(&[
                ("kind", &"insulation"),
                ("material", material),
                ("thickness_m", thickness_m),
            ])
            .write(out),
            LayerKind::StillAir {
                hot_emissivity,
                cold_emissivity,
            } => Record(&[
                ("kind", &"still_air"),
                ("hot_emissivity", hot_emissivity),
                ("cold_emissivity", cold_emissivity),
                ("thickness_m", thickness_m),
            ])
            .write(out),
        }
    }
}

impl Read for JacketLayer {
    fn read(from: &Node<'_>) -> Found<Self> {
        let kind = from.field("kind")?;
        Ok(Self {
            kind: match kind.text()? {
                "insulation" => LayerKind::Insulation {
                    material: from.get("material")?,
                },
                "still_air" => LayerKind::StillAir {
                    hot_emissivity: from.get("hot_emissivity")?,
                    cold_emissivity: from.get("cold_emissivity")?,
                },
                _ => return kind.unknown(),
            },
            thickness_m: from.get("thickness_m")?,
        })
    }
}
