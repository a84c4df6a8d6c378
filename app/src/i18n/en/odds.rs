//! English: odds in words.

use model::odds::OddsWord;

use crate::i18n::strings::odds::Odds;

pub(super) const ODDS: Odds = Odds {
    word: |word| match word {
        OddsWord::NearlySure => "nearly sure",
        OddsWord::VeryLikely => "very likely",
        OddsWord::Likely => "likely",
        OddsWord::Even => "may go either way",
        OddsWord::Unlikely => "unlikely",
        OddsWord::VeryUnlikely => "very unlikely",
        OddsWord::NearlyNever => "hardly a chance",
    },
    n_in_m: |n, m| format!("{n}\u{A0}in\u{A0}{m}"),
    more_than: |figure| format!("over {figure}"),
    less_than: |figure| format!("under {figure}"),
    scale: "Words for odds",
    scale_why: "When Duskpot says 9 in 10, nine of ten such pots should be ready. The words are always the same; it never says always or never.",
    word_and_figure: |word, figure| format!("{word}, {figure}"),
    from: |word, figure| format!("{word}: {figure} and more"),
    below: |word, figure| format!("{word}: less than {figure}"),
};
