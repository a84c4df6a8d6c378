//! What is believed of the cooker in use, by all that was reported.
//!
//! An edit of today is answered at once. A long diary is walked day by day, a stretch at a time, so
//! that the screen answers in between; until it is through, what was believed before stands.

use std::ops::Deref;
use std::sync::Arc;
use std::time::Duration;

use crate::reactive::*;
use model::local_time::{Day, LocalTime};
use model::odds::{Belief, Replay, Settings};
use model::tonight::{TonightError, worn};

use crate::platform::storage::DeviceShelf;
use crate::shell::clock::Clock;
use crate::shell::estimates::{Subject, in_use};
use crate::shell::store::Store;
use crate::shell::walked::{put_away, take_up};
use crate::state::document::Whose;
use crate::state::ids::CookerId;

/// So many days are walked at once.
const STRETCH_DAYS: i32 = 1;
/// What was walked to is put away so long after, when all is calm.
const CALM: Duration = Duration::from_secs(2);
/// An edit is let settle for so long before it is walked.
const SETTLE: Duration = Duration::from_millis(300);
/// Between two stretches: enough for a tap to be answered.
const PAUSE: Duration = Duration::from_millis(4);

/// A belief that several screens share. Two are equal when they are the very same.
#[derive(Debug, Clone)]
pub struct SharedBelief(Arc<Belief>);

impl Deref for SharedBelief {
    type Target = Belief;

    fn deref(&self) -> &Belief {
        &self.0
    }
}

impl PartialEq for SharedBelief {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// How far the walk has come.
#[derive(Debug, Clone, PartialEq)]
enum Reached {
    /// Nothing to walk, or nothing can be worked out.
    Nothing,
    /// There are days to walk yet. What was believed of the same cooker before stands meanwhile.
    OnTheWay(Option<SharedBelief>),
    /// This is believed now.
    Now(SharedBelief),
}

/// What is believed of the cooker in use. Copies stand for the same.
#[derive(Clone, Copy)]
pub struct Beliefs {
    told: Memo<Option<Subject>>,
    today: Memo<Day>,
    subject: Memo<Option<Subject>>,
    now: Memo<LocalTime>,
    replay: StoredValue<Replay>,
    /// Counts the walks that came to their end.
    walks: RwSignal<u32>,
    reached: Memo<Reached>,
    believed: Memo<Option<SharedBelief>>,
    is_walking: StoredValue<bool>,
}

impl Beliefs {
    /// Follows the household and the clock.
    pub fn new(store: Store, clock: Clock) -> Self {
        let told = store.read(in_use);
        let now = clock.now();
        let today = Memo::new(move |_| now.get().day());
        let subject = Memo::new(move |_| told.get().map(|told| told.aged_to(clock, today.get())));
        let replay = StoredValue::new(Replay::new(Settings::default()));
        let walks = RwSignal::new(0);
        let cooker = store.in_use();
        let last = StoredValue::new((None::<CookerId>, None::<SharedBelief>));
        let reached = Memo::new(move |_| {
            walks.track();
            let (cooker, now) = (cooker.get(), now.get());
            let reached = subject.with(|subject| {
                let Some(subject) = subject else {
                    return Reached::Nothing;
                };
                let believed = replay.try_update_value(|replay| subject.believe(replay, now));
                match believed {
                    Some(Ok(Some(belief))) => Reached::Now(SharedBelief(Arc::new(belief))),
                    Some(Ok(None)) => Reached::OnTheWay(
                        last.with_value(|(of, belief)| belief.clone().filter(|_| *of == cooker)),
                    ),
                    Some(Err(_)) | None => Reached::Nothing,
                }
            });
            if let Reached::Now(belief) = &reached {
                last.set_value((cooker, Some(belief.clone())));
            }
            reached
        });
        Self {
            told,
            today,
            subject,
            now,
            replay,
            walks,
            reached,
            believed: Memo::new(move |_| match reached.get() {
                Reached::Nothing => None,
                Reached::OnTheWay(belief) => belief,
                Reached::Now(belief) => Some(belief),
            }),
            is_walking: StoredValue::new(false),
        }
    }

    /// What is believed. None where nothing can be worked out, and the first time until the diary
    /// is walked through.
    pub fn belief(&self) -> Memo<Option<SharedBelief>> {
        self.believed
    }

    /// Follows the cooker and its diary, and not the minutes; how worn it is is not worked out for that.
    pub fn follow_diary(&self) {
        self.told.track();
        self.today.track();
        self.walks.track();
    }

    /// Whether there are days to walk yet.
    pub(super) fn is_on_the_way(&self) -> bool {
        self.reached
            .with(|reached| matches!(reached, Reached::OnTheWay(_)))
    }

    /// Walks a stretch of days; whether any are left.
    pub(super) fn walk_on(&self) -> bool {
        let now = self.now.get_untracked();
        let left = self.subject.with_untracked(|subject| {
            let subject = subject.as_ref()?;
            let walked = self
                .replay
                .try_update_value(|replay| subject.walk_on(replay, now, STRETCH_DAYS))?;
            walked.ok()
        });
        let goes_on = left.is_some_and(|left| STRETCH_DAYS < left);
        if !goes_on {
            self.walks.update(|walks| *walks = walks.wrapping_add(1));
        }
        goes_on
    }

    /// Takes up what was put away on the device, and puts away what the person's own diary was
    /// walked to. Walks whenever there is something to walk, bit by bit.
    pub(super) fn wire(self, whose: Memo<Whose>) {
        let take_up = move || {
            self.replay
                .update_value(|replay| take_up(replay, &DeviceShelf));
        };
        take_up();
        let mut shown = whose.get_untracked();
        effect(move || {
            let before = std::mem::replace(&mut shown, whose.get());
            if before != shown && shown == Whose::Own {
                take_up();
                self.walks.update(|walks| *walks = walks.wrapping_add(1));
            }
        });
        let now = self.now;
        let today = Memo::new(move |_| now.get().day());
        effect(move || {
            let _ = (self.walks.get(), today.get());
            set_timeout(move || self.put_away(whose), CALM);
        });
        // An edit is shown before what follows from it is worked out, where nobody looks at that, and
        // while somebody types no step of it is.
        let waits = StoredValue::new(false);
        let mut rest = PAUSE;
        effect(move || {
            self.follow_diary();
            now.track();
            if waits.get_value() {
                return;
            }
            waits.set_value(true);
            set_timeout(
                move || {
                    waits.set_value(false);
                    if untrack(|| self.is_on_the_way()) && !self.is_walking.get_value() {
                        self.is_walking.set_value(true);
                        self.walk_later();
                    }
                },
                std::mem::replace(&mut rest, SETTLE),
            );
        });
    }

    fn put_away(self, whose: Memo<Whose>) {
        let is_through = self
            .reached
            .with_untracked(|reached| matches!(reached, Reached::Now(_)));
        if is_through && whose.get_untracked() == Whose::Own {
            let today = self.now.get_untracked().day();
            self.replay
                .with_value(|replay| put_away(replay, today, &DeviceShelf));
        }
    }

    fn walk_later(self) {
        set_timeout(
            move || {
                if self.walk_on() {
                    self.walk_later();
                } else {
                    self.is_walking.set_value(false);
                }
            },
            PAUSE,
        );
    }
}

impl Subject {
    /// The same with its clock and its wear as they are on a day.
    fn aged_to(mut self, clock: Clock, today: Day) -> Self {
        self.site.place = clock.place_on(self.site.place, today);
        // What can't be worked out is told by the estimate.
        if let Ok(cooker) = worn(&self.site, &self.cooker, &self.journal, today) {
            self.cooker = cooker;
        }
        self
    }

    fn walk_on(&self, replay: &mut Replay, now: LocalTime, days: i32) -> Result<i32, TonightError> {
        replay.walk_on(&self.site, &self.cooker, &self.journal, now, days)
    }

    /// What is believed now, where that is worked out at once.
    fn believe(&self, replay: &mut Replay, now: LocalTime) -> Result<Option<Belief>, TonightError> {
        if STRETCH_DAYS < self.walk_on(replay, now, 0)? {
            return Ok(None);
        }
        replay
            .belief(&self.site, &self.cooker, &self.journal, now)
            .map(Some)
    }
}

#[cfg(test)]
mod tests {
    use model::journal::{Event, What};
    use model::sun::{DayLog, Sky};

    use super::*;
    use crate::platform::storage::MemoryShelf;
    use crate::shell::keeper::Keeper;
    use crate::shell::toasts::Toasts;
    use crate::state::action::Action;
    use crate::state::document::Whose;
    use crate::state::sample::{at, set_up_action};

    struct Kitchen {
        store: Store,
        beliefs: Beliefs,
        _owner: Owner,
    }

    /// A household with a sunny diary of so many days.
    fn kitchen(days: i32) -> Kitchen {
        let owner = Owner::new();
        owner.set();
        let clock = Clock::new(|| at(17, 0));
        let keeper = Keeper::new(Box::new(MemoryShelf::default()));
        let store = Store::open(keeper, Whose::Own, clock, Toasts::default());
        store.act(set_up_action()).unwrap();
        let kitchen = Kitchen {
            store,
            beliefs: Beliefs::new(store, clock),
            _owner: owner,
        };
        for back in 0..days {
            kitchen.tell_sky(back, Sky::Clear);
        }
        kitchen
    }

    impl Kitchen {
        fn tell_sky(&self, back: i32, sky: Sky) {
            let day = at(17, 0).day().plus(-back);
            let log = DayLog::Hourly([Some(sky); 24]);
            let action = Action::SetSky {
                day,
                log,
                possible_h: 12.0,
            };
            self.store.act(action).unwrap();
        }

        fn belief(&self) -> Option<SharedBelief> {
            self.beliefs.belief().get_untracked()
        }

        fn is_on_the_way(&self) -> bool {
            untrack(|| self.beliefs.is_on_the_way())
        }
    }

    #[test]
    fn a_long_diary_is_walked_bit_by_bit_and_an_edit_of_today_is_answered_at_once() {
        let kitchen = kitchen(6);
        assert!(kitchen.is_on_the_way());
        assert_eq!(kitchen.belief(), None);
        let mut stretches = 1;
        while kitchen.beliefs.walk_on() {
            stretches += 1;
        }
        assert!(4 <= stretches && !kitchen.is_on_the_way());
        let first = kitchen.belief().unwrap();
        // What was told of today is today's only.
        kitchen.tell_sky(0, Sky::Grey);
        assert!(!kitchen.is_on_the_way());
        let second = kitchen.belief().unwrap();
        assert!(second != first);
        assert!(second.store().store_c.p50 < first.store().store_c.p50);
        // What was told of a day long past takes a while; what was believed stands meanwhile.
        kitchen.tell_sky(5, Sky::Grey);
        assert!(kitchen.is_on_the_way());
        assert_eq!(kitchen.belief(), Some(second));
        while kitchen.beliefs.walk_on() {}
        assert!(!kitchen.is_on_the_way());
    }

    #[test]
    fn it_is_what_the_whole_diary_says_however_it_was_walked() {
        let kitchen = kitchen(4);
        let reading = What::Reading { store_c: 205.0 };
        let noon = at(12, 0).plus_s(-2 * 86_400);
        let action = Action::AddEntry {
            at: noon,
            what: reading.clone(),
        };
        kitchen.store.act(action).unwrap();
        while kitchen.beliefs.walk_on() {}
        let (subject, now) = (kitchen.beliefs.subject.get_untracked().unwrap(), at(17, 0));
        let expected = Event {
            at: noon,
            what: reading,
        };
        assert_eq!(subject.journal.events, [expected]);
        let Subject {
            site,
            cooker,
            journal,
            ..
        } = &subject;
        let settings = Settings::default();
        let whole = Belief::replay(site, cooker, journal, now, &settings).unwrap();
        assert_eq!(kitchen.belief().unwrap().store(), whole.store());
    }
}
