//! The rate of cooking against temperature.

/// Gas constant, J/molK (CODATA 2018).
const GAS_CONSTANT_J_MOLK: f64 = 8.314_462_618;
/// 100 degC in kelvin.
const BOILING_K: f64 = 373.15;

/// How fast a dish cooks: done once the rate, summed over time, comes to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CookRate {
    /// Ten times slower per `z_k` below 100 degC.
    Z {
        /// Time at 100 degC, s.
        t_ref_s: f64,
        /// Kelvin for a factor of ten.
        z_k: f64,
        /// No cooking below this, degC.
        t_min_c: f64,
    },
    /// By an activation energy.
    Arrhenius {
        /// Time at 100 degC, s.
        t_ref_s: f64,
        /// Activation energy, J/mol.
        ea_j_mol: f64,
        /// No cooking below this, degC.
        t_min_c: f64,
    },
}

impl CookRate {
    /// Share of the cooking that is done in a second at a temperature in degC, 1/s.
    #[must_use]
    pub fn per_s(self, temperature_c: f64) -> f64 {
        let (Self::Z {
            t_ref_s, t_min_c, ..
        }
        | Self::Arrhenius {
            t_ref_s, t_min_c, ..
        }) = self;
        if temperature_c < t_min_c {
            return 0.0;
        }
        self.speed(temperature_c) / t_ref_s
    }

    /// How many times faster than at 100 degC, whatever the least temperature.
    fn speed(self, temperature_c: f64) -> f64 {
        match self {
            Self::Z { z_k, .. } => 10.0_f64.powf((temperature_c - 100.0) / z_k),
            Self::Arrhenius { ea_j_mol, .. } => {
                let inverse_k = 1.0 / BOILING_K - 1.0 / (temperature_c + 273.15);
                (ea_j_mol / GAS_CONSTANT_J_MOLK * inverse_k).exp()
            }
        }
    }

    /// Time that the dish takes at one temperature, s; `None` where it never cooks. Altitude comes
    /// in here: give the local boiling point.
    #[must_use]
    pub fn time_at_s(self, temperature_c: f64) -> Option<f64> {
        let rate = self.per_s(temperature_c);
        (0.0 < rate).then(|| 1.0 / rate)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn z(z_k: f64) -> CookRate {
        CookRate::Z {
            t_ref_s: 3600.0,
            z_k,
            t_min_c: 70.0,
        }
    }

    const fn arrhenius(ea_j_mol: f64) -> CookRate {
        CookRate::Arrhenius {
            t_ref_s: 1200.0,
            ea_j_mol,
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
            let factor = 1.0 / rate.speed(temperature_c);
            assert!(
                (factor - expect).abs() <= tolerance,
                "{rate:?} {temperature_c}: {factor}"
            );
        }
    }

    /// A textbook's doubling from 300 to 310 K is an activation energy of 53.6 kJ/mol.
    #[test]
    fn doubling_per_ten_kelvin() {
        let ratio = arrhenius(53.60e3).speed(36.85) / arrhenius(53.60e3).speed(26.85);
        assert!((ratio - 2.0).abs() < 0.002, "{ratio}");
    }

    #[test]
    fn nothing_cooks_below_the_least_temperature() {
        assert_eq!(z(19.0).time_at_s(69.9), None);
        assert!(z(19.0).time_at_s(70.0).is_some());
        assert!((z(19.0).per_s(100.0) * 3600.0 - 1.0).abs() < 1e-12);
    }
}
