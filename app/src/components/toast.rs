//! What was just done, and the way to take it back.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// What a toast says.
#[derive(Clone, Debug, PartialEq)]
pub struct ToastView {
    /// What was done: 'Meal erased'.
    pub text: String,
    /// The way back in a word, or nothing.
    pub action: String,
}

/// A line over the rooms at the foot of the window, where the thumb is; there while `view` is
/// something.
///
/// The region itself stays in the page, so that a screen reader speaks what appears in it.
#[component]
pub fn Toast(
    /// What it says now.
    #[prop(into)]
    view: Signal<Option<ToastView>>,
    /// What its cross does, for a screen reader.
    #[prop(into)]
    close: Signal<String>,
    /// Called when the way back is taken.
    #[prop(into)]
    on_action: Callback<()>,
    /// Called when it is put away.
    #[prop(into)]
    on_close: Callback<()>,
) -> impl IntoView {
    let slab = move |toast: ToastView| {
        let ToastView { text, action } = toast;
        let back = (!action.is_empty()).then(|| {
            view! {
                <button
                    type="button"
                    class="toast__action"
                    data-test="toast-action"
                    on:click=move |_| on_action.run(())
                >
                    <Glyph icon=Icon::Undo />
                    <span>{action}</span>
                </button>
            }
        });
        view! {
            <div class="toast__slab">
                <p class="toast__text">{text}</p>
                {back}
                <button
                    type="button"
                    class="toast__close"
                    aria-label=close
                    on:click=move |_| on_close.run(())
                >
                    <Glyph icon=Icon::Cross />
                </button>
            </div>
        }
    };
    view! {
        <div class="toast" role="status" aria-live="polite">
            {move || view.get().map(slab)}
        </div>
    }
}
