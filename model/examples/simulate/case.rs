//! The form of a case, and what is refused in it.

use crate::fields::{Fields, number, refused};
use crate::syntax;
use model::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use model::network::{Layer, Seat};
use model::water;
use serde_json::Value;

/// A power of the heater over a stretch of time.
pub(crate) struct PowerStep {
    pub(crate) from_s: f64,
    pub(crate) to_s: f64,
    pub(crate) power_w: f64,
}

/// One case, checked.
pub(crate) struct Case {
    pub(crate) name: String,
    pub(crate) curve: EnthalpyCurve,
    pub(crate) g_loss_w_k: f64,
    pub(crate) c_jacket_j_k: f64,
    pub(crate) g_pot_w_k: f64,
    pub(crate) seat: Seat,
    pub(crate) c_dry_j_k: f64,
    pub(crate) water_kg: f64,
    pub(crate) altitude_m: f64,
    pub(crate) air_c: f64,
    pub(crate) store_c: f64,
    pub(crate) jacket_c: f64,
    pub(crate) pot_c: f64,
    pub(crate) power: Vec<PowerStep>,
    pub(crate) cutout_c: f64,
    pub(crate) pot_in_s: Option<f64>,
    pub(crate) pot_out_s: Option<f64>,
    pub(crate) end_s: f64,
    pub(crate) sample_s: Vec<f64>,
}

/// Reads a list of cases.
pub(crate) fn read(text: &str) -> Result<Vec<Case>, String> {
    let json: Value = serde_json::from_str(text).map_err(|error| {
        let place = syntax::place(text, error.line(), error.column());
        format!("{place}not JSON: {error}")
    })?;
    let list = json.as_array().ok_or("must be a list of cases")?;
    list.iter()
        .enumerate()
        .map(|(index, value)| {
            Case::read(value).map_err(|error| match value.get("name").and_then(Value::as_str) {
                Some(name) => format!("case {index} \"{name}\": {error}"),
                None => format!("case {index}: {error}"),
            })
        })
        .collect()
}

impl Case {
    fn read(value: &Value) -> Result<Self, String> {
        let fields = Fields::new(value, "")?;
        let name = fields.text("name")?.to_owned();
        let media = fields
            .list("store")?
            .iter()
            .enumerate()
            .map(|(index, value)| medium(value, &format!("store[{index}]")))
            .collect::<Result<Vec<_>, _>>()?;
        let curve = EnthalpyCurve::new(&media).map_err(|e| refused("store", &e.to_string()))?;
        let case = Self {
            name,
            g_loss_w_k: fields.not_negative("g_loss_w_k")?,
            c_jacket_j_k: fields.positive("c_jacket_j_k")?,
            g_pot_w_k: fields.not_negative("g_pot_w_k")?,
            seat: seat(fields.get("seat")?, media.len())?,
            c_dry_j_k: fields.not_negative("c_dry_j_k")?,
            water_kg: fields.not_negative("water_kg")?,
            altitude_m: fields.number("altitude_m")?,
            air_c: fields.temperature("t_air_c")?,
            store_c: fields.temperature("t_store_c")?,
            jacket_c: fields.temperature("t_jacket_c")?,
            pot_c: fields.temperature("t_pot_c")?,
            power: power(&fields)?,
            cutout_c: fields.temperature("cutout_c")?,
            pot_in_s: fields.number_or_null("pot_in_s")?,
            pot_out_s: fields.number_or_null("pot_out_s")?,
            end_s: fields.positive("end_s")?,
            sample_s: Vec::new(),
            curve,
        };
        let case = Self {
            sample_s: samples(&fields, case.end_s)?,
            ..case
        };
        case.check()?;
        Ok(case)
    }

    fn check(&self) -> Result<(), String> {
        water::boiling_point_c(self.altitude_m)
            .map_err(|error| refused("altitude_m", &error.to_string()))?;
        if self.c_dry_j_k + water::CP_J_KGK * self.water_kg < 1.0 {
            return Err(refused("c_dry_j_k", "the pot has no heat capacity"));
        }
        if self.pot_in_s.is_some_and(|in_s| in_s < 0.0) {
            return Err(refused("pot_in_s", "must not be negative"));
        }
        match (self.pot_in_s, self.pot_out_s) {
            (None, Some(_)) => Err(refused("pot_out_s", "the pot never goes in")),
            (Some(in_s), Some(out_s)) if out_s < in_s => {
                Err(refused("pot_out_s", "must not be before pot_in_s"))
            }
            _ => Ok(()),
        }
    }
}

fn medium(value: &Value, path: &str) -> Result<(f64, MediumCurve), String> {
    const MELTING: [&str; 4] = ["t_solidus", "t_liquidus", "latent_j_kg", "cp_liquid"];
    let fields = Fields::new(value, path)?;
    fields.only(&[
        "name", "mass_kg", "cp_a", "cp_b", MELTING[0], MELTING[1], MELTING[2], MELTING[3],
    ])?;
    let melt = if MELTING.iter().any(|key| fields.has(key)) {
        let melt = Melt {
            t_solidus_c: fields.temperature("t_solidus")?,
            t_liquidus_c: fields.temperature("t_liquidus")?,
            latent_j_kg: fields.positive("latent_j_kg")?,
            cp_liquid_j_kgk: fields.positive("cp_liquid")?,
        };
        if melt.t_solidus_c > melt.t_liquidus_c {
            return Err(refused(
                &fields.path("t_solidus"),
                "must not be above t_liquidus",
            ));
        }
        Some(melt)
    } else {
        None
    };
    let mass_kg = fields.positive("mass_kg")?;
    let curve = MediumCurve {
        cp_a_j_kgk: fields.number("cp_a")?,
        cp_b_j_kgk2: fields.number("cp_b")?,
        melt,
    };
    EnthalpyCurve::new(&[(mass_kg, curve)])
        .map_err(|error| refused(&fields.path("cp_a"), &error.to_string()))?;
    Ok((mass_kg, curve))
}

fn seat(value: &Value, media: usize) -> Result<Seat, String> {
    let fields = Fields::new(value, "seat")?;
    fields.only(&["g_contact_w_k", "layer"])?;
    let layer = if fields.has("layer") {
        let layer = Fields::new(fields.get("layer")?, "seat.layer")?;
        layer.only(&["medium", "depth_m", "k_solid_w_mk", "area_m2"])?;
        let medium = layer
            .get("medium")?
            .as_u64()
            .and_then(|index| usize::try_from(index).ok())
            .filter(|index| *index < media)
            .ok_or_else(|| {
                refused(
                    "seat.layer.medium",
                    "must be the index of a medium in store",
                )
            })?;
        Some(Layer {
            medium,
            depth_m: layer.not_negative("depth_m")?,
            k_solid_w_mk: layer.positive("k_solid_w_mk")?,
            area_m2: layer.positive("area_m2")?,
            elsewhere: 0.0,
        })
    } else {
        None
    };
    Ok(Seat {
        g_contact_w_k: fields.not_negative("g_contact_w_k")?,
        layer,
    })
}

fn power(fields: &Fields<'_>) -> Result<Vec<PowerStep>, String> {
    let mut steps: Vec<PowerStep> = Vec::new();
    for (index, value) in fields.list("power_w")?.iter().enumerate() {
        let path = format!("power_w[{index}]");
        let step = match value.as_array().map(Vec::as_slice) {
            Some([from, to, power]) => PowerStep {
                from_s: number(from, &path)?,
                to_s: number(to, &path)?,
                power_w: number(power, &path)?,
            },
            _ => return Err(refused(&path, "must be [from_s, to_s, watt]")),
        };
        if step.from_s < 0.0 || step.to_s <= step.from_s {
            return Err(refused(
                &path,
                "must begin at 0 or later and end after it begins",
            ));
        }
        if step.power_w < 0.0 {
            return Err(refused(&path, "the power must not be negative"));
        }
        if steps.last().is_some_and(|last| step.from_s < last.to_s) {
            return Err(refused(
                &path,
                "must not begin before the step before it ends",
            ));
        }
        steps.push(step);
    }
    Ok(steps)
}

fn samples(fields: &Fields<'_>, end_s: f64) -> Result<Vec<f64>, String> {
    let mut times: Vec<f64> = Vec::new();
    for (index, value) in fields.list("sample_s")?.iter().enumerate() {
        let path = format!("sample_s[{index}]");
        let time_s = number(value, &path)?;
        if !(0.0..=end_s).contains(&time_s) {
            return Err(refused(&path, "must lie between 0 and end_s"));
        }
        if times.last().is_some_and(|last| time_s < *last) {
            return Err(refused(&path, "must not be before the sample before it"));
        }
        times.push(time_s);
    }
    Ok(times)
}
