//! Closures of any kind, boxed.
//!
//! `Box<dyn Fn()>` carries for each closure three ways to call it, since it must also pass for an
//! `FnMut` and an `FnOnce`. These traits have one each, which is all that is asked of them here.

/// Something to do, as often as it is asked.
pub(super) trait Job<I, O> {
    /// Does it.
    fn run(&self, input: I) -> O;
}

impl<I, O, F: Fn(I) -> O> Job<I, O> for F {
    fn run(&self, input: I) -> O {
        self(input)
    }
}

/// Something that makes a value, from what it kept from the last time.
pub(super) trait Make<T> {
    /// Makes the next.
    fn make(&mut self) -> T;
}
