//! From runs to the figures of a cooker: nonlinear least squares on the heat network.
//!
//! The residuals are the simulated less the read temperatures of store and pot, in units of the
//! thermometer's noise, which is estimated with the rest. Readings far off count less: soft-L1,
//! `rho(z) = 2 (sqrt(1 + z) - 1)`, by reweighting, the loss that goes by that name in
//! `scipy.optimize.least_squares`. What no run can tell is held near the description by priors as
//! wide as descriptions are wrong; each estimate says how much of it the runs told.
//!
//! Spreads come from the curvature at the solution, widened for the reweighting (Huber's formula)
//! and for residuals that hang together in time, as they do where the model is not quite the
//! cooker.

mod parameter;
mod problem;
mod solve;
mod spread;
mod worth;

#[cfg(test)]
pub(in crate::bench) mod tests;

pub use parameter::{Parameter, Prior, Values};
pub use worth::{Doubt, Worth};

use crate::bench::body::Body;
use crate::bench::plan::{Plan, Trace};
use crate::bench::run::{Run, RunFault};
use crate::error::ModelError;
use parameter::{Axis, HEATER_TILT, START_TILT, Unknown};
use problem::Problem;

/// How a fit is done.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// What is held at its described value, whatever the runs say.
    pub held: Vec<Parameter>,
    /// Whether what is not held is kept near its description where the runs tell little. Without, the metal of
    /// each pot is as its table has it.
    pub priors: bool,
    /// Residual beyond which a reading counts less; from the readings' own noise otherwise. \[K\]
    pub robust_k: Option<f64>,
}

impl Default for Settings {
    fn default() -> Self {
        Self {
            held: Vec::new(),
            priors: true,
            robust_k: None,
        }
    }
}

/// One figure of the cooker, as the runs tell it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// Which.
    pub parameter: Parameter,
    /// In the parameter's unit.
    pub value: f64,
    /// Its standard error, in the same unit; of a held one, that of its description.
    pub sd: f64,
    /// What the description says.
    pub described: Prior,
    /// Whether it was held.
    pub held: bool,
    /// How much of it the runs told: 1 - (standard error / described spread)²; 0 for a held one.
    pub told: f64,
}

/// A reading beside what the fitted cooker would have shown.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Met {
    /// Read. [°C]
    pub read_c: f64,
    /// Simulated. [°C]
    pub fitted_c: f64,
    /// How much it counts: 1 for a usual one, less for one far off.
    pub weight: f64,
}

/// One time of a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residual {
    /// Since the run's first row. \[s\]
    pub time_s: f64,
    /// Store.
    pub store: Option<Met>,
    /// Pot.
    pub pot: Option<Met>,
}

/// What is left over of one run.
#[derive(Debug, Clone, PartialEq)]
pub struct RunFit {
    /// The run's name.
    pub name: String,
    /// Time by time, for a plot.
    pub residuals: Vec<Residual>,
    /// Store as the run began. [°C]
    pub start_c: f64,
    /// Jacket as the run began. [°C]
    pub jacket_c: f64,
    /// Each pot as it went in. [°C]
    pub pots_c: Vec<f64>,
    /// What the metal of each took over what its table says.
    pub pots_metal: Vec<f64>,
    /// Root mean square of what is left over. \[K\]
    pub rms_k: f64,
    /// Scatter of what is left over, as [`Fit::scatter_k`] has it of all runs. \[K\]
    pub scatter_k: f64,
}

/// What the store does, which tells how far the network can be trusted with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StoreKind {
    /// It stays solid, at nearly one temperature.
    Solid,
    /// It stays solid, and conducts so poorly that it has several temperatures at once.
    Uneven,
    /// Something in it melts and freezes at one place.
    Melts,
    /// It stays liquid below its melting point.
    Supercools,
}

/// What the runs say of the cooker.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// What was fitted.
    pub store: StoreKind,
    /// Every parameter of this cooker, free ones and held ones.
    pub estimates: Vec<Estimate>,
    /// All of them as one set.
    pub values: Values,
    /// Correlations of the free ones, in the order of [`Fit::estimates`] without the held.
    pub correlations: Vec<Vec<f64>>,
    /// Pairs that these runs cannot tell apart: only together they are known.
    pub untold: Vec<(Parameter, Parameter)>,
    /// Each run, with what is left over.
    pub runs: Vec<RunFit>,
    /// Scatter of the residuals: their median size as that of a normal distribution, so that single
    /// wild readings change nothing. \[K\]
    pub scatter_k: f64,
    /// Noise from reading to reading, which no model could explain. \[K\]
    pub noise_k: f64,
    /// In a word, what the fit is worth.
    pub worth: Worth,
    /// And why no more than that.
    pub doubts: Vec<Doubt>,
}

/// Why no fit came about.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FitError {
    /// No run at all.
    #[error("there is no run to fit")]
    NoRuns,
    /// A run that cannot be used.
    #[error("{name}: {fault}")]
    Run {
        /// The run's name.
        name: String,
        /// What is wrong with it.
        fault: RunFault,
    },
    /// Everything was held, or these runs tell of nothing.
    #[error("there is nothing to fit")]
    NothingFree,
    /// The network refuses the described cooker.
    #[error(transparent)]
    Network(#[from] ModelError),
    /// The search came to no values the network can run with.
    #[error("no values fit these runs")]
    NoSolution,
}

impl Fit {
    /// The estimate of one parameter; `None` where this cooker has no such thing.
    pub fn estimate(&self, parameter: Parameter) -> Option<&Estimate> {
        self.estimates
            .iter()
            .find(|estimate| estimate.parameter == parameter)
    }
}

/// Fits a cooker to its runs.
///
/// # Errors
///
/// [`FitError`] for runs that cannot be used, or where nothing can be found.
pub fn fit(body: &Body, runs: &[Run], settings: &Settings) -> Result<Fit, FitError> {
    if runs.is_empty() {
        return Err(FitError::NoRuns);
    }
    for run in runs {
        run.checked().map_err(|fault| FitError::Run {
            name: run.name.clone(),
            fault,
        })?;
    }
    let plans: Vec<Plan> = runs.iter().map(|run| Plan::new(body, run)).collect();
    let axes = axes(body, &plans, settings);
    if !axes
        .iter()
        .any(|axis| matches!(axis.unknown, Unknown::Shared(_)))
    {
        return Err(FitError::NothingFree);
    }
    let problem = Problem::new(body, &plans, axes, settings);
    let solved = solve::solve(problem, settings)?;
    let spread = spread::spread(&solved).ok_or(FitError::NoSolution)?;
    report(body, runs, &plans, settings, &solved, &spread)
}

/// A melt that stays liquid less far below its melting point freezes as one that does not. \[K\]
const SUPERCOOLS_K: f64 = 5.0;
/// Doubt of the heat that a pot's metal takes beside its water, as a logarithm: its weight goes by its
/// size, and its base is much hotter than the water while heat comes through it, which the network has no
/// place for. Without it a pot of weighed water would be a better measure of heat than a meter at the heater,
/// and pull loss and capacity along. Inferred.
const POT_METAL: f64 = 0.5;

/// What is to be found: the shared figures that these runs touch, and where each run began.
fn axes(body: &Body, plans: &[Plan], settings: &Settings) -> Vec<Axis> {
    let mut axes = Vec::new();
    for parameter in Parameter::ALL {
        if is_touched(body, plans, parameter) && !settings.held.contains(&parameter) {
            axes.push(Axis::shared(parameter, prior(body, plans, parameter)));
        }
    }
    // Of a store that is not at one temperature, its inside is found with the rest.
    let inside_sd = body.inside_sd().filter(|_| settings.priors);
    if let Some(inside_sd) = inside_sd {
        axes.push(Axis::own_factor(Unknown::Within, inside_sd));
        if plans.iter().any(|plan| plan.heated) {
            axes.push(Axis::own(Unknown::HeaterTilt, 0.0, HEATER_TILT));
        }
    }
    for (run, plan) in plans.iter().enumerate() {
        axes.push(Axis::own(Unknown::StoreStart(run), plan.start.store_c, 5.0));
        if inside_sd.is_some() {
            let (share, least_k) = START_TILT;
            let sd_k = least_k + share * (plan.start.store_c - plan.air_c).abs();
            axes.push(Axis::own(Unknown::TiltStart(run), 0.0, sd_k));
        }
        axes.push(Axis::own(
            Unknown::JacketStart(run),
            plan.start.jacket_c,
            plan.jacket_sd_k,
        ));
        for (pot, start_c) in plan.start.pots_c.iter().enumerate() {
            axes.push(Axis::own(Unknown::PotStart(run, pot), *start_c, 2.0));
            // Where nothing keeps it near its table, no pot can be told from its metal.
            if settings.priors {
                axes.push(Axis::own_factor(Unknown::PotMetal(run, pot), POT_METAL));
            }
        }
    }
    axes
}

fn prior(body: &Body, plans: &[Plan], parameter: Parameter) -> Prior {
    let measured = plans.iter().all(|plan| plan.power_measured || !plan.heated);
    Prior {
        value: body.described().get(parameter),
        sd: parameter.described_sd(body.described(), measured),
    }
}

/// Whether the runs have anything to do with a parameter.
fn is_touched(body: &Body, plans: &[Plan], parameter: Parameter) -> bool {
    match parameter {
        Parameter::Loss | Parameter::JacketCapacity | Parameter::StoreCapacity => true,
        Parameter::Heater => plans.iter().any(|plan| plan.heated),
        Parameter::Contact | Parameter::PotLoss => plans.iter().any(|plan| !plan.pots.is_empty()),
        Parameter::MeltingPoint | Parameter::MeltingRange => {
            let Some((solidus_c, liquidus_c)) = body.rig().melting_c() else {
                return false;
            };
            let read = plans
                .iter()
                .flat_map(|plan| &plan.samples)
                .filter_map(|sample| sample.store_c);
            let (low, high) = read.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), c| {
                (low.min(c), high.max(c))
            });
            low < solidus_c && liquidus_c < high
        }
    }
}

fn report(
    body: &Body,
    runs: &[Run],
    plans: &[Plan],
    settings: &Settings,
    solved: &solve::Solved<'_>,
    spread: &spread::Spread,
) -> Result<Fit, FitError> {
    let (values, starts) = solved.problem.unpacked();
    let mut estimates = Vec::new();
    for parameter in Parameter::ALL {
        let described = prior(body, plans, parameter);
        let is_absent = body.rig().melting_c().is_none()
            && matches!(parameter, Parameter::MeltingPoint | Parameter::MeltingRange);
        if is_absent {
            continue;
        }
        let place = solved.problem.place_of(parameter);
        let value = values.get(parameter);
        let sd = place.map_or(described.sd, |idx| spread.sd(idx, value, parameter));
        estimates.push(Estimate {
            parameter,
            value,
            sd,
            described,
            held: place.is_none(),
            told: place.map_or(0.0, |idx| spread.told[idx]),
        });
    }
    let mut run_fits = Vec::new();
    for ((run, plan), start) in runs.iter().zip(plans).zip(&starts) {
        let curve = plan.curve(body, &values)?;
        let net = body.network(&curve, &values)?;
        let mut trace = Trace::new(&plan.samples);
        plan.follow(body, &net, &values, start, &mut trace)?;
        let residuals = worth::residuals(plan, &trace.seen, solved.robust);
        run_fits.push(RunFit {
            name: run.name.clone(),
            rms_k: worth::rms_k(&residuals),
            scatter_k: worth::scatter_k(std::iter::once(&*residuals)),
            start_c: start.store_c,
            jacket_c: start.jacket_c,
            pots_c: start.pots_c.clone(),
            pots_metal: start.pots_metal.clone(),
            residuals,
        });
    }
    let scatter_k = worth::scatter_k(run_fits.iter().map(|run| &*run.residuals));
    let noise_k = worth::noise_k(&run_fits);
    let shared = solved.problem.shared();
    let correlations: Vec<Vec<f64>> = (0..shared)
        .map(|row| {
            (0..shared)
                .map(|col| spread.correlation(row, col))
                .collect()
        })
        .collect();
    let untold = spread::untold(&estimates, &correlations);
    let (worth, doubts) = worth::judge(
        &estimates,
        &untold,
        &run_fits,
        (scatter_k, noise_k),
        solved.converged,
        settings,
    );
    let rig = body.rig();
    let store = match rig.melting_c() {
        None if body.inside_sd().is_some() => StoreKind::Uneven,
        None => StoreKind::Solid,
        Some(_) if SUPERCOOLS_K < rig.supercooling_k() => StoreKind::Supercools,
        Some(_) => StoreKind::Melts,
    };
    Ok(Fit {
        store,
        estimates,
        values,
        correlations,
        untold,
        runs: run_fits,
        scatter_k,
        noise_k,
        worth,
        doubts,
    })
}
