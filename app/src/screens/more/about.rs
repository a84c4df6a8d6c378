//! What the app works out, what it does not know, and what of it is on the device.

use crate::reactive::*;

use crate::components::{Fold, Icon, PageLink, Panel, StatusLine, StatusTone};
use crate::i18n::strings::more::AboutPage as Texts;
use crate::present::odds::scale;
use crate::screens::more::Page;
use crate::shell::device::{Offline, offline};
use crate::shell::use_shell;
use crate::state::route::{MorePage, Route};

/// The version of the app, from its manifest.
const VERSION: &str = env!("CARGO_PKG_VERSION");

/// The licence, as it stands beside the source.
const LICENCE: &str = include_str!("../../../../LICENSE");

/// What the app works out, what it does not know, and what of it is on the device.
#[component]
pub(super) fn AboutPage() -> impl IntoView {
    let words = use_shell().words;
    let texts = move || &words.strings().more.about_page;
    let text =
        move |pick: fn(&Texts) -> &'static str| Signal::derive(move || pick(texts()).to_owned());
    let list = move |pick: fn(&Texts) -> &[&'static str]| {
        let line = |line: &&'static str| view! { <li>{*line}</li> };
        view! { <ul class="plain-list">{move || pick(texts()).iter().map(line).collect_view()}</ul> }
    };
    let scale_of_words = move || {
        let lines = scale(words.strings(), &words.formats().get());
        let line = |line: String| view! { <li>{line}</li> };
        view! { <ul class="plain-list">{lines.into_iter().map(line).collect_view()}</ul> }
    };
    let offline = offline();
    let offline_line = move || {
        let (tone, pick): (_, fn(&Texts) -> &'static str) = match offline.get() {
            Offline::Looking => (StatusTone::Notice, |texts| texts.offline_looking),
            Offline::Ready => (StatusTone::Fine, |texts| texts.offline_ready),
            Offline::Unsupported => (StatusTone::Notice, |texts| texts.offline_unsupported),
            Offline::NotStored => (StatusTone::Notice, |texts| texts.offline_not_stored),
        };
        view! { <StatusLine tone text=text(pick) test="offline" /> }
    };
    view! {
        <Page title=|strings| strings.more.about>
            <Panel heading=text(|texts| texts.does)>{list(|texts| &texts.does_list)}</Panel>
            <Panel heading=text(|texts| texts.sure)>{list(|texts| &texts.sure_list)}</Panel>
            <Panel heading=words.text(|strings| strings.odds.scale) test="odds-scale">
                <p>{move || words.strings().odds.scale_why}</p>
                {scale_of_words}
            </Panel>
            <Panel heading=text(|texts| texts.not_known)>
                {list(|texts| &texts.not_known_list)}
                <p>{move || words.strings().safety.cook_decides}</p>
            </Panel>
            <PageLink
                href=Route::More(MorePage::Safety).hash()
                title=words.text(|strings| strings.safety.title)
                detail=words.text(|strings| strings.more.safety_line)
                icon=Icon::HotHand
            />
            <Panel heading=text(|texts| texts.device)>
                {list(|texts| &texts.device_list)} {offline_line}
            </Panel>
            <Panel heading=text(|texts| texts.licence)>
                <p data-test="version">{move || (texts().version)(VERSION)}</p>
                <p>{move || texts().licence_line}</p>
                <Fold summary="MIT License">
                    <p class="licence" lang="en">
                        {LICENCE}
                    </p>
                </Fold>
            </Panel>
        </Page>
    }
}
