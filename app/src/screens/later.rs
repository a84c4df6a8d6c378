//! What takes long to work out, bit by bit, so that the screen answers in between.

use std::sync::Arc;
use std::time::Duration;

use crate::reactive::*;
use leptos::leptos_dom::helpers::{TimeoutHandle, request_animation_frame};

/// A change is let settle for this long before anything long is begun.
const SETTLE: Duration = Duration::from_millis(350);
/// Between two bits: enough for a tap to be answered.
const PAUSE: Duration = Duration::from_millis(16);

/// Works once what has changed so far is painted, and a tap that came meanwhile is answered: what is
/// long to draw keeps nobody from reading.
pub(super) fn after_paint(work: impl FnOnce() + 'static) {
    request_animation_frame(move || set_timeout(work, PAUSE));
}

/// A value that follows once what else has changed is painted.
pub(super) fn painted<T>(value: Memo<T>) -> Signal<T>
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let shown = RwSignal::new(value.get_untracked());
    let waits = StoredValue::new(false);
    let follow = move || {
        // The person may have left the page meanwhile.
        if waits.try_update_value(|waits| *waits = false).is_some() {
            shown.set(value.get_untracked());
        }
    };
    effect(move || {
        let is_new = value.with(|value| shown.with_untracked(|shown| shown != value));
        if is_new && !waits.get_value() {
            waits.set_value(true);
            after_paint(follow);
        }
    });
    shown.into()
}

/// A value that is long to work out: it follows when nothing that `hangs_on` reads has changed for a
/// while.
pub(super) fn settled<T>(hangs_on: impl Fn() + 'static, value: Memo<T>) -> Signal<T>
where
    T: Clone + Send + Sync + 'static,
{
    let shown = RwSignal::new(value.get_untracked());
    let is_first = StoredValue::new(true);
    let begin = move || {
        hangs_on();
        !is_first
            .try_update_value(|first| std::mem::replace(first, false))
            .unwrap_or(true)
    };
    bit_by_bit(begin, move |_| {
        if let Some(value) = value.try_get_untracked() {
            shown.try_update(|shown| *shown = value);
        }
        false
    });
    shown.into()
}

/// A bit, by its number; whether there is another.
type Bit = Arc<dyn Fn(usize) -> bool + Send + Sync>;

/// Works through the bits of a figure, one after another. Anew whenever something changes that
/// `begin` reads; it says whether there is anything to work out.
pub(super) fn bit_by_bit(
    begin: impl Fn() -> bool + 'static,
    bit: impl Fn(usize) -> bool + Send + Sync + 'static,
) {
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let bit: Bit = Arc::new(bit);
    effect(move || {
        cancel(waiting);
        if begin() {
            wait(0, Arc::clone(&bit), waiting);
        }
    });
    on_cleanup(move || cancel(waiting));
}

fn wait(n: usize, bit: Bit, waiting: StoredValue<Option<TimeoutHandle>>) {
    let delay = if n == 0 { SETTLE } else { PAUSE };
    let work = move || {
        if bit(n) {
            wait(n + 1, bit, waiting);
        }
    };
    let handle = set_timeout_with_handle(work, delay).ok();
    // The person may have left the page meanwhile.
    waiting.try_update_value(|waiting| *waiting = handle);
}

fn cancel(waiting: StoredValue<Option<TimeoutHandle>>) {
    if let Some(Some(handle)) = waiting.try_update_value(Option::take) {
        handle.clear();
    }
}
