//! The cooker, as the app saves it.

use model::cooker::{Charge, Contact, Cooker, Metal, Panels, Store};
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket};
use model::panel::{Datasheet, Drive, Heater};
use model::pot::Pot;
use serde_json::Value;

use crate::fields::{Fields, refused};

pub(crate) fn read(text: &str) -> Result<Cooker, String> {
    let value: Value = serde_json::from_str(text).map_err(|error| error.to_string())?;
    let top = Fields::new(&value, "")?;
    top.only(&[
        "panels",
        "heater",
        "store",
        "jacket",
        "contact",
        "pot",
        "charging",
        "carried",
        "spreads",
        "pot_loss_share",
    ])?;
    let inner = |key: &'static str| Ok::<_, String>((top.get(key)?, key));
    let contact = Fields::new(top.get("contact")?, "contact")?;
    contact.only(&["seat", "measured_w_m2k"])?;
    Ok(Cooker {
        panels: panels(inner("panels")?)?,
        heater: heater(inner("heater")?)?,
        store: store(inner("store")?)?,
        jacket: jacket(inner("jacket")?)?,
        contact: Contact {
            seat: named(&contact, "seat")?,
            measured_w_m2k: if contact.has("measured_w_m2k") {
                Some(contact.positive("measured_w_m2k")?)
            } else {
                None
            },
        },
        pot: pot(inner("pot")?)?,
        charging: maybe(&top, "charging")?.unwrap_or_default(),
        carried: maybe(&top, "carried")?,
        pot_loss_share: maybe(&top, "pot_loss_share")?.unwrap_or(1.0),
        spreads: maybe(&top, "spreads")?.unwrap_or_default(),
    })
}

/// A part that not every cooker has.
fn maybe<T: serde::de::DeserializeOwned>(
    fields: &Fields<'_>,
    key: &str,
) -> Result<Option<T>, String> {
    if !fields.has(key) {
        return Ok(None);
    }
    serde_json::from_value(fields.get(key)?.clone())
        .map_err(|error| refused(&fields.path(key), &error.to_string()))
}

/// A row of one of the model's tables by its name.
fn named<T: serde::de::DeserializeOwned>(fields: &Fields<'_>, key: &str) -> Result<T, String> {
    let name = fields.text(key)?;
    serde_json::from_value(Value::String(name.into()))
        .map_err(|_| refused(&fields.path(key), &format!("there is no \"{name}\"")))
}

fn count(fields: &Fields<'_>, key: &str) -> Result<u32, String> {
    fields
        .get(key)?
        .as_u64()
        .and_then(|count| u32::try_from(count).ok())
        .ok_or_else(|| refused(&fields.path(key), "must be a whole number"))
}

fn panels((value, path): (&Value, &str)) -> Result<Panels, String> {
    let fields = Fields::new(value, path)?;
    fields.only(&[
        "module_w",
        "sheet",
        "in_series",
        "in_parallel",
        "tilt_deg",
        "azimuth_deg",
    ])?;
    let sheet = if fields.has("sheet") {
        Some(sheet(fields.get("sheet")?)?)
    } else {
        None
    };
    Ok(Panels {
        module_w: fields.positive("module_w")?,
        sheet,
        in_series: count(&fields, "in_series")?,
        in_parallel: count(&fields, "in_parallel")?,
        tilt_deg: fields.number("tilt_deg")?,
        azimuth_deg: fields.number("azimuth_deg")?,
    })
}

fn sheet(value: &Value) -> Result<Datasheet, String> {
    let fields = Fields::new(value, "panels.sheet")?;
    Ok(Datasheet {
        v_mp_v: fields.positive("v_mp_v")?,
        i_mp_a: fields.positive("i_mp_a")?,
        v_oc_v: fields.positive("v_oc_v")?,
        i_sc_a: fields.positive("i_sc_a")?,
        alpha_sc_a_k: fields.number("alpha_sc_a_k")?,
        beta_voc_v_k: fields.number("beta_voc_v_k")?,
        cells: count(&fields, "cells")?,
    })
}

fn heater((value, path): (&Value, &str)) -> Result<Heater, String> {
    let fields = Fields::new(value, path)?;
    fields.only(&[
        "tracker_efficiency",
        "resistance_ohm",
        "wire_ohm",
        "alpha_per_k",
    ])?;
    Ok(Heater {
        drive: if fields.has("tracker_efficiency") {
            Drive::Tracker {
                efficiency: fields.positive("tracker_efficiency")?,
            }
        } else {
            Drive::Direct
        },
        resistance_ohm: fields.positive("resistance_ohm")?,
        wire_ohm: fields.not_negative("wire_ohm")?,
        alpha_per_k: fields.number("alpha_per_k")?,
    })
}

fn store((value, path): (&Value, &str)) -> Result<Store, String> {
    let fields = Fields::new(value, path)?;
    fields.only(&["charges", "finned", "metal", "depth_m", "cutout_c"])?;
    let metal: Option<Metal> = maybe(&fields, "metal")?;
    let mut charges = Vec::new();
    for (idx, charge) in fields.list("charges")?.iter().enumerate() {
        let path = format!("store.charges[{idx}]");
        let charge = Fields::new(charge, &path)?;
        charges.push(Charge {
            medium: named(&charge, "medium")?,
            mass_kg: charge.positive("mass_kg")?,
        });
    }
    if charges.is_empty() {
        return Err(refused(&fields.path("charges"), "must not be empty"));
    }
    Ok(Store {
        charges,
        metal: truth(&fields, "finned")?.then(|| metal.unwrap_or(Metal::USUAL_FINS)),
        depth_m: fields.positive("depth_m")?,
        cutout_c: fields.temperature("cutout_c")?,
        filled_on: None,
        converted: 0.0,
        capacity_share: 1.0,
    })
}

fn truth(fields: &Fields<'_>, key: &str) -> Result<bool, String> {
    let value = fields.get(key)?.as_bool();
    value.ok_or_else(|| refused(&fields.path(key), "must be true or false"))
}

fn jacket((value, path): (&Value, &str)) -> Result<Jacket, String> {
    let fields = Fields::new(value, path)?;
    match fields.text("known_by")? {
        "measured" => {
            fields.only(&["known_by", "loss_w_k", "capacity_j_k"])?;
            Ok(Jacket::Measured {
                loss_w_k: fields.positive("loss_w_k")?,
                capacity_j_k: fields.positive("capacity_j_k")?,
            })
        }
        "layers" => {
            fields.only(&["known_by", "shape", "layers", "lid", "through_rods"])?;
            let mut layers = Vec::new();
            for (idx, layer) in fields.list("layers")?.iter().enumerate() {
                layers.push(self::layer(layer, &format!("jacket.layers[{idx}]"))?);
            }
            Ok(Jacket::Layers(LayeredJacket {
                shape: shape(fields.get("shape")?)?,
                layers,
                lid: named(&fields, "lid")?,
                through_rods: count(&fields, "through_rods")?,
            }))
        }
        other => Err(refused(
            &fields.path("known_by"),
            &format!("must be \"layers\" or \"measured\", not \"{other}\""),
        )),
    }
}

fn shape(value: &Value) -> Result<JacketShape, String> {
    let fields = Fields::new(value, "jacket.shape")?;
    match fields.text("kind")? {
        "cylinder" => Ok(JacketShape::Cylinder {
            inner_radius_m: fields.positive("inner_radius_m")?,
            inner_height_m: fields.positive("inner_height_m")?,
        }),
        "box" => Ok(JacketShape::Box {
            inner_length_m: fields.positive("inner_length_m")?,
            inner_width_m: fields.positive("inner_width_m")?,
            inner_height_m: fields.positive("inner_height_m")?,
        }),
        other => Err(refused(
            &fields.path("kind"),
            &format!("must be \"cylinder\" or \"box\", not \"{other}\""),
        )),
    }
}

fn layer(value: &Value, path: &str) -> Result<JacketLayer, String> {
    let fields = Fields::new(value, path)?;
    let kind = match fields.text("kind")? {
        "insulation" => LayerKind::Insulation {
            material: named(&fields, "material")?,
        },
        "still_air" => LayerKind::StillAir {
            hot_emissivity: fields.positive("hot_emissivity")?,
            cold_emissivity: fields.positive("cold_emissivity")?,
        },
        other => {
            return Err(refused(
                &fields.path("kind"),
                &format!("must be \"insulation\" or \"still_air\", not \"{other}\""),
            ));
        }
    };
    Ok(JacketLayer {
        kind,
        thickness_m: fields.positive("thickness_m")?,
    })
}

fn pot((value, path): (&Value, &str)) -> Result<Pot, String> {
    let fields = Fields::new(value, path)?;
    fields.only(&["kind", "size", "wrap"])?;
    Ok(Pot {
        kind: named(&fields, "kind")?,
        size: named(&fields, "size")?,
        wrap: named(&fields, "wrap")?,
    })
}
