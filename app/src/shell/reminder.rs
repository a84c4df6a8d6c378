//! The clock of a test run that goes on: it calls for the next reading, wherever in the app one is.
//!
//! Nothing is counted: when the next reading is due follows from the readings that are kept, so a
//! locked screen or a reload only means that it is looked at later.

use std::sync::Arc;
use std::time::Duration;

use crate::reactive::*;
use leptos::leptos_dom::helpers::IntervalHandle;
use leptos::task::spawn_local;
use model::bench::Foreseen;
use model::local_time::LocalTime;
use model::tonight::{Rig, Site};

use crate::platform::call::{self, Notices};
use crate::platform::page;
use crate::platform::storage::{Shelf, WindowShelf};
use crate::present::bench::live;
use crate::present::bench::timer::Timer;
use crate::shell::Shell;
use crate::state::bench::TestRun;
use crate::state::document::Document;
use crate::state::ids::RunId;
use crate::state::route::{BenchPage, Route};

/// Where the window remembers what a person wants, so that a reload leaves it.
const CALLS_KEY: &str = "duskpot.calls";
const STAYS_ON_KEY: &str = "duskpot.stays-on";
const ON: &str = "on";

/// How often the clock is looked at while a run goes on.
const SECOND: Duration = Duration::from_secs(1);
/// Two buzzes that are no message's.
const BUZZ_MS: [u32; 3] = [250, 150, 400];
/// What a notice is called, so that the next one takes its place.
const NOTICE: &str = "duskpot-reading";

/// A run that goes on, and what it should be like.
#[derive(Debug, Clone, PartialEq)]
pub struct Going {
    /// The run.
    pub run: TestRun,
    /// Worked out for the cooker as it is described.
    pub foreseen: Option<Foreseen>,
}

/// What this device can't do of what was asked of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Cannot {
    /// Keep the screen on.
    pub stay_on: bool,
    /// Buzz.
    pub buzz: bool,
    /// Show a notice: it has none, or the person said no.
    pub notice: Option<Notices>,
}

/// The clock. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Reminder {
    shell: Shell,
    going: Memo<Option<Going>>,
    timer: Memo<Option<Timer>>,
    second: RwSignal<LocalTime>,
    away: RwSignal<Option<LocalTime>>,
    calls: RwSignal<bool>,
    stays_on: RwSignal<bool>,
    cannot: RwSignal<Cannot>,
    told_later: RwSignal<bool>,
}

impl Reminder {
    /// Watches for runs, for as long as the page lives.
    pub fn wire(shell: Shell) -> Self {
        let wanted = |key| matches!(WindowShelf.get(key), Ok(Some(mark)) if mark == ON);
        let run = shell.store.read(|document| document.bench.going().cloned());
        let rig = rig_of(shell, run);
        let going = Memo::new(move |_| {
            let run = run.get()?;
            let foreseen = rig.with(|rig| live::foreseen(rig.as_ref()?, &run));
            Some(Going { run, foreseen })
        });
        let second = RwSignal::new(shell.clock.now_untracked());
        let timer = Memo::new(move |_| {
            let now = second.get();
            going.with(|going| {
                let Going { run, foreseen } = going.as_ref()?;
                Some(live::timer(run, foreseen.as_ref(), now))
            })
        });
        // What was due before the page was opened was missed as well.
        let started = run.with_untracked(|run| run.as_ref().map(|run| run.started));
        let reminder = Self {
            shell,
            going,
            timer,
            second,
            away: RwSignal::new(started),
            calls: RwSignal::new(wanted(CALLS_KEY)),
            stays_on: RwSignal::new(wanted(STAYS_ON_KEY)),
            cannot: RwSignal::new(Cannot::default()),
            told_later: RwSignal::new(false),
        };
        // On a first visit there is no run yet.
        shell.rest.then(move || {
            reminder.tick();
            reminder.forget_what_was_missed();
            reminder.call_when_due();
            reminder.keep_screen_on();
            reminder.come_back();
        });
        reminder
    }

    /// The run that goes on.
    pub fn going(&self) -> Memo<Option<Going>> {
        self.going
    }

    /// How its clock stands, to the second.
    pub fn timer(&self) -> Memo<Option<Timer>> {
        self.timer
    }

    /// Since when the screen was off, until the next reading.
    pub fn away(&self) -> Signal<Option<LocalTime>> {
        self.away.into()
    }

    /// Whether readings are told with their times, from paper, so that nobody is called for them.
    pub fn told_later(&self) -> RwSignal<bool> {
        self.told_later
    }

    /// Whether a person wants to be called.
    pub fn calls(&self) -> Signal<bool> {
        self.calls.into()
    }

    /// Whether the screen is to stay on.
    pub fn stays_on(&self) -> Signal<bool> {
        self.stays_on.into()
    }

    /// What the device can't do of it.
    pub fn cannot(&self) -> Signal<Cannot> {
        self.cannot.into()
    }

    /// Calls, or calls no more; from a tap, since the browser asks only then.
    pub fn set_calls(&self, calls: bool) {
        keep(CALLS_KEY, calls);
        self.calls.set(calls);
        let reminder = *self;
        if calls {
            // Tried at once, so that a person knows how it feels, or that it does not.
            let buzz = call::buzz(&BUZZ_MS).is_err();
            self.cannot.update(|cannot| cannot.buzz = buzz);
            spawn_local(async move {
                let notices = call::ask_for_notices().await;
                let cannot = (notices != Notices::Allowed).then_some(notices);
                reminder.cannot.update(|all| all.notice = cannot);
            });
        } else {
            self.cannot.update(|cannot| {
                (cannot.buzz, cannot.notice) = (false, None);
            });
        }
    }

    /// Keeps the screen on while a run is shown, or lets it go off.
    pub fn set_stays_on(&self, stays_on: bool) {
        keep(STAYS_ON_KEY, stays_on);
        self.stays_on.set(stays_on);
    }

    /// Looks at the clock each second while a run goes on.
    fn tick(&self) {
        let (shell, second) = (self.shell, self.second);
        let is_going = Memo::new({
            let going = self.going;
            move |_| going.with(Option::is_some)
        });
        let ticking = StoredValue::new(None::<IntervalHandle>);
        effect(move || {
            if let Some(Some(before)) = ticking.try_update_value(Option::take) {
                before.clear();
            }
            if is_going.get() {
                second.set(shell.clock.now_untracked());
                let look = move || second.set(shell.clock.now_untracked());
                let handle = set_interval_with_handle(look, SECOND).ok();
                ticking.set_value(handle);
            }
        });
    }

    fn forget_what_was_missed(&self) {
        let (timer, away) = (self.timer, self.away);
        let due = Memo::new(move |_| timer.get().map(|timer| timer.due));
        let mut before = None;
        effect(move || {
            let due = due.get();
            if before.replace(due).is_some_and(|before| before != due) {
                away.set(None);
            }
        });
    }

    /// Calls once for each reading that is due.
    fn call_when_due(&self) {
        let reminder = *self;
        let due = Memo::new(move |_| {
            let timer = reminder.timer.get()?;
            let calls = timer.is_due() && !timer.is_left() && !reminder.told_later.get();
            calls.then_some((timer.due, timer.n_due))
        });
        effect(move || {
            if due.get().is_some() && reminder.calls.get_untracked() {
                reminder.call();
            }
        });
    }

    fn call(&self) {
        let reminder = *self;
        let buzz = call::buzz(&BUZZ_MS).is_err();
        self.cannot.update(|cannot| cannot.buzz = buzz);
        // Who looks at the page needs no notice over it.
        if !page::is_hidden() {
            return;
        }
        let words = untrack(|| reminder.shell.words.strings());
        let name = reminder
            .going
            .with_untracked(|going| going.as_ref().map(|going| going.run.about.name.clone()));
        let title = (words.runs.live.notice)(&name.unwrap_or_default());
        spawn_local(async move {
            let shown = call::notice(NOTICE, &title, words.runs.live.notice_body).await;
            let cannot = shown.is_err().then(call::notices);
            reminder.cannot.update(|all| all.notice = cannot);
        });
    }

    fn keep_screen_on(&self) {
        let reminder = *self;
        let route = self.shell.router.route();
        let wanted = Memo::new(move |_| {
            let going = reminder
                .going
                .with(|going| going.as_ref().map(|going| going.run.id));
            let is_shown = going.is_some_and(|id| is_page_of(route.get(), id));
            is_shown && reminder.stays_on.get()
        });
        effect(move || {
            if wanted.get() {
                reminder.hold_screen();
            } else {
                call::let_screen_off();
                reminder.cannot.update(|cannot| cannot.stay_on = false);
            }
        });
        // The browser lets go of the screen when the page is hidden.
        page::watch_return(move || {
            if wanted.get_untracked() {
                reminder.hold_screen();
            }
        });
    }

    fn hold_screen(&self) {
        let reminder = *self;
        spawn_local(async move {
            let cannot = call::keep_screen_on().await.is_err();
            reminder.cannot.update(|all| all.stay_on = cannot);
        });
    }

    /// Says what was missed while the page was hidden.
    fn come_back(&self) {
        let (shell, second, away) = (self.shell, self.second, self.away);
        let left = StoredValue::new(None::<LocalTime>);
        page::watch_leaving(move || {
            if left.get_value().is_none() {
                left.set_value(Some(shell.clock.now_untracked()));
            }
        });
        page::watch_return(move || {
            if let Some(Some(since)) = left.try_update_value(Option::take) {
                away.set(Some(away.get_untracked().unwrap_or(since)));
                second.set(shell.clock.now_untracked());
            }
        });
    }
}

fn is_page_of(route: Route, id: RunId) -> bool {
    route == Route::Bench(BenchPage::Run(id))
}

fn keep(key: &str, is_on: bool) {
    // Where nothing can be kept the wish lasts as long as the page.
    let _ = if is_on {
        WindowShelf.set(key, ON)
    } else {
        WindowShelf.remove(key)
    };
}

/// The cooker of a run, put together anew only when the cooker or the place has changed.
pub fn rig_of(shell: Shell, run: Memo<Option<TestRun>>) -> Memo<Option<Arc<Rig>>> {
    let cooker = Memo::new(move |_| run.with(|run| run.as_ref().map(|run| run.cooker)));
    let site = shell.store.read(site);
    let described = shell.store.read(|document| document.cookers.clone());
    Memo::new_each_time(move || {
        let id = cooker.get()?;
        let site = site.get()?;
        described.with(|cookers| {
            let owned = cookers.iter().find(|owned| owned.id == id)?;
            Rig::new(&site, &owned.cooker).ok().map(Arc::new)
        })
    })
}

/// Where the household is.
pub fn site(document: &Document) -> Option<Site> {
    let household = document.household.as_ref()?;
    Some(Site {
        place: household.place,
        air: household.air,
    })
}
