//! What is there only now and then.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

use super::{ChildrenFn, IntoView, Memo, View, component};

/// Whether it is there.
pub struct When(Box<dyn Fn() -> bool + Send + Sync>);

impl<F: Fn() -> bool + Send + Sync + 'static> From<F> for When {
    fn from(is_there: F) -> Self {
        Self(Box::new(is_there))
    }
}

/// What is there instead.
pub struct Fallback(Box<dyn Fn() -> View>);

impl<F: Fn() -> View + 'static> From<F> for Fallback {
    fn from(make: F) -> Self {
        Self(Box::new(make))
    }
}

impl Default for Fallback {
    fn default() -> Self {
        Self(Box::new(View::nothing))
    }
}

/// Shows its children while `when` says so, and else the fallback; made anew each time.
#[component]
pub fn Show(
    /// Followed.
    #[prop(into)]
    when: When,
    /// What is there else.
    #[prop(optional, into)]
    fallback: Fallback,
    /// What is there then.
    children: ChildrenFn,
) -> impl IntoView {
    let is_there = Memo::new(move |_| when.0());
    move || {
        if is_there.get() {
            children()
        } else {
            fallback.0()
        }
    }
}
