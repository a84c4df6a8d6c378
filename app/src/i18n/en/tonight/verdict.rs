//! English: the answer of the screen Tonight.

use crate::i18n::strings::tonight::{Facts, Headlines, Sentences, Sureness, VerdictTexts};

pub(super) const VERDICT: VerdictTexts = VerdictTexts {
    headlines: Headlines {
        will_boil: "Will boil",
        will_be_done: "Will be done",
        should_boil: "Should boil",
        should_be_done: "Should be done",
        may_boil: "May boil",
        may_be_done: "May be done",
        unlikely_to_boil: "Unlikely to boil",
        unlikely_to_be_done: "Unlikely to be done",
        may_boil_dry: "May boil dry",
        not_done: "Not done in time",
        too_late: "Boils too late",
        will_not_boil: "Will not boil",
        boils_dry: "Boils dry",
        do_not_leave: "Don’t leave it in",
        does_not_fit: "Does not fit",
        too_little_water: "Too little water",
    },
    sureness: Sureness {
        even_weaker: "even after a weaker day",
        as_logged: "if the day was as logged",
        even_grey: "even after a grey day",
        as_assumed: "if sun and clouds take turns",
        if_all_goes_well: "only if all goes well",
        if_clear: "only after a clear day",
        not_even_then: "even if all goes well",
        not_even_clear: "even after a clear day",
    },
    sentences: Sentences {
        boils_and_done: |eaten| format!("The pot boils, and the food is done before {eaten}."),
        boils: |eaten| format!("The pot boils before {eaten}."),
        done_without_boil: |hottest, eaten| {
            format!(
                "The pot gets to about {hottest}, and the food is done before {eaten} without boiling. It cooks below the boil too, only more slowly."
            )
        },
        done_late: |hottest, eaten, done| {
            format!(
                "The pot gets to about {hottest}, and at {eaten} the food is not done: {done} it is, without boiling."
            )
        },
        spoils: |least, from| {
            format!(
                "In the cooker the food stands for hours neither cold nor above {least}: {from} it has stood too long, and must be thrown away."
            )
        },
        done_later: |eaten, done| {
            format!("The pot boils, but at {eaten} the food is not done: {done} it is.")
        },
        not_done: |eaten| format!("The pot boils, but at {eaten} the food is not done."),
        boils_later: |eaten, boils| {
            format!("At {eaten} the pot does not boil yet: {boils} it does.")
        },
        never_boils: |hottest, boiling| {
            format!("The pot gets to about {hottest}. Water boils here at {boiling}.")
        },
        boils_dry: |dry| format!("The water is gone {dry}, before the food is done."),
        hope_boils: "If all goes well, the pot boils.",
        hope_done: "If all goes well, the food is done all the same.",
        sun_unknown: "Today’s sun is not logged yet.",
    },
    facts: Facts {
        put_in: "Put it in",
        goes_in: "Goes in",
        at: |time| format!("at {time}"),
        now: "now",
        at_the_latest: |time| format!("at the latest {time}"),
        boils: "Boils",
        done: "Done",
        between: |from, to| format!("between {from} and {to}"),
        at_the_earliest: |time| format!("{time} at the earliest"),
        gets_to: "Gets to",
        leave_in: "Leave it in",
        until_eaten: |time| format!("until {time}"),
        take_out: "Take it out",
        or_it_burns: |time| format!("by {time}, or it burns"),
        look_in: "Look in",
        or_it_is_dry: |time| format!("by {time}: its water may be gone before it is done"),
        or_it_spoils: |time| format!("by {time}, or it spoils"),
    },
};
