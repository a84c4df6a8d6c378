//! Texts of the screen Tonight.

mod chances;
mod running;
mod verdict;

pub use chances::Chances;
pub use running::Running;
pub use verdict::{Facts, Headlines, Sentences, Sureness, VerdictTexts};

/// A text with one value in it.
pub type Say = fn(value: &str) -> String;

/// A text with a number of people and what is cooked for them.
pub type SayFewer = fn(people: u32, amounts: &str) -> String;

/// A text with how long and how hot.
pub type SayFire = fn(time: &str, degrees: &str) -> String;

/// Texts of the screen Tonight.
#[derive(Debug)]
pub struct Tonight {
    /// Head of the screen.
    pub title: &'static str,
    /// The line under the head.
    pub now: NowLine,
    /// The answer.
    pub verdict: VerdictTexts,
    /// What is cooked, and when.
    pub plan: PlanTexts,
    /// What would help.
    pub help: HelpTexts,
    /// The store.
    pub store: StoreTexts,
    /// The plot of the evening.
    pub course: CourseTexts,
    /// Where the heat goes.
    pub heat: HeatTexts,
    /// Cautions.
    pub care: CareTexts,
    /// A meal that is in the cooker, and after it.
    pub running: Running,
    /// How sure the answer is.
    pub chances: Chances,
    /// The cooker, the place or the diary makes no sense to the model.
    pub no_estimate: &'static str,
    /// The way to the cooker from there.
    pub to_cooker: &'static str,
}

/// The line under the head: weekday, time, and the sun.
#[derive(Debug)]
pub struct NowLine {
    /// The sun has not come up yet; when it does.
    pub sun_from: fn(day: &str, time: &str, sunrise: &str) -> String,
    /// The sun is up; until when.
    pub sun_until: fn(day: &str, time: &str, sunset: &str) -> String,
    /// The sun is down.
    pub sun_is_down: fn(day: &str, time: &str) -> String,
    /// The sun does not set today.
    pub sun_stays_up: fn(day: &str, time: &str) -> String,
}

/// What is cooked, and when.
#[derive(Debug)]
pub struct PlanTexts {
    /// Head of the block.
    pub heading: &'static str,
    /// Which dish.
    pub dish: &'static str,
    /// For how many.
    pub people: &'static str,
    /// Fewer people, for screen readers.
    pub fewer: &'static str,
    /// More people, for screen readers.
    pub more: &'static str,
    /// Food and water of a dish: '400 g white rice, 0.7 L water'.
    pub food_and_water: fn(food: &str, dish: &str, water: &str) -> String,
    /// A liquid alone: '1.2 L milk'.
    pub liquid: fn(litres: &str, dish: &str) -> String,
    /// Weight of the food as bought, dry or raw.
    pub food: &'static str,
    /// How much of a liquid.
    pub how_much: &'static str,
    /// Water poured on.
    pub water: &'static str,
    /// Less of it, for screen readers.
    pub less_food: &'static str,
    /// More of it.
    pub more_food: &'static str,
    /// Less water, for screen readers.
    pub less_water: &'static str,
    /// More water.
    pub more_water: &'static str,
    /// Which pot, by its size.
    pub pot: &'static str,
    /// The size of the pot that the cooker usually has.
    pub usual_pot: fn(litres: &str) -> String,
    /// When the pot goes in.
    pub goes_in: &'static str,
    /// It goes in now.
    pub now: &'static str,
    /// It goes in at a time.
    pub at_a_time: &'static str,
    /// That time.
    pub goes_in_at: &'static str,
    /// When the meal is eaten.
    pub eaten_at: &'static str,
    /// Under a time that is not today's.
    pub on_day: fn(day: &str) -> String,
    /// What opens the pot, its lid and the start temperature.
    pub details: &'static str,
    /// What the pot is made of.
    pub pot_kind: &'static str,
    /// What is round the pot.
    pub wrap: &'static str,
    /// The pot's lid.
    pub lid: &'static str,
    /// Temperature of what goes in.
    pub start: &'static str,
    /// Colder, for screen readers.
    pub colder: &'static str,
    /// Warmer, for screen readers.
    pub warmer: &'static str,
    /// Under that temperature when it is the air's.
    pub as_the_air: &'static str,
    /// The pot goes in: the main button.
    pub start_meal: &'static str,
}

/// What would help: a sentence and the words of its button for each.
#[derive(Debug)]
pub struct HelpTexts {
    /// Head of the block.
    pub heading: &'static str,
    /// Nothing was found.
    pub nothing: &'static str,
    /// It is being looked for.
    pub looking: &'static str,
    /// Nothing makes it sure; what follows makes it likelier.
    pub likelier: &'static str,
    /// Put the lid on.
    pub lid_on: (&'static str, &'static str),
    /// Put the pot in earlier.
    pub earlier: (Say, Say),
    /// Put the pot in at once.
    pub at_once: (&'static str, &'static str),
    /// Soak the beans, for so long at least.
    pub soak: (fn(time: &str) -> String, &'static str),
    /// Wait for the sun, and put the pot in at this time.
    pub wait: (Say, Say),
    /// Warm the water in the sun.
    pub warm: (Say, Say),
    /// Wrap the pot.
    pub wrap: (&'static str, &'static str),
    /// Take a smaller pot.
    pub smaller: (Say, Say),
    /// Cook for fewer people; the amounts.
    pub fewer: (SayFewer, fn(people: u32) -> String),
    /// Cook less; the amounts.
    pub less: (fn(amounts: &str) -> String, &'static str),
    /// Take more water.
    pub more_water: (Say, Say),
    /// Eat later.
    pub later: (Say, Say),
    /// Turn the second charge on, for so long.
    pub top_up: (Say, &'static str),
    /// Start on another fire, for so long and until so hot.
    pub fire: (SayFire, Say),
}

/// The store.
#[derive(Debug)]
pub struct StoreTexts {
    /// Head of the block.
    pub heading: &'static str,
    /// Marks the temperature now.
    pub now: &'static str,
    /// Marks where water boils.
    pub boils: &'static str,
    /// Marks where the medium melts.
    pub melts: &'static str,
    /// Marks where the thermostat takes the heater off.
    pub cut_out: &'static str,
    /// What the store can do: its temperature, and how much water its heat would boil if none
    /// were lost.
    pub can_boil: fn(degrees: &str, litres: &str) -> String,
    /// The same, between two amounts.
    pub can_boil_between: fn(degrees: &str, low: &str, high: &str) -> String,
    /// The store is near the boil: at best it boils so much.
    pub may_boil: fn(degrees: &str, litres: &str) -> String,
    /// The store is above the boil, but has next to nothing to give.
    pub can_boil_little: fn(degrees: &str) -> String,
    /// The store is too cold to boil anything.
    pub too_cold: fn(degrees: &str) -> String,
    /// A pot is in, which has some of its heat.
    pub pot_is_in: fn(degrees: &str) -> String,
    /// How much of the medium is still molten.
    pub molten: fn(share: &str) -> String,
    /// What opens the field for a reading.
    pub log_reading: &'static str,
    /// The field.
    pub reading: &'static str,
    /// Lower, for screen readers.
    pub lower: &'static str,
    /// Higher, for screen readers.
    pub higher: &'static str,
    /// Where to hold the thermometer.
    pub reading_hint: &'static str,
    /// Nothing was ever logged.
    pub nothing_logged: &'static str,
    /// The sky of today was not logged.
    pub sky_not_logged: &'static str,
    /// The way to the diary.
    pub log_sky: &'static str,
}

/// The plot of the evening.
#[derive(Debug)]
pub struct CourseTexts {
    /// Head of the block, and name of the plot.
    pub heading: &'static str,
    /// The line of the store.
    pub store: &'static str,
    /// The line of the pot.
    pub pot: &'static str,
    /// Where water boils.
    pub boils_at: fn(degrees: &str) -> String,
    /// The pot goes in at this time; short.
    pub in_at: fn(time: &str) -> String,
    /// It boils at this time; short.
    pub boils: fn(time: &str) -> String,
    /// It is done at this time; short.
    pub done: fn(time: &str) -> String,
    /// It is eaten at this time; short.
    pub eaten: fn(time: &str) -> String,
    /// It is now this time; short.
    pub now: fn(time: &str) -> String,
    /// What was before now is left out.
    pub no_past: &'static str,
    /// The store from the start to the end of the plot, and the hottest that the pot gets.
    pub sentence: fn(from: &str, to: &str, end: &str, hottest: &str) -> String,
    /// First column of the table.
    pub time: &'static str,
}

/// Where the heat goes.
#[derive(Debug)]
pub struct HeatTexts {
    /// Head of the block, and name of the bar.
    pub heading: &'static str,
    /// Into the pot and the food.
    pub food: &'static str,
    /// Away with the steam.
    pub steam: &'static str,
    /// Off the walls and the lid of the pot.
    pub pot: &'static str,
    /// Out through the cooker's jacket.
    pub jacket: &'static str,
    /// Out of the cooker while it stood open.
    pub open: &'static str,
    /// Still in the store.
    pub left: &'static str,
    /// What there was.
    pub has: fn(store: &str) -> String,
    /// The same when the sun adds to it meanwhile.
    pub has_with_sun: fn(store: &str, sun: &str) -> String,
    /// After it: how much of it went into pot and food.
    pub reaches: fn(food: &str) -> String,
    /// The same where some of that left them as steam.
    pub reaches_and_steams: fn(food: &str, steam: &str) -> String,
}

/// Cautions on this screen.
#[derive(Debug)]
pub struct CareTexts {
    /// Head of the block.
    pub heading: &'static str,
    /// What opens the others.
    pub more: &'static str,
    /// The store is hot enough to burn the skin: how hot.
    pub hot_store: fn(degrees: &str) -> String,
    /// The store is hot enough to set things alight: how hot.
    pub igniting_store: fn(degrees: &str) -> String,
    /// Nitrate on aluminium.
    pub nitrate_on_aluminium: &'static str,
    /// Beans that have not boiled, or not for so long as they must.
    pub unsafe_beans: fn(time: &str) -> String,
    /// Bitter cassava.
    pub cassava: &'static str,
    /// The middle of the food must have been this hot.
    pub core: fn(degrees: &str) -> String,
    /// Keep it at this or above.
    pub hold_hot: fn(degrees: &str) -> String,
    /// Rice and pasta must not stand warm overnight.
    pub never_overnight: &'static str,
}
