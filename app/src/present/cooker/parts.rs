//! The parts of a cooker as fields: what each shows, and the cooker with one of them changed.

mod numbers;
mod picks;
mod spare;
mod ways;

use model::cooker::Cooker;

use crate::i18n::format::Formats;
use crate::present::cooker::fault::Fault;
use crate::present::cooker::measure::Number;

pub use picks::{options, picked};
pub use spare::Spare;
pub use ways::Way;

/// A field of the form, or a button that changes the parts.
///
/// Those with a place in a list count from 0.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Key {
    /// Rated power of one panel.
    ModuleW,
    /// Panels in series.
    InSeries,
    /// Rows in parallel.
    InParallel,
    /// Slope.
    Tilt,
    /// Where they look, as one of sixteen winds.
    Azimuth,
    /// Whether the data sheet is known.
    Sheet,
    /// Voltage at maximum power.
    SheetVmp,
    /// Current at maximum power.
    SheetImp,
    /// Open-circuit voltage.
    SheetVoc,
    /// Short-circuit current.
    SheetIsc,
    /// Coefficient of the short-circuit current, as a share of it.
    SheetAlpha,
    /// Coefficient of the open-circuit voltage, as a share of it.
    SheetBeta,
    /// Cells in series.
    SheetCells,
    /// Straight or through a tracker.
    Drive,
    /// Efficiency of the tracker.
    Efficiency,
    /// Resistance of the element.
    HeaterOhm,
    /// Resistance of the wires.
    WireOhm,
    /// Cut-out of the thermostat.
    Cutout,
    /// One of the media.
    Medium(usize),
    /// Its mass.
    MediumKg(usize),
    /// Another medium.
    AddMedium,
    /// One medium less.
    RemoveMedium(usize),
    /// What the store was measured to hold, over what its media and masses say.
    Held,
    /// Thickness under the seat.
    Depth,
    /// Whether the jacket is described or measured.
    JacketKnown,
    /// Shape of the room inside.
    Shape,
    /// Inner diameter of a round one.
    Across,
    /// Inner length of a square one.
    Length,
    /// Inner width.
    Width,
    /// Inner height of either.
    Height,
    /// What a layer is made of.
    Layer(usize),
    /// Its thickness.
    LayerM(usize),
    /// Emissivity of the inner face of a layer of air.
    HotFace(usize),
    /// Emissivity of its outer face.
    ColdFace(usize),
    /// Another layer outside.
    AddLayer,
    /// One layer less.
    RemoveLayer(usize),
    /// How the opening is closed.
    LidFit,
    /// Rods through the jacket.
    Rods,
    /// Measured loss.
    Loss,
    /// Measured capacity.
    Capacity,
    /// How the pot meets the store.
    Seat,
    /// Whether the contact was measured.
    ContactKnown,
    /// The contact conductance.
    Contact,
    /// What the pot is made of.
    PotKind,
    /// What it holds.
    PotSize,
    /// What is round it.
    Wrap,
    /// What it was measured to lose, over what its kind says.
    PotLoss,
    /// A field of a part that not every cooker has.
    Way(Way),
}

/// How the field measures; `None` for one that is picked, switched or pressed.
pub fn number(key: Key) -> Option<Number> {
    match key {
        Key::Way(way) => ways::number(way),
        _ => numbers::number(key),
    }
}

/// The value of a field with a number, in the model's unit; `None` where the cooker has no such part.
pub fn value(cooker: &Cooker, key: Key) -> Option<f64> {
    match key {
        Key::Way(way) => ways::value(cooker, way),
        _ => numbers::value(cooker, key),
    }
}

/// The text of a field: a number as it is written, or the key of what is picked.
pub fn text(cooker: &Cooker, key: Key, formats: &Formats) -> String {
    match number(key) {
        Some(number) => {
            value(cooker, key).map_or_else(String::new, |value| number.text(value, formats))
        }
        None => picked(cooker, key),
    }
}

/// Whether the text says what the cooker has.
pub fn says(cooker: &Cooker, key: Key, text: &str, formats: &Formats) -> bool {
    match number(key) {
        Some(number) => value(cooker, key).is_some_and(|value| number.says(text, value, formats)),
        None => picked(cooker, key) == text,
    }
}

/// The text after a press of a step button.
pub fn stepped(
    cooker: &Cooker,
    key: Key,
    typed: &str,
    direction: i32,
    formats: &Formats,
) -> String {
    match (number(key), value(cooker, key)) {
        (Some(number), Some(value)) => number.stepped(typed, value, direction, formats),
        _ => typed.to_owned(),
    }
}

/// The cooker with one field changed; what is left of parts it had before comes from `spare`.
///
/// # Errors
///
/// [`Fault`] for a text that is no number, or one out of bounds. Whether the cooker can be built is
/// another question: [`check`](crate::present::cooker::fault::check).
pub fn changed(
    cooker: &Cooker,
    spare: &Spare,
    key: Key,
    text: &str,
    formats: &Formats,
) -> Result<Cooker, Fault> {
    let mut cooker = cooker.clone();
    match (number(key), key) {
        (Some(number), Key::Way(way)) => {
            ways::set(&mut cooker, way, number.read(text, formats)?);
        }
        (Some(number), _) => numbers::set(&mut cooker, key, number.read(text, formats)?),
        (None, Key::Way(way)) => ways::pick(&mut cooker, way, text),
        (None, _) => picks::pick(&mut cooker, spare, key, text),
    }
    Ok(cooker)
}

#[cfg(test)]
mod tests;
