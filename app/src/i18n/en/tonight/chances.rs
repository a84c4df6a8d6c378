//! English: how sure the answer is.

use crate::i18n::strings::tonight::Chances;

pub(super) const CHANCES: Chances = Chances {
    heading: "How sure is it?",
    expect_boil: |eaten| format!("We expect the pot to boil before {eaten}."),
    expect_done: |eaten| {
        format!("We expect the pot to boil, and the food to be done before {eaten}.")
    },
    expect_either: |eaten| {
        format!(
            "We expect the food to be done before {eaten}, at the boil or just below. It cooks below the boil too, only more slowly."
        )
    },
    expect_below: |eaten| {
        format!(
            "We expect the food to be done before {eaten}, without boiling. It cooks below the boil too, only more slowly."
        )
    },
    may_stay_cold: "The pot may stay below the boil.",
    may_be_late: |eaten| format!("The pot may boil only after {eaten}."),
    close_boil: |eaten| format!("It is close: the pot may boil before {eaten}, or only after it."),
    may_not_be_done: |eaten| format!("At {eaten} the food may not be done yet."),
    close_done: |eaten| {
        format!("It is close: the food may be done before {eaten}, or only after it.")
    },
    may_boil_dry: "The water may be gone before the food is done.",
    stays_cold: |boiling| {
        format!("We expect the pot to stay below {boiling}, where water boils here.")
    },
    boils_late: |eaten, boils| {
        format!("At {eaten} we expect the pot not to boil yet: {boils} it may.")
    },
    not_done: |eaten| format!("At {eaten} we expect the food not to be done."),
    done_late: |eaten, done| {
        format!("At {eaten} we expect the food not to be done yet: {done} it may.")
    },
    boils_dry: "We expect the water to be gone before the food is done.",
    boils: "It boils",
    done: |eaten| format!("It is ready by {eaten}"),
    latest: |time, figure| format!("at the latest {time}, for {figure}"),
    sooner: |time, figure| format!("better by {time}: {figure} then"),
    no_later: |figure| format!("no later, for {figure}"),
    no_time: |figure| format!("hardly {figure} at any time"),
    most: "The pot may hold",
    up_to: |litres| format!("up to {litres}"),
    for_odds: |figure| format!("food and water together, to be ready {figure}"),
    nothing: "nothing yet",
    reading: "A thermometer reading now",
    reading_settles: |figure| format!("would make it a near yes or a near no, {figure} times"),
    reading_little: "would tell little more",
    breakfast: "Water for breakfast",
    breakfast_water: |litres, from, by| {
        format!("{litres} in at {from}, boiling by {by}, after this pot")
    },
    then: |odds| format!("Then {odds}."),
    store_goes: |from, to, time| {
        format!("The store goes from about {from} to about {to} at {time}.")
    },
    store_between: |low, high| {
        format!("In 8 of 10 such evenings it then lies between {low} and {high}.")
    },
    store_from: "from",
    store_to: "to",
    ready_by: |eaten, odds| format!("Ready by {eaten}: {odds}."),
    boils_by: |eaten, odds| format!("Boils by {eaten}: {odds}."),
};
