//! How fast a dish cooks at a temperature.

use crate::error::{ModelError, finite, not_negative, positive};

/// Temperature at which cooking times are stated, degC.
const T_REF_C: f64 = 100.0;
/// Molar gas constant, J/(mol K): CODATA 2018, exact by the SI's definition.
const GAS_CONSTANT_J_MOLK: f64 = 8.314_462_618;
const KELVIN: f64 = 273.15;

/// Doneness gained per second at a temperature; the dish is done at 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CookRate {
    /// `10^((T - 100 degC) / z) / t_ref`: the thermal-death-time form of food engineering (Bigelow).
    ZValue {
        /// Time to cook at 100 degC, s.
        t_ref_s: f64,
        /// Temperature rise that cooks ten times as fast, K.
        z_k: f64,
        /// Below this temperature nothing cooks, degC.
        t_min_c: f64,
    },
    /// `exp(-E/R (1/T - 1/373.15 K)) / t_ref`: Arrhenius.
    Arrhenius {
        /// Time to cook at 100 degC, s.
        t_ref_s: f64,
        /// Activation energy, J/mol.
        activation_j_mol: f64,
        /// Below this temperature nothing cooks, degC.
        t_min_c: f64,
    },
}

impl CookRate {
    /// Below this temperature nothing cooks, degC.
    pub fn t_min_c(&self) -> f64 {
        match *self {
            Self::ZValue { t_min_c, .. } | Self::Arrhenius { t_min_c, .. } => t_min_c,
        }
    }

    /// Rate at a temperature, 1/s; 0 below the least temperature.
    pub fn rate_per_s(&self, t_c: f64) -> f64 {
        if t_c < self.t_min_c() {
            0.0
        } else {
            self.rate_and_slope(t_c).0
        }
    }

    /// Rate, 1/s, and its slope, 1/(s K), as if the least temperature were not there.
    pub(crate) fn rate_and_slope(&self, t_c: f64) -> (f64, f64) {
        match *self {
            Self::ZValue { t_ref_s, z_k, .. } => {
                let per_k = std::f64::consts::LN_10 / z_k;
                let rate = libm::exp((t_c - T_REF_C) * per_k) / t_ref_s;
                (rate, rate * per_k)
            }
            Self::Arrhenius {
                t_ref_s,
                activation_j_mol,
                ..
            } => {
                let over_r_k = activation_j_mol / GAS_CONSTANT_J_MOLK;
                let t_k = t_c + KELVIN;
                let rate = libm::exp(over_r_k * (1.0 / (T_REF_C + KELVIN) - 1.0 / t_k)) / t_ref_s;
                (rate, rate * over_r_k / (t_k * t_k))
            }
        }
    }

    /// Time that a dish takes at one temperature, s; `None` where it never cooks. Altitude comes in
    /// here: give the local boiling point.
    #[must_use]
    pub fn time_at_s(&self, t_c: f64) -> Option<f64> {
        let rate = self.rate_per_s(t_c);
        (0.0 < rate).then(|| 1.0 / rate)
    }

    /// The same dish with its time multiplied.
    #[must_use]
    pub(crate) fn slower(mut self, factor: f64) -> Self {
        let (Self::ZValue { t_ref_s, .. } | Self::Arrhenius { t_ref_s, .. }) = &mut self;
        *t_ref_s *= factor;
        self
    }

    pub(crate) fn check(&self) -> Result<(), ModelError> {
        finite("t_min_c", self.t_min_c())?;
        match *self {
            Self::ZValue { t_ref_s, z_k, .. } => {
                positive("t_ref_s", t_ref_s)?;
                positive("z_k", z_k)?;
            }
            Self::Arrhenius {
                t_ref_s,
                activation_j_mol,
                ..
            } => {
                positive("t_ref_s", t_ref_s)?;
                not_negative("activation_j_mol", activation_j_mol)?;
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn z(z_k: f64) -> CookRate {
        CookRate::ZValue {
            t_ref_s: 3600.0,
            z_k,
            t_min_c: 70.0,
        }
    }

    const fn arrhenius(activation_j_mol: f64) -> CookRate {
        CookRate::Arrhenius {
            t_ref_s: 1200.0,
            activation_j_mol,
            t_min_c: 70.0,
        }
    }

    /// Time factors against 100 degC, computed apart from the published z values (Quast and da
    /// Silva 16 and 19; Van Loey et al. 21.3) and activation energies (71 and 63 kJ/mol).
    #[test]
    fn time_factors() {
        let cases = [
            (z(16.0), 95.0, 2.05, 0.05),
            (z(16.0), 85.0, 8.7, 0.05),
            (z(19.0), 90.0, 3.4, 0.05),
            (z(21.3), 80.0, 8.7, 0.05),
            (arrhenius(71e3), 95.0, 1.37, 0.01),
            (arrhenius(71e3), 90.0, 1.88, 0.01),
            (arrhenius(71e3), 80.0, 3.7, 0.05),
            (arrhenius(63e3), 90.0, 1.75, 0.01),
        ];
        for (rate, temperature_c, expect, tolerance) in cases {
            let factor = rate.time_at_s(temperature_c).unwrap() / rate.time_at_s(100.0).unwrap();
            assert!(
                (factor - expect).abs() <= tolerance,
                "{rate:?} {temperature_c}: {factor}"
            );
        }
    }

    #[test]
    fn nothing_cooks_below_the_least_temperature() {
        assert_eq!(z(19.0).time_at_s(69.9), None);
        assert!(z(19.0).time_at_s(70.0).is_some());
    }

    #[test]
    fn ten_times_as_fast_a_z_value_higher() {
        let rate = CookRate::ZValue {
            t_ref_s: 3600.0,
            z_k: 20.0,
            t_min_c: 75.0,
        };
        assert!((rate.rate_per_s(100.0) * 3600.0 - 1.0).abs() < 1e-12);
        assert!((rate.rate_per_s(80.0) * 36_000.0 - 1.0).abs() < 1e-12);
        assert!(rate.rate_per_s(74.9).abs() < 1e-300);
    }

    #[test]
    fn arrhenius_doubles_as_the_textbook_says() {
        // 53.6 kJ/mol doubles a rate from 300 to 310 K (the chemists' rule of thumb, worked by hand).
        let rate = CookRate::Arrhenius {
            t_ref_s: 1.0,
            activation_j_mol: 53_600.0,
            t_min_c: 0.0,
        };
        let ratio = rate.rate_per_s(36.85) / rate.rate_per_s(26.85);
        assert!((ratio - 2.0).abs() < 2e-3, "{ratio}");
        let (_, slope) = rate.rate_and_slope(90.0);
        let measured = (rate.rate_per_s(90.01) - rate.rate_per_s(89.99)) / 0.02;
        assert!((slope - measured).abs() < 1e-6 * slope);
    }
}
