//! What a report does to the members: weights, and new members where few are left.
//!
//! A particle filter with systematic resampling (Kitagawa, J. Comput. Graph. Stat. 5 (1996) 1) and
//! kernel shrinkage of what does not change (Liu and West, in: Sequential Monte Carlo Methods in
//! Practice, 2001, chapter 10). A report that would leave fewer than a third of the members
//! effective is taken in parts, with new members between them.

use super::build::{Build, small};
use super::ensemble::{Ensemble, column};
use super::moments::Moments;
use super::noise::{Noise, Purpose};
use super::prior::{Multiplier, STATICS};
use super::regress::{Regression, Seen};
use super::systematic::systematic;

/// Effective members below this share are too few.
const LEAST_EFFECTIVE: f64 = 1.0 / 3.0;
/// Liu and West's discount: how much of the spread a new member keeps of its parent.
const DISCOUNT: f64 = 0.98;
/// With a smaller share, or fewer than twice the figures, nothing is cleared of chance: all that is left is
/// chance.
const LEAST_CLEARED: f64 = 0.2;
/// A report is taken in so many parts at most.
const MOST_PARTS: i64 = 8;
/// Between these every store is, and stays. [°C]
const STORE_RANGE_C: [f64; 2] = [-40.0, 550.0];
/// What is shrunk and jittered: the multipliers, the offsets and the store's heat.
pub(super) const DIMS: usize = STATICS + 1;
/// Those of one member.
pub(super) type Point = [f64; DIMS];

/// How many members the weights are worth: 1 / sum of squares, of weights that sum to 1.
pub(super) fn effective(weight: &[f64]) -> f64 {
    let squares: f64 = weight.iter().map(|weight| weight * weight).sum();
    if 0.0 < squares { 1.0 / squares } else { 0.0 }
}

/// Weighs the members by a report's likelihood, and renews them where few are left. Returns the
/// mean likelihood before: how far the report was to be expected.
///
/// `seen` is what the report is of, and `likelihood`, above 0 for every member, hangs on that alone; `address` names the report among all others.
pub(super) fn assimilate(
    ensemble: &mut Ensemble,
    build: &Build,
    (seed, address): (u64, i64),
    seen: impl Fn(&Ensemble, usize) -> Seen,
    likelihood: impl Fn(Seen) -> f64,
) -> f64 {
    let members = ensemble.members();
    let log_of = |ensemble: &Ensemble| -> Vec<f64> {
        (0..members)
            .map(|member| libm::log(likelihood(seen(ensemble, member)).max(f64::MIN_POSITIVE)))
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
    for place in 0..MOST_PARTS {
        let rest = 1.0 - taken;
        let whole = weighed(&ensemble.weight, &logs, rest);
        if least <= effective(&whole) || place + 1 == MOST_PARTS {
            weigh_anew(ensemble, build, whole, &seen);
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
        let part = weighed(&ensemble.weight, &logs, low);
        weigh_anew(ensemble, build, part, &seen);
        let address = address.wrapping_mul(MOST_PARTS) + place;
        renew(ensemble, build, seed, address);
        taken += low;
        logs = log_of(ensemble);
    }
    expected
}

/// Gives the members new weights, and takes back what changes by chance with that.
pub(super) fn weigh_anew(
    ensemble: &mut Ensemble,
    build: &Build,
    weight: Vec<f64>,
    seen: impl Fn(&Ensemble, usize) -> Seen,
) {
    if effective(&weight) < (LEAST_CLEARED * small(ensemble.members())).max(2.0 * small(DIMS)) {
        // So few have no moments: those that explain nothing would be put anywhere.
        ensemble.weight = weight;
        return;
    }
    let members = 0..ensemble.members();
    let seen: Vec<Seen> = members.map(|member| seen(ensemble, member)).collect();
    let regression = Regression::new(&points(ensemble, build), &seen, &ensemble.weight);
    let cleared = regression.cleared(&weight);
    ensemble.clear_dishes(|values| regression.cleared_alone(values, &weight));
    ensemble.weight = weight;
    settle(ensemble, build, &cleared);
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
    let before = Moments::of(&points(ensemble, build), &ensemble.weight);
    let dishes = ensemble.dish_moments();
    let start = Noise::new(seed, Purpose::Resample).at(address).uniform(0);
    let of = systematic(&ensemble.weight, members, start);
    ensemble.become_copies(&of);

    let keep = (3.0 * DISCOUNT - 1.0) / (2.0 * DISCOUNT);
    let spread = (1.0 - keep * keep).sqrt();
    let noise = Noise::new(seed, Purpose::Kernel).at(address);
    let mut renewed = points(ensemble, build);
    for (member, renewed) in renewed.iter_mut().enumerate() {
        let mut z = [0.0; DIMS];
        for (dim, z) in z.iter_mut().enumerate() {
            // What is the same in all has nothing to be spread.
            if 0.0 < before.root[dim][dim] {
                *z = noise.at(i64::try_from(dim).unwrap_or(0)).normal(member);
            }
        }
        let before = before.mean.iter().zip(&before.root);
        for (value, (mean, root)) in renewed.iter_mut().zip(before) {
            let spread_by: f64 = root.iter().zip(z).map(|(of, z)| of * z).sum();
            *value = keep * *value + (1.0 - keep) * mean + spread * spread_by;
        }
    }
    // Which members were drawn, and how they were spread, is chance, too.
    let now = Moments::of(&renewed, &ensemble.weight);
    for renewed in &mut renewed {
        *renewed = before.instead_of(&now, renewed);
    }
    settle(ensemble, build, &renewed);
    ensemble.set_dish_moments(&dishes);
}

/// Puts the members where they are to be: their multipliers, their offsets and their stores.
fn settle(ensemble: &mut Ensemble, build: &Build, points: &[Point]) {
    let [coldest_j, hottest_j] = STORE_RANGE_C.map(|store_c| build.heat_j(store_c));
    for (member, to) in points.iter().enumerate() {
        let was_j = ensemble.store_j(build, member);
        let before_c = ensemble.store_c(build, member);
        let capacity = ensemble.get(column::FACTOR + Multiplier::Capacity.index(), member);
        for (dim, value) in to.iter().enumerate().take(STATICS) {
            ensemble.set(column::LOG + dim, member, *value);
        }
        // Far from the others a straight line leads out of what any store can be.
        let kept_j = to[STATICS].clamp(coldest_j, hottest_j);
        let moved_j = (kept_j - was_j) * capacity;
        for node in 0..build.row.count {
            let heat_j = ensemble.get(column::HEAT + node, member);
            let share = build.row.mass_share[node];
            ensemble.set(column::HEAT + node, member, heat_j + share * moved_j);
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

/// Multipliers, offsets and heat of each member.
fn points(ensemble: &Ensemble, build: &Build) -> Vec<Point> {
    let of = |member| {
        let mut point = [0.0; DIMS];
        for (dim, value) in point.iter_mut().enumerate().take(STATICS) {
            *value = ensemble.get(column::LOG + dim, member);
        }
        point[STATICS] = ensemble.store_j(build, member);
        point
    };
    (0..ensemble.members()).map(of).collect()
}
