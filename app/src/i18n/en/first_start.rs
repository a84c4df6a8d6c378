//! English: the first start.

use model::presets::Preset;

use crate::i18n::strings::first_start::FirstStart;

pub(super) const FIRST_START: FirstStart = FirstStart {
    title: "Welcome",
    what_it_does: "Duskpot tells you whether tonight’s pot will boil on your heat-storing solar cooker, when, and how long to leave it in. Everything stays on this device.",
    set_up: "Set up my cooker",
    set_up_takes: "Five questions, one minute. Each has an answer picked already.",
    set_up_takes_place: "Five questions, one minute. All but the first have an answer picked already.",
    show_example: "Show me with an example",
    bring_copy: "Bring in a copy",
    copy_is: "Used Duskpot before, on this device or another? A copy is a file with a whole household in it, saved there under ‘More’.",
    safety_why: "What burns, bursts or makes ill on such a cooker, and what to do. Read it before you cook.",
    cooker_name: "My cooker",
    question: |number, of| format!("Question {number} of {of}"),
    done: "Done",
    changed_later: "You can change every answer later.",

    place: "Where do you cook?",
    place_near: |town| format!("Near {town}"),
    place_at: |latitude, south, longitude, west| {
        let latitude_side = if south { "south" } else { "north" };
        let longitude_side = if west { "west" } else { "east" };
        format!("{latitude}° {latitude_side}, {longitude}° {longitude_side}")
    },
    place_why: "This is the main town of the time zone your device is set to. The sun over it is near enough up to a few hundred kilometres away.",
    place_unknown: "This device does not tell where it is. Pick the town that is nearest to you, or give latitude and longitude, to a degree.",
    place_other: "I cook somewhere else",
    place_numbers: "Latitude and longitude",
    town: "The nearest of these towns",
    town_in: |country, town| format!("{country}: {town}"),
    no_town: "None picked",
    latitude: "Latitude",
    longitude: "Longitude",
    north_or_south: "North or south of the equator",
    north: "North",
    south: "South",
    east_or_west: "East or west of Greenwich",
    east: "East",
    west: "West",

    height: "How high above the sea?",
    height_why: "The higher you live, the less heat water needs to boil, and the longer food takes.",
    height_pick: "The land here",
    near_the_sea: "Near the sea",
    hills: "Hills",
    highland: "Highland",
    mountains: "Mountains",
    up_to: |height| format!("up to {height}"),
    above: |height| format!("above {height}"),
    height_number: "Or the height, if you know it",

    cooker: "What is your cooker built of?",
    cooker_pick: "The nearest one will do",
    preset,
    preset_good_for,

    panels: "How many watts of panels?",
    panels_why: "The watts stand on the back of each panel. Add up those that feed this cooker.",
    panels_pick: "Usual sizes",
    panels_number: "Or another number, all panels together",

    people: "How many people usually eat?",
    people_why: "Tonight’s pot starts with food for so many.",
    people_pick: "At the table",
    people_number: "Or another number",
};

fn preset(preset: Preset) -> &'static str {
    match preset {
        Preset::AluminiumInPerlite => "Aluminium block in perlite",
        Preset::SteelInRockWool => "Steel or iron plate in rock wool",
        Preset::SoapstoneInVermiculite => "Soapstone in vermiculite",
        Preset::SandInPerlite => "Bucket of dry sand in perlite",
        Preset::ErythritolInGlassWool => "Erythritol with fins in glass wool",
        Preset::NitrateInCeramicFibre => "Nitrate salt with fins in ceramic fibre",
        Preset::StraightToPot => "Panel straight to the pot, no store",
        Preset::ErythritolUnderPot => "Erythritol with fins in a can under the pot",
        Preset::ConcreteInRockWool => "Concrete in rock wool",
        Preset::MortarUnderAirGap => "Heater in mortar, the pot over a gap of air",
        Preset::BareNitrate => "Nitrate salt in a can, no fins",
        Preset::NitrateCarried => "Nitrate salt in a can that is carried in",
        Preset::NitrateUnderDish => "Nitrate salt with fins under a sun-following dish",
        Preset::AluminiumInFlask => "Aluminium block in a vacuum flask",
        Preset::AluminiumAndGrid => "Aluminium block in perlite, with the grid beside",
    }
}

fn preset_good_for(preset: Preset) -> &'static str {
    match preset {
        Preset::AluminiumInPerlite => "gives its heat fast: quick to boil",
        Preset::SteelInRockWool => "from the scrap yard: sturdy, quick to boil",
        Preset::SoapstoneInVermiculite => "holds heat for long, slow dishes",
        Preset::SandInPerlite => "the cheapest: slow, keeps food warm",
        Preset::ErythritolInGlassWool => "melts near 119 °C: steady, never very hot",
        Preset::NitrateInCeramicFibre => {
            "holds the most, melts at 220 °C; for makers who know the salt"
        }
        Preset::StraightToPot => "no store to build: cooks while the sun shines",
        Preset::ErythritolUnderPot => "the same heat, and any pot stands on it",
        Preset::ConcreteInRockWool => "from sand and cement: cheap, slow to give its heat",
        Preset::MortarUnderAirGap => "any pot fits, slow: put it in while the sun shines",
        Preset::BareNitrate => "easier to build; freezes under the pot and slows down",
        Preset::NitrateCarried => "charged outside, turned over in the kitchen",
        Preset::NitrateUnderDish => "needs clear sun; hot within hours",
        Preset::AluminiumInFlask => "stays hot overnight while the vacuum holds",
        Preset::AluminiumAndGrid => "tops up on dark days where there is a socket",
    }
}
