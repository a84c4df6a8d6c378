//! Where the heat goes: one bar cut into its parts.

use crate::reactive::*;

/// A part of the heat.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatPart {
    /// Where it goes.
    pub label: String,
    /// How much it is, with its unit.
    pub value: String,
    /// Which of the six looks it has: the same kind of part looks the same in every bar.
    pub look: usize,
    /// Its size; only the ratio to the others matters.
    pub share: f64,
}

/// What the bar shows.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatBarView {
    /// What a screen reader calls the bar.
    pub name: String,
    /// Its parts, at most six, in order.
    pub parts: Vec<HeatPart>,
    /// The same in a sentence, or nothing where the list says enough.
    pub sentence: String,
}

/// A bar of parts, each with its own colour and weave, and the list of what they are.
#[component]
pub fn HeatBar(
    /// What it shows.
    #[prop(into)]
    view: Signal<HeatBarView>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let part = |part: HeatPart| {
        let share = format!("--share: {:.4}", part.share.max(0.0));
        view! { <span class="heat-bar__part" data-part=part.look.to_string() style=share></span> }
    };
    let line = |part: HeatPart| {
        view! {
            <li class="heat-bar__line">
                <span class="heat-bar__swatch" data-part=part.look.to_string()></span>
                <span class="heat-bar__label">{part.label}</span>
                <span class="heat-bar__value">{part.value}</span>
            </li>
        }
    };
    view! {
        <figure class="heat-bar" data-test=test>
            <div class="heat-bar__bar" aria-hidden="true">
                {move || view.get().parts.into_iter().map(part).collect_view()}
            </div>
            <ul class="heat-bar__list" aria-label=move || view.get().name>
                {move || view.get().parts.into_iter().map(line).collect_view()}
            </ul>
            <figcaption class="heat-bar__sentence">{move || view.get().sentence}</figcaption>
        </figure>
    }
}
