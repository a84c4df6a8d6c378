//! A sugar alcohol ages while it is molten: its melting point and its latent heat fall.
//!
//! Three steps. Molecules are converted by a first-order reaction whose rate follows Arrhenius
//! ([`Ageing::rate_per_h`]); the share converted lowers the melting point as a solute does in an
//! ideal solution ([`liquidus_c`]); only what is left freezes, so the latent heat falls in
//! proportion ([`aged`]).
//!
//! That it is of first order, browns in air and is slowed by an antioxidant: Alferez Luna et al.,
//! Appl. Sci. 11 (2021) 5448. No rate could be read from a publication: the rate is set so that the
//! trade's rule comes out (common practice, no source): after three or four months of daily use the
//! store melts below water's boiling point. The band is a factor of 2.8 in rate at one temperature,
//! and the activation energy is assumed.

use crate::enthalpy::Melt;
use crate::error::{ModelError, not_negative, within};
use crate::media::Medium;
use crate::provenance::{Datum, Source};

/// Gas constant, J/molK (CODATA 2018).
const GAS_J_MOLK: f64 = 8.314_462_618;
/// 0 degC in kelvin.
const ZERO_C_K: f64 = 273.15;

/// Share converted per hour molten at [`REFERENCE_C`]: three to four months of 4 to 8 h a day turn
/// the 46 % that bring the melting point to 100 degC, which is 6e-4 to 1.7e-3.
pub const RATE_PER_H: Datum = Datum::new(1.0e-3, 0.5e-3, Source::CommonPractice);
/// Temperature of the store in that daily use, degC: one without a cap, whose heater's face is some
/// 30 K hotter.
pub const REFERENCE_C: Datum = Datum::new(150.0, 10.0, Source::Inferred);
/// Activation energy, J/mol: 100 to 120 kJ/mol assumed; 120.6 for the decomposition of mannitol in
/// nitrogen.
pub const ACTIVATION_J_MOL: Datum = Datum::new(110e3, 10e3, Source::Tong);
/// Heat of fusion of erythritol, J/mol: 340 kJ/kg of 122.12 g/mol.
const ERYTHRITOL_J_MOL: f64 = 41.5e3;
/// The same of mannitol: 300 kJ/kg of 182.17 g/mol.
const MANNITOL_J_MOL: f64 = 54.7e3;

/// How fast a medium ages.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ageing {
    /// Share converted per hour molten at the reference temperature, 1/h.
    pub rate_per_h: f64,
    /// That temperature, degC.
    pub reference_c: f64,
    /// Activation energy, J/mol.
    pub activation_j_mol: f64,
    /// Heat of fusion of the fresh medium, J/mol.
    pub fusion_j_mol: f64,
}

/// Some hours at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spell {
    /// Hours with the medium molten, h.
    pub molten_h: f64,
    /// Mean temperature of the melt, degC.
    pub melt_c: f64,
}

impl Ageing {
    /// Of a medium of the table; `None` for one that does not age by this.
    #[must_use]
    pub fn of(medium: Medium) -> Option<Self> {
        let fusion_j_mol = match medium {
            Medium::Erythritol => ERYTHRITOL_J_MOL,
            Medium::Mannitol => MANNITOL_J_MOL,
            _ => return None,
        };
        Some(Self {
            rate_per_h: RATE_PER_H.value,
            reference_c: REFERENCE_C.value,
            activation_j_mol: ACTIVATION_J_MOL.value,
            fusion_j_mol,
        })
    }

    /// The same with its rate multiplied: a member of an ensemble. One standard deviation is a factor
    /// of `exp(`[`RATE_LOG_SPREAD`]`)` either way.
    #[must_use]
    pub fn scaled(self, rate: f64) -> Self {
        Self {
            rate_per_h: self.rate_per_h * rate,
            ..self
        }
    }

    /// Share of what is left that is converted in an hour at a temperature, 1/h.
    #[must_use]
    pub fn rate_per_h(&self, melt_c: f64) -> f64 {
        let inverse_k = 1.0 / (self.reference_c + ZERO_C_K) - 1.0 / (melt_c + ZERO_C_K);
        self.rate_per_h * libm::exp(self.activation_j_mol / GAS_J_MOLK * inverse_k)
    }

    /// Temperature at which so much of what is left is converted in an hour, degC: the other way
    /// round. As cold as can be for none.
    #[must_use]
    pub fn temperature_c(&self, rate_per_h: f64) -> f64 {
        let log_ratio = libm::log(rate_per_h.max(1e-30) / self.rate_per_h);
        let inverse =
            1.0 / (self.reference_c + ZERO_C_K) - GAS_J_MOLK / self.activation_j_mol * log_ratio;
        (1.0 / inverse - ZERO_C_K).max(0.0)
    }

    /// Share converted, 0 for fresh to 1, after a history on top of what was converted before.
    ///
    /// # Errors
    ///
    /// A spell of negative or endless hours, a temperature outside 0 to 400 degC, a share outside 0
    /// to 1.
    pub fn converted(&self, before: f64, history: &[Spell]) -> Result<f64, ModelError> {
        let mut left = 1.0 - within("converted", before, 0.0, 1.0)?;
        for spell in history {
            let hours = not_negative("molten_h", spell.molten_h)?;
            let melt_c = within("melt_c", spell.melt_c, 0.0, 400.0)?;
            left *= libm::exp(-self.rate_per_h(melt_c) * hours);
        }
        Ok(1.0 - left)
    }

    /// Days of equal use until so much is converted; `None` where it never is, or was before.
    ///
    /// # Errors
    ///
    /// As [`Ageing::converted`].
    pub fn days_until(
        &self,
        converted: f64,
        before: f64,
        daily: &[Spell],
    ) -> Result<Option<f64>, ModelError> {
        within("converted", converted, 0.0, 1.0)?;
        let left_a_day = 1.0 - self.converted(0.0, daily)?;
        let left_now = 1.0 - within("before", before, 0.0, 1.0)?;
        let days = libm::log((1.0 - converted) / left_now) / libm::log(left_a_day);
        Ok((days.is_finite() && 0.0 < days).then_some(days))
    }

    /// The melting of what is this much converted.
    ///
    /// The melting range is as wide as before and moves down with the liquidus.
    #[must_use]
    pub fn aged(&self, fresh: Melt, converted: f64) -> Melt {
        let fall_k = fresh.t_liquidus_c - self.liquidus_c(fresh.t_liquidus_c, converted);
        Melt {
            t_solidus_c: fresh.t_solidus_c - fall_k,
            t_liquidus_c: fresh.t_liquidus_c - fall_k,
            latent_j_kg: fresh.latent_j_kg * left(converted),
            ..fresh
        }
    }

    /// Temperature at which the last solid melts, degC: `ln x = -(dH/R)(1/T - 1/Tm)`, with x the
    /// share that is left. Ideal solution; Atkins, Physical Chemistry, freezing point of a solution.
    #[must_use]
    pub fn liquidus_c(&self, fresh_c: f64, converted: f64) -> f64 {
        let inverse = 1.0 / (fresh_c + ZERO_C_K)
            - GAS_J_MOLK / self.fusion_j_mol * libm::log(left(converted));
        1.0 / inverse - ZERO_C_K
    }

    /// Share converted at which the liquidus is at a temperature.
    #[must_use]
    pub fn converted_at_liquidus(&self, fresh_c: f64, liquidus_c: f64) -> f64 {
        let gap = 1.0 / (liquidus_c + ZERO_C_K) - 1.0 / (fresh_c + ZERO_C_K);
        (1.0 - libm::exp(-self.fusion_j_mol / GAS_J_MOLK * gap)).clamp(0.0, 1.0)
    }

    /// Days of equal use until a pot no longer boils; `None` for never within thirty years, 0 for a
    /// pot that does not boil today.
    ///
    /// # Arguments
    ///
    /// * `fresh`: the medium's melting when new.
    /// * `before`: share converted by today.
    /// * `daily`: what one day's use does to it.
    /// * `boils`: whether tonight's pot boils on a store that melts like this. Once it does not, more
    ///   ageing must not make it boil.
    ///
    /// # Errors
    ///
    /// As [`Ageing::converted`]; whatever `boils` gives.
    pub fn days_until_it_no_longer_boils<E: From<ModelError>>(
        &self,
        fresh: Melt,
        before: f64,
        daily: &[Spell],
        mut boils: impl FnMut(&Melt) -> Result<bool, E>,
    ) -> Result<Option<f64>, E> {
        if !boils(&self.aged(fresh, before))? {
            return Ok(Some(0.0));
        }
        let left_a_day = 1.0 - self.converted(0.0, daily)?;
        let after = |days: f64| 1.0 - (1.0 - before) * libm::pow(left_a_day, days);
        let (mut low, mut high) = (0.0, LONGEST_DAYS);
        if boils(&self.aged(fresh, after(high)))? {
            return Ok(None);
        }
        while DATE_WITHIN_DAYS < high - low {
            let middle = 0.5 * (low + high);
            if boils(&self.aged(fresh, after(middle)))? {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(Some(0.5 * (low + high)))
    }
}

/// Natural logarithm of the factor by which the rate may be off, one standard deviation: half of a
/// band of 6e-4 to 1.7e-3 per hour.
pub const RATE_LOG_SPREAD: Datum = Datum::new(0.52, 0.1, Source::Inferred);

/// Beyond this no date is told, days.
const LONGEST_DAYS: f64 = 30.0 * 365.0;
/// Date is found within this, days.
const DATE_WITHIN_DAYS: f64 = 0.5;

/// What is left of 1, never quite nothing.
fn left(converted: f64) -> f64 {
    (1.0 - converted).clamp(1e-6, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn erythritol() -> Ageing {
        Ageing::of(Medium::Erythritol).unwrap()
    }

    fn melt() -> Melt {
        Medium::Erythritol.props().melt.unwrap().into()
    }

    /// Ideal liquidus of erythritol, computed apart from 118 degC: 110 degC with 77 % left, 100 with
    /// 54 %, 92 with 40 %.
    #[test]
    fn ideal_liquidus() {
        for (left, expect) in [(0.77, 110.0), (0.54, 100.0), (0.40, 92.0)] {
            let liquidus = erythritol().liquidus_c(118.0, 1.0 - left);
            assert!((liquidus - expect).abs() < 0.8, "{left}: {liquidus}");
            let back = erythritol().converted_at_liquidus(118.0, liquidus);
            assert!((back - (1.0 - left)).abs() < 1e-9);
        }
    }

    /// Benzoic acid, 122.4 degC and 18.0 kJ/mol, in a solute of 20 %: by the same formula with
    /// published figures (from memory), 107.4 degC.
    #[test]
    fn ideal_liquidus_of_another_substance() {
        let acid = Ageing {
            fusion_j_mol: 18.0e3,
            ..erythritol()
        };
        let by_hand = 1.0 / (1.0 / 395.55 - 8.314_462_618 / 18.0e3 * 0.8_f64.ln()) - 273.15;
        assert!((acid.liquidus_c(122.4, 0.2) - by_hand).abs() < 1e-9);
    }

    /// Common practice, no source: after three to four months of daily use, run hot, a sugar alcohol
    /// melts below water's boiling point. The band of the rate holds that.
    #[test]
    fn three_or_four_months_of_hot_daily_use() {
        let ageing = erythritol();
        let enough = ageing.converted_at_liquidus(melt().t_liquidus_c, 99.974);
        let daily = [Spell {
            molten_h: 6.0,
            melt_c: 150.0,
        }];
        let spread = RATE_LOG_SPREAD.value.exp();
        let days = |rate: f64| {
            let ageing = ageing.scaled(rate);
            ageing.days_until(enough, 0.0, &daily).unwrap().unwrap()
        };
        assert!((90.0..=125.0).contains(&days(1.0)), "{}", days(1.0));
        assert!(days(spread) < 90.0 && 125.0 < days(1.0 / spread));
    }

    /// Hotter is faster; a cap of 130 or 140 degC against 150 buys time (factors with the assumed
    /// activation energy, computed apart: 2.1 and 4.7).
    #[test]
    fn a_cap_buys_time() {
        let ageing = erythritol();
        let slower = |cap_c: f64| ageing.rate_per_h(150.0) / ageing.rate_per_h(cap_c);
        assert!((slower(140.0) - 2.13).abs() < 0.05, "{}", slower(140.0));
        assert!((slower(130.0) - 4.71).abs() < 0.15, "{}", slower(130.0));
        // 180 degC on the heater's face against 140: 13 to 22 times for 100 to 120 kJ/mol.
        assert!((13.0..22.0).contains(&(ageing.rate_per_h(180.0) / ageing.rate_per_h(140.0))));
    }

    #[test]
    fn history_adds_up_and_what_is_senseless_is_refused() {
        let ageing = erythritol();
        let day = Spell {
            molten_h: 6.0,
            melt_c: 140.0,
        };
        let at_once = ageing.converted(0.0, &[day, day]).unwrap();
        let first = ageing.converted(0.0, &[day]).unwrap();
        assert!((ageing.converted(first, &[day]).unwrap() - at_once).abs() < 1e-12);
        assert!(
            ageing
                .converted(
                    0.0,
                    &[Spell {
                        molten_h: -1.0,
                        ..day
                    }]
                )
                .is_err()
        );
        assert!(ageing.converted(2.0, &[]).is_err());
        assert_eq!(Ageing::of(Medium::SodiumNitrate), None);
        assert_eq!(ageing.days_until(0.5, 0.0, &[]).unwrap(), None);
    }

    /// The date for a rule of its own: the pot boils while the store melts 5 K above the boil.
    #[test]
    fn the_date_is_where_the_rule_turns() {
        let ageing = erythritol();
        let daily = [Spell {
            molten_h: 6.0,
            melt_c: 150.0,
        }];
        let boils = |melt: &Melt| Ok::<_, ModelError>(105.0 < melt.t_liquidus_c);
        let days = ageing
            .days_until_it_no_longer_boils(melt(), 0.0, &daily, boils)
            .unwrap()
            .unwrap();
        let enough = ageing.converted_at_liquidus(melt().t_liquidus_c, 105.0);
        let expect = ageing.days_until(enough, 0.0, &daily).unwrap().unwrap();
        assert!((days - expect).abs() < 1.0, "{days} {expect}");
        let never = ageing
            .days_until_it_no_longer_boils(melt(), 0.0, &[], boils)
            .unwrap();
        assert_eq!(never, None);
        let today = ageing
            .days_until_it_no_longer_boils(melt(), 0.9, &daily, boils)
            .unwrap();
        assert_eq!(today, Some(0.0));
    }

    proptest! {
        #[test]
        fn more_hours_and_more_heat_age_more(
            hours in 0.1..2000.0_f64, melt_c in 110.0..180.0_f64, hotter in 1.0..30.0_f64,
        ) {
            let ageing = erythritol();
            let spell = Spell { molten_h: hours, melt_c };
            let after = ageing.converted(0.0, &[spell]).unwrap();
            let longer = ageing.converted(0.0, &[Spell { molten_h: 1.1 * hours, ..spell }]).unwrap();
            let warmer = ageing.converted(0.0, &[Spell { melt_c: melt_c + hotter, ..spell }]).unwrap();
            prop_assert!((ageing.temperature_c(ageing.rate_per_h(melt_c)) - melt_c).abs() < 1e-6);
            prop_assert!((0.0..1.0).contains(&after) && after <= longer && after <= warmer);
            let melt_now = ageing.aged(melt(), after);
            let melt_then = ageing.aged(melt(), warmer);
            prop_assert!(melt_then.t_liquidus_c <= melt_now.t_liquidus_c);
            prop_assert!(melt_then.latent_j_kg <= melt_now.latent_j_kg);
            prop_assert!(0.0 < melt_then.latent_j_kg && melt_now.t_solidus_c < melt_now.t_liquidus_c);
        }
    }
}
