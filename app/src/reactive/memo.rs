//! Values that are worked out from others.

use std::marker::PhantomData;

use leptos::prelude as leptos;
use leptos::{Get, GetUntracked, Track};

use super::held::Held;

/// A value that is worked out from others, and told on only when it has changed.
pub struct Memo<T> {
    pub(super) inner: leptos::Memo<Held>,
    of: PhantomData<fn() -> T>,
}

impl<T> Clone for Memo<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Memo<T> {}

/// Works a value out from the one before.
trait Next: Send + Sync {
    fn next(&self, before: Option<&Held>) -> Held;
}

struct Compared<T, F> {
    work: F,
    of: PhantomData<fn() -> T>,
}

impl<T, F> Next for Compared<T, F>
where
    T: PartialEq + Send + Sync + 'static,
    F: Fn(Option<&T>) -> T + Send + Sync,
{
    fn next(&self, before: Option<&Held>) -> Held {
        Held::compared((self.work)(before.map(Held::open)))
    }
}

struct EachTime<F>(F);

impl<T, F> Next for EachTime<F>
where
    T: Send + Sync + 'static,
    F: Fn() -> T + Send + Sync,
{
    fn next(&self, _: Option<&Held>) -> Held {
        Held::unique(self.0())
    }
}

#[inline(never)]
fn followed(work: Box<dyn Next>) -> leptos::Memo<Held> {
    leptos::Memo::new(move |before| work.next(before))
}

impl<T: Send + Sync + 'static> Memo<T> {
    /// Worked out by `work`, which is given what came out the last time.
    pub fn new(work: impl Fn(Option<&T>) -> T + Send + Sync + 'static) -> Self
    where
        T: PartialEq,
    {
        Self::of(Box::new(Compared {
            work,
            of: PhantomData,
        }))
    }

    /// As [`Memo::new`], for values that can't be compared: it is told on each time.
    pub fn new_each_time(work: impl Fn() -> T + Send + Sync + 'static) -> Self {
        Self::of(Box::new(EachTime(work)))
    }

    fn of(work: Box<dyn Next>) -> Self {
        Self {
            inner: followed(work),
            of: PhantomData,
        }
    }

    /// A copy of the value, followed.
    pub fn get(&self) -> T
    where
        T: Clone,
    {
        self.inner.get().open::<T>().clone()
    }

    /// A copy of the value as it is now.
    pub fn get_untracked(&self) -> T
    where
        T: Clone,
    {
        self.inner.get_untracked().open::<T>().clone()
    }

    /// A copy of the value as it is now; none when the screen that held it is gone.
    pub fn try_get_untracked(&self) -> Option<T>
    where
        T: Clone,
    {
        let held = self.inner.try_get_untracked()?;
        Some(held.open::<T>().clone())
    }

    /// Looks at the value, followed.
    pub fn with<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        look(self.inner.get().open())
    }

    /// Looks at the value as it is now.
    pub fn with_untracked<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        look(self.inner.get_untracked().open())
    }

    /// Follows the value without looking at it.
    pub fn track(&self) {
        self.inner.track();
    }
}
