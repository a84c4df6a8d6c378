//! What is printed on the back of a panel.

use crate::panel::PanelError;

/// A panel's ratings at standard test conditions: 1000 W/m2, 25 degC cells, air mass 1.5.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Datasheet {
    /// Voltage at maximum power, Vmp. \[V\]
    pub v_mp_v: f64,
    /// Current at maximum power, Imp. \[A\]
    pub i_mp_a: f64,
    /// Open-circuit voltage, Voc. \[V\]
    pub v_oc_v: f64,
    /// Short-circuit current, Isc. \[A\]
    pub i_sc_a: f64,
    /// Temperature coefficient of Isc; a sheet's %/K times Isc / 100. \[A/K\]
    pub alpha_sc_a_k: f64,
    /// Temperature coefficient of Voc, negative; a sheet's %/K times Voc / 100. \[V/K\]
    pub beta_voc_v_k: f64,
    /// Cells in series. A half-cut panel of 120 or 144 cells has 60 or 72 in series. It serves
    /// to find slips of the pen; the fit rests on the other ratings.
    pub cells: u32,
}

/// Ratings of one class of crystalline-silicon panels, each cell alike.
struct Class {
    cells: u32,
    v_mp_cell_v: f64,
    v_oc_cell_v: f64,
    isc_of_imp: f64,
    /// Share of Voc per kelvin, chosen so that the power falls by 0.40 % per kelvin.
    beta_k: f64,
}

/// "12 V" panels, 36 cells. Typical values, from memory.
const SMALL: Class = Class {
    cells: 36,
    v_mp_cell_v: 0.51,
    v_oc_cell_v: 0.612,
    isc_of_imp: 1.065,
    beta_k: -0.003_34,
};
/// Whole-cell panels of the roof size. Typical values, from memory.
const WHOLE: Class = Class {
    cells: 60,
    v_mp_cell_v: 0.525,
    v_oc_cell_v: 0.638,
    isc_of_imp: 1.06,
    beta_k: -0.003_27,
};
/// Half-cut panels of 120 or 144 half cells. Typical values, from memory.
const HALF_CUT: Class = Class {
    cells: 60,
    v_mp_cell_v: 0.57,
    v_oc_cell_v: 0.683,
    isc_of_imp: 1.055,
    beta_k: -0.003_31,
};

/// Rise of Isc per kelvin as a share of it. Typical of crystalline silicon, from memory. \[1/K\]
const ALPHA_K: f64 = 0.0005;

impl Datasheet {
    /// A typical crystalline-silicon panel of which only the watts are known.
    ///
    /// Up to 180 W a "12 V" panel of 36 cells, up to 300 W one of 60 and up to 350 W one of 72
    /// whole cells, up to 390 W a half-cut one with 60 and above that with 72 cells in series. The
    /// classes overlap on the market: a 150 W panel may have 60 cells, and then needs more than
    /// twice the resistance. Power falls by 0.40 % per kelvin. All from memory: the voltage on
    /// the panel's own label is better wherever it can be read.
    ///
    /// # Arguments
    ///
    /// * `rated_w`: 1 to 1000. \[W\]
    ///
    /// # Errors
    ///
    /// [`PanelError::RatedPower`] with the value.
    pub fn typical(rated_w: f64) -> Result<Self, PanelError> {
        if !(1.0..=1_000.0).contains(&rated_w) {
            return Err(PanelError::RatedPower(rated_w));
        }
        let (class, cells) = if rated_w <= 180.0 {
            (SMALL, SMALL.cells)
        } else if rated_w <= 300.0 {
            (WHOLE, WHOLE.cells)
        } else if rated_w <= 350.0 {
            (WHOLE, 72)
        } else if rated_w <= 390.0 {
            (HALF_CUT, HALF_CUT.cells)
        } else {
            (HALF_CUT, 72)
        };
        let v_mp_v = class.v_mp_cell_v * f64::from(cells);
        let v_oc_v = class.v_oc_cell_v * f64::from(cells);
        let i_mp_a = rated_w / v_mp_v;
        let i_sc_a = class.isc_of_imp * i_mp_a;
        Ok(Self {
            v_mp_v,
            i_mp_a,
            v_oc_v,
            i_sc_a,
            alpha_sc_a_k: ALPHA_K * i_sc_a,
            beta_voc_v_k: class.beta_k * v_oc_v,
            cells,
        })
    }

    /// Rated power, Vmp Imp. \[W\]
    pub fn rated_w(&self) -> f64 {
        self.v_mp_v * self.i_mp_a
    }

    /// Fill factor: rated power over Voc Isc. 0.70 to 0.85 for sound silicon.
    pub fn fill_factor(&self) -> f64 {
        self.rated_w() / (self.v_oc_v * self.i_sc_a)
    }

    /// The sheet itself, if a panel could have it.
    ///
    /// # Errors
    ///
    /// A [`PanelError`] that names the first rating which makes no sense.
    pub fn checked(self) -> Result<Self, PanelError> {
        if !is_positive(self.v_mp_v) {
            return Err(PanelError::VoltageAtMaximumPower(self.v_mp_v));
        }
        if !is_positive(self.i_mp_a) {
            return Err(PanelError::CurrentAtMaximumPower(self.i_mp_a));
        }
        if !is_positive(self.v_oc_v - self.v_mp_v) {
            return Err(PanelError::OpenCircuitVoltage {
                v_oc_v: self.v_oc_v,
                v_mp_v: self.v_mp_v,
            });
        }
        if !is_positive(self.i_sc_a - self.i_mp_a) {
            return Err(PanelError::ShortCircuitCurrent {
                i_sc_a: self.i_sc_a,
                i_mp_a: self.i_mp_a,
            });
        }
        if !(-0.005..=0.005).contains(&(self.alpha_sc_a_k / self.i_sc_a)) {
            return Err(PanelError::CurrentCoefficient(self.alpha_sc_a_k));
        }
        if !(-0.01..=-0.0005).contains(&(self.beta_voc_v_k / self.v_oc_v)) {
            return Err(PanelError::VoltageCoefficient(self.beta_voc_v_k));
        }
        // A tandem cell gives 2 V and more; half-cut and shingled panels are often entered with all
        // their cells, of which many are in parallel.
        if self.cells == 0 || !(0.1..=3.0).contains(&(self.v_oc_v / f64::from(self.cells))) {
            return Err(PanelError::Cells {
                cells: self.cells,
                v_oc_v: self.v_oc_v,
            });
        }
        Ok(self)
    }
}

fn is_positive(value: f64) -> bool {
    value.is_finite() && 0.0 < value
}
