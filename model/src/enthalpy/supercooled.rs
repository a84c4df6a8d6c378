//! A melt that stays liquid below its melting point until it nucleates.
//!
//! The curve gets a second way down: from the liquidus the melt goes on as a liquid, to the
//! temperature at which the first crystal forms. There it freezes as far as its own heat allows and
//! warms up towards the melting point: temperature jumps, heat does not. So which of the two ways a
//! store is on is a part of its state, not of its heat.

use super::curve::EnthalpyCurve;
use super::segment::Segment;
use crate::error::{ModelError, within};

/// Lowest temperature down to which a melt may stay liquid, degC.
const COLDEST_C: f64 = -50.0;

/// The way of the supercooled melt.
#[derive(Clone, Debug)]
pub(super) struct Branch {
    /// From nucleation to the liquidus.
    pub(super) segment: Segment,
    /// Index of the melt.
    pub(super) medium: usize,
    /// The stretch above the liquidus.
    liquid: usize,
    /// The stretch on which a melt finds itself when it has nucleated.
    frozen: usize,
}

impl EnthalpyCurve {
    /// The same store, whose melt stays liquid down to a temperature.
    ///
    /// # Arguments
    ///
    /// * `medium`: index of the melt.
    /// * `nucleation_c`: where it freezes; below its solidus. \[degC\]
    ///
    /// # Errors
    ///
    /// There is no such medium or it does not melt; the temperature is not below its solidus; another
    /// medium melts in between.
    pub fn with_supercooling(
        mut self,
        medium: usize,
        nucleation_c: f64,
    ) -> Result<Self, ModelError> {
        let refuse = |why| {
            Err(ModelError::Inconsistent {
                quantity: "supercooling",
                why,
            })
        };
        let Some(melt) = self.media.get(medium).and_then(|(_, curve)| curve.melt) else {
            return refuse("there is no such melt in the store");
        };
        within("nucleation_c", nucleation_c, COLDEST_C, melt.t_solidus_c)?;
        let apart = self.media.iter().enumerate().all(|(other, (_, curve))| {
            other == medium
                || curve.melt.is_none_or(|other| {
                    melt.t_liquidus_c < other.t_solidus_c || other.t_liquidus_c <= nucleation_c
                })
        });
        if !apart {
            return refuse("another medium melts between nucleation and melting point");
        }
        let liquid = self
            .segments
            .iter()
            .position(|segment| melt.t_liquidus_c <= segment.low_c && !segment.is_plateau());
        let Some(liquid) = liquid else {
            return refuse("there is no such melt in the store");
        };
        let segment = self.segments[liquid].downwards(nucleation_c);
        self.branch = Some(Branch {
            frozen: self.segment_of(segment.low_j),
            segment,
            medium,
            liquid,
        });
        Ok(self)
    }

    /// Temperatures between which the melt can be supercooled, degC; `None` where it can't.
    pub fn supercooled_range_c(&self) -> Option<(f64, f64)> {
        self.branch
            .as_ref()
            .map(|branch| (branch.segment.low_c, branch.segment.high_c))
    }

    /// Enthalpy of the supercooled store at a temperature, J; `None` where it can't be supercooled.
    pub fn supercooled_enthalpy_j(&self, t_c: f64) -> Option<f64> {
        let branch = self.branch.as_ref()?;
        (branch.segment.low_c..=branch.segment.high_c)
            .contains(&t_c)
            .then(|| branch.segment.enthalpy_j(t_c))
    }

    /// Place of the supercooled stretch, if there is one.
    pub(crate) fn supercooled_segment(&self) -> Option<usize> {
        self.branch.as_ref().map(|_| self.segments.len())
    }

    /// Whether there are crystals of a melt that supercools on a stretch: it is not all liquid.
    pub(crate) fn has_crystals(&self, index: usize) -> bool {
        self.branch
            .as_ref()
            .is_some_and(|branch| index < branch.liquid)
    }

    /// The stretch that follows when a store warms past the end of one.
    pub(crate) fn segment_above(&self, index: usize) -> usize {
        match &self.branch {
            Some(branch) if index >= self.segments.len() => branch.liquid,
            _ => index + 1,
        }
    }

    /// The stretch that follows when a store cools past the end of one.
    pub(crate) fn segment_below(&self, index: usize) -> usize {
        match &self.branch {
            Some(branch) if index >= self.segments.len() => branch.frozen,
            Some(branch) if index == branch.liquid => self.segments.len(),
            _ => index.saturating_sub(1),
        }
    }

    /// The stretch of a store that was on one and now holds another heat: a supercooled store stays
    /// supercooled where it can.
    pub(crate) fn segment_from(&self, index: usize, h_j: f64) -> usize {
        match &self.branch {
            Some(branch)
                if index >= self.segments.len()
                    && (branch.segment.low_j..=branch.segment.high_j).contains(&h_j) =>
            {
                index
            }
            _ => self.segment_of(h_j),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::enthalpy::{MediumCurve, Melt};

    fn melt(solidus: f64, liquidus: f64) -> MediumCurve {
        MediumCurve {
            cp_a_j_kgk: 1380.0,
            cp_b_j_kgk2: 0.0,
            melt: Some(Melt {
                t_solidus_c: solidus,
                t_liquidus_c: liquidus,
                latent_j_kg: 340e3,
                cp_liquid_j_kgk: 2760.0,
            }),
        }
    }

    #[test]
    fn the_melt_goes_on_as_a_liquid_and_keeps_its_heat_when_it_freezes() {
        let plain = EnthalpyCurve::new(&[(5.0, melt(117.0, 119.0))]).unwrap();
        let curve = plain.clone().with_supercooling(0, 70.0).unwrap();
        assert_eq!(curve.supercooled_range_c(), Some((70.0, 119.0)));
        let cold_j = curve.supercooled_enthalpy_j(70.0).unwrap();
        let liquid_j = plain.enthalpy_j(119.0);
        assert!((liquid_j - cold_j - 5.0 * 2760.0 * 49.0).abs() < 1e-6);
        // The same heat, frozen as far as it goes: back in the melting range.
        assert!((117.0..119.0).contains(&curve.temperature_c(cold_j)));
        let place = curve.supercooled_segment().unwrap();
        assert_eq!(curve.segment_below(place), curve.segment_of(cold_j));
        assert_eq!(curve.segment_above(place), curve.segment_of(liquid_j + 1.0));
        assert_eq!(curve.segment_below(curve.segment_above(place)), place);
    }

    /// So far below that its own heat no longer reaches the melting point: L/cp = 123 K for 340 kJ/kg
    /// and 2760 J/kgK, less what the solid lacks.
    #[test]
    fn a_deep_supercooling_does_not_warm_up_to_the_melting_point() {
        let curve = EnthalpyCurve::new(&[(1.0, melt(117.0, 119.0))])
            .unwrap()
            .with_supercooling(0, -30.0)
            .unwrap();
        let cold_j = curve.supercooled_enthalpy_j(-30.0).unwrap();
        assert!(curve.temperature_c(cold_j) < 117.0);
    }

    #[test]
    fn what_cannot_supercool_is_refused() {
        let solid = MediumCurve::solid(900.0, 0.4);
        let store = EnthalpyCurve::new(&[(5.0, melt(117.0, 119.0)), (1.0, solid)]).unwrap();
        assert!(store.clone().with_supercooling(1, 50.0).is_err());
        assert!(store.clone().with_supercooling(2, 50.0).is_err());
        assert!(store.clone().with_supercooling(0, 118.0).is_err());
        assert!(store.clone().with_supercooling(0, f64::NAN).is_err());
        assert!(store.with_supercooling(0, 60.0).is_ok());
        let two =
            EnthalpyCurve::new(&[(5.0, melt(117.0, 119.0)), (5.0, melt(90.0, 90.0))]).unwrap();
        assert!(two.clone().with_supercooling(0, 60.0).is_err());
        assert!(two.with_supercooling(0, 95.0).is_ok());
    }
}
