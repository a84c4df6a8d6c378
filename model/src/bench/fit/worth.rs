//! What is left over, and what the fit is worth.

use super::solve::Robust;
use super::{Estimate, Met, Parameter, Residual, RunFit, Settings};
use crate::bench::plan::Plan;
use crate::numerics::median::median;

/// What a fit is worth, in a word.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Worth {
    /// The search came to no end, or the model is not this cooker: use none of it.
    None,
    /// The runs say too little: use what is marked as told.
    Little,
    /// Good for a rough answer.
    Rough,
    /// As good as the readings are.
    Good,
}

/// What speaks against a fit.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Doubt {
    /// The search came to no end.
    NotConverged,
    /// The readings bend in a way the model does not: residuals are larger than the noise.
    DoesNotFollow {
        /// Scatter of the residuals over the noise from reading to reading.
        times_noise: f64,
    },
    /// A reading so far off that it may be mistyped; the farthest first.
    FarOff {
        /// Which run.
        run: usize,
        /// Since that run's first row. \[s\]
        time_s: f64,
        /// Whether it is one of the pot.
        is_pot: bool,
        /// What was read. [°C]
        read_c: f64,
        /// The reading less the fitted curve. \[K\]
        off_k: f64,
    },
    /// More than a tenth of the readings of a run are far off.
    ManyOff {
        /// Which run.
        run: usize,
        /// Share of its readings.
        share: f64,
    },
    /// The runs told less than half of it.
    NotTold(Parameter),
    /// Two parameters that these runs know only together.
    NotApart(Parameter, Parameter),
    /// A value no sensible build has.
    Unlikely(Parameter),
}

/// Residuals this many times the noise are the model's, not the thermometer's.
const FOLLOWS: f64 = 1.8;
const DOES_NOT_FOLLOW: f64 = 5.0;
/// And they matter when they are larger than this. \[K\]
const MATTERS_K: f64 = 2.0;
/// A reading with less weight than this is far off.
const FAR_OFF: f64 = 0.25;
const MANY_OFF: f64 = 0.1;
/// A reading is named where it is farther off than this \[K\]...
const NAMED_K: f64 = 10.0;
/// ...and than so many times the scatter; of each run the farthest few.
const NAMED_SCATTERS: f64 = 8.0;
const MOST_NAMED: usize = 3;
/// With fewer readings of one thermometer than this it has no scatter of its own.
const LEAST_OWN: usize = 5;
/// Where more than this share of a run is so far off, its figures are rough ones at best: they rest on
/// the rest being right.
const SHARE_NAMED: f64 = 0.02;
/// Estimates farther than this many described spreads are unlikely.
const UNLIKELY_SDS: f64 = 3.5;
/// Least share of a parameter that the runs must have told.
const TOLD: f64 = 0.5;
/// Loss and capacity better known than this are no reason for doubt, whatever told them.
const SHARP_SHARE: f64 = 0.05;

/// Readings beside what the fitted cooker would have shown.
pub(super) fn residuals(plan: &Plan, seen: &[(f64, f64)], robust: Robust) -> Vec<Residual> {
    let met = |read_c: f64, fitted_c: f64, is_pot: bool| Met {
        read_c,
        fitted_c,
        weight: robust.weight(fitted_c - read_c, is_pot),
    };
    plan.samples
        .iter()
        .zip(seen)
        .map(|(sample, (store_c, pot_c))| Residual {
            time_s: sample.time_s,
            store: sample.store_c.map(|read_c| met(read_c, *store_c, false)),
            pot: sample.pot_c.map(|read_c| met(read_c, *pot_c, true)),
        })
        .collect()
}

fn mets(residuals: &[Residual]) -> impl Iterator<Item = Met> {
    residuals
        .iter()
        .flat_map(|residual| residual.store.into_iter().chain(residual.pot))
}

/// Root mean square, each reading by its weight. \[K\]
pub(super) fn rms_k(residuals: &[Residual]) -> f64 {
    let (mut sum, mut weights) = (0.0, 0.0);
    for met in mets(residuals) {
        sum += met.weight * (met.fitted_c - met.read_c).powi(2);
        weights += met.weight;
    }
    if weights > 0.0 {
        (sum / weights).sqrt()
    } else {
        0.0
    }
}

fn robust_sd_k(mut sizes: Vec<f64>) -> f64 {
    if sizes.is_empty() {
        return 0.0;
    }
    1.4826 * median(&mut sizes)
}

/// Scatter of the residuals of one run, or of several. \[K\]
pub(super) fn scatter_k<'a>(residuals: impl Iterator<Item = &'a [Residual]>) -> f64 {
    let sizes = residuals
        .flat_map(mets)
        .map(|met| (met.fitted_c - met.read_c).abs());
    robust_sd_k(sizes.collect())
}

/// Noise from the second differences of neighbouring readings, which a smooth curve has not. \[K\]
///
/// Readings that are far off are left out with their neighbours: noise that they made would hide that
/// the rest does not follow.
pub(super) fn noise_k(runs: &[RunFit]) -> f64 {
    let mut sizes = Vec::new();
    let columns: [fn(&Residual) -> Option<Met>; 2] =
        [|residual| residual.store, |residual| residual.pot];
    for run in runs {
        for met in columns {
            let read = |residual: &Residual| {
                met(residual)
                    .filter(|met| {
                        FAR_OFF <= met.weight || (met.read_c - met.fitted_c).abs() <= NAMED_K
                    })
                    .map(|met| met.read_c)
            };
            for three in run.residuals.windows(3) {
                if let [Some(a), Some(b), Some(c)] = [0, 1, 2].map(|idx| read(&three[idx])) {
                    // The second difference of unit noise has a variance of 6.
                    sizes.push((a - 2.0 * b + c).abs() / 6.0_f64.sqrt());
                }
            }
        }
    }
    robust_sd_k(sizes)
}

/// Readings so far off that they may be mistyped, the farthest first.
///
/// How far that is depends on how well the curve follows the other readings of the same thermometer in the
/// run; and one that is off as those before and after it are is the model's fault, not the hand's.
fn named(run: usize, fit: &RunFit, scatter_k: f64) -> Vec<Doubt> {
    let mut far = Vec::new();
    for is_pot in [false, true] {
        let read: Vec<(f64, f64, f64)> = fit
            .residuals
            .iter()
            .filter_map(|residual| {
                let met = if is_pot { residual.pot } else { residual.store }?;
                Some((residual.time_s, met.read_c, met.read_c - met.fitted_c))
            })
            .collect();
        // How far each is off beyond what one of those next to it is.
        let alone = |(idx, (.., off_k)): (usize, &(f64, f64, f64))| {
            let beside = [idx.checked_sub(1), idx.checked_add(1)]
                .into_iter()
                .flatten();
            let beside = beside.filter_map(|other| read.get(other));
            let apart = beside.map(|(.., other_k)| (off_k - other_k).abs());
            apart.reduce(f64::min).unwrap_or(off_k.abs())
        };
        let alone_k: Vec<f64> = read.iter().enumerate().map(alone).collect();
        let own_k = if read.len() < LEAST_OWN {
            0.0
        } else {
            robust_sd_k(alone_k.clone())
        };
        let least_k = NAMED_K.max(NAMED_SCATTERS * scatter_k.max(own_k));
        for ((time_s, read_c, off_k), alone_k) in read.iter().copied().zip(alone_k) {
            if least_k < off_k.abs() && least_k < alone_k {
                far.push((time_s, is_pot, read_c, off_k));
            }
        }
    }
    far.sort_by(|one, other| other.3.abs().total_cmp(&one.3.abs()));
    let doubt = |(time_s, is_pot, read_c, off_k)| Doubt::FarOff {
        run,
        time_s,
        is_pot,
        read_c,
        off_k,
    };
    far.into_iter().map(doubt).collect()
}

#[expect(clippy::cast_precision_loss, reason = "some thousands")]
fn share_of(count: usize, fit: &RunFit) -> f64 {
    count as f64 / mets(&fit.residuals).count().max(1) as f64
}

pub(super) fn judge(
    estimates: &[Estimate],
    untold: &[(Parameter, Parameter)],
    runs: &[RunFit],
    (scatter_k, noise_k): (f64, f64),
    converged: bool,
    settings: &Settings,
) -> (Worth, Vec<Doubt>) {
    let mut doubts = Vec::new();
    let mut worth = Worth::Good;
    if !converged {
        worth = Worth::None;
        doubts.push(Doubt::NotConverged);
    }
    let times_noise = scatter_k / noise_k.max(0.1);
    if times_noise > FOLLOWS && scatter_k > MATTERS_K {
        worth = worth.min(if times_noise > DOES_NOT_FOLLOW {
            Worth::None
        } else {
            Worth::Rough
        });
        doubts.push(Doubt::DoesNotFollow { times_noise });
    }
    for (run, fit) in runs.iter().enumerate() {
        let named = named(run, fit, scatter_k);
        if share_of(named.len(), fit) > SHARE_NAMED {
            worth = worth.min(Worth::Rough);
        }
        let n_named = named.len().min(MOST_NAMED);
        doubts.extend(named.into_iter().take(MOST_NAMED));
        let off = mets(&fit.residuals)
            .filter(|met| met.weight < FAR_OFF)
            .count();
        let share = share_of(off, fit);
        if share > MANY_OFF {
            worth = worth.min(Worth::Rough);
            // Those that are named are not counted once more.
            if n_named < off {
                doubts.push(Doubt::ManyOff { run, share });
            }
        }
    }
    for estimate in estimates.iter().filter(|estimate| !estimate.held) {
        let sharp = estimate.sd < SHARP_SHARE * estimate.value;
        let main = matches!(estimate.parameter, Parameter::Loss | Parameter::Contact);
        if estimate.told < TOLD && !sharp && settings.priors {
            doubts.push(Doubt::NotTold(estimate.parameter));
            if main {
                worth = worth.min(Worth::Little);
            }
        }
        let far = (estimate.value - estimate.described.value).abs();
        let ratio = estimate.value / estimate.described.value;
        let sds = match estimate.parameter {
            Parameter::MeltingPoint => far / estimate.described.sd,
            _ => libm::log(ratio).abs() * estimate.described.value / estimate.described.sd,
        };
        if sds > UNLIKELY_SDS {
            worth = worth.min(Worth::Rough);
            doubts.push(Doubt::Unlikely(estimate.parameter));
        }
    }
    for (first, second) in untold {
        worth = worth.min(Worth::Rough);
        doubts.push(Doubt::NotApart(*first, *second));
    }
    (worth, doubts)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A store that is followed to a few tenths, and a pot that is read every five minutes, so much off.
    fn run(pot_off_k: &[f64]) -> RunFit {
        let met = |read_c: f64, off_k: f64| Met {
            read_c,
            fitted_c: read_c - off_k,
            weight: 1.0,
        };
        let row = |(idx, off_k): (usize, &f64)| {
            let time_s = 300.0 * idx as f64;
            let [early, late] = [0.0, 150.0].map(|after_s| Residual {
                time_s: time_s + after_s,
                store: Some(met(200.0, if idx % 2 == 0 { 0.3 } else { -0.2 })),
                pot: (after_s == 0.0).then(|| met(40.0 + 5.0 * idx as f64, *off_k)),
            });
            [early, late]
        };
        RunFit {
            name: String::new(),
            residuals: pot_off_k.iter().enumerate().flat_map(row).collect(),
            scatter_k: 0.3,
            start_c: 200.0,
            jacket_c: 100.0,
            pots_c: Vec::new(),
            pots_metal: Vec::new(),
            rms_k: 0.3,
        }
    }

    /// The pot warms faster at first than the model has it, and is caught up with.
    const SPARSE: [f64; 10] = [3.0, 18.0, 21.0, 14.0, 9.0, 5.0, 2.0, 1.0, 0.5, 0.3];

    #[test]
    fn good_readings_that_the_model_follows_badly_are_not_accused() {
        assert!(named(0, &run(&SPARSE), 0.4).is_empty());
        // Nor where all of the pot is off to one side.
        assert!(named(0, &run(&[15.0, 14.0, 16.0, 15.0]), 0.4).is_empty());
    }

    #[test]
    fn a_mistyped_one_among_them_is() {
        let mut off_k = SPARSE;
        // A digit wrong.
        off_k[7] = -50.0;
        let far = named(2, &run(&off_k), 0.4);
        let expected = Doubt::FarOff {
            run: 2,
            time_s: 2100.0,
            is_pot: true,
            read_c: 75.0,
            off_k: -50.0,
        };
        assert_eq!(far, [expected]);
        // Where the rest is followed well, one that is off by less is named, too.
        let mut off_k = [0.2; 10];
        off_k[4] = 11.0;
        assert_eq!(named(0, &run(&off_k), 0.4).len(), 1);
    }
}
