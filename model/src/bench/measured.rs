//! Taking what was measured over into the household's cooker.

use crate::bench::body::Body;
use crate::bench::fit::{Doubt, Estimate, Fit, Parameter, Prior, StoreKind, Worth};
use crate::cooker::Cooker;
use crate::jacket::Jacket;
use crate::panel::Drive;

/// A measured figure and its one standard deviation, in the same unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// The figure.
    pub value: f64,
    /// One standard deviation, the model's own error with it.
    pub sd: f64,
}

/// What the runs told well enough to go by. What they did not tell is `None`: the description
/// stands.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct ForCooker {
    /// Steady loss, store at its working temperature. \[W/K\]
    pub loss_w_k: Option<Measured>,
    /// Heat capacity of the jacket. \[J/K\]
    pub jacket_j_k: Option<Measured>,
    /// Heat the store holds over what its description says.
    pub capacity: Option<Measured>,
    /// Middle of the melting range. [°C]
    pub melting_c: Option<Measured>,
    /// Heat that reaches the store over what the heater should give.
    pub heater: Option<Measured>,
    /// Between store and pot, the film inside the pot at its table's value. \[W/(m² K)\]
    pub contact_w_m2k: Option<Measured>,
    /// Dry loss of the pot over what its description says.
    pub pot_loss: Option<Measured>,
}

/// Error of the network itself against a finer model, as a share: one capacity for the jacket, one
/// temperature for a metal store, a film of one law inside the pot.
const MODEL_SHARE: f64 = 0.015;
const MODEL_CONTACT_SHARE: f64 = 0.03;
/// Where the residuals show that the model does not follow, it is so many times as wrong.
const DOES_NOT_FOLLOW: f64 = 5.0;
/// The same for the jacket's capacity, which stands for a whole profile of temperature.
const MODEL_JACKET_SHARE: f64 = 0.1;
/// And for the pot's loss, beside the evaporation that is taken from a table.
const MODEL_POT_SHARE: f64 = 0.1;
/// And for a melting point. \[K\]
const MODEL_MELTING_K: f64 = 0.5;
/// The same of a store that melts between fins: it has several temperatures at once, and what of the way
/// into the pot lies in the melt and what in the seat can't be told apart. Of the finer model's fits
/// (`bench_fit_truth`, seeds 40617, 61001 and 71003), rounded: loss, capacity and contact.
const MODEL_MELT_SHARES: (f64, f64, f64) = (0.05, 0.07, 0.16);
/// The same of a store that conducts poorly: what of the way into the pot lies in the store and what in
/// the seat can't be told apart. Of fits with seeds 501, 502 and 88110.
const MODEL_UNEVEN_SHARES: (f64, f64, f64) = (0.05, 0.02, 0.6);
/// And of one that stays liquid below its melting point, and freezes when it will.
const MODEL_SUPERCOOLED_SHARES: (f64, f64, f64) = (0.06, 0.12, 0.6);
/// Less than this told by the runs is no measurement.
const TOLD: f64 = 0.5;

impl Fit {
    /// Standard error with the model's own error, in the parameter's unit.
    pub fn sd_with_model(&self, estimate: &Estimate) -> f64 {
        let value = estimate.value;
        let (loss, capacity, contact) = match self.store {
            StoreKind::Solid => (MODEL_SHARE, MODEL_SHARE, MODEL_CONTACT_SHARE),
            StoreKind::Uneven => MODEL_UNEVEN_SHARES,
            StoreKind::Melts => MODEL_MELT_SHARES,
            StoreKind::Supercools => MODEL_SUPERCOOLED_SHARES,
        };
        let model = match estimate.parameter {
            Parameter::MeltingPoint => MODEL_MELTING_K,
            Parameter::JacketCapacity | Parameter::MeltingRange => MODEL_JACKET_SHARE * value,
            Parameter::PotLoss => MODEL_POT_SHARE * value,
            Parameter::Loss => loss * value,
            Parameter::StoreCapacity => capacity * value,
            Parameter::Contact => contact * value,
            Parameter::Heater => MODEL_SHARE * value,
        };
        let follows = |doubt: &Doubt| !matches!(doubt, Doubt::DoesNotFollow { .. });
        let times = if self.doubts.iter().all(follows) {
            1.0
        } else {
            DOES_NOT_FOLLOW
        };
        libm::hypot(estimate.sd, times * model)
    }

    /// What was measured, and each value that was not as it is described, with the doubt of a description.
    pub fn doubted(&self) -> ForCooker {
        let (measured, described) = (self.for_cooker(), self.described());
        ForCooker {
            loss_w_k: measured.loss_w_k.or(described.loss_w_k),
            jacket_j_k: measured.jacket_j_k.or(described.jacket_j_k),
            capacity: measured.capacity.or(described.capacity),
            melting_c: measured.melting_c.or(described.melting_c),
            heater: measured.heater.or(described.heater),
            contact_w_m2k: measured.contact_w_m2k.or(described.contact_w_m2k),
            pot_loss: measured.pot_loss.or(described.pot_loss),
        }
    }

    /// Each value as it is described, with the doubt of a description.
    pub fn described(&self) -> ForCooker {
        let described = |parameter| {
            let Prior { value, sd } = self.estimate(parameter)?.described;
            Some(Measured { value, sd })
        };
        ForCooker {
            loss_w_k: described(Parameter::Loss),
            jacket_j_k: described(Parameter::JacketCapacity),
            capacity: described(Parameter::StoreCapacity),
            melting_c: described(Parameter::MeltingPoint),
            heater: described(Parameter::Heater),
            contact_w_m2k: described(Parameter::Contact),
            pot_loss: described(Parameter::PotLoss),
        }
    }

    /// The measured values, ready for the household's cooker; none of a fit that is worth nothing.
    pub fn for_cooker(&self) -> ForCooker {
        let measured = |parameter| {
            let estimate = self.estimate(parameter)?;
            let told = !estimate.held && estimate.told >= TOLD && self.worth != Worth::None;
            told.then(|| Measured {
                value: estimate.value,
                sd: self.sd_with_model(estimate),
            })
        };
        ForCooker {
            loss_w_k: measured(Parameter::Loss),
            jacket_j_k: measured(Parameter::JacketCapacity),
            capacity: measured(Parameter::StoreCapacity),
            melting_c: measured(Parameter::MeltingPoint),
            heater: measured(Parameter::Heater),
            contact_w_m2k: measured(Parameter::Contact),
            pot_loss: measured(Parameter::PotLoss),
        }
    }
}

impl ForCooker {
    /// What was measured of a parameter. The width of melting is never taken over.
    pub const fn of(&self, parameter: Parameter) -> Option<Measured> {
        match parameter {
            Parameter::Loss => self.loss_w_k,
            Parameter::JacketCapacity => self.jacket_j_k,
            Parameter::StoreCapacity => self.capacity,
            Parameter::MeltingPoint => self.melting_c,
            Parameter::MeltingRange => None,
            Parameter::Heater => self.heater,
            Parameter::Contact => self.contact_w_m2k,
            Parameter::PotLoss => self.pot_loss,
        }
    }

    /// The cooker with the measured values in it.
    ///
    /// The store's share of capacity is multiplied by the measured one, so that it holds what it was
    /// found to hold and its masses stay as they were weighed; so is the share of
    /// its pots' loss; a tracker's efficiency is multiplied by the measured share of heat. How well each is
    /// known goes along, for the odds. What a cooker has no place for stays in [`ForCooker`] for whoever asks.
    #[must_use]
    pub fn apply(&self, body: &Body, cooker: &Cooker) -> Cooker {
        let mut fitted = cooker.clone();
        let share = |measured: Measured| Some(measured.sd / measured.value);
        if let Some(loss) = self.loss_w_k {
            fitted.spreads.loss = share(loss);
            fitted.jacket = Jacket::Measured {
                loss_w_k: loss.value,
                capacity_j_k: self
                    .jacket_j_k
                    .map_or(body.described().jacket_j_k, |jacket| jacket.value),
            };
        }
        if let Some(capacity) = self.capacity {
            fitted.spreads.capacity = share(capacity);
            fitted.store.capacity_share *= capacity.value;
        }
        if let Some(pot_loss) = self.pot_loss {
            fitted.pot_loss_share *= pot_loss.value;
            fitted.spreads.pot_loss = share(pot_loss);
        }
        if let Some(contact) = self.contact_w_m2k {
            fitted.contact.measured_w_m2k = Some(contact.value);
            fitted.spreads.contact = share(contact);
        }
        if let (Some(heater), Drive::Tracker { efficiency }) =
            (self.heater, &mut fitted.heater.drive)
        {
            *efficiency = (*efficiency * heater.value).min(1.0);
            fitted.spreads.charging = share(heater);
        }
        fitted
    }
}
