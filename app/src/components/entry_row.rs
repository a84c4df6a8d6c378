//! One line of the diary.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// What a line of the diary shows.
#[derive(Clone, Debug, PartialEq)]
pub struct EntryView {
    /// When it was, in words.
    pub when: String,
    /// What it was.
    pub title: String,
    /// More about it, or nothing.
    pub detail: String,
    /// Its kind, drawn.
    pub icon: Icon,
}

impl Default for EntryView {
    /// A line whose thing is gone.
    fn default() -> Self {
        Self {
            when: String::new(),
            title: String::new(),
            detail: String::new(),
            icon: Icon::Note,
        }
    }
}

/// A line that opens for change when tapped.
#[component]
pub fn EntryRow(
    /// What it shows.
    #[prop(into)]
    entry: Signal<EntryView>,
    /// Called when it is tapped.
    #[prop(into)]
    on_press: Callback<()>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <button type="button" class="entry-row" data-test=test on:click=move |_| on_press.run(())>
            <EntryWords entry />
            <Glyph icon=Icon::Onward />
        </button>
    }
}

/// What a line shows, whether it opens or not.
#[component]
pub fn EntryWords(
    /// What it shows.
    entry: Signal<EntryView>,
) -> impl IntoView {
    view! {
        {move || view! { <Glyph icon=entry.get().icon /> }}
        <span class="entry-row__words">
            <span class="entry-row__when">{move || entry.get().when}</span>
            <span class="entry-row__title">{move || entry.get().title}</span>
            <span class="entry-row__detail">{move || entry.get().detail}</span>
        </span>
    }
}
