//! Everything worth keeping of a household.

use std::collections::BTreeMap;

use model::cooker::Cooker;
use model::journal::{Event, Formerly, Journal, What};
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::sun::DayLog;

use crate::state::bench::Bench;
use crate::state::erased::Erased;
use crate::state::ids::{CookerId, EntryId};
use crate::state::plan::Plan;
use crate::state::settings::Settings;

/// Whose household a document is. The two never mix.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Whose {
    /// The person's own.
    #[default]
    Own,
    /// The made-up one that shows how it works.
    Example,
}

/// Everything worth keeping.
///
/// Only [`apply`](crate::state::action::apply) changes it.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Document {
    /// Whose it is.
    pub whose: Whose,
    /// Place, air and people; none before the first start is done.
    pub household: Option<Household>,
    /// The cookers, in the order they were added.
    pub cookers: Vec<OwnedCooker>,
    /// The one in use.
    pub in_use: Option<CookerId>,
    /// The sky of each day that was logged; it is the same over every cooker.
    pub skies: BTreeMap<Day, DayLog>,
    /// The diary's entries, by time.
    pub entries: Vec<Entry>,
    /// The meal that is in the cooker or waits for its answers.
    pub running: Option<EntryId>,
    /// What stands on the screen Tonight; none until it is touched.
    pub plan: Option<Plan>,
    /// The test runs.
    pub bench: Bench,
    /// Language, looks and units.
    pub settings: Settings,
    /// What was erased and can be brought back, the latest last.
    pub erased: Vec<Erased>,
    /// The number the next thing gets.
    pub next_id: u32,
}

/// Where the household is and how many it feeds.
#[derive(Debug, Clone, PartialEq)]
pub struct Household {
    /// The place.
    pub place: Place,
    /// Its air through the year.
    pub air: AirYear,
    /// People who usually eat.
    pub people: u32,
}

/// A cooker with its name.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnedCooker {
    /// Which.
    pub id: CookerId,
    /// What the household calls it.
    pub name: String,
    /// What it is made of.
    pub cooker: Cooker,
    /// What it was before it was rebuilt, the earliest first.
    pub formerly: Vec<Formerly>,
    /// Whether it is yet to be said if the last change rebuilt it or put right what it always was;
    /// until then it is taken as rebuilt.
    pub is_asked: bool,
}

/// An entry of the diary.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Which.
    pub id: EntryId,
    /// The cooker it is about.
    pub cooker: CookerId,
    /// When it happened; for a meal, when the pot went in.
    pub at: LocalTime,
    /// What happened.
    pub what: What,
    /// Whether it was said to be right though it does not fit the rest.
    pub is_right: bool,
}

impl Document {
    /// A household about which nothing is known.
    pub fn new(whose: Whose) -> Self {
        Self {
            whose,
            ..Self::default()
        }
    }

    /// The cooker with this number.
    pub fn cooker(&self, id: CookerId) -> Option<&OwnedCooker> {
        self.cookers.iter().find(|cooker| cooker.id == id)
    }

    /// The cooker in use.
    pub fn cooker_in_use(&self) -> Option<&OwnedCooker> {
        self.in_use.and_then(|id| self.cooker(id))
    }

    /// The entry with this number.
    pub fn entry(&self, id: EntryId) -> Option<&Entry> {
        self.entries.iter().find(|entry| entry.id == id)
    }

    /// The meal that is in the cooker or waits for its answers.
    pub fn running_meal(&self) -> Option<&Entry> {
        self.running.and_then(|id| self.entry(id))
    }

    /// The entries of one day, by time.
    pub fn entries_of(&self, day: Day) -> impl DoubleEndedIterator<Item = &Entry> {
        self.entries
            .iter()
            .filter(move |entry| entry.at.day() == day)
    }

    /// The log as far as it touches one cooker, for the model.
    pub fn journal(&self, cooker: CookerId) -> Journal {
        self.journal_of(cooker, |_| true)
    }

    /// The log of the cooker that an entry is about, as if there were no such entry.
    pub fn journal_without(&self, left_out: &Entry) -> Journal {
        self.journal_of(left_out.cooker, |entry| entry.id != left_out.id)
    }

    fn journal_of(&self, cooker: CookerId, is_in: impl Fn(&Entry) -> bool) -> Journal {
        let entries = self.entries.iter();
        let events = entries.filter(|entry| entry.cooker == cooker && is_in(entry));
        let formerly = self.cooker(cooker).map(|owned| owned.formerly.clone());
        Journal {
            skies: self.skies.clone(),
            events: events
                .map(|entry| Event {
                    at: minute(entry.at),
                    what: to_the_minute(&entry.what),
                })
                .collect(),
            formerly: formerly.unwrap_or_default(),
        }
    }

    /// The first and the last day that anything was logged on.
    pub fn days(&self) -> Option<(Day, Day)> {
        let skies = self.skies.keys().copied();
        let entries = self.entries.iter().map(|entry| entry.at.day());
        let (first, last) = (
            skies.clone().chain(entries.clone()).min(),
            skies.chain(entries).max(),
        );
        first.zip(last)
    }
}

/// The minute that a time lies in. The kitchen's clock shows whole minutes, and what was done in
/// the present one has happened.
pub fn minute(at: LocalTime) -> LocalTime {
    at.plus_s(-at.0.rem_euclid(60))
}

fn to_the_minute(what: &What) -> What {
    let mut what = what.clone();
    if let What::Meal(meal) = &mut what {
        meal.out = meal.out.map(minute);
        meal.outcome.boiled_at = meal.outcome.boiled_at.map(minute);
    }
    what
}
