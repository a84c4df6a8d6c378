//! The thermal curve of one medium.

use crate::error::{ModelError, finite, positive};

/// Lowest temperature at which a medium must still have a positive specific heat, degC.
const COLDEST_C: f64 = -50.0;
/// Highest temperature at which a medium that does not melt must still have one, degC.
const HOTTEST_C: f64 = 600.0;

/// Specific heat of a medium, and its melting if it melts in use.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MediumCurve {
    /// Specific heat of the solid at 0 degC, J/(kg K).
    pub cp_a_j_kgk: f64,
    /// Growth of the solid's specific heat with temperature, J/(kg K2).
    pub cp_b_j_kgk2: f64,
    /// Melting; `None` for what stays solid, and for a liquid that does not freeze in use.
    pub melt: Option<Melt>,
}

/// Melting of a medium.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Melt {
    /// Temperature at which the last liquid freezes, degC.
    pub t_solidus_c: f64,
    /// Temperature at which the last solid melts, degC; equal to the solidus for a plateau.
    pub t_liquidus_c: f64,
    /// Enthalpy from solidus to liquidus, J/kg.
    pub latent_j_kg: f64,
    /// Specific heat of the liquid, J/(kg K).
    pub cp_liquid_j_kgk: f64,
}

impl MediumCurve {
    /// A medium that does not melt.
    pub const fn solid(cp_a_j_kgk: f64, cp_b_j_kgk2: f64) -> Self {
        Self {
            cp_a_j_kgk,
            cp_b_j_kgk2,
            melt: None,
        }
    }

    /// Specific heat of the solid at a temperature, J/(kg K).
    pub(crate) fn cp_solid_j_kgk(&self, t_c: f64) -> f64 {
        self.cp_a_j_kgk + self.cp_b_j_kgk2 * t_c
    }

    /// Refuses what is not a rising enthalpy.
    pub(crate) fn check(&self) -> Result<(), ModelError> {
        finite("cp_a_j_kgk", self.cp_a_j_kgk)?;
        finite("cp_b_j_kgk2", self.cp_b_j_kgk2)?;
        let (mut coldest, mut hottest) = (COLDEST_C, HOTTEST_C);
        if let Some(melt) = self.melt {
            finite("t_solidus_c", melt.t_solidus_c)?;
            finite("t_liquidus_c", melt.t_liquidus_c)?;
            positive("latent_j_kg", melt.latent_j_kg)?;
            positive("cp_liquid_j_kgk", melt.cp_liquid_j_kgk)?;
            if melt.t_solidus_c > melt.t_liquidus_c {
                return Err(ModelError::Inconsistent {
                    quantity: "t_solidus_c",
                    why: "the solidus lies above the liquidus",
                });
            }
            (coldest, hottest) = (coldest.min(melt.t_solidus_c), melt.t_solidus_c);
        }
        // Linear in temperature, so positive between when positive at both ends.
        for t_c in [coldest, hottest] {
            positive("cp_a_j_kgk", self.cp_solid_j_kgk(t_c)).map_err(|_| {
                ModelError::Inconsistent {
                    quantity: "cp_a_j_kgk",
                    why: "the specific heat of the solid must be positive from -50 degC to the melting \
                          point, or to 600 degC for what does not melt",
                }
            })?;
        }
        Ok(())
    }
}
