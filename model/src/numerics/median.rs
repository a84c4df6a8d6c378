//! The middle of a row of values.

/// The middle value, the upper one of two; not a number for none. Puts the values in order.
///
/// By sorting: the standard library that is built for a small download selects in a time that
/// grows with the square of the length where many values are equal, as a logger's steps are.
pub(crate) fn median(values: &mut [f64]) -> f64 {
    values.sort_unstable_by(f64::total_cmp);
    values.get(values.len() / 2).copied().unwrap_or(f64::NAN)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_lies_on_either_side() {
        assert_eq!(median(&mut [3.0, 1.0, 2.0]).to_bits(), 2.0_f64.to_bits());
        assert_eq!(
            median(&mut [4.0, 1.0, 1.0, 3.0]).to_bits(),
            3.0_f64.to_bits()
        );
        assert!(median(&mut []).is_nan());
    }
}
