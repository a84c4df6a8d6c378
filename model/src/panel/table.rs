//! The heat of one panel and heater, worked out beforehand for quick reading.
//!
//! An estimate reads the heat tens of thousands of times for one answer; the exact solution
//! takes some hundred nanoseconds, the table about ten.

use std::sync::OnceLock;

use crate::panel::{Array, Element, Heater, PanelError, Taps};
use crate::sun::PlaneState;

const LIGHT_STEP_W_M2: f64 = 12.5;
const LIGHT_STEPS: usize = 112;
const COOLEST_C: f64 = -25.0;
const WARMTH_STEP_K: f64 = 8.0;
const WARMTH_STEPS: usize = 15;
const ROW: usize = LIGHT_STEPS + 1;

/// Heat by irradiance and cell temperature, straight between the points of a grid.
///
/// Within 0.5 % of the array's rated power of [`Heater::heat_w`], for any sensible sheet and
/// resistance; never falling where the exact heat rises. The grid reaches from 0 to 1400 W/m2
/// and from -25 to 95 degC; beyond it the exact solution is taken.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatTable {
    array: Array,
    element: Element,
    /// Row by row of cell temperature, each by irradiance; filled when it is first read, since a
    /// change of a jacket or a pot asks for none of it. \[W\]
    heat_w: OnceLock<Vec<f64>>,
}

impl HeatTable {
    /// A grid that is worked out when it is first read: 1808 exact solutions, about a millisecond.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `heater`: the element at its working temperature.
    ///
    /// # Errors
    ///
    /// As [`Heater::checked`].
    pub fn new(array: &Array, heater: &Heater) -> Result<Self, PanelError> {
        Ok(Self::of(array, Element::One(heater.checked()?)))
    }

    /// The same for elements that are switched, always at the position that takes most.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `taps`: the elements at their working temperature.
    pub fn switched(array: &Array, taps: &Taps) -> Self {
        Self::of(array, Element::Switched(taps.clone()))
    }

    /// The same for either.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `element`: at its working temperature.
    pub fn of(array: &Array, element: Element) -> Self {
        Self {
            array: *array,
            element,
            heat_w: OnceLock::new(),
        }
    }

    /// The grid, worked out by now.
    fn grid(&self) -> &[f64] {
        self.heat_w.get_or_init(|| {
            let mut heat_w = Vec::with_capacity(ROW * (WARMTH_STEPS + 1));
            let mut cell_c = COOLEST_C;
            for _ in 0..=WARMTH_STEPS {
                let mut irradiance_w_m2 = 0.0;
                for _ in 0..=LIGHT_STEPS {
                    heat_w.push(self.element.heat_w(&self.array, irradiance_w_m2, cell_c));
                    irradiance_w_m2 += LIGHT_STEP_W_M2;
                }
                cell_c += WARMTH_STEP_K;
            }
            heat_w
        })
    }

    /// Heat in the element in steady light.
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panels; 0 or less is darkness. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    ///
    /// # Returns
    ///
    /// \[W\]
    pub fn heat_w(&self, irradiance_w_m2: f64, cell_c: f64) -> f64 {
        if irradiance_w_m2 <= 0.0 {
            return 0.0;
        }
        let light = irradiance_w_m2 / LIGHT_STEP_W_M2;
        let warmth = (cell_c - COOLEST_C) / WARMTH_STEP_K;
        self.read(light, warmth)
            .unwrap_or_else(|| self.element.heat_w(&self.array, irradiance_w_m2, cell_c))
    }

    /// Mean heat in the element over the states of the light within a step.
    ///
    /// # Arguments
    ///
    /// * `states`: their weights add up to 1; none is darkness.
    ///
    /// # Returns
    ///
    /// \[W\]
    pub fn mean_heat_w(&self, states: &[PlaneState]) -> f64 {
        states
            .iter()
            .map(|s| s.weight * self.heat_w(s.irradiance_w_m2, s.cell_c))
            .sum()
    }

    /// Value at a place in the grid, in steps from its corner; `None` outside.
    fn read(&self, light: f64, warmth: f64) -> Option<f64> {
        if !(0.0 <= light && 0.0 <= warmth) {
            return None;
        }
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "neither is negative, and whatever is too large is outside the grid"
        )]
        let (column, row) = (light as usize, warmth as usize);
        if LIGHT_STEPS <= column || WARMTH_STEPS <= row {
            return None;
        }
        let start = row * ROW + column;
        let grid = self.grid();
        let (&[cool_dim, cool_bright], &[warm_dim, warm_bright]) = (
            grid.get(start..)?.first_chunk()?,
            grid.get(start + ROW..)?.first_chunk()?,
        );
        let (along, up) = (light.fract(), warmth.fract());
        let cool = cool_dim + along * (cool_bright - cool_dim);
        let warm = warm_dim + along * (warm_bright - warm_dim);
        Some(cool + up * (warm - cool))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::panel::{Datasheet, Drive};
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(400))]
        #[test]
        fn table_agrees_with_the_exact_heat(
            rated in 5.0..600.0_f64, ohms in -1.3..1.3_f64, wire in 0.0..0.2_f64,
            tracker in proptest::bool::weighted(0.2),
            places in proptest::collection::vec((0.0..1500.0_f64, -40.0..110.0_f64), 40),
        ) {
            let sheet = Datasheet::typical(rated).unwrap();
            let array = Array::new(&sheet, 1, 1).unwrap();
            let scale = sheet.v_mp_v / sheet.i_mp_a;
            let heater = Heater {
                drive: if tracker { Drive::Tracker { efficiency: 0.95 } } else { Drive::Direct },
                resistance_ohm: scale * 10_f64.powf(ohms),
                wire_ohm: scale * wire,
                alpha_per_k: 0.0,
            };
            let table = HeatTable::new(&array, &heater).unwrap();
            for (light, warmth) in places {
                let off = table.heat_w(light, warmth) - heater.heat_w(&array, light, warmth);
                prop_assert!(off.abs() < 0.005 * rated, "{off} W of {rated} at {light}, {warmth}");
                let brighter = table.heat_w(light + 3.0, warmth);
                prop_assert!(table.heat_w(light, warmth) <= brighter + 0.005 * rated);
            }
        }
    }

    #[test]
    fn switched_elements_have_a_table_too() {
        let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        let taps = Taps::new(&[3.5, 10.0], 0.0, 0.0).unwrap();
        let table = HeatTable::switched(&array, &taps);
        for (light, warmth) in [(120.0, 25.0), (430.0, 40.0), (960.0, 55.0), (1600.0, 60.0)] {
            let (_, exact) = taps.best(&array, light, warmth).unwrap();
            let off = table.heat_w(light, warmth) - exact;
            assert!(off.abs() < 0.5, "{off} W at {light}");
        }
    }

    #[test]
    fn outside_the_grid_the_exact_heat_is_taken() {
        let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        let heater = Heater {
            drive: Drive::Direct,
            resistance_ohm: 3.5,
            wire_ohm: 0.0,
            alpha_per_k: 0.0,
        };
        let table = HeatTable::new(&array, &heater).unwrap();
        for (light, warmth) in [(1600.0, 50.0), (800.0, -60.0), (800.0, 120.0)] {
            let exact = heater.heat_w(&array, light, warmth);
            assert!((table.heat_w(light, warmth) - exact).abs() < 1e-12);
        }
        assert!(table.heat_w(0.0, 20.0).abs() < 1e-12);
        assert!(table.heat_w(-5.0, 20.0).abs() < 1e-12);
    }
}
