//! Texts of the form with a cooker's parts.

/// Texts of the form with a cooker's parts.
#[derive(Debug)]
pub struct Parts {
    /// Heads the form.
    pub heading: &'static str,
    /// After a refusal: what was typed is not taken, what was there before stays.
    pub kept: &'static str,
    /// Step button, for screen readers: less of what the field is of.
    pub less: fn(label: &str) -> String,
    /// Step button: more of it.
    pub more: fn(label: &str) -> String,
    /// Before the reasons why a change is not taken.
    pub refused: &'static str,
    /// What is wrong with figures that fit no panel, heater or network.
    pub unworkable: Unworkable,
    /// Opens so many cautions.
    pub cautions: fn(n: usize) -> String,
    /// Opens so many more, below those that stand in sight.
    pub more_cautions: fn(n: usize) -> String,
    /// Panels.
    pub panels: Panels,
    /// Heater.
    pub heater: Heater,
    /// Store.
    pub store: Store,
    /// Jacket.
    pub jacket: Jacket,
    /// Seat.
    pub seat: Seat,
    /// Pot.
    pub pot: Pot,
}

/// Figures that each could be meant but do not go together.
#[derive(Debug)]
pub struct Unworkable {
    /// Voc is not above Vmp.
    pub voltages: &'static str,
    /// Isc is not above Imp.
    pub currents: &'static str,
    /// A temperature coefficient of current.
    pub current_coefficient: &'static str,
    /// A temperature coefficient of voltage.
    pub voltage_coefficient: &'static str,
    /// So many cells do not give so many volts.
    pub cells: &'static str,
    /// No curve of a panel passes through the ratings.
    pub no_curve: &'static str,
    /// Anything else.
    pub other: &'static str,
}

/// Panels.
#[derive(Debug)]
pub struct Panels {
    /// Heads the fold.
    pub heading: &'static str,
    /// Watts of one panel.
    pub module_w: &'static str,
    /// Where to read them.
    pub module_w_hint: &'static str,
    /// Panels one behind the other.
    pub in_series: &'static str,
    /// What that does.
    pub in_series_hint: &'static str,
    /// Rows side by side.
    pub in_parallel: &'static str,
    /// What that does.
    pub in_parallel_hint: &'static str,
    /// All panels together: watts.
    pub together: fn(watts: &str) -> String,
    /// Slope.
    pub tilt: &'static str,
    /// What 0 and 90 are.
    pub tilt_hint: &'static str,
    /// Where they look.
    pub azimuth: &'static str,
    /// The sixteen winds from north by east.
    pub winds: [&'static str; 16],
    /// Switch: the data sheet is at hand.
    pub sheet: &'static str,
    /// What it is good for.
    pub sheet_detail: &'static str,
    /// Voltage at maximum power.
    pub v_mp: &'static str,
    /// Current at maximum power.
    pub i_mp: &'static str,
    /// Open-circuit voltage.
    pub v_oc: &'static str,
    /// Short-circuit current.
    pub i_sc: &'static str,
    /// Temperature coefficient of the short-circuit current.
    pub alpha: &'static str,
    /// Temperature coefficient of the open-circuit voltage.
    pub beta: &'static str,
    /// Cells in series.
    pub cells: &'static str,
    /// Half-cut panels.
    pub cells_hint: &'static str,
    /// Unit: per cent per kelvin.
    pub percent_k: &'static str,
}

/// Heater.
#[derive(Debug)]
pub struct Heater {
    /// Heads the fold.
    pub heading: &'static str,
    /// How it hangs on the panels.
    pub drive: &'static str,
    /// Straight.
    pub direct: &'static str,
    /// What that means.
    pub direct_detail: &'static str,
    /// Through a tracker.
    pub tracker: &'static str,
    /// What that means.
    pub tracker_detail: &'static str,
    /// Efficiency of the tracker.
    pub efficiency: &'static str,
    /// Resistance of the element.
    pub ohm: &'static str,
    /// How it is measured.
    pub ohm_hint: &'static str,
    /// Resistance of the wires.
    pub wire_ohm: &'static str,
    /// A figure to go by.
    pub wire_hint: &'static str,
    /// Temperature at which the thermostat cuts out.
    pub cutout: &'static str,
    /// What it does.
    pub cutout_hint: &'static str,
}

/// Store.
#[derive(Debug)]
pub struct Store {
    /// Heads the fold.
    pub heading: &'static str,
    /// Which medium; number in the list.
    pub medium: fn(number: usize) -> String,
    /// How much of it; its name.
    pub mass: fn(medium: &str) -> String,
    /// What is counted.
    pub mass_hint: &'static str,
    /// Button: another medium.
    pub add: &'static str,
    /// Button: take this one out.
    pub remove: fn(medium: &str) -> String,
    /// What the store was measured to hold, as a share of what the media say.
    pub held: &'static str,
    /// What is meant.
    pub held_hint: &'static str,
    /// Thickness under the seat.
    pub depth: &'static str,
    /// What is meant.
    pub depth_hint: &'static str,
}

/// Jacket.
#[derive(Debug)]
pub struct Jacket {
    /// Heads the fold.
    pub heading: &'static str,
    /// How it is known.
    pub known_by: &'static str,
    /// By what it is made of.
    pub by_layers: &'static str,
    /// By a measurement.
    pub by_measuring: &'static str,
    /// Shape of the room inside.
    pub shape: &'static str,
    /// Round.
    pub cylinder: &'static str,
    /// Square.
    pub boxed: &'static str,
    /// Width across inside.
    pub across: &'static str,
    /// Length inside.
    pub length: &'static str,
    /// Width inside.
    pub width: &'static str,
    /// Height inside.
    pub height: &'static str,
    /// What a layer is made of; number from the store outwards.
    pub layer: fn(number: usize) -> String,
    /// A layer of air.
    pub still_air: &'static str,
    /// Thickness of a layer.
    pub thickness: fn(number: usize) -> String,
    /// Emissivity of the inner face of an air layer.
    pub hot_face: &'static str,
    /// Emissivity of the outer face.
    pub cold_face: &'static str,
    /// What to put.
    pub face_hint: &'static str,
    /// Button: another layer outside.
    pub add: &'static str,
    /// Button: take a layer off.
    pub remove: fn(number: usize) -> String,
    /// How the opening is closed.
    pub lid: &'static str,
    /// Steel rods through it.
    pub rods: &'static str,
    /// What counts.
    pub rods_hint: &'static str,
    /// Measured loss.
    pub loss: &'static str,
    /// How to measure it.
    pub loss_hint: &'static str,
    /// Measured capacity.
    pub capacity: &'static str,
    /// What it is.
    pub capacity_hint: &'static str,
    /// Unit: watts per kelvin.
    pub w_k: &'static str,
    /// Unit: joules per kelvin.
    pub j_k: &'static str,
}

/// Seat.
#[derive(Debug)]
pub struct Seat {
    /// Heads the fold.
    pub heading: &'static str,
    /// How the pot meets the store.
    pub seat: &'static str,
    /// Switch: the contact was measured.
    pub measured: &'static str,
    /// What that does.
    pub measured_detail: &'static str,
    /// The contact conductance.
    pub contact: &'static str,
    /// Unit: watts per square metre and kelvin.
    pub w_m2k: &'static str,
}

/// Pot.
#[derive(Debug)]
pub struct Pot {
    /// Heads the fold.
    pub heading: &'static str,
    /// What it is made of.
    pub kind: &'static str,
    /// What it holds.
    pub size: &'static str,
    /// What is round it.
    pub wrap: &'static str,
    /// What it was measured to lose, as a share of what its kind says.
    pub loss: &'static str,
}
