//! Killing of germs in the middle of a dish, as minutes at 70 degC.

use crate::provenance::{Datum, Source};

/// Kelvin for a factor of ten in the time, fitted to the times of the United Kingdom's Food
/// Standards Agency from 60 to 80 degC.
pub const Z_K: Datum = Datum::new(7.5, 0.4, Source::UkFood);
/// Minutes at 70 degC, or the equal, that a dish must have had in its middle.
pub const NEEDED_MIN: Datum = Datum::new(2.0, 0.0, Source::UkFood);
/// Nothing below this counts, degC: some germs still grow.
pub const LEAST_C: Datum = Datum::new(57.0, 0.0, Source::FoodCode);

/// Minutes at 70 degC to which a minute at the given temperature (degC) is equal.
#[must_use]
pub fn minutes_at_70_c_per_minute(temperature_c: f64) -> f64 {
    if temperature_c < LEAST_C.value {
        return 0.0;
    }
    libm::pow(10.0_f64, (temperature_c - 70.0) / Z_K.value)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn minutes_needed(temperature_c: f64) -> f64 {
        NEEDED_MIN.value / minutes_at_70_c_per_minute(temperature_c)
    }

    /// UK Food Standards Agency: 60 degC 45 min, 65 degC 10 min, 70 degC 2 min, 75 degC 30 s,
    /// 80 degC 6 s. One z fits them within 15 %, the rounding of the last two.
    #[test]
    fn published_times() {
        let cases = [
            (60.0, 45.0),
            (65.0, 10.0),
            (70.0, 2.0),
            (75.0, 0.5),
            (80.0, 0.1),
        ];
        for (temperature_c, expect) in cases {
            let minutes = minutes_needed(temperature_c);
            assert!(
                (minutes / expect - 1.0).abs() < 0.15,
                "{temperature_c}: {minutes}"
            );
        }
    }

    /// The same by hand.
    #[test]
    fn times_of_the_fit() {
        for (temperature_c, expect) in [(60.0, 43.1), (65.0, 9.28), (75.0, 0.431), (80.0, 0.0928)] {
            assert!((minutes_needed(temperature_c) / expect - 1.0).abs() < 0.002);
        }
    }

    #[test]
    fn lukewarm_never_kills() {
        assert!(minutes_at_70_c_per_minute(56.9) < f64::MIN_POSITIVE);
    }
}
