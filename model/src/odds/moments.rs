//! Means and covariances of weighted members, and members that are given others.

use super::filter::{DIMS, Point};

/// A variance below this share of another is none.
const NOTHING: f64 = 1e-12;

/// Mean and covariance.
#[derive(Debug, Clone)]
pub(super) struct Moments {
    pub(super) mean: Point,
    /// Lower triangular root of the covariance (Cholesky). A direction in which all members are the same
    /// has none.
    pub(super) root: [Point; DIMS],
}

impl Moments {
    /// Of points with these weights, which sum to 1.
    pub(super) fn of(points: &[Point], weight: &[f64]) -> Self {
        let mut mean = [0.0; DIMS];
        for (point, weight) in points.iter().zip(weight) {
            for (mean, value) in mean.iter_mut().zip(point) {
                *mean += weight * value;
            }
        }
        let mut covariance = [[0.0; DIMS]; DIMS];
        for (point, weight) in points.iter().zip(weight) {
            for row in 0..DIMS {
                let off = weight * (point[row] - mean[row]);
                for place in 0..=row {
                    covariance[row][place] += off * (point[place] - mean[place]);
                }
            }
        }
        let mut root = [[0.0; DIMS]; DIMS];
        for row in 0..DIMS {
            for place in 0..=row {
                let known = root[row].iter().zip(&root[place]).take(place);
                let known: f64 = known.map(|(one, other): (&f64, &f64)| one * other).sum();
                let left = covariance[row][place] - known;
                root[row][place] = if row == place {
                    if NOTHING * covariance[row][row] < left {
                        left.sqrt()
                    } else {
                        0.0
                    }
                } else if 0.0 < root[place][place] {
                    left / root[place][place]
                } else {
                    0.0
                };
            }
        }
        Self { mean, root }
    }

    /// A point among others of the moments `now`, put where it stands among such with these.
    pub(super) fn instead_of(&self, now: &Self, point: &Point) -> Point {
        let mut even = [0.0; DIMS];
        for row in 0..DIMS {
            let known = now.root[row].iter().zip(&even).take(row);
            let known: f64 = known.map(|(one, even)| one * even).sum();
            if 0.0 < now.root[row][row] {
                even[row] = (point[row] - now.mean[row] - known) / now.root[row][row];
            }
        }
        let mut moved = self.mean;
        for (moved, row) in moved.iter_mut().zip(&self.root) {
            *moved += row
                .iter()
                .zip(&even)
                .map(|(one, even)| one * even)
                .sum::<f64>();
        }
        moved
    }
}

/// Mean and variance of one figure.
#[derive(Debug, Clone, Copy)]
pub(super) struct Moment {
    mean: f64,
    variance: f64,
}

impl Moment {
    /// Of values with these weights, which sum to 1.
    pub(super) fn of(values: &[f64], weight: &[f64]) -> Self {
        let sum = |of: &dyn Fn(f64) -> f64| -> f64 {
            let both = values.iter().zip(weight);
            both.map(|(value, weight)| weight * of(*value)).sum()
        };
        let mean = sum(&|value| value);
        let variance = sum(&|value| (value - mean) * (value - mean));
        Self { mean, variance }
    }

    /// As [`Moments::instead_of`].
    pub(super) fn instead_of(self, now: Self, value: f64) -> f64 {
        let scale = if NOTHING * self.variance < now.variance {
            (self.variance / now.variance).sqrt()
        } else {
            1.0
        };
        self.mean + scale * (value - now.mean)
    }
}

#[cfg(test)]
mod tests {
    use super::super::noise::{Noise, Purpose};
    use super::*;

    const MEMBERS: usize = 300;

    /// Figures that go together, one that is the same in all, and weights of some size.
    fn drawn(seed: u64) -> (Vec<Point>, Vec<f64>) {
        let noise = Noise::new(seed, Purpose::Multiplier);
        let points = (0..MEMBERS).map(|member| {
            let mut point = [0.0; DIMS];
            for (dim, value) in (0..).zip(&mut point) {
                *value = noise.at(dim).normal(member);
            }
            point[1] = 3.0 + 0.5 * point[0] + 0.1 * point[1];
            point[4] = 7.0;
            point
        });
        let weights: Vec<f64> = (0..MEMBERS)
            .map(|member| noise.at(99).uniform(member))
            .collect();
        let sum: f64 = weights.iter().sum();
        let weights = weights.iter().map(|weight| weight / sum).collect();
        (points.collect(), weights)
    }

    #[test]
    fn members_are_given_the_moments_of_others() {
        let ((others, by), (points, weight)) = (drawn(1), drawn(2));
        let (to, now) = (Moments::of(&others, &by), Moments::of(&points, &weight));
        let moved = points.iter().map(|point| to.instead_of(&now, point));
        let after = Moments::of(&moved.collect::<Vec<_>>(), &weight);
        for dim in 0..DIMS {
            assert!((after.mean[dim] - to.mean[dim]).abs() < 1e-9);
            for place in 0..DIMS {
                let off = after.root[dim][place] - to.root[dim][place];
                assert!(off.abs() < 1e-7, "{dim} {place} {off}");
            }
        }
    }

    #[test]
    fn one_figure_is_given_the_moments_of_another() {
        let ((others, by), (points, weight)) = (drawn(3), drawn(4));
        let figure = |points: &[Point]| points.iter().map(|point| point[1]).collect::<Vec<_>>();
        let (to, values) = (Moment::of(&figure(&others), &by), figure(&points));
        let now = Moment::of(&values, &weight);
        let moved = values.iter().map(|value| to.instead_of(now, *value));
        let after = Moment::of(&moved.collect::<Vec<_>>(), &weight);
        assert!((after.mean - to.mean).abs() < 1e-12);
        assert!((after.variance - to.variance).abs() < 1e-12);
    }

    #[test]
    fn what_is_the_same_in_all_stays() {
        let (points, weight) = drawn(5);
        let now = Moments::of(&points, &weight);
        let moved = now.instead_of(&now, &points[0]);
        for (moved, was) in moved.iter().zip(points[0]) {
            assert!((moved - was).abs() < 1e-9);
        }
        let same = Moment::of(&[7.0; 4], &[0.25; 4]);
        assert!((same.instead_of(same, 7.0) - 7.0).abs() < 1e-12);
    }
}
