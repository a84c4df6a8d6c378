//! The envelope.

use std::any::Any;
use std::sync::Arc;

/// A value of any kind that several may hold.
pub(super) type Envelope = Arc<dyn Any + Send + Sync>;

/// A value that can be told from another of its kind.
#[derive(Clone)]
pub(super) struct Held {
    value: Envelope,
    same: fn(&Envelope, &Envelope) -> bool,
}

impl Held {
    /// A value that is compared by what it is.
    pub(super) fn compared<T: PartialEq + Send + Sync + 'static>(value: T) -> Self {
        Self {
            value: Arc::new(value),
            same: |a, b| a.downcast_ref::<T>() == b.downcast_ref::<T>(),
        }
    }

    /// A value that equals itself only.
    pub(super) fn unique<T: Send + Sync + 'static>(value: T) -> Self {
        Self {
            value: Arc::new(value),
            same: |_, _| false,
        }
    }

    pub(super) fn open<T: 'static>(&self) -> &T {
        open(&self.value)
    }
}

impl PartialEq for Held {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.value, &other.value) || (self.same)(&self.value, &other.value)
    }
}

/// What is in an envelope.
pub(super) fn open<T: 'static>(envelope: &Envelope) -> &T {
    match envelope.downcast_ref() {
        Some(value) => value,
        None => other_kind(),
    }
}

/// Each envelope is opened by the type that closed it.
#[cold]
#[inline(never)]
#[expect(clippy::panic, reason = "the types above rule it out")]
pub(super) fn other_kind() -> ! {
    panic!("a signal holds a value of another kind")
}
