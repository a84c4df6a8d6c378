//! The air in a dry seat as the temperatures of its faces have it.
//!
//! From 100 to 300 degC air conducts by nearly half better, and what the faces radiate grows with the
//! cube of their temperature. A network asks this some thousand times for a pot, on every platform
//! with the same digits, so it is polynomials here; [`super::gap_w_m2k`] and [`super::well_w_k`] are the
//! formulas they stand for.

use std::f64::consts::PI;

use super::{
    BASE_EMISSIVITY, DARK_EMISSIVITY, JUMP_M, Joint, SLEEVE_BASE_GAP_M, SLEEVE_SIDE_GAP_M,
    STORE_EMISSIVITY, Seat,
};
use crate::air::{self, Steadiness};

/// What a gap lets through, and how that grows with the temperature of either face.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Through {
    /// Conductance, W/K.
    pub w_k: f64,
    /// Its growth with the hot face, W/K per kelvin.
    pub by_hot: f64,
    /// And with the cold one.
    pub by_cold: f64,
}

/// Air between a store and a pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// Areas over widths, m: times the conductivity of air, what air that stands still lets through.
    pub still_m: f64,
    /// Times the cubes of temperatures in kelvin, what the faces radiate, W/K4.
    pub radiant_w_k4: f64,
    /// How readily the air turns over; `None` in a gap too narrow for that.
    pub steadiness: Option<Steadiness>,
}

impl Gap {
    /// The air of a seat under a pot that is let in so deep; `None` for a film. Measures are m.
    #[must_use]
    pub fn of(seat: Seat, diameter_m: f64, depth_m: f64) -> Option<Self> {
        let base_m2 = 0.25 * PI * diameter_m * diameter_m;
        let whole_m2 = seat.area_m2(diameter_m, depth_m);
        let worn = air::radiant_w_m2k4(STORE_EMISSIVITY, BASE_EMISSIVITY);
        let narrow = |still_m: f64| Self {
            still_m,
            radiant_w_k4: whole_m2 * worn,
            steadiness: None,
        };
        match seat.joint() {
            Joint::Film { .. } => None,
            Joint::Gap { .. } if seat == Seat::Sleeve => Some(narrow(
                base_m2 / (SLEEVE_BASE_GAP_M.value + JUMP_M)
                    + (whole_m2 - base_m2) / (SLEEVE_SIDE_GAP_M.value + JUMP_M),
            )),
            Joint::Gap { mean_gap_m } => Some(narrow(whole_m2 / (mean_gap_m.value + JUMP_M))),
            Joint::Open { gap_m } => Some(Self {
                still_m: whole_m2 / gap_m.value,
                radiant_w_k4: whole_m2
                    * air::radiant_w_m2k4(DARK_EMISSIVITY.value, DARK_EMISSIVITY.value),
                steadiness: Some(Steadiness::of(gap_m.value)),
            }),
        }
    }

    /// What it lets through between faces of these temperatures, degC.
    #[inline(always)]
    #[must_use]
    pub fn through(&self, hot_c: f64, cold_c: f64) -> Through {
        let mean_c = 0.5 * (hot_c + cold_c);
        let (k_w_mk, by_k) = air::conductivity_and_slope(mean_c);
        let (mut w_k, mut by_mean, mut by_rise) = (self.still_m * k_w_mk, self.still_m * by_k, 0.0);
        if let Some(steadiness) = &self.steadiness {
            let turned = steadiness.nusselt(mean_c, hot_c - cold_c);
            by_mean = by_mean * turned.nusselt + w_k * turned.by_mean;
            by_rise = w_k * turned.by_rise;
            w_k *= turned.nusselt;
        }
        let (hot_k, cold_k) = (air::kelvin(hot_c), air::kelvin(cold_c));
        let both = 2.0 * hot_k * cold_k;
        let squares = hot_k * hot_k + cold_k * cold_k;
        let slope = |own_k: f64| self.radiant_w_k4 * (squares + both + 2.0 * own_k * own_k);
        Through {
            w_k: w_k + self.radiant_w_k4 * squares * (hot_k + cold_k),
            by_hot: 0.5 * by_mean + by_rise + slope(hot_k),
            by_cold: 0.5 * by_mean - by_rise + slope(cold_k),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::seat::well_w_k;

    /// Conductivity of dry air at one atmosphere by CoolProp 8.0.0 at the mean of the faces; radiation
    /// worked by hand with Stefan's constant of 5.6704e-8 W/m2K4: between grey plates of 0.3 and 0.2 at
    /// 473.15 and 373.15 K it is 5.6704e-8 (473.15^4 - 373.15^4) / (1/0.3 + 1/0.2 - 1) / 100 K = 2.376;
    /// between plates of 0.9 at 523.15 and 373.15 K 16.98 W/m2K.
    #[test]
    fn by_hand_from_published_figures() {
        let per_m2 = |seat: Seat, hot_c, cold_c| {
            let gap = Gap::of(seat, 0.2, 0.0).unwrap();
            gap.through(hot_c, cold_c).w_k / seat.area_m2(0.2, 0.0)
        };
        let ordinary = per_m2(Seat::DryOrdinary, 200.0, 100.0);
        let expect = 0.0350 / 0.18e-3 + 2.376;
        assert!((ordinary / expect - 1.0).abs() < 0.015, "{ordinary}");
        // At 175 degC 0.0366 W/mK; the layer of 8 mm stands still there (Rayleigh number of 1200).
        let dark = per_m2(Seat::RadiantGap, 250.0, 100.0);
        let expect = 0.0366 / 8e-3 + 16.98;
        assert!((dark / expect - 1.0).abs() < 0.015, "{dark}");
        // From a mean of 100 to one of 300 degC: 0.0444 / 0.0316 of it, the radiation aside.
        let rise = per_m2(Seat::DryFlat, 350.0, 250.0) / per_m2(Seat::DryFlat, 150.0, 50.0);
        assert!((rise / (0.0444 / 0.0316) - 1.0).abs() < 0.02, "{rise}");
    }

    proptest! {
        /// The formulas they stand for, within 0.2 %.
        #[test]
        fn polynomials_stand_for_the_formulas(
            idx in 0..Seat::ALL.len(),
            cold_c in -10.0..150.0_f64,
            rise_k in 0.0..300.0_f64,
        ) {
            let seat = Seat::ALL[idx];
            let hot_c = cold_c + rise_k;
            let Some(gap) = Gap::of(seat, 0.2, 0.1) else { return Ok(()) };
            let area_m2 = seat.area_m2(0.2, 0.1);
            let expect = match seat {
                Seat::Sleeve => {
                    let gaps_m = (SLEEVE_BASE_GAP_M.value, SLEEVE_SIDE_GAP_M.value);
                    well_w_k((0.2, 0.1), gaps_m, (hot_c, cold_c))
                }
                _ => area_m2 * seat.contact_w_m2k(hot_c, cold_c),
            };
            let actual = gap.through(hot_c, cold_c).w_k;
            prop_assert!((actual / expect - 1.0).abs() < 2e-3, "{} {}", actual, expect);
        }

        /// The slopes are those of the values, but where the air begins to move.
        #[test]
        fn slopes_are_slopes(
            idx in 0..Seat::ALL.len(),
            cold_c in 0.0..150.0_f64,
            rise_k in 1.0..300.0_f64,
        ) {
            let Some(gap) = Gap::of(Seat::ALL[idx], 0.2, 0.1) else { return Ok(()) };
            let hot_c = cold_c + rise_k;
            let at = |hot_c, cold_c| gap.through(hot_c, cold_c).w_k;
            let told = gap.through(hot_c, cold_c);
            let moves = |hot_c: f64, cold_c: f64| gap.steadiness.is_some_and(|steadiness| {
                1.0 < steadiness.nusselt(0.5 * (hot_c + cold_c), hot_c - cold_c).nusselt
            });
            let h = 1e-3;
            prop_assume!(moves(hot_c + h, cold_c - h) == moves(hot_c - h, cold_c + h));
            let by_hot = (at(hot_c + h, cold_c) - at(hot_c - h, cold_c)) / (2.0 * h);
            let by_cold = (at(hot_c, cold_c + h) - at(hot_c, cold_c - h)) / (2.0 * h);
            prop_assert!((told.by_hot - by_hot).abs() < 1e-6 * told.w_k, "{} {}", told.by_hot, by_hot);
            prop_assert!((told.by_cold - by_cold).abs() < 1e-6 * told.w_k, "{} {}", told.by_cold, by_cold);
        }
    }
}
