//! What takes long to work out, bit by bit, so that the screen answers in between.

use std::sync::Arc;
use std::time::Duration;

use crate::reactive::*;
use leptos::leptos_dom::helpers::TimeoutHandle;
use model::cooker::Cooker;
use model::local_time::Day;
use model::tonight::Site;

/// A change is let settle for this long before anything long is begun.
const SETTLE: Duration = Duration::from_millis(350);
/// Between two bits: enough for a tap to be answered.
const PAUSE: Duration = Duration::from_millis(16);

/// What the long figures hang on.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Subject {
    /// Where.
    pub(super) site: Site,
    /// What is asked about.
    pub(super) cooker: Cooker,
    /// The time of the year.
    pub(super) day: Day,
}

/// Works through the bits of a figure, one after another, while it is wanted. Anew when the
/// subject changes: `begin` forgets what there was. `bit` is told its number, from 0, and says
/// whether there is another.
pub(super) fn bit_by_bit(
    subject: Memo<Option<Subject>>,
    is_wanted: RwSignal<bool>,
    begin: impl Fn() + 'static,
    bit: impl Fn(&Subject, usize) -> bool + Send + Sync + 'static,
) {
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let bit: Bit = Arc::new(bit);
    effect(move || {
        let subject = subject.get();
        cancel(waiting);
        if !is_wanted.get() {
            return;
        }
        begin();
        if let Some(subject) = subject {
            wait(Arc::new(subject), 0, Arc::clone(&bit), waiting);
        }
    });
    on_cleanup(move || cancel(waiting));
}

type Bit = Arc<dyn Fn(&Subject, usize) -> bool + Send + Sync>;

fn wait(subject: Arc<Subject>, n: usize, bit: Bit, waiting: StoredValue<Option<TimeoutHandle>>) {
    let delay = if n == 0 { SETTLE } else { PAUSE };
    let work = move || {
        if bit(&subject, n) {
            wait(subject, n + 1, bit, waiting);
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
