//! How sure the estimates are, and which of them hang together.

use nalgebra::{DMatrix, DVector};

use super::problem::{Problem, readings};
use super::solve::Solved;
use super::{Estimate, Parameter};

/// Two estimates with a correlation beyond this...
const TOGETHER: f64 = 0.9;
/// ...of which neither is known better than to this share cannot be told apart.
const VAGUE_SHARE: f64 = 0.08;
/// Longest lag at which residuals are asked whether they hang together, as a share of the run.
const LONGEST_LAG: usize = 5;

/// The spread of the solution.
pub(super) struct Spread {
    /// Of all unknowns, in units of their axes.
    covariance: DMatrix<f64>,
    /// Described spread of each, of the logarithm for a ratio.
    axis_sd: Vec<f64>,
    /// Share of each that the runs told.
    pub(super) told: Vec<f64>,
}

impl Spread {
    /// Standard error of a parameter, in its unit.
    pub(super) fn sd(&self, idx: usize, value: f64, parameter: Parameter) -> f64 {
        let sd = self.covariance[(idx, idx)].max(0.0).sqrt() * self.axis_sd[idx];
        if parameter.is_ratio() { sd * value } else { sd }
    }

    pub(super) fn correlation(&self, row: usize, col: usize) -> f64 {
        let of = |row: usize, col: usize| self.covariance[(row, col)];
        (of(row, col) / (of(row, row) * of(col, col)).sqrt()).clamp(-1.0, 1.0)
    }
}

/// The spread at the solution; `None` where the runs leave a direction without any hold.
pub(super) fn spread(solved: &Solved<'_>) -> Option<Spread> {
    let problem = &solved.problem;
    let slopes = problem.slopes()?;
    let mut information = DMatrix::zeros(problem.axes.len(), problem.axes.len());
    for run in 0..problem.plans.len() {
        for is_pot in [false, true] {
            information += of_column(solved, &slopes, run, is_pot)?;
        }
    }
    // A little of the description keeps the matrix whole where nothing else does.
    let hold = if problem.priors { 1.0 } else { 1e-6 };
    for idx in 0..problem.axes.len() {
        information[(idx, idx)] += hold;
    }
    let covariance = information.cholesky()?.inverse();
    let told = (0..problem.axes.len())
        .map(|idx| (1.0 - covariance[(idx, idx)]).clamp(0.0, 1.0))
        .collect();
    Some(Spread {
        covariance,
        axis_sd: problem.axes.iter().map(|axis| axis.sd).collect(),
        told,
    })
}

/// What one column of one run tells.
///
/// The variance of an M-estimate is `E[psi^2] / E[psi']^2` that of plain least squares for unit
/// noise (Huber, Robust Statistics, from memory), times the time over which residuals hang together.
fn of_column(
    solved: &Solved<'_>,
    slopes: &DMatrix<f64>,
    run: usize,
    is_pot: bool,
) -> Option<DMatrix<f64>> {
    let problem = &solved.problem;
    let noise_k = solved.noise_k[usize::from(is_pot)];
    let rows = rows_of(problem, run, is_pot);
    let axes = problem.axes.len();
    if rows.is_empty() {
        return Some(DMatrix::zeros(axes, axes));
    }
    let raw_k = problem.raw_k.as_ref()?;
    let (mut psi2, mut slope) = (0.0, 0.0);
    let mut psis = Vec::with_capacity(rows.len());
    for row in &rows {
        let weight = solved.robust.weight(raw_k[*row], is_pot);
        let psi = weight * raw_k[*row] / noise_k;
        psi2 += psi * psi;
        slope += weight * weight * weight;
        psis.push(psi);
    }
    #[expect(clippy::cast_precision_loss, reason = "some thousands")]
    let count = rows.len() as f64;
    let variance = (psi2 / count) / (slope / count).powi(2);
    let widened = variance.max(0.2) * together(&psis);
    let mut information = DMatrix::zeros(axes, axes);
    for row in rows {
        let line: DVector<f64> = slopes.row(row).transpose() / noise_k;
        information.ger(1.0 / widened, &line, &line, 1.0);
    }
    Some(information)
}

fn rows_of(problem: &Problem<'_>, run: usize, is_pot: bool) -> Vec<usize> {
    let from = problem.offsets[run];
    readings(&problem.plans[run])
        .enumerate()
        .filter(|(_, of_pot)| *of_pot == is_pot)
        .map(|(idx, _)| from + idx)
        .collect()
}

/// How many readings say what one would if they were independent: 1 + 2 (sum of autocorrelations),
/// as far as they are positive.
fn together(psis: &[f64]) -> f64 {
    let square: f64 = psis.iter().map(|psi| psi * psi).sum();
    let mut sum = 1.0;
    for lag in 1..psis.len() / LONGEST_LAG {
        let product: f64 = psis.iter().zip(&psis[lag..]).map(|(a, b)| a * b).sum();
        let correlation = product / square;
        // Below twice its own error a correlation is chance.
        #[expect(clippy::cast_precision_loss, reason = "some thousands")]
        let chance = 2.0 / (psis.len() as f64).sqrt();
        if correlation.is_nan() || correlation <= chance {
            break;
        }
        sum += 2.0 * correlation;
    }
    sum
}

/// Pairs of free parameters that are known only together.
pub(super) fn untold(
    estimates: &[Estimate],
    correlations: &[Vec<f64>],
) -> Vec<(Parameter, Parameter)> {
    let free: Vec<&Estimate> = estimates.iter().filter(|estimate| !estimate.held).collect();
    let is_vague = |estimate: &Estimate| match estimate.parameter {
        Parameter::MeltingPoint => estimate.sd > 0.5 * estimate.described.sd,
        _ => estimate.sd > VAGUE_SHARE * estimate.value,
    };
    let mut pairs = Vec::new();
    for (row, first) in free.iter().enumerate() {
        for (col, second) in free.iter().enumerate().skip(row + 1) {
            let correlation = correlations.get(row).and_then(|line| line.get(col));
            let hang = correlation.is_some_and(|correlation| correlation.abs() > TOGETHER);
            if hang && is_vague(first) && is_vague(second) {
                pairs.push((first.parameter, second.parameter));
            }
        }
    }
    pairs
}
