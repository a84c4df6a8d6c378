//! The room Bench: test runs, and what they tell of a build.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod list;

use crate::reactive::*;

use crate::state::route::BenchPage;

/// The page of the room.
#[component]
pub(super) fn BenchRoom(
    /// Which.
    page: BenchPage,
) -> impl IntoView {
    match page {
        BenchPage::List
        | BenchPage::New
        | BenchPage::Import
        | BenchPage::Compare
        | BenchPage::Print
        | BenchPage::Run(_)
        | BenchPage::Fit(_) => view! { <list::Runs /> },
    }
}
