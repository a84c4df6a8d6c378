//! Odds in words and figures, the same everywhere.
//!
//! | odds | word | |
//! | --- | --- | --- |
//! | 0.95 and above | [`OddsWord::NearlySure`] | at least 19 in 20 |
//! | 0.80 to 0.95 | [`OddsWord::VeryLikely`] | 4 in 5 and more |
//! | 0.60 to 0.80 | [`OddsWord::Likely`] | |
//! | 0.40 to 0.60 | [`OddsWord::Even`] | may go either way |
//! | 0.20 to 0.40 | [`OddsWord::Unlikely`] | |
//! | 0.05 to 0.20 | [`OddsWord::VeryUnlikely`] | 1 in 5 and less |
//! | below 0.05 | [`OddsWord::NearlyNever`] | less than 1 in 20 |
//!
//! An end belongs to the row above it. Figures stop at 1 in 50 and 49 in 50: nobody knows a kitchen
//! better than that, and an ensemble of some hundred members can't tell 0 from 1 in 200.

/// Least odds that are told.
const LEAST: f64 = 0.02;
/// Most odds that are told.
const MOST: f64 = 0.98;

/// How sure something is, between 1 in 50 and 49 in 50.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Chance(f64);

/// The plain words for odds, from the least to the most.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum OddsWord {
    /// Below 0.05.
    NearlyNever,
    /// 0.05 to 0.20.
    VeryUnlikely,
    /// 0.20 to 0.40.
    Unlikely,
    /// 0.40 to 0.60.
    Even,
    /// 0.60 to 0.80.
    Likely,
    /// 0.80 to 0.95.
    VeryLikely,
    /// 0.95 and above.
    NearlySure,
}

impl OddsWord {
    /// Every word with the least odds that it stands for.
    pub const SCALE: [(Self, f64); 7] = [
        (Self::NearlyNever, 0.0),
        (Self::VeryUnlikely, 0.05),
        (Self::Unlikely, 0.2),
        (Self::Even, 0.4),
        (Self::Likely, 0.6),
        (Self::VeryLikely, 0.8),
        (Self::NearlySure, 0.95),
    ];

    /// The word for a probability from 0 to 1; what is no number counts as 0.
    pub fn of(probability: f64) -> Self {
        Self::SCALE
            .iter()
            .rev()
            .find(|(_, least)| *least <= probability)
            .map_or(Self::NearlyNever, |(word, _)| *word)
    }
}

impl Chance {
    /// Odds that are good enough to plan on.
    pub const NINE_IN_TEN: f64 = 0.9;

    /// A probability, held between 1 in 50 and 49 in 50; what is no number counts as the least.
    pub fn new(probability: f64) -> Self {
        // What is no number is not above the least.
        Self(if LEAST < probability {
            probability.min(MOST)
        } else {
            LEAST
        })
    }

    /// As a probability, 0.02 to 0.98.
    pub fn probability(self) -> f64 {
        self.0
    }

    /// In a word.
    pub fn word(self) -> OddsWord {
        OddsWord::of(self.0)
    }

    /// As `n in m`, to the precision that is worth telling: 1, 2 in 50, 1 in 20, tenths, 19 in 20,
    /// 48, 49 in 50. What would be rounded up into the odds of another word is rounded down.
    pub fn n_in_m(self) -> (u32, u32) {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a probability times 50 at most"
        )]
        let of = |whole: f64| (self.0 * whole).round() as u32;
        let tenths = of(10.0);
        match self.word() {
            OddsWord::NearlyNever => (of(50.0), 50),
            OddsWord::VeryUnlikely if self.0 < 0.075 => (1, 20),
            OddsWord::NearlySure if self.0 < 0.955 => (19, 20),
            OddsWord::NearlySure => (of(50.0), 50),
            word if word < OddsWord::of(f64::from(tenths) / 10.0) => (tenths - 1, 10),
            _ => (tenths, 10),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn never_sure_and_never_hopeless() {
        assert_eq!(Chance::new(0.0).n_in_m(), (1, 50));
        assert_eq!(Chance::new(1.0).n_in_m(), (49, 50));
        assert_eq!(Chance::new(f64::NAN).n_in_m(), (1, 50));
        assert_eq!(Chance::new(1.0).word(), OddsWord::NearlySure);
    }

    #[test]
    fn figures_and_words_agree() {
        for (p, word, figure) in [
            (0.03, OddsWord::NearlyNever, (2, 50)),
            (0.05, OddsWord::VeryUnlikely, (1, 20)),
            (0.1, OddsWord::VeryUnlikely, (1, 10)),
            (0.3, OddsWord::Unlikely, (3, 10)),
            (0.5, OddsWord::Even, (5, 10)),
            (0.6, OddsWord::Likely, (6, 10)),
            (0.9, OddsWord::VeryLikely, (9, 10)),
            (0.94, OddsWord::VeryLikely, (9, 10)),
            (0.95, OddsWord::NearlySure, (19, 20)),
            (0.96, OddsWord::NearlySure, (48, 50)),
            (0.97, OddsWord::NearlySure, (49, 50)),
        ] {
            let chance = Chance::new(p);
            assert_eq!((chance.word(), chance.n_in_m()), (word, figure), "{p}");
        }
    }

    #[test]
    fn a_figure_never_belongs_to_another_word() {
        for permille in 0..=1000 {
            let chance = Chance::new(f64::from(permille) / 1000.0);
            let (n, m) = chance.n_in_m();
            let told = OddsWord::of(f64::from(n) / f64::from(m));
            assert_eq!(told, chance.word(), "{permille} in 1000 as {n} in {m}");
        }
    }

    #[test]
    fn the_scale_rises() {
        for pair in OddsWord::SCALE.windows(2) {
            assert!(pair[0].1 < pair[1].1 && pair[0].0 < pair[1].0);
        }
    }
}
