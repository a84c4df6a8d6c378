//! What is said of a cooker that was fitted.

use model::bench::{Change, Condition, Doubt, Limit, Parameter, RunFault, Worth};

use crate::i18n::strings::diary::{Say, SayTwo};
use crate::i18n::strings::report::text::Number;

/// Three values in a sentence.
pub type SayThree = fn(first: &str, second: &str, third: &str) -> String;

/// The table of correlations.
#[derive(Debug)]
pub struct HangTogether {
    /// What opens it.
    pub summary: &'static str,
    /// What it is, and how to read it.
    pub caption: &'static str,
    /// One figure, another, and the correlation of the two.
    pub heads: [&'static str; 3],
}

/// What is said of a cooker that was fitted.
#[derive(Debug)]
pub struct FoundWords {
    /// The cooker's description makes no sense to the model.
    pub no_cooker: &'static str,
    /// These runs tell of nothing, or nothing fits them.
    pub nothing: &'static str,
    /// Why a run cannot be used; its name stands before it.
    pub fault: fn(fault: RunFault) -> &'static str,
    /// A run's name and what is wrong with it.
    pub of_run: SayTwo,
    /// What the fit is worth.
    pub worth: fn(worth: Worth) -> &'static str,
    /// How many runs it rests on, and how far readings lie from the curve.
    pub rests_on: fn(n_runs: usize, scatter: &str) -> String,
    /// What speaks against it; `name` is that of the run concerned.
    pub doubt: fn(doubt: &Doubt, name: &str, number: Number<'_>) -> String,
    /// A reading that may be mistyped: of the pot or of the store, the run's name, when, the value, and
    /// how far off.
    pub far_off: fn(is_pot: bool, name: &str, when: &str, value: &str, off: &str) -> String,
    /// Heads the figures.
    pub figures: &'static str,
    /// Name of a figure.
    pub parameter: fn(parameter: Parameter) -> &'static str,
    /// Within a sentence.
    pub parameter_in: fn(parameter: Parameter) -> &'static str,
    /// A figure that was told, within these bounds in 8 of 10 cases; what the description says.
    pub told: SayThree,
    /// What is said of a loss, and the store's temperature at which it is told.
    pub told_at: SayTwo,
    /// A figure that was not told: the description stands.
    pub not_told: &'static str,
    /// A figure that was held.
    pub held: &'static str,
    /// A heat loss in W/K; a conductance in W/(m² K); a capacity in kJ/K; a difference in K; a
    /// number of times.
    pub unit: fn(parameter: Parameter, number: &str) -> String,
    /// The correlations of the figures.
    pub hang_together: HangTogether,
    /// Heads the plots of one run, and those of each of several.
    pub curve: &'static str,
    /// See [`FoundWords::curve`].
    pub curve_of: fn(run: &str) -> String,
    /// What was read of the store, and what the fitted cooker shows; the same of the pot.
    pub store_read: &'static str,
    /// See above.
    pub store_fitted: &'static str,
    /// See above.
    pub pot_read: &'static str,
    /// See above.
    pub pot_fitted: &'static str,
    /// A run in a sentence: most readings lie this near the curve.
    pub near: Say,
    /// Name of the plot of what is left over; `name` is the run's.
    pub left_over: Say,
    /// Reading less curve, of store and pot.
    pub left_store: &'static str,
    /// See above.
    pub left_pot: &'static str,
    /// The plot of what is left over, in a sentence.
    pub left_sentence: Say,
    /// Heads what limited the pot.
    pub why: &'static str,
    /// The pot boiled after so long.
    pub boiled: Say,
    /// It did not; the hottest it would have got, left in.
    pub not_boiled: Say,
    /// It did by the readings, and not by the fitted curve; the hottest of that.
    pub just_below: Say,
    /// There was heat enough in the store: it did not get into the pot in time.
    pub heat_suffices: &'static str,
    /// There was not heat enough.
    pub heat_lacks: &'static str,
    /// The worst limit.
    pub worst: fn(limit: Limit) -> &'static str,
    /// A change that was tried, as the start of a sentence: 'With twice the contact'.
    pub with: fn(change: &Change, number: Number<'_>) -> String,
    /// And what comes of it: boils in so long.
    pub then_boils: SayTwo,
    /// Gets as hot as this, not to the boil.
    pub then_not: SayTwo,
    /// Changes nothing worth saying.
    pub then_same: Say,
    /// Heads the changes that make it boil.
    pub advice: &'static str,
    /// What to do for a change.
    pub advise: fn(change: &Change, number: Number<'_>) -> String,
    /// A change, when it boils then, and what it costs.
    pub costs: SayThree,
    /// A change and when it boils then, its cost not known.
    pub no_price: SayTwo,
    /// A change that costs nothing and when it boils then.
    pub free: SayTwo,
    /// No change tried makes it boil.
    pub no_advice: &'static str,
    /// A caution under the advice.
    pub care: &'static str,
    /// Heads the heat account, and its parts: food, steam, pot, jacket, open, left.
    pub heat: &'static str,
    /// See above.
    pub heat_parts: [&'static str; 6],
    /// How much heat there was and how much of it went into the pot.
    pub heat_sentence: SayTwo,
    /// Heads the standard figures.
    pub standard: &'static str,
    /// Our own set, worked out with what was measured: litres boiled per charge.
    pub litres: &'static str,
    /// The first litre's time.
    pub first_litre: &'static str,
    /// Power at 50 K below the boil.
    pub power_50: &'static str,
    /// Hold time to the boil line.
    pub hold: &'static str,
    /// Loss of a night of twelve hours.
    pub overnight: &'static str,
    /// Share of the day's sun that reaches the food.
    pub sun: &'static str,
    /// A figure that has no value.
    pub never: &'static str,
    /// Longer than was followed.
    pub longer: &'static str,
    /// A spread.
    pub give_or_take: Say,
    /// Time to boil of the last pot, as read, and how it differs from the fitted one; the same from
    /// 25 °C to 100 °C.
    pub boil_time: [&'static str; 2],
    /// The readings show no boil.
    pub no_boil_read: &'static str,
    /// See above.
    pub boil_corrected: &'static str,
    /// Efficiency of that boil.
    pub efficiency: &'static str,
    /// Under an efficiency above one.
    pub above_all: &'static str,
    /// Standardised cooking power at 50 K.
    pub cooking_power: &'static str,
    /// It has no value because:
    pub not_met: &'static str,
    /// A condition that does not hold.
    pub condition: fn(condition: &Condition, number: Number<'_>) -> String,
    /// How these figures are worked out, and where they are defined.
    pub methods: &'static str,
}
