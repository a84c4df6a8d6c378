//! Odds in words and figures, the same everywhere.

use model::odds::{Chance, OddsWord};

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;

/// Odds as a figure, in tenths wherever they stand, so that one can be held against another: '9 in
/// 10', 'over 9 in 10'.
pub fn figure(strings: &Strings, formats: &Formats, chance: Chance) -> String {
    let in_ten = |n| n_in(strings, formats, n, 10.0);
    match chance.word() {
        // Near the ends tenths say no more than this; another base would not be seen to be more.
        OddsWord::NearlySure => (strings.odds.more_than)(&in_ten(9.0)),
        OddsWord::NearlyNever => (strings.odds.less_than)(&in_ten(1.0)),
        word => {
            let tenths = (chance.probability() * 10.0).round();
            // A figure never belongs to a better word than the one beside it.
            let is_above = word < Chance::new(tenths / 10.0).word();
            in_ten(if is_above { tenths - 1.0 } else { tenths })
        }
    }
}

fn n_in(strings: &Strings, formats: &Formats, n: f64, m: f64) -> String {
    (strings.odds.n_in_m)(&formats.number(n, 0), &formats.number(m, 0))
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
    // All of the scale has one base, the least in which each beginning is whole.
    let figure = |least: f64| n_in(strings, formats, least * 20.0, 20.0);
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
        assert_eq!(say(1.0), "nearly sure, over 9 in 10");
        assert_eq!(say(0.96), "nearly sure, over 9 in 10");
        assert_eq!(say(0.94), "very likely, 9 in 10");
        assert_eq!(say(0.79), "likely, 7 in 10");
        assert_eq!(say(0.06), "very unlikely, 1 in 10");
        assert_eq!(say(0.0), "hardly a chance, under 1 in 10");
        let (strings, formats) = speaking(Language::Spanish);
        let say = odds(strings, &formats, Chance::new(0.3));
        assert_eq!(say.replace('\u{A0}', " "), "poco probable, 3 de cada 10");
    }

    #[test]
    fn the_scale_names_every_word_with_where_it_begins() {
        let (strings, formats) = speaking(Language::English);
        let expected = [
            "nearly sure: 19 in 20 and more",
            "very likely: 16 in 20 and more",
            "likely: 12 in 20 and more",
            "may go either way: 8 in 20 and more",
            "unlikely: 4 in 20 and more",
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
