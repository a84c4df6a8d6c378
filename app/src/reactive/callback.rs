//! What a component calls when a person does something.

use std::marker::PhantomData;
use std::sync::Arc;

use leptos::GetValue;
use leptos::prelude as leptos;

use super::held::{Envelope, open};
use super::work::Job;

type Work<I, O> = Box<dyn Job<I, O> + Send + Sync>;

/// What a component calls when a person does something. Copies stand for the same.
pub struct Callback<I, O = ()> {
    work: leptos::StoredValue<Envelope>,
    of: PhantomData<fn(I) -> O>,
}

impl<I, O> Clone for Callback<I, O> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<I, O> Copy for Callback<I, O> {}

impl<I: 'static, O: 'static> Callback<I, O> {
    /// Does this when it is called.
    pub fn new(work: impl Fn(I) -> O + Send + Sync + 'static) -> Self {
        let work: Work<I, O> = Box::new(work);
        Self {
            work: leptos::StoredValue::new(Arc::new(work)),
            of: PhantomData,
        }
    }

    /// Calls it.
    pub fn run(&self, input: I) -> O {
        open::<Work<I, O>>(&self.work.get_value()).run(input)
    }
}

impl<I: 'static, O: 'static, F> From<F> for Callback<I, O>
where
    F: Fn(I) -> O + Send + Sync + 'static,
{
    fn from(work: F) -> Self {
        Self::new(work)
    }
}
