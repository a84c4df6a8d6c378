//! The light of hours that nobody saw, by what was told of others of their day.
//!
//! The light of an hour is looked up by a normal deviate. Those of one day go together: what the day
//! has in common, and what an hour shares with the next. So a word for one hour says something of its
//! neighbours, less of the rest of the day, and never all: with one hour told the others keep
//! four fifths of their spread. The formulas are those of normal regression, as in any text.

use std::collections::BTreeMap;

use super::build::small;
use crate::local_time::Day;
use crate::sun::{DayLog, HOURS_IN_COMMON, SHADOWLESS_INDEX, Sky, SolarDay};

/// Of what an hour's light does not share with its day, the part that goes on into the next hour: 0.38
/// to 0.44 (Aguiar and Collares-Pereira, Solar Energy 49 (1992) 167, from memory).
const GOES_ON: f64 = 0.4;
/// Hours that run on like this move the mean of ten as if this share of their variance were the
/// day's: 0.21 of it is left in the mean where 0.1 were of hours each for itself.
const RUNS_ON: f64 = 0.12;
/// Variance of what is usual at a place in a season, beside what is usual anywhere: months of one
/// place let through from six tenths of a clear sky's light, in the rains, to nearly all of it. From
/// memory.
const PLACE_VARIANCE: f64 = 0.15;
/// Variance of a day's mean about that.
const DAY_VARIANCE: f64 = 0.6;
/// What is usual is known by so many days before, those of which so many hours were told.
const USUAL_DAYS: i32 = 30;
const TOLD_HOURS: usize = 3;
/// Variance that a word leaves of an hour's deviate: it stands for a range of skies. Inferred.
const WORD_VARIANCE: f64 = 0.1;
/// Share of a clear sky's light in an hour that nobody saw, from -3 to 3 standard deviations. Such
/// hours are bright or dull, seldom between: a third clear, two fifths thin or patchy, a quarter grey
/// or dark (from memory: sunny places in all seasons), each as bright as its word stands for, and as
/// far from it as the table of words says; no brighter than the edges of clouds make an hour.
const INDEX: [f64; 13] = [
    0.06, 0.08, 0.11, 0.17, 0.27, 0.58, 0.76, 0.93, 1.0, 1.02, 1.04, 1.05, 1.06,
];
const FROM_SD: f64 = -3.0;
const PER_SD: f64 = 2.0;

/// An hour's deviate: its middle, and its standard deviations that are the day's and its own.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Unseen {
    pub(super) middle: f64,
    pub(super) day_sd: f64,
    pub(super) own_sd: f64,
}

impl Unseen {
    /// Both together.
    pub(super) fn sd(self) -> f64 {
        libm::hypot(self.day_sd, self.own_sd)
    }

    /// Share of a clear sky's light, so many standard deviations above the middle.
    pub(super) fn index(self, sd: f64) -> f64 {
        let place = (self.middle + sd * self.sd() - FROM_SD) * PER_SD;
        let place = place.clamp(0.0, small(INDEX.len() - 1));
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "0 to 12"
        )]
        let cell = (place as usize).min(INDEX.len() - 2);
        INDEX[cell] + (place - small(cell)) * (INDEX[cell + 1] - INDEX[cell])
    }
}

/// What is usual at a place: its deviate, and how well that is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Usual {
    middle: f64,
    variance: f64,
}

impl Usual {
    /// By the days that were told before one, `first` the earliest that is looked at.
    pub(super) fn before(
        skies: &BTreeMap<Day, DayLog>,
        (first, day): (Day, Day),
        latitude_deg: f64,
    ) -> Self {
        let from = day.plus(-USUAL_DAYS).max(first).min(day);
        let told = skies.range(from..day);
        let (mut sum, mut count) = (0.0, 0);
        for middle in told.filter_map(|(day, log)| of_log(log, *day, latitude_deg)) {
            sum += middle;
            count += 1;
        }
        let known = PLACE_VARIANCE * small(count);
        let share = known / (known + DAY_VARIANCE);
        Self {
            middle: share * sum / small(count.max(1)),
            variance: PLACE_VARIANCE * (1.0 - share),
        }
    }
}

/// The mean deviate of a day as told.
fn of_log(log: &DayLog, day: Day, latitude_deg: f64) -> Option<f64> {
    match log {
        DayLog::SunHours(hours) => {
            let solar = SolarDay::new(latitude_deg, day.of_year()).ok()?;
            let sunny = solar.sunshine_share(*hours).ok()?;
            // A mean of its hours, sunny or not: the deviate of a mean light would be another.
            Some(sunny * deviate(Sky::Clear) + (1.0 - sunny) * deviate_of(SHADOWLESS_INDEX))
        }
        DayLog::Hourly(told) => {
            let told = told.iter().flatten();
            let (count, sum) = told.fold((0, 0.0), |(count, sum), sky| {
                (count + 1, sum + deviate(*sky))
            });
            (TOLD_HOURS <= count).then(|| sum / small(count))
        }
    }
}

/// The deviate that a sky's mean light is looked up by.
fn deviate(sky: Sky) -> f64 {
    deviate_of(sky.hour().mean_index())
}

fn deviate_of(index: f64) -> f64 {
    let cell = INDEX.partition_point(|held| *held < index);
    let cell = cell.clamp(1, INDEX.len() - 1) - 1;
    let along = (index - INDEX[cell]) / (INDEX[cell + 1] - INDEX[cell]);
    FROM_SD + (small(cell) + along.clamp(0.0, 1.0)) / PER_SD
}

/// Each hour of a day of which some hours were told, as if it had not been.
pub(super) fn unseen_hours(told: &[Option<Sky>; 24], usual: Usual) -> [Unseen; 24] {
    let seen: Vec<(usize, f64)> = told
        .iter()
        .enumerate()
        .filter_map(|(hour, sky)| Some((hour, deviate((*sky)?) - usual.middle)))
        .collect();
    let common = HOURS_IN_COMMON + usual.variance;
    let root = root_of(&seen, common);
    // What is solved for once: the deviates, and what the day has in common with each.
    let mut to_told: Vec<f64> = seen.iter().map(|(_, deviate)| *deviate).collect();
    forward(&root, &mut to_told);
    let mut of_day = vec![common; seen.len()];
    forward(&root, &mut of_day);
    let day_variance = (common - dot(&of_day, &of_day)).max(0.0);
    std::array::from_fn(|hour| {
        let mut shared: Vec<f64> = seen
            .iter()
            .map(|(at, _)| covariance(hour, *at, common))
            .collect();
        forward(&root, &mut shared);
        let whole = common + 1.0 - HOURS_IN_COMMON;
        let variance = (whole - dot(&shared, &shared)).max(0.0);
        let of_day = day_variance.min(variance);
        let of_day = of_day + RUNS_ON * (variance - of_day);
        Unseen {
            middle: usual.middle + dot(&shared, &to_told),
            day_sd: of_day.sqrt(),
            own_sd: (variance - of_day).sqrt(),
        }
    })
}

/// Of the deviates of two hours of one day, which have so much in common.
fn covariance(one: usize, other: usize, common: f64) -> f64 {
    let goes_on = (0..one.abs_diff(other)).fold(1.0, |share, _| share * GOES_ON);
    common + (1.0 - HOURS_IN_COMMON) * goes_on
}

/// The lower triangular root of the covariance of hours that were told (Cholesky).
fn root_of(seen: &[(usize, f64)], common: f64) -> Vec<Vec<f64>> {
    let mut root: Vec<Vec<f64>> = Vec::with_capacity(seen.len());
    for (row, (hour, _)) in seen.iter().enumerate() {
        let mut shared: Vec<f64> = seen[..row]
            .iter()
            .map(|(at, _)| covariance(*hour, *at, common))
            .collect();
        forward(&root, &mut shared);
        let whole = covariance(*hour, *hour, common) + WORD_VARIANCE;
        let left = whole - dot(&shared, &shared);
        shared.push(left.max(WORD_VARIANCE).sqrt());
        root.push(shared);
    }
    root
}

/// Solves with the root's first rows, in place.
fn forward(root: &[Vec<f64>], right: &mut [f64]) {
    for row in 0..right.len() {
        let known = dot(&root[row], &right[..row]);
        right[row] = (right[row] - known) / root[row][row];
    }
}

/// Of as many as both have.
fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::odds::noise::normal_quantile;

    const LATITUDE_DEG: f64 = 10.0;
    /// A place that is as any other.
    const EVEN: Usual = Usual {
        middle: 0.0,
        variance: 0.0,
    };

    fn told(hours: &[(usize, Sky)]) -> [Unseen; 24] {
        let mut all = [None; 24];
        for (hour, sky) in hours {
            all[*hour] = Some(*sky);
        }
        unseen_hours(&all, EVEN)
    }

    fn before(logs: &[DayLog]) -> Usual {
        let days = (1..).map(|back| Day(20_500).plus(-back));
        let skies = days.zip(logs.iter().copied()).collect();
        Usual::before(&skies, (Day(0), Day(20_500)), LATITUDE_DEG)
    }

    #[test]
    fn words_are_where_their_light_is() {
        for sky in Sky::ALL {
            let there = Unseen {
                middle: deviate(sky),
                day_sd: 0.0,
                own_sd: 0.0,
            };
            assert!(
                (there.index(1.0) - sky.hour().mean_index()).abs() < 1e-9,
                "{sky:?}"
            );
        }
    }

    /// A third clear, 0.12 thin and 0.28 patchy, 0.19 grey and 0.08 dark, each lognormal about its mean.
    #[test]
    fn unseen_hours_are_a_mixture_of_those_with_words() {
        let shares = [0.33, 0.12, 0.28, 0.19, 0.08];
        let normal = |z: f64| 0.5 * libm::erfc(-z * std::f64::consts::FRAC_1_SQRT_2);
        let below = |index: f64| -> f64 {
            let each = Sky::ALL.into_iter().zip(shares).map(|(sky, share)| {
                let hour = sky.hour();
                let log_sd = libm::log(1.0 + hour.relative_sd * hour.relative_sd).sqrt();
                let middle = libm::log(hour.mean_index()) - 0.5 * log_sd * log_sd;
                share * normal((libm::log(index) - middle) / log_sd)
            });
            each.sum()
        };
        // Up to the brightest third, where all is near a clear sky's.
        for (place, index) in INDEX.into_iter().enumerate().take(9) {
            let wanted = normal(FROM_SD + small(place) / PER_SD);
            assert!(
                (below(index) - wanted).abs() < 0.03,
                "{index}: {}",
                below(index)
            );
        }
        let all = Unseen {
            middle: 0.0,
            day_sd: 1.0,
            own_sd: 0.0,
        };
        let many = (0..2000).map(|n| all.index(normal_quantile((f64::from(n) + 0.5) / 2000.0)));
        let mean = many.sum::<f64>() / 2000.0;
        let words = Sky::ALL.into_iter().zip(shares);
        let expected: f64 = words
            .map(|(sky, share)| share * sky.hour().mean_index())
            .sum();
        assert!((mean / expected - 1.0).abs() < 0.01, "{mean} {expected}");
    }

    #[test]
    fn nothing_told_leaves_all_of_the_doubt() {
        let day_variance = HOURS_IN_COMMON + RUNS_ON * (1.0 - HOURS_IN_COMMON);
        for hour in told(&[]) {
            assert!(hour.middle.abs() < 1e-12 && (hour.sd() - 1.0).abs() < 1e-12);
            assert!((hour.day_sd * hour.day_sd - day_variance).abs() < 1e-12);
        }
        let of_place = unseen_hours(&[None; 24], before(&[]))[12];
        assert!((of_place.sd().powi(2) - 1.0 - PLACE_VARIANCE).abs() < 1e-12);
    }

    /// Of ten hours in a row, correlated by 0.4, 0.16 and on, 0.211 of one's variance is left in the
    /// mean: a tenth of the sum of all 100 correlations over 10.
    #[test]
    fn hours_that_run_on_move_their_mean() {
        let all = (0..10_usize).flat_map(|one| (0..10_usize).map(move |other| (one, other)));
        let sum: f64 = all.map(|(one, other)| covariance(one, other, 0.0)).sum();
        let left = sum / 100.0 / covariance(0, 0, 0.0);
        assert!((left - (0.1 + RUNS_ON * 0.9)).abs() < 0.01, "{left}");
    }

    /// One hour of the same light, by hand: a far hour follows it by 0.6 / 1.1 and keeps 1 - 0.36 / 1.1
    /// of its variance; the next one by 0.76 / 1.1, and 1 - 0.5776 / 1.1.
    #[test]
    fn one_hour_does_not_stand_for_the_day() {
        let hours = told(&[(8, Sky::Clear)]);
        let (far, next) = (hours[20], hours[9]);
        assert!((far.middle - 0.6 / 1.1).abs() < 1e-4, "{far:?}");
        assert!(
            (far.sd().powi(2) - (1.0 - 0.36 / 1.1)).abs() < 1e-4,
            "{far:?}"
        );
        assert!((next.middle - 0.76 / 1.1).abs() < 1e-4, "{next:?}");
        assert!(
            (next.sd().powi(2) - (1.0 - 0.5776 / 1.1)).abs() < 1e-4,
            "{next:?}"
        );
    }

    #[test]
    fn more_hours_say_more_and_the_last_most() {
        let clear =
            |count: usize| -> Vec<_> { (6..6 + count).map(|at| (at, Sky::Clear)).collect() };
        let mut before = told(&[])[15];
        for count in 1..8 {
            let after = told(&clear(count))[15];
            assert!(
                before.middle < after.middle && after.sd() < before.sd(),
                "{count}"
            );
            before = after;
        }
        let mut turned = clear(5);
        turned.push((11, Sky::Dark));
        let hours = told(&turned);
        for hour in 12..15 {
            assert!(hours[hour].middle < hours[hour + 1].middle, "{hour}");
        }
        assert!(hours[15].middle < told(&clear(5))[15].middle);
    }

    /// By hand: ten days weigh 0.15 * 10 / (0.15 * 10 + 0.6) of their mean.
    #[test]
    fn a_diary_tells_what_is_usual() {
        let grey = DayLog::Hourly([Some(Sky::Grey); 24]);
        let usual = before(&[grey; 10]);
        assert!(
            (usual.middle - deviate(Sky::Grey) * 1.5 / 2.1).abs() < 1e-9,
            "{usual:?}"
        );
        assert!(
            (usual.variance - 0.15 * 0.6 / 2.1).abs() < 1e-9,
            "{usual:?}"
        );
        let sunny = before(&[DayLog::SunHours(10.5); 10]);
        assert!(0.3 < sunny.middle && sunny.variance < 0.05, "{sunny:?}");
        // A day half sunny is the same by words and by its count, but for what shade lets through.
        let mut half = [Some(Sky::Grey); 24];
        half[..12].fill(Some(Sky::Clear));
        let by_words = before(&[DayLog::Hourly(half); 10]);
        let daylight_h = SolarDay::new(LATITUDE_DEG, Day(20_499).of_year());
        let counted = DayLog::SunHours(0.5 * daylight_h.unwrap().daylight_h);
        let by_count = before(&[counted; 10]);
        let off = by_count.middle - by_words.middle;
        assert!(off.abs() < 0.06, "{by_count:?} {by_words:?}");
        // Two hours are no day, and what is long ago is not looked at.
        let mut few = [None; 24];
        few[8..10].fill(Some(Sky::Dark));
        assert_eq!(before(&[DayLog::Hourly(few)]), before(&[]));
        let skies = [(Day(20_400), grey)].into_iter().collect();
        let late = Usual::before(&skies, (Day(0), Day(20_500)), LATITUDE_DEG);
        assert_eq!(late, before(&[]));
    }
}
