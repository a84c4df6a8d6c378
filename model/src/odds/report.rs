//! How likely a report is if a member is right.
//!
//! Each likelihood is a mixture: most reports are what they say, a few are slips (a wrong hour, a
//! thermometer in the air, the wrong pot). So a report that no member can explain moves little, and
//! is kept as a doubt to be asked about.

use super::doubt::Report;
use crate::journal::Felt;

/// The household's thermometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thermometer {
    /// One standard deviation of a reading, with where exactly it sat. \[K\]
    pub sd_k: f64,
    /// What it touches.
    pub sits: Sits,
}

/// Where the thermometer sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Sits {
    /// In the middle of the store, or anywhere in one that conducts well.
    InStore,
    /// On the face that the pot meets.
    OnSeat,
}

impl Thermometer {
    /// A kitchen thermometer. Common practice, no source.
    pub const KITCHEN: Self = Self {
        sd_k: 5.0,
        sits: Sits::InStore,
    };

    /// The part of its error that is the same every day.
    pub(super) fn offset_sd_k(self) -> f64 {
        self.sd_k.max(0.1) * OFFSET_SHARE.sqrt()
    }

    /// The part that is each reading's own.
    pub(super) fn own_sd_k(self) -> f64 {
        self.sd_k.max(0.1) * (1.0 - OFFSET_SHARE).sqrt()
    }
}

/// Of the variance of a reading, what a thermometer and its place are off by always. Inferred.
const OFFSET_SHARE: f64 = 0.6;
/// Share of reports that are slips. Inferred.
const READING_SLIPS: f64 = 0.03;
const SEEN_SLIPS: f64 = 0.05;
const FELT_SLIPS: f64 = 0.08;
/// A slip of the thermometer may read anything over so many kelvins.
const READING_SPAN_K: f64 = 400.0;
/// A slip of the clock may be anywhere in so many minutes.
const CLOCK_SPAN_MIN: f64 = 300.0;

/// When people notice a boil: late, by a waiting time of this mean, never early but for the clock,
/// which is read to five minutes when the pot goes in and when it boils. Common practice, no
/// source. \[min\]
const BOIL_LAG_MIN: f64 = 5.0;
const BOIL_SD_MIN: f64 = 3.5;
/// The same for food that is soft. \[min\]
const DONE_LAG_MIN: f64 = 6.0;
const DONE_SD_MIN: f64 = 6.0;
/// And what the model itself is off by, as a share of the time since the pot went in. Inferred.
const MODEL_SD: f64 = 0.08;
/// A palm stays on metal of 43 °C as long as it likes and on 51 °C for a minute; of 65 °C and more
/// it is drawn back at once: ISO 13732-1:2006, from memory. [°C]
const COLD_BELOW_C: f64 = 50.0;
const HOT_ABOVE_C: f64 = 60.0;
/// Width of both. \[K\]
const TOUCH_K: f64 = 6.0;
/// A report is doubted when it is a slip with this probability, by all that is believed.
const DOUBTED: f64 = 0.8;

/// How likely a report is: if it means what it says, and if it is a slip.
#[derive(Debug, Clone, Copy)]
pub(super) struct Mixture {
    slips: f64,
    slip_density: f64,
}

impl Mixture {
    pub(super) const READING: Self = Self {
        slips: READING_SLIPS,
        slip_density: 1.0 / READING_SPAN_K,
    };
    pub(super) const CLOCK: Self = Self {
        slips: SEEN_SLIPS,
        slip_density: 1.0 / CLOCK_SPAN_MIN,
    };
    pub(super) const SEEN: Self = Self {
        slips: SEEN_SLIPS,
        slip_density: 0.5,
    };
    pub(super) const FELT: Self = Self {
        slips: FELT_SLIPS,
        slip_density: 0.5,
    };

    /// The whole likelihood from that of a report that means what it says.
    pub(super) fn of(self, meant: f64) -> f64 {
        (1.0 - self.slips) * meant + self.slips * self.slip_density
    }

    /// Whether a report of this mean likelihood is more likely a slip.
    pub(super) fn doubts(self, expected: f64) -> bool {
        DOUBTED * expected < self.slips * self.slip_density
    }
}

/// A thermometer's reading where it would show this. Per kelvin.
pub(super) fn reading(read_c: f64, shown_c: f64, thermometer: Thermometer) -> f64 {
    // What a hot store differs from place to place.
    let place_k = 0.015 * (shown_c - 20.0);
    normal_density(
        read_c - shown_c,
        libm::hypot(thermometer.own_sd_k(), place_k),
    )
}

/// A member's time of what was seen of its pot, beside the report of it.
#[derive(Debug, Clone, Copy)]
pub(super) struct SeenPot {
    /// How long after it came about it was reported. \[min\]
    pub(super) late_min: f64,
    /// How long it took since the pot went in. \[min\]
    pub(super) took_min: f64,
    /// By how much more than usual this household is late.
    pub(super) lags: f64,
}

/// Seen to boil, or to be done, so many minutes after it did; it took so many since it went in.
/// Per minute.
fn seen_at(late_min: f64, took_min: f64, lag_min: f64, sd_min: f64) -> f64 {
    if !late_min.is_finite() {
        return 0.0;
    }
    let sd_min = libm::hypot(sd_min, MODEL_SD * took_min);
    late_density(late_min, lag_min, sd_min)
}

/// Density of a normal error and a waiting time of this mean, one added to the other: the
/// exponentially modified Gaussian (Grushka, Anal. Chem. 44 (1972) 1733).
fn late_density(late: f64, wait: f64, sd: f64) -> f64 {
    let by_wait = sd / wait;
    let place = by_wait - late / sd;
    // Beyond this the exponential and the error function are out of range together; there the
    // waiting time is short beside the distance, and the normal error alone is left.
    if 12.0 < place {
        return normal_density(late, sd) * sd / (wait * place);
    }
    let tail = libm::erfc(place * std::f64::consts::FRAC_1_SQRT_2);
    0.5 / wait * libm::exp(by_wait * (0.5 * by_wait - late / sd)) * tail
}

fn boiled_at(pot: SeenPot) -> f64 {
    let lag_min = pot.lags * BOIL_LAG_MIN;
    seen_at(pot.late_min, pot.took_min, lag_min, BOIL_SD_MIN)
}

fn done_at(pot: SeenPot) -> f64 {
    let lag_min = pot.lags * DONE_LAG_MIN;
    seen_at(pot.late_min, pot.took_min, lag_min, DONE_SD_MIN)
}

/// Seen not to boil yet, so many minutes before it does.
fn not_boiled(early_min: f64, took_min: f64) -> f64 {
    below(early_min, libm::hypot(BOIL_SD_MIN, model_min(took_min)))
}

/// Tasted and not done yet.
fn not_done(early_min: f64, took_min: f64) -> f64 {
    below(early_min, libm::hypot(DONE_SD_MIN, model_min(took_min)))
}

/// How likely a report of a pot is.
pub(super) fn of_pot(what: Report) -> (Mixture, fn(SeenPot) -> f64) {
    match what {
        Report::NotBoiledBy(_) => (Mixture::SEEN, |pot| not_boiled(-pot.late_min, pot.took_min)),
        Report::NotDoneBy(_) => (Mixture::SEEN, |pot| not_done(-pot.late_min, pot.took_min)),
        Report::BoiledAt(_) => (Mixture::CLOCK, boiled_at),
        Report::DoneAt(_) | Report::Reading { .. } | Report::Felt(_) => (Mixture::CLOCK, done_at),
    }
}

fn model_min(took_min: f64) -> f64 {
    if took_min.is_finite() {
        MODEL_SD * took_min
    } else {
        0.0
    }
}

/// A hand on the store.
pub(super) fn felt(felt: Felt, face_c: f64) -> f64 {
    match felt {
        Felt::Cold => below((COLD_BELOW_C - face_c) / TOUCH_K, 1.0),
        Felt::Hot => below((face_c - HOT_ABOVE_C) / TOUCH_K, 1.0),
    }
}

fn normal_density(off: f64, sd: f64) -> f64 {
    const ROOT_TWO_PI: f64 = 2.506_628_274_631_000_5;
    let z = off / sd;
    libm::exp(-0.5 * z * z) / (sd * ROOT_TWO_PI)
}

/// Probability of being below by the logistic curve nearest the normal one (factor 1.702: Camilli,
/// J. Educ. Behav. Stat. 19 (1994) 293).
fn below(by: f64, sd: f64) -> f64 {
    if by == f64::INFINITY {
        return 1.0;
    }
    1.0 / (1.0 + libm::exp(-1.702 * by / sd))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn boiled_at(late_min: f64, took_min: f64) -> f64 {
        super::boiled_at(seen(late_min, took_min, 1.0))
    }

    fn seen(late_min: f64, took_min: f64, lags: f64) -> SeenPot {
        SeenPot {
            late_min,
            took_min,
            lags,
        }
    }

    /// Who is twice as late is to be expected to tell of a boil twice as long after it.
    #[test]
    fn who_looks_seldom_tells_late() {
        let mean_min = |lags: f64| {
            let each = (-2000..8000).map(|n| 0.05 * f64::from(n));
            each.map(|late| 0.05 * late * super::boiled_at(seen(late, 10.0, lags)))
                .sum::<f64>()
        };
        assert!((mean_min(1.0) - BOIL_LAG_MIN).abs() < 0.01);
        assert!((mean_min(2.0) - 2.0 * BOIL_LAG_MIN).abs() < 0.01);
    }

    #[test]
    fn a_slip_is_doubted_and_the_expected_is_not() {
        let near = Mixture::READING.of(reading(200.0, 203.0, Thermometer::KITCHEN));
        let far = Mixture::READING.of(reading(20.0, 203.0, Thermometer::KITCHEN));
        assert!(!Mixture::READING.doubts(near) && Mixture::READING.doubts(far));
        let seen = Mixture::CLOCK.of(boiled_at(5.0, 40.0));
        let never = Mixture::CLOCK.of(boiled_at(f64::NEG_INFINITY, f64::INFINITY));
        assert!(!Mixture::CLOCK.doubts(seen) && Mixture::CLOCK.doubts(never));
    }

    #[test]
    fn what_was_seen_favours_those_that_agree() {
        assert!(boiled_at(2.0, 40.0) > 5.0 * boiled_at(30.0, 40.0));
        assert!(not_boiled(20.0, 60.0) > 0.9 && not_boiled(-20.0, 20.0) < 0.1);
        assert!(not_boiled(f64::INFINITY, f64::INFINITY) > 0.999);
        assert!(felt(Felt::Cold, 30.0) > 0.9 && felt(Felt::Cold, 120.0) < 0.01);
        assert!(felt(Felt::Hot, 120.0) > 0.99 && felt(Felt::Hot, 30.0) < 0.01);
    }

    #[test]
    fn densities_have_the_weight_of_one() {
        let sum: f64 = (-4000..8000)
            .map(|n| 0.05 * boiled_at(f64::from(n) * 0.05, 40.0))
            .sum();
        assert!((sum - 1.0).abs() < 1e-6, "{sum}");
    }
}
