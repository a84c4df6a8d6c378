//! What was put aside, with the way back.

use crate::reactive::*;

use crate::components::{Button, Icon, Panel, Sheet, StatusLine, StatusTone, Tone};
use crate::present::copies::aside_line;
use crate::shell::copies::download_aside;
use crate::shell::keeper::{Aside, AsideWhy};
use crate::shell::{Shell, use_shell};
use crate::state::document::Document;
use crate::state::route::Route;
use crate::state::saved::decode;

/// The list of what was put aside; nothing where nothing was.
#[component]
pub(super) fn PutAside() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    // The shelf is no signal; it is looked at again after each change made here.
    let looks = RwSignal::new(0_u32);
    let look_again = move || looks.update(|looks| *looks = looks.wrapping_add(1));
    let asides = Memo::new(move |_| {
        looks.track();
        store.asides()
    });
    let in_question = RwSignal::new(None::<String>);
    let erase = Callback::new(move |()| {
        if let Some(key) = in_question.get_untracked() {
            // A browser that refuses goes on listing it.
            let _ = store.forget_aside(&key);
        }
        in_question.set(None);
        look_again();
    });
    let on_erase = Callback::new(move |key| in_question.set(Some(key)));
    let list = move || match asides.get() {
        Err(_) => view! {
            <StatusLine
                tone=StatusTone::Trouble
                text=words.text(|strings| strings.more.aside_not_read)
            />
        },
        Ok(asides) if asides.is_empty() => View::nothing(),
        Ok(asides) => {
            let item = move |aside| view! { <AsideItem aside on_erase /> };
            view! {
                <Panel heading=words.text(|strings| strings.more.aside) test="asides">
                    <p class="aside">{move || words.strings().more.aside_why}</p>
                    <ul class="put-aside">{asides.into_iter().map(item).collect_view()}</ul>
                </Panel>
            }
        }
    };
    view! {
        {list}
        <Sheet
            title=words.text(|strings| strings.more.aside)
            close=words.text(|strings| strings.common.buttons.close)
            open=Signal::derive(move || in_question.with(Option::is_some))
            on_close=Callback::new(move |()| in_question.set(None))
            test="aside-sheet"
        >
            <p>{move || words.strings().more.aside_erase_sure}</p>
            <Button
                label=words.text(|strings| strings.common.buttons.erase)
                icon=Icon::Bin
                tone=Tone::Danger
                on_press=erase
                test="aside-erase-yes"
            />
            <Button
                label=words.text(|strings| strings.common.buttons.cancel)
                on_press=Callback::new(move |()| in_question.set(None))
            />
        </Sheet>
    }
}

/// One thing that was put aside.
#[component]
fn AsideItem(aside: Aside, on_erase: Callback<String>) -> impl IntoView {
    let shell = use_shell();
    let Shell {
        words,
        store,
        clock,
        router,
        ..
    } = shell;
    let Aside { key, why, at } = aside;
    let has_no_room = RwSignal::new(false);
    let text = store.aside_text(&key).ok().flatten();
    let document: Option<Document> = text
        .and_then(|text| decode(&text).ok())
        .map(|decoded| decoded.document);
    let title = move || {
        let more = &words.strings().more;
        let when = words.formats().get().instant(at, clock.now().get().day());
        match why {
            AsideWhy::Replaced => (more.aside_replaced)(&when),
            AsideWhy::Damaged => (more.aside_damaged)(&when),
        }
    };
    let way_back = document.map(|document| {
        let document = StoredValue::new(document);
        let key = key.clone();
        let bring_back = Callback::new(move |()| {
            let is_back = store.bring_back_aside(&key, document.get_value()).is_ok();
            has_no_room.set(!is_back);
            if is_back {
                router.go(Route::Tonight);
            }
        });
        let line = move || {
            document.with_value(|document| {
                aside_line(document, &words.strings().more, &words.formats().get())
            })
        };
        view! {
            <p class="aside">{line}</p>
            <Button
                label=words.text(|strings| strings.common.buttons.bring_back)
                icon=Icon::Undo
                on_press=bring_back
                test="aside-back"
            />
        }
    });
    let file_key = key.clone();
    view! {
        <li class="put-aside__item" data-test="aside">
            <h3>{title}</h3>
            <Show when=move || has_no_room.get()>
                <StatusLine
                    tone=StatusTone::Trouble
                    text=words.text(|strings| strings.more.copy_no_room)
                />
            </Show>
            <div class="row">
                {way_back}
                <Button
                    label=words.text(|strings| strings.more.aside_to_file)
                    icon=Icon::Keep
                    on_press=Callback::new(move |()| download_aside(shell, &file_key))
                    test="aside-file"
                />
                <Button
                    label=words.text(|strings| strings.common.buttons.erase)
                    icon=Icon::Bin
                    tone=Tone::Danger
                    on_press=Callback::new(move |()| on_erase.run(key.clone()))
                    test="aside-erase"
                />
            </div>
        </li>
    }
}
