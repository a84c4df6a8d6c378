//! Odds in words and figures, the same everywhere.

use model::odds::OddsWord;

/// Texts of odds.
#[derive(Debug)]
pub struct Odds {
    /// The one scale of words, to stand in a sentence or alone.
    pub word: fn(word: OddsWord) -> &'static str,
    /// Odds as a figure: '9 in 10'.
    pub n_in_m: fn(n: &str, m: &str) -> String,
    /// Odds above the last figure that is told.
    pub more_than: fn(figure: &str) -> String,
    /// Odds below the first.
    pub less_than: fn(figure: &str) -> String,
    /// Heads the scale of words.
    pub scale: &'static str,
    /// What the scale is.
    pub scale_why: &'static str,
    /// A word with its figure.
    pub word_and_figure: fn(word: &str, figure: &str) -> String,
    /// A word with the odds it stands for: from this figure on.
    pub from: fn(word: &str, figure: &str) -> String,
    /// The least word of the scale: below this figure.
    pub below: fn(word: &str, figure: &str) -> String,
}
