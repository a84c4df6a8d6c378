//! Values that are only read, wherever they come from.

use std::marker::PhantomData;
use std::sync::Arc;

use leptos::prelude as leptos;
use leptos::{Get, GetUntracked, GetValue};

use super::held::Held;
use super::{Memo, RwSignal};

/// A value to read and follow, wherever it comes from.
pub struct Signal<T> {
    source: Source,
    of: PhantomData<fn() -> T>,
}

/// Works a value out at each reading.
trait Derive: Send + Sync {
    fn derive(&self) -> Held;
}

struct Derived<F>(F);

impl<T, F> Derive for Derived<F>
where
    T: Send + Sync + 'static,
    F: Fn() -> T + Send + Sync,
{
    fn derive(&self) -> Held {
        Held::unique(self.0())
    }
}

#[derive(Clone, Copy)]
enum Source {
    Fixed(leptos::StoredValue<Held>),
    WorkedOut(leptos::Memo<Held>),
    Set(leptos::RwSignal<Held>),
    Derived(leptos::StoredValue<Arc<dyn Derive>>),
}

impl Source {
    fn held(self) -> Held {
        match self {
            Self::Fixed(value) => value.get_value(),
            Self::WorkedOut(memo) => memo.get(),
            Self::Set(signal) => signal.get(),
            Self::Derived(work) => work.get_value().derive(),
        }
    }

    fn held_untracked(self) -> Held {
        match self {
            Self::WorkedOut(memo) => memo.get_untracked(),
            Self::Set(signal) => signal.get_untracked(),
            Self::Fixed(_) | Self::Derived(_) => leptos::untrack(|| self.held()),
        }
    }

    fn derived(work: Arc<dyn Derive>) -> Self {
        Self::Derived(leptos::StoredValue::new(work))
    }

    fn fixed(value: Held) -> Self {
        Self::Fixed(leptos::StoredValue::new(value))
    }
}

impl<T> Signal<T> {
    const fn of(source: Source) -> Self {
        Self {
            source,
            of: PhantomData,
        }
    }
}

impl<T> Clone for Signal<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Signal<T> {}

impl<T: Send + Sync + 'static> Signal<T> {
    /// Worked out at each reading.
    pub fn derive(work: impl Fn() -> T + Send + Sync + 'static) -> Self {
        Self::of(Source::derived(Arc::new(Derived(work))))
    }

    /// A copy of the value, followed.
    pub fn get(&self) -> T
    where
        T: Clone,
    {
        self.source.held().open::<T>().clone()
    }

    /// A copy of the value as it is now.
    pub fn get_untracked(&self) -> T
    where
        T: Clone,
    {
        self.source.held_untracked().open::<T>().clone()
    }

    /// Looks at the value, followed.
    pub fn with<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        look(self.source.held().open())
    }

    /// Looks at the value as it is now.
    pub fn with_untracked<R>(&self, look: impl FnOnce(&T) -> R) -> R {
        look(self.source.held_untracked().open())
    }
}

impl<T: Send + Sync + 'static> From<T> for Signal<T> {
    fn from(value: T) -> Self {
        Self::of(Source::fixed(Held::unique(value)))
    }
}

impl From<&str> for Signal<String> {
    fn from(value: &str) -> Self {
        value.to_owned().into()
    }
}

impl<T> From<Memo<T>> for Signal<T> {
    fn from(memo: Memo<T>) -> Self {
        Self::of(Source::WorkedOut(memo.inner))
    }
}

impl<T> From<RwSignal<T>> for Signal<T> {
    fn from(signal: RwSignal<T>) -> Self {
        Self::of(Source::Set(signal.inner))
    }
}

impl<T: Default + Send + Sync + 'static> Default for Signal<T> {
    fn default() -> Self {
        T::default().into()
    }
}
