//! A second charge beside the sun's: the grid, a generator or a fire, for some hours of the day.

/// Heat from elsewhere between two moments.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TopUp {
    /// When it begins, on the caller's clock. \[s\]
    pub start_s: f64,
    /// When it ends; the thermostat may end it sooner. \[s\]
    pub end_s: f64,
    /// Power that is paid for: of the wall socket, or of the fuel burnt. \[W\]
    pub power_w: f64,
    /// Share of it that reaches the store: 1 for an element inside it, 0.1 to 0.3 for a fire under
    /// it (common practice, no source).
    pub share: f64,
}

/// A top-up that makes no sense.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum TopUpError {
    /// It does not end after it begins.
    #[error("a top-up from {start_s} s does not end at {end_s} s")]
    Times {
        /// Begin. \[s\]
        start_s: f64,
        /// End. \[s\]
        end_s: f64,
    },
    /// The power is not 0 to 20 000 W.
    #[error("power {0} W is not between 0 and 20000")]
    Power(f64),
    /// The share is not 0 to 1.
    #[error("share {0} is not between 0 and 1")]
    Share(f64),
}

impl TopUp {
    /// The top-up itself, if it makes sense.
    ///
    /// # Errors
    ///
    /// [`TopUpError`] with the first value that does not.
    pub fn checked(self) -> Result<Self, TopUpError> {
        let Self {
            start_s,
            end_s,
            power_w,
            share,
        } = self;
        if !(start_s.is_finite() && end_s.is_finite() && start_s <= end_s) {
            return Err(TopUpError::Times { start_s, end_s });
        }
        if !(0.0..=20_000.0).contains(&power_w) {
            return Err(TopUpError::Power(power_w));
        }
        if !(0.0..=1.0).contains(&share) {
            return Err(TopUpError::Share(share));
        }
        Ok(self)
    }

    /// Mean heat into the store over a step, W.
    #[must_use]
    pub fn mean_w(&self, from_s: f64, to_s: f64) -> f64 {
        let within_s = (self.end_s.min(to_s) - self.start_s.max(from_s)).max(0.0);
        let step_s = to_s - from_s;
        if step_s > 0.0 {
            self.power_w * self.share * within_s / step_s
        } else {
            0.0
        }
    }
}

/// Heat of the sun and of every top-up over a step, W: what the network's heater is given.
#[must_use]
pub fn together_w(sun_w: f64, top_ups: &[TopUp], from_s: f64, to_s: f64) -> f64 {
    sun_w
        + top_ups
            .iter()
            .map(|top_up| top_up.mean_w(from_s, to_s))
            .sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    const EVENING: TopUp = TopUp {
        start_s: 3600.0,
        end_s: 5400.0,
        power_w: 500.0,
        share: 0.9,
    };

    #[test]
    fn counts_for_the_time_it_is_on() {
        assert!((EVENING.mean_w(3600.0, 5400.0) - 450.0).abs() < 1e-9);
        assert!((EVENING.mean_w(0.0, 7200.0) - 112.5).abs() < 1e-9);
        assert!(EVENING.mean_w(6000.0, 7200.0) < f64::MIN_POSITIVE);
        assert!((together_w(80.0, &[EVENING, EVENING], 3600.0, 5400.0) - 980.0).abs() < 1e-9);
    }

    #[test]
    fn senseless_ones_are_refused() {
        assert!(EVENING.checked().is_ok());
        assert!(
            TopUp {
                end_s: 0.0,
                ..EVENING
            }
            .checked()
            .is_err()
        );
        assert_eq!(
            TopUp {
                share: 2.0,
                ..EVENING
            }
            .checked(),
            Err(TopUpError::Share(2.0))
        );
        assert!(
            TopUp {
                power_w: f64::NAN,
                ..EVENING
            }
            .checked()
            .is_err()
        );
    }

    proptest! {
        #[test]
        fn cut_steps_add_up(from in 0.0..9000.0_f64, length in 1.0..9000.0_f64, cut in 0.1..0.9_f64) {
            let (to, middle) = (from + length, from + cut * length);
            let whole = EVENING.mean_w(from, to) * length;
            let parts = EVENING.mean_w(from, middle) * (middle - from)
                + EVENING.mean_w(middle, to) * (to - middle);
            prop_assert!((whole - parts).abs() < 1e-6);
        }
    }
}
