//! English: the guide to a test run.

use model::bench::RunKind;

use crate::i18n::strings::runs::guide::{Guide, KindWords};

pub(super) const GUIDE: Guide = Guide {
    title: "New test run",
    choose: "What is to be found out?",
    of: |kind| match kind {
        RunKind::HeatUp => &HEAT_UP,
        RunKind::CoolDown => &COOL_DOWN,
        RunKind::Boil => &BOIL,
        RunKind::Free => &FREE,
    },
    takes: |time, every| {
        format!("Takes about {time} from the start, with a reading every {every} at first.")
    },
    takes_pot: |time, every| {
        format!(
            "Takes about {time} from when the pot goes in, with a reading every {every} at first."
        )
    },
    cannot_foresee: "How long it takes can’t be worked out for this cooker. Read every ten minutes, and every minute or two while a pot is in.",
    steps: "Step by step",
    write: "What to write down",
    cautions: "Before you begin",
    before: "As it begins",
    name: "Name of the run",
    named: |kind, day| format!("{kind}, {day}"),
    cooker: "Cooker",
    store: "The store’s thermometer shows",
    store_hint: "The first reading. It also tells how often to read.",
    air: "Air beside the cooker",
    air_hint: "In the shade, an arm’s length away.",
    heater: "Power of the heater",
    heater_hint: |watts| {
        format!(
            "Volts times amperes, measured at the heater. In full sun these panels should give {watts}."
        )
    },
    notes: "Anything else: wind, who reads, which thermometer",
    began: "When it began",
    began_hint: "Empty means now; a time later than now is yesterday’s.",
    day: "On which day",
    day_hint: "Empty means the last time that the clock showed this.",
    ended: "When it ended",
    ended_hint: "For a run that is over and was written down on paper. Empty means that it still goes on.",
    write_over: "Write this run down, then its readings",
    start: "Start the run now",
    start_earlier: "Start the run at that time",
    goes_on: |name| format!("{name} still goes on."),
    to_it: "Go on with it",
};

const HEAT_UP: KindWords = KindWords {
    tells: "How much heat the store holds, and how much of the power gets into it. The heater is on, no pot is in.",
    steps: &[
        "Begin in the morning with a store that has gone cold.",
        "Put a thermometer into the store, halfway between heater and seat, so that it touches.",
        "Close the lid as at night. No pot goes in.",
        "Measure the heater’s power, or write it down each time with the temperature.",
        "Switch the heater on as you start the run.",
        "Stop when the thermostat cuts out or the sun goes.",
    ],
    write: "The store’s temperature and the heater’s power, each time at the same moment.",
};

const COOL_DOWN: KindWords = KindWords {
    tells: "What the jacket lets out. Nothing is on and no pot is in.",
    steps: &[
        "Begin with a hot store, an hour after the heater went off, so that the jacket is warm through.",
        "Take the panel off the heater, or cover it.",
        "Put a thermometer into the store so that it can be read with the lid closed.",
        "Close the lid as at night, and leave it closed: each look inside lets heat out.",
        "Keep wind and sun off the cooker.",
        "Stop when the store has lost half of what it was above the air.",
    ],
    write: "The store’s temperature, and the air’s at least at the beginning and at the end.",
};

const BOIL: KindWords = KindWords {
    tells: "How the heat gets from the store into the pot, and what the pot loses. A pot of weighed water goes in.",
    steps: &[
        "Begin with a hot store, the heater off and the panel covered.",
        "Weigh the water: a kilogram is a litre. Read how warm it is.",
        "Lead a second thermometer through the lid into the water, off the pot’s base.",
        "Read the store, start the run, put the pot in, and tell it here at once.",
        "Leave the lid on. Read to the end even if it does not boil.",
        "Go on for ten minutes after it boils, or after it stops getting warmer. Then weigh what is left.",
    ],
    write: "The water’s temperature each time, the store’s every second or third time.",
};

const FREE: KindWords = KindWords {
    tells: "Several of these in one go: a charge, a wait, a pot or two.",
    steps: &[
        "Put a thermometer into the store, and one into each pot.",
        "Start the run, and tell each pot here as it goes in and comes out.",
        "Write the heater’s power down whenever it changes, and 0 when it is off.",
        "Read most often while a pot is in.",
    ],
    write: "The store always, the pot while it is in, the power when it changes, the air now and then.",
};
