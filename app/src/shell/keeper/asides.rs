//! What was put aside: unreadable texts, and households that a copy replaced.

use model::local_time::LocalTime;

use crate::order::in_order;
use crate::platform::storage::StorageError;
use crate::shell::keeper::Keeper;

/// Something put aside.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Aside {
    /// The key it is kept under.
    pub key: String,
    /// Why it was put aside.
    pub why: AsideWhy,
    /// When.
    pub at: LocalTime,
}

/// Why something was put aside.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AsideWhy {
    /// It could not be read.
    Damaged,
    /// A copy took its place.
    Replaced,
}

/// What every key of something put aside begins with.
const PREFIX: &str = "duskpot.aside.";

/// Replaced households that are kept; damaged ones are all kept.
const MOST_REPLACED: usize = 3;

impl AsideWhy {
    fn name(self) -> &'static str {
        match self {
            Self::Damaged => "damaged",
            Self::Replaced => "replaced",
        }
    }
}

impl Keeper {
    /// What was put aside, the latest first.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn asides(&self) -> Result<Vec<Aside>, StorageError> {
        let asides = self.shelf.keys()?.into_iter().filter_map(aside_from_key);
        Ok(in_order(asides, |a, b| (b.at, &b.key).cmp(&(a.at, &a.key))))
    }

    /// The text of something put aside.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn aside_text(&self, key: &str) -> Result<Option<String>, StorageError> {
        self.shelf.get(key)
    }

    /// Forgets something that was put aside, for good; what is no aside stays.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn forget_aside(&self, key: &str) -> Result<(), StorageError> {
        if !key.starts_with(PREFIX) {
            return Ok(());
        }
        self.shelf.remove(key)
    }

    /// Keeps a text under a key of its own, and lets go of the oldest replaced household when
    /// there are too many. Answers with the key.
    pub(super) fn put_aside(
        &self,
        text: &str,
        why: AsideWhy,
        now: LocalTime,
    ) -> Result<String, StorageError> {
        let taken = self.shelf.keys()?;
        let mut at_s = now.0;
        let key = loop {
            let key = format!("{PREFIX}{at_s}.{}", why.name());
            if !taken.contains(&key) {
                break key;
            }
            at_s += 1;
        };
        self.shelf.set(&key, text)?;
        let replaced = self
            .asides()?
            .into_iter()
            .filter(|aside| aside.why == AsideWhy::Replaced);
        for old in replaced.skip(MOST_REPLACED) {
            self.shelf.remove(&old.key)?;
        }
        Ok(key)
    }
}

fn aside_from_key(key: String) -> Option<Aside> {
    let (at_s, why) = key.strip_prefix(PREFIX)?.split_once('.')?;
    let why = match why {
        "damaged" => AsideWhy::Damaged,
        "replaced" => AsideWhy::Replaced,
        _ => return None,
    };
    let at = LocalTime(at_s.parse().ok()?);
    Some(Aside { key, why, at })
}
