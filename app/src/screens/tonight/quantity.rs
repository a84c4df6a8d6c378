//! A number of the plan: typed or stepped, applied as soon as it can be.

use crate::reactive::*;

use super::scene::say;
use crate::components::{NumberField, NumberFieldText};
use crate::i18n::refusal::{parse_refusal, refusal};
use crate::shell::use_shell;
use crate::state::parse;
use crate::state::refused::{Field, Refused};

/// What a number is and how it counts, in the unit it is shown in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Quantity {
    /// The field, for what is said when it is refused.
    pub(super) field: Field,
    /// Decimals that are shown at most.
    pub(super) decimals: usize,
    /// From one step to the next.
    pub(super) step: f64,
    /// The least and the most, as shown.
    pub(super) range: (f64, f64),
    /// Only whole numbers.
    pub(super) whole: bool,
}

/// What was typed last, and the number that stood in the plan after it.
#[derive(Debug, Clone, PartialEq)]
struct Typed {
    text: String,
    stood: Option<f64>,
    wrong: Option<String>,
}

/// A number field on a number of the plan.
///
/// The text stays as it was typed for as long as the plan holds what it meant. What can't be taken
/// is not applied, and said beside the field.
#[component]
pub(super) fn QuantityField(
    text: NumberFieldText,
    quantity: Quantity,
    /// The number that stands, as shown; none where none was given.
    #[prop(into)]
    current: Signal<Option<f64>>,
    /// Takes a number within the range, as shown.
    #[prop(into)]
    apply: Callback<f64, Result<(), Refused>>,
    test: &'static str,
) -> impl IntoView {
    let shell = use_shell();
    let typed = RwSignal::new(None::<Typed>);
    let shown = move |value: Option<f64>| {
        let formats = shell.words.formats();
        value.map_or_else(String::new, |value| {
            formats.with(|formats| formats.field(value, quantity.decimals))
        })
    };
    let kept = move || typed.get().filter(|typed| same(typed.stood, current.get()));
    let value = Signal::derive(move || match kept() {
        Some(typed) => typed.text,
        None => shown(current.get()),
    });
    let error = Signal::derive(move || kept().and_then(|typed| typed.wrong));
    let take = move |value: f64| {
        apply.run(value).map_err(|refused| {
            untrack(|| {
                say(shell, |voice| {
                    refusal(voice.strings, voice.formats, refused, voice.now.day())
                })
            })
        })
    };
    let read = move |text: &str| {
        let number = if quantity.whole {
            parse::whole(text).map(f64::from)
        } else {
            parse::number(text)
        };
        number.map_err(|error| {
            let strings = untrack(|| shell.words.strings());
            parse_refusal(strings, error).to_owned()
        })
    };
    let on_input = move |text: String| {
        let wrong = read(&text).and_then(take).err();
        typed.set(Some(Typed {
            text,
            stood: current.get_untracked(),
            wrong,
        }));
    };
    let on_step = move |way: i32| {
        let (least, most) = quantity.range;
        let from = current.get_untracked().unwrap_or(least);
        let next = stepped(from, f64::from(way), quantity.step).clamp(least, most);
        let wrong = take(next).err();
        typed.set(wrong.map(|wrong| Typed {
            text: untrack(|| shown(Some(next))),
            stood: current.get_untracked(),
            wrong: Some(wrong),
        }));
    };
    view! {
        <NumberField
            text
            value
            on_input=Callback::new(on_input)
            on_step=Callback::new(on_step)
            error
            test
        />
    }
}

/// The next whole step above or below.
fn stepped(from: f64, way: f64, step: f64) -> f64 {
    let steps = from / step;
    let next = if 0.0 < way {
        (steps + 1e-6).floor() + 1.0
    } else {
        (steps - 1e-6).ceil() - 1.0
    };
    next * step
}

fn same(a: Option<f64>, b: Option<f64>) -> bool {
    match (a, b) {
        (Some(a), Some(b)) => (a - b).abs() < 1e-9,
        (None, None) => true,
        (Some(_), None) | (None, Some(_)) => false,
    }
}

#[cfg(test)]
mod tests {
    use super::stepped;

    #[test]
    fn steps_lead_to_whole_steps() {
        for (from, way, step, expected) in [
            (4.0, 1.0, 1.0, 5.0),
            (4.0, -1.0, 1.0, 3.0),
            (0.32, 1.0, 0.05, 0.35),
            (0.32, -1.0, 0.05, 0.30),
            (0.35, 1.0, 0.05, 0.40),
            (17.3, 1.0, 5.0, 20.0),
        ] {
            let next = stepped(from, way, step);
            assert!((next - expected).abs() < 1e-9, "{from} {way}: {next}");
        }
    }
}
