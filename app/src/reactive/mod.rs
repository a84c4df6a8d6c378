//! The framework's signals, in a form that is small to download.
//!
//! Each kind of value that the framework's own signals hold gets its own copy of all the machinery
//! under them. Here every value travels in one envelope, so that there is one copy for all.
//! `use crate::reactive::*` stands where other apps import the framework's prelude.

mod callback;
mod held;
mod memo;
mod rw_signal;
mod show;
mod signal;
mod stored_value;
mod view;
mod work;

pub use leptos::prelude::*;

use work::Make;

pub use callback::Callback;
pub use memo::Memo;
pub use rw_signal::RwSignal;
pub use show::{Fallback, Show, When};
pub use signal::Signal;
pub use stored_value::StoredValue;
pub use view::{
    Attr, AttrValue, ChildrenFn, CollectView, IntoAttr, IntoView, ToChildren, Value, View, mount,
};

pub use markup::view;

/// Runs `work` once what is at hand is done, and again whenever something it reads changes.
pub fn effect(work: impl FnMut() + 'static) {
    run(Box::new(Again(work)));
}

struct Again<F>(F);

impl<F: FnMut()> Make<()> for Again<F> {
    fn make(&mut self) {
        self.0();
    }
}

#[inline(never)]
fn run(mut work: Box<dyn Make<()>>) {
    Effect::new(move || work.make());
}
