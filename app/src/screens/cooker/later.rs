//! What takes long to work out about a cooker.

use crate::reactive::*;
use model::cooker::Cooker;
use model::local_time::Day;
use model::tonight::Site;

use crate::screens::later;

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
    later::bit_by_bit(
        move || {
            let is_there = subject.with(Option::is_some);
            if !is_wanted.get() {
                return false;
            }
            begin();
            is_there
        },
        move |n| subject.with_untracked(|subject| subject.as_ref().is_some_and(|of| bit(of, n))),
    );
}
