//! What limits a build, in a sentence and the figures it rests on.

use model::pot::Pot;
use model::tonight::Better;

use crate::components::{Fact, Icon};
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;

/// Litres an evening, as built and with each part better; `None` while it is worked out.
pub type Litres = [Option<f64>; 5];

/// A part that brings less than this share more is not what limits.
const WORTH: f64 = 0.1;
/// A pot is full to here, with room to boil.
const FULL: f64 = 0.8;

/// What is shown.
#[derive(Debug, Clone, PartialEq)]
pub struct LimitsView {
    /// The answer.
    pub sentence: String,
    /// What it rests on.
    pub facts: Vec<Fact>,
}

/// What limits this build.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Limit {
    /// This part.
    Part(Better),
    /// The size of the pot.
    Pot,
    /// No part more than the others.
    Even,
    /// More than one part: nothing boils.
    Nothing,
}

/// What limits, once every figure is there, with the litres it would boil then.
fn limit(litres: &Litres, pot: Pot) -> Option<(Limit, f64, f64)> {
    let all: Vec<f64> = litres.iter().copied().collect::<Option<_>>()?;
    let now = all.first().copied()?;
    let (better, most) = Better::ALL
        .into_iter()
        .zip(all)
        .max_by(|(_, a), (_, b)| a.total_cmp(b))?;
    let limit = if most <= 0.0 {
        Limit::Nothing
    } else if FULL * pot.size.props().volume_l <= now {
        Limit::Pot
    } else if most < (1.0 + WORTH) * now {
        Limit::Even
    } else {
        Limit::Part(better)
    };
    Some((limit, now, most))
}

/// What limits this build, as far as it is worked out.
pub fn limits(strings: &Strings, formats: &Formats, litres: &Litres, pot: Pot) -> LimitsView {
    let words = &strings.cooker.limits;
    let said = |litres: f64| {
        if litres <= 0.0 {
            words.none.to_owned()
        } else {
            formats.litres(litres)
        }
    };
    let about = |litres: f64| {
        if litres <= 0.0 {
            words.none.to_owned()
        } else {
            (strings.common.about)(&formats.litres(litres))
        }
    };
    let sentence = match limit(litres, pot) {
        None => words.working.to_owned(),
        Some((Limit::Nothing, ..)) => words.nothing.to_owned(),
        Some((Limit::Pot, now, _)) => (words.pot)(&about(now)),
        Some((Limit::Even | Limit::Part(Better::AsBuilt), now, _)) => (words.even)(&about(now)),
        Some((Limit::Part(better), now, most)) => {
            let (now, most) = (about(now), about(most));
            match better {
                Better::TwiceTheStore => (words.store)(&now, &most),
                Better::TwiceTheContact => (words.contact)(&now, &most),
                Better::HalfTheLoss => (words.jacket)(&now, &most),
                Better::AsBuilt | Better::TwiceTheSun => (words.sun)(&now, &most),
            }
        }
    };
    let named = [
        (words.as_built, Icon::Cooker),
        (words.twice_sun, Icon::Panel),
        (words.twice_store, Icon::Weight),
        (words.twice_contact, Icon::PotSteams),
        (words.half_loss, Icon::Jacket),
    ];
    let facts = named
        .into_iter()
        .zip(litres)
        .map(|((label, icon), litres)| Fact {
            label: label.to_owned(),
            value: litres.map_or_else(|| "…".to_owned(), said),
            detail: String::new(),
            icon: Some(icon),
        })
        .collect();
    LimitsView { sentence, facts }
}

#[cfg(test)]
mod tests {
    use model::pot::{PotKind, PotSize, Wrap};

    use super::*;
    use crate::present::cooker::tests::spanish;
    use crate::present::tests::english;

    const POT: Pot = Pot {
        kind: PotKind::ThinAluminium,
        size: PotSize::Litres4,
        wrap: Wrap::SunkInCooker,
    };

    fn check(litres: [f64; 5], expected: Limit) {
        let (found, ..) = limit(&litres.map(Some), POT).unwrap();
        assert_eq!(found, expected, "{litres:?}");
    }

    #[test]
    fn the_part_that_brings_most_is_what_limits() {
        check([1.0, 2.4, 0.9, 1.1, 1.5], Limit::Part(Better::TwiceTheSun));
        check(
            [1.0, 1.1, 2.9, 1.1, 1.5],
            Limit::Part(Better::TwiceTheStore),
        );
        check(
            [1.0, 1.1, 0.9, 1.9, 1.5],
            Limit::Part(Better::TwiceTheContact),
        );
        check([1.0, 1.1, 0.9, 1.1, 1.5], Limit::Part(Better::HalfTheLoss));
        check([0.0, 1.1, 0.0, 0.0, 0.0], Limit::Part(Better::TwiceTheSun));
    }

    #[test]
    fn a_pot_that_is_full_anyway_is_what_limits() {
        check([3.3, 9.0, 3.3, 3.3, 3.3], Limit::Pot);
        check([1.0, 1.05, 1.0, 1.02, 1.05], Limit::Even);
        check([0.0; 5], Limit::Nothing);
    }

    #[test]
    fn it_is_told_in_words_of_both_languages_and_not_before_it_is_known() {
        for (strings, formats) in [english(), spanish()] {
            let view = limits(strings, &formats, &[Some(1.0), None, None, None, None], POT);
            assert_eq!(view.sentence, strings.cooker.limits.working);
            assert_eq!(view.facts[1].value, "…");
            let litres = [0.0, 2.4, 0.0, 0.0, 0.0].map(Some);
            let view = limits(strings, &formats, &litres, POT);
            assert!(
                view.sentence.contains(strings.cooker.limits.none),
                "{view:?}"
            );
            assert_eq!(view.facts[0].value, strings.cooker.limits.none);
        }
    }
}
