//! The sky of many hours, with one tap.

use crate::reactive::*;

use super::icon::Glyph;
use super::sun_hours::Sky;

/// A sky that can be picked.
#[derive(Clone, Debug, PartialEq)]
pub struct SkyPick {
    /// Which.
    pub sky: Sky,
    /// Its name.
    pub label: String,
    /// True where it is what was picked.
    pub picked: bool,
    /// The hook for tests.
    pub test: &'static str,
}

/// The skies side by side, each with its drawing and its name, so that they explain the grid of
/// hours that stands with them.
#[component]
pub fn SkyRow(
    /// What picking one means.
    #[prop(into)]
    label: Signal<String>,
    /// The skies, from the brightest to the darkest.
    #[prop(into)]
    skies: Signal<Vec<SkyPick>>,
    /// Called with the place of the tapped sky.
    #[prop(into)]
    on_pick: Callback<usize>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let pick = move |(place, pick): (usize, SkyPick)| {
        let SkyPick {
            sky,
            label,
            picked,
            test,
        } = pick;
        view! {
            <button
                type="button"
                class="sky-row__pick"
                data-test=test
                aria-pressed=if picked { "true" } else { "false" }
                on:click=move |_| on_pick.run(place)
            >
                <span class="sky-row__swatch" data-sky=sky.name()>
                    <Glyph icon=sky.icon() />
                </span>
                <span class="sky-row__label">{label}</span>
            </button>
        }
    };
    view! {
        <div class="sky-row" role="group" aria-label=label data-test=test>
            <p class="field__label" aria-hidden="true">
                {label}
            </p>
            <div class="sky-row__picks">
                {move || skies.get().into_iter().enumerate().map(pick).collect_view()}
            </div>
        </div>
    }
}
