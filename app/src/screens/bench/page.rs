//! A page of the room Bench whose name does not change.

use crate::reactive::*;

use super::frame::Frame;
use crate::i18n::strings::Strings;
use crate::shell::use_shell;

/// A page with its name, and the way back to the list of runs.
#[component]
pub(super) fn Page(
    /// Its name.
    title: fn(&Strings) -> &'static str,
    /// What is true now, in one line.
    #[prop(optional, into)]
    line: Signal<String>,
    /// What it holds.
    children: View,
) -> impl IntoView {
    let title = use_shell().words.text(title);
    view! { <Frame title line>{children}</Frame> }
}
