//! How odds are told.

use model::odds::{Chance, OddsWord};

use super::table;

/// The words, and the figures that stand beside them.
pub(super) fn words() -> String {
    let scale = OddsWord::SCALE;
    let ends = scale.iter().skip(1).map(|(_, least)| *least).chain([1.0]);
    let rows = scale.iter().zip(ends).map(|((word, least), end)| {
        let figure = |p: f64| {
            let (n, m) = Chance::new(p).n_in_m();
            format!("{n} in {m}")
        };
        vec![
            said(*word).to_owned(),
            format!("{least} to {end}"),
            format!("{} to {}", figure(*least), figure(end)),
        ]
    });
    table("Words for odds", &["word", "odds", "told as"], rows)
}

fn said(word: OddsWord) -> &'static str {
    match word {
        OddsWord::NearlyNever => "nearly never",
        OddsWord::VeryUnlikely => "very unlikely",
        OddsWord::Unlikely => "unlikely",
        OddsWord::Even => "may go either way",
        OddsWord::Likely => "likely",
        OddsWord::VeryLikely => "very likely",
        OddsWord::NearlySure => "nearly sure",
    }
}
