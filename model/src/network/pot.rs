//! The pot and its load.

use super::cooking::CookRate;
use crate::error::{ModelError, not_negative, positive, within};
use crate::pot::loss::{EVAPORATION_FACTOR, POOL_W_M2PA};
use crate::water::{self, CP_J_KGK};

/// A pot's heat capacity never counts as less than this, J/K: the last quarter gram of water in a pot
/// said to weigh nothing belongs to the pot.
const LEAST_CAPACITY_J_K: f64 = 1.0;

/// Open water under still air, which evaporates below the boil.
///
/// The formula for open pools of the ASHRAE Handbook, HVAC Applications (from memory),
/// `A (p_w - p_a) 0.089` kW with pressures in kPa, times 1.25: it lies 20 to 25 % under published losses of
/// open tanks from 50 to 100 degC. The mass lost is counted with the heat of vaporisation at the boil, which
/// makes it 5 % too large at 60 degC: less than the formula is worth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpenSurface {
    /// Area of the water's surface, m2.
    pub area_m2: f64,
    /// Share of the open surface's evaporation that gets past the lid: 1 without a lid.
    pub open_share: f64,
    /// Pressure of the vapour in the air, Pa.
    pub air_vapour_pa: f64,
}

impl OpenSurface {
    const W_M2PA: f64 = POOL_W_M2PA.value * EVAPORATION_FACTOR.value;

    /// Heat that evaporation takes, W, and its slope, W/K.
    pub(crate) fn heat_and_slope(&self, t_c: f64) -> (f64, f64) {
        let factor = Self::W_M2PA * self.area_m2 * self.open_share;
        let excess_pa = water::vapour_pressure_pa(t_c) - self.air_vapour_pa;
        if excess_pa > 0.0 {
            (
                factor * excess_pa,
                factor * water::vapour_pressure_slope_pa_k(t_c),
            )
        } else {
            (0.0, 0.0)
        }
    }
}

/// A pot with its load, as it is when it goes into the cooker.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pot {
    /// Heat capacity of pot, lid and dry food, J/K.
    pub c_dry_j_k: f64,
    /// Water, kg, with that in the food.
    pub water_kg: f64,
    /// Temperature, degC.
    pub t_c: f64,
    /// From the pot to the air, W/K.
    pub g_air_w_k: f64,
    /// How much less the film in it lets through than that of water: 1, and more for what is thick.
    pub thickness: f64,
    /// Evaporation below the boil; `None` under a lid that fits.
    pub surface: Option<OpenSurface>,
    /// What is cooked.
    pub cook: Option<CookRate>,
}

impl Pot {
    pub(crate) fn check(&self) -> Result<(), ModelError> {
        not_negative("c_dry_j_k", self.c_dry_j_k)?;
        not_negative("water_kg", self.water_kg)?;
        within("t_c", self.t_c, -50.0, 1000.0)?;
        not_negative("g_air_w_k", self.g_air_w_k)?;
        positive("thickness", self.thickness)?;
        if let Some(surface) = self.surface {
            not_negative("area_m2", surface.area_m2)?;
            within("open_share", surface.open_share, 0.0, 1.0)?;
            not_negative("air_vapour_pa", surface.air_vapour_pa)?;
        }
        if let Some(cook) = self.cook {
            cook.check()?;
        }
        positive("c_dry_j_k", self.c_dry_j_k + CP_J_KGK * self.water_kg)
            .and_then(|capacity| within("c_dry_j_k", capacity, LEAST_CAPACITY_J_K, f64::MAX))?;
        Ok(())
    }
}

/// What the pot is doing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PotPhase {
    /// Off the boil: warming or cooling.
    Simple,
    /// At the local boiling point, giving off steam.
    Boiling,
    /// The water is gone.
    Dry,
}

/// A pot in the cooker.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PotState {
    pub(crate) pot: Pot,
    /// Heat above 0 degC, J.
    pub(crate) heat_j: f64,
    pub(crate) water_kg: f64,
    pub(crate) phase: PotPhase,
    /// Whether the dish is above the least temperature at which it cooks.
    pub(crate) cooking: bool,
    pub(crate) doneness: f64,
    pub(crate) boil_s: f64,
    pub(crate) boiled_at_s: Option<f64>,
    pub(crate) done_at_s: Option<f64>,
}

impl PotState {
    pub(crate) fn new(pot: Pot) -> Result<Self, ModelError> {
        pot.check()?;
        let mut state = Self {
            pot,
            heat_j: 0.0,
            water_kg: pot.water_kg,
            phase: PotPhase::Simple,
            cooking: false,
            doneness: 0.0,
            boil_s: 0.0,
            boiled_at_s: None,
            done_at_s: None,
        };
        if state.water_kg <= state.least_water_kg() {
            state.phase = PotPhase::Dry;
        }
        state.heat_j = state.capacity_j_k() * pot.t_c;
        state.feel_least_temperature();
        Ok(state)
    }

    /// Water that cannot boil away, kg.
    pub(crate) fn least_water_kg(&self) -> f64 {
        ((LEAST_CAPACITY_J_K - self.pot.c_dry_j_k) / CP_J_KGK).max(0.0)
    }

    pub(crate) fn feel_least_temperature(&mut self) {
        // What is left in a dry pot burns; it does not cook.
        self.cooking = self.phase != PotPhase::Dry
            && self
                .pot
                .cook
                .is_some_and(|cook| self.t_c() >= cook.t_min_c());
    }

    /// Heat capacity now, J/K.
    pub fn capacity_j_k(&self) -> f64 {
        self.pot.c_dry_j_k + CP_J_KGK * self.water_kg
    }

    /// Temperature, degC.
    pub fn t_c(&self) -> f64 {
        self.heat_j / self.capacity_j_k()
    }

    /// Heat above 0 degC, J.
    pub fn heat_j(&self) -> f64 {
        self.heat_j
    }

    /// Water left, kg.
    pub fn water_kg(&self) -> f64 {
        self.water_kg
    }

    /// What the pot is doing.
    pub fn phase(&self) -> PotPhase {
        self.phase
    }

    /// Doneness of the dish: 0 raw, 1 done, more when overdone; it stands still once the water is gone.
    pub fn doneness(&self) -> f64 {
        self.doneness
    }

    /// Time spent at a full boil, s.
    pub fn boil_s(&self) -> f64 {
        self.boil_s
    }

    /// When it first boiled, s.
    pub fn boiled_at_s(&self) -> Option<f64> {
        self.boiled_at_s
    }

    /// When the dish was done, s.
    pub fn done_at_s(&self) -> Option<f64> {
        self.done_at_s
    }

    /// The pot is found to boil for the first time, whatever was reckoned: its heat is that of the
    /// boil, and what it cooked at a boil before this one is taken back. A dry pot stays as it is.
    /// Gives the heat that it loses to the air at the boil, W.
    pub(crate) fn see_boiling(&mut self, boiling_c: f64, air_c: f64) -> f64 {
        let surface_w = |surface: OpenSurface| surface.heat_and_slope(boiling_c).0;
        let loss_w =
            self.pot.g_air_w_k * (boiling_c - air_c) + self.pot.surface.map_or(0.0, surface_w);
        if self.phase == PotPhase::Dry {
            return loss_w;
        }
        if let Some(cook) = self.pot.cook {
            let taken_back = self.boil_s * cook.rate_per_s(boiling_c);
            self.doneness = (self.doneness - taken_back).max(0.0);
        }
        if self.doneness < 1.0 {
            self.done_at_s = None;
        }
        self.boil_s = 0.0;
        self.heat_j = self.capacity_j_k() * boiling_c;
        self.phase = PotPhase::Boiling;
        self.feel_least_temperature();
        loss_w
    }

    /// The pot as it is now: to put it back, elsewhere or under another lid.
    pub fn pot(&self) -> Pot {
        Pot {
            water_kg: self.water_kg,
            t_c: self.t_c(),
            ..self.pot
        }
    }

    /// The lid goes on or off: another conductance to the air, W/K, and another evaporation.
    ///
    /// # Errors
    /// A value that is negative or not finite.
    pub fn set_lid(
        &mut self,
        g_air_w_k: f64,
        surface: Option<OpenSurface>,
    ) -> Result<(), ModelError> {
        let pot = Pot {
            g_air_w_k,
            surface,
            ..self.pot
        };
        pot.check()?;
        self.pot = pot;
        Ok(())
    }
}
