//! Texts of the parts that not every cooker has, and of what wears.

/// Texts of the parts that not every cooker has, and of what wears.
#[derive(Debug)]
pub struct Ways {
    /// Unit: millimetres.
    pub mm: &'static str,
    /// Unit: square metres.
    pub m2: &'static str,
    /// In place of a list of media: there are none.
    pub no_store: &'static str,
    /// In the form, where the last medium was taken out.
    pub no_store_note: &'static str,
    /// Resistance of another element; its number.
    pub element: fn(number: usize) -> String,
    /// What is taken of the switch.
    pub element_hint: &'static str,
    /// Button: another element.
    pub add_element: &'static str,
    /// Button: take an element out.
    pub remove_element: fn(number: usize) -> String,
    /// Metal in the medium.
    pub metal: &'static str,
    /// Under it: what a metal through the medium is good for.
    pub metal_hint: &'static str,
    /// None, fins, foam.
    pub metals: [&'static str; 3],
    /// What it is made of.
    pub metal_of: &'static str,
    /// Thickness of a fin.
    pub fin: &'static str,
    /// Under it: how it is measured.
    pub fin_hint: &'static str,
    /// From fin to fin.
    pub pitch: &'static str,
    /// Under it: how it is measured.
    pub pitch_hint: &'static str,
    /// Share of the volume.
    pub foam_share: &'static str,
    /// Under it: how it is found.
    pub foam_share_hint: &'static str,
    /// What the metal weighs by its measures, and that its heat counts only among the media.
    pub metal_weighs: fn(mass: &str) -> String,
    /// The day it was filled in.
    pub filled_on: &'static str,
    /// What for.
    pub filled_on_hint: &'static str,
    /// A kind of jacket: a vacuum flask.
    pub flask: &'static str,
    /// Between its walls.
    pub flask_gap: &'static str,
    /// Under it: what is meant.
    pub flask_gap_hint: &'static str,
    /// Its walls.
    pub flask_wall: &'static str,
    /// Silvered glass, bright steel.
    pub walls: [&'static str; 2],
    /// Its vacuum.
    pub vacuum: &'static str,
    /// Sound.
    pub sound: &'static str,
    /// How that is seen.
    pub sound_detail: &'static str,
    /// Lost.
    pub lost: &'static str,
    /// How that is seen.
    pub lost_detail: &'static str,
    /// Heads the fold of other ways to charge.
    pub charging: &'static str,
    /// Switch: a dish in place of the panels.
    pub dish: &'static str,
    /// What it takes.
    pub dish_detail: &'static str,
    /// Its aperture.
    pub aperture: &'static str,
    /// What is meant.
    pub aperture_hint: &'static str,
    /// Share of the beam taken in.
    pub optical: &'static str,
    /// Figures to go by.
    pub optical_hint: &'static str,
    /// Switch: a second charge.
    pub second: &'static str,
    /// Where it is noted.
    pub second_detail: &'static str,
    /// Its power.
    pub second_w: &'static str,
    /// Under it: what is meant.
    pub second_w_hint: &'static str,
    /// What of it arrives.
    pub second_share: &'static str,
    /// Figures to go by.
    pub second_share_hint: &'static str,
    /// Switch: it is carried in.
    pub carried: &'static str,
    /// What that means.
    pub carried_detail: &'static str,
    /// How long the way takes.
    pub way: &'static str,
    /// Under it: what is meant.
    pub way_hint: &'static str,
    /// Thickness of the wrap.
    pub wrap: &'static str,
    /// Under it: what is meant.
    pub wrap_hint: &'static str,
    /// Switch: it is turned over.
    pub turned: &'static str,
    /// What for.
    pub turned_detail: &'static str,
    /// Heads what wears.
    pub wear_heading: &'static str,
    /// Molten hours and where it melts now.
    pub worn: fn(medium: &str, hours: &str, degrees: &str) -> String,
    /// From when a pot no longer boils; the earliest and, within years, the latest.
    pub last_boil: fn(day: &str, earliest: &str, latest: Option<&str>) -> String,
    /// It no longer does.
    pub worn_out: &'static str,
    /// It always will.
    pub never: &'static str,
}
