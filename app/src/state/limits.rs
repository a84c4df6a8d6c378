//! What can be typed and what can't, with the reason for each bound.
//!
//! Wide on purpose: these stop slips of the thumb and nonsense, not unusual kitchens.

/// People at the table: a boarding school's kitchen, and no more than one pot can feed.
pub const PEOPLE: (u32, u32) = (1, 200);

/// Letters of a name that fit one line of a narrow phone twice over.
pub const NAME_LETTERS: usize = 40;

/// Dry or raw food in one pot. The largest pots on such cookers hold 30 L. [kg]
pub const FOOD_KG: (f64, f64) = (0.0, 30.0);

/// Water in one pot. Less than a cup boils dry before anything is cooked. [kg]
pub const WATER_KG: (f64, f64) = (0.1, 30.0);

/// Temperature of what goes in: no ice, and not boiling yet. [°C]
pub const START_C: (f64, f64) = (0.0, 100.0);

/// A thermometer in the store. Aluminium melts at 660 °C, and nothing that cooks is built to get
/// there. [°C]
pub const READING_C: (f64, f64) = (-30.0, 650.0);

/// How long a lid stands open in one entry: a day at most. [s]
pub const LID_OPEN_S: (i64, i64) = (60, 86_400);

/// How long a heater gets nothing in one entry: the time a spare part takes to come. [s]
pub const HEATER_OFF_S: (i64, i64) = (60, 60 * 86_400);

/// A pot waits for its eaters for two days at most. [s]
pub const MEAL_S: i64 = 2 * 86_400;

/// How far ahead a pot can be said to go in. [s]
pub const AHEAD_S: i64 = 86_400;

/// A clock that shows whole minutes can be this far ahead of the one that counts seconds. [s]
pub const CLOCK_SLACK_S: i64 = 90;

/// The first year a diary can speak of; a device whose battery ran flat wakes up long before.
pub const FIRST_YEAR: i32 = 2000;

/// The first year it can't.
pub const END_YEAR: i32 = 2100;

/// Cookers a household keeps: a maker's workshop, on a list that can still be read.
pub const COOKERS: usize = 20;

/// Entries of the diary: three a day for ten years, and half of what a browser has room for.
pub const ENTRIES: usize = 11_000;

/// Erased things that can be brought back.
pub const ERASED: usize = 20;

/// Monthly mean temperatures of the air: colder and warmer than any inhabited place. [°C]
pub const AIR_C: (f64, f64) = (-50.0, 55.0);
