//! Values that are set.

use std::marker::PhantomData;

use leptos::prelude as leptos;
use leptos::{Get, GetUntracked, Set, Track};

use super::held::Held;

/// A value that is set, and followed by what reads it.
pub struct RwSignal<T> {
    pub(super) inner: leptos::RwSignal<Held>,
    of: PhantomData<fn(T) -> T>,
}

impl<T> Clone for RwSignal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for RwSignal<T> {}

impl<T: Send + Sync + 'static> RwSignal<T> {
    /// Begins with this value.
    pub fn new(value: T) -> Self {
        Self {
            inner: leptos::RwSignal::new(Held::unique(value)),
            of: PhantomData,
        }
    }

    /// Puts another value in.
    pub fn set(&self, value: T) {
        self.inner.set(Held::unique(value));
    }

    /// Puts another value in, where the screen that held the signal is still there.
    pub fn try_set(&self, value: T) {
        // What is set on a screen that is gone has nobody to see it.
        let _ = self.inner.try_set(Held::unique(value));
    }

    /// Changes the value; none when the screen that held the signal is gone.
    pub fn try_update(&self, change: impl FnOnce(&mut T)) -> Option<()>
    where
        T: Clone,
    {
        let mut value = self.inner.try_get_untracked()?.open::<T>().clone();
        change(&mut value);
        self.try_set(value);
        Some(())
    }

    /// Changes the value.
    pub fn update(&self, change: impl FnOnce(&mut T))
    where
        T: Clone,
    {
        let mut value = self.get_untracked();
        change(&mut value);
        self.set(value);
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
