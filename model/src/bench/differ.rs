//! Whether two measurements of one figure differ by more than their spreads allow together.

use super::Measured;

/// Of figures that are all the same, so many in a hundred comparisons of a cooker may name one.
const FALSE_SHARE: f64 = 0.05;

/// Whether these differ, where `n_compared` figures are compared in all. `by_logarithm`: a figure that
/// cannot be negative is compared by its ratio.
///
/// The difference is held against the root of the sum of the squares of both standard deviations
/// (JCGM 100:2008, 5.1.2, of a difference), as a normal deviate on two sides, at 5 % shared among all
/// comparisons (Bonferroni's inequality). Both spreads have the network's own error in them, which is in
/// part the same in both runs: rather too few are named than too many.
pub fn differ(one: Measured, other: Measured, by_logarithm: bool, n_compared: usize) -> bool {
    let (difference, sd) = if by_logarithm {
        let share = |of: Measured| of.sd / of.value;
        (
            libm::log(one.value / other.value),
            libm::hypot(share(one), share(other)),
        )
    } else {
        (one.value - other.value, libm::hypot(one.sd, other.sd))
    };
    if !difference.is_finite() || !sd.is_finite() || sd <= 0.0 {
        return false;
    }
    let deviate = difference.abs() / sd;
    #[expect(clippy::cast_precision_loss, reason = "some hundred at most")]
    let share = FALSE_SHARE / n_compared.max(1) as f64;
    libm::erfc(deviate / core::f64::consts::SQRT_2) < share
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn figure(value: f64, sd: f64) -> Measured {
        Measured { value, sd }
    }

    /// Two-sided critical values of the standard normal: 1.960 at 5 %, 2.576 at 1 % (NIST/SEMATECH
    /// e-Handbook of Statistical Methods, 1.3.6.7.1). A difference with spreads of 3 and 4 has one of 5.
    #[test]
    fn the_difference_is_held_against_both_spreads_and_the_number_of_figures() {
        let differs = |deviate: f64, n_compared| {
            let other = figure(60.0 + 5.0 * deviate, 4.0);
            differ(figure(60.0, 3.0), other, false, n_compared)
        };
        assert!(!differs(1.95, 1) && differs(1.97, 1));
        assert!(!differs(-1.95, 1) && differs(-1.97, 1));
        // One in a hundred each where five are compared.
        assert!(!differs(2.57, 5) && differs(2.58, 5));
    }

    #[test]
    fn ratios_are_compared_by_their_logarithm() {
        // ln 2 = 0.693 over sqrt(2) x 0.25 = 0.354 is 1.960...: just above and just below.
        let of = |share: f64| {
            let (one, other) = (figure(1.0, share), figure(2.0, 2.0 * share));
            assert_eq!(differ(one, other, true, 1), differ(other, one, true, 1));
            differ(one, other, true, 1)
        };
        assert!(of(0.249) && !of(0.251));
    }

    #[test]
    fn what_has_no_spread_or_no_value_names_nobody() {
        assert!(!differ(figure(1.0, 0.0), figure(2.0, 0.0), true, 1));
        assert!(!differ(figure(0.0, 0.1), figure(2.0, 0.1), true, 1));
    }

    /// Of two thousand cookers with six figures each that are measured twice, one in twenty at most is
    /// told that some figure differs, within four standard deviations of the count.
    #[test]
    fn few_of_those_that_are_the_same_are_named() {
        let mut state = 20_261_201_u64;
        let mut uniform = || {
            state = state
                .wrapping_mul(6_364_136_223_846_793_005)
                .wrapping_add(1);
            #[expect(clippy::cast_precision_loss, reason = "a share of 2^53")]
            let share = (state >> 11) as f64 / 9_007_199_254_740_992.0;
            share.max(1e-12)
        };
        let mut normal = || {
            let (radius, turn) = (uniform(), uniform());
            (-2.0 * libm::log(radius)).sqrt() * libm::cos(core::f64::consts::TAU * turn)
        };
        let named = (0..2000)
            .filter(|_| {
                let mut any = false;
                for _ in 0..6 {
                    let mut read = |sd: f64| Measured {
                        value: libm::exp(sd * normal()),
                        sd,
                    };
                    // The spread goes with the value, as a share of it.
                    let (mut one, mut other) = (read(0.02), read(0.05));
                    one.sd *= one.value;
                    other.sd *= other.value;
                    any |= differ(one, other, true, 6);
                }
                any
            })
            .count();
        assert!((61..=139).contains(&named), "{named}");
    }
}
