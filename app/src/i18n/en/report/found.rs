//! English: what is said of a cooker that was fitted.

use model::bench::{Change, Condition, Doubt, Limit, Parameter, RunFault, Worth};

use crate::i18n::strings::report::found::{FoundWords, HangTogether};
use crate::i18n::strings::report::text::Number;

pub(super) const FOUND: FoundWords = FoundWords {
    no_cooker: "The cooker as it is described can’t be worked out: look it over first.",
    nothing: "No figures of this cooker fit these readings. Is it the cooker that was tested, and are \
              the columns right?",
    fault: |fault| match fault {
        RunFault::TooFewReadings => "it needs at least five readings of store or pot",
        RunFault::NoStore => "the store must be read at least once",
        RunFault::NotInOrder => "its readings are not in order of time",
        RunFault::NoAir => "the temperature of the air is not known: write it into the run",
        RunFault::NoPower => "a heat-up needs the power of the heater or the sunlight",
        RunFault::NoPot => {
            "a boil needs a pot of water: say when it went in and how much was in it"
        }
        RunFault::NotIdle => "a cool-down has neither pot nor heater",
        RunFault::PotsOverlap => "its pots are not one after another",
        RunFault::Water => "the water must be more than none and no more than the pot holds",
        _ => "it can’t be used",
    },
    of_run: |run, fault| format!("{run}: {fault}."),
    worth: |worth| match worth {
        Worth::None => "These figures are worth nothing: use none of them.",
        Worth::Little => "These readings say little: use only what they told.",
        Worth::Rough => "Good for a rough answer.",
        Worth::Good => "As good as the readings are.",
    },
    rests_on: |n_runs, scatter| match n_runs {
        1 => format!("From one run. Two readings in three lie within {scatter} of the curve."),
        _ => format!(
            "From {n_runs} runs together. Two readings in three lie within {scatter} of the curves."
        ),
    },
    doubt: |doubt, name, number| match doubt {
        Doubt::NotConverged => "The search for the best figures came to no end.".to_owned(),
        Doubt::DoesNotFollow { times_noise } => format!(
            "The readings bend in a way this cooker can’t: what is left over is {} times the \
             thermometer’s own noise. Was the lid open, the pot moved, the heater on?",
            number(*times_noise)
        ),
        Doubt::ManyOff { share, .. } => format!(
            "{name}: {} % of the readings are far off and count little.",
            number(100.0 * share)
        ),
        Doubt::NotTold(parameter) => {
            format!("These readings tell little of {}.", inside(*parameter))
        }
        Doubt::NotApart(first, second) => format!(
            "These runs can’t tell {} and {} apart: only both together are known. Another kind of \
             run would.",
            inside(*first),
            inside(*second)
        ),
        Doubt::Unlikely(parameter) => format!(
            "For such a build {} is unlikely: check how the cooker is described.",
            inside(*parameter)
        ),
        _ => "There is another doubt.".to_owned(),
    },
    far_off: |is_pot, name, when, value, off| {
        let of = if is_pot { "pot" } else { "store" };
        format!(
            "{name}: the {of}’s reading of {when}, {value}, lies {off} off the curve. It may be \
             mistyped. It counts for little here; put it right or erase it, and look again."
        )
    },
    figures: "What was measured",
    parameter: |parameter| match parameter {
        Parameter::Loss => "Loss through the jacket",
        Parameter::JacketCapacity => "Heat the jacket holds",
        Parameter::StoreCapacity => "Heat the store holds",
        Parameter::MeltingPoint => "Melting point",
        Parameter::MeltingRange => "Width of melting",
        Parameter::Heater => "Heat that arrives",
        Parameter::Contact => "Contact with the pot",
        Parameter::PotLoss => "Loss of the pot",
    },
    parameter_in: inside,
    told: |low, high, described| {
        format!("{low} to {high} in 8 of 10 cases; described as {described}")
    },
    told_at: |said, at| format!("{said}; with the store at {at}"),
    not_told: "not told by these readings: the description stands",
    held: "held as described",
    unit: |parameter, number| match parameter {
        Parameter::Loss => format!("{number}\u{A0}W/K"),
        Parameter::JacketCapacity => format!("{number}\u{A0}kJ/K"),
        Parameter::Contact => format!("{number}\u{A0}W/(m²\u{A0}K)"),
        Parameter::MeltingPoint | Parameter::MeltingRange => format!("{number}\u{A0}K"),
        Parameter::StoreCapacity | Parameter::Heater | Parameter::PotLoss => {
            format!("{number}\u{A0}× described")
        }
    },
    hang_together: HangTogether {
        summary: "How the figures hang together",
        caption: "Correlations: 1 or −1 where two figures are only known together, 0 where they do not touch",
        heads: ["Figure", "with", "correlation"],
    },
    curve: "Readings and fitted curve",
    curve_of: |run| format!("{run}: readings and fitted curve"),
    store_read: "Store, read",
    store_fitted: "Store, fitted",
    pot_read: "Pot, read",
    pot_fitted: "Pot, fitted",
    near: |distance| {
        format!("Two in three of this run’s readings lie within {distance} of the fitted curve.")
    },
    left_over: |run| format!("What is left over: {run}"),
    left_store: "Store, reading less curve",
    left_pot: "Pot, reading less curve",
    left_sentence: |most| {
        format!(
            "The farthest reading lies {most} from the curve. Where the points wave to and fro \
             around zero, all is well; where they bow, the model misses something."
        )
    },
    why: "What limited the pot",
    boiled: |time| format!("The pot boils {time} after it goes in."),
    not_boiled: |hottest| format!("The pot does not boil: left in, it gets to {hottest}."),
    just_below: |hottest| {
        format!(
            "The readings reach the boil; the fitted curve stays below, at {hottest}. No more can be said of what limited it."
        )
    },
    heat_suffices: "There is heat enough in the store: it does not get into the pot in time.",
    heat_lacks: "There is not heat enough in the store, however well it is passed on.",
    worst: |limit| match limit {
        Limit::Heat => "Most of all it lacks heat in the store.",
        Limit::Contact => "Most of all it lacks contact between store and pot.",
        Limit::FrozenLayer => {
            "Most of all the layer that freezes under the pot holds the heat back."
        }
        Limit::Jacket => "Most of all the jacket loses too much.",
        Limit::PotLoss => "Most of all the pot itself loses too much.",
        Limit::HeaterMatch => "Most of all the heater does not fit the panels.",
        Limit::Sun => "Most of all it lacks sun on the panels.",
    },
    with: |change, number| match change {
        Change::AsItWas => "As it was".to_owned(),
        Change::Contact(times) => format!("With {} times the contact", number(*times)),
        Change::Mass(mass_kg) => format!("With {} kg more in the store", number(*mass_kg)),
        Change::Hotter(rise_k) => format!("With the store {} hotter", number(*rise_k)),
        Change::NoLayer => "With more metal, such as fins, through the store".to_owned(),
        Change::Loss(share) => format!("With {} % of the jacket’s loss", number(100.0 * share)),
        Change::PotLoss(share) => format!("With {} % of the pot’s loss", number(100.0 * share)),
        Change::Match(times) => {
            format!("With a heater that takes {} times as much", number(*times))
        }
        Change::Panels(times) => format!("With {} times the panels", number(*times)),
        Change::Water(share) => format!("With {} of water", number(*share)),
    },
    then_boils: |with, time| format!("{with} it boils in {time}."),
    then_not: |with, hottest| format!("{with} it gets to {hottest} and does not boil."),
    then_same: |with| format!("{with} it gains next to nothing."),
    advice: "What would make it boil, the cheapest first",
    advise: |change, number| match change {
        Change::AsItWas => "Leave it as it is".to_owned(),
        Change::Contact(times) => format!(
            "Better contact, {} times what it is: grind the faces flat, clamp the pot, a thin film of \
             oil fit for that heat",
            number(*times)
        ),
        Change::Mass(mass_kg) => format!("{} kg more of the store", number(*mass_kg)),
        Change::Hotter(rise_k) => format!(
            "Charge the store {} hotter, with the thermostat set to it, where all its parts stand it",
            number(*rise_k)
        ),
        Change::NoLayer => "More metal, such as fins, through the melting store".to_owned(),
        Change::Loss(share) => format!(
            "A better jacket, with {} % of the present loss",
            number(100.0 * share)
        ),
        Change::PotLoss(share) => format!(
            "A wrap for the pot, to {} % of its present loss",
            number(100.0 * share)
        ),
        Change::Match(times) => format!(
            "A heater that fits the panels, for {} times the heat",
            number(*times)
        ),
        Change::Panels(times) => format!("{} times the panels", number(*times)),
        Change::Water(share) => format!("Less water: {}", number(*share)),
    },
    costs: |advice, time, cost| format!("{advice}: boils in {time}, costs {cost}."),
    no_price: |advice, time| format!("{advice}: boils in {time}."),
    free: |advice, time| format!("{advice}: boils in {time}, costs nothing."),
    no_advice: "No single change that was tried makes it boil.",
    care: "Work on a cold store and with the panels covered. Oil, cloth and straw catch fire at a hot \
           store; wiring follows local code, by a licensed person.",
    heat: "Where the heat went while the pot was in",
    heat_parts: [
        "into pot and water",
        "away with the steam",
        "lost from the pot",
        "lost through the jacket",
        "lost while open",
        "left in the store",
    ],
    heat_sentence: |all, food| format!("Of {all}, {food} went into the pot."),
    standard: "Figures to compare builds by",
    litres: "Litres boiled from one full charge",
    first_litre: "First litre, from 20 °C",
    power_50: "Power 50 K below the boil",
    hold: "Stays above the boil",
    overnight: "Lost in a night of 12 hours",
    sun: "Share of the day’s sun that reaches the food",
    never: "never",
    longer: "longer than was followed",
    give_or_take: |spread| format!("give or take {spread}"),
    boil_time: [
        "Time to boil, as read",
        "when the readings reach the boil; above, the fitted curve",
    ],
    no_boil_read: "no boil in the readings",
    boil_corrected: "The same from 25 °C to 100 °C",
    efficiency: "Share of the heat given that the water took",
    above_all: "more than all the heat there was: the readings, the water or the heater’s power must be wrong",
    cooking_power: "Standardised cooking power at 50 K (ASAE S580.1)",
    not_met: "The standard’s cooking power is not told, since its conditions don’t hold:",
    condition,
    methods: "All are worked out on the heat network with the measured figures, in air of 20 °C, from \
              a store that is full to its cut-out. What each one is stands in the test report.",
};

fn inside(parameter: Parameter) -> &'static str {
    match parameter {
        Parameter::Loss => "the loss through the jacket",
        Parameter::JacketCapacity => "the heat the jacket holds",
        Parameter::StoreCapacity => "the heat the store holds",
        Parameter::MeltingPoint => "the melting point",
        Parameter::MeltingRange => "the width of melting",
        Parameter::Heater => "the heat that arrives",
        Parameter::Contact => "the contact with the pot",
        Parameter::PotLoss => "the loss of the pot",
    }
}

fn condition(condition: &Condition, number: Number<'_>) -> String {
    match condition {
        Condition::NoIrradiance => {
            "no sunlight was read; the standard says nothing of a store that empties at night"
                .to_owned()
        }
        Condition::Irradiance { intervals } => format!(
            "sunlight outside 450 to 1100 W/m², or unsteady by more than 100 W/m², in {intervals} intervals"
        ),
        Condition::Air { mean_c } => format!("air of {} °C, not 20 to 35 °C", number(*mean_c)),
        Condition::WindUnknown => "the wind was not noted".to_owned(),
        Condition::Wind { wind_m_s } => {
            format!("wind of {} m/s, more than 1 m/s", number(*wind_m_s))
        }
        Condition::AreaUnknown => "the area that takes the sun was not noted".to_owned(),
        Condition::Load { load_kg_m2 } => {
            format!(
                "{} kg of water by square metre, not 7 kg",
                number(*load_kg_m2)
            )
        }
        Condition::TooFewIntervals { intervals } => {
            format!("{intervals} intervals of ten minutes, fewer than 30")
        }
        Condition::Scatter { r2 } => {
            format!(
                "the line explains {} % of the scatter, not 75 %",
                number(100.0 * r2)
            )
        }
        _ => "another condition".to_owned(),
    }
}
