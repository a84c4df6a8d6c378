//! English: the screen Tonight.

mod chances;
mod running;
mod verdict;

use crate::i18n::strings::tonight::{
    CareTexts, CourseTexts, HeatTexts, HelpTexts, NowLine, PlanTexts, StoreTexts, Tonight,
};

pub(super) const TONIGHT: Tonight = Tonight {
    title: "Tonight",
    now: NowLine {
        sun_from: |day, time, sunrise| format!("{day}, {time} · sun from {sunrise}"),
        sun_until: |day, time, sunset| format!("{day}, {time} · sun until {sunset}"),
        sun_is_down: |day, time| format!("{day}, {time} · the sun is down"),
        sun_stays_up: |day, time| format!("{day}, {time} · the sun stays up"),
    },
    verdict: verdict::VERDICT,
    plan: PlanTexts {
        heading: "What is cooked",
        dish: "Dish",
        people: "People",
        fewer: "Fewer people",
        more: "More people",
        food_and_water: |food, dish, water| format!("{food} {dish}, {water} water"),
        liquid: |litres, dish| format!("{litres} {dish}"),
        food: "Food, as bought",
        how_much: "How much",
        water: "Water",
        less_food: "Less food",
        more_food: "More food",
        less_water: "Less water",
        more_water: "More water",
        pot: "Pot",
        usual_pot: |litres| format!("{litres}, the usual one"),
        goes_in: "The pot goes in",
        now: "Now",
        at_a_time: "Later",
        goes_in_at: "Goes in at",
        eaten_at: "Eaten at",
        on_day: |day| format!("That is {day}."),
        details: "Pot, lid, start temperature",
        pot_kind: "Made of",
        wrap: "Around it",
        lid: "Its lid",
        start: "Temperature of what goes in",
        colder: "Colder",
        warmer: "Warmer",
        as_the_air: "As warm as the air.",
        start_meal: "The pot goes in now",
    },
    help: HelpTexts {
        heading: "What would help",
        nothing: "Nothing we know of makes it likely to be ready in time on this heat alone.",
        looking: "Being worked out…",
        likelier: "Nothing makes it sure on this heat alone. This makes it likelier:",
        lid_on: ("Put the lid on and leave it on.", "Lid on"),
        earlier: (
            |time| format!("Put the pot in at {time}."),
            |time| format!("In at {time}"),
        ),
        at_once: ("Put the pot in now.", "In now"),
        soak: (
            |time| {
                format!(
                    "Soaked beans would be done: soak them for {time} or more and throw that \
                     water away."
                )
            },
            "Soaked beans",
        ),
        wait: (
            |time| format!("Leave the cooker in the sun, and put the pot in at {time}."),
            |time| format!("In at {time}"),
        ),
        warm: (
            |degrees| {
                format!("Warm the water to {degrees} first, in a dark bottle in the sun perhaps.")
            },
            |degrees| format!("Start at {degrees}"),
        ),
        wrap: (
            "Wrap the pot, with nothing of the wrap against the hot store.",
            "Wrap it",
        ),
        smaller: (
            |litres| format!("Take the pot of {litres}."),
            |litres| format!("{litres} pot"),
        ),
        fewer: (
            |people, amounts| match people {
                1 => format!("Cook for one: {amounts}."),
                _ => format!("Cook for {people} people: {amounts}."),
            },
            |people| format!("For {people}"),
        ),
        less: (|amounts| format!("Cook less: {amounts}."), "Less"),
        more_water: (
            |litres| format!("Take {litres} of water: with less it boils dry."),
            |litres| format!("{litres} water"),
        ),
        later: (
            |time| format!("Eat at {time}."),
            |time| format!("Eat at {time}"),
        ),
        top_up: (
            |time| format!("Heat the store with its second charge, about {time} from now."),
            "It is on now",
        ),
        fire: (
            |time, degrees| {
                format!("Warm the pot on another fire first, about {time}, until it has {degrees}.")
            },
            |degrees| format!("Start at {degrees}"),
        ),
    },
    store: StoreTexts {
        heading: "The store now",
        now: "Now",
        boils: "Water boils",
        melts: "Melts",
        cut_out: "Heater off",
        can_boil: |degrees, litres| {
            format!(
                "The store is at about {degrees}: heat to boil about {litres} of water, if \
                 none were lost on the way."
            )
        },
        can_boil_between: |degrees, low, high| {
            format!(
                "The store is at about {degrees}: heat to boil {low} to {high} of water, if none \
                 were lost on the way."
            )
        },
        may_boil: |degrees, litres| {
            format!(
                "The store is at about {degrees}. That may be too little to boil a cup; at best it \
                 boils {litres}."
            )
        },
        can_boil_little: |degrees| {
            format!("The store is at about {degrees}. That is too little to boil a cup.")
        },
        too_cold: |degrees| {
            format!("The store is at about {degrees}. That warms a pot but can’t boil it.")
        },
        pot_is_in: |degrees| {
            format!("The store is at about {degrees}. Some of its heat is in the pot already.")
        },
        molten: |share| format!("About {share} of what melts in it is molten."),
        log_reading: "Log a thermometer reading",
        reading: "The store now",
        lower: "Lower",
        higher: "Higher",
        reading_hint: "Touching the store, where the pot stands.",
        nothing_logged: "Nothing is logged yet, so the store is taken as cold this morning, and the sun as sun and clouds by turns.",
        sky_not_logged: "Today’s sun is not logged, so sun and clouds by turns are taken.",
        log_sky: "Tap today’s hours",
    },
    course: CourseTexts {
        heading: "Through the evening",
        store: "Store",
        pot: "Pot",
        boils_at: |degrees| format!("boils {degrees}"),
        in_at: |time| format!("in {time}"),
        boils: |time| format!("boils {time}"),
        done: |time| format!("done {time}"),
        eaten: |time| format!("eaten {time}"),
        now: |time| format!("now {time}"),
        no_past: "What was before now is not drawn: nobody measured it.",
        sentence: |from, to, end, hottest| {
            format!("The store goes from {from} to {to} at {end}; the pot gets to {hottest}.")
        },
        time: "Time",
    },
    heat: HeatTexts {
        heading: "Where the heat goes",
        food: "Into pot and food",
        steam: "Away with the steam",
        pot: "Off the pot’s walls and lid",
        jacket: "Out through the jacket",
        open: "Out while it stood open",
        left: "Still in the store",
        has: |store| format!("The store has {store} when the pot goes in."),
        has_with_sun: |store, sun| {
            format!(
                "The store has {store} when the pot goes in, and gets {sun} from the sun meanwhile."
            )
        },
        reaches: |food| format!("Of this {food} reach pot and food."),
        reaches_and_steams: |food, steam| {
            format!("Of this {food} stay in pot and food, and {steam} leave them with the steam.")
        },
    },
    care: CareTexts {
        heading: "Take care",
        more: "More to mind",
        hot_store: |degrees| {
            format!(
                "The store is at about {degrees} and burns at a touch, though it does not look \
                 hot. Use a lifter or dry thick cloth, and keep children away."
            )
        },
        igniting_store: |degrees| {
            format!(
                "The store is at about {degrees}: oil, straw, husk, cloth and paper left on it \
                 can catch fire. It burns at a touch; keep children away."
            )
        },
        nitrate_on_aluminium: "The salt must never overheat against aluminium: that fire can’t be put out. Stay below the cut-out.",
        unsafe_beans: |time| {
            format!(
                "Do not eat these beans before they have boiled hard for {time}: beans that were \
                 only hot can make you very ill. Boil them on another fire."
            )
        },
        cassava: "Bitter cassava holds cyanide. Peel, grate or soak it for days, boil it without a lid and throw the water away.",
        core: |degrees| format!("The middle of the food must have reached {degrees}."),
        hold_hot: |degrees| {
            format!("Keep it at {degrees} or above until it is eaten, or cool it fast.")
        },
        never_overnight: "Never leave it in a cooling cooker overnight. Boiling it again does not make it safe.",
    },
    running: running::RUNNING,
    chances: chances::CHANCES,
    no_estimate: "From this cooker, this place or this diary nothing can be worked out. Look at the cooker’s parts.",
    to_cooker: "To the cooker",
};
