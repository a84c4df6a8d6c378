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

    fn together(&self, one: OperatingPoint) -> OperatingPoint {
        OperatingPoint {
            voltage_v: one.voltage_v * f64::from(self.in_series),
            current_a: one.current_a * f64::from(self.in_parallel),
        }
    }
}
