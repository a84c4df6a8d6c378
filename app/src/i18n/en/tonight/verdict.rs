//! English: the answer of the screen Tonight.

use crate::i18n::strings::tonight::{Facts, Headlines, Sentences, Sureness, VerdictTexts};

pub(super) const VERDICT: VerdictTexts = VerdictTexts {
    headlines: Headlines {
        will_boil: "Will boil",
        will_be_done: "Will be done",
        should_boil: "Should boil",
        should_be_done: "Should be done",
        may_not_boil: "May not boil",
        may_not_be_done: "May not be done",
        may_boil_dry: "May boil dry",
        not_done: "Not done in time",
        too_late: "Boils too late",
        will_not_boil: "Will not boil",
        boils_dry: "Boils dry",
        does_not_fit: "Does not fit",
    },
    sureness: Sureness {
        even_weaker: "even after a weaker day",
        as_logged: "if the day was as logged",
        as_assumed: "if sun and clouds take turns",
        if_all_goes_well: "unless all goes well",
        not_even_then: "even if all goes well",
    },
    sentences: Sentences {
        boils_and_done: |eaten| format!("It boils, and is done before {eaten}."),
        boils: |eaten| format!("It boils before {eaten}."),
        done_without_boil: |hottest, eaten| {
            format!("It gets to about {hottest}, and is done before {eaten} without boiling.")
        },
        done_later: |eaten, done| format!("It boils, but at {eaten} it is not done: {done} it is."),
        not_done: |eaten| format!("It boils, but at {eaten} it is not done."),
        boils_later: |eaten, boils| format!("At {eaten} it does not boil yet: {boils} it does."),
        never_boils: |hottest, boiling| {
            format!("It gets to about {hottest}. Water boils here at {boiling}.")
        },
        boils_dry: |dry| format!("The water is gone {dry}, before the food is done."),
    },
    facts: Facts {
        put_in: "Put it in",
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
    },
};
