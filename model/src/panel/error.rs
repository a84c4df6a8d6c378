//! What can be wrong with a data sheet, an array or a heater.

/// Input that no panel or heater can have. Each variant carries the value that was wrong.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum PanelError {
    /// Voltage at maximum power is not a positive number.
    #[error("voltage at maximum power {0} V is not a positive number")]
    VoltageAtMaximumPower(f64),
    /// Current at maximum power is not a positive number.
    #[error("current at maximum power {0} A is not a positive number")]
    CurrentAtMaximumPower(f64),
    /// Open-circuit voltage is not a number above the voltage at maximum power.
    #[error("open-circuit voltage {v_oc_v} V is not above {v_mp_v} V at maximum power")]
    OpenCircuitVoltage {
        /// What the sheet says. \[V\]
        v_oc_v: f64,
        /// What it has to exceed. \[V\]
        v_mp_v: f64,
    },
    /// Short-circuit current is not a number above the current at maximum power.
    #[error("short-circuit current {i_sc_a} A is not above {i_mp_a} A at maximum power")]
    ShortCircuitCurrent {
        /// What the sheet says. \[A\]
        i_sc_a: f64,
        /// What it has to exceed. \[A\]
        i_mp_a: f64,
    },
    /// The short-circuit current changes by more than 0.5 % per kelvin, or by no number.
    #[error(
        "short-circuit current's coefficient {0} A/K is beyond 0.5 % of the current per kelvin"
    )]
    CurrentCoefficient(f64),
    /// The open-circuit voltage does not fall by 0.05 to 1 % per kelvin.
    #[error("open-circuit voltage's coefficient {0} V/K is not a fall of 0.05 to 1 % per kelvin")]
    VoltageCoefficient(f64),
    /// The number of cells does not go with the open-circuit voltage: 0.1 to 3 V a cell.
    #[error("{cells} cells do not go with {v_oc_v} V")]
    Cells {
        /// What the sheet says.
        cells: u32,
        /// The open-circuit voltage. \[V\]
        v_oc_v: f64,
    },
    /// No diode passes through the sheet's points: the maximum-power point is too near to, or
    /// too far from, the corner of open circuit and short circuit. Carries the fill factor.
    #[error("no cell has a fill factor of {0:.3} with such a corner of its curve")]
    NoDiode(f64),
    /// The rated power is not a number from 1 to 1000 W a panel.
    #[error("rated power {0} W is outside 1 to 1000")]
    RatedPower(f64),
    /// A count of panels in series or parallel is not from 1 to 100.
    #[error("{0} panels are outside 1 to 100")]
    Count(u32),
    /// The heater's resistance is not a number from 0.001 to 100000 ohm.
    #[error("resistance {0} ohm is outside 0.001 to 100000")]
    Resistance(f64),
    /// The wire's resistance is not a number from 0 to 1000 ohm.
    #[error("wire resistance {0} ohm is outside 0 to 1000")]
    WireResistance(f64),
    /// The element's temperature coefficient is not a number from -0.005 to 0.02 per kelvin.
    #[error("element coefficient {0} per kelvin is outside -0.005 to 0.02")]
    ElementCoefficient(f64),
    /// The element's temperature is not a number from -60 to 1500 degC.
    #[error("element temperature {0} degC is outside -60 to 1500")]
    ElementTemperature(f64),
    /// The tracker's efficiency is not a number above 0, up to 1.
    #[error("tracker efficiency {0} is outside 0 to 1")]
    Efficiency(f64),
    /// There is no light in any of the days that a resistance was to be matched to.
    #[error("none of the {0} days has any light")]
    NoLight(usize),
}
