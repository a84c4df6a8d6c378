//! English: what was learned about a cooker.

use model::odds::Multiplier;

use crate::i18n::strings::cooker::learned::{Against, Learned};

pub(super) const LEARNED: Learned = Learned {
    heading: "What we learned about your cooker",
    from: |n_reports| match n_reports {
        1 => "From one report in the diary, against what the tables say.".to_owned(),
        _ => format!("From {n_reports} reports in the diary, against what the tables say."),
    },
    nothing_from: |n_reports| {
        let so_far = match n_reports {
            1 => "One report in the diary: it counts".to_owned(),
            _ => format!("{n_reports} reports in the diary: they count"),
        };
        format!(
            "{so_far} in the odds already, but no figure is known much better than by the tables yet."
        )
    },
    from_nothing: "Nothing was reported yet, so the tables speak. Each time you tell when a pot boiled or was done, or what a thermometer shows, Duskpot knows this cooker better.",
    working: "Reading the diary…",
    name: |multiplier| match multiplier {
        Multiplier::Loss => "Heat lost through the jacket",
        Multiplier::Contact => "Heat passed from store to pot",
        Multiplier::Charging => "Heat from the sun",
        Multiplier::Capacity => "Heat the store holds",
        Multiplier::PotLoss => "Heat the pot loses to the air",
        Multiplier::GrainTime => "Cooking time of rice, porridge, pasta",
        Multiplier::BeanTime => "Cooking time of beans",
        Multiplier::PulseTime => "Cooking time of lentils, peas, chickpeas",
        Multiplier::OtherTime => "Cooking time of other food",
    },
    amounts: Against {
        much_less: "much less",
        less: "less",
        same: "as the table says",
        more: "more",
        much_more: "much more",
    },
    times: Against {
        much_less: "much shorter",
        less: "shorter",
        same: "as the table says",
        more: "longer",
        much_more: "much longer",
    },
    so_many_times: |middle, low, high| {
        format!("about {middle} times the table; between {low} and {high}")
    },
    figure: |now, told| format!("{now}; by the table {told}"),
    figure_at: |now, told, at| format!("{now}; by the table {told}; the store at {at}"),
    open: "Not learned yet",
    not_sure: "not sure yet",
    told_already: "Something was told of it. It takes a few pots more.",
    taught_by: |multiplier| match multiplier {
        Multiplier::Loss => "A thermometer reading in the morning, before the sun, would tell.",
        Multiplier::Contact => "Tell when pots boil.",
        Multiplier::Charging => {
            "A thermometer reading at the end of a day whose sun you logged would tell."
        }
        Multiplier::Capacity => {
            "A thermometer reading before a pot goes in and after it came out would tell."
        }
        Multiplier::PotLoss => "Tell when large pots boil.",
        Multiplier::GrainTime
        | Multiplier::BeanTime
        | Multiplier::PulseTime
        | Multiplier::OtherTime => "Tell when it is done, or not done yet.",
    },
};
