//! English: the cooker.

mod follows;
mod learned;
mod limits;
mod parts;
mod place;
mod ways;

use crate::i18n::strings::cooker::{Cooker, List, Rebuilt};

pub(super) const COOKER: Cooker = Cooker {
    title: "Cooker",
    copy_name: |name| format!("{name}, copy"),
    list: List {
        count: |n| match n {
            1 => "One cooker".to_owned(),
            _ => format!("{n} cookers"),
        },
        heading: "Our cookers",
        in_use: "In use",
        not_in_use: "Not in use",
        made_of: |media, watts| format!("{media}, panels of {watts}"),
        charge: |mass, medium| format!("{mass} of {medium}"),
        fins: "with fins",
        foam: "with metal foam",
        no_metal: "no fins",
        jacket_measured: "jacket measured",
        pot: |kind, litres| format!("pot of {kind}, {litres}"),
        cutout: |degrees| format!("heater off at {degrees}"),
        straight: "panels straight to the heater",
        by_tracker: "with a tracker",
        heater: |ohms| format!("heater of {ohms}"),
        depth: |depth| format!("store {depth} thick"),
        on_which: |name| format!("On: {name}"),
        and: |first, last| format!("{first} and {last}"),
        use_this: "Cook on this one",
        add: "Add a cooker",
        add_how: "Which is nearest to it?",
        add_watts: "All its panels together",
        add_note: "You can change every part afterwards. Tonight then asks about the new cooker.",
        name: "Name",
        copy: "Make a copy",
        copy_note: "Try a change on a copy: the diary stays with this one.",
        erase: "Erase this cooker",
        all: "All cookers",
        gone: "This cooker is no longer here.",
        manage: "Name, copy, erase",
    },
    follows: follows::FOLLOWS,
    limits: limits::LIMITS,
    learned: learned::LEARNED,
    rebuilt: Rebuilt {
        question: "From when on is it like this?",
        why: "What is in the diary was cooked on what it was then.",
        from_now: "From now on",
        always: "It always was",
        until: |when, made_of| format!("Until {when}: {made_of}."),
    },
    parts: parts::PARTS,
    place: place::PLACE,
    ways: ways::WAYS,
};
