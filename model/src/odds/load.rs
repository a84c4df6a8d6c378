//! A pot made ready for many members.

use super::build::{Table, rounded};
use super::lean::greater;
use super::member::along;
use crate::local_time::LocalTime;
use crate::network::Pot;
use crate::pot::loss::{EVAPORATION_FACTOR, POOL_W_M2PA};
use crate::water::CP_J_KGK;

/// Cooking times are stated at this temperature. [°C]
const REFERENCE_C: f64 = 100.0;
/// Step of the table of cooking rates. [K]
const COOK_STEP_K: f64 = 0.25;
/// The table begins where a member looks whose dish cooks this much colder than told, and slows by
/// this factor more.
const LEAST_SDS: f64 = 3.5;
const MOST_SLOWED: f64 = 1.6;
/// How a dish cooks.
#[derive(Debug, Clone)]
struct Cook {
    /// Below this it does not. [°C]
    least_c: f64,
    /// Doneness gained at a temperature. \[1/s\]
    rate_per_s: Table,
}

/// How a member's dish differs from the tables' below the boil.
#[derive(Debug, Clone, Copy)]
pub(super) struct Slowing {
    /// It is slowed as by so many times the distance from 100 °C.
    pub(super) times: f64,
    /// And cooks at all from so much above the told temperature on. \[K\]
    pub(super) least_k: f64,
}

impl Slowing {
    /// As the tables have it.
    #[cfg(test)]
    pub(super) const AS_TOLD: Self = Self {
        times: 1.0,
        least_k: 0.0,
    };
}

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
    cook: Option<Cook>,
    /// Full boil that safety asks for. \[s\]
    pub(super) full_boil_s: f64,
    /// When it went in.
    pub(super) put_in: LocalTime,
}

impl Load {
    pub(super) fn new(
        pot: &Pot,
        (full_boil_s, least_sd_k): (f64, f64),
        put_in: LocalTime,
        boiling_c: f64,
    ) -> Self {
        let least_water_kg = ((1.0 - pot.c_dry_j_k) / CP_J_KGK).max(0.0);
        let cook = pot.cook.map(|cook| {
            let least_c = cook.t_min_c();
            let coldest_c = least_c - LEAST_SDS * least_sd_k;
            let from_c = REFERENCE_C - MOST_SLOWED * (REFERENCE_C - coldest_c).max(0.0);
            let mut values = Vec::new();
            let mut pot_c = from_c;
            while pot_c < boiling_c.max(REFERENCE_C) + 2.0 * COOK_STEP_K || values.len() < 2 {
                values.push(rounded(cook.rate_and_slope(pot_c).0));
                pot_c += COOK_STEP_K;
            }
            Cook {
                least_c,
                rate_per_s: Table::new(from_c, COOK_STEP_K, values),
            }
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
            cook,
            full_boil_s,
            put_in,
        }
    }

    /// Whether it is done by cooking rather than once it boils.
    pub(super) fn cooks(&self) -> bool {
        self.cook.is_some()
    }

    /// Doneness gained at a temperature by a member's dish, whether it is hot enough or not. \[1/s\]
    #[inline]
    fn rate_per_s(cook: &Cook, pot_c: f64, slowing: Slowing) -> f64 {
        let as_at_c = REFERENCE_C + slowing.times * (pot_c - REFERENCE_C);
        greater(cook.rate_per_s.at(as_at_c).0, 0.0)
    }

    /// Doneness gained at a temperature by a member's dish. \[1/s\]
    #[inline]
    pub(super) fn cook_rate_per_s(&self, pot_c: f64, slowing: Slowing) -> f64 {
        match &self.cook {
            Some(cook) if cook.least_c + slowing.least_k <= pot_c => {
                Self::rate_per_s(cook, pot_c, slowing)
            }
            _ => 0.0,
        }
    }

    /// Doneness gained in the mean by a member's dish over a step that begins at one temperature, would rise
    /// by so much at the pace of its start and ends at another: Simpson's rule on the parabola through these.
    /// Where it passes the least temperature at which the dish cooks, what is above that counts. \[1/s\]
    pub(super) fn mean_cook_rate_per_s(
        &self,
        (before_c, along_k, after_c): (f64, f64, f64),
        slowing: Slowing,
    ) -> f64 {
        let Some(cook) = &self.cook else {
            return 0.0;
        };
        let least_c = cook.least_c + slowing.least_k;
        let rises_k = after_c - before_c;
        let (from, to) = match (least_c <= before_c, least_c <= after_c) {
            (true, true) => (0.0, 1.0),
            (false, false) => return 0.0,
            (cooks, _) => {
                let passes = along(along_k, rises_k, least_c - before_c);
                if cooks { (0.0, passes) } else { (passes, 1.0) }
            }
        };
        let at = |share: f64| {
            let pot_c = before_c + share * (along_k + share * (rises_k - along_k));
            Self::rate_per_s(cook, greater(pot_c, least_c), slowing)
        };
        (to - from) * (at(from) + 4.0 * at(0.5 * (from + to)) + at(to)) / 6.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::network::CookRate;

    fn load(z_k: f64, t_min_c: f64) -> Load {
        let cook = CookRate::ZValue {
            t_ref_s: 3600.0,
            z_k,
            t_min_c,
        };
        let pot = Pot {
            c_dry_j_k: 300.0,
            water_kg: 1.0,
            t_c: 20.0,
            g_air_w_k: 0.0,
            surface: None,
            cook: Some(cook),
            thickness: 1.0,
        };
        Load::new(&pot, (0.0, 3.0), LocalTime(0), 100.0)
    }

    /// By Bigelow's law a dish that slows by so many times more is one whose z is as many times
    /// smaller.
    #[test]
    fn a_dish_that_slows_more_has_a_smaller_z() {
        for times in [0.8, 1.0, 1.25] {
            let slowing = Slowing {
                times,
                least_k: 0.0,
            };
            for pot_c in [86.0, 92.5, 100.0] {
                let slowed = load(20.0, 85.0).cook_rate_per_s(pot_c, slowing);
                let other = load(20.0 / times, 85.0).cook_rate_per_s(pot_c, Slowing::AS_TOLD);
                assert!((slowed / other - 1.0).abs() < 1e-3, "{times} {pot_c}");
            }
        }
    }

    #[test]
    fn where_a_dish_begins_to_cook_is_the_members_own() {
        let load = load(20.0, 90.0);
        for (least_k, pot_c, cooks) in [
            (0.0, 89.9, false),
            (0.0, 90.1, true),
            (-6.0, 84.5, true),
            (4.0, 93.5, false),
        ] {
            let slowing = Slowing {
                times: 1.3,
                least_k,
            };
            let rate = load.cook_rate_per_s(pot_c, slowing);
            assert_eq!(0.0 < rate, cooks, "{least_k} {pot_c}");
        }
    }
}
