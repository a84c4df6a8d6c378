//! What can be shown.

use super::View;
use crate::reactive::work::Make;
use crate::reactive::{Memo, Signal};

/// Something that can be shown.
pub trait IntoView {
    /// As a view.
    fn into_view(self) -> View;
}

impl IntoView for View {
    #[inline(always)]
    fn into_view(self) -> View {
        self
    }
}

impl IntoView for &'static str {
    #[inline(always)]
    fn into_view(self) -> View {
        View::fixed_text(self)
    }
}

impl IntoView for String {
    #[inline(always)]
    fn into_view(self) -> View {
        View::text(self)
    }
}

impl<V: IntoView> IntoView for Option<V> {
    fn into_view(self) -> View {
        self.map_or_else(View::nothing, V::into_view)
    }
}

impl<V: IntoView, const N: usize> IntoView for [V; N] {
    fn into_view(self) -> View {
        self.into_iter().collect_view()
    }
}

impl<F, V> IntoView for F
where
    F: FnMut() -> V + 'static,
    V: IntoView,
{
    fn into_view(self) -> View {
        View::followed(Box::new(Shows(self)))
    }
}

impl<T: IntoView + Clone + Send + Sync + 'static> IntoView for Signal<T> {
    fn into_view(self) -> View {
        View::followed(Box::new(ShowsSignal(self)))
    }
}

impl<T: IntoView + Clone + Send + Sync + 'static> IntoView for Memo<T> {
    fn into_view(self) -> View {
        Signal::<T>::from(self).into_view()
    }
}

/// Makes what a closure says.
struct Shows<F>(F);

impl<F, V> Make<View> for Shows<F>
where
    F: FnMut() -> V,
    V: IntoView,
{
    fn make(&mut self) -> View {
        self.0().into_view()
    }
}

/// Makes what a signal holds.
struct ShowsSignal<T>(Signal<T>);

impl<T: IntoView + Clone + Send + Sync + 'static> Make<View> for ShowsSignal<T> {
    fn make(&mut self) -> View {
        self.0.get().into_view()
    }
}

/// Shows things one after the other.
pub trait CollectView {
    /// As one view.
    fn collect_view(self) -> View;
}

impl<I> CollectView for I
where
    I: IntoIterator,
    I::Item: IntoView,
{
    fn collect_view(self) -> View {
        self.into_iter()
            .fold(View::several(), |views, view| views.child(view))
    }
}
