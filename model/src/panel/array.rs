//! Panels wired together.

use crate::panel::{Datasheet, DeSoto, OperatingPoint, PanelError};

/// Equal panels in the same light, in strings of some in series, the strings in parallel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Array {
    panel: DeSoto,
    in_series: u32,
    in_parallel: u32,
}

impl Array {
    /// Fits the sheet and wires up the panels.
    ///
    /// # Arguments
    ///
    /// * `sheet`: of each panel.
    /// * `in_series`, `in_parallel`: 1 to 100 each.
    ///
    /// # Errors
    ///
    /// [`PanelError::Count`] with the count, or why the sheet makes no sense.
    ///
    /// # Example
    ///
    /// ```
    /// use model::panel::{Array, Datasheet};
    ///
    /// let pair = Array::new(&Datasheet::typical(100.0)?, 1, 2)?;
    /// assert!((pair.rated_w() - 200.0).abs() < 0.1);
    /// // Hot cells give less: 0.40 % per kelvin.
    /// assert!((pair.max_power(1000.0, 65.0).power_w() - 168.0).abs() < 2.0);
    /// # Ok::<(), model::panel::PanelError>(())
    /// ```
    pub fn new(sheet: &Datasheet, in_series: u32, in_parallel: u32) -> Result<Self, PanelError> {
        for count in [in_series, in_parallel] {
            if !(1..=100).contains(&count) {
                return Err(PanelError::Count(count));
            }
        }
        Ok(Self {
            panel: DeSoto::fit(sheet)?,
            in_series,
            in_parallel,
        })
    }

    /// Maximum power at standard test conditions. \[W\]
    pub fn rated_w(&self) -> f64 {
        self.max_power(1000.0, 25.0).power_w()
    }

    /// The maximum-power point of all panels together.
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    pub fn max_power(&self, irradiance_w_m2: f64, cell_c: f64) -> OperatingPoint {
        self.together(self.panel.at(irradiance_w_m2, cell_c).max_power())
    }

    /// Where the panels work on a resistor.
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    /// * `load_ohm`: all that lies between the terminals, wire included. \[ohm\]
    pub fn on_load(&self, irradiance_w_m2: f64, cell_c: f64, load_ohm: f64) -> OperatingPoint {
        let share_ohm = load_ohm * f64::from(self.in_parallel) / f64::from(self.in_series);
        self.together(self.panel.at(irradiance_w_m2, cell_c).on_load(share_ohm))
    }

    /// Open-circuit voltage of all panels together. \[V\]
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    pub fn open_circuit_v(&self, irradiance_w_m2: f64, cell_c: f64) -> f64 {
        let one_v = self.panel.at(irradiance_w_m2, cell_c).open_circuit_v();
        one_v * f64::from(self.in_series)
    }

    /// The curve of current against voltage, from short circuit to open circuit.
    ///
    /// # Arguments
    ///
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    /// * `n_steps`: into which the voltage is cut, evenly; the curve has one point more.
    pub fn curve(&self, irradiance_w_m2: f64, cell_c: f64, n_steps: u32) -> Vec<OperatingPoint> {
        let diode = self.panel.at(irradiance_w_m2, cell_c);
        let step_v = diode.open_circuit_v() / f64::from(n_steps.max(1));
        (0..=n_steps)
            .map(|step| {
                let voltage_v = step_v * f64::from(step);
                self.together(OperatingPoint {
                    voltage_v,
                    current_a: diode.current_a(voltage_v).max(0.0),
                })
            })
            .collect()
    }

    fn together(&self, one: OperatingPoint) -> OperatingPoint {
        OperatingPoint {
            voltage_v: one.voltage_v * f64::from(self.in_series),
            current_a: one.current_a * f64::from(self.in_parallel),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_curve_runs_from_short_to_open_circuit_through_the_maximum() {
        // The typical 100 W sheet is printed at 1000 W/m2 and 25 degC: two in series, three rows.
        let sheet = Datasheet::typical(100.0).unwrap();
        let array = Array::new(&sheet, 2, 3).unwrap();
        let curve = array.curve(1000.0, 25.0, 200);
        let (first, last) = (curve[0], curve[200]);
        assert!(
            (first.current_a - 3.0 * sheet.i_sc_a).abs() < 1e-3,
            "{first:?}"
        );
        assert!(
            (last.voltage_v - 2.0 * sheet.v_oc_v).abs() < 1e-3,
            "{last:?}"
        );
        assert!(last.current_a.abs() < 1e-6, "{last:?}");
        let most_w = curve
            .iter()
            .map(OperatingPoint::power_w)
            .fold(0.0, f64::max);
        assert!((most_w - 600.0).abs() < 1.0, "{most_w}");
        assert!((array.open_circuit_v(1000.0, 25.0) - 2.0 * sheet.v_oc_v).abs() < 1e-3);
    }
}
