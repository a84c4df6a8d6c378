//! English: refusals.

use crate::i18n::strings::refusals::Refusals;

pub(super) const REFUSALS: Refusals = Refusals {
    not_a_number: "This is not a number.",
    not_whole: "A whole number, please.",
    empty: "Something is needed here.",
    too_long: |n_most| format!("At most {n_most} letters."),
    too_low: |value| format!("At least {value}."),
    too_high: |value| format!("At most {value}."),
    sun_exceeds_day: |value| {
        format!("The sun is up for {value} on this day: it can’t have shone for longer.")
    },
    pot_too_small: |value| format!("This pot holds {value}, and needs room to boil."),
    in_future: "That time has not come yet.",
    fins_too_close: "These fins would take more than half of the room. Make them thinner, or set them further apart.",
    before: |value| format!("Not before {value}."),
    after: |value| format!("Not after {value}."),
    night_warmer: "The night can’t be warmer than the day.",
    gone: "This is no longer here.",
    meal_running: "A pot is in the cooker already. Take it out first.",
    not_a_meal: "This entry is not a meal.",
    last_cooker: "This is your only cooker. Add another one first.",
    too_many: |n_most| format!("Duskpot keeps at most {n_most} of these."),
};
