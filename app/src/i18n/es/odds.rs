//! Spanish: odds in words.

use model::odds::OddsWord;

use crate::i18n::strings::odds::Odds;

pub(super) const ODDS: Odds = Odds {
    word: |word| match word {
        OddsWord::NearlySure => "casi seguro",
        OddsWord::VeryLikely => "muy probable",
        OddsWord::Likely => "probable",
        OddsWord::Even => "puede que sí y puede que no",
        OddsWord::Unlikely => "poco probable",
        OddsWord::VeryUnlikely => "muy poco probable",
        OddsWord::NearlyNever => "casi imposible",
    },
    n_in_m: |n, m| format!("{n}\u{A0}de\u{A0}cada\u{A0}{m}"),
    more_than: |figure| format!("más de {figure}"),
    less_than: |figure| format!("menos de {figure}"),
    scale: "Palabras para lo probable",
    scale_why: "Cuando Duskpot dice 9 de cada 10, nueve de diez ollas así deberían estar listas. Las palabras son siempre las mismas; nunca dice siempre ni nunca.",
    word_and_figure: |word, figure| format!("{word}, {figure}"),
    from: |word, figure| format!("{word}: {figure} y más"),
    below: |word, figure| format!("{word}: menos de {figure}"),
};
