//! A form whose fields are applied as soon as what they say can be.
//!
//! The text stays as it was typed. What can't be taken is not applied, and said beside the field;
//! it is tried again after every other change, since two fields may only be right together.
//!
//! A number passes through others while it is typed: 900 through 9 and 90. What could be taken on
//! the way is taken back when the whole can't.

use crate::reactive::*;
use model::tonight::Site;

use super::field::{Field, Subject};
use crate::components::{
    Button, Choice, ChoiceOption, DateField, Icon, NumberField, NumberFieldText, Select,
    SelectOption, Toggle,
};
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::cooker::fault::{Fault, words as fault_words};
use crate::present::cooker::parts;
use crate::shell::Shell;
use crate::shell::store::Store;

/// A text of the language.
pub(super) type Text = fn(&Strings) -> &'static str;

/// Where the household cooks, for the model.
pub(super) fn site(store: Store) -> Memo<Option<Site>> {
    store.read(|document| {
        document.household.as_ref().map(|household| Site {
            place: household.place,
            air: household.air,
        })
    })
}

/// What was typed into a field or picked in it, and why it was not taken.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Typed {
    text: String,
    fault: Option<Fault>,
}

/// What was typed, by field. They are few, and found by looking through them.
type AllTyped = Vec<(Field, Typed)>;

fn typed_in(typed: &AllTyped, field: Field) -> Option<&Typed> {
    let found = typed.iter().find(|(other, _)| *other == field);
    found.map(|(_, typed)| typed)
}

/// Puts it in, in the order of the fields.
fn put(typed: &mut AllTyped, field: Field, new: Typed) {
    let place = typed.partition_point(|(other, _)| *other < field);
    match typed.get_mut(place) {
        Some((other, typed)) if *other == field => *typed = new,
        _ => typed.insert(place, (field, new)),
    }
}

/// A form. Copies stand for the same one.
#[derive(Clone, Copy)]
pub(super) struct Form {
    shell: Shell,
    subject: Subject,
    typed: RwSignal<AllTyped>,
    /// The field that is being typed into, and what it said before.
    run: StoredValue<Option<(Field, String)>>,
    apply: Callback<(Field, String), Result<(), Fault>>,
}

impl Form {
    /// A form about `subject`; `apply` takes the text of a field into the document.
    pub(super) fn new(
        shell: Shell,
        subject: Subject,
        apply: Callback<(Field, String), Result<(), Fault>>,
    ) -> Self {
        Self {
            shell,
            subject,
            typed: RwSignal::new(Vec::new()),
            run: StoredValue::new(None),
            apply,
        }
    }

    /// What the field shows, followed.
    fn shown(self, key: Field) -> String {
        let formats = self.shell.words.formats().get();
        let typed = self.typed.with(|typed| typed_in(typed, key).cloned());
        let Some(text) = self.subject.text(key, &formats) else {
            return String::new();
        };
        match typed {
            Some(typed)
                if typed.fault.is_some()
                    || self.subject.says(key, &typed.text, &formats) == Some(true) =>
            {
                typed.text
            }
            _ => text,
        }
    }

    fn value(self, key: Field) -> Signal<String> {
        Memo::new(move |_| self.shown(key)).into()
    }

    fn error(self, key: Field) -> Signal<Option<String>> {
        let Shell { words, clock, .. } = self.shell;
        let fault = Memo::new(move |_| {
            self.typed
                .with(|typed| typed_in(typed, key).and_then(|typed| typed.fault.clone()))
        });
        Signal::derive(move || {
            let fault = fault.get()?;
            let today = clock.now().get().day();
            let formats = words.formats().get();
            Some(fault_words(
                words.strings(),
                &formats,
                &fault,
                key.number(),
                today,
            ))
        })
    }

    /// Takes what was typed, picked or pressed.
    pub(super) fn input(self, key: Field, text: String) {
        let fault = self.apply.run((key, text.clone())).err();
        let is_taken = fault.is_none();
        self.typed.update(|typed| {
            if is_taken && key.is_button() {
                // The places in the lists are others now.
                typed.clear();
            } else {
                typed.retain(|(key, _)| !key.is_button());
                put(typed, key, Typed { text, fault });
            }
        });
        if is_taken {
            self.try_again();
        }
    }

    /// Takes what was picked in a list. What is refused is not left standing there as if it were
    /// taken; the reason names it.
    fn pick(self, key: Field, text: String) {
        self.input(key, text);
        let held = untrack(|| self.held(key));
        self.typed.update(|typed| {
            for (_, typed) in typed.iter_mut().filter(|(of, _)| *of == key) {
                if typed.fault.is_some() {
                    typed.text = held.clone();
                }
            }
        });
    }

    /// Takes what was typed into a number so far.
    fn type_in(self, key: Field, text: String) {
        let is_same_run = self
            .run
            .with_value(|run| run.as_ref().is_some_and(|(typed, _)| *typed == key));
        if !is_same_run {
            let before = untrack(|| self.held(key));
            self.run.set_value(Some((key, before)));
        }
        self.input(key, text);
        let is_refused = self.typed.with_untracked(|typed| {
            typed_in(typed, key).is_some_and(|typed| typed.fault.is_some())
        });
        if is_refused {
            self.take_back(key);
        }
    }

    /// The cooker again as it was before this field was typed into; the text stays.
    fn take_back(self, key: Field) {
        let before = self
            .run
            .with_value(|run| run.clone().map(|(_, before)| before));
        let formats = self.shell.words.formats().get_untracked();
        if let Some(before) = before {
            let is_held = untrack(|| self.subject.says(key, &before, &formats)) != Some(false);
            if !is_held {
                // It could be before, and nothing else has changed since.
                let _ = self.apply.run((key, before));
            }
        }
    }

    /// The field is left: what it says now is what it goes back to next time.
    fn leave(self) {
        self.run.set_value(None);
    }

    /// What is applied of the field, whatever is typed into it. Followed.
    fn held(self, key: Field) -> String {
        let formats = self.shell.words.formats().get();
        self.subject.text(key, &formats).unwrap_or_default()
    }

    fn try_again(self) {
        let waiting: Vec<(Field, String)> = self.typed.with_untracked(|typed| {
            let refused = typed.iter().filter(|(_, typed)| typed.fault.is_some());
            refused
                .map(|(key, typed)| (*key, typed.text.clone()))
                .collect()
        });
        for (key, text) in waiting {
            let fault = self.apply.run((key, text.clone())).err();
            self.typed.update(|typed| {
                put(typed, key, Typed { text, fault });
            });
        }
    }

    fn step(self, key: Field, direction: i32) {
        let formats = self.shell.words.formats().get_untracked();
        let typed = untrack(|| self.shown(key));
        let text = untrack(|| self.subject.stepped(key, &typed, direction, &formats));
        if let Some(text) = text {
            // Each press is a whole answer.
            self.leave();
            self.input(key, text);
        }
    }

    /// A number, with this label and hint.
    pub(super) fn number(
        self,
        key: impl Into<Field>,
        label: &str,
        hint: &str,
        test: &'static str,
    ) -> View {
        self.number_of(key.into(), label, hint, test)
    }

    fn number_of(self, key: Field, label: &str, hint: &str, test: &'static str) -> View {
        let words = self.shell.words;
        let strings = untrack(move || words.strings());
        let unit = key.number().map_or_else(String::new, |number| {
            let formats = words.formats().get_untracked();
            number.measure.unit(strings, &formats)
        });
        let text = NumberFieldText {
            label: label.to_owned(),
            unit,
            less: (strings.cooker.parts.less)(label),
            more: (strings.cooker.parts.more)(label),
            hint: hint.to_owned(),
        };
        view! {
            <div on:focusout=move |_| self.leave()>
                <NumberField
                    text
                    value=self.value(key)
                    on_input=move |text: String| self.type_in(key, text)
                    on_step=move |direction: i32| self.step(key, direction)
                    error=self.error(key)
                    test
                />
            </div>
        }
    }

    /// One of many.
    pub(super) fn select(
        self,
        key: parts::Key,
        label: Signal<String>,
        options: fn(&Strings, &Formats, parts::Key) -> Vec<SelectOption>,
        test: &'static str,
    ) -> View {
        let (words, field) = (self.shell.words, Field::from(key));
        let options = Signal::derive(move || options(words.strings(), &words.formats().get(), key));
        view! {
            <div>
                <Select
                    label
                    options
                    picked=self.value(field)
                    on_pick=move |text: String| self.pick(field, text)
                    test
                />
                <Refusal error=self.error(field) />
            </div>
        }
    }

    /// One of two: the first says no, the second yes. Each has a label and a detail.
    pub(super) fn either(
        self,
        key: parts::Key,
        label: Text,
        [no, yes]: [(Text, Text); 2],
        test: &'static str,
    ) -> View {
        let (words, field) = (self.shell.words, Field::from(key));
        let option = move |key: bool, (label, detail): (Text, Text)| ChoiceOption {
            key: key.to_string(),
            label: label(words.strings()).to_owned(),
            detail: detail(words.strings()).to_owned(),
            icon: None,
        };
        view! {
            <div>
                <Choice
                    label=words.text(label)
                    options=Signal::derive(move || vec![option(false, no), option(true, yes)])
                    picked=self.value(field)
                    on_pick=move |text: String| self.input(field, text)
                    test
                />
                <Refusal error=self.error(field) />
            </div>
        }
    }

    /// Yes or no.
    pub(super) fn toggle(
        self,
        key: parts::Key,
        label: Text,
        detail: Text,
        test: &'static str,
    ) -> View {
        let (words, field) = (self.shell.words, Field::from(key));
        let value = self.value(field);
        view! {
            <div>
                <Toggle
                    label=words.text(label)
                    detail=words.text(detail)
                    on=Signal::derive(move || value.get() == true.to_string())
                    on_change=move |on: bool| self.input(field, on.to_string())
                    test
                />
                <Refusal error=self.error(field) />
            </div>
        }
    }

    /// A day.
    pub(super) fn date(self, key: parts::Key, label: Text, hint: Text, test: &'static str) -> View {
        let (words, field) = (self.shell.words, Field::from(key));
        view! {
            <DateField
                label=words.text(label)
                hint=words.text(hint)
                value=self.value(field)
                on_input=move |text: String| self.input(field, text)
                error=self.error(field)
                test
            />
        }
    }

    /// A button that changes what there is.
    pub(super) fn button(
        self,
        key: impl Into<Field>,
        label: Signal<String>,
        icon: Icon,
        test: &'static str,
    ) -> View {
        let key = key.into();
        view! {
            <div>
                <Button
                    label
                    icon
                    on_press=move |()| self.input(key, String::new())
                    test
                />
                <Refusal error=self.error(key) />
            </div>
        }
    }
}

/// Why something was not taken, under what it is about.
#[component]
pub(super) fn Refusal(error: Signal<Option<String>>) -> impl IntoView {
    view! {
        <div aria-live="polite">
            {move || error.get().map(|error| view! { <p class="field__error">{error}</p> })}
        </div>
    }
}
