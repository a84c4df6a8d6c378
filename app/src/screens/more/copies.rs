//! Copies out and in, what was put aside, and what to do when saving fails.

mod aside;

use crate::reactive::*;
use leptos::ev::Event;
use leptos::task::spawn_local;

use crate::components::{Button, EmptyNote, FileButton, Icon, Panel, StatusLine, StatusTone, Tone};
use crate::present::copies::{CopyView, copy_view};
use crate::screens::more::Page;
use crate::shell::copies::{CopyTrouble, bring_texts, download_copy, read_copy, trouble_text};
use crate::shell::device::is_kept_for_good;
use crate::shell::keeper::SaveStatus;
use crate::shell::{Shell, use_shell};
use crate::state::document::Whose;
use crate::state::route::Route;
use crate::state::saved::Decoded;

use aside::PutAside;

/// Copies of the person's own household; the example has none.
#[component]
pub(super) fn CopiesPage() -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let whose = shell.store.whose();
    let has_household = shell.store.has_household();
    view! {
        <Page title=|strings| strings.more.copies>
            <Show
                when=move || whose.get() == Whose::Own
                fallback=move || {
                    view! {
                        <EmptyNote
                            icon=Icon::Copy
                            text=words.text(|strings| strings.more.copies_own_only)
                        >
                            <Button
                                label=words.text(|strings| strings.more.example_leave)
                                icon=Icon::Back
                                on_press=Callback::new(move |()| shell.example.leave())
                            />
                        </EmptyNote>
                    }
                }
            >
                <OutAndIn />
                <PutAside />
                <Show when=move || has_household.get()>
                    <Keeping />
                </Show>
            </Show>
        </Page>
    }
}

/// What a file turned out to be.
#[derive(Clone)]
enum Picked {
    Copy(Box<Decoded>),
    Trouble(CopyTrouble),
}

/// The copy out, and a picked one before it comes in.
#[component]
fn OutAndIn() -> impl IntoView {
    let shell = use_shell();
    let Shell { words, store, .. } = shell;
    let has_household = store.has_household();
    let file_name = RwSignal::new(None::<String>);
    let picked = RwSignal::new(None::<Picked>);
    let on_pick = Callback::new(move |event: Event| {
        spawn_local(async move {
            let read = match read_copy(&event).await {
                Ok(decoded) => Picked::Copy(Box::new(decoded)),
                Err(trouble) => Picked::Trouble(trouble),
            };
            // The person may have left the page meanwhile.
            picked.try_set(Some(read));
        });
    });
    let out_line = move || {
        file_name.get().map(|name| {
            let text = Signal::derive(move || (words.strings().more.copy_is_out)(&name));
            view! { <StatusLine tone=StatusTone::Fine text test="copy-is-out" /> }
        })
    };
    let in_lines = move || match picked.get()? {
        Picked::Copy(decoded) => Some(view! { <PickedCopy decoded=*decoded picked /> }),
        Picked::Trouble(trouble) => {
            let text = Signal::derive(move || {
                trouble_text(&words.strings().more, &trouble).unwrap_or_default()
            });
            text.with_untracked(|text| !text.is_empty()).then(|| {
                view! { <StatusLine tone=StatusTone::Trouble text test="copy-trouble" /> }
            })
        }
    };
    view! {
        <Panel heading=words.text(|strings| strings.more.copies)>
            <p>{move || words.strings().more.copies_why}</p>
            <div class="row">
                <Show when=move || has_household.get()>
                    <Button
                        label=words.text(|strings| strings.more.copy_out)
                        icon=Icon::Keep
                        tone=Tone::Primary
                        on_press=Callback::new(move |()| file_name.set(download_copy(shell)))
                        test="copy-out"
                    />
                </Show>
                <FileButton
                    label=words.text(|strings| strings.more.copy_in)
                    icon=Icon::Fetch
                    accept="application/json,.json"
                    on_pick
                    test="copy-in"
                />
            </div>
            {out_line}
            {in_lines}
        </Panel>
    }
}

/// A copy that was picked: what is in it, and whether it shall take the household's place.
#[component]
fn PickedCopy(decoded: Decoded, picked: RwSignal<Option<Picked>>) -> impl IntoView {
    let shell = use_shell();
    let Shell {
        words,
        store,
        clock,
        router,
        ..
    } = shell;
    let has_household = store.has_household();
    let has_no_room = RwSignal::new(false);
    let is_working = RwSignal::new(false);
    let document = StoredValue::new(decoded.document.clone());
    let texts = StoredValue::new(decoded.texts.clone());
    let shown = Memo::new(move |_| {
        let today = clock.now().get().day();
        copy_view(
            &decoded,
            &words.strings().more,
            &words.formats().get(),
            today,
        )
    });
    let replace = Callback::new(move |()| {
        let (document, texts) = (document.get_value(), texts.get_value());
        is_working.set(true);
        spawn_local(async move {
            // The household comes in once its readings are kept: whoever leaves before has changed
            // nothing, and none of its runs is ever without them.
            bring_texts(shell, texts).await;
            let is_in = store.replace(document).is_ok();
            is_working.try_set(false);
            has_no_room.try_set(!is_in);
            if is_in {
                // The page may be left by now.
                picked.try_set(None);
                router.go(Route::Tonight);
            }
        });
    });
    view! {
        <section class="picked-copy stack" data-test="picked-copy">
            <h3>{move || words.strings().more.copy_picked}</h3>
            <ul class="plain-list">
                {move || {
                    let CopyView { written, lines, .. } = shown.get();
                    lines
                        .into_iter()
                        .chain([written])
                        .map(|line| view! { <li>{line}</li> })
                        .collect_view()
                }}
            </ul>
            <p>
                <strong>{move || shown.get().warning}</strong>
            </p>
            <p>
                {move || {
                    let more = &words.strings().more;
                    if has_household.get() { more.copy_replaces } else { more.copy_takes_place }
                }}
            </p>
            <Show when=move || has_no_room.get()>
                <StatusLine
                    tone=StatusTone::Trouble
                    text=words.text(|strings| strings.more.copy_no_room)
                    test="copy-no-room"
                />
            </Show>
            <p class="aside" role="status">
                {move || is_working.get().then(|| words.strings().common.saving.pending)}
            </p>
            <div class="row">
                <Button
                    label=Signal::derive(move || {
                        let more = &words.strings().more;
                        let label = if has_household.get() { more.copy_replace } else { more.copy_take };
                        label.to_owned()
                    })
                    icon=Icon::Fetch
                    on_press=replace
                    disabled=is_working
                    test="copy-replace"
                />
                <Button
                    label=words.text(|strings| strings.common.buttons.cancel)
                    on_press=Callback::new(move |()| picked.set(None))
                    disabled=is_working
                    test="copy-cancel"
                />
            </div>
        </section>
    }
}

/// How things stand with saving, and what to do when it fails.
#[component]
fn Keeping() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let status = store.status();
    let is_promised = is_kept_for_good();
    let saved = move || {
        let saving = &words.strings().common.saving;
        match status.get() {
            SaveStatus::Saved => saving.saved,
            SaveStatus::Pending => saving.pending,
            // The line above the screen says what is the matter.
            SaveStatus::Cleared | SaveStatus::Failed(_) | SaveStatus::Locked(_) => "",
        }
    };
    let promise = move || {
        let more = &words.strings().more;
        is_promised.get().map(|is_promised| {
            if is_promised {
                more.keeping_promised
            } else {
                more.keeping_not_promised
            }
        })
    };
    view! {
        <Panel heading=words.text(|strings| strings.more.keeping) test="keeping">
            <p>{saved}</p>
            <p>{promise}</p>
        </Panel>
        <Panel heading=words.text(|strings| strings.more.trouble) test="trouble">
            <ol class="plain-list">
                {move || {
                    words
                        .strings()
                        .more
                        .trouble_steps
                        .map(|step| view! { <li>{step}</li> })
                        .collect_view()
                }}
            </ol>
        </Panel>
    }
}
