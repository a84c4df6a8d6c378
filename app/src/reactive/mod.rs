//! The framework's signals, in a form that is small to download.
//!
//! Each kind of value that the framework's own signals hold gets its own copy of all the machinery
//! under them. Here every value travels in one envelope, so that there is one copy for all.
//! `use crate::reactive::*` stands where other apps import the framework's prelude.

mod callback;
mod held;
mod memo;
mod rw_signal;
mod signal;
mod stored_value;

pub use leptos::prelude::*;

pub use callback::Callback;
pub use memo::Memo;
pub use rw_signal::RwSignal;
pub use signal::Signal;
pub use stored_value::StoredValue;

/// Runs `work` now, and again whenever something it reads changes.
pub fn effect(work: impl FnMut() + 'static) {
    let work: Box<dyn FnMut()> = Box::new(work);
    Effect::new(work);
}
