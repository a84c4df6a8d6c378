//! What many weighted members say together.

/// Quantiles of what may be: half of it lies from `p25` to `p75`, 80 % from `p10` to `p90`, 90 %
/// from `p05` to `p95`.
///
/// Of a time that may never come, [`f64::INFINITY`] or `None` stands where it does not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band<T> {
    /// 5 % lie below.
    pub p05: T,
    /// 10 % lie below.
    pub p10: T,
    /// A quarter lies below.
    pub p25: T,
    /// The middle.
    pub p50: T,
    /// A quarter lies above.
    pub p75: T,
    /// 10 % lie above.
    pub p90: T,
    /// 5 % lie above.
    pub p95: T,
}

impl<T> Band<T> {
    /// Each quantile changed.
    pub fn map<U>(self, change: impl Fn(T) -> U) -> Band<U> {
        Band {
            p05: change(self.p05),
            p10: change(self.p10),
            p25: change(self.p25),
            p50: change(self.p50),
            p75: change(self.p75),
            p90: change(self.p90),
            p95: change(self.p95),
        }
    }

    /// From the least to the greatest.
    pub fn quantiles(self) -> [T; 7] {
        [
            self.p05, self.p10, self.p25, self.p50, self.p75, self.p90, self.p95,
        ]
    }
}

impl Band<f64> {
    /// Quantiles of weighted values; weights are not negative, their sum is positive.
    ///
    /// Between neighbours the value goes straight, each standing at the middle of its weight.
    pub(super) fn of(values: impl Iterator<Item = (f64, f64)>) -> Self {
        let mut sorted: Vec<(f64, f64)> = values.filter(|(_, weight)| 0.0 < *weight).collect();
        sorted.sort_by(|a, b| a.0.total_cmp(&b.0));
        let whole: f64 = sorted.iter().map(|(_, weight)| weight).sum();
        let mut places = Vec::with_capacity(sorted.len());
        let mut below = 0.0;
        for (value, weight) in &sorted {
            places.push(((below + 0.5 * weight) / whole, *value));
            below += weight;
        }
        let at = |p: f64| {
            let after = places.partition_point(|(place, _)| *place < p);
            let high = places.get(after).or(places.last());
            let low = after
                .checked_sub(1)
                .and_then(|idx| places.get(idx))
                .or(high);
            match (low, high) {
                (Some(&(p_low, low)), Some(&(p_high, high))) => {
                    if high.is_finite() && p_low < p_high {
                        low + (high - low) * ((p - p_low) / (p_high - p_low)).clamp(0.0, 1.0)
                    } else if p < p_high && low.is_finite() {
                        // Half-way to what never comes.
                        if p - p_low < p_high - p { low } else { high }
                    } else {
                        high
                    }
                }
                _ => f64::NAN,
            }
        };
        Self {
            p05: at(0.05),
            p10: at(0.1),
            p25: at(0.25),
            p50: at(0.5),
            p75: at(0.75),
            p90: at(0.9),
            p95: at(0.95),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn quantiles_of_an_even_spread() {
        let band = Band::of((0..1000).map(|n| (f64::from(n) / 999.0, 2.0)));
        for (value, p) in band
            .quantiles()
            .into_iter()
            .zip([0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95])
        {
            assert!((value - p).abs() < 2e-3, "{band:?}");
        }
    }

    #[test]
    fn what_never_comes_is_infinite() {
        let times = [(1.0, 1.0), (2.0, 1.0), (f64::INFINITY, 2.0)];
        let band = Band::of(times.into_iter());
        assert!(band.p25.is_finite() && band.p75.is_infinite() && band.p95.is_infinite());
    }

    proptest! {
        #[test]
        fn quantiles_are_in_order_and_within_the_values(
            values in proptest::collection::vec((-50.0..50.0_f64, 0.01..5.0_f64), 1..60),
        ) {
            let quantiles = Band::of(values.iter().copied()).quantiles();
            for pair in quantiles.windows(2) {
                prop_assert!(pair[0] <= pair[1]);
            }
            let least = values.iter().map(|v| v.0).fold(f64::INFINITY, f64::min);
            let most = values.iter().map(|v| v.0).fold(f64::NEG_INFINITY, f64::max);
            prop_assert!(least <= quantiles[0] && quantiles[6] <= most);
        }
    }
}
