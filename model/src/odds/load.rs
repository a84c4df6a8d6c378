//! A pot made ready for many members.

use super::build::{Table, rounded};
use super::member::along;
use crate::local_time::LocalTime;
use crate::network::{CookRate, Pot};
use crate::pot::loss::{EVAPORATION_FACTOR, POOL_W_M2PA};
use crate::water::CP_J_KGK;

/// Step of the table of cooking rates. [K]
const COOK_STEP_K: f64 = 0.25;
/// A pot with its load for many members.
#[derive(Debug, Clone)]
pub(super) struct Load {
    /// Pot, lid and dry food. \[J/K\]
    pub(super) c_dry_j_k: f64,
    /// How much less its film lets through than that of water.
    pub(super) thickness: f64,
    pub(super) water_kg: f64,
    pub(super) least_water_kg: f64,
    pub(super) start_c: f64,
    pub(super) g_air_w_k: f64,
    /// Evaporation below the boil. \[W/Pa\]
    pub(super) surface_w_pa: f64,
    pub(super) air_vapour_pa: f64,
    cook: Option<(f64, Table)>,
    /// Rate at the boil. \[1/s\]
    pub(super) boil_rate_per_s: f64,
    /// Full boil that safety asks for. \[s\]
    pub(super) full_boil_s: f64,
    /// When it went in.
    pub(super) put_in: LocalTime,
}

impl Load {
    pub(super) fn new(pot: &Pot, full_boil_s: f64, put_in: LocalTime, boiling_c: f64) -> Self {
        let least_water_kg = ((1.0 - pot.c_dry_j_k) / CP_J_KGK).max(0.0);
        let rate = |cook: &CookRate, pot_c: f64| rounded(cook.rate_per_s(pot_c));
        let cook = pot.cook.map(|cook| {
            let from_c = cook.t_min_c();
            let mut values = Vec::new();
            let mut pot_c = from_c;
            while pot_c < boiling_c + 2.0 * COOK_STEP_K || values.len() < 2 {
                values.push(rate(&cook, pot_c));
                pot_c += COOK_STEP_K;
            }
            (from_c, Table::new(from_c, COOK_STEP_K, values))
        });
        Self {
            c_dry_j_k: rounded(pot.c_dry_j_k),
            thickness: rounded(pot.thickness),
            water_kg: pot.water_kg,
            least_water_kg,
            start_c: pot.t_c,
            g_air_w_k: rounded(pot.g_air_w_k),
            surface_w_pa: pot.surface.map_or(0.0, |surface| {
                rounded(
                    POOL_W_M2PA.value
                        * EVAPORATION_FACTOR.value
                        * surface.area_m2
                        * surface.open_share,
                )
            }),
            air_vapour_pa: pot
                .surface
                .map_or(0.0, |surface| rounded(surface.air_vapour_pa)),
            boil_rate_per_s: pot.cook.map_or(0.0, |cook| rate(&cook, boiling_c)),
            cook,
            full_boil_s,
            put_in,
        }
    }

    /// Whether it is done by cooking rather than once it boils.
    pub(super) fn cooks(&self) -> bool {
        self.cook.is_some()
    }

    /// Doneness gained in the mean over a step that begins at one temperature, would rise by so much at the pace
    /// of its start and ends at another: Simpson's rule on the parabola through these. Where it passes the
    /// least temperature at which the dish cooks, what is above that counts. \[1/s\]
    pub(super) fn mean_cook_rate_per_s(&self, before_c: f64, along_k: f64, after_c: f64) -> f64 {
        let Some((least_c, table)) = &self.cook else {
            return 0.0;
        };
        let rises_k = after_c - before_c;
        let (from, to) = match (*least_c <= before_c, *least_c <= after_c) {
            (true, true) => (0.0, 1.0),
            (false, false) => return 0.0,
            (cooks, _) => {
                let passes = along(along_k, rises_k, least_c - before_c);
                if cooks { (0.0, passes) } else { (passes, 1.0) }
            }
        };
        let at = |share: f64| {
            let pot_c = before_c + share * (along_k + share * (rises_k - along_k));
            table.at(pot_c.max(*least_c)).0
        };
        (to - from) * (at(from) + 4.0 * at(0.5 * (from + to)) + at(to)) / 6.0
    }
}
