//! The parts that not every cooker has: switched elements, metal in the medium, a flask, a dish, a
//! second charge, a can that is carried.

use model::cooker::{Carried, Cooker, Metal};
use model::flask::{BRIGHT_STEEL_EMISSIVITY, Flask, LOST_PA, SILVERED_EMISSIVITY, SOUND_PA};
use model::jacket::Jacket;
use model::media::Medium;
use model::presets::{DISH, GRID, WRAPPED_CAN};

use super::picks::{ON, place_in, row_at};
use crate::components::SelectOption;
use crate::i18n::strings::Strings;
use crate::present::cooker::measure::{Measure, Number};
use crate::present::diary::{day_field, day_from_field};
use crate::state::limits;

/// A field of such a part, or a button that adds one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Way {
    /// One more element on a switch.
    AddElement,
    /// One less.
    RemoveElement(usize),
    /// Its resistance.
    ElementOhm(usize),
    /// None, fins or foam.
    Metal,
    /// What it is made of.
    MetalOf,
    /// Thickness of a fin.
    FinM,
    /// From fin to fin.
    PitchM,
    /// Share of the volume that foam takes up.
    FoamShare,
    /// The day a medium that ages was filled in.
    FilledOn,
    /// Inner diameter of a flask.
    FlaskAcross,
    /// Its inner height.
    FlaskHeight,
    /// Between its walls.
    FlaskGap,
    /// Silvered glass or bright steel.
    FlaskWall,
    /// Whether its vacuum is lost.
    VacuumLost,
    /// Whether a dish charges it in place of the panels.
    Dish,
    /// Its aperture.
    Aperture,
    /// Share of the beam that the receiver takes in.
    Optical,
    /// Whether there is a second charge.
    Second,
    /// Its power.
    SecondW,
    /// Share of it that reaches the store.
    SecondShare,
    /// Whether it is carried to the kitchen.
    Carried,
    /// How long the way takes.
    WayS,
    /// Thickness of its wrap on the way.
    WayWrap,
    /// Whether it is turned over there.
    TurnedOver,
}

/// Metals that fins and foam are made of.
const METALS: [Medium; 3] = [Medium::Aluminium, Medium::Copper, Medium::MildSteel];
/// Walls of a flask.
const WALLS: [f64; 2] = [SILVERED_EMISSIVITY.value, BRIGHT_STEEL_EMISSIVITY.value];
/// A second element, as many times the first: it suits a quarter of the light.
const SECOND_ELEMENT: f64 = 4.0;

impl Way {
    /// Whether it is a button, which holds nothing.
    pub const fn is_button(self) -> bool {
        matches!(self, Self::AddElement | Self::RemoveElement(_))
    }
}

/// How the field measures; `None` for one that is picked, switched or pressed.
pub(super) fn number(key: Way) -> Option<Number> {
    let of = |measure, bounds, step| {
        Some(Number {
            measure,
            bounds,
            step,
        })
    };
    match key {
        Way::ElementOhm(_) => of(Measure::Ohms, limits::HEATER_OHM, 0.5),
        Way::FinM => of(Measure::Millimetres, limits::FIN_M, 0.5),
        Way::PitchM => of(Measure::Millimetres, limits::PITCH_M, 1.0),
        Way::FoamShare => of(Measure::Percent, limits::FOAM_SHARE, 1.0),
        Way::FlaskAcross => {
            let (least_m, most_m) = limits::JACKET_SIZE_M;
            of(Measure::Centimetres, (2.0 * least_m, 2.0 * most_m), 1.0)
        }
        Way::FlaskHeight => of(Measure::Centimetres, limits::JACKET_SIZE_M, 1.0),
        Way::FlaskGap => of(Measure::Millimetres, limits::FLASK_GAP_M, 1.0),
        Way::Aperture => of(Measure::SquareMetres, limits::APERTURE_M2, 0.1),
        Way::Optical | Way::SecondShare => of(Measure::Percent, limits::SHARE, 5.0),
        Way::SecondW => of(Measure::Watts, limits::TOP_UP_W, 50.0),
        Way::WayS => of(Measure::Minutes, limits::WAY_S, 1.0),
        Way::WayWrap => of(Measure::Centimetres, limits::WRAP_M, 0.5),
        _ => None,
    }
}

fn flask(jacket: &Jacket) -> Option<&Flask> {
    match jacket {
        Jacket::Flask { flask, .. } => Some(flask),
        Jacket::Layers(_) | Jacket::Measured { .. } => None,
    }
}

/// The number that a field holds, in the model's unit.
pub(super) fn value(cooker: &Cooker, key: Way) -> Option<f64> {
    let charging = &cooker.charging;
    match (key, cooker.store.metal) {
        (Way::ElementOhm(idx), _) => charging.more_elements_ohm.get(idx).copied(),
        (Way::FinM, Some(Metal::Fins { thickness_m, .. })) => Some(thickness_m),
        (Way::PitchM, Some(Metal::Fins { pitch_m, .. })) => Some(pitch_m),
        (Way::FoamShare, Some(Metal::Foam { share, .. })) => Some(share),
        (Way::FlaskAcross, _) => Some(2.0 * flask(&cooker.jacket)?.inner_radius_m),
        (Way::FlaskHeight, _) => Some(flask(&cooker.jacket)?.inner_height_m),
        (Way::FlaskGap, _) => Some(flask(&cooker.jacket)?.gap_m),
        (Way::Aperture, _) => Some(charging.concentrator?.aperture_m2),
        (Way::Optical, _) => Some(charging.concentrator?.optical_efficiency),
        (Way::SecondW, _) => Some(charging.second?.power_w),
        (Way::SecondShare, _) => Some(charging.second?.share),
        (Way::WayS, _) => Some(cooker.carried?.way_s),
        (Way::WayWrap, _) => Some(cooker.carried?.can.wrap_m),
        _ => None,
    }
}

/// A part that the cooker does not have is passed over.
pub(super) fn set(cooker: &mut Cooker, key: Way, value: f64) {
    let charging = &mut cooker.charging;
    match (key, &mut cooker.store.metal) {
        (Way::ElementOhm(idx), _) => {
            if let Some(ohm) = charging.more_elements_ohm.get_mut(idx) {
                *ohm = value;
            }
        }
        (Way::FinM, Some(Metal::Fins { thickness_m, .. })) => *thickness_m = value,
        (Way::PitchM, Some(Metal::Fins { pitch_m, .. })) => *pitch_m = value,
        (Way::FoamShare, Some(Metal::Foam { share, .. })) => *share = value,
        (Way::FlaskAcross | Way::FlaskHeight | Way::FlaskGap, _) => {
            if let Jacket::Flask { flask, .. } = &mut cooker.jacket {
                match key {
                    Way::FlaskAcross => {
                        flask.inner_radius_m = 0.5 * value;
                        // The neck is as wide as the flask, but for its rim.
                        flask.neck.radius_m = NECK_SHARE * flask.inner_radius_m;
                    }
                    Way::FlaskHeight => flask.inner_height_m = value,
                    _ => flask.gap_m = value,
                }
            }
        }
        (Way::Aperture | Way::Optical, _) => {
            if let Some(dish) = &mut charging.concentrator {
                match key {
                    Way::Aperture => dish.aperture_m2 = value,
                    _ => dish.optical_efficiency = value,
                }
            }
        }
        (Way::SecondW | Way::SecondShare, _) => {
            if let Some(second) = &mut charging.second {
                match key {
                    Way::SecondW => second.power_w = value,
                    _ => second.share = value,
                }
            }
        }
        (Way::WayS | Way::WayWrap, _) => {
            if let Some(carried) = &mut cooker.carried {
                match key {
                    Way::WayS => carried.way_s = value,
                    _ => carried.can.wrap_m = value,
                }
            }
        }
        _ => {}
    }
}

/// Radius of a wide flask's neck over its own. Common practice, no source.
const NECK_SHARE: f64 = 0.9;

/// The key of what a field has picked.
pub(super) fn picked(cooker: &Cooker, key: Way) -> Option<String> {
    let switch = |on: bool| Some(on.to_string());
    match key {
        Way::Metal => {
            let kind = match cooker.store.metal {
                None => "0",
                Some(Metal::Fins { .. }) => "1",
                Some(Metal::Foam { .. }) => "2",
            };
            Some(kind.to_owned())
        }
        Way::MetalOf => match cooker.store.metal? {
            Metal::Fins { of, .. } | Metal::Foam { of, .. } => Some(place_in(&METALS, &of)),
        },
        Way::FilledOn => Some(cooker.store.filled_on.map(day_field).unwrap_or_default()),
        Way::FlaskWall => {
            let dull = WALLS[0] + WALLS[1] < 2.0 * flask(&cooker.jacket)?.emissivity;
            Some(usize::from(dull).to_string())
        }
        Way::VacuumLost => switch(SOUND_PA.value * 1e3 < flask(&cooker.jacket)?.pressure_pa),
        Way::Dish => switch(cooker.charging.concentrator.is_some()),
        Way::Second => switch(cooker.charging.second.is_some()),
        Way::Carried => switch(cooker.carried.is_some()),
        Way::TurnedOver => switch(cooker.carried?.turned_over),
        _ => None,
    }
}

/// What can be picked in a field.
pub(super) fn options(strings: &Strings, key: Way) -> Vec<SelectOption> {
    let words = &strings.cooker.ways;
    let listed = |labels: &[&str]| {
        labels
            .iter()
            .enumerate()
            .map(|(place, label)| SelectOption {
                key: place.to_string(),
                label: (*label).to_owned(),
            })
            .collect()
    };
    match key {
        Way::Metal => listed(&words.metals),
        Way::MetalOf => listed(&METALS.map(|metal| (strings.tables.medium)(metal))),
        Way::FlaskWall => listed(&words.walls),
        _ => Vec::new(),
    }
}

/// A key that names nothing changes nothing.
pub(super) fn pick(cooker: &mut Cooker, key: Way, text: &str) {
    let on = text == ON;
    let elements_ohm = &mut cooker.charging.more_elements_ohm;
    match key {
        Way::AddElement => {
            let last_ohm = elements_ohm.last();
            let ohm = SECOND_ELEMENT * last_ohm.unwrap_or(&cooker.heater.resistance_ohm);
            elements_ohm.push(ohm.clamp(limits::HEATER_OHM.0, limits::HEATER_OHM.1));
        }
        Way::RemoveElement(idx) if idx < elements_ohm.len() => {
            elements_ohm.remove(idx);
        }
        Way::Metal => {
            cooker.store.metal = match text {
                "1" => Some(Metal::USUAL_FINS),
                "2" => Some(Metal::USUAL_FOAM),
                _ => None,
            };
        }
        Way::MetalOf => {
            if let (Some(metal), Some(Metal::Fins { of, .. } | Metal::Foam { of, .. })) =
                (row_at(&METALS, text), &mut cooker.store.metal)
            {
                *of = metal;
            }
        }
        Way::FilledOn => cooker.store.filled_on = day_from_field(text),
        Way::Dish => cooker.charging.concentrator = on.then_some(DISH),
        Way::Second => cooker.charging.second = on.then_some(GRID),
        Way::Carried => cooker.carried = on.then_some(USUAL_WAY),
        Way::TurnedOver => {
            if let Some(carried) = &mut cooker.carried {
                carried.turned_over = on;
            }
        }
        Way::FlaskWall | Way::VacuumLost => pick_flask(&mut cooker.jacket, key, text),
        _ => {}
    }
}

fn pick_flask(jacket: &mut Jacket, key: Way, text: &str) {
    let Jacket::Flask { flask, .. } = jacket else {
        return;
    };
    match (key, row_at(&WALLS, text)) {
        (Way::FlaskWall, Some(emissivity)) => flask.emissivity = emissivity,
        (Way::VacuumLost, _) if text == ON => flask.pressure_pa = LOST_PA,
        (Way::VacuumLost, _) => flask.pressure_pa = SOUND_PA.value,
        _ => {}
    }
}

/// Ten minutes, wrapped, and set down as it stood.
const USUAL_WAY: Carried = Carried {
    can: WRAPPED_CAN,
    way_s: 600.0,
    turned_over: false,
};

#[cfg(test)]
mod tests;
