//! Values that are kept and not followed.

use std::any::Any;
use std::marker::PhantomData;

use leptos::prelude as leptos;
use leptos::{UpdateValue, WithValue};

use super::held::other_kind;

type Kept = Box<dyn Any + Send + Sync>;

/// A value that is kept as long as the screen that made it, and that nobody follows.
pub struct StoredValue<T> {
    inner: leptos::StoredValue<Kept>,
    of: PhantomData<fn(T) -> T>,
}

impl<T> Clone for StoredValue<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for StoredValue<T> {}

impl<T: Send + Sync + 'static> StoredValue<T> {
    /// Begins with this value.
    pub fn new(value: T) -> Self {
        let kept: Kept = Box::new(value);
        Self {
            inner: leptos::StoredValue::new(kept),
            of: PhantomData,
        }
    }

    /// Looks at the value.
    pub fn with_value<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        match self.try_with_value(look) {
            Some(seen) => seen,
            None => other_kind(),
        }
    }

    /// Looks at the value; none when the screen that kept it is gone.
    pub fn try_with_value<R>(&self, look: impl FnOnce(&T) -> R) -> Option<R> {
        let mut look = Some(look);
        let mut seen = None;
        self.look(&mut |kept| {
            seen = look.take().and_then(|look| kept.downcast_ref().map(look));
        });
        seen
    }

    /// A copy of the value.
    pub fn get_value(&self) -> T
    where
        T: Clone,
    {
        self.with_value(T::clone)
    }

    /// A copy of the value; none when the screen that kept it is gone.
    pub fn try_get_value(&self) -> Option<T>
    where
        T: Clone,
    {
        self.try_with_value(T::clone)
    }

    /// Changes the value; none when the screen that kept it is gone.
    pub fn try_update_value<R>(&self, change: impl FnOnce(&mut T) -> R) -> Option<R> {
        let mut change = Some(change);
        let mut changed = None;
        self.touch(&mut |kept| {
            changed = change
                .take()
                .and_then(|change| kept.downcast_mut().map(change));
        });
        changed
    }

    /// Changes the value.
    pub fn update_value(&self, change: impl FnOnce(&mut T)) {
        if self.try_update_value(change).is_none() {
            other_kind();
        }
    }

    /// Puts another value in its place, where the screen that kept it is still there.
    pub fn set_value(&self, value: T) {
        // What is kept for a screen that is gone has nobody to read it.
        let _ = self.try_update_value(|kept| *kept = value);
    }

    fn look(&self, look: &mut dyn FnMut(&Kept)) {
        let _ = self.inner.try_with_value(look);
    }

    fn touch(&self, touch: &mut dyn FnMut(&mut Kept)) {
        let _ = self.inner.try_update_value(touch);
    }
}
