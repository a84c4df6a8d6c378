//! The way into the example household and out of it, and its day that runs in half a minute.

use std::time::Duration;

use crate::reactive::*;
use model::local_time::LocalTime;

use crate::platform::page;
use crate::platform::storage::StorageError;
use crate::shell::clock::Clock;
use crate::shell::router::Router;
use crate::shell::store::Store;
use crate::state::document::Whose;
use crate::state::example::today::{Phase, due, pace_s, phase, span_of};
use crate::state::example::{example_document, is_stale};
use crate::state::route::Route;

/// Time of the told day that a single step takes while it is stopped. [s]
const LONG_STEP_S: i64 = 3600;
/// Pause between two steps: the day has some 60 of them and takes half a minute.
const TICK: Duration = Duration::from_millis(470);

/// The told day, as far as it has come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Told {
    /// Its clock.
    pub at: LocalTime,
    /// What goes on.
    pub phase: Phase,
    /// The share of it that is over, 0 to 1.
    pub share: f64,
    /// It runs by itself.
    pub runs: bool,
    /// It has come to its end.
    pub is_over: bool,
}

/// The example household and its day. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Example {
    store: Store,
    clock: Clock,
    router: Router,
    at: RwSignal<Option<LocalTime>>,
    runs: RwSignal<bool>,
    /// Counts the starts, so that a tick of an earlier one does nothing.
    run: StoredValue<u32>,
}

impl Example {
    /// With no day running. An example that was left on another day starts over.
    pub fn new(store: Store, clock: Clock, router: Router) -> Self {
        let example = Self {
            store,
            clock,
            router,
            at: RwSignal::new(None),
            runs: RwSignal::new(false),
            run: StoredValue::new(0),
        };
        example.refresh();
        example
    }

    /// Shows the example household in place of the person's own.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the person's own could not be saved: it goes on being shown.
    pub fn enter(&self) -> Result<(), StorageError> {
        let fresh = example_document(self.clock.device_now());
        self.store.show(Whose::Example, Some(fresh))?;
        self.refresh();
        Ok(())
    }

    /// Goes back to the person's own household.
    pub fn leave(&self) {
        self.end();
        // What stands in the way of saving is told over every screen.
        if self.store.show(Whose::Own, None).is_ok() {
            self.router.go(Route::Tonight);
        }
    }

    /// Puts the example back to how it was.
    pub fn start_over(&self) {
        self.end();
        self.store
            .start_example_over(example_document(self.clock.device_now()));
    }

    /// Lets a day of the example go by, from first light on, and shows it on Tonight. Where the
    /// person wants less motion, it waits to be taken forward step by step.
    ///
    /// # Errors
    ///
    /// As [`Example::enter`].
    pub fn tell_day(&self) -> Result<(), StorageError> {
        self.enter()?;
        self.start_day();
        self.router.go(Route::Tonight);
        if !self.goes_in_steps() {
            self.go_on();
        }
        Ok(())
    }

    /// The told day; none while none is told.
    pub fn told(&self) -> Memo<Option<Told>> {
        let Self {
            store, at, runs, ..
        } = *self;
        let phase = store.read(move |document| at.get().map(|at| phase(document, at)));
        Memo::new(move |_| {
            let (at, phase) = at.get().zip(phase.get())?;
            let (from, until) = span_of(at.day());
            Some(Told {
                at,
                phase,
                share: share(at.since_s(from), until.since_s(from)),
                runs: runs.get(),
                is_over: until <= at,
            })
        })
    }

    /// Holds the day where it runs; lets it run where it is held, or once more where it is over.
    pub fn hold_or_run(&self) {
        if self.runs.get_untracked() {
            self.pause();
        } else {
            self.go_on();
        }
    }

    /// Whether the day waits to be taken forward step by step, as the person wants less motion.
    pub fn goes_in_steps(&self) -> bool {
        page::wants_less_motion()
    }

    fn go_on(&self) {
        let Some(at) = self.at.get_untracked() else {
            return;
        };
        if span_of(at.day()).1 <= at {
            self.start_day();
        }
        self.run.update_value(|run| *run = run.wrapping_add(1));
        self.runs.set(true);
        self.tick_later(self.run.get_value());
    }

    fn pause(&self) {
        self.runs.set(false);
    }

    /// Takes the day forward by an hour.
    pub fn step(&self) {
        self.pause();
        self.forward(LONG_STEP_S);
    }

    /// Ends the day: the example is again as it is at this hour.
    pub fn stop(&self) {
        if self.at.get_untracked().is_some() {
            self.start_over();
        }
    }

    pub(super) fn start_day(&self) {
        let (from, _) = span_of(self.clock.device_now().day());
        self.runs.set(false);
        self.at.set(Some(from));
        self.clock.pin(Some(from));
        self.store.start_example_over(example_document(from));
    }

    /// Takes the day forward as far as a tick goes.
    pub(super) fn tick(&self) {
        if let Some(at) = self.at.get_untracked() {
            let phase = self.store.now_is(|document| phase(document, at));
            self.forward(pace_s(phase, at));
        }
    }

    /// Takes the day forward, and does what the household does meanwhile.
    pub(super) fn forward(&self, step_s: i64) {
        let Some(before) = self.at.get_untracked() else {
            return;
        };
        let (_, until) = span_of(before.day());
        let at = before.plus_s(step_s).min(until);
        // The clock goes first, as nothing can be noted that has not happened.
        self.clock.pin(Some(at));
        self.at.set(Some(at));
        for action in self.store.now_is(|document| due(document, before, at)) {
            // A person may do things in between that leave no place for what was to come.
            let _ = self.store.act(action);
        }
        if until <= at {
            self.pause();
        }
    }

    fn tick_later(&self, run: u32) {
        let example = *self;
        set_timeout(
            move || {
                if example.runs.get_untracked() && example.run.get_value() == run {
                    example.tick();
                    example.tick_later(run);
                }
            },
            TICK,
        );
    }

    /// Back to the device's clock.
    fn end(&self) {
        self.runs.set(false);
        self.at.set(None);
        self.clock.pin(None);
    }

    fn refresh(&self) {
        let now = self.clock.device_now();
        let is_left = self
            .store
            .now_is(|document| document.whose == Whose::Example && is_stale(document, now));
        if is_left {
            self.start_over();
        }
    }
}

fn share(part_s: i64, whole_s: i64) -> f64 {
    let number = |seconds: i64| i32::try_from(seconds).map_or(0.0, f64::from);
    (number(part_s) / number(whole_s).max(1.0)).clamp(0.0, 1.0)
}
