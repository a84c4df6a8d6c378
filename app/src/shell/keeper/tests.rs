//! Nothing is lost on the way to the shelf.

use model::journal::What;

use super::*;
use crate::platform::storage::MemoryShelf;
use crate::state::sample::{TODAY, at, full, set_up, set_up_action};

const KEY: &str = "duskpot.household";

/// A window of the app on a shelf that others may share.
struct Window {
    keeper: Keeper,
    document: Document,
    notice: Option<Notice>,
}

impl Window {
    fn open(shelf: &MemoryShelf) -> Self {
        let mut keeper = Keeper::new(Box::new(shelf.clone()));
        let (document, notice) = keeper.open(Whose::Own, at(19, 0));
        Self {
            keeper,
            document,
            notice,
        }
    }

    fn act(&mut self, action: Action) {
        apply(&mut self.document, action.clone(), at(20, 0)).unwrap();
        self.keeper.note(action, at(20, 0));
    }

    fn log(&mut self, hour: i64, store_c: f64) {
        self.act(Action::AddEntry {
            at: at(hour, 0),
            what: What::Reading { store_c },
        });
    }

    fn save(&mut self) -> Option<Notice> {
        self.keeper.save(&mut self.document, at(20, 0))
    }

    fn leave(&mut self) {
        self.keeper.save_on_leaving(&mut self.document, at(20, 0));
    }

    fn hours(&self) -> Vec<usize> {
        self.document
            .entries
            .iter()
            .map(|entry| entry.at.hour())
            .collect()
    }
}

/// A shelf with a household that was set up and saved.
fn shelf() -> MemoryShelf {
    let shelf = MemoryShelf::default();
    let mut window = Window::open(&shelf);
    window.act(set_up_action());
    window.save();
    shelf
}

#[test]
fn what_was_saved_is_there_on_the_next_start() {
    let shelf = shelf();
    let window = Window::open(&shelf);
    assert_eq!((window.document, window.notice), (set_up(), None));
    assert_eq!(window.keeper.status(), SaveStatus::Saved);
}

#[test]
fn a_change_is_pending_until_it_is_saved() {
    let mut window = Window::open(&shelf());
    window.log(9, 80.0);
    assert_eq!(window.keeper.status(), SaveStatus::Pending);
    assert_eq!(window.save(), None);
    assert_eq!(window.keeper.status(), SaveStatus::Saved);
}

#[test]
fn two_windows_lose_nothing_of_each_other() {
    let shelf = shelf();
    let (mut here, mut there) = (Window::open(&shelf), Window::open(&shelf));
    here.log(9, 80.0);
    there.log(12, 95.0);
    assert_eq!(here.save(), None);
    assert_eq!(there.save(), Some(Notice::ChangedElsewhere));
    assert_eq!(there.hours(), [9, 12]);
    let notice = here.keeper.look_again(&mut here.document, at(20, 0));
    assert_eq!(
        (here.hours(), notice),
        (vec![9, 12], Some(Notice::ChangedElsewhere))
    );
}

#[test]
fn a_change_that_no_longer_fits_is_said_to_be_lost() {
    let shelf = shelf();
    let mut here = Window::open(&shelf);
    here.log(9, 80.0);
    here.save();
    let mut there = Window::open(&shelf);
    let id = here.document.entries[0].id;
    here.act(Action::EraseEntry(id));
    here.save();
    there.act(Action::EraseEntry(id));
    assert_eq!(there.save(), Some(Notice::ChangeLost));
    assert_eq!(there.document, here.document);
    assert_eq!(there.keeper.status(), SaveStatus::Saved);
}

#[test]
fn full_storage_is_told_and_the_change_waits_for_room() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    let before = shelf.get(KEY);
    shelf.set_room(100);
    window.log(9, 80.0);
    window.save();
    assert_eq!(
        window.keeper.status(),
        SaveStatus::Failed(StorageError::Full)
    );
    assert_eq!(shelf.get(KEY), before);
    shelf.set_room(100_000);
    window.save();
    assert_eq!(window.keeper.status(), SaveStatus::Saved);
    assert_eq!(Window::open(&shelf).hours(), [9]);
}

#[test]
fn a_damaged_text_is_put_aside_and_never_written_over() {
    let shelf = shelf();
    shelf.set(KEY, "{\"format\":\"duskpot\",\"ver").unwrap();
    let mut window = Window::open(&shelf);
    let Some(Notice::PutAside { key }) = &window.notice else {
        panic!("{:?}", window.notice)
    };
    assert_eq!(
        shelf.get(key),
        Ok(Some("{\"format\":\"duskpot\",\"ver".to_owned()))
    );
    window.act(set_up_action());
    window.save();
    assert_eq!(Window::open(&shelf).document, set_up());
    let asides = window.keeper.asides().unwrap();
    assert_eq!(asides.len(), 1);
    assert_eq!(
        (asides[0].why, asides[0].at),
        (AsideWhy::Damaged, at(19, 0))
    );
}

#[test]
fn a_damaged_text_is_put_aside_once() {
    let shelf = MemoryShelf::default();
    shelf.set(KEY, "damaged").unwrap();
    Window::open(&shelf);
    let window = Window::open(&shelf);
    assert_eq!(window.notice, None);
    assert_eq!(window.keeper.asides().map(|asides| asides.len()), Ok(1));
}

#[test]
fn a_text_damaged_by_another_window_does_not_take_ours_along() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    shelf.set(KEY, "damaged").unwrap();
    let notice = window.keeper.look_again(&mut window.document, at(20, 0));
    assert!(matches!(notice, Some(Notice::PutAside { .. })));
    window.save();
    assert_eq!(Window::open(&shelf).document, set_up());
}

#[test]
fn a_damaged_text_without_room_to_put_it_aside_stays_where_it_is() {
    let shelf = MemoryShelf::default();
    shelf.set(KEY, "damaged").unwrap();
    shelf.set_room(30);
    let mut window = Window::open(&shelf);
    assert_eq!(
        window.keeper.status(),
        SaveStatus::Locked(Lock::DamagedInPlace)
    );
    shelf.set_room(100_000);
    window.act(set_up_action());
    window.save();
    assert_eq!(shelf.get(KEY), Ok(Some("damaged".to_owned())));
    assert_eq!(window.keeper.raw(), Some("damaged".to_owned()));
}

#[test]
fn a_newer_save_is_neither_read_nor_written_over() {
    let shelf = MemoryShelf::default();
    let newer = "{\"format\":\"duskpot\",\"version\":99,\"anything\":true}";
    shelf.set(KEY, newer).unwrap();
    let mut window = Window::open(&shelf);
    window.act(set_up_action());
    window.save();
    assert_eq!(window.keeper.status(), SaveStatus::Locked(Lock::Newer));
    assert_eq!(shelf.get(KEY), Ok(Some(newer.to_owned())));
}

#[test]
fn a_newer_version_in_another_window_locks_this_one() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    let newer = "{\"format\":\"duskpot\",\"version\":2}";
    shelf.set(KEY, newer).unwrap();
    window.log(9, 80.0);
    window.save();
    assert_eq!(window.keeper.status(), SaveStatus::Locked(Lock::Newer));
    assert_eq!(shelf.get(KEY), Ok(Some(newer.to_owned())));
    assert_eq!(window.hours(), [9]);
}

#[test]
fn a_store_cleared_under_us_stays_so_until_something_changes() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    shelf.remove(KEY).unwrap();
    window.keeper.look_again(&mut window.document, at(20, 0));
    window.save();
    window.leave();
    assert_eq!(shelf.get(KEY), Ok(None));
    assert_eq!(window.keeper.status(), SaveStatus::Cleared);
    assert_eq!(window.document, set_up());
    // Whoever goes on with it keeps all of it.
    window.log(9, 80.0);
    window.save();
    assert_eq!(window.keeper.status(), SaveStatus::Saved);
    let again = Window::open(&shelf);
    assert_eq!(again.document, window.document);
    assert_eq!(again.hours(), [9]);
}

#[test]
fn a_window_that_goes_does_not_fill_a_cleared_store() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    window.log(9, 80.0);
    shelf.remove(KEY).unwrap();
    window.leave();
    assert_eq!(shelf.get(KEY), Ok(None));
    // Where nothing was cleared, what is not kept yet is kept at the last moment.
    let shelf = self::shelf();
    let mut window = Window::open(&shelf);
    window.log(9, 80.0);
    window.leave();
    assert_eq!(Window::open(&shelf).hours(), [9]);
    // So is what a first visit has done.
    let shelf = MemoryShelf::default();
    let mut window = Window::open(&shelf);
    window.act(set_up_action());
    window.leave();
    assert_eq!(Window::open(&shelf).document, set_up());
}

#[test]
fn what_a_copy_replaces_can_be_brought_back() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    let Window {
        keeper, document, ..
    } = &mut window;
    let notice = keeper.replace(document, full(), at(20, 0));
    assert_eq!(notice, Ok(Some(Notice::CopyBroughtIn)));
    assert_eq!(Window::open(&shelf).document, full());
    let aside = window.keeper.asides().unwrap().remove(0);
    assert_eq!(aside.why, AsideWhy::Replaced);
    let text = window.keeper.aside_text(&aside.key).unwrap().unwrap();
    assert_eq!(decode(&text).map(|decoded| decoded.document), Ok(set_up()));
}

#[test]
fn a_copy_is_not_brought_in_where_the_old_one_cannot_be_put_aside() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    shelf.set_room(shelf.get(KEY).unwrap().unwrap().len() + 100);
    let Window {
        keeper, document, ..
    } = &mut window;
    assert_eq!(
        keeper.replace(document, full(), at(20, 0)),
        Err(StorageError::Full)
    );
    assert_eq!(window.document, set_up());
}

#[test]
fn only_the_latest_replaced_households_are_kept() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    for day in 0..6 {
        let Window {
            keeper, document, ..
        } = &mut window;
        keeper
            .replace(document, full(), TODAY.plus(day).at_s(0))
            .unwrap();
    }
    let asides = window.keeper.asides().unwrap();
    assert_eq!(asides.len(), 3);
    assert_eq!(asides[0].at, TODAY.plus(5).start());
}

#[test]
fn the_example_and_the_own_household_never_mix() {
    let shelf = shelf();
    let mut window = Window::open(&shelf);
    let (example, _) = window.keeper.open(Whose::Example, at(20, 0));
    assert_eq!(example, Document::new(Whose::Example));
    window.document = example;
    window.act(set_up_action());
    window.log(9, 80.0);
    window.save();
    assert_eq!(Window::open(&shelf).document, set_up());
    let (example, _) = window.keeper.open(Whose::Example, at(20, 0));
    assert_eq!((example.whose, example.entries.len()), (Whose::Example, 1));
}
