//! Functions of the standard library as far as the solver needs them, which it calls many million times.

/// The greater of two numbers; the second where the first is none. The standard library's is a call in
/// the browser, and minds more.
#[inline(always)]
pub(super) fn greater(a: f64, b: f64) -> f64 {
    if b < a { a } else { b }
}

/// The lesser, likewise.
#[inline(always)]
pub(super) fn lesser(a: f64, b: f64) -> f64 {
    if a < b { a } else { b }
}

/// A cube root, good to 1 in 5000, which is enough for the length of a step. `libm`'s is exact, and in
/// the browser, which has no multiplication and addition in one, a fifth of a cook's waiting.
pub(super) fn cube_root(x: f64) -> f64 {
    // A third of the exponent and of the digits behind it, by the place of each in the number.
    const OFFSET: u64 = 715_094_163;
    let guess = f64::from_bits(((x.to_bits() >> 32) / 3 + OFFSET) << 32);
    // One step of Halley's.
    let cube = guess * guess * guess;
    guess * (cube + 2.0 * x) / (2.0 * cube + x)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cube_roots_are_good_enough_for_a_step() {
        for power in -60..60 {
            for part in 0..50 {
                let x = libm::exp2(f64::from(power)) * (1.0 + f64::from(part) / 50.0);
                let off = (cube_root(x) / libm::cbrt(x) - 1.0).abs();
                assert!(off < 2e-4, "{x}: {off}");
            }
        }
    }

    #[test]
    fn what_is_no_number_is_neither_greater_nor_lesser() {
        for (a, b, most, least) in [
            (1.0, 2.0, 2.0, 1.0),
            (2.0, 1.0, 2.0, 1.0),
            (f64::NAN, 3.0, 3.0, 3.0),
        ] {
            assert!(
                greater(a, b).total_cmp(&most).is_eq() && lesser(a, b).total_cmp(&least).is_eq()
            );
        }
    }
}
