//! Every caution, in reach at any time.

use crate::reactive::*;

use crate::components::{Caution, CautionLevel, Icon, Panel};
use crate::i18n::strings::safety::Safety;
use crate::present::level::word;
use crate::screens::more::Page;
use crate::shell::use_shell;

type Text = fn(&Safety) -> &'static str;

/// Cautions that belong together.
struct Group {
    heading: Text,
    lines: &'static [(CautionLevel, Icon, Text)],
    test: &'static str,
}

use CautionLevel::{Danger, Note, Warning};

const GROUPS: [Group; 5] = [
    Group {
        heading: |safety| safety.group_heat,
        lines: &[
            (Warning, Icon::HotHand, |safety| safety.hot_metal),
            (Danger, Icon::Alight, |safety| safety.fire),
            (Warning, Icon::PotBoils, |safety| safety.steam),
            (Note, Icon::Water, |safety| safety.burn_help),
        ],
        test: "safety-heat",
    },
    Group {
        heading: |safety| safety.group_salt,
        lines: &[
            (Danger, Icon::Salt, |safety| safety.nitrate),
            (Danger, Icon::Alarm, |safety| safety.nitrate_trouble),
        ],
        test: "safety-salt",
    },
    Group {
        heading: |safety| safety.group_pressure,
        lines: &[(Danger, Icon::Valve, |safety| safety.pressure)],
        test: "safety-pressure",
    },
    Group {
        heading: |safety| safety.group_electricity,
        lines: &[
            (Danger, Icon::Bolt, |safety| safety.panel_live),
            (Warning, Icon::HeaterOff, |safety| safety.fuse),
            (Warning, Icon::Panel, |safety| safety.wiring),
        ],
        test: "safety-electricity",
    },
    Group {
        heading: |safety| safety.group_food,
        lines: &[
            (Danger, Icon::Beans, |safety| safety.beans),
            (Warning, Icon::Thermometer, |safety| safety.meat),
            (Warning, Icon::KeepHot, |safety| safety.holding),
            (Note, Icon::Bowl, |safety| safety.cook_decides),
        ],
        test: "safety-food",
    },
];

/// Every caution by kind of harm, local codes first.
#[component]
pub(super) fn SafetyPage() -> impl IntoView {
    let words = use_shell().words;
    let text = move |pick: Text| Signal::derive(move || pick(&words.strings().safety).to_owned());
    let line = move |&(level, icon, pick): &(CautionLevel, Icon, Text)| {
        let word = Signal::derive(move || word(&words.strings().safety, level).to_owned());
        view! { <Caution level icon word text=text(pick) /> }
    };
    let group = move |group: Group| {
        view! {
            <Panel heading=text(group.heading) test=group.test>
                {group.lines.iter().map(line).collect_view()}
            </Panel>
        }
    };
    view! {
        <Page title=|strings| strings.safety.title>
            <Caution
                level=Note
                icon=Icon::About
                word=text(|safety| safety.note)
                text=text(|safety| safety.first)
                test="safety-first"
            />
            {GROUPS.map(group).collect_view()}
        </Page>
    }
}
