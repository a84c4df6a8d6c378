//! What a report does to the members: weights, and new members where few are left.
//!
//! A particle filter with systematic resampling (Kitagawa, J. Comput. Graph. Stat. 5 (1996) 1) and
//! kernel shrinkage of what does not change (Liu and West, in: Sequential Monte Carlo Methods in
//! Practice, 2001, chapter 10). A report that would leave fewer than a third of the members
//! effective is taken in parts, with new members between them.

use super::build::{Build, small};
use super::ensemble::{Ensemble, column};
use super::noise::{Noise, Purpose};
use super::prior::{Multiplier, STATICS};
use super::systematic::systematic;

/// Effective members below this share are too few.
const LEAST_EFFECTIVE: f64 = 1.0 / 3.0;
/// Liu and West's discount: how much of the spread a new member keeps of its parent.
const DISCOUNT: f64 = 0.98;
/// A report is taken in so many parts at most.
const MOST_PARTS: i64 = 8;
/// What is shrunk and jittered: the multipliers, the offsets and the store's heat.
const DIMS: usize = STATICS + 1;

/// How many members the weights are worth: 1 / sum of squares, of weights that sum to 1.
pub(super) fn effective(weight: &[f64]) -> f64 {
    let squares: f64 = weight.iter().map(|weight| weight * weight).sum();
    if 0.0 < squares { 1.0 / squares } else { 0.0 }
}

/// Weighs the members by a report's likelihood, and renews them where few are left. Returns the
/// mean likelihood before: how far the report was to be expected.
///
/// `likelihood` is above 0 for every member; `address` names the report among all others.
pub(super) fn assimilate(
    ensemble: &mut Ensemble,
    build: &Build,
    seed: u64,
    address: i64,
    likelihood: impl Fn(&Ensemble, usize) -> f64,
) -> f64 {
    let members = ensemble.members();
    let log_of = |ensemble: &Ensemble| -> Vec<f64> {
        (0..members)
            .map(|member| libm::log(likelihood(ensemble, member).max(f64::MIN_POSITIVE)))
            .collect()
    };
    let mut logs = log_of(ensemble);
    let expected: f64 = logs
        .iter()
        .zip(&ensemble.weight)
        .map(|(log, weight)| weight * libm::exp(*log))
        .sum();

    let least = LEAST_EFFECTIVE * small(members);
    let mut taken = 0.0;
    for part in 0..MOST_PARTS {
        let rest = 1.0 - taken;
        let whole = weighed(&ensemble.weight, &logs, rest);
        if least <= effective(&whole) || part + 1 == MOST_PARTS {
            ensemble.weight = whole;
            break;
        }
        let (mut low, mut high) = (0.0, rest);
        for _ in 0..20 {
            let middle = 0.5 * (low + high);
            if least <= effective(&weighed(&ensemble.weight, &logs, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        ensemble.weight = weighed(&ensemble.weight, &logs, low);
        renew(
            ensemble,
            build,
            seed,
            address.wrapping_mul(MOST_PARTS) + part,
        );
        taken += low;
        logs = log_of(ensemble);
    }
    expected
}

/// Weights times a power of the likelihood, summing to 1.
fn weighed(weight: &[f64], logs: &[f64], power: f64) -> Vec<f64> {
    let most = logs
        .iter()
        .fold(f64::NEG_INFINITY, |most, log| most.max(*log));
    let mut weighed: Vec<f64> = weight
        .iter()
        .zip(logs)
        .map(|(weight, log)| weight * libm::exp(power * (log - most)))
        .collect();
    let sum: f64 = weighed.iter().sum();
    if 0.0 < sum {
        for weight in &mut weighed {
            *weight /= sum;
        }
        weighed
    } else {
        weight.to_vec()
    }
}

/// Resamples, and moves each new member a little: its multipliers and its store shrink towards the
/// mean and are spread again by as much, so that mean and covariance stay.
fn renew(ensemble: &mut Ensemble, build: &Build, seed: u64, address: i64) {
    let members = ensemble.members();
    let (mean, root) = moments(ensemble, build);
    let start = Noise::new(seed, Purpose::Resample).at(address).uniform(0);
    let of = systematic(&ensemble.weight, members, start);
    ensemble.become_copies(&of);

    let keep = (3.0 * DISCOUNT - 1.0) / (2.0 * DISCOUNT);
    let spread = (1.0 - keep * keep).sqrt();
    let noise = Noise::new(seed, Purpose::Kernel).at(address);
    for member in 0..members {
        let mut z = [0.0; DIMS];
        for (dim, z) in z.iter_mut().enumerate() {
            // What is the same in all has nothing to be spread.
            if 0.0 < root[dim][dim] {
                *z = noise.at(i64::try_from(dim).unwrap_or(0)).normal(member);
            }
        }
        let was = point(ensemble, build, member);
        let before_c = ensemble.store_c(build, member);
        let capacity = ensemble.get(column::FACTOR + Multiplier::Capacity.index(), member);
        for dim in 0..DIMS {
            let mut value = keep * was[dim] + (1.0 - keep) * mean[dim];
            for (of, z) in root[dim].iter().zip(z).take(dim + 1) {
                value += spread * of * z;
            }
            if dim < STATICS {
                ensemble.set(column::LOG + dim, member, value);
            } else {
                let moved_j = (value - was[dim]) * capacity;
                for node in 0..build.row.count {
                    let heat_j = ensemble.get(column::HEAT + node, member);
                    let share = build.row.mass_share[node];
                    ensemble.set(column::HEAT + node, member, heat_j + share * moved_j);
                }
            }
        }
        // The jacket lies on the way to the air and moves by its share.
        let moved_k = ensemble.store_c(build, member) - before_c;
        let (inner, outer) = build.warmth;
        for (column, warmth) in [(column::JACKET, inner), (column::OUTER, outer)] {
            let jacket_c = ensemble.get(column, member);
            ensemble.set(column, member, jacket_c + warmth * moved_k);
        }
    }
    // The store keeps its temperature when what it holds is told otherwise.
    let capacity = Multiplier::Capacity.index();
    let before: Vec<f64> = ensemble.column(column::FACTOR + capacity).to_vec();
    ensemble.renew_factors();
    for (member, before) in before.into_iter().enumerate() {
        let ratio = ensemble.get(column::FACTOR + capacity, member) / before;
        for node in 0..build.row.count {
            let heat_j = ensemble.get(column::HEAT + node, member);
            ensemble.set(column::HEAT + node, member, heat_j * ratio);
        }
    }
}

/// Multipliers and heat of a member.
fn point(ensemble: &Ensemble, build: &Build, member: usize) -> [f64; DIMS] {
    let mut point = [0.0; DIMS];
    for (dim, value) in point.iter_mut().enumerate().take(STATICS) {
        *value = ensemble.get(column::LOG + dim, member);
    }
    point[STATICS] = ensemble.store_j(build, member);
    point
}

/// Weighted mean, and the lower triangular root of the covariance (Cholesky). A direction in which
/// all members are the same has none.
fn moments(ensemble: &Ensemble, build: &Build) -> ([f64; DIMS], [[f64; DIMS]; DIMS]) {
    let mut mean = [0.0; DIMS];
    for member in 0..ensemble.members() {
        let weight = ensemble.weight[member];
        for (mean, value) in mean.iter_mut().zip(point(ensemble, build, member)) {
            *mean += weight * value;
        }
    }
    let mut covariance = [[0.0; DIMS]; DIMS];
    for member in 0..ensemble.members() {
        let weight = ensemble.weight[member];
        let point = point(ensemble, build, member);
        for row in 0..DIMS {
            for place in 0..=row {
                covariance[row][place] +=
                    weight * (point[row] - mean[row]) * (point[place] - mean[place]);
            }
        }
    }
    let mut root = [[0.0; DIMS]; DIMS];
    for row in 0..DIMS {
        for place in 0..=row {
            let mut left = covariance[row][place];
            let known = root[row].iter().zip(&root[place]).take(place);
            left -= known.map(|(one, other)| one * other).sum::<f64>();
            root[row][place] = if row == place {
                if 1e-12 * covariance[row][row] < left {
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
    (mean, root)
}
