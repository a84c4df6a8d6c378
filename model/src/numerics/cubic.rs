//! Where a cubic polynomial on the unit interval first rises above zero.

/// `k[0] + k[1] x + k[2] x^2 + k[3] x^3` for x from 0 to 1.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Cubic {
    pub(crate) k: [f64; 4],
}

impl Cubic {
    /// The constant polynomial.
    pub(crate) fn constant(value: f64) -> Self {
        Self {
            k: [value, 0.0, 0.0, 0.0],
        }
    }

    /// This polynomial plus `factor` times another.
    pub(crate) fn plus(mut self, factor: f64, other: &Self) -> Self {
        for (own, add) in self.k.iter_mut().zip(other.k) {
            *own += factor * add;
        }
        self
    }

    /// Value at `x`.
    pub(crate) fn at(&self, x: f64) -> f64 {
        let [k0, k1, k2, k3] = self.k;
        k0 + x * (k1 + x * (k2 + x * k3))
    }

    /// The first `x` of [0, 1] at which the polynomial goes from zero or below to above zero.
    ///
    /// A polynomial that starts above zero and rises counts as crossing at 0: it does so when the
    /// crossing before it was located a rounding error late. The interval is cut at the extrema, so no
    /// crossing is missed; the result is exact to 2^-50.
    pub(crate) fn first_rise(&self) -> Option<f64> {
        let mut low = 0.0;
        let mut at_low = self.k[0];
        for high in self.extrema().into_iter().chain([Some(1.0)]).flatten() {
            let at_high = self.at(high);
            if at_high > 0.0 && at_high > at_low {
                return Some(if at_low > 0.0 {
                    low
                } else {
                    self.bisect(low, high)
                });
            }
            (low, at_low) = (high, at_high);
        }
        None
    }

    fn bisect(&self, mut low: f64, mut high: f64) -> f64 {
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if self.at(middle) > 0.0 {
                high = middle;
            } else {
                low = middle;
            }
        }
        high
    }

    /// The extrema strictly inside the interval, in rising order.
    fn extrema(&self) -> [Option<f64>; 2] {
        let [_, k1, k2, k3] = self.k;
        let (a, half_b, c) = (3.0 * k3, k2, k1);
        let discriminant = half_b * half_b - a * c;
        if discriminant <= 0.0 {
            return [None, None];
        }
        // This form loses no digits when a or c is small.
        let q = -(half_b + discriminant.sqrt().copysign(half_b));
        let inside = |x: f64| (x > 0.0 && x < 1.0).then_some(x);
        let (first, second) = (inside(q / a), inside(c / q));
        match (first, second) {
            (Some(x), Some(y)) if x > y => [Some(y), Some(x)],
            _ => [first, second],
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(k: [f64; 4], expected: Option<f64>) {
        let found = Cubic { k }.first_rise();
        match (found, expected) {
            (Some(a), Some(b)) => assert!((a - b).abs() < 1e-12, "{a} is not {b}"),
            _ => assert_eq!(found, expected),
        }
    }

    #[test]
    fn finds_the_first_rise_only() {
        check([-0.5, 1.0, 0.0, 0.0], Some(0.5));
        check([0.5, -1.0, 0.0, 0.0], None);
        // (x - 0.2)(x - 0.4)(x - 0.6): falls between 0.4 and 0.6.
        check([-0.048, 0.44, -1.2, 1.0], Some(0.2));
        // Its mirror image rises at 0.4 alone.
        check([0.048, -0.44, 1.2, -1.0], Some(0.4));
        // A hump whose ends are both below zero.
        check([-0.21, 1.0, -1.0, 0.0], Some(0.3));
        check([-0.26, 1.0, -1.0, 0.0], None);
        check([1e-12, 1.0, 0.0, 0.0], Some(0.0));
        check([1e-12, -1.0, 0.0, 0.0], None);
        check([0.0, 0.0, 0.0, 0.0], None);
    }
}
