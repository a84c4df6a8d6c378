//! Odds in words and figures, the same everywhere.

use model::odds::{Chance, OddsWord};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;

/// Odds as a figure: '9 in 10'.
pub fn figure(strings: &Strings, formats: &Formats, chance: Chance) -> String {
    let (n, m) = chance.n_in_m();
    let number = |n: u32| formats.number(f64::from(n), 0);
    (strings.odds.n_in_m)(&number(n), &number(m))
}

/// Odds as the word of the scale.
pub fn word(strings: &Strings, chance: Chance) -> &'static str {
    (strings.odds.word)(chance.word())
}

/// Odds as a word with its figure.
pub fn odds(strings: &Strings, formats: &Formats, chance: Chance) -> String {
    let figure = figure(strings, formats, chance);
    (strings.odds.word_and_figure)(word(strings, chance), &figure)
}

/// The scale of words, from the best, each with the odds it stands for.
pub fn scale(strings: &Strings, formats: &Formats) -> Vec<String> {
    let figure = |least: f64| figure(strings, formats, Chance::new(least));
    let mut lowest = 1.0;
    let line = |(word, least): (OddsWord, f64)| {
        let says = (strings.odds.word)(word);
        if 0.0 < least {
            lowest = least;
            (strings.odds.from)(says, &figure(least))
        } else {
            (strings.odds.below)(says, &figure(lowest))
        }
    };
    OddsWord::SCALE.into_iter().rev().map(line).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;
    use crate::present::tests::speaking;

    #[test]
    fn a_word_with_its_figure_and_never_certain() {
        let (strings, formats) = speaking(Language::English);
        let say = |p| odds(strings, &formats, Chance::new(p)).replace('\u{A0}', " ");
        assert_eq!(say(0.88), "very likely, 9 in 10");
        assert_eq!(say(1.0), "nearly sure, 49 in 50");
        assert_eq!(say(0.0), "hardly a chance, 1 in 50");
        let (strings, formats) = speaking(Language::Spanish);
        let say = odds(strings, &formats, Chance::new(0.3));
        assert_eq!(say.replace('\u{A0}', " "), "poco probable, 3 de cada 10");
    }

    #[test]
    fn the_scale_names_every_word_with_where_it_begins() {
        let (strings, formats) = speaking(Language::English);
        let expected = [
            "nearly sure: 19 in 20 and more",
            "very likely: 8 in 10 and more",
            "likely: 6 in 10 and more",
            "may go either way: 4 in 10 and more",
            "unlikely: 2 in 10 and more",
            "very unlikely: 1 in 20 and more",
            "hardly a chance: less than 1 in 20",
        ];
        let said: Vec<String> = scale(strings, &formats)
            .iter()
            .map(|line| line.replace('\u{A0}', " "))
            .collect();
        assert_eq!(said, expected);
    }
}
