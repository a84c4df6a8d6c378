//! What a report teaches of each figure, cleared of the chance of a few hundred members.
//!
//! Weights single out those members that explain a report. Whatever else these have in common by chance
//! goes along, and report by report their mean wanders off. That is no small thing: of the times to the boil
//! in the second half of a month with readings, what the bands were off by had 1.5 times the variance
//! that they told with 512 members, 1.0 with 2048, and 1.0 with 512 that are cleared of it (60 households of
//! `calibration -- --seed 80`). So a figure follows a report only as far as it goes with what the report is
//! of: what is left of it beside its regression on that keeps the mean and the covariance that it had,
//! since the likelihood hangs on nothing else. First what is seen, then the rest by regression on it, is the
//! order of two-step ensemble filters (I. Grooms, Computational Geosciences 26 (2022),
//! doi:10.1007/s10596-022-10141-x); that moments are set right, of moment matching (J. Lei and P. Bickel,
//! Monthly Weather Review 139 (2011) 3964, from memory).

use super::filter::{DIMS, Point};
use super::moments::{Moment, Moments};
use super::noise::normal_quantile;

/// One, two powers of what a report is of, and one figure beside it.
const TERMS: usize = 4;
/// A term that is the others' sum but for this share of its variance says nothing of its own.
const LEAST_SHARE: f64 = 1e-6;

/// What a member makes of the thing that is reported.
#[derive(Debug, Clone, Copy)]
pub(super) struct Seen {
    /// When it comes about or what it measures; infinite where it never comes.
    pub(super) value: f64,
    /// What the report's likelihood hangs on besides; the same of all where there is nothing.
    pub(super) beside: f64,
}

impl Seen {
    /// Of a report whose likelihood hangs on one value.
    pub(super) fn alone(value: f64) -> Self {
        Self { value, beside: 0.0 }
    }
}

/// How each figure goes with what a report is of, before it is heard.
pub(super) struct Regression {
    /// Of each member.
    terms: Vec<[f64; TERMS]>,
    /// By how much a figure changes with each term.
    slopes: [[f64; TERMS]; DIMS],
    /// What each member is beside that.
    residuals: Vec<Point>,
    /// Of these.
    moments: Moments,
    weight: Vec<f64>,
}

impl Regression {
    /// Of members with these weights.
    pub(super) fn new(points: &[Point], seen: &[Seen], weight: &[f64]) -> Self {
        let values: Vec<f64> = seen.iter().map(|seen| seen.value).collect();
        let both = scores(&values, weight).into_iter().zip(seen);
        let mut terms: Vec<_> = both
            .map(|(score, seen)| [1.0, score, score * score, seen.beside])
            .collect();
        orthonormal(&mut terms, weight);
        let mut slopes = [[0.0; TERMS]; DIMS];
        for ((terms, point), weight) in terms.iter().zip(points).zip(weight) {
            for (slopes, value) in slopes.iter_mut().zip(point) {
                for (slope, term) in slopes.iter_mut().zip(terms) {
                    *slope += weight * value * term;
                }
            }
        }
        let mut residuals = points.to_vec();
        for (residual, terms) in residuals.iter_mut().zip(&terms) {
            for (residual, slopes) in residual.iter_mut().zip(&slopes) {
                *residual -= product(slopes, terms);
            }
        }
        Self {
            moments: Moments::of(&residuals, weight),
            weight: weight.to_vec(),
            terms,
            slopes,
            residuals,
        }
    }

    /// Where the members are by their new weights, once what changed by chance is taken back.
    pub(super) fn cleared(&self, weight: &[f64]) -> Vec<Point> {
        let now = Moments::of(&self.residuals, weight);
        let members = self.residuals.iter().zip(&self.terms);
        let cleared = members.map(|(residual, terms)| {
            let mut moved = self.moments.instead_of(&now, residual);
            for (moved, slopes) in moved.iter_mut().zip(&self.slopes) {
                *moved += product(slopes, terms);
            }
            moved
        });
        cleared.collect()
    }

    /// The same of one figure by itself: of those that a report of another thing says nothing of.
    pub(super) fn cleared_alone(&self, values: &mut [f64], weight: &[f64]) {
        let mut slopes = [0.0; TERMS];
        for ((value, terms), weight) in values.iter().zip(&self.terms).zip(&self.weight) {
            for (slope, term) in slopes.iter_mut().zip(terms) {
                *slope += weight * value * term;
            }
        }
        for (value, terms) in values.iter_mut().zip(&self.terms) {
            *value -= product(&slopes, terms);
        }
        let before = Moment::of(values, &self.weight);
        let now = Moment::of(values, weight);
        for (value, terms) in values.iter_mut().zip(&self.terms) {
            *value = product(&slopes, terms) + before.instead_of(now, *value);
        }
    }
}

fn product(slopes: &[f64; TERMS], terms: &[f64; TERMS]) -> f64 {
    slopes
        .iter()
        .zip(terms)
        .map(|(slope, term)| slope * term)
        .sum()
}

/// Makes the terms unrelated and of one size, by their weights (Gram and Schmidt).
fn orthonormal(terms: &mut [[f64; TERMS]], weight: &[f64]) {
    for term in 0..TERMS {
        let sum = |of: &dyn Fn(&[f64; TERMS]) -> f64| -> f64 {
            let both = terms.iter().zip(weight);
            both.map(|(terms, weight)| weight * of(terms)).sum()
        };
        let before = sum(&|terms| terms[term] * terms[term]);
        let mut shares = [0.0; TERMS];
        for (other, share) in shares.iter_mut().enumerate().take(term) {
            *share = sum(&|terms| terms[term] * terms[other]);
        }
        for terms in terms.iter_mut() {
            terms[term] -= product(&shares, terms);
        }
        let left: f64 = terms
            .iter()
            .zip(weight)
            .map(|(terms, weight)| weight * terms[term] * terms[term])
            .sum();
        let scale = if LEAST_SHARE * before < left {
            1.0 / left.sqrt()
        } else {
            0.0
        };
        for terms in terms.iter_mut() {
            terms[term] *= scale;
        }
    }
}

/// Where each value stands among all, as a standard normal value; the same for those that are equal.
fn scores(values: &[f64], weight: &[f64]) -> Vec<f64> {
    let mut order: Vec<usize> = (0..values.len()).collect();
    order.sort_by(|a, b| values[*a].total_cmp(&values[*b]));
    let least = 0.5 / super::build::small(values.len().max(1));
    let mut scores = vec![0.0; values.len()];
    let mut below = 0.0;
    for equal in order.chunk_by(|a, b| values[*a].total_cmp(&values[*b]).is_eq()) {
        let own: f64 = equal.iter().map(|member| weight[*member]).sum();
        let place = (below + 0.5 * own).clamp(least, 1.0 - least);
        let score = normal_quantile(place);
        for member in equal {
            scores[*member] = score;
        }
        below += own;
    }
    scores
}

#[cfg(test)]
mod tests {
    use super::super::build::small;
    use super::super::filter::effective;
    use super::super::noise::{Noise, Purpose};
    use super::*;

    const MEMBERS: usize = 512;
    /// How far a figure goes with the one that is seen.
    const TOGETHER: f64 = 0.6;

    /// Independent standard normal figures, but for the second, which goes with the first.
    fn drawn(seed: u64) -> Vec<Point> {
        let noise = Noise::new(seed, Purpose::Multiplier);
        let of = |member| {
            let mut point = [0.0; DIMS];
            for (dim, value) in (0..).zip(&mut point) {
                *value = noise.at(dim).normal(member);
            }
            point[1] = TOGETHER * point[0] + (1.0 - TOGETHER * TOGETHER).sqrt() * point[1];
            point
        };
        (0..MEMBERS).map(of).collect()
    }

    /// By how likely 1.2 is to be seen of the first figure, with an error of 0.3.
    fn weighed(points: &[Point]) -> Vec<f64> {
        let likely = |point: &Point| libm::exp(-0.5 * ((point[0] - 1.2) / 0.3).powi(2));
        let sum: f64 = points.iter().map(likely).sum();
        points.iter().map(|point| likely(point) / sum).collect()
    }

    fn heard(points: &[Point], weight: &[f64]) -> Vec<Point> {
        let even = [1.0 / small(MEMBERS); MEMBERS];
        let seen: Vec<_> = points.iter().map(|point| Seen::alone(point[0])).collect();
        Regression::new(points, &seen, &even).cleared(weight)
    }

    fn variance(points: &[Point], weight: &[f64], dim: usize) -> f64 {
        let mean = Moments::of(points, weight).mean[dim];
        let both = points.iter().zip(weight);
        both.map(|(point, weight)| weight * (point[dim] - mean).powi(2))
            .sum()
    }

    /// One figure by itself is learned as it is among others, but for what they have in common.
    #[test]
    fn one_figure_alone_is_learned_alike() {
        let points = drawn(9);
        let even = [1.0 / small(MEMBERS); MEMBERS];
        let weight = weighed(&points);
        let seen: Vec<_> = points.iter().map(|point| Seen::alone(point[0])).collect();
        let regression = Regression::new(&points, &seen, &even);
        let among = regression.cleared(&weight);
        let mut alone: Vec<f64> = points.iter().map(|point| point[1]).collect();
        regression.cleared_alone(&mut alone, &weight);
        let alone: Vec<Point> = alone.iter().map(|value| [*value; DIMS]).collect();
        let (mean_alone, mean_among) = (
            Moments::of(&alone, &weight).mean[1],
            Moments::of(&among, &weight).mean[1],
        );
        assert!((mean_alone - mean_among).abs() < 1e-9);
        let both = [&alone, &among].map(|points| variance(points, &weight, 1));
        assert!((both[0] / both[1] - 1.0).abs() < 0.1, "{both:?}");
    }

    /// The normal law's own answer: mean 1.2 / (1 + 0.09) and variance 0.09 / (1 + 0.09) of what is
    /// seen, and of the other by its regression (A. Gelman et al., Bayesian Data Analysis, section
    /// 2.5, from memory).
    #[test]
    fn normal_figures_are_learned_as_the_normal_law_has_it() {
        let (mean_seen, variance_seen) = (1.2 / 1.09, 0.09 / 1.09);
        let square = TOGETHER * TOGETHER;
        let (mut means, mut variances) = ([0.0; 3], [0.0; 3]);
        let draws = 40;
        for seed in 0..draws {
            let points = drawn(seed);
            let weight = weighed(&points);
            assert!(effective(&weight) < 250.0);
            let cleared = heard(&points, &weight);
            for dim in 0..3 {
                means[dim] += Moments::of(&cleared, &weight).mean[dim] / draws as f64;
                variances[dim] += variance(&cleared, &weight, dim) / draws as f64;
            }
        }
        let expected = [mean_seen, TOGETHER * mean_seen, 0.0];
        let spread = [variance_seen, 1.0 - square + square * variance_seen, 1.0];
        for dim in 0..3 {
            // Three standard errors of the draws.
            assert!((means[dim] - expected[dim]).abs() < 0.025, "{means:?}");
            assert!((variances[dim] - spread[dim]).abs() < 0.03, "{variances:?}");
        }
    }

    /// Month after month the chance of the weights alone adds up; by regression a third of it is left.
    #[test]
    fn what_a_report_says_nothing_of_hardly_moves() {
        let (mut plain, mut cleared) = (0.0, 0.0);
        for seed in 100..140 {
            let points = drawn(seed);
            let even = [1.0 / small(MEMBERS); MEMBERS];
            let weight = weighed(&points);
            let before = Moments::of(&points, &even).mean;
            let moved = |points: &[Point]| -> f64 {
                let after = Moments::of(points, &weight).mean;
                (2..DIMS)
                    .map(|dim| (after[dim] - before[dim]).powi(2))
                    .sum()
            };
            plain += moved(&points);
            cleared += moved(&heard(&points, &weight));
        }
        assert!(cleared < plain / 3.0, "{cleared} {plain}");
    }

    /// What the likelihood hangs on beside the thing seen is as the weights have it.
    #[test]
    fn what_stands_beside_follows_the_weights() {
        let points = drawn(7);
        let even = [1.0 / small(MEMBERS); MEMBERS];
        let weight = weighed(&points);
        let seen: Vec<_> = points
            .iter()
            .map(|point| Seen {
                value: point[5],
                beside: point[0],
            })
            .collect();
        let cleared = Regression::new(&points, &seen, &even).cleared(&weight);
        let (by_weights, after) = (
            Moments::of(&points, &weight).mean[0],
            Moments::of(&cleared, &weight).mean[0],
        );
        assert!((by_weights - after).abs() < 1e-9, "{by_weights} {after}");
    }

    /// Some pots never boil, and a figure may be the same in all.
    #[test]
    fn what_never_comes_is_no_trouble() {
        let mut points = drawn(8);
        for point in &mut points {
            point[3] = 2.0;
        }
        let weight = weighed(&points);
        let even = [1.0 / small(MEMBERS); MEMBERS];
        for share in [0, 10, MEMBERS] {
            let seen: Vec<_> = (0..MEMBERS)
                .map(|member| {
                    Seen::alone(if member < share {
                        points[member][0]
                    } else {
                        f64::INFINITY
                    })
                })
                .collect();
            let cleared = Regression::new(&points, &seen, &even).cleared(&weight);
            for point in &cleared {
                assert!(point.iter().all(|value| value.is_finite()));
                assert!((point[3] - 2.0).abs() < 1e-9, "{}", point[3]);
            }
        }
    }
}
