//! What the model makes of the household: worked out once, and anew only when what it hangs on
//! has changed.
//!
//! The way of the store through the last two weeks is the heavy part. It hangs on the place, the
//! cooker, its journal and the minute, and not on what stands on the screen.

use std::ops::Deref;
use std::sync::Arc;

use crate::reactive::*;
use model::cooker::Cooker;
use model::journal::{Journal, What};
use model::local_time::LocalTime;
use model::odds::Belief;
use model::tonight::{Evening, Site, StoreNow, TonightError};

use crate::shell::beliefs::{Beliefs, SharedBelief};
use crate::shell::clock::Clock;
use crate::shell::store::Store;
use crate::state::document::Document;

/// An evening that several screens share. Two are equal when they are the very same.
#[derive(Debug, Clone)]
pub struct SharedEvening(Arc<Evening>);

impl Deref for SharedEvening {
    type Target = Evening;

    fn deref(&self) -> &Evening {
        &self.0
    }
}

impl PartialEq for SharedEvening {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// An evening, or the part of the household that none can be worked out from.
pub type Estimate = Result<SharedEvening, TonightError>;

/// What the model makes of the household. Copies stand for the same.
///
/// Each is none as long as there is no household or no cooker.
#[derive(Clone, Copy)]
pub struct Estimates {
    evening: Memo<Option<Estimate>>,
    store_now: Memo<Option<Result<StoreNow, TonightError>>>,
    running: Memo<Option<Estimate>>,
    beliefs: Beliefs,
}

impl Estimates {
    /// Follows the household and the clock.
    pub fn new(store: Store, clock: Clock) -> Self {
        let now = clock.now();
        let in_use = store.read(in_use);
        let carried = move |subject: Subject| subject.evening(clock, now.get());
        let evening = Memo::new(move |_| in_use.get().map(carried));
        let running = store.read(running);
        let beliefs = Beliefs::new(store, clock);
        let is_boiling = store.read(is_boiling);
        Self {
            evening,
            store_now: Memo::new(move |_| {
                let estimate = evening.get()?;
                let belief = beliefs.belief().get();
                let boils = is_boiling.get();
                Some(estimate.and_then(|evening| {
                    let store = evening.store()?;
                    let believed = belief.map_or(store, |belief| believed(&belief, store));
                    // A pot that is seen to boil is not told that its store can't boil it.
                    let is_denied = boils && believed.store_c < store.store_c;
                    Ok(if is_denied { store } else { believed })
                }))
            }),
            running: Memo::new(move |_| running.get().map(carried)),
            beliefs,
        }
    }

    /// The cooker in use, carried to now.
    pub fn evening(&self) -> Memo<Option<Estimate>> {
        self.evening
    }

    /// Its store now.
    pub fn store_now(&self) -> Memo<Option<Result<StoreNow, TonightError>>> {
        self.store_now
    }

    /// What is believed of the cooker in use, by all that was reported; none the first time until
    /// a long diary is walked through.
    pub fn belief(&self) -> Memo<Option<SharedBelief>> {
        self.beliefs.belief()
    }

    /// How the belief comes about.
    pub fn beliefs(&self) -> Beliefs {
        self.beliefs
    }

    /// The cooker that the running meal is in, carried to when its pot went in, as if there were
    /// no such meal: asking it for the meal tells how it goes. None while no meal runs.
    pub fn running(&self) -> Memo<Option<Estimate>> {
        self.running
    }
}

/// What an evening hangs on besides the minute.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Subject {
    pub(super) site: Site,
    pub(super) cooker: Cooker,
    pub(super) journal: Journal,
    /// When the pot went in; none means now.
    from: Option<LocalTime>,
}

impl Subject {
    fn evening(&self, clock: Clock, now: LocalTime) -> Estimate {
        let from = self.from.unwrap_or(now);
        let site = Site {
            place: clock.place_on(self.site.place, now.day()),
            ..self.site
        };
        Evening::new(&site, &self.cooker, &self.journal, now, from)
            .map(|evening| SharedEvening(Arc::new(evening)))
    }
}

/// The store by all that was reported.
fn believed(belief: &Belief, store: StoreNow) -> StoreNow {
    let bands = belief.store();
    StoreNow {
        store_c: bands.store_c.p50,
        band_c: (bands.store_c.p10, bands.store_c.p90),
        litres: bands.litres.p50,
        full_share: bands.full_share.p50,
        ..store
    }
}

/// Whether the meal that is in the cooker was seen to boil.
fn is_boiling(document: &Document) -> bool {
    document
        .running_meal()
        .is_some_and(|entry| match &entry.what {
            What::Meal(meal) => meal.out.is_none() && meal.outcome.boiled_at.is_some(),
            _ => false,
        })
}

fn site(document: &Document) -> Option<Site> {
    document.household.as_ref().map(|household| Site {
        place: household.place,
        air: household.air,
    })
}

pub(super) fn in_use(document: &Document) -> Option<Subject> {
    let owned = document.cooker_in_use()?;
    Some(Subject {
        site: site(document)?,
        cooker: owned.cooker.clone(),
        journal: document.journal(owned.id),
        from: None,
    })
}

fn running(document: &Document) -> Option<Subject> {
    let meal = document.running_meal()?;
    let owned = document.cooker(meal.cooker)?;
    Some(Subject {
        site: site(document)?,
        cooker: owned.cooker.clone(),
        journal: document.journal_without(meal),
        from: Some(meal.at.plus_s(-meal.at.0.rem_euclid(60))),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::platform::storage::MemoryShelf;
    use crate::shell::keeper::Keeper;
    use crate::shell::toasts::Toasts;
    use crate::state::action::{Action, Done, Seen};
    use crate::state::document::Whose;
    use crate::state::plan::Plan;
    use crate::state::sample::{at, pot, set_up_action};

    struct Kitchen {
        store: Store,
        clock: Clock,
        estimates: Estimates,
        _owner: Owner,
    }

    fn evening() -> LocalTime {
        at(17, 0)
    }

    fn kitchen() -> Kitchen {
        let owner = Owner::new();
        owner.set();
        let clock = Clock::new(evening);
        let keeper = Keeper::new(Box::new(MemoryShelf::default()));
        let store = Store::open(keeper, Whose::Own, clock, Toasts::default());
        Kitchen {
            store,
            clock,
            estimates: Estimates::new(store, clock),
            _owner: owner,
        }
    }

    fn set_up() -> Kitchen {
        let kitchen = kitchen();
        kitchen.store.act(set_up_action()).unwrap();
        kitchen
    }

    fn reading(store_c: f64) -> Action {
        Action::AddEntry {
            at: at(16, 30),
            what: What::Reading { store_c },
        }
    }

    #[test]
    fn there_is_none_before_the_first_start() {
        let kitchen = kitchen();
        assert_eq!(kitchen.estimates.evening().get_untracked(), None);
        assert_eq!(kitchen.estimates.store_now().get_untracked(), None);
    }

    #[test]
    fn the_plan_does_not_have_it_worked_out_anew_and_a_reading_does() {
        let kitchen = set_up();
        let evening = || kitchen.estimates.evening().get_untracked().unwrap();
        let first = evening();
        assert!(first.is_ok());
        let plan = Plan::start(4, at(17, 0));
        kitchen.store.act(Action::ChangePlan(plan)).unwrap();
        assert!(evening() == first);
        kitchen.store.act(reading(240.0)).unwrap();
        assert!(evening() != first);
        let store = kitchen.estimates.store_now().get_untracked().unwrap();
        assert!((store.unwrap().store_c - 240.0).abs() < 10.0);
    }

    #[test]
    fn the_next_minute_has_it_worked_out_anew() {
        let kitchen = set_up();
        let first = kitchen.estimates.evening().get_untracked();
        kitchen.clock.pin(Some(at(17, 1)));
        assert!(kitchen.estimates.evening().get_untracked() != first);
    }

    #[test]
    fn what_was_done_in_this_minute_counts_at_once() {
        let kitchen = set_up();
        let entry = Action::AddEntry {
            at: at(17, 0).plus_s(40),
            what: What::Reading { store_c: 240.0 },
        };
        kitchen.store.act(entry).unwrap();
        let store = kitchen.estimates.store_now().get_untracked().unwrap();
        assert!((store.unwrap().store_c - 240.0).abs() < 10.0);
    }

    #[test]
    fn a_store_that_boils_a_pot_is_not_said_to_be_too_cold() {
        let kitchen = set_up();
        let put_in = at(16, 40);
        let meal = Plan::start(2, put_in).meal(pot(), 15.0, put_in);
        let start = Action::StartMeal { at: put_in, meal };
        let Ok(Done::AddedEntry(id)) = kitchen.store.act(start) else {
            panic!("it starts")
        };
        let seen = Seen::BoiledAt(at(17, 0));
        kitchen.store.act(Action::SeeMeal { id, seen }).unwrap();
        let evening = kitchen.estimates.evening().get_untracked().unwrap();
        let boiling_c = evening.unwrap().rig().boiling_c().unwrap();
        let store = kitchen.estimates.store_now().get_untracked().unwrap();
        let store_c = store.unwrap().store_c;
        assert!(boiling_c < store_c, "{store_c} below {boiling_c}");
    }

    #[test]
    fn a_running_meal_is_asked_about_as_if_it_had_not_begun() {
        let kitchen = set_up();
        kitchen.store.act(reading(240.0)).unwrap();
        assert!(kitchen.estimates.running().get_untracked().is_none());
        let put_in = at(16, 45);
        let meal = Plan::start(2, at(16, 45)).meal(pot(), 15.0, put_in);
        let start = Action::StartMeal { at: put_in, meal };
        let Ok(Done::AddedEntry(id)) = kitchen.store.act(start) else {
            panic!("it starts")
        };
        let running = kitchen
            .estimates
            .running()
            .get_untracked()
            .unwrap()
            .unwrap();
        assert!(!running.store().unwrap().pot_is_in);
        let now = kitchen.estimates.store_now().get_untracked().unwrap();
        assert!(now.unwrap().pot_is_in);
        let seen = Seen::TakenOutAt(at(17, 0));
        kitchen.store.act(Action::SeeMeal { id, seen }).unwrap();
        assert!(kitchen.estimates.running().get_untracked().is_some());
        kitchen.store.act(Action::CloseMeal).unwrap();
        assert!(kitchen.estimates.running().get_untracked().is_none());
    }
}
