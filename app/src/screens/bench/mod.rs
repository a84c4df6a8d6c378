//! The room Bench: test runs, and what they tell of a build.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod compare;
mod fit;
mod frame;
mod guide;
mod import;
mod import_about;
mod list;
mod live;
mod prices;
mod sheet;

use crate::reactive::*;

use crate::state::route::BenchPage;

/// The page of the room.
#[component]
pub(super) fn BenchRoom(
    /// Which.
    page: BenchPage,
) -> impl IntoView {
    match page {
        BenchPage::List => view! { <list::Runs /> },
        BenchPage::New => view! { <guide::Guide /> },
        BenchPage::Import => view! { <import::Import /> },
        BenchPage::Run(id) => view! { <live::Live id /> },
        BenchPage::Fit(id) => view! { <fit::FitPage id /> },
        BenchPage::Compare => view! { <compare::Compare /> },
        BenchPage::Print => view! { <compare::PrintPage /> },
    }
}
