//! Texts of the first start.

use model::presets::Preset;

/// Texts of the first start.
#[derive(Debug)]
pub struct FirstStart {
    /// Head of the screen.
    pub title: &'static str,
    /// What the app is for, in a sentence or two.
    pub what_it_does: &'static str,
    /// Button: answer the questions.
    pub set_up: &'static str,
    /// How long the questions take, beside the button.
    pub set_up_takes: &'static str,
    /// The same where the device tells no place, which is asked for then.
    pub set_up_takes_place: &'static str,
    /// Button: look at the example household.
    pub show_example: &'static str,
    /// Link: the page where a copy of a household is brought in.
    pub bring_copy: &'static str,
    /// What a copy is, beside that link.
    pub copy_is: &'static str,
    /// What the page of cautions is about, beside the link to it.
    pub safety_why: &'static str,
    /// Name given to the first cooker.
    pub cooker_name: &'static str,
    /// How far along one is: the question's number and how many there are.
    pub question: fn(number: usize, of: usize) -> String,
    /// Button after the last question.
    pub done: &'static str,
    /// Every answer can be changed later.
    pub changed_later: &'static str,

    /// Question: where the cooker stands.
    pub place: &'static str,
    /// The place that the device's clock tells: near a town.
    pub place_near: fn(town: &str) -> String,
    /// The place by its coordinates, in degrees without a sign.
    pub place_at: fn(latitude: &str, south: bool, longitude: &str, west: bool) -> String,
    /// Where the proposed place is from, and that it is near enough.
    pub place_why: &'static str,
    /// The device does not tell a place.
    pub place_unknown: &'static str,
    /// Opens the fields for another place.
    pub place_other: &'static str,
    /// Opens them where there is no place yet.
    pub place_numbers: &'static str,
    /// Label: the nearest of many towns.
    pub town: &'static str,
    /// A town in the list, which stands by country.
    pub town_in: fn(country: &str, town: &str) -> String,
    /// No town is picked.
    pub no_town: &'static str,
    /// Label: latitude, without a sign.
    pub latitude: &'static str,
    /// Label: longitude, without a sign.
    pub longitude: &'static str,
    /// Label of the choice of north or south.
    pub north_or_south: &'static str,
    /// North of the equator.
    pub north: &'static str,
    /// South of the equator.
    pub south: &'static str,
    /// Label of the choice of east or west.
    pub east_or_west: &'static str,
    /// East of Greenwich.
    pub east: &'static str,
    /// West of Greenwich.
    pub west: &'static str,

    /// Question: the height above the sea.
    pub height: &'static str,
    /// Why it matters.
    pub height_why: &'static str,
    /// Label of the four heights.
    pub height_pick: &'static str,
    /// From the shore to 300 m.
    pub near_the_sea: &'static str,
    /// From 300 to 1100 m.
    pub hills: &'static str,
    /// From 1100 to 2000 m.
    pub highland: &'static str,
    /// Above 2000 m.
    pub mountains: &'static str,
    /// Up to so high.
    pub up_to: fn(height: &str) -> String,
    /// Higher than that.
    pub above: fn(height: &str) -> String,
    /// Label of the number.
    pub height_number: &'static str,

    /// Question: what the cooker is built of.
    pub cooker: &'static str,
    /// Label of the choice, and that the nearest one will do.
    pub cooker_pick: &'static str,
    /// A way of building, in a few words; starts with a capital.
    pub preset: fn(Preset) -> &'static str,
    /// What it is good for, in a few words.
    pub preset_good_for: fn(Preset) -> &'static str,

    /// Question: watts of panels.
    pub panels: &'static str,
    /// Where the watts are written.
    pub panels_why: &'static str,
    /// Label of the choice.
    pub panels_pick: &'static str,
    /// Label of the number.
    pub panels_number: &'static str,

    /// Question: people who usually eat.
    pub people: &'static str,
    /// What the number is for.
    pub people_why: &'static str,
    /// Label of the choice.
    pub people_pick: &'static str,
    /// Label of the number.
    pub people_number: &'static str,
}
