//! What limited a pot: the fitted cooker goes through the same run again, one thing changed.

mod case;
mod least;

#[cfg(test)]
mod tests;

use crate::bench::body::Body;
use crate::bench::fit::{Fit, Parameter, Values};
use crate::bench::plan::Plan;
use crate::bench::run::Run;
use crate::error::ModelError;
use crate::tonight::HeatAccount;
use case::Case;

/// A pot that has not boiled within this never does. \[s\]
const PATIENCE_S: f64 = 4.0 * 3600.0;
/// Four doubts that pull alike, each moved by so many standard deviations, move the outcome as far as
/// its tenth percentile when they are independent and weigh about the same: 1.28 / sqrt(4).
const EACH_SD: f64 = 0.64;
/// A change that gains less than this is none. \[K, share\]
const GAINS_K: f64 = 0.3;
const GAINS_SHARE: f64 = 0.02;

/// What can limit a pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Limit {
    /// The heat in the store above the boil.
    Heat,
    /// The way from store to pot.
    Contact,
    /// The layer of the medium that freezes on the seat.
    FrozenLayer,
    /// What the jacket lets out.
    Jacket,
    /// What the pot lets out.
    PotLoss,
    /// The heater takes less than the panels could give.
    HeaterMatch,
    /// The panels get too little sun, or are too small.
    Sun,
}

/// One change of a cooker.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// None.
    AsItWas,
    /// So many times the contact conductance.
    Contact(f64),
    /// So much more mass of the same media, kg, with the heat that was there spread over it; where
    /// the run heated the store itself, with the heat it gave.
    Mass(f64),
    /// The store so much hotter as the pot goes in, K: charged longer, or a higher cut-out.
    Hotter(f64),
    /// Metal through the medium: nothing freezes in the way.
    NoLayer,
    /// This share of the jacket's loss.
    Loss(f64),
    /// This share of the pot's dry loss.
    PotLoss(f64),
    /// So many times the heat from the heater, by a better match.
    Match(f64),
    /// So many times the panels.
    Panels(f64),
    /// This share of the water.
    Water(f64),
}

/// What becomes of the pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fate {
    /// From its going in to its boil; `None` where it never boils. \[s\]
    pub boils_s: Option<f64>,
    /// Hottest it gets. [°C]
    pub hottest_c: f64,
}

/// One limit, and what becomes of the pot when it is taken away.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ranked {
    /// Which.
    pub limit: Limit,
    /// The change that was tried.
    pub change: Change,
    /// What comes of it.
    pub fate: Fate,
    /// What comes of it when the limit is all but gone.
    pub without: Fate,
    /// Whether it helps at all.
    pub helps: bool,
}

/// A change that makes the pot boil, as small as it can be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Advice {
    /// The least change, with a tenth to spare.
    pub change: Change,
    /// What comes of it.
    pub fate: Fate,
    /// By the user's prices; `None` where none was given.
    pub cost: Option<f64>,
}

/// What changes cost, in the user's money; `None` where nobody said.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Prices {
    /// A kilogram of the store's medium.
    pub store_kg: Option<f64>,
    /// A better seat: grinding it flat, a screw, a film of oil.
    pub seat: Option<f64>,
    /// Fins for a melting store.
    pub fins: Option<f64>,
    /// As much insulation again as there is: half the loss.
    pub jacket: Option<f64>,
    /// A wrap for the pot.
    pub wrap: Option<f64>,
    /// The resistor that fits, or a tracker.
    pub heater: Option<f64>,
    /// As many panels again as there are.
    pub panels: Option<f64>,
}

/// What limited a pot.
#[derive(Debug, Clone, PartialEq)]
pub struct Diagnosis {
    /// The pot as it was, left in for as long as it takes.
    pub as_it_was: Fate,
    /// Whether the heat in the store would do, with everything else all but perfect.
    pub heat_suffices: bool,
    /// The limits, the worst first. Of a pot that does not boil for want of heat, the heat; else by
    /// what comes of it when the limit is all but gone, and the heat after those that make it boil.
    pub limits: Vec<Ranked>,
    /// Changes that make it boil, the cheapest first.
    pub advice: Vec<Advice>,
    /// Where the heat went from the pot's going in to its coming out.
    pub account: HeatAccount,
    /// Water in that pot as it went in. \[kg\]
    pub water_kg: f64,
}

/// What a person knows beside the readings.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Circumstances {
    /// What changes cost.
    pub prices: Prices,
    /// Heat the panels could give over what this heater takes of it, 1 or more.
    pub match_gain: Option<f64>,
    /// Temperature at which the thermostat cuts out. [°C]
    pub cutout_c: Option<f64>,
}

/// Finds out what limited the last pot of a fitted run; `None` for a run without a pot.
///
/// # Errors
///
/// [`ModelError`] where the network cannot run.
pub fn diagnose(
    body: &Body,
    run: &Run,
    fit: &Fit,
    circumstances: &Circumstances,
) -> Result<Option<Diagnosis>, ModelError> {
    let Some(pot) = run.pots.last() else {
        return Ok(None);
    };
    let plan = Plan::new(body, run);
    let mut start = plan.start.clone();
    if let Some(found) = fit.runs.iter().find(|found| found.name == run.name) {
        start.store_c = found.start_c;
        start.jacket_c = found.jacket_c;
        start.pots_c.clone_from(&found.pots_c);
        start.pots_metal.clone_from(&found.pots_metal);
    }
    let case = Case {
        body,
        values: fit.values,
        careful: careful(fit),
        heated: plan.heated_before(pot.in_s),
        long: plan.clone().left_until(pot.in_s + PATIENCE_S),
        plan,
        start,
        at_s: pot.in_s,
        circumstances: *circumstances,
    };
    case.diagnosis().map(Some)
}

/// The fitted values with each of the four that pull alike moved against the cook.
fn careful(fit: &Fit) -> Values {
    let mut values = fit.values;
    for (parameter, sign) in [
        (Parameter::Loss, 1.0),
        (Parameter::PotLoss, 1.0),
        (Parameter::StoreCapacity, -1.0),
        (Parameter::Contact, -1.0),
    ] {
        if let Some(estimate) = fit.estimate(parameter).filter(|estimate| !estimate.held) {
            let share = fit.sd_with_model(estimate) / estimate.value;
            values.set(
                parameter,
                estimate.value * libm::exp(sign * EACH_SD * share),
            );
        }
    }
    values
}

impl Fate {
    /// The better one first: sooner to the boil, else hotter.
    fn order(self, other: Self) -> std::cmp::Ordering {
        let time_s = |fate: Self| fate.boils_s.unwrap_or(f64::INFINITY);
        time_s(self)
            .total_cmp(&time_s(other))
            .then(other.hottest_c.total_cmp(&self.hottest_c))
    }

    fn beats(self, other: Self) -> bool {
        match (self.boils_s, other.boils_s) {
            (Some(now_s), Some(before_s)) => now_s < (1.0 - GAINS_SHARE) * before_s,
            (Some(_), None) => true,
            (None, Some(_)) => false,
            (None, None) => self.hottest_c > other.hottest_c + GAINS_K,
        }
    }
}
