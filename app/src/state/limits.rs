//! What can be typed and what can't, with the reason for each bound.
//!
//! Wide on purpose: these stop slips of the thumb and nonsense, not unusual kitchens.

/// People at the table: a boarding school's kitchen, and no more than one pot can feed.
pub const PEOPLE: (u32, u32) = (1, 200);

/// Latitude. \[deg\]
pub const LATITUDE_DEG: (f64, f64) = (-90.0, 90.0);

/// Longitude. \[deg\]
pub const LONGITUDE_DEG: (f64, f64) = (-180.0, 180.0);

/// From the shore of the Dead Sea to above the highest village. \[m\]
pub const ALTITUDE_M: (f64, f64) = (-450.0, 6000.0);

/// Clocks of the world lie between 12 h behind universal time and 14 h ahead of it. \[min\]
pub const UTC_OFFSET_MIN: (f64, f64) = (-720.0, 840.0);

/// Letters of a name that fit one line of a narrow phone twice over.
pub const NAME_LETTERS: usize = 40;

/// Dry or raw food in one pot. The largest pots on such cookers hold 30 L. \[kg\]
pub const FOOD_KG: (f64, f64) = (0.0, 30.0);

/// Water in one pot. \[kg\]
pub const WATER_KG: (f64, f64) = (0.0, 30.0);

/// Water of a dish from dry food, or water and food of one that brings its own. Less than a cup
/// boils dry before anything is cooked. \[kg\]
pub const LEAST_WET_KG: f64 = 0.1;

/// Temperature of what goes in: no ice, and not boiling yet. \[°C\]
pub const START_C: (f64, f64) = (0.0, 100.0);

/// A thermometer in the store. Aluminium melts at 660 °C, and nothing that cooks is built to get
/// there. \[°C\]
pub const READING_C: (f64, f64) = (-30.0, 650.0);

/// How long a lid stands open in one entry: a day at most. \[s\]
pub const LID_OPEN_S: (i64, i64) = (60, 86_400);

/// How long a heater gets nothing in one entry: the time a spare part takes to come. \[s\]
pub const HEATER_OFF_S: (i64, i64) = (60, 60 * 86_400);

/// A pot waits for its eaters for two days at most. \[s\]
pub const MEAL_S: i64 = 2 * 86_400;

/// How far ahead a pot can be said to go in. \[s\]
pub const AHEAD_S: i64 = 86_400;

/// A clock that shows whole minutes can be this far ahead of the one that counts seconds. \[s\]
pub const CLOCK_SLACK_S: i64 = 90;

/// The first year a diary can speak of; a device whose battery ran flat wakes up long before.
pub const FIRST_YEAR: i32 = 2000;

/// The first year it can't.
pub const END_YEAR: i32 = 2100;

/// Cookers a household keeps: a maker's workshop, on a list that can still be read.
pub const COOKERS: usize = 20;

/// Rebuildings of one cooker that are remembered.
pub const FORMERLY: usize = 30;

/// Entries of the diary: three a day for ten years, and half of what a browser has room for.
pub const ENTRIES: usize = 11_000;

/// Erased things that can be brought back.
pub const ERASED: usize = 20;

/// Monthly mean temperatures of the air: colder and warmer than any inhabited place. \[°C\]
pub const AIR_C: (f64, f64) = (-50.0, 55.0);

/// One module: from a lamp's to the largest on the market. \[W\]
pub const MODULE_W: (f64, f64) = (1.0, 1000.0);

/// All panels of one cooker: a lamp's to what a kitchen's wiring bears. [W]
pub const PANELS_W: (f64, f64) = (5.0, 3600.0);

/// Modules one behind the other, and rows of them: what a house can carry.
pub const MODULES: (u32, u32) = (1, 20);

/// Slope of a panel: lying flat to upright. \[deg\]
pub const TILT_DEG: (f64, f64) = (0.0, 90.0);

/// Where a panel looks, once round either way. \[deg\]
pub const AZIMUTH_DEG: (f64, f64) = (-360.0, 360.0);

/// Ratings of a data sheet, voltages and currents alike; the fit finds finer slips. \[V, A\]
pub const RATING: (f64, f64) = (0.01, 1000.0);

/// Temperature coefficients of a data sheet. \[A/K, V/K\]
pub const RATING_PER_K: (f64, f64) = (-10.0, 10.0);

/// Cells in series in one module.
pub const CELLS: (u32, u32) = (1, 300);

/// A heating element. \[Ω\]
pub const HEATER_OHM: (f64, f64) = (0.05, 2000.0);

/// The wires there and back: beyond this nothing is left for the element. \[Ω\]
pub const WIRE_OHM: (f64, f64) = (0.0, 100.0);

/// Change of an element's resistance; tungsten has 0.0045 (from memory). \[1/K\]
pub const ELEMENT_ALPHA: (f64, f64) = (-0.005, 0.02);

/// Share of the panel's power that a tracker passes on; below half it is broken.
pub const TRACKER_EFFICIENCY: (f64, f64) = (0.5, 1.0);

/// Media in one store; none where the element heats the pot alone.
pub const CHARGES: (usize, usize) = (0, 8);

/// One medium of a store: up to a brick oven's. \[kg\]
pub const CHARGE_KG: (f64, f64) = (0.05, 2000.0);

/// Medium under the seat. \[m\]
pub const DEPTH_M: (f64, f64) = (0.001, 1.0);

/// A thermostat: below 60 °C nothing cooks, above 600 °C no household store lasts. \[°C\]
pub const CUTOUT_C: (f64, f64) = (60.0, 600.0);

/// A size of the room inside the jacket. \[m\]
pub const JACKET_SIZE_M: (f64, f64) = (0.01, 3.0);

/// Layers of a jacket.
pub const LAYERS: (usize, usize) = (1, 8);

/// One layer of a jacket. \[m\]
pub const LAYER_M: (f64, f64) = (0.001, 1.0);

/// Emissivity: a mirror to soot.
pub const EMISSIVITY: (f64, f64) = (0.01, 1.0);

/// Between the walls of a flask, where air stands still. \[m\]
pub const FLASK_GAP_M: (f64, f64) = (0.001, 0.010);

/// Rods through a jacket.
pub const RODS: (u32, u32) = (0, 50);

/// Measured heat loss: the best jacket on the smallest store to none at all. \[W/K\]
pub const LOSS_W_K: (f64, f64) = (0.01, 50.0);

/// Measured heat capacity of a jacket. \[J/K\]
pub const CAPACITY_J_K: (f64, f64) = (1.0, 1e6);

/// What a store was measured to hold over what its media and masses say: beyond a third or three times as
/// much it is another store.
pub const CAPACITY_SHARE: (f64, f64) = (0.3, 3.0);

/// Measured contact conductance: a pot on pebbles to one soldered on. \[W/(m² K)\]
pub const CONTACT_W_M2K: (f64, f64) = (1.0, 50_000.0);

/// A fin: foil to a bar. \[m\]
pub const FIN_M: (f64, f64) = (0.0001, 0.02);

/// From fin to fin. \[m\]
pub const PITCH_M: (f64, f64) = (0.001, 0.2);

/// Share of the room that fins take up at most: beyond it they are a block with slots, and the medium
/// between them holds less than they do. Common practice, no source.
pub const MOST_FINS: f64 = 0.5;

/// Share of the volume that foam or wire takes up: as far as its formula holds, and some more.
pub const FOAM_SHARE: (f64, f64) = (0.0, 0.3);

/// Elements on a switch beside the first.
pub const MORE_ELEMENTS: usize = 2;

/// What a dish catches: a shaving mirror to a village's. \[m²\]
pub const APERTURE_M2: (f64, f64) = (0.05, 50.0);

/// A share of what is paid for or caught that arrives.
pub const SHARE: (f64, f64) = (0.01, 1.0);

/// The way to the kitchen. \[s\]
pub const WAY_S: (f64, f64) = (0.0, 21_600.0);

/// What a can is wrapped in on the way. \[m\]
pub const WRAP_M: (f64, f64) = (0.0, 0.5);

/// Heat of a top-up into the store: a candle to a kitchen's wiring. \[W\]
pub const TOP_UP_W: (f64, f64) = (1.0, 5000.0);

/// How long a top-up is on: a minute to a day. \[s\]
pub const TOP_UP_S: (i64, i64) = (60, 86_400);

/// Volume that food takes up in a filled pot, by the kilogram: grain and pulses sink into their
/// water, roots and meat weigh about as much as water. Common practice, no source. \[L/kg\]
pub const FOOD_L_KG: f64 = 1.0;

/// Test runs that are kept: a maker's year.
pub const RUNS: usize = 60;

/// Typed readings of one run: one a minute for ten hours.
pub const READINGS: usize = 600;

/// What a pot was measured to lose, over what its kind says.
pub const POT_LOSS_SHARE: (f64, f64) = (0.1, 10.0);

/// Readings of one text that are put right or left out by hand.
pub const CORRECTIONS: usize = 600;

/// Pots of one run.
pub const POTS: usize = 12;

/// The longest test run: a fortnight. \[s\]
pub const RUN_S: f64 = 14.0 * 86_400.0;

/// What a person writes about a run.
pub const NOTES_LETTERS: usize = 600;

/// A thermometer in the pot: water under no pressure, and room for one that reads wrong. \[°C\]
pub const POT_C: (f64, f64) = (-20.0, 130.0);

/// Power of a heater, as a meter shows it. \[W\]
pub const HEATER_W: (f64, f64) = (0.0, 5000.0);

/// Wind in which anybody cooks. \[m/s\]
pub const WIND_M_S: (f64, f64) = (0.0, 30.0);

/// What a change costs, in any money.
pub const PRICE: (f64, f64) = (0.0, 1e9);
