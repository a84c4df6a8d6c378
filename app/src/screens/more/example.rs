//! The way into the example household, and its day.

use crate::reactive::*;

use crate::components::{ActionDock, Button, Icon, Panel, StatusLine, StatusTone, Tone};
use crate::screens::more::Page;
use crate::shell::use_shell;
use crate::state::document::Whose;
use crate::state::route::Route;

/// What the example is, the way in and out, and its day in half a minute.
#[component]
pub(super) fn ExamplePage() -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let example = shell.example;
    let whose = shell.store.whose();
    let is_in = Signal::derive(move || whose.get() == Whose::Example);
    let is_refused = RwSignal::new(false);
    let enter = Callback::new(move |()| {
        let is_shown = example.enter().is_ok();
        is_refused.set(!is_shown);
        if is_shown {
            shell.router.go(Route::Tonight);
        }
    });
    let tell = Callback::new(move |()| is_refused.set(example.tell_day().is_err()));
    let in_steps = example.goes_in_steps();
    let what = Signal::derive(move || {
        let day = &words.strings().more.day;
        if in_steps {
            format!("{} {}", day.what, day.what_in_steps)
        } else {
            day.what.to_owned()
        }
    });
    view! {
        <Page title=|strings| strings.more.example>
            <Show when=move || is_refused.get()>
                <StatusLine
                    tone=StatusTone::Trouble
                    text=words.text(|strings| strings.more.example_not_now)
                    test="example-refused"
                />
            </Show>
            <Panel heading=words.text(|strings| strings.more.example)>
                <p>{move || words.strings().more.example_what}</p>
                <p>{move || words.strings().more.example_who}</p>
                <div class="row">
                    <Show
                        when=move || is_in.get()
                        fallback=move || {
                            view! {
                                <Button
                                    label=words.text(|strings| strings.more.example_show)
                                    icon=Icon::Household
                                    on_press=enter
                                    test="example-enter"
                                />
                            }
                        }
                    >
                        <Button
                            label=words.text(|strings| strings.more.example_leave)
                            icon=Icon::Back
                            on_press=Callback::new(move |()| example.leave())
                            test="example-leave"
                        />
                        <Button
                            label=words.text(|strings| strings.more.example_anew)
                            icon=Icon::Undo
                            on_press=Callback::new(move |()| example.start_over())
                            test="example-anew"
                        />
                    </Show>
                </div>
            </Panel>
            <Panel heading=words.text(|strings| strings.more.day.title)>
                <p>{what}</p>
            </Panel>
            <ActionDock>
                <Button
                    label=words.text(|strings| strings.more.day.start)
                    icon=Icon::SunClear
                    tone=Tone::Primary
                    on_press=tell
                    test="day-start"
                />
            </ActionDock>
        </Page>
    }
}
