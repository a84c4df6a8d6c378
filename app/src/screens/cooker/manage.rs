//! A cooker as a whole: use, name, copy, erase.

use crate::reactive::*;

use super::form::Refusal;
use crate::components::{Button, Fold, Icon, TextField, Tone};
use crate::i18n::refusal::refusal;
use crate::present::cooker::list::fitting_name;
use crate::shell::{Shell, use_shell};
use crate::state::action::{Action, Done};
use crate::state::ids::CookerId;
use crate::state::refused::Refused;
use crate::state::route::Route;

fn said(shell: Shell, refused: RwSignal<Option<Refused>>) -> Signal<Option<String>> {
    let Shell { words, clock, .. } = shell;
    Signal::derive(move || {
        let refused = refused.get()?;
        let today = clock.now().get().day();
        let formats = words.formats().get();
        Some(refusal(words.strings(), &formats, refused, today))
    })
}

/// Takes a cooker into use that is not.
#[component]
pub(super) fn UseThis(id: CookerId) -> impl IntoView {
    let shell = use_shell();
    let in_use = shell.store.in_use();
    let refused = RwSignal::new(None);
    let on_press = move |()| refused.set(shell.dispatch.run(Action::UseCooker(id)).err());
    view! {
        <Show when=move || in_use.get() != Some(id)>
            <Button
                label=shell.words.text(|strings| strings.cooker.list.use_this)
                icon=Icon::Tick
                tone=Tone::Primary
                on_press=on_press
                test="use-cooker"
            />
            <Refusal error=said(shell, refused) />
        </Show>
    }
}

/// Name, copy, erase.
#[component]
pub(super) fn Manage(id: CookerId) -> impl IntoView {
    let shell = use_shell();
    let Shell {
        words,
        store,
        dispatch,
        router,
        ..
    } = shell;
    let name = store.read(move |document| document.cooker(id).map(|owned| owned.name.clone()));
    let typed = RwSignal::new(None::<String>);
    let name_refused = RwSignal::new(None::<Refused>);
    let refused = RwSignal::new(None::<Refused>);
    let value = Signal::derive(move || {
        let name = name.get().unwrap_or_default();
        let is_wrong = name_refused.with(Option::is_some);
        // Spaces at the ends are typed on the way to the next word.
        let is_kept = |typed: &String| is_wrong || typed.trim() == name;
        typed.get().filter(is_kept).unwrap_or(name)
    });
    let on_name = move |text: String| {
        let action = Action::RenameCooker {
            id,
            name: text.clone(),
        };
        typed.set(Some(text));
        name_refused.set(dispatch.run(action).err());
    };
    let on_copy = move |()| {
        let copy_name = untrack(move || words.strings()).cooker.copy_name;
        let former = name.get_untracked().unwrap_or_default();
        let action = Action::CopyCooker {
            id,
            name: fitting_name(copy_name(&former)),
        };
        match dispatch.run(action) {
            Ok(Done::AddedCooker(copy)) => router.go(Route::Cooker(Some(copy))),
            Ok(_) => {}
            Err(error) => refused.set(Some(error)),
        }
    };
    let on_erase = move |()| match dispatch.run(Action::EraseCooker(id)) {
        Ok(_) => router.go(Route::Cooker(None)),
        Err(error) => refused.set(Some(error)),
    };
    view! {
        <div class="panel">
            <Fold summary=words.text(|strings| strings.cooker.list.manage) test="cooker-manage">
                <TextField
                    label=words.text(|strings| strings.cooker.list.name)
                    value
                    on_input=on_name
                    error=said(shell, name_refused)
                    test="cooker-name"
                />
                <p class="aside">{move || words.strings().cooker.list.copy_note}</p>
                <div class="row">
                    <Button
                        label=words.text(|strings| strings.cooker.list.copy)
                        icon=Icon::Copy
                        on_press=on_copy
                        test="copy-cooker"
                    />
                    <Button
                        label=words.text(|strings| strings.cooker.list.erase)
                        icon=Icon::Bin
                        tone=Tone::Danger
                        on_press=on_erase
                        test="erase-cooker"
                    />
                </div>
                <Refusal error=said(shell, refused) />
            </Fold>
        </div>
    }
}
