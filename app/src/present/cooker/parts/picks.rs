//! The fields that are picked from a list or switched, and the buttons that add and take away.
//!
//! What is picked is named by its place in the model's table; a switch says `true` or `false`.

use model::cooker::{Charge, Cooker};
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LidFit};
use model::media::Medium;
use model::panel::Drive;
use model::pot::{PotKind, PotSize, Wrap};
use model::seat::Seat;

use super::{Key, Spare, ways};
use crate::components::SelectOption;
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;

/// A switch that is on.
pub(super) const ON: &str = "true";
/// Names a vacuum flask among the kinds of jacket.
const FLASK: &str = "flask";
/// Names a layer of air among the insulations.
const STILL_AIR: &str = "air";
/// The medium that is added: steel stands every cut-out and goes with every other medium.
const ADDED: Charge = Charge {
    medium: Medium::MildSteel,
    mass_kg: 1.0,
};
/// The layer that is added outside: mineral wool burns with nothing.
const ADDED_LAYER: JacketLayer = JacketLayer {
    kind: LayerKind::Insulation {
        material: Insulation::RockWool,
    },
    thickness_m: 0.02,
};
/// A dull face of a layer of air.
const DULL: f64 = 0.9;
/// Degrees between two of the sixteen winds.
const WIND_DEG: f64 = 22.5;

pub(super) fn place_in<T: PartialEq>(all: &[T], row: &T) -> String {
    all.iter()
        .position(|other| other == row)
        .map_or_else(String::new, |place| place.to_string())
}

pub(super) fn row_at<T: Copy>(all: &[T], place: &str) -> Option<T> {
    all.get(place.parse::<usize>().ok()?).copied()
}

/// The wind nearest to an azimuth, from north by east: 0 to 15.
fn wind(azimuth_deg: f64) -> String {
    let nearest = (azimuth_deg.rem_euclid(360.0) / WIND_DEG).round() % 16.0;
    format!("{nearest:.0}")
}

/// The key of what a field has picked; empty where the cooker has no such part.
pub fn picked(cooker: &Cooker, key: Key) -> String {
    let layered = match &cooker.jacket {
        Jacket::Layers(layered) => Some(layered),
        Jacket::Measured { .. } | Jacket::Flask { .. } => None,
    };
    let switch = |on: bool| on.to_string();
    let text = match key {
        Key::Azimuth => Some(wind(cooker.panels.azimuth_deg)),
        Key::Sheet => Some(switch(cooker.panels.sheet.is_some())),
        Key::Drive => Some(switch(matches!(cooker.heater.drive, Drive::Tracker { .. }))),
        Key::Medium(idx) => cooker
            .store
            .charges
            .get(idx)
            .map(|charge| place_in(&Medium::ALL, &charge.medium)),
        Key::JacketKnown => Some(match cooker.jacket {
            Jacket::Flask { .. } => FLASK.to_owned(),
            _ => switch(layered.is_none()),
        }),
        Key::Way(way) => ways::picked(cooker, way),
        Key::Shape => {
            layered.map(|layered| switch(matches!(layered.shape, JacketShape::Box { .. })))
        }
        Key::Layer(idx) => layered
            .and_then(|layered| layered.layers.get(idx))
            .map(|layer| match layer.kind {
                LayerKind::Insulation { material } => place_in(&Insulation::ALL, &material),
                LayerKind::StillAir { .. } => STILL_AIR.to_owned(),
            }),
        Key::LidFit => layered.map(|layered| place_in(&LidFit::ALL, &layered.lid)),
        Key::Seat => Some(place_in(&Seat::ALL, &cooker.contact.seat)),
        Key::ContactKnown => Some(switch(cooker.contact.measured_w_m2k.is_some())),
        Key::PotKind => Some(place_in(&PotKind::ALL, &cooker.pot.kind)),
        Key::PotSize => Some(place_in(&PotSize::ALL, &cooker.pot.size)),
        Key::Wrap => Some(place_in(&Wrap::ALL, &cooker.pot.wrap)),
        _ => None,
    };
    text.unwrap_or_default()
}

/// What can be picked in a field.
pub fn options(strings: &Strings, formats: &Formats, key: Key) -> Vec<SelectOption> {
    fn named<T: Copy>(all: &[T], name: impl Fn(T) -> String) -> Vec<SelectOption> {
        all.iter()
            .enumerate()
            .map(|(place, row)| SelectOption {
                key: place.to_string(),
                label: name(*row),
            })
            .collect()
    }
    let (tables, parts) = (&strings.tables, &strings.cooker.parts);
    match key {
        Key::Azimuth => named(&parts.panels.winds, str::to_owned),
        Key::Medium(_) => named(&Medium::ALL, |row| (tables.medium)(row).to_owned()),
        Key::Layer(_) => {
            let mut all = named(&Insulation::ALL, |row| (tables.insulation)(row).to_owned());
            all.push(SelectOption {
                key: STILL_AIR.to_owned(),
                label: parts.jacket.still_air.to_owned(),
            });
            all
        }
        Key::JacketKnown => {
            let jacket = &parts.jacket;
            [
                (false.to_string(), jacket.by_layers),
                (ON.to_owned(), jacket.by_measuring),
                (FLASK.to_owned(), strings.cooker.ways.flask),
            ]
            .map(|(key, label)| SelectOption {
                key,
                label: label.to_owned(),
            })
            .into()
        }
        Key::Way(way) => ways::options(strings, way),
        Key::LidFit => named(&LidFit::ALL, |row| (tables.lid_fit)(row).to_owned()),
        Key::Seat => named(&Seat::ALL, |row| (tables.seat)(row).to_owned()),
        Key::PotKind => named(&PotKind::ALL, |row| (tables.pot_kind)(row).to_owned()),
        Key::PotSize => named(&PotSize::ALL, |row| formats.litres(row.props().volume_l)),
        Key::Wrap => named(&Wrap::ALL, |row| (tables.wrap)(row).to_owned()),
        _ => Vec::new(),
    }
}

/// A key that names nothing changes nothing.
pub(super) fn pick(cooker: &mut Cooker, spare: &Spare, key: Key, text: &str) {
    let on = text == ON;
    match key {
        Key::Azimuth => {
            if let Ok(wind) = text.parse::<u8>() {
                cooker.panels.azimuth_deg = WIND_DEG * f64::from(wind);
            }
        }
        Key::Sheet => {
            let panels = &mut cooker.panels;
            panels.sheet = if on {
                spare.sheet(panels.module_w)
            } else {
                None
            };
            if let Some(sheet) = panels.sheet {
                panels.module_w = sheet.rated_w();
            }
        }
        Key::Drive => {
            cooker.heater.drive = if on {
                Drive::Tracker {
                    efficiency: spare.efficiency(),
                }
            } else {
                Drive::Direct
            };
        }
        Key::Medium(idx) => {
            let charge = cooker.store.charges.get_mut(idx);
            if let (Some(charge), Some(medium)) = (charge, row_at(&Medium::ALL, text)) {
                charge.medium = medium;
            }
        }
        Key::AddMedium => cooker.store.charges.push(ADDED),
        Key::RemoveMedium(idx) => {
            if idx < cooker.store.charges.len() {
                cooker.store.charges.remove(idx);
            }
        }
        Key::JacketKnown => {
            cooker.jacket = match text {
                FLASK => spare.flask(),
                ON => spare.measured(&cooker.jacket, cooker.store.cutout_c),
                _ => Jacket::Layers(spare.layers()),
            };
        }
        Key::Seat => set(&mut cooker.contact.seat, row_at(&Seat::ALL, text)),
        Key::ContactKnown => {
            cooker.contact.measured_w_m2k = on.then(|| spare.contact_w_m2k());
        }
        Key::PotKind => set(&mut cooker.pot.kind, row_at(&PotKind::ALL, text)),
        Key::PotSize => set(&mut cooker.pot.size, row_at(&PotSize::ALL, text)),
        Key::Wrap => set(&mut cooker.pot.wrap, row_at(&Wrap::ALL, text)),
        _ => pick_layer(cooker, spare, key, text),
    }
}

fn pick_layer(cooker: &mut Cooker, spare: &Spare, key: Key, text: &str) {
    let Jacket::Layers(layered) = &mut cooker.jacket else {
        return;
    };
    match key {
        Key::Shape if text == ON => layered.shape = spare.boxed(layered.shape),
        Key::Shape => layered.shape = spare.cylinder(layered.shape),
        Key::Layer(idx) => {
            let Some(layer) = layered.layers.get_mut(idx) else {
                return;
            };
            if text == STILL_AIR {
                layer.kind = LayerKind::StillAir {
                    hot_emissivity: DULL,
                    cold_emissivity: DULL,
                };
            } else if let Some(material) = row_at(&Insulation::ALL, text) {
                layer.kind = LayerKind::Insulation { material };
            }
        }
        Key::AddLayer => layered.layers.push(ADDED_LAYER),
        Key::RemoveLayer(idx) if idx < layered.layers.len() => {
            layered.layers.remove(idx);
        }
        Key::LidFit => set(&mut layered.lid, row_at(&LidFit::ALL, text)),
        _ => {}
    }
}

fn set<T>(place: &mut T, row: Option<T>) {
    if let Some(row) = row {
        *place = row;
    }
}
