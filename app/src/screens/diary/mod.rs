//! What the sun and the pots did, day by day.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod entries;
mod last_days;
mod scene;
mod sheet;
mod sun;
mod typing;

use crate::reactive::*;
use model::local_time::Day;

use crate::components::{Button, DateField, Icon, RoomHeader};
use crate::i18n::refusal::refusal;
use crate::present::diary::{day_field, day_from_field, shown_day};
use crate::screens::on_which::OnWhich;
use crate::shell::use_shell;
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};
use crate::state::route::Route;

use entries::{Entries, ErasedLately};
use last_days::LastDays;
use scene::{Scene, say};
use sheet::EntrySheet;
use sun::DaySun;

/// The screen of the day that the address names, or of today.
#[component]
pub(super) fn Diary() -> impl IntoView {
    let shell = use_shell();
    let scene = Scene::new(shell);
    let line = Memo::new(move |_| {
        say(shell, |voice| {
            let day = scene.day.get();
            let near = voice.formats.near_day(day, voice.now.day());
            let date = voice.formats.day(day);
            if near == date {
                date
            } else {
                format!("{near} · {date}")
            }
        })
    });
    view! {
        <div class="screen">
            <RoomHeader title=shell.words.text(|strings| strings.diary.title) line>
                <OnWhich />
            </RoomHeader>
            <div class="screen__body">
                <Days scene />
                <DaySun scene />
                <Entries scene />
                <LastDays scene />
                <ErasedLately scene />
            </div>
            <EntrySheet scene />
        </div>
    }
}

/// From day to day, and to any day that has been.
#[component]
fn Days(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let refused = RwSignal::new(None::<(String, Refused)>);
    let today = Memo::new(move |_| shell.clock.now().get().day());
    let go = move |day: Day| {
        refused.set(None);
        let is_today = day == today.get_untracked();
        shell.router.go(Route::Diary((!is_today).then_some(day)));
    };
    let value = Signal::derive(move || match refused.get() {
        Some((text, _)) => text,
        None => day_field(scene.day.get()),
    });
    let error = Signal::derive(move || {
        refused.get().map(|(_, refused)| {
            say(shell, |voice| {
                refusal(voice.strings, voice.formats, refused, voice.now.day())
            })
        })
    });
    let on_input = move |text: String| {
        let Some(day) = day_from_field(&text) else {
            refused.set(Some((text, Field::Day.refuse(Wrong::Empty))));
            return;
        };
        let now = shell.clock.now_untracked();
        let first = Day::from_ymd(limits::FIRST_YEAR, 1, 1).unwrap_or(day);
        if now.day() < day {
            refused.set(Some((text, Field::Day.refuse(Wrong::InFuture))));
        } else if shown_day(Some(day), now) == day {
            go(day);
        } else {
            let earliest = first.start();
            refused.set(Some((text, Field::Day.refuse(Wrong::Before { earliest }))));
        }
    };
    view! {
        <nav
            class="diary-days"
            aria-label=words.text(|strings| strings.diary.days_label)
            data-test="days"
        >
            <Button
                label=words.text(|strings| strings.diary.previous)
                on_press=Callback::new(move |()| go(scene.day.get_untracked().plus(-1)))
                icon=Icon::Back
                test="previous-day"
            />
            <Button
                label=words.text(|strings| strings.diary.following)
                on_press=Callback::new(move |()| go(scene.day.get_untracked().plus(1)))
                icon=Icon::Onward
                disabled=Signal::derive(move || today.get() <= scene.day.get())
                test="next-day"
            />
            <DateField
                label=words.text(|strings| strings.diary.day)
                value
                on_input=Callback::new(on_input)
                error
                test="day"
            />
        </nav>
    }
}
