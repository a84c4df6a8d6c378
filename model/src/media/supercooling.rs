//! How far a melt cools below its melting point before it freezes.

use super::Medium;
use crate::provenance::{Datum, Source};

impl Medium {
    /// Kelvin below the solidus at which the melt of a household's store freezes; `None` for what does
    /// not melt.
    ///
    /// Published figures disagree by the amount and by what is in it: the more and the dirtier, the
    /// less. Erythritol froze at 9 to 51 K below its melting point over the cycles of one sample, and
    /// elsewhere beyond 65 K (IHTC14, p. 409, abstract): the middle of the range and half of it. The salt
    /// hydrate 2.8 K at 100 g in Hoehlein et al. and 37 K in Pilar et al., Thermochim. Acta 546 (2012) 81.
    #[must_use]
    pub const fn supercooling_k(self) -> Option<Datum> {
        Some(match self {
            Self::Erythritol => Datum::new(30.0, 21.0, Source::ErythritolCycles),
            Self::Mannitol => Datum::new(50.0, 10.0, Source::Memory),
            Self::AdipicAcid => Datum::new(10.0, 4.0, Source::Memory),
            Self::MagnesiumChlorideHexahydrate => Datum::new(10.0, 10.0, Source::Pilar),
            Self::Hdpe => Datum::new(12.0, 2.0, Source::Memory),
            Self::SodiumNitrate
            | Self::PotassiumNitrate
            | Self::SodiumPotassiumNitrate
            | Self::TernaryNitrateNitrite => Datum::new(3.0, 1.5, Source::Memory),
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_melt_has_a_figure_and_nothing_else() {
        for medium in Medium::ALL {
            assert_eq!(
                medium.supercooling_k().is_some(),
                medium.props().melt.is_some(),
                "{medium:?}"
            );
        }
    }
}
