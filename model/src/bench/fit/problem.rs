//! The least squares problem: places on the axes in, weighted residuals out.

use levenberg_marquardt::LeastSquaresProblem;
use nalgebra::storage::Owned;
use nalgebra::{DMatrix, DVector, Dyn};

use super::Settings;
use super::parameter::{Axis, MOST_TILT, Parameter, Unknown, Values};
use crate::bench::body::Body;
use crate::bench::plan::{Plan, Start, Trace};

/// Noise first assumed: that of a kitchen thermometer. \[K\]
const FIRST_NOISE_K: f64 = 1.0;

/// The problem at one place.
#[derive(Debug, Clone)]
pub(super) struct Problem<'a> {
    body: &'a Body,
    pub(super) plans: &'a [Plan],
    pub(super) axes: Vec<Axis>,
    pub(super) priors: bool,
    pub(super) x: DVector<f64>,
    /// Simulated less read, run by run, store before pot at each time; `None` where the network
    /// cannot run. \[K\]
    pub(super) raw_k: Option<Vec<f64>>,
    /// Root of each reading's weight, over its noise. \[1/K\]
    pub(super) scale: Vec<f64>,
    /// Where the readings of each run begin.
    pub(super) offsets: Vec<usize>,
}

impl<'a> Problem<'a> {
    pub(super) fn new(
        body: &'a Body,
        plans: &'a [Plan],
        axes: Vec<Axis>,
        settings: &Settings,
    ) -> Self {
        let mut offsets = vec![0];
        for plan in plans {
            let count = readings(plan).count();
            offsets.push(offsets.last().copied().unwrap_or_default() + count);
        }
        let count = offsets.last().copied().unwrap_or_default();
        let mut problem = Self {
            body,
            plans,
            x: DVector::zeros(axes.len()),
            axes,
            priors: settings.priors,
            raw_k: None,
            scale: vec![1.0 / FIRST_NOISE_K; count],
            offsets,
        };
        problem.raw_k = problem.simulated(&problem.x);
        problem
    }

    /// Number of shared parameters; they come first on the axes.
    pub(super) fn shared(&self) -> usize {
        let shared = |axis: &&Axis| matches!(axis.unknown, Unknown::Shared(_));
        self.axes.iter().filter(shared).count()
    }

    /// Where a parameter stands among the axes.
    pub(super) fn place_of(&self, parameter: Parameter) -> Option<usize> {
        self.axes
            .iter()
            .position(|axis| axis.unknown == Unknown::Shared(parameter))
    }

    /// The values at the present place.
    pub(super) fn unpacked(&self) -> (Values, Vec<Start>) {
        self.values_at(&self.x)
    }

    fn values_at(&self, x: &DVector<f64>) -> (Values, Vec<Start>) {
        let mut values = *self.body.described();
        let mut starts: Vec<Start> = self.plans.iter().map(|plan| plan.start.clone()).collect();
        for (axis, place) in self.axes.iter().zip(x.iter()) {
            let value = axis.value(*place);
            match axis.unknown {
                Unknown::Shared(parameter) => values.set(parameter, value),
                Unknown::Within => values.within = value,
                Unknown::HeaterTilt => values.heater_tilt = value.clamp(-MOST_TILT, MOST_TILT),
                Unknown::StoreStart(run) => {
                    if let Some(start) = starts.get_mut(run) {
                        start.store_c = value;
                    }
                }
                Unknown::TiltStart(run) => {
                    if let Some(start) = starts.get_mut(run) {
                        start.tilt_k = value;
                    }
                }
                Unknown::JacketStart(run) => {
                    if let Some(start) = starts.get_mut(run) {
                        start.jacket_c = value;
                    }
                }
                Unknown::PotStart(run, pot) => {
                    let start = starts
                        .get_mut(run)
                        .and_then(|start| start.pots_c.get_mut(pot));
                    if let Some(start_c) = start {
                        *start_c = value;
                    }
                }
                Unknown::PotMetal(run, pot) => {
                    let start = starts
                        .get_mut(run)
                        .and_then(|start| start.pots_metal.get_mut(pot));
                    if let Some(metal) = start {
                        *metal = value;
                    }
                }
            }
        }
        (values, starts)
    }

    /// Residuals of one run. \[K\]
    fn of_run(&self, run: usize, values: &Values, start: &Start) -> Option<Vec<f64>> {
        let plan = self.plans.get(run)?;
        let curve = plan.curve(self.body, values).ok()?;
        let net = self.body.network(&curve, values).ok()?;
        let mut trace = Trace::new(&plan.samples);
        plan.follow(self.body, &net, values, start, &mut trace)
            .ok()?;
        let mut residuals = Vec::with_capacity(2 * plan.samples.len());
        for (sample, (store_c, pot_c)) in plan.samples.iter().zip(&trace.seen) {
            residuals.extend(sample.store_c.map(|read_c| store_c - read_c));
            residuals.extend(sample.pot_c.map(|read_c| pot_c - read_c));
        }
        let whole = trace.seen.len() == plan.samples.len();
        (whole && residuals.iter().all(|residual| residual.is_finite())).then_some(residuals)
    }

    fn simulated(&self, x: &DVector<f64>) -> Option<Vec<f64>> {
        let (values, starts) = self.values_at(x);
        let mut all = Vec::with_capacity(self.scale.len());
        for (run, start) in starts.iter().enumerate() {
            all.extend(self.of_run(run, &values, start)?);
        }
        Some(all)
    }

    /// Slopes of the raw residuals by the axes, by central differences. \[K\]
    pub(super) fn slopes(&self) -> Option<DMatrix<f64>> {
        let mut slopes = DMatrix::zeros(self.scale.len(), self.axes.len());
        for (col, axis) in self.axes.iter().enumerate() {
            let step = axis.step();
            let moved = |by: f64| {
                let mut x = self.x.clone();
                x[col] += by;
                self.values_at(&x)
            };
            let ((low, low_starts), (high, high_starts)) = (moved(-step), moved(step));
            let runs = match axis.unknown {
                Unknown::Shared(_) | Unknown::Within | Unknown::HeaterTilt => 0..self.plans.len(),
                Unknown::StoreStart(run)
                | Unknown::TiltStart(run)
                | Unknown::JacketStart(run)
                | Unknown::PotStart(run, _)
                | Unknown::PotMetal(run, _) => run..run + 1,
            };
            for run in runs {
                let below = self.of_run(run, &low, low_starts.get(run)?)?;
                let above = self.of_run(run, &high, high_starts.get(run)?)?;
                let from = self.offsets[run];
                for (idx, (below, above)) in below.iter().zip(&above).enumerate() {
                    slopes[(from + idx, col)] = (above - below) / (2.0 * step);
                }
            }
        }
        Some(slopes)
    }

    fn prior_rows(&self) -> usize {
        if self.priors { self.axes.len() } else { 0 }
    }
}

/// The readings of a plan in the order of the residuals: whether each is of the pot.
pub(super) fn readings(plan: &Plan) -> impl Iterator<Item = bool> {
    plan.samples.iter().flat_map(|sample| {
        let store = sample.store_c.map(|_| false);
        store.into_iter().chain(sample.pot_c.map(|_| true))
    })
}

impl LeastSquaresProblem<f64, Dyn, Dyn> for Problem<'_> {
    type ResidualStorage = Owned<f64, Dyn>;
    type JacobianStorage = Owned<f64, Dyn, Dyn>;
    type ParameterStorage = Owned<f64, Dyn>;

    fn set_params(&mut self, x: &DVector<f64>) {
        self.x.copy_from(x);
        self.raw_k = self.simulated(x);
    }

    fn params(&self) -> DVector<f64> {
        self.x.clone()
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        let raw_k = self.raw_k.as_ref()?;
        let read = raw_k
            .iter()
            .zip(&self.scale)
            .map(|(raw, scale)| raw * scale);
        let kept = self.x.iter().take(self.prior_rows()).copied();
        Some(DVector::from_iterator(
            raw_k.len() + self.prior_rows(),
            read.chain(kept),
        ))
    }

    fn jacobian(&self) -> Option<DMatrix<f64>> {
        let slopes = self.slopes()?;
        let count = slopes.nrows();
        let mut jacobian = slopes.insert_rows(count, self.prior_rows(), 0.0);
        for (row, scale) in self.scale.iter().enumerate() {
            jacobian.row_mut(row).scale_mut(*scale);
        }
        for idx in 0..self.prior_rows() {
            jacobian[(count + idx, idx)] = 1.0;
        }
        Some(jacobian)
    }
}
