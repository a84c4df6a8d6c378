//! From when on a cooker is as it was changed, and what it was before.

use crate::reactive::*;

use crate::components::Button;
use crate::present::cooker::list::made_of;
use crate::shell::{Shell, use_shell};
use crate::state::action::Action;
use crate::state::ids::CookerId;

/// Asks whether the last change rebuilt it or put right what it always was.
#[component]
pub(super) fn Rebuilt(id: CookerId) -> impl IntoView {
    let Shell {
        words,
        store,
        dispatch,
        ..
    } = use_shell();
    let is_asked =
        store.read(move |document| document.cooker(id).is_some_and(|owned| owned.is_asked));
    let say = move |is_rebuilt| {
        Callback::new(move |()| {
            // The cooker is there as long as its page is.
            let _ = dispatch.run(Action::SayRebuilt { id, is_rebuilt });
        })
    };
    view! {
        <Show when=move || is_asked.get()>
            <div class="rebuilt" role="status" data-test="rebuilt">
                <p>
                    <strong>{words.text(|strings| strings.cooker.rebuilt.question)}</strong>
                    " "
                    {words.text(|strings| strings.cooker.rebuilt.why)}
                </p>
                <div class="row">
                    <Button
                        label=words.text(|strings| strings.cooker.rebuilt.from_now)
                        on_press=say(true)
                        test="rebuilt-now"
                    />
                    <Button
                        label=words.text(|strings| strings.cooker.rebuilt.always)
                        on_press=say(false)
                        test="rebuilt-always"
                    />
                </div>
            </div>
        </Show>
    }
}

/// What it was before each rebuilding.
#[component]
pub(super) fn Formerly(id: CookerId) -> impl IntoView {
    let Shell {
        words,
        store,
        clock,
        ..
    } = use_shell();
    let formerly = store.read(move |document| {
        let owned = document.cooker(id);
        owned
            .map(|owned| owned.formerly.clone())
            .unwrap_or_default()
    });
    let lines = move || {
        let (strings, formats) = (words.strings(), words.formats().get());
        let today = clock.now().get().day();
        let line = |former: model::journal::Formerly| {
            let until = formats.instant(former.until, today);
            let was = made_of(strings, &formats, &former.cooker);
            let said = (strings.cooker.rebuilt.until)(&until, &was);
            view! { <p class="aside" data-test="formerly">{said}</p> }
        };
        formerly.get().into_iter().map(line).collect_view()
    };
    view! { {lines} }
}
