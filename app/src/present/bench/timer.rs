//! When the next reading is due. It is worked out from what is kept, never counted, so that neither
//! a locked screen nor a reload can stop it.

use model::local_time::LocalTime;

/// How things stand with the next reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Timer {
    /// When it is due.
    pub due: LocalTime,
    /// Until then; negative once it is late. \[s\]
    pub left_s: i64,
    /// How many should have been taken since the last one, the one that is due now among them.
    pub n_due: i64,
    /// From one to the next. \[s\]
    pub every_s: i64,
}

/// A reading that is this late is late; sooner it is due now. \[s\]
const LATE_S: i64 = 60;
/// After so long, and after so many readings that nobody took, the run is left alone: it is in the
/// past, or nobody is there. \[s\]
const LEFT_S: i64 = 3600;
const LEFT_READINGS: i64 = 3;

impl Timer {
    /// The timer at a time, from the last reading, or from the start where there is none yet.
    pub fn new(last: LocalTime, every_s: f64, now: LocalTime) -> Self {
        #[expect(
            clippy::cast_possible_truncation,
            reason = "an hour at most, and a cast saturates"
        )]
        let every_s = (every_s.round() as i64).max(1);
        let due = last.plus_s(every_s);
        let gone_s = now.since_s(last).max(0);
        Self {
            due,
            left_s: due.since_s(now),
            n_due: gone_s / every_s,
            every_s,
        }
    }

    /// Whether it is time to read.
    pub fn is_due(&self) -> bool {
        self.left_s <= 0
    }

    /// Whether it has been time for so long that it was missed.
    pub fn is_late(&self) -> bool {
        self.left_s <= -LATE_S
    }

    /// Whether nobody has read for so long that calling is of no use.
    pub fn is_left(&self) -> bool {
        self.left_s <= -LEFT_S.max(LEFT_READINGS * self.every_s)
    }

    /// How many were due while the screen was away since a time, the one that is due now not among
    /// them.
    pub fn missed_since(&self, away: LocalTime) -> i64 {
        let first = self.due;
        if !self.is_due() {
            return 0;
        }
        let now = first.plus_s(-self.left_s);
        let due_by = |at: LocalTime| {
            if at < first {
                0
            } else {
                1 + at.since_s(first) / self.every_s
            }
        };
        (due_by(now) - due_by(away) - 1).max(0)
    }

    /// Minutes and seconds that are left, as a clock counts down: `7:05`; zero once it is due.
    pub fn countdown(&self) -> String {
        let left_s = self.left_s.max(0);
        format!("{}:{:02}", left_s / 60, left_s % 60)
    }
}

#[cfg(test)]
mod tests {
    use model::local_time::Day;
    use proptest::prelude::*;

    use super::*;

    fn at(minute: i64) -> LocalTime {
        Day(20_000).at_s(18 * 3600 + minute * 60)
    }

    #[test]
    fn it_counts_down_from_the_last_reading() {
        let timer = Timer::new(at(0), 600.0, at(0).plus_s(175));
        assert_eq!(timer.due, at(10));
        assert_eq!(timer.countdown(), "7:05");
        assert!(!timer.is_due());
        assert_eq!(timer.n_due, 0);
    }

    #[test]
    fn it_says_what_was_missed_after_a_locked_screen() {
        let timer = Timer::new(at(0), 600.0, at(34));
        assert!(timer.is_due() && timer.is_late());
        assert_eq!((timer.n_due, timer.countdown().as_str()), (3, "0:00"));
        // Due at 10, 20 and 30: the screen went off at 5, so two passed unseen before the last.
        assert_eq!(timer.missed_since(at(5)), 2);
        assert_eq!(timer.missed_since(at(15)), 1);
        assert_eq!(timer.missed_since(at(33)), 0);
    }

    #[test]
    fn a_run_that_nobody_read_for_hours_is_left_alone() {
        let left = |every_s: f64, minutes| Timer::new(at(0), every_s, at(minutes)).is_left();
        assert!(!left(600.0, 69) && left(600.0, 70));
        // Rarely read, it takes longer to be forgotten.
        assert!(!left(1800.0, 119) && left(1800.0, 120));
    }

    proptest! {
        #[test]
        fn a_later_look_never_has_fewer_due(
            every in 1.0..4000.0_f64, first in 0_i64..100_000, more in 0_i64..100_000,
        ) {
            let early = Timer::new(at(0), every, at(0).plus_s(first));
            let late = Timer::new(at(0), every, at(0).plus_s(first + more));
            prop_assert!(early.n_due <= late.n_due);
            prop_assert_eq!(early.due, late.due);
            prop_assert!(late.missed_since(at(0).plus_s(first)) <= late.n_due);
        }
    }
}
