//! The first start: what the app is for, and five questions.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod questions;

use crate::reactive::*;

use crate::components::{
    ActionDock, Button, Choice, ChoiceOption, Icon, LinkButton, Panel, RoomHeader, StepperDots,
    Tone,
};
use crate::i18n::Language;
use crate::present::first_start::{Draft, Question};
use crate::screens::first_start::questions::Answers;
use crate::shell::answers::{forget_answers, keep_answers, kept_answers};
use crate::shell::whereabouts::whereabouts;
use crate::shell::{Shell, use_shell};
use crate::state::action::Action;
use crate::state::route::{MorePage, Route};
use crate::state::settings::LanguageChoice;

/// The first start.
#[component]
pub(super) fn FirstStart() -> impl IntoView {
    let Shell { words, router, .. } = use_shell();
    let formats = words.formats().get_untracked();
    let kept = kept_answers();
    let draft = RwSignal::new(Draft::resumed(kept.as_deref(), whereabouts(), &formats));
    effect(move || draft.with(|draft| keep_answers(&draft.kept())));
    let route = router.route();
    let asked = Memo::new(move |_| match route.get() {
        Route::Start(number) => Question::numbered(number),
        _ => None,
    });
    let on_ask = Callback::new(move |question: Option<Question>| {
        router.go(Route::Start(question.map_or(0, Question::from_one)));
    });
    move || match asked.get() {
        None => view! { <Welcome on_ask /> },
        Some(question) => view! { <Asked question draft on_ask /> },
    }
}

/// What the app is for, and the ways in.
#[component]
fn Welcome(on_ask: Callback<Option<Question>>) -> impl IntoView {
    let Shell {
        example,
        words,
        dispatch,
        rest,
        ..
    } = use_shell();
    rest.give_up_when_left();
    let on_example = move |()| {
        rest.then_as_asked(move || {
            // There is no household yet that could be lost on the way.
            let _ = example.enter();
        });
    };
    let languages: Vec<ChoiceOption> = Language::ALL
        .into_iter()
        .map(|language| ChoiceOption {
            key: language.tag().to_owned(),
            label: language.own_name().to_owned(),
            detail: String::new(),
            icon: None,
        })
        .collect();
    let spoken = words.language();
    let on_language = move |tag: String| {
        if let Some(language) = Language::from_tag(&tag) {
            // A language can't be refused.
            let _ = dispatch.run(Action::ChooseLanguage(LanguageChoice::Chosen(language)));
        }
    };
    let what = words.text(|strings| strings.first_start.what_it_does);
    let has_place = whereabouts().zone.is_some();
    let takes = Signal::derive(move || {
        let words = &words.strings().first_start;
        if has_place {
            words.set_up_takes
        } else {
            words.set_up_takes_place
        }
    });
    view! {
        <div class="screen start-welcome" data-room="start">
            <RoomHeader title=words.text(|strings| strings.first_start.title) />
            <div class="screen__body">
                <Choice
                    label=words.text(|strings| strings.more.language)
                    options=languages
                    picked=Signal::derive(move || spoken.get().tag().to_owned())
                    on_pick=on_language
                    test="start-language"
                />
                <p class="lead">{what}</p>
                <p class="aside">{takes}</p>
                <ActionDock>
                    <Button
                        label=words.text(|strings| strings.first_start.set_up)
                        icon=Icon::Cooker
                        tone=Tone::Primary
                        on_press=move |()| on_ask.run(Question::ALL.first().copied())
                        test="start-set-up"
                    />
                    <Button
                        label=words.text(|strings| strings.first_start.show_example)
                        icon=Icon::Look
                        on_press=on_example
                        test="start-example"
                    />
                </ActionDock>
                // In reach of the thumb by itself, with what is not the first step after it.
                <div class="start-more">
                    <p class="aside">{words.text(|strings| strings.first_start.safety_why)}</p>
                    <LinkButton
                        href=Route::More(MorePage::Safety).hash()
                        label=words.text(|strings| strings.safety.title)
                        icon=Icon::HotHand
                        test="start-safety"
                    />
                    <p class="aside">{words.text(|strings| strings.first_start.copy_is)}</p>
                    <LinkButton
                        href=Route::More(MorePage::Copies).hash()
                        label=words.text(|strings| strings.first_start.bring_copy)
                        icon=Icon::Fetch
                        test="start-bring-copy"
                    />
                </div>
            </div>
        </div>
    }
}

/// One question, with the way back and on.
#[component]
fn Asked(
    question: Question,
    draft: RwSignal<Draft>,
    on_ask: Callback<Option<Question>>,
) -> impl IntoView {
    let Shell {
        words,
        dispatch,
        rest,
        ..
    } = use_shell();
    rest.give_up_when_left();
    let of = Question::ALL.len();
    let strings = untrack(move || words.strings());
    let number = question.number();
    let on_next = move |()| match question.next() {
        Some(next) => on_ask.run(Some(next)),
        None => rest.then_as_asked(move || {
            let carry_out = move |action| dispatch.run(action).is_ok();
            finish(draft, on_ask, carry_out, strings);
        }),
    };
    let (next, icon) = match question.next() {
        Some(_) => (strings.common.buttons.next, Icon::Onward),
        None => (strings.first_start.done, Icon::Tick),
    };
    view! {
        <div class="screen" data-room="start">
            <RoomHeader title=(strings.first_start.question)(number + 1, of) />
            <div class="screen__body">
                <StepperDots
                    steps=of
                    at=number
                    label=(strings.first_start.question)(number + 1, of)
                />
                <Panel heading=question.words(strings).to_owned() test="start-question">
                    <Answers question draft />
                </Panel>
                <p class="aside">{strings.first_start.changed_later}</p>
                <ActionDock>
                    <Button
                        label=strings.common.buttons.back.to_owned()
                        icon=Icon::Back
                        on_press=move |()| on_ask.run(question.before())
                        test="start-back"
                    />
                    <Button
                        label=next.to_owned()
                        icon
                        tone=Tone::Primary
                        disabled=Signal::derive(move || {
                            draft.with(|draft| !draft.is_answered(question))
                        })
                        on_press=on_next
                        test="start-next"
                    />
                </ActionDock>
            </div>
        </div>
    }
}

/// Sets the household up; the way leads on to Tonight by itself. What can't be is asked again.
fn finish(
    draft: RwSignal<Draft>,
    on_ask: Callback<Option<Question>>,
    carry_out: impl FnOnce(Action) -> bool,
    strings: &'static crate::i18n::strings::Strings,
) {
    let action = draft.with_untracked(|draft| draft.action(strings));
    let is_done = action.is_ok_and(carry_out);
    if is_done {
        forget_answers();
    } else {
        let unanswered = draft.with_untracked(Draft::unanswered);
        on_ask.run(unanswered.or(Question::ALL.first().copied()));
    }
}
