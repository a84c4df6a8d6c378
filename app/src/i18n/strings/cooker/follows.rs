//! Texts of what follows from a build.

/// Texts of what follows from a build.
#[derive(Debug)]
pub struct Follows {
    /// Heads the figures.
    pub heading: &'static str,
    /// All in one short line, which stays in sight while parts are changed: heat, how long it stays
    /// above the boil, and what is said of a litre.
    pub in_short: fn(capacity: &str, hold: &str, litre: &str) -> String,
    /// Of a litre, in that line.
    pub in_short_litre: fn(time: &str) -> String,
    /// After that: what the heater gets in full sun of what the panels could give.
    pub in_short_heater: fn(gets: &str, could: &str) -> String,
    /// It never boils, in that line.
    pub in_short_never: &'static str,
    /// Heat between the boil and the cut-out.
    pub capacity: &'static str,
    /// That heat as water it brings to the boil.
    pub capacity_detail: fn(litres: &str) -> String,
    /// How long it stays above the boil.
    pub hold: &'static str,
    /// From where, in what air.
    pub hold_detail: fn(cutout: &str, air: &str) -> String,
    /// Longer than was worked out.
    pub hold_long: &'static str,
    /// The store after a night.
    pub night: &'static str,
    /// What it still boils then.
    pub night_detail: fn(litres: &str) -> String,
    /// It boils nothing then.
    pub night_nothing: &'static str,
    /// Loss through the jacket, store at the cut-out.
    pub loss: &'static str,
    /// Under it: the same by the kelvin with the store at the cut-out, and at the temperature for which
    /// it is measured and learned.
    pub loss_detail: fn(full: &str, full_c: &str, halfway: &str, halfway_c: &str) -> String,
    /// Outside of the jacket.
    pub outer_face: &'static str,
    /// The outer face burns.
    pub outer_face_burns: &'static str,
    /// The loss was measured, so the face is not known.
    pub outer_face_unknown: &'static str,
    /// Conductance from the middle of the store to the food.
    pub seat: &'static str,
    /// From where that is, the conductance of the seat alone, and what a store at the cut-out gives at
    /// first into a pot that boils, which is more or less by the kelvin.
    pub seat_detail: fn(seat: &str, power: &str, more: bool) -> String,
    /// The same of a store with something that melts, half of which is frozen.
    pub seat_detail_melt: fn(seat: &str, power: &str) -> String,
    /// Time to boil a litre on a full store.
    pub litre: &'static str,
    /// From what temperature, lid on.
    pub litre_detail: fn(start: &str) -> String,
    /// It never boils.
    pub litre_never: &'static str,
    /// The cut-out is not above the boil.
    pub below_boil: fn(cutout: &str, boil: &str) -> String,
    /// The store takes more room than the jacket has.
    pub too_large: fn(store: &str, room: &str) -> String,
    /// It loses more at the cut-out than ever heats it.
    pub never_full: fn(loss: &str, cutout: &str, heat: &str) -> String,
    /// The same in short.
    pub in_short_not_full: &'static str,
    /// Heads what the heater takes of the panels' power.
    pub take_heading: &'static str,
    /// On a clear day at this time of year.
    pub clear_day: &'static str,
    /// On an ordinary day: sun and cloud by turns.
    pub ordinary_day: &'static str,
    /// Over a typical year.
    pub year: &'static str,
    /// Heat that reaches the store on such a day.
    pub day_heat: fn(energy: &str) -> String,
    /// Share of what the panels could give.
    pub of_most: fn(percent: &str) -> String,
    /// The resistance that takes most over the year.
    pub best: &'static str,
    /// The share that it takes.
    pub best_detail: fn(percent: &str) -> String,
    /// There is no better one worth a change.
    pub best_already: &'static str,
    /// With a tracker the resistance hardly matters.
    pub best_tracker: &'static str,
    /// A figure that is being worked out.
    pub working: &'static str,
    /// The day has no light.
    pub no_light: &'static str,
    /// Unit: watts per kelvin.
    pub w_k: fn(number: &str) -> String,
    /// Unit: volts.
    pub volts: fn(number: &str) -> String,
    /// Unit: amperes.
    pub amperes: fn(number: &str) -> String,
    /// The plot of a full store that cools.
    pub cool: Cool,
    /// The plot of the panel and its load.
    pub panel: PanelPlot,
}

/// The plot of a full store that cools.
#[derive(Debug)]
pub struct Cool {
    /// Its name.
    pub name: &'static str,
    /// The line.
    pub store: &'static str,
    /// Where water boils.
    pub boil: fn(temperature: &str) -> String,
    /// Where the medium freezes.
    pub melts: fn(temperature: &str) -> String,
    /// How it falls: from, to the boil line, in so long.
    pub sentence: fn(cutout: &str, boil: &str, hold: &str, air: &str) -> String,
    /// It stays above the boil for longer than is drawn.
    pub sentence_long: fn(cutout: &str, boil: &str) -> String,
    /// It starts below the boil.
    pub sentence_below: fn(cutout: &str, boil: &str) -> String,
    /// Head of the table's first column.
    pub head_time: &'static str,
    /// Head of the table's second column.
    pub head_store: &'static str,
}

/// The plot of the panel and its load.
#[derive(Debug)]
pub struct PanelPlot {
    /// Its name.
    pub name: &'static str,
    /// The panels at full sun.
    pub full: &'static str,
    /// The panels at half sun.
    pub half: &'static str,
    /// The line of the heater; its resistance with the wires.
    pub load: fn(ohms: &str) -> String,
    /// The points where they work.
    pub works: &'static str,
    /// What the heater takes of what the panels could give, at full and at half sun.
    pub sentence: fn(full: &str, full_most: &str, half: &str, half_most: &str) -> String,
    /// The same with a tracker.
    pub sentence_tracker: fn(full: &str, half: &str) -> String,
    /// Head of the table: the light.
    pub head_light: &'static str,
    /// Head: voltage.
    pub head_volts: &'static str,
    /// Head: current.
    pub head_amperes: &'static str,
    /// Head: heat in the heater.
    pub head_heat: &'static str,
    /// Head: the most the panels could give.
    pub head_most: &'static str,
}
