//! The figures of a cooker as the household's odds take them, for a person who is about to change them.

use crate::cooker::Cooker;
use crate::odds::Multiplier;
use crate::panel::Drive;
use crate::tonight::{Leaning, Rig, Site, TonightError};

/// A figure, and how well it counts as known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stands {
    /// In the figure's unit.
    pub value: f64,
    /// One standard deviation as a share of it; none where no odds hang on it.
    pub doubt: Option<f64>,
}

/// What a fit can change of a cooker.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Standing {
    /// Store for which loss and contact are told: half-way between the boil and the cut-out. [°C]
    pub working_c: f64,
    /// Steady loss through the jacket. \[W/K\]
    pub loss_w_k: Stands,
    /// Heat capacity of the jacket. \[J/K\]
    pub jacket_j_k: Stands,
    /// Heat that the store holds between the boil and the cut-out. \[J\]
    pub store_j: Stands,
    /// Between store and pot; the doubt is of the whole way into the pot. \[W/(m² K)\]
    pub contact_w_m2k: Stands,
    /// Dry loss of the pot over what its kind says.
    pub pot_loss: Stands,
    /// Share of the panels' power that a tracker brings to the heater; none without a tracker.
    pub tracker: Option<Stands>,
}

impl Standing {
    /// As this description has it.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a description that makes no sense.
    pub fn of(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let rig = Rig::new(site, cooker)?;
        let parts = *rig.network(&Leaning::AS_TOLD, false)?.parts();
        let stands = |value: f64, of: Option<Multiplier>| Stands {
            value,
            doubt: of.map(|multiplier| {
                let log_sd = multiplier.log_sd(cooker, &rig);
                libm::expm1(log_sd * log_sd).sqrt()
            }),
        };
        Ok(Self {
            working_c: rig.working_c(),
            loss_w_k: stands(parts.g_loss_w_k, Some(Multiplier::Loss)),
            jacket_j_k: stands(parts.c_jacket_j_k, None),
            store_j: stands(
                rig.heat_between_j(rig.boiling_c()?, rig.cutout_c()),
                Some(Multiplier::Capacity),
            ),
            contact_w_m2k: stands(rig.contact_w_m2k(), Some(Multiplier::Contact)),
            pot_loss: stands(cooker.pot_loss_share, Some(Multiplier::PotLoss)),
            tracker: match cooker.heater.drive {
                Drive::Tracker { efficiency } => {
                    Some(stands(efficiency, Some(Multiplier::Charging)))
                }
                _ => None,
            },
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::fit::tests::site;
    use crate::bench::{Body, ForCooker, Measured};
    use crate::presets::Preset;

    /// Worked by hand from what is put in: the figures are those that were measured, as well known as
    /// they were measured.
    #[test]
    fn what_was_measured_stands_as_it_was_measured() {
        let cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
        let before = Standing::of(&site(), &cooker).unwrap();
        let measured = ForCooker {
            loss_w_k: Some(Measured {
                value: 0.5,
                sd: 0.02,
            }),
            capacity: Some(Measured {
                value: 0.9,
                sd: 0.027,
            }),
            pot_loss: Some(Measured {
                value: 1.5,
                sd: 0.15,
            }),
            ..ForCooker::default()
        };
        let fitted = measured.apply(&Body::new(&site(), &cooker).unwrap(), &cooker);
        let after = Standing::of(&site(), &fitted).unwrap();
        let near = |got: f64, wanted: f64| assert!((got / wanted - 1.0).abs() < 1e-6, "{got}");
        near(after.loss_w_k.value, 0.5);
        near(after.loss_w_k.doubt.unwrap(), 0.04);
        near(after.store_j.value, 0.9 * before.store_j.value);
        near(after.store_j.doubt.unwrap(), 0.03);
        near(after.pot_loss.value, 1.5 * before.pot_loss.value);
        near(after.pot_loss.doubt.unwrap(), 0.1);
        assert!(0.1 < before.loss_w_k.doubt.unwrap());
        assert_eq!(after.contact_w_m2k, before.contact_w_m2k);
        assert_eq!(after.tracker, None);
    }
}
