//! Everything a person can do, and what it does to the document.
//!
//! [`apply`] is pure: the same document, action and clock give the same result. An action that is
//! refused has changed nothing.

mod bench;
mod cookers;
mod entries;
mod setup;
#[cfg(test)]
mod tests;

pub use bench::BenchAction;

use model::cooker::Cooker;
use model::journal::{Meal, What};
use model::local_time::{Day, LocalTime};
use model::sun::DayLog;

use crate::state::document::{Document, Household};
use crate::state::ids::{CookerId, EntryId, ErasedId, RunId};
use crate::state::plan::Plan;
use crate::state::refused::Refused;
use crate::state::settings::{Degrees, LanguageChoice, Theme};

/// Something a person does.
#[derive(Debug, Clone, PartialEq)]
pub enum Action {
    /// Answers the questions of the first start.
    SetUp {
        /// Place, air and people.
        household: Household,
        /// Name of the first cooker.
        name: String,
        /// The first cooker.
        cooker: Box<Cooker>,
    },
    /// Changes place, air or people.
    ChangeHousehold(Household),

    /// Adds a cooker and takes it into use.
    AddCooker {
        /// Its name.
        name: String,
        /// What it is made of.
        cooker: Box<Cooker>,
    },
    /// Adds a cooker like another, without its entries.
    CopyCooker {
        /// The one to copy.
        id: CookerId,
        /// Name of the copy.
        name: String,
    },
    /// Gives a cooker another name.
    RenameCooker {
        /// Which.
        id: CookerId,
        /// The name.
        name: String,
    },
    /// Gives what the app named its names in another language; what is found from runs stays.
    NameAgain {
        /// Cookers with their names.
        cookers: Vec<(CookerId, String)>,
        /// Test runs with theirs.
        runs: Vec<(RunId, String)>,
    },
    /// Changes what a cooker is made of.
    ChangeCooker {
        /// Which.
        id: CookerId,
        /// What it is made of now.
        cooker: Box<Cooker>,
    },
    /// Says whether the last change of a cooker rebuilt it, or put right what it always was.
    SayRebuilt {
        /// Which.
        id: CookerId,
        /// It is another cooker from then on.
        is_rebuilt: bool,
    },
    /// Takes a cooker into use.
    UseCooker(CookerId),
    /// Erases a cooker and its entries.
    EraseCooker(CookerId),

    /// Logs the sky of a day, in place of what was logged for it.
    SetSky {
        /// The day.
        day: Day,
        /// What was seen.
        log: DayLog,
        /// Hours from sunrise to sunset on that day, from the model. \[h\]
        possible_h: f64,
    },
    /// Erases the sky of a day.
    EraseSky(Day),

    /// Adds an entry to the diary of the cooker in use.
    AddEntry {
        /// When it happened.
        at: LocalTime,
        /// What happened.
        what: What,
    },
    /// Changes an entry.
    ChangeEntry {
        /// Which.
        id: EntryId,
        /// When it happened.
        at: LocalTime,
        /// What happened.
        what: What,
    },
    /// Says that an entry is right, though it does not fit the rest.
    KeepEntry(EntryId),
    /// Erases an entry.
    EraseEntry(EntryId),
    /// Brings back what was erased.
    BringBack(ErasedId),

    /// Changes what stands on the screen Tonight.
    ChangePlan(Plan),
    /// Starts a meal in the cooker in use: the pot goes in.
    StartMeal {
        /// When.
        at: LocalTime,
        /// What is in it.
        meal: Meal,
    },
    /// Tells what was seen of a meal.
    SeeMeal {
        /// Which meal.
        id: EntryId,
        /// What was seen.
        seen: Seen,
    },
    /// Puts the running meal away: all was answered that will be.
    CloseMeal,

    /// Something at the bench.
    Bench(BenchAction),

    /// Chooses a language.
    ChooseLanguage(LanguageChoice),
    /// Chooses light or dark.
    ChooseTheme(Theme),
    /// Chooses the unit of temperatures.
    ChooseDegrees(Degrees),
}

/// What was seen of a meal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Seen {
    /// It boiled then.
    BoiledAt(LocalTime),
    /// It was looked at then and had not boiled.
    NotBoiledBy(LocalTime),
    /// The food was soft then.
    DoneAt(LocalTime),
    /// It was tasted then and was not done.
    NotDoneBy(LocalTime),
    /// The pot came out then; the meal waits for its answers until it is closed.
    TakenOutAt(LocalTime),
}

/// What an action did.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Done {
    /// Changed something that was there.
    Changed,
    /// Added an entry.
    AddedEntry(EntryId),
    /// Added a cooker.
    AddedCooker(CookerId),
    /// Added a test run.
    AddedRun(RunId),
    /// Erased something that can be brought back.
    Erased(ErasedId),
    /// Put something in place of what can be brought back.
    Replaced(ErasedId),
    /// Brought something back.
    BroughtBack,
}

/// Carries out an action at `now`, on the kitchen clock.
///
/// # Errors
///
/// [`Refused`], with the field and what is wrong with it; the document is as it was.
pub fn apply(document: &mut Document, action: Action, now: LocalTime) -> Result<Done, Refused> {
    match action {
        Action::SetUp {
            household,
            name,
            cooker,
        } => setup::set_up(document, household, &name, *cooker),
        Action::ChangeHousehold(household) => setup::change_household(document, household),
        Action::AddCooker { name, cooker } => cookers::add(document, &name, *cooker),
        Action::CopyCooker { id, name } => cookers::copy(document, id, &name),
        Action::RenameCooker { id, name } => cookers::rename(document, id, &name),
        Action::NameAgain { cookers, runs } => setup::name_again(document, &cookers, &runs),
        Action::ChangeCooker { id, cooker } => cookers::change(document, id, *cooker, now),
        Action::SayRebuilt { id, is_rebuilt } => cookers::say_rebuilt(document, id, is_rebuilt),
        Action::UseCooker(id) => cookers::take_into_use(document, id),
        Action::EraseCooker(id) => cookers::erase(document, id, now),
        Action::SetSky {
            day,
            log,
            possible_h,
        } => entries::set_sky(document, day, log, possible_h, now),
        Action::EraseSky(day) => entries::erase_sky(document, day, now),
        Action::AddEntry { at, what } => entries::add(document, at, what, now),
        Action::ChangeEntry { id, at, what } => entries::change(document, id, at, what, now),
        Action::KeepEntry(id) => entries::keep(document, id),
        Action::EraseEntry(id) => entries::erase(document, id, now),
        Action::BringBack(id) => entries::bring_back(document, id, now),
        Action::ChangePlan(plan) => {
            document.plan = Some(plan);
            Ok(Done::Changed)
        }
        Action::StartMeal { at, meal } => entries::start_meal(document, at, meal, now),
        Action::SeeMeal { id, seen } => entries::see_meal(document, id, seen, now),
        Action::CloseMeal => {
            document.running = None;
            Ok(Done::Changed)
        }
        Action::Bench(action) => bench::apply(document, action, now),
        Action::ChooseLanguage(language) => {
            document.settings.language = language;
            Ok(Done::Changed)
        }
        Action::ChooseTheme(theme) => {
            document.settings.theme = theme;
            Ok(Done::Changed)
        }
        Action::ChooseDegrees(degrees) => {
            document.settings.degrees = degrees;
            Ok(Done::Changed)
        }
    }
}

/// Whether a pot can go in at `at` with this in it, seen from `now`.
///
/// # Errors
///
/// [`Refused`], with the field and what is wrong with it.
pub fn check_meal(at: LocalTime, meal: &Meal, now: LocalTime) -> Result<(), Refused> {
    entries::check_meal(at, meal, now)
}

/// Whether this can have happened at `at`, seen from `now`.
///
/// # Errors
///
/// [`Refused`], with the field and what is wrong with it.
pub fn check_entry(at: LocalTime, what: &What, now: LocalTime) -> Result<(), Refused> {
    entries::check_entry(at, what, now)
}

/// The next number, used up.
fn next_id(document: &mut Document) -> u32 {
    let id = document.next_id;
    document.next_id = document.next_id.saturating_add(1);
    id
}
