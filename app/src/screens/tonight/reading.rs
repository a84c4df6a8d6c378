//! A thermometer reading, logged on the spot.

use crate::reactive::*;
use model::journal::What;

use super::scene::say;
use crate::components::{Button, Fold, Icon, NumberField, NumberFieldText};
use crate::i18n::refusal::{parse_refusal, refusal};
use crate::shell::toasts::ToastAbout;
use crate::shell::use_shell;
use crate::state::action::{Action, Done};
use crate::state::parse;

/// A field for a reading, folded away until it is wanted.
#[component]
pub(super) fn LogReading() -> impl IntoView {
    let shell = use_shell();
    let strings = untrack(|| shell.words.strings());
    let words = &strings.tonight.store;
    let degrees = shell
        .words
        .formats()
        .with_untracked(|formats| formats.degrees);
    let text = RwSignal::new(String::new());
    let error = RwSignal::new(None::<String>);
    let estimate = move || {
        let store = shell.estimates.store_now().get_untracked()?.ok()?;
        Some(degrees.from_c(store.store_c))
    };
    let on_step = move |way: i32| {
        const STEP: f64 = 5.0;
        let from = parse::number(&text.get_untracked()).ok().or_else(estimate);
        let next = ((from.unwrap_or(100.0) / STEP).round() + f64::from(way)) * STEP;
        let formats = shell.words.formats();
        text.set(formats.with_untracked(|formats| formats.field(next, 0)));
        error.set(None);
    };
    let keep = move |()| {
        let typed = match parse::number(&text.get_untracked()) {
            Ok(typed) => typed,
            Err(wrong) => {
                let strings = untrack(|| shell.words.strings());
                error.set(Some(parse_refusal(strings, wrong).to_owned()));
                return;
            }
        };
        let what = What::Reading {
            store_c: degrees.to_c(typed),
        };
        // To the minute, like the evening that it is to change.
        let at = shell.clock.now().get_untracked();
        match shell.dispatch.run(Action::AddEntry { at, what }) {
            Ok(done) => {
                text.set(String::new());
                error.set(None);
                let undo = match done {
                    Done::AddedEntry(id) => Some(Action::EraseEntry(id)),
                    _ => None,
                };
                shell.toasts.show(ToastAbout::Noted, undo);
            }
            Err(wrong) => error.set(Some(untrack(|| {
                say(shell, |voice| {
                    refusal(voice.strings, voice.formats, wrong, voice.now.day())
                })
            }))),
        }
    };
    view! {
        <Fold summary=shell.words.text(|strings| strings.tonight.store.log_reading) test="log-reading">
            <NumberField
                text=NumberFieldText {
                    label: words.reading.to_owned(),
                    unit: (strings.common.units.degrees)("", degrees).trim().to_owned(),
                    less: words.lower.to_owned(),
                    more: words.higher.to_owned(),
                    hint: words.reading_hint.to_owned(),
                }
                value=text
                on_input=Callback::new(move |typed: String| {
                    text.set(typed);
                    error.set(None);
                })
                on_step=Callback::new(on_step)
                error
                test="reading"
            />
            <Button
                label=shell.words.text(|strings| strings.common.buttons.save)
                on_press=Callback::new(keep)
                icon=Icon::Thermometer
                test="reading-save"
            />
        </Fold>
    }
}
