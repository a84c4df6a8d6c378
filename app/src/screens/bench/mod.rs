//! The room Bench: test runs, and what they tell of a build.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod fit;
mod import;
mod import_about;
mod list;
mod page;
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
        BenchPage::Import => view! { <import::Import /> },
        BenchPage::Fit(id) => view! { <fit::FitPage id /> },
        BenchPage::List
        | BenchPage::New
        | BenchPage::Compare
        | BenchPage::Print
        | BenchPage::Run(_) => view! { <list::Runs /> },
    }
}
