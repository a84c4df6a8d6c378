//! A cooker as a household describes it: its parts, before any physics.

use crate::jacket::Jacket;
use crate::media::Medium;
use crate::panel::{Array, Datasheet, Heater, PanelError};
use crate::pot::Pot;
use crate::seat::Seat;

/// Everything that describes one cooker.
#[derive(Debug, Clone, PartialEq)]
pub struct Cooker {
    /// The photovoltaic modules.
    pub panels: Panels,
    /// The resistor and how it hangs on the panel.
    pub heater: Heater,
    /// What holds the heat.
    pub store: Store,
    /// What keeps it in.
    pub jacket: Jacket,
    /// How a pot meets the store.
    pub contact: Contact,
    /// The pot that is used most.
    pub pot: Pot,
}

/// The photovoltaic modules and where they look.
#[derive(Debug, Clone, PartialEq)]
pub struct Panels {
    /// Rated power of one module at 1000 W/m² and 25 °C. \[W\]
    pub module_w: f64,
    /// Its data sheet, where there is one; otherwise a typical sheet is scaled to the watts.
    pub sheet: Option<Datasheet>,
    /// Modules one behind the other.
    pub in_series: u32,
    /// Such rows side by side.
    pub in_parallel: u32,
    /// Slope of the plane, 0 lying flat. \[deg\]
    pub tilt_deg: f64,
    /// Where the plane looks, from north by east. \[deg\]
    pub azimuth_deg: f64,
}

impl Panels {
    /// The data sheet of one module: its own, or a typical one of so many watts.
    ///
    /// # Errors
    ///
    /// [`PanelError::RatedPower`] for watts that no module has.
    pub fn sheet_or_typical(&self) -> Result<Datasheet, PanelError> {
        match self.sheet {
            Some(sheet) => Ok(sheet),
            None => Datasheet::typical(self.module_w),
        }
    }

    /// All modules wired up.
    ///
    /// # Errors
    ///
    /// As [`Array::new`] and [`Panels::sheet_or_typical`].
    pub fn array(&self) -> Result<Array, PanelError> {
        Array::new(&self.sheet_or_typical()?, self.in_series, self.in_parallel)
    }
}

/// What holds the heat.
#[derive(Debug, Clone, PartialEq)]
pub struct Store {
    /// The media in it, all at one temperature or nearly so.
    pub charges: Vec<Charge>,
    /// Metal fins, foam or wires carry the heat through a poorly conducting medium.
    pub finned: bool,
    /// Thickness of the medium under the seat. \[m\]
    pub depth_m: f64,
    /// Temperature at which the thermostat takes the heater off. [°C]
    pub cutout_c: f64,
}

/// One medium of a store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charge {
    /// Which.
    pub medium: Medium,
    /// How much. \[kg\]
    pub mass_kg: f64,
}

/// How a pot meets the store.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// Kind of seat.
    pub seat: Seat,
    /// Contact conductance, where it was measured. \[W/(m² K)\]
    pub measured_w_m2k: Option<f64>,
}
