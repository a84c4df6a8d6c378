//! Levenberg and Marquardt's search, with the readings' weights found anew around it.

use levenberg_marquardt::{LevenbergMarquardt, TerminationReason};

use super::problem::{Problem, readings};
use super::{FitError, Settings};
use crate::numerics::median::median;

/// Rounds of reweighting at most.
const MOST_ROUNDS: usize = 15;
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
            noise_k = noises_k(&problem, noise_k);
        }
        let bend_k = |noise_k: f64| settings.robust_k.unwrap_or(ROBUST_SDS * noise_k);
        robust.bend_k = noise_k.map(bend_k);
        reweigh(&mut problem, noise_k, robust);
    }
    Ok(Solved {
        problem,
        noise_k,
        robust,
        converged,
    })
}

/// Robust standard deviation of the residuals of store and of pot. \[K\]
fn noises_k(problem: &Problem<'_>, before: [f64; 2]) -> [f64; 2] {
    let mut sizes = [Vec::new(), Vec::new()];
    let kinds = problem.plans.iter().flat_map(readings);
    for (residual, is_pot) in problem.raw_k.iter().flatten().zip(kinds) {
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
