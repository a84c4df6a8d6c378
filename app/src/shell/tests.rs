//! The store and what hangs on it, without a browser.

use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use crate::reactive::*;
use model::journal::What;
use model::local_time::LocalTime;

use crate::i18n::Language;
use crate::i18n::format::LocaleFormat;
use crate::platform::storage::{MemoryShelf, Shelf, StorageError};
use crate::shell::clock::Clock;
use crate::shell::example::Example;
use crate::shell::keeper::{Keeper, Notice, SaveStatus};
use crate::shell::router::Router;
use crate::shell::store::Store;
use crate::shell::toasts::{ToastAbout, Toasts};
use crate::shell::wiring::title;
use crate::shell::words::Words;
use crate::state::action::{Action, Done};
use crate::state::document::{Document, Whose};
use crate::state::example::is_stale;
use crate::state::example::today::Phase;
use crate::state::refused::{Field, Refused, Wrong};
use crate::state::route::{MorePage, Route};
use crate::state::sample::{at, full, set_up, set_up_action};
use crate::state::settings::{Degrees, LanguageChoice};

fn evening() -> LocalTime {
    at(20, 0).plus_s(31)
}

struct Kitchen {
    store: Store,
    toasts: Toasts,
    shelf: MemoryShelf,
    clock: Clock,
    /// Signals live as long as their owner.
    _owner: Owner,
}

impl Kitchen {
    fn open() -> Self {
        Self::open_at(evening)
    }

    fn open_at(device: fn() -> LocalTime) -> Self {
        let owner = Owner::new();
        owner.set();
        let shelf = MemoryShelf::default();
        let toasts = Toasts::default();
        let clock = Clock::new(device);
        let keeper = Keeper::new(Box::new(shelf.clone()));
        let store = Store::open(keeper, Whose::Own, clock, toasts);
        Self {
            store,
            toasts,
            shelf,
            clock,
            _owner: owner,
        }
    }

    fn set_up() -> Self {
        let kitchen = Self::open();
        kitchen.store.act(set_up_action()).unwrap();
        kitchen
    }
}

fn reading(store_c: f64) -> Action {
    Action::AddEntry {
        at: at(12, 0),
        what: What::Reading { store_c },
    }
}

#[test]
fn an_action_is_seen_at_once_and_saved_later() {
    let kitchen = Kitchen::set_up();
    assert!(kitchen.store.has_household().get_untracked());
    assert_eq!(kitchen.store.status().get_untracked(), SaveStatus::Pending);
    assert_eq!(kitchen.store.changes().get_untracked(), 1);
    kitchen.store.save_now();
    assert_eq!(kitchen.store.status().get_untracked(), SaveStatus::Saved);
}

#[test]
fn a_refused_action_changes_nothing_and_says_why() {
    let kitchen = Kitchen::set_up();
    kitchen.store.save_now();
    let refused = kitchen.store.dispatch().run(reading(900.0));
    let wrong = Wrong::TooHigh { most: 650.0 };
    assert_eq!(
        refused,
        Err(Refused {
            field: Field::ReadingC,
            wrong
        })
    );
    assert_eq!(kitchen.store.status().get_untracked(), SaveStatus::Saved);
}

#[test]
fn a_reader_is_told_only_of_its_own_part() {
    let kitchen = Kitchen::set_up();
    let n_runs = Arc::new(AtomicUsize::new(0));
    let counted = Arc::clone(&n_runs);
    let in_use = kitchen.store.in_use();
    let follower = Memo::new(move |_| {
        counted.fetch_add(1, Ordering::Relaxed);
        in_use.get()
    });
    follower.get_untracked();
    kitchen.store.act(reading(90.0)).unwrap();
    follower.get_untracked();
    assert_eq!(n_runs.load(Ordering::Relaxed), 1);
}

#[test]
fn what_was_erased_can_be_taken_back_from_the_note() {
    let kitchen = Kitchen::set_up();
    let Ok(Done::AddedEntry(id)) = kitchen.store.act(reading(90.0)) else {
        panic!("no entry")
    };
    kitchen.store.act(Action::EraseEntry(id)).unwrap();
    let toast = kitchen.toasts.shown().get_untracked().unwrap();
    assert_eq!(toast.about, ToastAbout::EntryErased);
    kitchen.store.act(toast.undo.unwrap()).unwrap();
    assert!(
        kitchen
            .store
            .now_is(|document| document.entry(id).is_some())
    );
    kitchen.toasts.put_away(toast.number);
    assert_eq!(kitchen.toasts.shown().get_untracked(), None);
}

#[test]
fn a_failed_save_is_told_until_it_works() {
    let kitchen = Kitchen::set_up();
    kitchen.shelf.set_room(10);
    kitchen.store.save_now();
    let status = kitchen.store.status();
    assert_eq!(
        status.get_untracked(),
        SaveStatus::Failed(StorageError::Full)
    );
    let shown = kitchen.store.show(Whose::Example, None);
    assert_eq!(shown, Err(StorageError::Full));
    kitchen.shelf.set_room(100_000);
    kitchen.store.save_now();
    assert_eq!(status.get_untracked(), SaveStatus::Saved);
}

#[test]
fn the_example_comes_and_goes_and_the_settings_stay() {
    let kitchen = Kitchen::set_up();
    let store = kitchen.store;
    store
        .act(Action::ChooseDegrees(Degrees::Fahrenheit))
        .unwrap();
    let example = Document {
        whose: Whose::Example,
        ..full()
    };
    store.show(Whose::Example, Some(example)).unwrap();
    assert_eq!(store.whose().get_untracked(), Whose::Example);
    assert_eq!(
        store.settings().get_untracked().degrees,
        Degrees::Fahrenheit
    );
    assert_eq!(
        store.settings().get_untracked().language,
        LanguageChoice::Automatic
    );
    store.act(Action::ChooseDegrees(Degrees::Celsius)).unwrap();
    store.show(Whose::Own, None).unwrap();
    assert_eq!(store.settings().get_untracked().degrees, Degrees::Celsius);
    assert_eq!(store.now_is(Clone::clone), set_up());
    store.show(Whose::Example, None).unwrap();
    assert_eq!(
        store.now_is(|document| document.entries.len()),
        full().entries.len()
    );
}

#[test]
fn a_copy_goes_out_and_comes_in() {
    let kitchen = Kitchen::set_up();
    let copy = kitchen.store.copy_text(&Vec::new()).unwrap();
    kitchen.store.act(reading(90.0)).unwrap();
    let decoded = crate::state::saved::decode(&copy).unwrap();
    kitchen.store.replace(decoded.document).unwrap();
    assert_eq!(kitchen.store.now_is(Clone::clone), set_up());
    assert_eq!(
        kitchen.store.notice().get_untracked(),
        Some(Notice::CopyBroughtIn)
    );
    assert_eq!(kitchen.store.asides().map(|asides| asides.len()), Ok(1));
}

#[test]
fn a_language_is_changed_at_once() {
    let kitchen = Kitchen::set_up();
    let browser = vec!["en-GB".to_owned()];
    let words = Words::new(kitchen.store, browser, |tag| LocaleFormat {
        decimal: if tag.starts_with("es") { ',' } else { '.' },
        ..LocaleFormat::default()
    });
    let room = words.text(|strings| strings.tonight.title);
    assert_eq!(room.get_untracked(), "Tonight");
    let choice = LanguageChoice::Chosen(Language::Spanish);
    kitchen.store.act(Action::ChooseLanguage(choice)).unwrap();
    assert_eq!(room.get_untracked(), "Esta noche");
    let litres = words.formats().get_untracked().litres(2.4);
    assert_eq!(litres, "2,4\u{A0}L");
}

#[test]
fn the_first_start_comes_first() {
    let kitchen = Kitchen::open();
    let router = Router::new(kitchen.store, Route::Diary(None));
    assert_eq!(router.route().get_untracked(), Route::Start(0));
    router.follow(Route::More(MorePage::Safety));
    assert_eq!(
        router.route().get_untracked(),
        Route::More(MorePage::Safety)
    );
    router.follow(Route::Start(2));
    kitchen.store.act(set_up_action()).unwrap();
    assert_eq!(router.route().get_untracked(), Route::Tonight);
}

#[test]
fn the_clock_shows_whole_minutes_and_can_be_pinned() {
    let owner = Owner::new();
    owner.set();
    let clock = Clock::new(evening);
    assert_eq!(clock.now().get_untracked(), at(20, 0));
    assert_eq!(clock.now_untracked(), evening());
    clock.pin(Some(at(6, 0)));
    assert_eq!(clock.now().get_untracked(), at(6, 0));
    clock.pin(None);
    clock.tick();
    assert_eq!(clock.now().get_untracked(), at(20, 0));
}

#[test]
fn the_example_can_be_left_when_it_cannot_be_saved() {
    let kitchen = Kitchen::set_up();
    let store = kitchen.store;
    let example = Document {
        whose: Whose::Example,
        ..full()
    };
    store.show(Whose::Example, Some(example)).unwrap();
    kitchen.shelf.set_room(10);
    store.act(reading(90.0)).unwrap();
    assert_eq!(store.show(Whose::Own, None), Ok(()));
    assert_eq!(store.now_is(Clone::clone), set_up());
}

#[test]
fn a_day_of_the_example_goes_by_and_leaves_no_trace() {
    let kitchen = Kitchen::set_up();
    let Kitchen { store, clock, .. } = kitchen;
    let router = Router::new(store, Route::Tonight);
    let example = Example::new(store, clock, router);
    let told = example.told();
    assert_eq!(told.get_untracked(), None);
    example.enter().unwrap();
    let before = store.now_is(Clone::clone);
    example.start_day();
    assert_eq!(clock.now().get_untracked(), at(6, 0));
    let mut phases = Vec::new();
    while !told.get_untracked().unwrap().is_over {
        example.tick();
        phases.push(told.get_untracked().unwrap().phase);
    }
    assert!((50..=64).contains(&phases.len()), "{} ticks", phases.len());
    let end = told.get_untracked().unwrap();
    assert!(end.is_over && !end.runs);
    assert!((end.share - 1.0).abs() < 1e-12);
    assert_eq!(clock.now().get_untracked(), at(22, 0));
    assert!(phases.contains(&Phase::Boils));
    assert_eq!(phases.last(), Some(&Phase::Done));
    example.stop();
    assert_eq!(told.get_untracked(), None);
    assert_eq!(clock.now().get_untracked(), at(20, 0));
    assert_eq!(
        store.now_is(|document| document.entries.len()),
        before.entries.len()
    );
    assert_eq!(store.now_is(|document| document.running), None);
    store.show(Whose::Own, None).unwrap();
    assert_eq!(store.now_is(Clone::clone), set_up());
}

#[test]
fn an_example_that_was_left_in_its_evening_starts_over() {
    let kitchen = Kitchen::open_at(|| at(9, 0));
    let Kitchen { store, clock, .. } = kitchen;
    let router = Router::new(store, Route::Tonight);
    let example = Example::new(store, clock, router);
    example.enter().unwrap();
    example.start_day();
    for _ in 0..15 {
        example.forward(3600);
    }
    store.save_now();
    assert!(store.now_is(|document| is_stale(document, at(9, 0))));
    let reopened = Example::new(store, clock, router);
    assert_eq!(reopened.told().get_untracked(), None);
    assert!(!store.now_is(|document| is_stale(document, at(9, 0))));
}

#[test]
fn what_was_put_aside_can_be_forgotten_to_make_room() {
    let kitchen = Kitchen::set_up();
    let store = kitchen.store;
    store.replace(full()).unwrap();
    let aside = store.asides().unwrap().remove(0);
    let n_bytes = kitchen.shelf.n_bytes();
    kitchen.shelf.set_room(n_bytes);
    store.act(reading(90.0)).unwrap();
    store.save_now();
    let status = store.status();
    assert_eq!(
        status.get_untracked(),
        SaveStatus::Failed(StorageError::Full)
    );
    store.forget_aside(&aside.key).unwrap();
    assert_eq!(store.asides(), Ok(vec![]));
    assert_eq!(status.get_untracked(), SaveStatus::Saved);
    store.forget_aside("duskpot.household").unwrap();
    assert!(store.asides().is_ok());
    assert_eq!(kitchen.shelf.keys().map(|keys| keys.len()), Ok(1));
}

#[test]
fn the_way_back_that_is_offered_is_that_of_the_last_deed() {
    let kitchen = Kitchen::open();
    let toasts = kitchen.toasts;
    let shown = toasts.shown();
    toasts.show(ToastAbout::SkyErased, Some(Action::CloseMeal));
    let first = shown.get_untracked().unwrap();
    toasts.show(ToastAbout::BroughtBack, None);
    let last = shown.get_untracked().unwrap();
    assert_eq!(
        (last.about.clone(), last.undo),
        (ToastAbout::BroughtBack, None)
    );
    toasts.put_away(first.number);
    assert!(
        shown.get_untracked().is_some(),
        "an older note's time is up"
    );
    toasts.put_away(last.number);
    assert_eq!(shown.get_untracked(), None);
}

#[test]
fn each_place_has_a_title_of_its_own() {
    let strings = Language::English.strings();
    let mut titles: Vec<String> = MorePage::ALL
        .map(Route::More)
        .to_vec()
        .into_iter()
        .chain((0..=5).map(Route::Start))
        .chain([Route::Tonight, Route::Diary(None), Route::Cooker(None)])
        .map(|route| title(route, strings))
        .collect();
    assert!(
        titles.iter().all(|title| title.ends_with(" · Duskpot")),
        "{titles:?}"
    );
    let all = titles.len();
    titles.sort_unstable();
    titles.dedup();
    assert_eq!(titles.len(), all, "{titles:?}");
}
