//! A store and what else than the panels charges it, as saved.

use model::carry::CarriedCan;
use model::concentrator::{Concentrator, Receiver};
use model::cooker::{Carried, Charging, Metal, SecondCharge, Store};
use model::flask::{Flask, Neck};

use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};

/// Fins as they commonly are go without saying more than that there are some, as in the first
/// saves.
impl Write for Store {
    fn write(&self, out: &mut Writer) {
        let Self {
            charges,
            metal,
            depth_m,
            cutout_c,
            filled_on,
            converted,
            capacity_share,
        } = self;
        let finned = metal.is_some();
        let mut fields: Vec<(&str, &dyn Write)> = vec![
            ("charges", charges),
            ("finned", &finned),
            ("depth_m", depth_m),
            ("cutout_c", cutout_c),
        ];
        if finned && *metal != Some(Metal::USUAL_FINS) {
            fields.push(("metal", metal));
        }
        if filled_on.is_some() {
            fields.push(("filled_on", filled_on));
        }
        if 0.0 < *converted {
            fields.push(("converted", converted));
        }
        if capacity_share.to_bits() != 1.0_f64.to_bits() {
            fields.push(("capacity_share", capacity_share));
        }
        Record(&fields).write(out);
    }
}

impl Read for Store {
    fn read(from: &Node<'_>) -> Found<Self> {
        let finned: bool = from.get("finned")?;
        let metal: Option<Metal> = from.get("metal")?;
        Ok(Self {
            charges: from.get("charges")?,
            metal: finned.then(|| metal.unwrap_or(Metal::USUAL_FINS)),
            depth_m: from.get("depth_m")?,
            cutout_c: from.get("cutout_c")?,
            filled_on: from.get("filled_on")?,
            converted: Option::unwrap_or(from.get("converted")?, 0.0),
            capacity_share: Option::unwrap_or(from.get("capacity_share")?, 1.0),
        })
    }
}

impl Write for Metal {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Fins {
                of,
                thickness_m,
                pitch_m,
            } => Record(&[
                ("kind", &"fins"),
                ("of", of),
                ("thickness_m", thickness_m),
                ("pitch_m", pitch_m),
            ])
            .write(out),
            Self::Foam { of, share } => {
                Record(&[("kind", &"foam"), ("of", of), ("share", share)]).write(out);
            }
        }
    }
}

impl Read for Metal {
    fn read(from: &Node<'_>) -> Found<Self> {
        let kind = from.field("kind")?;
        let of = from.get("of")?;
        match kind.text()? {
            "fins" => Ok(Self::Fins {
                of,
                thickness_m: from.get("thickness_m")?,
                pitch_m: from.get("pitch_m")?,
            }),
            "foam" => Ok(Self::Foam {
                of,
                share: from.get("share")?,
            }),
            _ => kind.unknown(),
        }
    }
}

impl Write for Charging {
    fn write(&self, out: &mut Writer) {
        let Self {
            more_elements_ohm,
            concentrator,
            second,
        } = self;
        Record(&[
            ("more_elements_ohm", more_elements_ohm),
            ("concentrator", concentrator),
            ("second", second),
        ])
        .write(out);
    }
}

impl Read for Charging {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            more_elements_ohm: Option::unwrap_or_default(from.get("more_elements_ohm")?),
            concentrator: from.get("concentrator")?,
            second: from.get("second")?,
        })
    }
}

record!(SecondCharge {
    power_w: "power_w",
    share: "share",
});

record!(Concentrator {
    aperture_m2: "aperture_m2",
    optical_efficiency: "optical_efficiency",
    receiver: "receiver",
});

record!(Receiver {
    area_m2: "area_m2",
    emissivity: "emissivity",
    convection_w_m2k: "convection_w_m2k",
});

record!(Carried {
    can: "can",
    way_s: "way_s",
    turned_over: "turned_over",
});

record!(CarriedCan {
    area_m2: "area_m2",
    emissivity: "emissivity",
    wrap_m: "wrap_m",
    wrap_w_mk: "wrap_w_mk",
});

record!(Flask {
    inner_radius_m: "inner_radius_m",
    inner_height_m: "inner_height_m",
    gap_m: "gap_m",
    emissivity: "emissivity",
    pressure_pa: "pressure_pa",
    neck: "neck",
});

record!(Neck {
    wall_w_mk: "wall_w_mk",
    wall_m: "wall_m",
    radius_m: "radius_m",
    length_m: "length_m",
    stopper_w_mk: "stopper_w_mk",
});
