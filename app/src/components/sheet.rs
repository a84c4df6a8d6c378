//! A slab that slides up from the foot of the screen and must be dealt with first.

use crate::reactive::*;
use leptos::html;

use super::icon::{Glyph, Icon};
use super::unique::unique;

/// A modal sheet on the browser's own dialog, which keeps the focus inside and gives it back.
#[component]
pub fn Sheet(
    /// What it is about.
    #[prop(into)]
    title: Signal<String>,
    /// What its closing cross does, for a screen reader.
    #[prop(into)]
    close: Signal<String>,
    /// True while it is up.
    #[prop(into)]
    open: Signal<bool>,
    /// Called when the person closes it: by the cross, the back key or a tap beside it.
    #[prop(into)]
    on_close: Callback<()>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What it holds; built anew at each opening.
    children: ChildrenFn,
) -> impl IntoView {
    let name = unique("sheet");
    let dialog = NodeRef::<html::Dialog>::new();
    effect(move || {
        let Some(dialog) = dialog.get() else { return };
        if open.get() && !dialog.open() {
            // A dialog that has just left the page refuses; it has nothing to show then.
            let _ = dialog.show_modal();
        } else if !open.get() && dialog.open() {
            dialog.close();
        }
    });
    let on_cancel = move |event: web_sys::Event| {
        event.prevent_default();
        on_close.run(());
    };
    // A tap beside the sheet lands on the dialog itself, one inside it on something it holds.
    let on_tap = move |event: web_sys::Event| {
        if event.target() == event.current_target() {
            on_close.run(());
        }
    };
    view! {
        <dialog
            class="sheet"
            node_ref=dialog
            aria-labelledby=name
            data-test=test
            on:cancel=on_cancel
            on:click=on_tap
        >
            <div class="sheet__slab">
                <div class="sheet__head">
                    <h2 class="sheet__title" id=name.clone()>
                        {title}
                    </h2>
                    <button
                        type="button"
                        class="sheet__close"
                        aria-label=close
                        on:click=move |_| on_close.run(())
                    >
                        <Glyph icon=Icon::Cross />
                    </button>
                </div>
                <div class="sheet__body">{move || open.get().then(|| children())}</div>
            </div>
        </dialog>
    }
}
