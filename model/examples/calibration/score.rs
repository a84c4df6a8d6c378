//! What was said against what came.

use std::collections::BTreeMap;

use model::dish::Dish;

use crate::diary::Asked;
use crate::estimate::{Band, Said};

/// One pot: what was said and what became of it.
#[derive(Debug, Clone)]
pub(crate) struct Pot {
    pub(crate) household: u64,
    pub(crate) day: u32,
    pub(crate) preset: &'static str,
    pub(crate) dish: Dish,
    pub(crate) said: Said,
    pub(crate) boiled: bool,
    pub(crate) ready: bool,
    /// Seconds from putting in; infinite where it never came while the pot was in.
    pub(crate) boil_s: f64,
    pub(crate) ready_s: f64,
    pub(crate) store_c: f64,
}

impl Pot {
    pub(crate) fn new((household, preset): (u64, &'static str), said: Said, asked: &Asked) -> Self {
        let since = |at: Option<model::local_time::LocalTime>| {
            at.map_or(f64::INFINITY, |at| at.since_s(asked.put_in) as f64)
        };
        Self {
            household,
            day: asked.day,
            preset,
            dish: asked.meal.dish,
            said,
            boiled: asked.boiled_at.is_some(),
            ready: asked.ready_at.is_some_and(|at| at <= asked.meal.eat_at),
            boil_s: since(asked.boiled_at),
            ready_s: since(asked.ready_at),
            store_c: asked.store_c,
        }
    }
}

/// A forecast of a probability and whether it came true.
pub(crate) type Claim = (f64, bool);

/// One tenth of the scale: count, mean forecast, share observed.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Tenth {
    pub(crate) count: usize,
    /// How many households they are of.
    pub(crate) households: usize,
    pub(crate) forecast: f64,
    pub(crate) observed: f64,
    /// Standard error of the share observed, a household's pots taken together: they err alike.
    pub(crate) error: f64,
}

impl Tenth {
    /// How far forecast and observation are apart.
    pub(crate) fn off(&self) -> f64 {
        (self.forecast - self.observed).abs()
    }

    /// The same, in standard errors.
    pub(crate) fn errors_off(&self) -> f64 {
        self.off() / self.error
    }
}

/// Claims of each household, by its number, in tenths of their forecasts.
///
/// The standard error is that of a mean whose terms go together by household: the root of the sum of
/// the squares of each household's sum of errors, over the count; and never less than the binomial
/// one (K.-Y. Liang and S. L. Zeger, Biometrika 73 (1986) 13, for a mean, from memory).
pub(crate) fn tenths(claims: &[(u64, Claim)]) -> [Tenth; 10] {
    std::array::from_fn(|place| {
        let mine = claims
            .iter()
            .filter(|(_, (forecast, _))| ((forecast * 10.0) as usize).min(9) == place);
        let mut tenth = Tenth::default();
        let mut households: BTreeMap<u64, (f64, f64)> = BTreeMap::new();
        for &(household, (forecast, came)) in mine {
            let came = f64::from(u8::from(came));
            tenth.count += 1;
            tenth.forecast += forecast;
            tenth.observed += came;
            let sums = households.entry(household).or_default();
            *sums = (sums.0 + 1.0, sums.1 + came - forecast);
        }
        let count = tenth.count.max(1) as f64;
        tenth.households = households.len();
        tenth.forecast /= count;
        tenth.observed /= count;
        let mean = tenth.observed - tenth.forecast;
        let squares = households.values().map(|(n, sum)| (sum - n * mean).powi(2));
        let clustered = squares.sum::<f64>().sqrt() / count;
        let binomial = (tenth.forecast * (1.0 - tenth.forecast) / count).sqrt();
        tenth.error = clustered.max(binomial);
        tenth
    })
}

/// Brier score, that of the base rate, and the skill of the one against the other: G. W. Brier,
/// Monthly Weather Review 78 (1950) 1.
pub(crate) fn brier(claims: &[Claim]) -> (f64, f64, f64) {
    let count = claims.len().max(1) as f64;
    let came = |came: bool| f64::from(u8::from(came));
    let rate = claims.iter().map(|claim| came(claim.1)).sum::<f64>() / count;
    let mean = |score: &dyn Fn(&Claim) -> f64| claims.iter().map(score).sum::<f64>() / count;
    let own = mean(&|claim| (claim.0 - came(claim.1)).powi(2));
    let base = mean(&|claim| (rate - came(claim.1)).powi(2));
    (own, base, 1.0 - own / base.max(1e-12))
}

/// A band, what came, and how likely it was held to come while it was watched.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Banded {
    pub(crate) band: Band,
    /// Infinite for what had not come when the watch ended.
    pub(crate) truth: f64,
    pub(crate) likely: f64,
}

/// How well bands hold the truth.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Coverage {
    pub(crate) count: usize,
    pub(crate) half: f64,
    pub(crate) nine_tenths: f64,
    /// Shares that fell below and above the 90 % band.
    pub(crate) below: f64,
    pub(crate) above: f64,
    /// Median width of the 90 % band.
    pub(crate) width: f64,
}

/// Coverage of bands.
///
/// What had not come when the watch ended is known to lie above the share that was held likely; it
/// counts by the part of the rest that a band covers, so that a forecast which is right covers what
/// it says whatever the watch missed.
pub(crate) fn coverage(bands: &[Banded]) -> Coverage {
    let count = bands.len().max(1) as f64;
    let mut coverage = Coverage {
        count: bands.len(),
        ..Coverage::default()
    };
    let mut widths = Vec::new();
    for banded in bands {
        let [p05, p25, _, p75, p95] = banded.band;
        let rest = 1.0 - banded.likely;
        // Share of what is left that lies between two quantiles of the whole.
        let inside = |(low, from): (f64, f64), (high, to): (f64, f64)| {
            if banded.truth.is_finite() {
                f64::from(u8::from(low <= banded.truth && banded.truth <= high))
            } else {
                (to - from.max(banded.likely)).max(0.0) / rest
            }
        };
        let held = inside((p05, 0.05), (p95, 0.95));
        coverage.nine_tenths += held / count;
        coverage.half += inside((p25, 0.25), (p75, 0.75)) / count;
        let below = inside((f64::NEG_INFINITY, 0.0), (p05, 0.05));
        coverage.below += below.min(1.0 - held) / count;
        coverage.above += (1.0 - held - below).max(0.0) / count;
        if p95.is_finite() {
            widths.push(p95 - p05);
        }
    }
    coverage.width = median(&mut widths);
    coverage
}

pub(crate) fn median(values: &mut [f64]) -> f64 {
    values.sort_by(f64::total_cmp);
    match values.len() {
        0 => f64::NAN,
        len if len % 2 == 1 => values[len / 2],
        len => 0.5 * (values[len / 2 - 1] + values[len / 2]),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::truth::random::Random;

    /// A forecaster who knows the law but not the outcome is reliable, and its bands hold what
    /// they say, though half of the times are never seen.
    #[test]
    fn an_honest_forecaster_passes() {
        let mut random = Random::new(1, 1);
        let (mut claims, mut bands) = (Vec::new(), Vec::new());
        for _ in 0..40_000 {
            let mean = random.between(10.0, 60.0);
            let quantile = |p: f64| -mean * libm::log(1.0 - p);
            let watched = random.between(10.0, 60.0);
            let likely = 1.0 - libm::exp(-watched / mean);
            let time = random.wait(mean);
            let came = time <= watched;
            claims.push((claims.len() as u64, (likely, came)));
            bands.push(Banded {
                band: [0.05, 0.25, 0.5, 0.75, 0.95].map(quantile),
                truth: if came { time } else { f64::INFINITY },
                likely,
            });
        }
        for tenth in tenths(&claims).iter().filter(|tenth| 0 < tenth.count) {
            assert!(tenth.off() < 4.0 * tenth.error + 1e-3, "{tenth:?}");
        }
        let held = coverage(&bands);
        assert!((held.nine_tenths - 0.9).abs() < 0.006, "{held:?}");
        assert!((held.half - 0.5).abs() < 0.01, "{held:?}");
        assert!((held.below - 0.05).abs() < 0.005 && (held.above - 0.05).abs() < 0.005);
    }

    /// Ten households of ten pots each, all of a household alike: as good as ten pots.
    #[test]
    fn pots_that_go_together_count_as_one() {
        let claim = |n: u64| (n / 10, (0.55, (n / 10).is_multiple_of(2)));
        let claims: Vec<_> = (0..100).map(claim).collect();
        let tenth = tenths(&claims)[5];
        assert_eq!((tenth.count, tenth.households), (100, 10));
        // Half of them came: 0.5 each way, over the root of ten.
        assert!(
            (tenth.error - 0.5 / 10_f64.sqrt()).abs() < 1e-12,
            "{tenth:?}"
        );
        let alone: Vec<_> = (0..100).map(|n| (n, claim(n).1)).collect();
        let tenth = tenths(&alone)[5];
        assert!((tenth.error - 0.05).abs() < 1e-3, "{tenth:?}");
        assert!((tenth.errors_off() - 1.0).abs() < 0.02, "{tenth:?}");
    }

    /// The score's own example of extremes: sure and right is 0, sure and wrong is 1, and who says
    /// the base rate always has no skill.
    #[test]
    fn brier_by_hand() {
        assert!(brier(&[(1.0, true), (0.0, false)]).0.abs() < 1e-12);
        assert!((brier(&[(0.0, true), (1.0, false)]).0 - 1.0).abs() < 1e-12);
        let (_, base, skill) = brier(&[(0.5, true), (0.5, false)]);
        assert!((base - 0.25).abs() < 1e-12 && skill.abs() < 1e-12);
    }

    #[test]
    fn medians() {
        assert!((median(&mut [3.0, 1.0, 2.0]) - 2.0).abs() < 1e-12);
        assert!((median(&mut [4.0, 1.0, 2.0, 3.0]) - 2.5).abs() < 1e-12);
        assert!(median(&mut []).is_nan());
    }
}
