//! The resistor on the panel, and the heat in it.

use crate::panel::{Array, PanelError};
use crate::sun::PlaneState;

/// Temperature at which an element's resistance is given. \[degC\]
const ELEMENT_REFERENCE_C: f64 = 20.0;

/// How the resistor takes its power from the panel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Drive {
    /// Wired straight to the panel: it works where their two lines cross.
    Direct,
    /// Through a tracker that holds the panel at its maximum power.
    Tracker {
        /// Power into the resistor over the panel's maximum, losses of the tracker and of all
        /// wires included; above 0, up to 1.
        efficiency: f64,
    },
}

/// The heating element and its wiring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heater {
    /// Straight or through a tracker.
    pub drive: Drive,
    /// Of the element at 20 degC, 0.001 to 100000. \[ohm\]
    pub resistance_ohm: f64,
    /// Of the wires from the panel and back, 0 to 1000. Their heat is lost. \[ohm\]
    pub wire_ohm: f64,
    /// Change of the element's resistance as a share of that at 20 degC. Nickel-chromium has
    /// about 0.0001, a lamp's tungsten 0.0045 (from memory); 0 where nobody knows. \[1/K\]
    pub alpha_per_k: f64,
}

impl Heater {
    /// The heater itself, if it makes sense.
    ///
    /// # Errors
    ///
    /// A [`PanelError`] with the first value that is out of range.
    pub fn checked(self) -> Result<Self, PanelError> {
        if !(0.001..=1e5).contains(&self.resistance_ohm) {
            return Err(PanelError::Resistance(self.resistance_ohm));
        }
        if !(0.0..=1_000.0).contains(&self.wire_ohm) {
            return Err(PanelError::WireResistance(self.wire_ohm));
        }
        if !(-0.005..=0.02).contains(&self.alpha_per_k) {
            return Err(PanelError::ElementCoefficient(self.alpha_per_k));
        }
        if let Drive::Tracker { efficiency } = self.drive
            && !(f64::MIN_POSITIVE..=1.0).contains(&efficiency)
        {
            return Err(PanelError::Efficiency(efficiency));
        }
        Ok(self)
    }

    /// The same heater with its element at a working temperature: its resistance is what it is
    /// there, and no longer changes.
    ///
    /// # Arguments
    ///
    /// * `element_c`: -60 to 1500. \[degC\]
    ///
    /// # Errors
    ///
    /// [`PanelError::ElementTemperature`] with the value; [`PanelError::Resistance`] where the
    /// coefficient leaves no sensible resistance at that temperature.
    pub fn at_element_c(self, element_c: f64) -> Result<Self, PanelError> {
        if !(-60.0..=1_500.0).contains(&element_c) {
            return Err(PanelError::ElementTemperature(element_c));
        }
        let growth = 1.0 + self.alpha_per_k * (element_c - ELEMENT_REFERENCE_C);
        Self {
            resistance_ohm: self.resistance_ohm * growth,
            alpha_per_k: 0.0,
            ..self
        }
        .checked()
    }

    /// Heat in the element in steady light.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels it hangs on.
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    ///
    /// # Returns
    ///
    /// 0 in the dark, never above the array's maximum power. The element is taken at 20 degC:
    /// see [`Heater::at_element_c`]. \[W\]
    ///
    /// # Example
    ///
    /// Far below the knee the panel is a source of current: half the light, a quarter of the heat.
    ///
    /// ```
    /// use model::panel::{Array, Datasheet, Drive, Heater};
    ///
    /// let array = Array::new(&Datasheet::typical(100.0)?, 1, 1)?;
    /// let heater =
    ///     Heater { drive: Drive::Direct, resistance_ohm: 3.5, wire_ohm: 0.1, alpha_per_k: 0.0 };
    /// let dim = heater.heat_w(&array, 150.0, 30.0);
    /// let brighter = heater.heat_w(&array, 300.0, 30.0);
    /// assert!((brighter / dim - 4.0).abs() < 0.05);
    /// # Ok::<(), model::panel::PanelError>(())
    /// ```
    pub fn heat_w(&self, array: &Array, irradiance_w_m2: f64, cell_c: f64) -> f64 {
        match self.drive {
            Drive::Direct => {
                let load_ohm = self.resistance_ohm + self.wire_ohm;
                let point = array.on_load(irradiance_w_m2, cell_c, load_ohm);
                point.current_a * point.current_a * self.resistance_ohm
            }
            Drive::Tracker { efficiency } => {
                efficiency * array.max_power(irradiance_w_m2, cell_c).power_w()
            }
        }
    }

    /// Mean heat in the element over the states of the light within a step.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels it hangs on.
    /// * `states`: their weights add up to 1; none is darkness.
    ///
    /// # Returns
    ///
    /// As [`Heater::heat_w`]. \[W\]
    pub fn mean_heat_w(&self, array: &Array, states: &[PlaneState]) -> f64 {
        states
            .iter()
            .map(|s| s.weight * self.heat_w(array, s.irradiance_w_m2, s.cell_c))
            .sum()
    }
}
