//! What limits a build and what the heater takes: worked out when asked for.

use crate::reactive::*;
use model::panel::Drive;
use model::sun::Sky;
use model::tonight::{Better, Trial, day_take, year_take};

use super::later::{Subject, bit_by_bit};
use crate::components::{FactList, Fold};
use crate::present::cooker::facts::{Take, take_facts};
use crate::present::cooker::limits::{LimitsView, Litres, limits};
use crate::shell::use_shell;

/// What limits this build.
#[component]
pub(super) fn Limiting(subject: Memo<Option<Subject>>) -> impl IntoView {
    let words = use_shell().words;
    let is_open = RwSignal::new(false);
    let litres = RwSignal::new(Litres::default());
    let trial = StoredValue::new(None::<Trial>);
    let begin = move || {
        trial.set_value(None);
        litres.set(Litres::default());
    };
    // The first bit puts the build together, each other tries one change of it.
    bit_by_bit(subject, is_open, begin, move |subject, n| {
        let Some(change) = n.checked_sub(1) else {
            let built = Trial::new(&subject.site, &subject.cooker, subject.day).ok();
            let is_built = built.is_some();
            return trial.try_update_value(|trial| *trial = built).is_some() && is_built;
        };
        let Some(better) = Better::ALL.get(change).copied() else {
            return false;
        };
        // What can't be worked out boils nothing.
        let worked_out = trial.try_with_value(|trial| {
            let tried = trial.as_ref().map(|trial| trial.litres(better));
            tried.and_then(Result::ok).unwrap_or(0.0)
        });
        let Some(worked_out) = worked_out else {
            return false;
        };
        litres.try_update(|litres| {
            if let Some(place) = litres.get_mut(change) {
                *place = Some(worked_out);
            }
        });
        change + 1 < Better::ALL.len()
    });
    let view = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        let pot = subject.with(|subject| subject.as_ref().map(|subject| subject.cooker.pot))?;
        Some(limits(strings, &formats, &litres.get(), pot))
    });
    let sentence = move || view.with(|view| view.as_ref().map(sentence_of));
    let facts = Signal::derive(move || {
        view.with(|view| view.as_ref().map(|view| view.facts.clone()))
            .unwrap_or_default()
    });
    view! {
        <Fold
            summary=words.text(|strings| strings.cooker.limits.heading)
            on_toggle=Callback::new(move |open| is_open.set(open))
            test="cooker-limits"
        >
            <p class="lead" aria-live="polite" data-test="cooker-limit">
                {sentence}
            </p>
            <FactList facts />
            <p class="aside">{move || words.strings().cooker.limits.how}</p>
        </Fold>
    }
}

fn sentence_of(view: &LimitsView) -> String {
    view.sentence.clone()
}

/// What the heater takes of the sun.
#[component]
pub(super) fn Taking(subject: Memo<Option<Subject>>) -> impl IntoView {
    let words = use_shell().words;
    let is_open = RwSignal::new(false);
    let take = RwSignal::new(Take::default());
    bit_by_bit(
        subject,
        is_open,
        move || take.set(Take::default()),
        move |Subject { site, cooker, day }, n| {
            let of_day = |sky| day_take(site, cooker, *day, sky).ok().flatten();
            // What can't be worked out is told as a day without light.
            let more = match n {
                0 => {
                    let clear = of_day(Sky::Clear);
                    take.try_update(|take| take.clear = Some(clear))
                }
                1 => {
                    let ordinary = of_day(Sky::Patchy);
                    take.try_update(|take| take.ordinary = Some(ordinary))
                }
                _ => {
                    let year = year_take(site, cooker).ok().flatten();
                    take.try_update(|take| take.year = Some(year))
                }
            };
            more.is_some() && n < 2
        },
    );
    let facts = Signal::derive(move || {
        let (strings, formats) = (words.strings(), words.formats().get());
        let has_tracker = subject.with(|subject| {
            let drive = subject.as_ref().map(|subject| subject.cooker.heater.drive);
            matches!(drive, Some(Drive::Tracker { .. }))
        });
        take_facts(strings, &formats, &take.get(), has_tracker)
    });
    view! {
        <Fold
            summary=words.text(|strings| strings.cooker.follows.take_heading)
            on_toggle=Callback::new(move |open| is_open.set(open))
            test="cooker-take"
        >
            <FactList facts test="cooker-take-facts" />
        </Fold>
    }
}
