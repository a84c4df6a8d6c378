//! The list of the pages.

use crate::reactive::*;

use crate::components::{Icon, PageLink, RoomHeader};
use crate::i18n::strings::Strings;
use crate::shell::use_shell;
use crate::state::route::{MorePage, Route};

/// A page in the list.
struct Way {
    page: MorePage,
    icon: Icon,
    title: fn(&Strings) -> &'static str,
    detail: fn(&Strings) -> &'static str,
    test: &'static str,
}

/// The pages, those first that keep people and households from harm.
const WAYS: [Way; 5] = [
    Way {
        page: MorePage::Safety,
        icon: Icon::HotHand,
        title: |strings| strings.safety.title,
        detail: |strings| strings.more.safety_line,
        test: "to-safety",
    },
    Way {
        page: MorePage::Copies,
        icon: Icon::Copy,
        title: |strings| strings.more.copies,
        detail: |strings| strings.more.copies_line,
        test: "to-copies",
    },
    Way {
        page: MorePage::Settings,
        icon: Icon::Languages,
        title: |strings| strings.more.settings,
        detail: |strings| strings.more.settings_line,
        test: "to-settings",
    },
    Way {
        page: MorePage::Example,
        icon: Icon::Household,
        title: |strings| strings.more.example,
        detail: |strings| strings.more.example_line,
        test: "to-example",
    },
    Way {
        page: MorePage::About,
        icon: Icon::About,
        title: |strings| strings.more.about,
        detail: |strings| strings.more.about_line,
        test: "to-about",
    },
];

/// The list of the pages.
#[component]
pub(super) fn Menu() -> impl IntoView {
    let words = use_shell().words;
    let line = |way: Way| {
        view! {
            <PageLink
                href=Route::More(way.page).hash()
                title=words.text(way.title)
                detail=words.text(way.detail)
                icon=way.icon
                test=way.test
            />
        }
    };
    view! {
        <div class="screen">
            <RoomHeader title=words.text(|strings| strings.more.title) />
            <nav class="screen__body" aria-label=move || words.strings().more.title>
                {WAYS.map(line).collect_view()}
            </nav>
        </div>
    }
}
