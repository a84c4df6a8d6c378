//! Levenberg and Marquardt's search, with the readings' weights found anew around it.

use levenberg_marquardt::{LevenbergMarquardt, TerminationReason};

use super::problem::{Problem, readings};
use super::{FitError, Settings};
use crate::bench::plan::Sample;
use crate::bench::readings::wild;
use crate::numerics::median::median;

/// Rounds of reweighting at most.
const MOST_ROUNDS: usize = 15;
/// Share of its pull that a reading keeps which is far off all those beside it.
const WILD: f64 = 0.01;
/// The weights are settled when no unknown moves by more than this share of its described spread.
const SETTLED: f64 = 1e-3;
/// A reading counts less beyond so many standard deviations: 95 % as sharp as plain least squares
/// on clean readings. Huber, Robust Statistics, from memory.
const ROBUST_SDS: f64 = 1.345;
/// No thermometer of this job is quieter. \[K\]
const LEAST_NOISE_K: f64 = 0.1;
/// From the median of absolute values to a standard deviation, for normal noise.
const FROM_MEDIAN: f64 = 1.4826;

/// The end of the search.
pub(super) struct Solved<'a> {
    pub(super) problem: Problem<'a>,
    /// Noise of store and of pot. \[K\]
    pub(super) noise_k: [f64; 2],
    pub(super) robust: Robust,
    pub(super) converged: bool,
}

/// Residual beyond which readings of store and of pot count less. \[K\]
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Robust {
    pub(super) bend_k: [f64; 2],
}

impl Robust {
    /// Weight of a residual: the slope of soft-L1.
    pub(super) fn weight(self, residual_k: f64, is_pot: bool) -> f64 {
        let ratio = residual_k / self.bend_k[usize::from(is_pot)];
        1.0 / (1.0 + ratio * ratio).sqrt()
    }
}

pub(super) fn solve<'a>(
    mut problem: Problem<'a>,
    settings: &Settings,
) -> Result<Solved<'a>, FitError> {
    let mut noise_k = [1.0; 2];
    let mut robust = Robust {
        bend_k: [settings.robust_k.unwrap_or(5.0); 2],
    };
    let mut converged = false;
    // A bend that was asked for is all that is done to any reading.
    let wild = match settings.robust_k {
        None => wild_of(&problem),
        Some(_) => vec![false; problem.scale.len()],
    };
    quieten(&mut problem, &wild);
    let search = LevenbergMarquardt::new()
        .with_ftol(1e-9)
        .with_xtol(1e-8)
        .with_patience(12);
    for round in 0..MOST_ROUNDS {
        let before = problem.x.clone();
        let (found, report) = search.minimize(problem);
        problem = found;
        if problem.raw_k.is_none() {
            return Err(FitError::NoSolution);
        }
        let stopped = matches!(
            report.termination,
            TerminationReason::User(_) | TerminationReason::Numerical(_)
        );
        let moved = (&problem.x - &before).amax();
        converged = !stopped && moved < SETTLED;
        if stopped || (converged && round > 1) {
            break;
        }
        if settings.robust_k.is_none() {
            noise_k = noises_k(&problem, &wild, noise_k);
        }
        let bend_k = |noise_k: f64| settings.robust_k.unwrap_or(ROBUST_SDS * noise_k);
        robust.bend_k = noise_k.map(bend_k);
        reweigh(&mut problem, noise_k, robust);
        quieten(&mut problem, &wild);
    }
    Ok(Solved {
        problem,
        noise_k,
        robust,
        converged,
    })
}

/// Which readings are far off all those beside them, whatever the model says. Of a dozen readings one
/// that is mistyped else bends the curve: all the others then seem noisy, and it counts as they do.
fn wild_of(problem: &Problem<'_>) -> Vec<bool> {
    let mut all = Vec::new();
    for plan in problem.plans {
        let columns: [fn(&Sample) -> Option<f64>; 2] = [|of| of.store_c, |of| of.pot_c];
        let wild = columns.map(|read| {
            let read = |(idx, of): (usize, &Sample)| Some((idx, (of.time_s, read(of)?)));
            let (places, points): (Vec<usize>, Vec<_>) =
                plan.samples.iter().enumerate().filter_map(read).unzip();
            let found = wild(&points).into_iter();
            let found = found.filter_map(|(place, _)| places.get(place).copied());
            found.collect::<Vec<usize>>()
        });
        for (idx, sample) in plan.samples.iter().enumerate() {
            let read = [sample.store_c, sample.pot_c];
            let there = read.iter().zip(&wild).filter(|(read, _)| read.is_some());
            all.extend(there.map(|(_, wild)| wild.contains(&idx)));
        }
    }
    all
}

fn quieten(problem: &mut Problem<'_>, wild: &[bool]) {
    let scales = problem.scale.iter_mut().zip(wild);
    for (scale, _) in scales.filter(|(_, is_wild)| **is_wild) {
        *scale *= WILD;
    }
}

/// Robust standard deviation of the residuals of store and of pot. \[K\]
fn noises_k(problem: &Problem<'_>, wild: &[bool], before: [f64; 2]) -> [f64; 2] {
    let mut sizes = [Vec::new(), Vec::new()];
    let kinds = problem.plans.iter().flat_map(readings);
    let all = problem.raw_k.iter().flatten().zip(kinds).zip(wild);
    for ((residual, is_pot), _) in all.filter(|(_, is_wild)| !**is_wild) {
        sizes[usize::from(is_pot)].push(residual.abs());
    }
    let [mut store, mut pot] = sizes;
    let noise = |sizes: &mut Vec<f64>, before: f64| {
        if sizes.is_empty() {
            return before;
        }
        (FROM_MEDIAN * median(sizes)).max(LEAST_NOISE_K)
    };
    [noise(&mut store, before[0]), noise(&mut pot, before[1])]
}

fn reweigh(problem: &mut Problem<'_>, noise_k: [f64; 2], robust: Robust) {
    let kinds: Vec<bool> = problem.plans.iter().flat_map(readings).collect();
    let raw_k = problem.raw_k.clone().unwrap_or_default();
    for ((scale, residual), is_pot) in problem.scale.iter_mut().zip(raw_k).zip(kinds) {
        *scale = robust.weight(residual, is_pot).sqrt() / noise_k[usize::from(is_pot)];
    }
}
