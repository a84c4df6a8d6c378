//! What was believed at some midnights, put away on the device, so that a long diary need not be
//! walked anew each time the app is opened.
//!
//! It is no part of the household: a copy is without it, and whatever becomes of it, the answers are
//! the same. The model takes it up only where it fits the diary and the model as they are.

use model::local_time::Day;
use model::odds::Replay;

use crate::platform::storage::Shelf;

/// Where it is put, each with how many days before today: an edit of the last days is then walked
/// from shortly before.
const PLACES: [(&str, i32); 3] = [
    ("duskpot.beliefs.0", 0),
    ("duskpot.beliefs.3", 3),
    ("duskpot.beliefs.14", 14),
];

/// Bits that a letter of a text holds.
const BITS: u32 = 15;
/// The first of the letters: from here on, all of them are whole letters of the same length.
const FIRST: u32 = 0x1000;

/// Puts it away. What there is no room for is let go.
pub(super) fn put_away(replay: &Replay, today: Day, shelf: &dyn Shelf) {
    for (key, back) in PLACES {
        let Some(bytes) = replay.kept_by(today.plus(-back)) else {
            continue;
        };
        if shelf.set(key, &packed(&bytes)).is_err() {
            let_go(shelf);
            return;
        }
    }
}

/// Takes up what was put away.
pub(super) fn take_up(replay: &mut Replay, shelf: &dyn Shelf) {
    for (key, _) in PLACES {
        if let Ok(Some(text)) = shelf.get(key) {
            replay.take_up(&unpacked(&text));
        }
    }
}

/// Makes room.
pub(super) fn let_go(shelf: &dyn Shelf) {
    for (key, _) in PLACES {
        // A browser that does not let go keeps what does no harm.
        let _ = shelf.remove(key);
    }
}

/// Bytes as a text: 15 bits a letter, since a browser keeps texts only and counts their letters.
fn packed(bytes: &[u8]) -> String {
    let (mut left, mut n_left) = (0_u32, 0);
    let mut text = String::new();
    let mut put = |bits: u32| text.extend(char::from_u32(FIRST + bits));
    for byte in bytes {
        left = left << 8 | u32::from(*byte);
        n_left += 8;
        if BITS <= n_left {
            n_left -= BITS;
            put(left >> n_left);
            left &= (1 << n_left) - 1;
        }
    }
    if 0 < n_left {
        put(left << (BITS - n_left));
    }
    text
}

/// The bytes of a text, in eights: what is left over filled up the last letter.
fn unpacked(text: &str) -> Vec<u8> {
    let (mut left, mut n_left) = (0_u32, 0);
    let mut bytes = Vec::new();
    for letter in text.chars() {
        left = left << BITS | u32::from(letter).wrapping_sub(FIRST) & ((1 << BITS) - 1);
        n_left += BITS;
        while 8 <= n_left {
            n_left -= 8;
            bytes.push(u8::try_from(left >> n_left & 0xFF).unwrap_or_default());
            left &= (1 << n_left) - 1;
        }
    }
    bytes.truncate(bytes.len() / 8 * 8);
    bytes
}

#[cfg(test)]
mod tests {
    use model::journal::Journal;
    use model::odds::Settings;
    use model::sun::DayLog;
    use model::tonight::Site;
    use proptest::prelude::*;

    use super::*;
    use crate::platform::storage::MemoryShelf;
    use crate::state::sample::{cooker, household};

    proptest! {
        #[test]
        fn what_is_packed_is_unpacked(words in proptest::collection::vec(any::<u64>(), 0..40)) {
            let bytes: Vec<u8> = words.iter().flat_map(|word| word.to_le_bytes()).collect();
            let text = packed(&bytes);
            prop_assert_eq!(unpacked(&text), bytes.clone());
            prop_assert!(text.chars().count() <= bytes.len() * 8 / 15 + 1);
        }

        #[test]
        fn any_text_is_some_bytes(text: String) {
            let _ = unpacked(&text);
        }
    }

    fn told(hours: f64) -> Journal {
        let days = (0..20).map(|back| (Day(20_000).plus(-back), DayLog::SunHours(hours)));
        Journal {
            skies: days.collect(),
            ..Journal::default()
        }
    }

    #[test]
    fn a_diary_is_taken_up_where_it_was_left_and_another_is_not() {
        let settings = Settings {
            members: 64,
            ..Settings::default()
        };
        let site = Site {
            place: household().place,
            air: household().air,
        };
        let (cooker, journal) = (cooker(), told(5.0));
        let now = Day(20_000).at_s(17 * 3600);
        let left = |replay: &mut Replay, journal: &Journal| {
            replay.walk_on(&site, &cooker, journal, now, 0).unwrap()
        };
        let mut first = Replay::new(settings);
        let believed = first.belief(&site, &cooker, &journal, now).unwrap();
        let shelf = MemoryShelf::default();
        put_away(&first, now.day(), &shelf);
        assert_eq!(shelf.keys().unwrap().len(), PLACES.len());
        let mut again = Replay::new(settings);
        take_up(&mut again, &shelf);
        assert_eq!(left(&mut again, &journal), 0);
        let taken_up = again.belief(&site, &cooker, &journal, now).unwrap();
        assert_eq!(taken_up.store(), believed.store());
        // What was changed the day before yesterday is walked from shortly before.
        let mut changed = journal.clone();
        changed.skies.insert(Day(19_998), DayLog::SunHours(2.0));
        let mut again = Replay::new(settings);
        take_up(&mut again, &shelf);
        assert_eq!(left(&mut again, &changed), 3);
        // A diary that is another from its start is walked from there.
        let mut other = Replay::new(settings);
        take_up(&mut other, &shelf);
        assert_eq!(left(&mut other, &told(6.0)), 19);
    }

    #[test]
    fn without_room_nothing_is_left_behind() {
        let settings = Settings {
            members: 64,
            ..Settings::default()
        };
        let site = Site {
            place: household().place,
            air: household().air,
        };
        let now = Day(20_000).at_s(17 * 3600);
        let mut replay = Replay::new(settings);
        replay.belief(&site, &cooker(), &told(5.0), now).unwrap();
        let shelf = MemoryShelf::default();
        shelf.set_room(50_000);
        put_away(&replay, now.day(), &shelf);
        assert_eq!(shelf.n_bytes(), 0);
    }

    #[test]
    fn what_there_is_no_room_for_is_let_go() {
        let shelf = MemoryShelf::default();
        shelf.set("duskpot.beliefs.0", "old").unwrap();
        shelf.set("duskpot.household", "ours").unwrap();
        let_go(&shelf);
        assert_eq!(shelf.keys().unwrap(), ["duskpot.household"]);
    }
}
